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
    subjects=frozenset("it's that's there's they're these these're here's it'll thats theres theyre".split() + "these are|this is|there is|there was".split("|")),
    people=frozenset("i it we i've it's we've i'd i'm we're".split()),
    so=frozenset(["so"]),
    breaths=frozenset("yeah uh um okay ok anyway oh yes".split()),
    binders=frozenset("because cause 'cause cuz say says said tell told than like know knew sure hope where as bet guess swear since though although think figure see means reckon while if whether that".split()),
    links=frozenset("is are was were has have had gets got be been isn't aren't runs 's".split()),
    closers=frozenset("today again there good too anyway anyhow here done now tight mine know sure twice earlier look me".split() + ["this morning"]),
    plain_not=frozenset("not nobody never".split()),
    right_angles=frozenset("90 45 ninety forty-five".split() + ["forty five"]),
    adverbs=frozenset("knot aint me him guy guys fella ever never really actually even only finally always then".split()),
    takers=frozenset("off onto inside outside mark marked finished finish put made make built build did do does done into owe your my our his their you doing hanging hang holding should leave leaves called call hung touched touch started start skipped skip did fixed fix redid got get both this".split()),
    ticks=frozenset("no nope nah negative yes yep yeah check affirmative".split()),
    some=frozenset(["a", "an", "its"]),
    reaching=frozenset("on of with to for at from the a by".split()),
)
