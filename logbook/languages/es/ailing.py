"""Spanish that tells that something is the matter with a thing, in words that are no fact: "las grapas quedaron chuecas", "se trabó la engrapadora", "una aleta floja".

What he said of the thing may not hold then: it is asked. Regular expressions over the lower-case words of a clause, without accents. Not reviewed by a native speaker.
"""

from __future__ import annotations

# between a thing and what ails it; nothing that turns it
_SO = r"(?: (?!no\b|ni\b|sin\b|nunca\b|tampoco\b|jamas\b|nada\b|nadie\b|ningun\w*|cero\b|antes\b|hasta\b|para\b|pa\b|casi\b|aunque\b|pero\b|y\b)[\w'-]+){0,4}?"
_UNDENIED = "".join(f"(?<!{word} )" for word in ("no", "ni", "ni una", "ni la", "ni las", "sin", "sin una", "cero", "ninguna", "ningun", "ninguna de las", "nunca", "no hay", "no habia", "no quedaron", "no queda", "no quedan", "no tiene", "no trae", "no lleva", "no deje", "no vi", "no encontre", "no le vi", "nada de", "otras", "otra", "esas", "aquellas"))
_BY_NONE = "".join(f"(?<!{word} )" for word in ("no", "ni", "sin", "nunca", "para que no", "que no", "casi", "por poco", "ninguna", "ningun", "nada", "nadie"))
_IS = r"(?:(?:me|nos|se|le|les|ya|todas?|todos?|medio|muy|bien|un|poco|poquito|tantito|algo|bastante|como|mas|tan|asi|todavia|hasta) )*"
_WENT = r"(?:se (?:(?:me|nos|le|les) )*(?:(?:and|est)(?:a|an|aba|aban) )?)"
_A_FEW = r"(?: (?!no\b|ni\b|sin\b)[\w'-]+){0,3}?"


def _verb(stems: str) -> str:
    """ "dobló", "doblaron", "doblando"; stems that are given with "i" go as "torció" and "torcieron"."""
    told = [stem.removesuffix("+") + (r"(?:io|ieron|iendo)" if stem.endswith("+") else r"(?:o|aron|ando)") for stem in stems.split()]
    return f"(?:{'|'.join(told)})"


_THROWN = "".join(f"(?<!{threw} {the} )" for threw in ("tire", "tiramos", "avente", "recogi", "junte", "barri", "bote") for the in ("las", "unas", "esas", "todas las"))  # they lie on the floor
_STAPLES = rf"{_UNDENIED}{_THROWN}(?:grapas?|grapitas?|estaples?|staples?|corchetes?|ganchitos)"
_GUN = r"(?<!arregle la )(?<!cambie la )(?<!cambie de )(?:engrapadora|grapadora|pistola|corchetera|clavadora|engrapador|compresor|manguera|maquina de grapas)"
_TAPE = rf"{_UNDENIED}(?:cinta|tape|teip|taip|teipe|huincha)"
_FLAP = rf"{_UNDENIED}(?:flap|ceja|solapa|pestaña|aleta (?:de|para) (?:en)?grap\w+)"
_VANES = rf"{_UNDENIED}(?:aletas?|vanes?|alabes?|venas|guias|deflector(?:es)?|paletas|aspas)"
_TABS = rf"{_UNDENIED}(?:pestañas?|lenguetas?|tabs?|dientes|orejas|orejitas|gajos|uñas)"
_SCREWS = rf"{_UNDENIED}(?:tornillos?|pijas?|screws?|taquetes?|autoperforantes)"
_WASHERS = rf"{_UNDENIED}(?:rondanas?|arandelas?|roldanas?|washers?|plaquitas?)"
_HANGERS = rf"{_UNDENIED}(?:colgador(?:es)?|colgantes?|soportes?|hangers?|straps?|flejes?|trapecios?|cuelgues?|varillas?|cintillos|abrazaderas?)"
_GLUE = r"(?:pegamento|goma|pega|adhesivo|pegol|resina)"

