"""English that praises how the tape lies: "not one bubble in the tape". No tape is denied by it."""

from __future__ import annotations

_NONE = ("no", "not a", "not one", "not a single", "without a", "without any", "without one", "without a single", "hardly a", "nary a")
_MARKS = ("bubble", "air bubble", "wrinkle", "crease", "pucker", "ripple", "lump", "fishmouth", "fish mouth", "loose end", "loose edge")
_IN = ("in the tape", "in that tape", "in any of the tape", "in my tape", "anywhere in the tape", "under the tape", "on the tape")

LIES_WELL = "|".join(f"{none} {mark}{end} {where}" for none in _NONE for mark in _MARKS for end in ("", "s") for where in _IN)
