"""English of the trade: words and the concepts they stand for."""

from __future__ import annotations

from logbook.languages.en_acts import ENGLISH_ACTS
from logbook.languages.en_afar import ENGLISH_AFAR
from logbook.languages.en_elsewhere import ENGLISH_ELSEWHERE
from logbook.languages.en_forms import ENGLISH_FORMS
from logbook.languages.en_misheard import MISHEARD
from logbook.languages.en_plans import ENGLISH_PLANS
from logbook.languages.en_states import ENGLISH_ENDS, ENGLISH_STATES, LINE_CUE, LINE_IS, LINE_RUNS_AT
from logbook.languages.en_told import ENGLISH_TOLD
from logbook.languages.en_turns import ENGLISH_TURNS
from logbook.languages.language import Language, Numbers

_SKINS = ("facing", "foil", "skin", "jacket", "vapor barrier")


def _products(*words: str) -> str:
    """Every way to say one of each, in order, parted by blanks."""
    made = [""]
    for some in words:
        made = [f"{before} {word}".strip() for before in made for word in some.split("|")]
    return "|".join(made)


# "buttoned onto seventeen", "taped into sixteen"
_ONTO = "".join(f"|{verb} {way}" for verb in ("taped", "stapled", "buttoned", "snapped", "mated", "slid", "slipped", "hooked", "seamed", "sealed", "coupled", "joined", "connected", "closed", "fastened", "clipped", "locked", "tied") for way in ("onto", "into", "on to", "in to", "up to"))


