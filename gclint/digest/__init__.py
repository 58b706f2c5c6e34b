"""What all reports need to have worked out."""
