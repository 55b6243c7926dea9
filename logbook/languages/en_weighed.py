"""English words that an act can stand under: denials, verbs that deny by themselves, and how many of them make a yes. Patterns over sketches."""

from __future__ import annotations

from logbook.languages.told import Weighed

_MEASURE = r"(?:inch|foot|strip|stitch|shred|scrap|piece|bit|lick|sliver|scratch|trace|speck|whiff|hint|sign|drop|dab|yard|roll|ounce|square inch|single one|thing|set|pair|row|line|length|wrap|one)"
_ANY = r"(?:so much as |even |a single |any sign of |any kind of |(?:a|an|any|the|its|one|my|your|some|those|that|all|of|on|to|in|with|from|doing|putting|getting|a lick of|" + rf"(?:a|an|one|any|single|damn|lousy|solitary)(?: \w+)? {_MEASURE}(?: worth)? of" + r") )*"

ENGLISH_WEIGHED = Weighed(
    undone_names=(
        ("unrubbed", "rubbed_down"), ("unburnished", "rubbed_down"), ("untrimmed", "trimmed"), ("unbent", "tabs_bent"), ("unfolded", "tabs_bent"), ("unwiped", "surface_clean"), ("uncleaned", "surface_clean"),
        ("unpatched", "damage_repaired"), ("unrepaired", "damage_repaired"), ("unmended", "damage_repaired"), ("unfixed", "damage_repaired"), ("vaneless", "vanes"), ("stapleless", "stapled"), ("unsecured", "stapled"),
        ("unwarmed", "preheated"), ("unvaned", "vanes"), ("unfastened", "stapled"), ("unsealed", "taped"),
    ),
    # the act is not done; each holds the act itself
    lacking=(
        r"(?:leav(?:e|es|ing)|left|keep(?:ing)?|kept|sent?|let|ship(?:ped)?|send(?:ing)?)(?: (?!<)[\w'#-]+){0,6} <u>",
        rf"(?:leav(?:e|es|ing)|left) {_ANY}<n>(?: (?!<|undone)[\w'#-]+){{0,3}}? (?:off|out|behind|undone|in the (?:box|truck|bag|van|gangbox)|on the (?:truck|bench|floor|cart))",
        rf"(?:leav(?:e|es|ing)|left) (?:off|out) {_ANY}<n>",
        rf"(?:leav(?:e|es|ing)|left)(?: [\w'#-]+){{0,4}} (?:without|with no|minus|short of) {_ANY}<[nbd]>",
        rf"(?:skip(?:s|ped|ping)?|forg(?:e|o)t(?:s|ten|ting)?|miss(?:ed|ing)?|neglect(?:s|ed|ing)?|omit(?:s|ted|ting)?|dodg(?:e|ed|ing)|avoid(?:ed|ing)?|refus(?:e|ed|ing)|fail(?:s|ed|ing)?|shirk(?:ed|ing)?|duck(?:ed|ing)?|spar(?:e|ed|ing) (?:it|her|myself)|pass(?:ed|ing) (?:up|on)|scrimp(?:ed|ing)?|skimp(?:ed|ing)?|cheap(?:ed|ing) out|flak(?:ed|ing) out|bail(?:ed|ing)?|pass(?:ed|ing) over|overlook(?:ed|ing)?) (?:out )?{_ANY}<[nbd]>",
        rf"(?:with ?out|lack(?:s|ed|ing)?(?: for)?|bare of|free of|devoid of|short of|shy of|empty of|innocent of|clear of|starved of|missing) {_ANY}<[nbd]>",
        r"<u>",
    ),
    # a denial of what is not done, right before the act: "not stapling", "no tape"; only under another denial
    denied=(
        rf"(?:not|never|n't|no) (?:have |had |get |getting |gotten |having |been |be |being |got |yet |fully |all )*{_ANY}<[nbd]>",
    ),
    # one denial by itself, with the act, that nothing else reads
    not_a_bit=(
        rf"(?:without|not|never(?: \w+){{0,2}}|nary|no|\w+n't(?: [\w']+){{0,3}}) (?:so much as |even |as much as )*(?:a|an|one|any)? ?(?:\w+ )?{_MEASURE}(?: worth)?(?: of)? (?:the |any |that )?<n>",
        r"<n> (?:is |'s |are |was )?(?:a myth|a rumou?r|a fairy tale|a legend|a dream|conspicuous by (?:its|their) absence|nowhere (?:to be (?:seen|found)|in sight)|absent|nonexistent|non-existent|history|a no show)\b",
        r"not (?:one|a) <n>|not (?:one|a) single <n>",
        r"(?:zero|nil|zilch|nada|zip|bugger all|diddly) (?:in the way of |on the |for )?<n>",
        r"ain't no <[nbd]>|never (?:no|any) <[nbd]>",
    ),
    nots=r"(?<![\w'])(?:not|never|no|nobody|no one|neither|nor|hardly|cannot|none|nothing|nowhere|rarely|seldom|anything but|far from|nowhere near|\w+n't|isnt|arent|wasnt|werent|didnt|dont|doesnt|havent|hasnt)(?![\w'])(?! longer (?:than|wider))",
    # before the act: what follows is no statement of it
    holds_back=r"(?<![\w'])(?:will|won't|'ll|i'll|we'll|gonna|should|shouldn't|if|unless|whether|going to|about to|meant to|wanted to|tempted|planning|plan|supposed to|thought|because|since|so that|who|why|he|she|they|his|her|their|you|your|let's|think|doubt|sure|mind|afraid|ask|asked|asking|problem|trouble|time|until|till|only|just|much|many|reason|excuse|the one|the ones|when|while|though|although|after|before|but|or|as|call)(?![\w'])|^(?:please )?(?:don't|never|do not) ",
    in_general=r"(?<![\w'])(?:an?|any|every|another) (?:[\w-]+ )?#",  # no piece of his but any of its kind
    concord=r"(?:n't|never|nobody|no one|ain't)(?: [\w']+){0,4} (?:no|none)$",
)
