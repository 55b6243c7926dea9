"""Numbers and kinds that name no piece: an elbow's angle, a count of sides, a piece that is only pointed at."""

from __future__ import annotations

from logbook.reading.clauses.batches import plural
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of


def mark_before_kind(row: Row, match) -> bool:
    """ "103 straight, run 4", "T4 tee": a mark, where "one elbow", "four elbows", "ninety elbow", "ten collar" are none."""
    item = row.items[match.start("m")]
    if item.concept == "MARKED":
        return True
    kind, value = row.items[match.start("k")].concept, item.value.value
    named = [i.concept for i in row.items[match.start() : match.start("m")]]
    if "FITTING" in named or "NUMBER" in named:
        return True
    angle = kind in ("K_ELBOW", "K_WYE", "K_OFFSET") and value in (90, 45, 30, 60, 22, 15)
    return value > 1 and value.denominator == 1 and not angle and kind not in ("K_COLLAR", "K_HANGER", "K_REPAIR", "K_REGISTER") and not plural(row, match.start("k"))


def counts_pieces(row: Row, at: int) -> bool:
    """ "three-piece ninety": the pieces of an elbow, not a piece with a mark."""
    before = row.items[at - 1] if at else None
    hyphen = before is not None and before.concept == "NUM" and "-" in row.text[before.end : row.items[at].start]
    return hyphen or (before is not None and before.concept == "NUM" and row.words(at, at + 1).lower().startswith(("piece", "pieza")))


def counts_on(row: Row, at: int) -> bool:
    """ "four sides stapled, four taped": the second four counts sides too; "all the tabs but two are bent": tabs."""
    if at > 1 and row.items[at - 1].concept == "BUT" and row.items[at - 2].concept in ("TABS", "TAB_WORD"):
        return True
    if row.items[at].concept != "NUM" or row.items[at].value.value > 4 or at + 1 >= len(row.items) or row.items[at + 1].concept not in ("STAPLED", "TAPED", "RUBBED"):
        return False
    for k in range(at - 1, max(0, at - 8), -1):
        if row.items[k].concept in ("STOP", "QUERY"):
            return False
        if row.items[k].concept == "SIDE_WORD" and row.items[k - 1].concept == "NUM":
            return True
    return False


_COUNTABLE = ("SIDE_WORD", "DAMAGE", "TABS", "STAPLES", "STAPLE", "SCREWS", "JOINT")


def no_piece(row: Row, mention, made) -> bool:
    """A bare number that a note with a named piece says of it: its turn ("elbow 12 …. Ninety, vanes in"), or how many of what was counted before it."""
    if mention.mark_at is None or mention.batch or mention.mark_at[1] - mention.mark_at[0] != 1 or row.items[mention.mark_at[0]].concept != "NUM":
        return False
    at = mention.mark_at[0]
    value, before = row.items[at].value.value, row.items[at - 1].concept if at else ""
    others = [m for m in made if m is not mention and (m.mark is not None or m.batch)]
    if before == "DET" and value <= 4 and _never_came(row, at):
        return True
    if before in ("FITTING", "NUMBER") or mention.pointed or not others:
        return False
    if value in (90, 45) and (mention.kind is None or before == "COMMA" and mention.kind in ("elbow", "wye")):
        turned = any(item.concept in ("NUM", "DEG") and item.value.value in (90, 45) and k != at and not any(m.mark_at and k in range(*m.mark_at) for m in made) for k, item in enumerate(row.items))
        return not turned and any(m.kind in ("elbow", "wye") and m.mark not in ("90", "45") for m in others)
    if mention.kind is not None or before == "DET" or not 0 < value <= 12:
        return False
    if value == 1 and at + 1 < len(row.items) and (row.items[at + 1].concept in ("STAPLE", "STAPLES", "SCREWS", "TABS") or row.items[at + 1].read_as == "stapled"):
        return True  # "one staple every four inches"
    until = min((m.first for m in made if m.first > at), default=len(row.items))
    if not mention.another and not mention.amends and (before in ("FILLER", "I", "HUNG") or before == "BE" and row.items[at - 2].concept == "WORD") and all(item.concept in ("STOP", "QUERY", "FILLER") for item in row.items[at + 1 : until]):
        return True  # "the spec says two coats, I did two": nothing is told of such a piece
    if value > 1 and _counts_those_behind(row, at, until, sum(len(m.batch) or 1 for m in others if m.first > at) == value):
        return True
    if _says_it_again(row, at, value):
        return True
    for k in range(at - 1, max(0, at - 14), -1):
        if row.items[k].concept in ("STOP", "QUERY"):
            return False
        if row.items[k].concept in _COUNTABLE and row.items[k - 1].concept in ("NUM", "COUNT", "ALL"):
            return True  # "five tears, I fixed four"
    return False


