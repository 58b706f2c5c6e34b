"""From words to moves and events."""
