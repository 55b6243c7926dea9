"""English for what is still to be put on a piece, cut into it, coated or written on it: work of the piece though no act of ours is named.

"I still have to coat the cut edges", "the splitter blade I still gotta put in", "the hole for the sensor still needs drilling". What waits at the
wall, on a tool, a paper or another man's roof is no work of the piece.
"""

from __future__ import annotations

from logbook.languages.language import State

_DET = r"(?:(?:the|its|that|my|our|a|an|one|two|another|those|some|other|last|new|sheet metal|metal) )*"
_PART = r"(?:(?:access |inspection )?door|(?:corner |angle )?(?:angle|iron)s?|corner angles?|splitter(?: blade| damper)?|(?:scoop|extractor|turning blade|blade)|(?:test |hole )?plugs?|stiffeners?|tie rods?|nosing|cover(?: plate)?|frame|gasket|flange|handle|thermometer well|well|access panel|test port|port|(?:id |paper )?(?:label|tag|sticker)|washers|screws|clips|spin-?in|start(?:er)? collar|take-?off)"
_EDGES = r"(?:(?:cut|raw|bare|exposed|open|end|inside|outside|board) )+(?:edges?|ends?|glass|fiber|fiberglass|insulation)|edges"
_NAME = r"(?:(?:piece |part |mark )?number|mark|label|tag|size|name|arrow|airflow arrow|air arrow)"
_HOLE = r"(?:(?:test|sensor|probe|gauge|pitot|thermostat|tap|branch|collar|damper|detector) )?(?:holes?|opening|port|cut-?out)"
_ELSEWHERE = r"(?! (?:in|through|into|on|for|to|of) (?:the |my |our |a |that )?(?:hangers?|anchors?|rods?|straps?|roof|wall|slab|floor|deck|ceiling|joists?|beam|studs?|concrete|block|truck|van|trailer|gang ?box|cart|lift|box|shed|shop|next|other|office|plans?|drawing|sheet|list|paper|form|board on the)(?![\w']))"
_STILL = r"(?:still (?:have to|need to|needs to|gotta|got to|has to|to|must)|(?:have|has|need|needs|got) (?:yet |still )?to|gotta|left to|yet to|(?:i|we)'ll(?: have to| need to)?|will(?: have to)?|gonna|going to|owe it)"
_AND_GO = r"(?: (?:go|come|get) back(?: up| there)? and)?(?: just| also| then)?"
_PUT = r"(?:put|stick|install|set|fit|mount|screw|glue|fasten|attach|slide|add|drop|pop|get)"
_IN = r"(?:in|on|up|over it|back in|back on|in it|on it|in there|on there)"
_WHEN = r"(?:tomorrow|tonight|later|monday|tuesday|wednesday|thursday|friday|in the morning|next week|after lunch|this afternoon|when (?:it|they|i|we)\b|once (?:it|they|i|we)\b|first thing|as soon as)"
_COAT = r"(?:coat|paint|seal|butter|brush|cover|close|dope|treat|wet down)"
_WRITE = r"(?:write|put|mark|stamp|paint|stencil|stick|letter|spray|draw|mark up)"
_CUT = r"(?:cut|drill|bore|punch|make|open|saw|poke)(?: in| out| up)?"
_DOING = r"(?:drilling|drilled|cutting|cut|coating|coated|painting|painted|sealing|boring|bored|punching|punched|writing|marking|marked|labeling|labelled|labeled|installing|installed|mounting|mounted|putting (?:in|on)|put (?:in|on)|to go (?:in|on)|to be [\w]+(?: (?:in|on|out))?|to get (?:drilled|cut|coated|painted|put in|put on))"

ENGLISH_PARTS_TO_COME: tuple[State, ...] = (
    State(
        "(open)",
        None,
        (
            rf"{_STILL}{_AND_GO} {_PUT} {_DET}{_PART}(?: [\w-]+){{0,3}}? {_IN}\b{_ELSEWHERE}",
            rf"{_STILL}{_AND_GO} {_PUT} {_IN} {_DET}{_PART}\b{_ELSEWHERE}",
            rf"{_STILL}{_AND_GO} {_COAT} {_DET}(?:{_EDGES})\b{_ELSEWHERE}",
            rf"{_STILL}{_AND_GO} {_WRITE} {_DET}{_NAME} (?:on|onto|inside|to)(?: (?:it|this|this one|that one|her|there|the (?:side|end|outside|inside|duct|piece|facing|foil|board|elbow|straight|tee|cap|branch|wye|plenum)|(?:straight|elbow|tee|piece|number|plenum|offset|wye|branch)\b))?{_ELSEWHERE}",
            rf"{_STILL}{_AND_GO} (?:label|tag|number|letter|mark) (?:it|this|this one|that one|her)$",
            rf"{_STILL}{_AND_GO} {_CUT} {_DET}{_HOLE}\b{_ELSEWHERE}(?! for (?:\w+ )?(?:hangers?|anchors?|rods?|straps?))",
            rf"{_DET}(?:{_PART}|{_HOLE}|{_EDGES}|{_NAME})\b{_ELSEWHERE}(?: (?:for|on|in|at|of) (?:the |a |its )?[\w-]+(?: \d+)?)? (?:still (?:needs?|wants?|has|have|gotta)|needs?|has yet|have yet) {_DOING}",
            rf"{_DET}{_PART}(?: for (?:the |a |its )?[\w-]+)? (?:i|we)(?:'ve)? ?{_STILL}{_AND_GO} {_PUT} {_IN}\b",
            rf"{_DET}{_HOLE}(?: for (?:the |a |its )?[\w-]+)? (?:i|we)(?:'ve)? ?{_STILL}{_AND_GO} {_CUT}\b",
            rf"{_DET}(?:{_EDGES}) (?:i|we)(?:'ve)? ?{_STILL}{_AND_GO} {_COAT}\b",
            rf"{_STILL}{_AND_GO} {_PUT} (?:it on|(?:that|that one|them|those|one) (?:on|in)) {_WHEN}",
            rf"it (?:still |yet )?(?:has|needs|have) (?:still |yet )?to (?:be (?:put|set|stuck|screwed|glued|fitted) (?:in|on)|go (?:in|on))$",
        ),
        pending=True,
        righted=r"(?:came|went|got|gotten|been|going) back|it's (?:in|on) now|(?:it's|is|all|now) (?:all )?done|done now|took care of it|did it (?:anyway|today|after all)|went ahead",
        cues=("still", "need", "gotta", " to ", "'ll ", "will ", "gonna", "yet", "wants"),
        part="whole",
    ),
)
