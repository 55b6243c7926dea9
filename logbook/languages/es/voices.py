"""How different people say it in Spanish: on the radio, with one thumb, as a story. Not reviewed by a native speaker.

Rows like those of `es.py`, before which they are laid out, so that of two of one length these win.
"""

from __future__ import annotations

_MEASURED = ("ya la medí y son", "ya lo medí y son", "la medí bien y son", "lo medí bien y son", "la volví a medir y son", "lo volví a medir y son", "volví a medir y son", "ya medí y son", "medí otra vez y son", "ya medido son", "bien medido son",
             "ya la medí y es", "ya lo medí y es", "la volví a medir y es", "lo volví a medir y es")
_AGAIN = ("la corté de nuevo", "lo corté de nuevo", "la corté otra vez", "lo corté otra vez", "la hice de nuevo", "lo hice de nuevo", "la armé de nuevo", "lo armé de nuevo", "la repetí", "lo repetí")
_BRING = ("traigan", "manden", "consigan", "compren", "pidan", "encarguen", "surtan", "pásenme", "acérquenme", "súbannos", "tráigannos", "tráeme", "tráiganme", "tráenos", "tráete", "mándame", "mándenme", "mándanos", "consígueme", "consíganme", "pásame", "pásenme", "súbeme", "súbanme", "bájame", "alcánzame", "apártame")
_SCOLDED = ("me regañaron por", "me regañó por", "nos regañaron por", "me llamaron la atención por", "me gritaron por", "se quejaron por", "se quejaron de que", "me reclamaron por", "me reclamaron que", "me regañan por", "nos regañan por")

_TOO_BIG = tuple(f"no {whom}{verb} {thing}" for whom in ("", "me ", "nos ", "le ") for verb in ("cabe", "cabía", "cabia", "cupo", "entra", "entró", "entraba", "llega", "llegaba", "llegó", "llegaban", "alcanza", "alcanzaba", "alcanzó") for thing in ("la mano", "las manos", "el brazo", "la engrapadora", "la grapadora", "la pistola", "el rodillo", "la espátula", "la herramienta", "los dedos"))
# what is climbed, carried up or hung that is no duct
_CLIMBED = ("la escalera", "las escaleras", "a la escalera", "al andamio", "el andamio", "la herramienta", "las herramientas", "el material", "la caja", "las cajas", "el board", "los rollos", "al techo", "la lámina")
_HUNG_UP = ("el teléfono", "el celular", "la llamada", "el radio", "la herramienta", "la chamarra", "mi chamarra", "el casco", "la bolsa", "la extensión", "la lámpara", "las lámparas", "la luz")
_ELSEWHERE = "|".join([f"{verb} {thing}" for verb in ("subí", "subimos", "me subí", "nos subimos", "bajé", "bajamos") for thing in _CLIMBED] + [f"{verb} {thing}" for verb in ("colgué", "colgamos") for thing in _HUNG_UP])
# an act taken off again, by its thing: "quité las aletas"
_TAKEN_OFF = "|".join(f"{verb} {thing}" for verb in ("quité", "quitamos", "saqué", "sacamos", "arranqué", "arrancamos") for thing in ("la cinta", "el teip", "el tape", "las grapas", "las aletas"))

_JUST_ENOUGH = "|".join(f"{reached} {just}" for reached in ("alcanzó", "alcanzo", "me alcanzó", "alcanzaron", "me alcanzaron", "llegó", "quedó", "salió") for just in ("justo", "justito", "justa", "justas", "justos", "apenitas")) + "|justo alcanzó|justo me alcanzó|justo alcanzaron"
_STILL_ON = "|".join(f"{nobody} {took} {thing}" for nobody in ("nadie", "no", "nunca", "tampoco") for took in ("le quitó", "le quitaron", "le ha quitado", "le han quitado", "le arrancó", "le arrancaron", "le sacaron", "se le cayó", "se le cayeron", "se le despegó", "se le ha despegado", "se le ha caído", "se le levantó", "se le soltó", "se le soltaron") for thing in ("la cinta", "el teip", "el tape", "las grapas", "una grapa", "las aletas", "nada"))

