"""English of an act that is told as done by its name: "did the taping", "the trim's all set", "no trouble with the staples"."""

from __future__ import annotations

_LEAD = r"^(?:(?:and|so|then|okay|ok|yeah|well|oh) )*"
_THE = r"(?:the |my |its |all the |all my )*"
_WHEN = r"(?: (?:already|too|also|myself|first|now|on (?:it|this one|that one|there)|up|before lunch|after lunch|this morning|today|just now|right away|as well|last))*"
_BEEN = r"(?:'s| is| are|'re| was| were| has been| have been| got|'s been)?(?: (?:all|already|now|finally))*"
_GOOD = r"(?:real |pretty |just |all |nice and )*(?:fine|good|great|nice|perfect|tight|ok|okay|well|smooth|smoothly|clean)"

_NOUNS = (  # the act, what it is called, as a verb with its thing and in -ing
    ("taped", r"tap(?:ing|e job|e)", r"tape (?:it|this one|them|everything)(?: up| off)?", r"taping (?:it|this one|them)(?: up| off)?"),
    ("stapled", r"(?:stapling|staples|staple job)", r"staple (?:it|this one|them|everything)(?: up| down)?", r"stapling (?:it|this one|them)(?: up| down)?"),
    ("rubbed_down", r"(?:rubbing(?: down)?|rub[- ]?down|rub job)", r"rub (?:it|this one|them|everything|the tape)(?: down)?", r"rubbing (?:it|this one|them|the tape)(?: down)?"),
    ("surface_clean", r"(?:wiping(?: down)?|wipe[- ]?down|cleaning)", r"wipe (?:it|this one|them|everything|the facing)(?: down| off)?", r"wiping (?:it|this one|them|the facing)(?: down| off)?"),
    ("trimmed", r"(?:trimming|trim(?: job)?)", r"trim (?:it|this one|them|the flap)(?: back| off)?", r"trimming (?:it|this one|them|the flap)(?: back| off)?"),
    ("vanes", r"(?:turning )?vanes", r"(?:put|get|set|fit|slide) (?:the |my |all the )*(?:turning )?vanes in", r"(?:putting|getting|setting|fitting|sliding) (?:the |my |all the )*(?:turning )?vanes in(?: it)?"),
)  # fmt: skip


def _done():
    for act, noun, verb, doing in _NOUNS:
        yield act, True, rf"{_LEAD}(?:i |we )?(?:just |already |also |finally )*(?:did|finished(?: up)?|took care of|got done with|knocked out|wrapped up) {_THE}{noun}{_WHEN}$"
        yield act, True, rf"{_LEAD}(?:i |we )?(?:just |already |finally )*(?:got {_THE}{noun} (?:done|finished|out of the way|taken care of)|(?:finished|got done|am done|was done) {doing}){_WHEN}$"
        yield act, True, rf"{_LEAD}{_THE}{noun}{_BEEN} (?:done|finished|taken care of|complete|all set|where (?:it|they) (?:should be|belongs?|goes?|go))$"
        yield act, True, rf"{_LEAD}{_THE}{noun} (?:went|came out|turned out|looks?|looked|is looking)(?: on| in)? {_GOOD}$"
        yield act, True, rf"{_LEAD}(?:i |we )?(?:just |finally )*(?:managed|was able|were able|got a chance|got around|remembered|made sure) to {verb}(?: after all| this time| in the end| though)?$"
        yield act, True, rf"{_LEAD}(?:i |we )?(?:had )?no (?:trouble|problems?|issues?)(?: at all)? (?:with {_THE}{noun}|{doing}){_WHEN}$"


ACTS_DONE = tuple(_done())
