"""The made-up run that these tests report on."""

from tests.made_up_run import make_finding, make_run, tables

__all__ = ["make_finding", "make_run", "tables"]