# said of a joint, an end or a corner: it does not close
_CLOSES = "cierra cierran cerraba junta juntan juntó juntaron empata empataron casa casan casó casaron topa topan topó toparon ajusta ajustan ajustó ensambla ensamblan ensambló ensamblaron".split()
_PARTED = (
    *(f"no {whom}{closes}{how}" for whom in ("", "me ", "nos ", "le ", "se ") for closes in _CLOSES for how in ("", " bien", " parejo", " del todo")),
    *(f"no {whom}{would} {close}" for whom in ("", "me ", "nos ", "se ") for would in ("quiso", "quiere", "quisieron", "quieren", "queria", "quería", "alcanza a", "alcanzó a", "alcanzan a", "termina de", "acaba de") for close in ("cerrar", "juntar", "empatar", "casar", "embonar", "cerrarse", "juntarse")),
    *(f"no {was} {how}{closed}" for was in ("quedó", "quedo", "quedaron", "me quedó", "me quedaron", "está", "esta", "están", "estan") for how in ("", "bien ") for closed in ("cerrada", "cerradas", "ajustada", "ajustadas", "junta", "juntas", "casada", "empatada", "empatadas")),
    *(f"{was} {open}" for was in ("quedó", "quedo", "quedaron", "me quedó", "me quedaron", "nos quedó", "está", "están", "sigue", "siguen", "anda", "dejé", "la dejé", "se quedó") for open in ("entreabierta", "chueca y abierta", "separada", "separadas", "mal cerrada", "mal cerradas", "desfasada", "dispareja")),
    *(f"se {whom}{opens}" for whom in ("", "me ", "nos ", "le ", "está ", "anda ") for opens in ("abrió", "abrieron", "abriendo", "separó", "separando", "separaron") if not (whom in ("está ", "anda ")) == (not opens.endswith("ndo"))),
    *(f"{how}{stem}{end}" for how in ("", "medio ") for stem in ("entreabiert", "desunid", "desajustad", "desempatad", "desensamblad", "abiertit", "despatarrad") for end in ("o", "a", "os", "as")),
    *(f"mal {stem}{end}" for stem in ("cerrad", "empatad", "casad", "juntad", "embonad") for end in ("o", "a", "os", "as")),
    "bocona", "bocón", "boconas", "bocones", "abiertona", "abiertón", "bostezando", "medio bocona", "medio abiertona", "tirando aire", "fugando aire", "pasando aire", "aventando aire", "chiflando", "silbando",
    "deja pasar aire", "deja pasar el aire", "tira aire", "fuga aire", "se le va el aire", "se fuga el aire", "chifla", "chiflan", "silba", "silban", "bosteza", "le sopla aire", "avienta aire",
)

