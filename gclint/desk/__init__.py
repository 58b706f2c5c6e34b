"""The desk: a page on this machine alone, for people who would rather not write declarations by hand."""
