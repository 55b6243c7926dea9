"""The shape of words that take an act back, answer for it or weigh it: patterns over sketches (`logbook.reading.clauses.sketch`)."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Weighed:
    """Words an act stands under, as patterns over sketches (`logbook.reading.clauses.sketch`): what is denied, and how often."""

    undone_names: tuple[tuple[str, str], ...] = ()  # words that say of themselves that an act is not done, and its fact
    lacking: tuple[str, ...] = ()
    near_miss: tuple[str, ...] = ()  # it was nearly left undone, and so was done
    lot_of: str = ""  # many pieces, of which something is told
    but_this: str = ""  # and how the one of them begins that is otherwise
    finished: str = "(?!)"  # behind what was half done: by now it is
    after_all: str = "(?!)"  # how the words behind what should have been begin, where it was done
    did_so: str = "(?!)"  # behind a near miss: whether it was left undone or not is told there
    not_his_word: str = "(?!)"  # before a denial: "I never said I didn't staple it" tells neither
    belied: tuple[str, ...] = ()  # how somebody's word begins that is not true, and how that is told behind it
    denied: tuple[str, ...] = ()
    not_a_bit: tuple[str, ...] = ()
    not_yet: str = "(?!)"  # beside one of those: it is still to be done
    barely: tuple[str, ...] = ()  # an act that is not all of it done
    to_come: tuple[str, ...] = ()  # the act is yet to come: it is not done, and open
    passive: str = ""  # stands before the first act of a list that is done to the piece: "it gets <d>"
    when: str = ""  # a time to come
    supply: tuple[str, ...] = ()  # what it is done with is yet to come; of parts that is a denial, of a material it says nothing
    unreal: tuple[str, ...] = ()  # what would have been
    has_it: tuple[str, ...] = ()
    ticked: tuple[tuple[str, bool], ...] = ()  # the whole sketch: "<n> yes"
    put_aside: tuple[str, ...] = ()  # "instead of stapling it": ends in the act that was not done
    tools: tuple[tuple[str, str], ...] = ()  # what an act is done with, and the fact
    tool_others: str = "(?!)"  # right before them: "the three-inch roll" is one of several
    tool_frames: tuple[str, ...] = ()  # "never saw a {tool}", "the {tool} stayed in the box"
    met: str = "(?!)"  # verbs of those
    other_things: tuple[str, ...] = ()  # an act on what is no duct
    nots: str = ""
    holds_back: str = ""
    habit: str = "(?!)"  # how he always worked: of no piece unless it is named
    no_fault: tuple[str, ...] = ()  # "not one of the tabs is loose": none of them has the fault
    in_general: str = ""
    past: str = ""  # before what was to come and has come or not by now
    concord: str = ""  # "never put no tape on": two denials that are one

    @property
    def undone(self) -> frozenset[str]:
        return frozenset(word for word, _ in self.undone_names)


@dataclass(frozen=True)
class Echoes:
    """Words that say yes or no of an act named before them, as whole sketches (`logbook.reading.clauses.sketch`) behind their leads."""

    fault_asked: str = ""  # at the end of a question after a fault: "did I leave the tabs loose?"
    leads: str = ""
    yes: tuple[str, ...] = ()
    no: tuple[str, ...] = ()
    by_doing: str = ""  # he speaks of what he did: "I did", "didn't"
    belies: tuple[str, ...] = ()  # what was told before is not so
    heads: str = ""  # before a colon: what is told behind it is no answer to what was told before
    absurd: str = ""  # "if there is none, I'm the pope"
    whether: str = ""  # a question inside a sentence
    bears_out: tuple[str, ...] = ()
    to_a_question: tuple[tuple[str, bool], ...] = ()
    between: tuple[str, ...] = ()  # what may stand between the act and the echo
    lacking: tuple[str, ...] = ()  # in what is asked or told: the act is missing there
    wanted: str = ""  # in a question: whether it should be, not whether it is
    away: tuple[str, ...] = ()  # where the thing named before them lies, which is not in the piece
    retorts: tuple[str, ...] = ()  # questions that deny what they come back to: "rubbed it down? With what?"
    in_place: str = ""  # an echo that says where it is: it is there, however he was asked
    of_sight: str = ""  # an echo of what can be seen
    my_own: str = ""  # an echo of his own piece, behind another's
    slips: str = ""  # verbs behind which "but I did" says that it is done after all
    after_all: str = ""  # before "I did", behind what was nearly left out: what he did is the leaving, or the act
    theirs: str = ""  # in an act and its echo with a stroke between: one man's or several others' doing, and an echo of theirs
    asked_and_told: str = ""
    of_the_piece: str = ""  # what denies is of the whole piece, no act: "it isn't done yet"
    of_him: str = ""  # a question that another voice in the note may have asked the speaker
    of_another: str = ""  # a question that another may be asked, and answer in a word
    measured: str = "(?!)"  # a thing and its measure: "the <n> are three apart"
    not_so: str = "(?!)"  # an echo that denies the measure, and not the thing
    done_with: str = "(?!)"  # an echo, and in the group `with` what he did it with
    told_of: str = "(?!)"  # a thing and the deed that is told of it: "the <n> isn't <d>"
    would: str = "(?!)"  # what would have been done
    of_it: str = "(?!)"  # an echo that denies how it was, and not what he did
    looks: str = ""  # a word without which nothing of this is there


@dataclass(frozen=True)
class OwnQuestions:
    """Questions about the speaker's own work, and how the words behind them begin where it is built just so."""

    leads: str = "(?!)"  # how such a question begins, up to what it asks about
    bare: str = "(?!)"  # its first word, where `tails` end it
    tails: str = "(?!)"
    owns: str = "(?!)"  # how the words behind begin
    restates: str = "(?!)"  # the same, where they tell the same measure again


