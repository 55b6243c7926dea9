"""The pages of a closeout package that people open first: cover, start page, all words, how to check."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping
from datetime import datetime
from html import escape
from importlib.resources import files
from typing import TYPE_CHECKING

from jinja2 import Environment, StrictUndefined

from logbook import labels
from logbook.day import moments
from logbook.handover import seen
from logbook.handover.coverage import Coverage
from logbook.paper import face, typesetting
from logbook.wording import say

if TYPE_CHECKING:
    from logbook.paper.package import Built, Closeout

MOST_ON_COVER = 40  # lines of a list on the cover; the register has them all
CHECK_STEPS = ("unpack", "folder", "command", "answer", "windows", "tags", "count", "journal", "signed", "spot", "ours")


def cover(closeout: Closeout, built: Built, found: Coverage, flagged: Iterable[Mapping]) -> dict:
    """What cover and start page say, in order: missing, open, what is inside, who signed, how to check."""
    language = closeout.language

    def text(key: str, **values) -> str:
        return say(f"handover.{key}", language, **values)

    missing = [[row.mark, row.run or "–", labels.kind(row.kind, language), row.size] for row in found.missing or ()]
    open_rows = [[one["what"], one["run"] or "–", say(f"report.verdict.{one['verdict']}", language), one["says"], say(f"facts.stands.{one['stands'].replace(' ', '-')}", language)] for one in flagged if one["stands"] in ("open", "in hand")]
    lead_missing = text("no-schedule") if found.missing is None else text("missing-of", missing=len(missing), planned=found.planned)
    lead_open = text("open-of", open=len(open_rows)) if open_rows else text("nothing-open")
    inside = [
        [text(f"inside.{name}"), str(number)]
        for name, number in (
            ("pieces", built.pieces), ("notes", built.notes), ("not-understood", built.not_understood), ("photos", built.photos - built.photos_not_carried),
            ("photos-not-carried", built.photos_not_carried), ("leak-records", built.leak_records), *([("voices", built.voices)] if closeout.voices else []), ("days", len(closeout.days)), ("journal", built.journal["seq"]),
        )
    ]  # fmt: skip
    days = [
        [moments.day(one["date"], language), "; ".join(f"{by['by']}, {by.get('role') or ''}, {moments.full(by['at'], language)}" for by in one["signatures"]) or text("nobody-signed")]
        for one in closeout.days
    ]  # fmt: skip
    return {
        "language": language, "title": text("title"), "job": closeout.job.get("name") or closeout.job["id"],
        "lines": [line for line in (closeout.job.get("place") or "", *(f"{role}: {name}" for role, name in (closeout.job.get("roles") or {}).items())) if line],
        "as_said": say("report.as-said", language), "banner": text("banner"), "short": say("report.pdf.short", language),
        "page": say("report.page", language, page="{page}", pages="{pages}"),
        "document_title": f"{text('title')}, {closeout.job.get('name') or closeout.job['id']}",
        "reviewed": "" if language == "en" else say("report.reviewed", language),
        "sections": [
            _section(text("section.missing"), lead_missing, [text("column.mark"), text("column.run"), text("column.kind"), text("column.size")], missing, language),
            _section(text("section.open"), lead_open, [text("column.fitting"), text("column.run"), text("column.verdict"), text("column.finding"), text("column.stands")], open_rows, language),
            _section(text("section.seen"), "", [text("column.what"), text("column.found")], seen.cover_rows(closeout.seen, language), language),
            _section(text("section.inside"), "", [text("column.what"), text("column.number")], inside, language),
            _section(text("section.days"), "", [text("column.day"), text("column.signed")], days, language),
        ],
        "defer": [say(f"report.defer.{name}", language) for name in ("compared", "approval", "licensed", "habit", "memory")],
        "defer_title": say("report.read-limits", language),
        "check_title": text("check.title"), "check": text("check.short", base=built.base),
        "journal": say("report.journal", language, seq=built.journal["seq"], hash=built.journal["hash"]),
        "sound": text("voices-asked", words=closeout.voices) if closeout.voices else text("sound-not-carried"),
        "sound_title": text("section.voices" if closeout.voices else "section.not-carried"),
    }  # fmt: skip


def _section(title: str, lead: str, columns: list[str], rows: list[list[str]], language: str) -> dict:
    more = len(rows) - MOST_ON_COVER
    note = say("handover.and-more", language, number=more) if more > 0 else ""
    return {"title": title, "lead": lead, "columns": columns, "rows": rows[:MOST_ON_COVER], "more": note}


def pdf(told: Mapping, at: str | None) -> bytes:
    seconds = int(datetime.fromisoformat(at).timestamp()) if at else 0
    return typesetting.pdf("cover.typ", {"cover.json": json.dumps(face.printable_tree(told), ensure_ascii=False).encode()}, seconds)


def index(told: Mapping, rows: Iterable[Mapping], photos: Mapping[str, list[str]], closeout: Closeout, made: str) -> Iterator[bytes]:
    """The start page, a chunk at a time. Links are relative: it opens from the folder."""
    language = closeout.language
    names = {name: say(f"handover.link.{name}", language) for name in ("cover", "check", "register", "sheet", "words", "rules", "journal", "report", "leaks", "spot", "walk", "decisions", "not-understood")}
    columns = [say(f"handover.column.{name}", language) for name in ("fitting", "run", "size", "said", "looked", "measured", "open", "photos")]
    verdicts = {name: say(f"report.verdict.{name}", language) for name in ("meets", "departs", "unsaid", "unclear")}
    documents = [(place, place.split("/", 1)[1]) for place, _ in closeout.files if place.startswith("documents/")]
    titles = {name: say(f"handover.section.{name}", language) for name in ("register", "documents", "start")}
    stream = _template("package.html").stream(
        c=told, rows=rows, photos=photos, days=closeout.days, names=names, columns=columns, verdicts=verdicts, documents=documents, titles=titles,
        kind=lambda kind: labels.kind(kind, language), day=lambda iso: moments.day(iso, language), photo=say("handover.photo", language), made=made,
    )  # fmt: skip
    stream.enable_buffering(200)
    yield from (chunk.encode() for chunk in stream)


def words_page(closeout: Closeout, notes: Iterable[Mapping]) -> Iterator[bytes]:
    """Every note in the order it came, with its words and the digests of its sound."""
    language = closeout.language
    stream = _template("words.html").stream(
        language=language, title=say("handover.words-title", language), banner=say("handover.banner", language), as_said=say("report.as-said", language), notes=notes,
        full=lambda iso: moments.full(iso, language), sound=say("handover.sound-digest", language), state=lambda state: say(f"facts.state.{state}", language),
    )  # fmt: skip
    stream.enable_buffering(100)
    yield from (chunk.encode() for chunk in stream)


def how_to_check_text(base: str, language: str) -> str:
    steps = "\n".join(f"{at}. {say(f'handover.check.{step}', language, base=base)}" for at, step in enumerate(CHECK_STEPS, 1))
    return f"{say('handover.check.title', language)}\n\n{say('handover.check.lead', language)}\n\n{steps}\n\n{say('handover.check.limits', language)}\n"


def how_to_check(base: str, language: str) -> Iterator[bytes]:
    """A page in plain words, for somebody who has never seen this software."""
    other = "es" if language == "en" else "en"
    parts = []
    for one in (language, other):
        steps = "".join(f"<li>{_commands(say(f'handover.check.{step}', one, base=base))}</li>" for step in CHECK_STEPS)
        parts.append(
            f'<section lang="{one}"><h1>{escape(say("handover.check.title", one))}</h1><p>{escape(say("handover.check.lead", one))}</p><ol>{steps}</ol>'
            f"<p>{escape(say('handover.check.limits', one))}</p></section>"
        )
    style = "@font-face{font-family:Face;src:url(face/AtkinsonHyperlegibleNext-Regular.ttf)}body{font:17px/1.5 Face,sans-serif;max-width:44rem;margin:2rem auto;padding:0 1rem;color:#1b2733}li{margin:.6rem 0}code{font:.92em/1.4 ui-monospace,Consolas,monospace;background:#f4f1ea;padding:.1em .3em;overflow-wrap:anywhere}"
    yield f'<!doctype html><html lang="{language}"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>{escape(say("handover.check.title", language))}</title><style>{style}</style><main>{"".join(parts)}</main></html>'.encode()


def _commands(text: str) -> str:
    """What stands between backticks is typed as it stands."""
    return "".join(f"<code>{escape(part, quote=False)}</code>" if at % 2 else escape(part, quote=False) for at, part in enumerate(text.split("`")))


def _template(name: str):
    environment = Environment(autoescape=True, undefined=StrictUndefined, trim_blocks=True, lstrip_blocks=True, finalize=labels.legible)
    return environment.from_string((files(__package__) / name).read_text(encoding="utf-8"))
