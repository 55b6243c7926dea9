"""What turns the words right before it without naming them again: "thought it was taped but it isn't", "it wasn't, it is now"."""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.closing_words import ends_it
from logbook.reading.clauses.denials import ACTS, DENIED
from logbook.reading.own.fell_short import _WORDS
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import Likely
from logbook.reading.words.phrasing import any_of, apart, begins, finds, word
from logbook.reading.composed.size_pairs import MEASURES
from logbook.reading.clauses.stance import Clause, would
from logbook.reading.words.tokens import plain

_LOOK_BACK = 8  # clauses
_SIZES_ONLY = (*MEASURES, "OF", "TO", "DET", "LONG", "AND", "ON", "RUN")
_DENYING = ("NOT", "NO", "NOT_DONE", "PENDING", "NEED", "FORGOT", "MISSING", "LEFT_OUT", "UNTAPED", "UNSTAPLED", "EXCEPT", "WILL", "NOT_FORGET")


_NOT_DONE_SO_FAR = ("PENDING", "WILL", "GOING_TO", "NEED", "LATER", "NOT", "NO", "NOT_DONE", "FORGOT", "IF", "YET", "REMIND")


@cache
def _elliptic(code: str, member: str) -> tuple[Likely, ...]:
    turns = LANGUAGES[code].turns
    who = "|".join(turns.said_so)
    return tuple(Likely(rf"{turns.leads}(?:{pattern.replace('{who}', f'(?:{who})')})") for pattern in getattr(turns, member))


_OTHERS = ("other", "drawing", "reminder", "question")


def _says(words: str, language: Language, member: str) -> bool:
    return any(pattern.fullmatch(words) for pattern in _elliptic(language.code, member))


@cache
def _at_the_end(code: str, member: str) -> Likely:
    return Likely(rf"(?<![\w'])(?:{'|'.join(getattr(LANGUAGES[code].turns, member)) or '(?!)'})$")


def _ends(words: str, language: Language, member: str) -> bool:
    return _at_the_end(language.code, member).search(words) is not None


def turned(row: Row, why: dict[int, str], cut: tuple[Clause, ...], language: Language) -> tuple[list[Claim], set[int], set[int]]:
    """The acts that a clause without an act of its own affirms or denies; the items that say so, and those of others' words that are of this piece."""
    made: list[Claim] = []
    spent: set[int] = set()
    named: set[int] = set()
    denied: set[int] = set()
    if not language.turns.affirms:
        return made, spent, named
    first = next((at for at, item in enumerate(row.items) if item.concept in DENIED or item.concept == "UNDONE"), len(row.items))  # before the first act nothing can be affirmed or denied
    for place, clause in enumerate(cut):
        hollow = _hollow(row, clause, language)
        if hollow:
            made += hollow
            spent.update(at for at in range(hollow[0].first, clause.last) if not row.items[at].concept.startswith("K_") and row.items[at].concept not in ("NUM", "FITTING", "NUMBER", "MARKED"))
            continue
        if place == 0 or first >= clause.first or row.is_blank(clause.first) or clause.last - clause.first > 12 or any(item.concept in DENIED for item in row.items[clause.first : clause.last]):
            continue
        words = _words(row, clause)
        yes = _says(words, language, "affirms")
        mended = not yes and row.items[clause.first].concept not in ("NO", "NOT") and _sets_right(words, language)  # "no le puse": nothing is set right
        yes = yes or (_ends(words, language, "in_after_all") and words.split()[0] not in language.told.voices.they and not _to_come(row, clause, language.turns.past_is_plain))
        bare = not yes and not mended and _says(words, language, "bare")
        no = bare or not yes and not mended and (_says(words, language, "denies") or _ends(words, language, "out_again") and re.search(language.turns.too_much, words) is None)
        if not (yes or no or mended) or (clause.last < len(row.items) and row.items[clause.last].concept == "QUERY"):
            continue  # "got it?" asks
        for act in _before(row, why, cut, place, yes or mended, language) if not bare else _material(row, cut, place):
            name, value = DENIED.get(row.items[act].concept, ("taped", False))
            if (yes or mended) and name in _MANY and re.search(language.turns.one_was_put, words):
                continue  # "lo dejé sin aletas, pero hoy lo puse": the piece
            if yes and (why.get(act) not in _OTHERS or act in denied) and _says(words, language, "says_done"):
                continue  # "not rubbed. It's done.": the piece
            if no and re.search(language.turns.untrue, words) and any(one.first <= act < one.last and any(row.items[k].concept in _DENYING for k in range(one.first, one.last)) for one in cut):
                continue  # "dice que quedó sin grapas, pero no es cierto"
            if no and value is not False and any(row.items[k].concept in ("DRAWING", "SHOULD_HAVE") for one in cut if one.first <= act < one.last for k in range(one.first, one.last)):
                continue  # "is that gap supposed to be there? No."
            if no and would(row, next(one for one in cut if one.first <= act < one.last)):
                continue
            if not mended:
                spent.update(k for k in range(clause.first, clause.last) if not (row.items[k].concept in ("NUM", "MARKED") and k > clause.first and row.items[k - 1].concept in ("ON", "DET")))  # "al 5 no le puse": its number
            between = row.words(act, clause.last).lower()
            if why.get(act) in ("other", "drawing") and not re.search(r"\b(?:mine|ours|this one|these|mío|mía)\b", between):
                named.update(_heading_of(row, cut, act))
            elif why.get(act) == "other":  # "he left his elbow without vanes but mine, eight, has them": what mine is, his tells
                named.update(at for at in _heading_of(row, cut, act) if row.items[at].concept.startswith("K_"))
            if value is False:
                made.append(claim(row, name, not no, clause.first, clause.last, corrects=True, hedged=False))
            elif no and name == "facing_damage" and re.search(language.turns.of_his_deed, words):  # "trae un hoyo, a ese no le hice nada": it is there, and not mended
                if not any(row.items[k].concept in ("NUM", "MARKED") for k in range(clause.first, clause.last)):
                    made.append(claim(row, "damage_repaired", False, clause.first, clause.last, hedged=False))
            elif no:
                made.append(claim(row, name, value, clause.first, clause.last, corrects=True, hedged=False))
            if no:
                denied.add(act)
    return made, spent, named


