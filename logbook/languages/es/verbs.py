"""Forms of the Spanish verbs of the trade, made from their stems: a table is shorter than a list of every form, and misses none.

Past forms with the speaker or "se" say that a thing is done, infinitives and the present say that it is not done yet
("lo encinto mañana"). Ears and thumbs leave accents out, so "engrape" is "engrapé". Not reviewed by a native speaker.
"""

from __future__ import annotations

# stem of a verb in -ar, concept when done, concept when it is to be done (None: not told apart)
VERBS: tuple[tuple[str, str, str | None], ...] = (
    *((stem, "STAPLED", "STAPLE") for stem in ("engrap", "grap", "grape", "engrape", "estaple", "estapl", "estapli", "grapi", "abroch", "corchete", "corcheti", "staple", "stapl", "stapli")),
    *((stem, "TAPED", "TAPE_IT") for stem in ("encint", "cint", "teip", "teipe", "teipi", "tape", "tapi", "taipe", "taipi", "enhuinch")),
    *((stem, "RUBBED", "RUB") for stem in ("tall", "frot", "restreg", "refreg", "sob", "alis", "planch", "bruñ", "aplan", "estreg", "rube", "rubi", "espatul", "espatule")),
    *((stem, "WIPED", "WIPE") for stem in ("limpi", "desempolv")),
    *((stem, "PREHEATED", "HEAT_IT") for stem in ("precalent", "calent", "entibi", "preheate")),
    *((stem, "HUNG", "HANG") for stem in ("colg", "mont", "instal", "guind")),
    *((stem, "BENT", None) for stem in ("dobl", "volte", "aplast")),
    *((stem, "REPAIRED", "REPAIR_IT") for stem in ("repar", "parch", "arregl", "remend", "resan")),
)
_NOT_MADE = frozenset(("cinto", "cinte", "tapa", "tapas", "grapa", "grapas", "tape", "monto", "instalo", "tapado", "doble", "aplastado", "aplastada", "sobe", "mont", "monte"))
_NOT_SO = ("ara", "aran", "áramos", "aría", "arían", "aríamos", "ará", "arán", "aba", "aban", "ábamos")  # "le dije que lo encintara", "yo lo encintaría", "lo encintaba cuando"
_AT_LAST = ("se procedió a", "procedí a", "procedimos a", "volví a", "volvimos a", "acabo de", "acabamos de", "acabé de", "terminé de", "terminamos de", "alcancé a")
_THEM = ("", "lo", "la", "los", "las", "le", "les", "se", "selo", "sela")


def _before_e(stem: str) -> str:
    """The stem before e: colgué, restregué; limpié stays."""
    return stem + "u" if stem.endswith("g") else stem


def forms() -> tuple[tuple[str, str], ...]:
    """(concept, "form|form|…") rows of all verbs."""
    rows: dict[str, list[str]] = {}
    for stem, done, to_do in VERBS:
        past = [f"{stem}{end}" for end in ("ado", "ada", "ados", "adas", "adito", "adita", "aditos", "aditas", "amos", "aron", "ao", "aos", "aíto", "aíta", "aítos", "aítas", "á")]
        past += [f"{_before_e(stem)}é", f"{stem}ó", f"se {stem}o", f"{_before_e(stem)}e", f"{_before_e(stem)}ee"]
        rows.setdefault(done, []).extend(form for form in past if form not in _NOT_MADE)
        if to_do is not None:
            rows.setdefault(to_do, []).extend(f"{stem}ar{them}" for them in _THEM)
            rows[done].extend(f"{at_last} {stem}ar{them}" for at_last in _AT_LAST for them in _THEM[:6])
            rows[to_do].extend(f"{stem}{end}" for end in _NOT_SO)
            rows[to_do].extend(form for form in (f"{stem}o", f"{stem}amos al rato", f"{stem}aremos", f"{stem}aré", f"{stem}are") if form not in _NOT_MADE)
    return tuple((concept, "|".join(dict.fromkeys(words))) for concept, words in rows.items())


