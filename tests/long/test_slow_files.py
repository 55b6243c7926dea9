"""The files of tests/cases/hostile/files.toml that take seconds each: held by the limits of the decoding child, told in words."""

import os
import sys
import tomllib
from pathlib import Path

import pytest

sys.path.insert(0, os.path.dirname(os.path.dirname(__file__)))
import hostile  # noqa: E402

from logbook import intake  # noqa: E402
from logbook.decoding import pictures, sound  # noqa: E402
from logbook.mistake import Mistake  # noqa: E402

FILES = tomllib.loads((Path(hostile.__file__).parent / "cases" / "hostile" / "files.toml").read_text(encoding="utf-8"))
SLOW = [(field, case) for field in ("photo", "audio") for case in FILES[field] if case.get("slow")]


@pytest.mark.parametrize("field, case", [pytest.param(*one, id=one[1]["name"]) for one in SLOW])
def test_a_file_that_takes_long_is_held_to_the_limits(tmp_path, field, case):
    data = getattr(hostile, case["make"])(hostile.Trap())
    path = tmp_path / f"came.{intake.kind(data[: intake.HEAD])}"
    path.write_bytes(data)
    told = pictures.look_and_shrink(path) if field == "photo" else sound.decode(path)
    assert case["then"] == "either" or isinstance(told, Mistake) == (case["then"] == "unread"), told
