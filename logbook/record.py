"""Frozen records that are made by the hundred for every note.

A frozen dataclass sets each of its members through `object.__setattr__`; here they go straight into the record's own dictionary, which takes less than half
the time. All else is the dataclass as the standard library makes it: it cannot be changed, compares by value, and `replace` and `fields` work.
"""

from __future__ import annotations

from dataclasses import MISSING, dataclass, fields
from typing import TypeVar, dataclass_transform

T = TypeVar("T")


@dataclass_transform(frozen_default=True)
def record(cls: type[T]) -> type[T]:
    """A frozen dataclass without slots and without a `__post_init__`."""
    made = dataclass(frozen=True)(cls)
    asked, sets, known = [], [], {"unset": MISSING}
    for one in fields(made):
        name = one.name
        if one.default_factory is not MISSING:
            known[f"make_{name}"] = one.default_factory
            asked.append(f"{name}=unset")
            sets.append(f"_kept[{name!r}] = make_{name}() if {name} is unset else {name}")
            continue
        if one.default is not MISSING:
            known[f"plain_{name}"] = one.default
        asked.append(name if one.default is MISSING else f"{name}=plain_{name}")
        sets.append(f"_kept[{name!r}] = {name}")
    space = dict(known)
    exec(f"def __init__(self, {', '.join(asked)}):\n _kept = self.__dict__\n " + "\n ".join(sets), space)
    made.__init__ = space["__init__"]
    return made
