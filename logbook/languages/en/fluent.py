"""English between the words: "uh", "you know", "the, the", and the words that end no sentence."""

from __future__ import annotations

from logbook.languages.en.articles import ENGLISH_ARTICLES
from logbook.languages.fluent import Fluent

_DENIED = "isn't wasn't aren't weren't didn't doesn't don't haven't hasn't hadn't can't couldn't won't wouldn't isnt wasnt arent werent didnt doesnt dont havent hasnt hadnt cant couldnt wont wouldnt"

# articles and small words that no sentence ends with
_OPEN = "the a an my our your its every each of with without from into onto and or nor than if because until"

_NUMBER = r"(?:\d[\d./-]*|(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fourteen|fifteen|sixteen|eighteen|twenty|twenty-\w+|thirty|thirty-\w+)(?: and an? (?:half|quarter|eighth))?)"
_VALUE = rf"(?:every |at |all )?{_NUMBER}\b(?! (?:side|straight|elbow|tee)s? (?:is|was|are)\b).{{0,40}}|not really.*|not (?:the|all)\b.*|all (?:four|three)\b.*|inside|outside|out|in"

ENGLISH_FLUENT = Fluent(
    sounds=frozenset("uh uhh uhm um umm er erm ah hmm hm mmm".split()),
    between_commas=(("like",), ("you", "know"), ("y'know",)),
    open=frozenset(_OPEN.split()),
    binds=frozenset(
        f"{_OPEN} his her their to at for by but no not never nobody nobody's someone somebody any some neither either another real whole i we he she they who is are was were am be been "
        f"has have had having do does did will would could should can might must still just only very as when where almost nearly think thought figured guess pretend get gets got "
        f"getting gave manage going i'm i've i'd i'll we're we've it's that's there's he's they're {_DENIED}".split()
    ),
    leans=frozenset("on in at as under over up down through around about behind off out me him us them yet again".split()),
    answers=frozenset(("no",)),
    bound=frozenset("of than".split()),
    verbs=frozenset(f"is are was were has have had {_DENIED}".split()),
    things=frozenset("flap tab tabs vane vanes tape staple staples mastic rods gap gaps room tears damage holes screws fabric mesh washers rubbing scrim turning".split()),
    counts=frozenset("one two three four five six seven eight nine ten twelve".split()),
    counted=frozenset("side sides tab tabs inch inches foot feet vane vanes staple staples screw screws seam seams joint joints corner corners by hundred degree degrees".split()),
    numbered=frozenset(
        "number fitting piece section joint run straight elbow tee wye cap collar transition reducer offset plenum branch sleeve box connection boot door by x".split()
    ),
    before_measure=frozenset("back in out down up over every at about apart".split()),
    says_again=frozenset(
        f"not no never nothing none nobody the a i we he they my our it's i'm i've we're there's that's and but so every to at of with from for by in on is are was were he's if when {_DENIED}".split()
    ),
    denies=frozenset(("not", "except", "bar")),
    again_at_once=frozenset(("it", "has")),
    assures=frozenset("actually honestly truthfully frankly genuinely truly technically".split()),
    denials=frozenset(f"not never {_DENIED}".split()),
    speakers=frozenset(("i", "we")),
    articles=ENGLISH_ARTICLES,
    leads=frozenset(
        "not nothing none no yes nope except all bar apart or said when in if but and a an getting some skipped i never well wait untaped unstapled one two three four five six eight ten twelve".split()
    ),
    fragments=(
        r"not (?:yet|really|quite|fully|completely|underneath|behind|below|all of (?:it|them|'em|em)|an? (?:strip|stitch|single)\b.*|one\b.*|any\b.*|(?:on |at |along |to )?the (?:top|bottom|back|left|right|far|near|last|other|wall|heel|throat|underside)\b.*|on (?:this|top)\b.*|this one)"
        r"|nothing(?: (?:underneath|behind|below|on|at|along|in|around)\b.*)?|none(?: of (?:them|'em|em|it|that|those)(?: in| on| up| bent)?| in| in it| on it| underneath)?"
        r"|(?:(?:well|and|but),? )?(?:all )?(?:except|excepting|all but|but not|bar|apart from|other than)(?! (?:\d|\w+ty\b|\w+teen\b|straight|elbow|tee|number|that\b))[^,]*"
        r"|no|yes|yep|nope|and nope|well|wait no|no wait|or so (?:i was told|they say|he says|they tell me)|said nobody(?: ever)?|when (?:pigs fly|hell freezes over)|in (?:another life|my dreams|your dreams|his dreams)"
        r"|if (?:anybody|anyone|you) (?:can|could|want to|wants to|wanna) call (?:that|it)\b.*|if an? [\w -]+ counts? as \w+|(?:or )?not at all"
        rf"|(?:(?:but|and|well|then),? )?(?:getting to |about |maybe |more like )?{_NUMBER}(?: inch(?:es)?)? (?:on|along|toward|towards|near|at|behind|around|across|by) the\b.*"
        rf"|(?:well|no|wait,? no|no,? wait|sorry|correction), (?:{_VALUE})"
    ),
    begins_own=r"(?:except(?: for| at| on)?|excepting|all but|bar|apart from|other than|aside from) (?:the|a|an|one|its|that) [^,]{1,40}, ?(?:(?:all )?(?:it|it's|everything|everything's|they|they're|i|i've|we|we've|all of it|the (?:whole|entire|rest|seams?|joints?|sides)\b[^,]{0,20}?|all)(?: (?:is|has|got|was|are|all|been))* )?(?:taped|stapled|rubbed|sealed|wiped)\b.*"
        r"|(?:all|everything|every (?:side|seam|joint|edge)) but (?:the|a|an|one|its|that) [^,]{1,30}?(?:'s| is| are| was| were| has been| got)(?: all)? (?:taped|stapled|rubbed|sealed|wiped)\b.*",
    of_topic=r"(?:i )?(?:skipped|forgot|missed|never did) (?:it|that|them)|(?:so )?none|no|nope|never (?:got to|happened|did)\b.*|no, .*|(?:an? )?(?:big )?(?:fat )?(?:zero|zilch|nada)",
    topics=r"(?:(?:and|&|then) )?(?:as for )?(?:the |any )?(?:rubbing|rub|rub down|rubdown|taping|stapling|trimming|wiping|preheating|vanes|turning vanes|rubbed|taped|stapled)(?: down)?(?: (?:on|of|in|for) .{1,30})?",
    misspoke=frozenset(("i misspoke", "i take that back", "i take it back", "scratch that", "strike that", "no", "sorry", "wait no", "no wait", "correction", "i mean", "well")),
    begins_value=_VALUE,
    ends_value=rf"\b(?:{_NUMBER.replace('an?|', '')}|in|out|inside|outside|sides|side(?! \w+ed\b)|quarters?|eighths?|half|sixteenths?|inch(?:es)?|well)(?: \w+)?,?(?: \w+){{0,2}}$",
    joins=frozenset(("and", "&")),
    joined_leads=frozenset("not nothing none zero zilch said if a skipped never".split()),
    joined_on=(
        r"not(?: yet)?|nothing(?: (?:underneath|behind|below))?|none(?: of (?:them|'em|em|it|that|those)(?: in| on| up| bent)?| in it| on it)?|zero|zilch|said nobody(?: ever)?"
        r"|if (?:anybody|anyone|you) (?:can|could|want to|wants to|wanna) call (?:that|it)\b.*|an? (?:big )?(?:fat )?(?:zero|zilch|nada)"
    ),
    joined_replies=frozenset(("no", "nope", "nah", "yes", "yep", "yeah", "not yet", "none", "so none", "zero")),
    left_out=r"(?:the )?[\w-]+(?: [\w-]+){0,2} (?:i|we) (?:haven't|havent|have not|didn't|didnt|did not|never did|never|couldn't|couldnt)(?: yet)?",  # "I taped 31 and straight 32 I haven't"
    both_asked=r"\b(?:stapled|taped|rubbed(?: down)?|trimmed|wiped(?: down)?|preheated) (?:and|&) (?:stapled|taped|rubbed(?: down)?|trimmed|wiped(?: down)?|preheated)(?P<at>,) (?:no|nope|nah|not yet|not really)(?= *(?:[.;!]|$))",
)
