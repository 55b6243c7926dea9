"""Writes `schemas/` from the table of facts and the vocabularies of the code: python tests/making/write_schemas.py

A test compares the files with what this writes, so that no schema falls behind the code. `day.json`, the schemas of
the package and of the demonstration belong to the parts that print them.
"""

import json
import sys
from pathlib import Path

from logbook import facts, findings, limits, note, review

HERE = Path(__file__).resolve().parents[2] / "schemas"
DRAFT = "https://json-schema.org/draft/2020-12/schema"

TEXT, FLAG, WHOLE, NUMBER = {"type": "string"}, {"type": "boolean"}, {"type": "integer"}, {"type": "number"}
NULL = {"type": "null"}
TIME = {"type": "string", "format": "date-time", "pattern": r"(Z|[+-]\d\d:\d\d)$"}
DAY = {"type": "string", "format": "date"}
UUID = {"type": "string", "pattern": "^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"}
SHA256 = {"type": "string", "pattern": "^[0-9a-f]{64}$"}
SHARE = {"type": "number", "minimum": 0, "maximum": 1}
LANGUAGE = {"enum": ["en", "es"]}
FRACTION = {"type": "string", "pattern": r"^-?\d+(/[1-9]\d*)?$"}
UNREAD = {
    "type": "array", "description": "Words that tell of the work and became no fact: not understood, and nothing was checked against them.",
    "items": {"$ref": "fact.json#/$defs/unread"}, "minItems": 1,
}  # fmt: skip


def maybe(schema):
    return {"anyOf": [schema, NULL]}


def many(schema, **more):
    return {"type": "array", "items": schema} | more


def of(required: dict, optional: dict | None = None, *, told: str = "", open_end: bool = False) -> dict:
    """An object with these members and no others (unless another schema adds some)."""
    doc = {"type": "object"} | ({"description": told} if told else {})
    doc |= {"required": list(required), "properties": {**required, **(optional or {})}}
    return doc if open_end else doc | {"additionalProperties": False}


def ref(name: str) -> dict:
    file, _, part = name.partition("#")
    return {"$ref": f"{file}#/$defs/{part}" if part else file}


def value_of(row: facts.FactName) -> dict:
    pair = {"type": "array", "items": {"type": "number", "exclusiveMinimum": 0}, "minItems": 2, "maxItems": 2}
    match row.shape:
        case "choice":
            return {"enum": list(row.values)}
        case "text":
            return {"type": "string", "minLength": 1}
        case "flag":
            return FLAG
        case "count":
            return {"enum": [int(value) for value in row.values]} if row.values else {"type": "integer", "minimum": 0}
        case "length":
            return {"type": "number", "minimum": 0}
        case "size" | "slope":
            return pair
        case "sides":
            return many({"enum": list(facts.SIDES)}, uniqueItems=True)
        case "marks":
            return many({"type": "string", "minLength": 1})
        case "moves":
            return many(ref("#move"), minItems=1)
    return NUMBER


def by_name(members: tuple[str, ...]) -> list[dict]:
    """What the value of each fact looks like, in `value` itself and in the lists of earlier values."""
    groups: dict[str, tuple[dict, list[str]]] = {}
    for row in facts.FACTS:
        value = value_of(row)
        groups.setdefault(json.dumps(value), (value, []))[1].append(row.name)
    listed = {"was", "withdrawn"} & set(members)
    return [
        {
            "if": {"properties": {"name": {"enum": names}}},
            "then": {
                "properties": {"value": value} | {name: {"items": {"properties": {"value": value}}} for name in sorted(listed)}
            },
        }
        for value, names in groups.values()
    ]


