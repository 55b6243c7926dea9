"""What stands in Spanish behind an act on a list that is ticked off by hand, and what another's deed befell."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.es.accidents import SPANISH_ACCIDENTS
from logbook.languages.es.ailing import RIGHTED, SPANISH_AILING
from logbook.languages.es.ailing_parts import SPANISH_PARTS_AILING
from logbook.languages.es.asides import SPANISH_ASIDES
from logbook.languages.es.mistrusted import SPANISH_MISTRUSTED
from logbook.languages.es.parts_told import SPANISH_PARTS_TOLD
from logbook.languages.es.stretches import SPANISH_STRETCHES
from logbook.languages.told import OwnQuestions, Ticks, Told, Voices, Weighed

_HOW = r"(?:(?:asi|eso|esa|ese|esos|esas)(?: mismo| mero)? (?:es|fue|son|esta|estan|quedo|quedaron|va|van|l[oa]s? (?:hice|deje|puse|arme|meti)|le (?:puse|meti|hice|di)|me (?:quedo|quedaron|salio))\b.*|(?:es|son|fue|era|eran) (?:la|el|lo|las|los) (?:unic[oa]s? )?que (?:le |yo |les |me )*(?:use|usamos|puse|pusimos|hice|meti|tengo|tenia|traia|lleva|trae|quedo|quedaron|di|deje|toco)\b.*|(?:asi|ya) (?:l[oa]s? |le |me |ya )*(?:hice|deje|puse|quedo|quedaron|va|van|arme|di|engrape|grape|encinte|cerre|esta|estan)\b.*|(?:la|el|l[oa]s) (?:mi[oa]s?|que (?:hice|puse)) (?:asi )?(?:va|van|quedo|quedaron|esta|estan|es|son)\b.*)"
_ASKS_BEFORE = r"¿?(?:(?:oiga|oye|jefe|patron|ingeniero|inge|compa|pregunta|una pregunta|duda|una duda|pues|y|bueno|digame|dime)[,:]? ¿?)*"
_MAY = r"(?:(?:esta|estara|es|sera|seria|queda) (?:muy |tan )?(?:bien|mal|correcto|permitido|malo|bueno|grave|problema|valido) (?:si|que|con|poner\w*|usar|dejar\w*)|(?:hay|habra|tiene|es) (?:algun |mucho )?(?:problema|bronca|pedo|lio|inconveniente) (?:si|con que|con|en que|que)|(?:se puede|se vale|puedo|podemos|sirve|sirven|dejan|aceptan|pasa|pasan|pasara|importa|le importa|afecta)(?: (?:usar|poner|meter|dejar\w*|con|si|que|ir|engrapar\w*|grapar\w*|cerrar(?:lo)? con|a))?|que (?:pasa|hay|tanto afecta) (?:si|con)|no (?:pasa nada|importa|hay problema|le hace) (?:si|con))"

SPANISH_TOLD = Told(
    stretches=SPANISH_STRETCHES,
    parts=SPANISH_PARTS_TOLD,
    own_questions=OwnQuestions(
        leads=rf"{_ASKS_BEFORE}{_MAY}(?= )",
        owns=rf"(?:(?:(?:lo |le |les )?(?:pregunto|digo)|es que)?,? ?(?:porque|por que|pues|ya que|es que|y|nomas que) ?,? ?)*{_HOW}",
        restates=r"(?:(?:porque|pues|es que|y) )*(?:la mia|el mio|l[oa]s mi[oa]s|yo|a mi|aqui|es[aeo]s?|asi|me|las|los)\b",
    ),
    asides=replace(SPANISH_ASIDES, ailing=(*SPANISH_AILING, *SPANISH_PARTS_AILING, *SPANISH_ACCIDENTS, *SPANISH_MISTRUSTED), righted=RIGHTED),
    weighed=Weighed(nots=r"(?<![\w'])(?:no|ni|sin|nunca)(?![\w'])"),
    voices=Voices(
        befell=r"^(?:(?:le|lo|la|se|hicieron|hizo|metieron|dieron|un|una) )*(?:hoy\w+|agujer\w+|perforaci[oó]n|rasgadura|rasg[oó]n|rotura|raj[oó]n|rajadura|picaron|picó|pisaron|pisó|golpe|golpeó|golpearon|aplastó|aplastaron|rompió|rompieron|rajó|rajaron|mojó|mojaron|ponchó|poncharon|abolladura|cortada|piquete|raya profunda)$| (?:foil|forro|papel|cara|facing|aluminio|cubierta|barrera|escalera|tubo|desarmador|taladro|fierro|andamio|rodilla|pie|varilla)\b",
        as_it_is=r"(?:y|e|pero|así que|asi que|entonces|por eso) (?:(?:ya|yo|luego|después|despues|todavía|todavia|así|asi|ahí|ahi|por eso|pues|nomás|nomas|no|ni|nunca|tampoco|le|les|lo|la|los|las|se|me|nos) )*(?:alcan(?:cé|ce|zamos)|pud(?:e|imos)|lleg(?:ué|ue|amos)|dej(?:é|e|amos)|qued(?:ó|o|aron) (?:así |asi |ahí |ahi )?(?:sin|pendient\w+|a medias)|no (?:lleva|llevan|tiene|tienen|trae|traen|qued(?:ó|o|aron)|est(?:á|a|án|an)) |(?:me|nos) falt(?:ó|o|aron|a|an)|(?:me|nos) olvid(?:ó|o|aron)|(?:me|nos) (?:dio|quedó|quedo) tiempo|(?:he|hemos) (?:encint|engrap|grap|tall|frot|pues|met|recort|limpi|parch)\w*|(?:(?:en)?grap|encint|tall|frot|tape|teip|limpi|sell|cerr|cort|arm|termin|recort|dobl|parch)(?:é|e|amos)|col(?:gué|gue|gamos)|puse|metí|hice|pusimos|metimos|hicimos)\b",
        harm=r"\b(?:pisó|pisaron|rompió|rompieron|rasgó|rasgaron|golpeó|golpearon|aplastó|aplastaron|perforó|perforaron|picó|picaron|mojó|mojaron|ponchó|poncharon)\b|\b(?:le|lo|la|les|nos|me) (?:hizo|hicieron|dejó|dejaron|metió|metieron|abrió|abrieron|dio|dieron|pegó|pegaron|puso|pusieron|sacó|sacaron) (?:un|una|unos|unas|otro|otra|tamaño|tremendo|dos|tres)\b(?!.*\b(?:a la pared|al muro|al techo|al piso|al tubo|a la losa|al plafón|a la puerta)\b)",
        anothers=r"\b(?:la|lo|las|los) (?:dejó|dejaron|hizo|hicieron|armó|armaron|montó|sacó|puso|empezó) (?:otro|otra|otros|alguien|el otro|los otros|los de|el de|mi compañero|el turno)\b|\b(?:dejó|hizo|armó|sacó|montó|entregó) su (?:codo|recta|recto|tramo|tapa|reducción|transición|te|collarín|offset|pieza|parte)\b",
    ),
    ticks=Ticks(
        yes="sí|si|s|ok|listo|lista|listos|listas|hecho|hecha|va|x(?=\\])|\u2713|\u2714|\u2705",
        no="no|n|nada|ninguno|ninguna|nel|sin|faltó|falto|\u2717|\u2718|\u274c|(?<=\\[)[ _]?(?=\\])",
        later="todavía no|todavia no|aún no|aun no|no todavía|no todavia|falta|faltan|pendiente|pendientes|mañana|después|despues|por hacer",
        partly="(?:casi todas?|casi todos?|la mitad|todas menos|todos menos|menos|algunas|algunos)(?: (?:\\d+|una|uno|dos|tres|unas|unos))?",
        idle="n ?/ ?a|no aplica|no lleva|no llevan",
        zero="0|cero",
    )
)
