"""The pages people read say what the code does: verbs, rules and the two lines of the README."""

import re
import sys
from pathlib import Path

import pytest

from logbook import cli, job, rules
from logbook.findings.telling import source_says
from logbook.wording import say

HERE = Path(__file__).parent.parent
sys.path.insert(0, str(HERE / "tests" / "making"))
import write_checklist  # noqa: E402

README = (HERE / "README.md").read_text(encoding="utf-8")


def table(name: str) -> list[list[str]]:
    """The rows of the table between `<!-- name -->` and `<!-- /name -->`."""
    inside = README.split(f"<!-- {name} -->")[1].split(f"<!-- /{name} -->")[0]
    return [[cell.strip() for cell in line.strip("|").split(" | ")] for line in inside.strip().splitlines()[2:]]


def test_the_table_of_commands_is_that_of_the_program():
    assert table("verbs") == [[f"`logbook {verb}`", cli._first_line(verb)] for verb in cli.VERBS]


def test_the_table_of_rules_is_the_rule_book():
    expected = [
        [f"`{rule.id}`", say(f"rules.{rule.id}.holds", "en"), rule.weight, rule.silent, source_says(rule.source, "en")] for rule in rules.RULES
    ]
    assert table("rules") == expected


def test_the_page_of_the_check_list_is_that_of_the_code():
    assert (HERE / "docs" / "checklist.md").read_text(encoding="utf-8") == write_checklist.written()


def test_the_page_of_tags_holds_every_row_that_is_measured():
    sys.path.insert(0, str(HERE / "tests" / "bench"))
    import tags

    told = [line.strip("| ").split(" | ")[0] for line in (HERE / "docs" / "tags.md").read_text(encoding="utf-8").splitlines() if line.startswith("| ")]
    assert told[1:] == [name for name, *_ in tags.ROWS]


@pytest.mark.parametrize("line", ["demo line", "test line"])
def test_each_line_stands_once_and_is_one_line(line):
    block = README.split(f"<!-- {line} -->")[1].split("```")[1].strip().splitlines()
    assert len(block) == 2 and block[0] == "sh"


def test_every_command_in_the_readme_is_a_verb():
    named = set(re.findall(r"logbook ([a-z]+)\b", "\n".join(re.findall(r"`[^`]*`|```[^`]*```", README))))
    assert named <= set(cli.VERBS), named - set(cli.VERBS)


def test_every_picture_is_there():
    for path in re.findall(r"!\[[^]]*\]\(([^)]+)\)", README):
        assert (HERE / path).stat().st_size > 1000


def test_every_key_of_a_new_job_file_is_a_key_of_the_job():
    """The commented job file of an empty folder is itself a job file without a fault."""
    assert not isinstance(job.parse(job.template("abcdefgh", "New job", "UTC")), tuple)


def test_every_dependency_of_the_package_is_noticed_and_pinned():
    import tomllib

    project = tomllib.loads((HERE / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    pinned = {re.split(r"[=\[]", line)[0].lower().replace("_", "-") for line in (HERE / "constraints.txt").read_text().splitlines() if line[0] != "#"}
    wanted = [*project["dependencies"], *sum(project["optional-dependencies"].values(), [])]
    names = {re.split(r"[<>=!\[ ]", one)[0].lower().replace("_", "-") for one in wanted}
    assert names <= pinned, names - pinned
    notices = (HERE / "NOTICES.md").read_text(encoding="utf-8").lower()
    base = {re.split(r"[<>=!\[ ]", one)[0].lower() for one in project["dependencies"]} - {"av", "tzdata"}
    assert {name for name in base if name not in notices} == set()
