"""Words around a letter with a number ("S-11", "D4") that make it something else than the name of a piece, in each language.

Each is a regular expression over lower-case words. `of_others`, `aside` and `joins` end right before it, past an article; `behind` begins right behind it.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Lettered:
    articles: str = ""
    of_others: str = ""  # a sheet, a door, a unit of that name
    aside: str = ""  # it only tells where, when or as what another is
    of_that: str = ""  # it lies between two of that name
    ranges: str = ""  # before the first of "S-2 to S-6": all of those
    joins: str = ""  # behind a piece that was named before it in the sentence: what that one goes to or sits on
    makes: str = ""  # right behind: a thing of that make or in that place
    staplers: str = ""  # right behind the size of a stapler's staples
    papers: str = ""  # in the sentence of a size of paper
    insulation: str = ""  # in the sentence of what insulation is rated
    one_is: frozenset[str] = frozenset()  # behind the last of several: said of that one alone


ENGLISH_LETTERED = Lettered(
    of_others=(
        r"sheets?|drawings?|dwgs?|details?|prints?|pages?|plans?|figures?|figs?|sketch(?:es)?|specs?|addendum|bulletin|rev|revision|note|keynote|item|schedule|elevations?"
        r"|gates?|doors?|bays?|columns?|cols?|grids?|grid ?lines?|lines?|axis|zones?|areas?|units?|suites?|apts?|apartments?|buildings?|bldgs?|towers?|wings?|blocks?|phases?|levels?|floors?|decks?"
        r"|lifts?|elevators?|stairs?|stairwells?|rooms?|rms?|rm|lots?|trucks?|vans?|trailers?|containers?|boxes|box|bins?|racks?|shelf|shelves|docks?|parking|garage|class|types?|grades?|circuits?|breakers?"
        r"|electrical panels?|exits?|highway|hwy|route|interstate|fans?|rooftops?|machines?|pumps?|boilers?|chillers?|valves?|tables?|chapters?|aisles?|seats?|sections? of the (?:spec|book)|model|part|serial|form|size"
    ),
    aside=(
        r"next to|beside|behind|near|close to|past|under|underneath|below|beneath|above|over by|over from|across from|opposite|opposite of|against|ahead of|in front of|alongside|upstream of|downstream of"
        r"|right by|down by|up by|by|like|same as|just like|than|until|till|toward|towards|before|after|back of|short of|outside of|this side of|other side of|instead of|not counting"
    ),
    joins=r"into|onto|in to|on to|to|off|off of|from|out of|on|at|in|over|meets|feeds|hits|touches|where",
    makes=(
        r"paper|sheets?|size|drawings?|bulbs?|lamps?|steel|galvanized|insulation|wrap|liner|flex|batts?|value|rated|beams?|channels?|angles?|struts?|rods?|bolts?|screws|bits?|drills?|battery|batteries"
        r"|masks?|respirators?|trucks?|vans?|gates?|doors?|bays?|lines?|units?|lifts?|elevators?|levels?|floors?|rooms?|corridor|stairs?|wing|tower|class|form|filters?|permit|exit|shape|condition|job|work"
    ),
    articles=r"the|that|my|our|number|no\.?",
    of_that=r"between",
    ranges=r"from",
    staplers=r"staples?|stapler|gun|tacker",
    papers=r"paper|print|printed|printout|copy|copies",
    insulation=r"insulation|r-?value|wrap|rated|batts?",
    one_is=frozenset("is isn't was wasn't has hasn't needs got".split()),
)

SPANISH_LETTERED = Lettered(
    of_others=(
        r"hojas?|planos?|l[aá]minas?|detalles?|dibujos?|p[aá]ginas?|figuras?|croquis|nota|rev|revisi[oó]n|especificaci[oó]n|elevaci[oó]n|cortes?"
        r"|puertas?|port[oó]n|portones|accesos?|niveles|nivel|pisos?|ejes?|columnas?|edificios?|torres?|deptos?|departamentos?|locales|local|cuartos?|unidades|unidad|elevador(?:es)?|montacargas|andamio|tableros?|zonas?|[aá]reas?|bah[ií]as?"
        r"|cajas?|cajones|caj[oó]n|estacionamiento|lotes?|camiones|cami[oó]n|trocas?|salidas?|circuitos?|bombas?|v[aá]lvulas?|m[aá]quinas?|equipos?|ventiladores|ventilador|manejadoras?|escaleras?|clase|tipo|grado|modelo|tama[nñ]o|papel|carretera|andén|anden|gr[uú]as?|salas?|salones|sal[oó]n|oficinas?|bloques?|alas?"
    ),
    aside=(
        r"junto a|al lado de|a un lado de|detr[aá]s de|atr[aá]s de|cerca de|debajo de|abajo de|arriba de|encima de|enfrente de|frente a|contra|antes de|despu[eé]s de|pegad[oa] a|igual que|igual a|como|que|hasta|hacia|rumbo a|en vez de|en lugar de|adelante de|sin contar"
    ),
    joins=r"a|con|en|de|desde|hacia",
    makes=r"papel|hojas?|acero|aislante|aislamiento|lana|filtros?|bater[ií]as?|pilas?|brocas?|puertas?|port[oó]n|nivel|piso|elevador",
    articles=r"la|el|del|n[uú]mero",
    of_that=r"entre|en medio de",
    ranges=r"de|desde",
    staplers=r"grapas?|engrapadora|pistola",
    papers=r"papel|impres[ao]s?|imprim\w+|copias?",
    insulation=r"aislante|aislamiento|colchoneta",
    one_is=frozenset("está esta quedó quedo lleva trae tiene no".split()),
)
