"""Spanish said in a roundabout way, and the plain words that it is read as. Regular expressions over lower-case letters without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

COUNT = r"(?:un[oa]?|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce|trece|catorce|quince|dieci\w+|veint\w+|(?:treinta|cuarenta|cincuenta|sesenta|setenta|ochenta|noventa)(?: y \w+)?|cien(?:to)?(?: \w+)?|\d+)"
MARK = rf"(?:[a-z]-?\d+|{COUNT})"
KIND = r"(?:rect[oa]|tramo|codo|te|tee|tapa|transicion|reduccion|offset|plenum|pleno|collarin|ramal|derivacion|pieza|seccion|ducto|pantalon)"
_PIECE = rf"(?:el |la )?(?:{KIND} )?(?:numero )?{MARK}"
_TO_ONE = rf"(?:al |a la |a el |el |la )?(?:{KIND} )?(?:numero )?{MARK}"
_ONE = rf"(?:el |la )?{KIND} (?:numero )?{MARK}"
STOP = r"(?= *(?:$|[,;.]))"
TAPE = r"(?:cinta|teip|tape)"
STAPLES = r"(?:grapas?|staples?)"
SOON = r"(?:ahorita|al rato|luego|despues|mas tarde|mañana|pasado mañana|en la tarde|otro dia|(?:el )?(?:lunes|martes|miercoles|jueves|viernes|sabado))"
INCH = r"(?:dos|tres|dos y media|2|3|2 1/2|2\.5)(?! (?:lados?|caras?|vueltas?|capas?|veces|grapas?|piezas?|juntas?|orillas?|costados?|esquinas?))"
FRAC = r"(?:un cuarto|tres octavos|cinco dieciseisavos|media|un octavo|1/4|3/8|5/16|1/2|1/8)"
PUT = r"(?:puse|pusimos|meti|metimos|eche|echamos|di|dimos|hice|hicimos)"

_MEAS = rf"(?:{FRAC}|{COUNT})(?: y (?:media|cuarto))?(?: pulgadas?)?"
_SIDE = r"(?:lados?|caras?|costados?|costuras?|orillas?|juntas?)"
_OTHERS = rf"(?:(?:el|la|los|las) (?:otr[oa]s?|que (?:falta|queda)n?|demas|ultim[oa]s?|cuart[oa]|de (?:arriba|abajo|atras|adelante))(?: (?:un[oa]|dos|tres|[123]))?(?: {_SIDE})?|el resto)"
_DO = r"(?:(?:l[oa]s?|le|les) (?:\w+o|voy a \w+|vamos a \w+) )"

SPANISH_PLAINER = (
    # --- sides that wait, in whatever words: "me faltan los otros dos", "mañana los otros"
    Plainer(
        (" otr", " falt", " el resto", " demas", " ultim", " cuart"),
        rf"(?:un[oa]?|dos|tres|[123]) {_SIDE}(?: (?!no\b|ni\b|sin\b|falt)\w+){{0,4}}(?P<x>(?:,|;|\.| y| pero)* (?:(?:y|pero|nomas|ya|todavia|aun) )*(?:{_OTHERS} (?:(?:va|van|queda|quedan|quedaron|pa|para|hasta) )*{_DO}?{SOON}|{_OTHERS} (?:quedan?|quedo|quedaron|estan?|siguen?|van?) pendientes?|(?!luego|despues|mas tarde){SOON} (?:va |van )?{_DO}?{_OTHERS}|(?:(?:me|le|nos|les) )?faltan? (?:{_OTHERS}|un[oa]|dos|tres|[123])(?: {_SIDE})?)){STOP}",
        (("x", ", el otro al rato"),),
    ),
    # --- a round turn takes no vanes: "de garganta redonda, ahí no lleva vanes"
    Plainer((" vanes", " aletas", " guias", " alabes"), rf"(?:garganta redonda|(?:de|con) radio|(?:codo|garganta|vuelta|curva) (?:numero )?(?:{COUNT},? )?(?:es )?(?:redond[oa]|curv[oa]|suave)|(?:de )?vuelta (?:suave|redonda|larga))(?:(?!\b(?:cuadrad[oa]|rect[oa]|codo|te|la \d+|el \d+)\b)[^.?!;]){{0,30}}?(?P<x>,? (?:y |asi que |por eso |ahi |ese |esa |ya )*(?:no (?:le |les )?(?:puse|pusimos|lleva|ocupa|necesita|requiere|trae|tiene)|sin) (?:las |las turning )?(?:vanes|aletas|guias|alabes)){STOP}", (("x", ""),)),
    Plainer((" vanes", " aletas", " guias", " alabes"), r"(?P<x>(?:no (?:le |les )?(?:puse|pusimos|lleva|ocupa|necesita|requiere|trae|tiene)|sin) (?:las )?(?:vanes|aletas|guias|alabes),?) (?:porque|ya que|pues|como) (?:es|era) (?:de |un |codo )*(?:radio|garganta redonda|redond[oa]|vuelta (?:suave|redonda))\b", (("x", ""),)),
    # --- neither of two: "ni al recto 4 ni al codo 5 les puse grapas"
    Plainer((" ni ",), rf"(?:^|(?<=[.;:] ))(?P<x>ni ){_TO_ONE}(?P<y> ni ){_TO_ONE}(?P<z> )(?!no )(?=(?:les?|l[oa]s?|se|estan?|tienen?|llevan?|traen?|van?|quedo|quedaron|puse|encinte|engrape|talle)\b)", (("x", ""), ("y", " y "), ("z", " no "))),
    # --- fewer vanes than it takes: "con una vane, le faltan dos"
    Plainer((" falta",), rf"(?:aletas?|vanes?|guias?)(?: \w+){{0,2}}[,;.]? (?:pero |y |nomas )*(?:le|me) faltan? (?:un[oa]|dos|tres|cuatro|[1-6])(?P<y>){STOP}", (("y", " aletas"),)),
    # --- "recto 60 encintado, no, ese no, el 61 sí"
    Plainer(("ese no", "esa no", "este no", "esta no"), rf"(?P<x>(?P<k>{KIND}) (?P<n>{MARK}) (?P<v>lleva|tiene|trae) (?P<t>\w+),? (?:bueno |digo |perdon |ah |miento )*(?:no,? )?es[ea] no(?: lleva| tiene| trae)?,? (?:es |fue )?(?:el|la) (?P<m>{MARK})(?: si)?){STOP}", (("x", r"\g<k> \g<n> no \g<v> \g<t>, \g<k> \g<m> \g<v> \g<t>"),)),
    Plainer(("ese no", "esa no", "este no", "esta no"), rf"(?P<x>(?P<k>{KIND}) (?P<n>{MARK}) (?:esta |quedo |va )?(?P<t>\w+ad[oa]),? (?:bueno |digo |perdon |ah |miento )*(?:no,? )?es[ea] no(?: esta)?,? (?:es |fue )?(?:el|la) (?P<m>{MARK})(?: si)?){STOP}", (("x", r"\g<k> \g<n> no esta \g<t>, \g<k> \g<m> \g<t>"),)),
    # --- the piece that he goes on with, named behind it: "mañana le sigo con el 15, nomás lo engrapé", "al rato acabo el codo 48"
    Plainer((" sigo ", "seguimos", " termino ", " acabo ", "continuo"), rf"(?P<x>(?:{SOON} )+(?:ya |si )?(?:l[eoa] )?(?:sigo|seguimos|continuo|termino|acabo)(?: con)? )(?P<p>{_PIECE})(?P<y>(?:,|;|\.| que| porque)?) (?=(?:nomas|solo|apenas|nada mas|le falta|me falta|l[oa] deje|quedo|va|esta)\b)", (("x", ""), ("y", " quedo pendiente,"))),
    Plainer((" termino ", " acabo ", "remato", "completo"), rf"(?:^|(?<=[.,;] ))(?P<x>(?:{SOON} )+(?:ya |si )?(?:l[oa] )?(?:termino|acabo|remato|completo) )(?P<p>{_ONE})(?P<y>){STOP}", (("x", ""), ("y", " quedo pendiente"))),
    Plainer((" pendiente", " falta"), rf"{_ONE}(?P<x>,? (?:pendiente|le falta|todavia le falta|falta|faltante)){STOP}", (("x", " quedo pendiente"),)),
    Plainer(("ya casi", "ya mero", "ya merito"), r"(?P<x>ya (?:casi|mero|merito))(?= *\.?$)", (("x", "quedo pendiente"),)),
    # --- what the one has and the other lacks: "el uno encintado, al dos le falta"
    *(
        Plainer((" falta",), rf"{act}[^.;]*?(?:,| y| pero) (?:y |pero )?(?:al|a la|el|la) (?:{KIND} )?{MARK} (?:todavia |aun |si )*le falta(?P<y>){STOP}", (("y", f" {lacks}"),))
        for act, lacks in (("(?:encintad[oa]s?|teipead[oa]s?|con cinta|con teip)", "la cinta"), ("(?<!en)grapad[oa]s?", "la grapa"), ("engrapad[oa]s?", "la grapa"), ("tallad[oa]s?", "tallar"), ("con (?:aletas|vanes)", "las aletas"))
    ),
    # --- none of those that were named
    Plainer(("ningun",), rf"(?P<p>{_ONE}(?:,? (?:y )?{_ONE})+)(?P<x>,? (?:pero |y )?ningun[oa](?: de (?:l[oa]s|est[oa]s|es[oa]s) (?:dos|tres|cuatro)| de l[oa]s)? (?:tiene|lleva|trae|tienen|llevan|traen))(?= )", (("x", " no tienen"),)),
    Plainer(("ningun",), rf"(?P<p>{_ONE}(?:,? (?:y )?{_ONE})+)(?P<x>,? (?:pero |y )?ningun[oa](?: de (?:l[oa]s|est[oa]s|es[oa]s) (?:dos|tres|cuatro)| de l[oa]s)? (?:esta|quedo|va|estan|quedaron|van))(?= )", (("x", " no estan"),)),
    # --- "encinté pero con la gris": with what, and no exception
    Plainer(("pero con",), rf"(?:encint|teip|tape|{TAPE}|sell|cerr)\w*(?P<x>,? pero con)(?= (?:la|el|una?|pur[ao]|{TAPE}|duct|masking|de la)\b)", (("x", " con"),)),
    # --- told of the one and the other by their numbers: "al 1 ya le puse cinta, al 2 no"
    Plainer((" al ", " a la "), rf"(?:^|(?<=[,;.] )|(?<= y ))(?P<x>al|a la) {MARK} (?:ya |si |tambien |nomas )*(?P<y>(?:le|les) {PUT})\b", (("x", "el"), ("y", "tiene"))),
    Plainer((" al ", " a la "), rf"(?:^|(?<=[,;.] )|(?<= y ))(?P<x>al|a la)(?= {MARK} (?:todavia |aun )*(?:no|si){STOP})", (("x", "el"),)),
    # --- why the other was not done: "al 6 no porque se acabó"
    Plainer((" no porque", " no por que", " no pues", " no ya que", " si porque", " si pues"), rf"(?:^|(?<=[,;.] )|(?<= y )|(?<=pero ))(?P<x>al|a la|a el|el|la) {MARK} (?:todavia |aun )*(?:no|si)(?P<y>)(?= (?:porque|por que|pues|ya que)\b)", (("x", "el"), ("y", ","))),
    # --- stuff in the meantime
    Plainer(("mientras", "por ahora", "por lo pronto", "de momento"), rf"(?P<x>asi (?:(?:l[oa]s?|me|se|nos) )*(?:deje|dejamos|quedo|quedaron|queda|va) (?:nomas )?(?:(?:por|de|por lo) mientras|mientras tanto|por ahora|por lo pronto|de momento)){STOP}", (("x", "le falta terminarlo"),)),
    Plainer(("mientras",), rf"(?P<x>(?:nomas |asi |pues )?(?:por|de|por lo) mientras(?: (?:que )?(?:llega|traen|viene)\w* [^.,;]*)?){STOP}", (("x", ""),)),
    # --- tape and no staple: "no lleva ni una grapa, puro teip"
    Plainer((" pur",), rf"\b(?:sin|ni|no) [^.;]{{0,24}}{STAPLES}(?P<x>(?:,|;| y| nomas| sino| pero)* (?:va |va a |a |con |lleva |nomas |solo )*pur[oa] {TAPE}){STOP}", (("x", ", lleva cinta"),)),
    Plainer((" pur",), rf"(?P<x>pur[oa] {TAPE}),? (?=(?:sin|ni|no) [^.;]{{0,24}}{STAPLES})", (("x", "lleva cinta, "),)),
    # --- how wide
    Plainer((" de dos", " de 2", " de tres", " de 3"), rf"{TAPE}(?P<x>,? (?:pero |nomas |es |nomas que )+(?:(?:de )?la |del? |el )?de )(?={INCH}\b)", (("x", " de "),)),
    Plainer(("la de dos", "la de 2", "la de tres", "la de 3", "el de dos", "el de 2", "el de tres", "el de 3"), rf"(?:encint|teip|tape)\w* (?:\w+ )?con (?P<x>(?:la|el) de (?P<n>{INCH})(?: pulgadas)?){STOP}", (("x", r"cinta de \g<n> pulgadas"),)),
    Plainer(("pulgadas", "de ancho"), rf"{TAPE} ?(?P<x>(?:,| pero| nomas)+ (?:es |era |fue |son |tiene )?(?:de )?)(?P<n>{INCH})(?: pulgadas)?(?P<y> (?:nada mas |nomas )?(?:de ancho)(?: nada mas| nomas)?){STOP}", (("x", " de "), ("y", " de ancho"))),
    Plainer(("sin cinta de", "sin teip de", "sin tape de"), rf"sin {TAPE}(?P<x> de (?:la de )?{INCH}(?: pulgadas)?)(?= *(?:$|[,;.]| porque| por ?que| pues))", (("x", ""),), unless=r"\bcon (?:la |el |cinta |teip |tape )*de|\b(?:le )?(?:puse|use|eche) (?:de )?la\b"),
    # --- how long the legs are, where others did not fit
    Plainer(("grapas largas", "grapas grandes", "grapas buenas", "grapas de"), rf"(?P<x>no (?:(?:le|me|nos|l[oa]s|habia|hay|hubo|tenia|tenemos|traia|trajeron|encontre|alcanzaron|caben|cabian|entran|entraban|quedaban|quedan|mas|de) )*(?:las )?grapas (?:largas|grandes|buenas|de (?:media|1/2))[,;.]? (?:asi que |y |por eso |entonces )*(?:le |les )?{PUT}(?: unas| las| puras)? de )(?={FRAC}\b)", (("x", "grapas de "),)),
    # --- the thing of a piece that has no name but its number
    *(
        Plainer((" del ", " de la "), rf"(?:^|(?<=[.;,] )|(?<=pero )|(?<=y ))(?P<x>(?P<t>(?:(?:el|la|las|los) )?(?:grapas|cinta|teip|tape|aletas|vanes|staples|foil)) (?:del|de la) (?P<n>{named}))(?= (?!por |x |de |y |pulgadas?|en\b|a\b|es de|era de|fue de))", (("x", means),))
        for named, means in ((MARK, r"pieza \g<n>, \g<t>"), (rf"{KIND} (?:numero )?{MARK}", r"\g<n>, \g<t>"))
    ),
    # --- what he said before, and how it is
    Plainer(("dije que", "dijimos que", "puse que", "reporte que"), r"(?P<x>(?:yo )?(?:dije|dijimos|puse|reporte|anote|mande) que (?:ya )?(?:estaba|estaban|quedo|iba|iban|l[oa] habia|tenia) (?P<a>\w+ad[oa]s?),? (?:pero |y )+(?:la verdad |pues )?no(?: es cierto| estaba| esta)?)(?= *(?:$|[,;.])| (?:nomas|solo|nada mas|puro|pura) )", (("x", r"no esta \g<a>,"),)),
    Plainer(("dije que no", "dijimos que no", "puse que no", "reporte que no"), r"(?P<x>(?:yo )?(?:dije|dijimos|puse|reporte|anote|mande) que no (?:estaba|estaban|quedo|iba|iban) (?P<a>\w+ad[oa]s?),? (?:pero |y )+(?:ahorita |ahora )?(?:ya|si)(?: esta| quedo)?)(?= *(?:$|[,;.]))", (("x", r"ya esta \g<a>"),)),
    Plainer(("pero no", "y no", "mas no"), r"\b(?:dije|dijimos|habia dicho|anote|reporte|mande|puse|creia|crei|pense) (?:ayer |antes |yo )?que [^.;]{3,70}?(?P<x>,? (?:pero|y|mas) no(?: es cierto| era cierto| era asi| eran)?),? (?=(?:ya |ahorita |hoy )?(?:l[oa]s?) (?:medi|volvi a medir|cheque|revise|volvi a checar|conte)\b)", (("x", ","),)),
    Plainer((" iba a ", " iban a "), rf"(?P<x>ib(?:a|an)) a(?= (?:cada |como )?(?:{COUNT})(?: y (?:media|cuarto))? (?:pulgadas?|de grapa|grapas|pies)\b)", (("x", "estaba"),)),
    # --- the same thing of the other with its own measure: "la 20 lleva grapas cada dos, la 21 cada tres", "en la 5 puse cinta de tres, en la 6 de dos"
    Plainer((" de ", " cada "), rf"(?P<t>grapas?|cinta|teip|tape|foil|tabs|tornillos) (?:(?:a )?cada|a|de) {_MEAS}(?: \w+){{0,2}}?(?:,| y| pero|;)+ (?:y |pero )?(?P<x>(?:en |a )?(?:la|el|al)(?: {KIND})?) {MARK}(?P<y> (?:me tocaron |puse |use |le puse |van |va |fue |eran? |quedaron )?)(?=(?:(?:a )?cada|de) {_MEAS} *(?:$|[,;.]))", (("x", "la"), ("y", r" lleva \g<t> "))),
    # --- "la 255 sí las tiene"
    Plainer((" si tiene", " si las ", " si la ", " si trae", " si lleva", " si los "), rf"(?:^|(?<=[,;.] )|(?<= y )|(?<=pero ))(?:la|el) (?:{KIND} )?(?:numero )?{MARK} si(?P<x> (?:l[oa]s? )?(?:tiene|trae|lleva|tenia|traia|llevaba)(?: completas?| todas?)?){STOP}", (("x", ""),)),
    # --- "cinco pulgadas de caída en veinte"
    Plainer((" de caida", " de bajada", " de pendiente", " de inclinacion", " de subida"), rf"(?P<x>(?P<n>{COUNT})(?: pulgadas?)? de (?:caida|bajada|pendiente|inclinacion|subida)(?: en)) (?={COUNT}\b)", (("x", r"caida de \g<n> en"),)),
    # --- an open corner
    Plainer(("abiert",), r"(?P<x>(?:(?:quedo|esta|va|sigue|anda) )?abiert[oa] (?:de|en|por) (?:la|una|el|un|las) (?P<w>esquina|orilla|junta|costura|union|punta))(?=[ ,;.]|$)", (("x", r"tiene gap en la \g<w>"),), unless=r"\bno (?:quedo|esta|va|sigue) abiert"),
    # --- "vanes si le puse": no condition
    Plainer((" si le", " si se", " si l", " si tra", " si tie"), rf"(?:aletas|vanes|guias|{TAPE}|{STAPLES}|mastique|tabs) (?P<x>si)(?= (?:se |le |les |l[oa]s? )*(?:{PUT}|lleva|llevan|tiene|tienen|trae|traen)\b)", (("x", "ya"),)),
    # --- one lies on the other without a stop: "encinté un lado el otro al rato"
    Plainer((" el otro", " la otra", " los otros", " las otras"), r"(?:un|una|dos|tres|1|2|3) (?:lados?|caras?|costados?|costuras?)(?P<x> )(?=(?:el|la|los|las) otr[oa]s?\b)", (("x", ", "),)),
    # --- both of two: "tanto la 118 como la 119"
    Plainer(("tanto ",), rf"(?P<x>tanto )(?:en |con |a )?(?:la |el |al )?(?:{KIND} )?(?:numero )?{MARK}(?P<y>,? como)(?= (?:en |con |a )?(?:la |el |al )?(?:{KIND} )?{MARK}\b)", (("x", ""), ("y", " y"))),
    # --- the joint between two that does not close: of both
    Plainer(("entre ",), rf"(?:^|(?<= ))(?P<x>entre) (?:el |la )?(?:{KIND} )?(?:numero )?{MARK} y (?:el |la )?(?:{KIND} )?(?:numero )?{MARK}(?=\b[^.]*?\b(?:hueco|gap|rendija|claro|abertura|luz|separacion|espacio|junta|union|no (?:cierr|junt|embon|empat|pega|top)\w+)\b)", (("x", "en"),), unless=r"\bno (?:hay|queda|quedo|tiene|dejo|se ve) (?:ningun )?(?:hueco|gap|luz|espacio|claro)|\bsin (?:hueco|gap|luz)"),
    Plainer((" abiert",), r"\b(?:juntas?|uni(?:on|ones)|costuras?|esquinas?)\b(?:(?! (?:no|ni|nunca)\b) \w+){0,6}? (?P<x>(?:quedo|quedaron|esta|estan|sigue|siguen|salio|salieron|anda)(?: (?:medio|algo|un poco|toda|bien|muy|todavia))* abiert[oa]s?)(?! [^.;]{0,24}(?:\d|cuarto|octavo|media|pulgada|dieciseis|dedo))", (("x", "tiene un gap"),)),
    # --- a choice of the one over the other
    Plainer(("no con la", "no de la", "no con el", "no del", "no la", "no el"), rf"(?P<x>no (?:con |de )?(?:la|el|l) (?:buen[oa]|que (?:es|va|pide\w*|debe\w*)|correct[oa]|del 181|de 181|especial|lista)){STOP}", (("x", ""),)),
    # --- staples and nothing more, or every other one
    Plainer((" grapa", " staple"), rf"(?:y )?(?:el|la) (?:{KIND} )?{MARK} (?P<x>(?:va |quedo |esta )?(?:con )?(?:nada mas|nomas|solo|pur[oa]s?) (?:las? )?{STAPLES})(?= *(?:$|[,;.]| y| sin))", (("x", "engrapado"),)),
    Plainer(("una si y una no", "una si una no", "una si, una no"), r"(?:(?:en)?grap|staple)\w*(?P<x>,? una si,?(?: y)? una no),?(?=[ ,;.]|$)", (("x", ""),)),
)
