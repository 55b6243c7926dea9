"""How many denials an act stands under: "I didn't leave the tape off" is two, and it is on; "without so much as an inch of tape" is one."""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.own.afar import Afar
from logbook.reading.clauses.claims import Open, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.how_it_sits import only_how
from logbook.reading.clauses.none_of_what import of_a_part
from logbook.reading.words.likely import Likely
from logbook.reading.words.phrasing import apart, finds, rows, word
from logbook.reading.clauses.sketch import Sketch


def weighed(row: Row, drawn: tuple[Sketch, ...], language: Language) -> Afar:
    """The acts whose denials are to be counted, and the items that this uses up."""
    found = Afar()
    if not language.told.weighed.lacking:
        return found
    for place, one in enumerate(drawn):
        asked = one.last < len(row.items) and row.items[one.last].concept == "QUERY"
        if not asked and not one.acts and _all_but_this(row, drawn, place, language, found):
            continue
        if asked or not one.acts:
            if not asked:
                _by_tool(row, one, language, found)
            continue
        if _all_but_this(row, drawn, place, language, found) or _all_to_come(row, drawn, place, language, found) or _belied(row, drawn, place, language, found) or _near_miss(row, drawn, place, language, found):
            continue
        for look in (_elsewhere, _without_fault, _ticked, _yet_to_come, _half_done, _by_tool, _put_aside):
            if look(row, one, language, found):
                break
        else:
            if not (_counted(row, one, _of_any(drawn, place, language), language, found) or _not_a_bit(row, one, language, found)):
                _unreal(row, drawn, place, language, found) or _has_it(row, one, language, found)
    return found


def _first(one: Sketch, language: Language, member: str) -> tuple[re.Match[str], list[tuple[int, str]]] | None:
    """The first pattern of a row that finds words with an act in them."""
    for pattern in apart(language.code, f"told.weighed.{member}"):
        match = pattern.search(one.words)
        if match is not None and (acts := one.acts_in(match.start(), match.end())):
            return match, acts
    return None


