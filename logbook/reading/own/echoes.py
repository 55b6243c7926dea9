"""Words that answer for an act named before them: "meant to tape it and I did", "Vanes in elbow nine? In my dreams", "he says it isn't but it is".

The act stands in a clause that states nothing by itself (a question, a plan, another's words, yesterday), or that states the
contrary; the echo is a clause without an act of its own.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import apart, finds, is_whole, rows, word
from logbook.reading.clauses.sketch import SIGNS, Sketch

_BACK = 7  # parts
_DID_IT = ("i ", "we ", "but ", "and ", "so ", "then ", "got ", "did ")
_FAULTS = {"GAP": "gap", "DAMAGE": "facing_damage"}
_NAMING = ("NUM", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED", "RUN", "SIZE", "LEN", "EVERY", "GENERIC")


@dataclass
class Echoed:
    claims: list[Claim] = field(default_factory=list)
    spent: set[int] = field(default_factory=set)
    of_piece: set[int] = field(default_factory=set)  # items of a question or of others' words that name this piece


def echoes(row: Row, drawn: tuple[Sketch, ...], language: Language) -> Echoed:
    found = Echoed()
    code = language.code
    if not language.told.echoes.yes or not word(code, "told.echoes.looks").search(row.text.lower()):
        return found
    for place, one in enumerate(drawn):
        if row.is_blank(one.first):
            continue
        tail = word(code, "told.echoes.done_with").search(one.words) if one.acts or one.words.startswith(_DID_IT) else None
        if tail is not None:
            drawn = (*drawn[:place], one := replace(one, last=one.item(tail.start("with")), words=one.words[: tail.start("with")].strip(), acts=()), *drawn[place + 1 :])
        if one.acts:
            _in_one_breath(row, one, language, found)
            continue
        words = _bare(one.words, code)
        asked_back = one.last < len(row.items) and row.items[one.last].concept == "QUERY"
        retort = _is_asked(row, one) and is_whole(rows(code, "told.echoes.retorts"), words)
        before = None if asked_back and not retort else _before(row, drawn, place, word(code, "told.echoes.of_sight").search(words) is not None, language)
        away = before is not None and "<n>" in drawn[before].words and "<d>" not in drawn[before].words and is_whole(rows(code, "told.echoes.away"), words)
        if before is None or not away and _of_another_piece(row, drawn[before], one):
            continue  # "straight nine is taped. Straight ten isn't"
        if one.last < len(row.items) and row.text[row.items[one.last].start] == ":" and word(code, "told.echoes.heads").fullmatch(words):
            continue  # "Right: … Wrong: they're too short": what is told behind it is wrong
        if (would := word(code, "told.echoes.would").search(drawn[before].words)) is not None and word(code, "told.echoes.of_it").match(words):
            _settle_supposed(row, drawn, before, place, would.start(), language, found)
            continue
        said = _says(one.words, words, code)
        whether = word(code, "told.echoes.whether").search(drawn[before].words) is not None
        asked = whether or _is_asked(row, drawn[before])
        if word(code, "told.echoes.absurd").fullmatch(words) and drawn[before].words.startswith("if ") and drawn[before].sentence == one.sentence:
            _settle(row, drawn, before, place, not _as_told(drawn[before], code), True, False, "", language, found, as_it_is=True)
            continue
        if asked and not whether and len(one.words.split()) == 1 and word(code, "told.echoes.of_another").search(drawn[before].words):
            if _answer(one.words, code) is False and word(code, "told.echoes.of_him").search(drawn[before].words):
                found.claims += [claim(row, name, False, at, at + 1, hedged=True) for at, name in drawn[before].acts]  # "did you tape the back? No": another voice may have asked him, so it is asked
            continue
        if asked and said is None:
            said = _answer(one.words, code)
        if away and said is None and not asked and not retort and any(item.concept == "YET" for item in row.items[drawn[before].first : drawn[before].last]):
            found.spent.update(range(one.first, one.last))  # "no vanes yet. They're in the gang box": still to come, in words of its own
            continue
        if retort or (away and said is None and not asked):
            _settle(row, drawn, before, place, False, True, False, "", language, found, as_it_is=True)
            found.spent.update(range(one.first, one.last))  # with the box it lies in
            continue
        told = said
        if said is None and not asked and drawn[before].acts and (borne := _borne_out(words, code)) is not None:
            if _measures(row, drawn[before]):
                found.spent.update(range(one.first, one.last))  # "the tape is two inches wide, and he's right": the measure stands, or falls, as it was told
                found.spent.update(() if borne else set(range(drawn[before].first, drawn[before].last)) - _naming(row, drawn[before]))
                continue
            told = borne == _as_told(drawn[before], code)
            _settle(row, drawn, before, place, told, True, False, "", language, found, as_it_is=True)
            continue
        if asked and said is None and _spaced(row, one, drawn[before]):
            told = True
        if told is None or said is False and not asked and word(code, "told.echoes.of_the_piece").match(words) and _plainly_told(drawn[before], code):
            continue  # "It's taped. It isn't done yet.": the piece is not
        _settle(row, drawn, before, place, told, said is not None, asked, words, language, found)
    return found


_MEASURE = ("LEN", "FRAC")
_BEFORE_MEASURE = ("BE", "AT", "ON", "EVERY", "DET", "FILLER", "IT", "THIS", "STOP", "COMMA", "HEDGE")


def _measured_otherwise(row: Row, act: Sketch, one: Sketch, found: Echoed) -> None:
    """ "Told you the staples were two apart, they're not, they're three": not so far, and where it is told behind, so far."""
    found.spent.update(range(one.first, one.last))
    if any(row.items[at].took_back for at in range(act.first, act.last)):
        return  # the measure behind stands in the place of the first already
    found.spent.update(at for at in range(act.first, act.last) if row.items[at].concept in (*_MEASURE, "EVERY", "APART") or row.items[at].concept == "NUM" and row.items[at - 1].concept in _BEFORE_MEASURE)
    at = one.last
    while at < len(row.items) and row.items[at].concept in _BEFORE_MEASURE:
        at += 1
    if at < len(row.items) and row.items[at].concept in (*_MEASURE, "NUM") and row.items[at].value.value >= 1 and row.items[act.acts[-1][0]].concept == "STAPLES" and not (at + 1 < len(row.items) and row.items[at + 1].concept.startswith("K_")):
        found.claims.append(claim(row, "staple_spacing", row.items[at].value.value, at, at + 1, corrects=True, hedged=False))
        found.spent.add(at)


def _settle_supposed(row: Row, drawn, before: int, place: int, would: int, language: Language, found: Echoed) -> None:
    """ "If it had been dusty I'd have wiped it. It wasn't.": it was not dusty, and of the wiping nothing is told; "if it was taped I'd have rubbed it, it wasn't": it is not taped."""
    one, act = drawn[place], drawn[before]
    supposed = act.acts_in(0, would) if would else ()
    if not supposed and before and drawn[before - 1].sentence == act.sentence and drawn[before - 1].acts:
        supposed, act = drawn[before - 1].acts, drawn[before - 1]
    named = _naming(row, act) | _naming(row, drawn[before])
    for at, name in supposed:
        if SIGNS.get(row.items[at].concept) != "<d>":
            continue
        found.claims.append(claim(row, name, False, one.first, one.last, corrects=True, hedged=False, also=((row.items[at].start, row.items[at].end),)))
    found.of_piece |= named
    found.spent.update({*range(act.first, drawn[before].last), *range(one.first, one.last)} - named - _naming(row, one))


def _of_another_piece(row: Row, act: Sketch, one: Sketch) -> bool:
    """Whether a piece is named between the act and the echo, and one before: "a roll costs sixty, and straight ten didn't get an inch of it" names its first."""
    last = next((at for at in range(one.last - 1, act.last - 1, -1) if _names_a_piece(row, at)), None)
    first = next((at for at in range(act.last) if _names_a_piece(row, at) or _alone(row, at)), None) if last is not None else None
    return first is not None and _number(row, last) != (row.items[first].value.value if row.items[first].concept == "NUM" else _number(row, first))


def _names_a_piece(row: Row, at: int) -> bool:
    return row.items[at].concept.startswith("K_") or row.items[at].concept == "FITTING" or _numbered(row, at)


def _alone(row: Row, at: int) -> bool:
    """ "7 has no vanes", "the panel on 18 doesn't sit": a piece by nothing but its number."""
    return row.items[at].concept == "NUM" and (row.sentence_start(at) == at or row.items[at - 1].concept in ("ON", "IN", "TAPE", "TAPE_IT", "STAPLE", "RUB")) and row.items[at + 1 : at + 2] != () and row.items[at + 1].concept in ("HAVE", "NEED", "NO", "NOT", "BE", "STOP", "WORD")


def _numbered(row: Row, at: int) -> bool:
    """ "Number two", where it is not the number of the thing named right before: "the elbow, number two", "mine, number two"."""
    if row.items[at].concept != "NUMBER":
        return False
    before = [item.concept for item in row.items[max(0, at - 2) : at] if item.concept != "COMMA"][-1:]
    return _number(row, at) != at and not (before and (before[0] == "WORD" or before[0].startswith("K_")))


def _number(row: Row, at: int) -> object:
    """The number behind the word for a piece, or its place where there is none: "elbow nine has vanes. No wait. Elbow nine hasn't"."""
    behind = row.items[at + 1] if at + 1 < len(row.items) else None
    return behind.value.value if behind is not None and behind.concept == "NUM" else at


def _bare(words: str, code: str) -> str:
    words = words.replace(" 's", "'s")
    return words[word(code, "told.echoes.leads").match(words + " ").end() :].strip().removeprefix("# ")


def _says(whole: str, words: str, code: str) -> bool | None:
    for member, value in (("no", False), ("yes", True)):
        if is_whole(rows(code, f"told.echoes.{member}"), words):
            return value
    return None


def _answer(words: str, code: str) -> bool | None:
    for (_, value), pattern in zip(LANGUAGES[code].told.echoes.to_a_question, rows(code, "told.echoes.to_a_question")):
        if pattern.fullmatch(words):
            return value
    return None


def _borne_out(words: str, code: str) -> bool | None:
    """Whether what was told is borne out ("he's right") or belied ("that's a lie")."""
    for member, value in (("belies", False), ("bears_out", True)):
        if is_whole(rows(code, f"told.echoes.{member}"), words):
            return value
    return None


def _measures(row: Row, one: Sketch) -> bool:
    """Whether the act is told by a measure: "the staples are three apart"."""
    return any(item.concept in (*_MEASURE, "EVERY") or item.concept == "NUM" and [next_.concept for next_ in row.items[at + 1 : at + 2]] == ["APART"] for at, item in enumerate(row.items[one.first : one.last], one.first))


def _as_told(one: Sketch, code: str) -> bool:
    """Whether these words tell of the act as done."""
    if finds((*apart(code, "told.weighed.lacking"), *rows(code, "told.echoes.lacking")), one.words) is not None:
        return False
    before = one.words.split("<d>")[0] if "<d>" in one.words else one.words.rpartition("<")[0]  # "the <n> isn't <d>", "the <n> has no <n>"
    return len(re.findall(LANGUAGES[code].told.weighed.nots, before)) % 2 == 0


def _plainly_told(one: Sketch, code: str) -> bool:
    return bool(one.acts) and _as_told(one, code) and word(code, "told.echoes.wanted").search(one.words) is None and finds(apart(code, "turns.thought"), one.words) is None


def _is_asked(row: Row, one: Sketch) -> bool:
    end = row.sentence_end(one.last)
    return end < len(row.items) and row.items[end].concept == "QUERY"


def _spaced(row: Row, reply: Sketch, asked: Sketch) -> bool:
    """ "Did you staple it? Every two." """
    concepts = [item.concept for item in row.items[reply.first : reply.first + 2]]
    return any(name == "stapled" for _, name in asked.acts) and concepts[:1] == ["EVERY"]


def _before(row: Row, drawn: tuple[Sketch, ...], place: int, seen: bool, language: Language) -> int | None:
    """The part with the act that is answered for; what is seen or not is the scrim, or what is broken."""
    for back in range(place - 1, max(-1, place - 1 - _BACK), -1):
        one = drawn[back]
        if one.sentence < drawn[place].sentence - 3 or row.is_blank(one.first) and not one.acts:
            return None
        if seen and one.acts and not any(name == "scrim_shows" for _, name in one.acts):
            continue
        if one.acts or any(row.items[at].concept in _FAULTS for at in range(one.first, one.last)):
            chained = any(_says(later.words, _bare(later.words, language.code), language.code) is not None for later in drawn[back + 1 : place])
            return back if one.sentence >= drawn[place].sentence - (3 if chained or _is_asked(row, one) else 2 if place - back > 1 else 1) else None
        words = _bare(one.words, language.code)
        if _is_asked(row, one) or not words or len(words.split()) == 1 or is_whole(rows(language.code, "told.echoes.between"), words) or _says(one.words, words, language.code) is not None or _answer(one.words, language.code) is not None:
            continue
        return None
    return None


def _asks_how_much(row: Row, act: Sketch) -> bool:
    """Whether a measure is asked about, and not the act: "three inch tape?", "every two?"."""
    items = row.items
    return any(items[at].concept in ("LEN", "FRAC") or items[at].concept == "NUM" and items[at - 1].concept in ("EVERY", "STAPLED", "ON", "AT") for at in range(max(1, act.first), act.last))


def _settle(row, drawn, before: int, place: int, told: bool, spends: bool, asked: bool, words: str, language: Language, found: Echoed, as_it_is: bool = False) -> None:
    act, one, code = drawn[before], drawn[place], language.code
    again = any(one.last < len(row.items) and row.items[one.last].concept == "QUERY" for one in drawn[before + 1 : place])
    if told and not asked and {name for _, name in act.acts} == {"trimmed"} and not word(code, "told.echoes.by_doing").search(words):
        return  # "before I could trim it, so it's all still in there": the insulation is in
    if asked and not again and not word(code, "told.echoes.by_doing").search(words) and word(code, "told.echoes.wanted").search(act.words.split("<")[0]):
        found.spent.update(range(one.first, one.last))  # "should it have tape? Sure": whether it has, he does not say yet
        return
    named = _naming(row, act)
    faults = [at for at in range(act.first, act.last) if row.items[at].concept in _FAULTS]
    if not act.acts:
        if asked and not told and faults:
            found.claims.append(claim(row, *DENIED[row.items[faults[0]].concept], faults[0], faults[0] + 1, hedged=False))
            found.of_piece |= named
            found.spent.add(faults[0])
        return
    if word(code, "told.echoes.theirs").search(f"{act.words}/{words}"):
        found.spent.update(range(one.first, one.last))  # "they'll tell you they taped it. They didn't": who did, is not said
        return
    if not told and act.words.split("<")[0].split()[-1:] and act.words.split("<")[0].split()[-1] in language.afar.faulty:
        return  # "checked for loose vanes, there are none"
    if asked and not told and word(code, "told.echoes.fault_asked").search(act.words):  # "did I leave the vanes loose? Not one": no fault is no act
        found.spent.update({*range(act.first, act.last), *range(one.first, one.last)} - _naming(row, act))
        return
    if asked and re.search(r"^(?:(?!<[ndb]>).)+ (?:before|when|after|while) (?:i|we) <d>", act.words) is not None:  # "any dust on it when I taped it? No": taped it is, yes or no
        found.claims += [claim(row, name, True, at, at + 1, weak=True, hedged=False) for at, name in act.acts]
        found.spent.update(range(one.first, min(one.first + 1, one.last)))
        return
    if asked and not told and _asks_how_much(row, act):
        found.spent.update(range(one.first, one.last))  # "staples every two? No, every three": not so many, but stapled
        return
    if not told and not asked and word(code, "told.echoes.measured").search(act.words) is not None and word(code, "told.echoes.not_so").fullmatch(words or _bare(one.words, code)):
        _measured_otherwise(row, act, one, found)
        return
    lacking = finds(rows(code, "told.echoes.lacking"), act.words) is not None
    if word(code, "told.echoes.by_doing").search(words):
        left = finds(apart(code, "told.weighed.lacking"), act.words) is not None
        slip = told and not asked and word(code, "told.echoes.slips").search(act.words) is not None
        if slip and left and word(code, "told.echoes.after_all").search(row.words(act.last, one.last).lower()) is not None:
            found.claims += [claim(row, name, False, at, at + 1, hedged=True) for at, name in act.acts[-1:]]  # "almost skipped the tape, and then I did": which of them?
            found.spent.update(set(range(act.first, one.last)) - named)
            return
        lacking = (lacking or left) and not slip  # "almost forgot to rub it but I did"
    elif word(code, "told.echoes.in_place").search(words) or word(code, "told.echoes.my_own").search(words):
        lacking = False
    elif asked:
        lacking = lacking or finds(apart(code, "told.weighed.lacking"), act.words) is not None  # "did I skip the tape? Yes"
    value = told if as_it_is else told is not lacking
    acts = [one for one in act.acts if one[1] == "scrim_shows"] or [*_joined(row, drawn, before), *(_of_the_deed(act, code) if told else _answered_for(act, code))]
    for name in dict.fromkeys(name for _, name in acts):
        at = next(item for item, its in acts if its == name)
        begin = next((k for k in range(one.first, one.last) if k not in _naming(row, one)), one.first)
        first, last = (begin, one.last) if spends else (at, at + 1)
        also = ((row.items[at].start, row.items[at].end),) if spends else ()
        found.claims.append(claim(row, name, value, first, last, corrects=True, hedged=False, also=also))
    if len(acts) == 1 and not told and re.search(r"<[ndb]>.* (?:before|when|after) (?:i|we) <d>", act.words) is not None:
        found.claims += [claim(row, name, True, at, at + 1, weak=True, hedged=False) for at, name in act.acts if at > acts[0][0] and name != acts[0][1]]  # "did I wipe it before I taped it? No": taped it is
    found.of_piece |= named
    found.spent.update(at for at in range(acts[0][0] if acts[0][0] < act.first else act.first, act.last) if at not in named and row.items[at].concept not in _NAMING)
    if spends:
        found.spent.update(set(range(one.first, one.last)) - _naming(row, one))


def _of_the_deed(act: Sketch, code: str) -> tuple[tuple[int, str], ...]:
    """Of "the tape isn't rubbed" the rub alone: the tape is what it is told of."""
    match = word(code, "told.echoes.told_of").search(act.words)
    thing = act.item(match.start()) if match else None
    return tuple(one for one in act.acts if one[0] != thing)


def _answered_for(act: Sketch, code: str) -> tuple[tuple[int, str], ...]:
    """ "Did I wipe it before I taped it?": of two acts the one that is asked for."""
    told = re.match(r"(?P<asked>.*<[ndb]>.*?) (?:before|when|after|while|until) (?:i|we) <d>", act.words)
    if told is None:
        return _of_the_deed(act, code)
    places = {item: at for at, item in act.places}
    return tuple(one for one in act.acts if places.get(one[0], 0) < told.end("asked"))


def _joined(row: Row, drawn: tuple[Sketch, ...], before: int) -> tuple[tuple[int, str], ...]:
    """The act before "and": "stapled and taped, I didn't"."""
    mate = drawn[before - 1] if before else None
    if mate is None or mate.last + 1 != drawn[before].first or row.items[mate.last].concept != "AND" or len(drawn[before].words.split()) > 2:
        return ()
    return mate.acts


def _naming(row: Row, one: Sketch) -> set[int]:
    """What names a piece in the sentence of these words."""
    first, last = row.sentence_start(one.first), row.sentence_end(one.last)
    return {at for at in range(first, last) if row.items[at].concept.startswith("K_") or row.items[at].concept in ("NUM", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED", "RUN")}


def _in_one_breath(row: Row, one: Sketch, language: Language, found: Echoed) -> None:
    """ "did i tape cap nine no sir": question and answer without a sign between them."""
    match = word(language.code, "told.echoes.asked_and_told").match(one.words)
    if match is None or len(one.acts) != 1:
        return
    at, name = one.acts[0]
    yes = _says("", match.group("told"), language.code)
    yes = _answer(match.group("told"), language.code) if yes is None else yes
    if yes is None:
        return
    found.claims.append(claim(row, name, yes, at, at + 1, hedged=False))
    found.spent.update(k for k in range(one.first, one.last) if row.items[k].concept not in _NAMING and not row.items[k].concept.startswith("K_"))
