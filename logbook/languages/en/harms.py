"""Words for harm that are harm only beside what they befell: "a ding in the top panel", "the corner got gouged", and not "a scrape on my knee".

`thing`: named with the place it is in, or as what a part of the piece has. `state`: said of the facing, of a part or of the piece, or as
what was done to it. `of_facing`: the same, of the facing alone, since tape and boards are peeled, lifted and scored in good work too. `soaked`: a state, of what is inside the board too. `of_part`: said of a part alone. `of_end`: said of a male or
female end. `shows`: what shows on a side or a corner.
`in_facing`: named with the facing it is in.
`opening`: named with the joint it is in. `of_joint`: said of a joint. `of_seam`: said of a seam or a joint, and not of a corner.
Words of common speech, no published source. A word in these lists tells nothing by itself.
"""

from __future__ import annotations

from logbook.languages.ways import ways

_Senses = tuple[tuple[str, str], ...]  # (what it is then, where): a damage, or the concept of a joint that stands open
_WIDER = (
    ways("could be|could have been|could've been|could sit|should be|ought to be|could stand to be|wants to be|needs to be", "tighter|closer|snugger")
    + "|looser than|wider than|sloppier than|gappier than|more open than|so wide|so loose|loose enough to|loose enough that|too wide|too loose|way too wide|way too loose"
)
_AIR = ways("feel|feels|felt|hear|hears|heard|can feel|could feel|can hear|could hear|you can feel|you can hear|i can feel|i can hear", "air|the air|a draft|some air|a little air|air coming out|air coming|air moving") + "|" + ways("air|air's|air is", "coming out|getting out|blowing out|leaking out|escaping|coming through") + "|air comes out|air gets out|air comes through|air leaks out"