@dataclass(frozen=True)
class CameOff:
    """How work goes away again, and comes back. Patterns over sketches."""

    taken: tuple[str, ...] = ()  # with the act in them
    taken_it: tuple[str, ...] = ()  # of the act named before
    fell: tuple[str, ...] = ()
    facts: tuple[tuple[str, str], ...] = ()  # words that tell which act "them" is of
    earlier: str = ""  # the same before a thing that fell off by itself
    worn: str = ""  # before the noun: what came off was to be replaced
    back_on: tuple[str, ...] = ()
    back_over: tuple[str, ...] = ()  # the same of staples and tape alone
    lies: str = ""  # where it lies now
    not_again: str = ""
    unsettled: str = ""
    looks: str = ""


@dataclass(frozen=True)
class Voices:
    """How a clause begins that tells another's words or another's work; `mine` begins the speaker's own again."""

    others: tuple[str, ...] = ()
    they: frozenset[str] = frozenset()  # who says, in the middle of words that run on without a sign
    my_piece: str = "(?!)"  # a piece named as his own
    mine: str = ""
    judges: str = "(?!)"  # another finds fault, and tells why
    ought: str = "(?!)"  # behind "and": how it is was told before
    rhetorical: str = "(?!)"  # how a sentence begins that only looks like a question: what stands behind is told
    bet_lost: str = "(?!)"  # how the sentence behind it begins, where it is not so after all
    left_to_others: str = "(?!)"  # work on the piece spoken of that somebody is to do: it is not done
    has_to: str = ""  # how a thing has to be, for what he had not known
    helps: str = ""  # the whole of a clause: another lent a hand with the speaker's own work
    had_me: str = ""  # how a clause begins that tells what another had the speaker do: he did it
    used_it: str = ""  # in the words of another's deed: what he gave is what was put on
    as_it_is: str = ""  # behind what another did: how this piece is for it
    befell: str = "(?!)"  # in the words of a damage: what it befell, so that another's deed is told of this piece
    in_it: frozenset[str] = frozenset()  # right behind a harm: it befell the piece
    harm: str = ""  # what another did to a piece, which is how it is
    anothers: str = ""  # another made the piece
    the_one: tuple[str, ...] = ()  # before who made it: "is the one Dave put together"
    tells_where: str = "(?!)"  # how a clause behind a comma begins that looks like a question for a place and tells of it
    where_it_meets: str = "(?!)"  # and how a sentence does
    if_asked: str = "(?!)"  # somebody asks: behind it a fault is owned up to
    only_since: str = ""  # a condition that only what came after the work could fill
    would: str = ""  # what he would do if he had the thing for it
    i_would: str = "(?!)"  # before "if": what he would do, and all of it hangs on that
    bare_answer: str = "(?!)"  # whether others did it, and nothing else
    speakers: str = "(?!)"  # before a colon: who speaks, where a talk is written down
    me: str = ""  # and the speaker himself
    replies: str = "(?!)"  # how an answer begins that takes up what another told


