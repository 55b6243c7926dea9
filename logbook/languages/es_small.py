"""Sets of small words of Spanish; what each is for stands in their shape."""

from __future__ import annotations

from logbook.languages.small import Small

SPANISH_SMALL = Small(
    yes=frozenset("listo lista sí si claro seguro simón".split()),
    no=frozenset("no".split()),
    than=frozenset("que".split()),
    back_to_it=frozenset("lo la le los ésa ese".split()),
    worked=frozenset("hice hicimos terminé armé acabé".split()),
    gone=frozenset("arrancado arrancada".split()),
    several_harms=frozenset("hoyos agujeros rasgaduras roturas rasgones".split()),
    takes_so_many=frozenset("lleva pide necesita requiere ocupa van eran deben deberían".split()),
    lies_elsewhere=frozenset("camión camioneta troca troque carro caja camino pedido bodega bolsa banco suelo piso tarima".split()),
    in_the_piece=frozenset("codo vuelta curva riel rieles talón garganta lugar sitio medio centro esquina".split()),
    nobody=frozenset("nadie".split()),
    them=frozenset("lo la los las le les".split()), one_is=frozenset("está esta quedó lleva tiene va fue sí si".split()),
    sheets=frozenset("plancha planchas".split()),
    seen=frozenset("se ve|se le ve|se mira|se le mira".split("|")),
    shows_at_all=frozenset("se nota|se le nota|se notan|se le notan|se alcanza a notar|se distingue|se ve mucho".split("|")),
    looks=frozenset("mira da apunta ve queda quedó quedo quedando apuntando mirando viendo para pa pa' hacia por al adentro afuera me nos".split()),
    since=frozenset("ahora luego después entonces".split()),
    corrections=frozenset("corrección correccion".split()),
    again=frozenset("otra vez|de nuevo".split("|")),
    ordinals=frozenset("primera segunda tercera primero segundo tercero otra otro".split()),
    part_names=frozenset("ramal tronco principal talón talon garganta arriba abajo izquierda derecha".split()),
    trimmed_parts=frozenset("macho hembra ceja solapa".split()),
    parts_of_it=frozenset("talón talon garganta esquinas".split()),
    gives_reason=frozenset("así que|asi que|porque|pues|por eso".split("|")),
    beside_it=frozenset("vecino vecina gemelo gemela pareja otro otra siguiente".split()),
    in_so_long=frozenset("en sobre dentro".split()),
    mine=frozenset("mío mía mio mia nuestro nuestra".split()),
    too=frozenset("también tambien".split()),
    not_that=frozenset("no es|no".split("|")),
    made=frozenset("hice hicimos terminé terminamos armé armamos acabé acabamos".split()),
    between=frozenset({"entre"}),
    before_letter=frozenset("corrida linea pieza numero".split()),
    articles=frozenset("el la los las un una lo".split()),
    points_at_mark=frozenset("el la del al marca número numero etiqueta".split()),
    letter_words=frozenset("de a e ese te ve u o y".split()),
    each_other=frozenset("de del".split()),
    beside_inches=frozenset("de largo".split()),
    behind_in=frozenset("el la los las un una".split()),
    drops=frozenset("bajada subida entrada pendiente caída caida rampa inclinación".split()),
    turns_nothing=frozenset("bueno con de del el en es está esta este la las los que un una y ya".split()),
    turns_all=frozenset("sí si así asi falta ni todavía".split()),
    some_point=frozenset("un el ese este".split()),
    no_duct=frozenset(
        "piso losa troca camioneta camión botas guantes manos mano suelo techo calle pared agua café dedo rodilla llanta pantalón camisa gorra lentes vidrio"
        " puerta ventana".split()
    ),
    owners=frozenset("mi su tu el la un una a".split()),
    machines=frozenset("compresor manguera generador".split()),
    half=frozenset("semi medio media casi mero apenas parcialmente".split()),
    half_behind=frozenset("medias mitad parcialmente".split()),
    kept=frozenset("sobre arriba debajo encima detrás bajo junto".split()),
    led=frozenset("en al".split()),
    several_are=frozenset("están estan quedaron van fueron".split()),
    several_lack=frozenset("están estan quedaron van fueron llevan tienen les".split()),
    closes_with=frozenset("para con".split()),
    rest=frozenset("otros otras demás resto".split()),
    cut_words=frozenset("corté corte cortamos recorté recorte recortamos acorté acorte acortamos".split()),
    ought_to=frozenset("encinte engrape grape talle frote limpie".split()),
    bits=frozenset("pedazo pedacito cacho cachito parte esquina orilla trozo lo".split()),
    of_ours=frozenset("zona área area fibra lana superficie rejilla ranura foil papel traslape".split()),
    somebody=frozenset("él ella ellos alguien".split()),
    on_some=frozenset("algunas resto otras lado".split()),
    bears=frozenset(
        "puse pusimos puso pusieron metí meti metimos eché eche echamos di dimos tiene tienen trae traen lleva llevan con están estan está esta quedaron van"
        " puestas sus".split()
    ),
    that_is=frozenset("o sea|es decir|o sea que|quiere decir".split("|")),
    over_again=frozenset("volv acab termin alcanc".split()),
    lays=frozenset(
        "puse pusimos puso pusieron lleva llevan trae traen pegada tiene tienen usé use usamos eché eche echamos metí meti metimos di dimos pegué pegue pegamos"
        " corrí corri zampé zampe zampamos aventé avente aventamos puesta tiré tire tiramos planté plante apliqué aplique aplicamos".split()
    ),
    is_on=frozenset("ya quedó quedo está esta lista listo puesta puesto hecha pegada bien".split()),
    soon=frozenset("ahorita orita horita luego después despues rato ratito mero mañana enseguida lunes martes miércoles miercoles jueves viernes sábado sabado noche tarde".split()),
    takes_back=frozenset("borra eso|bórralo|olvida eso".split("|")),
    cut_nouns={"recta": "straight", "recto": "straight", "tramo": "straight", "sección": "straight", "ducto": "straight", "pieza": None},
    panel_sides={"tapa de arriba": "top", "la tapa de arriba": "top", "panel de arriba": "top"},
    one_unit={"pie": "ft", "pulgada": "in", "metro": "m"},
    which={"primero": 0, "primera": 0, "segundo": 1, "segunda": 1, "tercero": 2, "tercera": 2, "cuarto": 3, "cuarta": 3, "último": -1, "última": -1, "ultimo": -1, "ultima": -1, "otro": None, "otra": None},
    several={"codos": "elbow", "tapas": "end_cap", "reducciones": "transition", "tramos": "straight", "ductos": "straight", "conductos": "straight", "rectos": "straight", "rectas": "straight", "transiciones": "transition", "collarines": "collar", "derivaciones": "branch", "tes": "tee", "rejillas": "register", "piezas": "fitting"},
)