HARMS: tuple[tuple[_Senses, str], ...] = (
    ((("tear", "thing"),), "slash|slashes|slice|slices|nick|nicks|scrape|scrapes|scratch|scratches|scratch mark|scratch marks|snag|snags|gouges|gashes|claw mark|claw marks|rub mark|rub marks|a scratch|a bad scratch|a deep scratch|a long scratch|a big scratch|knife mark|knife marks|knife line|blade mark|blade marks|scrape mark|scrape marks|burn|burns|burn mark|burn marks|scorch|scorch mark|scorch marks|melted spot|burnt spot|raw spot"),
    ((("puncture", "thing"),), "pinhole|pinholes|perforation|perforations|stab|stab mark|jab|poke|pokes|poke mark|pockmark|pockmarks"),
    ((("crushed", "thing"),), "ding|dings|dents|crease|creases|kink|kinks|divot|divots|chip|chips|bite out|chunk out|hunk out|piece out|bashed spot|mashed spot|bruise|bruises|dimple|dimples|boot print|boot prints|bootprint|bootprints|footprint|footprints|foot print|heel print|heel mark|boot mark|knee print|handprint|hand print|pushed in spot|low spot|soft spot|soft spots|flat spot"),
    ((("delaminated", "thing"),), "blister|blisters|air bubble|air bubbles"),
    ((("delaminated", "in_facing"), ("PARTED", "of_joint")), "bulges"),
    ((("delaminated", "in_facing"),), "wrinkle|wrinkles|pucker|puckers|ripple|ripples|wave|waves|bulge|buckle|buckles|lump|lumps"),
    ((("tear", "in_facing"),), "flaw|flaws|defect|defects|blemish|blemishes|bad spot|bad spots|rough spot|thin spot|thin spots|weak spot|bald spot|bald spots|bald patch|bare patch|worn patch|bare spot|bare spots|worn spot|boo-boo|notch|notches|fracture|rupture|chunk|chunks"),
    ((("delaminated", "thing"), ("delaminated", "of_facing")), "bubble|bubbles|loose patch"),
    ((("tear", "thing"), ("tear", "of_facing"), ("GAP", "opening"), ("tear", "of_end")), "split|splits"),
    ((("PARTED", "opening"),), _AIR),
    ((("GAP", "opening"),), "air gap|air gaps|cleft|chink|chinks|fissure|crevice|breach|draft|mismatch|misfit|void|voids|slot|slots|sliver|slivers|hairline|hairline crack|opening|openings|step|separation|space|spaces"),
    ((("PARTED", "opening"),), "leak|air leak|whistle"),
    ((("tear", "state"),), "gashed|slashed|nicked|nicked up|gouged|gouged up|scraped|scraped up|scratched|scratched up|snagged|shredded|scorched|singed|chewed|skinned|skinned up|clawed|clawed up|gnawed|butchered|cut to ribbons|chewed up|chewed on|hacked up|frayed|burned|burnt|melted"),
    ((("puncture", "state"),), "perforated|pierced|stabbed|jabbed|skewered|speared|pricked|riddled|poked up|pocked|pockmarked|holed|poked full of holes|full of holes"),
    ((("crushed", "state"),), "creased|kinked|caved|stove in|stoved in|bashed in|bashed up|punched in|bunged up|roughed up|smooshed|smushed|smooshed in|pounded|trampled|trampled on|dimpled|dished|mauled|mutilated|splintered|fractured|shattered|crumbled|crumbling|crumbly|snapped off|broken off|chipped|chipped off|dog-eared|bent up|banged up|beat up|beaten up|busted up|mangled|mangled up|crumpled|crumpled up|flattened|bruised|squished|buckled|dished in|deformed|stomped|stomped on|whacked|clobbered|kicked in"),
    ((("delaminated", "of_facing"),), "peeled|peeled up|peeled back|peeled off|lifted|lifted up|lifting|lifting up|peeling up|wrinkled|wrinkled up|wrinkly|rumpled|rippled|ripply|baggy|floppy|flapping|curled|curled up|curled back|curling|curling up|flaking|flaking off|rolled back|skinned back|coming up|coming away|bubbly|puffed|puffed up|puffy|ballooned|ballooned out|billowing|detached|unbonded|debonded|off the glass|unattached|bubbled|bubbled up|bubbling|bubbling up|unglued|come loose|came unglued|unstuck"),
    ((("delaminated", "of_facing"), ("PARTED", "of_joint")), "separated|separating|has separated|slack|bulging|wavy|puckered|bunched|bunched up"),
    ((("tear", "of_facing"),), "sliced|scored|cut up|slit open|worn|worn through|rubbed through|rubbed raw|stripped|stripped off|threadbare|ragged|raggedy|marred|blemished"),
    ((("tear", "of_facing"), ("crushed", "state")), "damaged|ruined|trashed|wrecked|destroyed|tore all up|all tore up"),
    ((("PARTED", "of_seam"), ("tear", "of_facing"), ("crushed", "state")), "cracked|cracked up"),
    ((("tear", "shows"),), "glass showing|glass is showing|fiberglass showing|fiberglass is showing|fiber glass showing|insulation showing|insulation is showing|yellow showing|wool showing|glass exposed|glass is exposed|fiberglass exposed|fiberglass is exposed|insulation exposed|insulation is exposed|insulation's exposed|insulation's showing|fiberglass's showing|see yellow|see glass|see fiberglass|see insulation|see the glass|see the insulation"),
    ((("crushed", "of_end"),), "snapped|broke off|broke|split off|bent over|sheared off|bent in|bent out|bent|flattened out|squeezed"),
    ((("crushed", "of_facing"),), "crinkled|banged"),
    ((("tear", "of_facing"), ("crushed", "of_end")), "broken"),
    ((("crushed", "of_part"),), "took a beating|took a hit|took a whack|took a knock|took a lick|has seen better days|'s seen better days|toast|a goner|shot to hell|done for|no good|junk|egg-shaped|boogered up|buggered up|messed up|mushed|mushed in"),
    ((("wet", "of_part"),), "dripping|sprayed|sprayed down|dribbled on|soggy through"),
    ((("wet", "soaked"),), "sodden|drenched|saturated|dripping wet|drippy|swollen|swelled up|swollen up|mildewed|mildewy|moldy|doused|flooded|dunked|hosed|hosed down|water stained|water-stained|water spotted|water-spotted|clammy|dampish|leaked on|dripped on|splashed|sprinkled on|sopping"),
    (
        (("PARTED", "of_joint"),),
        _WIDER
        + "|leaks|leaks air|leaking|leaking air|whistles|whistling|hisses|hissing|blows air|lets air through|lets air out|lets air by|lets air in|letting air through|letting air out|isn't flush|not flush|is not flush|parted|opens up|opens up on me|spreads|spreads open"
        "|won't pull together|wouldn't pull together|doesn't pull together|didn't pull together|won't snug up|wouldn't snug up|doesn't snug up|won't cinch up|isn't pulled together|not pulled together|isn't pulled up|not pulled up tight|is spread|has spread|came open|pops open|popped open|keeps popping open|is springing open|springs open|falls open"
        "|gappy|unlevel|unaligned|stepped|tipped|unclosed|untight|sprang|bows|shows light|agape|ajar|yawning|sloppy|uneven|misaligned|mismatched|mismated|out of line|out of whack|out of true|out of alignment|out of square|out of plumb|off a hair|a hair off|off a touch|a touch off|off a bit|a bit off|askew|awry|cockeyed|cattywampus|catawampus|catty-wampus|skewed|cocked|canted|tilted|racked|twisted|wonky|janky|crooked|shifted|slipped|unseated|see-through|drafty|leaky|bowed|open a hair|a hair open|partly open|part way open|half open|sprung open|cracked open|split open|hanging open|hangs open|drifted apart|crept open|walked open|backed off|kicked out|springs apart|sprang open|sprang apart"
        "|not lined up|isn't lined up|is not lined up|not aligned|isn't aligned|not meeting|isn't meeting|not mated|isn't mated|not butted up|not shut|isn't shut|not closed up|isn't closed up|won't mate|doesn't mate|didn't mate|won't shut|won't stay shut|won't stay closed|doesn't match up|don't match up|didn't line up|didn't pull in|didn't draw up|doesn't draw up|sits crooked|sits cockeyed|sits low|rides high|rides low|shows glass",
    ),
)
