"""Questions that the speaker answers himself: "Taped? Yep. Rubbed? Nah.", "did I tape it? Yes I did", "how long are the tabs? Four inches"."""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim, unit_of
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import Likely
from logbook.reading.clauses.marks import mark_text
from logbook.reading.clauses.mention import Mention
from logbook.reading.words.phrasing import words_of
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.tokens import plain
from logbook.reading.composed.two_voices import asked_by_name

_I_DID = (["i", "did"], ["we", "did"], ["i", "have"], ["it", "is"], ["they", "are"], ["it", "was"], ["i", "sure", "did"], ["it", "sure", "is"])
_ASKED = (
    "FILLER", "DET", "IT", "I", "QUESTION", "BE", "ON", "IN", "HAVE", "AND", "ALL", "IN_PLACE", "ASKS", "COMMA", "THIS", "WITH", "DOWN", "YET", "OF", "THROUGH", "UNDER", "INSIDE",
    "OUTSIDE", "UP", "OUT", "OFF", "FACING", "BOARD", "JOINT", "END", "SIDE_WORD", "AROUND", "OVER", "HAVING",
)  # fmt: skip
_MOST = 8  # items of a question that is his own, besides those that name the piece
_MEASURES = {"length": ("NUM", "LEN", "FRAC"), "count": ("NUM",), "degrees": ("NUM", "DEG", "TEMP_F"), "way": ("IN", "OUT", "INSIDE", "OUTSIDE")}
_LEADS_IN = ("FILLER", "DET", "HEDGE", "THINK", "IT", "BE", "EVERY", "ON", "ONLY", "THIS", "ALL", "COMMA", "NUMBER", "TO", "CLINCHED", "COLD_ON", "TEMP")
_ASKED_OF = ("STAPLE", "TAPE_IT", "TAPE", "RUB", "STAPLED", "TAPED", "RUBBED", "TRIM", "WIPE", "HANG")
_SAYS_TOO = {"staple_spacing": "stapled", "staple_leg": "stapled", "staple_clinch": "stapled", "sides_stapled": "stapled", "sides_taped": "taped", "cross_tab_length": "cross_tabs", "cross_tab_spacing": "cross_tabs"}


@dataclass
class Answers:
    claims: list[Claim] = field(default_factory=list)
    spent: set[int] = field(default_factory=set)  # items that question and answer take up
    names: set[int] = field(default_factory=set)  # items of a question that name the piece: they are his own
    bare: list[int] = field(default_factory=list)  # numbers right behind the act that is asked for: "did I staple eighteen?"


_TOPICS = ("DAMAGE", "GAP")
_WITH_A_TOPIC = ("DET", "THIS", "FILLER", "AND", "ON", "IN", "OF", "FACING", "BOARD", "JOINT", "END", "SIDE", "SIDE_WORD", "DAMAGE_PLACE", "WORD", "OTHER", "BACK", "BUT", "GENERIC", "FROM", "ASKS")


def topics(row: Row, language: Language) -> Row:
    """ "The tear? It's still there. Half inch.": what is named so and not asked is gone on about, as if a comma stood behind it and before its bare measure."""
    items = row.items
    made = list(items)
    for at, item in enumerate(items):
        if item.concept != "QUERY":
            continue
        first = next((k + 1 for k in range(at - 1, -1, -1) if items[k].concept in ("STOP", "QUERY", "COMMA")), 0)
        end = next((k for k in range(at + 1, len(items)) if items[k].concept in ("STOP", "QUERY")), len(items))
        concepts = [items[k].concept for k in range(first, at) if not _names_where(items, first, k)]
        named = sum(concept in _TOPICS for concept in concepts) == 1 and set(concepts) <= {*_TOPICS, *_WITH_A_TOPIC} and len(concepts) <= _MOST
        pointed = "DET" in concepts[:2] or "THIS" in concepts[:2]  # of the Spanish sign too
        if not named or not pointed or end == at + 1 or re.match(language.acts.topic_over, plain(row.words(at + 1, end))) is not None:
            continue
        made[at] = replace(item, concept="COMMA")
        bare = [items[k].concept for k in range(end + 1, next((k for k in range(end + 1, len(items)) if items[k].concept in ("STOP", "QUERY", "COMMA")), len(items)))]
        if end < len(items) and items[end].concept == "STOP" and {"LEN", "FRAC"} & set(bare) and set(bare) <= {"LEN", "FRAC", "WIDE", "LONG", "HEDGE", "FILLER", "THINK", "AROUND"}:
            made[end] = replace(items[end], concept="COMMA")
    return row if made == list(items) else Row.of(row.text, tuple(made))


