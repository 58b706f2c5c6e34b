"""From bytes to blocks and words with spans."""

LARGEST = 1 << 30  # bytes of a program; the columns hold offsets as 32-bit numbers

ENDINGS = (".nc", ".ngc", ".gcode", ".tap", ".cnc", ".txt")  # of files that are taken for programs
