"""English of what was told or written of a piece and of what it is: "my notes say taped, my eyes say not", "they said it doesn't need vanes. It does and it has none", "as taped as my grandmother".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.plainer import Plainer

_DONE = r"(?:taped|stapled|rubbed(?: down| out)?|wiped(?: down)?|trimmed|sealed|patched|pre-?heated|clinched|hung|closed)"
_NOT = r"(?:isn't|is not|wasn't|was not|ain't|not|never|hasn't been|has not been|haven't been|aren't|weren't|'s not|'re not|didn't get|never got)"
_PAPER = r"(?:(?:my|the|his|that|their|yesterday's|today's) (?:\w+ )?(?:notes?|memory|head|paper|list|sheet|tag|book|log|label|phone|marker|marking|writing|board|ticket|card|chart|tablet)|paper)"
_EYES = r"(?:(?:my|the) (?:own )?(?:eyes?|hands?|fingers?|thumb|duct|flashlight|gut|nose|piece|joint|seam|tape|flap|knife)|i)"
_SAYS_NO = r"(?:says?|said|tells? me|told me)(?: (?:it's|it|me|that))* (?:not|no|nope|otherwise|different(?:ly)?|something else|another story|a different story|isn't|ain't|isn't so|not so|it isn't|it ain't|it's not|not true)"
_NEED = r"(?:need|want|take|require|call for|use)"
_BUT = r"(?:(?:but|well|yes|yeah|oh|sure|and|guess what),? )*"
_NO_PIECE = rf"(?!(?:{KIND}|other|last|rest|next|one|first|second|drawing|print|book|spec|day|top|bottom|left|right|back|front|job|rule|law|boss|foreman|inspector|lead)(?![\w']))"

ENGLISH_SEEN_OTHERWISE = (
    # --- "isn't a hundred percent taped", "isn't in fact taped": no more than not taped
    Plainer(("percent", "100%", " in fact ", " in reality ", " in any way ", " and "), rf"(?<![\w]){_NOT}(?P<x> (?:(?:a |one )?(?:hundred|100) ?(?:percent|%)|in fact|in reality|in any way|by any means|(?:all )?(?:good|up|done|well) and))(?= {_DONE}(?![\w]))", (("x", " really"),)),
    # --- a joint that is not even
    Plainer((" even",), r"(?:joints?|seams?|edges?|ends?|butts?|lap|shiplap|boards?|panels?)(?:'s| is| are| was| were|'re)?(?: (?:quite|really|all|too))* ?(?:not|isn't|aren't|wasn't|weren't|ain't)(?: (?:quite|really|all that|too))* (?P<x>even)(?=[.,;!]|$| (?:at|along|on|across|all|with|there|in|and|so)(?![\w']))", (("x", "lined up"),)),
    # --- what is written, and what he sees
    Plainer((" say", " said", " tell", " told"), rf"(?<![\w'])(?P<x>{_PAPER} (?:says?|said|tells? me|has it|had it|shows?)(?: (?:it's|it is|it was|that|as|it))* ){_DONE}(?P<y>(?:[.,;]| -)?(?: (?:but|and|only|well))* {_EYES} {_SAYS_NO})(?=[.,;!]|$)", (("x", "it's not "), ("y", ""))),
    # --- what it does need, and has not
    Plainer((" does", " do ", " did"), rf"(?:doesn't|don't|didn't|does not|do not|wouldn't|won't) {_NEED}(?: (?:any|no|the))* (?:vanes|tape|staples|mastic|tabs|washers|it|them)(?:,? (?:he|she|they) (?:says?|said|told me|claims?))?(?P<x>[.,;!] {_BUT}(?:it|they|this one|that one) (?:does|do|did)(?: too| so| need (?:it|them)| sure enough)?(?:[.,;] {_BUT}|,? (?:and|but|only) ))(?=(?:it|they|there|this one|i|we)(?:'s|'re| is| are)? ?(?:doesn't|don't|didn't|isn't|aren't|ain't|hasn't|haven't|got none|has none|none|not|never|no)(?![\w']))", (("x", ". "),)),
    Plainer((" does", " do ", " did"), rf"(?:doesn't|don't|didn't|does not|do not|wouldn't|won't) {_NEED}(?: (?:any|no|the))* (?:vanes|tape|staples|mastic|tabs|washers)(?P<x>[.,;!] {_BUT}(?:it|they|this one|that one) (?:does|do|did)(?: too| so| need (?:it|them)| sure enough)?)(?=[.,;!] (?:and |but )?(?:it's|it|they|there)(?: got| has| have|'s|'re)* (?:got none|none|not|no|n't)(?![\w']))", (("x", ""),)),
    # --- another piece, that he had in mind
    Plainer((" another", " different", " other one", " next one", " last one"), rf"(?:swear|swore|thought|sure|remember|sworn|figured)(?: (?!not|never)[\w']+){{0,5}}? {_DONE}(?: (?:it|this one|this|that))*(?P<x>[.,;] (?:(?:and|but|so|it|guess|i guess),? )*(?:must have been|must've been|must be|that must have been|that was|had to be|it was|was)(?: (?:probably|some|the|a|an|that|on))* (?:another|different|other|next|last)(?: one| piece| straight| joint)?[.,;!] (?:(?:but|and|so|because),? )*(?:this one|this|it|that one))(?=(?:'s|'s not|isn't| is| isn't| is not| ain't| wasn't| hasn't| has| doesn't| didn't| never| got)(?![\w]))", (("x", ", but it"),)),
    # --- up and down he swears; as taped as a dog
    Plainer(("swore ", "swears ", "swearing "), r"(?:swore|swears|swearing)(?P<x> (?:up and down|to god|on (?:his|her) (?:mother|life|kids|bible|mother's grave)|blind|left and right))(?= (?:that |it|he|she|they))", (("x", ""),)),
    Plainer((" as my ", " as a ", " as an ", " as your "), rf"(?:is|'s|was|looks|looked|it)(?P<x> (?:about |just about |nearly |every bit |only )?as )(?:well |good and )?{_DONE}(?P<y> as (?:my|a|an|your) {_NO_PIECE}[a-z']+(?: (?!and|but|is|so)[a-z']+){{0,3}})(?=[.,;!]|$)", (("x", " not "), ("y", ""))),
    # --- as they say, and as one counts
    Plainer(("allegedly", "in theory", "theoretical", "in principle"), rf"{_DONE}(?P<x>,? (?:allegedly|in theory|theoretically|in principle))(?=[.,;!]|$)", (("x", ", supposedly"),)),
    Plainer((" my foot", " my eye", " my aunt", " my ass", " my butt"), rf"{_DONE}(?P<x> my (?:foot|eye|aunt fanny|ass|butt|left foot))(?=[.,;!]|$)", (("x", ", yeah right"),)),
    Plainer(
        (" if ",),
        rf"{_DONE}(?: (?:down|up))?(?P<x>,? (?:only |but only |well,? )?if (?:you(?:'d| would| can| could|'ll)? (?:count|squint|don't look|don't mind|close (?:one|your|an) eyes?|use your imagination|ignore|stand back|stand far|overlook|forgive|don't count)(?![\w'])[^.?!,;]*|(?:a |an |one |two |three |half )?[a-z]+(?: [a-z]+){{0,3}} counts?(?: as [a-z]+)?))(?=[.,;!]|$)",
        (("x", ", supposedly"),),
    ),
    # --- strangers to one another
    Plainer((" strangers", " never met", "n't met", " met "), r"(?P<x>and )(?:the )?(?:tape|staples|vanes|mastic)(?P<y> (?:are (?:total |complete |perfect |still )?strangers(?: to each other)?|(?:have never|never|haven't|have not|ain't) (?:even |ever |yet )?(?:met|been introduced)(?: each other| yet)?))(?=[.,;!]|$)", (("x", "has no "), ("y", ""))),
)
