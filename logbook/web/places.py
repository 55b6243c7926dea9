"""What goes out to somebody who may not see where photos were taken: documents and pictures without the place.

The original stays as it was handed in. Its copy is the same picture without camera data; of a kind whose camera data
cannot be cut out, the small copy stands for it, which was drawn anew.
"""

from __future__ import annotations

import io
from pathlib import Path

from flask import jsonify

from logbook.handover import stripping
from logbook.web import guard


def told(document):
    """A document of notes or pieces as JSON."""
    return jsonify(document if guard.sees_places() else stripping.without_place(document))


def copy(original: Path) -> io.BytesIO | None:
    """The picture without camera data; None where it cannot be cut out."""
    content = stripping.stripped(original.read_bytes())
    return None if content is None else io.BytesIO(content)
