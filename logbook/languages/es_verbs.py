"""Forms of the Spanish verbs of the trade, made from their stems: a table is shorter than a list of every form, and misses none.

Past forms with the speaker or "se" say that a thing is done, infinitives and the present say that it is not done yet
("lo encinto mañana"). Ears and thumbs leave accents out, so "engrape" is "engrapé". Not reviewed by a native speaker.
"""

from __future__ import annotations

# stem of a verb in -ar, concept when done, concept when it is to be done (None: not told apart)
VERBS: tuple[tuple[str, str, str | None], ...] = (
    *((stem, "STAPLED", "STAPLE") for stem in ("engrap", "grap", "grape", "engrape", "estaple", "estapl", "estapli", "grapi", "abroch")),
    *((stem, "TAPED", "TAPE_IT") for stem in ("encint", "teip", "teipe", "teipi", "tape", "tapi", "taipe", "taipi")),
    *((stem, "RUBBED", "RUB") for stem in ("tall", "frot", "restreg", "refreg", "sob", "alis", "planch", "bruñ", "aplan")),
    *((stem, "WIPED", "WIPE") for stem in ("limpi", "desempolv")),
    *((stem, "PREHEATED", None) for stem in ("precalent", "calent")),
    *((stem, "HUNG", "HANG") for stem in ("colg", "mont", "instal")),
    *((stem, "BENT", None) for stem in ("dobl", "volte", "aplast")),
    *((stem, "REPAIRED", None) for stem in ("repar", "parch", "arregl", "remend")),
)
_NOT_MADE = frozenset(("tapa", "tapas", "grapa", "grapas", "tape", "monto", "instalo", "arreglo", "reparo", "tapado", "doble", "aplastado", "aplastada", "tallo", "sobo", "sobe", "mont", "monte"))
_THEM = ("", "lo", "la", "los", "las", "le", "les", "se", "selo", "sela")


def _before_e(stem: str) -> str:
    """The stem before e: colgué, restregué; limpié stays."""
    return stem + "u" if stem.endswith("g") else stem


def forms() -> tuple[tuple[str, str], ...]:
    """(concept, "form|form|…") rows of all verbs."""
    rows: dict[str, list[str]] = {}
    for stem, done, to_do in VERBS:
        past = [f"{stem}{end}" for end in ("ado", "ada", "ados", "adas", "adito", "adita", "aditos", "aditas", "amos", "aron")]
        past += [f"{_before_e(stem)}é", f"{stem}ó", f"se {stem}o", f"{_before_e(stem)}e"]
        rows.setdefault(done, []).extend(form for form in past if form not in _NOT_MADE)
        if to_do is not None:
            rows.setdefault(to_do, []).extend(f"{stem}ar{them}" for them in _THEM)
            rows[to_do].extend(form for form in (f"{stem}o", f"{stem}amos al rato", f"{stem}aremos", f"{stem}aré", f"{stem}are") if form not in _NOT_MADE)
    return tuple((concept, "|".join(dict.fromkeys(words))) for concept, words in rows.items())


# what was cut off at the cut, said with any verb of cutting
_CUT_OFF = ("recorté", "recortamos", "quité", "quitamos", "corté", "cortamos", "rebajé", "rebajamos", "emparejé", "le recorté", "le quité", "le corté", "le rebajé", "se recortó", "se quitó", "recortado", "recortada", "quitado", "quitada", "ya quité", "cortado", "cortada", "rasuré", "le rasuré")
_CUT_TO_DO = ("recortar", "recortarle", "quitar", "quitarle", "cortar", "cortarle", "rebajar", "rebajarle", "emparejar", "recorto", "quito", "le quito", "le recorto")
_LEFT_OVER = ("el sobrante", "la fibra", "la fibra sobrante", "la fibra que sobraba", "fibra", "la fibra de más", "el aislante", "el aislante sobrante", "el aislante que sobraba", "el aislamiento", "el aislamiento sobrante",
              "el aislamiento que sobraba", "el exceso", "el exceso de fibra", "el exceso de aislante", "lo que sobraba", "lo que sobra", "la fibra que sobra", "el sobrante de fibra", "el sobrante de aislante", "sobrante", "la lana", "la lana sobrante")


def trimmings() -> tuple[tuple[str, str], ...]:
    done = [f"{verb} {noun}" for verb in _CUT_OFF for noun in _LEFT_OVER]
    done += [f"{noun} {verb}" for verb in ("recortado", "recortada", "quitado", "quitada", "cortado", "cortada") for noun in ("sobrante", "fibra", "fibra sobrante", "exceso", "aislante", "aislante sobrante")]
    return (("TRIMMED", "|".join(done)), ("TRIM", "|".join(f"{verb} {noun}" for verb in _CUT_TO_DO for noun in _LEFT_OVER)))


# dust, and what is run over the facing to take it off
_DUST = ("le quité el polvo", "quité el polvo", "le quitamos el polvo", "le sacudí el polvo", "sacudí el polvo", "lo sacudí", "la sacudí", "le soplé el polvo", "soplé el polvo", "le soplé", "lo soplé", "la soplé", "lo sequé", "la sequé", "sequé",
         "le pasé un trapo", "le pasé el trapo", "pasé un trapo", "pasé el trapo", "le pasé la franela", "le pasé una franela", "le pasé un trapo seco", "le pasé un trapo limpio", "le dimos una limpiada", "le di una limpiada", "le di una limpiadita",
         "le di su limpiada", "le di su limpiadita", "limpiecito", "limpiecita", "limpito", "limpita", "le di con el trapo", "le di un trapazo", "lo trapeé", "le pasé la estopa", "le pasé estopa", "le pasamos un trapo", "le pasamos la franela")
_PRESSED = ("le pasé la espátula", "le pasé la cuña", "le pasé la paleta", "le pasé la tarjeta", "le pasé el rodillo", "le pasé el squeegee", "le pasé la plancha fría", "pasé la espátula", "le di con la espátula", "le di con la cuña", "le di con la paleta",
            "le di con el squeegee", "le di con el rodillo", "le di con la tarjeta", "le pasamos la espátula", "le pasamos la cuña", "le dimos con la espátula", "le di su tallada", "le di una tallada", "le di su tallón", "le di una buena tallada", "le dimos su tallada",
            "le hice el rub down", "pasada con la espátula", "con su tallada", "bien presionada", "bien presionado", "presionada", "presionado", "la presioné", "lo presioné", "bien aplastada la cinta", "le di con la uña", "apreté la cinta", "la apreté con la espátula")


def sayings() -> tuple[tuple[str, str], ...]:
    return (("WIPED", "|".join(_DUST)), ("RUBBED", "|".join(_PRESSED)), *trimmings())
