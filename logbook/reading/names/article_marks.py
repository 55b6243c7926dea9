"""Marks behind a Spanish article: "la veintidós es reducción", "se me mojó la siete", "el cuatro y el cinco".

In Spanish a singular article before a bare number points at the piece of that number, wherever it stands in the
sentence; plural articles name several. Dates, hours, shares and turns are told apart by the words around them.
"""

from __future__ import annotations

import re

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of

_ONE = re.compile(r"(?:^|[^\w])(?:(?:la|el|al|del)(?: número| numero)?|(?:la|el|al) (?:ducto|conducto|pieza))$")
_SEVERAL = re.compile(r"(?:^|[^\w])(?:las|los)$")
# what only tells where, when or with what the piece is compared
_AWAY = re.compile(
    r"\b(?:junto|lado|arriba|debajo|abajo|encima|después|despues|antes|cerca|atrás|atras|adelante|frente|enfrente|como|hasta|entre|contra|hacia|rumbo|viene|sigue|siguen|mañana|mismo|misma|igual|piso|cuarto|nivel|pegad[oa]|iba"
    r"|(?:más|mas|menos|mejor|peor|tan) \w+ que|necesito|dame|pásame|pasame|tráeme|traeme|falta|faltan|van)(?: (?:a|de|con|que))? (?:la|el)$|\b(?:junto|lado|arriba|debajo|abajo|encima|después|despues|antes|cerca|atrás|atras|adelante|enfrente)(?: a| de)?(?:l| el| la)$"
)
# a part of the piece: "un lado de la 125", "la parte de atrás de la 125"; "al lado de la 125" and "atrás de la 125" are beside it
_PART_OF_IT = re.compile(
    r"\b(?:(?:un|un solo|ning[uú]n|cada|tercer|[uú]ltimo|(?<!al )(?<!del )(?<!por el )(?<!para el )otro) lado"
    r"|(?:lado|parte|cara|orilla|esquina|junta|costado|costura|uni[oó]n|tapa|punta|boca|extremo|panel|mitad|pared|filo|canto|lomo)s? (?:de (?:hasta )?|para |hacia |pa )?(?:arriba|abajo|atr[aá]s|adelante|enfrente|encima|debajo|afuera|adentro)) de(?:l| la| el)$"
)
_MONTHS = "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre".split()
_BEHIND = "(?!BY|LONG|WIDE|HIGH|APART|BOARD|EI|COUNTED|COUNT|DEGREE|SIGN|DASH|PIECE_COUNT|(?<=AND) OF)"
_TURNS = (90, 45, 30, 60)
_CLASSES = (475, 800, 1400)  # of the board, never of a piece beside it
_LEAST_NAMED = 10  # up to it a word counts more often than it names
_LARGEST_GAUGE = 30  # numbers of screws and of wire: "tornillos del diez"
_FARTHEST = 12  # inches that staples could be told to be apart: "engrapada al dos"
_SPACED = ("STAPLES", "STAPLED", "EVERY", "SCREWS", "WASHERS")


def pointed_at(row: Row, taken: set[int]) -> list[tuple[int, int]]:
    """(first, last) items of numbers that a singular article points at, in the order they are said."""
    return [match.span("m") for match in row.find(f"(?P<m>MARKED|NUM) {_BEHIND}") if match.start("m") not in taken and _is_pointed(row, match.start("m"))]


def counted(row: Row, language: Language) -> set[int]:
    """ "Hice dos, la 60 y la 61", "terminé cuatro": a small number in words, with no article and no kind behind what he made, is how many."""
    at = next((k for k, item in enumerate(row.items[:5]) if item.concept == "NUM"), None) if language.code == "es" else None
    if not at or any(item.concept not in ("FILLER", "I", "NOW", "COMMA") for item in row.items[:at]) or row.items[at].value.digits or not 2 <= row.items[at].value.value <= _LEAST_NAMED:
        return set()
    ends = at + 1 == len(row.items) or row.items[at + 1].concept in ("COMMA", "STOP", "AND", "FILLER")
    return {at} if ends and not words_of("small.made").isdisjoint(row.words(at - 1, at).lower().split()) and _ONE.search(row.text[: row.items[at].start].lower().rstrip()) is None else set()