def _names_where(items, first: int, at: int) -> bool:
    """Whether this item tells which piece a thing is on: "the dent on straight 5?" """
    while at > first and (items[at].concept.startswith("K_") or items[at].concept in ("NUM", "MARKED", "NUMBER", "FITTING", "LETTER")):
        at -= 1
        if items[at].concept in ("ON", "IN", "OF"):
            return True
    return False


def answers(row: Row, cut: tuple[Clause, ...], language: Language) -> Answers:
    """What question and answer state together."""
    found = Answers()
    for place, clause in enumerate(cut[:-1]):
        if clause.last >= len(row.items) or row.is_blank(clause.first) or row.is_blank(cut[place + 1].first):
            continue
        if _none_of_it(row, cut, place, language, found) or not _is_asked(row, clause, cut[place + 1], language):
            continue
        if row.items[cut[place + 1].first].concept in ("NO_DAMAGE", "DAMAGE"):
            continue  # "foil's clean, no rips"
        if row.items[clause.last].concept == "QUERY" and language.acts.that_is_it and re.match(language.acts.that_is_it, plain(row.words(cut[place + 1].first, cut[place + 1].last))):
            found.names.update(at for at in range(clause.first, clause.last) if row.items[at].concept in ("CLOSURE", "MARK181", "C_MASTIC"))  # "You know that gray tape? That's what's on straight nine."
            continue
        names = _names(row, clause) if row.items[clause.last].concept == "QUERY" or _tells_of_an_act(row, clause) else set()
        bare = clause.last - 1
        if row.items[clause.last].concept == "QUERY" and not names and row.items[bare].concept == "NUM" and bare > clause.first and row.items[bare - 1].concept in _ASKED_OF and row.items[bare].value.value > 4:
            names = {bare}
        if clause.last - clause.first - len(names) > _MOST or _asks_another(row, clause):
            continue
        if _why_not(row, clause, cut[place + 1], language, names, found):
            continue
        if _measured(row, clause, cut[place + 1], language, names, found) or _turned(row, clause, cut[place + 1], language, names, found):
            continue
        if any(row.items[at].concept == "ON_ITS_OWN" for at in range(clause.first, clause.last)):
            names |= {at for at in range(clause.first, clause.last) if row.items[at].concept in ("ACCESSORY", "LB")}  # what it weighs is told in asking
        _acted(row, clause, cut[place + 1], language, names, found)
    return found


