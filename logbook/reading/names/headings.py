"""Which fitting is spoken of: kinds and marks as they are named, and batches."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.names import article_marks, lettered_marks, places
from logbook.reading.clauses.batches import batches, up_to
from logbook.reading.clauses.grammar import Row
from logbook.reading.names.led_in import led_in
from logbook.reading.clauses.marks import MARK, SAID_OTHERWISE, START, mark_text
from logbook.reading.clauses.mention import Mention, how_many, mention_at
from logbook.reading.names.no_marks import an_angle, angle_not_mark, counts_on, counts_pieces, goes_over, just_one, leads_to, mark_before_kind, no_piece, reference
from logbook.reading.names.other_things import of_a_machine
from logbook.reading.names.pointed_at import pointed_at
from logbook.reading.words.phrasing import words_of
from logbook.reading.names.runs import hung_runs

NOT_THE_ONE = "NOT DET (?:NUM|GENERIC|FITTING) (?:WITH|NO|NOT|HAVE|I|THIS|WORD)"  # "isn't the one with no vanes": tells of another
STOPS = "STOP QUERY"
_MADE_SO = "(?:NUM (?:FITTING|PIECE_COUNT) (?:NUM|DEG|K_ELBOW)|(?:LEN|NUM) ROUND? K_COLLAR|THROAT KIND|(?:SQUARE THROAT|VANES) (?:NUM|DEG|K_ELBOW)|FRAC K_STRAIGHT|NUM K_STRAIGHT OF|(?:NUM|DEG) K_ELBOW)"  # "29, five-piece ninety", "37, six inch collar"
_NAMED = "(?:FITTING|NUMBER|COMMA FILLER COMMA|FILLER|COMMA NUMBER|COMMA FITTING|HEDGE|DET|THIS){0,3}"

_WIDEST_TAPE = 6  # inches: "cinta de tres" is how wide it is, no piece


def mentions(row: Row, taken: set[int], language: Language) -> list[Mention]:
    """Every place of a note where a fitting is named, in spoken order."""
    made: list[Mention] = []
    used: set[int] = set()
    pointed: set[int] = set()  # pieces only pointed at: "collar seven into elbow four"

    def add(mention: Mention):
        if used.isdisjoint(range(mention.first, mention.last)) and not how_many(row, mention):
            used.update(range(mention.first, mention.last))
            made.append(mention)

    for match, marks in batches(row, taken, language):
        add(mention_at(row, match, batch=marks))
    for first, span, _, other, _ in places.joints(row, language):
        if taken.issuperset(range(*other)) and taken.isdisjoint(range(*span)):
            add(Mention(first, span[1], mark=mark_text(row, *span, language), mark_at=span))
    for match in row.find("(?:^|(?<=SEP)|(?<=FITTING)) (?P<all>(?:MARKED|NUM) DET? KIND (?:COMMA AND?|AND) (?:(?:MARKED|NUM) DET? KIND (?:COMMA AND?|AND) )*(?:MARKED|NUM) DET? KIND) (?=STOP|COMMA|$)"):  # "31 tee, 32 cap, 33 elbow"
        ats = [at for at in range(*match.span("all")) if row.items[at].concept in ("MARKED", "NUM")]
        if all(row.items[at].concept == "MARKED" or row.items[at].value.value > 4 and row.items[at].value.value.denominator == 1 for at in ats) and taken.isdisjoint(ats):
            for at in ats:
                kind_at = at + 1 + (row.items[at + 1].concept == "DET")
                add(Mention(at, kind_at + 1, kind=row.items[kind_at].value, kind_at=(kind_at, kind_at + 1), mark=mark_text(row, at, at + 1, language), mark_at=(at, at + 1)))
    hung = next((at for at, item in enumerate(row.items) if item.concept == "K_HANGER"), None)
    for first, at in hung_runs(row) if hung is not None else ():
        add(Mention(first, at + 1, kind="hanger", kind_at=(hung, hung + 1), another=True))
    for mention in (*lettered_marks.lists(row, taken | used), *(_several(row, taken | used, language) if language.code == "es" else ())):
        add(mention)
    kind_mark = (
        f"(?P<lead>(?:ANOTHER|AND)? (?:FILL|COMMA){{0,2}} (?:SIZE|LEN|SERVICE|ROUND|DET){{0,3}}) (?P<k>KIND) {_NAMED} (?P<k2>KIND)? (?P<m>{MARK})"
        " (?!BY (?!DET)|WIDE|LONG (?!OF? (?:NUM|LEN))|HIGH|FITTING (?:COMMA)? NUM|WASHERS|BOARD (?!OF)) (?!(?<!KIND NUM)(?:STAPLES|TABS))"
    )
    for match in row.find("(?P<k>KIND) (?:(?:ON|OF)? RUN NUM)? COMMA (?P<m>NUM NUM?) COMMA (?=SIZE|INLET|FILLER|STAPLED|TAPED|VANES|IT)"):  # "an offset, one twenty-three, 16 by 16"
        values = [item.value.value for item in row.items[slice(*match.span("m"))]]
        if values[0] >= 100 and len(values) == 1 or len(values) == 2 and 1 <= values[0] <= 9 and 10 <= values[1] <= 99:
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(kind_mark):
        if leads_to(row, match.start("k")):
            pointed.update(range(match.start("k"), match.end()))
            continue
        if not angle_not_mark(row, match) and not just_one(row, match) and not taken.intersection(range(*match.span("m"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"(?:{START}|(?<=RUN NUM)|(?<=RUN NUM COMMA)|(?<=RUN LETTER COMMA)) (?:FITTING|NUMBER){{0,2}} (?P<m>MARKED|NUM(?! DET)) DET? (?P<k>KIND) (?=SEP|$|RUN|ON RUN|SIZE|STAPLED|TAPED|HUNG|BE|WITH|FILLER)"):
        if not taken.intersection(range(*match.span("m"))) and mark_before_kind(row, match):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"(?:ON|IN|OF|FROM|WITH|FILLER|{START}) (?:DET)? (?P<k>NUM) NUMBER? (?P<m>{MARK}) (?=SEP|$|BE|HAVE|NO|WITH|RUN|ON RUN|SIZE|SQUARE|THROAT)"):
        if row.items[match.start("k")].value.value in (90, 45) and row.text[row.items[match.start("k")].end : row.items[match.start("m")].start].strip(" #").lower() in ("", "number", "no.") and not taken.intersection(range(*match.span("m"))):
            named = mention_at(row, match, mark=mark_text(row, *match.span("m"), language))
            add(replace(named, first=match.start("k"), kind="elbow", kind_at=match.span("k")))  # "no vanes in ninety 33"
    for match in row.find(f"(?:ON|IN|OF|TO) (?P<k>BRANCH_WORD) NUMBER? (?P<m>{MARK}) (?=SEP|$|BE|HAVE|AND)"):
        kind = _KIND_OF_WORD.get(row.words(*match.span("k")).lower())
        if kind is not None and not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), first=match.start("k"), kind=kind, kind_at=match.span("k")))
    for match in row.find("(?:COMMA|STOP|AND|ANOTHER) (?:COMMA|AND|ANOTHER|FILLER)* (?P<m>MARKED|NUM) DET? (?P<k>KIND) (?=SEP|$|RUN|ON RUN|SIZE|STAPLED|TAPED|HUNG|BE|WITH)"):  # "…, then ten straight, and eleven a cap"
        lead = [item.concept for item in row.items[match.start() : match.start("m")]]
        if {"AND", "ANOTHER"} & set(lead) and not taken.intersection(range(*match.span("m"))) and mark_before_kind(row, match):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"DET (?P<k>KIND) (?:TRADE_NOISE|ANOTHER|TO|IT|ON|WORD|FILLER|PLACE_NOUN|DET|OFF|OVER){{1,6}} COMMA? BE (?:FITTING|NUMBER) (?P<m>{MARK}) (?!BY (?!DET)|WIDE|LONG|HIGH)"):
        if not taken.intersection(range(*match.span("m"))):  # "the register right next to it that's number nine"
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"(?:(?P<on>CORRECTION_ON) (?:RUN NUM COMMA?)?)? (?:FILL|ON|OF){{0,2}} (?P<f>FITTING|NUMBER) {_NAMED} (?P<m>{MARK}) (?!BY (?!DET)|WIDE|LONG|HIGH|(?<!FITTING NUM)STAPLES|WASHERS|BOARD|IN NUM)"):
        if row.items[match.start("f") - 1].concept == "LEAK_TEST" and match.start("f"):
            continue  # "leak test number two": how many tests there were
        if row.items[match.start("f")].concept == "FITTING" and row.words(*match.span("f")).lower() in _KIND_OF_WORD and leads_to(row, match.start("f")):
            continue  # "collarín 3 en el ducto 9"
        told = any(item.concept == "NUMBER" for item in row.items[match.start("f") + 1 : match.start("m")])  # "codo de tres piezas, número cuatro"
        if not taken.intersection(range(*match.span("m"))) and (told or not counts_pieces(row, match.start("f"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"(?P<on>CORRECTION_ON) (?:FILL|DET|ON|OF|KIND|THIS){{0,3}} (?P<m>{MARK}) (?!BY|LONG)"):
        add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("(?:(?<=SEP)|^|(?<=AND)|(?<=BUT)|(?<=FILLER)) (?:FILLER|AND|DET|ONLY)* (?P<m>MARKED|NUM|LETTER NUM) (?=(?:ON|OF|FROM) RUN|BE|HAVE|NO (?!NUM)|NOT|NOT_DONE|PENDING|(?:FILLER|ONLY)? (?:HUNG|STAPLED|TAPED)|FILLER BE|TIED|LEAVES|SHOULD_HAVE) (?!BE (?:NUM|DEG|LEN|ANOTHER|LATER|QUESTION))"):
        one = row.words(*match.span("m")).lower() == "one" and match.start("m") > 0 and row.items[match.start("m") - 1].concept not in ("STOP", "QUERY") and [item.concept for item in row.items[match.start("m") - 2 : match.start("m")]] != ["FIX", "COMMA"]
        one = one or an_angle(row, match) or row.words(*match.span("m")).lower() == "one" and any(row.words(k, k + 1).lower() == "one" for k in range(match.end(), row.sentence_end(match.end())))  # "one's taped and one isn't"
        one = one or _of_its_sides(row, match.start("m"))
        if not one and not counts_on(row, match.start("m")) and not taken.intersection(range(*match.span("m"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("(?:(?<=SEP)|(?<=AND)|(?<=BUT)) (?:AND|BUT|DET|FILLER)* (?P<m>MARKED|NUM) (?=FILLER? TIGHT (?:FILLER)* (?:SEP|$))"):  # "…, 78 closed up tight"
        if (row.items[match.start("m")].concept == "MARKED" or row.items[match.start("m")].value.value >= 5 and row.items[match.start("m")].value.value not in (90, 45)) and not an_angle(row, match) and not taken.intersection(range(*match.span("m"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("(?:EXCEPT (?:ON|DET){0,2}|(?:(?<=SEP)|^) BE) (?P<m>MARKED|NUM) (?=BE (?:STAPLED|TAPED|RUBBED|NOT|HUNG)|NOT|HAVE (?:NO|NOT)|NOT_DONE)"):
        if not taken.intersection(range(*match.span("m"))) and not an_angle(row, match):  # "…, except 151 isn't rubbed", "that's 46 that's taped"
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("(?:ANOTHER|THIS BE) DET? (?P<k>KIND) FILLER COMMA NUMBER? (?P<m>MARKED|NUM) COMMA (?!NUM|LEN|FRAC)"):
        if not taken.intersection(range(*match.span("m"))) and not an_angle(row, match):  # "next one's an elbow too, 31, ten by ten"
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("(?P<s>COMMA|STOP) BE (?P<m>MARKED|NUM) (?=COMMA? (?:ON|OF|IN)? RUN NUM)"):
        if not taken.intersection(range(*match.span("m"))) and not an_angle(row, match) and any(item.concept.startswith("K_") for item in row.items[: match.start("s")]):  # "got the tee done, that's twenty-one on run two"
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"{START} ON DET? (?P<m>MARKED|NUM) (?=PENDING|NO|NOT|HAVE|NOT_DONE|BE|FILLER (?:HAVE|PENDING)|UNDONE|FORGOT)"):
        if not taken.intersection(range(*match.span("m"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"{START} (?:ON|FROM) (?:DET|GENERIC){{0,2}} (?P<m>MARKED|NUM) (?=(?:FILL|MOVE_OUT|LEAVES|HAVE|WORD|NO|COMMA){{1,3}} DET? (?:DAMAGE|GAP))"):
        if not taken.intersection(range(*match.span("m"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("(?:(?<=SEP)|(?<=AND)) (?:DET|AND)* (?P<m>MARKED|NUM) (?P<f>FILLER) (?=SEP|$)"):
        if row.words(*match.span("f")).lower() in words_of("small.too") and not taken.intersection(range(*match.span("m"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("(?:(?<=SEP)|(?<=AND)|(?<=BUT)) (?:(?P<f>NOT|FILLER|OR|WORD) BE DET? (?P<m>MARKED|NUM)|(?:AND|BUT|DET)* (?P<m2>MARKED|NUM) (?P<f2>WORD)) (?=SEP|$)"):
        group = "m" if match.start("m") >= 0 else "m2"
        said = row.words(*match.span("f" if group == "m" else "f2")).lower().split()[-1]
        if said in words_of("small.nor") | words_of("small.so") | words_of("small.is_so") and not taken.intersection(range(*match.span(group))):
            add(replace(mention_at(row, match), mark=mark_text(row, *match.span(group), language), mark_at=match.span(group)))  # "…, neither is thirteen", "forty-two does"
    for match in row.find("ENDING END? (?:COMMA|AND|BUT){1,2} (?P<m>MARKED|NUM) (?=BY DET? ENDING)"):  # "41 leaves by the female, 42 by the male"
        add(replace(mention_at(row, match), first=match.start("m"), mark=mark_text(row, *match.span("m"), language), mark_at=match.span("m")))
    for match in row.find("(?P<f>(?:I|HAVE|HAVING|FILLER){1,3}) (?P<m>MARKED|NUM) (?=(?:STAPLED|TAPED|RUBBED|HUNG) (?:SEP|$|AND))"):
        big = row.items[match.start("m")].concept == "MARKED" or row.items[match.start("m")].value.value >= 10
        if big and not taken.intersection(range(*match.span("m"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("(?:STAPLED|TAPED|RUBBED|HUNG|TAPE|TAPE_IT|STAPLE|RUB|HANG|TRIMMED|WIPED|I) (?P<d>FILLER|UP|FITTING|NUMBER|DET)? (?P<m>MARKED|NUM) (?!COMMA COUNT COUNTED|COMMA OTHER_SIDE (?:SEP|$)) (?=SEP|$|AND (?:TAPED|STAPLED|RUBBED|HUNG)|LATER|WITH|ON RUN|EVERY|DOWN|UP|YET|FILLER (?:SEP|$)|BUT|TEMP (?:SEP|$|AND|BUT|WITH))"):
        counts = row.words(match.start("m") - 1, match.start("m")).lower().split()[-1] in ("just", "only", "nomás", "solo", "sólo")  # "taped just two"
        counts = counts or (match.start("d") >= 0 and row.items[match.start("d")].concept == "DET" and row.words(*match.span("d")).lower() not in ("el", "la") and row.items[match.start("m")].concept == "NUM")
        behind = [item.concept for item in row.items[match.end("m") : match.end("m") + 3]]
        counts = counts or row.items[match.start("m") - 1].concept == "STAPLED" and behind[:2] == ["COMMA", "TAPED"] and behind[2:] != ["NUM"] and any(item.concept.startswith("K_") for item in row.items[row.sentence_start(match.start()) : match.start()])  # "110 and 111: straights, stapled two, taped"
        if not counts and not taken.intersection(range(*match.span("m"))):
            first = match.start()
            while first and row.items[first - 1].concept in ("NOT", "NOT_DONE", "FORGOT", "TO", "I", "HAVE"):  # "stapled 21, didn't staple 22"
                first -= 1
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), first=first))
    for match in row.find(f"(?:^|(?<=SEP)) (?:FILLER|DET|AND|ANOTHER){{0,3}} (?P<k>BRANCH_WORD|JOINT|GENERIC) (?:COMMA? NUMBER)? (?P<m>{MARK}) (?!BY|WIDE)"):
        kind = _KIND_OF_WORD.get(row.words(*match.span("k")).lower())
        if match.end() < len(row.items) and row.items[match.end()].concept == "SIZE" and row.items[match.start("k")].concept != "GENERIC":
            continue
        if kind is not None and not taken.intersection(range(*match.span("m"))):
            named = mention_at(row, match, mark=mark_text(row, *match.span("m"), language))
            add(replace(named, kind=kind, kind_at=match.span("k")))
    for match in row.find(f"(?P<f>FITTING|NUMBER|THIS|IT|^|(?<=SEP)) (?:FITTING|NUMBER)? (?P<m>{MARK})? (?:(?:ON|OF) RUN NUMBER? NUM)? (?:COMMA|BE|FILLER){{0,3}} (?P<d>DET)? (?P<k>BRANCH_WORD|GENERIC) (?=SEP|$|(?:ON|OF)? RUN|AND|WITH|OFF|FROM|SIZE (?:OFF|FROM)|DET? INLET|STAPLED|TAPED)"):
        kind = _KIND_OF_WORD.get(row.words(*match.span("k")).lower().split()[0])
        said = [item.concept for item in row.items[match.start() : match.end()]]
        if kind is None or row.is_blank(match.start("k")) or (match.start("f") == match.end("f") and match.start("m") < 0 and "BE" not in said):
            continue
        marked = match.start("m") >= 0 and not taken.intersection(range(*match.span("m")))
        if marked and not {"BE", "FITTING", "NUMBER", "COMMA"} & set(said) and row.words(*match.span("m")).lower() == "one":
            continue  # "one trunk, one branch": so many of them
        if marked or match.start("d") >= 0:  # "fitting 4 is a branch", "this one is a branch"
            named = mention_at(row, match, mark=mark_text(row, *match.span("m"), language) if marked else None)
            made = [m for m in made if not (marked and m.kind is None and m.mark_at == match.span("m"))]
            used.difference_update(range(match.start(), match.end()))
            add(replace(named, kind=kind, kind_at=match.span("k")))
    for match in row.find(f"(?:{START} DET?|(?:COMMA|FILLER|AND) (?P<d>DET)) (?P<m>MARKED) (?P<b>(?=(?:COMMA|ON|RUN|NUM){{0,3}} (?:DET? INLET|(?:INLET|SIZE|FILL|COMMA|OF|BY|NUM|WITH){{1,8}} (?:BRANCH_WORD|OUTLET))))?"):
        letter, number = row.items[match.start("m")].value[:1], row.items[match.start("m")].value[1:]
        shape = language.forms.lettered.get(letter)
        said = row.text[: row.items[match.start("m")].start].lower().split()[-1:]
        if shape is None or not number.isdigit() or not (match.start("b") >= 0 or said and said[0] in language.forms.before_lettered and not _named_otherwise(row, match)):
            continue
        named = mention_at(row, match, mark=number)  # "T30, trunk …, branch …" is "tee thirty", "la Y ocho" is the wye of that number
        add(replace(named, kind=shape[2:].lower(), kind_at=match.span("m")))
    for match in row.find("(?:SAME_THING (?:OF|ON|WITH)? DET? NUMBER?|ANOTHER (?:COMMA|FILLER|NUMBER|SAME_THING){1,4}|ANOTHER) (?P<m>MARKED|NUM|LETTER NUM) (?=SEP|$|ON|RUN)"):
        if not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), another=True))
    for match in row.find("(?:^|(?<=SEP)|(?<=AND)) (?P<f>(?:I|FILLER|AND|ONLY){1,4}) (?P<m>MARKED|NUM LETTER|NUM) (?=SEP|$)"):
        said = row.words(*match.span("f")).lower().split()
        counts = match.start() and row.items[match.start() - 1].concept == "COMMA" and row.items[match.start("m")].concept == "NUM" and row.items[match.start("m")].value.value <= 4  # "the spec says two coats, I did two"
        if not taken.intersection(range(*match.span("m"))) and not counts and words_of("small.made").intersection(said):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("(?:LAID (?P<m>MARKED|NUM) (?=FROM|OFF)|(?:FLAP|FACING|VANES|TAPE|PANEL|DAMAGE|TAPED|SIDE|SIDE_WORD|OTHER_SIDE) (?:ON|OF) (?P<m2>MARKED|NUM) (?=SEP|$)|(?:SLOPE|THROAT|JOINT|GAP|GROOVE|TABS|SHIPLAP) (?:ON|IN) (?P<m3>MARKED|NUM) (?=BE|TAKES|RUN|HAVE|MOVE|MOVES|NOT|NO|WORD|SEATED))"):
        group = next(name for name in ("m", "m2", "m3") if match.start(name) >= 0)
        moves = row.items[match.start()].concept == "SIDE" and any(item.concept in ("NUM", "LEN", "FRAC") for item in row.items[max(0, match.start() - 3) : match.start()])  # "four on the left in twenty"
        moves = moves or row.items[match.start()].concept == "SIDE" and len(row.items[match.start()].value) > 1  # "cada lado en doce"
        moves = moves or group == "m2" and row.items[match.start()].concept == "TAPED" and any(item.concept == "SIDE_WORD" for item in row.items[max(0, match.start() - 16) : match.start()])  # "encintada de tres"
        moves = moves or group == "m2" and [item.concept for item in row.items[match.start() : match.start() + 2]] == ["TAPE", "OF"] and row.items[match.start("m2")].concept == "NUM" and row.items[match.start("m2")].value.value <= _WIDEST_TAPE  # "cinta de tres"
        named = moves or any(m.mark is not None or m.batch for m in made)  # then "on the side of 22" only tells where
        if not named and not taken.intersection(range(*match.span(group))):
            add(replace(mention_at(row, match), mark=mark_text(row, *match.span(group), language), mark_at=match.span(group)))
    for match in row.find(f"(?P<n>{NOT_THE_ONE}) (?:[^{STOPS}]){{0,8}} (?:COMMA|STOP) FILLER? (?:THIS|BE|IT){{1,2}} (?:NUMBER|FITTING)? (?P<m>{MARK}) (?=SEP|$)"):
        marked = mention_at(row, match, mark=mark_text(row, *match.span("m"), language))
        used.difference_update(range(match.start(), match.end()))
        add(replace(marked, kind=None, kind_at=None, corrects=False))
    for match in row.find("(?:^|(?<=STOP)|(?<=QUERY)|(?<=AND)) (?:FILLER|DET){0,2} (?P<m>MARKED|NUM|LETTER NUM) COMMA? (?=(?:FILL|COMMA)* (?:SAME_THING|SAME_SIZE))"):
        if not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), another=True))
    for match in row.find("(?:^|(?<=STOP)|(?<=QUERY)) (?:DET|WORD|GENERIC|NUM|ANOTHER|OTHER_SIDE|AND|FILLER){1,5} COMMA (?P<m>MARKED|NUM) COMMA (?=FILL{0,2} SAME_THING|(?P<b>BE|HAVE|NOT|NO|NOT_DONE|STAPLED|TAPED|OVER|SIZE|LEN|OFFSETS|MOVE))"):  # "the other one, thirty-one, same thing"
        beside = match.start("b") < 0 or not words_of("small.beside_it").isdisjoint(row.words(*match.span()).lower().replace(",", "").split())  # "its neighbor, thirty-one, isn't taped"
        if beside and not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), another=True))
    for match in row.find("(?:^|(?<=STOP)|(?<=QUERY)|(?<=AND)) DET? NUM (?:FILLER|LATER|THIS|I|WORD|ON|DET|FROM|VOID){1,5} COMMA (?P<m>MARKED|NUM) COMMA (?=HAVE|BE|DAMAGE|NOT|NO|STAPLED|TAPED|I)"):
        if "one" in row.words(match.start(), match.start() + 2).lower().split() and not taken.intersection(range(*match.span("m"))):  # "the one I did after lunch, eighty-three, got ripped"
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find("DAMAGE [^QUERY]{1,24} (?:(?<=SEP)|(?<=AND)|(?<=BUT)) (?P<one>DET NUM) (?:ON|IN|OF) (?P<m>MARKED|NUM) (?=BE|NOT|HAVE|ME)"):
        if row.words(*match.span("one")).lower().endswith(" one") and not taken.intersection(range(*match.span("m"))):  # "the tear on fifty-five …. The one on fifty-six isn't"
            add(replace(mention_at(row, match), first=match.start("one"), mark=mark_text(row, *match.span("m"), language), mark_at=match.span("m")))
    for match in row.find("(?:^|(?<=STOP)|(?<=QUERY)|(?<=AND)) DET (?:DAMAGE|WORD|FILLER|STAPLED|TAPED|RUBBED|NO|VANES|WITH|NOT){1,3} NUM BE (?P<m>MARKED|NUM) (?=SEP|$|AND)"):
        if row.words(match.start("m") - 2, match.start("m") - 1).lower() == "one" and not taken.intersection(range(*match.span("m"))):  # "the wet one is fifty-eight"
            add(replace(mention_at(row, match), mark=mark_text(row, *match.span("m"), language), mark_at=match.span("m")))
    for mention in led_in(row, taken, made, language):
        add(mention)
    for match in row.find(f"(?:{START}|(?<=STOP)) (?:ANOTHER|AND|FILLER){{0,3}} (?P<m>MARKED|NUM) (?:WORD|FILLER)? (?P<c>COMMA) (?=DET? (?:KIND|SIZE|SERVICE|STAPLED|TAPED|VANES|HUNG))"):
        if row.words(*match.span("c")) == ":" and not taken.intersection(range(*match.span("m"))):  # "73 first: straight, … Then 74: elbow, …"
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"(?:^|(?<=STOP)|(?<=AND)) DET (?P<k>KIND) (?:TRADE_NOISE|ANOTHER|TO|IT|ON|WORD|FILLER|THIS|PLACE_NOUN|DET){{1,6}} COMMA (?P<m>{MARK}) COMMA (?=BE|SIZE|FILL|SAME_SIZE|SAME_THING|NUM COMMA|DEG|STAPLED|TAPED|VANES)"):
        if not taken.intersection(range(*match.span("m"))):  # "the tap right next to it, fourteen, is …"
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"(?:DET|THIS) (?P<k>KIND) FROM (?:FILLER|ROOM|WORD|DAY|DET|LATER){{1,3}} COMMA NUMBER? (?P<m>{MARK}) (?=COMMA|STOP)"):  # "that reducer from this morning, seven, …"
        if language.turns.earlier and re.match(rf"^ (?:{language.turns.earlier})", row.text[row.items[match.start("k")].end :].lower()) and not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), amends=True))
    for match in row.find(f"(?P<k>BRANCH_WORD) NUMBER? (?P<m>{MARK}) (?!BY|WIDE|LONG|HIGH|SIDE_WORD|SIZE)"):
        if row.words(*match.span("k")).lower() == "branch" and not any(m.mark is not None or m.batch for m in made) and not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), kind="branch", kind_at=match.span("k")))  # "all that keeps branch nine shut is tape"
    known = {mark for m in made for mark in (m.mark, *(one for one, _ in m.batch)) if mark is not None}
    for match in row.find("(?:COMMA|STOP|AND|BUT) (?P<m>MARKED|NUM) (?=ME (?:FILLER|WORD|NOT|NOT_DONE|FORGOT|TAPED|STAPLED|RUBBED|LEFT_OUT|TRADE_NOISE|HAVE|PENDING)|FORGOT|NOT_DONE)"):
        mark = mark_text(row, *match.span("m"), language)  # "23 is taped, 24 I forgot"
        alone = row.items[match.start()].concept == "STOP" and row.items[match.end()].concept == "I" and mark is not None and len(mark) > 1
        if (mark in known or alone) and not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark), first=match.start("m")))
    for match in row.find("(?:ON|ONLY|EXCEPT|BUT|COMMA|VOID) DET? (?P<m>MARKED|NUM) (?=NOT (?!BY|LONG)|NO (?!NUM)|NOT_DONE|VOID)"):
        mark = mark_text(row, *match.span("m"), language)  # "nomás al 5 no le puse"
        if mark in known and not taken.intersection(range(*match.span("m"))):
            first = match.start() + (row.items[match.start()].concept == "COMMA")
            while first and row.items[first - 1].concept in ("ONLY", "BUT", "AND", "FILLER"):
                first -= 1
            add(replace(mention_at(row, match, mark=mark), first=first))
    for pattern, fits in SAID_OTHERWISE:
        for match in row.find(pattern):
            if taken.intersection(range(*match.span("m"))) or any(m.mark is not None and not _apart(row, m, match) for m in made) or (fits is not None and not fits(row, match)):
                continue
            led = [item.concept for item in row.items[max(0, match.start("m") - 2) : match.start("m")]]
            if not angle_not_mark(row, match) and not (led[-1:] in (["ON"], ["IN"], ["OVER"]) and led[:1] in (["SIDE"], ["ONE_SIDE"])):  # "tres de cada lado en dieciocho engrapada"
                add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"(?:{START}|(?<=RUN NUM COMMA)|(?<=RUN LETTER COMMA)) (?P<m>MARKED|NUM|LETTER NUM) COMMA (?=FILL{{0,2}} KIND|{_MADE_SO}|FILL{{0,2}} (?:ACT|HUNG|NO|NOT|NOT_DONE|VANES|TIED|RUN|ON RUN)|NUM (?:DEG)? COMMA)"):
        ahead = row.items[match.end()]
        if ahead.concept == "NUM" and ahead.value.value not in (90, 45) and row.items[match.end() + 1].concept in ("COMMA", "DEG"):
            continue
        if not taken.intersection(range(*match.span("m"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for match in row.find(f"{START} DET? (?P<f>ANOTHER|WORD|FILLER) (?:GENERIC|KIND)? BE NUMBER? (?P<m>MARKED|NUM) (?=COMMA|STOP)"):  # "second one's 21, …"
        if row.words(*match.span("f")).lower().split()[0] in words_of("small.ordinals") and not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), another=True))
    for match in row.find("COMMA? AND (?:DET WORD)? (?P<m>NUM) (?=ANOTHER TO|TRADE_NOISE|ON|WORD|FILLER|COMMA)"):  # "thirty, and thirty-one right behind it"
        before = [m for m in made if m.mark is not None and m.last <= match.start() + 1]
        if before and before[-1].mark.isdigit() and row.items[match.start("m")].value.value == int(before[-1].mark) + 1 and not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), another=True))
    for match in row.find("(?:FROM|OF|ON|WITH) (?P<m>MARKED|NUM) COMMA DET (?P<k>KIND) (?!NUM|MARKED|NUMBER)"):  # "del 249, el recto de hace rato"
        if not taken.intersection(range(*match.span("m"))):
            add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), first=match.start("m")))
    if not any(m.mark is not None or m.batch or m.kind is not None for m in made):  # "somebody stood on branch eleven", "my layout on branch three began at …"
        for match in row.find(f"(?<!DET)(?<!SIZE)(?<!WITH)(?<!KIND)(?P<k>BRANCH_WORD) NUMBER? (?P<m>{MARK}) (?!BY|WIDE|HIGH|LONG|ROUND|SIZE|DEG|FRAC|LEN|NUM|INLET|OUTLET)"):
            kind = _KIND_OF_WORD.get(row.words(*match.span("k")).lower())
            if kind is not None and not taken.intersection(range(*match.span("m"))):
                add(replace(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)), first=match.start("k"), kind=kind, kind_at=match.span("k")))
    lead = "(?P<lead>(?:ANOTHER|AND|ON)? (?:FILL|COMMA){0,2} (?:SIZE|LEN|SERVICE|ROUND|DET){0,3})"
    for match in row.find(f"{lead} (?P<k>KIND)"):
        before = row.items[match.start("k") - 1].concept if match.start("k") else ""
        if made and (before == "NO" or row.items[match.start("k")].concept == "K_REPAIR" and before in ("NOT", "WITH", "NOT_DONE")):
            continue  # "…, no repair made", "…, no cap on it": of the piece named before
        if match.start("k") not in pointed and not reference(row, match.start("k"), taken) and not of_a_machine(row, match.start("k")):
            add(mention_at(row, match))
    for match in row.find("(?P<f>WORD) (?:FITTING|NUMBER)? (?:BE|COMMA) (?:FITTING|NUMBER|DET)? (?P<m>MARKED|NUM) (?=SEP|$)"):
        counts = row.items[match.start("m")].concept == "NUM" and row.items[match.start("m")].value.value < 10 and any(m.mark is not None and m.kind is not None and m.last <= match.start() for m in made)  # "the book's sixteen, mine's eight"
        if not counts and row.words(*match.span("f")).lower() in words_of("small.mine") and not words_of("small.several_are").intersection(row.words(match.end("f"), match.start("m")).lower().split()) and not taken.intersection(range(*match.span("m"))):
            add(mention_at(row, match, mark=mark_text(row, *match.span("m"), language)))
    for mention in lettered_marks.lettered(row, taken | used, made):
        add(mention)
    if language.code == "es":
        pointed_at(row, taken, made, add, language)
    made += [] if any(m.mark is not None or m.batch for m in made) else _drawn(row, taken, language)
    made = [replace(m, mark=None, mark_at=None, last=m.kind_at[1]) if goes_over(row, m) else m for m in made if not of_others(row, m, language) and not no_piece(row, m, made)]
    made.sort(key=lambda m: m.first)
    made = [replace(m, kind=kind, kind_at=kind_at) if (kind_at := _named_at(row, made, m)) and (kind := _KIND_OF_WORD.get(row.words(*kind_at).lower())) else m for m in made]
    made = lettered_marks.shapes(row, made, language) if language.forms.before_lettered else made
    return [m for m in made if not (m.first and row.items[m.first - 1].concept == "NOT" and row.items[m.first].concept not in _DONE and row.words(m.first - 1, m.first).lower() in words_of("small.not_that"))]  # "not fitting 12, fitting 13"


def _of_its_sides(row: Row, at: int) -> bool:
    """ "Cap nine, four stapled, four taped": so many sides of the piece that was named."""
    item, ahead, before = row.items[at], [one.concept for one in row.items[at + 1 : at + 5]], [one.concept for one in row.items[max(0, at - 3) : at]]
    if item.concept != "NUM" or item.value.value > 4 or not any(one.concept in ("K_END_CAP", "K_PLENUM") for one in row.items[:at]):
        return False
    if item.value.value > 1 and before[-1:] == ["STOP"] and ahead[:1] in (["STAPLED"], ["TAPED"]) and ahead[1:2] in ([], ["STOP"]):
        return True  # "Cap nine, three sides taped. Four stapled."
    return ahead in (["STAPLED", "COMMA", "NUM", "TAPED"], ["TAPED", "COMMA", "NUM", "STAPLED"]) or before in (["NUM", "STAPLED", "COMMA"], ["NUM", "TAPED", "COMMA"])


def _named_at(row: Row, made: list[Mention], one: Mention) -> tuple[int, int] | None:
    """ "Colgué el ducto 12", "este ducto, el 40": the everyday word for a straight piece right before its number, where no kind is named right behind it."""
    mark_at = one.mark_at or (one.batch[0][1] if one.batch else None)
    if one.kind is not None or mark_at is None:
        return None
    at = mark_at[0] - 1
    while at >= 0 and row.items[at].concept in ("DET", "COMMA", "NUMBER", "THIS", "OF", "SIZE") and mark_at[0] - at <= 6:
        at -= 1
    if at < 0 or row.items[at].concept not in ("GENERIC", "FITTING") or any(m.kind is not None and m.mark is None and _tells_its_kind(row, one, m) for m in made):
        return None
    return at, at + 1


def _tells_its_kind(row: Row, one: Mention, other: Mention) -> bool:
    """ "Ducto 20, transición de …", "el ducto 20 es una transición": nothing between that could point at another piece."""
    return other.kind_at is not None and 0 <= other.kind_at[0] - one.last <= 4 and all(item.concept in ("COMMA", "BE", "DET", "FILLER", "OF", "SIZE", "THIS") for item in row.items[one.last : other.kind_at[0]])


def _several(row: Row, taken: set[int], language: Language) -> list[Mention]:
    """ "De la tres a la siete", "la 260, la 261 y la 262": batches that articles name."""
    made = []
    for a, b in article_marks.ranges(row, taken):
        if batch := up_to(row.items[a], row.items[b], (a, b + 1)):
            made.append(Mention(a, b + 1, batch=batch))
    for ats in article_marks.listed(row, taken):
        made.append(Mention(ats[0], ats[-1] + 1, batch=tuple((mark_text(row, at, at + 1, language), (at, at + 1)) for at in ats)))
    return made


def _named_otherwise(row: Row, match) -> bool:
    """ "La T catorce es un codo": its letter is of its mark."""
    return any(item.concept.startswith("K_") and item.concept != "K_BRANCH" for item in row.items[max(0, match.start("m") - 3) : row.sentence_end(match.end("m"))])


def _drawn(row: Row, taken: set[int], language: Language) -> list[Mention]:
    """ "Plans show sixteen as twelve by ten, the one I made is …": what is drawn states nothing, but the number is this piece's."""
    for at, item in enumerate(row.items):
        if item.concept in ("NUM", "MARKED") and at > 1 and at not in taken and at + 1 < len(row.items) and row.words(at + 1, at + 2).lower() in ("as", "at", "como", "de", "es", "is", "va", "lleva"):
            before = [one.concept for one in row.items[max(0, at - 4) : at]]
            mine = re.search(r"\b(?:i|we|mine|ours|mía|mío|hice|hicimos|yo)\b", row.text[item.end :].lower()) is not None
            value = mark_text(row, at, at + 1, language)
            if "DRAWING" in before and before[-1] in ("SHOWS", "SAYS", "HAVE", "FITTING", "NUMBER", "DET", "DRAWING") and mine and value is not None:
                return [Mention(at, at + 1, mark=value, mark_at=(at, at + 1))]
    return []


