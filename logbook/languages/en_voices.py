"""English beginnings of clauses that tell what another says or did, what was ordered, and whether it was followed."""

from __future__ import annotations

from logbook.languages.told import Orders, Voices

_ANY = r"(?:(?:and|but|so|well|then|now|because|cause|since|even though|though|although|yeah|ok|okay|oh) )*"
_PEOPLE = (
    r"(?:guy|guys|fella|fellas|fellow|lad|lads|boys|kid|kids|man|woman|lady|dude|bunch|gang|outfit|people|folks|installer|installers|helper|apprentice|foreman|super|superintendent|inspector|engineer|architect|plumber|plumbers|electrician|electricians"
    r"|sparky|painter|painters|framer|framers|roofer|roofers|carpenter|carpenters|drywallers?|fitters?|welders?|laborers?|supervisor|manager|owner|boss|lead|journeyman|partner|buddy|brother|cousin|uncle|son|dad|neighbor|customer|client|contractor|subs?|trade|trades|tin knockers?|sheet metal guys?|mechanic|mechanics|janitor|driver|new hire|rookie|greenhorn|old man|old timer|one before me|last guy|qa|qc|office|rep|salesman|tenant|landlord|gc|competition|predecessor)"
)
_OF_A_PLACE = r"(?: (?:on|from|in|at|over|below|above|upstairs|downstairs|next door|next to|beside|alongside|near|before|ahead of|behind|across|down|up|who|that|with) ?(?!i |we )(?:[\w'-]+ ){0,6}?)?"
_SAYS = (
    r"(?:says?|said|swears?|swore|reckons?|reckoned|thinks?|thought|claims?|claimed|insists?|insisted|denies|denied|deny|believes?|believed|figures?|figured|bets?|argues?|argued|tells?|told (?:me|us|everybody|everyone|him|her|them|the)|will tell you|'ll tell you|will say|is telling|are telling|is saying|are saying|keeps? (?:saying|telling)|wrote|writes"
    r"|would have you believe|is convinced|is sure|are sure|was sure|has it (?:down|that)|had it|put (?:it )?down|marked|mentioned|complains?|complained|grumbles|suspects?|suspected|assumes?|assumed|guessed|guesses|goes|asks?|asked|wonders?|wants?|wanted|yells?|hollers?|expects?|expected)"
)

