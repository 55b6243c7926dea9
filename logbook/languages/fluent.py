"""The shape of what is said between words and means nothing, and of the words that belong to their neighbours whatever sign stands between."""

from __future__ import annotations

from dataclasses import dataclass

from logbook.languages.articles import Articles


@dataclass(frozen=True)
class Fluent:
    """Words in lower case; a language without `sounds` has nothing smoothed."""

    sounds: frozenset[str] = frozenset()  # what is uttered while one thinks
    between_commas: tuple[tuple[str, ...], ...] = ()  # the same, where a comma stands on either side
    open: frozenset[str] = frozenset()  # no sentence and no part of a list ends with it
    binds: frozenset[str] = frozenset()  # few do; where one is heard to think right behind it, it is no end
    leans: frozenset[str] = frozenset()  # the same, right behind what is uttered
    answers: frozenset[str] = frozenset()  # of those, what may stand between two signs
    bound: frozenset[str] = frozenset()  # none begins with it
    verbs: frozenset[str] = frozenset()  # right behind a thing they tell of that thing
    things: frozenset[str] = frozenset()  # behind a "no" they are what there is none of, where that "no" may answer as well
    counts: frozenset[str] = frozenset()  # a number of one digit, as it is said
    counted: frozenset[str] = frozenset()  # behind such a number: what there are so many of
    numbered: frozenset[str] = frozenset()  # right before a number: it counts nothing
    says_again: frozenset[str] = frozenset()  # begins what is said twice by stumbling
    denies: frozenset[str] = frozenset()  # right before what is said twice: it is left out, and then told of
    again_at_once: frozenset[str] = frozenset()  # the same, where no sign stands between
    before_measure: frozenset[str] = frozenset()  # right before a number of any size, where one is heard to think between them
    assures: frozenset[str] = frozenset()  # right before or behind one of `denials` it assures and tells nothing: "it isn't actually taped"
    denials: frozenset[str] = frozenset()
    speakers: frozenset[str] = frozenset()  # the speaker himself, before what assures
    articles: Articles = Articles()
    # --- sentences that are none: the ear set a stop for a breath
    leads: frozenset[str] = frozenset()  # first words of `fragments`
    fragments: str = "(?!)"  # the whole of it goes on with the sentence before it; a regular expression over lower-case words
    begins_own: str = "(?!)"  # a fragment by its first word that is none: behind what it sets apart it tells an act of its own
    of_topic: str = "(?!)"  # the same, where the sentence before it only names the act (`topics`)
    topics: str = "(?!)"
    misspoke: frozenset[str] = frozenset()  # the whole of a sentence that takes back a number: the next number belongs to it
    begins_value: str = "(?!)"
    ends_value: str = "(?!)"  # what such a sentence takes back, up to its end
    # --- "and" that was heard, or said, where a breath was
    joins: frozenset[str] = frozenset()
    joined_leads: frozenset[str] = frozenset()  # first words of `joined_on`
    joined_on: str = "(?!)"  # the whole of it goes on with the words before it, as if a comma stood there
    joined_replies: frozenset[str] = frozenset()  # an act's own answer behind a comma: what follows begins anew
    left_out: str = "(?!)"  # the whole of it says of another piece that the act before it was not done to that one: the same
    both_asked: str = "(?!)"  # two acts and the one denial of both, up to its end; `at` is the sign before it