def listed(row: Row, taken: set[int]) -> list[tuple[int, ...]]:
    """The items of every list of such numbers: "la 260, la 261 y la 262", "las 86, 87 y 88", "las 86 87 y 88"."""
    made = []
    for match in row.find(f"(?:MARKED|NUM) (?:COMMA? (?:AND|NOT)? (?:DET|THRU|ON)? (?:MARKED|NUM))+ {_BEHIND}"):
        ats = [at for at in range(*match.span()) if row.items[at].concept in ("NUM", "MARKED")]
        if any(row.items[at].concept == "NOT" and not row.words(at, at + 1).lower().startswith("ni") for at in range(*match.span())):
            continue  # "la 135, no la 136"
        before = row.text[: row.items[ats[0]].start].lower().rstrip()
        if _SEVERAL.search(before) is not None:
            joint = next((k for k, at in enumerate(ats[1:], 1) if any(row.items[j].concept == "AND" for j in range(ats[k - 1], at))), 0)
            ats = [] if before.endswith(("a las", "a los", "entre las", "entre los", "de las", "desde las")) else ats[: joint + 1]
        else:
            pair = ats if len(ats) == 2 and _is_pointed(row, ats[0]) and _are_two(row, *ats) else []
            ats = pair or ats[: next((k for k, at in enumerate(ats) if not _is_pointed(row, at)), len(ats))]
            ats = [] if len(ats) == 2 and row.items[ats[1] - 2].concept == "AND" and _told_alone(row, *ats) else ats
            if len(ats) > 1 and row.items[ats[-1] - 1].concept == "ON" and _has_its_own(row, ats[0], ats[-1]):
                ats = ats[:-1] if len(ats) > 2 else []  # "grapas al 85 y al 86 cinta"
            if len(ats) > 1 and _ONLY_THE_LAST.match(row.text[row.items[ats[-1]].end :].lower()) is not None and _acted(row, ats[0]):
                ats = ats[:-1] if len(ats) > 2 else []  # "tallé la 17 y la 18 no"
            ats = [] if len(ats) == 2 and row.items[ats[1] - 2].concept == "COMMA" and _of_the_last(row.text[row.items[ats[1]].end :].lower()) else ats  # "la que no tiene cinta es la 58, la 57 sí la encinté"
        values = [_number(row, at) for at in ats]
        if len(ats) > 1 and None not in values and len(set(values)) == len(values) and taken.isdisjoint(ats):
            made.append(tuple(ats))
    return made


_ALONE = re.compile(r"^,? (?:(?:ya|s[ií]|no|tambi[eé]n|todav[ií]a|a[uú]n) )*(?:est[aá]|qued[oó]|lleva|trae|tiene|va|sali[oó])\b(?! (?:\w+ )?\w+[oa]s\b)")


def _told_alone(row: Row, first: int, second: int) -> bool:
    """ "Dejé sin cinta la 135 y la 136 sí está completa": behind an act on the first, what is said of one is of the second."""
    behind = row.text[row.items[second].end :].lower()
    return _acted(row, first) and (_ALONE.match(behind) is not None or _ONLY_THE_LAST.match(behind) is not None or _DID_TO_IT.match(behind) is not None)


def _has_its_own(row: Row, first: int, last: int) -> bool:
    """Whether a thing is put on the last of them, and another was on the first."""
    ahead = row.items[last + 1].concept if last + 1 < len(row.items) else ""
    return ahead in _THINGS and any(item.concept in _THINGS for item in row.items[row.sentence_start(first) : first])