_CROOKED = r"(?:chuec[oa]s?|chuequ[a-z]+s?|torcid[oa]s?|enchuecad[oa]s?|ladead[oa]s?|atravesad[oa]s?|de (?:lado|ladito|canto|costado|cabeza)|sesgad[oa]s?|desviad[oa]s?|inclinad[oa]s?)"
_LOOSE = r"(?:floj[oa]s?|flojit[oa]s?|suelt[oa]s?|sueltecit[oa]s?|zafad[oa]s?|bailando|bailan|aflojad[oa]s?|despegad[oa]s?|volando|colgando)"
_BAD = r"(?:mal(?: (?:puest|metid|clavad|hech|colocad|pegad|doblad)[oa]s?)?|fe[oa]s?|gach[oa]s?|chaf[oa]s?|mal[oa]s|de la fregada|regular(?:es)?|dudos[oa]s?|rar[oa]s?|a la carrera|a lo loco|a medias|como (?:cayeron|cayo|salieron|sea|quiera))"
_BROKEN = r"(?:rot[oa]s?|quebrad[oa]s?|partid[oa]s?|rajad[oa]s?|rasgad[oa]s?|desgarrad[oa]s?|trozad[oa]s?|mochad[oa]s?|reventad[oa]s?|tronad[oa]s?|vencid[oa]s?|mordid[oa]s?|arrancad[oa]s?|dañad[oa]s?|jodid[oa]s?|fregad[oa]s?|estropead[oa]s?|golpead[oa]s?|aplastad[oa]s?|apachurrad[oa]s?)"
_RUSTY = r"(?:oxidad[oa]s?|mohos[oa]s?|herrumbrad[oa]s?|enmohecid[oa]s?)"
_TO_OUTSIDE = r"(?! (?:(?:bien|todas|parejo|por|para|pa|hacia|del|de|lado) )*(?:a?fuera|atras|abajo|detras|adentro|dentro))"
_FOLDED = rf"(?<!bien )(?<!patas )(?<!puntas )(?:doblad|voltead)[oa]s?{_TO_OUTSIDE}"
_STICKS_UP = rf"(?:parad[oa]s?|salid[oa]s?|levantad[oa]s?|saltad[oa]s?|botad[oa]s?|salton[a-z]*|alzad[oa]s?|sumid[oa]s?|hundid[oa]s?|enterrad[oa]s?|encimad[oa]s?|pasad[oa]s? de mas|por (?:encimita|encima)|encimita|en el aire|al aire|a medi[oa] \w+|a medio|sin (?:agarrar|entrar|clavar|cerrar|doblar)|{_FOLDED})"
_STAPLE_ILL = rf"(?:{_CROOKED}|{_LOOSE}|{_BAD}|{_BROKEN}|{_RUSTY}|{_STICKS_UP}|(?:de|por) un (?:solo|puro) lado|de una (?:sola )?pata)"
_STAPLE_WENT = _verb("dobl chuec chueque enchuec enchueque lade atraves hund+ sum+ enterr bot salt zaf solt romp+ quebr aflo aflój afloj encim levant torc+ desprend+ desclav voltea venc+ part+ trab ator oxid sal+") + _TO_OUTSIDE
_SKIN = r"(?:el|la|los|las|su|todo el|toda la|tantito el) (?:foil|flap|papel|ceja|solapa|pestaña|forro|aluminio|facing|tablero|board|tabla|orilla|shiplap|rebaje)"
_TAPE_ILL = rf"(?:{_CROOKED}|{_LOOSE}|{_BAD}|{_BROKEN}|dispar[ae]j[oa]|despar[ae]j[oa]|descentrad[oa]|corrid[oa]|recorrid[oa]|fuera de (?:la |el )?(?:junta|costura|union|lugar|centro)|a un lado|cort[oa](?! a )|cortit[oa]|angost[oa]|angostit[oa]|picad[oa]|quemad[oa]|chamuscad[oa]|derretid[oa]|cortad[oa](?! (?:a|de|al|con|en|por)\b)|estirad[oa]|restirad[oa]|tens[oa]|jalad[oa]|tirante|viej[oa]|caducad[oa]|vencid[oa]|pasad[oa](?! (?:de|por|la|con|bien|toda)\b)|rese[ck]\w*|tiesa|tieso|congelad[oa]|suci[oa]|polvos[oa]|empolvad[oa]|enlodad[oa]|mojad[oa]|humed[oa]|empapad[oa]|llen[oa] de (?:polvo|tierra|pelusa|fibra|grasa|agua|aserrin)|con (?:polvo|tierra|pelusa|grasa|agua|lodo))(?! (?:y|que) (?:la|lo) (?:quite|cambie|arranque)\b)"
_TAPE_WENT = _verb("romp+ raj rasg desgarr troz part+ moj quem chamusc chuec chueque enchuec enchueque lade corr+ recorr+ desvi torc+ estir sec resec ensuci empolv cort pic tuerc mordi derrit+ encog+")
_WRINKLED = r"(?:arrugad[oa]|arrugadit[oa]|frunci[dt][oa]|inflad[oa]|abombad[oa]|ampollad[oa]|abolsad[oa]|boluda|con (?:much[oa]s? |un[oa]s? |alg[uo]n[oa]?s? |varias? |poquit[oa] |tantit[oa] )*(?:arrug\w+|burbuj\w+|bolsas?(?: de aire)?|bolsitas?|aire|globos?|globitos|bolitas|bombas|ampollas?|ampollitas|pliegues?|dobleces|doblez|fruncidos?|ondas|olanes))"
_WRINKLES = r"(?:arrug(?:as?|uitas?|ones)|burbuj(?:as?|itas?|ones|otas)|bolsas?(?: de aire)?|bolsitas?(?: de aire)?|globit[oa]s|globos|ampollit?as?|bombas|pliegues?|dobleces|doblez|fruncidos?|ondas|bolas de aire|aire (?:debajo|abajo|adentro|atrapado|encerrado))"
_LEFT_WITH = rf"{_BY_NONE}(?:(?:tiene|trae|hay|quedo|quedaron|salieron|salio|hizo|hicieron|formaron|formo|agarro|lleva|dejo|deje|traia|tenia|habia|con|anda con|quedo con) (?!sin\b)(?:(?:un|una|unas|unos|dos|tres|varias|muchas|algunas|alguna|como|puras|pura|algo de|tantit[oa]|poquit[oa]|mucho|mucha|bastantes?|pocas|otra|ya|asi|bien) )*)"
_HOW_RUBBED = r"(?:tall|frot|restreg|sob|planch|alis|aplast|bruñ|presion|rasp|pas|aprett?)(?:e|u?e|amos|ad[oa]s?|o)"
_SEALANT = r"(?:silicon(?:a|e)?|sellador|sikaflex|sika|espuma(?: expansiva)?|resistol|cola loca|kola loca|pegamento|pega ?loca|plastilina|chapopote|brea|caulk(?:ing)?|poliuretano|foam|yeso|goma|masking|papel(?: aluminio)?|chicle|cemento)"