# what was cut off at the cut, said with any verb of cutting
_CUT_OFF = ("recorté", "recortamos", "quité", "quitamos", "corté", "cortamos", "rebajé", "rebajamos", "emparejé", "le recorté", "le quité", "le corté", "le rebajé", "se recortó", "se quitó", "recortado", "recortada", "quitado", "quitada", "ya quité", "cortado", "cortada", "rasuré", "le rasuré")
_CUT_TO_DO = ("recortar", "recortarle", "quitar", "quitarle", "cortar", "cortarle", "rebajar", "rebajarle", "emparejar", "recorto", "quito", "le quito", "le recorto")
_LEFT_OVER = ("el sobrante", "la fibra", "la fibra sobrante", "la fibra que sobraba", "fibra", "la fibra de más", "el aislante", "el aislante sobrante", "el aislante que sobraba", "el aislamiento", "el aislamiento sobrante",
              "el aislamiento que sobraba", "el exceso", "el exceso de fibra", "el exceso de aislante", "lo que sobraba", "lo que sobra", "la fibra que sobra", "el sobrante de fibra", "el sobrante de aislante", "sobrante", "la lana", "la lana sobrante")


def trimmings() -> tuple[tuple[str, str], ...]:
    done = [f"{verb} {noun}" for verb in _CUT_OFF for noun in _LEFT_OVER]
    done += [f"{noun} {verb}" for verb in ("recortado", "recortada", "quitado", "quitada", "cortado", "cortada") for noun in ("sobrante", "fibra", "fibra sobrante", "exceso", "aislante", "aislante sobrante")]
    return (("TRIMMED", "|".join(done)), ("TRIM", "|".join(f"{verb} {noun}" for verb in _CUT_TO_DO for noun in _LEFT_OVER)))


# dust, and what is run over the facing to take it off
_DUST = ("le quité el polvo", "quité el polvo", "le quitamos el polvo", "le sacudí el polvo", "sacudí el polvo", "lo sacudí", "la sacudí", "le soplé el polvo", "soplé el polvo", "le soplé", "lo soplé", "la soplé", "lo sequé", "la sequé", "sequé",
         "le pasé un trapo", "le pasé el trapo", "pasé un trapo", "pasé el trapo", "le pasé la franela", "le pasé una franela", "le pasé un trapo seco", "le pasé un trapo limpio", "le dimos una limpiada", "le di una limpiada", "le di una limpiadita",
         "le di su limpiada", "le di su limpiadita", "limpiecito", "limpiecita", "limpito", "limpita", "le di con el trapo", "le di un trapazo", "lo trapeé", "le pasé la estopa", "le pasé estopa", "le pasamos un trapo", "le pasamos la franela")
_PRESSED = ("le pasé la espátula", "le pasé la cuña", "le pasé la paleta", "le pasé la tarjeta", "le pasé el rodillo", "le pasé el squeegee", "le pasé la plancha fría", "pasé la espátula", "le di con la espátula", "le di con la cuña", "le di con la paleta",
            "le di con el squeegee", "le di con el rodillo", "le di con la tarjeta", "le pasamos la espátula", "le pasamos la cuña", "le dimos con la espátula", "le di su tallada", "le di una tallada", "le di su tallón", "le di una buena tallada", "le dimos su tallada",
            "le hice el rub down", "pasada con la espátula", "con su tallada", "bien presionada", "bien presionado", "presionada", "presionado", "la presioné", "lo presioné", "bien aplastada la cinta", "le di con la uña", "apreté la cinta", "la apreté con la espátula")