_THINGS = ("TAPE", "STAPLES", "VANES", "TABS", "C_MASTIC", "CLOSURE", "SCREWS")
_DID_TO_IT = re.compile(r"^,? (?:(?:ya|s[ií]|no|tambi[eé]n|tampoco|todav[ií]a|a[uú]n|ni) )*(?:la|lo|le|se l[aoe]|me la|me lo) \w+(?:é|í|amos|imos|ó|que|use|ete)\b")  # "encinté la 4 y la 5 no la toqué"
_ONLY_THE_LAST = re.compile(r"^ (?:todav[ií]a |a[uú]n )*(?:s[ií]|no|tampoco)(?= *(?:$|[,;.]))")


def _acted(row: Row, first: int) -> bool:
    """Whether something is told before the first of them."""
    return any(item.concept not in ("DET", "THRU", "ON", "FILLER", "I", "AND", "BUT") for item in row.items[row.sentence_start(first) : first])


_LACK_IT = re.compile(r"^,? (?:(?:todav[ií]a|a[uú]n|ya|tambi[eé]n|no|s[ií]) )*(?:les|las|los|llevan|tienen|traen)\b")


def _are_two(row: Row, first: int, second: int) -> bool:
    """ "La 74 y 75, codos de …", "la 40 y 41 van": the number after it, and what is said of the two."""
    values = _number(row, first), _number(row, second)
    if None in values or not all(isinstance(one, int) for one in values) or values[1] != values[0] + 1 or second != first + 2:
        return False
    if _LACK_IT.match(row.text[row.items[second].end :].lower()) is not None:
        return True  # "la 348 y 349 les falta tallar la cinta"
    ahead = re.match(r",? (?:(?:son|van|estan|están|quedaron|ya) )?(\w+s)\b", row.text[row.items[second].end :].lower())
    return ahead is not None and (row.items[min(second + 2, len(row.items) - 1)].concept.startswith("K_") or ahead.group(0).lstrip(", ").startswith(("son", "van", "est", "qued")))


def ranges(row: Row, taken: set[int]) -> list[tuple[int, int]]:
    """ "de la tres a la siete", "desde el dos hasta el seis": the items of the first and the last number."""
    made = []
    for match in row.find("(?P<a>NUM|MARKED) (?:THRU|TO|ON|TO DET|THRU DET) (?P<b>NUM|MARKED) (?!BY|LONG|APART|COUNTED)"):
        a, b = match.start("a"), match.start("b")
        before = row.text[: row.items[a].start].lower().rstrip()
        led = re.search(r"(?:^|[^\w])(?:de la|del|desde la|desde el|de el)$", before) is not None
        to = re.search(r"(?:^|[^\w])(?:la|el|al)$", row.text[: row.items[b].start].lower().rstrip()) is not None
        if led and to and taken.isdisjoint((a, b)):
            made.append((a, b))
    return made


def _number(row: Row, at: int) -> int | None:
    item = row.items[at]
    if item.concept == "MARKED":
        return item.value
    value = item.value.value
    return int(value) if value.denominator == 1 and 0 < value <= 9999 else None


def _is_pointed(row: Row, at: int) -> bool:
    item = row.items[at]
    before = row.text[: item.start].lower().rstrip()
    article = _ONE.search(before)
    if article is None or _AWAY.search(before) is not None and _PART_OF_IT.search(before) is None:
        return False
    if item.concept == "MARKED":
        return True
    value = _number(row, at)
    said = row.text[item.start : item.end].lower()
    if value is None or said in ("un", "una") or value in _CLASSES or _is_date(row, at):
        return False
    if re.search(r"\b(?:m[aá]rca|ll[aá]ma|h[aá]bla)\w* (?:al|la|el)$", before):
        return False  # a telephone
    if value in _TURNS and not _turns_nothing(row, at) and not (before.endswith("la") and _no_elbow(row, at)):
        return False
    owner = row.items[at - 1].concept if at else ""
    behind = row.items[at - 2].concept if at > 1 else ""
    if before.endswith("al") and (said in ("cien", "100") or value <= _FARTHEST and {owner, behind} & set(_SPACED)):
        return False  # "quedó al cien", "engrapada al dos"
    ahead = row.text[item.end :].lower()
    if re.match(r",? (?:sigue|siguen|viene|vienen|va) *(?:[.,;]|$|mañana|después|despues|luego|ahorita|orita)", ahead):
        return False  # "el diez sigue": what comes next
    return not (value <= _LARGEST_GAUGE and before.endswith("del") and (behind in (*_SPACED, "WORD") or owner in (*_SPACED, "WORD")))  # "tornillos del diez", "cable del doce"


