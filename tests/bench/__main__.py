"""Every benchmark, one after the other:  python tests/bench [--lines N]"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path


def main() -> int:
    failed = False
    for script in sorted(Path(__file__).parent.glob("bench_*.py")):
        print(f"== {script.name}", flush=True)
        failed |= subprocess.run([sys.executable, str(script), *sys.argv[1:]], check=False).returncode != 0
    return int(failed)


if __name__ == "__main__":
    raise SystemExit(main())