_STRIPS = ("tabs", "tiras", "tiritas", "tirillas", "pestañas", "cintas", "pedazos", "parches", "tabs de tape", "tabs de cinta", "tabs de teip", "tiras de tape", "tiras de cinta", "tiras de teip", "tiritas de cinta", "tiritas de tape", "pestañas de cinta", "pestañas de tape", "pedazos de cinta", "pedazos de tape")
_ACROSS = ("cruzados", "cruzadas", "atravesados", "atravesadas", "en cruz", "de través", "al través", "transversales", "a lo ancho", "atravesaditas", "cruzaditas", "encontradas")


def strips() -> tuple[tuple[str, str], ...]:
    """Tabs of tape across a joint: "tiras de tape atravesadas", "tabs cruzados"."""
    return (("TABS", "|".join(f"{strip} {across}" for strip in _STRIPS for across in _ACROSS) + "|tabs de tape|tabs de teip|cross tabs de tape|cross tabs de cinta|tiras de tape|tiras de teip"),)


# nothing befell it
_NO_HARM = tuple(f"{no} {harm}" for no in ("cero", "sin", "ningún", "ni un", "ni un solo", "nada de") for harm in ("daño", "daños", "golpe", "golpes", "rasguño", "rasguños", "hoyos", "roturas", "rasgaduras", "raspones", "desperfectos", "daño en el foil"))
# who else is on a site, and "la otra cuadrilla" they are of
_PEOPLE = ("super", "superintendente", "compa", "chalán", "chalan", "ayudante", "compañero", "plomero", "eléctrico", "electricista", "pintor", "inspector", "mayordomo", "capataz", "supervisor", "encargado", "ingeniero", "fierrero", "tablaroquero", "muchacho", "chavo", "aprendiz", "helper", "foreman", "jefe", "patrón", "boss", "vecino", "güero", "nuevo", "maestro")
_WHOSE = ("el {}", "un {}", "mi {}", "el otro {}", "al {}", "a mi {}", "a un {}", "los {}s", "unos {}s", "a los {}s")


_DRAWN_OFF = ("de extracción", "de la extracción", "de escape", "de exhaust", "extracción", "exhaust", "extractor", "escape", "ducto de extracción", "extracción de aire", "campana", "línea de extracción", "la extracción", "el exhaust", "el extractor", "salida de humos")
_HOODS = ("de la cocina", "de cocina", "de la campana", "de campana", "de la campana de la cocina", "de la campana de cocina", "del laboratorio", "de humos", "de la freidora", "de la parrilla", "de la estufa", "de la plancha", "de la parrilla y la cocina", "de cocina industrial")


def hoods() -> str:
    """Exhaust that comes from a hood: "el exhaust de la cocina"."""
    return "|".join(f"{drawn} {hood}" for drawn in _DRAWN_OFF for hood in _HOODS)


_RULERS = ("el detalle", "la spec", "el spec", "las specs", "los specs", "la norma", "el manual", "el código", "el submittal", "el arquitecto", "el cliente", "el contratista", "la hoja técnica", "la orden", "el fabricante", "la guía del fabricante")
_RULE = ("pide", "piden", "dice", "dicen", "marca", "marcan", "quiere", "manda", "exige", "exigen", "lleva", "ordena")


def asked_for() -> tuple[tuple[str, str], ...]:
    """What a standard or somebody above asks for: "el detalle pide"."""
    return (("DRAWING", "|".join(f"{who} {says}" for who in _RULERS for says in _RULE)),)


def people() -> tuple[tuple[str, str], ...]:
    who = [said.format(one) for one in _PEOPLE for said in _WHOSE if not (one == "nuevo" and "el" not in said)]
    crews = ("la otra cuadrilla", "la cuadrilla de al lado", "la cuadrilla de arriba", "la cuadrilla de abajo", "la otra gente", "los de la otra cuadrilla", "los de la noche", "los del otro turno", "los del turno de noche", "los de la mañana", "los del otro piso", "la otra pareja", "los otros muchachos", "los otros")
    return (("OTHER", "|".join((*who, *crews))),)