def _counts_those_behind(row: Row, at: int, until: int, so_many: bool) -> bool:
    """ "Two for run thirteen. Straight 138, …": how many he tells of, with nothing but their run before the first of them; "got three done. …" where `so_many` are told of."""
    rest = [item.concept for item in row.items[at + 1 : until]]
    if at and row.items[at - 1].concept not in ("STOP", "QUERY", "COMMA", "FILLER", "HAVE") or until == len(row.items) or "RUN" not in rest and not so_many or not {"STOP", "COMMA"} & set(rest):
        return False
    return all(concept in ("OF", "ON", "FROM", "RUN", "STOP", "COMMA", "FILLER", "TO", "ANOTHER") or concept == "NUM" and rest[k - 1] == "RUN" for k, concept in enumerate(rest))


def _never_came(row: Row, at: int) -> bool:
    """ "the three didn't come in": a roll of tape of that width, or staples."""
    behind = row.items[at + 1 : at + 3]
    return len(behind) == 2 and behind[0].concept in ("NOT", "NOT_DONE") and row.text[behind[1].start : behind[1].end].lower().split()[0] in words_of("small.arrives") and any(item.concept in ("TAPE", "TAPED", "CLOSURE", "STAPLES", "STAPLED") for item in row.items[:at])


def goes_over(row: Row, mention) -> bool:
    """ "15, reducer: five over": how far it goes over, where its number was told right before."""
    if mention.kind not in ("transition", "offset") or mention.mark_at is None or mention.kind_at is None or mention.kind_at[1] != mention.mark_at[0]:
        return False
    at, first = mention.mark_at[1], mention.kind_at[0]
    over = at < len(row.items) and row.items[at].concept == "OVER" and (at + 1 == len(row.items) or row.items[at + 1].concept in ("STOP", "COMMA", "IN", "AND"))
    return over and first > 1 and row.items[first - 1].concept in ("COMMA", "BE", "DET") and any(item.concept in ("NUM", "MARKED") for item in row.items[max(0, first - 3) : first])


def _says_it_again(row: Row, at: int, value) -> bool:
    """ "Stapled every three inches, that's three, I counted": the measure of the words before, once more."""
    before = row.items[max(0, at - 6) : at]
    said = any(item.concept in ("NUM", "LEN", "FRAC") and item.value.value == value for item in before)
    return said and before[-1].concept in ("BE", "FILLER") and not any(item.concept == "STOP" for item in before)


def just_one(row: Row, match) -> bool:
    """ "it's a straight one", "the straight one": a word for the thing, where "straight one" alone is number 1."""
    at = match.start("k")
    said = row.words(*match.span("m")).lower()
    if said == "uno" and at > 0 and row.words(at - 1, at).lower().split()[-1] in ("el", "la", "del", "al"):
        return False  # "la recta uno"
    return said in ("one", "uno", "una") and at > 0 and row.items[at - 1].concept in ("DET", "ANOTHER", "SIZE", "LEN")