def _acted(row: Row, clause: Clause, reply: Clause, language: Language, names: set[int], found: Answers) -> None:
    """ "Did I staple tee six? No sir." """
    asked_to = _asked_to(row, clause)
    acts = [at for at in range(clause.first, asked_to) if at not in names and (row.items[at].concept in DENIED or row.items[at].concept == "C_MASTIC")]
    others = [at for at in range(clause.first, asked_to) if at not in acts and at not in names and row.items[at].concept not in _ASKED]
    yes = _reply(row, reply, language)
    if not acts or len({DENIED.get(row.items[at].concept) for at in acts}) != 1 or others or yes is None:
        return
    at = acts[-1] if "SHOWS" in [row.items[k].concept for k in acts] else acts[0]
    end = reply.last if reply.last - reply.first <= 4 else reply.first + 1
    if row.items[at].concept == "C_MASTIC":
        if yes:
            found.claims.append(claim(row, "closure", "mastic", at, at + 1, hedged=False))
    else:
        name, value = DENIED[row.items[at].concept]
        later = not yes and not {"YET", "NOT_DONE"}.isdisjoint(item.concept for item in row.items[reply.first : reply.last])
        opens = (Open("piece", name, row.items[at].start, row.items[end - 1].end),) if later else ()
        if value is False:
            found.claims.append(claim(row, name, yes, at, end, hedged=False, opens=opens, pending=later))
        elif not yes or row.items[at].concept == "DAMAGE":
            found.claims.append(claim(row, name, row.items[at].value if yes else value, at, at + 1 if yes else end, hedged=False))
    behind = next((k for k in range(asked_to, clause.last) if row.items[k].concept in DENIED and DENIED[row.items[k].concept][1] is False), None)
    if behind is not None:  # "when I taped it", so it is taped
        found.claims.append(claim(row, DENIED[row.items[behind].concept][0], True, behind, behind + 1, weak=True, hedged=False))
    found.names.update(names)
    found.bare += [k for k in names if row.items[k].concept in ("NUM", "MARKED") and row.items[k - 1].concept in _ASKED_OF]
    found.spent.update(k for k in (*range(clause.first, asked_to), clause.last) if k not in names)
    found.spent.update(range(reply.first, end))


def _asked_to(row: Row, clause: Clause) -> int:
    """ "Did I warm it before I taped it?": the end of what is asked for; the act behind tells only when."""
    return next((at for at in range(clause.first + 1, clause.last - 1) if row.items[at].concept in _TELLS_WHEN and row.items[at + 1].concept == "I"), clause.last)


_TELLS_WHEN = ("ROOM", "WHEN", "AFTER")


def _tells_of_an_act(row: Row, clause: Clause) -> bool:
    """ "Tape on straight nine: none": an act by its name, and the piece."""
    at = clause.first + 1 if row.items[clause.first].concept == "DET" else clause.first
    return at + 2 < clause.last and row.items[at].concept in _BY_NAME and row.items[at + 1].concept in ("ON", "IN", "OF", "TO")


def _goes_on(row: Row, cut: tuple[Clause, ...], place: int, sentence: int) -> bool:
    """ "tape is 181A-H, no, 181A-P": what stands behind puts right, or lists on."""
    return place < len(cut) and cut[place].sentence == sentence and any(item.concept in _TOLD_ON for item in row.items[cut[place].first : cut[place].last])


_TOLD_ON = frozenset(("MARK181", "CLOSURE", "C_MASTIC", "NUM", "LEN", "FRAC", "SIZE", "NO", "NOT", *DENIED))


def _none_of_it(row: Row, cut: tuple[Clause, ...], place: int, language: Language, found: Answers) -> bool:
    """ "Rubbing, straight nine, well: none": nothing of the one act that the sentence named last, and neither did nor denied before."""
    reply = cut[place + 1]
    if not language.acts.none_of_it or reply.sentence != cut[place].sentence or _goes_on(row, cut, place + 2, reply.sentence):
        return False
    if re.fullmatch(language.acts.none_of_it, plain(row.words(reply.first, reply.last))) is None:
        return False
    first = next(clause.first for clause in cut if clause.sentence == reply.sentence)
    acts = [at for at in range(first, cut[place].last) if row.items[at].concept in DENIED]
    nouns = [at for at in acts if row.items[at].concept in _BY_NAME or row.words(at, at + 1).lower().endswith(("ing", "down"))]
    if len(nouns) != 1 or acts[-1] != nouns[0] or any(row.items[at].concept in _LACKS for at in range(nouns[0], cut[place].last)):
        return False
    if nouns[0] > first and row.items[nouns[0] - 1].concept in _LACKS:
        return False
    found.claims.append(claim(row, DENIED[row.items[nouns[0]].concept][0], False, nouns[0], reply.last, hedged=False))
    found.spent.update((nouns[0], *range(reply.first, reply.last)))
    return True