@dataclass(frozen=True)
class Orders:
    """What somebody wanted done or left out, and whether it was. Patterns over sketches; the first six are found in a part, the others are the whole of one."""

    told: str = "(?!)"  # somebody's order begins
    to_do: str = "(?!)"  # behind it, with the act
    to_leave: str = "(?!)"
    plainly: str = "(?!)"  # an order to leave it, told as it was given
    his_word: str = "(?!)"  # the part behind that: whose it was
    mine: str = "(?!)"  # his own act behind it
    followed: str = ""
    refused: str = "(?!)"
    put_in: str = "(?!)"
    left_out: str = "(?!)"


@dataclass(frozen=True)
class Ticks:
    """What stands behind an act on a list that is ticked off by hand: regular expressions over lower-case letters."""

    yes: str = "(?!)"
    no: str = "(?!)"
    later: str = "(?!)"  # not done, and still to do
    partly: str = "(?!)"  # not all of it; only behind a sign
    idle: str = "(?!)"  # neither yes nor no: it does not apply
    zero: str = "(?!)"  # no, behind a sign or at the end of what is said
    small: str = ""  # between the act and its tick


@dataclass(frozen=True)
class Wanted:
    """Words around a measure that was asked for, drawn or meant, and around what it came out as. Patterns over the lower-case words of a part of a clause."""

    looks: str = ""  # a word without which nothing of this is there
    wants: tuple[str, ...] = ()
    rejected: str = ""  # a measure that would not do; it counts only where another is told in its stead
    instead: str = ""  # how that other is told
    denied: str = "(?!)"  # how a part begins that denies a measure, where the sentence goes on to the true one
    never: str = ""  # it was done as it was asked for
    verb_of: str = ""  # words behind which "run" is a verb
    runs_on: str = ""  # how the words of what came out begin, where no comma parts them
    set_against: str = ""  # how the words of what was wanted begin behind what came out
    agrees: tuple[str, ...] = ()  # the whole of a part: it came out so
    differs: str = ""  # the whole of a part: it came out otherwise, nobody says how
    not_yet: str = ""  # in a part: tells of nothing that came out
    others: str = ""  # how a part begins that tells of another's
    says_of_it: str = "(?!)"  # how a part begins that says of the measure before it that it was asked for
    gets: str = "(?!)"  # how a part begins that tells of what came of it, whoever is said to have it
    around: frozenset[str] = frozenset()  # words that stand around what a thing came out as, where it is told alone
    alone: frozenset[str] = frozenset()  # words beside a thing that is named by itself behind its measure: "…, the staples I mean"
    weather: frozenset[str] = frozenset()  # more of them, where it is how cold it was
    cold: str = "(?!)"  # in a note: it tells of cold or of warming
    reads: str = "(?!)"  # right before the number that tells how cold
    gapes: tuple[str, ...] = ()  # a joint that does not close, and by how much (`<m>`)
    gapes_there: tuple[str, ...] = ()  # the same in one place of a joint that was called tight
    ordinal: frozenset[str] = frozenset()  # right before a number of things
    away: frozenset[str] = frozenset()  # right behind a length that is how far off something is
    heats: str = "(?!)"  # right before a bare number: so hot is the air
    hangs: frozenset[str] = frozenset()  # of a piece, before how far apart it does
    cold_ahead: str = "(?!)"  # the part before a bare number ends so: that is how cold it was
    off_a_thermometer: str = "(?!)"  # right behind one, the same
    instrument: str = ""  # what shows how hot it is, whoever holds it
    heats_behind: str = "(?!)"  # right behind one, the same
    of_air: str = "(?!)"  # in the sentence: the air may be so hot
    not_the_air: str = "(?!)"  # in the sentence: something else is so hot, or may be
    of_moves: str = "(?!)"  # in a note: it tells of sides that move
    one_side: str = "(?!)"  # in a sentence: it is one side that moves, which is not said
    instead_of: str = "(?!)"  # right before a measure that it did not get
    all_of_it: str = "(?!)"  # in a sentence: one side takes the whole change
    so_long: str = "(?!)"  # in a sentence: over what length they do
    not_a_move: str = "(?!)"  # in a sentence: its measures are of something else, or did not come out so
    rolls: frozenset[str] = frozenset()  # what is counted, and is tape
    cut_off: frozenset[str] = frozenset()  # what is cut off a roll
    so_warm: frozenset[str] = frozenset()  # right behind degrees: what is so warm
    there_warm: frozenset[str] = frozenset()  # right behind degrees: where it is so warm, or "in" before the place
    in_a_place: frozenset[str] = frozenset()  # of those, the ones that need the place behind them
    holds_up: frozenset[str] = frozenset()  # what a duct hangs by, besides hangers
    home: frozenset[str] = frozenset()  # where a piece goes that seats in the next one
    wide: str = "(?!)"  # in a part: its measure is how wide something is
    counted: str = "(?!)"  # right before a whole number: it counts things, and is no measure
    clinched: str = "(?!)"  # words for a way that only the legs of staples are clinched
    than: str = "(?!)"  # right before a measure that it is not
    reason: str = "(?!)"  # how the words begin, behind that, that tell why


