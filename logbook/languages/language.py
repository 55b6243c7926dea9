"""The shape of a language's lexicon. Grammar (which concepts make a fact) is one for all languages.

A concept is an upper-case name used by the patterns of `logbook.reading`; the lexicon says which words and
phrases stand for it. Words are written lower case; a word without accents also matches with them, one written
with accents matches only so.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from logbook.languages.all_but import AllBut
from logbook.languages.number_set_right import NumberSetRight
from logbook.languages.bare_names import BareNames
from logbook.languages.clauses import Clauses
from logbook.languages.elsewhere import Elsewhere
from logbook.languages.fluent import Fluent
from logbook.languages.left import Left
from logbook.languages.lettered import Lettered
from logbook.languages.calques import Calques
from logbook.languages.mastic_as_tape import MasticAsTape
from logbook.languages.measured_next import MeasuredNext
from logbook.languages.named_ahead import NamedAhead
from logbook.languages.not_that_one import NotThatOne
from logbook.languages.plainer import Plainer
from logbook.languages.pointed import Pointed
from logbook.languages.several import Several
from logbook.languages.run_on import RunOn
from logbook.languages.small import Small
from logbook.languages.thumbs import Thumbs
from logbook.languages.thoughts import Thoughts
from logbook.languages.together import Together
from logbook.languages.told_at_last import ToldAtLast
from logbook.languages.told import LoneNumbers, Told
from logbook.languages.turns import Turns
from logbook.languages.turns_of_words import WholeTurns


@dataclass(frozen=True)
class Misheard:
    """What ears write for a trade word: `words` read as `meant` where a neighbour leaves one reading.

    `before` and `after` are concepts one of which must stand within `near` items on that side (both given:
    either side will do). A mishearing without neighbours is a spelling that means nothing else.
    """

    words: str
    meant: str
    concept: str
    before: tuple[str, ...] = ()
    after: tuple[str, ...] = ()
    near: int = 2
    plain: bool = False  # an everyday name and no mishearing: "joints four and five"
    lost_ending: bool = False  # an act that lost its "-d": only behind a piece that was named, and never as an order or a plan


@dataclass(frozen=True)
class Numbers:
    """Number words: `ones` and `teens` stand alone or after tens, `scales` multiply what stands before."""

    ones: Mapping[str, int]
    teens: Mapping[str, int]
    tens: Mapping[str, int]
    hundreds: Mapping[str, int]
    scales: Mapping[str, int]
    halves: Mapping[str, tuple[int, int]]  # a fraction that needs no number before it
    parts: Mapping[str, int]  # denominators: eighths
    joins: tuple[str, ...]  # between whole and fraction, and between tens and ones
    articles: tuple[str, ...]  # one of something
    point: tuple[str, ...]
    zero_between: tuple[str, ...] = ()  # one oh five


@dataclass(frozen=True)
class Afar:
    """Words that tell of an act or a part whose noun stands in other words: regular expressions over the lower-case words of a part of a clause.

    `none`, `riddles` and `attributed` are the whole part, the others are found in it. `{noun}` is what `nouns` find.
    """

    leads: str = ""
    none: tuple[str, ...] = ()
    riddles: tuple[str, ...] = ()
    it: str = "it"  # stands in them for the piece
    asks_riddle: str = "(?!)"  # without which no riddle is asked of a piece by its name
    idle: tuple[str, ...] = ()
    almost: tuple[str, ...] = ()
    similes: tuple[str, ...] = ()
    radio: tuple[tuple[str, bool], ...] = ()
    ongoing: tuple[str, ...] = ()
    nobody: tuple[str, ...] = ()
    never_without: tuple[str, ...] = ()
    nor_this: tuple[str, ...] = ()
    clefts: tuple[str, ...] = ()
    attributed: tuple[str, ...] = ()
    had_none: str = "(?!)"  # he had none of them to put
    faulty: frozenset[str] = frozenset()  # before a noun: it is not the noun that there was none of, but the fault
    own_instead: tuple[str, ...] = ()


@dataclass(frozen=True)
class Forms:
    """Words of forms and tags: `tags` bear a piece's number, `tells` stand between a tag and it; `alone` and `before_measure` are what thumbs write."""

    tags: frozenset[str] = frozenset()
    asked: tuple[tuple[str, frozenset[str]], ...] = ()  # (concept, questions he answers himself): labels
    pieces: frozenset[str] = frozenset()  # labels of how many an elbow is made of
    tells: frozenset[str] = frozenset()
    alone: tuple[tuple[str, frozenset[str]], ...] = ()  # (concept, words) that are a sentence by themselves
    before_measure: tuple[tuple[str, frozenset[str]], ...] = ()
    as_drawn: tuple[str, ...] = ()  # what is drawn is what was made; regular expressions
    planned: tuple[str, ...] = ()  # work that has not begun, behind the word of a plan: no piece is there yet
    not_begun: frozenset[str] = frozenset()  # behind "haven't": there is no piece yet
    unsaid: tuple[tuple[str, object, str], ...] = ()  # (fact, value, regular expression) that takes this value back
    too_late: str = ""  # right before the words that the facing was wiped: it was taped by then
    acts: tuple[tuple[str, object, str], ...] = ()  # (fact, value, regular expression over the words of a part of a clause)
    turns: Mapping[str, int] = field(default_factory=dict)  # elbows named by their turn: "nineties"
    in_twos: str = "(?!)"  # numbers that are a spacing behind "on": "on twos"
    numbered: tuple[tuple[str, frozenset[str]], ...] = ()  # a kind, where a number or a mark stands right behind
    lettered: Mapping[str, str] = field(default_factory=dict)  # a letter that names a shape behind an article, and the concept
    same_noun: tuple[tuple[str, str], ...] = ()  # (article, nouns it agrees with): before a bare number it stands for such a noun told right before
    before_lettered: frozenset[str] = frozenset()  # articles behind which such a letter and a number are the shape and its number, and no mark
    everyday: tuple[tuple[str, frozenset[str]], ...] = ()  # an everyday word for a piece, right before its number wherever that stands
    first: tuple[tuple[str, frozenset[str]], ...] = ()  # of a sentence, right before a number
    earlier: frozenset[str] = frozenset()  # behind such a measure
    misspoke: str = ""  # right before a measure that the speaker owns to have told wrong
    lays: frozenset[str] = frozenset()  # of who learned the language late, behind the thing that was put on: "tape I put"
    calques: Calques = Calques()
    wipes: frozenset[str] = frozenset()  # behind "I no": it was not wiped
    heats: frozenset[str] = frozenset()  # the same: it was not warmed
    has_not: frozenset[str] = frozenset()  # before a thing: there is none of it
    nothing: frozenset[str] = frozenset()  # a second denial, which denies no more than the first: "I no clean nothing"
    others: frozenset[str] = frozenset()  # who else may have done it, or nobody
    nobody: frozenset[str] = frozenset()
    spaces: frozenset[str] = frozenset()  # before "of" and a small measure, beside a joint or `between`: the joint is open by so much
    between: frozenset[str] = frozenset()
    steps: frozenset[str] = frozenset()  # before "I" and an act: one after another
    there: frozenset[str] = frozenset()  # behind a thing it asks nothing: it is on
    enters: frozenset[str] = frozenset()  # behind a side, before a measure: it comes in by so much
    well: frozenset[str] = frozenset()  # behind an act: how it was done
    always: str = "(?!)"  # anywhere in a note: what he tells in the present is a habit
    habit: str = ""  # in the sentence or the one before it: words for what is done time and again; none: acts are never told in the present
    swap_verbs: str = "(?!)"  # one of these stands where a thing was taken off or changed for another
    swap_nouns: tuple[tuple[str, frozenset[str]], ...] = ()  # (concept, words) of the group `noun` of such a pattern
    swaps: tuple[str, ...] = ()  # what was taken off and what was put on; see reading/swapped.py
    beyond: str = ""  # right before a measure: it is more than that, or less, and how much is not said
    and_more: str = ""  # right behind a measure, the same
    has_to_do: str = ""  # the words from "have" to the act that waits: "have the last foot to rub down"
    work_to_do: str = ""  # the words from "there's" to the work that is named and waits: "there's the rubbing to do"
    thought: str = ""  # before a measure: so he thought, or said before
    thought_so: str = ""  # behind it, the same
    found_by: str = ""  # right before the measure that he found in its place
    above: str = ""  # right before a pressure, a slope or how hot the air is, the same
    instead: frozenset[str] = frozenset()  # between what was used and what was not: "tape instead of mastic"


