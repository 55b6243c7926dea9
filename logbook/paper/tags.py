"""Tags as a print: a sheet of them to cut out and stick on the fittings."""

from __future__ import annotations

import json
from collections.abc import Sequence

from logbook.paper import face, typesetting
from logbook.photos import tags
from logbook.wording import say


def pdf(job: str, name: str, wanted: Sequence[tuple[str, str | None]], language: str) -> bytes:
    """PDF/A-2a and PDF/UA-1 on letter paper, nine tags a page. `wanted`: (mark, run), as people write them.

    The same marks give the same bytes. The codes are 2 in. square where the print is at full size.
    """
    twice = tags.said_twice(wanted)
    lines = [say("tags.cut", language), say("tags.count", language, count=len(wanted))]
    lines += [say("tags.twice", language, marks=", ".join(twice))] if twice else []
    doc = {
        "language": language,
        "title": say("tags.title", language),
        "foot": f"{name} · {job}" if name else job,
        "lines": lines,
        "tags": [
            {
                "mark": mark,
                "letters": len(mark),
                "run": say("tags.run", language, run=run) if run else "",
                "alt": say("tags.alt", language, mark=mark),
                "code": tags.code_svg(job, mark),
            }
            for mark, run in wanted
        ],
    }
    return typesetting.pdf("tags.typ", {"tags.json": json.dumps(face.printable_tree(doc), ensure_ascii=False).encode()}, 0)
