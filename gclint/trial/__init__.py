"""Test cuts: planned, graded, and what they teach."""
