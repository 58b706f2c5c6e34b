"""Every rule that ships: its texts, its examples, its name; and that its examples prove it."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from gclint.packs.pack import CORE, GROUP_FILE, Pack, Rule, Shipped
from gclint.packs.shipped_packs import compile_shipped, fingerprint, shipped_packs, sources
from gclint.rule_proof import unproved
from gclint.shipped import folder

PACKS = shipped_packs()
RULES = [(pack, rule) for pack in PACKS for rule in pack.rules]
LOOKING = [(pack, rule) for pack, rule in RULES if rule.text.looks_at != CORE]


def called(pairs: list[tuple[Pack, Rule]]) -> list[str]:
    return [rule.name for _, rule in pairs]


def test_every_file_of_a_rule_is_read_and_no_name_is_given_twice() -> None:
    files = [path.stem for path in folder().glob("*/*.toml") if (path.parent / GROUP_FILE).exists()]
    names = called(RULES)
    assert sorted(names) == sorted(name for name in files if name != "group")
    assert len(names) == len(set(names))


@pytest.mark.parametrize(("pack", "rule"), RULES, ids=called(RULES))
def test_every_rule_has_its_texts(pack: Pack, rule: Rule) -> None:
    text = rule.text
    assert re.fullmatch(r"[a-z]+(-[a-z]+)*", text.name)
    for said in (text.title, text.why, text.source, text.owner, text.standing):
        assert said.strip()
    assert not text.title.endswith(".")
    assert text.why.strip().endswith(".")
    happens = text.happens if isinstance(text.happens, str) else " ".join(case.text for case in text.happens)
    change = text.change if isinstance(text.change, str) else " ".join(case.text for case in text.change)
    assert happens.strip()
    assert change.strip() or text.advice
    words = f"{text.title} {happens} {change} {text.why}".lower()
    for never in ("is safe", "safely", "simply", "just "):
        assert never not in words


@pytest.mark.parametrize(("pack", "rule"), LOOKING, ids=called(LOOKING))
def test_every_rule_has_both_kinds_of_example(pack: Pack, rule: Rule) -> None:
    assert len(rule.text.must_find) >= 2
    assert len(rule.text.must_leave) >= 2
    assert all(example.says.strip() for example in (*rule.text.must_find, *rule.text.must_leave))
    assert any(example.line is not None for example in rule.text.must_find)


@pytest.mark.parametrize(("pack", "rule"), LOOKING, ids=called(LOOKING))
def test_every_rule_is_proved_by_its_examples(pack: Pack, rule: Rule) -> None:
    assert unproved(pack, rule) == []


@pytest.mark.slow
@pytest.mark.parametrize(("pack", "rule"), LOOKING, ids=called(LOOKING))
def test_no_example_makes_a_rule_fail(pack: Pack, rule: Rule) -> None:
    """All rules run over every example; one that raises would show as internal-error."""
    from gclint.rule_proof import findings

    for example in (*rule.text.must_find, *rule.text.must_leave):
        assert findings(example, PACKS, "internal-error") == []


def test_what_rules_stand_in_for_exists() -> None:
    names = set(called(RULES))
    for _, rule in RULES:
        assert set(rule.text.instead_of) <= names


def test_compiled_rules_are_those_of_the_texts(tmp_path: Path) -> None:
    import msgspec

    kept = msgspec.json.decode(compile_shipped(folder()), type=Shipped)
    assert kept.packs == PACKS
    texts = sources(folder())
    assert kept.fingerprint == fingerprint(texts)
    assert fingerprint({**texts, "more.toml": ""}) != kept.fingerprint


def test_a_check_by_compiled_rules_does_not_import_the_parser(tmp_path: Path) -> None:
    """The packs decode, and judge, with lark out of reach."""
    import subprocess
    import sys

    (tmp_path / "rules.json").write_bytes(compile_shipped(folder()))
    script = (
        "import sys; sys.modules['lark'] = None\n"
        "import msgspec\n"
        "from gclint.packs.pack import Shipped\n"
        "import gclint.judge.judge\n"
        f"packs = msgspec.json.decode(open({str(tmp_path / 'rules.json')!r}, 'rb').read(), type=Shipped).packs\n"
        "print(sum(len(pack.rules) for pack in packs))\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, cwd=Path(__file__).parents[2], check=False
    )
    assert done.stdout.strip() == str(len(RULES)), done.stderr
