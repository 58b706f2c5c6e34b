"""Whether a picture can be made as asked; known before anything is worked out."""

from __future__ import annotations

import importlib.util
from pathlib import Path

from gclint.problem import Problem

FORMS = (".png", ".svg")


def form_of(name: str) -> str:
    """".png" or ".svg". Raises Problem for a name that ends in neither, and where matplotlib is not installed."""
    ending = Path(name).suffix.lower()
    if ending not in FORMS:
        raise Problem("--picture names a file that ends in .png or .svg", name)
    if importlib.util.find_spec("matplotlib") is None:
        raise Problem("pictures need matplotlib, which is not installed: pip install 'gclint[picture]'")
    return ending