# run over with whatever lies flat: "la pasé con la espátula", "ya la fregué con una regla"
_FLAT_TOOLS = tuple(f"{article} {tool}" for tool, articles in (("espátula", "la una"), ("regla", "la una"), ("cuña", "la una"), ("paleta", "la una"), ("tarjeta", "la una"), ("llana", "la una"), ("uña", "la"), ("squeegee", "el un"), ("rodillo", "el un"), ("plástico", "el un"), ("palito", "el un"), ("tallador", "el un")) for article in articles.split())
_RAN_OVER = ("pasé", "pasamos", "repasé", "repasamos", "fregué", "apreté", "apretamos", "asenté", "asentamos", "raspé", "planché", "presioné", "aplasté", "pasada", "repasada", "apretada", "asentada", "presionada", "pasado", "repasado")


def run_over() -> tuple[tuple[str, str], ...]:
    return (("RUBBED", "|".join(f"{it}{did} {how}con {tool}" for it in ("", "la ", "lo ", "se la ", "le ") for did in _RAN_OVER if it != "le " or did.endswith("é") for how in ("", "bien ") for tool in _FLAT_TOOLS)),)


def sayings() -> tuple[tuple[str, str], ...]:
    return (("WIPED", "|".join(_DUST)), ("RUBBED", "|".join(_PRESSED)), ("NO_DAMAGE", "|".join(_NO_HARM)), *run_over(), *strips(), *people(), *asked_for(), *trimmings())


# what befell the facing, as a verb: "se mojó", "se nos mojó", "lo pisaron"
_BEFALLS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("wet", ("moj", "empap", "ensop")),
    ("tear", ("rasg", "raj", "desgarr", "rasp", "troz")),
    ("puncture", ("ponch", "perfor", "agujer", "pinch")),
    ("crushed", ("golpe", "apachurr", "machuc", "aboll", "aplast", "magull", "sumi")),
)
_TORE = ("rompió", "rasgó", "rajó", "abrió", "cortó", "trozó", "desgarró", "tronchó", "jaló", "arrancó")
_TORE_IT = ("raspé", "raspamos", "rayé", "rayamos", "arañé", "rasguñé", "rompió", "rompieron", "rasgó", "rasgaron", "rajó", "rajaron", "rompí", "rasgué", "rajé", "desgarré", "desgarró", "desgarraron", "tronchó", "troncharon")
_INTO = ("le entró", "le metí", "le metió", "le metieron", "se le metió", "le clavé", "le clavó", "le clavaron", "le encajé", "le encajó", "le encajaron", "le enterré", "le enterró", "le atravesé", "le atravesaron")
_POINTED = ("el destornillador", "un destornillador", "la pistola", "el desarmador", "un desarmador", "la escalera", "una escalera", "el taladro", "un tornillo", "el tornillo", "una punta", "un clavo", "el pie", "la rodilla", "un tubo", "el tubo", "la navaja", "el cuchillo", "una varilla", "la varilla", "un fierro", "el andamio")
_SKINS = ("la cara", "el foil", "el forro", "el papel", "el facing", "el aluminio", "la cubierta", "la barrera", "un pedazo de foil", "un pedazo del foil", "un pedazo de papel", "tantito el foil", "tantito el papel")
_BEFELL: tuple[tuple[str, str], ...] = (
    ("wet", "le cayó agua|le cayó agua encima|le entró agua|le llovió|se le metió el agua|le cayó la lluvia|agarró agua|agarró humedad|le escurrió agua|le goteó agua|amaneció mojado|amaneció mojada|llegó mojado|llegó mojada|mojadito|mojadita|chorreando|empapado de agua|está húmedo|está húmeda|quedó húmedo|quedó húmeda|con humedad"),
    ("tear", "raya profunda|rayón profundo|rayón|rayones|tajada|se le rompió el foil|se le rompió el papel|se rompió el foil|se rompió el papel|rajón|rajadita|rasgada|rasgadita|rajada|rotura|rotito|un rompido|cortadita|una cortada|tajo|se trozó"),
    ("puncture", "piquete|ponchón|ponchadura|hoyo|hoyito|hoyote|boquete en el foil|un piquetito|le hicieron un hoyo|le picaron|lo picaron|la picaron"),
    ("crushed", "|".join(f"{whom} {did} {where}" for whom in ("me", "nos", "le", "se le") for did in ("aplastaron", "apachurraron", "abollaron", "machucaron", "golpearon", "sumieron", "aplastó", "apachurró") for where in ("la esquina", "una esquina", "las esquinas", "la orilla", "una orilla", "la punta"))),
    ("crushed", "sumido|sumida|le pisaron la esquina|le pisaron|lo pisaron|la pisaron|golpes|golpecito|un trancazo|chipote|le dieron un golpe|le pegaron|lo aplastaron|la aplastaron|aplastadito|hundimiento|le cayó algo encima"),
)
UNHARMED = (
    "no se mojó|no está mojado|no está mojada|nunca se mojó|no se ha mojado|no le cayó agua|no está roto|no está rota|no está rasgado|no está golpeado|no está golpeada|no tiene golpes|no tiene ningún golpe|no trae golpes|no tiene roturas"
    "|no trae roturas|no tiene hoyos|no trae hoyos|no trae daños|ni un rasguño|sin un rasguño|el foil está bueno|el foil está sano|foil bueno|foil sano|no le pasó nada|todo sano|sin golpes ni roturas|ni golpes ni roturas|no se golpeó|no se rompió|no se rasgó|nada roto|nada dañado|sin ningún golpe|sin hoyos|ningún hoyo|ningún golpe|ninguna rasgada"
)