def angle_not_mark(row: Row, match) -> bool:
    """ "elbow ninety": 90 and 45 behind an elbow are its angle; "elbow 45 on run 5" is number 45, as "elbow 44 on run 5" is 44.

    "Elbow ninety on run two" stays an angle: nearly every elbow is one, and few jobs reach number 90.
    """
    first, last = match.span("m")
    if last - first != 1 or row.items[first].concept != "NUM" or match.re.groupindex.get("k") is None:
        return False
    kind = row.items[match.start("k")].concept
    value = row.items[first].value.value
    if value == 45 and [item.concept for item in row.items[last : last + 3]] == ["ON", "RUN", "NUM"] and not _numbered(row, match.start("k")):
        return False
    if value == 45 and row.words(match.start("k"), match.start("k") + 1).lower().startswith("square"):
        return False  # a square elbow turns ninety
    if kind == "K_WYE" and value == 90 and row.items[last].concept in ("COMMA", "STOP") if last < len(row.items) else False:
        return False  # "pantalón noventa, run tres": no wye turns so far
    if kind in ("K_ELBOW", "K_WYE") and value in (90, 45) and (_turns_otherwise(row, first) or _next_in_line(row, match.start("k"), first)):
        return False
    return kind in ("K_ELBOW", "K_WYE") and value in (90, 45) or kind == "K_OFFSET" and row.items[first].concept == "LEN"


def an_angle(row: Row, match) -> bool:
    """ "The forty-five on run six is elbow twelve", "that ninety is number seventeen": a word for the thing, which is named behind."""
    at = match.start("m")
    if _on_a_run(row, at) or _turn_of_a_run(row, at):
        return True
    if row.items[at].concept != "NUM" or row.items[at].value.value not in (90, 45) or at == 0 or row.items[at - 1].concept not in ("DET", "THIS"):
        return False
    ahead = [item.concept for item in row.items[at + 1 : at + 12]]
    named = next((k for k, c in enumerate(ahead) if c == "BE"), None)
    rest = [c for c in ahead[named + 1 : named + 3] if c != "DET"] if named is not None else []
    heavy = row.words(at - 1, at).lower() in ("the", "that", "this") and ahead[:1] == ["BE"] and ahead[1:2] not in (["STAPLED"], ["TAPED"], ["RUBBED"], ["HUNG"], ["FILLER"], ["NOT"], ["BOTH"])
    return heavy or bool(rest) and (rest[0] in ("NUMBER", "FITTING") or rest[0].startswith("K_") or rest[0] == "MARKED")


def _on_a_run(row: Row, at: int) -> bool:
    """ "Ninety on run three, seventeen, ten by eight": a turn, where a number behind its run names the piece."""
    item, ahead = row.items[at], [one.concept for one in row.items[at + 1 : at + 8]]
    if item.concept != "NUM" or item.value.value not in (90, 45) or ahead[:2] != ["ON", "RUN"] or "COMMA" not in ahead[2:5]:
        return False
    rest = [c for c in ahead[ahead.index("COMMA") + 1 :] if c not in ("NUMBER", "FITTING")]
    return rest[:1] in (["NUM"], ["MARKED"]) and rest[1:2] in (["COMMA"], ["STOP"], [])


def _turn_of_a_run(row: Row, at: int) -> bool:
    """ "Made the ninety for run three, twelve by ten", "Ninety on run two, no vanes": by its article or its vanes a turn, and no number of a piece."""
    item = row.items[at]
    if item.concept != "NUM" or item.value.value not in (90, 45) or [one.concept for one in row.items[at + 1 : at + 3]] not in (["ON", "RUN"], ["OF", "RUN"]):
        return False
    return at > 0 and row.items[at - 1].concept in ("DET", "THIS") or any(one.concept == "VANES" for one in row.items)


def _turns_otherwise(row: Row, at: int) -> bool:
    """ "Elbow forty-five, that's its number, it's a ninety": another turn is told right behind, so this is its mark."""
    value = row.items[at].value.value
    for k in range(at + 1, min(at + 14, len(row.items))):
        item = row.items[k]
        opens = [one.concept for one in row.items[k + 1 : k + 5] if one.concept != "IT"]
        if item.concept == "STOP" and opens[:2] == ["BE", "DET"] and opens[2:3] in (["NUM"], ["DEG"]):
            continue  # "Elbow forty-five, run six. It's a ninety."
        if item.concept in ("FIX", "NO", "NOT", "OR", "STOP", "AND") or item.concept.startswith("K_"):
            return False
        angle = item.concept in ("NUM", "DEG") and item.value.value in (90, 45) and item.value.value != value
        if angle and (item.concept == "DEG" or row.items[k - 1].concept in ("DET", "COMMA") or "NUMBER" in [i.concept for i in row.items[at:k]]):
            return True
    return False


