"""Words that point back to one of several pieces: "tee 8 and straight 9. Tee's taped, straight's not" is read as "tee 8's taped, straight 9's not".

Which pieces there are, the note itself tells: it is read once as it stands, and again where something in it points to a piece named before. What points
to none, or to more than one, is left as it is.
"""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.pointed import Pointed
from logbook.reading.meant import stand_in
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import plain
from logbook.said import Reading


def cuts(text: str, told: Reading, code: str) -> tuple[Cut, ...]:
    """The words that point back, in order, and the kind and number of the piece that they point to."""
    words = LANGUAGES[code].pointed
    said = plain(text)
    if not words.kinds or len(said) != len(text) or _looks(code).search(said) is None:
        return ()
    named = _listed(said, _named(told), code)
    alone = len(named) == 1
    if not named or alone and words.other not in said:
        return ()
    found = {match.start("x"): match for pattern in _patterns(code)[len(words.kind) if alone else 0 :] for match in reversed(list(pattern.finditer(said)))}
    made: list[Cut] = []
    marks = {start: mark for start, mark, _ in named} | _said_again(said, told)
    for start, match in sorted(found.items()):
        if made and start < made[-1].end or any(start <= mark < match.end("x") for mark in marks):
            continue
        before = [(mark, kind) for at, mark, kind in named if at < start]
        means = _meant(match, before, words, [*sorted(at for at in marks if at < start), *(cut.start for cut in made)], marks, alone)
        if means is not None:
            made.append(Cut(start, match.end("x"), means))
            marks[start] = means.rpartition(" ")[2]
    return tuple(made)


def _meant(match: re.Match[str], before: list[tuple[str, str | None]], words: Pointed, earlier: list[int], marks: dict[int, str], alone: bool) -> str | None:
    """The kind and number of what is pointed to; None where that is none or not sure."""
    known = list(dict.fromkeys(before))
    other = "n" in match.re.groupindex and words.places[match["n"]] is None
    if other and _of_a_part(match, max(earlier, default=0), words):
        return None
    if alone:
        return _no_name(match.groupdict().get("k"), known[0][1], words) if known and other else None
    if len({mark for mark, _ in known}) < 2:
        return None
    if "c" in match.re.groupindex:
        count = words.counts[match["c"]]
        some = known[:count] if words.places[match["n"]] == 0 else known[-count:]
        kinds = {kind for _, kind in some}
        word = next((word for word, kind in words.several.items() if kinds == {kind}), words.pieces)
        return f"{word} {', '.join(mark for mark, _ in some[:-1])}{words.joins}{some[-1][0]}" if len(some) == count < len(known) else None
    if "n" in match.re.groupindex:
        which = words.places[match["n"]]
        if other:
            last = marks[max(earlier)] if earlier else None
            one = next((one for one in known if one[0] != last and _may_be(one[1], match, words)), None) if len(known) == 2 else None
            if one is None and len(known) == 2 and match.groupdict().get("k"):
                return _no_name(match["k"], None, words)  # "elbow 14 and straight 31. …, the other elbow": neither of the two
        else:
            one = known[which] if which < len(known) and (match["n"] not in _OF_THREE or len(known) == 3) else None
        word = next((word for word, kind in words.kinds.items() if one is not None and kind == one[1]), None)
        word = words.piece if one is not None and one[1] is None and words.piece else word
        return f"{word} {one[0]}" if one is not None and word is not None else None
    said = match["k"]
    kind = words.kinds.get(said) or words.several[said]
    alike = [mark for mark, other in known if other == kind]
    if said in words.several:
        return f"{said} {', '.join(alike[:-1])}{words.joins}{alike[-1]}" if 1 < len(alike) < len(known) else None
    if kind == "branch" and before[-1][1] in _WITH_A_BRANCH:
        return None  # "branch 118 is taped. Tee 5, tape on the branch I forgot": its own
    return f"{said} {alike[0]}" if len(alike) == 1 else None


_WITH_A_BRANCH = ("tee", "wye")


def _no_name(said: str | None, kind: str | None, words: Pointed) -> str:
    """ "Straight 31 is taped, the other one isn't": a piece of its own, and not 31."""
    return f"{said or next((word for word, its in words.kinds.items() if its == kind), words.piece)} {stand_in.MARK}"


def _of_a_part(match: re.Match[str], named: int, words: Pointed) -> bool:
    """ "31 is taped on one side, the other one isn't": the other side. What stands before the name of the piece, "the joint of 31", is not one of two."""
    if match.groupdict().get("k"):
        return False
    before, since = match.string[: match.start("x")], match.string[named : match.start("x")]
    its = re.search(words.of_it, since)
    return re.search(words.no_piece, before) is not None or re.search(words.parts, since[: its.start()] if its else since) is not None or its is None and re.search(words.harms, since) is not None


_OF_THREE = ("middle",)


def _may_be(kind: str | None, match: re.Match[str], words: Pointed) -> bool:
    """Whether a piece of this kind is the one pointed to: "the other straight" is no elbow."""
    said = match["k"] if "k" in match.re.groupindex else None
    return said is None or kind is None or words.kinds.get(said) == kind


def _said_again(said: str, told: Reading) -> dict[int, str]:
    """Where a piece is named once more by its number or letters alone: "straights 31 and 32. 31 is taped, the other one isn't"."""
    places: dict[int, str] = {}
    for entry in told.fittings:
        mark = entry.fact("mark")
        if mark is None or mark.value.isdigit() and int(mark.value) <= _COUNTS_UP_TO:
            continue
        for words in {mark.value.lower(), plain(mark.words).rpartition(" ")[2]}:
            places |= {match.start(): mark.value for match in re.finditer(rf"(?<![\w/.-]){re.escape(words)}(?![\w/\"-]|\.\d| by | ?x ?\d| inch)", said)}
    return places


_COUNTS_UP_TO = 12  # what things are counted with


def _named(told: Reading) -> list[tuple[int, str, str | None]]:
    """Where each piece is named, with its number and its kind."""
    made = []
    for entry in told.fittings:
        mark, kind = entry.fact("mark"), entry.fact("kind")
        if mark is not None:
            made.append((mark.start, mark.value, kind.value if kind is not None else None))
    return sorted(made, key=lambda one: one[0])


def _listed(said: str, named: list[tuple[int, str, str | None]], code: str) -> list[tuple[int, str, str | None]]:
    known = {mark for _, mark, _ in named}
    kinds = LANGUAGES[code].pointed.several
    more = [(match.start("all") + one.start(), one[0], kinds.get(match["k"] or "")) for match in _lists(code).finditer(said) for one in re.finditer(r"\d+", match["all"]) if one[0] not in known]
    return sorted([*named, *more], key=lambda one: one[0])


@cache
def _lists(code: str) -> re.Pattern[str]:
    words = LANGUAGES[code].pointed
    return re.compile(words.listed.replace("{several}", "|".join(sorted(words.several, key=len, reverse=True))))


@cache
def _looks(code: str) -> re.Pattern[str]:
    return re.compile(LANGUAGES[code].pointed.looks)


@cache
def _patterns(code: str) -> tuple[re.Pattern[str], ...]:
    words = LANGUAGES[code].pointed
    any_kind = rf"(?P<k>{'|'.join(sorted((*words.kinds, *words.several), key=len, reverse=True))})"
    return tuple(re.compile(pattern.replace("{kind}", any_kind)) for pattern in (*words.kind, *words.place))
