"""Spanish words that the patterns of whole turns are made of, without accents. Not reviewed by a native speaker."""

from __future__ import annotations

CL = r"(?:(?:se|le|les|la|lo|las|los|me|nos|te) )*"
SOFT = r"(?:(?:la verdad|la neta|pues|de plano|ahi si|esta vez|aqui|todavia|aun|ya|la mera verdad|si|eso|esos?|esas?|ahora|hoy|en est[ea]|a est[ea],?) )*"
PUT = (
    r"(?:puse|pusimos|puso|pusieron|meti|metimos|metio|metieron|eche|echamos|echo|echaron|di|dimos|dio|dieron|hice|hicimos|hizo|hicieron|pase|pasamos|paso|pasaron|aplique|aplicamos|aplicaron|coloque|colocamos|coloco|instale|instalamos|instalo"
    r"|monte|montamos|agregue|agregamos|plante|plantamos|zampe|zampamos|avente|aventamos|clave|clavamos|pegue|pegamos|dispare|disparamos|tire|tiramos|corri|corrimos|use|usamos|ocupe|ocupamos|gaste|gastamos|alcance a (?:poner|meter|dar|hacer|pasar|echar)\w*|pude (?:poner|meter|dar|hacer|pasar|echar)\w*)"
)
HAS = r"(?:trae|traen|traia|traian|trajo|tiene|tienen|tenia|tuvo|lleva|llevan|llevo|llevaba|hay|hubo|habia|va|van|fue|fueron|existe|existen|entro|entraron|cupieron|llego|llegaron|toco)"
PP = r"(?:puesto|metido|echado|dado|hecho|pasado|aplicado|colocado|instalado|montado|tocado|empezado|usado|pegado)"
NONE = r"(?:,? (?:ningun[oa]s?|nadit[ao]|nada|ni un[oa]s?(?: sol[oa])?|para nada|nunca|jamas|tampoco|todavia|aun|a est[ea]|a es[ea]|ahi|alli|en est[ea]|yo creo))*"
ENDS = r"(?= *(?:$|[,;:.]|y\b|e\b|ni\b|pero\b|porque\b|por ?que\b|pues\b|que\b|ya que\b|asi que\b|de la\b|del\b|a(?:l| la| el| est[ea])\b|en\b|est[ea]\b|el\b|la\b|es de\b|por\b))"
ALONE = r"(?= *(?:$|[,;:.]|y\b|e\b|pero\b|porque\b|por ?que\b|ya que\b|asi que\b))"
SKIPPED = r"(?:brinque|brincamos|brinco|salte|saltamos|salto|comi|comimos|ahorre|ahorramos|perdone|omiti|omitimos|vole|volamos|evite|evitamos|deje fuera|deje afuera|dejamos fuera|deje de lado|pase por alto|pasamos por alto)"
SLIPPED = r"(?:fue|fueron|paso|pasaron|olvido|olvidaron|chispo|barrio|escapo)"
LEFT = r"(?:deje|dejamos|dejo|dejaron|quedo|quedaron|quede|quedamos|queda|quedan|esta|estan|anda|andan|sigue|siguen|va|van|fue|fueron)"
TO_DO = r"(?:hacer|hacerle|montar|montarle|instalar|instalarle|colocar|colocarle|poner|ponerle|meter|meterle|echar|echarle|dar|darle|aplicar|pasar|pasarle|hecho)"
UNTIL = r"(?:mañana|pasado mañana|luego|despues|al rato|el rato|mas tarde|otro dia|la tarde|el (?:lunes|martes|miercoles|jueves|viernes|sabado)|cuando \w+|otro rato)"

# what lies on a facing, and how a facing is that it lies on
DIRT = (
    r"(?:polvo|polvito|polvillo|polvadera|polvareda|polvaderon|tierra|tierrita|tierrero|mugre|mugrita|grasa|grasita|aceite|humedad|agua|agüita|gotas? de agua|rocio|sereno|pelusa|suciedad|aserrin|yeso|cochambre|sudor|lodo|barro|cemento|cal|arena|hollin|tizne|rebabas?"
    r"|basura|cochinero|porqueria|pintura|overspray|talco|ceniza|manteca|moho|oxido|viruta|limadura|condensacion|hielo|escarcha|lubricante|diesel|gasolina|silicon|dust|pegamento viejo|fibra suelta|lana suelta|restos? de \w+|caca de \w+|(?:chingo|monton|titipuchal|madral|chinguero|resto) de (?:polvo|tierra|mugre|grasa))"
)
SOILED_ENDS = r"(?:suci|polvos|polvorient|empolvad|gras(?:os|ient)|engrasad|aceitos|mugros|mugrient|cochin|puerc|enlodad|lodos|terros|sudad|sudoros|tiznad|manchad|pegajos|enyesad|embarrad|salpicad|escarchad|chorread|encalad)[oa]s?"

