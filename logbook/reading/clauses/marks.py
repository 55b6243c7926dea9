"""How a mark is spelled, and the ways of naming a piece that are not "straight nine": "put up nine", "call it P nine"."""

from __future__ import annotations

import re

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import in_any

MARK = (
    "(?: MARKED | LETTER (?:DASH)? NUM | K_TEE (?:DASH)? NUM | NUM DASH NUM | NUM LETTER (?!NUM) | NUM | LETTER (?=SEP|$|ON|BE|RUN|AND) )"
)


def mark_text(row: Row, first: int, last: int, language: Language) -> str | None:
    """A mark as spoken: "T four" is T4, "B dash twelve" B-12, "seven" 7."""
    if last - first == 1 and row.items[first].concept == "MARKED":
        return row.items[first].value
    parts = []
    for at in range(first, last):
        item = row.items[at]
        words = row.text[item.start : item.end]
        if item.concept == "DASH":
            parts.append("-")
        elif item.concept == "NUM":
            if item.value.value.denominator != 1 or item.value.value < 0 or item.value.value > 9999:
                return None
            if parts and parts[-1] != "-" and "-" in row.text[row.items[at - 1].end : item.start]:
                parts.append("-")
            parts.append(str(int(item.value.value)))
        else:
            parts.append(language.letters.get(words.lower(), words.upper()[:1]))
    return "".join(parts)


START = "(?:^|(?<=STOP)|(?<=QUERY)) (?:(?:FILLER|AND) COMMA?){0,3}"  # of a sentence, past "okay so,"


def _says(*words: str):
    """The words of group `f` end in one of these."""

    def fits(row: Row, match) -> bool:
        said = row.words(*match.span("f")).lower()
        return any(said == word or said.endswith(" " + word) for word in words)

    return fits


def no_length(row: Row, match) -> bool:
    """Behind a kind and a comma a bare number is its mark, unless it could be a turn or a measure of it."""
    kind = row.items[match.start("k")].concept
    value = row.items[match.start("m")].value if row.items[match.start("m")].concept == "NUM" else None
    last = match.end("m")
    if kind == "K_COLLAR" and last + 1 < len(row.items) and row.items[last].concept in ("STOP", "COMMA") and row.items[last + 1].concept in ("LEN", "ROUND"):
        return True  # "Collar, five. Eight inch."
    return kind not in ("K_COLLAR", "K_OFFSET", "K_HANGER", "K_REPAIR") and not (kind in ("K_ELBOW", "K_WYE") and value is not None and value.value in (90, 45, 30, 60, 22))


def _on_its_own(row: Row, match) -> bool:
    """ "Straight. Sixty-six. Ten by ten.": a number that is a sentence behind the kind; of an offset only where another tells how far it goes over."""
    at, kind = match.start("m"), row.items[match.start("k")].concept
    if kind == "K_OFFSET":
        return row.items[at].concept != "NUM" or any(item.concept in ("OVER", "OFFSETS") for item in row.items[match.end() :])
    return no_length(row, match)


def _done_here(row: Row, match) -> bool:
    """ "nine here, …", "B dash nine is finished": not "four guys, …"."""
    at = match.start("n") if match.start("n") >= 0 else match.start("n2")
    return row.words(at, at + 1).lower() in ("here", "now", "done", "finished", "is done", "completely", "all done", "aquí", "lista", "listo", "terminada", "terminado")


def _opens(row: Row, at: int) -> bool:
    """Whether a sentence begins here, past "okay so,"."""
    while at > 0 and row.items[at - 1].concept in ("FILLER", "COMMA", "AND"):
        at -= 1
    return at == 0 or row.items[at - 1].concept in ("STOP", "QUERY")


