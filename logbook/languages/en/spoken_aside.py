"""English spoken beside the work: what hangs on a wall or lies in his hand, what he asks a man for, what he says in scorn. Patterns over sketches of sentences."""

from __future__ import annotations

from logbook.languages.told import Aside

_I = r"(?:i|we)"
_SO = r"(?:(?:yeah|yes|yep|sure|right|oh|ha|haha|uh huh|of course|okay|ok|no|man|boy|well|great) ,? ?)"
_GONNA = rf"{_I} ?(?:(?:'m|am|'re|are|was|were) (?:really |just |ever |totally )*(?:gonna|going to|about to|fixing to|itching to|dying to)|'ve got (?:time|nothing better|all day|the time)|have (?:time|nothing better|all day|the time|a choice)|got (?:time|nothing better|all day)|need|want|can(?= <)|could|(?:'ll|will) ever|don't have (?:anything|enough))(?! <d>)"

# what is written up for all to read, and is of no piece; what is on a roll or on the duct tells what that is
_SIGN = r"(?:(?:safety|warning|door|ladder|bumper|company|big|little|old|new|printed|hand[- ]?written|laminated) )*(?:signs?|posters?|stickers?|placards?|banners?|notices?|plaques?|white ?boards?|chalk ?boards?|bulletin boards?|t-?shirts?|calendars?|decals?|billboards?|memos?|flyers?|magnets?|handbooks?)"
_OF_STOCK = r"(?:<n>|#|rolls?|cores?|carton|case|box(?! ?(?:truck|office))|facing|foil|piece|one|it|mastic|bucket|pail|tub|can|sleeve|pack|jacket|liner|seam|joint|side|top|bottom|damper|unit|grille|gauge|strap)"
_THERE = rf"(?: (?:on|in|at|by|over|above|behind|inside|near|next to|across from|up) (?!(?:(?:the|this|that|my|a|every|each) )*(?:(?!(?:gang|job|tool|lunch|ice|switch|mail|electrical|ball|bread) )[\w-]+ )?{_OF_STOCK}(?![\w'])(?! truck))(?:[\w'-]+ ){{0,3}}?[\w'-]+)?"
_READS = r"(?: (?:out there|up there|right there|clearly|only|just|still|always|all|right|plain as day))*(?: ?'s got it| says?| said| reads?| tells?| told| goes| wants| has it| warns| asks| reminds| explains| preaches| lists| shows)(?![\w'])"
_NOT_HERE = r"[^.?!]* [.,;!?] (?:(?:well|but|and|so|only|guess what|funny|sorry) ,? ?)*(?:this one|that one|it|mine|ours|these|they|i|we)(?: (?:sure|just|still))* (?:\w+n't|never|ain't|did not|is not|has none|got none)(?! (?:<|#))"  # what was not done there is what is written up

_HAND = r"(?:hand|pass|toss|throw|grab|get|give|bring|fetch|slide|reach|shoot|find|send|roll)(?: me| us| him| her| over| down| up| here)+"
_ASKED = rf"(?:^|(?<=[.?!,] ))(?P<x>(?:(?:hey|yo|oi|ok|okay|so|and|say|listen|uh|please|{{name}}|buddy|kid|boss|bud|man|brother|son|[a-z]+(?= ,)) ,? ?)*(?:(?:can|could|will|would|can't|won't) you |go (?:and |ahead and )?|you wanna |do me a favor and |wanna |just |please )*{_HAND}(?![\w'])[^.?!]*?[.?!]"
_OF_IT = (
    r"(?:no|nope|nah|nuh|uh|yeah|yes|yep|yup|right|sure|sorry|not|that's|it|the|that|them|those|this|these|other|one|ones|'s|a|an|of|my|your|wide|narrow|big|little|good|long|short|full|new|old|skinny|fat|shiny|gray|grey|silver|inch|inches|half|quarter|quarters|eighth|eighths|sixteenth|sixteenths|and|or|with|to"
    r"|two|three|four|five|six|seven|eight|nine|ten|\d[\d/]*|181a?-?[phm]|p|h|m|roll|rolls|box|boxes|stick|strip|kind|stuff|size|gun|knife|there|over|here|by|in|on|from|left|behind|under|bag|truck|cart|bucket|bench|lift|pile|thanks|thank|you|please|perfect|good|great|man|buddy|bud|kid|boss|<n>|,|-)"
)
_LYING = (
    r"(?:(?:i|we|you) ?(?:'d|would) be (?:lying|fibbing|a liar|making it up|telling (?:stories|tales|a lie|lies))|(?:it|that) ?(?:'d|would) be (?:a|a big|a damn|a flat|an outright)? ?(?:lie|fib|stretch|whopper)|(?:it|that) (?:wouldn't|would not) be (?:true|so|right|honest)|(?:it|that) ?(?:'s|is|ain't|isn't|is not)(?: not)? (?:true|so|a lie|the truth)"
    r"|(?:i|we) (?:didn't|did not|never did|haven't|can't|won't|don't|couldn't)|(?:it|they) ?(?:'s not|is not|isn't|ain't|aren't|are not|never was|wasn't|weren't|didn't|never did)|(?:it|they)'re not|there (?:aren't|isn't|ain't|are not|is not|wasn't)(?: any)?|there's none|not so|no such luck|no)"
)
_TOLD_HIM = rf"{_I} ?(?:'d|would|could|can|might|wish (?:{_I} )?(?:could|was able to))(?: (?:like|love|be able|be happy|be glad|easily|just|sure|gladly|happily|probably|always))*(?: to)? (?:tell (?:you|him|them|everybody|people|the \w+)|say|swear|claim|write(?: down)?|put down|report|call it)"
_NOT_ON_IT = r"(?:that|it|this|which|those|they)(?: ?'s| is| was| are| ain't| isn't| wasn't| aren't| ?'re)? ?(?:not )?(?:what|the (?:one|kind|stuff|roll|tape|same|brand|type)|anything like what|the same as|<n>)(?: ?'s| is| are| was|(?: that)? went|(?: that)? i(?:'ve)?| we(?:'ve)?| that's| on| the| ended up| used| put| went)"