CONCEPTS: tuple[tuple[str, str], ...] = (
    ("DRAWING", "|".join(f"{whom} {asked} que" for whom in ("me", "nos") for asked in ("dijeron", "dijo", "pidieron", "pidió", "mandaron", "ordenaron", "encargaron", "habían dicho", "había dicho"))),
    ("FILLER", _STILL_ON),
    ("FILLER", "|".join(one for one in _JUST_ENOUGH.split("|") if not one.startswith(("quedó", "llegó", "salió")))),
    ("UNDONE", _TAKEN_OFF),
    ("VANES", "no quité las aletas|no quitamos las aletas|no saqué las aletas|no sacamos las aletas"),
    ("STAPLES", "no quité las grapas|no quitamos las grapas|no saqué las grapas"),
    ("TAPE", "no quité la cinta|no quitamos la cinta|no quité el teip|no arranqué la cinta"),
    ("DIRTY", "había polvo"),
    ("TRADE_NOISE", _ELSEWHERE),
    ("NOT_DONE", "las dejé fuera|los dejé fuera|la dejé fuera|lo dejé fuera|las dejamos fuera|las dejé afuera|las dejamos afuera"),
    ("GAP", "|".join(f"{seen} {some} luz" for seen in ("se ve", "se le ve", "se mira", "se asoma", "entra", "le entra", "pasa", "se cuela", "se nota") for some in ("tantita", "poquita", "un poco de", "un poquito de", "algo de", "una rayita de", "mucha"))),
    ("GAP", "|".join(f"{was} con {gap}" for was in ("quedó", "quedo", "me quedó", "me quedo", "nos quedó", "quedaron", "está", "salió", "anda", "se quedó", "sigue") for gap in ("luz", "una luz", "una luz de", "luz de"))),
    ("GAP", "|".join(f"{hole} {of} {joint}" for hole in ("hoyo", "hoyito", "hoyos", "hoyitos", "agujero", "agujerito", "agujeros", "rajita", "rajada", "rajadita", "hueco", "huecos", "boquete", "abertura", "ranura") for of in ("en la", "en una", "por la", "entre la", "en las") for joint in ("junta", "juntas", "costura", "costuras", "unión", "uniones") if of.endswith("s") == joint.endswith("s"))),  # no harm of the board
    ("GAP", "|".join(f"{seen} la luz" for seen in ("se ve", "se le ve", "se mira", "se le mira", "se asoma", "le entra", "se cuela", "se nota", "se le cuela"))),
    ("TIGHT", "no se ve la luz|no se le ve la luz|no se mira la luz|no se cuela la luz|no le entra la luz"),
    ("GAP", "se le ve una ranura|se ve una ranura|quedó una ranura|le quedó una ranura|hay una ranura|tiene una ranura|grieta|una grieta|rendijita|huequito|hueco chico|aberturita|separación de la junta|no empató|no empató bien|no embonó|no embonó bien|no ensambló|no ensambló bien|no empataron|una luz de|luz de|le quedó luz|quedó luz|se ve luz|le entra luz|se cuela luz|se mira luz|dejó luz|tiene luz|le quedó una luz"),
    ("PARTED", "|".join(_PARTED)),
    ("SHIFT", "a partir de ahorita|a partir de ahora|a partir de hoy|de aquí en adelante|de ahora en adelante|desde hoy|para este turno|buenas tardes|buenas noches|hoy con|hoy toca|hoy va con|hoy vamos con|lo de hoy|hoy estamos con|hoy nos toca|hoy traemos|hoy traigo|hoy usamos|hoy uso|hoy llevamos|hoy vamos a usar|hoy vamos con|hoy andamos con|hoy trabajamos con|el día de hoy"),
    ("FLAP", "aleta para engrapar|aletas para engrapar|aleta para grapar|aletas para grapar|pestaña para engrapar|pestaña para grapar|solapa para engrapar|solapa para grapar|ceja para engrapar|ceja para grapar|lengüeta para engrapar|la aleta de engrapar|aletas de engrapar|aleta de grapar"),
    ("FIX", "|".join(_MEASURED)),
    ("REDID", "|".join(_AGAIN)),
    ("REMIND", "|".join(_BRING)),
    ("NOT_LOGGED", "|".join(_SCOLDED)),
    ("FILLER", "si supieras|si vieras|si supieran|si vieran|si viera|si supiera|ándale|fíjese|fíjese que|fijate que|fíjate que|mire usted|vos|órale|híjole|afirmativo|copiado|enterado|compa|jefe|patrón|maestro"),
    ("NO", "negativo en|negativo en las|negativo en la|negativo en los|negativo en el|negativo con|negativo de|negativo a|sin nada de|nada de"),
    # one thumb: "de" and "que" by their letter
    ("LONG", "d largo|d lgo|de lgo|lgo"),
    ("SAME_AS", "igual q|igual q la|igual q el|igual a la|lo mismo q|misma q|mismo q"),
    ("NOT", "no c|ni c"),
    ("STAPLED", "grpada|grpado|engrpada|engrpado|grapda|grapdo|engrapda|engrapdo|grpda|grpdo"),
    ("TAPED", "encntada|encntado|encintda|encintdo|encntda|encntdo|tpeada|tpeado|teipda"),
    ("RUBBED", "|".join(f"{bien}{done} con {tool}" for bien in ("", "bien ") for done in ("pasado", "pasada", "asentado", "asentada", "aplanado", "aplanada", "apretado", "apretada", "planchado", "planchada", "repasado", "repasada") for tool in ("la espátula", "espátula", "la paleta", "la cuña", "la tarjeta", "el squeegee", "squeegee", "el rodillo", "la uña", "rodillo", "tarjeta"))),
    ("RUBBED", "tallda|talldo|tllada|tllado|tllda"),
    ("TABS", "pestañas de tape|pestañas de teip|tiras de tape|tiras de teip|tiritas de tape|tiritas de teip|tiritas de cinta|pestañitas de tape|pestañitas de cinta|pestañitas"),
    ("FACING", "facing|el facing|forro|el forro|foil|el foil"),
    ("CLINCHED", "la grapa abierta|con la grapa abierta|las grapas abiertas|con las grapas abiertas|la pata abierta|con la pata abierta|las patas abiertas|con las patas abiertas|con la pata volteada|con las patas volteadas|con la pata doblada|con las patas dobladas|la pata volteada|las patas volteadas|la pata doblada|las patas dobladas|con la puntita volteada|con las puntas volteadas"),
    ("APART", "entre grapa y grapa|entre colgador y colgador|entre soporte y soporte|entre colgante y colgante|entre pestaña y pestaña|entre tornillo y tornillo|entre una grapa y otra|entre cada grapa"),
    ("WORD", "no hallé|no encontré"),
    ("WORD", "|".join(_TOO_BIG)),
    ("WORD", "|".join(f"{blades} {of}" for blades in ("aspas", "las aspas") for of in ("del ventilador", "del abanico", "del extractor", "de ventilador"))),
    ("WORD", "no les falta ninguna|no le falta ninguna|no le falta ninguno|no les falta nada|no le falta nada|no les falta|no les faltan"),
    ("NO", "s/"),
    ("PREHEATED", "precalentar la superficie primero"),
)