CONCEPTS: tuple[tuple[str, str], ...] = (
    # small words that patterns look at
    ("DET", "the|a|an|its|my|our|these|those"),
    ("IT", "it|them|this one|that one|these ones|this thing"),
    ("THIS", "this|that"),
    ("BE", "is|are|was|were|be|been|being|it's|that's|they're|'s|thats|there's|theres|here's|looks|feels|stays|stay|sits at|comes to|comes out to|came out|came out to|ended up|wound up|wound up|winds up"),
    ("HAVE", "has|got|has got|it's got|it got|gets|get|had|have got|i've got|we've got|we got|i got|there is|there are"),
    ("HAVING", "have"),
    ("AND", "and|plus|&|also|as well as"),
    ("OR", "or|nor"),
    ("BUT", "but|although|though|however|except that"),
    ("TO", "to|>|=>|down to|going to a|going down to|goes to|goes down to|going up to|up to|into a|reducing to|reduces to|reduced to|reducing down to|dropping to|drops to|necks down to|necking down to|opening to|opens up to|opening up to|increasing to|changing to|changes to|onto|->|tapering to|tapers to|tapers down to|tapering down to|transitioning to|and goes to|then to"),
    ("GOING_TO", "going to"),
    ("FROM", "from|off|off of|out of|from the"),
    ("BY", "by|x|×|bye"),
    ("ON", "on|at|upon"),
    ("OF", "of|for|per"),
    ("IN", "in|inward|inwards"),
    ("OUT", "out|outward|outwards"),
    ("DOWN", "down|downward"),
    ("UP", "up|upward"),
    ("OVER", "over|over a span of|in a span of|over a stretch of|in the space of|over the space of|over a distance of|in a distance of|spread over|stretched over|stretched out over|across|along|in a run of|over a run of|over a length of|in a length of|within"),
    ("BACK", "back|bk|set back|setback|setback is|set back is|setback of|set back of|set it back|line's back|line back|runs back|goes back"),
    ("THROUGH", "through|thru"),
    ("TIGHT", "no light through|no light comes through|no light coming through|no light gets through|no light getting through|no light shows|no light showing|no light shining through|not a sliver of light|can't see light|can't see any light|couldn't see light|couldn't see any light|tight|snug|butted up tight|tight fit|no daylight|closed up tight"),
    ("AROUND", "round the|round it|all the way round|all round|all around it|the whole way around|the whole way round|all the way around it|all the way round it|around|all around|all the way around|around it"),
    ("ALL", "all|each of the"),
    ("EACH", "each|apiece"),
    ("BOTH", "both|both of them|both of those|all of them|all of those|all of these|both of these|they're both|they're all|they are all|they are both|all three|all four of them|them all|everything here|the whole batch|all of the above|every one of them|each one of them|these are all|those are all|all these|every one|each one|the pair|the two of them|the lot of them|the three of them|both pieces|all three of them|every one of those|each of them|each of those"),
    ("ONLY", "only|just the"),
    ("SAME_SIZE", "same size|the same size|same dimensions|same dims|same size as that|same size again"),
    ("SAME_AS", "is the same as|are the same as|'s the same as|same as|the same as|just like|identical to|copy of|matches|same deal as|same thing as|exactly like|same way as|like number"),
    ("SAME_THING", "likewise|is likewise|is the same|are the same|'s the same|is the same thing|are the same thing|same kind of thing|same sort of thing|the same thing|done the same way|done the same|built the same way|built the same|made the same way|the same way|the same deal|same treatment|same as well|same thing again|same thing exactly|exact same thing|the exact same|exactly the same|same thing|same again|the same|same deal|same story|same way|same everything|ditto|same as before|same as that|same as the last one|same as the other one|same as the one before|same but|same only|just like it|just the same|same as that one"),
    ("EXCEPT", "except|except for|bar|bar the|save for|save the|but for|short of|minus the|apart from|aside from|excepting|barring|lacking|short the|only difference is|but with|other than|only that"),
    ("ALL_BUT", "everything but|everything's done but|everything is done but|all done but|everything done but|it's all done but|done but|all set but|all but|all of it but|every side but|all sides but|all four sides but|all four but|all around but|all the way around but|the whole thing but|everywhere but|the whole way but|everything other than|all of it except|all four sides except|all four except|every side except|all sides except|everywhere except|all around except|the whole thing except"),
    ("OTHER_SIDE", "and then the fourth|then the fourth|and then the other two|then the other two|and then the fourth one|other side|the other side|opposite side|far side|the far side|on the other side"),
    ("ANOTHER", "another|another one|one more|next|next one|next up|next one's|the next one|second one|then another|then|after that|then we have|then there's|moving on to|moving on|on to"),
    ("I", "i|we|i've|we've|me and|my partner and i|us|myself|i'm|we're"),
    ("WILL", "i'll|we'll|i will|we will|i'd|gonna|we were going to|i was going to|was going to|were going to|we're gonna|i'm gonna|i'm going to|we're going to|i am going to|we are going to|will|going to be|planning to|plan to|gonna be|it'll|they'll|he'll|she'll|about to|fixing to|fixin to|getting ready to|getting set to|just about to|i'm about to|i'm fixing to|going back to|coming back to|come back and|coming back and|i'm going to go"),
    ("LATER", "tomorrow|next week|later|later on|after lunch|after break|this afternoon|in the morning|monday morning we|tonight|next monday|another day|when i get back|in a bit|soon|in a minute|in a few minutes|in a while|after a bit|at the end of the day|first thing tomorrow|come monday|when it comes in|when they come in|when they get here|when it gets here"),
    ("NOT", "none of them|none of those|none of these|none of 'em|not one of them|not one of those|not one of these|not one of 'em|not a one of them|not a single one of them|not any of them|neither of them|neither of those|neither of these|neither one of them|neither of 'em|nobody|no one|noone|nobody's|nobody has|no one has|neither|neither of us|none of us|neither one of us|i doubt|doubt|i doubt that|doubt that|don't think|i don't think|i don't think that|don't believe|i don't believe|wouldn't say|i wouldn't say|wouldn't swear|i wouldn't swear|can't swear|can't say|i can't say|hardly any of it|not|isn't|aren't|wasn't|weren't|didn't|don't|doesn't|never|couldn't|can't|cannot|could not|did not|does not|is not|wasn't able to|weren't able to|isnt|didnt|wasnt|doesnt|arent|couldnt|ain't|nothing|won't|anything but|far from|nowhere near"),
    ("FORGOT", "forgot to|i forgot to"),
    ("NOT_DONE", "haven't|hasn't|have not|has not|hadn't|havent|hasnt|yet to|haven't got|hasn't got|haven't had time to|didn't get to|didn't get around to|haven't gotten to|haven't gotten around to|not going to|haven't even"),
    ("NO", "no|sans|without|without any|zero|none|nope no|don't have any|doesn't have any|didn't put any|didn't have a|doesn't have a|there's no|there is no|there are no|there was no|have no|has no|had no|left off the|skipped the|forgot the|not any|without a|lacks|with no|got no|isn't any|ain't no|didn't use any|skipped|skipped on the|skipped putting|skipped out on the|minus|not a single|not one|not any of the|hold the|left off|never put any|never put|hardly a|out of|held off on the|held off on|too cold to|too dusty to|too wet to|too greasy to|no time for|no time to|didn't bother|didn't bother with|didn't bother with the|gave up on the|no room for|no room for the|short of|we were out of|were out of|was out of|i was out of|i'm out of|we're out of|we are out of"),
    ("YET", "yet|just yet|so far"),
    ("PENDING", "pending|is pending|are pending|still pending|still have to|still need to|still needs|still need|still gotta|still got to|still has to|have to|has to|need to|needs to|needs|gotta|got to|have got to|still needs to be|needs to be|still waiting on|waiting on|waiting for|waiting to|left to do is|still missing|remains to be|left to|remains to|all that's left is|all i have left is|what's left is|still to|to be done is|i owe it|still want|still wants|wants|could use some|could use more|could use a|could use another|could stand some|could stand a|could stand more|owe it|owe it a|owe you|i owe you|owe you the|still owe|still owe it|still owe it a|still owe you|owe it the"),
    ("NEED", "need any|we need|i need|need|we want|we'll need|i want|gonna need|will need"),
    ("TIMES", "times"),
    ("WHEN", "when"),
    ("REMIND", "don't let me forget|don't let us forget|don't let anybody forget|bring me|bring us|send me|send us|get me some|get me more|hand me|fetch me|send up|don't forget|dont forget|do not forget|remember to|remember|make sure|be sure to|be sure|remind me|remind him|remind them|somebody needs to|someone needs to|somebody has to|someone should|somebody check|someone check|you guys need to|you need to|you have to|you gotta|you should|please|let's not forget|note to self|never forget|always"),
    ("NOT_FORGET", "did not skip|haven't skipped|didn't leave out|never left out|never left off|didn't forget|never forgot|never forgot to|i never forgot|never skipped|never skip|never missed|didn't miss|did not forget|haven't forgotten|made sure|remembered|remembered to|didn't skip|made sure to"),
    ("TROUBLE", "trouble|problem|problems|issue|issues|question|question about|complaint|complaints|worries|worry|doubt about|doubts about|mistaking|mistake about|shortage of|arguing|argument"),
    ("IF", "if|unless|in case|suppose|supposing|assuming|would have|would be|would|could have|would've|wish|were to|whether|had we|might have to|when it's|until it's|once it's|once i've|before we can"),
    ("DRAWING", "" + _products("the spec|spec|the code|code|the print|print|the book|the standard|the drawing|the schedule", "allows|lets|permits|asks|asked|will let|only allows") + "|drawing|drawings|the print|prints|plans|plan|the spec|specs|schedule|blueprint|blueprints|shop drawing|shop drawings|the book|the manual|submittal|calls for|called for|supposed to be|supposed to|should be|ought to be|per plan|design|designed|is drawn|shown as|shows as|sheet says|the code|detail says|spec'd|the sheet|oughta be|oughta|better be|better have|needs to be per|is to be|has to be per|code wants|code says|code calls|print says|print wants|print shows|print calls|print has|spec wants|spec says|inspector wants"),
    ("SAYS", "says|said|calls|asked|told|told us|told me|wanted|says it|asks"),
    ("OTHER", "he|she|they|he's|she's|they've|he'd|somebody|someone|whoever|the other crew|other crew|night shift|night crew|day shift|the electrician|electrician|the plumber|plumber|the foreman|foreman|the super|the helper|helper|the apprentice|apprentice|the inspector|inspector|the engineer|engineer|the lead|my partner|the other guy|other guy|another crew|another guy|the guys|those guys|the boys|the kid|the new guy|sheet metal guys|the tin knockers|the drywallers|framers|the sprinkler guys|the gc|the shop|the boss|my brother|my cousin|my buddy|my son|my dad|my boss|boss|my helper|my apprentice|the driver|the old one|the old duct|old one|old duct|existing duct|the existing one|the old piece|the old fitting|second shift|first shift"),
    ("QUESTION", "did you|did we|did he|did they|did anybody|did anyone|did somebody|do we|do you|do i|is it|is that|is the|is there|is this|are we|are you|are they|are there|are those|can you|can we|can i|could you|could we|should we|should i|should it|who|who's|what|what's|where|where's|when did|when do|when are|when is|how|how's|how many|how much|why|which one|which|has anybody|has anyone|have you|have we|was it|was that|were those|will it|would you|am i|does it|does anyone|does this|does the|is anybody|any idea|anybody know|do they"),
    ("DOUBT", "or was it|or is it|or maybe|not sure if|not sure|or something|don't quote me|i forget|can't remember|i'd have to check|or were they"),
    # corrections
    ("FIX", "one thing wrong there|one thing wrong|something wrong there|one mistake in that|one mistake in there|one mistake there|got something wrong there|got one thing wrong|i got one thing wrong|had one thing wrong|i had one thing wrong|i got something wrong there|one thing's wrong|one thing is wrong|one thing was wrong|one correction|one correction to that|one fix|i gave it wrong|i said it wrong|i told you wrong|i told it wrong|i got it wrong|i called it wrong|i wrote it wrong|i logged it wrong|i had it backwards|i misread it|i measured wrong|i measured it wrong|i read it wrong|i read that wrong|i counted wrong|i had it wrong|i had that wrong|make that|make it|no make that|no make it|scratch that|strike that|i mean|i meant|correction|no wait|wait no|wait|hold on|no sorry|sorry|sorry no|sorry i meant|rather|or rather|actually|actually no|no actually|no i mean|my bad|oops|i take that back|let me correct that|let me fix that|let me change that|excuse me|no no|no hold on|i misspoke|no it's|no that's|no its|no thats|well no|that's wrong|check that|no i'm wrong|i'm wrong|i was wrong|i lied|not that|change that|change that to|change it to|no scratch that|wait scratch that|wait make that|no not that|my mistake|should say|say again|no let me see|uh no|nope|no no no|er|pardon|pardon me|no correction"),
    ("CORRECTION_ON", "wrong run on|wrong size on|wrong length on|wrong number on|i gave the wrong run on|i gave the wrong size on|i gave you the wrong run on|i gave you the wrong size on|i gave you the wrong length on|i had the wrong size on|correction on|correction for|correction to|corrections on|correcting|to correct|fix on|change on|change for|update on|i need to correct|need to correct|i have to correct|need to fix what i said on|on that earlier one"),
    ("SHOULD_HAVE", "should have been|should've been|was actually|is actually|were actually|should of been|are actually|i said wrong|was supposed to say|that was wrong"),
    ("SCRATCH", "toss|lose|trash|dump|drop that|scratch|scrap|strike|delete|forget|disregard|ignore|erase|cancel|throw out|take back|forget about"),
    ("LAST_ONE", "what i said last|what i said a minute ago|what i just sent|what i sent last|that message|message from a minute ago|that message from a minute ago|note from a minute ago|last thing i said|last one i sent|thing i said last|last one|last note|last recording|last message|last entry|previous note|previous one|last thing|that last one|that last note|the last one|the last note|the last thing|that last bit|that last recording|my last one|my last note|my last|the previous|that last|the last fitting|the last message"),
    ("ALL_THAT", "all that|all of that|everything|this note|this one|this recording|that note|that whole thing|the whole thing|this whole thing|that one|the note|this message|this whole note|that recording|everything i just said|what i just said|everything i said"),
    # hedges
    ("HEDGE", "barely|closer to|nearer to|more like|somewhere round|round about|around about|somewhere about|thereabouts|or thereabouts|ballpark|in the ballpark of|about|roughly|approximately|approx|like|close to|almost|nearly|somewhere around|somewhere near|right around|right about|just about|just under|just over|probably|give or take|or so|ish|more or less|a little over|a little under|a hair over|a hair under|maybe about|like about|pretty close to|pretty near|in the neighborhood of|a bit over|a bit under"),
    ("THINK", "i think|i believe|maybe|pretty sure|i'm pretty sure|i guess|probably about|might be|might have been|could be|i'd say|i would say|looks like about|seems like|seems to be|i reckon|as far as i know|if i remember right|if i remember|i suppose|guessing|not a hundred percent|should be about|must be|looks to be|apparently|supposedly|possibly|perhaps|kind of|sort of|fairly sure|kinda|i want to say|want to say|i assume|i'm assuming|assuming|far as i know|as far as i can tell|far as i can tell|most likely|likely|i imagine|i'm thinking|i'm guessing|i'd guess|if i'm not mistaken|i'm fairly sure|fairly certain|i'm almost sure|almost sure|almost certain|i'm pretty certain|pretty certain|to the best of my memory|best i remember|best i can remember|don't hold me to it|i'd have to look|i'd have to check on it|i wouldn't swear to it|can't swear to it|could've sworn|after a fashion|if you can call it that|so to speak|in a manner of speaking|as such"),
    # what was done before an act says nothing of the act
    ("FILLER", "nothing special|nothing fancy|nothing unusual|nothing out of the ordinary|nothing weird|nothing funny about it|nothing tricky|nothing crazy|done and dusted|there's nothing left to do|nothing left to do|there's nothing more to do|nothing more to do|nothing else to do|there's nothing else to do|nothing left to do on it|nothing more to be done|i'm going to be honest|i'll be straight with you|i'll be real|i will admit|i won't lie|i'm not gonna lie|i'm not going to lie|i'll be the first to say|before taping|before the tape|before tape|before i tape|before i tape it|before stapling|before stapling and taping|ready for tape|ready to tape|ready for taping|nothing but|so it won't|so it doesn't|so they won't|so it can't|so they don't|so that it won't|so it don't|no more than|not more than|no further than|at most|thought i'd tell you|thought i'd let you know|just letting you know|wanted to tell you|want to let you know|i wanted to say|thought you should know|figured i'd tell you|thought i'd say|thought i'd mention|wanted to let you know"),
    ("FILLER", "what have i got|what have we got|what do we have|where the|where a|where somebody|where someone|where my|left me|left us|uh|um|okay|ok|so|well|yeah|yes|alright|all right|now|hey|oh|just|really|nice|nicely|good|real good|pretty good|pretty|already|too|here|there|up here|over here|all|is all|done|finished|completely|fully|properly|again|guys|man|let's see|let me see|see|real|nice and|today|this morning|i did|we did|we have|i have|that i|which is|which|who|you know|you know what|basically|anyway|anyways|right here|both of us|gone ahead and|went ahead and|ahead and|total|in total|also|even|still|the whole thing's|got|i made|we made|i built|we built|made|built|did|i just|we just|just got|finally|got done with|finished up|finished up with|up with|working on|doing|this is|here is|that is|i want to|i finished|we finished|put|put on|ran|put in|used|using|laid|went with|applied|threw|slapped|are all|is both|real nice|fresh|i'll be honest|i'm gonna be honest|gonna be honest|to be honest|honestly|i'll admit|i'll admit it|i'll tell you straight|not gonna lie"),
    # headings
    ("FITTING", "fitting|piece|part|fit in|fittin|fittings|pieces|ticket|item|parts|fit and|fitting's|feeding|fitted"),
    ("NUMBER", "number|no.|#|numbered|tag|tagged|mark|marked|tag number|mark number|num|labeled|labelled|fitting number|piece number|called|numbers|call it|calling it|call this|call this one|call that one|we call it|i call it|goes by|known as|name it"),
    ("NOT_MARK", "phone number|number of|a number|any number|room number|phone|serial number|po number|part number|model number|page number|box number|truck number|lot number"),
    ("RUN", "run|run number|runs|rung"),
    ("DASH", "dash|hyphen|tac|tack"),
    ("THRU", "through|thru|to|all the way to|all the way through|up through|till|until"),
    ("GENERIC", "one|duct|ductwork|thing|the line|assembly|box section"),
    # sizes
    ("INLET", "inlet|inlet size|entering|entering end|big end|large end|trunk|main|coming in|in end|starts at|starting at|the main|mains|trunk line|body|inlet's|the trunk is|trunk size|starts out|upstream|upstream end|entrance|inlet end|the big end|main duct|main is|inlet is"),
    ("OUTLET", "outlet|outlet size|leaving end|small end|discharge|leaving|ends at|out end|ends up|outlet's|finishes at|other end|the other end|downstream|downstream end|exit end|ends up at|outlet end|the small end|outlet is|discharge end"),
    ("BRANCH_WORD", "branch|branches|branch opening|branch is|side opening|tap opening|branch size|takes off|branching|branching off|branch off|tap off|side outlet|branch's|splitting to|splits to|splitting into|splits into|splits|taking off|branch duct|side tap|branch coming off|comes off|coming off|opening on the side|side branch"),
    ("OPENING", "opening|opening is|hole is|frame"),
    ("SIZE_WORD", "size|sized|sizes|dimensions|size is|measures|measuring|i.d.|finished size|inside size|inside dimension|inside dimensions"),
    ("WIDE", "wide|width|in width|wd"),
    ("HIGH", "high|deep|tall|height|depth|in depth|in height|in the depth"),
    ("SQUARE", "square"),
    ("LONG", "tip to tip|long|lng|lg|in length|long overall|overall length|overall|end to end|lengthwise|total length|long total"),
    ("LENGTH", "length|the length|overall length|total length|length is|length's|the tape says|tape says|tape measure says|tape measure reads|the tape reads|tape reads|the tape read"),
    ("SLOPE", "slope|pitch|taper|slope is|tapers|tapered|slopes|slope's|sloped part|the slope|pitched|sloping|tapering|slope part|angle part|angled part|incline"),
    ("TAKES", "takes|took me|took us|takes me|taking|taking up|eats|eat up|ate up|spans|stretches|takes up|took|uses|runs|eats up|is over|lasts|takes about"),
    ("OFFSETS", "offsets|sideways|to the side|shifts|jogs|kicks|kicks over|jogs over|shifts over|moves over|steps over|offset by|shifted|shifted over|offsetting|slides over|shift|shift of|jog of|jog|moved over|steps|swings over|kick|offset of|jogged|kicked|swings|goes over|it offsets|bumps over|shift over"),
    ("THROAT", "throat|throat radius|inside radius|radius|throat's|heel radius"),
    ("PIECE_COUNT", "piece|pieces|segment|segments|gore|gores|pc"),
    ("DEGREE", "degree|degrees|deg|°"),
    ("ROUND", "round|diameter|dia|around pipe"),
    # moves
    ("SIDE_WORD", "side|sides|face|cheek"),
    ("LEVEL", "flat|dead straight|dead level|dead plumb|straight as an arrow|runs straight|runs flat|ran straight|runs level|stayed flat|stayed straight|stayed level|stayed put|stayed where it was|stays where it is|stays where it was|didn't move|never moves|never moved|didn't budge|doesn't budge|won't move|doesn't change|didn't change|doesn't slope|isn't sloped|holds flat|holds straight|holds level|goes straight|went straight|stays plumb|stays square|left alone|level|straight across|dead flat|stays flat|stay flat|stays straight|stay straight|stays level|stay level|flat on|is flat|straight on|doesn't move|stays put|don't move|held flat|kept flat|stays the same|stay the same|keeps flat|held level|held straight|remains flat|no change on|no slope on"),
    ("FLAT", "flat|level"),
    ("MOVE", "comes|come|goes|go|moves|move|coming|going|steps|pulls|pull|kicks|pushes|slants|brings|brought|bring|brought the|bring the|sloped|slopes|cut|tapers|taper|tapered|slope|steps in|came|went|angles|angled|slanted|kicked|pulled|moved|pushed|sucks|we took|took|pinches|tucks|turns|runs"),
    ("MOVE_DOWN", "drops|drop|drops down|comes down|come down|came down|goes down|go down|going down|dropped|dropping|lowers|slopes down|falls|coming down|dips|tapers down|dropped down|moves down|steps down|brought down|slants down|sloped down|pulled down|brings down|went down"),
    ("MOVE_UP", "rises|raises|comes up|come up|came up|goes up|go up|going up|lifts|rise|raised|slopes up|coming up|climbs|tapers up|moves up|steps up|kicks up|brought up|slants up|went up"),
    ("MOVE_IN", "narrowing|pinching|necking in|gives up|gave up|comes in|come in|came in|goes in|go in|going in|moves in|move in|pulls in|steps in|tapers in|coming in|narrows|pinches in|slants in|closes in|tucks in|kicks in|brought in|sloped in|reduces|squeezes in|taper in|slopes in|went in|moved in|gets smaller by|loses|shrinks|pulled in|brings in|turns in"),
    ("MOVE_OUT", "widening|flaring|spreading|flaring out|opening out|comes out|come out|goes out|go out|going out|moves out|move out|flares|flares out|opens|opens up|opens out|widens|widens out|kicks out|steps out|tapers out|coming out|spreads|bumps out|flare out|slopes out|expands|pushes out|went out|grows|gains|moved out|gets bigger by|turns out|slants out"),
    ("OFF", "off the|off of the|out of the|from the"),
    # ends and edges
    ("MADE_FROM", "made from|made it from|made off|built from|built it from|made this one from"),
    ("LAID", "laid out|laid it out|laid out it|measured|measured it|laid|made|made it|layout|layout's|marked|marked it|worked|pulled my measurements|pulled measurements|started|layout was|measuring|measured everything|laid everything out|laid this one out|laid this out|measured this one|took my measurements|pulled it|laid them out|built it|marked it out|marked out|measurements|all measured|layed out|layed it out|lay out|lade out|laid it all out|did the layout|did my layout|my layout is|layout|lines pulled"),
    ("FEMALE", "female|female end|female side|female's|fee male|female and|email end|the female|female in|e-mail end|email and"),
    ("MALE", "male|male end|male side|male's|mail end|mail|the male|mail and|male and|male in"),
    ("END", "end|ends|edge"),
    ("AIR", "air|airflow|the flow|flow|wind"),
    ("LEAVES", "leaves|leaves by|leaves out|goes out|exits|exits by|blows out|comes out|leaving|leaves through|goes out by|goes out through|comes out of|comes out by|blows out of|goes out of|goes out the|leaves out of|comes out the|leaves at|leaves from|exits through|exits from|leaves the|exits out|is leaving by|is leaving|is going out|discharges|discharges out|discharges by|flows out|runs out|going out"),
    ("DOWNSTREAM", "downstream|is downstream|on the downstream|on the leaving end|on the discharge end|is the leaving end|is the discharge|on the downstream end|facing downstream|leaving"),
    ("SHIPLAP", "shiplap|shiplapped|ship-lap|shiplap edge|shiplap edges|shiplaps|shiplap on|shiplaps on"),
    ("BUTT", "butt|butt edge|butt edges|butted|square edge|butt joint|butt joints|butts|butt cut"),
    ("GROOVE", "low side of the lap|low side of the groove|low half of the lap|low half|low lip|low edge of the lap|low part of the lap|low part of the shiplap|step of the lap|groove|grooves|step|steps|low step|rabbet|low side of the step|low side|groove step|the low step of the groove|low step of the shiplap|low step of the groove|low part|low step's|step's|groove's|new shiplap|recut shiplap|the rabbet"),
    ("INSIDE", "toward the air|towards the air|to the air|at the air|into the air stream|toward the airstream|on the air side|to the air stream|glass side|on the glass side|to the glass side|facing the air stream|inside|to the inside|on the inside|faces inside|facing inside|faces in|facing in|inside the duct|towards the inside|toward the inside|inboard|in toward the duct|faces the inside|facing the inside|inside of the duct|faces the air|to the air side|to the airside|points in|goes inside|turned in|pointing in|air side|looking in|looking inside"),
    ("OUTSIDE", "facing side|on the facing side|to the facing side|foil side|on the foil side|to the foil side|toward the facing|toward the foil|skin side|on the skin side|room side|toward the room|toward me|jacket side|to the outside|on the outside|faces outside|facing outside|faces out|facing out|toward the outside|towards the outside|outboard|outside|faces the outside|facing the outside|points out|pointing out|goes outside|turned out|looking out"),
    ("PANEL", "freed side|freed piece|freed sheet|dropped side|dropped piece|loose side|cut side|the freed side|panel|the panel|freed panel|loose panel|top panel|dropped panel|panel's|cut panel|the flap panel|bottom panel|side panel|the freed panel"),
    ("SEATED", "seated|seats|dropped in|drops in|dropped right in|sits|sits in|sits good|sitting|fits|fits in|sat down|sits flush|seats good|dropped into|drops into|dropped down in|sits down in|dropped in and sits|seats in|seating|drops right in|set in|sits right|sat right in|fell in|fell right in|laid in|lays in|sits down|sits nice|sat in|fit|fit in|laid right in|fits nice|sets|set down in|sits tight|settled in|landed|lies in|drop in|resting in|rests in|rests on|sits on|dropped down into|sits well|sits flat|sits nice and flat|drops in good|seats well|seats flat|seated good|seated flat|dropped right into the shiplap|dropped right in the shiplap|dropped into the shiplap|dropped in the shiplap|drops into the shiplap|sits right in|dropped right down in|sat down good|sat down flat|sits down good|sits down flat|dropped down and sits|sit|sit down|sit right|sit flat|seat|sit in"),
    # cutting
    ("CUT_TO", "" + _products("cut|sliced|chopped|lopped|sawed|sawed off|whacked|trimmed|hacked|docked|shortened", "it|this one|that one|her|this|that|the end|one", "to|back to|down to|off to|off at|short to") + "|" + _products("sliced|chopped|lopped|sawed|whacked|hacked|docked", "to|back to|down to|off to|off at|short to") + "|cut to|cut it to|cut down to|cut it down to|cut this one to|shortened to|shortened it to|shortened|cut it at|cut at|trimmed to|trimmed it to|cut short to|cut it back to|cut back to|shorten it to|cut off at|cut it off at|cut to length at|shortened it|shortened this one|shortened this one to|cut this one down to|cut this to|cut this down to|chopped to|chopped it to|chopped it down to|cut one to|cut the section to|cut that one to|trimmed down to|whacked it to|cut a section to|cut a straight to"),
    ("CUT_LENGTH", "cut to length|cut to fit|shortened it|shortened|cut down|cut it down|cut short|recut the end|re-cut the end|recut the shiplap|re-cut the shiplap|cut it short|field cut|cut to size|recut the|re-cut the|recut its end|cut it to length|cut this one to length|recut end|re cut the end|re cut the shiplap|recut|re-cut|cut it to fit|was cut short|had to shorten"),
    ("FULL_LENGTH", "full length|uncut|full section|full joint|full stick"),
    # staples
    ("STAPLE", "staple|staple it|stapling|staple them|staple it up|staple this one|staple that one"),
    ("STAPLED", "did staple|did staple it|i did staple|we did staple|i did staple it|we did staple it|pinned shut with staples|pinned with staples|fastened with staples|stapled|stpld|stapld|is stapled|stapled it|stapled up|stapled down|stapled off|stapled it off|got stapled|stapled good|got it stapled|stapled through|ran the stapler around|ran the stapler all the way around|ran the stapler around it|ran the stapler all the way around it|shot staples|shot it with staples|stitched it|stitched it up|got my staples in|got the staples in|put the staples in|put staples in it|hit it with the stapler|stapled her up|stapled her|stapled 'em|gave it staples|zipped it with staples|stapled together|restapled|re-stapled|restapled it|re-stapled it|stapled tight|stapled it tight|stapled down tight|stapled up tight|stapling done|stapling's done|done stapling|finished stapling|got the stapling done|stapling is done|all stapled"),
    ("STAPLES", "staples|stpls|stpl|stp|the staples"),
    ("TURNING", "turning"),
    ("VANES", "vns|turning blades|turning blade|turning fins|air turns|vanes|turning vanes|vane|turning vane|the vanes|vanes are|double wall vanes|single wall vanes|vane rail|vane rails|vane set"),
    ("IN_PLACE", "installed|in place|fitted|are in|is in|in there|in it|put in|set|went in"),
    ("MISSING", "missing|left out|out|gone|cut off|cut away|not in|torn off|came off|wasn't there"),
    ("WITH", "with|using|used|and used|on with"),
    ("SEALED", "sealed|sealed with|sealed up|closed|closed up|closed with|closed it with|sealed it with|sealed it|covered with|buttered with|sealed up with|closed up with|coated with|smeared|coated"),
    ("PER", "per"),
    ("FLAP", "flap|stapling flap|staple flap|facing flap|flaps|the flap"),
    ("CLINCHED", "clinched|clinch|clinching|bent|flared|turned|crimped|legs flared|legs turned|legs bent|clinches"),
    ("LEG", "leg|legs|leg length"),
    ("CROWN", "crown|crowns|gauge|ga"),
    ("EVERY", "every|c/|spaced|spacing of|spacing is|at every|spaced at|spaced every|spacing|one every|pitch of|spacing was|on every|spaced out every|centers of|set every|spaced about"),
    ("APART", "apart|on center|on centers|o.c.|oc|on-center|center to center|centers|inch centers|in between|spacing|spaces|o/c|o c"),
    ("TABS", "tabs|cross tabs|cross-tabs|crosstabs|cross tab|tape tabs|tabs of tape|cross straps|crosstab|cross taps"),
    ("TAB_WORD", "tab"),
    ("LEFT_OUT", "left the|left out the|leaving the|leaving out the|left those|left its"),
    ("NOT_LOGGED", "don't log|do not log|don't record|don't count|don't write down|don't put down|not logging|not counting|never mind|nevermind|leave out|don't bother with|forget about logging|keep out of the log|don't include|not for the log|off the record"),
    ("UNTAPED", "untaped|un taped|un-taped|tapeless"),
    ("UNSTAPLED", "unstapled|un stapled|un-stapled"),
    ("UNDONE", "pulled that|pulled those|pulled that out|pulled those out|tore that out|took that out|took those out|yanked them|yanked it|yanked those|yanked that|sticking up|sticking out|standing up|sticks up|popped up|standing proud|bent back up|came back up|hanging loose|flapping|lifting at|lifting on|curling up|curled up|lifting|is lifting|tore it off|tore it back off|tore them off|tore that off|tore it all off|tore all of it off|ripped it off|ripped it back off|ripped it all off|ripped that off|pulled it off|pulled it back off|pulled them off|pulled it all off|pulled that off|pulled it loose|peeled it off|peeled it back off|peeled off|peeled right off|peeled back off|took it off|took it back off|took it all off|took that off|took them off|took them back off|took them back out|took them out|took it back out|took it out|pulled them out|pulled them back out|pulled it out|pulled it back out|tore it out|tore them out|ripped it out|ripped them out|stripped it off|stripped it back off|cut it off|cut it back off|cut it back out|came back off|came undone|came loose|came unstuck|let go|popped off|popped loose|popped out|fell off|fell out|fell apart|lifted off|lifted right off|came right off|came off|came off again|came out again|has come off|undid it|undid that|pulled the tape off|tore the tape off|took the tape off|ripped the tape off|peeled the tape off|pulled the tape back off|took the tape back off|took the staples out|took the staples back out|pulled the staples out|pulled the staples|pulled the staples back out|took the vanes out|took the vanes back out|pulled the vanes|pulled the vanes out|pulled the vanes back out|didn't stick|didn't hold|wouldn't stick|won't stick|isn't sticking|not sticking|doesn't stick|wouldn't hold|won't hold|did not stick|had to tear it off|had to pull it off|had to take it off|had to rip it off|had to peel it off|had to pull them out|had to take them out|had to take them back out|had to pull them back out|had to cut it off|made us tear it off|made me tear it off|made us pull it off|made me pull it off|made us take it off|made me take it off|had us tear it off|had me tear it off|had us pull it off|had me pull it off|i pulled them|then pulled them|pulled 'em|pulled 'em out|pulled 'em off|pulled them all|keeps coming off|keeps falling off|keeps letting go|keeps lifting|keeps peeling|keeps popping off|half off|coming right off|keeps popping out|keep falling out|keep coming out|keep popping out|then pulled every last one|then pulled every one|then pulled every single one|then pulled the lot|pulled every last one|pulled every one|pulled every one of them|pulled each one|pulled the lot|pulled every single one|peeled clean off|peeled right back off|peeled away|dropped clean off|fell clean off|came clean off|lifted clean off|falling off|is falling off|coming off"),
    ("BENT", "bent|cinched|cinched tight|cinched down|clamped down|mashed down|knocked over tight|hammered over|beat flat|snugged down|bent over|folded|bent tight|folded over|bent down|folded tight|bent back|bent flat|turned over|bent in|pounded flat|hammered flat|folded back|bend|crimped tight|bent all the way|folded over nice and tight|bent down nice and tight|bent over tight|folded over tight|folded down tight|bent down tight|bent nice and tight|bent good and tight|bent over nice and tight"),
    # tape
    ("TAPED", "did tape|did tape it|did tape it up|i did tape|we did tape|i did tape it|we did tape it|i did tape it up|we did tape it up|tape laid flat|tape laid down|tape laid on|tape worked in|tape worked down|tape pressed on|tape pressed down|tape pressed in|tape smoothed down|tape smoothed on|covered in tape|covered with tape|taped|tpd|is taped|taped it|taped up|taped off|taped over|taped it up|done taping|finished taping|taping done|taping's done|taping is done|taped good|taped down|taped it off|got taped|got it taped|closed with tape|sealed with tape|taped shut|taped her up|taped her|taped 'em|taped her off|re-taped it up|put the tape on it|got the tape on it|got tape on it|retaped|re-taped|retaped it|re-taped it|taped up tight|taped it up tight|taped her up tight|taped it tight|taped tight|taped down tight|got the taping done|taping all done"),
    ("TAPE", "tape|tape's|tapes|taping|tape job|foil tape|tape this morning|tape this afternoon"),
    ("TAPE_IT", "tape it|tape them|tape this|tape that|tape it up|tape this one|tape that one|seal it|seal it up|seal them|seal this one|seal that one"),
    ("RUBBED", "did rub|did rub it|did rub it down|did rub it all down|i did rub|we did rub|i did rub it|we did rub it|i did rub it down|we did rub it down|i did rub it all down|we did rub it all down|gave it a good hard rub|gave it a good rub|gave it a hard rub|gave it a good rubbing|gave it a real good rub|gave her a good rub|rubbed down|rubbed it down|rubbed|rubbed out|rubbed it|rubbed in|rubbed it out|rubbed it in|rubbed good|burnished|burnished down|squeegeed|squeegeed down|squeegeed it|rubbed them down|rubbed the tape down|rubbed tape down|rubbed it down good|rubdown|rubbed down hard|rub down|rubbed it all down|rubbed all of it down|rubbed everything down|rubbed the tape|rubbed hard|rubbed it down hard|rubbed that down|rubbed on|pressed it down|rubbed 'em down|rubbed down the tape|rubbing|gave it a good rub|gave it a rub|gave it a good rubbing|gave it a rubbing|hit it with the squeegee|ran the squeegee over it|worked it down|rubbed her down|rubbed 'em|gave the tape a good rub|went over it with the squeegee|gave it a quick rub|quick rub|gave it a once over|gave it a quick rub down|gave it a once over with the squeegee"),
    ("RUB", "press the tape down|press down the tape|press the tape|pressed the tape down|pressed down the tape|rub|rub it down|rub down|rub it|burnish|rub them down|rub the tape|rub the tape down|rubbed down|rub it out"),
    ("SCRIM", "scrim|scrim pattern|scrim's|pattern of the scrim|facing pattern|weave|scrim lines|pattern's|the pattern|tape pattern|fiber pattern"),
    ("SHOWS", "poking through|pokes through|poking out|grinning through|coming right through|shows|show|showing|shows through|show through|showing through|comes through|coming through|is visible|visible|shows up|came through|pops|popped through|reads through|prints through|telegraphs|shows good|showed|showed through|shown|came up|comes up through|popped|popped right through|came right through|came right up|came up good|came up through|jumps out|jumped out|read through|printed through"),
    ("SEE", "see|can see|could see|i can see|you can see|you could see|saw|could feel|can feel|you see|we can see|until you see|i see"),
    ("WIPED", "did wipe|did wipe it|did wipe it down|did wipe it off|i did wipe|we did wipe|i did wipe it|we did wipe it|i did wipe it down|we did wipe it down|i did wipe it off|we did wipe it off|wiped|wiped down|wiped it down|wiped clean|wiped it clean|wiped off|wiped it|wiped it off|clean and dry|dry and clean|cleaned the facing|cleaned the surface|cleaned it|cleaned it off|dusted|dusted off|wiped dry|free of dust|surface is clean|surface was clean|facing is clean|foil is clean|the foil is clean|the foil was clean|the foil's clean|the facing is clean|the facing was clean|the facing's clean|the surface is clean|the surface was clean|the surface's clean|the jacket is clean|the board is clean|the seams are clean|foil was clean|foil's clean|foil clean|jacket is clean|jacket was clean|seams are clean|joint is clean|joints are clean|board is clean|everything is clean|everything's clean|nice and clean|foil is dry|foil is clean and dry|facing's clean|surface's clean and dry|facing was clean|it's clean|surface clean|wiped the facing|wiped the surface|wiped the dust|wiped the facing down|wiped the surface down|facing clean|cleaned and dried|clean surface|surface's clean|clean facing|wiped everything|no dust|dusted it off|cleaned|wiped it dry|wiped and dry|wiped and dried|was clean and dry|dried off|wiped it all down|facing was dry|surface was dry|surface is dry|facing is dry|clean dry|wiped them down|cleaned up the facing|gave it a wipe|gave it a good wipe|blew the dust off|blew it off|blew it off first|hit it with a rag|brushed it off|brushed the dust off|swept the dust off|ran a rag over it|blew the facing off|gave the facing a wipe"),
    ("WIPE", "wipe|wipe it|wipe it down|clean it|clean the facing|wipe down|dust it"),
    ("DIRTY", "dusty|dirty|greasy|oily|dust on it|covered in dust|didn't wipe|wasn't clean|wasn't wiped|not clean|not wiped|grimy|taped over the dust|oil on it|had oil on it|grease on it|still dusty|still dirty|a little dusty|still a little dusty|kinda dusty|still has dust on it|dust all over it|dust on the facing|dirt on it|mud on it"),
    ("PREHEATED", "ran the iron over the facing|ran the iron over it|ran the heat gun over it|ran the heat gun over the facing|took the iron to it|took the iron to the facing|preheated|pre-heated|heated the facing|warmed the facing|warmed it up|warmed it|heated it|heated it up|warmed up the facing|warmed the board|hit it with the iron first|hit it with the heat gun|preheated it|preheat|heated up the facing|warmed the surface|heated the surface|pre heated|preheated the facing|warmed the facing up|warmed the joint|heat gun first|heated the joint|warmed the seam|heated the board|ironed the facing first|warmed it first|heated it first|warmed them|warmed the facing first|ironed it first|hit it with heat first|put heat on it first|heated the facing first|heated the facing up|warmed the facing up first|heated the seam|heated the tape first|heated|warm the facing|warm it|warm it up|warm the facing up|warm the facing up first|warm it first|heat it|heat it up|heat it first|heat the facing|heat the facing up|heat the facing first|iron the facing|iron the facing first|iron it first|preheat it|warm them up|preheat the facing|heating it|heating the facing|heat on it|preheating|preheating it|warming it|warming it up|heating it first|warming the facing|heating it up"),
    ("COLD_ON", "put it on cold|put the tape on cold|went on cold|taped it cold|taped cold|put on cold|laid it on cold|laid it cold|tape went on cold|stuck it on cold|put it on the cold facing|taped it stone cold"),
    ("TRIMMED", "did trim|did trim it|i did trim|we did trim|i did trim it|we did trim it|trimmed|trimmed it|trimmed off|trimmed the extra|trimmed the insulation|trimmed out|trimmed the excess|trimmed the extra insulation|cut off the extra|shaved|cut away the extra|trimmed back|trimmed the fiberglass|cut off the extra insulation|trimmed up|trimmed the glass|removed the extra insulation|extra insulation trimmed|excess trimmed|extra insulation removed|took off the extra insulation|cleaned off the extra insulation|cut the extra insulation|cut the extra insulation off|pulled the extra insulation|trimmed all the extra|extra glass trimmed|extra insulation is trimmed|extra insulation's trimmed|cut off the excess|trimmed off the extra insulation|took out the extra insulation|cut out the extra insulation|trimmed the leftover insulation|extra insulation out|insulation trimmed|extra insulation's out|extra insulation cut off|cut the excess insulation|trimmed the excess insulation|trimmed the extra glass|extra insulation's off"),
    ("TRIM", "trim|trim it|trim the extra|trim the insulation|trim the extra insulation"),
    # gaps and damage
    ("PARTED", "" + _products("stick|fit|slide|slip|get|put|push|poke|drop|see", "a|my|your", "pencil|finger|pinky|pinkie|nail|key|ruler|tape measure|knife point|knife|blade|dime|nickel|penny|card|credit card|business card|screwdriver|fingernail|thumb", "in|into|through|between") + "|miss each other by|miss each other|stands off|stand off|standing off|stood off|sits off|sit off|miss by|misses by|missed by|missing by|off by|is off by|stands open|standing open|stand open|stood open|sits out|sitting out|stands out|pulled apart|came apart|pulls apart|spread apart|spread open|pulled open|doesn't close|won't close|wouldn't close|didn't close|don't close|doesn't close up|won't close up|doesn't meet|don't meet|didn't meet|won't meet|wouldn't meet|don't touch|doesn't touch|didn't touch|don't quite meet|doesn't quite meet|doesn't quite close|won't go together|wouldn't go together|didn't go together|won't pull up|wouldn't pull up|didn't pull up|won't pull tight|doesn't pull tight|didn't pull tight|doesn't pull up|shy of closing|short of closing|shy of touching|shy of meeting|short of meeting|short of touching|away from closing|gapes|gaping|opened up|opens up|has opened up|yawns|open by|doesn't come together|don't come together|won't come together|don't line up|doesn't line up"),
    ("GAP", "gap|gaps|crack|cracks|opening anywhere|opening in the joint|opening between|opening at the lap|sliver of light|light through|light coming through|see light|slot at the joint|void at the joint|space at the joint|space between the ends|open joint|opening at the joint|daylight|opening at the seam"),
    ("JOINT", "joint|joints|seam|seams|the joint|corner|corners"),
    ("NO_DAMAGE", "no tears|no damage|no rips|no holes|no punctures|no tears or holes|facing intact|facing's intact|facing is intact|undamaged|no tear|no rip|facing's good|facing is good|facing looks good|facing's fine|facing is fine|no dings|facing not torn|facing isn't torn|no tears or punctures|no damage to the facing|facing good|no facing damage|nothing torn|no tears in it|no rips or tears|no holes or tears|facing's in good shape|facing is in good shape|no punctures or tears|no damage anywhere|no tears no holes|board's good|no tears or rips"),
    ("FACING", "facing|the facing|foil|the foil|skin|the skin|vapor barrier|jacket|board facing"),
    ("REPAIRED", "fixed|patched|repaired|mended|tape over it|tape over that|tape over the plug|tape over the patch|tape over the hole|taped over the plug|taped over the hole|taped over the patch|taped over that|taped over the tear|mended it|mended with|patched it|fixed it|repaired it|patched up|fixed up|patched it up|fixed it up|patched over|covered it|put a patch|patch|fixed that|patched that|covered|taped over it|taped it over|fixed them|patched them|sealed it up|put tape over it|repaired that|is fixed|is patched|is repaired|got patched|got fixed|patching|fixing|fixed with|patched with"),
    ("DAMAGE_PLACE", "in the facing|in the foil|in the board|on the facing"),
    # supports
    ("TIE_RODS", "tie rods|the channel|the channels|channel iron|steel channel|the rods|rods and channels|rod and channel|tie rod|reinforced|reinforcing|reinforcement|channels|channel reinforcement|rods in|reinforced it|stiffeners|reinforcing channels|tie-rods|tierods|reinforced with tie rods|reinforced with channels|reinforced with channel"),
    ("SCREWS", "screws|screw|fasteners|screwed|screws are|number ten screws|sheet metal screws"),
    ("WASHERS", "washers|washer|square washers|plated washers"),
    ("ON_ITS_OWN", "hung it separate|hung it separately|hung separate|hung that separate|strapped it separate|supported it separate|supported it separately|on its own|its own straps|its own hangers|own hangers|own straps|on its own straps|on its own hangers|independently|by itself|supported separately|own support|own supports|hung separately|supported on its own|on its own support|its own support|its own supports|separate hangers|hangs on its own|hung on its own|hung it on its own|supported by itself|separate straps|separately|on its own rods|its own rods|hung independently|on separate hangers|supported independently"),
    ("DOWN_AGAIN", "took it back down|took it down|had to take it down|had to take it back down|pulled it back down|brought it back down|took it down again|came back down|took them back down"),
    ("ON_DUCT", "hanging off the duct|hanging on the duct|sitting on the duct|hangs on the duct|hung off the duct|hung on the duct|supported by the duct|hangs off the duct|resting on the duct|rides on the duct|is on the duct|supported off the duct|not hung on its own|isn't hung on its own|not on its own|not supported on its own|riding on the duct|just riding on the duct|sitting right on the duct|isn't on its own|not hanging on its own|not supported separately"),
    ("WEIGHS", "weighs|weight|weighs in at"),
    ("ACCESSORY", "filter rack|filter box|filter bank|uv light|smoke detector|duct detector|reheat coil|reheat|booster fan|inline fan|in-line fan|sound attenuator|sound trap|attenuator|flow station|electric heater|dehumidifier|damper motor|mixing valve|damper|coil|heater|fan|accessory|accessories|unit heater|duct heater|motor|actuator|humidifier|silencer|vav|vav box"),
    # board and air
    ("BOARD", "board|duct board|ductboard|glass board|fiberglass board|fiberboard|bored"),
    ("EI", "ei|e.i.|rating|e i|class|rigidity"),
    ("STATIC", "pumped it to|pumped it up to|pumped her to|pumped her up to|pumped up to|pumped the run up to|blew it up to|blew her up to|pressurized it to|pressurized to|pressurized it at|brought it up to pressure at|on the gauge|on the manometer|on the magnehelic|on the test gauge|static|static pressure|pressure|duct pressure|pressure class|statics|static's|static is|external static"),
    ("NEGATIVE", "negative|minus"),
    ("AIRFLOW", "airflow|air flow|moving|air volume|volume|flow"),
    ("AIR_TEMP", "air temperature|air temp|supply air temp|discharge air|air inside|temperature inside the duct|duct air|discharge temp|leaving air|air's at|air in the duct|inside the duct|air going through|air coming through|air coming out|leaving air temp|in the duct|air in the run"),
    ("TEMP", "temperature|temp|surface|in here|outside|out here|out|up here|on the facing|surface temp|surface temperature|ambient|in the shop|in the building|facing temp|facing is|facing's at|it's only|board is at|room temp|cold|warm|the facing was|the facing is|the thermometer says|thermometer|gun says|ir gun|it is only|in this building|on site|gun said|the gun said|gun reads|gun read|the gun read|the gun reads|thermometer said|thermometer read|facing read|facing reads|facing was showing|facing is showing|facing's showing|facing showed|board read|board reads|board was at|the board was at|board was down at|the board was down at|board's at|board's down at|board is down at|facing was at|facing was down at|facing's down at|foil was at|foil read|foil was down at|surface read|surface was at|surface was down at|temp gun said|temp gun read|laser said|laser read"),
    ("LEAK_TEST", "leak test|leakage test|tested for leaks|leak tested|pressure tested|pressure test|leak testing|leakage|leak-tested|leak tester|leak testing rig|leak test on|duct leakage test|leaked|leaks|leaking|leak rate|air test"),
    # stage
    ("HUNG", "hung|is hung|hung it|it's up|is up|up and tied in|got it up|got that one up|we got that one up|we got this one up|i got it up|we got them up|i got that one up|up in the air|hanging|up on the hangers|it's in the air|up in place|hung up|hung in place|hung them|up and hung|got it hung|is hanging|up and in|got hung|up and connected|set in place|installed|is installed|it's hung|put it up|put that one up|put up|got this one up|got this up|we got it up|they're up|are up|all hung|is in the air|up on hangers|are hung|it's installed|up and joined|is up and tied in|hung and tied in|got 'em up|got them up|up now|is now up|up in the ceiling|is up in the ceiling|up on the trapeze"),
    ("HANG", "hang|hang it|hang them|put it up|get it up|hang this|hanging it|install|install it|hang this one"),
    ("ON_BENCH", "on the bench|on the table|in the shop|on the floor|on the sawhorses|on horses|still on the bench|not hung|on the ground|on the cart|at the bench|isn't hung|sitting on the bench|not up|on the stand|ready to hang|ready to go up|waiting to go up"),
    ("TIED", "taped it to|stapled it to|taped her to|taped onto|stapled onto|closed onto|slid onto|shoved onto|forced onto|stabbed onto|stabbed into|pushed onto|fitted onto|butted onto|hooked onto|seated onto|mated up to|tied in to|tied into|tied in and taped to|tied in|tied to|connected to|joined to|hooked to|hooked up to|closed to|attached to|tied in with|connected up to|closed up to|joined up to|joined up with|joined with|hooked into|connected into|tied it into|tied it in to|joined it to|connected it to|tied it to|hooked it to|tied into the|married to|taped to|tied up to|mated to|stapled and taped to|closed it to|tied and taped to|stapled to|tied in and closed to|tied in and sealed to|closed the joint to|joint to|sealed to|tied in to number|tied together with|buttoned up to|closed in to|coupled to|slid into|slipped into" + _ONTO),
    ("REDID", "did it again|did it over|did that over|did them again|did them over|restapled|re-stapled|retaped|re-taped|redid it|redid|re-did|redone|remade|recut fitting|made over|redo|did over|reworked|rebuilt"),
    # start of shift
    ("SHIFT", "shift note|start of shift|starting shift|starting the shift|start of the day|starting off|starting on|starting out on|today we're on|shift start|beginning of shift|starting the day|good morning|morning everybody|today we are on|for today|for the day|for this shift|today's|starting today|first thing|morning note|today i'm on|on shift|clocking in|starting up|for the shift|kicking off|morning crew|morning|setup for today|all day today"),
    ("DAY", "monday|tuesday|wednesday|thursday|friday|saturday|sunday"),
    ("CLOSING", "closing|closure|closing with|closures|closing up with"),
    # counted things and other numbers
    ("COUNTED", "boxes|box of|guys|people|men|hours|hour|minutes|minute|days|weeks|rolls|roll|times|of us|dollars|bucks|percent|o'clock|am|pm|a.m.|p.m.|trips|floors|stories|storeys|sheets|buckets|bucket|tubes|cans|packs|years|months|seconds|of them|more|fittings|elbows|straights|sections of board|cases|left over|workers|guys here|helpers|ladders|of these|of those|carts|trucks|coffees|phone calls|coats|layers|passes|bundles|tickets|drops|runs|transitions|tees|caps|collars|man crew|man|person|cartons|pallets|lifts|bags|to go|bits|pieces of board|yards|stitches|miles|calls|texts|messages"),
    ("ROOM", "room|suite|unit|apartment|phone|building|gate|page|sheet|rev|revision|chapter|section number|code|until|since|before|level|detail|at about|around noon|truck|lot|zip|channel|bay|grid|column|line number|extension|year|catalog|invoice|ends in"),
    ("SIDES_ALL", "all four ways round|all four ways around|all four ways|four ways round|all sides|every side|on all sides|all its sides"),
    ("BUILDING", "ceiling tile|ceiling tiles|ceiling grid|tile|tiles|drywall|sheetrock|plywood|door|doors|doorway|doorframe|window|windows|light|lights|light fixture|light fixtures|troffer|beam|beams|joist|joists|stud|studs|steel|girder|column|pipe|pipes|conduit|sprinkler pipe|sprinkler main|cable tray|tray|ladder|scaffold|table|bench top|workbench|cart|truck|pallet|crate|tarp|lift|scissor lift|platform|toolbox|knife|straightedge|square tool|t-square|tape measure|hatch|skylight|louver|chase opening|hole in the wall|hole in the floor|hole in the deck|sleeve in the wall|wall opening|floor opening|roof opening|curb|roof curb|bulkhead|soffit|shaft opening|strut|unistrut|angle iron|board stock|scrap|scrap piece|offcut|offcuts|lumber|two by four|blocking|insulation batt|batt|blanket|foam|screen|monitor|tablet|phone|photo|picture|drawing board|whiteboard|elevator door|garage door|fire door|scraps|scrap pieces|offcut pieces|shim|shims|sheet of board|a sheet|sheet stock|full sheet|whole sheet|the sheet|a hole in the wall|a hole in the floor|a hole in the deck|a hole in the roof|a hole in the ceiling|a hole in the slab|a hole in the drywall|hole in the roof|hole in the ceiling"),
    ("ONE_SIDE", "one side|one side only|on one side|only one side|just one side|the one side"),
    ("EAR", "heard"),
    ("TRADE_NOISE", "ran out of daylight|out of daylight|running out of daylight|lost daylight|lost the light|losing daylight|somebody's boot|somebodys boot|someone's boot|his boot|guy's boot|boot heel|boot print|boot went|my boot went|boot slipped|i couldn't close up|couldn't close up|couldn't get closed|can't close up|down the fairway|put the tee in the ground|rubbing tool|rub tool|rubbing stick|tee in the ground|tee it up|tee off|teed off|tee time|tee box|transition from day shift|transition from night shift|transition from days|transition from nights|transition to night shift|transition to day shift|transition between shifts|shift transition|mastic bucket|mastic bucket's|bucket of mastic|mastic brush|mastic pail|pail of mastic|can of mastic|mastic tub|tub of mastic|mastic gun|mastic can|is water wet|we crushed it|crushed it today|killed it today"),
    ("TRADE_NOISE", "cut a hole|cut the hole|cut my hole|cut out a hole|cut out the hole|cut in a hole|hole for|holes for|a hole for|hole cut for|hole is cut|screw hole|screw holes|bolt holes|drilled a hole|drill holes|hole saw|core hole|round hole|square hole|hole to fit|hole where|man hole|no hole cut|supply house|supply store|supply truck|return trip|tape measure|tape gun|staple gun|stapler|tape measures|lunch|coffee|radio|out of tape|out of staples|boxes of staples|box of staples|rolls of tape|roll of tape|some tape|more tape|more staples|wrong tape|hang on|hang tight|sit tight|hold on a second|hung up on|left my tape|left my|right now|right by|right next|right there|right above|right behind|right before|right after|right at|right up|right where|all right|that's right|is right|right on|staple guns|tape in the truck|red tape|caution tape|hit my elbow|banged my elbow|bumped my elbow|hurt my elbow|my elbow is killing|my elbow hurts|my elbow's killing|my elbow is sore|my elbow's sore|tennis elbow|skinned my elbow|cracked my elbow|elbow grease|elbow room|elbow to elbow|bad elbow|smacked my elbow|bruised my elbow|my shoulder|crushing it|killing it|nailing it|dusty in here|dirty in here|it's dusty in here|dusty up here|dusty out here|dusty down here|dirty up here|dusty room|dirty job|dusty job|put a boot through|put his boot through|put a foot through|boot through|a boot through"),
)

