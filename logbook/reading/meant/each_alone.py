"""A note that tells of several pieces at once and of one of them besides is read once for each, with what is told of that one alone.

"40 to 43, all stapled, but on 42 the flap is loose" is read as "straight 42 is stapled. On straight 42 the flap is loose" and as "straight 41 is stapled": so nothing
told of the one is taken for another's. What is told short of the next ("the second at three") is told with the words of the one before. Where it is not sure which
piece some words stand for, the note is left as it is.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace

from logbook.languages import LANGUAGES
from logbook.reading.meant.piece_by_piece import in_order
from logbook.reading.meant.several_named import Named, Pointer, Told, Unclear, agreed, named, pattern
from logbook.reading.words.stretches import moved, put_together
from logbook.reading.words.tokens import plain
from logbook.said import Entry, Fact, Reading

Stretches = list[tuple[int, int] | str]


@dataclass
class _Part:
    """Words that are told of some pieces; `apart` where they set them apart from those of another part."""

    start: int
    end: int
    pointers: list[Pointer]
    marks: tuple[str, ...]
    apart: bool = False
    not_of: tuple[str, ...] = ()


def each_alone(text: str, code: str, read: Callable[[str], Reading], as_it_stands: Callable[[], Reading]) -> Reading:
    """The reading of the note; `as_it_stands` where it is not of this sort."""
    said = plain(text)
    led = len(said) == len(text) and LANGUAGES[code].several.led
    said = without_farewell(said, code) if led else said
    told = named(said, code) if led else None
    parts = _parts(said, code, told) if told is not None and any(one.plural or one.sort in _POINTING for one in told.pointers) else None
    whole = as_it_stands()
    if not parts or pattern(code, "same_but").search(said) is not None:
        return whole
    marks = {_mark(entry): entry for entry in whole.fittings}
    if not _parts_ways(said, code, told, parts) and told.pieces.keys() <= marks.keys():
        return whole
    joined = {mark for entry in whole.fittings for fact in entry.facts if fact.name == "joined_to" for mark in fact.value}
    if joined & (told.pieces.keys() - marks.keys()):
        return whole  # "tied in to 54 and 56" tells of no pieces of his
    others = {mark for mark in marks if mark is not None and mark not in told.pieces and re.search(rf"(?<!\d){re.escape(mark.lower())}(?!\d)", said)}
    if whole.shift is not None or whole.withdraws is not None or others or any(entry.same_as is not None or entry.amends for entry in whole.fittings):
        return whole
    entries: list[Entry] = []
    unread: list = []
    in_their_order = list(marks) == [mark for mark, _ in sorted(told.pieces.items(), key=lambda one: one[1].at)]
    for mark, piece in sorted(told.pieces.items(), key=lambda one: one[1].at):
        try:
            stretches = [f"{_name(piece, code).capitalize()}. ", *_of(said, code, parts, piece)]
        except Unclear:
            return whole
        one = read(put_together(text, stretches))
        if len(one.fittings) > 1 or one.shift is not None or one.withdraws is not None or any(entry.same_as is not None for entry in one.fittings):
            return whole
        one = moved(one, text, stretches)
        unread += [words for words in one.unread if words not in unread]
        for entry in one.fittings:
            entry = _put_back(entry, piece, text, len(entries))
            entry = replace(entry, facts=_settled(said, code, entry.facts, parts))
            entry = _with_its_own(entry, marks[mark], parts, mark, in_their_order) if mark in marks else entry
            if mark in marks or entry.open_items or not {fact.name for fact in entry.facts} <= _NAMES:
                entries.append(entry)
    if len(entries) < 2:
        return whole
    return replace(whole, fittings=tuple(entries), reason=None, unread=tuple(unread))


_NAMES = {"kind", "mark"}
_POINTING = ("one_of", "placed", "size", "the_one_in")


def without_farewell(said: str, code: str) -> str:
    """Without the last sentences that tell of nothing: "Thank you. Thank you.", "Going to lunch". """
    words = LANGUAGES[code].several
    ends = [match.end() for match in re.finditer(r"[.?!] +(?=[^.?! ])", said)]
    while ends:
        last = said[ends[-1] :]
        tells = len(last.split()) > words.farewell or re.search(rf"\d|{words.things}|{words.answers}", last) is not None
        if not last or tells and re.fullmatch(words.bye, last) is None:
            break
        said = said[: ends.pop()].rstrip()
    return said


def _mark(entry: Entry) -> str | None:
    fact = entry.fact("mark")
    return None if fact is None else fact.value


def _parts_ways(said: str, code: str, told: Told, parts: list[_Part]) -> bool:
    """Whether something is told of one that is not told of the others, of all before any is named, or of all that only a "they" names."""
    telling = [part for part in parts if _tells(_body(said, part), code)]
    bare = all(piece.kind_at is None or piece.kind_at > piece.at for piece in told.pieces.values())
    theirs = pattern(code, "theirs")
    first = min(piece.at[0] for piece in told.pieces.values())
    ahead = not told.lists and any(one.sort == "whole" and one.end <= first for part in telling for one in part.pointers)  # "two straights, stapled every two. 73 is 12 by 10, 74 is 14 by 10"
    return ahead or any(set(part.marks) != told.pieces.keys() for part in telling) or bare and any(theirs.fullmatch(said, one.start, one.end) for part in telling for one in part.pointers)


def _own_part(parts: list[_Part], at: int | None) -> _Part | None:
    return next((part for part in parts if at is not None and part.start <= at < part.end), None)


def _settled(said: str, code: str, facts: tuple[Fact, ...], parts: list[_Part]) -> tuple[Fact, ...]:
    """What is told of the one piece counts before what is told of all, unless it is of a part of the piece; what is denied counts before what is not."""
    made = list(facts)
    for name in {fact.name for fact in facts if fact.conflict}:
        alike = [fact for fact in made if fact.name == name]
        own = [fact for fact in alike if (part := _own_part(parts, fact.end - 1 if fact.end else None)) is not None and len(part.marks) == 1 and (fact.value is False or not re.search(LANGUAGES[code].several.sides, _body(said, part)))]
        if len(own) == 1 and own[0].value is not True:
            made = [replace(fact, conflict=False) if fact is own[0] else fact for fact in made if fact.name != name or fact is own[0]]
    return tuple(made)


def _with_its_own(entry: Entry, other: Entry, parts: list[_Part], mark: str, in_their_order: bool) -> Entry:
    """The entry, with what the note as it stands tells of the piece in words that are its own; and with the sizes that it has from another, whose place is then the same."""
    known = {fact.name: fact for fact in entry.facts}
    made = list(entry.facts)
    for fact in other.facts:
        own = _own_part(parts, fact.start)
        if fact.name not in known and (fact.name == "run" or fact.name in _SIZES and fact.from_fitting is not None and in_their_order):
            made.append(fact)
        elif fact.name in _NAMES or fact.from_fitting is not None or fact.conflict or own is None or mark not in own.marks or mark in own.not_of:
            continue
        elif fact.name not in known:
            made.append(fact)
        elif fact.value is False and known[fact.name].value is True and own.marks == (mark,) or fact.name in _LAID_OUT:
            made = [*(one for one in made if one.name != fact.name), fact]
    opens = tuple(item for item in other.open_items if (own := _own_part(parts, item.start)) is not None and mark in own.marks)
    return replace(entry, facts=tuple(sorted(made, key=in_order)), open_items=opens or entry.open_items)


_SIZES = ("inlet_size", "outlet_size", "branch_size")
_LAID_OUT = ("side_moves", *_SIZES)  # told over several sentences


def _put_back(entry: Entry, piece: Named, text: str, place: int) -> Entry:
    """The entry, its kind and number where they are said."""

    def at(fact: Fact) -> Fact:
        where = piece.at if fact.name == "mark" else piece.kind_at if fact.name == "kind" else None
        return fact if where is None else replace(fact, start=where[0], end=where[1], words=text[slice(*where)])

    return replace(entry, position=place, facts=tuple(at(fact) for fact in entry.facts))


def _name(piece: Named, code: str) -> str:
    return f"{piece.kind or LANGUAGES[code].several.of_one} {piece.mark}"


def _parts(said: str, code: str, told: Told) -> list[_Part] | None:
    made: list[_Part] = []
    starts, words = pattern(code, "starts"), LANGUAGES[code].several
    for pointer in told.pointers:
        since = made[-1].pointers[-1].end if made else 0
        begins = [match for match in starts.finditer(said, since, pointer.start) if _begins(said, match, pointer, code)]
        if made and not begins:
            if made[-1].apart and made[-1].pointers[-1].end == since and not said[since : pointer.start].strip():  # "apart from 76 they're all rubbed"
                begins = [re.compile("").match(said, since)]
            elif made[-1].apart:
                return None
            else:
                if set(pointer.marks) != set(made[-1].marks):
                    return None  # two in one clause, as in talk without stops
                made[-1].pointers.append(pointer)
                continue
        start = begins[-1].end() if begins else 0
        lead = re.search(words.apart, said[: pointer.start]) is not None
        if made:
            made[-1].end = begins[-1].start() if begins[-1].group().replace(" ", "").isalpha() else start
        made.append(_Part(pointer.start if lead else start, len(said), [pointer], pointer.marks, lead))
    if made and not made[0].apart:
        made[0].start = 0
    for place, part in enumerate(made):
        opens = place == 0 or said[: made[place - 1].end].rstrip().endswith((".", ";", "?", "!"))
        main = made[place + 1] if part.apart and opens and place + 1 < len(made) else made[place - 1] if part.apart and place else None
        if main is not None and set(part.marks) < set(main.marks) and not re.search(words.things, _body(said, part)):
            main.not_of = (*main.not_of, *part.marks)
    return made


def _begins(said: str, match: re.Match[str], pointer: Pointer, code: str) -> bool:
    """Whether the clause of a name begins there: not at an "and" between two acts done to it."""
    return match.group().strip() != "and" or re.fullmatch(LANGUAGES[code].several.with_act, said[match.end() : pointer.start]) is None


def _body(said: str, part: _Part) -> str:
    """What is told, without the words that stand for the piece."""
    text, end = [], part.start
    for one in part.pointers:
        text.append(said[end : one.start])
        end = one.end
    return "".join([*text, said[end : part.end]])


def _tells(body: str, code: str) -> bool:
    return re.sub(rf"(?<![\w'])(?:{LANGUAGES[code].several.hollow})(?![\w'])|[^\w]", "", body) != ""


def _of(said: str, code: str, parts: list[_Part], piece: Named) -> Stretches:
    """What is told of one piece."""
    made: Stretches = []
    for place, part in enumerate(parts):
        if piece.mark not in part.marks or piece.mark in part.not_of:
            continue
        own = _full(said, code, parts, place, piece)
        if own:
            made += own if not made else [" " if _stopped(said, made) else ". ", *_past_space(said, own)]
    return made


def _past_space(said: str, own: Stretches) -> Stretches:
    first = own[0]
    if isinstance(first, str) or not said[slice(*first)].startswith(" "):
        return own
    start = first[1] - len(said[slice(*first)].lstrip())
    return [(start, first[1]), *own[1:]] if start < first[1] else own[1:]


def _stopped(said: str, made: Stretches) -> bool:
    last = made[-1]
    return (last if isinstance(last, str) else said[last[0] : last[1]]).rstrip().endswith((".", "?", "!"))


def _full(said: str, code: str, parts: list[_Part], place: int, piece: Named) -> Stretches:
    """The words of a part, said of this piece; with those of the part before where it leans on them."""
    part, words = parts[place], LANGUAGES[code].several
    body = _body(said, part)
    if not re.search(words.things, body):
        told = _leans_on(said, code, parts, place)
        if told is not None and (short := re.match(words.short, body.strip())) is not None and (short.end() == len(body.strip()) or short.group().endswith(", ")):
            rest = len(body.strip()) - short.end()
            behind = part.end - (len(body) - len(body.rstrip())) - rest
            shortly = _shortly(said, code, told, piece, short["yes"] is not None)
            return [*shortly, ", ", (behind, part.end)] if shortly and rest else shortly
        if told is not None and re.fullmatch(words.not_it, body.strip().split(". ")[0]):
            return _denied(said, code, told, piece)
        if told is not None and re.fullmatch(words.same, body):
            return _as_told(said, code, told, piece)
        if told is not None and part.apart and not _tells(body.split(". ")[0], code):
            return _denied(said, code, told, piece)
        measures = list(pattern(code, "measure").finditer(said, part.pointers[-1].end, part.end))
        if told is not None and measures and re.search(words.laid, _body(said, told)):
            raise Unclear  # "8 long, on the first 12 apart"
        if told is not None and measures and not re.search(words.denied, body) and (measured := _measured(said, code, told, piece, measures, re.search(words.hedged, body) is not None)):
            return measured
        if not _tells(body, code):
            return []
        if told is not None and (pronoun := pattern(code, "theirs").search(said, part.pointers[-1].end, part.end)) is not None and (things := list(re.finditer(words.nouns, said[told.start : told.end]))):
            return _as_told(said, code, part, piece, (*pronoun.span(), [f"{words.the} {things[0].group()}"]))
        if told is not None and not measures:
            return []  # "the other one still wants it": the note as it stands tells what
    return _as_told(said, code, part, piece)


def _shortly(said: str, code: str, told: _Part, piece: Named, done: bool) -> Stretches:
    """ "83 did", "12 doesn't"."""
    if not done:
        return _denied(said, code, told, piece)
    denied = told.pointers[0].none or re.search(LANGUAGES[code].several.denied, _body(said, told)) is not None
    return _denied(said, code, told, piece, LANGUAGES[code].several.is_so) if denied else _as_told(said, code, told, piece)


def _leans_on(said: str, code: str, parts: list[_Part], place: int) -> _Part | None:
    """The part before that tells something."""
    things = LANGUAGES[code].several.things
    order = [*reversed(parts[:place]), *parts[place + 1 : place + 2]] if parts[place].apart else [*reversed(parts[:place])]
    return next((one for one in order if re.search(things, _body(said, one))), None)


def _as_told(said: str, code: str, part: _Part, piece: Named, instead: tuple[int, int, Stretches] | None = None) -> Stretches:
    cuts: list[tuple[int, int, Stretches]] = [] if instead is None else [instead]
    words = LANGUAGES[code].several
    for one in part.pointers:
        end, behind = agreed(said, one, part.end, words) if not re.search(words.beside, said[: one.start]) else (one.end, "")
        name = _name(piece, code) if one is part.pointers[0] or not re.fullmatch(words.theirs, said[one.start : one.end]) else words.it
        if one.none:
            verb = said[one.start : one.end].rsplit(" ", 1)[-1]
            name += f" {words.nots[verb]}" if verb in words.nots else f" {words.never}"
        cuts.append((one.start, end, [name + behind]))
    made: Stretches = []
    at = part.start
    for start, end, means in sorted(cuts, key=lambda cut: cut[0]):
        made += [(at, start)] if start > at else []
        made += means
        at = max(end, at)
    last = at + len(said[at : part.end].rstrip(" ,"))
    return [*made, *([(at, last)] if last > at else [])]


def _measured(said: str, code: str, told: _Part, piece: Named, own: list[re.Match[str]], hedged: bool) -> Stretches:
    """The words of the part before with the measures of this one."""
    theirs = [match for match in pattern(code, "measure").finditer(said, told.start, told.end) if not any(one.start <= match.start() < one.end for one in told.pointers)]
    if len(theirs) != len(own) or len(own) > 2:
        return []
    unit = f" {theirs[-1]['u']}" if theirs[-1]["u"] and not own[-1]["u"] else ""
    apart = [", "] if any(one.end == theirs[0].start() - 1 for one in told.pointers) else []  # "113, three eighths inch legs" is no 113-3/8
    means: Stretches = [*apart, *([LANGUAGES[code].several.doubt] if hedged else []), (own[0].start(), own[-1].end()), unit]
    return _as_told(said, code, told, piece, (theirs[0].start(), theirs[-1].end(), means))


def _denied(said: str, code: str, told: _Part, piece: Named, how: str = "") -> Stretches:
    """The one act of the part before, not done."""
    words = LANGUAGES[code].several
    acts = {match.group() for match in re.finditer(words.acts, _body(said, told))}
    if len(acts) != 1 or not how and (told.pointers[0].none or re.search(words.denied, _body(said, told))):
        return []
    return [f"{_name(piece, code)} {how or words.is_not} {acts.pop()}"]