_TURNS_TO = re.compile(r"(?:[,;:]|\b(?:y|pero|mientras(?: que)?|luego|despu[eé]s))(?: (?:y|pero|ya|ahora|luego|en cambio|tambi[eé]n|a))* (?:la|el|al)$")
_SAID_OF_IT = re.compile(
    r"^,? ?(?:(?:ya|s[ií]|no|tambi[eé]n|tampoco|todav[ií]a|a[uú]n|nom[aá]s|apenas|mejor) )*(?:(?:l[aoe]s?|se|me|nos) ){1,3}(?:tuve que |tuvimos que |voy a |vamos a |alcanc[eé] a |volv[ií] a )?(?:falt[aoó]n?\b|hace falta\b|(?:di|dej[eé]|hi[cz]e|hicimos)\b|\w+(?:é|í|amos|imos|ó|aron|ieron|use|ete|apé|ar|er|ir)\b|\w{3,}o (?:mañana|luego|al rato|despu[eé]s|ahorita)\b)"
)
_OF_THE_LAST = re.compile(rf"{_SAID_OF_IT.pattern}|^ (?:s[ií]|no|tampoco|ya|todav[ií]a|a[uú]n)(?: (?!est[aá]n|van|son|quedaron|llevan|tienen)|(?= *(?:$|[,;.])))")
_IS_SO = re.compile(r"^,? (?:que |(?:ya|tambi[eé]n|nom[aá]s|apenas|s[oó]lo|todav[ií]a|s[ií]|no) )*(?:est[aá]|qued[oó]|lleva|trae|tiene|va|sali[oó]|igual|lo mismo|sin|con|baja|sube|entra|mide|se mueve|cierra)\b")
_BEARS = re.compile(r"^,? (?:(?:ya|tambi[eé]n|nom[aá]s|s[ií]|no) )*(?:lleva|trae|tiene)\b")
_NEAR, _NO_SIDE, _DAYS = 20, 4, 31


def _of_the_last(behind: str) -> bool:
    return _OF_THE_LAST.match(behind) is not None or re.match(r" (?:est[aá]|qued[oó]|lleva|trae|tiene|va|sali[oó])\b", behind) is not None


def stands_ahead(row: Row, first: int, last: int, behind: list) -> bool:
    """ "Así entrego la 116; la 117 va sin cinta": the piece right before the next by number, named behind what is told of it."""
    value, others = _number(row, first), [one for one in behind if one.first >= last]
    if isinstance(value, int) and others and len(others) == len(behind) and (_leads(row, first, last, value, others) or _before_another(row, first, last, others)):
        return True
    return isinstance(value, int) and len(others) == len(behind) and others[0].mark == str(value + 1) and row.items[min(last, len(row.items) - 1)].concept == "COMMA"


def _before_another(row: Row, first: int, last: int, others: list) -> bool:
    """ "Dejé sin cinta la 135 y la 136 sí está completa": the first of the two."""
    other = others[0].mark_at
    if other is None or not _told_alone(row, first, other[0]):
        return False
    if _ONLY_THE_LAST.match(row.text[row.items[other[0]].end :].lower()) is not None:  # "limpié la 129 antes de encintar, la 130 no"
        return [item.concept for item in row.items[other[0] - 2 : other[0]]] in (["COMMA", "DET"], ["AND", "DET"], ["COMMA", "THRU"], ["COMMA", "ON"], ["AND", "THRU"], ["BUT", "DET"])
    return [item.concept for item in row.items[last : other[0]]] in (["AND", "DET"], ["AND"])