def fact_schemas() -> dict:
    name = {"enum": [row.name for row in facts.FACTS]}
    unit = {"enum": list(dict.fromkeys(row.unit for row in facts.FACTS))}
    exact_moves = many(of({"side": True, "by": maybe(FRACTION), "back": maybe(FRACTION), "way": True}))
    exact = {"anyOf": [FRACTION, many(FRACTION, minItems=2, maxItems=2), exact_moves]}
    said_at = {"words": maybe(TEXT), "start": maybe(WHOLE), "end": maybe(WHOLE)}
    earlier = of({"value": True, **said_at}, {"exact": exact, "note": TEXT, "name": name})
    span = of({"words": TEXT, "start": WHOLE, "end": WHOLE}, {"note": TEXT})
    via = {"enum": ["spoken", "typed", "phrase", "pressed", "tag", "lead"]}
    optional = {
        "exact": exact,
        "said_unit": {"enum": ["ft", "mm", "cm", "m"]},
        "second": {"type": "number", "minimum": 0},
        "heard": SHARE,
        "also": many(span, minItems=1),
        "withdrawn": many(earlier, minItems=1),
        "was": many(earlier, minItems=1),
        "conflict": {"const": True},
        "between": many(TEXT, minItems=1),
        "from_fitting": WHOLE,
        "read_as": TEXT,
        "for_run": TEXT,
        "note": TEXT,
        "from_note": TEXT,
        "confirmed": {"const": True},
        "alternatives": many(True, minItems=1),
    }
    fact = of({"name": name, "value": True, "unit": unit, **said_at, "hedged": FLAG, "via": via}, optional)
    stated = of({"name": name, "value": True}, {"exact": exact})
    item = of(
        {"text": TEXT, "about": {"enum": ["piece", "hanging", "other"]}, "denies": maybe(name), "start": WHOLE, "end": WHOLE},
        {"note": TEXT},
    )
    muffled = of(
        {"words": TEXT, "start": WHOLE, "end": WHOLE},
        {"second": {"type": "number", "minimum": 0}, "maybe": TEXT, "denies": name, "note": TEXT},
        told="Words that stand in no fact because they were heard too faintly; none: a stretch that gave no words.",
    )
    unread = of({"words": TEXT, "start": WHOLE, "end": WHOLE}, {"about": many(name, minItems=1), "note": TEXT, "stands": {"enum": ["asked", "answered"]}},
                told="Words that tell of the work and became no fact; `about`: the facts they may tell of; `stands`: a finding quotes them, or their matter was told since.")  # fmt: skip
    same_as = of({
        "mark": TEXT, "run": maybe(TEXT), "names": maybe(many(name)), "except": many(name), "words": TEXT, "start": WHOLE, "end": WHOLE,
    })  # fmt: skip
    assumed = of({"name": name, "value": True, "via": {"enum": ["job", "shift"]}, "note": maybe(TEXT)}, {"exact": exact})
    move = of({
        "side": {"enum": [*facts.SIDES, None]}, "by": maybe({"type": "number", "minimum": 0}),
        "back": maybe({"type": "number", "minimum": 0}), "way": {"enum": ["in", "out", None]},
    })  # fmt: skip
    return {
        "name": name,
        "move": move,
        "fact": fact | {"allOf": by_name(("was", "withdrawn"))},
        "stated": stated | {"allOf": by_name(()), "description": "A fact that no note says: pressed, corrected, looked at."},
        "assumed": assumed | {"allOf": by_name(())},
        "earlier": earlier,
        "span": span,
        "open_item": item,
        "muffled": muffled,
        "unread": unread,
        "same_as": same_as,
    }


def entry(**more) -> dict:
    """A fitting of a note; `more` are the members that judging adds."""
    required = {"position": WHOLE, "facts": many(ref("fact.json#fact")), "open_items": many(ref("fact.json#open_item"))}
    optional = {
        "withdrawn": many(ref("fact.json#earlier")),
        "amends": {"const": True},
        "same_as": ref("fact.json#same_as"),
        "muffled": many(ref("fact.json#muffled"), minItems=1),
        "unread": many(ref("fact.json#unread"), minItems=1),
    }
    return of(required | more, optional)