def befallings() -> tuple[tuple[str, str], ...]:
    rows = []
    for damage, stems in _BEFALLS:
        said = [f"se {whom}{stem}ó" for stem in stems for whom in ("", "me ", "nos ", "le ")]
        said += [f"{whom} {stem}aron" for stem in stems for whom in ("lo", "la", "le", "nos lo", "nos la", "me lo", "me la")]
        said += [f"{whom} {stem}ó" for stem in stems if damage == "wet" for whom in ("lo", "la")]
        rows.append((damage, "|".join(said)))
    scraped = [f"{skin} {was}{how}" for skin in ("cara", "foil", "forro", "papel", "aluminio", "superficie") for was in ("", "quedó ", "está ", "salió ", "llegó ", "viene ") for how in ("raspado", "raspada", "tallado feo", "rayado", "rayada")]
    tore = [*scraped, *(f"{verb} {skin}" for verb in _TORE_IT for skin in _SKINS)]
    holed = [f"{hole} {to} {skin}" for hole in ("hueco", "huequito", "huequillo", "abertura", "boquete") for to in ("en", "a") for skin in _SKINS[:7]]
    holed += [f"{hole} al {skin}" for hole in ("hueco", "huequito", "boquete") for skin in ("foil", "forro", "papel", "facing", "aluminio", "panel")] + [f"{hole} en el panel" for hole in ("hueco", "huequito", "boquete")]
    tore += [f"se {whom}{verb} {skin}" for verb in _TORE for whom in ("", "me ", "nos ", "le ") for skin in _SKINS]
    return (*rows, ("tear", "|".join(tore)), ("puncture", "|".join(holed)), ("puncture", "|".join(f"{into} {tool}" for into in _INTO for tool in _POINTED)), *_BEFELL)


# an opening that is meant is no harm
_OPENED = ("corté", "cortamos", "abrí", "abrimos", "hice", "hicimos", "saqué", "marqué", "tracé", "le corté", "le abrí", "le hice", "ya estaba cortado", "ya estaba hecho", "ya estaba")
_OPENINGS = ("agujero", "hoyo", "boquete", "agujerito", "hoyito", "orificio", "hueco")


