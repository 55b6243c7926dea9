"""What is denied or affirmed away from its noun: "turning vanes were specified; none went in", "what's missing? Staples".

Read before anything else of a clause is, since the noun by itself would state what its clause denies.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import AnyOf
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import begins, finds, is_whole, rows, word, words_of
from logbook.reading.words.tokens import plain

_PARTS_OF_IT = ("VANES", "STAPLES", "TAPE", "TABS", "TIE_RODS")
_NAMING = ("NUM", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED", "RUN", "THRU", "SIZE", "LEN")
_BACK = 5  # parts of clauses
_SENTENCES = 2
_ANSWERS = ("DET", "FILLER", "IT", "BE")


@dataclass
class Afar:
    claims: list[Claim] = field(default_factory=list)
    spent: set[int] = field(default_factory=set)  # items that these words have used up
    not_own: dict[int, str] = field(default_factory=dict)  # items that state nothing, and why
    doubted: set[int] = field(default_factory=set)


def afar(row: Row, cut_up: tuple[Part, ...], language: Language) -> Afar:
    found = Afar()
    if not language.afar.none or not _any(language.code).search(plain(row.text)):
        return found
    for place, part in enumerate(cut_up):
        if row.is_blank(part.first):
            continue
        words = _bare(part.words, language)
        for look in (_riddle, _none, _radio, _simile, _double, _idle, _ongoing, _cleft, _attributed):
            if look(row, cut_up, place, words, language, found):
                break
    return found


@cache
def _any(code: str) -> AnyOf:
    """What finds whatever any of them could: most notes have none."""
    members = ("none", "riddles", "idle", "almost", "similes", "ongoing", "nobody", "never_without", "clefts", "attributed")
    radio = [words for words, _ in LANGUAGES[code].afar.radio]
    return AnyOf(words.replace("$", "") for words in (LANGUAGES[code].afar.asks_riddle, *(pattern.pattern for member in members for pattern in rows(code, f"afar.{member}")), *radio))


def _bare(words: str, language: Language) -> str:
    words = " ".join(re.findall(r"[\w'-]+", words)).replace(" 's", "'s")
    return words[re.match(language.afar.leads, words).end() :]


def _riddle(row: Row, cut_up, place: int, words: str, language: Language, found: Afar) -> bool:
    """ "Guess what's not in it. Vanes." """
    if place + 1 >= len(cut_up) or not is_whole(rows(language.code, "afar.riddles"), _bare(_unnamed(row, cut_up[place], language), language)):
        return False
    reply = cut_up[place + 1]
    if place + 2 < len(cut_up) and all(row.items[at].concept == "FILLER" for at in range(reply.first, reply.last)):
        reply = cut_up[place + 2]  # "all it's missing is, you know, the tape"
    nouns = [at for at in range(reply.first, reply.last) if row.items[at].concept in _PARTS_OF_IT]
    if len(nouns) != 1 or any(row.items[at].concept not in _ANSWERS for at in range(reply.first, reply.last) if at not in nouns):
        return False
    found.claims.append(claim(row, *DENIED[row.items[nouns[0]].concept], nouns[0], nouns[0] + 1, corrects=True, hedged=False))
    _spend(row, cut_up[place].first, cut_up[place].last, found)
    found.spent.update(range(reply.first, reply.last))
    return True


def _unnamed(row: Row, part: Part, language: Language) -> str:
    """The words of a part, with one word for the piece that they name: "what's missing from elbow nine"."""
    said, start, end = [], row.items[part.first].start, row.items[part.first].start
    for at in range(part.first, part.last):
        kind = row.items[at].concept.startswith("K_") or row.items[at].concept == "FITTING"
        if kind or row.items[at].concept in _NAMING and (said or row.items[at].concept == "MARKED" or row.words(at - 1, at).lower() in words_of("small.led_to_piece")):
            between = part.words[end - start : row.items[at].start - start]
            said.append(f"{between}{language.afar.it} " if between.strip() or not said else "")
            end = row.items[at].end
    return plain("".join(said) + part.words[end - start :])


def _none(row: Row, cut_up, place: int, words: str, language: Language, found: Afar) -> bool:
    """ "… none were installed", "so I left them out": of the part named last."""
    part = cut_up[place]
    named = [at for at in range(part.first, part.last) if row.items[at].concept in DENIED]
    if len(named) == 1 and _none_of_this(row, part, named[0], language, found):
        return True
    if named or not is_whole(rows(language.code, "afar.none"), words):
        return False
    noun, moved_on = _noun_before(row, cut_up, place, words)
    if noun is None or row.words(max(0, noun - 1), noun).lower().split()[-1:] and row.words(max(0, noun - 1), noun).lower().split()[-1] in language.afar.faulty:
        return False
    if _replaced(row, cut_up, place, noun, language):
        return False
    if _of_a_sort(row, noun) and word(language.code, "afar.had_none").fullmatch(words):
        found.spent.update(range(part.first, part.last))
        return True
    if _measured(row, noun) and word(language.code, "told.stretches.adds").search(words):
        found.spent.update(range(part.first, part.last))
        return True
    found.claims.append(claim(row, *DENIED[row.items[noun].concept], part.first, part.last, corrects=True, hedged=False))
    found.spent.update(range(part.first, part.last))
    if not moved_on and noun not in found.spent:
        found.spent.add(noun)
    return True


def _measured(row: Row, noun: int) -> bool:
    """ "Staples at two inches, … I didn't add any": things whose measure was told are there, and no more came to them."""
    return any(row.items[at].concept in ("LEN", "EVERY") for at in range(noun + 1, min(noun + 4, len(row.items))))


def _of_a_sort(row: Row, noun: int) -> bool:
    """ "I'd have used the long staples, I didn't have them": those of one sort were not there, which says nothing of others."""
    before = row.items[noun - 1].concept if noun else ""
    return before in ("LONG", "LEN", "FRAC") or before in ("WORD", "FILLER", "FACING", "WIDE") and row.words(noun - 1, noun).lower() in words_of("small.sorts")


def _none_of_this(row: Row, part: Part, noun: int, language: Language, found: Afar) -> bool:
    """ "The vanes nobody brought", "las aletas nadie las trajo": the part itself stands first."""
    first = next(at for at in range(part.first, part.last) if row.items[at].concept not in ("DET", "FILLER", "AND", "BUT", "COMMA"))
    if first != noun or row.items[noun].concept not in _PARTS_OF_IT or noun + 1 >= part.last:
        return False
    rest = part.words[row.items[noun].end - row.items[part.first].start :].strip()
    if not rest.startswith(("nobody", "no one", "nadie")) or not is_whole(rows(language.code, "afar.none"), rest):
        return False
    found.claims.append(claim(row, *DENIED[row.items[noun].concept], noun, part.last, corrects=True, hedged=False))
    found.spent.update(range(part.first, part.last))
    return True


def _noun_before(row: Row, cut_up, place: int, words: str) -> tuple[int | None, bool]:
    """The part of a fitting named last, and whether another piece was begun since."""
    moved_on = False
    for back in range(place - 1, max(-1, place - 1 - _BACK), -1):
        before = cut_up[back]
        if before.sentence < cut_up[place].sentence - _SENTENCES:
            break
        for at in range(cut_up[back + 1].first - 1, before.first - 1, -1):
            concept = row.items[at].concept
            if concept in _PARTS_OF_IT:
                fits = concept == "TAPE" if re.search(r"\bit\b(?! (?:went|goes|got|was|is|came|did|does))", words) and not re.search(r"\b(?:on|in) it\b", words) else True
                return (at, moved_on) if fits else (None, moved_on)
            moved_on = moved_on or concept.startswith("K_") or concept == "FITTING"
    return None, moved_on


def _replaced(row: Row, cut_up, place: int, noun: int, language: Language) -> bool:
    """ "… never came, so I made my own": there are some after all, or mastic in its place."""
    for part in cut_up[place + 1 : place + 4]:
        if part.sentence > cut_up[place].sentence + 1:
            return False
        if finds(rows(language.code, "afar.own_instead"), part.words) is not None:
            return True
        if row.items[noun].concept == "TAPE" and any(row.items[at].concept in ("CLOSURE", "C_MASTIC", "MARK181", "TAPED") for at in range(part.first, part.last)):
            return True
    return False


def _radio(row: Row, cut_up, place: int, words: str, language: Language, found: Afar) -> bool:
    """ "Negative staples, affirmative tape." """
    part = cut_up[place]
    act = next((at for at in range(part.first, part.last) if row.items[at].concept in DENIED), None)
    before = row.words(part.first, act).lower().strip() if act is not None and act > part.first else ""
    said = next((yes for pattern, yes in language.afar.radio if re.fullmatch(pattern, before)), None)
    if said is None or DENIED[row.items[act].concept][1] is not False:
        return False
    found.claims.append(claim(row, DENIED[row.items[act].concept][0], said, part.first, act + 1, hedged=False))
    found.spent.update(range(part.first, act + 1))
    return True


def _simile(row: Row, cut_up, place: int, words: str, language: Language, found: Afar) -> bool:
    """ "Tape's on tee nine. About as on as my diet.": the act is in doubt."""
    if place == 0 or not is_whole(rows(language.code, "afar.similes"), words):
        return False
    part = cut_up[place]
    for before in (cut_up[place - 1], cut_up[max(0, place - 2)]):
        acts = [at for at in range(before.first, before.last) if row.items[at].concept in DENIED]
        if acts:
            found.doubted.update(range(before.first, acts[-1] + 1))
            break
    found.spent.update(range(part.first, min(part.last + 1, len(row.items))))
    return True


def _double(row: Row, cut_up, place: int, words: str, language: Language, found: Afar) -> bool:
    """ "Nobody can tell me it isn't stapled", "never have I left an elbow without vanes, and I'm not starting now"."""
    part = cut_up[place]
    acts = [at for at in range(part.first, part.last) if row.items[at].concept in DENIED and DENIED[row.items[at].concept][1] is False]
    if not acts:
        return False
    told = begins(rows(language.code, "afar.nobody"), words) is not None
    never = not told and finds(rows(language.code, "afar.never_without"), words) is not None
    if not told and not never:
        return False
    this_too = told or any(finds(rows(language.code, "afar.nor_this"), _bare(later.words, language)) is not None for later in cut_up[place + 1 : place + 3])
    if this_too:
        found.claims.append(claim(row, DENIED[row.items[acts[0]].concept][0], True, acts[0], acts[0] + 1, corrects=True, hedged=False))
    _spend(row, part.first, acts[0] + 1, found)
    if never:
        found.spent.update(range(part.first, part.last))
    return True


def _spend(row: Row, first: int, last: int, found: Afar) -> None:
    found.spent.update(at for at in range(first, last) if row.items[at].concept not in _NAMING and not row.items[at].concept.startswith("K_"))


def _idle(row: Row, cut_up, place: int, words: str, language: Language, found: Afar) -> bool:
    """ "no knowledge of staples in …", "because who needs vanes": says nothing of them."""
    part = cut_up[place]
    for member in ("idle", "almost"):
        match = finds(rows(language.code, f"afar.{member}"), part.words)
        if match is None:
            continue
        start = row.items[part.first].start + match.start()
        later = [at for at in range(part.first, part.last) if row.items[at].end > start]
        found.spent.update(at for at in later if member == "almost" or row.items[at].concept not in _NAMING and not row.items[at].concept.startswith("K_"))
        return True
    return False


def _ongoing(row: Row, cut_up, place: int, words: str, language: Language, found: Afar) -> bool:
    """ "My partner's rubbing it down right now": it is not done yet."""
    part = cut_up[place]
    match = finds(rows(language.code, "afar.ongoing"), part.words)
    if match is None:
        return False
    end = row.items[part.first].start + match.end()
    for at in range(part.first, part.last):
        if row.items[at].start < end <= row.items[at].end:
            found.not_own[at] = "plan"
    return True


def _cleft(row: Row, cut_up, place: int, words: str, language: Language, found: Afar) -> bool:
    """ "What I did was tape it" is an act."""
    part = cut_up[place]
    match = begins(rows(language.code, "afar.clefts"), words)
    act = next((at for at in range(part.first, part.last) if row.items[at].concept in ("TAPE_IT", "STAPLE", "RUB")), None)
    if match is None or act is None or words[match.end() :].strip() and row.words(act, act + 1).lower() not in words[match.end() :].strip()[: len(row.words(act, act + 1)) + 5]:
        return False
    acts = [act, *(later.first for later in cut_up[place + 1 : place + 3] if later.sentence == part.sentence and row.items[later.first].concept in ("TAPE_IT", "STAPLE", "RUB"))]
    for act in acts:
        found.claims.append(claim(row, DENIED[row.items[act].concept][0], True, act, act + 1, hedged=False))
        found.spent.add(act)
    found.spent.update(range(part.first, acts[0] + 1))
    return True


def _attributed(row: Row, cut_up, place: int, words: str, language: Language, found: Afar) -> bool:
    """ "Low step goes inside, they told me": the words before it are theirs."""
    if place == 0 or cut_up[place - 1].sentence != cut_up[place].sentence or not is_whole(rows(language.code, "afar.attributed"), words):
        return False
    begin = place - 1
    while begin > 0 and row.items[cut_up[begin].first - 1].concept == "AND":  # "stapled and taped, so they say"
        begin -= 1
    found.not_own.update({at: "other" for at in range(cut_up[begin].first, cut_up[place - 1].last) if row.items[at].concept not in (*_NAMING, "GROOVE") and not row.items[at].concept.startswith("K_")})
    return True
