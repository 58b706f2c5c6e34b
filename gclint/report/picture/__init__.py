"""Pictures of the path and of the charts."""
