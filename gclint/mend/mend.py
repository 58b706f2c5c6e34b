"""Mends a program: menders offer, every offer is proved before it is taken, and only what is proved is written."""

from __future__ import annotations

import hashlib
import math
import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from msgspec.structs import replace

from gclint.check import run
from gclint.mend.case import Case, Proposal, Refused
from gclint.mend.draft import Collision, Draft, Edit, draft_of
from gclint.mend.proof import GRAVE, RANK, Failure, Proved, anchors, prove
from gclint.mend.put import put_words
from gclint.mend.registry import PATHS, WORDS, Mender, menders
from gclint.mend.result import Document, File, Made, NotMended, Place, Proof, Surface
from gclint.mend.surface import FINEST, Z_TOLERANCE, Difference, compare_surfaces
from gclint.packs.mendable import left_to_people, menders_of
from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.setup.declare import Options
    from gclint.tables.finding import Finding

MOST_ROUNDS = 12
MOST_LINES_TRIED = 2_000_000  # lines of all tries together
FEW_TRIES, MOST_TRIES = 6, 30
MOST_REPAIRS = 2  # of one try
MOST_PLACES = 2000  # offers of one round
REPAIRS = ("entries",)  # menders whose work may be part of another change
WAYS = " The ways down that this makes are ramps."

OnProgress = Callable[[str], None]


@dataclass(frozen=True)
class Mended:
    """`copy` is the case that was proved; `data` None: no copy."""

    original: Case
    copy: Case
    data: bytes | None
    surface: Difference
    document: Document
    proposals: tuple[Proposal, ...] = ()

    @property
    def failing(self) -> bool:
        """Whether something at the fail grade is left."""
        return fails(self.copy)


def fails(case: Case) -> bool:
    limit = RANK[case.run.fail_at]
    return case.run.failed or any(RANK[f.grade] <= limit for f in case.findings)