ENGLISH_VOICES = Voices(
    rhetorical=(
        r"(?:(?:and|but|so|well|man|boy|hey|oh|okay|ok|now|you know|listen|look|tell me) ?,? )*(?:(?:can|could|would|will) you (?:believe|imagine)(?: it| this| that)?(?! (?:if|whether|him|her|them|what|me)\b)|(?:do )?(?:you )?(?:want to|wanna|care to|willing to|ready to) bet(?: (?:me|that|on it|(?:a|ten|twenty|five|fifty|a hundred) (?:bucks|dollars)|my \w+|lunch|a beer))*(?! (?:on|if)\b)"
        r"|how (?:about|do you like|'bout) (?:that|this|them apples)|how's (?:that|this) for [\w' -]{2,24}(?= ,)|did you know(?: that)?|(?:isn't|ain't) (?:it|that) (?:funny|great|nice|something|rich|grand|lovely|beautiful|typical|wonderful|amazing|swell|always the way|just like \w+)(?: how| that)?|wouldn't you know(?: it)?|what do you know(?: about that)?(?= ,)"
        r"|(?:then )?(?:(?:they|you|people|he|she|folks|the \w+) )?(?:still |then |all )*wonders? (?:why|how come)|(?:don't|do not) ask (?:me )?(?:why|how come)|ask me (?:why|how come)|(?:beats me|god knows|lord knows|who knows|heaven knows) (?:why|how come)"
        r"|guess who(?= (?:forgot|left|didn't|did|never|put|used|stapled|taped|ran|skipped|missed|cut|made|got|had|has|dropped|tore|ripped|poked|broke|crushed))|(?:what can i (?:say|tell you)|who (?:cares|knew|'s counting|asked me)|what (?:do|did) you (?:want|expect)(?: from me| me to do| for (?:free|nothing)| at this hour)?"
        r"|what (?:are|were) (?:you|we|they|ya) (?:gonna|going to) do(?: about it| to me)?|what else is new|what's a guy to do|what am i supposed to do|why me|why not|why does it always happen to me|how should i know|how was i to know|where do i (?:start|begin)|are you kidding(?: me)?|you kidding(?: me)?|am i right|is it friday yet|what a (?:day|week|mess|job|life|joke|circus|night|morning)) ?(?=,)) ?,?"
    ),
    bet_lost=r"(?:(?:and|well|no|nope|wrong|ha) ?,? )*(?:you'd|you would|you'll|you will|you just) (?:lose|lost|be wrong)|(?:kidding|gotcha|just kidding|wrong)",
    harm=r"\b(?:(?:went|came|poked|punched|broke|pushed|got|fell|slipped|drove|ran)(?: right| clean| straight)? (?:through|thru)|slipped and|went into|drove into|leaned on|hit it|stepped on|stood on|sat on|kicked|dropped|poked|punched|ran (?:into|over)|backed into|cut (?:a|an|through|into)(?: \w+)?(?: (?:slot|hole|notch|slice|chunk|piece))?|sawed (?:a|into|through)|drilled (?:a|into|through)|notched|crushed|smashed|dented|tore|ripped|put (?:a|his|her|their|another) (?:\w+ )?(?:hole|dent|tear|rip|gash|puncture|ding)|punctures?|punctured|(?:tears|rips|pokes|knocks|leans?|leaned|jams?|jammed|knocked|bumped|bumps)\b[^.;]*\b(?:facing|foil|jacket|board|panel|hole|tear)|put (?:a|his|her|their) (?:boot|foot|knee|ladder|fork|hand|elbow) through)\b",
    only_since=r"(?:\w+ )?unless (?:somebody|someone|anybody|one of|a|the \w+|they|he|i'm|i am|my eyes|you|it)\b.*\b(?:since|after|overnight|behind my back|blind|mistaken|dreaming|going|lying|lie|crazy|wrong|losing|moved|fell|peeled|pulled|took)\b",
    would=r"(?:and |but |well |so )?if (?:i|we|they) (?:had|could get|got) (?:the|a|an|some|any|more|enough|that|those|another|two|my|our|long|longer|real|good|proper)\b.*\b(?:could|would|i'd|we'd)\b",
    others=(
        rf"{_ANY}(?:word|the word|talk|gossip|rumou?r|the rumou?r|story|the story|legend)(?: is| has it| goes| was|'s| on site is)\b",
        rf"{_ANY}(?:some|a|that|this|the|one) [\w'-]+(?: [\w'-]+)? (?:is|was|keeps?|has been|goes around|went around|'s been) (?:on and on |always )?(?:telling|saying|claiming|spreading|swearing)\b",
        rf"{_ANY}(?:they're|they are|people are|folks are|he's|she's|everybody's|everyone's) (?:all )?(?:telling|saying|claiming|swearing|spreading|going around|convinced)\b",
        rf"{_ANY}(?!i\b|we\b|it\b|tape\b|bucket\b|pail\b|can\b|tub\b|tube\b|backing\b|liner\b|gun\b|laser\b|thermometer\b|that\b|this\b|which\b|one\b|rule\b|ruler\b|foil\b|board\b|facing\b|like\b|as\b|you\b|me\b|mine\b|what\b|who\b|nobody\b|print\b|i'd\b|never\b|not\b|just\b|also\b|reading\b|mark\b|tag\b|label\b|number\b|caliper\b|sticker\b|stamp\b|wrapper\b|roll\b|carton\b|gauge\b|manometer\b|magnehelic\b|meter\b|stencil\b|air\b|box\b|crew\b|it's\b|chalk\b|marker\b|writing\b|top\b|bottom\b|side\b|end\b|level\b|scale\b|job\b|section\b|dial\b|page\b|fitting\b|elbow\b|straight\b|cap\b|tee\b|collar\b|note\b)[a-z]+ (?:says|said|swears|swore|claims|claimed|reckons|insists|tells me|told me)\b(?! (?:on the|to me on))",
        rf"{_ANY}(?:everyone|everybody|people|folks|most (?:guys|people|folks|crews|shops|fitters|outfits)|(?:other|some|all the|all the other|the other|plenty of|lots of|a lot of) (?:guys|people|folks|shops|crews|fitters|outfits)|any (?:guy|fool|idiot|decent \w+))(?: else)?(?: (?:always|usually|just|only|here|out here|around here|in this town))* (?:cuts?|staples?|tapes?|puts?|rubs?|does|do|wipes?|uses?|runs?|makes?|lays?|laid|turns?|faces?|leaves?|spaces?|bends?|trims?|skips?|stapled|taped|rubbed|faced|turned|went)\b",
        rf"{_ANY}(?:the |our |their )?(?:spec|specs|code|rule|job|company|manufacturer|manufacturer's|install|installation)(?: (?:book|sheet|manual|guide|instructions|people|standard))+ (?:wants?|says?|asks?|calls?|needs?|requires?|allows?|lists?|shows?)\b",
        rf"{_ANY}(?:i hear|i heard|i'm told|i was told|i've been told|so i'm told)\b",
        rf"{_ANY}(?:they|he|she|people|folks|everybody|everyone|somebody|someone|some people|the others) (?:all )?{_SAYS}\b",
        rf"{_ANY}(?:the|a|an|my|our|his|their|your|some|that|this|another|one of the|those|these)(?: (?!i\b|we\b)[\w'-]+){{0,2}}? {_PEOPLE}(?:'s)?{_OF_A_PLACE} ?{_SAYS}\b",
        rf"{_ANY}(?:the|his|their|her) (?:log|record|records|sheet|report|list|app|computer|system|paper|paperwork|clipboard|board in the office|whiteboard|spreadsheet|office|tally|punch list) (?:has|have|had|says|said|shows|showed|lists|listed|reads|claims)\b",
        rf"{_ANY}(?:the|a|an|some|that|another|one of the|those|his|their)(?: (?!i\b|we\b)[\w'-]+){{0,2}}? (?:{_PEOPLE}|crew|team|shift|squad)(?: (?:on|from|in|at|over|below|above|upstairs|downstairs|next door|next to|beside|alongside|near|before|ahead of|behind|across|down|up|who|that|with)(?: (?!i\b|we\b)[\w'-]+){{0,5}}?)? (?:stapled|taped|rubbed|trimmed|wiped|put|ran|did|made|built|hung|left|skipped|forgot|used|dropped|cut|had|got|has|was|were|is|aren't|isn't|weren't|haven't|hasn't|won't|bent|closed|finished|never|didn't|always|usually|shot|taking|doing|patched|pulled|brought)\b",
    ),
    they=frozenset(("he", "she", "they", "you", "somebody", "someone")),
    my_piece=r"(?:(?:and|but|so|now|while) )*(?:my|our) (?:own )?\w+",
    had_me=r"(?:(?:and|but|well|okay) )*(?:he|she|they)(?:'s|'re| is| are| was| were) (?:right|not wrong|not lying|got a point)\b|(?:[\w']+ ){0,3}?(?:they've|they|he's|he|she's|she|foreman|boss|super|lead|office|gc|engineer|contractor|owner|shop|inspector|[\w']+)(?:'s|'ve)?(?: has| have| had| got| made| went and made| let| keeps| kept| sent)+ (?:me|us)(?: go| out| up| back| here| and)* (?:run|running|put|putting|hang|hanging|lay|laying|set|setting|build|building|use|using|leave|close|closing|bury|burying|mount|mounting|install|installing|go with|take|taking|skip|skipping|cut|cutting|staple|tape|space|do|screw|stick|sticking|place|placing|route|routing)\b(?! (?:it right|his|her|their|somebody's|your)\b)|(?:[\w']+ ){0,4}?(?:left|leaves) (?:me|us)(?: here)? (?:with(?:out| no)|no) (?:a |any )?\w+|(?:[\w']+ ){0,2}?(?:said|says|told me|wants me|wanted me|asked me|made me|has me) (?:to )?(?:write|put|say|note|tell|report|log|mention)(?: (?:it|you|this|that|down|in))* (?:i|we)(?:'ve)?(?: (?:didn't|never|forgot|skipped|left|only|used|haven't|did not))",
    used_it=r"\b(?:so|and|but) (?:that's|that is) what(?:'s| went| is| i| we| got| ended)\b|\b(?:so|and) (?:i|we) (?:just )?(?:used|went with|put|ran|stuck) (?:it|that)\b|, used (?:it|that)\b",
    as_it_is=(
        r"(?:(?:and|but|so|then|well) )+[\w' -]{0,24}(?:tape|staples|mastic|board) is what (?:you|we|i|it|they|this one) (?:got|get|have|has)\b|"
        r"(?:(?:and|but|so|then|well|which is why|that's why) )+(?:now |all |every (?:one of )?|each (?:of )?|most of |half (?:of )?|both )*(?:the|my|its|these|those)? ?(?:staples?|tape|vanes?|tabs?|flap|seams?|joints?|facing|foil|scrim|weave|rub|panel|groove|legs?|squeegee|trim)\b(?! (?:it|them|this|that)\b)"
        r"|(?:and )?(?:so|which is why|that's why) (?:it's|it is|it got|it was|they're|they are|this one's|this one is|there's|there are|it has|it's got)\b(?! (?:wrong|right|fine|okay|ok|up to|on (?:him|them|her)|his|their|her|my word|not my|a )\b)"
        r"|(?:(?:and|but|so) )*now (?:it's|it|there's|there is|there are|this one|we've got|i've got|she's|they're all|all of them|every one|i|my)\b"
        r"|(?:(?:and|but|so|well|,) )*(?:it |as it )?(?:turns out|turned out|come to find out)\b|(?:and |but |so )*it's (?:at|every)\b"
        r"|(?:and|but|so) (?:all|what) (?:there is|there was|you (?:can )?(?:see|get)|i (?:can )?(?:see|have|got|did)|i've got|it's got|it has|it got|is on it|is there)\b"
    ),
    mine=r"(?:and |but |so |then |well )*(?:me|myself|for my part|as for me|mine|ours|(?:i|we) (?:just |only |went and )*(?:did|put|ran|used|shot|laid|got(?= (?:in|out|an? |about|only|closer|more|\w+ and a))|went|gave|counted|count|measured|measure|ended up|wound up|came out|landed|stapled|taped|rubbed|spaced|stretched)|(?:i|we)(?:'m|'re| am| are) (?:only |just |still )?(?:at|down to|up to|on|running|sitting at|using))\b|(?:\w+ ){1,6}(?:myself|ourselves)$|(?:yes|yeah|yep|no|nope),? (?:it's|it|they're|they|there's|there|that's|that|this)\b|(?:and |but )?(?:that|the|his|her|their) (?:rip|tear|hole|gash|dent|split|puncture|cut|slit|gap)(?: is|'s) (?:still|there|not|in)\b",
    i_would=r"(?:(?:and|but|so|well|oh|honestly) )*(?:i|we)(?:'d| would| could| might)\b(?!.*\b(?:tape|staple|rub)d?\b)",
    bare_answer=r"(?:(?:yes|yeah|yep|sure|no|nope|well|oh|and|but|so|of course)(?: |$))*(?:they|he|she|somebody|someone) (?:did|didn't|have|haven't|has|hasn't|was|were|is|are|never did)(?: too| indeed| not)?$",
    speakers=rf"(?:{_PEOPLE}|radio|walkie|dispatch|super|him|her|he|she|them|they|jobsite|caller|voice)",
    me=r"me|myself",
    replies=r"(?:(?:well|oh|but|uh|um|ha|hey),? )*(?:no|nope|nah|negative|yes|yep|yup|yeah|sure|right|wrong|correct|true|false|not|it|they|he|she|i|we|that|like hell|the hell)\b",
)

