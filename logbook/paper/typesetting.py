"""Typesetting: a template and its files in, the bytes of an archivable and accessible PDF out.

PDF/A-2a keeps it readable for decades, PDF/UA-1 readable for everybody. The same input gives the same bytes: the
time printed in the file is given by the caller. User words come as data and are never read as markup.
"""

from __future__ import annotations

from collections.abc import Mapping
from importlib.resources import files
from pathlib import Path
from tempfile import TemporaryDirectory

import typst

from logbook.mistake import Broken, Mistake
from logbook.paper import face

STANDARDS = ["a-2a", "ua-1"]
SHARED = "marks.typ"


def pdf(template: str, carried: Mapping[str, bytes], seconds: int) -> bytes:
    """`template` is a file of this package; `carried` are the files it reads; `seconds` since 1970 is its date.

    The typesetter sees one temporary folder and nothing else. Raises Broken `report.typesetting` with its words.
    """
    with TemporaryDirectory(prefix="typeset-") as place:
        root = Path(place)
        for name, content in {**carried, **{name: (files(__package__) / name).read_bytes() for name in (template, SHARED)}}.items():
            (root / name).parent.mkdir(exist_ok=True)
            (root / name).write_bytes(content)
        try:
            return typst.compile(
                root / template, root=root, format="pdf", font_paths=[face.folder()], ignore_system_fonts=True,
                pdf_standards=STANDARDS, timestamp=seconds,
            )  # fmt: skip
        except (typst.TypstError, RuntimeError) as error:
            raise Broken(Mistake("report.typesetting", template, {"why": str(error)[:400]})) from error
