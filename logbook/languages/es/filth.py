"""What lies on a facing, and how a facing is that it lies on, in the words of Mexican and Central American sites. Not reviewed by a native speaker."""

from __future__ import annotations

_ENDS = ("o", "a", "os", "as")
# these tell of filth wherever they stand
_SOILED = "polvos polvorient empolvad polvead terros entierrad tiznad mugros mugrient grasos grasient aceitos enlodad lodos pringos mantecos cochambros enyesad encementad percudid empuercad enmugrad yesos"
# a curse as often as a state ("la cochina cinta"), or of paint and of mastic as often as of mud: only behind a word that tells how it was left
_LEFT = ("cochin", "puerc", "asqueros", "aceitad", "manchad")
_DIRT = ("polvo", "polvito", "polvillo", "polvareda", "tierra", "tierrita", "mugre", "grasa", "aceite", "pelusa", "aserrín", "yeso", "cochambre", "lodo", "barro", "cemento", "arena", "hollín", "tizne", "basura", "pelusas", "fibra suelta", "porquería")
_WAS = ("está", "estaba", "quedó", "quedo", "me quedó", "se me quedó", "viene", "venía", "salió", "anda", "andaba", "están", "quedaron")
_HOW = ("", "todo ", "toda ", "muy ", "bien ", "medio ")
_HAS = ("tenía", "tiene", "traía", "trae", "traen", "quedó con", "le quedó", "me quedó con", "se le ve", "se le pegó", "agarró", "le cayó", "le cae", "se llenó de", "se me llenó de", "con", "con mucho", "con mucha", "con tantito", "con tantita", "con un chingo de", "puro", "pura")
_FULL = tuple(f"{full}{end} de" for full in ("llen", "cubiert", "batid", "embarrad", "manchad", "retacad", "salpicad", "bañad") for end in _ENDS)
_MESS = tuple(f"hech{end} un{mess}" for end in ("o", "a") for mess in (" asco", "a porquería", " mugrero", " cochinero", "a mugre"))


def filth() -> tuple[tuple[str, str], ...]:
    """(concept, "phrase|phrase|…") rows."""
    soiled = [f"{stem}{end}" for stem in _SOILED.split() for end in _ENDS] + ["sucio", "sucia", "sucios", "sucias", "suciecito", "suciecita"]
    soiled += [f"{was} {how}{stem}{end}" for was in _WAS for how in _HOW for stem in _LEFT for end in (("os", "as") if was.endswith("n") else ("o", "a"))]
    soiled += [f"{has} {dirt}" for has in (*_HAS, *_FULL) for dirt in _DIRT if not (dirt == "cemento" and has == "con")] + list(_MESS)
    soiled += [f"se {whom}{went}{end}" for whom in ("", "me ", "nos ", "le ", "me le ", "nos le ") for went in ("ensuci", "empolv", "enlod", "tizn", "entierr", "enmugr", "empuerc", "enchamagos") for end in ("ó", "aron")]
    clean = [f"{no} {dirt}" for no in ("no tenía", "no tiene", "no traía", "no trae", "no había", "sin nada de", "nada de", "ni tantito", "sin") for dirt in ("polvo", "polvito", "tierra", "mugre", "grasa", "pelusa", "pelusas", "aserrín", "lodo", "hollín")]
    clean += [f"{has} {dirt} {then}se {it} {took}" for has in ("tenía", "traía", "tiene", "trae", "había", "le cayó", "le quedó", "con") for it, dirts in (("lo", "polvo polvito aceite lodo aserrín yeso"), ("la", "tierra mugre grasa pelusa")) for dirt in dirts.split() for then in ("y ", "pero ", "y ya ", "pero ya ", "") for took in ("quité", "quitamos", "limpié", "sacudí")]
    return (("DIRTY", "|".join(dict.fromkeys(soiled))), ("WIPED", "|".join(clean)))