@dataclass(frozen=True)
class Ends:
    """Words beside "female" and "male" that tell what is said of the end: regular expressions over lower-case words."""

    layout: str = ""  # lines were laid out from it
    leads: str = ""  # right before the end where it is laid out from
    from_there: str = ""  # the next words, where the end was named before
    enters: str = ""  # the air comes in by it
    leaves: str = ""
    air: str = ""
    acts: str = ""  # other work, that begins at an end too
    to_source: str = ""  # it looks to where the air comes from; on a return or an exhaust the air leaves there
    to_rooms: str = ""
    merely_known: str = ""  # right before the way the step looks: what the speaker only knows
    wished: str = ""  # right behind the way that the step looks: that is how it was wanted
    known: str = ""  # between the step and the way it looks: how it ought to
    turned_out: str = ""  # later in the sentence: how it came out (`to`)
    mine: str = ""  # how a part begins that sets the speaker's own against what was told before it


@dataclass(frozen=True)
class State:
    """How a thing was left, in words that name no act: "the tabs are flopping", "the hole's still there".

    `words` are found in a part of a clause, lower case, with no denial right before them; one of the concepts `things` stands in the same part, or
    (`apart`) shortly before it. The words are used up; with `uses` the thing is too, so that its name alone states nothing.
    """

    fact: str
    value: object
    words: tuple[str, ...]
    things: tuple[str, ...] = ()
    kinds: tuple[str, ...] = ()
    apart: bool = False
    uses: bool = False
    pending: bool = False  # work still to do: an open item too
    righted: str = ""  # in the words behind: it came right after all
    cues: tuple[str, ...] = ()  # letters without which none of the words is there
    part: str = ""  # "side": it is so of a part of the piece; "whole": of the piece as it stands


