"""Frozen records of what was said: facts with their words, open items, entries of a note, a whole reading.

`words`, `start`, `end` are the exact characters of the text (code points, end exclusive). A member that says
nothing is left out of the JSON. Which member means what is told in `schemas/read.json`.
"""

from __future__ import annotations

from dataclasses import dataclass

from logbook import facts

from logbook.record import record


@dataclass(frozen=True)
class Span:
    """A place in a text; `note` names the text where several notes add up."""

    words: str
    start: int
    end: int
    note: str | None = None


@dataclass(frozen=True)
class Earlier:
    """A value that a later word took back (`withdrawn`) or replaced (`was`); `name` where no fact holds it."""

    value: object
    words: str | None
    start: int | None
    end: int | None
    note: str | None = None
    name: str | None = None


@record
class Fact:
    name: str
    value: object  # in the shape of `facts.BY_NAME[name]`
    words: str | None
    start: int | None
    end: int | None
    hedged: bool = False
    via: str = "typed"  # spoken typed phrase pressed tag lead
    second: float | None = None
    heard: float | None = None  # lowest word probability in the span
    said_unit: str | None = None  # only where it was not inches
    also: tuple[Span, ...] = ()
    withdrawn: tuple[Earlier, ...] = ()
    was: tuple[Earlier, ...] = ()
    conflict: bool = False
    between: tuple[str, ...] = ()  # the notes of a conflict made by joining
    from_fitting: int | None = None
    read_as: str | None = None
    for_run: str | None = None
    note: str | None = None
    from_note: str | None = None
    confirmed: bool = False  # its speaker saw these words and said that they are what he said: doubt of hearing is over
    alternatives: tuple[object, ...] = ()  # other values the ears offer, in the fact's shape; not part of the JSON contract's minimum

    def of_note(self, note: str | None) -> Fact:
        """The same fact with its note: what `replace` gives, made for every fact of every note and so without a look at each field."""
        made = object.__new__(Fact)
        made.__dict__.update(self.__dict__, note=note)
        return made


@dataclass(frozen=True)
class OpenItem:
    text: str
    about: str  # piece hanging other
    denies: str | None
    start: int
    end: int
    note: str | None = None


@dataclass(frozen=True)
class Muffled:
    """A stretch of sound that stands in no fact because it was heard too faintly, or not at all (`words` empty).

    `maybe` is what another hearing of the words would leave undone ("not taped yet") and `denies` the fact that makes
    false, `second` None in a text.
    """

    words: str
    start: int
    end: int
    second: float | None = None
    maybe: str | None = None
    denies: str | None = None
    note: str | None = None


@dataclass(frozen=True)
class Unread:
    """Words that tell of the work and became no fact; `about` are the facts that they may tell of, none where nobody can say."""

    words: str
    start: int
    end: int
    about: tuple[str, ...] = ()
    note: str | None = None


@dataclass(frozen=True)
class SameAs:
    mark: str
    run: str | None
    names: tuple[str, ...] | None
    besides: tuple[str, ...]  # "except" in JSON
    words: str
    start: int
    end: int


@dataclass(frozen=True)
class Withdraws:
    what: str  # last mark this
    mark: str | None
    words: str
    start: int
    end: int


@dataclass(frozen=True)
class Entry:
    """One fitting as one note says it."""

    position: int
    facts: tuple[Fact, ...] = ()
    open_items: tuple[OpenItem, ...] = ()
    withdrawn: tuple[Earlier, ...] = ()
    amends: bool = False
    same_as: SameAs | None = None
    muffled: tuple[Muffled, ...] = ()
    unread: tuple[Unread, ...] = ()  # those of the reading's that tell of this fitting, and of what

    def fact(self, name: str) -> Fact | None:
        return next((fact for fact in self.facts if fact.name == name), None)


@dataclass(frozen=True)
class Reading:
    """What one text says. `shift` is None or the facts of a start-of-shift note."""

    language: str | None
    language_from: str | None  # given ears words
    text: str
    fittings: tuple[Entry, ...] = ()
    shift: tuple[Fact, ...] | None = None
    withdraws: Withdraws | None = None
    reason: str | None = None  # why nothing was read, a wording key under `reading.`
    unread: tuple[Unread, ...] = ()  # what tells of the work and became no fact


