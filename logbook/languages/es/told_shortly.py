"""Spanish that leaves the noun or the verb to the words before it: "derecha también dos en veinticuatro", "las pestañas de cinta las espacié a dieciocho", "todos los tornillos menos uno".

The words that are meant are put in their place. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK, STOP
from logbook.languages.es.whole_turns_left_out import BUT, ONE
from logbook.languages.plainer import Plainer

_FAR = rf"(?:{COUNT}|{FRAC})(?: y (?:medi[ao]|un cuarto|tres cuartos))?(?: pulgadas?)?"
_SIZE = rf"(?:{COUNT} (?:por|x) {COUNT})"
_MOVES = r"(?:cierra|baja|abre|sube|entra|sale|se mete|se abre|cae)"
_SIDE = r"(?:(?:el |por )?lado )?(?:(?:a )?(?:la |el )?(?:derech[oa]|izquierd[oa])|arriba|abajo)"
_ALIKE = r"(?:tambien|igual|igualmente|lo mismo|otr[oa]s?|asimismo)"
_TAPE_TABS = r"(?:(?:pestañas|tiras|tabs|lenguetas) (?:de (?:cinta|tape|teip|foil)|cruzad[oa]s)|tiras cruzadas|cross tabs|tiritas|tirillas)"
_TO = r"(?:(?:(?:me|nos|se|l[oa]s|todas|todos|yo) )*(?:espacie|espaciamos|separe|separamos|distancie|distanciamos|distribui|reparti|puse|pusimos|meti|deje|dejamos|quedaron|van|iban|vienen|salieron|eche|pegue|acomode)(?: (?:todas|todos|parejas|parejo|como|mas o menos))*) (?:de )?a"
_SEVERAL = (("tornillos|pijas|screws", "un tornillo"), ("colgantes|colgadores|hangers|soportes|straps|flejes|trapecios", "un colgante"))
_DID = r"(?:cerro|armo|hizo|encinto|(?:en)?grapo|tallo|colgo|corto|puso|metio|dejo|termino|acabo|saco|limpio|parcho|subio|monto|instalo|sello|doblo|pego)"
_CLOSERS = r"(?:cinta|tape|teip|foil|masti(?:que|c)|parche)"
_HARM = ("hoyo", "agujer", "perfora", "ponch", "raj", "rasg", "raspon", "rot", "cort", "golpe", "desgarr", "piquete", "puncture")

SPANISH_TOLD_SHORTLY = (
    # --- "el derecho plano la grapé cada dos": a side that is flat, and no drawing
    Plainer((" plano ",), r"\b(?:lado )?(?:derecho|izquierdo|superior|inferior)(?: (?:queda|va|sale|quedo|es))?(?P<x> plano)(?= (?:(?:y )?l[ao]s? |y |(?:en)?grap|encint|cinta|tape|teip|tallad|sellad|trae |lleva |va ))(?! va (?:a )?decir)", (("x", " nivelado,"),)),
    # --- "izquierda entra dos en veinticuatro, derecha también dos en veinticuatro": the same way
    Plainer(
        tuple(f" {alike} " for alike in ("tambien", "igual", "igualmente", "lo mismo", "otro", "otros", "otra", "asimismo")),
        rf"\b(?P<v>{_MOVES}) {_FAR} en {_FAR}(?:,|;| y| pero)+ {_SIDE},?(?P<y> (?:y )?{_ALIKE},? )(?={_FAR} en {COUNT})",
        (("y", r" \g<v> "),),
    ),
    Plainer((" tambien",), rf"\b(?P<v>{_MOVES}) (?P<n>{_FAR} en {_FAR})(?:,|;| y)+ {_SIDE}(?P<y> tambien){STOP}", (("y", r" \g<v> \g<n>"),)),
    # --- "las pestañas de cinta las espacié a dieciocho"
    Plainer(
        (" espaci", " separ", " distan", " distri", " repart", " puse a ", " pusimos a ", " puse de a ", " meti a ", " deje a ", " dejamos a ", " quedaron a ", " van a ", " iban a ", " vienen a ", " salieron a ", " eche a ", " pegue a ", " acomode a "),
        rf"\b{_TAPE_TABS},? (?:de {COUNT}(?: pulgadas)?(?: de largo)?,? )?(?P<x>{_TO}) (?={_FAR}{STOP})",
        (("x", "cada"),),
    ),
    # --- "puse todos los tornillos menos uno": one is lacking, and no measure stands there
    *(
        Plainer((" menos ", " excepto ", " salvo ", " quitando ", "excepcion de ", " faltando"), rf"\btod[oa]s l[oa]s (?:{things})\b(?:,? (?!no\b|ni\b|menos\b|excepto\b|salvo\b|pero\b)[\w/-]+){{0,6}}?,?(?P<x> (?:y )?{BUT} {ONE})(?![\w-])", (("x", f", falta {one}, "),), unless=r"\bya (?:l[oea]s? )?(?:puse|meti|atornille|colgue)")
        for things, one in _SEVERAL
    ),
    # --- nobody had tape for the hole: of its mend, and not of the joints
    Plainer(
        ("nadie tra", "nadie ten", "nadie carg", "nadie llev", "no tra", "no ten", "no hab", "no hubo"),
        rf"\b(?:asi (?:se )?(?:quedo|fue|va|lo deje|la deje|anda|esta)|(?:no|sin) (?:(?:l[oae]|se|le) )*(?:parch\w+|arregl\w+|repar\w+|tap(?:e|ar|amos)\w*))\b(?! (?:la|el) (?:cinta|tape))[^.;]{{0,60}}?(?P<x>(?:,| y| porque| pues| que| ya que)+ (?:nadie|no) (?:(?:le|me|nos) )?(?:trai\w+|ten\w+|carg\w+|llev\w+|hab\w+|hubo) (?:mas |ni |nada de )?{_CLOSERS}(?: (?:a la mano|encima|consigo|ahi|cerca|conmigo|en la bolsa|a mano|para (?:parchar|tapar|arreglar|el parche)\w*))*){STOP}",
        (("x", ", "),),
        beside=_HARM,
    ),
    # --- "en la nota de la transición cinco dije dieciocho por doce y es dieciocho por catorce": what was said is taken back
    Plainer(
        (" dije ", " dijimos ", " puse ", " pusimos ", " anote ", " habia dicho ", " dicte ", " grabe ", " quedo "),
        rf"(?P<x>(?:(?:perdon|disculpen?|oiga|jefe),? )*(?:en )?(?:la|mi|esa) (?:nota|grabacion|mensaje|audio) (?:pasada |anterior |de antes )?)(?P<d>de|del) (?P<t>(?:la |el )?(?:{KIND} )?(?:numero )?{MARK}),?(?P<y> (?:yo )?(?:(?:te|les|le) )?(?:dije|dijimos|puse|pusimos|anote|habia dicho|dicte|grabe|quedo)(?: que)?(?: (?:era|es|eran|media|mide))?(?: de)? {_SIZE}(?: pulgadas)?(?:,| y| pero| cuando| sino| en realidad| la verdad| siempre)+ (?:(?:es|son|era|eran|mide|miden|debe ser|va)(?: que)?)(?: de)? )(?={_SIZE}{STOP})",
        (("x", "corrección, "), ("d", ""), ("y", " es ")),
    ),
    # --- "no es cierto que el recto catorce quedó sin grapas, sí lo grapé": what others say is not so, and then what is
    Plainer(
        ("no es cierto que ", "no es verdad que ", "es mentira que ", "es falso que ", "no es asi que "),
        rf"(?P<x>\b(?:no es (?:cierto|verdad|asi)|es (?:mentira|falso)) que )(?:(?:el|la) )?(?:{KIND} )?(?:numero )?{MARK},?(?P<y> (?:(?:se|me|le|l[oa]) )*(?:(?:quedo|fue|va|esta|salio|deje) )?(?:sin|no (?:lleva|tiene|trae|le puse|le pusimos|le meti|quedo)|falt\w+) [\w ]{{3,40}}?(?:,|;|\.| y| pero)+ )(?=(?:(?:si|yo|ya|claro que si),? )+(?:(?:se|le|l[oa]s?) )*\w+|(?:lleva|trae|tiene|va) )",
        (("x", ""), ("y", ", ")),
    ),
    # --- "la tapa cinco necesita más grapas": they are lacking
    Plainer(
        (" necesita ", " ocupa ", " requiere ", " pide ", " necesitaba "),
        r"\b(?P<x>(?:todavia |aun |ya )?(?:necesita|ocupa|requiere|necesitaba|ocupaba|pide) (?:mas|otr[oa]s?|un poco (?:mas )?de|tantita|unas? (?:cuantas )?(?:mas )?) ?)(?=(?:grapas?|cinta|tape|teip|tornillos|masti(?:que|c)|soportes|colgantes)\b)",
        (("x", "le falta "),),
        unless=r"\b(?:no|ni|ya no) (?:necesita|ocupa|requiere|pide)",
    ),
    # --- "un hoyo de un cuarto en la junta": a gap, and no harm of the board
    Plainer((" en la junta", " en la costura", " en la union", " en una junta", " en una costura", " entre las juntas"), rf"\b(?P<x>hoyo|hoyito|agujero|agujerito|rajita|rajada|boquete|rotura|ranura|abertura)(?= (?:chic\w+ |como )?(?:de )?(?:como )?(?:de )?{_FAR}(?: de pulgada)? (?:en|por|entre) (?:la|una|las) (?:junta|costura|union)\b)", (("x", "hueco"),)),
    # --- what the inspector said of a piece that he himself has not looked at
    Plainer(
        (" reviso", " revisad", " checo", " checad", " visto", " veo", " a ver", " reviseo"),
        rf"(?:^|(?<=[.;] ))(?:(?:ayer|hoy|oiga|jefe),? )*(?:el|la|don|mi) \w+(?: \w+)? (?:dijo|dice|comento|anoto|marco|vio|reporto|me dijo|nos dijo) que [^.;]*?(?P<x>,? (?:pero |y |nomas que )?(?:yo )?(?:todavia |aun )?(?:no|ni) (?:l[oa]s? )?(?:reviso|he revisado|hemos revisado|checo|he checado|veo|he visto|he ido a ver|fui a ver|revise|cheque)(?:l[oa]s?)?(?: todavia| aun)?){STOP}",
        (("x", ""),),
    ),
    # --- "don Chuy cerró la te cuarenta": another's work, whatever he is called
    Plainer((" don ", "don ", "doña "), rf"\b(?P<x>don(?:a|ña)? \w+)(?= (?:(?:le|se|l[oa]s?|ya|fue el que|es el que) )*{_DID}\b)", (("x", "mi compañero"),)),
    Plainer((" don ", " doña "), rf"\b{_DID} (?P<x>don(?:a|ña)? \w+)\b", (("x", "mi compañero"),)),
    # --- a tape of fibre that no mastic goes over
    Plainer((" de fibra",), r"\b(?:cinta|tape|teip) (?P<x>de fibra(?: de vidrio)?)\b", (("x", "de tela"),), unless=r"\bmasti|\bmasill|\bmalla"),
)