_SLEEVES = (
    *(f"{sleeve} {of} {damper} {fire}" for sleeve in ("manga", "sleeve", "manguito", "camisa", "funda") for of, damper in (("del", "damper"), ("de", "damper"), ("de la", "compuerta"), ("de", "compuerta")) for fire in ("cortafuego", "cortafuegos", "contra fuego", "contra incendio", "contra incendios", "de fuego", "de humo")),
    *(f"{sleeve} {of}fire damper" for sleeve in ("manga", "sleeve", "manguito", "camisa", "funda") for of in ("del ", "de ", "")),
)

# "caja" is a plenum only beside its number: see `compose`
KINDS: tuple[tuple[str, str], ...] = (
    ("damper_sleeve", "|".join(_SLEEVES)),
    ("straight", "rcta|rct|rcto|recta tipo|tmo"),
    ("transition", "rduccion|rdccion|reducc|trnsicion|trans|transi|reduc"),
    ("elbow", "cdo|codo a escuadra"),
    ("tee", "tees|tés|tís"),
    ("end_cap", "tpa|tapita ciega"),
    ("collar", "clln|colln|collrn"),
    ("offset", "ofset|offst"),
)

SIDES: tuple[tuple[str, str], ...] = (
    ("left", "izq|izq.|izqda|lado izq|por la izq|la izq|izqrda"),
    ("right", "der|der.|dcha|drcha|lado der|por la der|la der|drecha"),
    ("top", "arr|por la tapa|por la cara de arriba"),
    ("bottom", "abj|abjo"),
)

CLOSURES: tuple[tuple[str, str], ...] = (
    ("other_tape", "|".join(f"{put} de la {grey}" for put in ("puse", "le puse", "usé", "le eché", "eché", "pusimos", "le pusimos", "le metí", "le di con") for grey in ("gris", "plateada", "gris de ducto", "plateada de ducto", "de ducto", "de tela", "gris de tela", "plateada de tela", "negra", "canela"))),
    ("other_tape", "es de tela|era de tela|es cinta de tela|es tape de tela|es de la gris|es de ducto|es del gris|es de plomero|es de pintor|es de empaque|es de la plateada|era de la gris|es de la de tela"),
)
