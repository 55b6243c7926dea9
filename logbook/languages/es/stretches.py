"""Spanish words for a stretch of a piece in which something is wider than in the rest of it."""

from logbook.languages.told import Stretches

SPANISH_STRETCHES = Stretches(
    stretch=r"(?<!\w)(?:(?:en|a|hacia|por) )?(?:(?:los|las|el|la) (?:primer[oa]?s?|últim[oa]s?|dos primer[oa]s|dos últim[oa]s) (?:\w+ ){0,2}?(?:pies?|pulgadas|grapas|tramo|parte|par)|(?:al|en el|del) (?:principio|comienzo|inicio|final|fondo)|en (?:la esquina|las esquinas|el talón|la garganta))(?!\w)",
    wide=r"(?<!\w)(?:más (?:abiertas?|separadas?|anchas?|lejos)|muy (?:abiertas?|separadas?)|abiertas|separadas de más)(?!\w)",
    mended=r"(?<!no )(?<!\w)(?:les? (?:metí|puse|agregué) (?:más|otras)|agregué|ya (?:las|lo) (?:arreglé|corregí)|las (?:volví|quité)|corregí|arreglé)(?!\w)",
    ticked_parts=r"(?:(?:punta|lado|costado|cara|orilla|junta|extremo)s? (?:macho|hembra|larg[oa]s?|cort[oa]s?|izquierd[oa]|derech[oa]|de arriba|de abajo|de atrás|de enfrente)|arriba|abajo|atrás|enfrente|fondo|tapa|macho|hembra|aleta|ceja|pestaña|talón|garganta|izquierd[oa]|derech[oa]|ramal|troncal)",
    ticked_leads="y |e |pero |el |la |los |las ",
    ticked_on=r" (?:de|en|del) (?:el |la )?(?:[a-zó]+ ){0,2}\d+",
)
