"""Facts as people read them: a label and a text, from the JSON of a fact, in the reader's language.

Works on the contract's JSON shapes, so that a page, a report and a phone print the same words.
"""

from __future__ import annotations

import re

from logbook import facts, measure
from logbook.wording import has, say


# what no page can carry or that turns the words after it around: controls, marks of direction, halves of signs (Unicode 16, Cc, Cf, Cs)
_NO_SIGN = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ud800-\udfff\ufffe\uffff]")


def legible(value: object) -> object:
    """A stranger's text as a page prints it: signs that are no signs become an empty square, one for one. What is no text stays."""
    if isinstance(value, str) and _NO_SIGN.search(value):
        return type(value)(_NO_SIGN.sub("\u25a1", value))
    return value


def name(fact_name: str, language: str) -> str:
    key = f"facts.name.{fact_name}"
    return say(key, language) if has(key, language) else fact_name


def word(value: str, language: str) -> str:
    """A choice value as people read it; a value without a text (a closure's mark) stands as it is."""
    key = f"facts.value.{value}"
    return say(key, language) if has(key, language) else value


def kind(value: str | None, language: str) -> str:
    key = f"facts.kind.{value}"
    return say(key, language) if value and has(key, language) else ""


def number(value, exact=None) -> str:
    """A length as the trade writes it: 12-1/2."""
    return measure.printed(measure.from_json(value, exact))


def move(one: dict, language: str) -> str:
    """One side that moves; unsaid members stay unsaid."""
    by = None if one["by"] is None else number(one["by"])
    back = None if one["back"] is None else number(one["back"])
    if by is None:
        return say("facts.back-only", language, back=back or "?")
    side = word(one["side"], language) if one["side"] else "?"
    way = word(one["way"], language) if one["way"] else ""
    key = "facts.move-no-back" if back is None else "facts.move"
    return " ".join(say(key, language, side=side, way=way, by=by, back=back).split())


def value(fact_name: str, given, exact=None, language: str = "en") -> str:
    """The text of a fact's JSON value, with its unit."""
    row = facts.BY_NAME[fact_name]
    if given is None:
        return ""
    match row.shape:
        case "flag":
            return say("facts.yes" if given else "facts.no", language)
        case "choice":
            return kind(given, language) if fact_name == "kind" else word(given, language)
        case "size":
            one, other = (number(g, e) for g, e in zip(given, exact or (None, None)))
            return say("facts.size", language, one=one, other=other)
        case "slope":
            rise, run = (number(g, e) for g, e in zip(given, exact or (None, None)))
            return say("facts.slope", language, rise=rise, run=run)
        case "moves":
            return "; ".join(move(one, language) for one in given)
        case "sides" | "marks":
            return ", ".join(word(side, language) for side in given) or say("facts.nothing", language)
        case "length" | "angle" | "number":
            unit = row.unit or ""
            unit = "in." if unit == "in" and language == "en" else unit
            return number(given, exact) + ("" if unit == "°" else " ") + unit
    return str(given)


def fact(doc: dict, language: str) -> tuple[str, str]:
    """(label, text) of a fact's JSON."""
    return name(doc["name"], language), value(doc["name"], doc["value"], doc.get("exact"), language)


def fitting(found: list[dict], language: str, of_piece: dict | None = None) -> str:
    """A heading of a fitting's facts: `transition 7`, or what there is. `of_piece`: what its piece is, where these facts leave it unsaid."""
    said = (of_piece or {}) | {doc["name"]: doc["value"] for doc in found}
    parts = (kind(said.get("kind"), language), str(said.get("mark") or ""))
    return " ".join(part for part in parts if part) or say("facts.piece-no-mark", language)


def entry(doc: dict, language: str) -> str:
    """The heading of a note's fitting: a correction that names a mark alone is headed like the piece it amends."""
    return fitting(doc["facts"], language, doc.get("of_piece"))
