"""What befalls board and facing, in the words of Mexican and Central American sites: nouns, participles and verbs made from their stems. Not reviewed by a native speaker."""

from __future__ import annotations

_ENDS = ("o", "a", "os", "as")

# these tell of harm wherever they stand
_NOUNS: tuple[tuple[str, str], ...] = (
    ("tear", "desgarrón desgarrones desgarrada desgarradura raspada raspadas raspadura raspaduras rozón rozones rozadura rozaduras arañazo arañazos rasguñada zarpazo rotita rotitas rotito rajita descosido descosida descarapelada descarapelón tijeretazo navajazos cuchillada cuchillazo arrancón trozadura quemada quemadas quemadura quemaduras quemón desperfecto desperfectos maltrato daño daños cuarteadita"),
    ("puncture", "orificio agujerote hoyancos hoyanco punzadas puntazo puntazos piquetes piquetazo picotazo picotón pinchazos pinchadura ponchazo perforaciones picaduras ponchaduras"),
    ("crushed", "abollón abollones abolladuras bollo bollos aplastón aplastones machucón machucones magullón magulladura hundida hundidas hundimientos sumida sumidas sumidón quebrón quebrones quebrada quebradas quebradura cuarteadura cuarteaduras cuarteada pisada pisadas pisotón pisotones talonazo rodillazo patada trancazos trancazo madrazo madrazos chingadazo chingadazos fregadazo fregadazos fregazo putazo putazos vergazo guamazo guamazos costalazo porrazo porrazos cabezazo martillazo martillazos tubazo escalerazo chichón chipotes desportillado desportilladura despostillada astillada"),
    ("wet", "mancha de agua|manchas de agua|mancha de humedad|manchas de humedad"),
    ("delaminated", "ampolla ampollas ampollita ampollitas ampollón desprendimiento despegada despegadas despegadura levantamiento delaminaciones"),
)
_STATES: tuple[tuple[str, str], ...] = (
    ("tear", "tasajead tijeretead navajead desollad deshilachad rajad desgarrad descarapelad despellejad quemad chamuscad destrozad despedazad trozad rasguñad arañad carcomid roíd"),
    ("puncture", "acribillad agujeread agujerad hoyad perforad pinchad ponchad traspasad oradad horadad"),
    ("crushed", "chancad despanzurrad achatad chipotead espachurrad despachurrad apretujad estrujad resquebrajad desquebrajad tronchad desconchad aporread apelmazad golpead abollad hundid sumid machucad apachurrad quebrad agrietad astillad cuartead despostillad desportillad maltratad pisad pisotead reventad tronad desbaratad desmoronad magullad"),
    ("wet", "mojad empapad enchumbad ensopad remojad humedecid empapadit mojadit humedit emparamad"),
    ("delaminated", "ampollad abombad delaminad deslaminad"),
)
# of many things: harm where they stand by the skin of the board
_OF_THE_SKIN: tuple[tuple[str, str], ...] = (
    ("tear", "cortad raspad rayad abiert pelad partid tallad mordid picad rot"),
    ("crushed", "doblad arrugad aplastad"),
    ("tear", "dañad jodid fregad amolad madread chingad estropead lastimad desgraciad desmadrad arruinad deteriorad malograd averiad gastad masticad comid rebanad jalonead mochad"),
    ("delaminated", "levantad separad suelt inflad desprendid despegad botad volad"),
)
_MARKS: tuple[tuple[str, str], ...] = (
    ("tear", "corte cortes cortada cortadas cortadita raya rayas rayada jalón hueco"),
    ("crushed", "doblez dobleces arruga arrugas pliegue pliegues marca"),
    ("puncture", "boquete huequito"),
    ("delaminated", "bolsa bolsas burbuja burbujas globo globos bomba bombas aire"),
)
_BOARDS = ("board", "panel", "tablero", "fibra", "lámina", "pieza", "tapa")
_BOARD_IS: tuple[tuple[str, str], ...] = (("crushed", "desgraciad desmadrad arruinad deteriorad malograd averiad masticad deformad prensad dañad jodid fregad amolad madread chingad estropead lastimad partid rot quebrad doblad aplastad"), ("wet", "mojad húmed empapad chorread encharcad inundad llovid serenad sudad aguad bañad anegad"))
_AT = ("de un lado", "de una esquina", "de la esquina", "de una orilla", "de la orilla", "de la punta", "de una punta", "en la cara de arriba", "en la cara de abajo", "en una esquina", "en la esquina")
_SKINS = ("foil", "papel", "forro", "facing", "aluminio", "cubierta", "barrera", "liner")
_WAS = ("", "está ", "quedó ", "viene ", "venía ", "llegó ", "salió ", "anda ", "estaba ", "me quedó ", "se ve ", "ya está ", "está todo ", "quedó todo ", "está medio ", "se quedó ")
_EDGES = ("esquina", "esquinita", "orilla", "punta", "canto", "filo", "cara")
_EDGES_ARE = ("rot", "quebrad", "mordid", "doblad", "aplastad", "tronad", "partid", "carcomid", "comid", "golpead", "raspad", "desmoronad", "sumid", "mochad", "volad", "fregad", "madread", "amolad", "jodid", "chingad", "desgraciad", "desmadrad", "machucad", "dañad", "despuntad", "pelad", "picad")

