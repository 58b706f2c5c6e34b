"""A corrected copy of a program, written only with the proof that it cuts the same part."""
