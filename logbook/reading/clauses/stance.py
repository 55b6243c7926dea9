"""Whose words: what a drawing asks for, somebody else did, is planned, asked, supposed or to be remembered states nothing.

Answers which items of a row are not the speaker's own work, each with the reason.
"""

from __future__ import annotations

import re
from functools import cache, lru_cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.befallen import harmed
from logbook.reading.clauses.comes_back import back_at
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.how_it_is import is_so_now
from logbook.reading.words.likely import Likely, standing
from logbook.reading.words.phrasing import begins, in_any, rows, word, words_of
from logbook.reading.clauses.or_something import or_something_so
from logbook.reading.clauses.news import is_told_of_it
from logbook.reading.clauses.relative import tells_where, the_one_of
from logbook.reading.words.tokens import plain
from logbook.record import record

_LEADING = ("FILLER", "AND", "BUT", "COMMA", "THINK", "FIX", "OR", "THIS", "DET", "HEDGE", "LATER")
_ENDS = ("STOP", "QUERY")
_OWN_ACTS = ("STAPLED", "TAPED", "RUBBED", "STAPLES", "SIZE", "VANES", "MOVE_IN", "MOVE_DOWN", "MARK181")
OWN, DRAWING, OTHER, QUESTION, CONDITION, REMINDER, PLAN = "own", "drawing", "other", "question", "condition", "reminder", "plan"


@record
class Clause:
    first: int
    last: int  # items first to last - 1, without the comma or stop behind it
    sentence: int


def would(row: Row, clause: Clause) -> bool:
    """ "If we had the long ones we could staple it", and behind it "but we don't": what is denied is the thing he would need, not the act."""
    return in_any("told.voices.would").match(row.words(clause.first, clause.last).lower().replace("’", "'")) is not None


def clauses(row: Row) -> tuple[Clause, ...]:
    """Stretches between commas, stops, "but" and the word that gives a reason."""
    why = {match.end() for match in in_any("acts.tells_why").finditer(row.text.lower())}
    made: list[Clause] = []
    start, sentence = 0, 0
    for at, item in enumerate(row.items):
        gives_reason = item.start in why
        if item.concept in (*_ENDS, "COMMA", "BUT") or gives_reason:
            if at > start:
                made.append(Clause(start, at, sentence))
            start = at if item.concept == "BUT" or gives_reason else at + 1
            if item.concept in _ENDS and (at == 0 or row.items[at - 1].concept not in _ENDS):  # "..." ends one sentence
                sentence += 1
    if start < len(row.items):
        made.append(Clause(start, len(row.items), sentence))
    return tuple(made)


