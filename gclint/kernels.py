"""Which modules are kernels: those that say so themselves. The build, the check of a wheel and the tests ask here."""

from __future__ import annotations

from pathlib import Path


def kernels(package: Path) -> list[str]:
    """Give the modules of the package in this folder that Cython compiles, in order: 'gclint.stock.sweep' and so on."""
    found = (
        path.relative_to(package.parent).with_suffix("").parts
        for path in package.rglob("*.py")
        if "\nimport cython\n" in path.read_text(encoding="utf-8")
    )
    return sorted(".".join(parts) for parts in found)