_EDGES_WENT = ("dobló", "rompió", "quebró", "aplastó", "apachurró", "mochó", "partió", "desmoronó", "despostilló", "sumió", "golpeó", "machucó", "tronó", "chancó", "voló", "peló")
_BIT_OFF = ("cayó", "desprendió", "arrancó", "voló", "quebró", "rompió", "desmoronó", "partió", "mochó")
_BITS = ("un pedazo", "un pedacito", "un cacho", "un cachito", "un trozo")

_BEFALLS: tuple[tuple[str, str], ...] = (
    ("tear", "chamusc arañ rasguñ descarapel despellej destroz despedaz rasg raj desgarr troz"),
    ("puncture", "agujere agujer perfor ponch pinch"),
    ("crushed", "estruj chanc despanzurr achat espachurr apretuj resquebraj tronch desconch golpe aboll machuc apachurr magull quebr despostill desportill astill cuarte agriet maltrat amol estrope lastim pisote tron revent desbarat desmoron"),
    ("wet", "moj empap ensop enchumb remoj"),
    ("delaminated", "ampoll abomb delamin"),
)
_FALLS = ("hund", "sum", "part")
# what he did himself
_I_DID: tuple[tuple[str, str], ...] = (("tear", "rasgué rajé desgarré arañé rasguñé descarapelé trocé"), ("puncture", "perforé ponché agujeré agujereé pinché piqué"), ("crushed", "pisé golpeé abollé quebré machuqué apachurré sumí hundí maltraté estropeé"))
_BEFALLEN = tuple(f"{a} {mark}" for a, marks in (("un", "corte doblez pliegue jalón globo boquete hueco pelón rayón roto bollo sumido"), ("una", "cortada raya arruga bolsa burbuja bomba mordida rajada raspada grieta ranura"), ("unos", "cortes dobleces pliegues"), ("unas", "arrugas burbujas bolsas rayas")) for mark in marks.split()) + ("bolsa", "burbuja", "una bolsa de aire", "una raya honda")
_LET_GO = ("despegó", "desprendió", "levantó", "infló", "botó", "voló", "soltó", "peló", "separó", "descarapeló", "abombó", "ampolló", "hizo bolsa", "hizo globo", "esponjó", "reventó")
_DROPPED = ("se cayó y", "se me cayó y", "se nos cayó y", "se le cayó al compañero y", "lo dejé caer y", "la dejé caer y", "lo tiré y", "la tiré y", "se volteó y", "se ladeó y", "se fue al piso y", "se fue al suelo y")
_STRUCK = ("golpe", "porrazo", "raspón", "rozón", "llegue", "trancazo", "madrazo")
_HIT_WITH = ("la escalera", "el andamio", "un tubo", "el tubo", "la viga", "una viga", "el lift", "la plataforma", "el martillo", "un martillo", "la esquina del banco", "el marco", "la puerta", "la pared", "un poste", "la columna", "el montacargas", "una caja", "la bota", "el codo", "la rodilla")

