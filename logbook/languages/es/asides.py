"""Spanish words of what was told around them, without accents: where nobody has read them, the acts beside them are in doubt. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.told import Asides

_NOT_SO = r"(?:cierto|verdad|asi|en serio)"
_THAT = r"(?:es[oa]|est[oa]|lo (?:ultimo|primero|segundo|de (?:la |las |los |el )?\w+|del \w+)|todo eso|la ultima|el ultimo|una|uno|algo)"

SPANISH_ASIDES = Asides(
    # a word that turns the act right behind it
    turns=frozenset("dizque disque supuestamente presuntamente teoricamente".split()),
    doubting=(
        r"(?:(?:mentiras?|mentiritas?|mentirota)|mentimos|menti(?= |$)|puro cuento|puro choro|cuentos chinos|fantasia)", rf"no (?:todo )?(?:(?:es|son|era|fue) )?(?:todo )?(?:(?:es[oa]|lo) )?(?:es |era )?{_NOT_SO} (?:lo|que|todo|nada|del todo)\b", rf"no tod[oa] (?:es[oa] |lo que dije )?(?:es|era) {_NOT_SO}", rf"(?:{_THAT}) no (?:es|era|fue|va|cuenta)(?: muy| tan| del todo)*(?: {_NOT_SO})?$",
        r"(?:es|era|de|pura|en) broma|bromeando|vacilando|de juego|de relajo", r"(?:me |nos )?l[oa]s? (?:invente|inventamos)$|inventad[oa]s?$",
        r"(?:si )?como no$|chucha$|aja,? si|si,? aja|aja$|claro,? aja|y (?:los burros|las vacas|los marranos) vuelan|cuando vuelen\b.*|y yo soy (?:el |la |un |una |santa |astronauta|rico|millonario).*|yo soy el papa|soy (?:astronauta|el papa|santa claus)",
        r"en (?:mis|tus|sus) sueños|en sueños|soñe|soñando|en mi (?:cabeza|mente|imaginacion)|con (?:el pensamiento|la mente|la imaginacion)|de pensamiento|en otra vida|imaginari[oa]|me imagine", r"en teoria|de dientes para afuera|de palabra|de nombre|para (?:la foto|que se vea|el jefe|taparle el ojo al macho|despistar)|pa la foto|de adorno|de apariencia|de mentis",
        r"(?:es[oa] |asi |ya )?quisiera(?:mos)?(?: yo| nosotros)?$|es[oa] (?:quisiera|me gustaria|fuera bueno)\b.*|(?:ese |esa |eso )era (?:el plan|la idea|la intencion|mi plan|lo que (?:queria|pensaba|iba))\b.*|es[ae] es la idea$|qu[ei] mas quisiera\b.*",
        r"o (?:es[oa]|asi) (?:me |nos |les |lo )?(?:creo|creia|pense|me parece|dicen?|dijo|dijeron|conto|contaron|parece|digo|quiero creer|les dije|le dije)\b.*|(?:es[oa]|asi) (?:es|fue|era) lo que (?:les |le |te )?(?:dije|digo|conte|apunte|anote)\b.*|(?:asi|eso) (?:lo |la |les |le )*(?:apunte|anote|reporte|dije|puse)\b.*\b(?:aunque|pero)\b.*|(?:asi|eso) (?:lo |la |les |le )*(?:apunte|anote|reporte|dije)$",
        r"no (?:te|se) (?:la |lo )?cre(?:as|a|an)(?: todo| nada| mucho)?$|no me (?:creas|crea|hagas (?:mucho )?caso)(?: mucho)?$|^si (?:tu|usted|ustedes) (?:quieres?|gustas?|quieren)$",
        r"de l[oa]s (?:dos|tres|cuatro),? (?:nomas |solo )?(?:un[oa]|dos|tres)(?: (?:no|si|falta|es mentira))?$|(?:un[oa]|dos) de (?:l[oa]s (?:dos|tres|cuatro)|es[oa]s)(?: (?:no|si|es \w+|nada mas|nomas))?$|escog[ea]n? (?:un[oa]|dos|cual\w*)|adivin[ea]n? cual|no l[oa]s (?:dos|tres|cuatro)$|una cosa o la otra|no las dos cosas|la mitad de (?:eso|lo que dije|lo que digo)", r"(?:pero )?(?:aqui )?entre (?:nos|nosotros|nos otros|tu y yo|usted y yo)(?: la verdad)?(?: ,)?(?: (?:no|nada|ni)\b.*)?$", r"(?:que )?dios me (?:perdone|perdona)|que me perdone (?:dios|el jefe)|(?:con )?(?:una|sus|unas|algunas) excepci(?:on|ones)|exager(?:o|e|ando|acion)|optimista",
    ),
    elliptic=(
        r"entre comillas|(?:es|era) un decir|por decirlo asi|por decir(?:lo)? algo|por asi decirlo|digamos|dizque|disque|(?:que )?supuestamente|presuntamente|teoricamente|segun(?= (?:esta|quedo|va|ya|yo ya)\b)|(?:ponle|pongale|pongamos) que (?=(?:\w+ ){0,4}?(?:si$|\w*(?:grap|cint|tall|frot|tape|teip|limpi)))|haz de cuenta|has de cuenta|hagan? de cuenta",
        r"(?:hice|hicimos|haciendo|le hice) (?:como que|la finta|el paro|como si)\b|fingi\w*|como si (?:lo|la|le|estuviera|hubiera)\b|(?:medio|casi) que\b|casi casi", r"(?:no|pero no|aunque no|y no) (?:en |por )?(?:donde|adonde) (?:cuenta|importa|debe|va|tenia|debia|se ve)\w*.*", r"hasta (?:que|donde) (?:se (?:me |nos |les? )?(?:acabo|termino|atoro|trabo|rompio)|(?:ya )?no (?:hubo|habia|pude|alcanzo|dio|quiso))\b.*", r"a como (?:pude|pudimos|dio|dios me dio|salio|cayo)\b.*|mal que bien|mas mal que bien|ahi mas o menos|como (?:dios me dio|se pudo|pude)\b.*|como (?:cayo|salio)$|a la (?:brava|mala|trompa talega|carrera)|al (?:aventon|trancazo|chilazo)|de mala gana|por cumplir|nomas por cumplir|por no dejar|a medio hacer|sin ganas",
        r"^(?:(?:pero|aunque|y|creo que|me parece que|la verdad|en realidad|ahora que lo veo|ya viendolo) )*(?:no|siempre no|(?:un[oa]|algun[oa]) no)$|me imagino|(?:pero |aunque )(?:siempre no|al final no|no (?:tanto|mucho|todo|toda|muy bien|de verdad))$",
    ),
)
