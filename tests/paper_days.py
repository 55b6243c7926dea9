"""Days for the tests of paper and package: documents in the contract's shapes, made from short descriptions.

The job, its people and its fittings are invented. `one_day()` is a small day that has one of everything;
`many(fittings, photos)` is as long as asked.
"""

from __future__ import annotations

import io
import json
from hashlib import sha256
from pathlib import Path

from logbook import facts
from logbook.day import Day, Planned

CASES = Path(__file__).parent / "cases" / "paper"
DATE = "2026-10-13"
JOB = {"id": "qmvtkrha", "name": "Alder Street Library, east wing", "place": "14 Alder Street", "roles": {"Contractor": "North Fork Air"}}
CASE_PHOTO = "9eacc8c34023cb728f0e024c26a50db644cb1caef835cfd1140f7e57bada43c2"


def fact(name, value, note, **more):
    return {"name": name, "value": value, "unit": facts.BY_NAME[name].unit, "words": name, "start": 0, "end": len(name), "hedged": False, "via": "spoken", "note": note} | more


def finding(rule, verdict, says, piece, stands="as shown", do=None, source="this job's own rule; common practice, no published source", **more):
    shows = {"meets": "file", "departs": "flag", "unsaid": "flag", "unclear": "ask"}[verdict]
    return {
        "rule": rule, "piece": piece, "case": "case", "verdict": verdict, "weight": "must", "shows": shows, "says": says, "do": do,
        "limit": None, "tolerance": None, "reckoned": {}, "facts": [], "leans_on": [], "asks": None, "source": source,
        "edition": sha256(f"{rule}{says}".encode()).hexdigest(), "stands": ("open" if more.get("shows", shows) == "flag" else None) if stands == "as shown" else stands,
    } | more  # fmt: skip


def note(note_id, text, at, pieces, photos=(), state="answered", shift=None, problem=None, by="Mateo R."):
    return {
        "id": note_id, "job": JOB["id"], "spoken_by": by, "handed_in_by": by, "spoken_at": at, "sent_at": at, "received_at": at, "state": state,
        "problem": problem, "answers": None, "pressed": {"mark": None, "kind": None, "run": None}, "language": "en", "language_from": "words",
        "text": text, "transcript": None,
        "fittings": [{"position": at_, "facts": [], "open_items": [], "piece": piece, "assumed": [], "findings": []} for at_, piece in enumerate(pieces)],
        "shift": shift, "withdraws": None, "questions": [],
        "photos": [{"sha256": digest, "taken_at": at, "taken_from": "phone", "place": {"latitude": 0.0012, "longitude": 0.0034, "accuracy_m": 18}, "place_from": "phone", "tags": [], "of": [0], "of_from": "only", "readable": True} for digest in photos],
        "photos_to_come": [], "digests": {"audio": [sha256(note_id.encode()).hexdigest()], "photos": list(photos), "text": None}, "earlier": [],
    }  # fmt: skip


def piece(piece_id, run, mark, notes, said, found, photos=(), **more):
    listed = [fact("kind", said["kind"], notes[0]), fact("mark", mark, notes[0]), *([fact("run", run, notes[0])] if run else [])]
    listed += [fact(name, value, notes[0]) for name, value in said.items() if name != "kind"]
    return {"id": piece_id, "job": JOB["id"], "run": run, "mark": mark, "notes": notes, "facts": listed, "assumed": [], "open_items": [],
            "photos": [{"note": notes[0], "sha256": d, "taken_at": f"{DATE}T10:40:00-05:00", "taken_from": "phone", "of": [0], "readable": True} for d in photos],
            "findings": found, "decisions": [], "looked": []} | more  # fmt: skip


def move(side, by, back, way="in"):
    return {"side": side, "by": by, "back": back, "way": way}


def one_day(**more) -> Day:
    """A day with one of everything a report can hold."""
    told = json.loads((CASES / "day.json").read_text(encoding="utf-8"))
    pieces = []
    for row in told["pieces"]:
        made = piece(row["id"], row["run"], row["mark"], row["notes"], row["said"], [finding(piece=row["id"], **one) for one in row["findings"]], row["photos"])
        made["decisions"] = [one | {"edition": next(f["edition"] for f in made["findings"] if f["rule"] == one["rule"])} for one in row["decisions"]]
        made["looked"], made["assumed"] = row["looked"], row["assumed"]
        pieces.append(made)
    test = {"id": "leak-1", "job": JOB["id"], "run": "2", "mark": None, "notes": ["n-leak"], "assumed": [], "open_items": [], "photos": [], "decisions": [], "looked": [],
            "facts": [fact("run", "2", "n-leak"), fact("leak_pressure", 1, "n-leak"), fact("leak_flow", 18, "n-leak"), fact("leak_area", 310, "n-leak")],
            "findings": [finding("leak-test", "meets", "18 cfm at 1 in. w.g. over 310 ft²; 18.6 cfm is allowed.", "leak-1", source="SMACNA leakage test manual")]}  # fmt: skip
    notes = [note(**row) for row in told["notes"]]
    planned = [Planned(**row) for row in told["planned"]]
    return Day(DATE, JOB, notes, [*pieces, test], journal={"seq": 212, "hash": "ab" * 32}, planned=planned, **more)


