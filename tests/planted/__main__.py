"""Prints recall and wrong alarms for each rule:  python -m tests.planted [--seed N] [RULE or PLANTER...]

Or, in the programs of a folder that nobody here wrote, recall and causes named for each kind of fault:
    python -m tests.planted --corpus FOLDER [--every N] [--each N] [--seed N] [KIND...]

Or applies the advice of every finding, in the samples or in such a folder, and counts what is gone and what came:
    python -m tests.planted --advice [--corpus FOLDER] [--every N] [--seed N] [RULE...]
"""

from __future__ import annotations

import argparse
import resource
import sys
from pathlib import Path

from tests.planted import advised, more_strangers, strangers
from tests.planted.harness import ANYWHERE, EACH, Result, all_plants, tally
from tests.planted.plan import CANNOT_BE_PLANTED, bases, planters


def main() -> int:
    asked = argparse.ArgumentParser(prog="python -m tests.planted", description="Plants faults and counts them.")
    asked.add_argument("only", nargs="*", help="rules or planters (with --corpus kinds of fault); all unless named")
    asked.add_argument("--seed", type=int, default=0, help="other places and amounts are drawn for another number")
    asked.add_argument("--each", type=int, help="plants of one kind in one program, at most")
    asked.add_argument("--corpus", type=Path, metavar="FOLDER", help="plants in the programs of a folder instead")
    asked.add_argument("--every", type=int, default=1, help="takes each N-th program of that folder")
    asked.add_argument("--advice", action="store_true", help="applies what findings advise instead")
    told = asked.parse_args()
    if told.advice:
        return advised.table(told.corpus, tuple(told.only), told.seed, told.every)
    if told.corpus is not None:
        return of_folder(asked, told)
    chosen = [p for p in planters() if not told.only or p.rule in told.only or p.name in told.only]
    tried = all_plants(bases(), chosen, told.each or EACH, told.seed)
    print(f"{'rule':<28}{'planted':>8}{'in':>4}{'found':>7}{'recall':>8}{'wrong alarms':>14}")
    for rule, row in sorted(tally(tried).items()):
        share = f"{100 * row.found / row.planted:.0f} %" if row.planted else "-"
        print(f"{rule:<28}{row.planted:>8}{len(row.programs):>4}{row.found:>7}{share:>8}{row.alarms:>14}")
    print()
    for result in tried:
        if not result.found or result.extra:
            tell(result)
    for rule, reason in CANNOT_BE_PLANTED.items():
        print(f"not planted: {rule}: {reason}")
    found = sum(result.found for result in tried)
    wrong = sum(bool(result.extra) for result in tried)
    spent = [resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)]
    print(
        f"{len(tried)} planted programs from {len(bases())} clean ones: {found} found "
        f"({100 * found / max(len(tried), 1):.1f} %), {wrong} with a finding that nothing explains; "
        f"{sum(each.ru_utime + each.ru_stime for each in spent):.0f} s of processor time"
    )
    return int(found < 0.99 * len(tried) or wrong > 0)


assert more_strangers.KINDS is strangers.KINDS  # they are told with the others


def of_folder(asked: argparse.ArgumentParser, told: argparse.Namespace) -> int:
    kinds = {what.name for what in strangers.KINDS}
    if not told.corpus.is_dir():
        asked.error(f"there is no folder {told.corpus}")
    if unknown := sorted(set(told.only) - kinds):
        asked.error(f"no kind of fault is named {', '.join(unknown)}; known: {', '.join(sorted(kinds))}")
    if told.every < 1:
        asked.error("--every takes a number from 1")
    return strangers.table(told.corpus, tuple(told.only), told.each or 1, told.seed, told.every)


def tell(result: Result) -> None:
    low, high = result.plant.where
    place = "anywhere" if result.plant.where == ANYWHERE else f"line {low}" + (f" to {high}" * (high > low))
    print(f"{result.base}: {result.plant.says} ({result.planter.name}, {place})")
    if not result.found:
        print(f"    {result.planter.rule} is not found")
    for finding in result.extra:
        print(f"    unexplained: {finding.rule}, line {finding.line}, {finding.worst_line}: {finding.happens}")


if __name__ == "__main__":
    sys.exit(main())
