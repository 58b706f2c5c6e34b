"""The profiles of contact as columns; gclint.stock.contact asks them."""

from __future__ import annotations

from dataclasses import dataclass

from gclint.columns import Bits, Column


@dataclass(frozen=True, slots=True, eq=False)
class Contact:
    """The profiles, in 16-bit numbers; neighbouring pieces that are alike share a row."""

    depth: Bits  # [rows, SECTORS] in steps of MM
    edges: Column  # int16 [rows, BANDS * 4] hundredths of a degree: first and last of two runs, NONE where none
    above: Bits  # [rows, 2] bands 1 and 2 are contact deeper than this, in steps of MM; NO_BAND where there is none
    reach: Bits  # [rows] the tool's radius at the top of the contact, in steps of MM
    # [rows, 5] of the disc under the tip at the end of a piece that goes down, in steps of SHARE: the share that met
    # material; and as shares of the drop what came off it: the median where it met material, what came off under at
    # least half and a tenth of the disc, and the most
    disc: Bits

    def __len__(self) -> int:
        return len(self.reach)

    def part(self, first: int, end: int | None = None) -> Contact:
        """The rows from `first` on."""
        return Contact(*(getattr(self, name)[first:end] for name in Contact.__slots__))