def seen_day(**more) -> Day:
    """The same day after a spot check, two leak tests with an instrument and a walk."""

    def found(name, said, answer, **rest):
        return {"name": name, "said": said, "via": "spoken", "answer": answer, "words": ""} | rest

    by = {"by": "Dana W.", "at": f"{DATE}T16:20:00-05:00"}
    looks = [
        {"id": "l1", "piece": "p4", "draw": "d1", "how": "measured", "words": "", "photos": [],
         "found": [found("taped", True, "as_said"), found("staple_spacing", 2, "otherwise", found=3.5, words="on the far side"), found("groove_step", "inside", "not_seen")]} | by,
        {"id": "l2", "piece": "p13", "draw": "d1", "how": "seen", "words": "", "photos": [], "found": [found("taped", True, "as_said")]} | by,
    ]  # fmt: skip
    draw = {"id": "d1", "day": DATE, "format": "sha256(seed:piece)", "seed": "5eed", "among": ["p13", "p4", "p5", "p6"], "first": [], "drawn": ["p4", "p13", "p6"]} | by
    record = {
        "section": "run 2, unit to register", "instrument": "orifice tube", "serial": "0417", "tested_by": "Dana W.", "witness": "Ossie T.", "words": "",
        "pressure_in_wg": 1, "area_ft2": 360, "measured_cfm": 18, "leakage_class": 6, "tested_on": DATE, "calibrated_on": "2025-09-01",
        "calibrated_until": "2026-09-01", "instead_of": None,
    }  # fmt: skip
    records = [record | {"id": "t1"} | by, record | {"id": "t2", "section": "run 9", "measured_cfm": 30, "calibrated_until": "2027-09-01"} | by]
    answers = [{"id": f"w{at}", "area": "area:hall", "question": question, "answer": given, "words": words, "photos": []} | by for at, (question, given, words) in enumerate((("g1", "yes", ""), ("g4", "no", "bare straps")))]
    return one_day(draws=[draw], looks=looks, answers=answers, records=records, **more)


def many(fittings: int, photos: int) -> tuple[Day, dict[str, bytes]]:
    """A long day: every fitting a transition with `photos` photos, three findings and a plot row of its own."""
    copies, made = {}, []
    for at in range(fittings):
        small = [jpeg(at * photos + shot) for shot in range(photos)]
        digests = [sha256(one).hexdigest() for one in small]
        copies |= dict(zip(digests, small))
        made.append(fitting(at, digests))
    notes, pieces = [one for one, _ in made], [one for _, one in made]
    return Day(DATE, JOB, notes, pieces, journal={"seq": 999, "hash": "cd" * 32}), copies


