"""Read a CNC program, model the cut, and say line by line what will go wrong and what to change.

    import gclint

    checked = gclint.check("tide-ring.nc")
    for finding in gclint.failing(checked):
        print(finding.line, finding.grade, finding.rule, finding.happens)

`check`, `mend` and `window` answer what the commands of these names answer; `failing` says what the exit code says.
What stands in `__all__` keeps its names and meanings within a major version; all else may change at any time. Importing
gclint loads none of it: that happens at the first use. Calls may run in several threads at once.
"""

__version__ = "0.1.0"
HOME = "https://code.lowtide.example/gclint"  # invented: reports link to it; put there where your copy of gclint stands

_OFFERED = {
    "check": "library", "mend": "library", "window": "library", "failing": "library", "Mended": "library",
    "Checked": "tables.finding", "Finding": "tables.finding", "Problem": "problem", "Unreadable": "check",
    "Window": "report.answers.window_out",
}  # fmt: skip
_CALLED = {"Window": "WindowOut"}  # by another name where it lives
__all__ = [*_OFFERED, "__version__"]  # types of these: __init__.pyi


def __getattr__(name: str) -> object:
    if name not in _OFFERED:
        raise AttributeError(f"module 'gclint' has no attribute {name!r}")
    from importlib import import_module

    return getattr(import_module(f"gclint.{_OFFERED[name]}"), _CALLED.get(name, name))


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__})