def stances(row: Row, language: Language) -> dict[int, str]:
    """Item -> why it states nothing. Items that may state something are absent."""
    found: dict[int, str] = {}
    cut = clauses(row)
    asked = {row_sentence for row_sentence in _asked(row, cut)}
    carried: tuple[int, str] | None = None  # (sentence, stance) that goes on until somebody else speaks
    theirs = False  # what goes on told of work that is another's
    drawn = -1  # the sentence that told last what is asked for
    begun = -1  # the sentence looked at last
    for clause in cut:
        if begun != clause.sentence or any(item.concept in ("DOUBT", "REMIND", "QUESTION") for item in row.items[clause.first : clause.last]):
            begun = clause.sentence
            own = _behind_rhetoric(row, clause, language)
            if own is not None:
                carried = None
                asked.discard(clause.sentence)
                found.update(dict.fromkeys(range(clause.first, min(own, clause.last)), QUESTION))
                if own >= clause.last:
                    continue
                clause = Clause(own, clause.last, clause.sentence)
        if carried is not None and (carried[0] != clause.sentence or row.text[row.items[clause.first - 1].start] == ";"):
            carried = None
        items = row.items[clause.first : clause.last]
        lead = _lead(items)
        if row.is_blank(clause.first) and row.is_blank(clause.last - 1):
            if carried is not None and (items[min(lead, len(items) - 1)].concept == "I" or _i_made(row, items, lead)) and any(item.concept in ("NUM", "LEN", "FRAC") for item in items):
                carried = None  # "he wanted it back twenty-four, I went back eighteen": what he did instead
            continue  # an aside: it says nothing of whose the rest is
        head = items[lead].concept if lead < len(items) else ""
        if carried is not None and carried[1] in (OTHER, DRAWING) and (back := back_at(row, clause.first, clause.last)) is not None:
            found.update(dict.fromkeys(range(clause.first, back), carried[1]))
            carried = None
            continue
        if carried is not None and (items[0].concept == "BUT" or head in ("I", "SEE") or _i_made(row, items, lead) or _mine(row, items, lead) or _is_mine(row, clause, language) or (head == "IT" and _this_one(row, items, lead)) or (carried[1] == OTHER and (_so_then(row, items, lead) or not theirs and (_as_it_is(row.words(clause.first, clause.last), language) or _names_a_piece(row, clause, lead, language))))):
            carried = None
        if carried is not None and carried[1] == CONDITION and in_any("acts.because").match(row.words(clause.first, clause.last).lower()) is not None and not {"IF", "WILL"} & {item.concept for item in items}:
            carried = None  # "I'd have sent it back if Tony did it, since the flap's not stapled"
        if carried is not None and carried[1] == PLAN and is_so_now(row, clause.first, clause.last):
            carried = None
        if carried is not None:
            found.update(dict.fromkeys(range(clause.first, clause.last), carried[1]))
            continue
        if drawn == clause.sentence and _wanted_everywhere(row, clause):
            found.update(dict.fromkeys(range(clause.first, clause.last), DRAWING))
            continue
        stance, begin, goes_on = _stance(row, clause, items, lead, head, clause.sentence in asked, language)
        if stance is not None:
            mine = _then_i(row, items, lead, stance, language) if begin == clause.first and stance in (OTHER, DRAWING) else None
            if mine is None and stance in (OTHER, DRAWING) and (back := back_at(row, begin, clause.last)) is not None:
                mine = back - clause.first
            found.update(dict.fromkeys(range(begin, clause.last if mine is None else clause.first + mine), stance))
            goes_on = goes_on and mine is None
            drawn = clause.sentence if stance == DRAWING else drawn
            if goes_on:
                carried, theirs = (clause.sentence, stance), any(item.concept in _OWN_ACTS or item.concept.startswith("K_") for item in items)
    return found


def _behind_rhetoric(row: Row, clause: Clause, language: Language) -> int | None:
    """The item behind words that only look like a question: "can you believe straight nine isn't taped?", "what can I say, it's at three"."""
    until = row.sentence_end(clause.first)
    said = plain(row.text[row.items[clause.first].start : row.items[until - 1].end])
    match = word(language.code, "told.voices.rhetorical").match(said.replace(",", " ,"))
    if match is None:
        return None
    behind = row.text[row.items[until].end :] if until < len(row.items) else ""
    if word(language.code, "told.voices.bet_lost").match(plain(behind).strip()) is not None:
        return None
    end = row.items[clause.first].start + len(match.group().replace(" ,", ",").rstrip())
    return next((at for at in range(clause.first, until) if row.items[at].start >= end and row.items[at].concept != "COMMA"), until)


def _wanted_everywhere(row: Row, clause: Clause) -> bool:
    """ "The spec calls for staples every two, tape and vanes in every ninety": the list goes on, and tells of no piece."""
    concepts = {item.concept for item in row.items[clause.first : clause.last]}
    everywhere = re.search(r"\b(?:in|on|at) (?:every|each|all(?: of)? the)\b", row.words(clause.first, clause.last).lower())
    return everywhere is not None and not concepts & {"STAPLED", "TAPED", "RUBBED", "I", "IN_PLACE", "BUT"}


