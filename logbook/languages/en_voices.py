"""English beginnings of clauses that tell what another says or did."""

from __future__ import annotations

from logbook.languages.told import Voices

_ANY = r"(?:(?:and|but|so|well|then|now|because|cause|since|even though|though|although|yeah|ok|okay|oh) )*"
_PEOPLE = (
    r"(?:guy|guys|fella|fellas|fellow|lad|lads|boys|kid|kids|man|woman|lady|dude|bunch|gang|outfit|people|folks|installer|installers|helper|apprentice|foreman|super|superintendent|inspector|engineer|architect|plumber|plumbers|electrician|electricians"
    r"|sparky|painter|painters|framer|framers|roofer|roofers|carpenter|carpenters|drywallers?|fitters?|welders?|laborers?|supervisor|manager|owner|boss|lead|journeyman|partner|buddy|brother|cousin|uncle|son|dad|neighbor|customer|client|contractor|subs?|trade|trades|tin knockers?|sheet metal guys?|mechanic|mechanics|janitor|driver|new hire|rookie|greenhorn|old man|old timer|one before me|last guy|qa|qc|office|rep|salesman|tenant|landlord|gc|competition|predecessor)"
)
_OF_A_PLACE = r"(?: (?:on|from|in|at|over|below|above|upstairs|downstairs|next door|before|ahead of|behind|across|down|up|who|that|with) ?(?!i |we )(?:[\w'-]+ ){0,6}?)?"
_SAYS = (
    r"(?:says?|said|swears?|swore|reckons?|reckoned|thinks?|thought|claims?|claimed|insists?|insisted|denies|denied|deny|believes?|believed|figures?|figured|bets?|argues?|argued|tells?|told (?:me|us|everybody|everyone|him|her|them|the)|will tell you|'ll tell you|will say|is telling|are telling|is saying|are saying|keeps? (?:saying|telling)|wrote|writes"
    r"|would have you believe|is convinced|is sure|are sure|was sure|has it (?:down|that)|had it|put (?:it )?down|marked|mentioned|complains?|complained|grumbles|suspects?|suspected|assumes?|assumed|guessed|guesses|goes|asks?|asked|wonders?|wants?|wanted|yells?|hollers?|expects?|expected)"
)

ENGLISH_VOICES = Voices(
    others=(
        rf"{_ANY}(?:word|the word|talk|gossip|rumou?r|the rumou?r|story|the story|legend)(?: is| has it| goes| was|'s| on site is)\b",
        rf"{_ANY}(?:they're|they are|people are|folks are|he's|she's|everybody's|everyone's) (?:all )?(?:telling|saying|claiming|swearing|spreading|going around|convinced)\b",
        rf"{_ANY}(?!i\b|we\b|it\b|tape\b|gun\b|laser\b|thermometer\b|that\b|this\b|which\b|one\b|rule\b|ruler\b|foil\b|board\b|facing\b|like\b|as\b|you\b|me\b|mine\b|what\b|who\b|nobody\b|print\b|i'd\b|never\b|not\b|just\b|also\b|reading\b|mark\b|tag\b|label\b|number\b|caliper\b|sticker\b|stamp\b|wrapper\b|roll\b|carton\b|gauge\b|meter\b|stencil\b|air\b|box\b|crew\b|it's\b|chalk\b|marker\b|writing\b|top\b|bottom\b|side\b|end\b|level\b|scale\b|job\b|section\b|dial\b|page\b|fitting\b|elbow\b|straight\b|cap\b|tee\b|collar\b|note\b)[a-z]+ (?:says|said|swears|swore|claims|claimed|reckons|insists|tells me|told me)\b(?! (?:on the|to me on))",
        rf"{_ANY}(?:the |our |their )?(?:spec|specs|code|rule|job|company|manufacturer|manufacturer's|install|installation)(?: (?:book|sheet|manual|guide|instructions|people|standard))+ (?:wants?|says?|asks?|calls?|needs?|requires?|allows?|lists?|shows?)\b",
        rf"{_ANY}(?:i hear|i heard|i'm told|i was told|i've been told|so i'm told)\b",
        rf"{_ANY}(?:they|he|she|people|folks|everybody|everyone|somebody|someone|some people|the others) (?:all )?{_SAYS}\b",
        rf"{_ANY}(?:the|a|an|my|our|his|their|your|some|that|this|another|one of the|those|these)(?: (?!i\b|we\b)[\w'-]+){{0,2}}? {_PEOPLE}(?:'s)?{_OF_A_PLACE} ?{_SAYS}\b",
        rf"{_ANY}(?:the|his|their|her) (?:log|record|records|sheet|report|list|app|computer|system|paper|paperwork|clipboard|board in the office|whiteboard|spreadsheet|office|tally|punch list) (?:has|have|had|says|said|shows|showed|lists|listed|reads|claims)\b",
        rf"{_ANY}(?:the|a|an|some|that|another|one of the|those|his|their)(?: (?!i\b|we\b)[\w'-]+){{0,2}}? (?:{_PEOPLE}|crew|team|shift|squad)(?: (?:on|from|in|at|over|below|above|upstairs|downstairs|next door|before|ahead of|behind|across|down|up|who|that|with)(?: (?!i\b|we\b)[\w'-]+){{0,5}}?)? (?:stapled|taped|rubbed|trimmed|wiped|put|ran|did|made|built|hung|left|skipped|forgot|used|dropped|cut|had|got|has|was|were|is|bent|closed|finished|never|didn't|always|usually|shot|taking|doing|patched|pulled|brought)\b",
    ),
    my_piece=r"(?:(?:and|but|so|now|while) )*(?:my|our) (?:own )?\w+",
    mine=r"(?:and |but |so |then |well )*(?:me|myself|for my part|as for me|mine|ours)\b",
)
