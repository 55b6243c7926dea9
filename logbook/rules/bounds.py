"""The limits of use: where the board may stand, and what pressure, temperature, air and span it may carry.

A piece is judged here by what was said of it; what holds for the whole job is judged once, by `of_the_job`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from logbook import air
from logbook.findings import Example, Outcome, Rule, Source, Word
from logbook.piece import Piece
from logbook.rules.using import Use
from logbook.runs import Around

# Words of a place (as kept: without their "on" or "in", so that "roof" alone is on it) -> why duct board may not stand there; exhaust alone is not enough, it must come from a hood.
# Places from the US guide specification UFGS 15566A 2.10.2; equipment rooms stand there too and only count.
_BESIDE = r"(?:(?:right|just|over|down|up|out|back|outside|arriba|abajo|justo) )*(?:by|near|next to|outside|beside|alongside|across from|past|before|behind|above|below|under|over|on the way to|close to|to|toward|from|leaving|opposite|junto|cerca|al lado|afuera|fuera|frente|enfrente|detr[aá]s|antes|encima|debajo|arriba|hacia|pasando)\b"
PLACES: tuple[tuple[str, str, str], ...] = (
    (r"^outside$|outdoors?\b|\bweather\b|\b(?:rain|snow)\b|open air|\beaves?\b|\belements\b|outside on the wall|rooftop|outside (?:of )?the (?:building|wall)|(?:hangs|sits|lives|mounted|installed|one's) outside|outside (?:under|by|behind|next|in the sun)|out (?:through the wall|on the slab)|^(?:the |top of the )?roof deck|over the roof deck|\bparapet\b|outside (?:along|on|over|up|under) the|(?:across|along) the roof|on (?:top of )?the roof\b|\bintemperie\b|aire libre|sol y al agua|\bafuera\b|sobre el techo|\bazotea\b|fuera del edificio|^roof\b", "outdoors", "must"),
    (r"\bburied\b|underground|below grade|under the slab|in(?:side)? the slab|concrete|in(?:to)? the (?:slab|pour|ground|dirt|soil|earth|trench|footing|topping)|under the soil|^(?:the )?(?:trench|footing)\b|under (?:the )?(?:ground|driveway|parking lot|sidewalk)|in a trench|(?:below|beneath|under|underneath) the (?:\w+ )?slab|enterr(?:ad[oa]|é|amos|aron)\b|bajo tierra|en (?:el )?concreto|(?:bajo|debajo de|abajo de) la losa|debajo del concreto|en la losa|dentro de la losa|en la tierra|en (?:la |una )?zanja", "buried", "must"),
    (rf"^(?!{_BESIDE})(?:[\w'-]+ )*?(?:fan|mechanical|equipment) room\b|\bin(?:side)? the (?:[\w'-]+ )?(?:fan|mechanical|equipment) room\b|^(?!{_BESIDE}).*?cuarto de (?:m[aá]quinas|equipos?)|\b(?:en|dentro de)l? (?:el )?cuarto de (?:m[aá]quinas|equipos?)", "equipment-room", "should"),
)  # fmt: skip
# a place that is a hood's own and no other's: "for the kitchen hood"; "above the kitchen hood" is somewhere else
HOOD_ITSELF = re.compile(r"(?:the )?(?:kitchen|range|fume|lab|chemical|chem|grease|exhaust|cooking|fryer|griddle|grill|broiler|stove|wok) (?:exhaust )?hood(?: in the \w+)?|(?:la )?campana(?: (?:de|extractora)\b.*)?|(?:el )?extractor de (?:la )?(?:grasa|cocina|humos?)", re.I)
HOODS = re.compile(r"kitchen|\bhoods?\b|grease|fume|\blabs?\b|laborator|fryer|\bgrill\b|\brange\b|\bstove\b|broiler|\bcook|griddle|\bwok\b|\boven\b|cocina|campana|grasa|humo|vapores|parrilla|freidora|estufa", re.I)
CONVEYS = re.compile(r"paint booth|spray booth|dryer|dust|\bsaws?\b|acid|chem|solvent|batter(?:y|ies)\b|hazard|corros|shavings|[áa]cido|qu[íi]mic|aserr[íi]n|polvo|secadora|pintura", re.I)  # solids or corrosive gas: the same guide specification


def allowed_there(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    place, service = use.said("place"), use.known("service")
    run = around.job.run(piece.run)
    if run is not None and run.storeys is not None and run.storeys > use.limit("riser_storeys"):
        reckoned = {"storeys": run.storeys, "limit": use.limit("riser_storeys")}
        return use.departs("riser", reckoned=reckoned, limit=use.limit("riser_storeys"), source=RISER)
    storeys = None if place is None else _storeys(place)
    if storeys is not None and storeys > use.limit("riser_storeys"):
        return use.departs("riser", reckoned={"storeys": storeys, "limit": use.limit("riser_storeys")}, limit=use.limit("riser_storeys"), source=RISER)
    said = piece.fact("service")
    words = " ".join(text for text in (place, None if said is None else said.words) if text)
    if service == "exhaust" and HOODS.search(words) or service is None and place is not None and HOOD_ITSELF.fullmatch(place):
        return use.departs("not-permitted", tells={"where": Word("place-hood")})
    if service == "exhaust" and CONVEYS.search(words):
        return use.departs("not-permitted", tells={"where": Word("place-conveying")})
    if service == "outside":
        return use.departs("not-permitted", tells={"where": Word("place-outside-air")}, weight="should")
    for pattern, name, weight in PLACES:
        if place is not None and re.search(pattern, place, re.I):
            return use.departs("not-permitted", tells={"where": Word(f"place-{name}")}, weight=weight)
    return None


_COUNTS = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10, "eleven": 11, "twelve": 12, "fifteen": 15, "twenty": 20,
           "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7, "ocho": 8, "nueve": 9, "diez": 10, "doce": 12}  # fmt: skip
_RISES = re.compile(rf"\b({'|'.join(_COUNTS)}|\d+)[- ](?:stor(?:y|ies|eys?)|floors?|levels?|pisos|plantas|niveles)\b", re.I)


_FLOORS = {"basement": 0, "ground": 1, "first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6, "seventh": 7, "eighth": 8, "ninth": 9, "tenth": 10}
_FROM_TO = re.compile(rf"\b({'|'.join(_FLOORS)})(?: floor| level)? (?:up )?(?:to|through|thru) (?:the )?({'|'.join(_FLOORS)})\b", re.I)


def _storeys(place: str) -> int | None:
    """How many storeys the riser passes, from the words of a place that say so."""
    span = _FROM_TO.search(place)
    if span is not None:
        return max(_FLOORS[span.group(2).lower()] - _FLOORS[span.group(1).lower()], 0)
    match = _RISES.search(place) if re.search(r"riser|shaft|stack|chase|\b(?:through|past)\b|montante|bajante|columna|subida|chimenea|vertical|\bsube|\bpasan?\b|atraviesa|cruza|recorre", place, re.I) else None
    return None if match is None else _COUNTS.get(match.group(1).lower()) or int(match.group(1))


RISER = Source("BD-14", "a", "nfpa-90a")
ALLOWED_THERE = Rule(
    id="allowed-there",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("riser_storeys",),
    source=Source("section 4", "a", "ufgs-15566a"),
    judge=allowed_there,
    defers=True,
    examples=(
        Example("Straight four, eighteen by twelve, outdoors behind the loading dock.", "departs", "not-permitted"),
        Example("Kitchen exhaust, straight four, eighteen by twelve.", "departs", "not-permitted"),
        Example("This is for the kitchen hood, straight four, eighteen by twelve.", "departs", "not-permitted"),
        Example("Straight four, eighteen by twelve, for the fume hood in the lab.", "departs", "not-permitted"),
        Example("Straight four, eighteen by twelve, above the kitchen hood.", None),
        Example("Straight four, eighteen by twelve, above the hallway.", None),
    ),
)


def static_pressure(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    pressure = use.said("static_pressure")
    return None if pressure is None else _pressure(use, pressure)


def _pressure(use: Use, pressure: Fraction, **more) -> Outcome:
    limit = use.limit("static_pressure")
    reckoned = {"pressure": pressure, "limit": limit}
    answer = use.meets if abs(pressure) <= limit else use.departs
    return answer("within" if abs(pressure) <= limit else "too-high", limit=limit, reckoned=reckoned, **more)


STATIC_PRESSURE = Rule(
    id="static-pressure",
    concerns=(),
    weight="keep",
    silent="not due",
    may_stand=("job",),
    limits=("static_pressure",),
    source=Source("BD-05", "a", "ah116-scope"),
    judge=static_pressure,
    defers=True,
    examples=(
        Example("Straight four, one and a half inches of static pressure.", "meets", "within"),
        Example("Straight four, three inches of static pressure.", "departs", "too-high"),
    ),
)


def air_temperature(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    degrees = use.said("air_temperature")
    return None if degrees is None else _temperature(use, degrees)


def _temperature(use: Use, degrees: Fraction, **more) -> Outcome:
    limit = use.limit("air_temperature")
    reckoned = {"temperature_f": degrees, "limit_f": limit}
    answer = use.meets if degrees <= limit else use.departs
    return answer("within" if degrees <= limit else "too-hot", limit=limit, reckoned=reckoned, **more)


AIR_TEMPERATURE = Rule(
    id="air-temperature",
    concerns=(),
    weight="keep",
    silent="not due",
    may_stand=("job",),
    limits=("air_temperature",),
    source=Source("BD-10", "a", "nfpa-90a-irc"),
    judge=air_temperature,
    defers=True,
    examples=(
        Example("Straight four, air temperature one hundred twenty degrees.", "meets", "within"),
        Example("Straight four, air temperature three hundred degrees.", "departs", "too-hot"),
    ),
)


# --- airflow and shape: rows when the schedule is read, a piece where it differs from its row or has none


def _sizes(use: Use) -> list:
    return [size for size in (use.said("inlet_size"), use.said("outlet_size")) if size is not None]


def _as_its_row(piece: Piece, around: Around) -> bool:
    row = around.row
    if row is None:
        return False
    said = (piece.value("inlet_size"), piece.value("outlet_size"), piece.value("airflow"))
    same = zip(said, (row.inlet, row.outlet or row.inlet, row.airflow))
    return all(mine is None or mine == planned for mine, planned in same)


def _told_of(outcome: Outcome, around: Around) -> Outcome | None:
    """Without a schedule nobody waits for these answers: only what departs is told."""
    return outcome if around.scheduled or outcome.verdict == "departs" else None


def velocity(piece: Piece, around: Around) -> Outcome | None:
    if _as_its_row(piece, around):
        return None
    use = Use(piece, around)
    flow, evidence = use.said("airflow"), ()
    if flow is None and around.row is not None and around.row.airflow is not None:
        flow, evidence = around.row.airflow, (f"schedule {around.revision}: {around.row.mark} {around.row.airflow} cfm",)
    sizes = _sizes(use)
    if not flow or not sizes:
        return None
    return _told_of(_velocity(use, flow, sizes, evidence=evidence), around)


def _velocity(use: Use, flow: Fraction, sizes: list, **more) -> Outcome:
    fpm, limit = max(air.velocity(flow, size) for size in sizes), use.limit("velocity")
    reckoned = {"velocity_fpm": fpm, "limit_fpm": limit}
    answer = use.meets if fpm <= limit else use.departs
    return answer("within" if fpm <= limit else "too-fast", limit=limit, reckoned=reckoned, **more)


VELOCITY = Rule(
    id="velocity",
    concerns=(),
    weight="keep",
    silent="not due",
    may_stand=("job",),
    limits=("velocity",),
    source=Source("BD-07", "a", "ah116-scope"),
    judge=velocity,
    examples=(
        Example("Straight four, twelve by eight, four hundred cfm.", None),
        Example("Straight four, twelve by eight, two thousand cfm.", "departs", "too-fast"),
    ),
)


def aspect_ratio(piece: Piece, around: Around) -> Outcome | None:
    if _as_its_row(piece, around):
        return None
    use = Use(piece, around)
    sizes = _sizes(use)
    return _told_of(_aspect(use, sizes), around) if sizes else None


def _aspect(use: Use, sizes: list, **more) -> Outcome:
    ratio, limit = max(air.aspect_ratio(size) for size in sizes), use.limit("aspect_ratio")
    reckoned = {"ratio": ratio, "limit": limit}
    answer = use.meets if ratio <= limit else use.departs
    return answer("within" if ratio <= limit else "too-flat", limit=limit, reckoned=reckoned, **more)


ASPECT_RATIO = Rule(
    id="aspect-ratio",
    concerns=(),
    weight="keep",
    silent="not due",
    may_stand=("job",),
    limits=("aspect_ratio",),
    source=Source("AS-11", "a", "usbr-hvac"),
    judge=aspect_ratio,
    examples=(
        Example("Straight four, thirty-two by eight.", None),
        Example("Straight four, forty by eight.", "departs", "too-flat"),
    ),
)


def span_unreinforced(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    if use.known("reinforced"):
        return None
    sizes, pressure, board = _sizes(use), use.known("static_pressure"), use.known("board_class")
    if not sizes or pressure is None or board is None:
        return None
    span = max(side for size in sizes for side in size)
    if abs(pressure) <= use.limit("span_pressure"):
        return _span(use, span, use.limit(f"span_{board}"), board)
    filled = _filled(use, pressure, board)
    if not filled:
        return None
    return _span(use, span, filled[0], board, source=Source("", "", filled[1]))


def _filled(use: Use, pressure: Fraction, board: int) -> tuple[Fraction, str] | None:
    """The widest unreinforced span of the user's own table at this pressure, and the document it names."""
    thickness = use.known("board_thickness")
    rows = [
        row
        for row in use.job.reinforcement
        if row.board_class == board
        and row.method == "none"
        and (thickness is None or row.thickness == thickness)
        and row.pressure * pressure > 0
        and abs(row.pressure) >= abs(pressure)
    ]
    nearest = min((abs(row.pressure) for row in rows), default=None)
    return max(((row.span, row.document) for row in rows if abs(row.pressure) == nearest), default=None)


