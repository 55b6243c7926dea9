"""Tags: what stands in the code on a fitting, and the sheet they are cut from.

The text is `duct-tag:1:JOB:MARK`, JOB the job's eight letters and MARK percent-encoded. A tag identifies a piece;
it is too small to measure anything by.
"""

from __future__ import annotations

import html
from collections.abc import Iterable
from dataclasses import dataclass
from urllib.parse import quote, unquote

import segno

from logbook.facts import bare_mark
from logbook.wording import say

EDITION = "duct-tag:1"
INCHES = 2  # side of the printed code, quiet margin included


@dataclass(frozen=True)
class Tag:
    job: str
    mark: str


def text(job: str, mark: str) -> str:
    return f"{EDITION}:{job}:{quote(mark, safe='')}"


def parse(words: str) -> Tag | None:
    """The tag in a code's text; None for any other code (a carton, a machine)."""
    parts = words.split(":")
    if len(parts) != 4 or ":".join(parts[:2]) != EDITION or not parts[2] or not parts[3]:
        return None
    return Tag(parts[2], unquote(parts[3]))


def names(words: Iterable[str], job: str, mark: str) -> bool:
    """Whether one of the codes is the tag of this piece of this job."""
    found = (parse(one) for one in words)
    return any(tag is not None and tag.job == job and bare_mark(tag.mark) == bare_mark(mark) for tag in found)


def code_svg(job: str, mark: str) -> str:
    """The code alone, two inches square, as SVG. Error correction Q: a quarter of it may be dirt or glue."""
    code = segno.make(text(job, mark), error="q", micro=False)
    return code.svg_inline(scale=1, border=4, omitsize=True, svgclass="code", lineclass=None)


def sheet(job: str, rows: Iterable[tuple[str, str | None]], language: str) -> str:
    """A page to print: one tag a (mark, run), large letters over its code, between cut lines."""
    cells = []
    for mark, run in rows:
        of_run = f"<p>{html.escape(say('photos.tags.run', language, run=run))}</p>" if run else ""
        name = html.escape(say("photos.tags.alt", language, mark=mark))
        cells.append(
            f'<li><h2>{html.escape(mark)}</h2>{of_run}<div role="img" aria-label="{name}">{code_svg(job, mark)}</div></li>'
        )
    title, cut = (html.escape(say(f"photos.tags.{key}", language)) for key in ("title", "cut"))
    style = (
        "@page{margin:.5in}body{font-family:sans-serif;margin:0}ul{display:flex;flex-wrap:wrap;padding:0;margin:0;list-style:none}"
        f"li{{border:1px dashed #555;width:2.3in;padding:.1in 0;text-align:center;break-inside:avoid}}h2{{font-size:40pt;margin:0}}"
        f"p{{margin:0}}.code{{width:{INCHES}in;height:{INCHES}in}}"
    )
    return (
        f'<!doctype html><html lang="{language}"><head><meta charset="utf-8"><title>{title}</title><style>{style}</style></head>'
        f"<body><h1>{title}</h1><p>{cut}</p><ul>{''.join(cells)}</ul></body></html>"
    )