def _stance(row, clause: Clause, items, lead: int, head: str, asked: bool, language):
    concepts = [item.concept for item in items]
    if "REMIND" in concepts:
        at = concepts.index("REMIND")
        return REMINDER, clause.first + at, True
    if asked and (head in ("QUESTION", "ASKS") or "QUESTION" in concepts or not _is_tag(row, clause)):
        at = concepts.index("QUESTION") if "QUESTION" in concepts else 0
        if at and head == "BE" and concepts[at - 1] == "OR" and "'" not in row.words(clause.first + lead, clause.first + lead + 1).replace("’", "'"):
            at = lead  # "is two inch tape okay on tee 9 or do I need the three?"
        return QUESTION, clause.first + at, True
    if head == "QUESTION" and tells_where(row, clause.first, language):
        lead, head = lead + 1, concepts[lead + 1] if lead + 1 < len(concepts) else ""
    if head == "QUESTION" and not _tells_what(row.words(clause.first, clause.last), language):
        return QUESTION, clause.first, True
    if head == "WORD" and row.text[items[lead].start : items[lead].end].lower() == "you" and concepts[lead + 1 : lead + 2] and concepts[lead + 1] in ("STAPLE", "TAPE_IT", "RUB", "TRIM", "WIPE"):
        return REMINDER, clause.first, True  # "you staple it every two, you tape it": how it is done
    if "IF" in concepts:
        at = concepts.index("IF")
        named = any(concepts[k + 1] == "NUM" for k in range(at - 1) if concepts[k].startswith("K_") or concepts[k] == "FITTING")
        if at <= 1 and _only_since(row, clause):
            return CONDITION, clause.first, False
        to_come = "WILL" in concepts[:at] and row.words(clause.first + at, clause.first + at + 1).lower().startswith(("once", "when"))  # "I'll trim it once it's on the bench"
        undone = word(language.code, "acts.no_deed").search(plain(row.words(clause.first, clause.first + at))) is not None if at else False  # "I'd have used mastic if we had it, this is tape"
        whole = at > 3 and not named and in_any("told.voices.i_would").match(plain(row.words(clause.first, clause.first + at))) is not None  # "I'd do ten on the screws if I had enough"
        return CONDITION, clause.first + (0 if whole or at <= 3 and not named and not to_come else at), not undone and not whole
    if "DOUBT" in concepts and not or_something_so(row, clause.last, clause.first + concepts.index("DOUBT")):
        return QUESTION, clause.first + concepts.index("DOUBT"), False
    if "SHOULD_HAVE" in concepts and clause.last < len(row.items) and row.items[clause.last].concept == "BUT":
        return DRAWING, clause.first + concepts.index("SHOULD_HAVE"), False
    if "DRAWING" in concepts and not built_so(row, clause, language):
        at = concepts.index("DRAWING")
        if at > 2 and concepts[at - 1] == "AND" and word(language.code, "told.voices.ought").match(row.words(clause.first + at, clause.first + at + 1).lower()) is not None:
            return DRAWING, clause.first + at - 1, False  # "the step is outside and should be in": so it is, and so it should be
        depicted = at > 1 and "ON" in concepts[at - 2 : at] and any(c.startswith("K_") for c in concepts[max(0, at - 3) : at])  # "the elbow on the drawing"
        before = not depicted and any(c in _OWN_ACTS or c.startswith("K_") or c == "FITTING" for c in concepts[:at])
        ends = at >= len(concepts) - 2
        return DRAWING, clause.first + (0 if ends or not before else at), False
    if head == "OTHER" and in_any("told.voices.bare_answer").match(row.words(clause.first, clause.last).lower().replace("’", "'").replace(",", "")) is not None:
        return None, 0, False  # "Did they? Yes they did, two inch rip on the side"
    if head == "OTHER" and _had_me(row, clause, language):
        return None, 0, False  # "they've got me running board on the roof": and so he does
    if (head == "OTHER" or head == "WORD" and items[lead].value in language.names) and in_any("told.voices.helps").match(plain(row.words(clause.first, clause.last))) is not None:
        return OTHER, clause.first, False  # "Mike gave me a hand, stapled every two": the work is his own
    if (voices := _voices(language.code, row.text)) and not (head == "OTHER" and (_called_to(row, clause, lead) or _harmed(row, clause, items, language))) and _others_voice(row, clause, voices):
        return OTHER, clause.first, True
    if head == "OTHER" and {"CLOSURE", "MARK181", "C_MASTIC"} & set(concepts) and _used_it(row, clause, language):
        return None, 0, False  # "they sent me gray tape so that's what went on"
    if head == "OTHER" and not _called_to(row, clause, lead) and not _and_i(row, items, lead) and not _harmed(row, clause, items, language) and not _the_things(row, clause, items, lead):
        return OTHER, clause.first, True
    if head == "WORD" and items[lead].value in language.names and not _introduces(row, items, lead) and not _vocative(row, clause, lead) and not _and_i(row, items, lead):
        return OTHER, clause.first, True
    at = lead + 1 if head.startswith("K_") or head in ("FITTING", "GENERIC") else lead
    if concepts[at : at + 1] == ["OF"] and at + 1 < len(items) and items[at + 1].value in language.names:
        return OTHER, clause.first, True  # "el codo de Chuy", "el de Juan"
    if head == "SAYS" and lead + 1 < len(items) and (items[lead + 1].concept == "OTHER" or items[lead + 1].value in language.names):
        return OTHER, clause.first, True  # "dice Beto que …"
    if in_any("told.voices.anothers").search(row.words(clause.first, clause.last).lower()):
        return OTHER, clause.first, True  # "la siete la dejó otro", "el Güero dejó su codo sin aletas"
    if any(the_one_of(row, items, at, language) for at, concept in enumerate(concepts[:-2]) if concept in ("NUM", "FITTING", "GENERIC")) and not _harmed(row, clause, items, language):
        return OTHER, clause.first, True
    if "NOT_LOGGED" in concepts:
        return OTHER, clause.first + concepts.index("NOT_LOGGED"), True
    if "NOT" in concepts and not _named_next(row, clause):
        at = concepts.index("NOT")
        if concepts[at + 1 : at + 2] == ["DET"] and concepts[at + 2 : at + 3] in (["NUM"], ["GENERIC"], ["FITTING"]) and len(concepts) > at + 3:
            return OTHER, clause.first + at, False  # "isn't the one with no vanes": tells of another
    said = next((at for at in range(lead + 1, len(items) - 2) if concepts[at] == "OTHER" and concepts[at + 1] == "SAYS"), None)
    if said is not None and row.words(clause.first + said, clause.first + said + 1).lower() in language.told.voices.they and not {"AND", "BUT"} & set(concepts[said:]):
        return OTHER, clause.first + said, False  # "… stapled every two he says it's taped"
    for at, concept in enumerate(concepts):
        who = at + 2 if concepts[at + 1 : at + 2] == ["DET"] else at + 1
        if concept == "BY" and who < len(items) and (concepts[who] == "OTHER" or items[who].value in language.names) and not any(item.value == "other_tape" for item in items):
            return OTHER, clause.first, False
    return None, 0, False


