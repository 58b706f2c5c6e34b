"""Names of files as URIs that lead back to the file."""

from __future__ import annotations

import os
from pathlib import Path
from urllib.parse import unquote_to_bytes, urlsplit

import pytest

from gclint.report.machine.uri import uri_of


@pytest.mark.parametrize("name", ["a.nc", "a b#1?é%41.nc", "sub/q&'x.nc", os.fsdecode(b"bad\xff.nc"), "c:d.nc"])
def test_a_name_inside_the_folder_is_relative(name: str) -> None:
    uri, relative = uri_of(name)
    assert relative
    assert unquote_to_bytes(urlsplit(uri).path) == os.fsencode(name)
    assert uri.isascii()
    assert not urlsplit(uri).scheme
    assert uri_of(str(Path.cwd() / name)) == (uri, True)
    assert uri_of(f"./x/../{name}") == (uri, True)


def test_a_name_outside_is_a_whole_file_uri(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "in").mkdir()
    monkeypatch.chdir(tmp_path / "in")
    uri, relative = uri_of("../my part.nc")
    assert not relative
    assert uri == (tmp_path / "my part.nc").as_uri()