def _worked(row: Row, match) -> bool:
    """ "working on twelve", "terminé la nueve"; "a forty-five" is a thing, no number."""
    article = row.words(*match.span("d")).lower() if match.start("d") >= 0 else ""
    if row.words(*match.span("m")).lower() == "one" and row.items[match.start("m") - 1].concept in ("HAVE", "I"):
        return False  # "three by four o'clock, I said. I've got one."
    if row.words(*match.span("f")).lower() in ("on", "for", "got", "doing", "en", "para") and not _opens(row, match.start()):
        return False  # "fixed the truck for nine hundred"
    if row.words(*match.span("f")).lower().split()[-1] == "got" and any(item.concept.startswith("K_") for item in row.items[: match.start()]) and not any(item.concept.startswith("K_") for item in row.items[match.end("m") : match.end("m") + 3]):
        return False  # "I'd do ten on the screws if I had enough, I got eighteen"
    number = row.items[match.start("m")]
    if row.words(*match.span("f")).lower() in ("i did", "we did") and number.concept == "NUM" and number.value.value <= 4 and any(item.concept.startswith("K_") for item in row.items):
        return False  # "the spec says two coats on collars, I did two"
    return article not in ("a", "an", "un", "una") and _LEADS(row, match)


_LEADS = _says("working on", "finished up", "finished", "done with", "got done with", "on", "for", "doing", "i did", "we did", "built", "made", "got", "i made", "we made", "up with",
                "wrapped up", "closed up", "finished off", "completed", "knocked out", "banged out", "put together", "this is", "this one's", "this one is", "this here is", "here is", "got", "i've got", "we've got", "that's", "here's", "call it", "calling it", "back on", "now on", "acabé", "acabe", "acabamos", "listo", "terminé", "terminamos", "hice", "hicimos", "armé", "armamos", "terminado", "terminada", "lista")  # fmt: skip

def _worked_so(row: Row, match) -> bool:
    """ "I built 84 myself", "made 12 because you asked": by whom or why, so that the number counts no pieces as it may in "made 12 last night"."""
    return _worked(row, match) and in_any("small.whose_work").match(row.words(match.start("n"), min(len(row.items), match.start("n") + 3)).lower()) is not None


def _pointed(row: Row, match) -> bool:
    """ "Un codo, el cuatro": the one of that number; "a ninety" is a thing."""
    return row.words(*match.span("d")).lower() in ("el", "la", "the")


_THINGS = "(?:PANEL|VANES|TAPE|FACING|FLAP|SIDE|TABS|GROOVE|SCRIM|SHIPLAP|JOINT|BOARD|STAPLES|THROAT)"
_TOLD = re.compile(r"(?:^|.* )(?:(?:i|we) (?:sent|called|gave|told|said|logged|turned|reported|had|put|did)|que (?:mand|dij|report|anot|pas|di|puse|mandamos)\w*)(?: .*)? (?:as|was|is|under|number|como|era|es|el|la|fue)(?: the| number| el| la| número)?")


def told_before(row: Row, first: int, mark_at: int) -> bool:
    """ "The elbow I sent in as thirty", "el codo que dije que era el treinta": words on a piece that was told of earlier."""
    return first < mark_at and _TOLD.fullmatch(row.words(first, mark_at).lower()) is not None


_TOLD_THEN = re.compile(
    r"[ ,]*(?:(?:that |which )?(?:i|we) (?:sent|called|gave|told|said|logged|turned|reported|talked)\b.*?\b(?:earlier|before|already|this morning|ago|yesterday)\b|from (?:this morning|earlier|before|yesterday)\b"
    r"|(?:el |la )?que (?:ya )?(?:te |les |le )?(?:dij|mand|report|anot|pas|di)\w* (?:antes|hace rato|hace ratito|ayer|ahorita|en la mañana)\b|de (?:hace rato|en la mañana|ayer)\b)"
)


def told_then(row: Row, last: int) -> bool:
    """ "Straight 12 that I called in earlier is 20 by 8, not 18 by 8": told of before, and set right now."""
    stop = row.sentence_end(last)
    if last >= stop or _TOLD_THEN.match(row.text[row.items[last - 1].end : row.items[stop - 1].end].lower()) is None:
        return False
    concepts = [item.concept for item in row.items[last:stop]]
    return bool({"FIX", "SHOULD_HAVE"} & set(concepts)) or any(item.took_back for item in row.items[last:stop])


def _told(row: Row, match) -> bool:
    return told_before(row, match.start("k") + 1, match.start("m"))


