"""A corrected copy of a program, written only with the proof that it cuts the same part."""

from gclint.callable_module import make_callable

make_callable(__name__)  # gclint.mend("tide-ring.nc"): see gclint/library.py
