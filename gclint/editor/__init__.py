"""The language server: what `gclint check` says, while a program is being written."""
