"""The as-built register: one row a fitting as its notes say it, with what others looked at and measured beside it.

Rows are plain dictionaries in the order of COLUMNS, from the documents of a piece and of its notes. The same rows
become CSV (with a Table Schema in `datapackage.json`), XLSX and JSON. Columns that begin with `said_` hold what the
installer said; `looked_` and `measured_` what somebody else found; numbers of findings are no score.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Iterator, Mapping, Sequence

from logbook import labels
from logbook.facts import BY_NAME
from logbook.day.sheet import photos_of, size_text, standing, verdicts

SAID = (
    "service", "place", "stage", "joined_to", "inlet_size", "outlet_size", "branch_size", "collar_diameter", "side_moves", "level_sides",
    "length", "offset_by", "turn_angle", "elbow_pieces", "vanes", "throat_radius", "air_leaves_by", "groove_step", "stapled", "staple_spacing",
    "cross_tabs", "taped", "closure", "closure_mark", "tape_width", "rubbed_down", "facing_damage", "repair_method", "hanger_spacing",
    "board_thickness", "surface_temperature",
)  # fmt: skip
# column, type of the Table Schema, what it holds
COLUMNS: tuple[tuple[str, str, str], ...] = (
    ("piece", "string", "Id of the piece in pieces/pieces.jsonl."),
    ("run", "string", "Run as spoken."),
    ("mark", "string", "Mark as spoken."),
    ("kind", "string", "What was made, as said."),
    ("planned", "string", "yes: a row of the schedule bears this mark; no: none does; empty: the job has no schedule."),
    ("first_said_at", "datetime", "When the first note about it was spoken."),
    ("last_said_at", "datetime", "When the last note about it was spoken."),
    ("said_by", "string", "Who spoke."),
    *((f"said_{name}", "string", f"{name} as said; empty: not said.") for name in SAID),
    ("stands_by_job_or_shift", "string", "What was not said of this piece and stands by the job file or the shift note."),
    ("findings_good_as_said", "integer", "Findings that hold as said. No approval."),
    ("findings_off", "integer", "Findings that depart from a limit as said."),
    ("findings_not_said", "integer", "Findings whose facts nobody said."),
    ("findings_could_not_tell", "integer", "Findings in doubt."),
    ("findings_open", "integer", "Flagged findings that stand open or in hand."),
    ("findings_settled", "integer", "Flagged findings settled by a decision or closed by a later note."),
    ("decisions", "string", "Decisions with who, when and why."),
    ("looked_by", "string", "Who looked at it; empty: nobody."),
    ("looked_found", "string", "What the looker found."),
    ("measured_by", "string", "Who measured it; empty: nobody."),
    ("measured_found", "string", "What was measured."),
    ("photos", "integer", "Photos that show it; see photos.csv."),
    ("notes", "string", "Ids of its notes in notes/notes.jsonl."),
)
PHOTO_COLUMNS = (
    ("piece", "string", "Id of the piece it shows; empty: nobody tied it to one."),
    ("note", "string", "Id of the note it came with."),
    ("path", "string", "Where it lies in this package; empty: not carried."),
    ("original_sha256", "string", "SHA-256 of the photo as it was handed in."),
    ("copy_sha256", "string", "SHA-256 of what this package carries; empty: not carried."),
    ("carried", "string", "original: as it was handed in; stripped: without camera data and position; small: a small copy drawn anew, where they cannot be cut out; not carried."),
    ("why", "string", "Why it is not carried, or not as it was."),
    ("taken_at", "string", "When it was taken, by the clock named in taken_from."),
    ("taken_from", "string", "phone or exif; empty: not known."),
)
VOICE_COLUMNS = (
    ("note", "string", "Id of the note."), ("said_by", "string", "Whose voice."), ("said_at", "datetime", "When."),
    ("path", "string", "Where the recording lies in this package; empty: it is not carried."), ("sha256", "string", "SHA-256 of the recording as it was handed in."),
)  # fmt: skip
UNREAD_COLUMNS = (
    ("note", "string", "Id of the note in notes/notes.jsonl."), ("said_by", "string", "Who said it."), ("said_at", "datetime", "When."),
    ("pieces", "string", "Ids of the pieces of the note; empty: it told of none."), ("words", "string", "Words that tell of the work and became no fact: nothing was checked against them."),
)  # fmt: skip
MISSING_COLUMNS = (
    ("mark", "string", "Mark in the schedule in force."), ("run", "string", "Run in the schedule."),
    ("kind", "string", "Kind in the schedule."), ("size", "string", "Sizes in the schedule."),
)  # fmt: skip
LEAK_COLUMNS = (
    ("run", "string", "Run as said."), ("pressure_in_wg", "number", "Test pressure as said."), ("area_ft2", "number", "Surface as said."),
    ("measured_cfm", "number", "Leakage as said."), ("verdict", "string", "What the rule answers to what was said."), ("says", "string", "The finding."),
    ("said_by", "string", "Who said it."), ("said_at", "string", "When."), ("instrument", "string", "Not part of a spoken note: see leak-records.csv."),
    ("calibrated_on", "string", "See leak-records.csv."), ("witness", "string", "See leak-records.csv."), ("note", "string", "Id of the note."),
)  # fmt: skip
FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n", "\uff1d", "\uff0b", "\uff0d", "\uff20")  # the last four are wide forms


def row(piece: Mapping, notes: Mapping[str, Mapping], planned: bool | None, language: str) -> dict:
    """One row of the register. `planned` None: the job has no schedule."""
    by_name = {doc["name"]: doc for doc in piece["facts"]}
    own = [notes[note] for note in piece["notes"] if note in notes]
    times = sorted(note["spoken_at"] for note in own)
    counted, stands = verdicts(piece), standing(piece)
    looks = [one for one in piece.get("looked", ()) if one.get("how") != "measured"]
    measured = [one for one in piece.get("looked", ()) if one.get("how") == "measured"]
    assumed = "; ".join(f"{labels.name(one['name'], language)}: {labels.value(one['name'], one['value'], one.get('exact'), language)} ({one['via']})" for one in piece.get("assumed", ()))
    return {
        "piece": piece["id"] or "", "run": piece["run"] or "", "mark": piece["mark"] or "",
        "kind": by_name["kind"]["value"] if "kind" in by_name else "",
        "planned": "" if planned is None else "yes" if planned else "no",
        "first_said_at": times[0] if times else "", "last_said_at": times[-1] if times else "",
        "said_by": ", ".join(dict.fromkeys(note["spoken_by"] for note in own)),
        **{f"said_{name}": _said(by_name.get(name), language) for name in SAID},
        "stands_by_job_or_shift": assumed,
        "findings_good_as_said": counted["meets"], "findings_off": counted["departs"], "findings_not_said": counted["unsaid"],
        "findings_could_not_tell": counted["unclear"], "findings_open": stands["open"] + stands["in hand"],
        "findings_settled": stands["settled"] + stands["closed"],
        "decisions": "; ".join(_decision(one) for one in piece.get("decisions", ())),
        "looked_by": ", ".join(dict.fromkeys(one["by"] for one in looks)), "looked_found": _found(looks, language),
        "measured_by": ", ".join(dict.fromkeys(one["by"] for one in measured)), "measured_found": _found(measured, language),
        "photos": len(photos_of(piece, notes)), "notes": " ".join(piece["notes"]),
    }  # fmt: skip


def leak_row(piece: Mapping, notes: Mapping[str, Mapping]) -> dict:
    said = {doc["name"]: doc["value"] for doc in piece["facts"]}
    tested = next((one for one in piece["findings"] if one["rule"] == "leak-test"), None)
    note = notes.get(piece["notes"][0], {}) if piece["notes"] else {}
    return {
        "run": piece["run"] or "", "pressure_in_wg": said.get("leak_pressure", ""), "area_ft2": said.get("leak_area", ""),
        "measured_cfm": said.get("leak_flow", ""), "verdict": tested["verdict"] if tested else "", "says": tested["says"] if tested else "",
        "said_by": note.get("spoken_by", ""), "said_at": note.get("spoken_at", ""), "instrument": "", "calibrated_on": "", "witness": "",
        "note": note.get("id", ""),
    }  # fmt: skip


def unread_rows(note: Mapping) -> list[dict]:
    """Each stretch of a note that tells of the work and became no fact; of a note that was taken back none."""
    if note.get("withdrawn_at"):
        return []
    pieces = " ".join(dict.fromkeys(entry["piece"] for entry in note["fittings"] if entry.get("piece")))
    return [{"note": note["id"], "said_by": note["spoken_by"], "said_at": note["spoken_at"], "pieces": pieces, "words": one["words"]} for one in note.get("unread", ())]


def headline(piece: Mapping, language: str) -> str:
    return " ".join(part for part in (labels.fitting(list(piece["facts"]), language), size_text(piece["facts"], language)) if part)


def _said(doc: Mapping | None, language: str) -> str:
    if doc is None:
        return ""
    text = labels.value(doc["name"], doc["value"], doc.get("exact"), language)
    return f"{text} (?)" if doc.get("hedged") or doc.get("conflict") else text


def _found(looks: Sequence[Mapping], language: str) -> str:
    return "; ".join(f"{labels.name(one['name'], language)}: {labels.value(one['name'], one['value'], one.get('exact'), language)} ({one['how']})" for one in looks if one["name"] in BY_NAME)


def _decision(one: Mapping) -> str:
    parts = [f"{one['rule']}: {one['decision']}", one["by"], one["at"], one.get("reason") or "", f"granted by {one['granted_by']}" if one.get("granted_by") else ""]
    return ", ".join(part for part in parts if part)


def plain(value: object) -> object:
    """A cell that no spreadsheet takes for a formula: an apostrophe goes before what starts like one.

    Numbers stay numbers. The list of signs is that of OWASP's page on CSV injection, from memory; some programs
    strip blanks before they look, and take wide forms for the narrow ones.
    """
    return f"'{value}" if isinstance(value, str) and value.lstrip(" \u00a0\u200b\ufeff").startswith(FORMULA) else value


def csv_lines(columns: Sequence[tuple[str, str, str]], rows: Iterable[Mapping]) -> Iterator[bytes]:
    """RFC 4180, UTF-8, a line at a time."""
    names = [name for name, _, _ in columns]
    yield (",".join(names) + "\r\n").encode()
    for one in rows:
        line = io.StringIO()
        csv.writer(line, lineterminator="\r\n").writerow([plain(one[name]) for name in names])
        yield line.getvalue().encode()


def resource(name: str, path: str, title: str, columns: Sequence[tuple[str, str, str]], size: int, digest: str) -> dict:
    """A tabular data resource: the schema of a CSV with its size and digest."""
    fields = [{"name": column, "type": kind, "description": told} | ({"format": "any"} if kind == "datetime" else {}) for column, kind, told in columns]
    return {
        "name": name, "path": path, "title": title, "profile": "tabular-data-resource", "scheme": "file", "format": "csv", "mediatype": "text/csv",
        "encoding": "utf-8", "bytes": size, "hash": f"sha256:{digest}", "dialect": {"lineTerminator": "\r\n"}, "schema": {"fields": fields, "missingValues": [""]},
    }  # fmt: skip
