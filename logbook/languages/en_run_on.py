"""English words of clauses that run on."""

from __future__ import annotations

from logbook.languages.run_on import RunOn

ENGLISH_RUN_ON = RunOn(
    bare=frozenset("stapled|stapled up|stapled down|stapled off|stapled through|stapled tight|stapled together|restapled|taped|taped up|taped off|taped over|taped down|taped tight|taped shut|retaped|rubbed|rubbed down|rubbed out|rubbed in|rubbed hard|rubbed good|burnished|burnished down|squeegeed|squeegeed down|rubbed down hard".split("|")),
    auxiliaries=frozenset(
        "didn't don't doesn't won't wouldn't couldn't can't cannot never didnt dont doesnt wont wouldnt couldnt cant".split() + "did not|do not|does not|could not|can not|would not|will not|wasn't able to|weren't able to|not able to|not going to|nobody|no one|noone".split("|")
    ),
    copulas=frozenset("isn't aren't wasn't weren't ain't isnt arent wasnt werent aint not".split() + "is not|are not|was not|were not".split("|")),
    there=frozenset("there there's theres".split()),
    causes=frozenset("get got gets getting have had has having want wanted need needed leave left keep kept see saw find found make made call called hear heard hand handed give gave send sent deliver delivered bring brought come came coming leave leaves leaving going look looks looked seem seems end wind turn arrive ship".split()),
    senses=frozenset("find found see saw".split()),
    better=frozenset("tighter closer better straighter cleaner flatter nicer".split()),
    it_is=frozenset("it's its".split()),
    now=frozenset(["now"]),
    several=frozenset("them em 'em these those they".split()),
    this_one=frozenset("this one|that one|the other one|this|one".split("|")),
    opinions=frozenset("say said says swear swore think thought believe believed know knew remember recall tell told guarantee promise expect expected claim bet figure see".split()),
    fills=frozenset("in out on off".split()),
    wholes=frozenset("none nothing nothin nada".split() + ["without any"]),
    adjectives=frozenset("pretty good nice great real easy".split()),
    would=frozenset("i'd we'd i would we would i'd've would would've would have could have could've should have should've".split()),
)
