"""The page of figures says what was kept of the last measurements, and what was kept names no machine."""

import json
import sys
from pathlib import Path

import pytest

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE / "bench"))
import figures  # noqa: E402

DOCS = HERE.parent / "docs"
KEPT = figures.load()


def test_the_page_and_its_plot_are_those_of_the_kept_data():
    assert KEPT, "nothing is kept"
    assert (DOCS / "figures.md").read_text("utf-8") == figures.written(KEPT)
    assert (DOCS / "figures.svg").read_text("utf-8") == figures.drawn(KEPT)


@pytest.mark.parametrize("part", KEPT)
def test_every_figure_tells_its_day_and_its_machine_and_no_name(part):
    row = KEPT[part]
    assert set(row) == {"date", "machine", "found"} and set(row["machine"]) == {"processor", "family", "bfloat16", "cores", "load"}
    assert figures.machine().keys() == row["machine"].keys()
    assert "/" not in json.dumps(row["machine"])


def test_a_busy_machine_is_told():
    row = {"date": "2026-01-02", "machine": {"processor": "A B", "family": "1", "bfloat16": True, "cores": 2, "load": 4.0}}
    assert "busy" in figures._where(row)
    row["machine"]["load"] = 0.4
    assert "busy" not in figures._where(row)
