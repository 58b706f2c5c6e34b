from gclint.check import Unreadable as Unreadable
from gclint.library import Mended as Mended
from gclint.library import check as check
from gclint.library import failing as failing
from gclint.library import mend as mend
from gclint.library import window as window
from gclint.problem import Problem as Problem
from gclint.report.answers.window_out import WindowOut as Window  # noqa: F401
from gclint.tables.finding import Checked as Checked
from gclint.tables.finding import Finding as Finding

__version__: str
HOME: str