KINDS = (
    ("straight", "straight|straight piece|straight section|straight duct|straight joint|section|sections|straights|straight sections|full section|straights|strait|duct section|straight pieces|stick|straight length|just a joint|just one joint|a plain joint|plain joint|just a straight|just a plain joint|joint of duct|section of duct|piece of straight"),
    ("transition", "transition|trn|trns|reducer|increaser|transitions|reducers|reducing piece|transition piece|transition fitting|reducing transition|taper piece|reduction|reducing fitting|enlarger|increasers"),
    ("offset", "jog|offset|offsets fitting|off set|offset fitting|offset piece|s offset|jog piece|dogleg"),
    ("elbow", "elbow|ell|elbows|square elbow|radius elbow|l bow|mitered elbow|vaned elbow|elle|ells|square throat elbow|elbow fitting"),
    ("tee", "tee|tees|t fitting|bullhead|bullhead tee|tee fitting|a t|straight tee"),
    ("branch", "branch take-off|take-off|takeoff|take off|tap|saddle|branch fitting|tap-in|saddle tap|taps|takeoffs|take-offs|saddle take-off|branch tap|shoe tap|straight tap|boot tap|branch takeoff|clinch tap"),
    ("wye", "wye|pants|pants fitting|y fitting|pair of pants|y branch|wyes|pants wye|y|pant leg|trouser|y-branch|pants piece"),
    ("end_cap", "end cap|endcap|dead end|cap|end caps|end-cap|caps|and cap|in cap|blank end|end capped|dead-end"),
    ("collar", "collar|collars|boot|start collar|starting collar|spin-in|spin in|round take-off|round takeoff|drop|spin collar|round collar|takeoff collar|spin-in collar|starter collar|register boot|spinin|start collars|spins|round tap|round take off|start-collar|spin ins|spin-ins"),
    ("access_door", "access door|access panel|access doors|door in the duct|inspection door|clean out door"),
    ("register", "register boot|register|grille|register opening|grille opening|register flange|grill|diffuser opening|opening for a register|opening for a grille|register hole|flange for a register|flange for the register|grill opening|flange for a grille|grille flange|opening for the register|opening for the grille|diffuser|cut in a register|registers|register box"),
    ("equipment_connection", "equipment connection|equip. connection|equip connection|equip. conn|equip conn|equipment conn|eq conn|eq. conn|eq. connection|eq connection|unit conn|connection to the air handler|connection to the unit|unit connection|connection to the furnace|air handler connection|tie-in to the unit|tie in to the unit|connection at the unit|connection at the air handler|equipment tie-in|connected to the air handler|connected to the unit|connection to the fan coil|connection to the equipment|connection to the rooftop unit|hookup to the unit|metal connection|rooftop unit connection|fan coil connection|connection to the fan|connection to the ahu|ahu connection|furnace connection|tie-in at the unit|hookup to the air handler|tie-in to the air handler|connection at the furnace|connection to the rtu|rtu connection|equipment hookup"),
    ("damper_sleeve", "damper sleeve|fire damper sleeve|fire damper|sleeve for the fire damper|fire damper's sleeve|smoke damper sleeve|damper sleeves|sleeve at the fire wall"),
    ("plenum", "plenum|plenum box|box plenum|supply plenum|return plenum|plenums|mixing box|plenum piece|box"),
    ("hanger", "hangers|trapezes|hanger straps|hanger rods|hanger rod|duct straps|hanger|trapeze hanger|strap hanger|trapeze|trapeze hangers|strap hangers"),
    ("repair", "repair|repair job|repairs"),
)

