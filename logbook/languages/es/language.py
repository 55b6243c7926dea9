"""Spanish as it is spoken on North American sites, with English trade words behind it. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.en import language as en
from logbook.languages.es import harms as es_harms, verbs as es_verbs, voices as es_voices
from logbook.languages.es.acts_missed import SPANISH_ACTS_MISSED
from logbook.languages.es.all_but import SPANISH_ALL_BUT
from logbook.languages.es.afar import SPANISH_AFAR
from logbook.languages.es.filth import filth
from logbook.languages.es.flap_told import SPANISH_FLAP_TOLD
from logbook.languages.es.forms import SPANISH_FORMS
from logbook.languages.es.misheard import MISHEARD
from logbook.languages.es.named_ahead import SPANISH_NAMED_AHEAD
from logbook.languages.es.not_the_duct import not_the_duct
from logbook.languages.es.nothing_ails import nothing_ails
from logbook.languages.es.left import SPANISH_LEFT
from logbook.languages.es.mastic_as_tape import SPANISH_MASTIC_AS_TAPE
from logbook.languages.es.numbers import NUMBERS, UNITS
from logbook.languages.es.places import PLACES, STOREYS, WHOLE_PLACES
from logbook.languages.es.said_plainer import SPANISH_SAID_PLAINER
from logbook.languages.es.set_right import SPANISH_SET_RIGHT
from logbook.languages.es.several import SPANISH_SEVERAL
from logbook.languages.es.small import SPANISH_SMALL
from logbook.languages.es.whole_turns import SPANISH_WHOLE_TURNS
from logbook.languages.es.thumbs import SPANISH_THUMBS
from logbook.languages.es.ticks import SPANISH_TOLD
from logbook.languages.es.states import SPANISH_STATES
from logbook.languages.es.turns import SPANISH_TURNS
from logbook.languages.language import Language
from logbook.languages.lettered import SPANISH_LETTERED

# English words of the trade that Spanish speakers keep; everyday English stays out ("me", "once", "no" are Spanish).
_TRADE = (
    "RUN", "FITTING", "BACK", "FEMALE", "MALE", "SHIPLAP", "BUTT", "STAPLED", "STAPLES", "FLAP", "TABS", "TAPED", "TAPE",
    "RUBBED", "SCRIM", "VANES", "SCREWS", "WASHERS", "HUNG", "STATIC", "TIE_RODS", "GROOVE", "BOARD", "TIGHT", "THROAT",
)  # fmt: skip

CONCEPTS: tuple[tuple[str, str], ...] = (
    *es_voices.CONCEPTS,
    ("DET", "el|los|las|la|un|una|unos|unas|su|mi|este|esta|ese|esa|lo|le|les|se|me|nos|estas|estos|sus|mis|pura|puras|puros|puro"),
    ("IT", "lo mismo que lo|ésta|éste|eso"),
    ("BE", "miden|es|anda|andan|andaba|andaban|está|esta bien|están|son|era|fue|quedó|quedaron|quedo|queda|va|van|estaba|estaban|viene|vienen|ya está|ya esta|ya quedó|ya quedo|fueron|sería|ha sido|mide|tiene que ver|iba|hay"),
    ("HAVE", "le echó|le metió|le pegué|le pegamos|le corrí|le corrimos|ya trae|ya tiene|ya lleva|se le echó|se le metió|se le metieron|le echamos|metimos|le metimos|le dimos|me puse|eché|echamos|pusieron|tiene|tienen|trae|lleva|llevan|traen|lleva sus|tengo|tenemos|tenía|le puse|le pusimos|puse|pusimos|se le puso|le metí|le metimos|ponemos|usé|usamos|use|le echamos|le eché|le di|le dimos|le eche|le meti|se le pusieron|le zampé|le zampamos|le planté|le aventé|le aventamos"),
    ("AND", "y|e|más|y luego|además|y también|and"),
    ("OR", "o|u"),
    ("BUT", "pero|aunque|sino"),
    ("TO", "a|hasta|para|baja a|reduce a|termina en|sale a|pasa a|bajando a|reduciendo a|reducida a|abre a|que baja a|va a dar a|to|hacia|que reduce a|y termina en|se reduce a|crece a|aumenta a|sube a|cambia a"),
    ("FROM", "desde|del|a partir de"),
    ("BY", "por|x|×|by"),
    ("ON", "me fui a|me fui hasta|se me fue a|se me fueron a|se fueron a|me abrí a|me abrí hasta|se abrieron a|en|sobre|al|en apenas|en sólo|en solo|en nomás|en nada más|en tan sólo|en tan solo|en escasos|en escasas|en puros|en puras"),
    ("OF", "de"),
    ("IN", "adentro|hacia adentro|para adentro|pa dentro|dentro|pa' dentro|in"),
    ("OUT", "afuera|hacia afuera|para afuera|pa fuera|pa' fuera|out"),
    ("DOWN", "abajo de|hacia abajo|para abajo|pa abajo|pa' abajo"),
    ("UP", "hacia arriba|para arriba|pa arriba|pa' arriba"),
    ("OVER", "a lo largo de|en un largo de|en una distancia de|over|sobre un largo de|en un tramo de"),
    ("BACK", "atrás|back|set back|hacia atrás|para atrás|de retroceso|retroceso|retroceso de|setback|retirado|de atrás|la línea atrás|la raya atrás|con retroceso de|pa trás|pa atrás|pa' atrás"),
    ("THROUGH", "a través|a través de|por el|through"),
    ("TIGHT", "cerró parejo|cerró parejito|cerraron parejo|cierra parejo|cerró a tope|cerró justo|cerró justito|apretadita|apretadito|apretaditas|apretaditos|cerradita|cerradito|cerraditas|cerraditos|pegadita|pegadito|pegaditas|pegaditos|justita|justito|justitas|justitos|selladita|selladito|selladitas|selladitos|juntas cerradas|uniones cerradas|costuras cerradas|juntas cerraditas|juntas pegadas|junta cerrada|sin un solo hueco|ni un solo hueco|sin ningún hueco|ni un hueco|sin una sola rendija|sin ninguna abertura|sin ninguna luz|sin ninguna rendija|cero luz|cero huecos|juntas bien cerradas|juntas bien apretadas|juntas bien pegadas|juntas bien justas|costuras bien cerradas|costuras bien apretadas|costuras bien pegadas|costuras bien justas|uniones bien cerradas|uniones bien apretadas|uniones bien pegadas|uniones bien justas|cerradas sin huecos|sin huecos|sin hueco|apretado|apretada|bien pegado|bien pegada|justo|justa|ajustado|ajustada|bien cerrado|bien cerrada|sin abertura|sin aberturas|sin luz|bien ajustada|bien ajustado|cerrada sin huecos|bien apretada|bien apretado|bien justa|no se ve luz|tight"),
    ("AROUND", "alrededor|todo alrededor|por todo alrededor|todo el derredor"),
    ("ALL", "todo|toda|todos|todas"),
    ("EACH", "cada uno|cada una"),
    ("BOTH", "ambos|ambas|todas|todos|las dos|los dos|los tres|las tres|las cuatro piezas|todas ellas|todos ellos|los dos están|todas están"),
    ("ONLY", "solo|sólo|solamente|nomás|nada más"),
    ("SAME_SIZE", "igual de medida|igual de medidas|igual de tamaño|igual de grande|igual en medida|igual en medidas|igual en tamaño|de igual medida|de igual tamaño|iguales de medida|iguales de tamaño|igualito de medida|igualita de medida|igualito de tamaño|igualita de tamaño|tamaño igual|medida igual|misma medida|la misma medida|mismo tamaño|el mismo tamaño|mismas medidas|las mismas medidas|misma medida que la otra|de la misma medida|del mismo tamaño|igual medida|same size"),
    ("SAME_AS", "igual que|igual a|lo mismo que|misma que|mismo que|idéntica a|idéntico a|es igual que|es igual a|same as|como la|tal como la|iguales a|copia de|igualito a|igualita a|igualito al|igualita a la|igual al|igual a la|igualito que|igualita que|idéntico al|idéntica a la|la misma que|el mismo que|lo mismo que el|lo mismo que la|igual que el|igual que la"),
    ("SAME_THING", "lo mismo|igual|igualita|igualito|misma cosa|la misma cosa|idéntica|lo mismo que la anterior|igual que la anterior|igual que la otra|lo mismo del otro lado|igual que el anterior|lo mismo que antes"),
    ("EXCEPT", "excepto|excepto que|menos que|pero con|nada más que|salvo que|salvo|sólo que|solo que|nomás que|except"),
    ("ALL_BUT", "todo menos|todos menos|todos los lados menos|todos los lados excepto|todo excepto|todo salvo|por todos lados menos|los cuatro lados menos"),
    ("OTHER_SIDE", "el otro lado|otro lado|del otro lado"),
    ("ANOTHER", "otro|otra|siguiente|la siguiente|el siguiente|luego|después|enseguida|luego otro|luego otra|otra más|el que sigue|la que sigue|next"),
    ("I", "yo|nosotros|mi compañero y yo"),
    ("WILL", "luego regreso a|mañana regreso a|al rato regreso a|después regreso a|ahorita regreso a|luego vuelvo a|mañana vuelvo a|al rato vuelvo a|luego vengo a|mañana vengo a|iba a|íbamos a|voy a|vamos a|iremos|pondremos|le pongo|les pongo|le ponemos|pongo|le echo|le echamos al rato|le meto|le doy|le pego|le vamos a|lo voy a|la voy a|le voy a|lo vamos a|la vamos a|los voy a|las voy a|pienso|estoy por|estamos por|voy a ir a|quiero|queremos ir a"),
    ("LATER", "|".join(f"{when} {comes}" for when in ("cuando", "en cuanto", "nomás que", "nomás", "apenas", "ya que", "hasta que") for comes in ("llegue", "lleguen", "me llegue", "nos llegue", "traigan", "me traigan", "nos traigan", "haya", "tenga", "tengamos", "pueda", "podamos", "regrese", "vuelva", "consiga", "consigan", "manden", "me manden", "surtan"))),
    ("LATER", "mañana|luego|más tarde|después de comer|al rato|en la tarde|la próxima semana|el lunes que viene|después del lonche"),
    ("NOT", "ninguna de ellas|ninguna de esas|ninguna de estas|ninguna de las dos|ninguna de las tres|ninguna de las cuatro|ninguno de ellos|ninguno de esos|ninguno de estos|ninguno de los dos|ninguno de los tres|ninguno de los cuatro|not|isn't|aren't|wasn't|didn't|never|jamás|jamas|ni siquiera|ni de chiste|ninguno|ninguno de|ninguna de|nada|nadie|dudo que|dudo|no creo que|no creo|no pienso que|no pienso|ni|no|nunca|tampoco|no está|no es|no están|ni tantito|para nada|nel|nel pastel|nanay"),
    ("FORGOT", "se me olvidó|olvidé|se me olvidaron|se nos olvidó|se nos olvidaron|olvidamos|se me pasó|se me pasaron|se nos pasó|se nos pasaron|se le olvidó"),
    ("NOT_DONE", "no le he|no lo he|no la he|no hemos|no he|no les he|no se ha|no las he|no los he|no la hemos|no lo hemos|no le hemos|aún no|todavía no|todavía no está|aún no está|todavía no la|todavía no le|todavía no lo|aún no la|aún no lo|aún no le|no están todavía|no está todavía|me la brinqué|me lo brinqué|me las brinqué|me la salté|me las salté|me lo salté|nos la brincamos|nos las brincamos"),
    ("NO", "without|sin|ningún|ninguna|no tiene|no tenía|no lleva|no hay|no había|no le puse|no trae|no tienen|no hubo|ni|no quedó|sin ningún|sin ninguna|no llevan|no le pusimos|no traía"),
    ("YET", "todavía|aún"),
    ("PENDING", "|".join(f"{left} para {when}" for left in ("queda", "quedó", "se queda", "va", "lo dejo", "la dejo", "lo dejé", "la dejé", "las dejé", "lo dejamos") for when in ("el rato", "al rato", "luego", "después", "la tarde", "pasado mañana", "más tarde", "el martes", "el miércoles", "el jueves", "el viernes", "la otra semana"))),
    ("PENDING", "habría que|habria que|habrá que|habra que|pendientes las|pendientes los|pendientes de|pendientes unas|falta|faltan|todavía falta|le falta|le faltan|aún falta|me falta|nos falta|todavía le falta|todavía faltan|queda por|queda pendiente|pendiente|tengo que|tenemos que|hay que|falta por|todavía me falta|todavía hay que|todavía tengo que|faltó|faltaron|le faltó|sigue pendiente|está pendiente|por hacer|me faltó|aún le falta|nos faltó|está pendiente de|quedó pendiente|faltando|todavía nos falta|todavía le faltan|nada más falta|sólo falta|nomás falta|solo falta|ya casi termino de|casi termino de|ya casi acabo de|casi acabo de|ya mero termino de|ya mero acabo de|me falta terminar de|falta terminar de|sigue sin|me quedó pendiente|se quedó pendiente|quedaron pendientes|quedan pendientes|ya nomás falta|ya nomás me falta|nomás me falta|ya nada más falta|ya nada más me falta|nada más me falta|sólo me falta|ya sólo falta|ya sólo me falta|nomás le falta|nomás le faltan|nada más le falta|nada más le faltan|ya nomás le falta|sólo le falta|sólo le faltan|me faltan|nos faltan|todavía me faltan|me hace falta|hace falta|le hace falta|todavía le hace falta|estoy esperando para|a falta de|queda para mañana|quedó para mañana|se queda para mañana|queda para el lunes|queda para al rato|queda para después|lo dejo para mañana|la dejo para mañana|lo dejé para mañana|la dejé para mañana|lo dejamos para mañana|queda para otro día|faltaba|faltaban|le faltaba|le faltaban|me faltaba|me faltaban|nos faltaba|ya no falta mucho|no falta mucho|ya mero|todavía le faltaba"),
    ("NEED", "necesitamos|necesito|necesita|queremos|ocupamos|ocupo"),
    ("REMIND", "no olvides|ocupo que|ocupamos que|necesito que|necesitamos que|hace falta que me|hace falta que nos|urge que|no olviden|recuerda|recuerden|acuérdate|acuérdense|no se te olvide|no se les olvide|asegúrate|asegúrense|hay que acordarse|que no se olvide|por favor|alguien tiene que|tienes que|tienen que|no se olviden"),
    ("NOT_FORGET", "no me olvidé de|no nos olvidamos de|no se me pasó|no se nos pasó|no se me fue|no se me olvidó|no olvidé|no se nos olvidó|no se me olvidaron|no le falta|no le faltan|ya no le falta|ya no le faltan|ya no falta|ya no faltan|no me falta|ya no me falta|no me faltan|ya no me faltan"),
    ("TROUBLE", "problema|problemas|duda de|dudas de|bronca|broncas|queja|quejas"),
    ("IF", "si|a menos que|en caso de|si fuera|habría|hubiera|sería|podría|cuando esté|hasta que esté|ojalá|ojalá que|ojalá y|quién sabe si|quien sabe si|a ver si|hay que ver si|hay que checar si|hay que revisar si|vamos a ver si|para ver si|dile a|dígale a|díganle a|dile que|por si"),
    ("DRAWING", "plano|planos|dibujo|dibujos|especificación|especificaciones|diseño|según el plano|debería|debe ser|debería ser|se supone|debe llevar|debe ir|el plano|la especificación|debería llevar|deben ir|sé que van|sé que va|se que van|se que va|debían ir|tenían que ir|deberían ir|deben llevar|deberían llevar"),
    ("SAYS", "dice|dijo|pide|marca|pidió|quiere|quieren|dijeron|muestra|indica"),
    ("OTHER", "él|ella|ellos|ellas|alguien|el otro turno|el electricista|el plomero|el mayordomo|el ayudante|el inspector|la inspectora|el ingeniero|los otros|la otra cuadrilla|el otro equipo|la otra gente|el compañero|el capataz|el de la noche|los de la noche|los de la noche|el encargado|el supervisor|la otra crew|el otro crew|mi hermano|mi primo|mi compadre|mi hijo|mi ayudante"),
    ("QUESTION", "quién|qué|cuándo|dónde|cómo|cuánto|cuántos|cuántas|cuál|por qué|quien tiene|cuánta"),
    ("DOUBT", "o era|o no sé|o eran|no estoy seguro|no me acuerdo|no estoy segura"),
    ("FIX", "digo no|perdón|perdón no|no perdón|digo|no digo|mejor dicho|corrijo|corrección|no espera|espera|espérate|no espérate|quise decir|quiero decir|me equivoqué|disculpa|no no|más bien|rectifico|ah no|ay no|bórralo|no mejor|o sea|borra eso|olvida eso|en realidad|no es cierto|no miento|miento|que diga|no que|no en realidad|perdon|perdon no|no perdon|no era|sorry|wait|i mean|make that|no wait"),
    ("CORRECTION_ON", "corrección al|corrección a la|corrección para la|corrección para el|corrección de|corrección en|corrección a|corrección para|corrección sobre|corrigiendo|corrijo la|corrijo el|corrección de la|corrección del|corrección en la|corrección en el|cambio en|cambio a|correction on"),
    ("SHOULD_HAVE", "debió ser|debería haber sido|en realidad es|en realidad era|debía ser"),
    ("SCRATCH", "borre|bórreme|bórrele|borra|borren|olvida|olviden|olvídate de|cancela|ignora|ignoren|elimina|quita|descarta|tacha|bórrame|no hagan caso de|no hagas caso de|anula|tira|scratch|scrap"),
    ("LAST_ONE", "la última|lo último|la última nota|el último|la anterior|la nota anterior|el anterior|la grabación anterior|la última grabación|última nota|nota anterior|lo anterior|el último mensaje|last one"),
    ("ALL_THAT", "todo eso|esta nota|esta grabación|todo|esto|todo esto|lo que dije|la nota|esa nota|todo lo que dije|esta|eso"),
    ("HEDGE", "como|como de|más o menos|aproximadamente|casi|alrededor de|cerca de|unas|unos|como a|como unas|como unos|por ahí de|aprox|about|un poco más de|poco más de|poquito más de|cosa de"),
    ("THINK", "creo|creo que|me parece|me parece que|quizá|quizás|tal vez|a lo mejor|yo creo|yo creo que|supongo|supongo que|parece|parece que|pienso que|según yo|si mal no recuerdo|ha de ser|debe medir|probablemente|casi seguro|estoy casi seguro que|yo digo que|si no me equivoco|ha de estar|han de estar|deben de estar|debe de estar|si mal no me acuerdo|hasta donde sé|hasta donde me acuerdo|yo diría que|diría que|se me hace que|se me figura que"),
    # lo que se hizo antes de un acto no dice nada del acto
    ("FILLER", "cortos|cortas|largos|largas|chicos|chicas|antes de encintar|antes de la cinta|antes de poner la cinta|antes de poner cinta|antes de poner el teip|antes del teip|antes de engrapar|listo para la cinta|lista para la cinta|acabé|acabamos|ya acabé|fíjate|mire"),
    ("FILLER", "no le hace falta ni un pedazo|no le hace falta nada|no le hace falta ni un cachito|no le falta ni un pedazo|no le falta ni un cachito|no tiene pendiente nada|ya no tiene pendiente nada|no tiene nada pendiente|ya no tiene nada pendiente|no tiene pendientes|ya no tiene pendientes|nada pendiente|sin pendientes|no queda nada pendiente|ya no queda nada pendiente|no quedó nada pendiente|no dejé nada pendiente|ningún pendiente|no hay pendientes|no hay nada pendiente|ya no hay pendientes|sin nada pendiente|bueno|pues|este eh|eh|ok|okay|sí|así|bien|ya|aquí|ahí|entonces|también|muy|todo bien|listo|lista|terminado|terminada|hice|hicimos|acabo de|acabamos|terminé|terminamos|ahora|hoy|quedando|acá|mira|mire|oye|que|ahorita|otra vez|con mi|muy bien|hecho|hecha|armé|armamos|armado|armada|completo|completa|completamente|perfectamente|ya la|ya lo|para"),
    ("FITTING", "una pieza y otra|una pieza y la otra|pieza y pieza|pieza|fitting|piezas|fittings|parte|la pieza"),
    ("NUMBER", "mark|número|numero|núm|no.|#|marca|marcada|marcado|etiqueta|la número|el número|numerada|number"),
    ("NOT_MARK", "número de teléfono|teléfono|cuarto número|número de parte"),
    ("RUN", "run|corrida|línea|ramal número|tirada|linea|ron|ran|el ron|la corrida|el run|la línea|ronda"),
    ("DASH", "guion|guión|raya"),
    ("THRU", "a la|al|hasta|hasta la|hasta el|a"),
    ("GENERIC", "ducto|conducto|uno"),
    ("INLET", "entrada|la entrada|tronco|principal|el principal|boca grande|lado grande|troncal|del principal|línea principal|la entrada es|main|trunk|el tronco|ducto principal"),
    ("OUTLET", "salida|la salida|boca chica|lado chico|la salida es|extremo chico|el otro extremo"),
    ("BRANCH_WORD", "ramal|rama|brazo|la rama|el ramal|con ramal|la derivación|sale de|salida lateral|branch|ramal de|brazos|piernas|ramales"),
    ("OPENING", "boca"),
    ("SIZE_WORD", "tamaño"),
    ("WIDE", "de ancho|ancho|ancha|wide"),
    ("HIGH", "de alto|alto|alta|de altura|altura|de fondo|de profundidad|de hondo|high"),
    ("SQUARE", "cuadrado|cuadrada|cuadradas"),
    ("LONG", "de largo|de longitud|largo total|de largo total|long|largo|en total|de larga"),
    ("LENGTH", "largo|longitud|el largo|la longitud|el largo es|largo es|el largo total"),
    ("SLOPE", "parte inclinada|la parte inclinada|tramo inclinado|el tramo inclinado|lo inclinado|parte en pendiente|la parte en pendiente|parte sesgada|la parte sesgada|caída es de|caida es de|la caída es de|la bajada es de|bajada es de|la inclinación es de|la inclinacion es de|pendiente es|pendiente de|la pendiente|inclinación|la inclinación|declive|caída de|bajada|slope|la rampa|taper"),
    ("TAKES", "toma|ocupa|usa|agarra|mide|lleva|abarca"),
    ("OFFSETS", "se mueve|desplaza|se desplaza|desvía|se desvía|desplazamiento de|desplazado|brinca|desfase de|desfasa|corre|se corre|desvío de|desplazamiento|desviación de|offset de|desplazada|mueve|se recorre|recorre|un desplazamiento de"),
    ("THROAT", "garganta|radio|radio interior|radio de garganta|radio de la garganta|throat|la garganta|radio de|garganta de|radio interno"),
    ("THROAT", "cuello cuadrado|cuello en escuadra|cuello recto|cuello de escuadra|garganta recta|esquina recta|esquina cuadrada|cuello sin radio|cuello a escuadra"),
    ("WORD", "en medio|de en medio|enmedio|por en medio|en el medio|en el puro medio"),
    ("PIECE_COUNT", "piezas|gajos|segmentos"),
    ("DEGREE", "grado|grados|°"),
    ("ROUND", "redondo|redonda|diámetro|de diámetro"),
    ("SIDE_WORD", "lado|lados|cara|costado|costados|caras|parte de"),
    ("LEVEL", "plano|plana|parejo|pareja|nivelado|nivelada|recta por|queda plano|queda plana|sigue recto|sigue recta|se queda plano|se queda recto|queda recto|queda recta|derecho por|derecha por|derecho de|plana de|plano de|flat|no se mueve|sin pendiente|queda igual|a nivel|se mantiene plano|se mantiene recto|parejo por|se queda parejo|liso|recto por|sigue derecho|queda derecho|queda parejo|queda parejo|se queda plana|se queda derecho|no baja|queda nivelado|va recta|va recto|va derecho|va derecha|va parejo|va pareja|va plano|va plana|va a nivel|queda pareja|quedó recto|quedó recta|quedó parejo|quedó pareja|quedó plano|quedó plana|quedó derecho|parejito|parejita|se queda igual|va derechito|va derechita|queda derechito|queda derechita|derechita|derechito|rectita|planito|planita|va planito|va planita|a plomo|va a plomo|sin mover|no la moví|no lo moví|sigue igual|sigue parejo|sigue pareja|no se movió|sin caída"),
    ("FLAT", "plano|plana"),
    ("MOVE", "mueve|jala|va|se va|inclina|corta|se inclina|tiene una pendiente de|viene"),
    ("MOVE_DOWN", "baja|bajan|bajó|cae|se baja|bajada de|bajando|desciende|la bajé|lo bajé|bajé|bajamos|le bajé|le bajamos"),
    ("MOVE_UP", "sube|suben|subió|se sube|levanta|subiendo|subí|subimos|lo subí|le subí|le subimos|se levanta"),
    ("MOVE_IN", "entré|entramos|la entré|lo entré|le entré|la entramos|lo entramos|entra|entran|mete|meten|se mete|cierra|cierran|se cierra|reduce|reducen|entró|entrando|hacia adentro|se meten|metió|metí|metimos|metido|va hacia adentro|entra hacia adentro|viene hacia adentro|se reduce|le metí|comes in|come in"),
    ("MOVE_OUT", "sale|salen|abre|abren|se abre|ensancha|se ensancha|saca|crece|salió|va hacia afuera|abrió|sale hacia afuera|abriendo|se abren|comes out"),
    ("OFF", "del lado|de la"),
    ("LAID", "medida|medido|medí|medimos|trazada|trazado|tracé|trazamos|marcada|marcado|marqué|hecha|hecho|trazo|medidas|la medí|lo medí|la tracé|lo tracé|el trazo|marcamos|se midió|se trazó|tomé las medidas|la marqué|lo marqué|trazos|tomé medidas|lo hice|la hice|lo trazamos|la trazamos|layout|la medimos|lo medimos"),
    ("FEMALE", "hembra|lado hembra|punta hembra|extremo hembra|la hembra|female|el lado hembra|el extremo hembra|el hembra|la punta hembra"),
    ("MALE", "macho|lado macho|punta macho|extremo macho|el macho|male|el lado macho|el extremo macho|la punta macho"),
    ("END", "extremo|punta|final|extremos|orilla"),
    ("AIR", "aire|el aire|flujo|air|the air"),
    ("LEAVES", "leaves|leaves by|leaves from|leaves through|leaves out|se sale por|escapa por|avienta por|tira por|sale hacia|sale por|sale del|sale de|va saliendo por|se va por|saliendo por|sale por el|sale por la"),
    ("DOWNSTREAM", "corriente abajo|río abajo|downstream"),
    ("SHIPLAP", "rebaje|rebajes|con rebaje|shiplap|rebajado|rebajada|traslape|ship lap|orilla rebajada|el rebaje"),
    ("BUTT", "a tope|tope|de tope|butt|borde recto|orilla recta|al tope"),
    ("GROOVE", "ranura|escalón|el escalón|la ranura|escalon|escalón bajo|escalon bajo|groove|ranuras|el escalón bajo|step|la parte baja del rebaje|lado bajo del rebaje|el lado bajo|lado bajo|el paso bajo|escalón del rebaje|el escalón del rebaje|la parte baja|parte baja|escaloncito|el escaloncito|escalonsito|el filo bajo"),
    ("INSIDE", "mira adentro|mira hacia adentro|mira para adentro|da hacia adentro|ve hacia adentro|apunta adentro|queda hacia adentro|adentro|hacia adentro|por dentro|hacia el interior|mirando adentro|para adentro|por adentro|al interior|pa dentro|del lado de adentro|mirando hacia adentro|inside|hacia dentro|al lado de adentro|adentro del ducto|dentro del ducto"),
    ("OUTSIDE", "afuera|hacia afuera|mira afuera|mira hacia afuera|mira para afuera|da hacia afuera|ve hacia afuera|apunta afuera|queda hacia afuera|por fuera|hacia el exterior|para afuera|por afuera|al exterior|mirando afuera|outside|del lado de afuera|mirando hacia afuera|hacia fuera"),
    ("PANEL", "panel|el panel|tapa suelta|la tapa suelta|panel suelto|la tapa de arriba|panel de arriba|el panel suelto"),
    ("SEATED", "asienta|asentado|asentó|sentó|sienta|cayó|encaja|encajó|entró en|cabe|bien asentado|quedó asentado|asienta bien|cae|entró bien|se asienta|asentada|asentó bien|quedó sentado|sentado|encajó bien|se asentó|cayó en su lugar|embona|embonó|queda asentado|bien sentado|encajado|encajada|se sentó"),
    ("CUT_TO", "cortado a|cortada a|corté a|cortamos a|lo corté a|la corté a|recortado a|recortada a|lo cortamos a|la cortamos a|se cortó a|cortado en|la recorté a|lo recorté a|recorté a|cortada en|lo corte a|la corte a|cortarlo a|acortado a|acortada a|la acorté a|lo acorté a|cortados a|cut to|lo dejé en|la dejé en|lo moché a|la moché a|mochado a|mochada a|lo mochamos a|la mochamos a|moché a|lo dejé a|la dejé a|lo corté de|la corté de|cortado de|cortada de|lo recorté de|la recorté de|quedó cortado a|cortadito a"),
    ("CUT_LENGTH", "cortado a la medida|cortada a la medida|cortado a medida|cortada a medida|lo acorté|la acorté|acortado|acortada|lo corté|la corté|recortado|recortada|recorté la punta|volví a cortar la punta|recorté el extremo|volví a cortar el extremo|volví a cortar el rebaje|cortado al largo|cortada al largo|cut to length|le corté|rehice el rebaje|rehíce el rebaje|corté la pieza|corté el tramo|corté el ducto|corté el recto|cortamos la pieza|cortamos el tramo|corté la recta|corté la sección|lo moché|la moché"),
    ("FULL_LENGTH", "largo completo|entero|entera|tramo completo|sin cortar"),
    ("STAPLE", "engrapo|grapo|grapar|engrapar|grapearla|engraparla|engraparlo|graparla|graparlo|engraparlos"),
    ("STAPLED", "grapado|grapada|engrapado|engrapada|grapados|grapadas|engrapados|engrapadas|engrapé|grapé|engrapamos|grapamos|engrape|lo engrapé|la engrapé|le engrapé|stapled|la grapé|lo grapé|engrapadas todas|estapleado|estapleada|grapeado|grapeada|grapeé|lo grapamos|la grapamos|la engrapamos|lo engrapamos|se engrapó|se grapó|estapliado|estapliada|engrapó|las engrapé|los engrapé|estapleé|le di con la engrapadora|le di con la grapadora|le dimos con la engrapadora|le dimos con la grapadora|le metí la engrapadora|le di con la corchetera|le metí la corchetera"),
    ("STAPLES", "grapas|grapa|las grapas|staples|estaples|estaple|con grapas|corchetes|corchete|los corchetes|con corchetes"),
    ("TURNING", "turning"),
    ("VANES", "direccionales|las direccionales|aletas direccionales|aletas|aleta|álabes|alabes|vanes|las aletas|guías|turning vanes|deflectores|aletas guía|aletas de giro|paletas|venas|aspas"),
    ("IN_PLACE", "instaladas|puestas|adentro|en su lugar|colocadas|puesta|puesto|pegada|pegado|pegadas"),
    ("MISSING", "faltante|se quedaron fuera|fuera|cortado|arrancado"),
    ("WITH", "con|usando|a base de|with|con la|con el|con puro|con pura|con todo y"),
    ("SEALED", "sellado|sellada|sellado con|sellada con|selladas con|sellados con|cerrado con|cerrada con|cubierto con|sellé con|sellamos con|lo sellé con|la sellé con|cerrado|cerrada|sellados|selladas|sellamos|sellé|lo sellé|la sellé|lo cerré con|la cerré con"),
    ("FLAP", "aleta de grapado|aleta de engrapado|aleta de grapar|aleta para grapar|aleta para engrapar|aleta de grapas|solapa de grapado|ceja de grapado|pestaña de grapado|pestaña de engrapado|pestaña de grapar|pestaña para grapar|orilla de grapado|flap|solapa|ceja|pestaña|la pestaña|lengüeta|el flap|la solapa|aleta de engrapar|pestaña de engrapar|la ceja|la pestaña para engrapar|flaps|la lengüeta|solapas|pestaña del papel"),
    ("CLINCHED", "dobladas|doblada|remachadas|clinchadas|abiertas|volteadas|dobladas las puntas|clinched|que doblan|que abren|doblan|abren|puntas dobladas|con las puntas|clinchada|clinchado|clinchados|remachada|remachado|remachados|volteadas las patas"),
    ("LEG", "pata|patas|de pata|pierna|puntas|las puntas|la pata|las patas|con la pata|con las patas|patitas|las patitas"),
    ("CROWN", "corona|calibre"),
    ("EVERY", "cada|a cada|separadas|espaciadas|separación de|con separación de|a una separación de|espaciado de|every|separadas a|espaciadas a|separados|espaciados|puestas cada|una cada|uno cada|van cada|c/|a cada|de a cada|cada una de"),
    ("APART", "de hanger a hanger|de strap a strap|de fleje a fleje|entre hanger y hanger|entre strap y strap|entre las grapas|entre cada grapa|entre los tornillos|entre centros|de una grapa a la otra|de una grapa a otra|de una a la otra|entre una grapa y la otra|entre una grapa y otra|distancia entre grapas|separación entre grapas|espacio entre grapas|uno de otro|una de otra|uno del otro|una de la otra|uno de el otro|entre sí|entre uno y otro|entre una y la otra|de distancia|de distancia entre sí|de grapa a grapa|de colgador a colgador|de soporte a soporte|de colgante a colgante|de tornillo a tornillo|de una a otra|de uno a otro|de separación|de centro a centro|entre grapas|apart|al centro|entre una y otra|de espacio|a centros|on center|entre grapa y grapa|centro a centro"),
    ("TABS", "pestañas|pestañas de cinta|crucetas|crucetas de cinta|crucetas de tape|crucetas de teip|lengüetas de cinta|lengüetas de tape|lengüetas de teip|orejas de cinta|orejitas de cinta|tiras de cinta|tiras cruzadas|cross tabs|tabs|cross-tabs|tiritas|tirillas|tirillas de cinta|tirillas de tape|tirillas de teip|tiritas de cinta|cintas cruzadas|tiras|pestañas cruzadas|crosstabs|tabs de cinta|lengüetas"),
    ("NOT_LOGGED", "no me apuntes|no me anotes|no me registres|no me cuentes|no me apunten|no me anoten|no me la apuntes|no me lo apuntes|no me pongas|no apunten|no la apuntes|no lo apuntes|no la anotes|no lo anotes|no registres|no registren|no anotes|no anoten|no cuentes|no cuenten|no apuntes|sin contar"),
    ("PARTLY", "uno sí y uno no|una sí y una no|uno sí y otro no|una sí y otra no|un lado sí y otro no|un lado sí y uno no|una sí otra no|uno sí otro no|salteado|salteada|salteadas|salteados|a medias|a la mitad|por la mitad|a medio camino|parcialmente|en partes|por partes|a medio hacer"),
    ("UNDONE", "se está pelando|se anda pelando|se peló|se está soltando|se anda soltando|se está desprendiendo|se está zafando|se está despegando|se despega|está despegada|está despegado|se despegó|quedó parada|está parada|está levantada|se levantó|se está levantando|quedó suelta|está suelta|la arranqué|lo arranqué|la arrancamos|lo arrancamos|se despegó la cinta|la quité|lo quité|la quitamos|lo quitamos|las quité|las quitamos|los quité|se la quité|se la quitamos|le quité la cinta|le quitamos la cinta|le arranqué la cinta|se cayó|se cayeron|no pegó|no pega|se soltó|se soltaron|se zafó|se zafaron|la tuve que quitar|lo tuve que quitar|tuve que quitarla|tuve que quitarlo|tuvimos que quitarla|tuvimos que quitarlo|hubo que quitarla|le quité las grapas|le quitamos las grapas|le quité las aletas|le quitamos las aletas|las saqué|las sacamos|le arranqué el teip|le quité el teip|le quité el tape|le quitamos el teip|se le despegó|se le está despegando|se le cayó|se le está cayendo|se está cayendo|se le soltó|se le levantó|se le está levantando|se le zafó|se me despegó|se me cayó|se me levantó|se me soltó|se está levantando|se anda despegando|quedó despegada|está floja|quedó floja|se la quitaron|se lo quitaron|la quitaron|lo quitaron|le quitaron la cinta|le quitaron el teip|le quitaron las grapas|le arrancaron la cinta|la arrancaron|le saqué las grapas|saqué las grapas|le sacamos las grapas|le saqué las aletas|le sacaron las grapas|le quitaron las aletas|amaneció despegada|amaneció despegado|amaneció suelta|se le quitó|se la arranqué|se la arrancaron"),
    ("BENT", "dobladas|bien dobladas|doblados|bien apretadas|aplastadas|dobladas y apretadas|bien dobladas y apretadas|bent|todas dobladas|dobladas bien apretadas|bien aplastadas|remachadas|le doblé|les doblé|le volteé|le di vuelta a|les di vuelta a|dobladitas|bien dobladitas|aplastados|bien aplastados|bien doblados|se doblaron|se voltearon|volteadas"),
    ("TAPED", "encintado|encintada|encintados|encintadas|encinté|encintamos|taped|tapeado|tapeada|teipeado|teipeada|teipeé|tapeadas|lo encinté|la encinté|le encinté|teipiado|teipiada|tapeamos|teipeamos|se encintó|tapeados|tapeé|tapié|lo encintamos|la encintamos|encintó|teipado|teipada|con cinta puesta|las encinté|los encinté|taipeado|taipeada|tapiado|tapiada"),
    ("TAPE_IT", "encinto|encintar|encintarla|encintarlo|encintarlos|teipear|tapear|teipearla|teipearlo|ponerle cinta|poner cinta|poner la cinta|poner el teip|ponerle teip|ponerle la cinta|ponerle el teip|encintarle|tapearla|tapearlo"),
    ("TAPE", "la tape|su tape|la teip|cinta|teip|tape|la cinta|el teip|cintas|taip|el tape|teipe|cinta foil|cinta de aluminio|huincha|la huincha|huincha de aluminio|la huincha de aluminio"),
    ("RUBBED", "tallado|tallada|frotado|frotada|talladas|tallados|frotadas|frotados|tallé|froté|la tallé|lo tallé|bien tallado|bien tallada|bien frotado|bien frotada|restregado|restregada|rub down|rubbed down|rubbed|sobado|sobada|la froté|lo froté|tallamos|frotamos|alisado|alisada|planchado|planchada|bien planchado|bien planchada|la sobé|bien raspado|bien raspada|le di una raspada|le dimos una raspada|la tallamos|lo tallamos|la frotamos|bien restregada|bien restregado|restregué|sobada bien|bien sobada|bien sobado|la restregué|bruñido|bruñida|presionado|presionada|rubdown|pulida|bien presionada|bien presionado|la alisé|talló|frotó|la planché|rob down|pasada con la espátula|le pasé la espátula|pasé la espátula|le pasé el squeegee"),
    ("RUB", "rubbear|rubbearla|rubbearlo|tallar|frotar|tallarla|frotarla|tallarlo|frotarlo|restregar|restregarla|sobar|sobarla|tallar la cinta|frotar la cinta|alisar|alisarla|bruñir|pasado la espátula|pasado la cuña|pasarle la espátula|pasarle la cuña|dado su tallada|darle su tallada|darle la tallada|darle una tallada|hacerle el rub down|la tallada|su tallada"),
    ("SCRIM", "malla|scrim|tejido|trama|tramado|entramado|rayas|cuadrícula|cuadriculado|cuadritos|rayitas|los cuadritos|la rejita|cuadrito|hilos|los hilos|mallita"),
    ("SHOWS", "se vio|se vió|se vieron|se alcanzó a ver|se miró|se notó|se marcó|se ve|se ven|se nota|aparece|se marca|se mira|se miran|se notan|se marcan|shows|se alcanza a ver|ya se ve|se vea|se viera|se note|se veía|que se vea|visible|se transparenta|se le ve|se le ven|se les ve|se les mira|se les nota|se le vio|se les vio|se le veía|se les veía|se le mira|se le miran|se le nota|se le notan|se le miró|se le miraron|se les miró|se le notó|se le notaron|se le marcó|se le marca|se trasluce|se dibuja|se calca|se le alcanza a ver|se transparentó|se traslució|se dibujó"),
    ("SEE", "ver|ver la|alcanzo a ver|alcanza a ver|veo|vemos|se puede ver|ves"),
    ("WIPED", "limpié la superficie|limpié|limpiamos|limpia y seca|limpio y seco|limpiada|limpiado|superficie limpia|seca y limpia|limpiado y seco|la limpié|lo limpié|le limpié|limpio|limpia|le pasé un trapo|limpiamos la superficie|sin polvo|limpié el polvo|limpia la superficie|le quité el polvo|limpiada y seca|bien limpia|bien limpio|la limpiamos|la superficie limpia|la superficie está limpia|limpié bien|seco y limpio|pasé un trapo|limpié primero|limpias|sin polvo ni grasa|le limpié el polvo|sequé|lo limpiamos|limpió|superficie limpia y seca|limpié el foil|la superficie estaba limpia|estaba limpia|estaba limpio|la superficie quedó limpia|la superficie bien limpia"),
    ("WIPE", "limpiar|limpiarla|limpiarlo|limpiar la superficie"),
    *filth(),
    ("PREHEATED", "preheated|precalenté|precalentado|precalentada|calenté|calentamos|lo calenté|la calenté|calentado|calentada|precalentamos|calenté la superficie|le di calor|calenté primero|calentamos la superficie|con la plancha primero|la precalenté|lo precalenté|calentamos primero|se precalentó|calenté el foil|le di calor primero|la calentamos|lo calentamos|calenté con la plancha|le dimos calor"),
    ("TRIMMED", "recorté la fibra|recortada la fibra|quité el sobrante|quité la fibra|recorté el sobrante|recorté la fibra que sobraba|quité la fibra que sobraba|corté el sobrante|quité el aislante sobrante|recorté el aislante|quité el exceso|recortado el sobrante|recorté el exceso|quité lo que sobraba|recorté lo que sobraba|recortado el exceso|recortamos el sobrante|quitamos el sobrante|quité la fibra sobrante|recorté la fibra sobrante|recortada la fibra sobrante|corté la fibra que sobraba|limpié la fibra sobrante|fibra recortada|recortado el aislante|sobrante recortado|recorté el aislante sobrante|corté el aislante sobrante|quité el aislamiento sobrante|recorté el aislamiento|quité el aislamiento que sobraba|fibra sobrante recortada|quité el aislante que sobraba|recorté el aislante que sobraba|recortamos la fibra|quitamos la fibra sobrante|corté lo que sobraba|sobrante quitado|le quité el sobrante|le quité la fibra sobrante|le recorté la fibra sobrante|le recorté el sobrante|exceso recortado|quité el exceso de fibra|recorté el exceso de fibra"),
    ("TRIM", "recortar|recortarla|recortarlo|recortarlas|recortarlos|recortársela|recortarle|rebajarla|rebajarlo|rebajarle|quitarle el sobrante|quitarle lo sobrante|recortar la fibra|quitar el sobrante|recortar el sobrante|recortar el aislante"),
    ("GAP", "un claro|un clarito|claro de|clarito de|claro entre|claro en la|junta abierta|unión abierta|costura abierta|esquina abierta|hueco|huecos|abertura de|espacio de|separación en|rendija|rendijas|gap|gaps|abertura en|abertura|aberturas|espacio en la junta"),
    ("JOINT", "junta|juntas|unión|costura|costuras|uniones|la junta|esquina|esquinas"),
    ("NO_DAMAGE", "sin daños|sin roturas|sin rasgaduras|sin daño|no hay roturas|ninguna rotura|sin golpes|sin rotura|sin rasgones|sin agujeros|sin rajaduras|no tiene daños|sin desgarres|el foil está bien|no tiene roturas|sin ningún daño|no hay daños|sin daños en el foil|ningún daño"),
    ("AMISS", "|".join(es_harms.AMISS)),
    ("FACING", "foil|papel|forro|aluminio|el foil|barrera|recubrimiento"),
    ("REPAIRED", "reparé|reparado|reparada|lo reparé|la reparé|parché|parchado|parchada|arreglé|arreglado|arreglada|la arreglé|lo arreglé|le puse un parche|parche|parchamos|reparamos|arreglamos|lo parché|la parché|ya reparado|ya reparada|se reparó|tapé el hoyo|tapé|la tapé|lo tapé|cubrí|cubierto|se parchó|se arregló|lo tapamos|la tapamos|remendé|remendado|reparación"),
    ("TIE_RODS", "varillas|tirantes de refuerzo|reforzado|reforzada|refuerzos|refuerzo|canales de refuerzo|varillas de refuerzo|tie rods|canales|con varillas|con refuerzos"),
    ("SCREWS", "atornillado|atornillada|atornillados|atornilladas|atornillé|lo atornillé|la atornillé|atornillamos|tornillería|la tornillería|tornillos|tornillo|pijas|pija|screws|los tornillos"),
    ("WASHERS", "rondanas|rondana|arandelas|arandela|roldanas|washers|rondanas cuadradas"),
    ("ON_ITS_OWN", "por su cuenta|sus propios colgantes|con sus propios soportes|con sus propios colgantes|soportado aparte|colgado aparte|aparte|independiente|por separado|sus propios soportes|soporte propio|con su propio soporte|de manera independiente|su propio soporte|colgado por separado|soportes propios|colgado independiente"),
    ("ON_DUCT", "colgado del ducto|sobre el ducto|apoyado en el ducto"),
    ("WEIGHS", "pesa|peso|pesa como"),
    ("ACCESSORY", "compuerta|serpentín|ventilador|calentador|accesorio|motor|actuador|damper|humidificador"),
    ("BOARD", "panel de fibra|tabla|tabla de fibra|tablero|lámina de fibra|board|placa|ductboard|fibra|duct board|panel|placa de fibra|lámina|tablero de fibra|panel de fibra de vidrio|cartón"),
    ("EI", "ei|rigidez|clase"),
    ("STATIC", "estática|presión estática|presión|static|la presión|de presión"),
    ("NEGATIVE", "negativa|menos|negativo"),
    ("AIRFLOW", "flujo de aire|caudal|volumen|pasan"),
    ("AIR_TEMP", "temperatura del aire|aire de adentro|el aire de adentro|aire interior|el aire interior|el aire por dentro|aire por dentro|el aire que pasa|aire que pasa|el aire que corre|el aire anda a|aire de suministro|aire adentro del ducto|aire del ducto|el aire está a|el aire va a|el aire adentro|temperatura dentro del ducto|dentro del ducto|el aire dentro"),
    ("TEMP", "temperatura|hace|estamos a|hacía|superficie|afuera|la superficie está a|aquí adentro|ambiente|hay|estaba a"),
    ("LEAK_TEST", "prueba de fuga|prueba de fugas|prueba de hermeticidad|probamos fugas|prueba de presión|fuga de|fugas|leak test|prueba de estanqueidad|fuga|la prueba de fuga|fugó"),
    ("HUNG", "colgado|colgada|colgados|colgadas|colgué|colgamos|ya está arriba|quedó arriba|está arriba|ya va arriba|ya está en su lugar|ya quedó en su lugar|la colgué|lo colgué|instalado|instalada|montado|montada|ya arriba|hung|la colgamos|lo colgamos|instaladas todas|ya colgada|ya colgado|la instalé|lo instalé|puesta arriba|la subimos|lo subimos|la subí|lo subí|ya está colgada|ya está colgado|está colgado|está colgada|quedó colgada|quedó colgado"),
    ("HANG", "colgar|colgarla|colgarlo|subirla|subirlo|instalarla|instalarlo|montarla|montarlo"),
    ("ON_BENCH", "en el banco|en la mesa|en el taller|en el piso|en el suelo|sin colgar|en la banca|sobre la mesa|en la mesa de trabajo|en el banco de trabajo"),
    ("TIED", "unida a|unido a|conectado a|conectada a|unida con|unido con|conectado con|conectada con|amarrada a|amarrado a|pegada a|pegado a|unida a la|unido al|unida al|unido a la|conectada a la|conectado al|conectada al|conectado a la|la uní a|lo uní a|la conecté a|lo conecté a|la uní con|unidos a|unidas a|unida con la|unido con el|cerrada con la|conectada con la|conectado con el|se unió a|la conecté con|la uní a la|lo uní al|junta con la|junto con la|lo conecté a la|la conecté a la|la conecté al|y unida a la|enganchada a|enganchado a|empatada con|empatado con|empatada a|empatado a|unida y encintada a|unido y encintado a|unida y encintada con"),
    ("REDID", "rehice|rehíce|volví a hacer|la rehice|rehecha|rehecho|rehicimos"),
    ("SHIFT", "nota de turno|inicio de turno|empezamos|empezando|empiezo|arrancamos|buenos días|buen día|comenzamos|iniciando|inicio del turno|hoy estamos|estamos en|turno|para hoy|hoy vamos|comienzo|arrancando|hoy trabajamos|nota del turno|al empezar|inicio del día|iniciamos"),
    ("DAY", "lunes|martes|miércoles|jueves|viernes|sábado|domingo"),
    ("CLOSING", "cierre|cerrando|cerramos con"),
    ("COUNTED", "cajas|caja|personas|horas|hora|minutos|minuto|días|rollos|rollo|veces|de nosotros|dólares|pesos|por ciento|hombres|pisos|hojas|tubos|botes|semanas|años|de la tarde|de la mañana|de ellos|de ellas|codos|piezas más|muchachos|trabajadores|compañeros|meses|viajes|ayudantes|escaleras|capas|cubetas|segundos|fittings|tramos|tapas|reducciones|rectos|rectas|transiciones|collarines|derivaciones|tes|plenos|rejillas|ductos|conductos|niveles|plantas"),
    ("ROOM", "cuarto|salón|oficina|edificio|teléfono|página|nivel|hoja|revisión|a las|las|desde las|hasta las|camión|lote|piso|eje|columna|son las|a la una|apartamento"),
    ("SIDES_ALL", "todos los lados|por todos los lados|todas las caras|todos lados"),
    ("BUILDING", "loseta|losetas|plafón de techo|placa de techo|tablaroca|tabla roca|triplay|puerta|puertas|ventana|ventanas|lámpara|lámparas|luminaria|viga|vigas|columna de acero|tubo|tubos de agua|tubería|charola|escalera de mano|andamio|mesa|carrito|camión|tarima|hueco en la pared|hueco del muro|hueco en el muro|boquete|domo|marco de la puerta|madera|polín|polines|barrote|escotilla|retazo|sobrante de panel|celular|foto"),
    ("ONE_SIDE", "un lado|un solo lado|de un lado|de un solo lado|nomás un lado"),
    ("WORD", "la corté mal|lo corté mal|corté mal|me quedó mal cortado|me quedó mal cortada|la corté chueca|lo corté chueco|mal cortado|mal cortada|de corrido|todo corrido|toda corrida|cinta corrida|tape corrido|teip corrido|corrido a lo largo"),
    ("FILLER", "|".join(f"{ease} {to}" for ease in ("no batallé", "no batalle", "no batallamos", "no costó", "no me costó", "no tuve problema", "no tuve bronca", "no hubo problema", "no hubo bronca", "sin batallar", "no se me dificultó") for to in ("para", "con", "en"))),
    ("FILLER", "justo al|justo cuando|justo antes|justo a tiempo|justo en|justo lo|lo justo|no me quedó nada pendiente|no me quedó pendiente nada|ya no me quedó nada pendiente|no me falta nada|ya no me falta nada|nada que reportar|sin novedad"),
    ("FILLER", "|".join(f"que se {had}" for had in ("había despegado", "había soltado", "había caído", "había levantado", "había zafado", "había pelado"))),
    ("TRADE_NOISE", "cinta de medir|cinta métrica|huincha de medir|la huincha de medir|huincha métrica|corchetera|la corchetera|engrapadora|grapadora|almorzar|lonche|comida|radio|cajas de grapas|rollos de cinta|se acabó la cinta|se acabaron las grapas|más cinta|más grapas|rollo de cinta|caja de grapas|derecho a|ahorita vengo|no hay más cinta|no hay más grapas|ya no hay cinta|ya no hay grapas|ya no hay teip|no tenemos cinta|no tenemos grapas|la cinta métrica|la cinta de medir|no hay cinta en el camión|faltan grapas en la caja|falta cinta en la caja"),
    ("FILLER", "|".join(f"{took} la cinta {tape}" for took in ("saqué", "sacamos", "quité", "puse", "pasé", "usé", "agarré", "perdí", "dejé", "solté", "saco") for tape in ("métrica", "de medir"))),
    *es_verbs.sayings(),
    ("MOVE_IN", "entrara|se metiera|metiera|cerrara|se come|se comen|se achica|se achican|achica|se angosta|angosta|se encoge|se cierran|se recoge|se jala para adentro|se jala hacia adentro|se hace para adentro"),
    ("WORD", "le cayó nada|le cayó encima|le cayó polvo|cayó encima"),
    ("MOVE_DOWN", "bajara|cayera"),
    ("MOVE_UP", "subiera"),
    ("MOVE_OUT", "saliera|abriera|se ensanchan|se expande|se hace para afuera|se estira|se agranda|agranda"),
    ("FILLER", "qué más|a ver qué más|y qué más|ah qué más|aun así|y aun así|aún así|de todos modos|de todas formas|de todas maneras|como quiera|así y todo"),
    ("TEMP", "amaneció a|amanecimos a|estábamos a|andábamos a|estamos como a|el termómetro marca|el termómetro marcaba|marcaba el termómetro"),
    ("WORD", "fuga de agua|fuga del tubo|la fuga del tubo|fuga de la tubería|fuga del techo|fuga del baño|fuga del drenaje|la fuga de arriba"),
    ("TIE_RODS", "canal|un canal|su canal|los canales|tirante|tirantes|un tirante"),
    ("CUT_LENGTH", "volví a hacer el shiplap|volví a hacer el rebaje|volví a sacar el shiplap|volví a sacar el rebaje|volví a cortar el shiplap|le saqué otro shiplap|le hice otro shiplap"),
    ("HAVE", "le pegó|les pegó|le puso|le pusieron|le pegaron|le echaron|le dieron"),
    ("BE", "quedaba|quedaban|quedara|me quedaba|le quedaba|nos quedaba"),
    ("STAPLES", "grapita|grapitas|grapota|grapotas|las grapitas|la grapita"),
    ("TAPE", "foil listada|foil listado|la foil listada|el foil listado|foil aprobada|foil aprobado|cintita|la cintita|teipcito|tapecito|la tape aquella"),
    ("VANES", "aletitas|las aletitas|guiítas|las vanes|los vanes|las guías"),
    ("SAME_THING", "otro tanto|otros tantos|lo propio|la misma cantidad|la misma cosa exacta"),
    ("SCRIM", "el dibujito|dibujito del foil|el dibujito del foil|dibujo del foil|el dibujo del foil|dibujito|cuadritos del foil|los cuadritos del foil|la malla del foil|la telita del foil|el tejidito"),
    ("FILLER", "si dios quiere|si dios nos da licencia|si dios nos deja|dios mediante|con el favor de dios|primero dios|gracias a dios|bendito dios|si diosito quiere|si no pasa otra cosa|si todo sale bien|a ver si no me regañan|a ver si no nos regañan|a ver si no me corren|a ver si no se enoja|a ver si no se enojan|a ver si no me matan|a ver qué dice"),
    ("WORD", "quién sabe a cuánto|quién sabe a cómo|quién sabe cuánto|quién sabe a qué|sabrá dios a cuánto|no sé a cuánto|no sé ni a cuánto|vaya usted a saber a cuánto"),
    ("STAPLES", "grap|grp|grps|graps"), ("TAPE", "cta|cnta|cint"), ("PIECE_COUNT", "pz|pzs|pzas|pza"),
    ("FILLER", "en la mañana|en la mañanita|por la mañana|esta mañana|hoy en la mañana|hoy temprano|muy temprano|tempranito"), ("LATER", "mañana en la mañana|mañana por la mañana|mañana temprano|pasado mañana temprano"),
    ("WORD", "|".join(f"{was} sin luz" for was in ("andamos", "andábamos", "estuvimos", "estamos", "nos quedamos", "trabajando", "todo el día", "la obra")) + "|sin luz eléctrica|sin luz ni agua|sin luz y sin agua|sin luz en el edificio|sin luz en la obra|sin luz en el piso|sin luz todo el día|sin luz toda la mañana"),
    ("ONE_SIDE", "|".join(f"de {drop} {of} lado" for drop in ("caída", "bajada", "desnivel", "inclinación") for of in ("de un solo", "de un", "por un solo", "por un", "del puro", "de un mismo"))),
    ("FILLER", "|".join(f"{lacked} {thing}" for lacked in ("me faltó", "nos faltó", "me faltaba", "nos faltaba", "me faltaron", "nos faltaron", "faltó", "falta", "me falta", "nos falta") for thing in ("material", "tiempo", "gente", "personal", "manos", "una mano", "espacio", "luz", "escalera", "andamio", "board", "tablero"))),
    ("FILLER", "|".join(f"{no} {bubble}{where}" for no in ("sin", "sin ninguna", "sin una", "ni una", "ni una sola", "no tiene", "no trae", "no hay", "no hubo", "no se le ven", "no le quedaron", "no quedaron") for bubble in ("burbujas", "burbuja", "arrugas", "arruga", "bolsas", "bolsas de aire", "globos") for where in ("", " en la cinta", " en el tape", " la cinta"))),
    ("VANES", "|".join(f"{vanes} no {were} al revés" for vanes in ("las aletas", "los vanes", "las guías", "las vanes") for were in ("quedaron", "van", "están"))),
    ("TRADE_NOISE", "|".join(f"{place} sucia" for place in ("la obra está", "la obra anda", "el área está", "la troca está", "traigo la ropa", "la escalera está"))),
    ("TRADE_NOISE", "|".join(f"{place} sucio" for place in ("el piso está", "el cuarto está", "el lugar está", "el camión está"))),
    ("TRADE_NOISE", "|".join(f"{place} {how}" for place in ("el piso está", "el piso estaba", "el suelo está", "el techo está", "el camión está", "el cartón está") for how in ("mojado", "húmedo", "empapado", "seco"))),
    ("FILLER", "uno por uno|una por una|uno a uno|una a una"),
    ("WORD", "supply house|supply store|el del supply|los del supply|la casa de supply|la tienda de supply"),
    ("SHOWS", "se asoma|se asoman|asoma|se distingue|se distinguen|se pinta|se alcanza a notar|se adivina"),
    ("RUBBED", "pasada la espátula|pasada la cuña|pasada la paleta|pasado el squeegee|pasado el rodillo|pasada la tarjeta|bien pasada la espátula|bien alisada|bien alisado|bien planchadita|bien talladita|bien restregadita"),
    ("LAID", "la dibujé|lo dibujé|dibujé|dibujamos|dibujada|dibujado|la rayé|lo rayé|rayé|rayada|rayado|la tracé|la dibujamos|lo dibujamos|la calqué|lo calqué"),
    ("HUNG", "ya subió|ya se subió|ya lo subieron|ya la subieron|ya está subido|ya está subida|subido y amarrado|subida y amarrada"),
    ("DRAWING", "|".join(f"{rule} {says}" for rule in ("la regla", "la norma", "el libro", "el reglamento", "lo normal", "lo correcto", "lo permitido", "el límite", "el máximo", "lo reglamentario") for says in ("es", "dice", "pide", "marca", "manda", "son", "permite", "era", "es de", "son de"))),
    ("BE", "me salió|nos salió|me salieron|nos salieron|me salió de|me salió a"),
    ("DRAWING", "debí darle|debí ponerle|debí dejarle|debí hacerle|debí usar|debía darle|debía ir|debía ser|debió ir|debió llevar|tenía que ir|tenía que ser|había que darle|había que ponerle|tocaba darle"),
    ("DRAWING", "en el papel dice|en el papel pide|en el papel va|en el papel van|en el papel viene|en el papel marca|en el papel es|en el papel lleva|en el papel sale|según el papel|en papel|en el planito|en los papeles|en el dibujo|en la lámina del plano"),
    ("WORD", "regresó|me lo regresó|me la regresó|nos lo regresó|nos la regresó|me lo regresaron|me la regresaron|lo regresó|la regresó|lo regresaron|la regresaron"),
    ("GAP", "me cabe una moneda|cabe una moneda|le cabe una moneda|cabe un dedo|me cabe un dedo|le cabe un dedo|cabe la uña|me cabe la uña|cabe una tarjeta|me cabe una tarjeta|cabe el lápiz|cabe la punta del lápiz|de luz"),
    *es_verbs.looking(),
    *es_verbs.joinings(),
    *es_verbs.lacking(),
    *es_verbs.changed(),
    *es_verbs.openings(),
    ("UNHEATED", "en frío|la puse en frío|se la puse en frío|le puse la cinta en frío|así en frío|en frio"),
    ("NO_DAMAGE", es_verbs.UNHARMED),
    *es_harms.no_harms(),
    *not_the_duct(),
    *nothing_ails(),
    ("TIGHT", "|".join(f"no {whom}{fits} ni {thing}" for whom in ("", "le ", "me ", "les ") for fits in ("cabe", "entra", "pasa", "cabía", "entró") for thing in ("una moneda", "un dedo", "la uña", "una uña", "un papel", "una tarjeta", "una hoja", "la navaja", "un pelo", "el aire", "luz"))),
    ("WILL", "|".join(f"{whom} {to}" for whom in ("le", "les", "las", "se las", "se la", "se lo") for to in ("coloco", "acomodo", "instalo", "atornillo", "fijo", "clavo", "disparo", "planto", "aplico", "pongo", "meto", "echo", "colocamos mañana") if whom != "las" or to not in ("pongo", "meto", "echo"))),
    ("HAVE", "|".join(f"{whom}{did}" for whom in ("le ", "les ", "se le ", "") for did in ("clavé", "clavamos", "disparé", "disparamos", "acomodé", "acomodamos", "coloqué", "colocamos", "clavaron") if whom != "se le " or did.endswith("aron")) + "|le pegué|le zampamos|les planté|le plantamos|se le clavaron"),
    ("WITH", "|".join(f"{held}{end} con" for held in ("prensad", "agarrad", "cosid", "fijad", "asegurad", "pespuntead") for end in ("o", "a", "os", "as")) + "|sujeto con|sujeta con|la cosí con|lo cosí con|la agarré con|lo agarré con|la aseguré con|lo aseguré con|la fijé con|lo fijé con"),
    ("RUBBED", "le pasé la llana|le pasé una llana|la bruñí|lo bruñí|bruñí|la bruñimos"),
    ("FILLER", "como debe ser|como debe de ser|como tiene que ser|como se debe|como dios manda|como es debido|como debe ir|como debe quedar|al cien|al cien por ciento|al puro cien"),
    ("WORD", "|".join(f"{before} {whom}{done}" for before in ("antes de que", "para que", "sin que", "hasta que") for whom in ("la ", "lo ", "las ", "los ", "le ", "se la ", "se lo ", "") for done in ("corte", "grape", "engrape", "encinte", "talle", "limpie", "selle", "cuelgue", "recorte", "doble", "caliente", "raspe"))),
    *es_verbs.forms(),
    *(row for row in en.CONCEPTS if row[0] in _TRADE),
)  # fmt: skip

KINDS = (
    *es_voices.KINDS,
    ("straight", "pieza derecha|derecha pieza|rectito|tramo derecho|recto|pieza recta|tramo recto|tramo|sección|secciones|ducto recto|conducto recto|straight|tramos|rectos|recta|tramos rectos|piezas rectas|sección recta|tubo recto|ducto derecho"),
    ("transition", "red.|redn.|reducc.|trans.|transic.|redu|reduccioncita|transición|reducción|reductor|reducer|transition|ampliación|transiciones|reducciones|pieza de reducción|pieza de transición|aumento|reductora|cono"),
    ("offset", "offset|desvío|pieza de desvío|desfase|desplazamiento pieza|ese|quiebre|compensación"),
    ("elbow", "codo radial|codo radiado|codo curvado|codo|codos|elbow|ell|el codo|codo curvo|codo curveado|codo curveadito|codo redondo|codo redondeado|codo suave|codo largo|codo corto|codo abierto|codo de radio largo|codo de radio corto|codo cuadrado|codo de radio|codo recto|codito"),
    ("tee", "te|tee|la te|una te|ti|pieza te|tés"),
    ("branch", "saddle|sadle|saddle tap|bajante|bajantes|derivación|toma|tap|take off|takeoff|derivaciones|injerto|silleta|toma lateral|entronque|ramificación|take-off"),
    ("wye", "yee|ye|pantalón|i griega|wye|pantalones|y griega|pieza y|bifurcación|pantaleta|horqueta"),
    ("end_cap", "tap.|tapadera|tapita|taponcito|tapa|tapón|end cap|tapa final|tapas|tapa ciega|cap|tapa de extremo|tapa terminal"),
    ("collar", "collarín|collar|boca redonda|collarines|spin in|collar redondo|boot|start collar|bota|salida redonda|cuello|cuello redondo"),
    ("access_door", "puerta de acceso|compuerta de acceso|puerta de registro|access door|puerta de inspección|registro de acceso|puertita de acceso|puertas de acceso"),
    ("register", "rejilla|abertura para rejilla|register|boca de rejilla|difusor|hueco para la rejilla|registro|abertura de rejilla|abertura para la rejilla|grille|boquilla|marco de rejilla|rejillas"),
    ("equipment_connection", "|".join(f"{joined} {to} {machine}" for joined in ("conexión", "unión", "acople") for to in ("de la", "a la", "con la", "de", "a") for machine in ("uma", "evaporadora", "condensadora", "rtu", "ahu", "paquete", "minisplit")) + "|" + "|".join(f"{joined} {to} {machine}" for joined in ("conexión", "unión", "acople") for to in ("del", "al", "con el", "de", "a") for machine in ("fan coil", "fancoil", "rtu", "paquete", "chiller", "rooftop", "air handler", "aire acondicionado")) + "|equipment connection|unit connection|equipment conexion|conexion de equipment|conexión de equipo|conexión de la manejadora|conexión de manejadora|conexión de la máquina|conexión de la unidad|conexión de máquina|conexión a equipo|conexión a manejadora|conexión de aire acondicionado|unión de equipo|unión a la manejadora|unión con el equipo|conexión al equipo|conexión a la manejadora|conexión a la máquina|conexión a la unidad|conexión con la manejadora|conexión con el equipo|conexión del equipo|unión al equipo|conexión al aire acondicionado|conexión con la unidad|conexión a la manejadora de aire"),
    ("damper_sleeve", "manga|mangas|manguito del damper|manguito de compuerta|manguito de la compuerta|manguito de damper|manguito cortafuego|manguito cortafuegos|manguito contra fuego|sleeve del damper|sleeve de damper|sleeve de la compuerta|sleeve de compuerta|sleeve|fire damper sleeve|manga de compuerta|manga del damper|manga de la compuerta|manga cortafuego|funda de compuerta|damper sleeve|manga de damper|compuerta cortafuego|manga de compuerta cortafuego|manga para compuerta|funda de la compuerta|manga del damper contra fuego|compuerta contra fuego|camisa de compuerta|camisa del damper"),
    ("plenum", "plen.|caja de aire|pleno|plenum|caja plenum|cajón|plénum|caja de plenum|caja de distribución|caja pleno"),
    ("hanger", "trapecios|trapecio|trapeze|trapezes|cuelgues|abrazaderas|flejes|straps|colgantes|soportes|colgadores|hangers|colgaderas|colgante|los colgantes|los soportes|soportería"),
    ("repair", "reparación|repair|remiendo|reparaciones"),
)

SIDES = (
    *es_voices.SIDES,
    ("top", "arriba|la parte de arriba|tapa de arriba|lado de arriba|parte superior|superior|cara de arriba|la de arriba|por arriba|el lado de arriba|de arriba|la tapa de arriba|cara superior|lado superior|top|la parte superior|el lado superior|el techo|el de arriba"),
    ("bottom", "abajo|la parte de abajo|lado de abajo|parte inferior|inferior|fondo|el fondo|por abajo|el lado de abajo|de abajo|cara de abajo|cara inferior|lado inferior|la base|bottom|la parte inferior|el lado inferior|el piso|el de abajo"),
    ("left", "left|left side|izquierdo|izquierda|lado izquierdo|la izquierda|cara izquierda|por la izquierda|costado izquierdo|del lado izquierdo|a la izquierda"),
    ("right", "right|right side|derecho|derecha|lado derecho|la derecha|cara derecha|por la derecha|costado derecho|del lado derecho|a la derecha"),
    ("left right", "por los costados|por ambos costados|por los lados|en los costados|de los costados|a los costados|por lado|por cada lado|de cada lado|a cada lado|en cada lado|por banda|de cada banda|por cada costado|de cada costado|por costado|los dos lados|ambos lados|cada lado|los lados|a los lados|por los dos lados|por ambos lados|los costados|en los lados|de los dos lados|de ambos lados|ambos costados|en ambos lados|en los dos lados|izquierda y derecha|izquierdo y derecho|los dos costados"),
    ("top bottom", "arriba y abajo|abajo y arriba|por arriba y por abajo|por arriba y abajo|arriba y por abajo"),
)

SERVICES = (
    ("exhaust", es_verbs.hoods()),
    ("supply", "suministro|inyección|de suministro|impulsión|supply|de inyección"),
    ("return", "retorno|de retorno|return|regreso"),
    ("exhaust", "extracción|de extracción|extracción de la cocina|extracción de cocina|extracción de la campana|extracción de la campana de la cocina|exhaust|escape|de escape"),
    ("outside", "aire exterior|aire de afuera|aire fresco|toma de aire|aire nuevo"),
)

CLOSURES = (
    *es_voices.CLOSURES,
    *es_verbs.tapes(),
    ("tape_pressure", "cinta de presión|cinta sensible a la presión|cinta a presión|pressure tape|teip de presión|teip a presión|cinta sensible a presión|tape de presión|cinta adhesiva de presión|cinta sensitiva a la presión"),
    ("tape_heat", "cinta de calor|cinta térmica|cinta de planchar|heat tape|teip de calor|cinta termoactivada|cinta activada por calor|cinta que se plancha|cinta de plancha|cinta activada con calor|tape de calor|cinta al calor|cinta termosellable"),
    ("mastic", "mastiqueado|mastiqueada|mastiqueados|mastiqueadas|mastiqueé|lo mastiqueé|la mastiqueé|mastiqueamos|enmasticado|enmasticada|enmasticé|con su mastique|mastique sin malla|mastique sin tela|mastique|mástique|mastic|masilla|malla y mastique|mastique y malla|mastique con malla|tela y mastique|mastique y tela|malla con mastique|mástic|tela de vidrio y mastique|fibra de vidrio y mastique|tela con mastique|mastique con tela|mastique y tela de vidrio|mastique con tela de vidrio|malla de vidrio y mastique|mastique y fibra|mastik"),
    ("other_tape", "doctape|docteip|duc teip|duc tape|ductape|doc teip|dactape|doctep|masquin|maskin|masquin teip|masking teip|masquin tape|maskin tape|diurex|durex|escoch|scotch tape|gaffer|gorilla tape|gorila tape|con teflón|puse teflón|lleva teflón|usé teflón|le eché teflón"),
    ("other_tape", "la plateada de los plomeros|con la plateada|con la gris|con la de tela|con la de lona|con la de los plomeros|con la de los eléctricos|con la de ducto|con la de pintor|con la canela|con la americana|cinta americana|cinta gris|cinta de tela|duct tape|cinta de ducto|cinta ordinaria|teip gris|cinta de aislar|cinta canela|cinta plateada|masking tape|masking|cinta común|cinta adhesiva gris|cinta industrial"),
)

DAMAGES = (
    *es_verbs.befallings(),
    ("tear", "tear|torn|rip|ripped|rotura|rasgadura|rasgado|rasgada|desgarre|desgarro|raspón|raspones|rayón|rayón profundo|tajo|navajazo|cortadura|roto|rota|rasgón|rasgones|rajada|rajado|se rasgó|se rompió|rajadura|roturas|cortada en el foil|corte en el foil|rompimiento|rasguño|fibra expuesta|fibra al aire|foil pelado|se peló el foil|rasguñado|rasguñada|arañado|arañada|se rajó|rasgaduras"),
    ("puncture", "puncture|punctured|hole|agujero|hoyo|perforación|perforado|perforada|hoyos|agujeros|ponchado|ponchada|picadura|pinchazo|piquete|punzada|hoyito|se perforó|agujerito|ponchadura"),
    ("crushed", "crushed|dent|dented|smashed|le di un golpe|le dimos un golpe|aplastado|aplastada|golpeado|golpeada|abollado|abollada|hundido|hundida|se aplastó|magullado|magullada|abolladura|lo pisaron|la pisaron|lo pisó|la pisó|le pisó|machucado|machucada|golpe|apachurrado|apachurrada|se golpeó"),
    ("wet", "wet|soaked|mojado|mojada|húmedo|húmeda|se mojó|mojaron|empapado|empapada|humedad|mojados|mojadas"),
    ("delaminated", "delaminated|delamination|delaminación|despegado|despegada|delaminado|delaminada|se despegó|foil despegado|foil suelto|desprendido|desprendida|se desprendió|despegándose"),
    *es_harms.harms(),
)

METHODS = (
    ("plug", "parche de tablero|parche de board|parche de panel|parche del mismo board|parche del mismo panel|tapón de board|tapón de panel|tapón de tablero|tapón del mismo board|injerto de board|injerto de panel|pedazo de tablero nuevo|un pedazo de tablero|un pedazo del mismo board|un pedazo del mismo panel|tapón de fibra|injerto de fibra|tapón del mismo|plug|pedazo nuevo|le metí un pedazo|un tapón|parche de fibra|inserto"),
    ("replaced", "reemplazado|reemplazada|cambié|cambiado|cambiada|cambiamos|reemplacé|reemplazamos|lo cambié|la cambié|sustituido|sustituida|panel nuevo|cambié el panel|cambié todo el panel|cambiamos el panel|reemplacé el panel|se cambió|la reemplacé|lo reemplacé|la cambiamos|lo cambiamos|se reemplazó|sustituí|reemplazamos el panel"),
    ("mastic", "tela de vidrio|malla de vidrio"),
)

TELLING = frozenset(
    "grapas grapa aletas plano plana baja sube entra abertura hueco junta costura esquina daños cero polvo lengüetas pestañas tira tiras mástic mastique presión listo lista puse metí quedó trae lleva tiene aquí allá muy más ni nada"
    " recorté sobrante fibra aislante retorno suministro extracción techo cocina azotea tornillos arandelas rondanas colgadores soportes pies pie puerta rejilla manga collarín pleno codos tramos rectas tapas toda todo todos cuatro"
    "el la los las de del en por con una pulgada pulgadas cada lado codo cinta grapas engrapada engrapado encintado encintada"
    " pieza recto recta largo dos tres cuatro cinco seis siete ocho nueve diez doce catorce veinte treinta que está y sin"
    " corrida línea reducción transición tapa no falta todavía tallado tallada baja sube entra arriba abajo izquierdo derecho"
    " aletas hembra macho hice nota run uno once quince dieciséis dieciocho para al es se lo le ya como".split()
)

NAMES = frozenset(
    "juan josé jose carlos luis pedro miguel jorge manuel francisco javier sergio mario pablo ramón ramon raúl raul rafael"
    " roberto oscar óscar héctor hector beto chuy nacho pepe memo lalo paco armando alberto ernesto martín martin enrique"
    " arturo ricardo fernando eduardo alejandro antonio jesús jesus rubén ruben omar gustavo diego andrés andres felipe"
    " gerardo guillermo hugo iván ivan julio leo marcos maría maria rosa ana mike joe tony toño".split()
)

# names of letters; "de", "a" and "y" are letters only before a dash
LETTERS = {"be": "B", "ce": "C", "de": "D", "efe": "F", "ge": "G", "hache": "H", "jota": "J", "ka": "K", "ele": "L", "eme": "M", "ene": "N",
           "pe": "P", "cu": "Q", "erre": "R", "ese": "S", "te": "T", "uve": "V", "ve": "V", "equis": "X", "zeta": "Z", "a": "A", "e": "E"}  # fmt: skip

LANGUAGE = Language(
    code="es", storeys=STOREYS, lettered=SPANISH_LETTERED, concepts=CONCEPTS, kinds=KINDS, sides=SIDES, services=SERVICES, closures=CLOSURES, damages=DAMAGES,
    methods=METHODS, places=PLACES, whole_places=WHOLE_PLACES, units=UNITS, numbers=NUMBERS, misheard=MISHEARD, telling=TELLING, names=NAMES,
    all_but=SPANISH_ALL_BUT, turns=SPANISH_TURNS, acts=SPANISH_ACTS_MISSED, states=(*SPANISH_STATES, *SPANISH_FLAP_TOLD), mastic_as_tape=SPANISH_MASTIC_AS_TAPE, told=SPANISH_TOLD, left=SPANISH_LEFT, afar=SPANISH_AFAR, small=SPANISH_SMALL, named_ahead=SPANISH_NAMED_AHEAD, several=SPANISH_SEVERAL, forms=SPANISH_FORMS, thumbs=SPANISH_THUMBS, whole_turns=SPANISH_WHOLE_TURNS, plainer=SPANISH_SAID_PLAINER, plainer_first=SPANISH_SET_RIGHT, letters=LETTERS, accents_fall=True, accents_kept=frozenset("entre cuando donde como que quien cual el te si mi esta se cuanto cuantos cuantas cuanta encinto echo".split()) | es_verbs.present(),
    fuzzy=(
        ("transicion", "K_TRANSITION"), ("reduccion", "K_TRANSITION"), ("engrapada", "STAPLED"), ("engrapado", "STAPLED"),
        ("encintada", "TAPED"), ("encintado", "TAPED"), ("mastique", "C_MASTIC"), ("derivacion", "K_BRANCH"),
    ),
)  # fmt: skip