@dataclass(frozen=True)
class ActWords:
    """The forms in which an act is named, and the frames that say of any of them that it was done, was not, is still to do, or how far it went.

    `forms` has a row an act: (fact, noun, verb, -ing, participle), each a regular expression; in the frames `{noun}`, `{verb}`, `{doing}` and `{done}`
    stand for them, so that one frame is read for every act. Frames are read over the lower-case words of a clause.
    """

    forms: tuple[tuple[str, str, str, str, str], ...] = ()
    looks: str = "(?!)"  # a sentence without one of these words has nothing of `of_sentence`
    hints: str = ""  # a clause with none of these words is not looked at
    undone: tuple[str, ...] = ()  # it was not done
    partly: tuple[str, ...] = ()  # it was done in part
    to_do: tuple[str, ...] = ()  # it is still to do
    lists: str = ""  # a clause that opens a list of what is still to do: "to do:"
    of_one: tuple[tuple[str, object, str], ...] = ()  # (fact, value, words) of one act alone
    of_sentence: tuple[tuple[str, object, str], ...] = ()  # the same, over the words of a whole sentence: what ails and what came of it
    across: tuple[tuple[str, str], ...] = ()  # (undone, partly, to_do or against, frame) over the words of a whole sentence; "against": not done, though it begins as what was to be or with a question's word
    begins_anew: str = "(?!)"  # what is denied before it does not reach behind it: "no rag so I never got to wipe it"
    no_plan: str = "(?!)"  # "I'd never", "I'd rather": begins like a plan and is none
    of_the_rest: str = "(?!)"  # right before an act: it is of what is left when something was set apart
    only_known: str = "(?!)"  # right before what a piece needs: the speaker knows or said so
    did_otherwise: str = "(?!)"  # how the words behind that begin, where he did not do it
    no_deed: str = "(?!)"  # "I'd have put": neither a plan nor done
    still_to_do: str = "(?!)"  # how the clause behind a denial begins, where that is still to do
    yet: str = "(?!)"  # in the clause: what is not done is still to do
    needless: str = ""  # right behind: it was not needed, which says nothing
    waits_for: str = ""  # before "before I could tape it": it had to wait, which says nothing
    a_side: str = "(?!)"  # the clause is of one side of the piece
    unlisted: tuple[str, ...] = ()  # tape without a listing
    numberless: str = ""  # of these, those that are of a piece where no tape was spoken of
    cleans_with: str = ""  # a cloth in these words is a rag
    ran_out: str = "(?!)"  # the whole of the words: there was no more tape
    short_of: str = "(?!)"  # what there was no more of, which says nothing where no piece is told of
    fetched: str = "(?!)"  # behind them: and then there was some
    of_the_piece: str = "(?!)"  # in what is still to do: it is work on this piece, though no act of ours is named
    unfinished_looks: str = ""  # one of these stands where a piece is told to be unfinished
    unfinished: tuple[str, ...] = ()  # the start of words that tell of the piece itself that work waits on it; `#` stands for its name and its number
    done_over: tuple[str, ...] = ()  # the whole beginning of words that tell that what is there will be taken off or done anew; they may name the act
    over: str = "(?!)"  # behind what was lacking: it is done by now
    of_any_plan: bool = False  # those words are sure enough behind "I will" and "tomorrow" too
    vanes: str = "(?!)"  # the noun, beside which stand
    with_vanes: frozenset[str] = frozenset()  # words with which it states that they are in; another word that nobody knows leaves it unread
    asks: tuple[tuple[str, str, str], ...] = ()  # (words of a question, fact, sort of the answer: length, count, degrees, way)
    that_is_it: str = ""  # how an answer begins that puts what was asked after on the piece
    why_not: str = "(?!)"  # how a question begins that takes it as given that the act was not done
    says_no: tuple[str, ...] = ()  # the whole of an answer
    topic_over: str = "(?!)"  # behind a thing that was named as if asked for: it is not there, or no more
    says_yes: tuple[str, ...] = ()
    none_of_it: str = ""  # the whole of a clause at the end: nothing of what was named
    ironies: str = ""  # beside a yes, which then is a no
    sides: tuple[tuple[int, bool, str], ...] = ()  # (how many sides, whether sides must have been spoken of before, words); group `minus`: so many less
    numbers: tuple[tuple[str, int], ...] = ()
    of_all: str = "(?!)"  # between a count and the whole it is of: "three of the four sides"
    stands_for_act: str = ""  # what stands for an act that was named before: "… did", "… is what it got"
    denied_side: str = ""  # beside a count of sides: those that were not done
    because: str = r"(?!)"  # behind it comes a reason, which counts and denies nothing
    tells_why: str = ""  # the blank before words that begin to tell why
    rest_left: str = r"(?!)"  # the sides that the act was not done on, told behind those that it was done on
    does: str = "(?!)"  # a verb, by its ending, of what things do: behind a noun, nothing says that the thing is there
    piece_waits: str = "(?!)"  # right behind a piece: what was done to the others waits
    side_waits: str = r"(?!)"  # the side that is left, once sides are counted, and when it will be
    side_to_come: str = r"(?!)"  # beside a count of the other sides: those that will be
    promise: str = "(?!)"  # right behind an act that was denied: when it will be done


