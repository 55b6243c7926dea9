"""English of tape said in a roundabout way, and the plain words that it is read as. Regular expressions over lower-case letters."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_WAITS = r"(?:needs?|wants?|could use|could stand|have to|has to|need to|got to|gotta|haven't|hasn't|didn't|never|couldn't|can't)(?: (?:to|get|got|have|had|still|even|yet))*"
_OTHERS = r"(?:somebody|someone|some (?:guy|clown|joker|idiot)|they|the (?:inspector|electricians?|plumbers?|sprinkler guys?|painters?|other (?:guys?|crew|trade)|drywallers?|framers?|kid|apprentice|super|foreman|wind)|another trade)"
_OFF = r"(?:pulled|peeled|ripped|tore|took|stripped|knocked|yanked|scraped)"
_THIS = r"(?:#|it|this(?: one)?|that(?: one)?|mine|ours|my \w+|our \w+|the (?:top|bottom|back|side|corner|end|seam)s?|(?:number )?\d+|(?:straight|elbow|ninety|tee|wye|branch|plenum|end cap|cap|collar|transition|reducer|offset|section|number|fitting)\b)"

ENGLISH_TAPING_SAID = (
    # --- the tape is there, and is to be rubbed
    Plainer(("tape rub", "tape burnish", "tape squeegee", "tape press"), rf"{_WAITS}(?P<x> (?:the|its|my|that|this) tape)(?= (?:rubbed|burnished|squeegeed|pressed)(?![\w']))", (("x", ""),)),
    Plainer(("tape rubbed",), r"(?P<x>(?:the |my |its )?tape )(?=(?:all )?rubbed(?: (?:down|out|in))?\?)", (("x", ""),)),
    Plainer(
        ("tape needs", "tape wants", "tape could", "tape still needs", "tape still wants", "tape has to be", "tape needs to be", "tape still has"),
        r"tape(?: (?:on|of) (?:it|this one|that one))? (?:still )?(?P<x>(?:needs?|wants?|could use|could stand|has to be|needs to be)(?: (?:another|one more|a second|a better|a good|some|more|a little|a bit|a harder|better|of))+ (?:pass(?:es)?|go|once[- ]over|going[- ]over|swipe|stroke|press|pressing|pressure|rub|rubbing|rub[- ]?down|squeegee|squeegeeing|work with the squeegee)|(?:needs|has) to be (?:gone over|pressed|worked|pressed down|worked down|rubbed)(?: (?:again|more|harder|some more|better|with the squeegee))*|needs (?:going over|pressing|working)(?: (?:again|more|down|some more))*)(?![\w'])",
        (("x", "needs rubbing"),),
    ),
    # --- how much of it
    Plainer(("quarters taped", "quarters rubbed", "thirds taped", "thirds rubbed", "third taped", "quarter taped", "3/4 taped", "2/3 taped", "3/4 rubbed"), r"(?<!and )(?<!& )(?<!inch )(?<!inches )(?P<x>(?:about |maybe |only |just )*(?:three quarters|two thirds|(?:a|one) (?:third|quarter)|(?<=, )3/4|(?<=is )3/4|(?<=, )2/3))(?= (?:taped|rubbed)(?![\w']))", (("x", "half"),)),
    # --- who pulled it off is no matter
    Plainer(("the tape off", "tape back off", "tape right off", "my tape off", "some tape off"), rf"(?P<x>{_OTHERS} (?:went and |just |must have |must've )*{_OFF} (?:all )?(?:the|my|our|some|all the|half the) tape (?:back |right |clean )?off)(?=[.,;]|$| (?:of )?{_THIS})", (("x", "the tape came off"),), unless=r"tape off (?:of )?(?:his|their|theirs|hers)(?![\w'])"),
    Plainer(("been ", "got "), rf"tape(?P<x>(?:'s| has| had| got|'d| was)(?: (?:all|been|just|since|then))* {_OFF[:-1]}|pulled|torn|taken|stripped|knocked) (?:back |right |clean )?off)(?=[.,;]|$| (?:of )?{_THIS})", (("x", " came off"),)),
)