@lru_cache(maxsize=8)
def _voices(code: str, text: str) -> tuple[Likely, ...]:
    """The ways to speak of another's words that may stand somewhere in a note: its clauses are tried with these alone."""
    return standing(rows(code, "told.voices.others"), text.lower().replace("’", "'"))


def _others_voice(row: Row, clause: Clause, voices: tuple[Likely, ...]) -> bool:
    """ "The inspector thinks …", "the fellow upstairs taped …": another's words, or another's work."""
    said = row.words(clause.first, clause.last).lower().replace("’", "'")
    side = any(item.concept == "SIDE" for item in row.items[clause.first : clause.last])  # "the fellow on the lift dropped the top six"
    return begins(voices, said) is not None and not _mistaped(row, row.items[clause.first : clause.last]) and (side or in_any("told.voices.harm").search(said) is None)


def _had_me(row: Row, clause: Clause, language: Language) -> bool:
    words = language.told.voices.had_me
    return bool(words) and re.match(words, row.words(clause.first, clause.last).lower().replace("’", "'")) is not None


def _used_it(row: Row, clause: Clause, language: Language) -> bool:
    last = clause.last
    while last < len(row.items) and row.items[last].concept not in _ENDS:
        last += 1
    words = language.told.voices.used_it
    return bool(words) and re.search(words, row.words(clause.first, last).lower().replace("’", "'")) is not None


def _only_since(row: Row, clause: Clause) -> bool:
    """ "Unless somebody's peeled it since, cap nine is taped": only what came after could make it otherwise."""
    said = row.words(clause.first, clause.last).lower().replace("’", "'")
    if in_any("told.voices.only_since").match(said) is not None:
        return True
    owned_up = any(row.items[at].concept in ("NO", "NOT", "NOT_DONE", "WITHOUT", "MISSING") for at in range(clause.last, row.sentence_end(clause.last)))  # "if the inspector asks, elbow 4 has no vanes"
    return owned_up and in_any("told.voices.if_asked").match(said) is not None


