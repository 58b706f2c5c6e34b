"""Test cuts at the desk, without a browser: what its windows ask for, from the plan to the window in shop.toml."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.desk import trials
from gclint.desk.declarations import Changed
from tests.samples.test_samples import SAMPLES

CUTS = 12
FOLDER = "beech-trial"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    (tmp_path / "shop.toml").write_bytes((SAMPLES / "bench-router.toml").read_bytes())
    asked = (tmp_path, FOLDER, "beech", "", ["1"], "300 x 200 x 18 mm", CUTS, "2 mm")
    shown = trials.plan(*asked, None)
    assert not shown["written"]
    assert not (tmp_path / FOLDER).exists()
    risky = [cut["number"] for cut in shown["cuts"] if cut["risky"]]
    assert trials.plan(*asked, risky)["written"]
    return tmp_path


def test_a_cut_that_another_window_graded_is_not_written_over(root: Path) -> None:
    trials.grade(root, FOLDER, 1, {"chipping": "none"}, {"chipping": ""})
    with pytest.raises(Changed):
        trials.grade(root, FOLDER, 1, {"chipping": "bad"}, {"chipping": ""})
    assert trials.cuts(root, FOLDER)["cuts"][0]["said"]["chipping"] == "none"


def test_cuts_without_a_fault_are_learned_from_and_write_no_limit(root: Path) -> None:
    for row in trials.cuts(root, FOLDER)["cuts"]:
        trials.grade(root, FOLDER, row["number"], {"chipping": "none"})
    before = (root / "shop.toml").read_bytes()
    told = trials.learn(root, FOLDER, write=False, yes=False)
    assert "<html" in told["page"]
    assert told["writable"] == []
    assert "Not written" in told["told"][0]
    assert (root / "shop.toml").read_bytes() == before