def _leads(row: Row, first: int, last: int, value: int, others: list) -> bool:
    """ "A la 135 le faltan grapas, la 136 está bien": the first words of the sentence, and what is told of it right behind."""
    if any(item.concept not in ("DET", "THRU", "ON", "TO", "FROM", "FILLER", "AND", "BUT") for item in row.items[row.sentence_start(first) : first]):
        return False
    near = value > _DAYS or any(one.mark is not None and one.mark.isdigit() and abs(value - int(one.mark)) <= _NEAR for one in others)
    behind = row.text[row.items[last - 1].end :].lower()
    return value > _NO_SIDE and near and all(one.mark != str(value) for one in others) and (_SAID_OF_IT.match(behind) is not None or _IS_SO.match(behind) is not None)


def turns_to(row: Row, first: int, last: int, named: str | None) -> bool:
    """ "La 95 la engrapé …; la 96 ya la hice …": behind a piece of the same sentence another is spoken of, with an object of its own. "El quince lo encinté" is a day, "el uno lo encinté" may be a side, unless its number lies by that of the piece before."""
    before, behind = row.text[: row.items[first].start].lower().rstrip(), row.text[row.items[last - 1].end :].lower()
    value = _number(row, first)
    if named is None or not named.isdigit() or not isinstance(value, int) or _TURNS_TO.search(before) is None:
        return False
    apart = abs(value - int(named))
    if _SAID_OF_IT.match(behind) is None:
        if (before.endswith("la") or value > _DAYS) and _NO_SIDE < value and apart <= _NEAR and _BEARS.match(behind) is not None:
            return True  # "la 111 lleva grapa de media, la 113 lleva grapa de tres octavos"
        return apart == 1 and (_IS_SO.match(behind) is not None or _ONLY_THE_LAST.match(behind) is not None)  # "la 116 va con cinta; la 117 igual, pero sin la de abajo"
    return apart == 1 or value > _NO_SIDE and (apart <= _NEAR or value > _DAYS)


def _is_date(row: Row, at: int) -> bool:
    ahead = row.text[row.items[at].end :].lower().split()[:2]
    return ahead[:1] == ["de"] and ahead[1:] != [] and ahead[1].strip(".,") in _MONTHS or ahead[:1] == ["%"]


_THE_ONE = re.compile(r"(?:^|[,;:.] |\b(?:y|pero) )(?P<q>(?:la|el|las|los) que (?:[^,;:.]+ )?)(?:es|fue|era) (?:la|el)$")


def of_the_one(row: Row, first: int) -> int | None:
    """ "La encintada es la 47", "la que no tiene cinta es la 58": where what is told of it begins."""
    if first > 3 and [item.concept for item in row.items[first - 2 : first]] == ["BE", "DET"] and row.items[first - 3].concept in ("TAPED", "STAPLED", "RUBBED", "HUNG"):
        return first - 3
    begin = row.sentence_start(first)
    match = _THE_ONE.search(row.text[row.items[begin].start : row.items[first].start].lower().rstrip())
    return None if match is None else next(at for at in range(begin, first) if row.items[at].start >= row.items[begin].start + match.start("q"))


def _no_elbow(row: Row, at: int) -> bool:
    """ "La 60 la armé sin grapas": an elbow of so many degrees is "el de sesenta"."""
    return not any(item.concept in ("K_ELBOW", "K_WYE", "K_OFFSET", "VANES") for item in row.items[row.sentence_start(at) : row.sentence_end(at)])


def _turns_nothing(row: Row, at: int) -> bool:
    """Whether no elbow or wye is spoken of in this sentence, so that a ninety can be a mark."""
    first, last = row.sentence_start(at), row.sentence_end(at)
    kinds = [item.concept for item in row.items[first:last] if item.concept.startswith("K_")]
    return bool(kinds) and not {"K_ELBOW", "K_WYE", "K_OFFSET"} & set(kinds)
