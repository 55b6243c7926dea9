"""Spanish that denies that anything is the matter with a part: "la ceja no quedó güanga", "ninguna aleta chueca", "no se me movieron las aletas".

It is news of nothing: neither that the part is there, nor that it is not. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.ailing import BAD, CREASED, CROOKED, LOOSE, verb
from logbook.languages.es.ailing_parts import HARMED
from logbook.languages.plainer import Plainer

_THING = r"(?:cejas?|flaps?|solapas?|pestañas?|lenguetas?|tabs?|aletas?|vanes?|alabes?|guias?|grapas?|cinta|tape|teip|costuras?|juntas?|esquinas?|colgantes?|hangers?|soportes?|macho|hembra|shiplap)"
_THE = r"(?:la|el|las|los)"
_WHOM = r"(?:(?:me|nos|le|les|se) )*"
_WAS = r"(?:quedo|quedaron|esta|estan|salio|salieron|anda|andan|viene|vienen)"
_SO = r"(?:(?:nada|muy|tan|ni tantito|tantito|para nada|tod[oa]s?) )*"
# of a tear the reader says itself that there is none
_RUINED = r"(?:madre|desgraci|desmadr|amol|ching|jod|freg|deterior|arruin|deform|malogr|gast)[ai]d[oa]s?"
_ILL = rf"(?:{CROOKED}|{LOOSE}|{BAD}|{CREASED}|{_RUINED}|arrugad[oa]s?|fruncid[oa]s?|inflad[oa]s?|levantad[oa]s?|parad[oa]s?|volad[oa]s?|cort(?:it)?[oa]s|moch[oa]s?|rabon(?:a|as|es)?|angost[oa]s?|pelon(?:a|as|es)?)"
_ENDS = r"(?= *(?:$|[.,;:]| y\b| ni\b| pero\b| todo\b))"
_CUES = ("ni una ", "ningun", " no ", "no ", "nada ")

SPANISH_NOT_SO_ILL = tuple(
    Plainer(_CUES, rf"(?:^|(?<=[.,;:] )|(?<= y )|(?<= que ))(?P<x>{words}){_ENDS}", (("x", "todo bien"),))
    for words in (
        rf"{_THE} {_THING} no {_WHOM}{_WAS} {_SO}{_ILL}",
        rf"(?:ningun|ninguna|ni un|ni una|ni una sola) {_THING} (?:(?:{_WAS}|{_WHOM}{_WAS}) )?{_SO}{_ILL}",
        rf"no {_WHOM}{_WAS} {_SO}{_ILL} (?:{_THE}|ningun|ninguna|ni una) {_THING}",
        rf"nada {_ILL} {_THE} {_THING}",
        rf"{_THE} {_THING} no se {_WHOM}{verb(HARMED)}(?: (?:nada|para nada|ni tantito))?",
        rf"no se {_WHOM}{verb(HARMED)} (?:nada )?(?:{_THE}|ningun|ninguna|ni una) {_THING}",
    )
)