# the verbs of an act, as one does it, is told to do it, has done it or will: "encint" with its endings
ACT_VERBS: tuple[tuple[str, str, str, str, str], ...] = (
    ("rubbed_down", r"(?:tall|frot|restreg|planch|alis|sob|bruñ|presion|aplan)ar", r"(?:tall|frot|planch|alis|sob|presion)(?:e|ara|aramos)", r"(?:tall|frot|restreg|planch|alis|sob)ado", r"(?:tall|frot|planch|alis|sob)an?"),
    ("taped", r"(?:encint|teip|teipe|tape|taip)ar", r"(?:encint|teipe|tape|teip)(?:en?|ara|aramos)|tapee", r"(?:encint|teipe|tape|teip)ado", r"(?:encint|teipe|tape|teip)an?"),
    ("stapled", r"(?:(?:en)?grap|(?:en)?grape|estaple)ar", r"(?:en)?grap(?:en?|ara|aramos)|grapeara|grapee", r"(?:en)?grapado|grapeado", r"(?:en)?grapan?|grapean?"),
    ("surface_clean", r"(?:limpi|sec|sacud|desempolv|trape)ar", r"(?:limpi|sequ|trape)e|(?:limpi|sec|trape)ara(?:mos)?", r"(?:limpi|sec|sacud|trape)ado", r"(?:limpi|sec|trape)an?"),
    ("preheated", r"(?:pre)?calentar", r"(?:pre)?(?:caliente|calentara(?:mos)?)", r"(?:pre)?calentado", r"(?:pre)?calientan?"),
    ("tabs_bent", r"(?:dobl|volte)ar", r"(?:dobl|volte)(?:e|ara|aramos)", r"(?:dobl|volte)ado", r"(?:dobl|volte)an?"),
    ("trimmed", r"(?:recort|rebaj)ar", r"(?:recort|rebaj)(?:e|ara|aramos)", r"(?:recort|rebaj)ado", r"(?:recort|rebaj)an?"),
)

# one of his crew to whom it slipped: "se le olvidó al muchacho"
MATE = r"(?:(?:al?|a mi|a los|a la) (?:ese |otro )?(?:muchach[oa]s?|ayudantes?|chalan|compa(?:ñero)?s?|pana|primo|hermano|hijo|nuevo|aprendiz|chamaco|peon|cuate|compadre|socio|otro) )?"

# how a tape is that was pressed: "la cinta no está frotada" denies no tape
RUBBED_SO = r"(?:muy |bien |del todo )*(?:tall|frot|restreg|estreg|refreg|planch|alis|sob|bruñ|aplan|presion|repas|espatul|apret|asent)ad"

COULD = r"(?:alcance|alcanzamos|pude|pudimos|llegue|llegamos|logre|logramos|quise|hubo chance de|me dio tiempo de|dio tiempo de|nos dio tiempo de)"
DO = r"(?:hacer|poner|meter|echar|dar|aplicar|pasar|usar|instalar|colocar)(?:le|les|la|lo|las|los|sela|selo|selas|selos)?"
WHEN_IT_WAS = r"(?: (?:hoy )?(?:en la mañana|por la mañana|esta mañana|ayer(?: en la tarde)?|antier|antes|temprano|hace rato|al principio|la semana pasada|el (?:lunes|martes|miercoles|jueves|viernes|sabado)))"
SINCE = r"(?:(?:ya|luego|despues|ahorita|al rato|al final|por fin|hoy(?: mismo)?|ayer|esta (?:tarde|mañana)|(?:en|por) la (?:tarde|mañana|noche)|a la tarde|mas tarde|al medio ?dia|al otro dia|temprano|hace rato|enseguida|pero|y|yo|mismo|ahi|por suerte|es[ae]|es[ao]s),? )+"