_THINGS = ("STAPLES", "TABS", "SCREWS", "LEG")


def _the_things(row: Row, clause: Clause, items, lead: int) -> bool:
    """ "I stretched the staples, they came out three apart": they are the staples, not people."""
    if row.text[items[lead].start : items[lead].end].lower() not in ("they", "they're", "they've"):
        return False
    before = [item.concept for item in row.items[max(row.sentence_start(clause.first), clause.first - 7) : clause.first]]
    if any(item.concept in ("NOT", "NO", "NOT_DONE") for item in items):
        return False  # "the tabs, they never came"
    if any(item.concept == "K_HANGER" for item in row.items[: clause.first]):
        return True  # "hangers for run ten, …, and they came out at seven foot"
    return any(concept in _THINGS for concept in before) and "OTHER" not in before


def _mistaped(row: Row, items) -> bool:
    """ "the guy before me used duct tape on two seams": whoever did it, it is on this piece."""
    return any(item.value == "other_tape" for item in items) and any(item.concept in ("JOINT", "SIDE", "SIDE_WORD", "PANEL", "IT", "THIS") or item.concept in ("DET", "HAVE") and row.text[item.start : item.end].lower().startswith("le") for item in items)


def _harmed(row: Row, clause: Clause, items, language: Language) -> bool:
    return _mistaped(row, items) or harmed(row, clause.first, clause.last, language)


def _named_next(row: Row, clause: Clause) -> bool:
    """ "…, that's eight": the clause behind names whose it is."""
    behind = [item.concept for item in row.items[clause.last + 1 : clause.last + 4]]
    return any(c in ("THIS", "BE") for c in behind[:2]) and any(c in ("NUM", "NUMBER", "FITTING") for c in behind)


def _this_one(row: Row, items, lead: int) -> bool:
    return row.text[items[lead].start : items[lead].end].lower().startswith("this")


def _is_mine(row: Row, clause: Clause, language: Language) -> bool:
    mine = language.told.voices.mine
    return bool(mine) and re.match(mine, row.words(clause.first, clause.last).lower()) is not None


def _mine(row: Row, items, lead: int) -> bool:
    """ "the one on the drawing has vanes, mine doesn't" """
    return lead < len(items) and row.text[items[lead].start : items[lead].end].lower() in ("mine", "ours", "mío", "mía", "mio", "mia", "el mío", "la mía")


def _so_then(row: Row, items, lead: int) -> bool:
    """ "…, so straight nine is": from here on it is the speaker's own again."""
    said = row.text[items[0].start : items[0].end].lower()
    return lead < len(items) and said in ("so", "then", "entonces") and (items[lead].concept.startswith("K_") or items[lead].concept == "FITTING")


def _introduces(row: Row, items, lead: int) -> bool:
    """ "this is Dave on run four": he says who speaks, not who worked."""
    said = row.text[items[0].start : items[lead].start].lower()
    return any(word in said for word in ("this is", "it's", "soy", "habla", "aquí"))


def _then_i(row: Row, items, lead: int, stance: str, language: Language) -> int | None:
    """ "The kid grabbed the wrong tape and I …", "the drawing says every two and I went every three", "he bent the anvil and now every staple …": from there on it is the speaker's own again."""
    mine = next((at for at in range(lead + 2, len(items) - 1) if items[at].concept in ("AND", "BUT") and "I" in (items[at + 1].concept, items[min(at + 2, len(items) - 1)].concept if items[at + 1].concept in ("ANOTHER", "FILLER") else "") and (at > lead + 2 or items[lead + 1].concept in _OWN_ACTS) or items[at].concept in ("AND", "BUT", "FILLER") and (_as_it_is(row.text[items[at].start : items[-1].end], language))), None)
    before = items[lead:mine] if mine is not None and stance == OTHER else ()
    theirs = any(item.concept in _OWN_ACTS for item in before) and any(item.concept in ("NUM", "FITTING", "MARKED") or item.concept.startswith("K_") for item in before)  # "my brother stapled six and I taped it": of whose piece?
    return None if theirs else mine


