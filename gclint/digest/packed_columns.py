"""Columns, text and JSON in the form in which they stand in the page: deflated, base64."""

from __future__ import annotations

import base64
import zlib
from typing import Any

import msgspec
import numpy as np

from gclint.clean_text import plain_all
from gclint.columns import Column

MICRONS = 1000.0  # places are kept to a thousandth of a millimetre


class Columns:
    """Numbers for the script, one after the other: each byte plane for itself, so that they deflate well."""

    def __init__(self) -> None:
        self.parts: list[bytes] = []
        self.at = 0

    def add(self, values: Column, scale: float = 1.0, delta: bool = False, wide: bool = True) -> dict[str, Any]:
        """What the script needs to read the column: value = number / scale, of differences if `delta`.

        Whole numbers of 32 bits if `wide`, else of 8 bits with 255 for unknown.
        """
        if wide:
            known = np.nan_to_num(np.round(values * scale)).astype(np.int64)
            numbers = np.diff(known, prepend=0) if delta else known
            raw = numbers.astype("<i4").view(np.uint8).reshape(-1, 4).T.tobytes()
        else:
            scaled = np.clip(np.round(values * scale), 0, 254)
            raw = np.where(np.isfinite(scaled), scaled, 255).astype(np.uint8).tobytes()
        told = {"at": self.at, "length": len(values), "scale": scale, "delta": delta, "bytes": 4 if wide else 1}
        self.parts.append(raw)
        self.at += len(raw)
        return told

    def text(self) -> str:
        return packed(b"".join(self.parts))


def packed(raw: bytes) -> str:
    return base64.b64encode(zlib.compress(raw, 6)).decode("ascii")


def packed_json(value: object) -> str:
    # declared lengths are a kind of float of their own
    return packed(msgspec.json.encode(plain_all(value), enc_hook=float))


def short(value: float | None, digits: int = 5) -> float | None:
    """A number of at most so many digits; None for what is unknown or endless."""
    return None if value is None or not np.isfinite(value) else float(f"{float(value):.{digits}g}")
