"""Memory that one large table leaves is used again for the next, instead of being given back and asked for anew.

The system clears every page that it gives, up to a sixth of the check of a long program. Only the C library of GNU can
be told; with any other nothing changes.
"""

from __future__ import annotations

ARENAS, MMAP_THRESHOLD, TRIM_THRESHOLD = -8, -3, -1  # as that library numbers what can be set
LARGEST_TABLE = 1 << 25  # bytes, the most it takes
NEVER = 1 << 30


def keep() -> None:
    """From now on in this process."""
    _call(("mallopt", ARENAS, 1), ("mallopt", MMAP_THRESHOLD, LARGEST_TABLE), ("mallopt", TRIM_THRESHOLD, NEVER))


def give_back() -> None:
    """A process that waits for its next program holds nothing of the last."""
    _call(("malloc_trim", 0))


def _call(*calls: tuple[str, int] | tuple[str, int, int]) -> None:
    import ctypes  # numpy has loaded it, or will

    try:
        library = ctypes.CDLL(None)
        for name, *numbers in calls:
            library[name](*numbers)
    except (OSError, TypeError, AttributeError):
        return
