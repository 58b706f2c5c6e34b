"""JUnit XML: a suite per program, a case per rule. By the schema of a common CI plug-in; there is no one standard."""

from __future__ import annotations

import re
from xml.etree import ElementTree as Xml

from gclint import __version__
from gclint.clean_text import MARK, plain
from gclint.digest.sheet_words import fails, found_words, quoted, sentence, settings_words, title_words, where_words
from gclint.problem import Problem
from gclint.run import Run
from gclint.tables.finding import Checked, Finding

# Characters that XML 1.0 has no way to hold.
FORBIDDEN = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
READING = "program-can-be-read"


class Junit:
    """Takes runs one by one; keeps the suite of each as text."""

    maker = None

    def __init__(self) -> None:
        self.suites: list[str] = []
        self.tests = self.failures = self.errors = 0

    def add(self, run: Run) -> None:
        """One program that was read: a case for each rule, and one for whatever else was not judged."""
        checked = run.checked
        by_rule: dict[str, list[Finding]] = {}
        for finding in checked.findings:
            by_rule.setdefault(finding.rule, []).append(finding)
        needs = {blind.rule: blind.needs for blind in checked.not_judged}
        suite = _suite(checked.path)
        _properties(suite, checked)
        for name in dict.fromkeys([*run.titles, *by_rule, *needs]):
            if name != "internal-error" or name in by_rule:
                _case(suite, checked.path, name, by_rule.get(name, []), needs.get(name), run)
        self._close(suite)

    def missed(self, problem: Problem) -> None:
        """One program that could not be read."""
        name = problem.path or "program"
        suite = _suite(name)
        case = Xml.SubElement(suite, "testcase", {"name": READING, "classname": _clean(name)})
        _say(case, "error", problem.says, str(problem), "unreadable")
        self._close(suite)

    def text(self, code: int) -> str:
        """The document, with a line end; the exit code has no place in it."""
        del code
        head = Xml.tostring(
            Xml.Element(
                "testsuites",
                {
                    "name": "gclint", "tests": str(self.tests), "failures": str(self.failures),
                    "errors": str(self.errors),
                },
            ),
            "unicode",
            short_empty_elements=False,
        )  # fmt: skip
        opening, closing = head.removesuffix("</testsuites>"), "</testsuites>"
        return "\n".join(['<?xml version="1.0" encoding="utf-8"?>', opening, *self.suites, closing]) + "\n"

    def _close(self, suite: Xml.Element) -> None:
        cases = suite.findall("testcase")
        tests, failures = len(cases), len(suite.findall("testcase/failure"))
        errors, skipped = len(suite.findall("testcase/error")), len(suite.findall("testcase/skipped"))
        suite.attrib |= {
            "tests": str(tests), "failures": str(failures), "errors": str(errors), "skipped": str(skipped),
        }  # fmt: skip
        self.tests, self.failures, self.errors = self.tests + tests, self.failures + failures, self.errors + errors
        Xml.indent(suite, " ", 1)
        self.suites.append(" " + Xml.tostring(suite, "unicode").rstrip())


def _suite(path: str) -> Xml.Element:
    return Xml.Element("testsuite", {"name": _clean(path)})


def _properties(suite: Xml.Element, checked: Checked) -> None:
    held = Xml.SubElement(suite, "properties")
    said = [("gclint", __version__), ("fingerprint", checked.fingerprint), ("units", checked.units)]
    said += [(f"assumed: {taken.what}", f"{taken.value}, because {taken.because}") for taken in checked.assumed]
    for name, value in said:
        Xml.SubElement(held, "property", {"name": _clean(name), "value": _clean(value)})


def _case(suite: Xml.Element, path: str, name: str, findings: list[Finding], needs: str | None, run: Run) -> None:
    """A failure where a finding reaches the fail grade; milder and accepted ones are output; skipped if not judged."""
    case = Xml.SubElement(suite, "testcase", {"name": _clean(name), "classname": _clean(path)})
    failing = [found for found in findings if fails(found, run.fail_at) and found.follows is None]
    others = [found for found in findings if found not in failing]
    title = title_words(name, run)
    if failing:
        kind = "error" if name == "internal-error" else "failure"
        more = f", and {len(failing) - 1} more" if len(failing) > 1 else ""
        message = f"{title}: {where_words(failing[0])}{more}"
        _say(case, kind, message, "\n\n".join(_told(found, run) for found in failing), failing[0].grade)
    elif needs is not None:
        _say(case, "skipped", f"not judged: needs {needs}", "", "not-judged")
    output = [_told(found, run) for found in others]
    if failing and needs is not None:
        output.append(f"Not judged everywhere: needs {needs}")
    if output:
        Xml.SubElement(case, "system-out").text = _clean("\n\n".join(output))


def _say(case: Xml.Element, kind: str, message: str, text: str, grade: str) -> None:
    said = Xml.SubElement(case, kind, {"message": _clean(" ".join(message.split())), "type": grade})
    if text:
        said.text = _clean(text)


def _told(finding: Finding, run: Run) -> str:
    """A finding as lines of text."""
    lines = [f"{finding.grade}: {where_words(finding)}"]
    if finding.tool is not None:
        lines[0] += f", tool {finding.tool}"
    text = quoted(finding.worst_line, run)
    if text:
        lines.append(f"line {finding.worst_line} reads: {text}")
    if finding.found is not None:
        lines.append(f"found: {found_words(finding)}")
    lines.append(f"happens: {sentence(finding.happens)}")
    if finding.change.text:
        lines.append(f"change: {finding.change.text}")
    lines += [f"  {line}" for line in settings_words(finding.change.set)]
    if finding.accepted is not None:
        lines.append(f"accepted: {finding.accepted}")
    return "\n".join(lines)


def _clean(text: str) -> str:
    """Text without the characters that XML has no way to hold, or that turn others around, each replaced by a mark."""
    return plain(FORBIDDEN.sub(MARK, text))