_BY_NAME = ("TAPE", "STAPLES", "VANES", "TABS", "RUB", "TRIM", "WIPE", "TIE_RODS", "FLAP", "SCRIM")
_LACKS = frozenset("NO NOT NOT_DONE MISSING TROUBLE PENDING FORGOT LEFT_OUT EXCEPT ALL_BUT NEED WILL IF QUESTION UNDONE DAMAGE GAP DRAWING OTHER DIFFERENT".split())


def asked_of(row: Row, told: Answers, named: list[Mention], language: Language) -> list[Mention]:
    """ "Did I staple eighteen? Yes.": the one number so asked for, where no piece was named by another."""
    if not told.bare or any(m.mark is not None or m.batch for m in named):
        return named
    marks = {mark_text(row, at, at + 1, language): at for at in told.bare}
    at = min(marks.values())
    return named if len(marks) > 1 else sorted([*named, Mention(at, at + 1, mark=next(iter(marks)), mark_at=(at, at + 1))], key=lambda m: m.first)


def _why_not(row: Row, clause: Clause, reply: Clause, language: Language, names: set[int], found: Answers) -> bool:
    """ "Why no staples in cap two? Because …": the question takes it as given, unless the answer is that there are."""
    if row.items[clause.last].concept != "QUERY" or re.match(language.acts.why_not, plain(row.words(clause.first, clause.last))) is None:
        return False
    acts = {DENIED[row.items[at].concept] for at in range(clause.first, clause.last) if row.items[at].concept in DENIED}
    if len(acts) != 1 or _reply(row, reply, language) is True or next(iter(acts))[1] is not False:
        return False
    found.claims.append(claim(row, next(iter(acts))[0], False, clause.first, clause.last, hedged=False))
    found.names.update(names)
    found.spent.update(k for k in range(clause.first, clause.last + 1) if k not in names)
    return True


def _measured(row: Row, clause: Clause, reply: Clause, language: Language, names: set[int], found: Answers) -> bool:
    """ "Which way do the staples clinch on branch ten? Inward", "how many sides did I tape? Three"."""
    if row.items[clause.last].concept != "QUERY" or not language.acts.asks:
        return False
    said = plain(row.words(clause.first, clause.last))
    asked = next(((name, sort) for pattern, name, sort in _asks(language.code) if pattern.match(said)), None)
    if asked is None:
        return False
    name, sort = asked
    name = _sized_before(row, clause) if name == "(size)" else name
    if name is None:
        return False
    if name == "(listed)":
        if _reply(row, reply, language) is not False:
            return False
        one = claim(row, "closure", "other_tape", clause.first, reply.last, hedged=False)
        end = reply.last
    else:
        at = reply.first
        end = row.sentence_end(at)
        reply = replace(reply, last=end)  # "gap? Yeah, three-eighths"
        while at < reply.last and row.items[at].concept in _LEADS_IN:
            at += 1
        if at >= reply.last or row.items[at].concept not in _MEASURES[sort]:
            return False
        item, end = row.items[at], at + 1
        name = _spaced_before(row, clause) if name == "(spacing)" else name
        if name is None:
            return False
        value = ("outward" if item.concept in ("OUT", "OUTSIDE") else "inward") if sort == "way" else item.value.value
        if sort == "count":
            if value.denominator != 1 or not 0 <= value <= 4:
                return False
            value = int(value)
        unit = unit_of(item) if sort == "length" else "°C" if getattr(item.value, "unit", None) == "°C" else None
        hedged = any(row.items[k].concept in ("HEDGE", "THINK") for k in range(reply.first, reply.last))
        one = claim(row, name, value, at, at + 1, uses=(at,), said_unit=unit, hedged=hedged)
        too = _SAYS_TOO.get(name)
        if too is not None and value != 0:
            found.claims.append(claim(row, too, True, at, at + 1, weak=True, hedged=False))
    found.claims.append(one)
    found.names.update(names)
    found.spent.update(k for k in range(clause.first, clause.last + 1) if k not in names)
    found.spent.update(range(reply.first, end))
    return True


