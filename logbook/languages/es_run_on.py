"""Spanish words of a note without any sign."""

from __future__ import annotations

from logbook.languages.run_on import RunOn

SPANISH_RUN_ON = RunOn(
    breaths=frozenset("este eh pues bueno ok sí si ya".split()),
    binders=frozenset("porque que como si cuando donde dice dijo digo creo pienso y o pero aunque mientras según segun".split()),
    links=frozenset("es está esta son están estan era quedó quedo tiene trae lleva va".split()),
    closers=frozenset("hoy ahora también tambien ahí ahi aquí aqui bien listo lista ya".split()),
    plain_not=frozenset("ni nadie".split()),
    right_angles=frozenset("90 45 noventa cuarenta".split() + ["cuarenta y cinco"]),
    takers=frozenset("terminé termine hice colgué colgue armé arme mi tu su este esta ese esa otro otra misma mismo".split()),
    ticks=frozenset("no sí si nel".split()),
    adverbs=frozenset("nunca siempre apenas casi solo sólo nomás nomas no".split()),
    some=frozenset("un una".split()),
    reaching=frozenset("con de a el la los las en por del al un una para y que lo le se".split()),
)
