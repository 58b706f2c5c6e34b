"""The blank as a height field, what each piece of path takes out of it, and how the tool gets in."""