SHIFT = maybe(of({"facts": many(ref("fact.json#fact"))}))
WITHDRAWS = maybe(
    of({"what": {"enum": ["last", "mark", "this"]}, "mark": maybe(TEXT), "words": TEXT, "start": WHOLE, "end": WHOLE})
)
READ = {"language": maybe(LANGUAGE), "language_from": {"enum": ["given", "ears", "words", None]}, "text": TEXT}
RULE = {"enum": list(limits.RULE_IDS)}
QUESTIONS = many({"type": "array", "prefixItems": [WHOLE, RULE], "minItems": 2, "maxItems": 2, "items": False}, maxItems=2)
ASSUMED, FINDINGS = many(ref("fact.json#assumed")), many(ref("finding.json"))


def finding() -> dict:
    verdict, show = {"enum": list(findings.VERDICTS)}, {"enum": list(findings.SHOWS)}
    required = {
        "rule": RULE, "piece": maybe(TEXT), "case": TEXT, "verdict": verdict, "weight": {"enum": list(findings.WEIGHTS)},
        "shows": show, "says": {"type": "string", "minLength": 1}, "do": maybe({"type": "string", "minLength": 1}), "limit": True, "tolerance": True,
        "reckoned": {"type": "object"}, "facts": many(ref("fact.json#name")),
        "leans_on": many(of({"name": ref("fact.json#name"), "via": {"enum": ["job", "shift"]}})),
        "asks": {"anyOf": [ref("fact.json#name"), {"const": "photo"}, NULL]},
        "source": {"type": "string", "minLength": 1}, "edition": SHA256,
    }  # fmt: skip
    row = of({
        "verdict": verdict, "case": TEXT, "shows": show, "reckoned": {"type": "object"}, "edition": SHA256, "at": TIME,
    })  # fmt: skip
    optional = {
        "evidence": many(TEXT, minItems=1),
        "stands": {"enum": [*review.STANDS, None]},
        "offers": many(TEXT, minItems=1),
        "changed_after_answer": {"const": True},
        "earlier": many(row, minItems=1),
        "wants": of({"decision": {"enum": list(review.STAYS_OPEN)}, "by": TEXT, "at": TIME, "reason": maybe(TEXT)}, {"owner": TEXT, "due": DAY}),
    }
    shown = [
        {"if": {"properties": {"verdict": {"const": "meets"}}}, "then": {"properties": {"shows": {"const": "file"}}}},
        {"if": {"properties": {"verdict": {"const": "departs"}, "weight": {"const": "must"}}}, "then": {"properties": {"shows": {"const": "flag"}}}},
    ]  # fmt: skip
    return of(required, optional, told="What a rule finds. Silence is never `meets`.") | {"allOf": shown}


def transcript() -> dict:
    word = of({
        "words": TEXT, "start": WHOLE, "end": WHOLE, "second": NUMBER, "until": NUMBER, "heard": SHARE,
        "alternatives": many(of({"words": TEXT, "heard": SHARE}, {"over": {"type": "integer", "minimum": 2}})),
    })  # fmt: skip
    doubt = of({"no_speech": SHARE, "mean_log_probability": NUMBER, "compression": NUMBER})
    unheard = of({"second": NUMBER, "until": NUMBER, "why": TEXT})
    return of({
        "engine": TEXT, "weights": TEXT, "settings": {"type": "object"}, "language": maybe(TEXT), "text": TEXT,
        "words": many(word), "doubt": doubt, "unheard": many(unheard),
    })  # fmt: skip


def photo(**more) -> dict:
    place = of({"latitude": NUMBER, "longitude": NUMBER, "accuracy_m": maybe(NUMBER)})
    return of({
        "sha256": SHA256, "taken_at": maybe(TIME), "taken_from": {"enum": ["phone", "exif", None]}, "place": maybe(place),
        "place_from": {"enum": ["phone", "exif", None]}, "tags": many(TEXT), "of": maybe(many(WHOLE)),
        "of_from": {"enum": ["only", "tag", "pressed", None]}, "readable": maybe(FLAG), **more,
    }, {"copy_of": SHA256})  # fmt: skip


