"""TOML files with places, units and kinds of quantity."""
