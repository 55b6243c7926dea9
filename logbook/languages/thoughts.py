"""The shape of what is said to oneself between two words of a note: a look at the gauge, a question that the next words answer."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Thoughts:
    """Regular expressions over lower-case words between two signs; a language without `opens` has no thoughts."""

    leads: frozenset[str] = frozenset()  # small words before a thought or a question
    opens: frozenset[str] = frozenset()  # first words of what may be a thought
    said: str = "(?!)"  # the whole of it tells nothing
    never: str = "(?!)"  # words of the trade: what holds one tells something
    # --- questions of his own that stand between commas
    asks: frozenset[str] = frozenset()  # first words of a question
    asked: str = "(?!)"  # how such a question begins
    asked_flatly: str = "(?!)"  # how a whole sentence begins that can only ask
    replies: str = "(?!)"  # how the words begin that answer it
    asked_what: str = "(?!)"  # how a question for a measure, a thing or a place begins
    told: str = "(?!)"  # how the words begin that tell it
    thing: str = "(?!)"  # one act or part by its name, as it is ticked off
    part: str = "(?!)"  # a part by its name, of which the question behind it may be
    answers: frozenset[str] = frozenset()  # first words of a yes or a no
    yes_or_no: str = "(?!)"  # an answer that is no more than that
    goes_on: str = "(?!)"  # how the words begin that belong to the answer before them
    # --- he looks again: of two words on one thing the second counts
    found_out: tuple[str, ...] = ()  # between the two
    since: tuple[str, ...] = ()  # behind the second, where it is done
    by_now: tuple[str, ...] = ()  # beside an act that was denied before: it was not done then, and is now
    good_now: tuple[str, ...] = ()  # behind an act that was denied before: how it looks since
    came_upon: tuple[str, ...] = ()  # in the sentence that denies it: he came upon it
    set_right: tuple[str, ...] = ()  # the whole sentence behind it: what he did about it
    at_once: tuple[str, ...] = ()  # within such an act: done when it was found
    gone_back: tuple[str, ...] = ()  # before what he did: he went to set right what was lacking
    done_to_it: str = "(?!)"  # behind that: it was done to what was told of, and to nothing besides
    back_then: tuple[str, ...] = ()  # in the sentence that denies it: of a time that is past, or of a part
    done_since: tuple[tuple[str, tuple[str, ...]], ...] = ()  # the whole of what he did about it, with the acts that it can be of; none: of any, where the words before tell of a time that is past
    told_so: tuple[str, ...] = ()  # before the first: it was only said or thought