SIDES = (
    ("top", "top|top wall|top edge|upper|the top|top side|up top|top panel|top's|tops"),
    ("bottom", "bottom|bottom wall|bottom edge|btm|btm side|lower|the bottom|bottom side|bottom panel|bottom's|underside|floor side"),
    ("left", "left|left wall|left edge|left-hand wall|left hand wall|l side|l. side|lh side|l.h. side|lh|lt|left hand|left-hand|left side|left hand side|left-hand side|left panel|left cheek|left's"),
    ("right", "right|right wall|right edge|right-hand wall|right hand wall|r side|r. side|rh side|r.h. side|rh|rt|right hand|right-hand|right side|right hand side|right-hand side|right panel|right cheek|right's"),
    ("left right", "both sides|each side|either side|both cheeks|left and right|right and left|both the sides|left and right sides|both side|both left and right"),
    ("top bottom", "top and bottom|bottom and top|top and the bottom|both top and bottom|top & bottom|the top and the bottom|the top and bottom"),
    ("top bottom left right", "all four sides in|all sides in"),
)

SERVICES = (
    ("supply", "supply|supply air|supply side|supply duct|supply main|the supply|sply"),
    ("return", "return|return air|return side|return duct|the return|return main|return line|rtn|rtrn"),
    ("exhaust", "grease duct|grease exhaust|grease line|grease run|hood exhaust|kitchen hood exhaust|range exhaust|fume duct|fume hood exhaust|lab exhaust|dishwasher exhaust|fryer exhaust|cooking exhaust|exhaust off the hood|exhaust|exhaust duct|exhaust side|fume exhaust|toilet exhaust|kitchen exhaust|exhaust air"),
    ("outside", "on the outside air intake|on the outside air|on the outside air side|outdoor air intake|oa intake|fresh air intake|outside air|fresh air|outdoor air|oa|make-up air|makeup air|outside air intake|make up air|ventilation air"),
)

