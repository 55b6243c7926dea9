"""English without its articles: "tape runs up to strap", "except back", "wiped front"."""

from __future__ import annotations

from logbook.languages.articles import Articles

_ONE_SIDED = "side end one joint seam step panel hole foot two three four edge corner half"

ENGLISH_ARTICLES = Articles(
    article="the",
    things=frozenset(
        f"{_ONE_SIDED} bottom top back front sides underside corners throat heel cheek flap facing foil board jacket extra overlap ends squeegee gun stapler rag truck shop box roll bucket van "
        "ground floor morning afternoon drawing schedule tag inspector foreman rest inside outside list lift strap branch main lot".split()
    ),
    which=frozenset("left right long short other last first next far near male female low high small big top bottom back front staple".split()),
    of_which=frozenset(f"{_ONE_SIDED} gun flap sides".split()),
    only_which=frozenset("side end one step hole foot two three four edge half joint seam corner panel".split()),
    behind=frozenset(
        "on in at to of along off from under underneath with for over around near behind past by except but besides until till onto into across where only just wiped taped stapled rubbed "
        "trimmed patched cut peeled mend put swap ran left skipped missed forgot get below above and".split()
    ),
    own=frozenset("the a an my our your his their this that these those one each every no any".split()),
    only_to=frozenset(("inside", "outside")),
    counts=frozenset("one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen eighteen twenty thirty forty fifty sixty number".split()),
    not_before=frozenset("order side end".split()),
    as_they_are=frozenset((("on", "top"), ("in", "back"), ("in", "front"), ("of", "main"), ("with", "tape"), ("by", "top"), ("cut", "back"), ("put", "back"), ("to", "back"), ("get", "back"), ("peeled", "back"), ("left", "inside"), ("on", "schedule"), ("left", "side"), (",", "back"), (".", "back"), ("left", "end"), ("left", "one"), ("left", "two"), ("left", "three"), ("left", "four"))),
    opens=frozenset("and but just so".split()),
    tells=frozenset("is are 's was isn't aren't wasn't has hasn't goes still doesn't".split()),
)