def openings() -> tuple[tuple[str, str], ...]:
    said = [f"{did} {article} {hole} {to}" for did in _OPENED if not did.startswith("ya") for article in ("el", "un", "su") for hole in _OPENINGS for to in ("para", "de", "del")]
    said += [f"{article} {hole} {was}" for article in ("el", "un", "ese") for hole in _OPENINGS for was in ("ya estaba cortado", "ya estaba hecho", "ya venía cortado", "ya venía hecho", "ya estaba marcado", "ya lo habían cortado", "para la", "para el", "de la toma", "de la salida", "de la derivación", "del collarín", "del tap", "del ramal", "de la boca")]
    return (("WORD", "|".join(said)),)


_TAPES = ("cinta", "teip", "tape", "taip", "teipe", "la cinta", "el teip", "el tape", "huincha", "la huincha")
_UNLISTED = (
    "negro", "azul", "canelo", "transparente", "amarillo", "barato", "chafa", "chino", "corriente", "común", "genérico", "de electricista", "de papel", "de tablaroca", "barata", "de vinil", "de vinilo", "de embalar", "del súper", "china", "de caja", "de cajas", "de cartón", "doble cara", "de doble cara", "de butilo", "gorila", "gaffer", "de gaffer", "de alfombra", "aislante", "de la tiendita", "de la tlapalería", "de teflón", "mágica", "de rafia", "de montaje", "chafa", "de la chafa", "cualquiera", "de electricidad", "de jardín", "de hule", "de plástico", "amarilla", "roja", "de precaución", "de oficina", "scotch", "de regalo",
    "americana", "adhesiva", "de carrocero", "gris de tela", "gris", "de tela", "de tela gris", "plateada", "plateado", "plateada de tela", "plateado de tela", "de ducto", "común", "ordinaria", "de la común", "de la gris", "de la ordinaria", "de aislar", "canela", "masking", "adhesiva gris", "industrial",
    "de empaque", "de las cajas", "de pintor", "de plomero", "negra", "de electricista", "eléctrica", "de la ferretería", "gris de la ferretería", "de ferretería", "transparente", "de los plomeros", "de plomería", "de los eléctricos", "de pintores", "de empacar", "de embalaje", "de paquetería", "de la tienda", "normal", "genérica", "de la genérica", "pirata", "café", "de trapo", "de la de tela", "cualquiera", "de lona", "de la de lona", *(f"de la que usan los {who}" for who in ("pintores", "plomeros", "eléctricos", "electricistas", "de los muebles", "empacadores")), "de la barata",
)
_PRESSURE = ("de presión", "a presión", "de la de presión", "sensible a la presión", "sensitiva a la presión", "de contacto", "adhesiva de presión")
_HEAT = ("de calor", "de plancha", "de planchar", "térmica", "al calor", "de la de calor", "activada por calor", "activada con calor", "termoactivada", "de la de plancha")


_PUT_ON = ("usé", "usamos", "puse", "le puse", "pusimos", "le eché", "eché", "le metí", "agarré", "terminé con", "cerré con", "fue con", "va con")
_NO_DUCT = ("azul", "de papel", "de empacar", "transparente", "negra", "americana gris", "chafa", "barata", "de tela", "de lona", "de ducto", "de los plomeros", "de los eléctricos", "de los electricistas", "de pintor", "canela", "gris", "de empaque", "de aislar", "americana", "de la ferretería", "corriente")


def tapes() -> tuple[tuple[str, str], ...]:
    rows = (("tape_pressure", _PRESSURE), ("tape_heat", _HEAT), ("other_tape", _UNLISTED))
    return (*((closure, "|".join(f"{noun} {sort}" for noun in _TAPES for sort in sorts)) for closure, sorts in rows), ("other_tape", "de la gris|de la plateada|de la ferretería"), ("other_tape", "|".join(f"{put} la {sort}" for put in _PUT_ON for sort in _NO_DUCT)))


