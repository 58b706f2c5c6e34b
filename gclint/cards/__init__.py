"""Cards of materials and controllers: how they are written, proved and read."""
