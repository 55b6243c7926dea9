"""Spanish that calls the facing of the board its face: "rompimos la cara contra la viga", "la cara está rota", "se le despegó la cara a la fibra".

Where it tore or came off it is the foil that is meant, and no side of the piece. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_TORE = r"(?:romp|raj|rasg|desgarr|rasguñ|ponch|perfor|agujer|pinch|despeg|desprend|despellej|descarapel)(?:i|e|io|ue|o|imos|amos|ieron|aron|eo|ee|eamos)"
_TORN = r"(?:rot|rajad|rasgad|desgarrad|rasguñad|ponchad|perforad|agujerad|agujeread|pinchad|picad|despegad|desprendid|pelad|despellejad)"
_IS = r"(?:(?:de (?:arriba|abajo|enfrente|atras|afuera)|ya|toda|medio|algo|muy|bien|me|se|le|nos|esta|estaba|quedo|queda|viene|venia|llego|salio|trae|anda|va|un poco) )*"
_A_MAN = r"\bme (?:rompi|raje|rasgue|rasguñe|pele|golpee|corte|pinche|despelleje)\b"

SPANISH_FACE_IS_FOIL = (
    Plainer((" la cara",), rf"\b{_TORE} (?:toda |un poco |feo |tantito )?(?P<x>la cara)(?= *(?:$|[,;.]| \w))", (("x", "el foil"),), unless=_A_MAN),
    Plainer((" la cara ", "la cara "), rf"\b(?P<x>la cara) (?:se (?:me |nos |le )?){_TORE}\b", (("x", "el foil"),), unless=_A_MAN),
    Plainer((" la cara ", "la cara "), rf"\b(?P<x>la cara) {_IS}{_TORN}(?P<y>a)\b", (("x", "el foil"), ("y", "o")), unless=_A_MAN),
)
