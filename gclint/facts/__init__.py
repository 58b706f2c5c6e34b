"""The facts that rules look at, a file for each table."""