CLOSURES = (
    ("tape_pressure", "pressure tape|pressure sensitive|pressure-sensitive|pressure sensitive tape|pressure-sensitive tape|psa tape|pressure sensitive foil tape|peel and stick|peel-and-stick tape|pressure foil tape|peel and stick tape|pressure-sensitive foil tape|stick tape"),
    ("tape_heat", "heat tape|heat activated|heat-activated|heat activated tape|heat-activated tape|iron-on tape|iron on tape|heat seal tape|iron-on|heat-seal tape|hot iron tape|heat sealed|ironed tape|heat sensitive tape|heat-sensitive tape"),
    ("mastic", "mastic and fabric cloth|mastic and glass cloth|mastic and cloth|fabric cloth and mastic|mastic|mastic and fabric|fabric and mastic|mastic and glass fabric|glass fabric and mastic|mastic'd|masticked|mesh and mastic|mastic and mesh|mastic'd it|mastic with fabric|mastic and glass|mastic with glass fabric|mudded|mudded it|mastic over fabric|mastic'd the|fabric in mastic|mastic'ed|masticed|mastik|mastick|glass fabric with mastic|fabric mastic|glass cloth and mastic|mastic and glass cloth|glass mesh and mastic|mastic and glass mesh|cloth and mastic|mastic and cloth|scrim and mastic|glass tape and mastic"),
    ("other_tape", "cloth tape|duct tape|cloth duct tape|gray tape|grey tape|fabric tape|silver duct tape|regular duct tape|gray duct tape|masking tape|packing tape|unlisted tape|gaffer tape|rubber tape|hardware store tape|electrical tape|plain tape|cheap tape|duck tape|vinyl tape|plain duct tape|unmarked tape|regular tape|gaff tape|hundred mile an hour tape|gray stuff|grey stuff|silver stuff|cloth stuff|gray cloth stuff|grey cloth stuff|silver cloth stuff|gray cloth|fabric stuff|rubber stuff|gray cloth tape|grey cloth tape|gray fabric tape|grey fabric tape|silver cloth tape|hardware store stuff|gaffer|gaffers tape|gaffer's tape|hardware tape|big box tape|dollar store tape|old cloth tape|painter's tape|painters tape|blue tape|cloth kind|silver cloth kind|gray cloth kind|cloth-backed tape|cloth backed tape|filament tape|strapping tape|box tape|shipping tape|vinyl stuff|rubber kind|grey cloth|grey duct tape|store tape|off-brand tape|black rubber tape|tape is other stuff|tape is some other stuff|other kind of tape|some other tape"),
)

