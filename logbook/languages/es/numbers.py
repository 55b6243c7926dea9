"""Units and number words of Spanish."""

from __future__ import annotations

from logbook.languages.en.numbers import NUMBERS as _EN
from logbook.languages.language import Numbers

UNITS = (
    ("in", "pulgada|pulgadas|\"|''|”|in|inch|inches|pulg|plg|pulg."),
    ("ft", "pie|pies|ft|'|’|feet|foot"),
    ("mm", "mm|milímetro|milímetros|milimetros|milimetro"),
    ("cm", "cm|centímetro|centímetros|centimetros|centimetro"),
    ("m", "m|metro|metros"),
    ("deg", "grado|grados|°"),
    ("degF", "grados fahrenheit|fahrenheit|°f|f|grados f"),
    ("degC", "grados centígrados|centígrados|grados celsius|celsius|°c|c|grados c"),
    ("cfm", "cfm|pies cúbicos por minuto|pies cúbicos|c.f.m.|pcm"),
    ("inwg", "pulgadas de columna|pulgada de columna|pulgadas de agua|pulgada de agua|pulgadas de columna de agua|pulgada de columna de agua|pulgadas columna de agua|in. w.g.|inches of water"),
    ("kpa", "kpa|kilopascal|kilopascales"),
    ("pa", "pascales|pascal|pa"),
    ("lb", "libras|libra|lbs|lb"),
    ("kg", "kilos|kilogramos|kg|kilo"),
    ("ft2", "pies cuadrados|pie cuadrado|ft2|pies2"),
    ("m2", "metros cuadrados|m2|metro cuadrado"),
)

_KEPT = {word: value for word, value in _EN.ones.items() if word not in ("one", "zero")}  # English numbers kept in Spanish
NUMBERS = Numbers(
    ones={"uno": 1, "un": 1, "una": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7, "ocho": 8,
          "nueve": 9, "cero": 0, "one": 1, **_KEPT},
    teens={"diez": 10, "once": 11, "doce": 12, "trece": 13, "catorce": 14, "quince": 15, "dieciseis": 16, "diecisiete": 17,
           "dieciocho": 18, "diecinueve": 19, "veinte": 20, "veintiuno": 21, "veintiun": 21, "veintiuna": 21, "veintidos": 22,
           "veintitres": 23, "veinticuatro": 24, "veinticinco": 25, "veintiseis": 26, "veintisiete": 27, "veintiocho": 28,
           "veintinueve": 29, **{word: value for word, value in _EN.teens.items()}},
    tens={"treinta": 30, "cuarenta": 40, "cincuenta": 50, "sesenta": 60, "setenta": 70, "ochenta": 80, "noventa": 90, **_EN.tens},
    hundreds={"cien": 100, "ciento": 100, "doscientos": 200, "doscientas": 200, "trescientos": 300, "trescientas": 300,
              "cuatrocientos": 400, "cuatrocientas": 400, "quinientos": 500, "quinientas": 500, "seiscientos": 600,
              "seiscientas": 600, "setecientos": 700, "setecientas": 700, "ochocientos": 800, "ochocientas": 800,
              "novecientos": 900, "novecientas": 900},
    scales={"mil": 1000, "hundred": 100},
    halves={"medio": (1, 2), "media": (1, 2), "half": (1, 2), "quarter": (1, 4)},
    parts={"medio": 2, "medios": 2, "media": 2, "cuarto": 4, "cuartos": 4, "octavo": 8, "octavos": 8, "dieciseisavo": 16,
           "dieciseisavos": 16, "tercio": 3, "tercios": 3, "half": 2, "quarter": 4, "quarters": 4, "eighth": 8, "eighths": 8,
           "treintaidosavos": 32, "treintaidosavo": 32, "decimos": 10, "decimo": 10},
    joins=("y", "and", "con"),
    articles=("un", "una", "an"),
    point=("punto", "point"),
    zero_between=("oh", "cero"),
)  # fmt: skip