@cache
def _now(code: str) -> Likely | None:
    return Likely(LANGUAGES[code].told.voices.as_it_is) if LANGUAGES[code].told.voices.as_it_is else None


def _as_it_is(words: str, language: Language) -> bool:
    """ "… and now every staple …", "… so the tape on nine …": what came of it for this piece."""
    begins = _now(language.code)
    return begins is not None and begins.match(words.lower().replace("’", "'")) is not None


def _i_made(row: Row, items, lead: int) -> bool:
    """ "They drew it two in twelve, I built it three": a verb that tells of making any piece begins with who made it."""
    return any(item.concept == "FILLER" and row.text[item.start : item.end].lower().split()[0] in words_of("small.i") for item in items[:lead])


def _names_a_piece(row: Row, clause: Clause, lead: int, language: Language) -> bool:
    """ "They cranked the fan up, straight 84 sits at three inches": behind what others did to no piece, the one named next is his own."""
    items = row.items[clause.first + lead : clause.first + lead + 3]
    named = len(items) == 3 and items[0].concept.startswith("K_") and items[1].concept in ("NUM", "MARKED") and language.told.voices.as_it_is != ""
    return named and (items[2].concept in ("BE", "HAVE", "RUN", "TAKES") or is_told_of_it(row, clause.first - 1, items[2]) or row.words(clause.first + lead + 2, clause.first + lead + 3).lower() in words_of("small.stands"))


def _lead(items) -> int:
    at = 0
    while at < len(items) and items[at].concept in _LEADING:
        at += 1
    return at


def _asked(row: Row, cut):
    sentence = 0
    for at, item in enumerate(row.items):
        if item.concept == "QUERY":
            yield sentence
        if item.concept in _ENDS and (at == 0 or row.items[at - 1].concept not in _ENDS):
            sentence += 1


def _is_tag(row: Row, clause: Clause) -> bool:
    """ "Taped it, right?" states; the question is the tag. A clause before the last of a long sentence may state."""
    return clause.last < len(row.items) and row.items[clause.last].concept == "COMMA"


def _tells_what(words: str, language: Language) -> bool:
    """ "What I actually built is eighteen by twelve" asks nothing."""
    return any(pattern.match(words.lower().replace("’", "'")) for pattern in _clefts(language.afar.clefts))


@cache
def _clefts(patterns: tuple[str, ...]) -> tuple[Likely, ...]:
    return tuple(Likely(pattern) for pattern in patterns)


def _vocative(row: Row, clause: Clause, lead: int) -> bool:
    """ "Mike, come here": a name with nothing behind it in its clause."""
    return clause.last - clause.first - lead <= 1


def built_so(row: Row, clause: Clause, language: Language) -> bool:
    """ "Drawing calls for ten by ten and that's what I built": what is drawn is what was made."""
    last = clause.last
    while last < len(row.items) and row.items[last].concept not in _ENDS:
        last += 1
    if sum(item.concept == "SIZE" for item in row.items[clause.first : last]) > 1:
        return False  # "the plans show twelve by ten, my tape says fourteen by ten and that's what I built"
    said = row.words(clause.first, last).lower().replace("’", "'")
    return any(pattern.search(said) for pattern in _clefts(language.forms.as_drawn))


def _called_to(row: Row, clause: Clause, lead: int) -> bool:
    """ "Boss, straight nine is done": he is spoken to, with no article and nothing behind in his clause."""
    at = clause.first + lead
    return at + 1 == clause.last and at + 1 < len(row.items) and row.items[at + 1].concept == "COMMA" and " " not in row.words(at, at + 1) and row.words(at, at + 1).lower() not in words_of("small.somebody")


def _and_i(row: Row, items, lead: int) -> bool:
    rest = [item.concept for item in items[lead + 1 : lead + 3]]
    if rest == ["AND", "FILLER"]:  # "Ray and I did"
        return row.text[items[lead + 2].start : items[lead + 2].end].lower().startswith(("i ", "yo "))
    return rest[:2] == ["AND", "I"] or rest[:1] == ["COMMA"]