@dataclass
class _Work:
    """The state of one mend; `case` is what has been proved so far."""

    original: Case
    case: Case
    options: Options
    name: str
    path: str | None
    progress: OnProgress
    surface: Difference
    taken: list[Proposal] = field(default_factory=list)
    claims: list[tuple[str, frozenset[int]]] = field(default_factory=list)
    refused: dict[tuple[str, str, frozenset[int], tuple[Edit, ...]], str] = field(default_factory=dict)
    left_alone: dict[tuple[str, int], str] = field(default_factory=dict)
    tries: int = 0

    @property
    def most_tries(self) -> int:
        return max(FEW_TRIES, min(MOST_TRIES, MOST_LINES_TRIED // max(self.original.draft.lines, 1)))

    def original_lines(self, lines: Iterable[int]) -> frozenset[int]:
        return frozenset(int(self.case.draft.anchor[line - 1]) for line in lines if 1 <= line <= self.case.draft.lines)

    def key(self, offer: Proposal) -> tuple[str, str, frozenset[int]]:
        return offer.rule, offer.kind, self.original_lines(offer.lines)


def mend(
    data: bytes, name: str, options: Options, path: str | None = None, only: Sequence[str] = (),
    extra: Sequence[str] = (), progress: OnProgress = lambda step: None,
) -> Mended:  # fmt: skip
    """Mend one program. `only`: rules whose findings are mended (empty: all); `extra`: menders that work only when
    asked for ("tabs", "clip").

    Raises Problem on bad declarations, on rules that do not exist, and Unreadable on a program that cannot be read.
    """
    first = run(data, name, options, path, progress)
    if first.failed or first.tables is None:
        raise Problem("gclint itself failed on this program, so nothing in it can be mended", name)
    _known(only, first.titles)
    original = Case(draft_of(data), first, tuple(only))
    work = _Work(original, original, options, name, path, progress, compare_surfaces_none())
    words, paths = menders(WORDS), menders((*PATHS, *extra))
    for _ in range(MOST_ROUNDS):
        if _round(work, words, only):
            continue
        if not _round(work, paths, only):
            break
    return _mended(work, name, only)


def compare_surfaces_none() -> Difference:
    """No difference, where no move differs."""
    none = np.zeros(0, np.int64)
    return Difference(0.0, FINEST, none, none)


def _known(only: Sequence[str], titles: object) -> None:
    from gclint.problem import nearest

    names = list(titles) if isinstance(titles, dict) else []
    for rule in only:
        if names and rule not in names:
            raise Problem(f'there is no rule "{rule[:60]}"{nearest(rule, names)}')


def _round(work: _Work, chosen: list[Mender], only: Sequence[str]) -> bool:
    """One round of offers; whether one was taken."""
    offered: dict[tuple[str, str, frozenset[int]], Proposal] = {}
    for mender in chosen:
        for finding in work.case.findings:
            if mender.name not in menders_of(finding.rule) or (only and finding.rule not in only):
                continue
            for offer in mender.offers(work.case, finding):
                if isinstance(offer, Refused):
                    for line in work.original_lines(offer.lines):
                        work.left_alone.setdefault((offer.rule, line), offer.because)
                elif len(offered) < MOST_PLACES:
                    key = work.key(offer)
                    offered[key] = _together(offered[key], offer) if key in offered else offer
    batch: list[Proposal] = []
    touched: set[int] = set()
    for key, offer in offered.items():
        if (*key, offer.edits) not in work.refused and not offer.touched & touched:
            batch.append(offer)
            touched |= offer.touched
    return _adopt(work, batch) if batch else False


def _together(a: Proposal, b: Proposal) -> Proposal:
    """Two offers about the same lines of the original (laps have made several of one) are taken or left together."""
    if a.touched & b.touched:
        return a
    others = tuple(_together(one, other) for one, other in zip(a.others, b.others))
    return replace(a, lines=(*a.lines, *b.lines), edits=(*a.edits, *b.edits), others=others)


def _adopt(work: _Work, batch: list[Proposal]) -> bool:
    """Tries a batch, and what is left of it after each failure; whether anything was taken."""
    taken = False
    first = {work.key(offer): offer for offer in batch}
    queue = [batch]
    while queue:
        batch = queue.pop(0)
        while batch:
            if work.tries >= work.most_tries:
                _refuse(work, batch, "the bound on tries was reached before it could be proved", first)
                break
            failures = _try(work, batch)
            if not failures:
                taken = True
                break
            guilty = _guilty(work, batch, failures)
            if not guilty and len(batch) > 1:
                half = len(batch) // 2
                # the second half is tried on what the first one left
                queue[:0] = [batch[:half], batch[half:]]
                break
            guilty = guilty or list(batch)
            batch = _without(work, batch, guilty, failures, first)
        if taken and queue:
            # texts of lines have moved; what is left is offered again in the next round
            return True
    return taken


def _without(work: _Work, batch: list[Proposal], guilty: list[Proposal], failures: Sequence[Failure],
             first: dict[tuple[str, str, frozenset[int]], Proposal]) -> list[Proposal]:  # fmt: skip
    """The batch with the guilty ones replaced by their next best, or refused."""
    left = []
    for offer in batch:
        if offer not in guilty:
            left.append(offer)
        elif offer.others:
            left.append(replace(offer.others[0], others=offer.others[1:]))
        else:
            _refuse(work, [offer], _reason(work, offer, failures), first)
    return left


def _reason(work: _Work, offer: Proposal, failures: Sequence[Failure]) -> str:
    own = _own_lines(work, offer)
    mine = [f for f in failures if own & set(f.lines)] or list(failures)
    return f"not proved ({mine[0].part}): {mine[0].says}"


def _refuse(work: _Work, offers: list[Proposal], because: str,
            first: dict[tuple[str, str, frozenset[int]], Proposal]) -> None:  # fmt: skip
    """As they stand they are not tried again; when others have changed the program, a mender may offer another."""
    for offer in offers:
        key = work.key(offer)
        work.refused.setdefault((*key, first.get(key, offer).edits), because)


def _own_lines(work: _Work, offer: Proposal) -> frozenset[int]:
    return work.original_lines((*offer.lines, *offer.touched))


def _guilty(work: _Work, batch: list[Proposal], failures: Sequence[Failure]) -> list[Proposal]:
    """Those that touch a line where the proof fails."""
    lines = {line for failure in failures for line in failure.lines}
    exact = [offer for offer in batch if _own_lines(work, offer) & lines]
    if exact or len(batch) == 1:
        return exact
    # a failure behind a change: the nearest change before it
    near: list[Proposal] = []
    for line in sorted(lines):
        before = [
            (max(_own_lines(work, offer)), n) for n, offer in enumerate(batch) if min(_own_lines(work, offer)) <= line
        ]
        if before:
            near.append(batch[max(before)[1]])
    return [offer for offer in batch if offer in near]


def _try(work: _Work, batch: list[Proposal]) -> tuple[Failure, ...]:
    """Takes a batch if it is proved; else what fails."""
    work.tries += 1
    base = len(work.taken)
    edits = [(base + n + 1, edit) for n, offer in enumerate(batch) for edit in offer.edits]
    if not work.taken:
        edits += [(0, edit) for edit in _header(work)]
    try:
        draft = work.case.draft.apply(edits)
    except Collision as problem:
        return (Failure("text", f"two changes want {problem} to read differently"),)
    claims = [*work.claims, *((offer.rule, work.original_lines(offer.lines)) for offer in batch)]
    for _ in range(MOST_REPAIRS + 1):
        try:
            made = run(draft.data, work.name, work.options, work.path)
        except Problem as problem:
            return (Failure("text", f"the copy could not be read: {problem.says}"),)
        if made.failed or made.tables is None:
            return (Failure("findings", "gclint itself failed on the copy"),)
        copy = Case(draft, made, work.original.asked)
        proved = prove(work.original, copy, [*work.taken, *batch], claims)
        if not proved.failures and proved.surface is not None:
            work.case, work.claims, work.surface = copy, claims, proved.surface
            work.taken += batch
            return ()
        better = _repaired(copy, proved.failures, claims, all(offer.words for offer in batch))
        if better is None or work.tries >= work.most_tries:
            break
        work.tries += 1
        draft, ways = better
        batch = [_with_ways(offer) if base + n + 1 in ways else offer for n, offer in enumerate(batch)]
    return proved.failures


def _with_ways(offer: Proposal) -> Proposal:
    return offer if offer.because.endswith(WAYS) else replace(offer, because=offer.because + WAYS)


def _repaired(copy: Case, failures: Sequence[Failure], claims: Sequence[tuple[str, frozenset[int]]],
              anywhere: bool) -> tuple[Draft, set[int]] | None:  # fmt: skip
    """The copy with what new findings ask for, on lines which it has written itself or whose findings it answers
    (`anywhere`: on any, where words alone are changed): words, or ways down that are gentle; and the changes that got
    such ways. None: that is not all."""
    own = frozenset().union(*(lines for _, lines in claims))
    edits: list[tuple[int, Edit]] = []
    ways: set[int] = set()

    def mine(line: int) -> bool:
        return anywhere or bool(copy.draft.changed[line - 1]) or int(copy.draft.anchor[line - 1]) in own

    def writer(line: int) -> int:
        by, anchor = int(copy.draft.by[line - 1]), int(copy.draft.anchor[line - 1])
        return by or next((n for n, (_, lines) in reversed(list(enumerate(claims, 1))) if anchor in lines), 0)

    for failure in failures:
        finding = failure.finding
        if failure.part != "new" or finding is None:
            return None
        if finding.change.set:
            if not all(mine(word.line) for word in finding.change.set):
                return None
            made = put_words(copy, [(word.line, word.word, word.to) for word in finding.change.set])
        else:
            found = [offer for mender in menders(REPAIRS) if mender.name in menders_of(finding.rule)
                     for offer in mender.offers(copy, finding) if isinstance(offer, Proposal)]  # fmt: skip
            made = tuple(edit for offer in found if all(map(mine, offer.touched)) for edit in offer.edits)
            ways |= {writer(edit.line) for edit in made}
            if not made:
                return None
        edits += [(writer(edit.line), edit) for edit in made if (writer(edit.line), edit) not in edits]
    try:
        return (copy.draft.apply(edits), ways) if edits else None
    except Collision:
        return None


# the comment at the top


def _header(work: _Work) -> list[Edit]:
    """A comment behind % and the program number: whose copy it is, and that a person must look at it."""
    case = work.original
    style = case.style
    card = case.setup.controller
    if style.checksums or (style.semicolon and card.state("semicolon-comments") != "does"):
        return []
    name = re.sub(r"[^A-Za-z0-9.-]+", "-", Path(work.name).name)[:40]
    digest = hashlib.sha256(case.draft.data).hexdigest()
    texts = (
        style.comment(f"mended copy of {name}"), style.comment(f"sha256 {digest}"),
        style.comment("a person must look at it before it runs"),
    )  # fmt: skip
    longest = card.line_length or 256
    kept = tuple(text for text in texts if len(text) <= longest)
    line = 1
    while line < min(case.draft.lines, 20):
        own = case.text(line).strip()
        if own == b"" or own.startswith(b"%") or re.match(rb"[Oo:]\s*[0-9]+", own):
            line += 1
        else:
            break
    return [Edit(line, before=kept)]


# the answer


def _mended(work: _Work, name: str, only: Sequence[str]) -> Mended:
    original, copy = work.original, work.case
    data = copy.draft.data if work.taken else None
    changes = tuple(_made(work, number, offer) for number, offer in enumerate(work.taken, 1))
    document = Document(
        gclint=_version(),
        from_=File(name, original.run.checked.fingerprint),
        to=File("", copy.run.checked.fingerprint) if data is not None else None,
        changes=tuple(change for change in changes if change.new_lines or change.lines),
        proof=proof_of(original, copy, work.surface),
        not_mended=_not_mended(work, only),
    )
    return Mended(original, copy, data, work.surface, document, tuple(work.taken))


def _version() -> str:
    from gclint import __version__

    return __version__


def _made(work: _Work, number: int, offer: Proposal) -> Made:
    draft = work.case.draft
    rows = np.flatnonzero(draft.by == number)
    lines = {int(draft.anchor[row]) for row in rows.tolist()} | set(work.claims[number - 1][1] if not len(rows) else ())
    return Made(offer.rule, offer.kind, tuple(sorted(lines)), tuple((rows + 1).tolist()), offer.because)


def proof_of(original: Case, copy: Case, surface: Difference) -> Proof:
    """What the proof says, for people and in the JSON."""
    gone: list[Place] = []
    new: list[Place] = []
    left: list[Place] = []
    for finding in original.findings:
        own = anchors(original, finding)
        if not any(f.rule == finding.rule and own & anchors(copy, f) for f in copy.findings):
            gone.append(Place(finding.rule, finding.grade, finding.line))
    for finding in copy.findings:
        own = anchors(copy, finding)
        known = any(f.rule == finding.rule and own & anchors(original, f) for f in original.findings)
        (left if known else new).append(Place(finding.rule, finding.grade, finding.line))
    finite = math.isfinite(surface.largest)
    return Proof(
        surface=Surface(
            round(surface.largest, 6) if finite else None, Z_TOLERANCE, round(surface.cell, 6), surface.same
        ),
        gone=tuple(gone),
        new=tuple(new),
        left=tuple(left),
        time_s=(original.run.checked.time_s, copy.run.checked.time_s),
        untouched_lines=int(np.count_nonzero(~copy.draft.changed)),
    )


def _not_mended(work: _Work, only: Sequence[str]) -> tuple[NotMended, ...]:
    made = []
    for finding in work.case.findings:
        if only and finding.rule not in only:
            continue
        lines = tuple(sorted(anchors(work.case, finding)))
        made.append(NotMended(finding.rule, lines, _why_left(work, finding, lines)))
    return tuple(made)


def _why_left(work: _Work, finding: Finding, lines: Sequence[int]) -> str:
    for (rule, _, own, _), because in work.refused.items():
        if rule == finding.rule and own & set(lines):
            return because
    for line in lines:
        if (finding.rule, line) in work.left_alone:
            return work.left_alone[finding.rule, line]
    return left_to_people(finding.rule) or "gclint has no mender for this: what to do is for a person to decide"


__all__ = ["GRAVE", "Mended", "Proved", "compare_surfaces", "fails", "mend", "proof_of"]
