"""What stands in Spanish behind an act on a list that is ticked off by hand, and what another's deed befell."""

from __future__ import annotations

from logbook.languages.es_asides import SPANISH_ASIDES
from logbook.languages.told import Ticks, Told, Voices, Weighed

SPANISH_TOLD = Told(
    asides=SPANISH_ASIDES,
    weighed=Weighed(nots=r"(?<![\w'])(?:no|ni|sin|nunca)(?![\w'])"),
    voices=Voices(
        befell=r"^(?:(?:le|lo|la|se|hicieron|hizo|metieron|dieron|un|una) )*(?:hoy\w+|agujer\w+|perforaci[oó]n|rasgadura|rasg[oó]n|rotura|raj[oó]n|rajadura|picaron|picó|pisaron|pisó|golpe|golpeó|golpearon|aplastó|aplastaron|rompió|rompieron|rajó|rajaron|mojó|mojaron|ponchó|poncharon|abolladura|cortada|piquete|raya profunda)$| (?:foil|forro|papel|cara|facing|aluminio|cubierta|barrera|escalera|tubo|desarmador|taladro|fierro|andamio|rodilla|pie|varilla)\b",
        as_it_is=r"(?:y|e|pero|así que|asi que|entonces) (?:(?:ya|yo|luego|después|despues|le|lo|la|los|las|se|me) )*(?:(?:(?:en)?grap|encint|tall|frot|tape|teip|limpi|sell|cerr|cort|arm|termin|recort|dobl|parch)(?:é|e|amos)|col(?:gué|gue|gamos)|puse|metí|hice|pusimos|metimos|hicimos)\b",
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