@dataclass(frozen=True)
class Stretches:
    """Words of a stretch of a piece in which something lies wider, of its being wide, and of its having been mended; of the parts that an act is ticked off on."""

    stretch: str = ""
    wide: str = "(?!)"
    mended: str = "(?!)"
    adds: str = "(?!)"  # more of what is there
    ticked_parts: str = ""
    ticked_yes: str = "(?!)"  # behind a part: done there, besides what ticks an act off
    ticked_leads: str = "(?!)"  # before a part
    ticked_on: str = "(?!)"  # between the act and the list of its parts: the piece


@dataclass(frozen=True)
class Aside:
    """Words that tell of another day, another man's work, another thing, or of what never was: they state nothing of this piece as it is.

    `words` are read over the sketch of a sentence and the one behind it, from inside the first; without a group `x` all of them say nothing,
    and groups `y` and `z` are left out too. `act` and `other` name acts of which `states` says whether they are done (`<act>`), what `later` holds is work left open, and `measure` is a number of the sort
    of the one wished for; a value `=n` is what the group `n` holds. A sentence without one of the `cues` is not looked at.
    """

    words: str
    cues: tuple[str, ...]
    reach: str = "words"  # "words"; "sentence": to its end or until he speaks of his own again; "before": the sentence before them too
    states: tuple[tuple[str, object], ...] = ()
    names: bool = False  # the piece they name is his own
    unless: str = ""  # in the words they were found in
    kinds: tuple[str, ...] = ()  # kinds of fitting that alone can have what it states
    corrects: bool = False  # what it states sets right what was told before


@dataclass(frozen=True)
class SetApart:
    """A part of the piece, in words that nobody read: what was told last before them may not hold there."""

    part: str = ""  # a part by its name
    some: str = ""  # the start of a clause: some of what was told of, and that something is otherwise with them
    otherwise: str = ""  # a part, and beside it that something is otherwise
    counted: str = "(?!)"  # so many of its parts
    staple_clinch: str = "(?!)"  # of legs: the wrong way
    groove_step: str = "(?!)"  # of a step: the wrong way
    harmless: str = "(?!)"  # in the words of the clause: nothing is otherwise there


