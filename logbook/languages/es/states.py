"""How things were left, told without an act, in Spanish: damage, panels, what hangs on a duct. Written without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es.whole_turns_told import NO_WASHER, NO_WASHER_SIZE
from logbook.languages.language import State

_CL = r"(?:(?:se|le|les|la|lo|las|los|me|nos) )*"
_NO = r"(?:no|nunca|tampoco|ni)"
_MENDED = r"(?:tapado|parchado|cambiado|reparado|arreglado|resanado|remendado|reemplazado|sustituido|compuesto|tocado|cerrado|cubierto|sellado)"
_MENDS = r"(?:tape|tapamos|parche|parchamos|cambie|cambiamos|repare|reparamos|arregle|arreglamos|resane|remende|reemplace|reemplazamos|sustitui|compuse|toque|tocamos)"
_TO_MEND = r"(?:(?:tapar|parchar|cambiar|reparar|arreglar|resanar|remendar|reemplazar|sustituir|componer|cubrir)(?:sel[oa]s?|l[oa]s?)?|poner(?:le)? (?:un |su |el )?parche)"
_COULD_NOT = r"(?:alcance|alcanzamos|pude|pudimos|traia|traiamos|tenia|tenia?mos|tuve|habia|hubo|llegue|llegamos|dio|volvi|volvimos|quise)"
_HOLDERS = r"(?:colgador(?:es)?|soportes?|colgantes?|trapecios?|fajas?|flejes?|cadenas?|varillas?|angulos?|patas?)"
_CARRIES = r"(?:ductos?|laminas?|board|panel|pieza|recto|tramo|plenum|conducto)"

SPANISH_STATES: tuple[State, ...] = (
    # damage left as it was
    State("damage_repaired", False, (rf"(?:todavia |aun )?{_NO} {_CL}(?:he|hemos|ha|han) (?:\w+ )?{_MENDED}", r"(?:todavia|aun) no (?:se )?(?:l[oa]s? )(?:arreglo|tapo|parcho|cambio|reparo|compongo)\b", rf"{_NO} {_CL}(?:he|hemos|ha|han) hecho nada\b(?! (?:mas|de|con|malo|aparte))(?: (?:todavia|aun))*", r"(?:todavia|aun) no (?:se )?(?:les?|l[oa]s?) (?:hago|hacemos|hace) nada\b(?! (?:mas|de))"), ("DAMAGE", "UNDONE"), apart=True, pending=True),
    State("damage_repaired", False, (rf"{_NO} {_CL}(?:{_MENDS}\b|(?:hice|hicimos|puse|pusimos) (?:nada|ni (?:un )?parche|ningun parche)|(?:meti|metimos|he metido|hemos metido) mano)(?: (?:nada|todavia|aun))*", rf"nadie {_CL}(?:{_MENDED}|(?:ha|han|hizo|puso|metio) (?:{_MENDED}|hecho nada|nada|mano|puesto (?:nada|parche)))\b", r"\bsin (?:tapar|parchar|parche|cambiar|reparar|arreglar|resanar|remendar|tocar|componer)(?:l[oa]s?|le)?\b"), ("DAMAGE",), apart=True),
    State("damage_repaired", False, (r"(?:sigue|siguen|anda|andan) (?:asi|igual|ahi)\b", r"(?:todavia )?(?:ahi|alli) (?:sigue|siguen|esta todavia|anda todavia)(?: igual)?$", r"(?:asi|ahi|tal cual|igual) (?:nomas |mero |mismo |pues )*(?:se |lo |la |le |me )*(?:sigue|siguen|anda|deje|dejamos|quedo|va|fue|monte|colgue|subi|use|instale|entregue|esta)(?: \w+)?$",), ("DAMAGE",), apart=True),
    State("damage_repaired", False, (
        rf"(?<!casi )(?<!por poco )(?<!no )\bse (?:me|nos) (?:olvido|paso|fue)(?: por completo| bien)? {_TO_MEND}\b",
        rf"\bno {_CL}{_COULD_NOT}\b(?: (?:a|de|con|que|tiempo|para|pa|material|lugar|modo|chance|board|foil))* {_TO_MEND}\b",
    ), ("DAMAGE",), apart=True),
    State("damage_repaired", False, (rf"\b(?:me|nos|le) (?:falto|quedo pendiente|quede de) {_TO_MEND}\b",), ("DAMAGE",), apart=True, pending=True),
    State("damage_repaired", False, (r"(?:parche|remiendo)s?(?: (?!no\b|ni\b)\w+){0,3}? (?:pero )?(?:ya )?se (?:me |nos |le )?(?:esta |anda |viene |empezo a |quiere )?(?:despeg|levant|cay|ca|solt|suelt|desprend|afloj|vol)(?:o|a|ando|endo|iendo|ar|er|yendo|yo|aron|eron|an|en|e)?\b", r"(?:parche|remiendo)s? (?:ya |casi |de plano )?no (?:me |se |le )*(?:peg|agarr|qued|aguant|sirv|prend|adhir)(?:o|a|io|e|ieron|aron|an|en)\b"), (), cues=("parche", "remiendo")),
    # the panel that was freed
    State("panel_seated", False, (r"(?:bailando|baila|bailan|cabecea|cabeceando|se mece|mecedora|jugando|juega|brinca|brincando|levantad[oa]|volando|pandead[oa]|parad[oa]|atorad[oa]|chuec[oa]|salid[oa])\b",), ("PANEL",)),
    State("panel_seated", False, (rf"{_NO} {_CL}(?:quiso |quiere |alcanza a |acaba de |llega a |termina de )?(?:entra|entro|entrar|cae|cayo|caer|baja|bajo|bajar|asienta|asento|asentar|sienta|sento|sentar|embona|embono|embonar|encaja|encajo|encajar|cabe|cupo|topa|llega|llego|se acomoda|acomodo)\b(?: (?:en|a|hasta) (?:su|el|la) (?:\w+))?",), ("PANEL",), apart=True),
    State("washer_size", NO_WASHER_SIZE, NO_WASHER, ("WASHERS",), ("equipment_connection", "damper_sleeve"), uses=True, cues=("rondana", "arandela", "roldana", "washer")),
    # what hangs on a duct
    State("accessory_supported", False, (
        rf"(?:amarrad[oa]|amarrando|fijad[oa]|cuelga|cuelgan|colgad[oa]|colgando|montad[oa]|sostenid[oa]|cargad[oa]|cargando|apoyad[oa]|agarrad[oa]|recargad[oa]|sujet[oa]|va|queda|descansa|descansando|detenid[oa]|atornillad[oa])(?: (?:nomas|solo|solamente|solito|unicamente|puramente|directo|directamente|puro|todo|nada mas))* (?:del?|al?|en|sobre|por|con) (?:el |la |puro |pura |mismo |solo |ese )*{_CARRIES}\b",
        r"(?:amarrad[oa]|fijad[oa]|cuelga|cuelgan|colgad[oa]|colgando|montad[oa]|sostenid[oa]|cargad[oa]|apoyad[oa]|agarrad[oa]|sujet[oa]|detenid[oa]|atornillad[oa]) (?:nomas|solo|solamente|solito|directo|directamente|nada mas|unicamente) (?:del?|al?|en|sobre) (?:(?:el|la|puro|pura|mismo|recto|codo|tramo|pieza) )*\w+\b(?! (?:losa|viga|techo|estructura|acero))",
        rf"(?:el |la |puro |pura |mismo )+{_CARRIES}(?: (?:es el que|la|lo|los|las|que|solo|nomas))* (?:esta |anda )?(?:carga|cargando|sostiene|sosteniendo|aguanta|aguantando|detiene|deteniendo|agarra)\b",
        rf"(?:{_NO} {_CL}(?:tiene|trae|lleva|puse|pusimos|hay|di)|sin|falta|le falta|faltan|le faltan|nada de) (?:ningun |sus? |un |una |el |los |las |otros |nada de )*{_HOLDERS}\b(?: (?:propi[oa]s?|aparte|suy[oa]s?|independientes?|encima))*",
        rf"{_NO} {_CL}(?:colg\w+|amarr\w+|sost\w+|soport\w+|sujet\w+|fij\w+|lleva|tiene|trae|va|esta|quedo|puse)(?: \w+){{0,2}}? (?:aparte|por separado|por su cuenta|independientes?|propi[oa]s?)\b",
        r"\bsin (?:colgar|amarrar|soportar|sujetar|sostener|fijar|guindar)(?:l[oa]s?)?(?: (?:bien|nada|de))* (?:aparte|por separado|por su cuenta|independientes?|de nada|de arriba)\b",  # "apoyado en el recto sin colgarlo aparte"
        r"(?:lo|la) (?:(?:esta|anda) )?(?:carga|cargando|sostiene|sosteniendo|aguanta|aguantando|detiene|deteniendo|trae|trayendo) (?:el |la )(?:puro |pura |mismo |misma |propio )*(?:ducto|lamina|board)",
        r"se (?:sostiene|aguanta|detiene|agarra|apoya)(?: (?:nomas|solo|solito))* (?:del?|en|con|sobre) (?:el |la |puro |mismo )*(?:ducto|lamina|board)",
    ), ("ACCESSORY", "LB", "WEIGHS"), apart=True),
    State("accessory_supported", True, (rf"(?:lo|la) (?:(?:esta|anda) )?(?:carga|cargando|sostiene|sosteniendo|aguanta|aguantando|detiene|deteniendo)n? (?:con )?(?:sus?|una?|unas|unos|dos|el|la) (?:propi[oa]s? )?{_HOLDERS}", rf"(?:con |tiene |lleva |trae |puse |pusimos )(?:sus? |un |una |unos |los |dos |cuatro )*{_HOLDERS} (?:propi[oa]s?|aparte|suy[oa]s?|independientes?)", r"(?:cuelga|colgad[oa]|colgue|amarrad[oa]|sostenid[oa]|va|sujet[oa])(?: \w+)? (?:de|a|en|desde) (?:la |las |el |los )?(?:losa|viga|vigas|estructura|techo|concreto|polin|polines|acero)\b",
        r"(?<!no )(?<!no lo )(?<!no la )(?:cuelga|colgad[oa]s?|colgue|colgamos|guindad[oa]|guinde|guindamos|amarrad[oa]|amarre|amarramos|sostenid[oa]|sujet[oa]|sujete|agarrad[oa]|agarre|soportad[oa]|soporte|monte|va|quedo)(?: \w+)? (?:con|de|por|en) sus? propi[oa]s? (?:alambres?|alambron|cables?|cadenas?|varillas?|flejes?|tirantes?|angulos?|fajas?|estructura|suspension|soporteria|strut|canal)(?: aparte(?: del? (?:ducto|recto|codo|tramo|pieza))?)?"), ("ACCESSORY", "LB", "WEIGHS"), apart=True),
)
