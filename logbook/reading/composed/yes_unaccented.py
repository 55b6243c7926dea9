""" "Si" that is "sí" without its accent, as thumbs and ears write it: "aletas si, grapas si", "creo que si lo encinté"."""

from __future__ import annotations

from logbook.reading.words.items import concept_at

_DONE = ("STAPLED", "TAPED", "RUBBED", "TAPE", "STAPLES", "SCRIM", "VANES")
_ENDS = ("", "COMMA", "STOP")
_SMALL = ("DET", "BE", "HAVE", "FILLER", "BOTH", "ALL")


def is_yes(done, items, place: int) -> bool:
    """Whether no condition can begin with it: it ends its clause, stands right behind the piece or "creo que" with an act that ends the sentence, or sets right what was said."""
    if concept_at(items, place + 1) in _ENDS:
        return place > 0
    before, earlier = concept_at(done, place - 1), concept_at(done, place - 2)
    ahead = [concept_at(items, place + k) for k in range(1, 6)]
    if before == "FIX" or before == "COMMA" and earlier == "FIX":
        act = next((k for k, concept in enumerate(ahead) if concept not in _SMALL), None)
        return act is not None and ahead[act] in _DONE and concept_at(items, place + act + 2) in _ENDS
    named = before in ("NUM", "MARKED") and (earlier.startswith("K_") or earlier in ("FITTING", "NUMBER"))
    if not (before == "THINK" or named):
        return False
    ends = next((k for k, concept in enumerate(ahead) if concept in ("", "STOP")), None)
    return ends is not None and any(concept in _DONE for concept in ahead[:ends])
