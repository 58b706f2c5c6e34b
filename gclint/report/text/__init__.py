"""Sheets for people, on the terminal."""