@dataclass(frozen=True)
class Language:
    code: str
    concepts: tuple[tuple[str, str], ...]  # (concept, "phrase|phrase|…")
    kinds: tuple[tuple[str, str], ...]  # (kind of the contract, "phrase|…")
    sides: tuple[tuple[str, str], ...]  # (side or sides separated by a blank, "phrase|…")
    services: tuple[tuple[str, str], ...]
    closures: tuple[tuple[str, str], ...]
    damages: tuple[tuple[str, str], ...]
    methods: tuple[tuple[str, str], ...]
    places: tuple[str, ...]  # nouns that end the name of a place
    whole_places: tuple[str, ...]  # words that are a place by themselves; most of them bar duct board
    units: tuple[tuple[str, str], ...]  # (unit, "word|…")
    numbers: Numbers
    misheard: tuple[Misheard, ...]
    telling: frozenset[str]  # words that tell this language from the others
    names: frozenset[str]  # first names, to tell who did something
    harms: tuple[tuple[tuple[tuple[str, str], ...], str], ...] = ()  # (senses, words): harm only beside what it befell; a sense is (damage or concept, thing, state, of_facing, opening or of_joint)
    letters: Mapping[str, str] = field(default_factory=dict)  # how a letter of a mark is said
    turns: Turns = Turns()
    afar: Afar = Afar()
    small: Small = Small()
    run_on: RunOn = RunOn()
    forms: Forms = Forms()
    thumbs: Thumbs = Thumbs()
    together: Together = Together()
    mastic_as_tape: MasticAsTape = MasticAsTape()
    fluent: Fluent = Fluent()
    measured_next: MeasuredNext = MeasuredNext()
    plainer: tuple[Plainer, ...] = ()
    plainer_first: tuple[Plainer, ...] = ()  # the same, looked for before the pieces are told apart: what is taken back before another piece is named, the hour
    named_ahead: NamedAhead = NamedAhead()
    thoughts: Thoughts = Thoughts()
    pointed: Pointed = Pointed()
    several: Several = Several()
    bare_names: BareNames = BareNames()
    number_set_right: NumberSetRight = NumberSetRight()
    told_at_last: ToldAtLast = ToldAtLast()
    not_that_one: NotThatOne = NotThatOne()
    all_but: AllBut = AllBut()
    clauses: Clauses = Clauses()
    left: Left = Left()
    whole_turns: WholeTurns = WholeTurns()
    told: Told = Told()
    elsewhere: Elsewhere = Elsewhere()
    states: tuple[State, ...] = ()
    acts: ActWords = ActWords()
    ends: Ends = Ends()
    lone_numbers: LoneNumbers = LoneNumbers()
    lettered: Lettered = Lettered()
    storeys: str = ""  # a riser, and how many storeys it passes: a regular expression over lower-case words
    line_runs_at: str = ""  # right before a length: the line runs at it, which is its pressure; a regular expression
    line_is: str = ""  # right behind a length: so much the line is made for
    line_cue: str = ""  # a word without which no line is spoken of
    fuzzy: tuple[tuple[str, str], ...] = ()  # (right word, concept key) worth finding in a word nobody knows
    accents_fall: bool = False  # people and ears leave accents out
    accents_kept: frozenset[str] = frozenset()  # words that mean another thing without theirs
    gauge: str = ""  # what shows a pressure: a regular expression over lower-case words