def fitting(at: int, digests: list[str]) -> tuple[dict, dict]:
    """The note and the piece of one fitting of a long job."""
    piece_id, note_id, back = f"piece-{at:04}", f"note-{at:04}", 24 + at % 9
    hour, minute = 7 + at // 12 % 12, at % 12 * 5
    text = f"Transition {at + 1} on run {at // 15 + 1}, sixteen by ten to twelve by ten, the left side comes in four over {back}. Stapled every two, taped with 181A-P, rubbed down, scrim shows."
    slope = round(48 / back, 3)
    found = [
        finding("transition-slope", "meets" if back >= 24 else "departs", f"Left side comes in 4 in over {back} in, {slope} in 12; this job allows 2 in 12.", piece_id, reckoned={"slope_in_12": slope, "limit_in_12": 2}),
        finding("staple-spacing", "meets", "Staples every 2 in; the limit is 2 in.", piece_id, reckoned={"spacing_in": 2, "limit_in": 2}),
        finding("trimmed", "unsaid", "Not said whether the extra insulation was trimmed.", piece_id, shows="count", stands=None),
        *(finding(rule, "meets", f"Holds as said: {rule}.", piece_id) for rule in ("mark-said", "sizes-said", "sizes-agree", "fastened", "taped", "closure-listed", "rubbed-down", "joint-tight", "photo-there", "photo-time", "photo-sharp")),
    ]  # fmt: skip
    said = {"kind": "transition", "inlet_size": [16, 10], "outlet_size": [12, 10], "side_moves": [move("left", 4, back)], "stapled": True, "staple_spacing": 2, "taped": True, "closure_mark": "181A-P", "rubbed_down": True}
    made = piece(piece_id, str(at // 15 + 1), str(at + 1), [note_id], said, found, digests)
    return note(note_id, text, f"{DATE}T{hour:02}:{minute:02}:00-05:00", [piece_id], digests), made


def jpeg(seed: int) -> bytes:
    """A 640 by 480 picture of its own for every seed, without EXIF."""
    import numpy
    from PIL import Image

    noise = numpy.random.default_rng(seed).integers(60, 200, (24, 32, 3), dtype=numpy.uint8)
    out = io.BytesIO()
    Image.fromarray(noise).resize((640, 480), Image.Resampling.BICUBIC).save(out, "JPEG", quality=82)
    return out.getvalue()


def closeout(folder: Path, day: Day | None = None, **more):
    """What a package is made of, from a day of documents and photos laid into `folder`."""
    from logbook import chain
    from logbook.day import document
    from logbook.paper import reports
    from logbook.paper.package import Closeout

    day = day or one_day()
    originals = folder / "originals"
    originals.mkdir()
    swap = {}
    for at, digest in enumerate(sorted({one["sha256"] for note_ in day.notes for one in note_["photos"]})):
        content = with_exif(at)
        swap[digest] = sha256(content).hexdigest()
        (originals / f"{swap[digest]}.jpg").write_bytes(content)
    told = json.loads(json.dumps({"notes": day.notes, "pieces": day.pieces}))
    told = _swapped(told, swap)
    rows, last = [], None
    for seq in range(1, 8):
        last = chain.following(last, f"{DATE}T12:00:0{seq}+00:00", "received", {"note": f"n{seq}"}, chain.digest(b"salt", seq))
        rows.append({"seq": last.seq, "at": last.at, "act": last.act, "ids": dict(last.ids), "digest": last.digest, "before": last.before, "hash": last.hash})
    (folder / "job.toml").write_text('id = "qmvtkrha"\n')
    made = document({"en": Day(DATE, JOB, told["notes"], told["pieces"], journal={"seq": 5, "hash": rows[4]["hash"]}, planned=day.planned)}, f"{DATE}T17:05:00-05:00")
    (folder / "day.json").write_text(json.dumps(made))
    (folder / "day.pdf").write_bytes(reports.pdf(made, {}))
    files = [("job/job.toml", folder / "job.toml"), (f"days/day-{DATE}.json", folder / "day.json"), (f"days/day-{DATE}.pdf", folder / "day.pdf")]

    def original(digest):
        path = originals / f"{digest}.jpg"
        return path if path.exists() else None

    if "seen" not in more and day.draws:
        from logbook.handover.seen import Seen

        release = {"id": "h1", "hold": "ceiling", "name": "Before the ceiling closes", "act": "released", "words": "two left open", "witness": "", "open": [{}, {}], "by": "Dana W.", "at": f"{DATE}T17:00:00-05:00"}
        more = more | {"seen": Seen(day.draws, day.looks, day.answers, day.records, [release], [("ceiling", "Before the ceiling closes"), ("test", "Before the pressure test")])}
    parts = {
        "job": JOB, "language": "en", "notes": lambda: iter(told["notes"]), "pieces": lambda: iter(told["pieces"]), "journal": lambda: iter(rows), "original": original,
        "rules": [{"id": "taped"}], "planned": day.planned, "files": files, "days": [{"date": DATE, "signatures": [], "pdf": f"days/day-{DATE}.pdf"}],
    }  # fmt: skip
    return Closeout(**(parts | more))


def _swapped(value, swap):
    match value:
        case dict():
            return {key: _swapped(one, swap) for key, one in value.items()}
        case list():
            return [_swapped(one, swap) for one in value]
    return swap.get(value, value) if isinstance(value, str) else value


def with_exif(seed: int, orientation: int = 6) -> bytes:
    """A photo with a position and an orientation in its EXIF."""
    from PIL import Image

    image = Image.open(io.BytesIO(jpeg(seed)))
    told = Image.Exif()
    told[0x0112] = orientation
    told[0x010F] = "Invented Camera"
    told.get_ifd(0x8825).update({1: "N", 2: (12.0, 34.0, 56.0), 3: "W", 4: (98.0, 7.0, 6.0)})
    out = io.BytesIO()
    image.save(out, "JPEG", exif=told, comment=b"a comment")
    return out.getvalue()