# --- to and from JSON; a member that says nothing is absent


def _without(pairs: dict, absent=(None, (), [], False)) -> dict:
    return {key: value for key, value in pairs.items() if not any(value is a or value == a for a in absent)}


def span_to_json(span: Span) -> dict:
    return {"words": span.words, "start": span.start, "end": span.end} | _without({"note": span.note})


def span_from_json(doc: dict) -> Span:
    return Span(doc["words"], doc["start"], doc["end"], doc.get("note"))


def unread_to_json(one: Unread) -> dict:
    return {"words": one.words, "start": one.start, "end": one.end} | _without({"about": list(one.about), "note": one.note})


def unread_from_json(doc: dict) -> Unread:
    return Unread(doc["words"], doc["start"], doc["end"], tuple(doc.get("about", ())), doc.get("note"))


def earlier_to_json(name: str, earlier: Earlier) -> dict:
    head = {"name": earlier.name} if earlier.name else {}
    exact = facts.exact_to_json(name, earlier.value)
    return (
        head
        | {"value": facts.to_json(name, earlier.value)}
        | _without({"exact": exact})
        | {"words": earlier.words, "start": earlier.start, "end": earlier.end}
        | _without({"note": earlier.note})
    )


def earlier_from_json(name: str, doc: dict) -> Earlier:
    value = facts.from_json(name, doc["value"], doc.get("exact"))
    return Earlier(value, doc["words"], doc["start"], doc["end"], doc.get("note"), doc.get("name"))


def fact_to_json(fact: Fact) -> dict:
    exact = facts.exact_to_json(fact.name, fact.value)
    doc = {"name": fact.name, "value": facts.to_json(fact.name, fact.value)} | _without({"exact": exact})
    doc |= {"unit": facts.BY_NAME[fact.name].unit} | _without({"said_unit": fact.said_unit})
    doc |= {"words": fact.words, "start": fact.start, "end": fact.end}
    doc |= {key: value for key, value in (("second", fact.second), ("heard", fact.heard)) if value is not None}
    doc |= {"hedged": fact.hedged, "via": fact.via}
    return doc | _without(
        {
            "also": [span_to_json(span) for span in fact.also],
            "withdrawn": [earlier_to_json(fact.name, e) for e in fact.withdrawn],
            "was": [earlier_to_json(fact.name, e) for e in fact.was],
            "conflict": fact.conflict,
            "between": list(fact.between),
            "read_as": fact.read_as,
            "for_run": fact.for_run,
            "note": fact.note,
            "from_note": fact.from_note,
            "confirmed": fact.confirmed,
            "alternatives": [facts.to_json(fact.name, value) for value in fact.alternatives],
        }
    ) | ({} if fact.from_fitting is None else {"from_fitting": fact.from_fitting})


def fact_from_json(doc: dict) -> Fact:
    name = doc["name"]
    return Fact(
        name=name,
        value=facts.from_json(name, doc["value"], doc.get("exact")),
        words=doc["words"],
        start=doc["start"],
        end=doc["end"],
        hedged=doc["hedged"],
        via=doc["via"],
        second=doc.get("second"),
        heard=doc.get("heard"),
        said_unit=doc.get("said_unit"),
        also=tuple(span_from_json(span) for span in doc.get("also", ())),
        withdrawn=tuple(earlier_from_json(name, e) for e in doc.get("withdrawn", ())),
        was=tuple(earlier_from_json(name, e) for e in doc.get("was", ())),
        conflict=doc.get("conflict", False),
        between=tuple(doc.get("between", ())),
        from_fitting=doc.get("from_fitting"),
        read_as=doc.get("read_as"),
        for_run=doc.get("for_run"),
        note=doc.get("note"),
        from_note=doc.get("from_note"),
        confirmed=doc.get("confirmed", False),
        alternatives=tuple(facts.from_json(name, value) for value in doc.get("alternatives", ())),
    )


