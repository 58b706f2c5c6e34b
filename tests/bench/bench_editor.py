"""An editor's session: from a changed word to new findings, against the check itself, over a 500-line program.

python tests/bench/bench_editor.py [--changes N]

The server is a process of its own, spoken to as an editor does; the check is the library's, warm, of the same texts.
"""

from __future__ import annotations

import argparse
import asyncio
import statistics
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))
sys.path.insert(0, str(Path(__file__).parent))
from bench_folder import JOB, SHOP
from bench_whole import report
from make_program import finishing_program

from gclint.check import run
from gclint.setup.declare import Options
from tests.editor.client import editing

LINES = 500


def texts(changes: int) -> list[str]:
    """The program with another feed each time."""
    first = finishing_program(LINES).decode()
    at = first.index("F")
    end = next(n for n in range(at + 1, len(first)) if not (first[n].isdigit() or first[n] == "."))
    return [f"{first[:at]}F{1000 + n}{first[end:]}" for n in range(changes + 1)]


async def session(home: Path, written: list[str]) -> list[float]:
    (home / "part.nc").write_text(written[0])
    took = []
    async with editing(home) as editor:
        editor.open("part.nc")
        await editor.diagnostics("part.nc")
        for text in written[1:]:
            await asyncio.sleep(0.3)
            begun = time.perf_counter()
            editor.replace("part.nc", text)
            await editor.diagnostics("part.nc")
            took.append(time.perf_counter() - begun)
    return took


def main() -> int:
    ask = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    ask.add_argument("--changes", type=int, default=15)
    options, _ = ask.parse_known_args()
    written = texts(options.changes)
    with tempfile.TemporaryDirectory() as temporary:
        home = Path(temporary)
        (home / "shop.toml").write_text(SHOP)
        (home / "job.toml").write_text(JOB.format(material="beech"))
        took = statistics.median(asyncio.run(session(home, written)))
        path, alone = str(home / "part.nc"), []
        for text in written:
            begun = time.perf_counter()
            run(text.encode(), path, Options(), path)
            alone.append(time.perf_counter() - begun)
    check = statistics.median(alone[1:])
    met = report(
        f"a changed word of {LINES} lines until new findings, against the check", took / check, 5, False,
        f"{took * 1000:.0f} ms and {check * 1000:.0f} ms",
    )
    return 0 if met else 1


if __name__ == "__main__":
    raise SystemExit(main())
