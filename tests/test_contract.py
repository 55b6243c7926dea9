"""The example documents of the contract: each is read into records and written again, and nothing is lost."""

import json
from pathlib import Path

import pytest

from logbook import said
from logbook import transcript as transcripts
from logbook.findings import from_json as finding_from_json
from logbook.findings import to_json as finding_to_json
from logbook.piece import decision_from_json, decision_to_json
from logbook.pipeline.documents import answer_to_json, assumed_document, sheet_to_json
from logbook.pipeline.reading_back import answer_from_json, assumed_from_json, sheet_from_json

EXAMPLES = sorted((Path(__file__).parent / "cases" / "contract").glob("*.json"))
DOCUMENTS = {path.stem: json.loads(path.read_text(encoding="utf-8")) for path in EXAMPLES}
NOTES = [(name, n) for name, doc in DOCUMENTS.items() for n in ([doc] if "state" in doc else doc.get("notes", []))]
PIECES = [(name, p) for name, doc in DOCUMENTS.items() for p in doc.get("pieces", [])]
ACTS = [(name, act) for name, doc in DOCUMENTS.items() for act in doc.get("acts", [])]
READ = [(n, d) for n, doc in DOCUMENTS.items() for d in doc.get("documents", [doc]) if "fittings" in d and "state" not in d]


def test_all_twelve_are_here():
    assert len(EXAMPLES) == 12
    assert (len(NOTES), len(PIECES), len(ACTS), len(READ)) == (12, 6, 4, 8)


@pytest.mark.parametrize(("name", "doc"), NOTES, ids=[f"{n}-{d['id'][:4]}" for n, d in NOTES])
def test_a_note_comes_back_as_it_was(name, doc):
    assert answer_to_json(answer_from_json(doc), "en") == doc


@pytest.mark.parametrize(("name", "doc"), PIECES, ids=[f"{n}-{d['mark']}" for n, d in PIECES])
def test_a_piece_comes_back_as_it_was(name, doc):
    assert sheet_to_json(sheet_from_json(doc), "en") == doc


@pytest.mark.parametrize(("name", "act"), [(n, a) for n, a in ACTS if a["status"] == 201])
def test_a_decision_comes_back_as_it_was(name, act):
    assert decision_to_json(decision_from_json(act["answer"])) == act["answer"]


@pytest.mark.parametrize(("name", "doc"), READ, ids=[f"{n}-{d.get('input', '')}" for n, d in READ])
def test_a_reading_comes_back_as_it_was(name, doc):
    again = said.reading_to_json(said.reading_from_json(doc))
    bare = [{k: v for k, v in fitting.items() if k not in ("assumed", "findings")} for fitting in doc["fittings"]]
    assert again == {k: v for k, v in doc.items() if k not in ("questions", "transcript", "input")} | {"fittings": bare}
    for fitting in doc["fittings"]:
        for word in fitting.get("assumed", ()):
            assert assumed_document(assumed_from_json(word)) == word
        for finding in fitting.get("findings", ()):
            assert finding_to_json(finding_from_json(finding), "en") == finding


@pytest.mark.parametrize("name", [name for name, doc in DOCUMENTS.items() if doc.get("transcript")])
def test_a_transcript_comes_back_as_it_was(name):
    doc = DOCUMENTS[name]["transcript"]
    assert transcripts.to_json(transcripts.from_json(doc)) == doc
