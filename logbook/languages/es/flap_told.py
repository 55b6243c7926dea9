"""Spanish words for a staple flap that is torn or gone, told as what became of it: "se rasgó el flap", "la pestaña de engrapar está rota". Without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.language import State

_FLAP = r"(?:(?:pestaña|aleta|orilla|lengueta) (?:de|para) (?:la |las |el )?(?:en)?grap\w+|flap|ceja|solapa|pestaña)"
_WHOM = r"(?:(?:me|nos|le) )*"
_BY_NONE = "".join(f"(?<!{no} )" for no in ("no", "ni", "nunca", "tampoco", "no se", "ni se", "nunca se"))
_WENT = r"(?:rompio|rasgo|rajo|desgarro|trozo|partio|quemo|arranco|pelo|mordio|desprendio|volo|mocho|deshizo|desbarato)"
_TORN = r"(?:rot|rasgad|rajad|desgarrad|trozad|partid|quemad|arrancad|pelad|mordid|desprendid|mochad|deshech|destrozad|despedazad|picad|perforad)[oa]"
_HOW = r"(?:(?:esta|estaba|quedo|viene|venia|llego|salio|anda|trae|todo|toda|medio|un|poco|poquito|bien|muy|de|un|lado|una|esquina|en|la|punta|mitad|ya|me|nos|le|se) )*"

SPANISH_FLAP_TOLD: tuple[State, ...] = (
    State(
        "staple_flap",
        False,
        (
            rf"{_FLAP} {_HOW}{_TORN}(?! (?:y|pero|lo|la|,)+ (?:cambi|parch|peg|repar|arregl)\w+)",
            rf"{_FLAP} (?:\w+ ){{0,3}}?{_BY_NONE}se {_WHOM}{_WENT}",
            rf"{_BY_NONE}se {_WHOM}{_WENT} (?:(?:un|una|pedazo|cacho|cachito|pedacito|tantito|tantita|parte|todo|toda|esquina|punta|de|del|la|el|su) )*{_FLAP}",
            rf"{_FLAP} (?:(?:ya|se|me|le|yo) )*(?:la |lo )?(?:corte|vole|quite|moche|arranque|comi|lleve|perdio|cayo)\b(?: (?:sin querer|por error|de mas))*",
            rf"{_BY_NONE}(?:rompi|rasgue|raje|desgarre|troce|queme) (?:el |la |un pedazo (?:del |de la ))(?:\w+ )?{_FLAP}",
        ),
        ("FLAP",),
        part="side",
        cues=("flap", "ceja", "solapa", "pestaña", "lengueta", "aleta de grap", "aleta de engrap", "aleta para", "orilla de grap"),
    ),
)
