"""Words for harm that are harm only beside what they befell: "a ding in the top panel", "the corner got gouged", and not "a scrape on my knee".

`thing`: named with the place it is in, or as what a part of the piece has. `state`: said of the facing, of a part or of the piece, or as
what was done to it. `of_facing`: the same, of the facing alone, since tape and boards are peeled, lifted and scored in good work too. `opening`: named with the joint it is in. `of_joint`: said of a joint.
Words of common speech, no published source. A word in these lists tells nothing by itself.
"""

from __future__ import annotations

_Senses = tuple[tuple[str, str], ...]  # (what it is then, where): a damage, or the concept of a joint that stands open

HARMS: tuple[tuple[_Senses, str], ...] = (
    ((("tear", "thing"),), "slash|slashes|slice|slices|nick|nicks|scrape|scrapes|scratch|scratches|scratch mark|scratch marks|snag|snags|gouges|gashes|knife mark|knife marks|knife line|blade mark|blade marks|scrape mark|scrape marks|burn|burns|burn mark|burn marks|scorch|scorch mark|scorch marks|melted spot|burnt spot|raw spot"),
    ((("puncture", "thing"),), "pinhole|pinholes|perforation|perforations|stab|stab mark|jab|poke|pokes"),
    ((("crushed", "thing"),), "ding|dings|dents|crease|creases|kink|kinks|bruise|bruises|dimple|dimples|boot print|boot prints|bootprint|bootprints|footprint|footprints|foot print|heel print|heel mark|boot mark|knee print|handprint|hand print|low spot|soft spot|soft spots|flat spot"),
    ((("delaminated", "thing"),), "blister|blisters|air bubble|air bubbles"),
    ((("delaminated", "thing"), ("delaminated", "of_facing")), "bubble|bubbles|loose patch"),
    ((("tear", "thing"), ("tear", "of_facing"), ("GAP", "opening")), "split|splits"),
    ((("GAP", "opening"),), "void|voids|slot|slots|sliver|slivers|hairline|hairline crack|opening|openings|step|separation|space|spaces"),
    ((("tear", "state"),), "gashed|slashed|nicked|nicked up|gouged|gouged up|scraped|scraped up|scratched|scratched up|snagged|shredded|scorched|singed|chewed|chewed up|chewed on|hacked up|frayed|burned|burnt|melted"),
    ((("puncture", "state"),), "perforated|pierced|stabbed|holed|poked full of holes|full of holes"),
    ((("crushed", "state"),), "creased|kinked|caved|stove in|stoved in|banged up|beat up|beaten up|busted up|mangled|mangled up|crumpled|crumpled up|flattened|bruised|squished|buckled|dished in|deformed|stomped|stomped on|whacked|clobbered|kicked in"),
    ((("delaminated", "of_facing"),), "peeled|peeled up|peeled back|peeled off|lifted|lifted up|lifting|lifting up|peeling up|bubbled|bubbled up|bubbling|bubbling up|unglued|come loose|came unglued|unstuck|puckered"),
    ((("delaminated", "of_facing"), ("PARTED", "of_joint")), "separated|separating|has separated"),
    ((("tear", "of_facing"),), "sliced|scored|cut up|slit open|worn|worn through|rubbed through|rubbed raw|broken"),
    ((("crushed", "of_facing"),), "crinkled|banged"),
    (
        (("PARTED", "of_joint"),),
        "leaks|leaks air|leaking|leaking air|whistles|whistling|hisses|hissing|blows air|lets air through|lets air out|lets air by|lets air in|letting air through|letting air out|isn't flush|not flush|is not flush|parted|opens up|opens up on me|spreads|spreads open"
        "|won't pull together|wouldn't pull together|doesn't pull together|didn't pull together|won't snug up|wouldn't snug up|doesn't snug up|won't cinch up|isn't pulled together|not pulled together|isn't pulled up|not pulled up tight|is spread|has spread|came open|pops open|popped open|keeps popping open|is springing open|springs open|falls open",
    ),
)
