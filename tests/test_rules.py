"""The rule book: spoken examples, silence, a day of good work, and a sentence for every case in both languages.

The table of rules is the project's own; where a limit comes from is told by each rule's source.
"""

import re
import statistics
import tomllib
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from log_cases import NOW, when
from rule_cases import SHARED, cases, sentences

from logbook import facts, findings, limits, pipeline, reading, wording
from logbook import job as jobs
from logbook.findings import SILENCES, WEIGHTS, Around, does, says, source_says
from logbook.note import Note
from logbook.piece import Piece
from logbook.rules import BY_ID, RULES, book, book_digest, judge, of_the_job
from logbook.said import Fact

CASES = Path(__file__).parent / "cases" / "rules"
LANGUAGES = wording.LANGUAGES
EXAMPLES = [(rule, example) for rule in RULES for example in rule.examples]
SCHEDULE = "mark,run,order,kind,inlet,outlet\n11,2,1,straight,12x10,\n12,2,2,elbow,12x10,\n13,2,3,straight,12x10,\n"
ABSENCE = {"nothing-open"}  # about work that was said to be left: where nothing was said, nothing is left


def job_of(text: str, folder: Path) -> jobs.Job:
    (folder / "schedule.csv").write_text(SCHEDULE, encoding="utf-8")
    job = jobs.parse(text, folder=folder)
    assert isinstance(job, jobs.Job), job
    return job


# --- the book


def test_the_book_stands_in_its_order():
    assert tuple(rule.id for rule in RULES) == limits.RULE_IDS
    assert len(BY_ID) == len(RULES) == 52


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.id)
def test_a_rule_is_whole(rule):
    assert rule.weight in WEIGHTS and rule.silent in SILENCES
    assert set(rule.concerns) <= set(facts.KINDS)
    assert set(rule.limits) <= set(limits.BY_NAME)
    assert set(rule.may_stand) <= {"job", "shift", "phrase", "tag"}
    assert rule.source.confidence in ("a", "a*", "b", "b?", "c")
    assert not (rule.source.confidence == "b?" and rule.weight == "must"), "a weak memory is never a must"
    for language in LANGUAGES:
        assert source_says(rule.source, language)


# --- spoken examples, from the words to the verdict


@pytest.mark.parametrize(("rule", "example"), EXAMPLES, ids=[f"{rule.id}: {example.words[:50]}" for rule, example in EXAMPLES])
def test_a_spoken_example(rule, example, tmp_path):
    job = job_of(example.job, tmp_path) if example.job else jobs.DEFAULT
    document = pipeline.check(example.words, job=job, language=example.language)
    found = [f for f in document["fittings"][-1]["findings"] if f["rule"] == rule.id]
    assert [f["verdict"] for f in found] == ([] if example.verdict is None else [example.verdict])
    assert example.case is None or found[0]["case"] == example.case
    assert all(f["weight"] in WEIGHTS and f["says"] and f["source"] for f in found)


def test_every_rule_that_is_about_words_has_examples():
    assert {rule.id for rule in RULES if not rule.examples} == {rule.id for rule in RULES if rule.id.startswith("photo-")} | {"looked-agrees"}, "pictures and looks are no words of the note"


@pytest.mark.parametrize("case", tomllib.loads((CASES / "spoken.toml").read_text(encoding="utf-8"))["case"], ids=lambda case: case["says"][:60])
def test_a_spoken_case(case, tmp_path):
    job = job_of(case["job"], tmp_path) if "job" in case else jobs.DEFAULT
    document = pipeline.check(case["says"], job=job, language=case.get("language", "en"))
    found = {f["rule"]: f for f in document["fittings"][-1]["findings"]}
    for rule, expected in case["finds"].items():
        assert (found[rule]["verdict"] + " " + found[rule]["case"] if rule in found else "not due") == expected, rule
    assert all(found[rule]["shows"] == expected for rule, expected in case.get("shows", {}).items())


# --- silence


