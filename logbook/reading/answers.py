"""Questions that the speaker answers himself: "Taped? Yep. Rubbed? Nah.", "did I tape it? Yes I did"."""

from __future__ import annotations

from logbook.reading.claims import Claim, Open, claim
from logbook.reading.denials import DENIED
from logbook.reading.grammar import Row
from logbook.reading.stance import Clause

_YES = frozenset("check checked ticked listo lista yes yep yeah yup sure absolutely affirmative done did aye correct right sí si claro seguro simón".split())
_NO = frozenset("no nope nah negative not nay".split())
_I_DID = (["i", "did"], ["we", "did"], ["i", "have"], ["it", "is"], ["they", "are"], ["it", "was"], ["i", "sure", "did"], ["it", "sure", "is"])
_ASKED = ("FILLER", "DET", "IT", "I", "QUESTION", "BE", "ON", "IN", "HAVE", "AND", "ALL", "IN_PLACE", "ASKS", "COMMA", "THIS", "WITH", "DOWN", "YET")
_MOST = 8  # items of a question that is his own


def answers(row: Row, cut: tuple[Clause, ...]) -> tuple[list[Claim], set[int]]:
    """What question and answer state together, and the items they take up."""
    made: list[Claim] = []
    spent: set[int] = set()
    for place, clause in enumerate(cut[:-1]):
        if clause.last >= len(row.items) or clause.last - clause.first > _MOST or not _is_asked(row, clause, cut[place + 1]):
            continue
        acts = [at for at in range(clause.first, clause.last) if row.items[at].concept in DENIED or row.items[at].concept == "C_MASTIC"]
        others = [at for at in range(clause.first, clause.last) if at not in acts and row.items[at].concept not in _ASKED]
        reply = cut[place + 1]
        if row.items[reply.first].concept in ("NO_DAMAGE", "DAMAGE"):
            continue  # "foil's clean, no rips"
        yes = _reply(row, reply)
        if len(acts) != 1 or others or yes is None or _asks_another(row, clause):
            continue
        at = acts[0]
        end = reply.last if reply.last - reply.first <= 4 else reply.first + 1
        if row.items[at].concept == "C_MASTIC":
            if yes:
                made.append(claim(row, "closure", "mastic", at, at + 1, hedged=False))
        else:
            name, value = DENIED[row.items[at].concept]
            later = not yes and "YET" in [item.concept for item in row.items[reply.first : reply.last]]
            opens = (Open("piece", name, row.items[at].start, row.items[end - 1].end),) if later else ()
            if value is False:
                made.append(claim(row, name, yes, at, end, hedged=False, opens=opens, pending=later))
            elif not yes:
                made.append(claim(row, name, value, at, end, hedged=False))
        spent.update(range(clause.first, clause.last + 1), range(reply.first, end))
    return made, spent


def _is_asked(row: Row, clause: Clause, reply: Clause) -> bool:
    """A question, or a list that is ticked off: "taped: no", "stapled, yes." """
    sign = row.items[clause.last]
    if sign.concept == "QUERY":
        return True
    alone = reply.last - reply.first == 1 and len(row.words(reply.first, reply.last).split()) < 3 and (reply.last >= len(row.items) or row.items[reply.last].concept in ("STOP", "COMMA"))
    if sign.concept != "COMMA" or not alone:
        return False
    ticked = row.text[sign.start : sign.end] in (":", "-", "–", "—", "=")
    if reply.last < len(row.items) and row.items[reply.last].concept == "COMMA":
        return ticked or _is_ticked_off(row, clause, reply)
    return ticked or reply.last >= len(row.items) or row.items[reply.last].concept == "STOP"


def _is_ticked_off(row: Row, clause: Clause, reply: Clause) -> bool:
    """ "Rubbed, no, the squeegee walked off": a sentence that begins with the one act, and a reason behind the answer that is no other act put in its place."""
    if clause.last - clause.first != 1 or (clause.first > 0 and row.items[clause.first - 1].concept not in ("STOP", "QUERY")):
        return False
    stop = next((k for k in range(reply.last, len(row.items)) if row.items[k].concept in ("STOP", "QUERY")), len(row.items))
    return not any(item.concept in DENIED or item.concept in ("CLOSURE", "C_MASTIC", "MARK181", "I", "NUM", "LEN") for item in row.items[reply.last : stop])


def _reply(row: Row, clause: Clause) -> bool | None:
    words = row.text[row.items[clause.first].start : row.items[clause.last - 1].end].lower().replace(",", "").replace(".", "").split()
    if not words:
        return None
    if words[0] in _YES or words[:2] in (["you", "bet"], ["of", "course"]) or words in _I_DID:
        return True
    if words[0] in _NO or words[:2] in (["left", "them"], ["left", "it"], ["skipped", "them"], ["skipped", "it"], ["forgot", "them"], ["forgot", "it"], ["never", "did"], ["didn't"], ["haven't"], ["las", "dejé"], ["i", "didn't"], ["i", "haven't"], ["we", "didn't"], ["it", "isn't"], ["they", "aren't"]) or words in (["none"], ["skipped"], ["forgot"]) or words[:2] == ["todavía", "no"]:
        return False
    return None


def _asks_another(row: Row, clause: Clause) -> bool:
    """ "Did you tape it?" is asked of somebody else, who may be the one that answers."""
    words = row.text[row.items[clause.first].start : row.items[clause.last - 1].end].lower().split()
    return any(word in ("you", "he", "they", "she", "anybody", "anyone", "somebody", "we", "él", "ellos", "tú", "ustedes") for word in words)
