"""English of one who speaks as he thinks: what he counts aloud, what he asks himself of a measure, what he says no to twice."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_COUNT = r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?|\d+(?:[ -]\d+/\d+|/\d+|\.\d+)?)"
_PART = r"(?:half|quarters?|eighths?|sixteenths?)"
_MEASURE = rf"(?:(?:an? inch and (?:an?|one|three|five|seven) {_PART}|(?:an?|one|three|five|seven)[- ]{_PART}|{_COUNT}(?: (?:and|&) (?:a|an|one|three|five|seven)[- ]{_PART})?)(?: by {_COUNT})?(?![\w'/-]))"
_UNIT = r"(?: ?(?:inch(?:es)?|degrees?|feet|foot|apart|long|wide|screws?|sided?|pieces?|pounds|tape|staples|leg))*"
_BE = r"(?:it's|it is|they're|they are|that's|that is|it was|they were|it reads|it says|looks like|more like|make (?:it|that)|i'd say|call it|a|an|every|at|about|only)"
_NO = r"(?:no|nope|nah|not)"
_PRINT = r"(?:(?:the |a |some )?(?:cloth|duct|masking|packing|foil|gray|grey|silver|no[- ]name|unlisted|listed|pressure|heat)(?: (?:duct|cloth))? tape|mastic|(?:181|one eighty[- ]one) ?[- ]?a(?:[- ](?:p|h|m))?)"

_ACT = r"(?:(?:been|yet|fully|really|even) )*(?:taped|stapled|rubbed|wiped|trimmed|preheated|closed|sealed|patched|clean)(?![\w'])"

_KIND_OR_NUMBER = rf"(?:the )?(?:(?:end cap|damper sleeve|straight|elbow|tee|branch|wye|cap|collar|offset|transition|reducer|plenum|sleeve)(?: (?:number )?{_COUNT})?|(?:number )?{_COUNT})"

_KIND_AND_NUMBER = rf"(?:end cap|damper sleeve|straight|elbow|tee|branch|wye|cap|collar|offset|transition|reducer|plenum|sleeve) (?:number )?{_COUNT}"

_DONE_OR_NOT = r"(?:(?:not|no|never|nope, no|all|also|isn't) )?(?:stapled|taped|rubbed|tape|vanes|staples|good|fine|done|same|okay|ok)(?: (?:down|in|yet|too|as well))?(?:(?: and| &) (?:not )?(?:stapled|taped|rubbed)(?: down)?)?"

ENGLISH_ALOUD = (
    # --- counted aloud, and then told: "one, two, three, yeah three inches"
    Plainer(("one, two, three", "1, 2, 3"), r"(?<=[,.;:] )(?P<x>(?:one, two, three|1, 2, 3)(?:, (?:four|4))?(?:, (?:five|5))?(?:, (?:six|6))?, (?:(?:yeah|yep|okay|so|right|and|that's|it's),? )*)(?=(?:three|four|five|six|[3-6]) (?:inch|inches|apart|sides|of (?:them|the)))", (("x", ""),)),
    # --- how far back, told behind a word that it belongs to
    Plainer(("that'd be", "that would be", "that makes", "call it", "i make it", "that'll be", "that comes to", "that is", "we're at"), rf"(?:back|in|out|down|up|every|by|over)(?P<x>, (?:(?:so|and|well) )?(?:that'd be|that would be|that makes(?: it| that)?|call it|i make it|that'll be|that comes to|that is|we're at),? )(?={_MEASURE})", (("x", " "),)),
    # --- asks himself for a measure and gives another: "is it a ninety, no, it's a forty-five"; or the same
    Plainer(("is it", "are they", "was it", "were they", "is that", "are those", "are these", "is this"), rf"(?P<x>(?:is|are|was|were) (?:it|they|that|this|these|those) (?:an? |every |at |about )*{_MEASURE}{_UNIT}[,?] (?:{_NO}[,.]? )+)(?=(?:{_BE},? )*{_MEASURE})", (("x", ""),)),
    Plainer(("is it", "are they", "was it", "were they", "is that", "are those", "are these", "is this"), rf"(?P<x>(?:is|are|was|were) (?:it|they|that|this|these|those) )(?:an? |every |at )?(?:{_MEASURE}{_UNIT}|{_PRINT})(?P<y>[,?] (?:yes|yeah|yep|yup)(?:,? (?:it is|they are|it was|that's it|it sure is|sure is|that it is))?)(?=[.,;]|$)", (("x", ""), ("y", ""))),
    Plainer(("is it", "was it", "is that", "is this", "did i use", "did we use"), rf"(?P<x>(?:(?:is|was) (?:it|that|this)|did (?:i|we) use) {_PRINT}(?: on (?:it|this|that|this one|that one))?[,?] (?:{_NO}[,.]? )+)(?=(?:it's|it is|that's|it was|that was|i used|we used|it's just|just) (?!not|no |{_NO}|stapled|taped|rubbed))", (("x", ""),)),
    # --- named, and said no to twice: "vanes, no, it's got none"
    Plainer(("none", "nothing", "not one", "not a "), r"(?<=, )(?P<x>(?:no|nope|nah), )(?P<y>(?:it's got|it has got|there's|we've got|i've got|it has|i see|there are|there is) )?(?:none|not one|not a (?:one|single one|thing)|nothing)(?P<z>(?: there| here| in it| on it| at all| in there| on there)*)(?=[.,;]|$)", (("x", ""), ("y", ""), ("z", ""))),
    Plainer(("flap no", "flap yes", "flap nope", "scrim no", "scrim yes", "scrim nope"), r"(?:(?<=[,.;] )|^)(?:staple )?(?:flap|scrim)(?P<x>) (?:no|nope|yes)(?=[.,;]|$)", (("x", "?"),)),
    # --- of two pieces: "neither is taped" is "both are not taped", "no tape on either" is "no tape on both"; "just not 21" is "except 21"
    Plainer(("neither",), rf"(?:^|(?<=[.,;?!] )|(?<=\band )|(?<=\bbut ))(?P<x>neither(?: one)?(?: of (?:them|those|these|the two))?(?:(?: (?:is|was|are|were|got|gets|has been|have been)|'s(?: been)?))?) (?={_ACT})(?![^.,;?!]* nor )", (("x", "both are not"),)),
    Plainer(("neither",), r"(?:^|(?<=[.,;?!] )|(?<=\band )|(?<=\bbut ))(?P<x>neither(?: one)?(?: of (?:them|those|these|the two))? (?:has|have|had|got)(?: (?:any|a|its|their))?) (?=(?:turning )?(?:vanes|tape|staples|a flap|flap|tabs|mastic)(?![\w']))(?![^.,;?!]* nor )", (("x", "both have no"),)),
    Plainer((" either",), r"(?<![\w'])(?:no|without|[a-z]+n't|never|not|forgot)(?! nor)[^.?!;]{1,40}? (?:on|in|for) (?P<x>either(?: one)?(?: of (?:them|those|these|the two))?)(?= *(?:[.,;?!]|$)| (?:yet|and|but)\b)", (("x", "both"),)),
    Plainer(("just not", "only not", "not on"), rf"(?:all|everything|everything's|both|each|every one)(?![\w])[^.?!]{{2,60}}?, (?P<x>(?:just|only) not(?: on)?) (?=(?:number )?{_COUNT}(?! (?:inch|by))| the | straight | elbow )", (("x", "except"),)),
    Plainer(("everything",), rf"(?:\band|,) (?:the |then )?(?:(?:end cap|damper sleeve|straight|elbow|tee|branch|wye|cap|collar|offset|transition|reducer|plenum|sleeve) )?(?:number )?{_COUNT}[.,;] (?:(?:and|so|okay|ok),? )*(?P<x>everything(?:'s| is| was| got))(?= (?:all )?{_ACT})", (("x", "they're all"),)),
    # --- how far apart the staples are on one and on the other: "staples on 22 are two inches, on 23 they're four"
    Plainer(("staples are at", "staples were at", "staples is at"), rf"staples(?: (?:on|in|of) (?:it|this one|{_KIND_OR_NUMBER}))? (?:are|is|were) (?P<x>at) (?={_MEASURE}(?: inch(?:es)?)?(?: apart)?(?:[.,;]|$| and| but))", (("x", "every"),)),
    Plainer(("staple",), rf"staple[sd][^.?!]{{0,50}}?{_MEASURE}(?: inch(?:es)?)?(?: apart)?[,.;] (?:(?:and|but|then|while) )*(?:on )?{_KIND_OR_NUMBER}(?:'s(?: (?:staples|are|is))*(?P<x> (?:at |about )?)|,?(?: staples)? (?:they'?re|it'?s|they are|it is|are|is|were)(?P<y> (?:at |about )?))(?={_MEASURE}(?: inch(?:es)?)?(?: apart)?(?:[.,;]|$))", (("x", " every "), ("y", " every "))),
    # --- he looks whether, and finds; he counts none
    Plainer(("let me see if", "let me check if", "let me look if", "let me see whether", "let me check whether", "lemme see if", "lemme check if"), r"(?P<x>(?:let me|lemme) (?:just )?(?:see|check|look) (?:if|whether) )(?P<i>i|we)(?P<v> (?:\w+ed|got|put)(?: (?:it|that|them|this one|those|the \w+)(?: (?:down|in|on))?)?)(?P<y>,) (?=(?:no|nope|nah|yes|yeah|yep|i did|i didn't|not|never)\b)", (("x", ""), ("y", "?"))),
    Plainer(("let me see if", "let me check if", "let me look if", "let me see whether", "let me check whether", "lemme see if", "lemme check if"), r"(?P<x>(?:let me|lemme) (?:just )?(?:see|check|look) (?:if|whether) (?:it's|it is) )(?P<v>[^,.?!]{3,30})(?P<y>,) (?=(?:no|nope|nah|yes|yeah|yep|it is|it isn't|not|never)\b)", (("x", "is it "), ("y", "?"))),
    Plainer(("zero", "i count", "i see no", "i'm seeing no"), r"(?<=, )(?P<x>(?:i (?:count|see|get|got|have|find)|i'm (?:seeing|counting)|there's|there are|that's) (?:exactly |a big )?(?:zero|none|nothing|no such thing))(?=[.,;]|$)", (("x", "none"),)),
    Plainer(("looking at", "i look at"), r"(?P<x>,(?: (?:but|and|now))* (?:looking at|when i look at|now that i look at) (?:it|this|that)(?: (?:now|again|closer|close up))*,)(?= (?:no|nope|nah)(?=[.,;]|$))", (("x", ","),)),
    # --- a piece told by the one beside it, and its number: "the tee next to it, eleven"
    Plainer(("next to", "beside", "behind", "goes on", "goes in", "goes with", "after", "ahead of", "coming off", "comes off", "hooked to", "tied to"), rf"(?:the|a|its|another) (?:end cap|damper sleeve|straight|elbow|tee|wye|cap|collar|offset|transition|reducer|plenum|sleeve)(?P<x>(?: (?:that|which))? (?:right |just )?(?:next to|beside|behind|goes on|goes in(?:to)?|goes with|after|ahead of|coming off(?: of)?|comes off(?: of)?|hooked to|tied to) (?:it|that|that one|him),?(?: (?:number|which is|that's))? )(?={_COUNT}(?:[.,;:]|$| and | are | is ))", (("x", " "),)),
    Plainer((", that's", ", which is", ", that is", ", number"), rf"(?:^|(?<=[.,;?!] )|(?<=\band )|(?<=\bbut ))(?:the|a|another|one|my) (?:end cap|damper sleeve|straight|elbow|tee|wye|cap|collar|offset|transition|reducer|plenum|sleeve)(?P<x>, (?:that's|which is|that is)(?: number)? )(?={_COUNT}(?:[.,;:]|$))", (("x", " "),)),
    # --- what is said of all of them, and then which: "the straights are all taped, 5, 6 and 7"
    Plainer(("straights", "elbows", "tees", "caps", "collars", "offsets", "transitions", "reducers", "branches", "wyes"), rf"(?:^|(?<=[.,;?!] )|(?<=\bmy )|(?<=\bthe )|(?<=\ball )|(?<=\bthose )|(?<=\bthese )|(?<=\btwo )|(?<=\bthree )|(?<=\bfour )|(?<=\bfive )|(?<=\bboth ))(?:straights|elbows|tees|(?:end )?caps|collars|offsets|transitions|reducers|branches|wyes)(?P<a>)(?= (?:are|were|is|got|have|has|all|both|taped|stapled|rubbed|hung|done|went|came)(?![\w']))[^.,;?!\d]{{3,60}}(?P<x>, (?P<n>{_COUNT}(?:, {_COUNT})*(?:,? and|,) {_COUNT}))(?=[.,;]|$)", (("a", r" \g<n>"), ("x", ""))),
    # --- which of two, and which piece it was
    Plainer(("other way",), r"(?<=[.,;] )(?P<x>[^.,;?!]{3,60}[.,] (?:(?:no|wait|sorry|hang on|hold on),? )*(?:it's |the )*other way (?:a)?round[.,:;] )(?=[^.?!]*(?<![\w'])(?:in|on|for|is|are|has|none|both|isn't)(?![\w']))", (("x", ""),)),
    Plainer(("one's ", "one is ", "the one "), rf"(?P<x>(?:the )?one)(?P<v>(?:'s| is| has| got) [^,.?!]{{2,30}})(?P<y>, (?P<n>{_COUNT}))(?=,? (?:and )?the other)(?P<j>,? (?:and )?)(?P<z>the other(?: one)?)(?:'s| is| has| got| isn't| doesn't)[^,.?!]{{0,30}}(?P<w>, (?P<m>{_COUNT}))(?=[.,;]|$)", (("x", r"\g<n>"), ("y", ""), ("z", r"\g<m>"), ("w", ""))),
    Plainer(("that was",), rf"(?:^|(?<=[.;?!] ))(?P<a>{_KIND_AND_NUMBER})(?P<v>(?:,| is| was) [^.?!,]{{3,60}})(?P<x>[.,] (?:(?:oh|no|wait|sorry|hang on|hold on),? )+(?:no,? )?that was (?P<k>{_KIND_AND_NUMBER}))(?=[.,;]|$)", (("a", r"\g<k>"), ("x", ""))),
    # --- what he had said or checked, before what it is
    Plainer(("i said", "i told", "i thought", "i figured"), r"(?<=[.,;] )(?P<x>i (?:said|told (?:you|him)|thought|figured)(?: that)? (?:it|that|this|the joint) (?:was|is) (?:tight|fine|good|clean|okay|ok|all right|closed up|snug)(?: (?:before|earlier|this morning|already))*, )(?=(?:(?:but|and|well),? )*(?:it's|it is|there's|it isn't|i've got)(?![\w']))", (("x", ""),)),
    Plainer(("i said yes", "i said no"), r"(?P<x>i said (?:yes|no),? (?:but )?(?:it's|it is|that's|make that|it was) (?:a )?)(?=(?:yes|no|nope|yeah)(?=[.,;]|$))", (("x", ""),)),
    Plainer(("checked", "looked", "measured"), rf"(?:checked|looked|measured)(?: (?:it|that|again))*, (?P<x>(?:{_NO}[,.]? )+)(?=(?:{_BE},? )*{_MEASURE})", (("x", ""),)),
    Plainer(("gap",), rf"gap(?: (?:at|on|in|there)(?: (?:the|that|this))?(?: (?:joint|end|heel|throat|corner))?)?(?P<x>\? (?:yes|yeah|yep|yup|uh-huh|oh yeah)[.,]? )(?=(?:about |maybe |a good )*{_MEASURE})", (("x", " "),)),
    Plainer((" on the other",), rf"(?P<a>{_MEASURE})(?: inch(?:es)?)? (?:between (?:the )?staples|apart) on (?:one|the \w+) side, (?:and |but )?(?P<y>)(?={_MEASURE}(?: inch(?:es)?)? on the other)", (("y", "every "),)),
    Plainer((" as ",), rf"(?:^|(?<=[.,;?!] )|(?<=\band )|(?<=\bbut ))(?:i|we)(?P<x>(?:'d| had| have|'ve)? (?:written|wrote|put|had|marked|logged|have)(?: down)? )(?P<k>{_KIND_AND_NUMBER}|(?:number )?{_COUNT}|it|that|this one|that one)(?P<y>(?: down)? as )(?=(?:every|stapled|taped|rubbed|trimmed|wiped|done|not|having|cloth|{_COUNT} inch))", (("x", " said "), ("y", " was "))),
    # --- vanes in the one and none in the other
    Plainer((" and none in", " and none on", " and not in", " and not on"), rf"(?:in|on) {_KIND_OR_NUMBER}(?P<x> and )(?=(?:none|not) (?:in|on) {_KIND_OR_NUMBER}(?:[.,;]|$))", (("x", ", "),)),
    # --- one behind another between commas, the one without it, and the one that is left
    Plainer(("taped,", "stapled,", "rubbed,", "tape,", "vanes,", "good,", "done,", "fine,", "same,"), rf"(?<![\w'/.-]){_COUNT}, {_DONE_OR_NOT}(?P<x>,)(?= (?:and )?(?:number )?{_COUNT}, {_DONE_OR_NOT}(?:[.,;]|$))", (("x", "."),)),
    Plainer(("the only one", "the only piece"), rf"{_KIND_OR_NUMBER}(?:'s| is)(?P<x> the only (?:one|piece)(?: (?:of (?:them|those|these)|here|there|left))*)(?= (?:without|with no|missing|not|lacking)(?![\w']))", (("x", ""),)),
    Plainer(("the only one", "the only piece"), rf"{_KIND_OR_NUMBER}(?P<x>(?:'s| is) the only (?:one|piece)(?: (?:of (?:them|those|these)|here|there|left))* (?:that|which) )(?:isn't|hasn't|has no|doesn't|never|has not|is not)(?![\w'])", (("x", " "),)),
    Plainer((", which i", ", which we", ", which is", ", which has", ", which still"), rf"{_KIND_AND_NUMBER}, (?P<x>which )(?=(?:i|we) (?:haven't|have not|didn't|did not|never|forgot|still have|couldn't|have yet)|isn't|hasn't|still needs|has no|is not)", (("x", ""),)),
    Plainer((" without", ), rf"with (?:the |its |their )?(?:turning )?(?:vanes|tape|staples|a flap|tabs)(?P<x>,? and )(?={_KIND_OR_NUMBER} without(?:[.,;]|$))", (("x", ", "),)),
    Plainer(("forgot",), rf"(?P<t>vanes|tape|staples)(?![\w' ]* (?:roll|box))[^?!]{{0,40}}[.,;] (?:(?:and|but|on) )*{_KIND_OR_NUMBER},? (?:(?:i|we) )?(?P<x>forgot(?: (?:them|it|those|that))?)(?=[.,;]|$)", (("x", r"forgot the \g<t>"),)),
    Plainer(("one's ", "one is "), rf"(?P<x>one(?:'s| is) (?P<a>taped|stapled|rubbed|trimmed)(?: down)?,? (?:and )?(?:one(?:'s| is)|the other(?: one)?(?:'s| is)) not, )(?={_KIND_OR_NUMBER}(?:'s| is) not)(?:[^.,;?!]{{2,40}}?(?:'s| is) not)(?P<y>)(?=[.,;]|$)", (("x", ""), ("y", r" \g<a>"))),
    Plainer(("collar", "boot"), rf"(?:collar|boot) (?:number )?{_COUNT}[^!]{{0,60}}?[.,;?] (?:(?:no|but|and|well),? )*(?:two|three|four|five|six|a few|half)(?P<x>)(?= (?:are|were) (?:(?:still|all|just|not) )*(?:stick|stand|bent|straight up))", (("x", " of the tabs"),)),
)
