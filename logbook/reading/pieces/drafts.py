"""Which words belong to which fitting: an entry while it is put together, and the claims shared out."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections import Counter
from dataclasses import dataclass, field, replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.reading.clauses.batches import plural
from logbook.reading.clauses.claims import Claim, TakenBack, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.compared.in_its_clause import ACT_FACTS
from logbook.reading.names.listed import kept_for
from logbook.reading.clauses.mention import Mention


@dataclass
class Draft:
    """An entry while it is put together."""

    begin: int  # first item that is its own
    kind: Claim | None = None
    mark: Claim | None = None
    claims: list[Claim] = field(default_factory=list)
    amends: bool = False
    another: bool = False
    same_as: tuple | None = None
    withdrawn: list[TakenBack] = field(default_factory=list)
    carried: list[tuple[Claim, int]] = field(default_factory=list)  # claim, position it came from
    leak: bool = False
    pointed: bool = False  # its mark is only a number behind an article


Regions = list[tuple[int, int]]  # from this item on the words are of this draft


def drafts(row: Row, found: list[Mention]) -> tuple[list[Draft], Regions]:
    """The entries of a text, from the places where fittings are named, and which words are whose."""
    made, regions = [Draft(0)], [(0, 0)]

    def begin(item: int) -> Draft:
        made.append(Draft(item))
        regions.append((item, len(made) - 1))
        return made[-1]

    heads: dict[int, int] = {}  # place of a list's first mention -> item where its pieces begin
    for at, mention in enumerate(found):
        if mention.corrects and mention.mark is not None and mention.kind is None and _spoken_of(row, made, mention):
            mention = replace(mention, corrects=False)  # "hold on, nine's ten by twelve": a piece named before
        now = made[regions[-1][1]]
        if mention.listed >= 0 and mention.listed not in heads:
            mention = replace(mention, listed=-1)  # the first of its list was spoken of before, and so may be this one
        if mention.listed >= 0:
            now = begin(heads[mention.listed])
        if mention.batch:
            kind = _kind_claim(row, mention)
            known = {draft.mark.value: place for place, draft in enumerate(made) if draft.mark is not None}
            if all(mark in known for mark, _ in mention.batch):  # "ten and eleven are straights": spoken of again
                for mark, _ in mention.batch:
                    made[known[mark]].kind = made[known[mark]].kind or kind
                    regions.append((mention.first, known[mark]))
                continue
            if kind is None and now.kind is not None and now.mark is None and _same_sentence(row, now.kind.last, mention.first):
                kind = now.kind  # "two elbows, twelve and thirteen"
            elif (now.kind or now.mark) and not (kind is not None and now.mark is None and now.kind is not None and now.kind.value == kind.value and _same_sentence(row, now.kind.last, mention.first)):
                begin(mention.first)
            first = True
            for mark, (start, end) in mention.batch:
                if not first:
                    begin(made[-1].begin)
                first = False
                made[-1].kind = kind
                made[-1].mark = claim(row, "mark", mark, start, end)
            continue
        kind, mark = _kind_claim(row, mention), _mark_claim(row, mention)
        if kind is not None and mark is None and (bare := _without_kind(row, made, mention)):
            for place in bare:  # "…, straights, ten by ten": what is said of several at the end is of each
                made[place].kind = kind
                regions.append((_sentence_start(row, mention.first), place))
            continue
        if mention.listed < 0 and mark is not None and (own := _on_its_own_run(row, now, mention)) is not None:
            now = begin(own)
        elif mention.listed < 0 and (_is_new(now, mention, row) or at + 1 < len(found) and _told_before_its_mark(now, mention, found[at + 1], row)):
            again = next((k for k, draft in enumerate(made) if mark is not None and draft.mark is not None and draft.mark.value == mark.value), None)
            if again is not None and (kind is None or made[again].kind is None or made[again].kind.value == kind.value):
                regions.append((mention.first, again))  # spoken of again
                made[again].kind = made[again].kind or kind
                continue
            now = begin(row.sentence_start(mention.first) if mark is None and kind is not None and _done_to(row, mention) else mention.first)
        elif mention.listed < 0 and mark is not None and now.mark is not None and now.mark.value == mark.value and any(mate.begin == now.begin for mate in made if mate is not now):
            regions.append((mention.first, made.index(now)))  # the last of a batch, now alone
            continue
        if mention.listed == -2:
            heads[at] = now.begin
        now.amends = now.amends or mention.amends or _amended(row, mention, first=now is made[0])
        now.another = now.another or mention.another
        if kind is not None and not (mark is None and now.mark is not None and _what_it_hangs_on(row, kind, now.mark)):
            if now.kind is None:
                before = mention.kind_at[0] - 1 - (row.items[mention.kind_at[0] - 1].concept == "SIZE")
                both = before >= 0 and row.items[before].concept in ("BOTH", "ALL")
                for mate in made[-2:] if both else ():  # "number 12 and number 13, both straights"
                    mate.kind = mate.kind or kind
                here = {place for start, place in regions if start == regions[-1][0]}
                for place, mate in enumerate(made):
                    if mate is now or mention.listed < 0 and mate.begin == now.begin and mate.kind is None and place in here:  # a batch is of one kind
                        mate.kind = kind
            elif mention.corrects and now.kind.value != kind.value:
                now.kind = replace(kind, took_back=(TakenBack(now.kind.value, now.kind.start, now.kind.end),))
        if mark is not None:
            if now.mark is None and kind is None and now.kind is not None and now.kind.value == "hanger" and mention.pointed:
                now.kind = None  # "hangers are at seven feet, that's G4"
            if now.mark is None:
                now.mark, now.pointed = mark, mention.pointed
            elif mention.corrects and now.mark.value != mark.value:
                now.mark = replace(mark, took_back=(TakenBack(now.mark.value, now.mark.start, now.mark.end),))
    if made[0].mark is None and _LAST_ONE.match(row.text.lower()):
        made[0].amends = True  # "on that last one the staples are every three, not two"
    return made, regions


def _without_kind(row: Row, made: list[Draft], mention: Mention) -> list[int]:
    """The pieces so far that have a mark and no kind, where a plural at the start of a sentence tells the kind of several."""
    several = [place for place, draft in enumerate(made) if draft.mark is not None and draft.kind is None]
    start = _sentence_start(row, mention.first)
    opens = start == 0 or row.items[start - 1].concept in ("STOP", "QUERY")
    return several if len(several) > 1 and opens and plural(row, mention.kind_at[0]) and not any(draft.kind is not None for draft in made) else []


def _sentence_start(row: Row, at: int) -> int:
    """Back over what only leads to a kind: "all ninety", "twelve by ten"."""
    while at > 0 and row.items[at - 1].concept in ("ALL", "BOTH", "NUM", "DEG", "DET", "SIZE", "COMMA", "FILLER", "BE", "IT"):
        at -= 1
    return at


_LAST_ONE = re.compile(r"^(?:\W*(?:okay|ok|hey|so|and|oh|wait|uh|actually)\W+)*(?:on |correction on )?(?:that|the|my) last (?:one|fitting|piece) (?:i (?:did|sent|made|told you about)|the|is|has|it's|isn't|got|was|should)\b")


def _same_sentence(row: Row, first: int, last: int) -> bool:
    return first <= last and not any(item.concept in ("STOP", "QUERY") for item in row.items[first:last])


def region_of(regions: Regions, item: int) -> int:
    return max(0, bisect_right(regions, (item, len(regions) + 1)) - 1)


_NOW = re.compile(r"^(?:'s| is| are| has| got)?(?: been| its| it)?(?: \w+){1,3} (?:now|finally|after all|since then)\b")


@cache
def _earlier() -> re.Pattern[str]:
    return re.compile(r"^,? ?(?:that |the one |the )?(?:" + "|".join(language.turns.earlier for language in LANGUAGES.values() if language.turns.earlier) + ")")


def _amended(row: Row, mention: Mention, first: bool) -> bool:
    """ "and fitting fifteen, that should have been …": a mark alone, and then a word that sets it right."""
    behind = row.text[row.items[mention.last - 1].end : row.items[mention.last - 1].end + 60].lower().replace("’", "'")
    if _earlier().match(behind):  # "that elbow from this morning, I put the vanes in"
        return True
    if mention.mark is None or mention.kind is not None:
        return False
    if not first and _NOW.match(behind):  # "and twelve's taped now"
        return True
    for item in row.items[mention.last : mention.last + 5]:
        if item.concept == "SHOULD_HAVE" or (item.concept == "FIX" and not first):
            return True
        if item.concept not in ("COMMA", "THIS", "BE", "FILLER", "IT", "NO", "NOT"):
            return False
    return False


def _is_new(now: Draft, mention: Mention, row: Row) -> bool:
    if mention.mark is not None and now.mark is not None and mention.mark != now.mark.value:
        return not mention.corrects
    if mention.corrects and mention.kind is not None and now.kind is not None:
        return False
    if mention.mark is not None and now.mark is None and now.kind is not None and mention.kind is not None:
        return mention.kind != now.kind.value and not _apposed(row, now, mention) or _hangs_on_another_run(row, now, mention)
    if mention.mark is None and mention.kind is not None and now.kind is not None:
        if mention.another:
            return True
        if mention.kind == now.kind.value:
            return _hangs_on_another_run(row, now, mention)
        return mention.kind not in ("branch", "hanger", "repair", "collar", "register") and (_starts_sentence(row, mention) or _done_to(row, mention))
    if mention.another and (now.kind is not None and now.mark is not None) and mention.mark != now.mark.value:
        return True
    return False


def _hangs_on_another_run(row: Row, now: Draft, mention: Mention) -> bool:
    """ "Hangers on run two every six foot. Hangers on run four are eight foot apart.": those of another run are others."""
    if mention.kind != "hanger" or now.kind.value != "hanger" or not _starts_sentence(row, mention):
        return False
    so_far, here = (
        {row.words(at + 1, at + 2).lower() for at in range(first, last) if row.items[at].concept == "RUN" and at + 1 < len(row.items)}
        for first, last in ((now.begin, mention.first), (mention.first, row.sentence_end(mention.first)))
    )
    sized = all(any(item.concept in ("SIZE", "BY") for item in row.items[first:last]) for first, last in ((now.begin, mention.first), (mention.first, row.sentence_end(mention.first))))
    return bool(here) and so_far.isdisjoint(here) and (bool(so_far) or sized)


def _told_before_its_mark(now: Draft, mention: Mention, behind: Mention, row: Row) -> bool:
    """ "A ninety with vanes, mark 31, a tee …, mark 32": each has its number behind what is told of it, so the kind between is of the next."""
    if mention.mark is not None or mention.kind is None or now.mark is None or behind.mark is None or behind.kind is not None or behind.mark == now.mark.value:
        return False
    leads = [[item.concept for item in row.items[at - 2 : at]] for at in (now.mark.first, behind.mark_at[0])]
    names_ahead = any(item.concept in ("NUM", "SIZE", "DEG") or item.concept.startswith("K_") for item in row.items[now.begin : now.mark.first - 1])
    return names_ahead and all(lead in (["COMMA", "NUMBER"], ["COMMA", "FITTING"]) for lead in leads) and row.items[mention.kind_at[0] - 1].concept in ("DET", "SIZE", "SERVICE", "ANOTHER")


def _on_its_own_run(row: Row, now: Draft, mention: Mention) -> int | None:
    """ "Run one straight one, run two straight one": where the words of the second begin, though its number is the same."""
    if now.mark is None or now.mark.value != mention.mark or now.kind is None or mention.kind != now.kind.value:
        return None
    runs = [at for at in range(max(0, now.begin - 3), mention.mark_at[0]) if row.items[at].concept == "RUN"]
    if len(runs) < 2 or not now.mark.last <= runs[-1] or row.words(runs[0], runs[0] + 2) == row.words(runs[-1], runs[-1] + 2):
        return None
    return runs[-1]


def _what_it_hangs_on(row: Row, kind: Claim, mark: Claim) -> bool:
    """ "T-5 snagged on a hanger rod": no kind of that piece, as in "fitting four, hanger"."""
    if kind.value != "hanger":
        return False
    between = {item.concept for item in row.items[mark.last : kind.first]}
    return not (mark.last <= kind.first and between <= {"COMMA", "BE", "DET"} and not plural(row, kind.first))


def _spoken_of(row: Row, made: list[Draft], mention: Mention) -> bool:
    known = any(draft.mark is not None and draft.mark.value == mention.mark for draft in made)
    return known and mention.last < len(row.items) and row.items[mention.last].concept in ("BE", "HAVE")


def _apposed(row: Row, now: Draft, mention: Mention) -> bool:
    """ "straight collar", "pants wye": two kinds side by side are one thing; the later names it."""
    between = [item.concept for item in row.items[now.kind.last : mention.kind_at[0]]]
    if now.kind.value in _LET_IN and "IN" in between and len(between) <= 5 and not {"STOP", "COMMA"} & set(between):
        return True  # "register opening cut in straight nine"
    return now.kind.last >= mention.first - 1


_LET_IN = ("access_door", "register")


def _starts_sentence(row: Row, mention: Mention) -> bool:
    before = [item.concept for item in row.items[max(0, mention.first - 2) : mention.first]]
    lead = [item.concept for item in row.items[mention.first : mention.kind_at[0]]] if mention.kind_at else []
    stopped = not before or before[-1] in ("STOP", "QUERY") or (before[-1] == "FILLER" and before[0] in ("STOP", "QUERY"))
    return stopped or (lead[:1] == ["FILLER"] and before[-1:] == ["STOP"])


_LEADS_TO_IT = frozenset(("I", "FILLER", "AND", "DET", "PENDING", "NEED", "WILL", "GOING_TO", "LATER", "STILL", "TAPE", "TAPE_IT", "TAPED", "STAPLE", "STAPLED", "RUB", "RUBBED", "UP", "DOWN", "NOT_DONE", "FORGOT", "ALL", "ONLY"))
_WORKS = frozenset(("TAPE", "TAPE_IT", "TAPED", "STAPLE", "STAPLED", "RUB", "RUBBED"))


def _done_to(row: Row, mention: Mention) -> bool:
    """ "Straight 21, stapled, taped. Still have to tape the plenum.": what the work of a sentence of its own is done to, with an article, is another piece."""
    first = row.sentence_start(mention.first)
    led = [item.concept for item in row.items[first : mention.kind_at[0]]]
    return len(led) > 1 and led[-1] == "DET" and led[-2] in (*_WORKS, "UP", "DOWN") and _LEADS_TO_IT.issuperset(led)


def _kind_claim(row: Row, mention: Mention) -> Claim | None:
    if mention.kind is None:
        return None
    return claim_plain(row, "kind", mention.kind, *mention.kind_at)


def _mark_claim(row: Row, mention: Mention) -> Claim | None:
    if mention.mark is None:
        return None
    made = claim_plain(row, "mark", mention.mark, *mention.mark_at)
    backs = tuple(TakenBack(str(int(b.value.value)), b.start, b.end) for b in row.items[mention.mark_at[1] - 1].took_back if b.concept == "NUM")
    return replace(made, took_back=backs) if backs else made


def claim_plain(row: Row, name: str, value, first: int, last: int) -> Claim:
    """A claim that takes no hedge in front of it and is never doubted by one."""
    made = claim(row, name, value, first, last)
    return replace(made, hedged=False, first=first, start=row.items[first].start) if made.hedged or made.first != first else made


_WHICH = {"first": 0, "second": 1, "third": 2, "fourth": 3, "last": -1, "primero": 0, "primera": 0, "segundo": 1, "segunda": 1, "tercero": 2, "tercera": 2, "cuarta": 3, "último": -1, "última": -1, "ultimo": -1, "ultima": -1}
_THE_ONE = re.compile(rf"\b(?:the|el|la|al) ({'|'.join(_WHICH)})\b(?: one)?(?! (?:de|del|of|pulgada|pie|inch|foot|hand|mano|vez|time|lado|side|thing|\d))")


def _of_the_one(row: Row, one: Claim, mates: list[int]) -> list[int]:
    """ "… the first with vanes and the second without", "a la última no le alcanzó el tape": of that one of the batch only."""
    start = row.sentence_start(one.first)
    told = list(_THE_ONE.finditer(row.text[row.items[start].start : one.end].lower()))
    which = _WHICH[told[-1].group(1)] if told else 0
    return [mates[which]] if told and which < len(mates) else mates


_OF_TWO = re.compile(r"^(?:y |and |pero |but )?(?:the|el|la|al|a la) (first|second|third|primer[oa]|segund[oa]|tercer[oa])(?: one)?\b")


_COUNTS_TWO = re.compile("first|second|third|primer[oa]|segund[oa]|tercer[oa]")


def _of_these(row: Row, one: Claim, made: list[Draft], holder: int, begin: int) -> int:
    """ "Recta 4 y recta 5, la primera encintada, la segunda no": of the piece named first."""
    start = one.first
    while start > 0 and row.items[start - 1].concept not in ("STOP", "QUERY", "COMMA"):
        start -= 1
    if start < begin < one.first:
        return holder  # "el primero con aletas y el segundo sin": told of by its own place
    told = _OF_TWO.match(row.text[row.items[start].start : row.items[one.last - 1].end].lower())
    marked = [place for place, draft in enumerate(made) if draft.mark is not None]
    return marked[_WHICH[told.group(1)]] if told and len(marked) > _WHICH[told.group(1)] and len(marked) > 1 else holder


_TO_ITS_NAME = ("DET", "ON", "OF", "OFF", "IN", "FILLER", "NUMBER", "FITTING")
_MEASURED = frozenset(("staple_spacing", "staple_leg", "staple_clinch", "tape_width", "closure", "gap", "hanger_spacing", "screw_spacing", "cross_tab_length", "cross_tab_spacing"))
_GOES_BACK = ("IT", "THIS", "BOTH", "ALL", "EACH")


def _led_up(row: Row, regions: Regions, claims: list[Claim]) -> dict[int, int]:
    """First item of what a sentence tells ahead of the one name in it -> where that name's stretch stands: "tees 47 and 43 are stapled. I'll tape tee 43 tomorrow"."""
    found: dict[int, int] = {}
    for at, (begin, holder) in enumerate(regions):
        start = row.sentence_start(begin)
        if at == 0 or regions[at - 1][0] >= start or regions[at + 1 : at + 2] and regions[at + 1][0] == begin or all(other != holder for _, other in regions[:at]):
            continue
        start = max((k + 1 for k in range(start, begin) if row.items[k].concept == "COMMA"), default=start)
        told = [one for one in claims if start <= one.first and one.last <= begin]
        if row.items[start].concept not in _GOES_BACK and row.items[begin].concept not in ("BUT", "EXCEPT") and any(all(item.concept in _TO_ITS_NAME for item in row.items[one.last : begin]) for one in told):
            found |= {one.first: at for one in told}
    return found


