"""What people went and saw, tested, released and decided, as tables of the package beside what was said.

Rows are plain dictionaries in the order of their columns, from the documents of acts with people's names in them.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from logbook import labels
from logbook.walk import leaks, lots
from logbook.wording import say


@dataclass(frozen=True)
class Seen:
    """Acts of the whole job, oldest first. `holds`: key and name of the hold points of the job file."""

    draws: Sequence[Mapping] = ()
    looks: Sequence[Mapping] = ()
    answers: Sequence[Mapping] = ()
    records: Sequence[Mapping] = ()
    releases: Sequence[Mapping] = ()
    holds: Sequence[tuple[str, str]] = ()

    def photos(self) -> list[str]:
        return list(dict.fromkeys(digest for one in (*self.looks, *self.answers) for digest in one.get("photos", ())))


LEAK_RECORDS = (
    ("id", "string", "Id of the record."), ("section", "string", "What was tested."), ("tested_on", "date", "Day of the test."),
    ("pressure_in_wg", "number", "Test pressure in in. w.g."), ("area_ft2", "number", "Surface in ft²."), ("leakage_class", "number", "Class in cfm per 100 ft² at 1 in. w.g."),
    ("allowed_cfm", "number", "Allowable: class x pressure^0.65 x surface / 100."), ("measured_cfm", "number", "Measured leakage."),
    ("verdict", "string", "meets: within the allowable and calibrated; departs: above it; unclear, unsaid: the calibration leaves it open."),
    ("why", "string", "The reason in words."), ("instrument", "string", "Instrument."), ("serial", "string", "Its number."),
    ("calibrated_on", "date", "Calibrated on; empty: not told."), ("calibrated_until", "date", "Calibration good until; empty: not told."),
    ("tested_by", "string", "Who tested."), ("witness", "string", "Who witnessed; empty: nobody."), ("words", "string", "Remark."),
    ("recorded_by", "string", "Who kept the record."), ("recorded_at", "datetime", "When."),
    ("replaced_by", "string", "Id of the record that sets this one right; empty: it stands."),
)  # fmt: skip
SPOT_CHECKS = (
    ("drawn_for", "date", "Day whose pieces were drawn from."), ("draw", "string", "Id of the draw."), ("seed", "string", "Its seed: the lot of a piece is sha256(seed:piece), lowest first."),
    ("among", "integer", "How many pieces were drawn from."), ("piece", "string", "Id of the drawn piece."), ("run", "string", "Run as spoken."), ("mark", "string", "Mark as spoken."),
    ("looked_by", "string", "Who looked; empty: nobody yet."), ("looked_at", "datetime", "When."), ("how", "string", "seen, felt or measured."),
    ("fact", "string", "What was compared."), ("said", "string", "As said."), ("answer", "string", "as_said, otherwise or not_seen."),
    ("found", "string", "What was found where it was otherwise."), ("words", "string", "The looker's words."), ("photos", "string", "Photos under photos/, by their SHA-256."),
)  # fmt: skip
WALK_LIST = (
    ("area", "string", "Area, place or run."), ("question", "string", "Id of the question."), ("asks", "string", "The question of the published check list, in our words."),
    ("answer", "string", "yes, not_applicable or no."), ("words", "string", "What is wrong."), ("by", "string", "Who answered."), ("at", "datetime", "When."),
    ("stands", "string", "yes: the newest answer; no: a later one stands."), ("photos", "string", "Photos under photos/, by their SHA-256."),
)  # fmt: skip
HOLD_POINTS = (
    ("hold", "string", "Hold point of the job file."), ("name", "string", "Its name."), ("act", "string", "released, held_again, or empty: never released."),
    ("by", "string", "Who."), ("at", "datetime", "When."), ("witness", "string", "In whose presence."), ("words", "string", "His words."),
    ("open_then", "integer", "Findings that stood open behind it at the release."),
)  # fmt: skip
DECISIONS = (
    ("piece", "string", "Id of the piece."), ("run", "string", "Run as spoken."), ("mark", "string", "Mark as spoken."), ("rule", "string", "Rule of job/rules.json."),
    ("decision", "string", "rework, repair, concession, scrap, heard_wrong, looked or asked."), ("reason", "string", "Why."), ("by", "string", "Who decided."), ("at", "datetime", "When."),
    ("corrected", "string", "Fact and value that was said, where it was heard wrong."), ("looked", "string", "How the decider looked, and what he found."),
    ("granted_by", "string", "Engineer or authority that granted it."), ("document", "string", "SHA-256 of the paper under documents/."),
    ("owner", "string", "Who has it in hand."), ("due", "date", "Until when."), ("edition", "string", "SHA-256 of what the finding was reckoned from."),
    ("on_earlier_words", "string", "yes: facts or limits changed since."),
)  # fmt: skip


def leak_records(seen: Seen, language: str) -> Iterator[dict]:
    replaced = {one["instead_of"]: one["id"] for one in seen.records if one.get("instead_of")}
    for one in seen.records:
        told = leaks.told(one)
        same = ("id", "section", "tested_on", "pressure_in_wg", "area_ft2", "leakage_class", "measured_cfm", "instrument", "serial", "calibrated_on", "calibrated_until", "tested_by", "witness", "words")
        yield {name: one[name] if one[name] is not None else "" for name in same} | {
            "allowed_cfm": round(told.allowed, 2), "verdict": told.verdict, "why": say(f"leaks.why-{told.why}", language), "recorded_by": one["by"],
            "recorded_at": one["at"], "replaced_by": replaced.get(one["id"], ""),
        }  # fmt: skip


def spot_checks(seen: Seen, pieces: Mapping[str, tuple], language: str) -> Iterator[dict]:
    """`pieces`: id -> (run, mark)."""
    newest = {(one["draw"], one["piece"]): one for one in seen.looks}
    for draw in seen.draws:
        for piece in draw["drawn"]:
            run, mark = pieces.get(piece, (None, None))
            look = newest.get((draw["id"], piece))
            head = {"drawn_for": draw["day"], "draw": draw["id"], "seed": draw["seed"], "among": len(draw["among"]), "piece": piece, "run": run or "", "mark": mark or ""}
            if look is None:
                yield head | dict.fromkeys(("looked_by", "looked_at", "how", "fact", "said", "answer", "found", "words", "photos"), "")
                continue
            head |= {"looked_by": look["by"], "looked_at": look["at"], "how": look["how"], "photos": " ".join(look.get("photos", ()))}
            for one in look["found"]:
                found = labels.value(one["name"], one["found"], one.get("found_exact"), language) if one["answer"] == "otherwise" else ""
                yield head | {"fact": one["name"], "said": labels.value(one["name"], one["said"], one.get("exact"), language), "answer": one["answer"], "found": found, "words": one["words"]}


def walk_list(seen: Seen, language: str) -> Iterator[dict]:
    newest = {(one["area"].casefold(), one["question"]): one["id"] for one in seen.answers}
    for one in seen.answers:
        yield {
            "area": one["area"].partition(":")[2] or say("walk.area-nowhere", language), "question": one["question"], "asks": say(f"checklist.{one['question']}.asks", language),
            "answer": one["answer"], "words": one["words"], "by": one["by"], "at": one["at"],
            "stands": "yes" if newest[one["area"].casefold(), one["question"]] == one["id"] else "no", "photos": " ".join(one.get("photos", ())),
        }  # fmt: skip


def hold_points(seen: Seen) -> Iterator[dict]:
    known = {one["hold"] for one in seen.releases}
    for one in seen.releases:
        yield {"hold": one["hold"], "name": one["name"], "act": one["act"], "by": one["by"], "at": one["at"], "witness": one.get("witness", ""), "words": one["words"], "open_then": len(one.get("open", ()))}
    for key, name in seen.holds:
        if key not in known:
            yield {"hold": key, "name": name, "act": "", "by": "", "at": "", "witness": "", "words": "", "open_then": ""}


def decisions(piece: Mapping, language: str) -> Iterator[dict]:
    editions = {one["rule"]: one["edition"] for one in piece["findings"]}
    for one in piece.get("decisions", ()):
        corrected, looked = one.get("corrected"), one.get("looked")
        yield {
            "piece": piece["id"] or "", "run": piece["run"] or "", "mark": piece["mark"] or "", "rule": one["rule"], "decision": one["decision"], "reason": one.get("reason") or "",
            "by": one["by"], "at": one["at"], "corrected": _fact(corrected, language) if corrected else "",
            "looked": "; ".join([looked["how"], *(_fact(fact, language) for fact in looked["facts"])]) if looked else "",
            "granted_by": one.get("granted_by") or "", "document": one.get("document") or "", "owner": one.get("owner") or "", "due": one.get("due") or "",
            "edition": one["edition"], "on_earlier_words": "no" if editions.get(one["rule"]) == one["edition"] else "yes",
        }  # fmt: skip


def _fact(one: Mapping, language: str) -> str:
    return f"{labels.name(one['name'], language)}: {labels.value(one['name'], one['value'], one.get('exact'), language)}"


def cover_rows(seen: Seen, language: str) -> list[list[str]]:
    """What the cover says of it, in words: what is not as it should be stands first."""
    stand = leaks.standing(list(seen.records))
    bad = [one for one in stand if leaks.told(one).verdict != "meets"]
    newest = {one["piece"]: one for one in seen.looks}
    against = lots.against(len({piece for draw in seen.draws for piece in draw["drawn"]}), newest.values())
    answers = {(one["area"].casefold(), one["question"]): one for one in seen.answers}
    noes = sum(one["answer"] == "no" for one in answers.values())
    last = {one["hold"]: one["act"] for one in seen.releases}
    held = [name for key, name in seen.holds if last.get(key) != "released"]

    def text(key: str, **values) -> str:
        return say(f"handover.seen.{key}", language, **values)

    rows = [
        [text("leaks"), text("leaks-none") if not stand else text("leaks-of", count=len(stand), bad=len(bad))],
        [text("spot"), text("spot-none") if not against.drawn else text("spot-of", drawn=against.drawn, looked=against.pieces, off=against.off)],
        [text("walk"), text("walk-none") if not answers else text("walk-of", count=len(answers), noes=noes)],
    ]
    if seen.holds:
        rows.append([text("holds"), text("holds-held", names=", ".join(held)) if held else text("holds-all")])
    return rows


def csv_tables(seen: Seen, pieces: Mapping[str, tuple], language: str) -> Iterable[tuple]:
    """(name, columns, rows when asked) of the tables that acts alone make."""
    return (
        ("leak-records", LEAK_RECORDS, lambda: leak_records(seen, language)), ("spot-checks", SPOT_CHECKS, lambda: spot_checks(seen, pieces, language)),
        ("walk-list", WALK_LIST, lambda: walk_list(seen, language)), ("hold-points", HOLD_POINTS, lambda: hold_points(seen)),
    )  # fmt: skip
