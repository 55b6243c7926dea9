"""Spanish that denies that something is the matter: "ninguna grapa se botó", "la cinta no se arrugó". It states nothing, and takes nothing back. Not reviewed by a native speaker."""

from __future__ import annotations

_OUTRIGHT = ("botó", "salió", "zafó", "dobló", "quebró", "rompió", "torció", "chuequeó", "aflojó", "soltó", "saltó", "hundió", "cayó", "levantó", "atoró", "trabó")
_CREASES = ("arrugó", "frunció", "infló", "ampolló", "abombó", "rompió", "rajó", "rasgó", "mojó", "chuequeó", "torció", "ladeó", "estiró", "ensució", "quemó")
_STATES = ("chuec", "floj", "suelt", "torcid", "ladead", "arrugad", "salid", "parad", "levantad", "despegad", "atravesad", "doblad", "rot", "quebrad", "fruncid", "inflad", "abombad", "estirad", "corrid", "disparej", "desparej", "voland")
_NONE_OF = ("ninguna grapa", "ni una grapa", "ni una sola grapa", "ninguna de las grapas", "ningún estaple", "ninguna staple")
_NONE = (*_NONE_OF, "ninguna", "ni una", "ni una sola")
_TAPES = ("la cinta", "el tape", "el teip", "cinta", "tape", "teip")
_BROKEN = ("quebraron", "rompieron", "zafaron", "soltaron", "aflojaron", "levantaron", "salieron", "cayeron", "movieron", "torcieron")
_WHOM = ("", "me ", "nos ", "le ")


def nothing_ails() -> tuple[tuple[str, str], ...]:
    """(concept, "phrase|phrase|…") rows."""
    said = [f"{none} se {whom}{went}" for none in _NONE_OF for went in _OUTRIGHT for whom in _WHOM]
    said += [f"no se {whom}{went} {none}" for none in _NONE for went in _OUTRIGHT for whom in _WHOM]
    said += [f"{none} {was} {how}a" for none in _NONE_OF for was in ("quedó", "salió", "está", "me quedó", "anda", "entró") for how in _STATES]
    said += [f"no {was} {none} {how}a" for none in _NONE_OF for was in ("quedó", "salió", "hay", "me quedó", "tiene", "dejé") for how in _STATES]
    said += [f"{tape} no se {whom}{went}" for tape in _TAPES for went in _CREASES for whom in _WHOM]
    said += [f"no {was} {how}{end}" for was, ends in (("quedó", "oa"), ("está", "oa"), ("salió", "oa"), ("me quedó", "oa"), ("quedaron", ("as", "os")), ("están", ("as", "os")), ("salieron", ("as", "os")), ("me quedaron", ("as", "os"))) for how in _STATES if how not in ("doblad", "voland") for end in ends]
    said += [f"{the} {thing} no se {whom}{went}" for the, thing in (("las", "pestañas"), ("las", "lengüetas"), ("los", "tabs"), ("las", "aletas"), ("las", "grapas"), ("los", "tornillos"), ("las", "pijas"), ("los", "colgadores"), ("los", "soportes")) for went in _BROKEN for whom in _WHOM]
    return (("FILLER", "|".join(said)),)
