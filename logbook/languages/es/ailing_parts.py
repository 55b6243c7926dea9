"""Spanish that tells that a part of the duct is not as it should be, with the words in either order: "la esquina anda güanga", "traigo toda mocha la ceja".

As in `ailing.py`, it is asked whether what was said of the part holds. Without accents. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.ailing import BAD, BROKEN, BY_NONE, CREASED, CROOKED, IS, LOOSE, SO, UNDENIED, WENT, verb

# what it was left as, what one has it as: before what ails it and the part behind
_HAS = r"(?:(?:qued|sali|est[ao]|estab|and[oa]|dej[eoa]|tien|teng|ten[ei]|tra[ei]|trai?g|vien|veng|ven[ei]|llev|puse|puso|pusi|meti|pegu|fue|iba|mir[ao])\w*|se (?:le )?ven?)"
_VERY = r"(?:bien|muy|medio|todo|toda|todas|todos|algo|tantito|poquito|bastante)"
_THE = r"(?:el|la|los|las|su|sus|un|una|esa|ese|esta|este|toda la|todo el|todas las|todos los)"

_OPEN = (
    r"(?:(?:entreabiert|abiertit|distanciad|desunid|desajustad|desempatad|desensamblad|desacoplad|holgad|destapad|separad|despatarrad)[oa]s?|bocon(?:a|es|as)?|abierton(?:a|es|as)?|bostezando"
    r"|con (?:(?:un|una|unos|unas|mucho|mucha|tantit[oa]|poquit[oa]|algo de) )*(?:luz|lucecita|hueco|huecos|huequitos?|claro|clarito|espacio|espacito|boquete|rendijas?|rendijita|ranura|ranurita|raja|abertura|aberturita|juego|fuga)|(?:tir|fug|pas|avent|sac|chifl|silb)ando(?: (?:el )?aire)?"
    r"|sin (?:cerrar|juntar|asentar|ajustar|empatar|casar|embonar|sentar)|mal (?:cerrad|ajustad|sellad|asentad|empatad|cortad|cuadrad|alinead|hech|puest|junt|casad|embonad|tapad)[oa]s?|abiert[oa]s?(?! (?:a|de|en|para)\b))"
)
_SHORT = r"(?:cort(?:it)?[oa]s?(?! (?:a|de)\b)|cortones|corton|moch[oa]s?|rabon(?:a|es|as)?|angost(?:it)?[oa]s?|chic[oa]s?|chiquit[oa]s?|escas[oa]s?|incomplet(?:it)?[oa]s?|a medias|a la mitad|a medio (?:hacer|cortar|poner|pegar|doblar)|pelon(?:a|es|as)?|ral(?:it)?[oa]s?|falt[oa]s? de \w+)"

_JOINT = r"(?:costuras?|juntas?|uniones|union|empates?|esquinas?|esquinitas?)"
_END = r"(?:macho|hembra|shiplap|rebaje|traslape|orilla|boca|escalon)s?"
_SKIN = r"(?:foil|papel|forro|aluminio|facing|board|tabla|tablero|fibra|lado|cara|cachete)s?"
_PIECE = r"(?:pieza|codo|recto|recta|tramo|ducto|conducto|transicion|reduccion|plenum|offset)"
_STAPLES = r"(?:grapas|grapitas|estaples|corchetes)"
_TAPE = r"(?:cinta|tape|teip|taip|teipe|huincha)"
_FLAP = r"(?:flap|ceja|solapa|pestaña|lengueta)"
_VANES = r"(?:aletas|vanes|alabes|guias|deflectores)"
_TABS = r"(?:pestañas|lenguetas|tabs|orejas|orejitas)"
_HANGERS = r"(?:colgador(?:es)?|colgantes?|soportes?|hangers?|straps?|flejes?|trapecios?)"
_WHOLE = r"(?:(?:torcid|chuec|enchuecad|ladead|desplomad|desnivelad|descuadrad|pandead|vencid|madread|desmadrad|desgraciad|fregad|amolad|jodid|chingad|averiad|malograd|deformad|descompuest|gach|fe)[oa]|chafa|pinche|horrible|fatal|de la (?:fregada|chingada|patada|tiznada)|del nabo|del asco)"

# how an act was done: it is told of no thing
_SLOPPILY = r"(?:a lo (?:güey|guey|wey|loco|menso|pendejo|bruto|tonto)|al aventon|a la brava|a lo que salga|como dios me dio a entender|a la ligera|al ahi se va|con las patas|a las prisas|con los pies|medio feo|muy por encima|sin ganas|sin fuerza)"

_ANY = rf"(?:{CROOKED}|{LOOSE}|{BAD}|{BROKEN})"


# what became of it; "dobló" and "volteó" are acts as often as harm
_MOVED = "madre desgraci desmadr deform alz par enchin enrosc frunc+ engarruñ engurruñ engruñ infl hinch esponj manch separ desun+ desajust desempat descuadr enchuec enchueque lade tuerc torc+ corr+ recorr+ brinc afloj aflo zaf solt despeg levant vol bot desprend+ sal+ pel mov+ arrug humedec+ jod+ amol freg ching pande venc+ desfas desnivel deteri arruin malogr"
HARMED = f"{_MOVED} estruj aplast chanc desbarat estrell mord+ romp+ raj rasg desgarr troz part+ quebr tron revent cuarte agriet astill desmoron mach machuc apachurr aboll hund+ sum+ tronch"


def _of(part: str, ill: str) -> str:
    """ "la costura quedó chueca", "quedó chueca la costura", "bien chueca la costura"."""
    return rf"{UNDENIED}{part}{SO} {IS}{ill}|{BY_NONE}{_HAS} {IS}{ill} {_THE} {part}|{BY_NONE}{_VERY} {ill} {_THE} {part}"


def _went(part: str, stems: str = HARMED) -> str:
    """ "la costura se me desgració", "se me desgració tantito la costura"."""
    return rf"{UNDENIED}{part}{SO} {WENT}{verb(stems)}|{BY_NONE}{WENT}{verb(stems)}(?: (?:tantito|poquito|poco|un poco|feo|gacho|toda|todo|bien|un pedazo de|una parte de|algo))* {_THE} {part}"


def _behind(part: str, ill: str) -> str:
    """Only with the part behind: the other order is told in `ailing.py`."""
    return rf"{BY_NONE}{_HAS} {IS}{ill} {_THE} {part}|{BY_NONE}{_VERY} {ill} {_THE} {part}"


SPANISH_PARTS_AILING: tuple[tuple[tuple[str, ...], str], ...] = (
    (("gap",), _went(rf"(?:{_JOINT}|{_END})", _MOVED)),
    (("staple_flap", "stapled"), _went(_FLAP)),
    (("vanes",), _went(_VANES)),
    (("tabs_bent",), _went(_TABS)),
    (("taped",), _went(_TAPE)),
    (("stapled",), _went(_STAPLES)),
    (("gap",), _of(_JOINT, rf"(?:{_ANY}|{_OPEN}|{_SHORT})")),
    (("gap",), _of(_END, rf"(?:{_ANY}|{_OPEN}|{_SHORT}|{CREASED})")),
    (("facing_damage",), _of(_SKIN, rf"(?:{CROOKED}|{LOOSE}|{BAD}|{BROKEN}|{CREASED})")),
    (("facing_damage",), _of(_PIECE, _WHOLE)),
    (("stapled",), _behind(_STAPLES, rf"(?:{_ANY}|{_SHORT})")),
    (("stapled",), rf"{UNDENIED}{_STAPLES}{SO} {IS}{_SHORT}"),
    (("taped",), _behind(_TAPE, rf"(?:{_ANY}|{_SHORT}|suci[oa]|mojad[oa]|cortad[oa])")),
    (("taped",), rf"{UNDENIED}{_TAPE}{SO} {IS}(?:{BROKEN}|{_SHORT}|ralit[oa]|brincad[oa]|saltead[oa]|montad[oa]|desigual|jalonead[oa])"),
    (("rubbed_down",), _behind(_TAPE, rf"(?:{CREASED}|arrugad[oa]|fruncid[oa]|inflad[oa]|abombad[oa]|ampollad[oa])")),
    (("staple_flap", "stapled"), _of(_FLAP, rf"(?:{_ANY}|{_SHORT}|{CREASED}|arrugad[oa]|fruncid[oa]|inflad[oa]|levantad[oa]|parad[oa]|separad[oa]|cortad[oa]|con (?:bolsas|burbujas|arrugas|olanes|pliegues|aire))")),
    (("vanes",), _of(_VANES, rf"(?:{_ANY}|{_SHORT}|doblad[oa]s|separad[oa]s|voltead[oa]s|invertid[oa]s|mal (?:puest|cortad|alinead|colocad)[oa]s)")),
    (("tabs_bent",), _of(_TABS, rf"(?:{_ANY}|{_SHORT}|levantad[oa]s|parad[oa]s)")),
    (("hanger_spacing",), _of(_HANGERS, rf"(?:{_ANY}|separad[oa]s|retirad[oa]s|mal (?:puest|colocad|amarrad)[oa]s?)")),
    *(((fact,), rf"{UNDENIED}{act}(?: (?!no\b|ni\b|y\b|pero\b)\w+){{0,2}}? {_SLOPPILY}") for fact, act in (("rubbed_down", r"(?:tall|frot|restreg|planch|alis)(?:ad[oa]s?|e|amos)"), ("taped", r"(?:encint|teipe|tape)(?:ad[oa]s?|e|amos)"), ("stapled", r"(?:en)?grap(?:ad[oa]s?|e|amos)"), ("surface_clean", r"limpi(?:ad[oa]s?|e|amos)"), ("trimmed", r"recort(?:ad[oa]s?|e|amos)"))),
)
