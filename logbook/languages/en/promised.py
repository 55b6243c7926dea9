"""English of what is put off: a thing denied and promised in one breath ("no tape, tomorrow I put"), a side left for later, what remains; and the plain words for it."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_DAY = r"(?:tomorrow|tonight|monday|tuesday|wednesday|thursday|friday|saturday|next week|later(?: on)?|this afternoon|after (?:lunch|break|dinner|coffee)|first thing|in the morning)"
_TIME = rf"(?:(?:on |it's |that's |for |come |by |maybe |just |probably )*{_DAY}(?: (?:morning|first thing|in the morning|afternoon|night|after lunch))*)"
_DOING = r"(?:do|doing|make|put|finish|finishing|tape|staple|rub|get|attend to|see to|take care of|handle|knock out|fix|hit|catch|complete|apply|install|go back for|come back for|come back to|return to|get to|get back to)"
_WILL = r"(?:will|shall|'ll|'m going to|am going to|are going to|going to|gonna|can|have to|need to|want to|must)"
_THAT = r"(?: (?:it|that|them|this|the tape|the vanes|the staples|the rest|those))?(?: (?:on|in|up|down|out|done))?"
_ENDS = r"(?=[.,;!]|$)"
_REST = r"(?:the )?(?:other|others|4th|fourth|3rd|third|last|rest|remaining|other one|other two|last one|fourth one|4th one|last two)(?: (?:one|side|sides|seam|two))?(?: of (?:it|them))?"
_SO_MANY = r"(?:one|two|three|[123]) sides?(?: (?:only|so far|taped|stapled|done|on it|yet|now|today|for now))*[,.;]? (?:and |but |so |then )*"
_WORK = r"(?:tape|taping|vanes?|staples?|stapling|rub|rubbing|rub down|trim|trimming)"
_NOT_APART = "".join(f"(?<!{word} )(?<!{word} the )" for word in ("from", "except", "for", "bar"))  # "finished apart from the rubbing, I'll do that after lunch"

# right behind an act that was denied: when it will be done
ENGLISH_PROMISE = (
    rf"(?: yet)?(?: (?:on|in|at|of|for) (?:it|there|them|now|this one|the [a-z]+(?: side)?))?(?:[,.;]| ?[-\u2013\u2014])? (?:(?:and|but|so|which|this|that|it|they|those) )*"
    rf"(?:(?:{_I} ?{_WILL}|{_WILL}|{_I}|they ?{_WILL}|they) {_DOING}{_THAT} {_TIME}|{_DOING}{_THAT} {_TIME}|go in {_TIME}|(?:(?<=[,.;] )|(?<=[-\u2013\u2014] )){_TIME}(?: {_I}(?: ?{_WILL})? {_DOING}{_THAT})?|(?<=but ){_TIME}|(?:still |yet |left )?to (?:do|be done|come)|to follow)(?=[.,;!]|$)"
)

ENGLISH_PROMISED = (
    Plainer(("after the ",), r"after(?P<x> the) (?:lunch|break|dinner|coffee|supper)(?![\w'])", (("x", ""),)),
    # --- not done yet
    Plainer(("untaped yet", "unstapled yet", "unrubbed yet"), r"(?P<x>un(?P<d>taped|stapled|rubbed) yet)(?![\w'])", (("x", r"not \g<d> yet"),)),
    Plainer(("not in yet",), r"vanes(?: are)? (?P<x>not in) yet(?![\w'])", (("x", "not installed"),)),
    # --- so many sides, and the rest of them later
    Plainer((" side",), rf"{_SO_MANY}(?P<x>(?:{_I} ?)?(?:{_WILL} )?(?:{_DOING} )?{_REST} {_TIME}){_ENDS}", (("x", "last side tomorrow"),)),
    Plainer((" side",), rf"{_SO_MANY}(?P<x>(?:{_REST}|one(?: more)?(?: side)?) (?:(?:is |are )?(?:still )?(?:to go|to do|left to do|still open|still waiting|waiting|still to go|not yet)|left)){_ENDS}", (("x", "last side tomorrow"),)),
    Plainer((" side",), rf"{_SO_MANY}(?P<x>(?:{_I} )?(?:still )?(?:need|needs|have|has|got|gotta|owe)(?: to)?(?: (?:do|get|finish|tape|staple))? {_REST}){_ENDS}", (("x", "last side tomorrow"),)),
    # --- what remains
    Plainer(("remain", "rest", " left"), rf"(?P<x>(?:it )?(?:only |just )?(?:remain|remains|rest|rests)(?: only| just)? (?:the )?)(?={_WORK}{_ENDS})", (("x", "still have to do: "),)),
    Plainer((" left", " remain"), rf"(?P<x>(?:only |just )(?:the )?(?P<t>{_WORK}) (?:is |are )?(?:left|remains?|missing)){_ENDS}", (("x", r"still have to do: \g<t>"),)),
    Plainer(("still ",), rf"(?P<x>still the )(?=(?:tape|taping|vanes|staples|stapling|rubbing){_ENDS})", (("x", "still have to do: "),)),
    # --- the thing first: "tape, I do that Monday", "the tape I didn't", "tape I make only half"
    Plainer((" i ", " we ", " i'll", " we'll"), rf"{_NOT_APART}(?:the )?{_WORK}(?P<x>,? {_I}(?: ?{_WILL})? (?:do|make|finish|get|get to|handle|take care of|attend to)(?: (?:it|that|them|this))? )(?={_TIME}{_ENDS})", (("x", " "),)),
    Plainer((" i ", " we "), rf"(?P<x>(?:the )?(?P<t>tape|staples?|vanes?|rub),? {_I} (?:did not|didn't|don't|do not|not|no|haven't)){_ENDS}", (("x", r"no \g<t>"),)),
    *(
        Plainer((" half",), rf"(?P<x>(?:the )?(?:{act}|{doing})(?:,? {_I} (?:make|made|do|did|put))?(?: (?:is|only|just|like|about))* half(?: (?:done|way|of it|finished|the way))?){_ENDS}", (("x", f"half {done}"),))
        for act, doing, done in (("tape", "taping", "taped"), ("staples?", "stapling", "stapled"))
    ),
)