# a tool or a limb is no duct
_TOOLS = ("navaja", "cuchilla", "engrapadora", "grapadora", "pistola", "broca", "segueta", "espátula", "escalera", "manguera", "extensión", "lámpara", "máquina", "sierra", "tijera", "troca", "llanta", "herramienta", "cabeza", "espalda", "mano", "pierna", "rodilla", "uña", "puerta", "ventana", "caja", "tubería", "charola", "reja", "pared", "losa", "cerradura")
_HE_TOOLS = ("cúter", "cutter", "taladro", "compresor", "lift", "andamio", "rollo", "celular", "teléfono", "radio", "casco", "dedo", "pie", "brazo", "hombro", "ojo", "pantalón", "guante", "foco", "marco", "vidrio", "carro", "camión", "tubo", "plafón", "muro", "cable", "martillo", "flexómetro", "metro")
_OWN_TOOLS = ("navaja", "cuchilla", "engrapadora", "grapadora", "pistola", "broca", "escalera", "manguera", "extensión", "lámpara", "máquina", "sierra", "tijera", "troca", "llanta", "herramienta", "ventana", "pared")
_HE_OWN_TOOLS = ("cúter", "taladro", "compresor", "lift", "andamio", "rollo", "celular", "teléfono", "radio", "casco", "pantalón", "guante", "foco", "vidrio", "carro", "camión", "plafón", "muro", "flexómetro")
_BROKE = ("quebró", "rompió", "tronó", "dañó", "jodió", "fregó", "quemó", "amoló", "ponchó", "golpeó", "mojó", "partió", "estropeó", "maltrató", "reventó", "lastimó", "machucó", "chingó", "descompuso")
_HURT = ("golpeé", "machuqué", "quemé", "lastimé", "pinché", "piqué", "rajé", "rasguñé", "corté", "pisé", "amolé", "jodí")


# something is the matter, and nobody can tell from the words with what: it is asked
AMISS = (
    *(f"se {whom}{went}" for whom in ("", "me ", "nos ", "le ", "me le ") for went in ("fregó", "jodió", "amoló", "chingó", "echó a perder", "dio en la madre")),
    *(f"{was} {how}" for was in ("quedó", "quedo", "me quedó", "se me quedó", "nos quedó", "salió", "me salió", "quedó medio", "quedó todo", "se quedó", "viene", "llegó") for how in ("deshecho", "deshecha", "jodido", "jodida", "fregado", "fregada", "amolado", "amolada", "chingado", "chingada", "madreado", "madreada", "apapachado", "doblado", "lastimado", "lastimada", "feo", "fea", "gacho", "gacha", "maltrecho", "mal hecho", "mal hecha", "mal", "muy mal", "rayado", "raspado", "raspada", "mordido", "pelado", "levantado", "inflado", "dudoso", "dudosa", "pelón", "encuerado", "encuerada")),
    *(f"{was} {how}" for was in ("quedó", "quedo", "me quedó", "se me quedó", "nos quedó", "salió", "está", "anda", "viene", "quedó medio", "quedó todo", "se quedó") for how in ("inflado", "inflada", "arrugado", "arrugada", "abombado", "chueco", "chuequito", "pandeado", "pandeada", "pandeadito", "torcido", "torcida", "descuadrado", "descuadrada", "vencido", "vencida", "ladeado", "ladeada", "mal soportado", "mal soportada", "mal colgado", "mal colgada", "colgando de un lado")),
    "quedó caído", "quedó caída", "va pelón", "va encuerado", "quedaron muy abiertas", "quedaron muy abiertos", "quedaron derechas", "quedaron rectas", "no abrieron", "no se abrieron", "las patas se cerraron", "las patas se metieron", "quedaron cortos", "quedaron cortas", "salieron cortos", "salieron cortas",
    "se rompió la cinta", "se me rompió la cinta", "se rompió el tape", "se rompió el teip", "se enganchó con un clavo", "se atoró con un clavo", "se enganchó con un tornillo",
    *(f"no {was} {how}bien {what}" for was in ("está", "quedó", "quedo", "va") for how in ("", "muy ", "tan ") for what in ("colgado", "colgada", "soportado", "soportada", "agarrado", "amarrado", "derecho", "derecha", "cuadrado", "hecho", "hecha")),
    "se pandea", "se está pandeando", "se pandeó", "se vence", "se está venciendo", "se está ladeando", "cuelga de un lado", "cuelga de un solo lado", "apoyado en la tubería", "apoyado en el tubo", "recargado en la tubería", "apoyado en el sprinkler",
    "quedó apoyado en", "está apoyado en", "recargado en", "lo amarré con alambre", "lo detuve con alambre", "lo detuve con un alambre", "colgado de alambre", "con puro alambre", "provisional con alambre",
    *(f"{muy} {far}" for muy in ("muy", "bastante", "demasiado", "quedaron muy") for far in ("separadas", "separados", "espaciadas", "espaciados", "retiradas", "retirados", "abiertas una de otra", "ralas", "ralos", "lejos una de otra", "lejos uno de otro", "cortitas", "chiquitas", "cortos", "chiquitos")),
    "a cada cuarta", "cada cuarta", "a cada palmo", "cada palmo", "lejos una de otra", "lejos uno de otro", "no pasan el board", "no pasa el board", "no alcanza a pasar", "no alcanzan a pasar", "no traspasan",
)


