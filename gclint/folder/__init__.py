"""Many programs at once: finding them, checking them on every core, keeping results, watching a folder."""