_WAYS = {"OUT": "outward", "OUTSIDE": "outward", "IN": "inward", "INSIDE": "inward", "MOVE_OUT": "outward", "MOVE_IN": "inward"}


def _turned(row: Row, clause: Clause, reply: Clause, language: Language, names: set[int], found: Answers) -> bool:
    """ "Did the staples on 112 clinch outward? No, they clinched inward": the way that the answer tells, or that it says yes to; of a bare "no" the other, and not for sure."""
    if row.items[clause.last].concept != "QUERY":
        return False
    concepts = {row.items[at].concept for at in range(clause.first, clause.last)}
    asked = next((_WAYS[row.items[at].concept] for at in range(clause.first, clause.last) if row.items[at].concept in _WAYS and at + 1 not in names), None)
    legs = "LEG" in concepts or "leg" in row.words(clause.first, clause.last).lower()
    if asked is None or not (legs or "STAPLES" in concepts and concepts & {"CLINCHED", "MOVE_OUT"}) or concepts & {"LEN", "FRAC", "LONG", "ALL"}:
        return False  # "are the staples in?" asks for no way
    end = row.sentence_end(reply.first)
    told = next((at for at in range(reply.first, end) if row.items[at].concept in _WAYS), None)
    yes = _reply(row, reply, language)
    if told is None and yes is None:
        return False
    value = _WAYS[row.items[told].concept] if told is not None else asked if yes else "inward" if asked == "outward" else "outward"
    at = reply.first if told is None else told
    found.claims.append(claim(row, "staple_clinch", value, at, at + 1, hedged=told is None and not yes))
    found.claims.append(claim(row, "stapled", True, at, at + 1, weak=True, hedged=False))
    found.names.update(names)
    found.bare += [k for k in names if row.items[k].concept == "NUM" and row.items[k - 1].concept in ("ON", "IN")]
    found.spent.update(k for k in range(clause.first, clause.last + 1) if k not in names)
    found.spent.update(range(reply.first, at + 1))
    return True


_SPACED = {"STAPLED": "staple_spacing", "STAPLES": "staple_spacing", "SCREWS": "screw_spacing", "TABS": "cross_tab_spacing", "K_HANGER": "hanger_spacing"}


def _spaced_before(row: Row, clause: Clause) -> str | None:
    """ "… stapled. Spacing? Three": of the thing named last that can be spaced."""
    return next((_SPACED[row.items[k].concept] for k in range(clause.first - 1, -1, -1) if row.items[k].concept in _SPACED), None)


_SIZED = {"DAMAGE": "damage_width", "GAP": "gap", "STAPLES": "staple_leg", "STAPLED": "staple_leg", "TABS": "cross_tab_length"}


def _sized_before(row: Row, clause: Clause) -> str | None:
    """ "… A tear. How big? Half inch": of the thing named last that is measured so."""
    return next((_SIZED[row.items[k].concept] for k in range(clause.first - 1, max(-1, clause.first - 12), -1) if row.items[k].concept in _SIZED), None)


def _names(row: Row, clause: Clause) -> set[int]:
    """The items of a question that name the piece: "… on tee six", "… for straight eleven on run five"."""
    named: set[int] = set()
    for at in range(clause.first, clause.last):
        concept, before = row.items[at].concept, row.items[at - 1].concept if at > clause.first else ""
        if concept.startswith("K_") or concept in ("FITTING", "NUMBER", "MARKED", "RUN", "BRANCH_WORD"):
            named.add(at)
        elif concept in ("NUM", "LETTER") and at - 1 in named | ({at - 1} if before == "ON" or before == "IN" and concept == "NUM" and row.items[at].value.value >= 10 else set()):
            named.add(at)
    return named


@cache
def _asks(code: str) -> tuple[tuple[Likely, str, str], ...]:
    return tuple((Likely(words), name, sort) for words, name, sort in LANGUAGES[code].acts.asks)