def _span(use: Use, span: Fraction, limit: Fraction, board: int, **more) -> Outcome:
    reckoned = {"span_in": span, "limit_in": limit, "board_class": board}
    answer = use.meets if span <= limit else use.departs
    return answer("within" if span <= limit else "too-wide", limit=limit, reckoned=reckoned, **more)


SPAN_UNREINFORCED = Rule(
    id="span-unreinforced",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=("job",),
    limits=("span_pressure", "span_475", "span_800", "span_1400"),
    source=Source("RF-01, RF-02", "a", "ah119-preface"),
    judge=span_unreinforced,
    defers=True,
    examples=(
        Example("Straight four, thirty by twelve, 475 board, half an inch of static pressure.", "meets", "within"),
        Example("Straight four, forty by twelve, 475 board, half an inch of static pressure.", "departs", "too-wide"),
        Example("Straight four, forty by twelve, 475 board, half an inch of static pressure, tie rods in.", None),
    ),
)


def leak_test(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    flow, pressure, surface = use.said("leak_flow"), use.said("leak_pressure"), use.said("leak_area")
    limit = use.limit("leakage_class")
    missing = [n for n, value in (("leak_flow", flow), ("leak_pressure", pressure), ("leak_area", surface)) if not value]
    if "leak_flow" in missing and flow is not None:
        missing.remove("leak_flow")  # no flow at all was measured, and said
    if len(missing) == 3:
        return None
    if missing:
        return use.unsaid("number-unsaid", missing[0], limit=limit, silent="ask")
    allowed = Fraction(str(round(air.leakage_allowed(limit, pressure, surface), 3)))
    reckoned = {"flow_cfm": flow, "allowed_cfm": allowed, "class": limit}
    answer = use.meets if flow <= allowed else use.departs
    return answer("tight-enough" if flow <= allowed else "leaks", limit=limit, reckoned=reckoned)


LEAK_TEST = Rule(
    id="leak-test",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=("job",),
    limits=("leakage_class",),
    source=Source("LK-01", "a*", "smacna-leakage"),
    judge=leak_test,
    leak_test=True,
    defers=True,
    examples=(
        Example("Leak test on run two, eighteen cfm at one inch water gauge over three hundred sixty square feet.", "meets", "tight-enough"),
        Example("Leak test on run two, thirty cfm at one inch water gauge over three hundred sixty square feet.", "departs", "leaks"),
    ),
)


def of_the_job(around: Around) -> Iterator[tuple[Rule, str, Outcome]]:
    """What holds for the whole job, once: (rule, what it is about, outcome) of runs and of the schedule's rows."""
    job = around.job
    nobody = Piece(None, job.id, None, None, (), ())
    standing = dict(job.standing)
    spoken = [("", standing.get("static_pressure"), standing.get("air_temperature"))]
    spoken += [(run.name, run.static_pressure, run.air_temperature) for run in job.runs.values()]
    for about, pressure, degrees in spoken:
        if pressure is not None:
            yield STATIC_PRESSURE, about, _pressure(Use(nobody, around), pressure, weight="must")
            if abs(pressure) > job.limit("span_pressure") and not job.reinforcement:
                yield SPAN_UNREINFORCED, about, Use(nobody, around).unclear("table-empty", None)
        if degrees is not None:
            yield AIR_TEMPERATURE, about, _temperature(Use(nobody, around), degrees, weight="must")
    plan = job.revision()
    for row in () if plan is None else plan.rows:
        sizes = [size for size in (row.inlet, row.outlet) if size is not None]
        evidence = (f"schedule {plan.name}: {row.mark}",)
        if sizes and row.airflow:
            yield VELOCITY, row.mark, _velocity(Use(nobody, around), row.airflow, sizes, evidence=evidence)
        if sizes:
            yield ASPECT_RATIO, row.mark, _aspect(Use(nobody, around), sizes, evidence=evidence)