def _of_a_thing(row: Row, match) -> bool:
    """ "the panel on eighteen": not "staples on two", "tape on four of them"."""
    item = row.items[match.start("m")]
    return item.concept == "MARKED" or item.value.value > (12 if "STAPLES" in [row.items[match.start()].concept] else 4)


def _of_a_thing_named(row: Row, match) -> bool:
    return row.items[match.start("m")].concept == "MARKED" or row.items[match.start("m")].value.value > 4


# pattern with the mark in group m, and what else must hold; tried in order where a sentence names no piece otherwise
SAID_OTHERWISE: tuple[tuple[str, object], ...] = (
    ("(?P<k>KIND) (?:[^STOP QUERY COMMA]){2,7} (?P<m>MARKED|NUM) (?=SEP|BE|$)", _told),
    (f"{_THINGS} (?:ON|OF|IN) DET? (?P<m>MARKED|NUM) (?=BE|QUESTION|NOT|HAVE|MOVES|MOVE|SEATED|DAMAGE|NO|RUBBED|STAPLED|TAPED|FILLER|SHOWS)", _of_a_thing),
    (f"{START} (?:ON|IN) DET? (?P<m>MARKED|NUM) (?=DET? (?:{_THINGS}|BACK|SLOPE|OFFSETS))", _of_a_thing_named),
    (f"{START} (?:MOVE|GOING_TO|WILL|I|FILLER){{0,3}} (?P<back>BACK TO) DET? (?P<m>MARKED|NUM) (?=COMMA|STOP)", None),
    (f"{START} (?P<m>MARKED|NUM) (?=MOVE ON RUN (?:NUM|LETTER))", None),
    (f"{START} (?P<m>MARKED|NUM) COMMA (?=WORD{{0,2}} ACCESSORY COMMA)", None),
    (f"{START} HEDGE (?P<m>MARKED|NUM) COMMA (?=(?:BE|IT|THIS){{1,2}} (?:RUN|ON RUN|FITTING|DET? KIND|SIZE))", None),
    (f"{START} (?P<f>WORD) (?:FITTING|NUMBER)? (?P<m>MARKED|NUM) COMMA (?=DET? (?:OUTLET|INLET|BACK|SLOPE|SIDE|KIND|SIZE|BRANCH_WORD|LENGTH|THROAT|IT|BE))", _says("fix", "fixing", "change", "changing", "redo", "on")),
    (f"{START} (?P<m>MARKED|NUM) COMMA (?=I (?:WORD|SAYS|HAVE|FILLER){{1,3}} DET (?P<f>WORD) (?:BACK|LENGTH|SIZE_WORD|SLOPE|RUN|SIDE_WORD))", _says("wrong")),
    (f"{START} (?P<f>WORD OF) (?P<m>MARKED|NUM) (?=COMMA)", _says("as for")),
    (f"{START} (?P<m>MARKED|NUM) (?P<f>MOVE_UP) (?!NUM|LEN|FRAC)", _says("went up")),
    (f"{START} (?:I|FILLER)? (?P<f>FILLER) (?:DET|FITTING|NUMBER|KIND)* (?P<m>MARKED|NUM) UP", _says("put", "we put", "i put")),
    ("(?:COMMA|STOP) (?:FILLER)? BE (?P<d>DET) NUMBER? (?P<m>MARKED|NUM) (?=SEP|$)", _pointed),
    (f"{START} (?:FILLER|AND|ANOTHER){{1,2}} BE? (?P<d>DET) NUMBER? (?P<m>MARKED|NUM) (?=COMMA)", _pointed),
    (f"{START} (?P<d>DET) (?P<m>MARKED|NUM) (?=OF SIZE)", _pointed),
    (f"{START} DET? (?P<m>MARKED|NUM) (?:COMMA|BE|FILLER|QUESTION){{0,2}} (?=SAME_AS|SAME_THING)", None),
    (f"{START} (?P<m>MARKED) (?=COMMA|RUN|ON RUN|SIZE|STAPLED|TAPED|HUNG|HAVE|NO|NOT)", None),
    (f"{START} (?P<m>MARKED|NUM) SIGN (?=KIND|SIZE)", None),
    (f"(?P<k>K_REPAIR) (?:ON|OF|FROM) (?:DET|FITTING|NUMBER){{0,2}} (?P<m>{MARK}) (?=SEP|$|AND|WITH|RUN|ON)", None),
    (f"{START} OTHER (?:WORD|FILLER|DET|HAVE|MOVE|DAMAGE|ON|IN){{1,4}} (?P<f>TRADE_NOISE|DAMAGE|THROUGH) DET? (?P<m>MARKED|NUM) (?=SEP|$)", _says("through", "into", "in", "up")),  # "somebody put their boot through 64"
    ("DAMAGE (?:ON|OF|IN) DET? (?P<m>MARKED|NUM) (?=BE|HAVE|ME|NOT|REPAIRED|SEALED|UNDONE)", _of_a_thing_named),
    (f"REPAIRED DET? DAMAGE (?:ON|OF|FROM) (?:DET|FITTING|NUMBER){{0,2}} (?P<m>{MARK}) (?=SEP|$|AND|WITH|RUN)", None),
    (f"REPAIRED (?:ON|OF|FROM) (?:DET|FITTING|NUMBER){{0,2}} (?P<m>{MARK}) (?=SEP|$|AND|WITH|RUN)", None),
    (f"(?:HUNG|HANG|SEALED|REPAIRED|REDID) (?:FILLER|UP|DET|FITTING|NUMBER){{0,2}} (?P<m>{MARK}) (?=SEP|$|AND|WITH|RUN|ON|TIED|FILLER)", None),
    (f"{START} (?:FILLER|DET|ANOTHER|WORD|THIS|BE|COMMA){{0,3}} (?P<k>KIND) COMMA (?:FILLER COMMA?)? (?P<m>MARKED|NUM|LETTER DASH? NUM|K_TEE DASH? NUM) (?=COMMA|STOP|$|RUN|ON RUN)", no_length),
    (f"{START} (?:FILLER|DET|ANOTHER|THIS|BE|IT|COMMA){{0,4}} (?P<k>KIND) (?:COMMA? FILLER)? STOP (?P<m>MARKED|NUM|LETTER DASH? NUM) (?=STOP)", _on_its_own),
    (f"{START} (?P<m>MARKED|NUM|LETTER DASH? NUM) STOP (?P<k>KIND) (?=STOP)", no_length),
    (f"{START} (?:FILLER|DET|ANOTHER|THIS|BE){{0,3}} (?P<k>KIND) (?:OF? (?:NUM|DEG|SIZE))? COMMA (?P<d>DET) NUMBER? (?P<m>MARKED|NUM) (?=COMMA|STOP|$|FILL{{0,2}} (?:STAPLED|TAPED)|SIZE|RUN|ON RUN)", _pointed),
    (f"{START} (?:FILLER|DET|ANOTHER|THIS|BE){{0,3}} (?:NUM|DEG) COMMA (?P<d>DET) NUMBER? (?P<m>MARKED|NUM) (?=COMMA|STOP|$|SIZE|RUN|ON RUN)", _pointed),
    (f"(?P<f>(?:FILLER|ON|OF|THIS|BE|I|IN|IT|HAVE){{1,4}}) (?P<d>DET)? (?P<m>{MARK}) (?=FILLER{{0,2}} (?:COMMA|STOP|$)|BE FILLER)", _worked),
    (f"(?P<f>(?:FILLER|I|ON|THIS|BE){{1,3}}) (?P<d>DET)? (?P<m>{MARK}) (?=(?P<n>ME|WORD|ON|ROOM|WHEN|OTHER|FILLER))", _worked_so),
    (f"(?P<f>MOVE_UP) DET (?P<m>{MARK}) (?=SEP|$|AND|TIED|FILLER|LATER)", _says("subí", "subimos", "lo subí", "la subí")),
    (f"{START} (?P<m>MARKED|LETTER DASH? NUM|NUM DASH NUM|NUM) (?=(?P<n>FILLER) (?:COMMA|STOP)|BE (?P<n2>FILLER))", _done_here),
)
