from gclint.columns import Bytes, Floats, Ints, Longs
from gclint.faults import FaultRows

def measure(data: bytes) -> tuple[int, int, int]: ...
def scan(
    text: bytes,
    data: bytes,
    line_start: Longs,
    block_line: Ints,
    block_word: Ints,
    block_flags: Bytes,
    block_number: Ints,
    word_letter: Bytes,
    word_value: Floats,
    word_start: Ints,
    word_end: Ints,
    comment_line: Ints,
    comment_start: Ints,
    comment_end: Ints,
    faults: FaultRows,
) -> tuple[int, int, int, int]: ...
