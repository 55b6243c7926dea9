"""The ways to say a thing, written as what may stand in each place of it."""

from __future__ import annotations


def ways(*places: str) -> str:
    """Every way to say one of each place, in order: "a|b" and "c" give "a c|b c"; nothing may stand in a place ("|the")."""
    made = [""]
    for some in places:
        made = [f"{before} {word}".strip() for before in made for word in some.split("|")]
    return "|".join(made)
