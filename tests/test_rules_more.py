"""The rules about plan, run, hanging, metal, limits of use and photos: hand-made pieces and what each rule answers."""

import tomllib
from fractions import Fraction
from pathlib import Path

import pytest

from logbook import findings, job, pipeline, wording
from logbook.joining.values import read_value
from logbook.mistake import Mistake
from logbook.note import Photo
from logbook.piece import Assumed, Piece, PiecePhoto
from logbook.rules import BY_ID
from logbook.runs import Around, Elsewhere, Neighbour
from logbook.said import Fact
from logbook.schedule import Row

CASES = tomllib.loads((Path(__file__).parent / "cases" / "rules" / "more.toml").read_text(encoding="utf-8"))["case"]
HERE = tuple(dict.fromkeys(case["rule"] for case in CASES))
SCHEDULE = "mark,run,order,kind,inlet\n11,2,1,straight,12x10\n12,2,2,elbow,12x10\n"


def value(name: str, given: object) -> object:
    """A fact's value; a number written as text is exact ("97/8")."""
    exact = given if isinstance(given, str) or (isinstance(given, list) and any(isinstance(one, str) for one in given)) else None
    came = read_value(name, given)
    came = read_value(name, given, exact) if isinstance(came, Mistake) else came
    assert not isinstance(came, Mistake), (name, given)
    return came


def size(given: list | None) -> tuple | None:
    return None if given is None else tuple(Fraction(one) for one in given)


def photo(number: int, given: dict) -> PiecePhoto:
    seen = {name: given[name] for name in ("sharpness", "light") if name in given}
    of = None if given.get("loose") else (0,)
    held = Photo(given["sha256"], tags=tuple(given.get("tags", ())), of=of, readable=given.get("readable"), seen=seen)
    return PiecePhoto("note", held, given.get("minutes"), number)


def piece(case: dict) -> Piece:
    said = {name: value(name, given) for name, given in case["facts"].items()}
    return Piece(
        "piece", "aaaaaaaa", case.get("run"), said.get("mark"), ("note",),
        tuple(Fact(name, one, name, 0, len(name)) for name, one in said.items()),
        tuple(Assumed(name, value(name, given), "job") for name, given in case.get("standing", {}).items()),
        photos=tuple(photo(at, given) for at, given in enumerate(case.get("photos", ()), 1)),
        photos_without_piece=case.get("without_piece", 0),
        photos_to_come=case.get("to_come", 0),
        coming=tuple(f"to-come-{at}" for at in range(case.get("to_come", 0))),
        photos_overdue=case.get("overdue", False),
        checked_without_photos=case.get("checked_without_photos", False),
    )  # fmt: skip


def row(given: dict | None) -> Row | None:
    if given is None:
        return None
    numbers = {name: Fraction(given[name]) for name in ("airflow", "diameter") if name in given}
    sizes = {name: size(given.get(name)) for name in ("inlet", "outlet", "branch")}
    return Row(given["mark"], 2, kind=given.get("kind"), **sizes, **numbers)


def around(case: dict) -> Around:
    of_job = job.parse(case.get("job", ""))
    assert isinstance(of_job, job.Job), of_job
    return Around(
        job=of_job,
        row=row(case.get("row")),
        revision="A",
        scheduled=case.get("scheduled", "row" in case or "nearest" in case),
        nearest=tuple(case.get("nearest", ())),
        before=tuple(
            Neighbour(one["mark"], one.get("side"), size(one.get("inlet")), size(one.get("outlet")), one.get("leaves_by"), size(one.get("branch")))
            for one in case.get("before", ())
        ),
        elsewhere=tuple(Elsewhere(1, one["how"], one["mark"], "aa", "other") for one in case.get("elsewhere", ())),
    )


def named(case: dict) -> str:
    return f"{case['rule']} {case['is'] if isinstance(case['is'], str) else case['is'][1]}"


@pytest.mark.parametrize("case", CASES, ids=named)
def test_the_rule_answers(case):
    """Asked through the book's own loop: concern, silence and sentences with it."""
    found = [one for one in findings.judge(piece(case), around(case), (BY_ID[case["rule"]],))]
    if case["is"] == "not due" or case["is"][2:] == ["not shown"]:
        assert found == []
        if case["is"] != "not due":
            outcome = BY_ID[case["rule"]].judge(piece(case), around(case))
            assert [outcome.verdict, outcome.case] == case["is"][:2]
        return
    (one,) = found
    assert [one.verdict, one.case] == case["is"]
    assert {name: one.reckoned[name] for name in case.get("reckoned", {})} == case.get("reckoned", {})
    for language in wording.LANGUAGES:
        for text in (findings.says(one, language), findings.does(one, language) or ""):
            assert "{" not in text and "  " not in text
        assert findings.source_says(one.source, language)
        assert findings.does(one, language) or one.verdict != "departs"


@pytest.mark.parametrize("rule", HERE)
def test_every_rule_here_finds_fault_somewhere_and_none_somewhere(rule):
    answers = {"not due" if case["is"] == "not due" else case["is"][0] for case in CASES if case["rule"] == rule}
    assert answers & {"departs", "unsaid"} and answers & {"meets", "not due"}


def examples():
    for rule in HERE:
        for example in BY_ID[rule].examples:
            yield pytest.param(rule, example, id=f"{rule}: {example.words[:40]}")


@pytest.mark.parametrize("rule, example", list(examples()))
def test_the_spoken_example_holds(rule, example, tmp_path):
    (tmp_path / "schedule.csv").write_text(SCHEDULE, encoding="utf-8")
    of_job = job.parse(example.job, folder=tmp_path)
    document = pipeline.check(example.words, job=of_job, language=example.language)
    found = [one for entry in document["fittings"] for one in entry["findings"] if one["rule"] == rule]
    got = [(one["verdict"], one["case"]) for one in found]
    assert got == ([] if example.verdict is None else [(example.verdict, example.case)])