def _next_in_line(row: Row, kind_at: int, at: int) -> bool:
    """ "Elbow 44 has vanes, elbow 45 has none": the number right after or before that of another elbow is a number too."""
    if at != kind_at + 1:
        return False
    value = row.items[at].value.value
    for k, item in enumerate(row.items[:-1]):
        ahead = row.items[k + 1]
        if k != kind_at and item.concept == row.items[kind_at].concept and ahead.concept == "NUM" and 0 < abs(ahead.value.value - value) <= _IN_LINE:
            return True
    return False


_IN_LINE = 2  # numbers apart


def _numbered(row: Row, at: int) -> bool:
    """Whether the piece has its number already right before: "fitting 7, elbow 45 on run 5"."""
    while at > 0 and row.items[at - 1].concept in ("COMMA", "BE", "DET", "FILLER", "THIS", "IT"):
        at -= 1
    return at > 0 and row.items[at - 1].concept in ("NUM", "LETTER")


def leads_to(row: Row, at: int) -> bool:
    """ "collar seven into elbow four", "lets into straight 14": the other piece, not the one spoken of."""
    behind = at - 1
    while behind >= 0 and row.items[behind].concept in ("DET", "SIDE", "OF", "SIDE_WORD"):
        behind -= 1
    if behind < 1:
        return False
    if row.items[behind].concept in _SITS and _sits_on_it(row, behind):
        return True
    said = row.words(behind, behind + 1).lower()
    if said == "than":
        return True  # "a little shorter than straight four"
    if row.items[behind].concept == "IN" and any(row.items[k].concept in _LET_IN for k in range(max(0, behind - 9), behind)):  # "the door in straight nine …, that's D2"
        return any(item.concept == "MARKED" for k, item in enumerate(row.items) if k != at + 1)
    if said == "en" and any(row.items[k].concept in ("K_REGISTER", "K_ACCESS_DOOR", "K_COLLAR") for k in range(max(0, behind - 10), behind)) and not any(row.items[k].concept in ("STOP", "QUERY") for k in range(max(0, behind - 10), behind)):
        return True  # "rejilla 28, hueco de catorce por seis en la recta doce"
    return said in ("into", "onto", "in to", "on to the side of", "let into", "en el", "dentro del") and any(
        row.items[k].concept.startswith("K_") or row.items[k].concept == "FITTING" for k in range(min(max(0, behind - 8), max(behind - 16, row.sentence_start(behind))), behind)
    )




_LET_IN = ("K_ACCESS_DOOR", "K_REGISTER")
_SITS = ("ON", "IN", "OFF", "FROM")
_ON_OTHERS = ("K_COLLAR", "K_REGISTER", "K_ACCESS_DOOR", "K_BRANCH", "BRANCH_WORD")  # what sits on another piece


def _sits_on_it(row: Row, at: int) -> bool:
    """ "Collar three, eight inch round, on straight six", "it's on straight six": where a marked piece that sits on others sits."""
    start = row.sentence_start(at)
    if [item.concept for item in row.items[start:at]] in (["IT", "BE"], ["BE"], ["MOVE", "IT"]):
        start = 0
    return any(row.items[k].concept in _ON_OTHERS and row.items[k + 1].concept in ("NUM", "MARKED", "LETTER", "NUMBER", "COMMA") for k in range(start, at - 1))


def reference(row: Row, at: int, taken: set[int]) -> bool:
    """A kind that is only pointed at: "into the tee", "off the main elbow"."""
    before = [row.items[k].concept for k in range(max(0, at - 2), at) if k not in taken]
    if before[-1:] == ["DET"] and row.words(at - 1, at).lower() in words_of("small.the") and row.words(at - 2, at - 1).lower() in words_of("small.past_it"):
        return True  # "goes in run four after the elbow"
    return any(c in ("TIED", "FROM", "OFF", "BY", "FT2") for c in before) or before[-1:] == ["TO"] or before == ["TO", "DET"]