# behind what ailed it: it was put right; what came out alone is gone
_DENIED = "".join(f"(?<!{no} )(?<!{no} l[oa] )(?<!{no} l[oa]s )(?<!{no} les? )".replace("les?", "le") for no in ("no", "ni", "nunca", "sin", "falta", "que"))
RIGHTED = (
    rf"(?<!\w){_DENIED}(?:(?:enderec|acomod|arregl|apret|aprete|cambi|reemplac|reforc|remach|repas|emparej|corrig|refij|asegur|rematch)(?:e|amos|ad[oa]s?)|(?:correg|rehic|repus|compus|sustitu)(?:i|e|imos)|volvi a \w+|volvimos a \w+"
    r"|(?:puse|pusimos|meti|metimos|eche|echamos|clave|clavamos|pegue|pegamos|di|dimos|engrape|tire|le puse|le meti) (?:(?:ya|ahi|luego|al lado) )*(?:otr[oa]s?|nuev[oa]s?|(?:cinta|tape|teip|grapas?) nuev[oa]s?|una nueva|mas|de nuevo)"
    r"|ya (?:quedo|quedaron|esta|estan)(?: \w+)? (?:bien|firmes?|derech\w+|parej\w+|list[oa]s?|pegad[oa]s?|fij[oa]s?|apretad[oa]s?|arreglad[oa]s?))(?!\w)"
)

