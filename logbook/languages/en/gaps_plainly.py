"""English of what a coin goes through, and of joints that are no longer open or left as they were: "you could slide a quarter through", "there isn't now", "closed it with it still sticking out"; and the plain words for it."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_SLIDE = r"(?:slide|slip|fit|stick|drop|push|poke|shove|roll|pass|feed|get|put|lose)"

ENGLISH_GAPS_PLAINLY = (
    # a coin, no measure
    Plainer((" a quarter ",), rf"{_SLIDE}(?P<x> a quarter)(?= (?:right |clean |straight |all the way )*(?:through|into|between|inside|down|under|sideways|edgewise|on edge|in (?:it|there|that|the|edgewise|sideways|between)|in[.;,!]))", (("x", " a coin"),)),
    Plainer((" there isn't", " there ain't", " there's not", " there is not", " there's none", " there is none"), r"there (?:was|used to be) [^.?!;,]*?(?<![\w'])(?:gap|crack|opening|daylight|space)(?![\w'])[^.?!;]*[.;,!] (?P<x>(?:and |but |well )*there(?:'s none| is none| isn't| ain't|'s not| is not)(?: one| any| a gap)? (?:now|anymore|any more|any longer))(?=[.;!]|$)", (("x", "not anymore"),)),
    Plainer((" is now", "'s one now"), r"(?P<x>there (?:wasn't|was not|was no|wasn't any|was never)(?: an?)? )(?:gap|crack|opening)(?![\w'])[^.?!;]*[.;,!] (?P<y>(?:and |but |well )*there(?: is|'s one| is one) now,? (?:about |maybe )*)(?=(?:an? |one |three |five )?(?:quarter|half|eighths?|sixteenths?|inch|\d/\d+)(?![\w']))", (("x", "there is a "), ("y", "the gap is "))),
    Plainer(("sticking", "poking", "proud"), r"(?P<x>(?:(?:i|we) )?(?:meant|was going|were going|intended|planned|wanted) to (?:shave|trim|cut|slice)(?: it| that| them)?(?: off| back| flush)*[^.;!?]*? (?:with it |it's |it is |while it was )?still (?:sticking|poking|standing)(?: right)? (?:out|proud))(?=[.;,!]|$)", (("x", "the insulation is not trimmed"),), beside=("insulation", "fiber", "glass")),
)
