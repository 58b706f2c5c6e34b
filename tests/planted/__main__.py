"""Prints recall and wrong alarms for each rule:  python -m tests.planted [RULE...]"""

from __future__ import annotations

import sys
import time

from tests.planted.harness import ANYWHERE, tally
from tests.planted.plan import bases, planters, results, unplanted


def main(*only: str) -> int:
    begun = time.process_time()
    chosen = [p for p in planters() if not only or p.rule in only or p.name in only]
    tried = list(results(chosen))
    counted = tally(tried)
    print(f"{'rule':<28}{'planted':>8}{'in':>4}{'found':>7}{'recall':>8}{'wrong alarms':>14}")
    for rule, row in sorted(counted.items()):
        share = f"{100 * row.found / row.planted:.0f} %" if row.planted else "-"
        print(f"{rule:<28}{row.planted:>8}{len(row.programs):>4}{row.found:>7}{share:>8}{row.alarms:>14}")
    print()
    for result in tried:
        if not result.found or result.extra:
            low, high = result.plant.where
            place = "anywhere" if result.plant.where == ANYWHERE else f"line {low}" + (f" to {high}" * (high > low))
            print(f"{result.base}: {result.plant.says} ({result.planter.name}, {place})")
            if not result.found:
                print(f"    {result.planter.rule} is not found")
            for finding in result.extra:
                print(f"    unexplained: {finding.rule}, line {finding.line}: {finding.happens}")
    if not only:
        left = sorted(unplanted())
        print(f"no planter for {len(left)} rules: {', '.join(left)}")
    found = sum(result.found for result in tried)
    wrong = sum(bool(result.extra) for result in tried)
    print(
        f"{len(tried)} planted programs from {len(bases())} clean ones: {found} found "
        f"({100 * found / max(len(tried), 1):.1f} %), {wrong} with a finding that nothing explains; "
        f"{time.process_time() - begun:.0f} s of processor time"
    )
    return int(found < 0.99 * len(tried) or wrong > 0)


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
