"""A record is the standard library's frozen dataclass in all but the time it takes to make one (docs.python.org, dataclasses)."""

from __future__ import annotations

import dataclasses

import pytest

from logbook.record import record


@record
class Cut:
    mark: str
    at: int = 3
    seen: list = dataclasses.field(default_factory=list)


@dataclasses.dataclass(frozen=True)
class Plain:
    mark: str
    at: int = 3
    seen: list = dataclasses.field(default_factory=list)


def test_it_holds_what_a_frozen_dataclass_holds():
    assert dataclasses.asdict(Cut("4")) == dataclasses.asdict(Plain("4"))
    assert dataclasses.asdict(Cut("4", at=5, seen=[1])) == dataclasses.asdict(Plain("4", 5, [1]))
    assert repr(Cut("4")) == repr(Plain("4")).replace("Plain", "Cut")
    assert Cut("4") == Cut("4", 3) != Cut("5")


def test_it_cannot_be_changed_and_is_replaced_whole():
    one = Cut("4")
    with pytest.raises(dataclasses.FrozenInstanceError):
        one.mark = "5"
    assert dataclasses.replace(one, mark="5") == Cut("5") and one.mark == "4"


def test_what_is_made_anew_is_shared_by_none():
    one, other = Cut("4"), Cut("4")
    one.seen.append(1)
    assert other.seen == []


@pytest.mark.parametrize("wrong", [{}, {"mark": "4", "colour": "red"}])
def test_a_wrong_member_is_refused_as_ever(wrong):
    with pytest.raises(TypeError):
        Cut(**wrong)