DAMAGES = (
    ("tear", "tear|crack in the facing|crack in the foil|crack in the jacket|crack in the skin|torn|ripped|rip|tore the facing|tore a|tears|rips|slit|slice in the facing|ripped facing|split in the facing|cut in the facing|tear in the facing|gash|torn facing|tore the foil|ripped the facing|ripped the foil|rip in the facing|gouge|" + _products("|the", "|".join(_SKINS), "got|was|is|'s", "cut|sliced|slit|torn|ripped|nicked|gouged|split|slashed") + "|facing cut with a knife|foil cut with a knife|knife cut|knife slice|knife nick|" + _products("tore|ripped|slit|split|sliced|slashed|nicked|scored|gashed|snagged|gouged|opened|opened up|tore up|ripped up|tore into|cut into|tore open|slit open|peeled open", "the|its|my|some", "|".join(_SKINS)) + "|" + _products("split|slit|slice|slash|nick|gash|rip|tear|cut|snag|scratch|gouge|run", "in|down|across|along|through", "the|its", "|".join(_SKINS))),
    ("puncture", "hole|holes|puncture|punctured|hole in the facing|poked a hole|punched a hole|poked through|hole in the foil|punctures|puncture in the facing|poked|hole in the board|put a hole|stabbed through|screwdriver hole|poke hole|hole poked|got a hole|has a hole|a hole"),
    ("crushed", "crushed|crack in the board|crack in the duct board|crush|dented|smashed|caved in|stepped on|squashed|crunched|dinged|busted corner|broken corner|corner is busted|mashed|busted|dent|got stepped on|cracked board|broke the board|bashed"),
    ("wet", "water got on the board|water got on it|water got in it|water dripped on it|sat in water|sat in a puddle|water ran on it|rain got on it|rain got to it|rain got in it|dripped on|wet|soaked|water damaged|got rained on|rained on|waterlogged|damp|soaking wet|got wet|water damage|wet through|moisture in it|soggy"),
    ("delaminated", "delaminated|delaminating|peeling|facing came loose|facing is loose|facing's loose|facing coming off|facing came off|facing lifted|facing pulled away|facing is peeling|facing peeled|facing peeled off|ballooning|facing is coming off|facing lifting|facing came off the board|facing's coming off|facing pulled off|delamination|facing bubbled|facing separated|facing let go|" + _products("|the", "|".join(_SKINS), "is|was|started|'s", "peeling|lifting|bubbling|letting go|coming loose|coming away|coming off|separating|loose|ballooning|blistered|blistering") + "|" + _products("|the", "|".join(_SKINS), "peeled|lifted|bubbled|blistered|separated|let loose|came away|came loose|pulled loose|pulled away|let go") + "|blistered|blistering|separated from the glass|came unglued"),
)

