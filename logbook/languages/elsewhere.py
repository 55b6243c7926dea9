"""The shape of words that are of something else than a piece of the speaker's own: stock, paper, another's work, a story, a hope."""

from __future__ import annotations

from dataclasses import dataclass

CLAUSE, SENTENCE, ON, TO_COME, BACK, WORDS = "clause", "sentence", "on", "to come", "back", "words"


@dataclass(frozen=True)
class Aside:
    """Words and how far what they say of something else reaches.

    `words` is a regular expression over a clause in lower case; for CLAUSE, SENTENCE, ON and TO_COME it begins the clause (behind `leads`), for BACK and WORDS it
    stands anywhere in it. CLAUSE: this clause; SENTENCE: to the end of its sentence or to `own_again`; ON: until a piece is named as his own;
    TO_COME: this sentence, and where no piece was named before it the bare words behind it ("Vanes too.");
    BACK: the piece named before it in the sentence, with all that was said of it; WORDS: these words alone.
    """

    cues: frozenset[str]  # one of these words stands in every note that has it
    words: str
    reach: str
    why: str = "other"  # why it states nothing: a stance
    keeps: bool = False  # the piece that is named in it is his own all the same


@dataclass(frozen=True)
class Elsewhere:
    """`{who}` and `{name}` in the words of an aside are people and first names."""

    asides: tuple[Aside, ...] = ()
    leads: str = ""
    who: str = ""  # people
    comes_back: frozenset[str] = frozenset()  # before a piece of his own, in a clause of something else
    joins: frozenset[str] = frozenset()  # before what is his own again, within a clause
    own_again: str = "(?!)"
    own_piece: str = "(?!)"  # the same, behind a story
    own_deed: str = "(?!)"  # what he did, beside what is to come
    made_then: str = "(?!)"  # the words of a clause up to a time that may be past or to come, where he tells when he made it
    goes_then: str = "(?!)"  # how the words behind that time begin where they tell what comes at it
    fixing_holes: str = "(?!)"  # `<h>` are holes, which screws and rods go through
    unmet: str = "(?!)"  # the sentence behind a condition: what it hung on did not come
    another: str = "(?!)"  # how a clause begins that is of another piece than the one named before
    goes_on: str = "(?!)"  # what he did himself to a piece that another began
    harms: str = "(?!)"  # what another did to this piece is how it is