_MANY = ("vanes", "stapled", "cross_tabs", "tabs_bent")


def _to_come(row: Row, clause: Clause, past: str) -> bool:
    """ "Still gotta put them in", "I'll put them in after lunch": the verb looks like a past, and what stands before it tells that it is to be done, or was not; `past`: words that tell no more than a past, "en la tarde se las puse"."""
    told_past = re.match(past, row.words(clause.first, clause.last).lower()) is not None
    return any(row.items[k].concept in _NOT_DONE_SO_FAR and not (row.items[k].concept == "LATER" and told_past) for k in range(clause.first, clause.last))


def _heading_of(row: Row, cut, act: int) -> list[int]:
    """The items of the clause in which the act stands, that name its piece."""
    clause = next(one for one in cut if one.first <= act < one.last)
    return [k for k in range(clause.first, act) if row.items[k].concept.startswith("K_") or row.items[k].concept in ("NUM", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED")]


def _hollow(row: Row, clause: Clause, language: Language) -> list[Claim]:
    """ "I'd be lying if I said it's taped", "it'd be a good cap if there were tape on it": it is not."""
    if not any(item.concept in DENIED for item in row.items[clause.first : clause.last]):
        return []
    said = plain(row.words(clause.first, clause.last))
    match = finds(apart(language.code, "turns.hollow"), said)
    if match is None:
        return []
    end = row.items[clause.first].start + match.end()
    acts = [at for at in range(clause.first, clause.last) if row.items[at].start >= end - 1 and row.items[at].concept in DENIED and DENIED[row.items[at].concept][1] is False]
    if any(row.items[at].concept in ("NOT", "NO", "NOT_DONE") for at in range(clause.first, clause.last) if row.items[at].start >= end):
        return []
    begin = row.within(clause.first, clause.last, match)[0]
    return [claim(row, DENIED[row.items[at].concept][0], False, min(begin, at), at + 1, corrects=True, hedged=False) for at in acts]


_IN_WORDS = re.compile(r"[\w'’-]+")


def _words(row: Row, clause: Clause) -> str:
    said = plain(row.words(clause.first, clause.last))
    return " ".join(_IN_WORDS.findall(said)).replace(" 's", "'s")


def _sets_right(words: str, language: Language) -> bool:
    rest = words[re.match(f"{language.turns.leads}{language.turns.on_the_way}", words).end() :]
    told = False
    while (match := begins(apart(language.code, "turns.mended"), rest)) is not None:
        told, rest = True, rest[match.end() :].removeprefix(",").strip().removeprefix("and ")
    return told and language.turns.beside.issuperset(_WORDS.findall(rest))


def acts_of_the_piece(row: Row, clause: Clause, acts) -> list[int]:
    """Without what the drawing shows, which is no scrim, and the hole the piece goes into, which is no damage beside an act."""
    found = [at for at in range(clause.first, clause.last) if row.items[at].concept in acts]
    drawn = any(row.items[at].concept == "DRAWING" for at in range(clause.first, clause.last))
    scrim = any(row.items[at].concept == "SCRIM" for at in range(clause.first, clause.last))
    found = [at for at in found if not (drawn and not scrim and row.items[at].concept == "SHOWS")]
    room = [at for at in found if row.items[at].concept == "DAMAGE" and [item.concept for item in row.items[at + 1 : at + 4]] in (["BE", "FILLER", "TIGHT"], ["BE", "FILLER", "WORD"])]
    return [at for at in found if at not in room]


def _before(row: Row, why: dict[int, str], cut, place: int, affirms: bool, language: Language) -> list[int]:
    """The acts named last, of this sentence or the one right before."""
    for back in range(place - 1, max(-1, place - 1 - _LOOK_BACK), -1):
        before = cut[back]
        if before.sentence < cut[place].sentence - 1:
            return []
        acts = acts_of_the_piece(row, before, DENIED)
        if not acts:
            if all(row.items[at].concept in _SIZES_ONLY for at in range(before.first, before.last)):
                continue  # "…, de doce por diez a noventa grados, sí las trae"
            if before.last - before.first > 3 and not thinks(row, before, language) and before.first not in why:
                return []
            if any(row.items[at].concept.startswith("K_") for at in range(before.first, before.last)) and not _is_mine(row, cut, back) and re.match(language.told.voices.my_piece, row.words(before.first, before.last).lower()) is None:
                return []
            continue
        concepts = [row.items[at].concept for at in range(before.first, before.last)]
        supposed = thinks(row, before, language) or why.get(acts[0]) in ("condition", "drawing", "other")
        denied = any(concept in _DENYING for concept in concepts)
        if affirms:
            apart_from = before.sentence < cut[place].sentence
            over = (apart_from or not supposed) and ends_it(_words(row, cut[place]), plain(row.words(before.first, before.last)), apart_from, language)
            return acts if (denied or supposed) and not over and not (apart_from and back < place - 1 and ends_it(_words(row, cut[place]), "", True, language)) else []
        if before.sentence < cut[place].sentence and not supposed:
            return []
        return acts if not denied or supposed else []
    return []


def _is_mine(row: Row, cut, place: int) -> bool:
    """ "His elbow has vanes. Mine, elbow 4, ninety, doesn't": the piece named between is the one it is denied of."""
    return place > 0 and cut[place - 1].sentence == cut[place].sentence and row.words(cut[place - 1].first, cut[place - 1].last).lower() in ("mine", "ours", "but mine", "and mine", "this one", "el mío", "la mía")


def _material(row: Row, cut, place: int) -> list[int]:
    """The tape or the staples spoken of right before "none on this one"."""
    for back in range(place - 1, max(-1, place - 4), -1):
        acts = [at for at in range(cut[back].first, cut[back].last) if row.items[at].concept in ("TAPE", "TAPED", "STAPLES", "VANES", "UNDONE")]
        if any(row.items[at].concept == "UNDONE" for at in acts):
            continue
        if acts:
            return acts[-1:]
    return []


def _only_seems(row: Row, cut, place: int, said: str, language: Language) -> bool:
    """ "You'd think the tabs aren't bent, but every one is": what stands behind "but", or tells of the same act again, is how it is."""
    if begins(apart(language.code, "turns.seems"), _without(said, language)) is None or any(row.items[k].concept in ("EVERY", "APART") for k in range(cut[place].first, cut[place].last)):
        return False
    acts = {DENIED[row.items[k].concept][0] for k in range(cut[place].first, cut[place].last) if row.items[k].concept in DENIED}
    for later in cut[place + 1 : place + 4]:
        if later.sentence > cut[place].sentence + 1:
            return False
        if row.items[later.first].concept == "BUT" or any(DENIED[row.items[k].concept][0] in acts for k in range(later.first, later.last) if row.items[k].concept in DENIED):
            return True
    return False


def thinks(row: Row, clause: Clause, language: Language) -> bool:
    """ "I thought it was taped": what he took for so, until he says what is."""
    words = _words(row, clause)
    rest = words[re.match(language.turns.leads, words).end() :] if language.turns.leads else words
    return begins(apart(language.code, "turns.thought"), rest) is not None


def _without(said: str, language: Language) -> str:
    return said[re.match(language.turns.leads, said).end() :]


def _formerly(row: Row, cut, place: int, language: Language) -> bool:
    """ "It's fourteen by ten. I'd said twelve by ten": the value that no longer holds, where the one that does stands beside it."""
    clause = cut[place]
    said = plain(row.words(clause.first, clause.last))
    if any(row.items[k].took_back for k in range(clause.first, clause.last)) or finds(apart(language.code, "turns.formerly"), said) is None:
        return False
    sorts = {_sort(row.items[k]) for k in range(clause.first, clause.last)} - {None}
    beside = [cut[k] for k in (place - 1, place + 1) if 0 <= k < len(cut) and abs(cut[k].sentence - clause.sentence) <= 1]
    return bool(sorts) and any(sorts & {_sort(row.items[k]) for k in range(one.first, one.last)} for one in beside)


def _no_more(row: Row, cut, place: int, language: Language) -> bool:
    """ "Antes tenía lengüetas paradas, ahorita ya están dobladas": how it was, where the words behind tell how it is."""
    said = plain(row.words(cut[place].first, cut[place].last))
    if place + 1 >= len(cut) or not any(pattern.match(_without(said, language)) or pattern.match(said) for pattern in apart(language.code, "turns.used_to")):
        return False
    behind = plain(row.words(cut[place + 1].first, cut[place + 1].last))
    return begins(apart(language.code, "turns.by_now"), behind) is not None


def _first_of(words: str, language: Language) -> str:
    """ "pero sí trae y ya está engrapado": what settles it stands before what is told besides."""
    return re.split(language.turns.besides, words)[0]


def _its_number(row: Row, at: int) -> bool:
    """The number right behind the word for a piece names it, whatever he wished of it."""
    return at > 0 and row.items[at].concept in ("NUM", "MARKED") and (row.items[at - 1].concept.startswith("K_") or row.items[at - 1].concept in ("FITTING", "NUMBER"))


def _sort(item) -> str | None:
    return "LEN" if item.concept in ("NUM", "LEN", "FRAC") else item.concept if item.concept in MEASURES else None


_TAIL = re.compile(r"^.*\b(?:so|but|y|pero|asi que)\b ")


def _settled_in_it(said: str, language: Language) -> bool:
    """ "Figured somebody else was taping it so I never did": what was thought, and what came of it, in one clause."""
    tail = _TAIL.sub("", said)
    return tail != said and any(_says(tail, language, member) for member in ("affirms", "denies"))


def _measures_so(row: Row, thought: Clause, behind: Clause) -> bool:
    """ "Thought I had half-inch staples but they're three eighths": the measure he took for so is none."""
    if behind.sentence != thought.sentence or row.items[behind.first].concept != "BUT" or not any(row.items[k].concept in MEASURES for k in range(thought.first, thought.last)):
        return False
    said = [row.items[k].concept for k in range(behind.first, behind.last)]
    return any(concept in MEASURES for concept in said) and set(said) <= {*MEASURES, "BUT", "BE", "IT", "THIS", "FILLER", "HEDGE", "DET", "ONLY", "EVERY", "ON", "THINK"}


def forgotten(row: Row, cut: tuple[Clause, ...], language: Language) -> set[int]:
    """ "Rubbed, uh, I can't remember if I rubbed it": where the act was told shortly before, that stands in doubt."""
    doubted: set[int] = set()
    forgets = word(language.code, "turns.forgets")
    for clause in cut if forgets.search(plain(row.text)) is not None else ():
        if forgets.search(plain(row.words(clause.first, clause.last))) is None:
            continue
        facts = {DENIED[row.items[k].concept][0] for k in range(clause.first, clause.last) if row.items[k].concept in DENIED}
        doubted.update(k for k in range(max(0, clause.first - 16), clause.first) if row.items[k].concept in DENIED and DENIED[row.items[k].concept][0] in facts)
    return doubted


def supposed(row: Row, cut: tuple[Clause, ...], language: Language) -> tuple[set[int], set[int]]:
    """Items that state nothing: what he is told not to be told, and what he thought where he says next what is; and items that stand in doubt."""
    nothing: set[int] = set()
    doubted: set[int] = set()
    if not language.turns.tells:
        return nothing, doubted
    looks = any_of(language.code, "turns.tells", "turns.wishes", "turns.formerly", "turns.used_to", "turns.thought", "turns.seems")
    for place, clause in enumerate(cut):
        said = plain(row.words(clause.first, clause.last))
        if not looks.search(said):
            continue
        told = finds(apart(language.code, "turns.tells"), said)
        wished = told is None and any(pattern.match(_without(said, language)) for pattern in apart(language.code, "turns.wishes"))
        former = told is None and not wished and _formerly(row, cut, place, language)
        if told is None and _only_seems(row, cut, place, said, language):
            nothing.update(k for k in range(clause.first, clause.last) if not row.items[k].concept.startswith("K_") and row.items[k].concept != "FITTING" and not _its_number(row, k))
        elif told is None and _no_more(row, cut, place, language):
            nothing.update(k for k in range(clause.first, clause.last) if not row.items[k].concept.startswith("K_") and row.items[k].concept != "FITTING" and not _its_number(row, k))
        elif former:
            nothing.update(k for k in range(clause.first, clause.last) if row.items[k].concept in MEASURES or row.items[k].concept in ("EVERY", "APART"))
        elif wished:
            nothing.update(k for k in range(clause.first, clause.last) if not row.items[k].concept.startswith("K_") and row.items[k].concept not in ("FITTING", "GROOVE") and not _its_number(row, k))
        elif told is not None:
            at = row.items[clause.first].start + told.start()
            reason = re.search(language.acts.because, said[told.end() :])  # "no me digan que le falta cinta porque se la puse": why not is his own
            until = row.items[clause.last - 1].end if reason is None else row.items[clause.first].start + told.end() + reason.start()
            nothing.update(k for k in range(clause.first, clause.last) if at < row.items[k].end <= until)
        elif thinks(row, clause, language):
            said_before = re.search(r"\b(?:said|told|called)\b", said) is not None
            settles = any(_says(_first_of(_words(row, later), language), language, member) for later in cut[place + 1 : place + 3] if later.sentence <= clause.sentence + 1 for member in ("affirms", "denies"))
            named = {row.items[k].concept for k in range(clause.first, clause.last) if row.items[k].concept in DENIED}
            facts = {DENIED[concept][0] for concept in named}
            again = any(DENIED[row.items[k].concept][0] in facts for later in cut[place + 1 : place + 3] if later.sentence == clause.sentence for k in range(later.first, later.last) if row.items[k].concept in DENIED)
            if not said_before and place + 1 < len(cut) and _measures_so(row, clause, cut[place + 1]):
                nothing.update(k for k in range(clause.first, clause.last) if row.items[k].concept in (*MEASURES, "EVERY", "APART") and not _its_number(row, k))
            elif settles or (again and not said_before):
                nothing.update(k for k in range(clause.first, clause.last) if row.items[k].concept in DENIED)
            elif not said_before and not _settled_in_it(said, language):
                doubted.update(range(clause.first, clause.last))
    return nothing, doubted


def not_after_all(own: Row) -> list[Claim]:
    """ "Encintado no perdón todavía no": said and taken back in one breath, without a comma."""
    found = own.find("(?P<act>STAPLED|TAPED|RUBBED) FIX (?:NOT_DONE|YET NOT|NOT YET|NOT) (?=SEP|$)")
    return [claim(own, ACTS[own.items[m.start("act")].concept], False, m.start() + 1, m.end(), corrects=True, hedged=False) for m in found]
