"""`logbook rules`: the book for people and for programs, one rule of it, and a name that is none."""

import argparse
import json

import pytest
from test_schemas import problems

from logbook.cli import rules
from logbook.limits import RULE_IDS


def told(capsys, *arguments) -> tuple[int, str, str]:
    parser = argparse.ArgumentParser()
    rules.configure(parser)
    code = rules.run(parser.parse_args(arguments))
    said = capsys.readouterr()
    return code, said.out, said.err


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_whole_book_as_json(capsys, language):
    code, out, _ = told(capsys, "--json", "--language", language)
    document = json.loads(out)
    assert code == 0 and problems("rules.json", document) == []
    assert tuple(rule["id"] for rule in document["rules"]) == RULE_IDS


def test_one_rule_as_json(capsys):
    code, out, _ = told(capsys, "staple-spacing", "--json")
    assert code == 0 and problems("rules.json", json.loads(out)) == []
    assert json.loads(out)["limits"] == [{"name": "staple_spacing", "value": 2, "unit": "in", "of_the_job": False}]


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("tape-width",), ("tape_width_1 2-1/2 in", "AH119 page 5-3, as quoted in a secondary text", "CL-10", "good as said")),
        (("rubbed-down",), ("from memory of AH116 section IV, confirm in the printed table",)),
        (("transition-slope",), ("slope 2 in 12", "common practice, no published source")),
        (("staple-leg", "--language", "es"), ("sin llenar", "confirme en la tabla impresa", "no lo dijo")),
    ],
)
def test_what_people_read(capsys, arguments, words):
    code, out, _ = told(capsys, *arguments)
    flat = " ".join(out.split())
    assert code == 0 and all(word in flat for word in words), flat


def test_the_whole_book_for_people_names_every_rule(capsys):
    _, out, _ = told(capsys)
    assert [line.split(":")[0] for line in out.splitlines() if line and line[0] != " "] == list(RULE_IDS)


def test_the_limits_of_a_job(capsys, tmp_path):
    file = tmp_path / "job.toml"
    file.write_text('[limits]\nstaple_spacing = "1-1/3 in"\n', encoding="utf-8")
    code, out, _ = told(capsys, "staple-spacing", "--json", "--job", str(file))
    [limit] = json.loads(out)["limits"]
    assert code == 0 and (limit["value"], limit["exact"], limit["of_the_job"]) == (1.333, "4/3", True)


def test_a_name_that_is_none_offers_the_nearest(capsys, tmp_path):
    code, out, err = told(capsys, "stapel-spacing")
    assert (code, out) == (2, "") and "staple-spacing" in err
    code, out, _ = told(capsys, "--json", "--job", str(tmp_path / "none.toml"))
    assert code == 2 and set(json.loads(out)) == {"error", "cure"}