METHODS = (
    ("plug", "plug|plugged|a plug|cut in a plug|new plug|put in a plug|board plug|plugged it|plug of board|put a plug in"),
    ("replaced", "replaced|replaced it|replaced the panel|new panel|swapped|swapped it|swapped out|replaced the whole panel|new piece of board|swapped it out|changed the panel|replaced that panel|replaced the section|replaced the board|replaced that|new board|cut in new board|put in a new panel|put a new panel in|changed it out|changed out|replaced the whole thing|made a new one|cut a new one|built a new one|made another one|cut another one"),
    ("mastic", "glass fabric|fabric|mesh|glass mesh"),
)

PLACES = (
    "corridor", "hallway", "hall", "lobby", "room", "rooms", "office", "offices", "kitchen", "bathroom", "restroom", "restrooms",
    "mechanical room", "roof", "attic", "basement", "ceiling", "floor", "wing", "shaft", "closet", "garage", "stairwell",
    "gym", "cafeteria", "warehouse", "entrance", "grid", "penthouse", "crawl space", "crawlspace", "conference room", "lab",
    "classroom", "nurses station", "nurse station", "reception", "elevator", "elevators", "loading dock", "fire wall",
    "firewall", "storage", "vestibule", "atrium", "chase", "riser", "suite", "break room", "server room", "boiler room",
    "auditorium", "library", "waiting area", "column line", "storeroom", "wall", "stairs", "mezzanine", "courtyard",
)
WHOLE_PLACES = (
    "in the weather", "exposed to the weather", "to the weather", "in the open air", "in the ground", "in a trench", "in the trench", "in the dirt", "below the slab", "beneath the slab",
    "underneath the slab", "below the floor slab", "under the floor slab", "in the concrete", "into the concrete", "into the dirt", "into the ground", "in the concrete deck", "into the concrete deck", "in the pour", "into the slab", "encased in concrete", "cast in concrete",
    "set in concrete", "poured in concrete", "in the topping slab", "in the footing", "fan room", "fan rooms", "equipment room", "equipment rooms", "mechanical equipment room", "outside on the wall", "up on the roof", "on top of the roof", "on the rooftop", "out on the roof",
    "outside along the parapet", "along the parapet", "behind the parapet", "over the parapet", "outside along the wall", "outside on the roof", "outside over the roof", "across the roof", "along the roof", "outside up the wall", "outside under the eave", "outdoors", "outside the building", "underground", "below grade", "buried", "under the slab", "in the slab",
    "inside the slab", "buried under the slab", "buried in the slab", "in concrete", "kitchen hood", "range hood", "fume hood",
)