def _is_asked(row: Row, clause: Clause, reply: Clause, language: Language) -> bool:
    """A question, or a list that is ticked off: "taped: no", "stapled, yes." """
    sign = row.items[clause.last]
    if sign.concept == "QUERY":
        return True
    if row.items[reply.first].concept == "DIRTY":
        return False  # "taped, not wiped": told of the facing
    alone = reply.last - reply.first == 1 and len(row.words(reply.first, reply.last).split()) < 3 and (reply.last >= len(row.items) or row.items[reply.last].concept in ("STOP", "COMMA"))
    alone = alone or _NOT_YET.issuperset(item.concept for item in row.items[reply.first : reply.last]) and reply.last - reply.first <= 3
    alone = alone or _tells_of_an_act(row, clause) and _ends(row, reply) and any(re.fullmatch(words, plain(row.words(reply.first, reply.last))) for words in language.acts.says_no)
    if sign.concept != "COMMA" or not alone:
        return False
    ticked = row.text[sign.start : sign.end] in (":", "-", "–", "—", "=")
    if reply.last < len(row.items) and row.items[reply.last].concept == "COMMA":
        return ticked or _is_ticked_off(row, clause, reply)
    return ticked or reply.last >= len(row.items) or row.items[reply.last].concept == "STOP"


def _ends(row: Row, reply: Clause) -> bool:
    return reply.last >= len(row.items) or row.items[reply.last].concept in ("STOP", "QUERY")


_NOT_YET = frozenset(("NOT", "NO", "YET", "NOT_DONE", "FILLER"))


def _is_ticked_off(row: Row, clause: Clause, reply: Clause) -> bool:
    """ "Rubbed, no, the squeegee walked off": a sentence that begins with the one act, and a reason behind the answer that is no other act put in its place."""
    if clause.last - clause.first != 1 or (clause.first > 0 and row.items[clause.first - 1].concept not in ("STOP", "QUERY")):
        return False
    stop = row.sentence_end(reply.last)
    return not any(item.concept in DENIED or item.concept in ("CLOSURE", "C_MASTIC", "MARK181", "FIX", "NUM", "LEN", "SCREWS") for item in row.items[reply.last : stop])


def _reply(row: Row, clause: Clause, language: Language) -> bool | None:
    said = row.text[row.items[clause.first].start : row.items[clause.last - 1].end].lower().replace(",", "").replace(".", "")
    words = said.split()
    if not words:
        return None
    stop = row.sentence_end(clause.first)
    if language.acts.ironies and re.search(language.acts.ironies, plain(row.words(clause.first, stop))):
        return False  # "Sure, in my dreams"
    if words[0] in words_of("small.yes") or words[:2] in (["you", "bet"], ["of", "course"]) or words in _I_DID:
        return True
    if words[0] in words_of("small.no") or words[:2] in (["left", "them"], ["left", "it"], ["skipped", "them"], ["skipped", "it"], ["forgot", "them"], ["forgot", "it"], ["never", "did"], ["didn't"], ["haven't"], ["las", "dejé"], ["i", "didn't"], ["i", "haven't"], ["we", "didn't"], ["it", "isn't"], ["they", "aren't"]) or words in (["none"], ["skipped"], ["forgot"]) or words[:2] == ["todavía", "no"]:
        return False
    whole = " ".join(words).replace("’", "'")
    for value, patterns in ((False, language.acts.says_no), (True, language.acts.says_yes)):
        if any(re.fullmatch(pattern, whole) for pattern in patterns):
            return value
    return None


def _asks_another(row: Row, clause: Clause) -> bool:
    """ "Did you tape it?" is asked of somebody else, who may be the one that answers."""
    words = set(row.text[row.items[clause.first].start : row.items[clause.last - 1].end].lower().split())
    begin = row.items[clause.first - 1].end if clause.first else 0
    return not words.isdisjoint(_ANOTHER - {"you"} if asked_by_name(row.text, begin, row.items[clause.first].start) else _ANOTHER)


_ANOTHER = frozenset(("you", "he", "they", "she", "anybody", "anyone", "somebody", "we", "él", "ellos", "tú", "ustedes"))
