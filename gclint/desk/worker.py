"""The process in which the desk's work is done: python -m gclint.desk.worker ROOT, spoken to by `pool.py`.

A message is four bytes of length and JSON: what is to be done with what, answered by a result or by what is wrong.
"""

from __future__ import annotations

import json
import os
import struct
import sys
from pathlib import Path
from typing import IO, Any

LENGTH = struct.Struct("<I")


def receive(pipe: IO[bytes]) -> Any:
    """A message; None where nobody is at the other end."""
    head = _all(pipe, LENGTH.size)
    if head is None:
        return None
    body = _all(pipe, LENGTH.unpack(head)[0])
    return None if body is None else json.loads(body)


def send(pipe: IO[bytes], message: Any) -> None:
    body = json.dumps(message, ensure_ascii=True).encode("ascii")
    pipe.write(LENGTH.pack(len(body)) + body)
    pipe.flush()


def _all(pipe: IO[bytes], size: int) -> bytes | None:
    parts = []
    while size:
        part = pipe.read(size)
        if not part:
            return None
        parts.append(part)
        size -= len(part)
    return b"".join(parts)


def main() -> None:
    import signal

    signal.signal(signal.SIGINT, signal.SIG_IGN)  # the desk hears it and ends its workers
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    told = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)  # nothing that a library prints gets between the messages
    from gclint.desk.work import WORK
    from gclint.internal_fault import place_of
    from gclint.problem import Problem

    root = Path(sys.argv[1])
    while (asked := receive(sys.stdin.buffer)) is not None:
        try:
            answer: dict[str, Any] = {"done": WORK[asked["work"]](root, **asked["given"])}
        except Problem as problem:
            answer = {
                "problem": problem.says, "path": problem.path, "line": problem.line, "column": problem.column,
                "kind": type(problem).__name__, "fields": getattr(problem, "fields", None),
            }  # fmt: skip
        except MemoryError:
            answer = {"problem": "there is not enough memory for this", "kind": "Memory"}
        except OSError as fault:
            answer = {"problem": f"the disk refuses: {fault.strerror or fault}", "kind": "Disk"}
        except Exception as fault:
            answer = {"problem": f"gclint itself failed ({place_of(fault)}); please report this", "kind": "Internal"}
        send(told, answer)


if __name__ == "__main__":
    main()