ENGLISH_SPOKEN_ASIDE = (
    # --- signs and posters
    Aside(
        rf"(?:^|(?<=, )|(?<=[.?!] ))(?P<x>(?:(?:and|but|so|now|well|there's|there is|got|saw|see|like|the|a|that|this|another|every|some|big|my|his|their|our|they've got|they got|they have) )*{_SIGN}(?: (?:that|which))?{_THERE}(?: (?:that|which))?{_READS})(?!{_NOT_HERE})",
        ("sign", "poster", "sticker", "placard", "banner", "notice", "plaque", "board", "shirt", "calendar", "decal", "memo", "flyer", "magnet", "handbook"),
        reach="sentence",
        unless=r"(?<![\w'])(?:tape|roll|staple|facing) (?:sticker|sign)",
    ),
    Aside(rf"(?:^|(?<=[.?!,] ))(?P<x>(?:(?:and|but|so) )*(?:it|they|he|she) (?:says?|said|reads?|wrote|put)(?: (?:it|so|right|there|up|that))* on (?:the |that |a |his |my )?(?:wall|door|fridge|truck|trailer|gate|fence|{_SIGN})(?![\w']))", ("wall", "door", "fridge", "truck", "trailer", "gate", "fence", "sign", "poster", "sticker", "board"), reach="sentence"),
    # --- scorn: "yeah right, like I'm gonna tape forty feet by myself"
    Aside(rf"(?:(?<=[.?!;] )|^)(?P<x>{_SO}+(?:like|as if|as though|because|cause|'cause) {_GONNA}[^.?!]*)(?= [.?!]|$)", ("like i", "like we", "as if ", "as though ", "because i", "because we", "cause i", "cause we"), unless=r"# ?(?:'s |is |has |got |was )"),
    Aside(rf"(?:(?<=[.?!;] )|^)(?P<x>{_SO}*(?:like|as if|as though) {_GONNA}[^.?!,;]*?(?:by myself|alone|before (?:lunch|noon|break|quitting)|for (?:free|fun|nothing)|all (?:day|night)|with my (?:bare|own) (?:hands|teeth))[^.?!]*)(?= [.?!]|$)", ("like i", "like we", "as if ", "as though "), unless=r"# ?(?:'s |is |has |got |was )"),
    Aside(rf"(?P<x>^{_SO}+(?:(?:boss|chief|sir|buddy|pal|no problem) ,? ?)*(?:i|we) ?(?:'ll|will|'m gonna|'re gonna|can|could) (?:just |go |go and |gladly |happily )*<[bn]>[^.?]*?(?:all|every one|each)(?: [\w-]+){{0,2}} of (?:them|those|'em|you)[^.?]*)(?= [.?]|$)", ("i'll", "we'll", "i will", "i'm gonna", "we're gonna", "i can", "we can"), unless=r"#"),
    # --- what he asks a man for, and which of them: "hand me that roll. No, the three inch. Thanks."
    Aside(rf"{_ASKED}(?: ?(?:{_OF_IT} ?)+(?= [.?!]))?)", ("hand ", "pass ", "toss ", "throw ", "grab ", "get ", "give ", "bring ", "fetch ", "slide ", "reach ", "shoot ", "find ", "send ", "roll "), unless=r"#"),
    # --- what is in his hand, and not what is on the piece
    Aside(
        rf"(?:^|(?<=[.?!] ))(?P<x>[^.?!]*?(?:181|<n>|roll|tape|mastic|inch|staple|box|carton)[^.?!]*?(?: ,| and| but| only| which| though| except)+ {_NOT_ON_IT}[^.?!,;]*)(?= [.?!,;]|$)",
        ("not what", "n't what", "not the", "n't the", "anything like"),
        names=True,
        unless=r"(?:that|it|this|which|those|they)(?: ?'s| is| was| are| ?'re)? (?:what|the (?:one|kind|stuff|roll|tape|same|brand|type)|<n>)(?![^.?!]*n't)(?![^.?!]*not )|not what (?:i|we) (?:wanted|ordered|asked|expected|like)|not what (?:they|he|she|it|the) ",
    ),
    # --- what he could say, and would lie
    Aside(
        rf"(?:(?<=[.?!;,] )|^)(?P<x>(?:(?:and|but|so|well|now) )*{_TOLD_HIM}(?: [.,])?(?: that)?(?: (?:it|this one|that one|they|there|#|i|we|the))* ?(?:'s|is|are|was|were|got|has|have|had|has been|'ve)? ?(?:all |been |got |any )*(?P<act><[dn]>)[^.?!]*?(?: ,)? (?:but|only|except|though)(?: ,)? {_LYING})(?= [.?!;,]|$)",
        ("tell ", "say ", "swear", "claim", "write", "put down", "report", "call it"),
        states=(("<act>", False),),
        names=True,
    ),
)