def note_schema() -> dict:
    problem = of({"why": {"type": "string", "minLength": 1}, "cure": {"type": "string", "minLength": 1}})
    fitting = entry(piece=maybe(TEXT), assumed=ASSUMED, findings=FINDINGS)
    fitting["properties"]["of_piece"] = of({}, {"kind": TEXT, "mark": TEXT}) | {"minProperties": 1, "description": "what its piece is, where this note's words leave it unsaid: for a heading"}
    reading = of({
        "transcript": maybe(ref("transcript.json")), "text": maybe(TEXT), "fittings": {"type": "array"}, "at": TIME,
    })  # fmt: skip
    press = of({"id": TEXT, "position": WHOLE, "name": ref("fact.json#name"), "value": True, "by": TEXT, "at": TIME}, {"exact": True})
    required = {
        "id": UUID, "job": {"type": "string", "pattern": "^[a-z]{8}$"}, "spoken_by": TEXT, "handed_in_by": TEXT, "spoken_at": TIME, "sent_at": maybe(TIME),
        "received_at": TIME, "state": {"enum": list(note.STATES)}, "problem": maybe(problem), "answers": maybe(UUID),
        "pressed": of({"mark": maybe(TEXT), "kind": {"enum": [*facts.KINDS, None]}, "run": maybe(TEXT)}),
        "language": maybe(LANGUAGE), "language_from": READ["language_from"], "text": maybe(TEXT),
        "transcript": maybe(ref("transcript.json")), "fittings": many(fitting), "shift": SHIFT, "withdraws": WITHDRAWS,
        "questions": QUESTIONS, "photos": many(photo()), "photos_to_come": many(SHA256),
        "digests": of({"audio": many(SHA256), "photos": many(SHA256), "text": maybe(SHA256)}), "earlier": many(reading),
    }  # fmt: skip
    taken_back = of({"note": UUID, "positions": maybe(many(WHOLE))})
    optional = {
        "reason": TEXT, "as_lead": {"const": True}, "corrections": many(press), "confirmed": many(TEXT), "heard_right": {"const": True},
        "withdrawn_at": TIME, "counted_at": TIME, "sound_erased_at": TIME, "taken_back_by": many(taken_back, minItems=1), "reckoning": {"const": True},
        "copies": many(of({"sha256": SHA256, "copy_of": SHA256}), minItems=1), "unread": UNREAD,
    }  # fmt: skip
    unheard = {"if": {"properties": {"state": {"const": "unheard"}}}, "then": {"properties": {"problem": {"type": "object"}}}}
    return of(required, optional, told="GET /notes/ID.") | {"allOf": [unheard]}


def decision_body() -> tuple[dict, dict]:
    fact = {
        "type": "object", "required": ["name", "value"],
        "properties": {"name": ref("fact.json#name"), "value": True, "exact": True, "unit": True}, "additionalProperties": False, "allOf": by_name(()),
    }  # fmt: skip
    looked = of({"how": {"enum": list(review.WAYS_TO_LOOK)}, "facts": many(fact)})
    required = {
        "id": UUID, "rule": RULE, "edition": SHA256, "decision": {"enum": list(review.DECISIONS)}, "reason": maybe(TEXT),
        "corrected": maybe(ref("fact.json#stated")), "looked": maybe(looked), "granted_by": maybe(TEXT), "document": maybe(SHA256), "at": TIME,
    }  # fmt: skip
    return required, {"owner": TEXT, "due": DAY}


def decision() -> dict:
    required, optional = decision_body()
    wrong = {"if": {"properties": {"decision": {"const": "heard_wrong"}}}, "then": {"properties": {"corrected": {"type": "object"}}}}
    look = {"if": {"properties": {"decision": {"const": "looked"}}}, "then": {"properties": {"looked": {"type": "object"}}}}
    conceded = {"if": {"properties": {"decision": {"const": "concession"}}}, "then": {"properties": {"reason": {"type": "string", "minLength": 1}}}}
    return of(required | {"piece": TEXT, "by": TEXT}, optional) | {"allOf": [wrong, look, conceded]}


