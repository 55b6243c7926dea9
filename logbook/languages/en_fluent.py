"""English between the words: "uh", "you know", "the, the", and the words that end no sentence."""

from __future__ import annotations

from logbook.languages.fluent import Fluent

_DENIED = "isn't wasn't aren't weren't didn't doesn't don't haven't hasn't hadn't can't couldn't won't wouldn't isnt wasnt arent werent didnt doesnt dont havent hasnt hadnt cant couldnt wont wouldnt"

# articles and small words that no sentence ends with
_OPEN = "the a an my our your its every each of with without from into onto and or nor than if because until"

ENGLISH_FLUENT = Fluent(
    sounds=frozenset("uh uhh uhm um umm er erm ah hmm hm mmm".split()),
    between_commas=(("like",), ("you", "know"), ("y'know",)),
    open=frozenset(_OPEN.split()),
    binds=frozenset(
        f"{_OPEN} his her their to at for by but no not never nobody nobody's someone somebody any some neither either another real whole i we he she they who is are was were am be been "
        f"has have had having do does did will would could should can might must still just only very as when where almost nearly think thought figured guess pretend get gets got "
        f"getting gave manage going i'm i've i'd i'll we're we've it's that's there's he's they're {_DENIED}".split()
    ),
    leans=frozenset("on in at as under over up down through around about behind off out me him us them yet again".split()),
    answers=frozenset(("no",)),
    bound=frozenset("of than".split()),
    verbs=frozenset(f"is are was were has had {_DENIED}".split()),
    things=frozenset("flap tab tabs vane vanes tape staple staples mastic rods gap gaps room tears damage holes screws fabric mesh washers rubbing scrim turning".split()),
    counts=frozenset("one two three four five six seven eight nine ten twelve".split()),
    counted=frozenset("side sides tab tabs inch inches foot feet vane vanes staple staples screw screws seam seams joint joints corner corners by hundred degree degrees".split()),
    numbered=frozenset(
        "number fitting piece section joint run straight elbow tee wye cap collar transition reducer offset plenum branch sleeve box connection boot door by x".split()
    ),
    says_again=frozenset(
        f"not no never nothing none nobody the a i we he they my our it's i'm i've we're there's that's and but so every to at of with from for by in on is are was were he's if when {_DENIED}".split()
    ),
    again_at_once=frozenset(("it", "has")),
)