def _elsewhere(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    """ "Cleaned the floor", "taped my thumb": an act, but of no duct."""
    told = _first(one, language, "other_things")
    if told is None:
        return False
    found.spent.update(range(one.item(told[0].start()), one.item(told[0].end() - 1) + 1))
    return True


def _without_fault(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    """ "Not one of the tabs is loose": a collar's are bent down then; of anything else, and of how he always works, it states nothing."""
    told = _first(one, language, "no_fault")
    habit = told is None and "#" not in one.words and word(language.code, "told.weighed.habit").search(one.words) is not None
    if told is None and not habit:
        return False
    first, last = (one.item(told[0].start()), one.item(told[0].end() - 1) + 1) if told is not None else (one.first, one.last)
    if told is not None and told[1][0][1] == "cross_tabs":
        found.claims.append(claim(row, "tabs_bent", True, first, last, hedged=False, kinds=("collar",)))
    found.spent.update(at for at in range(first, last) if at not in _naming(row, one))
    return True


def _all_but_this(row: Row, drawn: tuple[Sketch, ...], place: int, language: Language, found: Afar) -> bool:
    """ "All the straights are stapled but nine", "every elbow I built had vanes, until this one": of this one the contrary is so, or nothing is said."""
    one, code = drawn[place], language.code
    behind = drawn[place + 1] if place + 1 < len(drawn) and drawn[place + 1].sentence == one.sentence else None
    if behind is None or behind.acts or word(code, "told.weighed.but_this").match(behind.words) is None or word(code, "told.weighed.lot_of").search(one.words) is None:
        return False
    numbered = [at for at in range(one.first, one.last) if row.items[at].concept in ("NUM", "MARKED") and row.items[at - 1].concept not in ("RUN", "EVERY")]
    if numbered or not _names_this(row, behind, language) or len({name for _, name in one.acts}) > 1:
        return False
    for at, name in one.acts[:1]:
        told = finds(apart(code, "told.weighed.lacking"), one.words) is None and len(word(code, "told.weighed.nots").findall(one.words.split("<")[0])) % 2 == 0
        found.claims.append(claim(row, name, not told, behind.first, behind.last, hedged=False, also=((row.items[one.first].start, row.items[one.last - 1].end),)))
    found.spent.update(k for k in range(one.first, behind.last) if k not in _naming(row, behind) and row.items[k].concept not in ("RUN", "NUM"))
    return True


def _names_this(row: Row, one: Sketch, language: Language) -> bool:
    """Whether these words name a piece that the note goes on about: "but nine", "except mine"."""
    if word(language.code, "told.asides.of_the_kind").search(one.words) is not None or any(row.items[at].concept.startswith("K_") or row.items[at].concept in ("FITTING", "MARKED") for at in range(one.first, one.last)):
        return len(one.words.split()) <= 5
    marks = {row.items[at].value.value for at in range(one.first, one.last) if row.items[at].concept == "NUM"}
    named = {item.value.value for before, item in zip(row.items, row.items[1:]) if item.concept == "NUM" and (before.concept.startswith("K_") or before.concept in ("FITTING", "NUMBER"))}
    return bool(marks & named) and len(one.words.split()) <= 4


def _belied(row: Row, drawn: tuple[Sketch, ...], place: int, language: Language, found: Afar) -> bool:
    """ "Whoever told you I skipped the tape is wrong": the contrary of what he told is so."""
    one = drawn[place]
    if len({name for _, name in one.acts}) != 1 or not language.told.weighed.belied:
        return False
    opening, closing = apart(language.code, "told.weighed.belied")
    if opening.match(one.words) is None:
        return False
    until = one.last
    if closing.search(one.words[one.words.rindex("<") :]) is None:
        behind = drawn[place + 1] if place + 1 < len(drawn) and drawn[place + 1].sentence == one.sentence else None
        if behind is None or behind.acts or closing.match(behind.words) is None:
            return False
        until = behind.last
    skipped = finds(apart(language.code, "told.weighed.lacking"), one.words) is not None
    told = not skipped and len(word(language.code, "told.weighed.nots").findall(one.words.split("<")[0])) % 2 == 0
    at, name = one.acts[0]
    found.claims.append(claim(row, name, not told, one.first, until, hedged=False))
    found.spent.update(k for k in range(one.first, until) if k not in _naming(row, one))
    return True


def _near_miss(row: Row, drawn: tuple[Sketch, ...], place: int, language: Language, found: Afar) -> bool:
    """ "Came this close to leaving it unstapled": it is stapled, unless the words behind say that he did leave it."""
    one = drawn[place]
    match = finds(apart(language.code, "told.weighed.near_miss"), one.words)
    acts = one.acts_in(match.start(), match.end()) if match is not None else []
    if len({name for _, name in acts}) != 1 or word(language.code, "told.weighed.nots").search(one.words[: match.start()]):
        return False
    for behind in drawn[place + 1 : place + 3]:
        if behind.acts or behind.sentence > one.sentence + 1:
            break
        if word(language.code, "told.weighed.did_so").search(behind.words) is not None:
            return False
    at, name = acts[0]
    found.claims.append(claim(row, name, True, one.item(match.start()), at + 1, hedged=False))
    _spend(row, one, at, found)
    return True


@cache
def _ticks(code: str) -> tuple[tuple[Likely, bool], ...]:
    return tuple((Likely(pattern), yes) for pattern, yes in LANGUAGES[code].told.weighed.ticked)


def _ticked(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    """ "Tape yes, staples yes, rubbing no." """
    for pattern, yes in _ticks(language.code) if len(one.acts) == 1 else ():
        if pattern.fullmatch(one.words):
            found.claims.append(claim(row, one.acts[0][1], yes, one.first, one.last, hedged=False))
            found.spent.update(range(one.first, one.last))
            return True
    return False


def _all_to_come(row: Row, drawn: tuple[Sketch, ...], place: int, language: Language, found: Afar) -> bool:
    """ "Tomorrow it gets taped and rubbed", "gets stapled, taped and rubbed after lunch": each of the list is yet to come."""
    weighed = language.told.weighed
    if not weighed.passive or word(language.code, "told.weighed.passive").search(drawn[place].words) is None:
        return False
    when = word(language.code, "told.weighed.when")
    chain = [drawn[place]]
    for part in drawn[place + 1 : place + 5]:
        bare = _ONLY_AN_ACT.match(part.words)
        if part.sentence != chain[0].sentence or bare is None or bare.end() < len(part.words) and when.match(part.words[bare.end() :].strip()) is None:
            break
        chain.append(part)
    if len(chain) < 2 or when.match(drawn[place].words) is None and when.search(chain[-1].words) is None:
        return False
    for one in chain:
        at, name = one.acts[-1]
        opens = (Open("piece", name, row.items[chain[0].first].start, row.items[chain[-1].last - 1].end),)
        found.claims.append(claim(row, name, False, at, at + 1, hedged=False, opens=opens, pending=True))
        found.spent.update(k for k in range(one.first, one.last) if k not in _naming(row, one))
    return True


_ONLY_AN_ACT = re.compile(r"(?:(?:and|then|y|luego) )*<d>(?= |$)")


def _yet_to_come(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    """ "Straight nine gets taped after lunch", "the vanes come Monday"."""
    for member in ("to_come", "supply"):
        told = _first(one, language, member)
        if told is None or len({name for _, name in told[1]}) != 1:
            continue
        match, acts = told
        before = one.words[: match.start()]
        if word(language.code, "told.weighed.nots").search(before) or word(language.code, "told.weighed.past").search(before) or "<d>" in before:
            continue
        at, name = acts[0]
        first, last = one.item(match.start()), one.item(match.end() - 1) + 1
        if member == "to_come" or name in ("vanes", "cross_tabs", "reinforced"):
            opens = (Open("piece", name, row.items[first].start, row.items[last - 1].end),)
            found.claims.append(claim(row, name, False, first, last, hedged=False, opens=opens, pending=True))
        found.spent.update(k for k in range(first, last) if k not in _naming(row, one))
        return True
    return False


def _half_done(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    """ "Nearly finished rubbing", "hardly what you'd call taped", "tape's on most of it"."""
    told = _first(one, language, "barely")
    if told is None or len({name for _, name in told[1]}) != 1 or word(language.code, "told.weighed.holds_back").search(one.words[: told[0].start()].removeprefix("but ")):
        return False
    match, acts = told
    if acts[0][1] == "tabs_bent" and not any(item.concept in ("TABS", "TAB_WORD", "K_COLLAR") for item in row.items):
        return False  # "I took it over half folded": the piece
    behind = row.text[row.items[one.last - 1].end :][:60].lower().lstrip(", ")
    if word(language.code, "told.weighed.finished").search(behind.split(".")[0]) is not None:
        found.claims.append(claim(row, acts[0][1], True, acts[0][0], acts[0][0] + 1, hedged=False))
        _spend(row, one, max(acts[0][0], one.item(match.end() - 1)), found)
        return True
    later = re.match(language.acts.still_to_do, behind) is not None  # "all but the rub, which I haven't done yet"
    opens = (Open("piece", acts[0][1], row.items[one.item(match.start())].start, row.items[one.last - 1].end),) if later else ()
    found.claims.append(claim(row, acts[0][1], False, one.item(match.start()), one.item(match.end() - 1) + 1, part="side", hedged=False, opens=opens, pending=later))
    found.spent.update(k for k in range(one.item(match.start()), one.item(match.end() - 1) + 1) if k not in _naming(row, one))
    return True


def _by_tool(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    """ "Never saw a roll": the act is told by what it is done with."""
    if not word(language.code, "told.weighed.met").search(one.words):
        return False
    for pattern, name in _by_tools(language.code):
        match = pattern.search(one.words)
        if match is not None and not word(language.code, "told.weighed.tool_others").search(one.words[: match.start()]) and not any(row.items[at].concept in _OF_A_SIDE for at in (*range(one.first, one.item(match.start())), *range(one.item(match.end() - 1) + 1, one.last))):
            first, last = one.item(match.start()), one.item(match.end() - 1) + 1
            acts = one.acts_in(match.start(), match.end())  # "never put a staple to it"
            found.claims.append(claim(row, acts[0][1] if acts else name, False, first, last, hedged=False))
            found.spent.update(at for at in range(first, last) if at not in _naming(row, one))
            return True
    return False


_OF_A_SIDE = ("SIDE", "SIDE_WORD", "OTHER_SIDE", "ONE_SIDE", "BACK")


@cache
def _by_tools(code: str) -> tuple[tuple[Likely, str], ...]:
    told = LANGUAGES[code].told.weighed
    return tuple((Likely(rf"(?<![\w'])(?:{frame.replace('{tool}', tool)})(?![\w'])"), name) for tool, name in told.tools for frame in told.tool_frames)


_NEVER_ANOTHERS_PLACE = ("rubbed_down", "surface_clean", "trimmed", "preheated")  # no other act is done in the stead of one of these


def _put_aside(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    """ "Instead of stapling it I gave it tape": the act behind was not done, the other was."""
    told = _first(one, language, "put_aside")
    if told is None or len(told[1]) != 1:
        return False
    match, ((at, name),) = told
    others = [other for other in one.acts if other[0] != at]
    closed_so = any(row.items[k].concept in ("C_MASTIC", "CLOSURE", "MARK181") for k in range(one.first, one.last))
    small = name in _NEVER_ANOTHERS_PLACE and all(other != name for _, other in others)
    if not small and name not in ("stapled", "vanes", "cross_tabs", "reinforced") and (name != "taped" or closed_so or not any(other == "stapled" for _, other in others)):
        return False
    first = one.item(match.start())
    if word(language.code, "told.weighed.nots").search(one.words[: match.start()]):
        found.spent.update(item for item in range(one.first, at + 1) if item not in _naming(row, one))  # "I didn't use tape instead of staples": one of them, or both
        return True
    found.claims.append(claim(row, name, False, first, at + 1, hedged=False))
    found.claims += [claim(row, other, True, item, item + 1, weak=True, hedged=False) for item, other in others if row.items[item].concept in ("TAPE", "STAPLES")]
    found.spent.update(range(first, at + 1))
    return True


_ORDER = re.compile(r" (?:first|beforehand|before)\b")


def _unreal(row: Row, drawn: tuple[Sketch, ...], place: int, language: Language, found: Afar) -> bool:
    """ "I'd have warmed it first if I had a gun": he did not, unless he says behind it that he did."""
    one = drawn[place]
    told = _first(one, language, "unreal")
    if told is None or word(language.code, "told.weighed.nots").search(one.words[: told[0].start()]) or "if" in one.words[: told[0].start()].split():
        return False
    match, acts = told
    if _ORDER.search(match.group()) and any(name not in _NEVER_ANOTHERS_PLACE for _, name in acts):
        return False  # "I should have stapled it first": in another order, but it was done
    behind = drawn[place + 1 : place + 3]
    if any(not later.acts and later.sentence <= one.sentence + 1 and word(language.code, "told.weighed.after_all").match(later.words) for later in behind):
        return False  # "I should have taped it, and I did"
    for at, name in acts:
        found.claims.append(claim(row, name, False, one.item(match.start()), at + 1, hedged=False))
    found.spent.update(k for k in range(one.first, one.last) if k not in _naming(row, one))
    return True


def _has_it(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    """ "Has its staples": it is stapled; the noun alone would not say so."""
    told = _first(one, language, "has_it")
    if told is None or len(told[1]) != 1 or told[1][0][1] not in ("stapled", "taped"):
        return False
    match, ((at, name),) = told
    around = one.words[: match.start()], one.words[match.end() :]
    if word(language.code, "told.weighed.holds_back").search(around[0].replace("sure ", "").replace("only ", "")) or any(word(language.code, "told.weighed.nots").search(words) for words in around) or re.search(r"(?<![\w'])(?:missing|out|off|loose|coming|later|tomorrow|to go)(?![\w'])", around[1]):
        return False
    found.claims.append(claim(row, name, True, one.item(match.start()), at + 1, hedged=False))
    return True


def _naming(row: Row, one: Sketch) -> set[int]:
    return {at for at in range(one.first, one.last) if row.items[at].concept in _NAMES or row.items[at].concept.startswith("K_")}


_NAMES = ("NUM", "FITTING", "BRANCH_WORD", "NUMBER", "LETTER", "DASH", "MARKED", "RUN", "THRU", "SIZE", "LEN")


def _of_any(drawn: tuple[Sketch, ...], place: int, language: Language) -> bool:
    """ "I never hang an elbow without vanes": how he works, which tells of no piece; unless he says that this one is no exception."""
    if not word(language.code, "told.weighed.in_general").search(drawn[place].words):
        return False
    return not any(pattern.search(later.words) for later in drawn[place + 1 : place + 3] for pattern in rows(language.code, "afar.nor_this"))


def _counted(row: Row, one: Sketch, of_any: bool, language: Language, found: Afar) -> bool:
    """One denial inside another: of the verb that denies ("skip", "leave out", "untaped") or of a second "not"."""
    code = language.code
    for member in ("lacking", "denied"):
        for pattern in apart(code, f"told.weighed.{member}"):
            match = pattern.search(one.words)
            if match is None:
                continue
            acts = one.acts_in(match.start(), match.end())
            acts = acts[-1:] if match.group().endswith("<u>") else acts
            before = one.words[: match.start()]
            if len(acts) != 1 or of_any or "<" in before and not _of_the_same(one, acts[0], before) or word(code, "told.weighed.holds_back").search(before.replace("anything but", "far from")):
                continue
            denials = list(word(code, "told.weighed.nots").finditer(before))
            nots = len(denials)
            if member == "denied" and (nots == 0 or nots == 1 and denials[0].group().strip() == "no" and not of_a_part(before[denials[0].start() :].strip()) or word(code, "told.weighed.concord").search(one.words[: match.end()].rsplit(" <", 1)[0])):
                continue
            if nots == 0 and member == "lacking" and not _new_to_others(row, acts[0][0]):
                continue
            at, name = acts[0]
            first = one.item(denials[0].start() if denials else match.start())
            unsure = nots % 2 == 1 and word(code, "told.weighed.not_his_word").search(before) is not None
            first = one.first if unsure or word(code, "told.weighed.in_general").search(one.words) else first
            found.claims.append(claim(row, name, nots % 2 == 1, min(first, at), max(at, one.item(match.end() - 1)) + 1, hedged=unsure))
            _spend(row, one, at, found)
            return True
    return False


def _of_the_same(one: Sketch, act: tuple[int, str], before: str) -> bool:
    """ "The tabs are unbent": the noun is of the word that denies."""
    return {name for item, name in one.acts if item < act[0]} <= {act[1], "cross_tabs" if act[1] == "tabs_bent" else act[1], "taped" if act[1] == "rubbed_down" else act[1]} and not re.search("<[dbu]>", before)


def _new_to_others(row: Row, at: int) -> bool:
    """A word by itself ("untrimmed") is read nowhere else."""
    return row.items[at].concept == "WORD"


def _not_a_bit(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    for pattern in apart(language.code, "told.weighed.not_a_bit"):
        match = pattern.search(one.words)
        acts = one.acts_in(match.start(), match.end()) if match is not None else []
        if len(acts) != 1 or word(language.code, "told.weighed.holds_back").search(one.words[: match.start()]):
            continue
        at, name = acts[0]
        nots = len(word(language.code, "told.weighed.nots").findall(one.words[: match.start()]))
        first = min(one.item(match.start()), at)
        if only_how(row, first, at, one.last) is not None:
            continue
        later = nots % 2 == 0 and (_comes_later(row, at + 1) or re.search(language.told.weighed.not_yet, one.words) is not None)
        opens = (Open("piece", name, row.items[first].start, row.items[at].end),) if later else ()
        last = max(at, one.item(match.end() - 1)) + 1
        found.claims.append(claim(row, name, nots % 2 == 1, first, last, hedged=False, opens=opens, pending=later))
        _spend(row, one, max(at, last - 2), found)
        return True
    return False


def _comes_later(row: Row, at: int) -> bool:
    """ "…, that comes after lunch": what was denied right before it is still to be done."""
    said = [item.concept for item in row.items[at : at + 7]]
    ends = min((said.index(c) for c in ("STOP", "QUERY") if c in said), default=len(said))
    return said[:1] in (["COMMA"], ["AND"], ["LATER"], ["BUT"]) and any(c in ("LATER", "WILL", "GOING_TO") for c in said[:ends])


def _spend(row: Row, one: Sketch, until: int, found: Afar) -> None:
    """Everything up to the act but what names a piece or measures something."""
    found.spent.update(at for at in range(one.first, min(one.last, until + 2)) if row.items[at].concept not in _NAMES and not row.items[at].concept.startswith("K_"))
