"""English of what came out otherwise than he wanted or was told: "I was gonna put the staples at two but they ended up at three", "wanted to do mastic but the bucket had frozen", "all I had was three eighths staples and I put them in anyway".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.measured import _M
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_L = rf"(?:(?:half an?|half|(?:an?|one|three|five|seven)[- ](?:half|quarters?|eighths?|sixteenths?)|quarter)(?:[- ]inch)?|{_M}(?:[- ]inch)?)"
_WISHED = rf"(?:{_I} )?(?:(?:was|were) (?:gonna|going to|supposed to|planning to|fixing to|meant to)|meant to|wanted to|tried to|aimed to|planned to|set out to|started to)"
_SET = r"(?:put|set|space|shoot|run|keep|hold|place|go|have)"
_GOT_TO = r"(?:ended up|wound up|came out|turned out|landed|finished up|ended|went in|got|are|were|'re|drifted|stretched)"
_HAD = rf"(?:{_I} (?:only (?:had|got)|had only|just had|had just|got only)|only had|all {_I} had (?:left )?(?:was|were)|all there was (?:was|were)|there (?:was|were) only|{_I} had nothing but)"

ENGLISH_CAME_OUT_OTHERWISE = (
    # --- how far apart the staples came out
    Plainer((" staples ", "spacing"), rf"(?P<x>{_WISHED} {_SET} (?:the |my |all the )?(?:staples|spacing) (?:in )?(?:at |every |on |to |an? )*{_M}(?: inch(?:es)?)?(?: (?:apart|spacing|centers|on center))?,? (?:and |but |only |though )+(?:they|it|mine|most of them|the staples) ?(?:all |just |really )*{_GOT_TO} )(?=(?:at |every |about |more like |closer to |out to |to |like )*{_M}(?![\w']))", (("x", "the staples are "),), beside=("but ", "and ", "only ")),
    Plainer((" mine ", " mine'", " mine're"), rf"staples(?![\w'])[^.?!]*[.!;,] (?:well|but|so|anyway|and|yeah|okay|now|too late|sorry|oh)?,? ?(?P<x>mine)(?= ?(?:are|'re|is|'s|were|went|came out|go|run|ended up)(?: (?:all|in|about|more like|spaced|really))* (?:at |every )?{_M}(?![\w']))", (("x", "my staples"),)),
    # --- what the mastic was meant for, and why there is none
    Plainer(
        ("mastic",),
        rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:{_I} )?(?:wanted|meant|tried|hoped|planned|intended|had hoped|had planned|had wanted|would have liked|aimed) to )(?:do|use|put|brush|go with|go|run|close it with|close it up with|seal it with|lay) (?:the |some |it with )?(?:mastic)[^.?!;]*?,? but (?![^.?!;]*(?:went back|found|got it on|did it|anyway))",
        (("x", "i wanted to "),),
    ),
    # --- what there was, and went in all the same
    *(
        Plainer(
            ("anyway", "anyhow", "regardless", "all the same", "just the same", " used them", " used that", " used it", " put them in", " put it on", " shot them", " ran it", " ran that"),
            rf"(?P<x>{_HAD} (?:the |some |a roll of |a box of |a strip of )?)(?P<m>{_L})(?P<y>(?: {words}| ones)(?:(?! (?:and|so|but|which) )[^.?!;,]){{0,50}}?,? (?:and|so|but) (?:so )?{_I} (?:just )?(?:put|used|shot|ran|went with|fired|laid|stuck|loaded)(?: (?:them|that|those|it|'em))?(?: (?:in|on|up))?(?: (?:anyway|anyhow|regardless|all the same|just the same))?)(?=[.,;!]|$| every| at)",
            (("x", "i put "), ("y", f" {thing} {where}")),
            beside=cues,
        )
        for thing, where, words, cues in (("staples", "in it", r"(?:inch )?staples?", ("staple",)), ("tape", "on it", r"(?:inch )?(?:foil )?tape", ("tape",)))
    ),
    # --- but for a part
    Plainer((", only ",), r"(?:taped|stapled|rubbed|sealed|sides|around)(?P<x>, only )(?=(?:there|it|they|i|we) ?(?:isn't|aren't|is not|ain't|wasn't|didn't|never|forgot|has no|have no|'s no|'s not|skipped))", (("x", ". "),)),
    Plainer((" gun ", " stapler ", " roll ", " tape gun "), r"(?:sides?|it|seams?|one|two|three|half|way|around)(?P<x>(?:,? and(?: then)?|,? then|,? before|,? till|,? until|,? but(?: then)?) (?:the |my )(?:gun|stapler|staple gun|roll|tape gun|tape) (?:jammed|jam|quit|broke|died|ran out|gave out|was empty|got empty)(?: (?:on me|up|again))?)(?=,? so (?:the |my )?(?:other|last|rest|fourth|third|back|top|bottom|far)(?![\w'])[^.?!;]*(?:n't|not)(?![\w']))", (("x", ""),)),
)
