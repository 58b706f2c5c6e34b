"""Formulas and windows: chips, edge speed, and the limits of a material card."""