_DONE = ("STAPLED", "TAPED", "RUBBED", "HUNG", "TRIMMED", "WIPED")  # "no encinté la nueve" is of nine


def of_others(row: Row, mention: Mention, language: Language) -> bool:
    """ "Straight thirty isn't ours", "eight was Mike's": a piece that is named as not his."""
    if mention.mark is None:
        return False
    ahead = row.items[mention.last : mention.last + 3]
    said = [row.text[item.start : item.end].lower() for item in ahead]
    denied = [k for k, item in enumerate(ahead) if item.concept == "NOT"]
    if denied and any(word in words_of("small.mine") for word in said[denied[0] + 1 : denied[0] + 2]):
        return True
    return [item.concept for item in ahead[:2]] == ["BE", "WORD"] and said[1] in language.names and row.text[ahead[1].end :].startswith(("'s", "’s"))


def _apart(row: Row, mention: Mention, match) -> bool:
    """Whether a sentence ends between a piece named before and this place."""
    first, last = sorted((mention.first, match.start("m")))
    return any(item.concept in ("STOP", "QUERY") for item in row.items[first:last])


_KIND_OF_WORD = {"derivación": "branch", "derivacion": "branch", "duct": "straight", "rama": "branch", "ducto": "straight", "conducto": "straight", "branch": "branch", "joint": "straight", "ramal": "branch"}