SPANISH_AILING: tuple[tuple[tuple[str, ...], str], ...] = (
    # staples that went in badly, or of which none can say that they hold
    (("stapled",), rf"{_STAPLES}{_SO} {_IS}{_STAPLE_ILL}(?!,? (?:ya )?(?:las|se) (?:tire|tiramos|avente|bote|tiraron|recogi)\b)"),
    (("stapled",), rf"{_BY_NONE}(?:qued|sal|entr|est|and|meti|puse|fueron|iban)\w* {_IS}{_STAPLE_ILL}{_A_FEW} (?:grapas?|estaples?|staples?|corchetes?)"),
    (("stapled",), rf"{_STAPLES}{_SO} {_WENT}{_STAPLE_WENT}|{_BY_NONE}{_WENT}{_STAPLE_WENT}{_A_FEW} (?:grapas?|estaples?|staples?|corchetes?)"),
    (("stapled",), rf"{_STAPLES}{_SO} (?:(?:se )?(?:clav|met|hund|enterr|pas|dispar)\w+ de(?: |)mas|saltaron|salto|rebotaron|reboto|brincaron|brinco|fallaron|fallo|tronaron|volaron|botaron)|{_BY_NONE}(?:saltaron|salto|rebotaron|reboto|brincaron|fallaron|fallo|volaron){_A_FEW} (?:grapas?|estaples?|staples?|corchetes?)"),
    (("stapled",), rf"{_STAPLES}{_SO} (?:rompieron|cortaron|rajaron|rasgaron|desgarraron|tronaron|trozaron|picaron|rompio|rajo|rasgo|corto|lastimaron|mordieron apenas) {_SKIN}"),
    (("stapled",), rf"{_STAPLES}{_SO} (?:(?:le )?(?:dieron|pegaron|dio|pego) (?:al?|en) (?:el |la )?(?:puro |pura )?(?:aire|vidrio|fibra|orilla|filo|canto)|(?:agarraron|agarro|prendieron|pescaron|mordieron|cogieron) (?:puro|pura|nomas|nada mas|solo|solamente|apenas|poquito|tantito|poco)|(?:apenas|medio|mal|casi) (?:si )?(?:agarr|entr|prend|pesc|llega|detien|clav)\w+|no {_IS}(?:le )?(?:dieron|dio|pegaron|llegaron|alcanzaron|entraron|clavaron|sirvieron|sirvio|sirven|aguantan|detienen|jalaron|cerraron|quedaron (?:muy |tan |del todo )?(?:bien|parejas|derechas|firmes|apretadas|pegadas|a ras))\b)"),
    (("stapled", "staple_spacing"), rf"{_UNDENIED}{_GUN}{_SO} (?:{_IS}(?:{_verb('trab ator desconchinfl descompon+ vaci jod+ ech aflo tranc encasquill cicl atasc')}|acabo el aire|fue el aire|descompuso|quedo sin (?:aire|grapas|presion))|(?:and|est)(?:a|aba) (?:fallando|mal[oa]|brincando|trab\w+|ator\w+|floj[oa]|loc[oa]|jodid[oa]|tirando mal|escupiendo|cansad[oa]|vencid[oa]|sin fuerza|rebotando)|(?:fallo|falla|fallaba|brinco|brinca|brincaba|patina|patino|rebota|rebotaba|escupe|escupia|se saltaba|tiraba en blanco|tiro en blanco|disparaba en blanco)|(?:le )?falt(?:o|a|aba) (?:el )?(?:aire|fuerza|presion)|no (?:{_IS})?(?:le )?(?:daba|da|dio|clavaba|clava|metia|mete|metio|tiraba|tira|servia|sirve|sirvio|jalaba|jala|jalo|entraba|disparaba|pegaba|cargaba|alcanzaba|llegaba|tenia)\b)|no (?:le )?(?:llegaba|daba|alcanzaba|llego|subia) (?:bien )?(?:el aire|la presion) a la (?:engrapadora|grapadora|pistola)|(?:engrap|grap)\w+ (?:en blanco|sin aire|con poco aire)"),
    # staples too far from one another, or nobody knows how far
    (("staple_spacing",), rf"{_STAPLES}{_SO} {_IS}(?:separad[oa]s|espaciad[oa]s de mas|retirad[oa]s|ral[oa]s|ralit[oa]s|abiert[oa]s|lejos|distanciad[oa]s|desparramad[oa]s|regad[oa]s|saltead[oa]s|brincad[oa]s|disparej[oa]s|desparej[oa]s|desigual(?:es)?|a ojo|al tanteo|a como (?:cayera|cayeran|diera)|donde (?:cayera|cayeran|pude)|pocas|poquitas|contadas|escasas)(?! (?:cada|a|de|\d|una?|dos|tres|media|pulgada))|(?:pocas|poquitas|escasas|contadas) (?:grapas|estaples|corchetes)|(?:ahorre|ahorramos|escatime|le tire pocas|le puse pocas|le meti pocas) (?:en |con )?(?:las )?grapas|(?:engrap|grap)\w+ (?:a ojo|al tanteo|a lo loco|donde (?:cayera|cayeran|pude)|a como (?:cayera|diera))"),
    # tape that is harmed, or does not lie where it should
    (("taped",), rf"{_TAPE}{_SO} {_IS}{_TAPE_ILL}"),
    (("taped",), rf"{_TAPE}{_SO} {_WENT}{_TAPE_WENT}|{_BY_NONE}{_WENT}{_TAPE_WENT} (?:la|el|toda la|todo el|un pedazo de|tantit[oa] la) (?:cinta|tape|teip|taip|teipe|huincha)"),
    (("taped",), rf"{_BY_NONE}(?:qued|sal|est|and|puse|pegu|fue|iba)\w* {_IS}(?:{_CROOKED}|{_LOOSE}|{_BAD}|descentrad[oa]|corrid[oa]) (?:la|el|toda la|todo el) (?:cinta|tape|teip|taip|teipe|huincha)"),
    (("taped",), rf"{_TAPE}{_SO} (?:(?:se le|le) hizo un (?:hoyo|agujero|tajo)|(?:tiene|trae|quedo con|salio con|con) (?:un|una|unos|unas|dos|varias) (?:\w+ )?(?:hoyos?|agujeros?|hoyitos?|cortadas?|cortes?|rotos?|roturas?|rajadas?|rasgaduras?|piquetes?|quemadas?)|no {_IS}(?:alcanza|alcanzo|llega|llego|tapa|tapo|cubre|cubrio|agarro|agarra|prende|prendio|jalo|pesco)\b(?! (?:para|en|con|mas|tiempo)))"),
    (("taped",), rf"(?:{_GLUE}{_SO} (?:{_IS}{_verb('sec resec ech acab')}|(?:esta|estaba|anda|andaba|viene|venia|ya) {_IS}(?:sec[oa]|resec[oa]|viej[oa]|mal[oa]|tieso|duro|suci[oa]|polvos[oa]))|(?:se (?:le |me )?sec|se (?:le )?acab|se (?:le )?resec|sin|ya no (?:tiene|tenia|trae|traia|lleva|le quedaba|hay|agarra)|no (?:tiene|tenia|traia|trae)|casi sin|poco|poca|poquit[oa])\w* (?:nada de |mucho |el |la |ni )*{_GLUE})"),
    (("taped",), rf"(?:sell|cerr|tap|pegu|rellen|unt|junt)\w*(?: (?!no\b|ni\b|mastique\b|mastic\b|cinta\b|tape\b|teip\b)[\w']+){{0,3}}? (?:con|de) (?:(?:puro|pura|un poco de|tantito|poquito|algo de|su|el|la|un cordon de|una linea de) )*{_SEALANT}|(?:le|les|se le) (?:puse|pusimos|eche|echamos|meti|metimos|di|aplique|unte) (?:(?:puro|pura|un poco de|tantito|poquito|algo de|su|el|la|un cordon de|una linea de) )*{_SEALANT}"),
    # tape that lies in folds or on air, and tape that was rubbed hardly
    (("rubbed_down",), rf"{_TAPE}{_SO} {_IS}{_WRINKLED}|{_TAPE}{_SO} {_WENT}{_verb('arrug frunc+ infl abomb ampoll abols englob dobl')}|{_BY_NONE}{_WENT}{_verb('arrug frunc+ infl abomb ampoll')} (?:la|el) (?:cinta|tape|teip|taip|teipe|huincha)"),
    (("rubbed_down",), rf"{_LEFT_WITH}{_WRINKLES}"),
    (("rubbed_down",), rf"{_BY_NONE}{_HOW_RUBBED}(?: (?:la|el|lo|toda|todo|cinta|tape|teip|nomas|nada mas|solo|muy|bien|apenas|asi))* (?:por encimita|por encima(?: nomas)?|encimita|poquito|poco|tantito|leve|levecito|suave|suavecito|quedito|a medias|a la carrera|rapido|rapidito|una pasadita|de pasada|con la (?:pura |puritita )?(?:mano|palma|manga|uña)|con (?:el|los|puro|puros) (?:dedos?|guante|codo|trapo)|a mano)(?! y (?:luego |despues )?con)(?!.{{0,40}}(?:espatula|cuña|paleta|squeegee|rodillo|tarjeta))|(?:apenas|medio|mal|a medias|casi no) (?:la |lo )?(?:tall|frot|restreg|planch|alis|aplast)(?:e|ad[oa]|amos)"),
    # a flap that is not as it should be
    (("staple_flap", "stapled"), rf"{_FLAP}{_SO} (?:{_IS}(?:{_BROKEN}|{_CROOKED}|{_LOOSE}|arrugad[oa]|fruncid[oa]|cort[oa]|cortit[oa]|angost[oa]|chic[oa]|chiquit[oa]|mocho|mocha|quemad[oa]|levantad[oa]|parad[oa]|(?:doblad|metid|remetid|voltead)[oa](?: (?:para|hacia|pa) ?a?dentro)|al reves|por dentro|cortad[oa])|{_WENT}{_verb('romp+ rasg raj desgarr troz part+ quem arranc dobl levant arrug mord+')}|no (?:alcanza|alcanzo|llega|llego|cubre|cubrio|tapa|pega|pego|baja|bajo)\b)|{_BY_NONE}{_WENT}{_verb('romp+ rasg raj desgarr troz part+ quem arranc mord+')} (?:el|la|tantit[oa] (?:el|la)|un pedazo (?:del|de la)) (?:flap|ceja|solapa|pestaña)"),
    # legs of staples, and which way they went
    (("staple_clinch",), rf"{_UNDENIED}(?<!doblo las )(?<!cerro las )(?:patas?|patitas?|puntas|puntitas|grapas)(?! del? (?:la |el |los )?(?:hanger|trapecio|soporte|colg|strap)){_SO} (?:{_IS}(?:rect[oa]s|derech[oa]s(?! y)|sin (?:doblar|abrir|remachar|cerrar|voltear)|al reves|encontradas|(?:para|hacia|pa) ?a?dentro|metidas)|no {_IS}(?:abrieron|doblaron|voltearon|remacharon|cerraron|clincharon|abren|doblan))"),
    (("staple_leg",), rf"{_UNDENIED}(?:patas?|patitas?|puntas|grapas?){_SO} (?:{_IS}(?:cort[oa]s|cortit[oa]s|chic[oa]s|chiquit[oa]s|mochas)|no {_IS}(?:atraviesan?|atravesaron|traspasan?|traspasaron|alcanzan? a (?:pasar|salir)|alcanzaron a (?:pasar|salir)|salieron del otro lado|llegaron al otro lado|pasan?(?: el)?|pasaron)\b)"),
    # vanes that are there, but not as they should be
    (("vanes",), rf"{_VANES}{_SO} (?:{_IS}(?:{_CROOKED}|{_LOOSE}|{_BROKEN}|{_BAD}|(?:doblad|golpead|salid|movid)[oa]s?|(?:nomas |solo )?presentad[oa]s|(?:al|de) reves|voltead[oa]s|invertid[oa]s|desalinead[oa]s|(?:muy |demasiado )(?:largas|cortas|abiertas|separadas|juntas)|cort[oa]s|cortit[oa]s|sin (?:fijar|atornillar|apretar|asegurar|amarrar|remachar))|se (?:mueven|andan moviendo|estan moviendo|menean|salen|caen|zafan|(?:and|est)an (?:saliendo|zafando|soltando|cayendo|doblando|aflojando|moviendo|meneando))|baila|bailan|vibran|suenan|chillan|cascabelean|rozan|{_WENT}{_verb('dobl torc+ chuec zaf solt aflo afloj quebr romp+ salt bot mov+ aplast')}|no {_IS}(?:ajustan|asientan|quedaron (?:bien|firmes|derechas|parejas|fijas)|estan (?:bien|firmes|fijas)|agarran|agarraron|embonan)\b)"),
    # a collar's tabs
    (("tabs_bent",), rf"{_TABS}{_SO} (?:{_IS}(?:{_LOOSE}|{_BROKEN}|{_BAD}|levantad[oa]s?|parad[oa]s?|alzad[oa]s?|salid[oa]s?|abiert[oa]s?|a medi[oa]s?(?: doblar)?|sin (?:doblar|apretar|cerrar|voltear|asentar))|{_WENT}{_verb('quebr romp+ tron zaf solt levant part+ troz raj par afloj reg')}|no {_IS}(?:doblaron|doblo|cerraron|apretaron|agarraron|asentaron|quedaron|bajaron|entraron)\b)|{_BY_NONE}{_WENT}{_verb('quebr romp+ tron zaf solt part+ troz')}{_A_FEW} (?:pestañas?|lenguetas?|tabs?|orejas)"),
    # screws and their washers
    (("screw_spacing",), rf"{_SCREWS}{_SO} (?:{_IS}(?:{_LOOSE}|{_CROOKED}|{_BROKEN}|barrid[oa]s?|salid[oa]s?|corridos|sin apretar|a medi[oa]s?(?: \w+)?|pasad[oa]s?|cort[oa]s|cortit[oa]s|saltead[oa]s|separad[oa]s|ral[oa]s)(?! (?:cada|a)\b)|{_WENT}{_verb('barr+ zaf solt quebr tron sal+ afloj aflo part+ capote trasrosc vol')}|no {_IS}(?:agarraron|agarro|agarran|agarra|aprietan|aprieta|apretaron|apreto|muerden|mordieron|entraron|entro|prendieron|jalaron|llegan|llegaron|alcanzan)\b)|{_BY_NONE}{_WENT}{_verb('barr+ zaf quebr tron capote trasrosc')}{_A_FEW} (?:tornillos?|pijas?)|(?:con|puse|pusimos|lleva|va con|va|use) (?:puros |unos )?(?:remaches|clavos|alambre)"),
    (("washer_size",), rf"{_WASHERS}{_SO} (?:{_IS}(?:{_LOOSE}|{_CROOKED}|{_BROKEN}|doblad[oa]s|hundid[oa]s|sumid[oa]s|enterrad[oa]s|chic[oa]s|chiquit[oa]s|chiquilla|delgad[oa]s|delgadit[oa]s|normal(?:es)?|comunes|corrientes|de las (?:chicas|chiquitas|normales))|{_WENT}{_verb('hund+ sum+ dobl enterr met+ clav romp+')}|cortaron el|muerden el|rompieron el)"),
    # what holds it up
    (("hanger_spacing",), rf"{_HANGERS}{_SO} (?:{_IS}(?:{_LOOSE}|{_CROOKED}|{_BROKEN}|{_BAD}|encajad[oa]s?|enterrad[oa]s?|mordiendo|clavad[oa]s? en|(?:muy |demasiado |bien )?(?:separad[oa]s|retirad[oa]s|lejos|ral[oa]s)|doblad[oa]s?|ausentes?)(?! (?:cada|a)\b)|{_WENT}{_verb('zaf solt revent romp+ quebr venc+ dobl sal+ afloj aflo corr+ barr+ tron desprend+ sum+')}|(?:corta|cortan|muerde|muerden|aplasta|aplastan|aprieta mucho|aprietan mucho) (?:el|la|al) )|{_BY_NONE}{_WENT}{_verb('zaf solt revent romp+ quebr venc+ tron')}{_A_FEW} (?:colgador(?:es)?|colgantes?|soportes?|hangers?|straps?|flejes?|trapecios?)"),
    (("hanger_spacing",), rf"{_BY_NONE}(?:se (?:me |nos |le )?(?:pandea|pandeo|esta pandeando|anda pandeando|cuelga|colgo|vence|vencio|esta venciendo|panzea|sumio en medio|hace panza|hizo panza|mece|columpia)|(?:tiene|trae|hizo|hace|quedo con|con) panza|(?:colgad[oa]|amarrad[oa]|amarre|colgue|detenid[oa]|detuve|sujet[oa]|cuelga)(?: \w+){{0,2}}? (?:con|de) (?:(?:puro|pura|un|una|unos|pedazo|de) )*(?:alambre|alambron|mecate|soga|lazo|cuerda|cinta|cintillos?|cincho|cinchos|cordon|extension|tie wire|zip ties?))"),
    # the cold
    (("surface_temperature",), r"(?:board|tabla|tablero|foil|facing|ducto|superficie|lamina)(?: (?!no\b|ni\b)[\w'-]+){0,3}? (?:helad[oa]|heladisim[oa]|congelad[oa]|friisim[oa]|muy fri[oa]|bien fri[oa]|fri[oa]|con (?:hielo|escarcha|rocio))"),
    # a joint that does not close
    (("gap",), rf"{_BY_NONE}(?:qued(?:o|aron)|esta|salio) {_IS}(?:separad[oa]|desfasad[oa]|descuadrad[oa]|desalinead[oa]|brincad[oa]|despatarrad[oa])|no {_IS}(?:empat(?:a|o|aron)|embon(?:a|o|aron)|sell(?:a|o)|cas(?:a|o)|top(?:a|o)|cuadr(?:a|o)|junt(?:a|o|aron)|cerr(?:o|aron))(?: (?:muy|tan|del|todo|bien|parej[oa]|justo|a ras|al ras))+|(?:se le (?:ve|nota)|pasa|entra|se cuela) (?:(?:un|poco|poquito|tantita|de|mucha|la) )*luz"),
    # a test that was not passed, and air that comes out
    (("leak_flow", "gap"), rf"{_BY_NONE}(?:(?:se|le) (?:(?:le|me|nos) )*(?:sale|salia|salio|escapa|escapaba|fuga|fugaba|va|iba|anda saliendo|esta saliendo|siente|sentia|oye|oia)(?: (?:el|un|poco|poquito|tantito|mucho|algo|de|todavia))* (?:aire|chiflido|silbido|fuga)|(?:tira|tiraba|avienta|aventaba|bota|botaba|saca|pierde|perdia|escupe|sopla|soplaba) (?:(?:un|poco|poquito|tantito|mucho|algo|de) )*aire(?! (?:por (?:el|la) (?:hembra|macho|lado|rejilla|boca|salida|difusor))\b)|(?:tiene|trae|hay|habia|quedo con|con|le encontre|encontre|salio con) (?:(?:una|unas|dos|varias|mucha|poca|tantita|algo|de) )*(?:fugas?|fuguitas?)|(?<!si )(?:chifla|chiflaba|chiflando|silba|silbaba|silbando)|(?:no (?:le )?)(?:paso|pasa) la prueba|reprobo|(?:prueba)(?: \w+){{0,3}}? (?:salio mal|no paso|fallo|reprobada)|no (?:aguanta|aguanto|detiene|sostiene|retiene|guarda) (?:la |el )?(?:presion|aire)|hace burbujas el jabon|hizo burbujas (?:el jabon|con el jabon)|sale humo|salio humo)"),
)
