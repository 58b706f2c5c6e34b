"""The ordinal scales on which a test cut is graded, from rules/trial/scales.toml."""

from __future__ import annotations

from functools import cache

from gclint.problem import Problem, nearest
from gclint.setup.declared import Table
from gclint.shipped import folder


class Step(Table, frozen=True):
    """One word of a scale."""

    word: str
    means: str
    drawing: str
    also: tuple[str, ...] = ()  # what people say for it


class Scale(Table, frozen=True):
    """Steps from good (0) to bad."""

    name: str
    title: str
    asks: str
    step: tuple[Step, ...]

    @property
    def words(self) -> tuple[str, ...]:
        return tuple(step.word for step in self.step)

    def word_of(self, text: str) -> str:
        """The word that a number from 1, the word itself, or what people say for it stands for; else the text."""
        if text.isdigit() and 0 < int(text) <= len(self.step):
            return self.step[int(text) - 1].word
        said = " ".join(text.lower().replace("-", " ").split())
        for step in self.step:
            if said == step.word.replace("-", " ") or said in step.also:
                return step.word
        return text.lower()

    def index(self, word: str) -> int:
        """0 is good. Raises Problem for a word that is not on the scale, without a place."""
        if word not in self.words:
            raise Problem(f'"{word}" is not on the scale of {self.title}{nearest(word, self.words)}')
        return self.words.index(word)


class _Scales(Table, frozen=True):
    scale: tuple[Scale, ...]


@cache
def scales() -> dict[str, Scale]:
    """By name, in the order they are asked."""
    from gclint.toml.file import load

    return {scale.name: scale for scale in load(folder() / "trial" / "scales.toml", _Scales, "list of scales").scale}
