"""Places of a building in English: nouns that end the name of a place, words that are one by themselves, and how many storeys a riser passes."""

from __future__ import annotations

PLACES = (
    "corridor", "hallway", "hall", "lobby", "room", "rooms", "office", "offices", "kitchen", "bathroom", "restroom", "restrooms",
    "mechanical room", "roof", "attic", "basement", "ceiling", "floor", "wing", "shaft", "closet", "garage", "stairwell",
    "gym", "cafeteria", "warehouse", "entrance", "grid", "penthouse", "crawl space", "crawlspace", "conference room", "lab",
    "classroom", "nurses station", "nurse station", "reception", "elevator", "elevators", "loading dock", "fire wall",
    "firewall", "storage", "vestibule", "atrium", "chase", "riser", "suite", "break room", "server room", "boiler room",
    "auditorium", "library", "waiting area", "column line", "storeroom", "wall", "stairs", "mezzanine", "courtyard",
)
WHOLE_PLACES = (
    "in the weather", "sits in the weather", "sitting in the weather", "goes in the ground", "go in the ground", "goes in the dirt", "goes in the concrete", "goes in the slab", "goes in the trench", "go in the concrete", "exposed to the weather", "to the weather", "in the open air", "in the ground", "in a trench", "in the trench", "in the dirt", "below the slab", "beneath the slab",
    "underneath the slab", "below the floor slab", "under the floor slab", "in the concrete", "into the concrete", "into the dirt", "into the ground", "in the soil", "into the soil", "under the soil", "in the earth", "into the earth", "in the concrete deck", "into the concrete deck", "in the pour", "into the slab", "encased in concrete", "cast in concrete",
    "set in concrete", "poured in concrete", "in the topping slab", "in the footing", "fan room", "fan rooms", "equipment room", "equipment rooms", "mechanical equipment room", "outside on the wall", "up on the roof", "on top of the roof", "on the rooftop", "out on the roof",
    "outside along the parapet", "along the parapet", "behind the parapet", "over the parapet", "outside along the wall", "outside on the roof", "outside over the roof", "across the roof", "along the roof", "outside up the wall", "outside under the eave", "outdoors", "outside the building", "underground", "below grade", "buried", "under the slab", "in the slab",
    "sits in the rain", "sits out in the rain", "on the outside of the building", "the trench", "the footing", "strapped to the parapet", "tied to the parapet", "across the rooftop", "over the rooftop", "along the rooftop", "under the driveway", "under the parking lot", "under the sidewalk", "under ground", "under the ground", "out in the rain", "outside of the building", "outside under the canopy", "under the canopy outside",
    "hangs outside", "sits outside", "lives outside", "mounted outside", "installed outside", "this one's outside", "outside by the", "outside behind the", "outside next to the", "outside the wall", "outside in the sun", "out through the wall", "out on the slab", "out in the weather", "on the roof deck", "up top on the roof",
    "under the dirt", "below the dirt", "beneath the dirt", "under the lawn", "under the gravel", "under the grass", "under the asphalt", "under the pavement", "grease hood", "exhaust hood", "vent hood", "fryer hood", "hood over the fryers", "hood over the grill", "hood over the range", "hood over the stove",
    "rooftop", "exposed to rain", "exposed to the rain", "exposed to the elements", "out in the elements", "under the eaves", "under the eave", "lab hood", "chemical hood", "chem hood", "inside the slab", "buried under the slab", "buried in the slab", "in concrete", "kitchen hood", "range hood", "fume hood",
)

