"""Spanish words that deny or affirm at a distance: "mandaron las aletas equivocadas, así que se fue sin ellas".

Written without accents: the words they are read against lose theirs. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.language import Afar

_TAIL = r"(?: (?:hoy|nunca|todavia no|a tiempo|al fin|al final|siempre|tampoco|ni modo|por ahora|esta vez|aqui|a este|a esta|en este|en esta))*"
_DID = r"(?:fue|quedo|va|salio|cerre|cerro|cerramos|arme|armo|armamos|hice|hizo|hicimos|colgue|colgo|colgamos|subi|subio|subimos|deje|dejo|dejamos|esta|monte|monto|puse|entregue)"
_CAME = r"(?:llegaron|llego|trajeron|trajo|mandaron|mando|dieron|puse|pusimos|pusieron|meti|metimos|eche|echamos|lleva|llevan|tiene|tienen|trae|traen|alcanzaron|alcanzo|hubo|habia|instale|instalamos|compraron|surtieron|tocaron|cupieron|quisieron entrar)"

SPANISH_AFAR = Afar(
    leads=r"(?:(?:pero|y|asi que|asi|entonces|pues|porque|que|bueno|al final|total que|total|ni modo|por eso|resulta que|la verdad|o sea|de plano|no|ya) )*",
    none=(
        rf"(?:ya )?(?:se |me |nos |lo |la |le )*{_DID}(?: asi| arriba| cerrad[oa]| colgad[oa]| armad[oa]| mejor| ya)* sin (?:ell[oa]s|ningun[oa]|nad[ai]ta|es[oa]s?){_TAIL}",
        rf"(?:no|nunca) (?:me |nos |le |les |se )*(?:l[oa]s? )?{_CAME}(?: ningun[oa]| nada| ni un[oa])*{_TAIL}",
        rf"nadie (?:me |nos |l[oa]s? |le )*(?:trajo|mando|puso|dio|metio|surtio|pidio|compro)(?: ningun[oa])?{_TAIL}",
        rf"(?:me |se )?(?:l[oa]s )(?:deje|dejamos|dejaron|quedaron|olvide)(?: \w+)? (?:fuera|afuera|en (?:la|el) \w+){_TAIL}",
        rf"ni (?:un[oa]|un[oa] sol[oa])(?: de ell[oa]s)?(?: lleva| trae| tiene| le puse| puse| hay)?{_TAIL}",
        rf"l[oa]s (?:omiti|omitimos|brinque|salte){_TAIL}",
    ),
    riddles=(
        r"(?:(?:adivina|adivinen|sabes|a que no sabes|saben|y sabes) )*(?:que|lo unico que|la unica cosa que) (?:no (?:le puse|trae|lleva|tiene|llego|le meti)|le falta|falto|le falto|me falto|se me olvido)",
    ),
    idle=(
        r"\b(?:camioneta|troca|camion|proveedor|pedido|bodega|almacen|van|pickup)\b (?:\w+ ){0,2}(?:trae|traia|tiene|traen|viene con|llego con|trajo)\b",
        r"\bse (?:mojo|inundo|encharco) (?:tod[oa] )?(?:el piso|la obra|el cuarto|el edificio|la calle|el patio|todo(?! (?:el|la|los|las|por) (?!piso|obra|cuarto|edificio|calle|patio|d[ií]a))\b)\b",
        r"\b(?:cajas?|paquetes?|bolsas?|pedidos?|rollos?|botes?|cubetas?|kilos?) de (?:las |la |los )?(?:aletas|grapas|cinta|tape|teip|vanes|pestañas|tabs)\b",
        r"\bquien (?:necesita|ocupa|quiere|pide)\b",
        r"\bno (?:se|supe|tengo idea|sabria decir|me acuerdo)(?: nada)? (?:de|si|de si)\b",
        r"\bno (?:puedo|podria) (?:decir|asegurar|responder|jurar)(?: nada)? (?:de|por|si)\b",
    ),
    almost=(r"\biba a (?:decir|mandar|reportar|anotar|decirte)\b",),
    nobody=(
        r"(?:(?:el|la|los|quien|al|aquel) )?que (?:diga|digan|dice|dijo|piense|piensen|crea|crean|ande diciendo|anden diciendo)(?: que)?\b(?=.*\b(?:no|sin|ni|nunca)\b.*\b(?:miente|mienten|se equivocan?|esta mal|estan mal|no sabe|es (?:un )?mentiroso|es puro cuento|anda mal|esta loco)\b)|quien (?:diga|piense|crea)(?: que)?\b(?=.*\b(?:no|sin|ni|nunca)\b.*\b(?:miente|se equivoca|esta mal|no sabe|es (?:un )?mentiroso|esta loco)\b)",
        r"(?:que )?(?:no me (?:digan|diga|digas|vengan a decir|vengan con|salgan con)|nadie (?:me )?(?:puede|va a|podra|me va a) (?:decir|venir a decir|reclamar|alegar)|que no (?:me )?(?:digan|anden diciendo|vengan a decir))(?: (?:luego|despues|ahora))?(?: que)?\b(?=.*\b(?:no|sin|ni|nunca)\b)",
    ),
    never_without=(
        r"\b(?:nunca|jamas) (?:he )?(?:dej|mand|hag|hech|colg|cierr|cerr|entreg|arm|sac|hic)\w*\b.*\bsin(?: \w+){0,2}$",
    ),
    nor_this=(r"(?:est[ae]|es[ae]) (?:no es la excepcion|tampoco|no va a ser la primera|no iba a ser).*|no (?:voy|iba|vamos) a empezar\b.*",),
    clefts=(r"lo (?:que|unico que) (?:si )?(?:hice|hicimos|le hice|alcance a hacer) (?:fue|es)\b",),
    attributed=(
        r"(?:eso |asi )?(?:me|nos) (?:dijeron|dijo|aseguraron|aseguro|contaron|conto)(?: ell[oa]s| (?:el|la|los) \w+| {name})?|segun (?:ellos|ella|dicen|dijeron|me dijeron|me dijo|{name}|(?:el|la|los) \w+)|(?:eso |asi )?dicen(?: ellos)?|(?:eso )?dice (?:{name}|el \w+|la \w+)",
    ),
    own_instead=(r"\b(?:hice|hicimos|corte|cortamos|doble|use|usamos|consegui|conseguimos|compre|encontre|preste|puse|pusimos|meti|metimos|regrese)\b.*\b(?:mias|mios|propias|propios|otras|otros|otra|nuevas|nuevos|nueva|unas|mastique|de las)\b",),
)
