"""From bytes to blocks and words with spans."""
