"""How a room, a wall, a tool or the man himself is, which is nothing of the duct: "el cuarto está sucio", "ando todo mugroso". Not reviewed by a native speaker."""

from __future__ import annotations

_HE = "cuarto piso baño pasillo sótano ático techo plafón andamio muro elevador banco lugar edificio celular suelo"
_SHE = "sala losa pared bodega azotea obra banqueta banca mesa calle barda cancha oficina escalera cocina columna"
_ROOM_IS = "mojad húmed encharcad inundad empapad suci mugros polvos polvorient terros enlodad empolvad cochin agrietad cuartead desplomad chuec torcid rot fregad jodid abiert"
_WAS = ("está", "estaba", "anda", "quedó", "viene", "sigue", "está muy", "está bien", "está todo", "está toda", "estaba todo", "estaba muy", "estaba toda", "estaba bien", "anda todo", "anda bien")
_HE_IS = "mugros polvos polvorient terros entierrad tiznad empolvad polvead enlodad mojad empapad sudad cochin puerc suci grasos aceitos fregad amolad jodid lastimad golpead madread mojadit"
_I_AM = ("ando", "estoy", "quedé", "andaba yo", "yo ando", "terminé", "acabé", "salí", "vengo", "ya ando", "traigo las botas", "andamos", "estamos", "quedamos", "el ayudante anda", "mi compañero anda")
_HOW = ("", "todo ", "toda ", "bien ", "muy ", "medio ", "todos ")
_HERE = ("aquí", "acá", "allá arriba", "aquí arriba", "acá arriba", "allí", "ahí adentro", "aquí adentro", "en el cuarto", "en el piso", "en el aire", "en el edificio", "por todos lados", "en todos lados", "en la calle", "en la obra")
_DIRT = ("polvo", "tierra", "mugre", "lodo", "basura", "aserrín", "agua", "humedad")


def not_the_duct() -> tuple[tuple[str, str], ...]:
    """(concept, "phrase|phrase|…") rows."""
    said = [f"{the} {thing} {was} {how}{end}" for things, the, end in ((_HE, "el", "o"), (_SHE, "la", "a")) for thing in things.split() for was in _WAS for how in _ROOM_IS.split() if was.split()[-1] not in (("toda",) if end == "o" else ("todo",))]
    said += [f"{the} {thing} {was} {full} de {dirt}" for things, the, full in ((_HE, "el", "lleno"), (_SHE, "la", "llena")) for thing in things.split() for was in ("está", "estaba", "anda", "quedó") for dirt in _DIRT]
    said += [f"el cuarto {how}" for how in ("húmedo", "mojado", "sucio")]
    said += [f"{am} {how}{stem}{end}" for am in _I_AM for how in _HOW for stem in _HE_IS.split() for end in (("os",) if am.endswith("mos") else ("o", "a"))]
    said += [f"{was} {how}{stem}o {here}" for was in ("está", "estaba", "anda") for how in ("", "muy ", "bien ", "todo ") for stem in ("suci", "polvos", "polvorient", "mugros", "terros", "cochin", "mojad", "húmed") for here in _HERE]
    said += [f"{is_} {much}{dirt} {here}" for is_ in ("hay", "había") for much in ("", "mucho ", "mucha ", "puro ", "pura ", "un chingo de ") for dirt in _DIRT for here in _HERE]
    said += [f"{out} {was} {wet}" for out in ("afuera", "allá afuera", "acá afuera", "la calle") for was in ("está", "estaba", "anda") for wet in ("chorreando", "lloviendo", "mojado", "todo mojado", "inundado")]
    return (("TRADE_NOISE", "|".join(dict.fromkeys(said))),)