_TURNED = ("mira", "da", "ve", "apunta", "queda", "quedó", "me quedó", "nos quedó", "mirando", "viendo", "apuntando", "quedando")
_WAYS = (
    ("INSIDE", ("para adentro", "hacia adentro", "pa dentro", "pa' dentro", "pa adentro", "adentro", "por dentro", "por adentro", "al interior", "hacia el interior", "hacia dentro", "para dentro", "del lado de adentro", "al lado de adentro", "para el interior")),
    ("OUTSIDE", ("para afuera", "hacia afuera", "pa fuera", "pa' fuera", "pa afuera", "afuera", "por fuera", "por afuera", "al exterior", "hacia el exterior", "hacia fuera", "para fuera", "del lado de afuera", "al lado de afuera", "para el exterior")),
)


def looking() -> tuple[tuple[str, str], ...]:
    return tuple((concept, "|".join(f"{verb} {way}" for verb in _TURNED for way in ways)) for concept, ways in _WAYS)


def present() -> frozenset[str]:
    """ "encinto", "talla": what is done at other times; "encintó" without its accent only behind "se"."""
    return frozenset(f"{stem}{end}" for stem, _, _ in VERBS for end in "oa")


_JOINED = tuple(f"{word}{ending}" for word in (
    "unid", "conectad", "amarrad", "empatad", "enganchad", "ensamblad", "embonad", "acoplad",
) for ending in ("o", "a", "os", "as"))
_JOINS = ("uní", "conecté", "junté", "empaté", "enganché", "ensamblé", "acoplé", "amarré", "unimos", "conectamos", "juntamos", "empatamos", "ensamblamos", "pegamos", "pegué")
_WITH_WHAT = ("a", "al", "a la", "a el", "con", "con el", "con la", "a la pieza", "con la pieza", "a la número", "con la número", "al número", "con el número")


def joinings() -> tuple[tuple[str, str], ...]:
    said = [f"{word} {to}" for word in _JOINED for to in _WITH_WHAT if not (word.startswith("junt") and to.startswith("a"))]  # "junto a la diez": beside it
    said += [f"{word} {to}" for word in ("pegado", "pegada", "pegados", "pegadas") for to in _WITH_WHAT if to.startswith("a")]
    said += [f"{it} {verb} {to}" for it in ("lo", "la", "se") for verb in _JOINS for to in _WITH_WHAT if not (verb.startswith("peg") and to.startswith("con"))]
    return (("TIED", "|".join(said)),)


def changed() -> tuple[tuple[str, str], ...]:
    """ "le cambié la cinta": the tape is new, nothing was mended."""
    who = [f"{whom}{verb}" for whom in ("", "le ", "se la ") for verb in ("cambié", "cambiamos", "reemplacé")]
    return (("TAPED", "|".join(f"{did} {tape}" for did in who for tape in ("la cinta", "el tape", "el teip", "toda la cinta"))), ("STAPLED", "|".join(f"{did} {staples}" for did in who for staples in ("las grapas", "todas las grapas", "la grapa"))))


def lacking() -> tuple[tuple[str, str], ...]:
    """What was not at hand, told as the reason for what was used, and what ran out: neither says what the piece has."""
    none = ("no hay", "no había", "no hubo", "no tenía", "no tenemos", "no teníamos", "ya no hay", "ya no había", "no encontré", "no traían")
    other = ("de dos", "de tres", "de cuatro", "de tres pulgadas", "de la de tres", "de otra", "de otro", "otra", "otro", "más ancha", "más ancho", "de la ancha", "de la buena", "de las buenas", "más larga", "más largas", "de las largas")
    ran = ("acabaron", "terminaron")
    gone = ("las aletas", "los álabes", "las venas", "las guías", "las vanes")
    return (
        ("WORD", "que seque|que se seque|que sequen|que acabe de secar"),
        ("TRADE_NOISE", "|".join(f"{lack} {one}" for lack in none for one in other)),
        ("TRADE_NOISE", "|".join(f"{whom} {out} {thing}" for whom in ("se", "se me", "se nos") for out in ran for thing in gone)),
    )
