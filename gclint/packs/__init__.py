"""Rules as data: how packs are written, checked and compiled."""
