"""A rule's help for other people's screens, as plain text and as Markdown."""

from __future__ import annotations

from gclint.digest.words import GRADE_WORDS, behind, plain_number
from gclint.packs.pack import Example, RuleText


def rule_help(rule: RuleText) -> tuple[str, str]:
    """(plain text, Markdown) of why a rule is there, by which numbers, and one example of each kind."""
    why = " ".join(rule.why.split())
    grades = [rule.grade] if isinstance(rule.grade, str) else list(dict.fromkeys(case.grade for case in rule.grade))
    grade = " or ".join(f"{name} ({GRADE_WORDS[name].lower()})" for name in grades)
    limits = [
        f"{name} = {limit.value if isinstance(limit.value, str) else plain_number(limit.value)}"
        f" ({behind(limit.standing, limit.source)})"
        for name, limit in rule.limits.items()
    ]
    origin = behind(rule.standing, rule.source)
    plain = [why, f"Grade: {grade}.", f"Standing: {origin}.", *(f"Limit: {limit}." for limit in limits)]
    markdown = [_escaped(why), f"**Grade**: {grade}", f"**Standing**: {_escaped(origin)}"]
    if limits:
        markdown.append("**Limits**\n\n" + "\n".join(f"- {_escaped(limit)}" for limit in limits))
    for title, examples in (("Found in", rule.must_find), ("Left alone in", rule.must_leave)):
        if examples:
            markdown.append(f"**{title}**: {_example(examples[0])}")
    markdown.append(f"`gclint why {rule.name}` says more.")
    return "\n".join(plain), "\n\n".join(markdown)


def _example(example: Example) -> str:
    fence = "```"
    while fence in example.program:
        fence += "`"
    return f"{_escaped(example.says)}\n\n{fence}gcode\n{example.program.strip()}\n{fence}"


def _escaped(text: str) -> str:
    """Text in which Markdown and HTML see nothing of their own."""
    return "".join(f"\\{c}" if c in "\\`*_[]<>#|~" else c for c in text)