def _words(spelled: str) -> list[str]:
    return spelled.split("|") if "|" in spelled else spelled.split()


def harms() -> tuple[tuple[str, str], ...]:
    """(damage, "phrase|phrase|…") rows."""
    rows: list[tuple[str, str]] = []
    rows += [(damage, "|".join(_words(nouns))) for damage, nouns in _NOUNS]
    rows += [(damage, "|".join(f"{stem}{end}" for stem in stems.split() for end in _ENDS)) for damage, stems in _STATES]
    rows += [(damage, "|".join(f"{skin} {was}{stem}{'a' if skin in ('cubierta', 'barrera') else 'o'}" for stem in stems.split() for skin in (*_SKINS, "el foil", "el forro", "el facing") for was in _WAS)) for damage, stems in _OF_THE_SKIN]  # "el foil" is a word of its own
    rows += [(damage, "|".join(f"{board} {was}{stem}{'a' if board.endswith('a') else 'o'}" for stem in stems.split() for board in _BOARDS for was in _WAS)) for damage, stems in _BOARD_IS]
    rows += [(damage, "|".join(f"{stem}{end} {where}" for stem in stems.split() if stem not in ("raspad", "arrugad", "rot", "aplastad", "doblad") for end in "oa" for where in _AT)) for damage, stems in (_OF_THE_SKIN[0], _OF_THE_SKIN[2], _BOARD_IS[0])]
    rows += [("tear", "|".join(f"{came} raspad{end}" for came in ("viene", "venía", "llegó", "salió", "me llegó", "nos llegó") for end in "oa"))]
    rows += [(damage, "|".join(f"{mark} {to}" for mark in marks.split() for skin in _SKINS for to in ((f"en la {skin}", f"a la {skin}", f"de la {skin}") if skin in ("cubierta", "barrera") else (f"en el {skin}", f"al {skin}", f"del {skin}", f"en {skin}")))) for damage, marks in _MARKS]
    rows.append(("crushed", "|".join(f"{edge}{some} {was}{stem}{end}{some}" for edge in _EDGES for stem in _EDGES_ARE for some in ("", "s") for was in ("", "está ", "quedó ", "viene ") if not (some and was) for end in ("o" if edge in ("canto", "filo") else "a",))))
    rows.append(("crushed", "|".join(f"{edge} se {whom}{went}" for edge in _EDGES for whom in ("", "me ", "nos ", "le ") for went in _EDGES_WENT)))
    rows.append(("crushed", "|".join(f"se {whom}{off} {bit}{of}" for whom in ("", "me ", "nos ", "le ", "me le ") for off in _BIT_OFF if whom or off != "cayó" for bit in _BITS for of in ("", *(f" de {board}" for board in ("board", "panel", "fibra", "tabla", "la esquina", "la orilla", "la hembra", "la tabla", "esquina")), *(f" del {board}" for board in ("board", "panel", "macho", "tablero", "canto"))))))
    rows += [(damage, "|".join(f"{was} {stem}{'a' if skin in ('cubierta', 'barrera') else 'o'} {'la' if skin in ('cubierta', 'barrera') else 'el'} {skin}" for stem in stems.split() for skin in _SKINS for was in ("está", "quedó", "viene", "venía", "llegó", "salió", "trae"))) for damage, stems in _OF_THE_SKIN]
    rows.append(("delaminated", "|".join(f"{skin} {has} {mark}" for skin in _SKINS for has in ("tiene", "trae", "hizo", "quedó con", "tiene unas", "tiene una") for mark in ("bolsas", "bolsa", "burbujas", "burbuja", "globos", "ampollas", "bombas"))))
    rows.append(("tear", "raja|rajas|rajita|se le hizo una raja|" + "|".join(f"{whom}corté {the}{skin} {slip}" for whom in ("", "le ", "se me ") for skin in _SKINS for the in ("la " if skin in ("cubierta", "barrera") else "el ",) for slip in ("sin querer", "de más", "por error", "sin darme cuenta"))))
    rows.append(("wet", "se humedeció|se llenó de agua|se me llenó de agua|está chorreado|está chorreada|se chorreó|lleno de agua|llena de agua|le entró la lluvia|le escurrió el agua|se remojó|agarró la lluvia"
        "|" + "|".join(f"{stood} {rain}" for stood in ("se quedó", "quedó", "estuvo", "pasó la noche", "durmió", "amaneció") for rain in ("en la lluvia", "bajo la lluvia", "en el agua", "bajo el agua", "entre el agua", "en un charco", "en el charco")) + "|la agarró la lluvia|lo agarró la lluvia|la agarró el agua|lo agarró el agua|le tocó lluvia|le tocó la lluvia|le tocó el aguacero"))
    rows.append(("puncture", "|".join(f"{the} {tool} {it} atravesó" for the, tool in (("el", "desarmador"), ("la", "escalera"), ("el", "tubo"), ("la", "varilla"), ("el", "andamio"), ("un", "tornillo"), ("una", "varilla"), ("un", "clavo")) for it in ("lo", "la"))))
    rows += [(damage, "|".join(f"se {whom}{stem}ó" for stem in stems.split() for whom in ("", "me ", "nos ", "le ", "me le ")) + "|" + "|".join(f"{it} {stem}aron" for stem in stems.split() for it in ("lo", "la", "le", "me lo", "me la"))) for damage, stems in _BEFALLS]
    rows.append(("crushed", "|".join(f"se {whom}{stem}ió" for stem in _FALLS for whom in ("", "me ", "nos ", "le "))))
    rows += [(damage, "|".join(f"{it} {did}" for did in dids.split() for it in ("lo", "la", "le", "se lo", "se la"))) for damage, dids in _I_DID]
    rows.append(("delaminated", "|".join(f"se {whom}{did} {the} {skin}" for did in _LET_GO for whom in ("", "me ", "nos ", "le ") for skin in _SKINS for the in ("la" if skin in ("cubierta", "barrera") else "el",))))
    befallen = [f"se {whom}hizo {mark}" for whom in ("le ", "me ", "nos ", "me le ") for mark in _BEFALLEN] + [f"le {came} {mark}" for came in ("salió", "salieron") for mark in _BEFALLEN]
    rows.append(("tear", "|".join([*befallen, *("una raspada", "unas raspadas", "otra raspada", "cacho arrancado", "cachito arrancado", "pedazo arrancado", "pedazo de foil arrancado", "pedazo sin foil", "cacho sin foil"), *(f"{lacks} {bit}" for lacks in ("le falta", "le faltaba", "le arranqué", "se le arrancó", "se le voló", "le volé") for bit in ("un cacho de foil", "un pedazo de foil", "un pedazo de papel", "un cacho de papel", "un cacho del foil", "un pedazo del foil"))])))
    rows.append(("delaminated", "|".join((*(f"parche {off}" for off in ("levantado", "despegado", "suelto", "mal pegado", "se levantó", "se despegó", "se soltó", "quedó suelto", "quedó levantado", "ya se despegó", "no pegó")), *(f"se {whom}{off} el parche" for whom in ("", "le ", "me ") for off in ("levantó", "despegó", "soltó", "cayó"))))))
    rows.append(("tear", "|".join(f"{whom}{did}" for whom in ("lo ", "la ", "me lo ", "me la ", "nos lo ") for did in ("rompieron", "patearon", "mordieron", "rompió", "trozaron"))))
    rows.append(("crushed", "|".join(f"{dropped} {harm}" for dropped in _DROPPED for harm in ("se golpeó", "se abolló", "se quebró", "se maltrató", "se sumió", "se le sumió", "se aplastó", "se dañó", "se golpeó feo", "se le quebró", "se rompió", "se partió", "se fregó"))))
    rows.append(("crushed", "|".join(f"{whom} {did} con {thing}" for whom, did in (("le", "pegué"), ("le", "pegó"), ("le", "pegaron"), ("le", "pegamos"), ("le", "di"), ("le", "dieron"), ("lo", "golpeé"), ("la", "golpeé")) for thing in _HIT_WITH)))
    rows.append(("crushed", "|".join(f"le {fell} {thing} encima" for fell in ("cayó", "cayeron", "dejaron caer", "dejé caer") for thing in ("una llave", "un martillo", "una herramienta", "un tubo", "una caja", "la escalera", "un fierro", "una pija", "el taladro", "un board", "una viga"))))
    rows.append(("crushed", "|".join(f"le {did} un {how} {said}" for did in ("di", "dieron", "dio", "pegué", "metí", "metieron", "pegaron", "acomodé") for how in _STRUCK for said in ("a la esquina", "en la esquina", "al foil", "en el foil", "a la orilla", "de un lado", "con la escalera", "con el andamio"))))
    return tuple(rows)


