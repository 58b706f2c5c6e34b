"""Writers: each reads findings and tables and computes nothing."""
