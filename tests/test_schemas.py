"""The schemas of everything that leaves the process (JSON Schema, draft 2020-12), checked against code and examples.

That a schema is well formed is checked against the meta-schema of the draft itself.
"""

import copy
import json
import sys
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator, FormatChecker
from referencing import Registry, Resource

HERE = Path(__file__).parent
SCHEMAS = HERE.parents[0] / "schemas"
sys.path.insert(0, str(HERE / "making"))
import write_schemas  # noqa: E402

ALL = {path.name: json.loads(path.read_text(encoding="utf-8")) for path in sorted(SCHEMAS.glob("*.json"))}
REGISTRY = Registry().with_resources((name, Resource.from_contents(schema)) for name, schema in ALL.items())
DOCUMENTS = {p.stem: json.loads(p.read_text(encoding="utf-8")) for p in sorted((HERE / "cases" / "contract").glob("*.json"))}


def problems(name: str, document) -> list[str]:
    validator = Draft202012Validator(ALL[name], registry=REGISTRY, format_checker=FormatChecker())
    return [f"{'/'.join(map(str, e.absolute_path))}: {e.message[:200]}" for e in validator.iter_errors(document)]


def parts(document: dict):
    """(schema, document) of everything in an example file."""
    if "documents" in document:
        yield "documents.json", document
    elif "notes" in document:
        yield from (("note.json", note) for note in document["notes"])
        yield from (("piece.json", piece) for piece in document["pieces"])
        for act in document.get("acts", ()):
            yield "decision-asked.json", act["body"]
            yield ("decision.json" if act["status"] == 201 else "error.json"), act["answer"]
    else:
        yield ("note.json" if "state" in document else "check.json" if "questions" in document else "read.json"), document


PARTS = [(stem, schema, one) for stem, document in DOCUMENTS.items() for schema, one in parts(document)]


@pytest.mark.parametrize("name", ALL)
def test_a_schema_is_one(name):
    Draft202012Validator.check_schema(ALL[name])
    assert ALL[name]["$id"] == name


@pytest.mark.parametrize("name", write_schemas.schemas())
def test_no_schema_falls_behind_the_code(name):
    assert (SCHEMAS / name).read_text(encoding="utf-8") == write_schemas.written(write_schemas.schemas()[name])


@pytest.mark.parametrize(("stem", "schema", "document"), PARTS, ids=[f"{stem}-{schema}-{i}" for i, (stem, schema, _) in enumerate(PARTS)])
def test_the_examples_are_what_the_schemas_say(stem, schema, document):
    assert problems(schema, document) == []


WRONG = [
    ("a fact of another name", "06-check-one", ("fittings", 0, "facts", 0, "name"), "color"),
    ("a kind that is none", "06-check-one", ("fittings", 0, "facts", 0, "value"), "box kite"),
    ("a size of three", "06-check-one", ("fittings", 0, "facts", 3, "value"), [1, 2, 3]),
    ("a size as text", "06-check-one", ("fittings", 0, "facts", 3, "value"), "20x14"),
    ("a move to nowhere", "06-check-one", ("fittings", 0, "facts", 5, "value", 0, "side"), "up"),
    ("a yes in words", "06-check-one", ("fittings", 0, "facts", 7, "value"), "yes"),
    ("an unknown member", "06-check-one", ("fittings", 0, "facts", 0, "sure"), True),
    ("an edition that is no digest", "06-check-one", ("fittings", 0, "findings", 0, "edition"), "abc"),
    ("a verdict of no book", "06-check-one", ("fittings", 0, "findings", 0, "verdict"), "passed"),
    ("good as said that flags", "06-check-one", ("fittings", 0, "findings", 0, "shows"), "flag"),
    ("three questions", "06-check-one", ("questions",), [[0, "taped"], [0, "fastened"], [0, "trimmed"]]),
    ("a time without its offset", "12-unheard", ("spoken_at",), "2026-10-14T15:12:30"),
    ("a state of no note", "12-unheard", ("state",), "flagged"),
    ("unheard without a cure", "12-unheard", ("problem",), None),
    ("a digest in capitals", "12-unheard", ("digests", "audio", 0), "ED" * 32),
    ("a bad input without its cure", "07-check-documents", ("documents", 1, "cure"), ""),
]


@pytest.mark.parametrize(("why", "stem", "path", "value"), WRONG, ids=[row[0] for row in WRONG])
def test_a_schema_refuses(why, stem, path, value):
    document = copy.deepcopy(DOCUMENTS[stem])
    inside = document
    for step in path[:-1]:
        inside = inside[step]
    inside[path[-1]] = value
    [(schema, _)] = list(parts(document))
    assert problems(schema, document), why