def no_harms() -> tuple[tuple[str, str], ...]:
    """ "se me quebró la navaja", "me machuqué el dedo": of a tool or of the man."""
    things = [f"{the} {thing}" for things, articles in ((_TOOLS, "la mi una las"), (_HE_TOOLS, "el mi un los")) for thing in things for the in articles.split()]
    unharmed = [f"{skin} no {was} {stem}o" for skin in ("foil", "papel", "forro", "facing") for was in ("está", "quedó", "viene", "salió") for stem in "rajad rasgad raspad rayad rot golpead abollad despegad levantad ampollad cortad picad arrugad pelad dañad maltratad".split()]
    broke = [f"se {whom}{broke} {thing}" for broke in _BROKE for whom in ("", "me ", "nos ") for thing in things]
    broke += [f"{the} {thing} {was} {hurt}{'a' if thing in _TOOLS else 'o'}" for things, articles in ((_OWN_TOOLS, "la mi"), (_HE_OWN_TOOLS, "el mi")) for thing in things for the in articles.split() for was in ("está", "anda", "quedó", "llegó", "venía", "viene") for hurt in "quebrad rot rajad golpead mojad dañad abollad aplastad ponchad quemad tronad jodid fregad amolad maltratad rayad".split()]
    broke += [f"se {whom}quebró {thing}" for whom in ("", "me ") for thing in ("el lápiz", "la punta del lápiz", "la punta de la navaja", "la hoja de la navaja")]
    broke += [f"me {hurt} {thing}" for hurt in _HURT for thing in things]
    broke += [f"me {hurt}" for hurt in _HURT if hurt not in ("corté", "pisé")]
    return (("NO_DAMAGE", "|".join(unharmed)), ("TRADE_NOISE", "|".join(broke)), ("WORD", "|".join(f"de un {at_once}" for at_once in ("golpe", "jalón", "trancazo", "madrazo")) + "|de golpe|de jalón|de puro trancazo|al puro trancazo|a madrazos|a chingadazos|a puro golpe|de volada|sin daño a terceros|da igual|qué daño hace|no hace daño|le hace daño"))
