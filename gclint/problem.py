"""The one exception that reaches a person: a sentence that names what is wrong and where."""

from __future__ import annotations


class Problem(Exception):
    """Bad input or a bad declaration; the command line prints it as one sentence and exits with 2.

    `path`, `line` and `column` (both from 1) are given where they are known.
    """

    def __init__(self, says: str, path: str | None = None, line: int | None = None, column: int | None = None) -> None:
        self.says, self.path, self.line, self.column = one_line(says), path, line, column
        super().__init__(str(self))

    def __str__(self) -> str:
        """'job.toml:2:10: ...' as compilers say it; 'line 2, column 10: ...' where the file is known without it."""
        place = one_line(self.path or "")
        if self.line is not None and place:
            place += f":{self.line}" if self.column is None else f":{self.line}:{self.column}"
        elif self.line is not None:
            place = f"line {self.line}" if self.column is None else f"line {self.line}, column {self.column}"
        return f"{place}: {self.says}" if place else self.says


class NotBuilt(Problem):
    """A part of gclint itself that must be compiled is not: nothing can be judged at all."""

    def __init__(self, kernel: str) -> None:
        super().__init__(f"the compiled part {kernel} is not built: run  pip install .  in the source folder")


LONGEST = 1_000  # characters of a sentence that may repeat parts of a file


def one_line(text: str) -> str:
    """The text with nothing in it that ends a line or moves a cursor, and not without end."""
    if len(text) > LONGEST:
        text = text[: LONGEST - 3] + "..."
    if text.isprintable():
        return text
    return " ".join("".join(c if c.isprintable() else " " for c in text).split())


def reason(problem: OSError) -> str:
    """'no such file or directory': why the system refused, as part of a sentence."""
    text = problem.strerror or str(problem) or type(problem).__name__
    return text[:1].lower() + text[1:]


def nearest(word: str, known: list[str] | tuple[str, ...]) -> str:
    """A tail for a Problem: '; nearest: "beech"', or the list of what there is when nothing is near."""
    import difflib

    close = difflib.get_close_matches(word, known, n=1, cutoff=0.5)
    if close:
        return f'; nearest: "{close[0]}"'
    return f"; known: {', '.join(known)}" if known else ""
