"""The rule language: expressions with units over columns, with three-valued truth."""
