"""The words that say the tape is on without "taped": "three inch tape, rubbed", "the tape went on good", "181A-P, rubbed", "just tape".

What only stands on the truck, or is to come, closes nothing.
"""

from __future__ import annotations

from logbook.reading.clauses.claims import Found
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of

_BESIDE = ("STAPLES", "STAPLED", "RUBBED", "RUB", "MARK181", "CLOSURE", "LEN", "FRAC", "WIDE", "WITH", "SEALED", "C_MASTIC", "REPAIRED", "METHOD", "DAMAGE")
_THEN = (*_BESIDE, "ON", "AROUND", "IN_PLACE", "SIDES_ALL", "SIDE", "BOTH", "ALL")
_PASSED = ("COMMA", "AND", "DET", "OF", "BE", "FILLER", "HEDGE", "NUM", "IT", "AROUND", "OVER", "WIPED", "TRIMMED", "SIDE", "SIDE_WORD")


def laid(found: Found):
    """The bare word "tape" says taped only beside what is done with it: laid on something, of a width, with staples.

    "Grabbed the tape" and a lone "tape" say nothing was closed.
    """
    row, at = found.row, found.at("w")
    stop = next((k for k in range(at + 1, row.sentence_end(at + 1)) if row.items[k].concept in ("ON", "BUT")), row.sentence_end(at + 1))  # "tape's on but I haven't rubbed it yet"
    if any(item.concept == "YET" for item in row.items[at + 1 : stop]) and any(item.concept in ("NO", "NOT", "NOT_DONE") for item in row.items[at + 1 : stop]):
        return  # "staples, tape, rub: none of it done yet"
    if [item.concept for item in row.items[at + 1 : at + 3]] == ["TO", "OTHER"]:
        return  # "I ran the tape to the guys upstairs"
    behind, ahead = at - 1, at + 1
    while behind >= 0 and at - behind <= 4 and row.items[behind].concept in _PASSED and row.items[behind].value is None and not lays(row, behind):
        behind -= 1
    while ahead < len(row.items) and ahead - at <= 4 and row.items[ahead].concept in ("COMMA", "AND", "DET", "OF", "BE", "FILLER", "HEDGE", "IT"):
        ahead += 1
    if row.words(max(0, at - 2), at).lower().endswith(("got its", "has its", "have their", "got their", "has all its", "got all its")):
        yield found.claim("taped", True, group="w", weak=True)
        return
    before = behind >= 0 and at - behind <= 4 and (row.items[behind].concept in (*_BESIDE, "NUM") or lays(row, behind))
    after = ahead < len(row.items) and ahead - at <= 4 and (row.items[ahead].concept in _THEN or _bare_width(row, ahead) or _over_a_joint(row, ahead))
    if (before and not row.is_blank(behind)) or (after and not row.is_blank(ahead)):
        yield found.claim("taped", True, group="w", weak=True)


def _over_a_joint(row: Row, at: int) -> bool:
    """ "Just tape over the joint"."""
    behind = [item.concept for item in row.items[at + 1 : at + 3] if item.concept != "DET"]
    return row.items[at].concept == "OVER" and behind[:1] in (["JOINT"], ["FLAP"])


def _bare_width(row: Row, at: int) -> bool:
    """ "cinta de dos y media 181A-P": a bare number that is its width."""
    ends = row.items[at + 1].concept if at + 1 < len(row.items) else ""
    return row.items[at].concept == "NUM" and row.items[at - 1].concept == "OF" and 2 <= row.items[at].value.value <= 4 and ends in ("MARK181", "CLOSURE")


def rubbed_on(found: Found):
    """ "181A-P, three inch, rubbed": what is rubbed down is on."""
    if found.items("w")[0].value[-1:] == "M":
        return
    yield found.claim("taped", True, group="w", weak=True)


def of_the_piece(found: Found):
    """ "Straight nine. Closure, 181A-P.": of a piece that was named, and not of all that is built today."""
    if any(item.concept.startswith("K_") or item.concept == "FITTING" for item in found.row.items[: found.first]):
        yield from rubbed_on(found)


def went_on(found: Found):
    """ "the tape went on good", "tape's back on" """
    behind = found.row.text[found.row.items[found.match.end("w") - 1].end :].lower().split()[:1]
    if not behind or behind[0].strip(".,;!?") in ("", "good", "fine", "easy", "great", "nice", "smooth", "clean", "and", "now", "there", "again", "well", "okay", "ok", "perfect"):
        yield found.claim("taped", True, group="w", weak=True)


def laid_on(found: Found):
    """ "181A-P went on at forty-two degrees" """
    if found.row.words(found.at("v"), found.at("v") + 1).lower() in ("went", "went down"):
        yield found.claim("taped", True, group="w", weak=True)


def is_on(found: Found):
    """ "la cinta ya quedó", "cinta lista": it is on, where nothing else was said of it."""
    said = found.row.words(found.at("f"), found.last).lower().split()
    if words_of("small.is_on").issuperset(said):
        yield found.claim("taped", True, group="w", weak=True)


def nothing_but(found: Found):
    """ "Straight nine, just tape": that is all it has."""
    before = found.row.items[found.first - 1].concept if found.first else "STOP"
    if before in ("COMMA", "STOP", "BE", "AND", "NUM", "MARKED", "STAPLED") and found.row.words(found.at("f"), found.at("f") + 1).lower() in words_of("small.nothing_but"):
        yield found.claim("taped", True, group="w", weak=True)


def lay(found: Found):
    """ "the tape I put on is two inches wide" """
    if lays(found.row, found.at("f")):
        yield found.claim("taped", True, group="w", weak=True)


def put_on(found: Found):
    """ "I put the 181A-P on" """
    if found.row.items[found.first].concept != "FILLER" or found.row.words(found.first, found.first + 1).lower().endswith("put"):
        yield found.claim("taped", True, group="w", weak=True)


def i_put(found: Found):
    """ "I put the 181A-P"; "I use 181A-P" tells what is on the truck, and "tomorrow I put it" what is to come."""
    row = found.row
    said = [item.concept for item in row.items[row.sentence_start(found.first) : row.sentence_end(found.first)]]
    if row.words(found.at("f"), found.at("f") + 1).lower().split()[-1] == "put" and _NOT_YET.isdisjoint(said):
        yield found.claim("taped", True, group="w", weak=True)


_NOT_YET = frozenset(("LATER", "WILL", "IF", "WHEN", "OTHER", "DRAWING", "NOT", "NO", "QUESTION", "PENDING", "YET"))


def lays(row, at: int) -> bool:
    return not words_of("small.lays").isdisjoint(row.words(at, at + 1).lower().split())


def sealed_with(found: Found):
    """ "Sealed all the seams with 181A-P", "closed up the joints with the foil tape"; not with 181A-M, which is mastic."""
    item = found.item("t")
    if item.concept != "MARK181" or not str(item.value).endswith("M"):
        yield found.claim("taped", True, group="w", weak=True)
