"""Places of keys and values in TOML text."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gclint.toml.place import Path, Places
from tests.strategies import STEADY

TEXT = '''# a comment = 1
name = "x # [not] a table"
"odd key" = 2
inline = { a = "1 mm", b = [1, 2,
  3] }

[machine.travel]
x = "600 mm"   # trailing
[[tool]]
number = 1
[[tool]]
  number = 2
  [tool.more]
  deep.er = """
two lines"""
[windows."cured-epoxy".1]
fz = ["0.042 mm",
      "0.10 mm"]
'''


@pytest.mark.parametrize(
    ("path", "key", "place"),
    [
        (("name",), True, (2, 1)),
        (("name",), False, (2, 8)),
        (("odd key",), False, (3, 13)),
        (("inline", "a"), False, (4, 16)),
        (("inline", "b"), True, (4, 24)),
        (("inline", "b", 1), False, (4, 32)),
        (("inline", "b", 2), False, (5, 3)),
        (("machine",), True, (7, 1)),
        (("machine", "travel", "x"), False, (8, 5)),
        (("tool", 0, "number"), False, (10, 10)),
        (("tool", 1), True, (11, 1)),
        (("tool", 1, "number"), True, (12, 3)),
        (("tool", 1, "more", "deep", "er"), False, (14, 13)),
        (("windows", "cured-epoxy", "1", "fz", 1), False, (18, 7)),
    ],
)
def test_place(path: Path, key: bool, place: tuple[int, int]) -> None:
    assert Places(TEXT).of(path, key) == place


def test_what_is_not_there_is_placed_at_what_holds_it() -> None:
    assert Places(TEXT).of(("machine", "travel", "y")) == (7, 1)
    assert Places(TEXT).of(()) is None


@STEADY
@given(st.text(alphabet='[]{}="\'#,.\n ab1\\', max_size=80))
def test_any_text_ends(text: str) -> None:
    """It is only asked about text tomllib accepts, but must end on any."""
    assert isinstance(Places(text).keys, dict)
