"""Where the rule packs, material cards and controller cards that ship with gclint lie."""

from __future__ import annotations

from pathlib import Path


def folder() -> Path:
    """The folder `rules`: inside the package when installed, beside it in a checkout."""
    inside = Path(__file__).parent / "rules"
    return inside if inside.is_dir() else inside.parent.parent / "rules"
