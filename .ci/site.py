"""Builds the pages for users into a site: `python .ci/site.py FOLDER`; needs the extra `docs`.

The pages are gclint/docs/*.md as they ship. Written here, from the data, are a page for every rule, material and
controller, the glossary, the schemas, and the reference of all commands. A broken link ends the build.
"""

from __future__ import annotations

import json
import re
import shutil
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

from gclint.cards import controller, material
from gclint.knowledge.glossary import glossary
from gclint.packs.pack import Example, RuleText, TextCase
from gclint.packs.shipped_packs import shipped_packs

ROOT = Path(__file__).resolve().parents[1]
DOCS = ROOT / "gclint" / "docs"
LINK = re.compile(r"(!?\[[^\]]*\])\(([^)\s#]+)(#[^)\s]*)?\)")
PLACES = {"README.md": "readme.md", "rules/LANGUAGE.md": "language.md", "rules/controllers/HABITS.md": "habits.md"}
CONF = """
project = "gclint"
extensions = ["myst_parser", "sphinx_click"]
html_theme = "furo"
html_title = "gclint"
master_doc = "index"
myst_heading_anchors = 4
myst_enable_extensions = ["deflist"]
exclude_patterns = ["_files"]
html_copy_source = False
html_show_sphinx = False
suppress_warnings = ["misc.highlighting_failure"]
"""
TREE = "\n```{{toctree}}\n:maxdepth: 1\n:hidden:\n:caption: {caption}\n\n{names}\n```\n"


def main(out: Path) -> int:
    """Write the site into the folder `out`; gives Sphinx's exit code."""
    from sphinx.cmd.build import main as build

    with tempfile.TemporaryDirectory() as folder:
        write_sources(Path(folder))
        return build(["-W", "--keep-going", "-q", "-b", "html", folder, str(out)])


def write_sources(folder: Path) -> None:
    """Write every page that the site is built of, and its settings, into `folder`."""
    (folder / "conf.py").write_text(CONF, encoding="utf-8")
    shipped = sorted(DOCS.glob("*.md"))
    for page in (*shipped, ROOT / "README.md"):
        text = LINK.sub(lambda link, page=page: _placed(link, page, folder), page.read_text(encoding="utf-8"))
        (folder / PLACES.get(page.name, page.name)).write_text(text, encoding="utf-8")
    made = dict(pages())
    for name, text in made.items():
        target = folder / f"{name}.md"
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_text(text, encoding="utf-8")
    tops = [name for name in made if "/" not in name]
    index = folder / "index.md"
    names = ["readme", *(page.stem for page in shipped if page.stem != "index")]
    tree = TREE.format(caption="Pages", names="\n".join(names))
    tree += TREE.format(caption="Reference", names="\n".join(tops))
    index.write_text(index.read_text(encoding="utf-8") + tree, encoding="utf-8")


def _placed(link: re.Match[str], page: Path, folder: Path) -> str:
    """A link as the site has it: to another page, or to a file of the source folder, which is copied beside them."""
    said, target, anchor = link.groups()
    file = (page.parent / target).resolve()
    if ":" in target or not file.is_file():
        return link[0]
    if file.parent == DOCS:
        return f"{said}({file.name}{anchor or ''})"
    name = file.relative_to(ROOT).as_posix()
    if name in PLACES:
        return f"{said}({PLACES[name]}{anchor or ''})"
    copied = folder / "_files" / file.name
    copied.parent.mkdir(exist_ok=True)
    shutil.copyfile(file, copied)
    if said.startswith("!"):
        return f"{said}(_files/{copied.name})"
    shown = said[1:-1].strip("`")
    return f"{{download}}`{shown} <_files/{copied.name}>`"


def pages() -> Iterator[tuple[str, str]]:
    """Every page that is made of data: its name, with a folder where it belongs to a list, and its text."""
    yield "commands", COMMANDS
    yield from _rules()
    yield "language", (ROOT / "rules" / "LANGUAGE.md").read_text(encoding="utf-8")
    yield from _materials()
    yield from _controllers()
    yield "habits", (ROOT / "rules" / "controllers" / "HABITS.md").read_text(encoding="utf-8")
    yield "glossary", _glossary()
    yield from _schemas()


COMMANDS = """# Commands

```{eval-rst}
.. click:: gclint.cli.main:gclint
   :prog: gclint
   :nested: full
```
"""


def _rules() -> Iterator[tuple[str, str]]:
    packs = shipped_packs()
    lines = ["# Rules\n"]
    for pack in packs:
        lines.append(f"## {pack.name}\n\n{pack.about}\n")
        lines += [f"- [{rule.name}](rules/{rule.name}.md): {rule.text.title.lower()}" for rule in pack.rules]
        lines.append("")
    names = "\n".join(f"rules/{rule.name}" for pack in packs for rule in pack.rules)
    yield "rules", "\n".join(lines) + TREE.format(caption="Rules", names=names)
    for pack in packs:
        for rule in pack.rules:
            yield f"rules/{rule.name}", _rule(pack.name, rule.text)


def _rule(group: str, rule: RuleText) -> str:
    grade = rule.grade if isinstance(rule.grade, str) else " or ".join(dict.fromkeys(c.grade for c in rule.grade))
    parts = [
        f"# {rule.name}\n\n**{rule.title}.** Group [{group}](../rules.md), grade `{grade}`.\n",
        f"## What happens\n\n{_cases(rule.happens)}",
    ]
    if rule.change:
        parts.append(f"## What to change\n\n{_cases(rule.change)}")
    parts.append(f"## Why\n\n{rule.why.strip()}\n")
    if rule.limits:
        rows = [(name, str(one.value), one.standing, one.source) for name, one in rule.limits.items()]
        parts.append("## Its numbers\n\n" + _table(("number", "value", "standing", "source"), rows))
    parts.append(f"## Source\n\n{rule.source} (standing: {rule.standing})\n")
    for title, examples in (("A program it finds", rule.must_find), ("A program it leaves alone", rule.must_leave)):
        if examples:
            parts.append(f"## {title}\n\n{_example(examples[0])}")
    return "\n".join(parts)


