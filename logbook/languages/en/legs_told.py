"""English words for legs of staples that close in under the board, told without the word for clinching."""

from __future__ import annotations

from logbook.languages.language import State

_NOT = r"(?:don't|do not|doesn't|didn't|did not|won't|wouldn't|aren't|are not|weren't|isn't|ain't|never|not)(?: (?:really|all|even|quite|ever|any of them))*"
_THEY = r"(?:staples?|legs?|points?|prongs?|they|them|ones?|all of them)"
_OUT = r"(?:out(?:ward|wards|side)?|to the outside|open|apart)"
_EACH_OTHER = r"(?:each other|one another|themselves|itself|(?:the )?(?:middle|center|inside))"
_IT_DID = r"(?! (?:at first|on (?:the |a )?(?:scrap|test)|to start|till|until|before))"
_NOT_A_SIDE = r"(?<!top )(?<!bottom )(?<!side )(?<!left )(?<!right )(?<!cheek )(?<!back )(?<!front )(?<!not )(?<!n't )(?<!never )"

ENGLISH_LEGS_TOLD: tuple[State, ...] = (
    State(
        "staple_clinch",
        "inward",
        (
            rf"{_NOT} (?:(?:flare|spread|splay|kick|flar|spread|splay|kick)(?:ing|ed|d)?(?: {_OUT})?|(?:point|turn|bend|fold|clinch|curl|go|open)(?:ing|ed)? {_OUT}){_IT_DID}",
            rf"{_THEY}(?: [\w-]+){{0,6}}? (?:fold|roll|tuck|curl|close|hook|bend|bent|turn|lie|lay)(?:s|ed|ing)?(?: (?:back|up|over|right|in|all))* (?:under|in on)(?:neath)?(?: {_EACH_OTHER})?{_IT_DID}(?! (?:the|a|my|its) )",
            rf"(?:bent|bend|turned|turn|folded|fold|curled|curl|point|pointing|pointed|facing|clinched|cross|crossed)(?: (?:back|over|in))* (?:towards?|into|onto|at) {_EACH_OTHER}{_IT_DID}",
            rf"{_THEY}(?:'re|'ve)?(?: (?:all|just|both|got|have|are|were|kind of|mostly))* (?:curled|curling|bent|bending|folded|folding|turned|turning|rolled|hooked) (?:over |back )?in(?= on (?:me|us)| cause | because | since |$){_IT_DID}",
            r"(?<!curl the )(?<!turn the )(?<!fold the )(?<!bend the )(?<!bring the )(?<!put the )(?<!roll the )(?:legs?|points?|prongs?)(?: all| both| are| were| is| 're| come| came| coming| go| goes| going| gone| went| pointing| point| facing| face| turned| turning| turn| bent)* (?:(?:to|towards?|on) the inside(?! of the (?:van|truck|shop))|inwards?|inside|in instead of out)(?=$|[.,;]| (?:instead|because|cause|on|of|not|i|and)\b)",
            r"(?<!curl the )(?<!turn the )(?<!fold the )(?<!bend the )(?<!bring the )(?<!put the )(?<!roll the )(?:legs?|points?|prongs?)(?: all| both| are| were| is| 're)*(?: (?:going|facing|pointing|turned|turning|bent|coming))* in(?=$|[.,;]| (?:instead|towards?|to the inside|because|cause|not out)\b)",
            rf"instead of (?:flaring|spreading|splaying|kicking|opening|turning|bending|pointing|going) {_OUT}{_IT_DID}",
            r"(?:like|same as|the way)(?: it's| they're)?(?: on| in| for| with)?(?: a| an)?(?: \w+)? (?:sheets?|stack|pile|bunch) of papers?",
        ),
        ("STAPLES", "STAPLED", "LEG", "CLINCHED"),
        apart=True,
        cues=("flar", "spread", "splay", "kick", "point", "turn", "bend", "bent", "fold", "curl", "roll", "tuck", "clos", "hook", "open", "clinch", "cross", " paper", " in"),
    ),
    State(
        "staple_clinch",
        "outward",
        (r"(?:legs?|points?|prongs?)(?: all| both| are| were| is| 're)*(?: (?:going|facing|pointing|turned|turning|bent))* (?:out|outwards?|outside|(?:to|towards?|on) the outside)(?=$|[.,;])", rf"{_NOT_A_SIDE}(?:(?<!should be )(?<!to be )(?:flared|splayed|flaring|splaying) out(?:ward|wards)?)(?! (?:of|to|by|a|an|\d|one|two|three|four|five|six|half)\b){_IT_DID}",),
        ("STAPLES", "STAPLED", "LEG", "CLINCHED"),
        apart=True,
        cues=("flar", "splay", " out"),
    ),
)