def piece() -> dict:
    looked = {
        "type": "object", "required": ["name", "value", "unit", "how", "by", "at", "decision"],
        "properties": {
            "name": ref("fact.json#name"), "value": True, "unit": True, "exact": True, "how": {"enum": [*review.WAYS_TO_LOOK, None]},
            "by": TEXT, "at": TIME, "decision": maybe(TEXT), "note": TEXT,
        },
        "additionalProperties": False, "allOf": by_name(()),
    }  # fmt: skip
    required = {
        "id": TEXT, "job": TEXT, "run": maybe(TEXT), "mark": maybe(TEXT), "notes": many(TEXT), "facts": many(ref("fact.json#fact")),
        "assumed": ASSUMED, "open_items": many(ref("fact.json#open_item")), "photos": many(photo(note=TEXT)), "findings": FINDINGS,
        "decisions": many(ref("decision.json")), "looked": many(looked),
    }  # fmt: skip
    return of(required, {"scrapped": {"const": True}}, told="GET /pieces/PIECE: what all notes of one fitting say.")


def documents() -> dict:
    """What `hear`, `read` and `check` print for several inputs: one element an input, in order."""
    bad = of({"input": TEXT, "error": {"type": "string", "minLength": 1}, "cure": {"type": "string", "minLength": 1}})

    def named(name):
        return {"allOf": [{"type": "object", "required": ["input"], "properties": {"input": TEXT}}, ref(name)]}

    return of({"documents": many({"anyOf": [bad, named("read.json"), named("check.json"), named("transcript.json")]}, minItems=2)})


def input_too(schema: dict, **more: dict) -> dict:
    """The bare document of one input, or the element of several, which names its input."""
    return schema | {"properties": schema["properties"] | {"input": TEXT} | more}


def schemas() -> dict[str, dict]:
    """File name -> schema."""
    shared = {"transcript": ref("transcript.json")}
    read = of(READ | {"fittings": many(entry()), "shift": SHIFT, "withdraws": WITHDRAWS}, shared | {"reason": TEXT, "unread": UNREAD})
    checked = entry(assumed=ASSUMED, findings=FINDINGS)
    check = of(
        READ | {"questions": QUESTIONS, "fittings": many(checked), "shift": SHIFT, "withdraws": WITHDRAWS},
        shared | {"reason": TEXT, "unread": UNREAD},
    )
    digests = of({"audio": many(SHA256), "photos": many(SHA256), "text": maybe(SHA256)})
    error = of({"error": {"type": "string", "minLength": 1}, "cure": {"type": "string", "minLength": 1}})
    asked, optional = decision_body()
    made = {
        "fact": {"$defs": fact_schemas(), "title": "Facts and their parts"},
        "transcript": input_too(transcript(), language_from=READ["language_from"]),
        "read": input_too(read),
        "finding": finding(),
        "check": input_too(check),
        "documents": documents(),
        "note": note_schema(),
        "notes": of({"notes": many(ref("note.json")), "next": maybe(TEXT)}, told="GET /notes: in order of receipt."),
        "piece": piece(),
        "log": of({"notes": many(ref("note.json")), "pieces": many(ref("piece.json"))}, {"date": DAY}, told="`logbook log`: notes as they were spoken, pieces by run and mark."),
        "decision": decision(),
        "decision-asked": of(asked, optional, told="The body of POST /pieces/PIECE/decisions."),
        "receipt": of({"id": UUID, "received_at": TIME, "digests": digests}, told="201 or 200 of POST /notes."),
        "error": error | {"description": "Every refusal: what was expected, what came, that nothing was lost; and the cure."},
    }
    titles = {"fact": "Facts and their parts"}
    return {
        f"{name}.json": {"$schema": DRAFT, "$id": f"{name}.json", "title": titles.get(name, name.replace("-", " ").capitalize())} | schema
        for name, schema in made.items()
    }


def written(schema: dict) -> str:
    return json.dumps(schema, indent=1, ensure_ascii=False) + "\n"


def main() -> int:
    for name, schema in schemas().items():
        (HERE / name).write_text(written(schema), encoding="utf-8")
    print(f"{len(schemas())} schemas written", file=sys.stderr)
    return 0


if __name__ == "__main__":
    sys.exit(main())