def share_out(row: Row, made: list[Draft], regions: Regions, claims: list[Claim], directed: dict[int, str]) -> None:
    """Every claim to the entry whose stretch of words it stands in; "both of them" to all so far."""
    batches = Counter(begin for begin, _ in regions)
    of_two = _COUNTS_TWO.search(row.text.lower()) is not None
    marks_at = {at for draft in made if draft.mark is not None for at in range(draft.mark.first, draft.mark.last)} if len(made) > 1 else set()
    of_all: set[tuple[str, int]] = set()  # facts that were told of several at once
    led_up = _led_up(row, regions, claims)
    for one in sorted(claims, key=lambda c: (c.first, c.last)):
        if one.name == "(angle)" and one.last - 1 in marks_at:
            continue  # "90 and 91, the same": their numbers
        at = led_up.get(one.first) or region_of(regions, one.last - 1 if one.pending else one.first)  # "still need to tape 22" names its own
        begin, holder = regions[at]
        if one.for_mark is not None and (place := next((k for k, draft in enumerate(made) if draft.mark is not None and draft.mark.value == one.for_mark), None)) is not None:
            mates = [place]
        elif one.first in directed and (place := next((k for k, draft in enumerate(made) if draft.mark is not None and draft.mark.value == directed[one.first]), None)) is not None:
            mates = [place]
        elif one.both_at >= begin and batches[begin] == 1:
            mates = sorted({index for _, index in regions[: at + 1]})
        elif batches[begin] > 1:
            mates = [index for other, index in regions[max(0, at - batches[begin]) : at + 1] if other == begin]
        else:
            mates = [_of_these(row, one, made, holder, begin) if of_two else holder]
        mates = _of_the_one(row, one, mates) if len(mates) > 1 else mates
        if len(mates) > 1:
            of_all.update((one.name, place) for place in mates)
        elif (one.name, mates[0]) in of_all and (one.name in ACT_FACTS and one.value is False or one.name in _MEASURED):
            one = replace(one, corrects=True, weak=False)  # "all three rubbed. Except six, I didn't rub six": of one more closely
        for place in mates:
            if len(mates) > 1 and made[place].kind is not None and not kept_for(made[place].kind.value, one.name):
                continue
            made[place].claims.append(one)