def open_item_to_json(item: OpenItem) -> dict:
    doc = {"text": item.text, "about": item.about, "denies": item.denies, "start": item.start, "end": item.end}
    return doc | _without({"note": item.note})


def open_item_from_json(doc: dict) -> OpenItem:
    return OpenItem(doc["text"], doc["about"], doc["denies"], doc["start"], doc["end"], doc.get("note"))


def muffled_to_json(one: Muffled) -> dict:
    doc = {"words": one.words, "start": one.start, "end": one.end}
    return doc | _without({"second": one.second, "maybe": one.maybe, "denies": one.denies, "note": one.note}, (None,))


def muffled_from_json(doc: dict) -> Muffled:
    more = {name: doc.get(name) for name in ("second", "maybe", "denies", "note")}
    return Muffled(doc["words"], doc["start"], doc["end"], **more)


def same_as_to_json(same: SameAs) -> dict:
    names = None if same.names is None else list(same.names)
    doc = {"mark": same.mark, "run": same.run, "names": names, "except": list(same.besides)}
    return doc | {"words": same.words, "start": same.start, "end": same.end}


def same_as_from_json(doc: dict) -> SameAs:
    names = None if doc["names"] is None else tuple(doc["names"])
    return SameAs(doc["mark"], doc["run"], names, tuple(doc["except"]), doc["words"], doc["start"], doc["end"])


def entry_to_json(entry: Entry) -> dict:
    doc = {
        "position": entry.position,
        "facts": [fact_to_json(fact) for fact in entry.facts],
        "open_items": [open_item_to_json(item) for item in entry.open_items],
    }
    return doc | _without(
        {
            "withdrawn": [earlier_to_json(e.name, e) for e in entry.withdrawn],
            "amends": entry.amends,
            "same_as": None if entry.same_as is None else same_as_to_json(entry.same_as),
            "muffled": [muffled_to_json(one) for one in entry.muffled],
            "unread": [unread_to_json(one) for one in entry.unread],
        }
    )


def entry_from_json(doc: dict) -> Entry:
    return Entry(
        position=doc["position"],
        facts=tuple(fact_from_json(fact) for fact in doc["facts"]),
        open_items=tuple(open_item_from_json(item) for item in doc["open_items"]),
        withdrawn=tuple(earlier_from_json(e["name"], e) for e in doc.get("withdrawn", ())),
        amends=doc.get("amends", False),
        same_as=same_as_from_json(doc["same_as"]) if "same_as" in doc else None,
        muffled=tuple(muffled_from_json(one) for one in doc.get("muffled", ())),
        unread=tuple(unread_from_json(one) for one in doc.get("unread", ())),
    )


def withdraws_to_json(withdraws: Withdraws | None) -> dict | None:
    if withdraws is None:
        return None
    doc = {"what": withdraws.what, "mark": withdraws.mark, "words": withdraws.words}
    return doc | {"start": withdraws.start, "end": withdraws.end}


def withdraws_from_json(doc: dict | None) -> Withdraws | None:
    return None if doc is None else Withdraws(doc["what"], doc["mark"], doc["words"], doc["start"], doc["end"])


def reading_to_json(reading: Reading) -> dict:
    shift = None if reading.shift is None else {"facts": [fact_to_json(fact) for fact in reading.shift]}
    return {
        "language": reading.language,
        "language_from": reading.language_from,
        "text": reading.text,
        "fittings": [entry_to_json(entry) for entry in reading.fittings],
        "shift": shift,
        "withdraws": withdraws_to_json(reading.withdraws),
    } | _without({"reason": reading.reason, "unread": [unread_to_json(one) for one in reading.unread]})


def reading_from_json(doc: dict) -> Reading:
    return Reading(
        language=doc["language"],
        language_from=doc["language_from"],
        text=doc["text"],
        fittings=tuple(entry_from_json(entry) for entry in doc["fittings"]),
        shift=None if doc["shift"] is None else tuple(fact_from_json(fact) for fact in doc["shift"]["facts"]),
        withdraws=withdraws_from_json(doc["withdraws"]),
        reason=doc.get("reason"),
        unread=tuple(unread_from_json(one) for one in doc.get("unread", ())),
    )