def _cases(said: str | tuple[TextCase, ...]) -> str:
    """The texts of a rule; what it measures at each place stands in italics."""
    texts = [said] if isinstance(said, str) else [case.text for case in said]
    shown = [re.sub(r"\{([^}]*)\}", lambda name: f"*{name.group(1)}*", text) for text in texts if text]
    return shown[0] + "\n" if len(shown) == 1 else "".join(f"- {text}\n" for text in shown)


def _example(example: Example) -> str:
    given = [f"{key} {value}" for key, value in (("material", example.material), ("stock", example.stock)) if value]
    given += [f"tool {tool}" for tool in example.tools]
    where = f" The finding stands on line {example.line}." if example.line else ""
    text = f"{example.says[:1].upper()}{example.says[1:]}.{where}\n\n```text\n{example.program.strip()}\n```\n"
    for name, file in (("shop.toml", example.shop), ("job.toml", example.job)):
        if file:
            text += f"\n`{name}`:\n\n```toml\n{file.strip()}\n```\n"
    return text + (f"\nWith {'; '.join(given)}.\n" if given else "")


def _materials() -> Iterator[tuple[str, str]]:
    cards = [material.material(name) for name in material.names()]
    lines = [f"- [{card.name}](materials/{card.name}.md): {card.title}" for card in cards]
    names = "\n".join(f"materials/{card.name}" for card in cards)
    about = "# Materials\n\nEvery number has a standing and a source.\n\n"
    yield "materials", about + "\n".join(lines) + "\n" + TREE.format(caption="Materials", names=names)
    for card in cards:
        described = material.describe(card)
        rows = [(row.what, f"{row.value} {row.unit}".strip(), row.standing, row.source) for row in described]
        table = _table(("what", "value", "standing", "source"), rows)
        yield f"materials/{card.name}", f"# {card.name}\n\n{card.title[:1].upper()}{card.title[1:]}.\n\n{table}"


def _controllers() -> Iterator[tuple[str, str]]:
    names = controller.names()
    lines = [f"- [{name}](controllers/{name}.md): {controller.controller(name).title}" for name in names]
    tree = TREE.format(caption="Controllers", names="\n".join(f"controllers/{name}" for name in names))
    about = "# Controllers\n\nWhat each class of controller does with a program.\n\n"
    yield "controllers", about + "\n".join(lines) + tree
    for name in names:
        card = (ROOT / "rules" / "controllers" / f"{name}.toml").read_text(encoding="utf-8")
        yield f"controllers/{name}", f"# {name}\n\n{controller.controller(name).title}\n\n```toml\n{card}```\n"


def _glossary() -> str:
    entries = sorted(glossary().values(), key=lambda entry: entry.term.lower())
    return "# Glossary\n\n" + "\n".join(f"{entry.term}\n: {entry.means.strip()}\n" for entry in entries)


def _schemas() -> Iterator[tuple[str, str]]:
    files = sorted((ROOT / "gclint").rglob("*.schema.json"))
    names = [path.name.removesuffix(".schema.json") for path in files]
    tree = TREE.format(caption="Schemas", names="\n".join(f"schemas/{name}" for name in names))
    schemas = [json.loads(path.read_text(encoding="utf-8")) for path in files]
    lines = [f"- [{name}](schemas/{name}.md): {_about(schema)}" for name, schema in zip(names, schemas)]
    yield "schemas", "# Files and their schemas\n\n" + "\n".join(lines) + "\n" + tree
    for name, schema in zip(names, schemas):
        parts = [f"# {name}\n\n{_about(schema)}\n"]
        for title, of in ({"": schema} | schema.get("$defs", {})).items():
            rows = [
                (f"`{key}`", _type(one), "yes" if key in of.get("required", ()) else "", one.get("description", ""))
                for key, one in of.get("properties", {}).items()
            ]
            if rows:
                head = f"## {title}\n\n" if title else ""
                parts.append(head + _table(("key", "type", "required", "meaning"), rows))
        yield f"schemas/{name}", "\n".join(parts)


def _about(schema: dict[str, object]) -> str:
    return str(schema.get("description") or schema.get("title") or "").split("\n")[0]


def _type(one: dict[str, object]) -> str:
    """What a key may hold, in short."""
    if "$ref" in one:
        return str(one["$ref"]).rpartition("/")[2]
    for key in ("anyOf", "allOf", "oneOf"):
        if key in one:
            return " or ".join(dict.fromkeys(_type(each) for each in one[key]))  # type: ignore[attr-defined]
    if "enum" in one:
        return ", ".join(f"`{each}`" for each in one["enum"])  # type: ignore[attr-defined]
    if one.get("type") == "array":
        items = one.get("items")
        return f"list of {_type(items)}" if isinstance(items, dict) else "list"
    return str(one.get("type", one.get("const", "any")))


def _table(head: tuple[str, ...], rows: list[tuple[str, ...]]) -> str:
    lines = ["| " + " | ".join(head) + " |", "|" + " --- |" * len(head)]
    for row in rows:
        lines.append("| " + " | ".join(" ".join(str(cell).split()).replace("|", "\\|") for cell in row) + " |")
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
