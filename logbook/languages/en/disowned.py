"""English of a piece that he names and says not to be his, with all that he tells of it; and of small words that hide a name.

Regular expressions over lower-case letters, as in `plainer.py`. What he did to such a piece himself makes it his to tell of: then nothing is left out.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.plainer import Plainer

_NUMBER = r"(?:number )?(?:[a-z]-?)?\d{1,4}(?![\w'/.-]\w)"
_PIECE = rf"(?:the |that )?(?:(?:{KIND}|straight),? )?{_NUMBER}"
_CREW = r"(?:crew|team|shift|guys|boys|company|outfit|contractor|fellows|gang|bunch|people)"
_WHOSE = rf"(?:the|that|another|a different|some) (?:other |different |night |day |first |second |morning |late |old |new |previous |last |second ){{0,2}}{_CREW}(?:'s|s')?(?! (?:truck|van|board|tape|drawing|list))"
_NOT_MINE = r"(?:,? (?:that one|this one|that|this)(?='s| is| was| isn't| wasn't))?(?: isn't|(?:'s| is| was)? not|n't| wasn't| ain't| is no) (?:mine|ours|one of mine|one of ours|(?:from|of|by) (?:me|us|mine)|my work|our work|my doing|(?:made|built|done|put up|hung) by (?:me|us)|my piece|our piece)(?! (?:to|but))"
_THEIRS = rf"(?:'s| is| was| belongs| belonged| comes| came)(?: (?:from|of|to|by))? {_WHOSE}"
_NOT_BUILT = rf"(?:i|we) (?:didn't|did not|never) (?:build|make|do) {_PIECE}[,.;]? (?:that (?:was|is) |it was )?{_WHOSE}(?: did(?: it)?)?"
_OWN = r"(?<!when )(?:i|we)(?:'ve|'d| have| had)?(?: (?:just|only|also|then|already|still|did|went and))* (?:taped|stapled|rubbed|fixed|patched|put|finished|cut|wiped|added|closed|sealed|trimmed|hung|bent|tape|staple|rub|wipe|trim|hang|mended|warmed|built|made|redid|folded|did(?! not))(?![\w'])"
_NEXT = rf"(?:(?:{KIND}|straight)s?,? (?:number )?\d|number \d|mine(?:'s| is| was| are)|(?<![\w.,/-])\d{{2,4}}(?!\d)(?:,| is| has|'s|:)|my (?:{KIND}|straight|own))"

ENGLISH_DISOWNED = (
    Plainer(
        (" mine", " ours", " from me", " from us", " of me", " of mine", " of us", " by me", " by us", " my ", " our ", " crew", " team", " shift", " guys", " boys", " company", " outfit", " contractor", " fellows", " gang", " bunch", " people"),
        rf"(?:^|(?<=[.!?] ))(?P<x>(?:so |and |okay,? |well,? |also )*(?:{_PIECE}(?:{_NOT_MINE}|{_THEIRS})|{_NOT_BUILT})(?![\w'])(?:(?!(?<![\w'])(?:{_OWN}|{_NEXT})).)*?)(?:$|(?<=[.!?;] )(?=(?:(?:so|and|but|okay|well|now),? )*(?:i |we )?(?:{_NEXT}|(?:i|we) (?:\w+ )?(?:built|made|did|finished|taped|stapled|rubbed) (?:the |a )?(?:{KIND}|straight|number|\d))))",
        (("x", ""),),
        beside=("n't ", " not ", "never ", " crew", " team", " shift", " guys", " boys", " company", " outfit", " contractor", " fellows", " gang", " bunch", " people"),
    ),
    # --- "item one, cut; item two, stapled": what is listed of a piece that was named
    Plainer(("item one", "item 1"), rf"(?<![\w'])(?P<x>item (?:one|two|three|four|five|six|seven|eight|nine|ten|\d)[,:.]? )(?!(?:a |the |is |was )?(?:{KIND}|straight)(?![\w']))", (("x", ""),), beside=("item two", "item 2")),
    Plainer(("item two", "item 2"), rf"(?<![\w'])(?P<x>item (?:two|three|four|five|six|seven|eight|nine|ten|\d)[,:.]? )(?!(?:a |the |is |was )?(?:{KIND}|straight)(?![\w']))", (("x", ""),), beside=("item one", "item 1")),
    # --- "temperature when taping: sixty-five"
    Plainer(("temperature ", "temp "), r"(?:temperature|temp)(?P<x> (?:when|while|during|at|at the time of) (?:i (?:was )?)?(?:taping|taped|the taping)(?: it)?)(?=[,:]? (?:was |is )?(?:about )?(?:\d|thirty|forty|fifty|sixty|seventy|eighty|ninety))", (("x", ""),)),
    # --- "Pete says it sticks fine in the cold, it's thirty-eight degrees in here": how cold it is where he stands is his own word
    Plainer((" degrees",), r"(?:^|(?<=[.!?] ))[^.,;?!]{0,60}? (?:says?|said|claims?|claimed|swears|swore|thinks|told me|tells me|figures) [^.,;?!]*(?P<x>,(?: and| but| well| only)?) (?=(?:it's|it is|it was) (?:about |only |like )?(?:\d{1,3}|[a-z]+(?:[ -][a-z]+)?) degrees (?:in here|up here|out here|down here|here|right now|inside|where (?:i|we)|at the (?:joint|board|seam)))", (("x", "."),)),
    # --- "in the 138 I put"
    Plainer(("in the 1", "in the 2", "in the 3", "in the 4", "in the 5", "in the 6", "in the 7", "in the 8", "in the 9"), r"(?<![\w'])in (?P<x>the )(?=\d{2,4},? (?:i|we|it|each|every|the staples|the tape|there|all|no|they)(?![\w']))", (("x", ""),)),
)
