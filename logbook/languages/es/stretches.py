"""Spanish words for a stretch of a piece in which something is wider than in the rest of it."""

from logbook.languages.told import Stretches

STRETCH = r"(?<!\w)(?:(?:en|a|hacia|por) )?(?:(?:los|las|el|la) (?:primer[oa]?s?|[úu]ltim[oa]s?|dos primer[oa]s|dos [úu]ltim[oa]s) (?:\w+ ){0,2}?(?:pies?|pulgadas|grapas|tramo|parte|par)|(?:al|en el|del) (?:principio|comienzo|inicio|final|fondo)|en (?:la esquina|las esquinas|una esquina|el tal[óo]n|la garganta|la orilla|una orilla|la punta|una punta)|(?:unas|algunas|las [úu]ltimas|las primeras)(?: cuantas| dos| tres| grapas)?(?= (?:me |se |ya )?(?:van|quedaron|salieron|est[áa]n|m[áa]s)))(?!\w)"

SPANISH_STRETCHES = Stretches(
    stretch=STRETCH,
    wide=r"(?<!\w)(?:m[áa]s (?:abiertas?|separadas?|anchas?|lejos|espaciadas?|retiradas?|ralas?)|muy (?:abiertas?|separadas?)|abiertas|separadas de m[áa]s)(?!\w)",
    mended=r"(?<!no )(?<!\w)(?:les? (?:met[íi]|puse|agregu[ée]) (?:m[áa]s|otras)|agregu[ée]|ya (?:las|lo) (?:arregl[ée]|correg[íi])|las (?:volv[íi]|quit[ée])|correg[íi]|arregl[ée])(?!\w)",
    ticked_parts=r"(?:(?:punta|lado|costado|cara|orilla|junta|extremo)s? (?:macho|hembra|larg[oa]s?|cort[oa]s?|izquierd[oa]|derech[oa]|de arriba|de abajo|de atrás|de enfrente)|arriba|abajo|atrás|enfrente|fondo|tapa|macho|hembra|aleta|ceja|pestaña|talón|garganta|izquierd[oa]|derech[oa]|ramal|troncal)",
    ticked_leads="y |e |pero |el |la |los |las ",
    ticked_on=r" (?:de|en|del) (?:el |la )?(?:[a-zó]+ ){0,2}\d+",
)
