"""The day report as HTML and as PDF, from the document that `logbook/day.py` made.

    html(document, copies) -> bytes      one file that opens anywhere: face, drawings and photos inside
    pdf(document, copies) -> bytes       PDF/A-2a and PDF/UA-1; the same document gives the same bytes

`copies` maps the SHA-256 of a photo to the bytes of its small JPEG without EXIF; what is not in it is named, not shown.
"""

from __future__ import annotations

import json
from base64 import b64encode
from collections.abc import Mapping
from datetime import datetime
from importlib.resources import files

from jinja2 import Environment, StrictUndefined

from logbook import labels
from logbook.paper import face, typesetting


def pdf(document: Mapping, copies: Mapping[str, bytes]) -> bytes:
    """Raises Broken `report.typesetting`."""
    shown = face.printable_tree(document)
    drawings = [
        one["svg"]
        for report in shown["reports"]
        for one in (
            *(sheet["drawing"] for sheet in report["fittings"]["sheets"]),
            *(sheet["drawing"] for sheet in report["leak_tests"]["sheets"]),
            *report["limits"]["plots"],
            *report["runs"]["plots"],
        )
    ]
    used = _photos(document)
    carried = {f"d/{at}.svg": svg.encode() for at, svg in enumerate(drawings)}
    carried |= {f"p/{sha256}.jpg": copies[sha256] for sha256 in used if sha256 in copies}
    carried["report.json"] = json.dumps(shown, ensure_ascii=False).encode()
    carried["photos.json"] = json.dumps({sha256: True for sha256 in used if sha256 in copies}).encode()
    return typesetting.pdf("day.typ", carried, int(datetime.fromisoformat(document["made_at"]).timestamp()))


def html(document: Mapping, copies: Mapping[str, bytes]) -> bytes:
    environment = Environment(autoescape=True, undefined=StrictUndefined, trim_blocks=True, lstrip_blocks=True, finalize=labels.legible)
    template = environment.from_string((files(__package__) / "day.html").read_text(encoding="utf-8"))
    faces = {name: _data("font/ttf", (face.folder() / name).read_bytes()) for name in face.FILES}
    shots = {sha256: _data("image/jpeg", copies[sha256]) for sha256 in _photos(document) if sha256 in copies}
    return template.render(whole=document, shots=shots, faces=faces).encode()


def _photos(document: Mapping) -> list[str]:
    return sorted({photo["sha256"] for report in document["reports"] for sheet in report["fittings"]["sheets"] for photo in sheet["photos"]})


def _data(kind: str, content: bytes) -> str:
    return f"data:{kind};base64,{b64encode(content).decode()}"
