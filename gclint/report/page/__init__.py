"""The page: one HTML file that shows a run as a workshop job sheet."""
