"""Names every form of report, and what writes it."""

from __future__ import annotations

# Every form, with the file and the class of gclint/report/machine that writes it; "": it is written for one reader or
# as one document, by gclint/cli/writers.py.
FORMS = {
    "text": "", "lines": "lines_out.Lines", "json": "", "sarif": "sarif_out.Sarif", "junit": "junit_out.Junit",
    "annotations": "annotations_out.Annotations", "quality": "quality_out.Quality", "page": "",
}  # fmt: skip