@dataclass(frozen=True)
class Asides:
    said: tuple[Aside, ...] = ()
    own_again: str = "(?!)"  # behind a comma: from here on he speaks of his own piece
    of_the_kind: str = "(?!)"  # of his own piece, of the kind that theirs is
    turns: frozenset[str] = frozenset()  # words that turn what stands behind them in their clause; where nobody has read them, that states nothing
    doubting: tuple[str, ...] = ()  # words of what was told around them: where nobody has read these, the acts beside them are in doubt
    elliptic: tuple[str, ...] = ()  # the same, of the act named last alone
    set_apart: SetApart = SetApart()
    ailing: tuple[tuple[tuple[str, ...], str], ...] = ()  # (facts, words): a thing, and that something is the matter with it that is no fact of ours; these facts are in doubt
    righted: str = "(?!)"  # behind it, or in the two clauses after: it was put right since
    adds: frozenset[str] = frozenset()  # behind such a word it turns nothing: "isn't only stapled"


@dataclass(frozen=True)
class PartsTold:
    """Words for a part of a piece that a measure is told of: a side, a corner, a stretch, one of them, the rest, and how it goes on from there."""

    word: str = "(?!)"  # a part by one word, beside the measure
    named: str = "(?!)"  # a part by its name, anywhere in the clause of the measure
    further: str = "(?!)"  # between two measures: the second holds further on, or in one place
    then: str = "(?!)"  # how a clause begins that tells how it goes on from there
    that: str = "(?!)"  # how a clause begins that tells of what was named right before it
    again: str = "(?!)"  # in a clause of how hot it is or what the pressure is in another hour
    unlike: str = "(?!)"  # what is measured there is something else: how far the tape laps over
    by_now: str = "(?!)"  # what was measured first is no more


@dataclass(frozen=True)
class Told:
    """All of them, of one language; a language without them leaves them empty."""

    tape_taken: str = ""  # right before so many inches: they are of the tape that went on
    tape_used_up: str = ""  # tape of so many inches that there was no more of
    goes_over: str = "(?!)"  # right before a figure: it is more than that
    stays_under: str = "(?!)"  # right before a figure: it is less than that
    bound_ahead: str = "(?!)"  # the same, where a measure begins with it
    keeps_within: str = "(?!)"  # behind a "not": a bound and its figure
    denied_before: str = "(?!)"  # right before such words: it does not go past
    begun: str = "(?!)"  # before an act: he began it; `when`, where only its time is told
    stopped: str = "(?!)"  # behind it: he got no further
    worked_on: str = "(?!)"  # behind it: he went on
    at_another_time: str = "(?!)"  # behind a count of the other sides: they were done then
    first_and_second: str = "(?!)"  # one of two pieces (`n`), and whether it is the `first`
    weighed: Weighed = Weighed()
    echoes: Echoes = Echoes()
    own_questions: OwnQuestions = OwnQuestions()
    came_off: CameOff = CameOff()
    voices: Voices = Voices()
    orders: Orders = Orders()
    ticks: Ticks = Ticks()
    wanted: Wanted = Wanted()
    stretches: Stretches = Stretches()
    parts: PartsTold = PartsTold()
    asides: Asides = Asides()


@dataclass(frozen=True)
class LoneNumbers:
    """Words around a number that is nothing else, which make it the piece a story is about: regular expressions over lower-case words.

    `before_thing` and `before_doing` end right before the number, the first where the thing is spoken of, the second where something was done to it;
    `before_subject` and `subject` stand around one that does something or is something itself.
    """

    before_thing: str = "(?!)"
    before_doing: str = "(?!)"
    behind: str = "(?!)"  # begins right behind either
    before_subject: str = "(?!)"
    subject: str = "(?!)"
    opens: str = "(?!)"  # the sentence, with # for the number, where it opens it as its name
    no_piece: str = "(?!)"  # in the sentence: it counts, or tells a time, an age, money, a road or what is asked of somebody