_MANY = r"(?:\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty)"
_WHERE = r"(?:,? (?:in|up|inside) (?:the|a|that) (?:\w+ )?(?:riser|shaft|chase|stairwell))?"
STOREYS = (
    rf"(?:riser|shaft|stack|chase|vertical)\b[^.]{{0,40}}?\b(?:basement|ground|first|second|third|fourth|fifth)(?: floor| level)? (?:up )?(?:to|through|thru) (?:the )?(?:second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)(?: floor| level)?(?:,? (?:in|up|inside) (?:the|a|that) (?:\w+ )?(?:riser|shaft|chase))?"
    rf"|(?:basement|ground|first|second|third|fourth|fifth)(?: floor| level)? (?:up )?(?:to|through|thru) (?:the )?(?:second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)(?: floor| level)?(?: \w+){{0,3}}? (?:riser|shaft|chase)"
    rf"|(?:riser|shaft|stack),? (?:all |it's |that's |about )*{_MANY}[- ](?:stories|storeys|floors|levels)"
    rf"|(?:riser|shaft|stack)\b[^.]{{0,60}}\.? ?(?:\w+ ){{0,2}}?(?:serves|feeds)(?: all| the)* {_MANY}[- ](?:stories|storeys|floors|levels)"
    rf"|{_MANY}[- ](?:stories|storeys|floors|levels),? (?:is |it's |that's |that is |and that's )*how (?:far|high|tall) (?:the|that|this|our) (?:\w+ )?(?:riser|shaft|stack)"
    rf"|how (?:far|high|tall) (?:the|that|this) (?:riser|shaft|stack)(?: (?:goes|is|runs|climbs|rises))? (?:is|was|that's) {_MANY}[- ](?:stories|storeys|floors|levels)"
    rf"|(?:riser|shaft|stack)(?: is| was|'s) {_MANY}[- ](?:stories|storeys|floors|levels)"
    rf"|(?:riser|shaft|stack),? (?:and |which |that )?(?:it |that )?(?:goes|runs|climbs|rises|shoots) (?:up |straight up |clear up |all the way up |through )?{_MANY}[- ](?:stories|storeys|floors|levels)(?! (?:up|down|above|below|away|over)){_WHERE}"
    rf"|(?:riser|shaft|stack) of {_MANY}[- ](?:stories|storeys|floors?|levels?)"
    rf"|{_MANY}[- ](?:story|stories|storey|storeys|floors?|levels?)[- ](?:tall |high |supply |return |air )?(?:riser|shaft|stack)"
    rf"|(?:riser|shaft|stack),?(?:'s| that| which| it)*(?: \w+,?){{0,2}}? (?:climbs|climbing|goes|going|runs|running|serves|rises|rising|passes|covers|spans|through|of|up|crosses|feeds)(?: (?:up|through|all|about|over|past))* {_MANY}[- ](?:story|stories|storey|storeys|floors?|levels?)(?! (?:up|down|above|below|away|over)){_WHERE}"
    rf"|riser\b[^.;?!]{{0,70}}?,? (?:and |that |which )?(?:it|it's|that one|this one)(?: just| only| all)? (?:climbs|climbing|goes|going|runs|running|serves|rises|passes|covers|spans|crosses|feeds)(?: (?:up|through|all|about|over|past))* {_MANY}[- ](?:story|stories|storey|storeys|floors?|levels?)(?! (?:up|down|above|below|away|over)){_WHERE}"
    rf"|{_MANY}[- ](?:stories|storeys|floors|levels)(?: of (?:it|this|duct|them))? (?:in|up|inside) (?:the|a|that) (?:\w+ )?(?:riser|shaft|chase)"
    rf"|(?:climbs|goes|runs|rises|shoots)(?: (?:straight|right|clear|all the way))* up (?:the|a|that) (?:\w+ )?(?:riser|shaft|chase),? (?:for |about |through |all )*{_MANY}[- ](?:stories|storeys|floors|levels)"
    rf"|(?:up )?(?:through|past)(?: (?:all|the|about))* {_MANY}[- ](?:stories|storeys|floors|levels),? (?:in|up|inside) (?:the|a|that) (?:riser|shaft|chase|stack)"
    rf"|(?:climbs|climbing|goes|going|runs|running|rises|rising|shoots|passes|stands|continues)(?: (?:straight|right|clear|on|clean|all the way|vertical|vertically))* (?:up )?(?:through|past)(?: (?:all|the|about))* {_MANY}[- ](?:stories|storeys|floors|levels)(?: (?:in|inside|up) (?:the|a|that) (?:\w+ )?(?:chase|shaft|riser|stairwell|closet|wall))?"
)