def test_silence_never_meets():
    for kind in (None, *facts.KINDS):
        said = () if kind is None else (Fact("kind", kind, kind, 0, 1),)
        for mark in (None, "7"):
            known = said + (() if mark is None else (Fact("mark", mark, mark, 2, 3),))
            found = judge(Piece("p", "aaaaaaaa", None, mark, ("n",), known), Around())
            about_the_mark = {"mark-said"} if mark else set()
            assert {f.rule for f in found if f.verdict == "meets"} <= ABSENCE | about_the_mark, kind
            assert all(not f.facts or set(f.facts) <= {"kind", "mark"} for f in found)


GOOD = [line for line in (CASES / "good_day.txt").read_text(encoding="utf-8").splitlines() if line and line[0] != "#"]
CLOSED_OUR_WAY = jobs.parse('[phrases]\n"closed our way" = ["stapled", "taped", "rubbed_down"]\n')


def log_of(lines):
    """The lines as notes of one installer, six minutes apart, and the log they make."""
    notes = []
    for place, line in enumerate(lines):
        at = when("07:00") + timedelta(minutes=6 * place)
        words = reading.read(line.removeprefix("shift: "), language="en", job=CLOSED_OUR_WAY)
        notes.append(Note(f"n{place}", CLOSED_OUR_WAY.id, "ana", "ana", at, at, at, "answered", reading=words, answered_at=at + timedelta(seconds=20)))
    return notes, pipeline.reckon(notes, (), CLOSED_OUR_WAY, NOW, without_photos=True)


WHOLE = log_of([re.sub(r"[\[\]]", "", line) for line in GOOD])
WHOLE_PIECES = list(WHOLE[1].pieces.values())


@given(st.data())
def test_saying_less_never_makes_it_good(data):
    """Whatever is left out of a good note: no rule turns good that was not good before."""
    piece = data.draw(st.sampled_from(WHOLE_PIECES))
    kept = data.draw(st.lists(st.booleans(), min_size=len(piece.facts), max_size=len(piece.facts)))
    less = replace(piece, facts=tuple(fact for fact, keep in zip(piece.facts, kept) if keep))
    less = replace(less, mark=less.value("mark"), run=less.value("run"))

    def good(one):
        return {f.rule for f in judge(one, Around(job=CLOSED_OUR_WAY)) if f.verdict == "meets"}

    assert good(less) <= good(piece)


def test_every_fact_of_a_good_day_that_goes_takes_its_rules_along():
    """One fact less: each rule that had used it as the fact that decides is no longer good on the same words."""
    for piece in WHOLE_PIECES:
        before = {f.rule: f for f in judge(piece, Around(job=CLOSED_OUR_WAY))}
        for fact in piece.facts:
            less = replace(piece, facts=tuple(one for one in piece.facts if one is not fact))
            for after in judge(less, Around(job=CLOSED_OUR_WAY)):
                assert fact.name not in after.facts
                assert after.verdict != "meets" or before[after.rule].verdict == "meets"


# --- a day of good work, and the same day with an act missing


def seconds(line: str) -> float:
    return len(re.sub(r"[\[\]]", "", line).split()) / 2.4  # a brisk 145 words a minute


def test_the_day_is_as_long_as_people_talk():
    assert len(GOOD) == 31 and GOOD[0].startswith("shift: ")
    assert all(14 <= seconds(line) <= 20 for line in GOOD[1:])


def test_a_day_of_good_work_bothers_nobody():
    notes, log = WHOLE
    found = [log.findings_of(note.id, 0) for note in notes[1:]]
    assert sum(findings.flagged(one) for one in found) <= 10
    assert statistics.median(len(log.questions.get(note.id, ())) for note in notes[1:]) <= 1
    assert [(f.rule, f.case) for one in found for f in one if f.verdict == "departs"] == []


ACTS = {"closed our way": ("fastened", "taped"), "vanes": ("elbow-vanes",), "rubbed": ("rubbed-down",)}


def test_the_same_day_with_an_act_missing_is_seen_thirty_times():
    notes, log = log_of([re.sub(r"\[.*?\]", "", line) for line in GOOD])
    for note, line in zip(notes[1:], GOOD[1:]):
        found = {f.rule: f for f in log.findings_of(note.id, 0)}
        assert findings.flagged(found.values()) or log.questions.get(note.id), line
        act = re.search(r"\[(.*?)\]", line)[1]
        [left_out] = [rules for word, rules in ACTS.items() if word in act]
        for rule in left_out:
            assert rule not in found or found[rule].verdict != "meets", line