_BOSS = r"(?:(?:the|my|our|that|his) (?:[\w'-]+ ){0,2}?[\w'-]+|he|she|they|boss|lead|foreman|super|somebody|someone|everybody|orders|word|i|we|dispatch|engineering|management)"
_ACT = r"(?:(?:the|any|a|its|my|up|on|with|about|in|putting|doing|using|those|some|all|it|bother|bothering|worry|worrying|to) )*<[nbd]>"

ENGLISH_ORDERS = Orders(
    told=rf"^(?:(?:and|but|so|well|now|yesterday|today|this morning) )*{_BOSS} (?:(?:just|always|was|were|got|had|kept) )*(?:told|tells?|telling|said|says?|saying|asked|asks|wants?|wanted|ordered|orders|instructed|is|are|was|were|figured|insisted)(?: (?:me|us|him|everybody|that|i|we|to|should|could|just|was|were|for|it's))*(?![\w'])",
    to_leave=rf" (?:skip|forget|forget about|omit|drop|ditch|lose|spare|save|never mind|nevermind|hold off on|pass on|do without|go without|not to|not|don't|do not|no need (?:for|to)|no point|no|without|without any|leave off|leave out) {_ACT}| leave {_ACT}(?: (?:out|off|alone|be|in the box))",
    to_do=rf" (?:put|install|use|set|add|get|give it|make sure (?:of|to)|do|run|shoot|slip|stick) {_ACT}| {_ACT}",
    plainly=rf"^(?:# )?(?:skip|forget|forget about|never mind|nevermind|leave out|leave off|no|don't bother with|do without|hold) {_ACT}(?: on (?:this|that) one| today)?$|^leave {_ACT} (?:out|off)$",
    his_word=r"^(?:and |so |or )*(?:(?:that|this|those|it)(?: ?(?:'s|is|was|were|are))? )?(?:what |the word from |orders from |how )?(?:(?:the|my|our) [\w'-]+|he|she|they|boss|lead|foreman|i was|i'm|we were)(?: (?:told (?:me|us)|said|says|tells me|told|wanted|ordered|had it|put it))?(?: to do)?$|^(?:those were|that was|that's) (?:the|my|his|their) (?:order|orders|instructions|word|words)$",
    mine=r"^(?:(?:so|and|but|then|of course|naturally|anyhow|anyway) )*(?:\w+ )?(?:i|we)(?: (?:went and|went ahead and|still|did|just|always|naturally|gladly|happily|only))* <[db]>",
    followed=(
        r"(?:so|and|which|then|and so|and that's what|that's what|so that's what|which is what|sure enough)(?: (?:naturally|of course|gladly))? ?(?:i|we) did(?: (?:it|that|so|just that|exactly that|as told|what i was told|as i was told))?|(?:i|we) did (?:as|what) (?:i|we) (?:was|were) told|(?:i|we) (?:obeyed|listened|went along|went along with it|complied|did as told)"
        r"|(?:that's )?(?:fine|ok|okay|good) (?:by|with) me|good enough for me|who am i to argue|orders are orders|(?:he|she)'s the boss|they're the boss|you're the boss|suits me|works for me|no argument (?:here|from me)|as you wish|happy to|gladly|done and done"
    ),
    refused=(
        r"(?:but |and |well )*(?:i|we) (?:didn't|did not|wouldn't|don't|never)(?: (?:listen|do it|do that|do so|bother|obey|go along|agree|think so|care))?(?: (?:to (?:him|her|them)|with (?:him|her|that)))?|(?:but |and )*(?:i|we) (?:told (?:him|her|them)|said|says)(?: \w+)? (?:no|no way|nope|forget it|to forget it|where to \w+|to shove it|to do it (?:himself|themselves))|(?:but |and )*(?:i|we) (?:ignored|refused|disobeyed|overruled|paid no (?:mind|attention)|turned a deaf ear)(?: (?:him|her|them|it|that|to that))?"
        r"|but (?:i|we) did(?: (?:it|that|so))?(?: (?:anyway|anyhow|all the same|regardless|just the same|in spite of that))*|(?:but |and )*(?:i|we) did(?: (?:it|that|so))? (?:anyway|anyhow|all the same|regardless|just the same)|over my dead body|not on my watch|no way|fat chance|not a chance|no chance|not happening|not me|i knew better|like hell i (?:will|would|did)"
    ),
    put_in=r"(?:but |and |so |well )*(?:i|we) (?:went and |still |went ahead and )*(?:put|got|set|slid|installed|stuck|slipped|shot|used) (?:them|it|'em|those|some|a set|one)(?: (?:in|on|there|up))*(?: (?:anyway|anyhow|all the same|regardless|just the same|after all|nonetheless|in the end|myself|to be safe|no matter what))*",
    left_out=r"(?:but |and |so |well )*(?:i|we) (?:went and |still |just )*(?:left|kept|skipped|forgot|omitted|dropped|did without|went without)(?: (?:them|it|'em|those|one))*(?: (?:out|off|in the box))*(?: (?:anyway|anyhow|all the same|regardless|after all|in the end))*"
    r"|(?:and so|so|which is why|that's why|and that's why)(?: of course| naturally| obviously)? (?:i|we) (?:just )?(?:didn't|did not|never did|haven't|don't)(?: (?:do (?:it|that|any)|bother|put (?:any|it|them)(?: on| in)?|use any))?",
)
