"""Sets of small words of English; what each is for stands in their shape."""

from __future__ import annotations

from types import MappingProxyType

from logbook.languages.small import Small

ENGLISH_SMALL = Small(
    yes=frozenset("check checked ticked yes yep yeah yup sure absolutely affirmative done did aye correct right".split()),
    no=frozenset("no nope nah negative not nay".split()),
    than=frozenset("than size".split()),
    i=frozenset("i we i've we've".split()),
    stands=frozenset("sits sees reads shows measures carries stands feels".split()),
    back_to_it=frozenset("it it's it'd its they they're them one that that's so mine".split()),
    worked=frozenset("did made built finished done doing through with up".split()),
    gone=frozenset("came off|torn off|gone".split("|")),
    held=frozenset(
        "fastened secured glued pinned riveted solid perfect plumb lined aligned mounted attached locked bolted welded spaced centered straight happy great"
        " beautiful clean square correct right factory".split()
    ),
    several_harms=frozenset("holes tears rips punctures".split()),
    falls_short=frozenset(("short of", "shy of", "fewer than", "less than")),
    takes_so_many=frozenset("wants needs takes gets calls requires".split()),
    object_of_verb=frozenset("it them that those 'em this".split()),
    denies_deed=frozenset("didn't couldn't wouldn't haven't hasn't hadn't can't never won't didnt couldnt havent hasnt did could have has".split()),
    works_from=frozenset("cut did went do go going cutting".split()),
    lies_elsewhere=frozenset("truck box order backorder van shop trailer gangbox ground crate bin cart toolbox toolbag bag bench floor pallet".split()),
    in_the_piece=frozenset("rail rails turn bend heel throat cheek cheeks way run place inside middle center corner".split()),
    so_it_is_not=frozenset("so it won't|so it doesn't|so they won't|so it can't|so they don't|so that it won't|so it don't".split("|")),
    nobody=frozenset("nobody|no one|noone|nobody's|nobody has|no one has|neither of us|none of us|neither one of us".split("|")),
    led_to_piece=frozenset("from in on of".split()),
    gives_reason=frozenset("so because cause 'cause cuz since".split()),
    breaks_off=frozenset("once after because cause 'cause since when while where although".split()),
    looks=frozenset("faces facing points pointing looks looking turned".split()),
    since=frozenset("so then now finally after since later again".split()),
    corrections=frozenset("correction|my mistake|i had it wrong|i was wrong".split("|")),
    again=frozenset("again".split()),
    ordinals=frozenset("first second third fourth fifth last other next".split()),
    beside_it=frozenset("neighbor neighbour twin sister brother mate partner other next".split()),
    in_so_long=frozenset("in over into inside within".split()),
    before_mark=frozenset("call calls called think swear swears claim claims believe hear heard bet figure that leave left where because how why unless before since whether".split()),
    mine=frozenset("mine ours".split()),
    too=frozenset("too|also|as well".split("|")),
    joins=frozenset("joined|tied|hooked|hooked up|connected|connected up|mated|coupled|closed|sealed|taped|stapled|fastened|attached|slid|butted|buttoned|tied in|stabbed|married|slipped|stapled and taped".split("|")),
    the=frozenset(("the", "that")),
    past_it=frozenset("after|before|past|behind|beside|next to|ahead of|right after|right before|downstream of|upstream of|just past|just before|just after".split("|")),
    without=frozenset(("without",)),
    onto=frozenset("to|into|onto|on to|in to|up to|with|up against|against".split("|")),
    nor=frozenset("neither|nor|either".split("|")),
    is_so=frozenset("is|are|was|were|has|have|does|do|did|got|'s".split("|")),
    so=frozenset(("so",)),
    not_that=frozenset("not isn't wasn't aren't no".split()),
    not_this=frozenset("wrong other".split()),
    made=frozenset("did made built finished".split()),
    rolls=frozenset("stuff roll rolls kind across width wide".split()),
    my_fault=frozenset("i misspoke|my mistake|my bad|sorry|i gave it wrong|i said it wrong|i had it wrong|i had that wrong|i told you wrong|i lied".split("|")),
    decades=MappingProxyType({"twenties": 20, "thirties": 30, "forties": 40, "fifties": 50, "sixties": 60, "seventies": 70}),
    in_a_decade=MappingProxyType({"low": 2, "lower": 2, "mid": 5, "middle": 5, "high": 8, "upper": 8}),
    whose_age=frozenset("his her my their our your these those of ".split()),
    calls_it=frozenset({"call it", "say"}),
    before_letter=frozenset("run fitting number tag mark straight elbow transition".split()),
    articles=frozenset("the a an".split()),
    each_other=frozenset("from".split()),
    beside_inches=frozenset("long overall wide high tall deep back".split()),
    behind_inches=frozenset("oc o.c. centers center apart long wide high tall deep x by board thick round dia diameter spacing staples washers tape leg legs crown".split()),
    behind_in=frozenset(
        "the a an on from at here there it this that my our and twelve six one two three four five eight ten eighteen twenty twentyfour run fitting fifteen"
        " sixteen thirty".split()
    ),
    turns_nothing=frozenset("a an and are at i in is it of ok okay on so that the this to uh um well with".split()),
    turns_all=frozenset("not now no new nor know don't haven't still yet".split()),
    some_point=frozenset("this that the some one starting end high low at any each every no a my".split()),
    no_duct=frozenset(
        "roll rolls spool coil nails nail lips lip skin floor floors slab truck trucks bed boots boot ground roof deck hands hand gloves glove pants shirt jacket wall"
        " walls street ladder lift grass mud road parking weather lot shoes socks phone radio water coffee thumb finger fingers knuckle knuckles knee back"
        " shoulder head toe arm leg foot tire tires sock coat hat hood sleeve van car cart windshield fender bumper bucket bag lunch cooler hose laptop tablet"
        " glasses goggles vest belt toolbag bench table drill gun tool knife drywall sheetrock tile glass door window concrete lumber plywood pipe pipes conduit"
        " cord lawn yard house heart pride feelings soul ego brain nose ear ears eye eyes tooth teeth rib ribs hip wrist ankle elbows pocket pockets jeans dog"
        " team game giants cowboys dodgers flange flanges bracket brackets".split()
    ),
    tools=frozenset("knife nail boot drill gun pipe ladder rod finger thumb elbow screwdriver".split()),
    owners=frozenset("my his her your their our the a".split()),
    machines=frozenset("compressor hose airline generator scaffold plumbing plumber drain sprinkler truck".split()),
    of_a_duct=frozenset("facing foil jacket".split()),
    holes=frozenset("hole holes crack cracks slit".split()),
    where=frozenset("where".split()),
    meets=frozenset("meet meets meeting touch touching join".split()),
    half=frozenset("half partly partially mostly hardly barely scarcely almost nearly halfway partway".split()),
    half_behind=frozenset("halfway partway mostly half".split()),
    kept=frozenset("above over under underneath below behind outside inside beside near by beneath".split()),
    led=frozenset("in at on to up down across".split()),
    mends=frozenset(("patch",)),
    governs=frozenset("can could may might would should must gotta wanna me us 'll".split()),
    several_are=frozenset("are were".split()),
    several_lack=frozenset("are were aren't weren't have haven't don't need both".split()), some_lack=frozenset("not no didn't never without got".split()), none_of_all=frozenset("neither|neither one|neither of them|neither one of them|none of them|not one of them|none of those|neither of those".split("|")), one_is=frozenset("is isn't has hasn't was wasn't 's needs doesn't goes".split()),
    closes_with=frozenset("for up with".split()),
    rest=frozenset("other others rest remaining".split()),
    somebody=frozenset("he she they somebody someone electrician plumber inspector engineer helper apprentice".split()),
    on_some=frozenset("some few couple rest others other half most several one back top bottom left right side sides end ends underside corner corners".split()),
    parts_of_it=frozenset("heel throat cheek cheeks corners".split()),
    sees=frozenset(("see", "watch", "witness", "check", "look")),
    staplers=frozenset("gun stapler".split()),
    loaded=frozenset("loaded full stocked filled".split()),
    ran_out=frozenset(("out of", "ran out of", "was out of", "we were out of", "were out of", "i was out of", "short on", "all out of", "no more", "clean out of")),
    legs_go=frozenset(
        "folding folded fold folds curling curled curl pointing point going go goes facing face bending bend laying lay lie lying turning turn turned flaring"
        " hooked hooking headed heading came come rolled rolling spread".split()
    ),
    spread=frozenset("spread stretched spaced opened pushed strung let moved".split()),
    strips=frozenset("ones strips pieces straps lengths".split()),
    reads=frozenset("read reads showed shows registered measured said says".split()),
    lays=frozenset("put ran laid used using applied threw slapped".split()),
    is_on=frozenset("good done on all set finished complete solid tight perfect great fine is are ok okay".split()),
    one_side=frozenset(("side",)),
    nothing_but=frozenset("just|only|nothing but|strictly|purely".split("|")),
    takes_back=frozenset("i take that back|scratch that|strike that".split("|")),
    sounds={"for": (4, "four"), "fore": (4, "four"), "too": (2, "two"), "to": (2, "two"), "free": (3, "three"), "tree": (3, "three"), "ate": (8, "eight"), "won": (1, "one"), "sex": (6, "six"), "tu": (2, "two")},
    in_twos={"ones": 1, "twos": 2, "threes": 3, "fours": 4, "sixes": 6, "eights": 8, "tens": 10, "twelves": 12, "fourteens": 14, "sixteens": 16, "eighteens": 18, "twenties": 20},
    one_unit={"foot": "ft", "inch": "in"},
    which={"first": 0, "second": 1, "third": 2, "fourth": 3, "middle": 1, "last": -1, "other": None},
    several={"straights": "straight", "elbows": "elbow", "transitions": "transition", "tees": "tee", "caps": "end_cap", "collars": "collar", "offsets": "offset", "branches": "branch", "wyes": "wye", "fittings": "fitting"},
    all_of_it=frozenset("whole full entire good solid".split()),
    wrong_way=frozenset("backwards backward wrong reversed flipped".split()),
    turn=frozenset("turn turns turned turn's".split()),
    middles=frozenset("centerline|center line|center|middle|mean|outside|heel|cl".split("|")),
    went_in=frozenset("went in|go in|goes in|came in|are in|is in".split("|")),
    lets_into=frozenset("into onto".split()),
    between=frozenset("between".split()),
    lost=frozenset("lost lose losing".split()),
    takes_off=frozenset("took take cut sliced lopped shaved whacked chopped sawed".split()),
    headings={"door": "access_door", "jog": "offset", "sleeve": "damper_sleeve"},
    parted=frozenset("into|left out|left over|right by".split("|")),
)