# --- words


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.id)
def test_every_case_has_its_sentence(rule):
    own = cases(rule)
    assert own, "no case found in the code"
    for language in LANGUAGES:
        for part in ("name", "holds"):
            assert wording.has(f"rules.{rule.id}.{part}", language)
        for case in own | sentences(rule):
            shared = case in SHARED and wording.has(f"rules.any.{case}.says", language)
            assert shared or wording.has(f"rules.{rule.id}.{case}.says", language), (case, language)


def test_no_sentence_is_left_over():
    told = {tuple(key.split(".")[1:3]) for key in wording.texts("en") if key.startswith("rules.") and key.count(".") == 3}
    known = {(rule.id, case) for rule in RULES for case in cases(rule) | sentences(rule) | SHARED}
    known |= {("any", case) for case in SHARED}
    assert told - known == set()


def test_every_word_and_document_that_rules_name_is_there():
    code = "\n".join(path.read_text(encoding="utf-8") for path in Path(jobs.__file__).parents[1].joinpath("rules").glob("*.py"))
    names = set(re.findall(r'Word\("([^"]+)"\)', code))
    heads = set(re.findall(r'Word\(f"([a-z]+-)', code))
    for language in LANGUAGES:
        assert all(wording.has(f"rules.word.{name}", language) for name in names), names
        keys = [key for key in wording.texts(language) if key.startswith("rules.word.")]
        assert all(any(key.startswith(f"rules.word.{head}") for key in keys) for head in heads), heads
        for kind in facts.KINDS:
            assert wording.has(f"rules.word.kind-{kind}", language)
        for value in facts.BY_NAME["facing_damage"].values:
            assert wording.has(f"rules.word.damage-{value}", language)
        for value in facts.BY_NAME["repair_method"].values:
            assert wording.has(f"rules.word.method-{value}", language)
        for rule in RULES:
            assert not rule.source.document or wording.has(f"rules.document.{rule.source.document}", language)


def test_a_case_is_told_in_both_languages_without_a_gap():
    for rule, example in EXAMPLES:
        read = reading.read(example.words, language=example.language)
        if not read.fittings:
            continue
        at = when("08:00")
        log = pipeline.reckon([Note("n", "aaaaaaaa", "a", "a", at, at, at, "answered", reading=read, answered_at=at)], (), jobs.DEFAULT, NOW)
        for finding in log.findings_of("n", 0):
            for language in LANGUAGES:
                told = " ".join(filter(None, (says(finding, language), does(finding, language))))
                assert not re.search(r"[{}]|\bNone\b|\bFraction\b| {2}", told), (finding.rule, told)


# --- the book as people and programs get it


def test_the_book_follows_the_job():
    job = jobs.parse('[limits]\nstaple_spacing = "3 in"\n[weights]\nstaple-spacing = "should"\n')
    assert isinstance(job, jobs.Job), job
    [row] = [one for one in book(job, "es") if one["id"] == "staple-spacing"]
    assert (row["limits"][0]["value"], row["limits"][0]["of_the_job"], row["weight"]) == (3, True, "should")
    assert book_digest(job) != book_digest(jobs.DEFAULT)


def test_what_the_job_itself_says_is_judged_once(tmp_path):
    job = job_of('[runs.2]\nstatic_pressure = 3\nair_temperature = 120\n[[schedule]]\nfile = "schedule.csv"\nrevision = "A"\n', tmp_path)
    found = {(about, f.rule): f for about, f in of_the_job(job)}
    assert found["2", "static-pressure"].verdict == "departs" and found["2", "static-pressure"].weight == "must"
    assert found["2", "air-temperature"].verdict == "meets"
    assert found["2", "span-unreinforced"].case == "table-empty"
    assert found["12", "aspect-ratio"].verdict == "meets"
    assert all(says(finding, language) for finding in found.values() for language in LANGUAGES)
