"""What to change, worked out with numbers."""
