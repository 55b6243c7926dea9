"""Spanish that tells that he does not trust his own piece, whatever he said of it before: "quedó mal", "no va a aguantar", "no cierren el plafón todavía".

How it is closed and held may not be so then: it is asked. Whole clauses, in plain letters. Rows like those of `ailing.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

_CLOSED = ("taped", "stapled")
_LEAD = r"^(?:(?:y|pero|pues|la verdad|yo|creo que|se me hace que|a mi se me hace que|la neta|a decir verdad|esta|este|esa|ese|ya|ahi) )*"
_IT = r"(?:la|lo|el|ella|esta|este|esa|ese|eso|(?:la|el|esa|ese|esta|este) (?:pieza|costura|junta|ducto|codo|tramo|esquina|union|cosa|recta|transicion|tee))"
_SO = r"(?:(?:muy|bien|medio|algo|un poco|tantito|bastante|puro|pura|como|asi|nomas|la verdad|toda|todo|un|una|bien bien) )*"
_POOR = r"(?:mal|fe[oa]|fei[lt][oa]|horrible|chafa|basura|porqueria|cochinero|cochinada|provisional|temporal|de la fregada|del nabo|pinche|chambead[oa]|al aventon|mal hech[oa]|dudos[oa]|para llorar|para la basura)"
_END = r"(?: (?:la verdad|creo|pues|yo digo|a mi gusto|para mi|por ahora|ahorita|jefe))*$"

SPANISH_MISTRUSTED: tuple[tuple[tuple[str, ...], str], ...] = (
    (_CLOSED, rf"{_LEAD}(?:me )?(?:quedo|esta|salio|es|anda|se ve|quede) {_SO}{_POOR}{_END}|{_LEAD}no (?:me )?(?:quedo|salio|se ve|esta) (?:muy |tan |del todo )?(?:bien|bonit[oa]|parej[oa]|como debe|como quisiera|al cien){_END}|{_LEAD}no (?:me )?(?:gusta|gusto|convence|convencio|late)(?: (?:como|nada|mucho))*(?: (?:quedo|salio|se ve))?{_END}"),
    (_CLOSED, rf"{_LEAD}no (?:sirve|sirvio|paso|pasa|va a pasar|aguanta|va a aguantar|va a durar|creo que (?:aguante|dure|pase|sirva|quede)|se va a aguantar){_END}"),
    (_CLOSED, rf"{_LEAD}(?:va a|vaa|ha de) (?:tener fugas?|tirar aire|fugar|gotear|chiflar|silbar|abrirse|despegarse|soltarse|tronar|fallar)(?: .*)?$|{_LEAD}se va a (?:abrir|despegar|soltar|caer|levantar|zafar)(?: .*)?$"),
    (_CLOSED, rf"{_LEAD}(?:la|lo) (?:rehacia|rehago|deberia rehacer|tendria que rehacer|volveria a hacer)(?: si .*)?$|{_LEAD}(?:alguien|ustedes|el lead|la jefa|el jefe) (?:la|lo) (?:deberia|tiene que|debe|deben) (?:de )?(?:rehacer|checar|revisar|ver)(?: .*)?$|{_LEAD}(?:hay que|habria que|tienen que|convendria) (?:checar|revisar|rehacer|ver|volver a hacer)(?:la|lo|le)?(?: (?:bien|otra vez|de nuevo))?{_END}|{_LEAD}(?:echenle|echale|denle|dale) (?:un ojo|una revisada|una checada|un vistazo)\b.*$"),
    (_CLOSED, rf"{_LEAD}(?:la|lo) (?:regue|eche a perder|fregue|arruine|descompuse|hice mal|embarre)(?: .*)?$|{_LEAD}me equivoque(?: con (?:ella|esta|este))?$"),
    *((facts, rf"{_LEAD}(?:me equivoque|nos equivocamos|falle|(?:hubo|cometi|hice) un error|meti la pata) (?:con|en) (?:la |las |el |los )?(?:{things})(?: .*)?$") for facts, things in ((("vanes",), "aletas|vanes|guias"), (("taped",), "cinta|teip|tape"), (("stapled",), "grapas?|staples"))),
    (_CLOSED, rf"{_LEAD}(?:tiene|trae|hay|tengo|tenemos) (?:un|algun|unos|algo de) (?:problema|detalle|pendiente|asunto|problemita)s?(?: (?:con|en) {_IT})?{_END}|{_LEAD}algo (?:anda|esta|quedo) (?:mal|raro|chueco)(?: (?:con|en) {_IT})?{_END}"),
    (_CLOSED, rf"{_LEAD}no (?:la |lo )?(?:cuelguen|usen|instalen|cierren|tapen|suban|monten|cubran)(?: (?:la|el|todavia|aun|ahi|plafon|techo|pieza|ducto|hasta .*))*$"),
    (_CLOSED, rf"{_LEAD}no (?:le )?(?:confio|me confio|meto las manos(?: al fuego)?|respondo|garantizo|pongo la mano)(?: (?:en|por|de) .*)?$|{_LEAD}no (?:le )?(?:tengo|tengo mucha) confianza\b.*$|{_LEAD}{_IT} me (?:preocupa|da pendiente|tiene con pendiente|da mala espina){_END}"),
    (_CLOSED, rf"{_LEAD}(?:al inspector|al lead|al jefe|a la jefa|al de calidad) no le va a gustar{_END}|{_LEAD}(?:le falta|falta) (?:trabajo|chamba|mejorar|mano){_END}|{_LEAD}(?:todavia|aun) no esta(?: list[oa])?{_END}"),
)