_MANY = r"(?:\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty)"
STOREYS = (
    rf"{_MANY}[- ](?:story|stories|storey|storeys|floors?|levels?)[- ](?:tall |high |supply |return |air )?(?:riser|shaft|stack)"
    rf"|(?:riser|shaft|stack),?(?:'s| that| which| it)*(?: \w+){{0,2}}? (?:climbs|climbing|goes|going|runs|running|serves|rises|rising|passes|covers|spans|through|of|up|crosses|feeds)(?: (?:up|through|all|about|over|past))* {_MANY}[- ](?:story|stories|storey|storeys|floors?|levels?)(?! (?:up|down|above|below|away|over))"
    rf"|(?:climbs|climbing|goes|going|runs|running|rises|rising|shoots|passes|stands|continues)(?: (?:straight|right|clear|on|clean|all the way|vertical|vertically))* (?:up )?(?:through|past)(?: (?:all|the|about))* {_MANY}[- ](?:stories|storeys|floors|levels)(?: (?:in|inside|up) (?:the|a|that) (?:\w+ )?(?:chase|shaft|riser|stairwell|closet|wall))?"
)

UNITS = (
    ("in", "in|inch|inches|\"|''|”|in.|inchs|inche|ins|''"),
    ("ft", "foot|feet|ft|ft.|'|’|footer"),
    ("mm", "mm|millimeter|millimeters|millimetre|millimetres|mil|mils|millis"),
    ("cm", "cm|centimeter|centimeters|centimetre|centimetres|centi"),
    ("m", "m|meter|meters|metre|metres"),
    ("deg", "degree|degrees|deg|°|degree's"),
    ("degF", "degrees fahrenheit|fahrenheit|degrees f|°f|f|deg f|degree f"),
    ("degC", "degrees celsius|celsius|centigrade|degrees c|°c|degrees centigrade|c|deg c"),
    ("of water", "of water|water|water column|water gauge|of water column|of water gauge|of static"),
    ("lps", "liters a second|liters per second|litres a second|litres per second|liter a second|l/s|lps"),
    ("cfm", "cfm|cubic foot per minute|cubic foot a minute|cubic feet per minute|cubic feet a minute|c.f.m.|cfms|c f m|cubic feet"),
    ("inwg", "\" w.g.|\" wg|\" w.c.|\" wc|\" of water|in. w.c.|in w.c.|in. wc|'' w.g.|'' wg|inches of water|inch of water|inches water|inches w.g.|in. w.g.|in wg|inches wg|inch wg|inch w.g.|inches of water gauge|inch water gauge|inches water gauge|inch of water gauge|inches water column|inches of water column|inch water column|in. wg|inch water|inch of water column|inches wc|inch wc|iwg|w.g.|wg"),
    ("pa", "pascal|pascals|pa"),
    ("lb", "pounds|pound|lbs|lb|pounder|lb.|lbs."),
    ("kg", "kilos|kilograms|kg|kilogram|kilo"),
    ("ft2", "square feet|square foot|sq ft|sq. ft.|square ft|ft2|sf|sqft|ft²|feet squared|square footage"),
    ("m2", "square meters|square metres|m2|m²"),
)

NUMBERS = Numbers(
    ones={"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "zero": 0},
    teens={"ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
           "seventeen": 17, "eighteen": 18, "nineteen": 19},
    tens={"twenty": 20, "thirty": 30, "forty": 40, "fourty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90},
    hundreds={},
    scales={"hundred": 100, "thousand": 1000},
    halves={"half": (1, 2), "quarter": (1, 4), "third": (1, 3), "eighth": (1, 8), "8th": (1, 8), "sixteenth": (1, 16)},
    parts={"half": 2, "halves": 2, "quarter": 4, "quarters": 4, "fourth": 4, "fourths": 4, "eighth": 8, "eighths": 8,
           "sixteenth": 16, "sixteenths": 16, "third": 3, "thirds": 3, "thirty-second": 32, "thirty-seconds": 32,
           "sixty-fourth": 64, "sixty-fourths": 64, "fifth": 5, "fifths": 5, "tenth": 10, "tenths": 10},
    joins=("and", "n", "&"),
    articles=("a", "an"),
    point=("point",),
    zero_between=("oh", "zero", "aught", "ought", "o"),
)  # fmt: skip

TELLING = frozenset(
    "the and on is in to by of it with run down straight elbow stapled taped rubbed every long back side sides comes"
    " fitting twelve two inches inch one four six eight ten twenty no not for that this was we have still from top"
    " str strt trans stpl stpls stpld tpd rubd lng oc bk".split()
)

NAMES = frozenset(
    "joe mike carlos jose juan luis tony dave david bob jim john steve rick rob bill tom tim chris mark matt dan danny"
    " eddie ed frank fred gary george greg hector henry jack jake jason jeff jerry jesse jesus kevin kyle larry manny"
    " marco mario miguel nick oscar pablo pat paul pedro pete peter phil rafael ramon ray ricky roberto ron sam sean"
    " sergio terry travis victor will willie alex andy angel ben brian carl chuck cody craig derek don doug earl eric"
    " felix fernando francisco gabe gus javier jimmy jorge julio ken lee lou louie marcus maria ana rosa omar raul"
    " ruben scott shawn ted todd tyler walt wayne zach billy bobby johnny tommy sal vince diego enrique arturo beto"
    " chuy nacho pepe memo lalo armando alberto ernesto martin jenny lisa linda karen sue amy tina beth".split()
)

LETTERS = {"ay": "A", "bee": "B", "see": "C", "cee": "C", "dee": "D", "ef": "F", "gee": "G", "aitch": "H", "jay": "J",
           "kay": "K", "el": "L", "em": "M", "en": "N", "pee": "P", "cue": "Q", "ar": "R", "ess": "S", "tee": "T", "vee": "V",
           "alpha": "A", "bravo": "B", "charlie": "C", "delta": "D", "echo": "E", "foxtrot": "F", "golf": "G", "hotel": "H",
           "india": "I", "juliet": "J", "kilo": "K", "lima": "L", "mike": "M", "november": "N", "oscar": "O", "papa": "P", "quebec": "Q",
           "romeo": "R", "sierra": "S", "tango": "T", "uniform": "U", "victor": "V", "whiskey": "W", "yankee": "Y", "zulu": "Z",
           "bea": "B", "be": "B", "ex": "X", "double-u": "W", "why": "Y", "zee": "Z", "eff": "F"}  # fmt: skip

FUZZY = (
    ("transition", "K_TRANSITION"), ("reducer", "K_TRANSITION"), ("straight", "K_STRAIGHT"), ("offset", "K_OFFSET"),
    ("elbow", "K_ELBOW"), ("stapled", "STAPLED"), ("staples", "STAPLES"), ("shiplap", "SHIPLAP"), ("mastic", "MASTIC"),
    ("plenum", "K_PLENUM"), ("fitting", "FITTING"), ("rubbed", "RUBBED"), ("preheated", "PREHEATED"), ("trimmed", "TRIMMED"),
    ("collar", "K_COLLAR"), ("delaminated", "D_DELAMINATED"), ("puncture", "D_PUNCTURE"), ("reinforced", "TIE_RODS"),
)  # fmt: skip

LANGUAGE = Language(
    code="en", concepts=CONCEPTS, kinds=KINDS, sides=SIDES, services=SERVICES, closures=CLOSURES, damages=DAMAGES,
    methods=METHODS, places=PLACES, whole_places=WHOLE_PLACES, units=UNITS, numbers=NUMBERS, misheard=MISHEARD, telling=TELLING, names=NAMES, letters=LETTERS,
    fuzzy=FUZZY, turns=ENGLISH_TURNS, afar=ENGLISH_AFAR, forms=ENGLISH_FORMS, told=ENGLISH_TOLD, storeys=STOREYS, line_runs_at=LINE_RUNS_AT, line_is=LINE_IS, line_cue=LINE_CUE, states=ENGLISH_STATES, ends=ENGLISH_ENDS, acts=ENGLISH_ACTS, whole_turns=ENGLISH_PLANS,
    elsewhere=ENGLISH_ELSEWHERE,
)  # fmt: skip
