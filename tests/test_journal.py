"""Every kind of act is a row of the journal, and whatever of such a row is changed afterwards shows."""

from __future__ import annotations

import ast
import hashlib
import json
import re
import shutil
import subprocess
import uuid
import zipfile
from datetime import UTC, date, datetime
from pathlib import Path

import paper_days
import pytest
from handing import SAID, new_folder, note, picture, tone
from test_doctor import by_hand, keys
from test_verify import relisted

import logbook
from logbook import chain, holds, store, worker
from logbook.handover.verify import verify
from logbook.hearing import scripted
from logbook.intake import Part
from logbook.paper.making import make_day
from logbook.paper.package import build
from logbook.store import acts, erasing, journal, people, proving, walked

CODE = Path(logbook.__file__).parent
DAY = date(2026, 10, 14)
NOW = datetime(2026, 10, 14, 16, tzinfo=UTC)
WRITERS = {"write": 1, "_do": 2, "_act": 2}  # function -> place of the kind among its arguments
NAMED = {  # kinds that the code names by a constant
    "DRAWN": walked.DRAWN, "LOOKED": walked.LOOKED, "WALKED": walked.WALKED, "LEAK": walked.LEAK,
    "RELEASED": holds.RELEASED, "HELD_AGAIN": holds.HELD_AGAIN, "ROW": erasing.ROW,
}  # fmt: skip
GUARDS = ("journal_stays", "journal_keeps")


def kinds() -> set[str]:
    """Every kind of act that the code can write, read from its source."""
    found = set()
    for file in CODE.rglob("*.py"):
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if not isinstance(node, ast.Call):
                continue
            name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
            writes = ast.unparse(node.func).endswith("journal.write") if name == "write" else file.parent.name == "store"
            if name in WRITERS and writes and len(node.args) > WRITERS[name]:
                found |= _kinds_of(node.args[WRITERS[name]], f"{file.name}:{node.lineno}")
    return found


def _kinds_of(node: ast.expr, where: str) -> set[str]:
    match node:
        case ast.Constant(value=str()):
            return {node.value}
        case ast.Name(id="act"):
            return set()  # handed on: whoever calls names it
        case ast.Name() if node.id in NAMED:
            return {NAMED[node.id]}
    raise AssertionError(f"{where} writes a kind that this test does not know: {ast.unparse(node)}")


class Ears:
    name = "prepared"

    def hear(self, sounds, *, languages):
        return [scripted.spread(SAID if sound.seconds < 1 else "", sound.seconds, "en") for sound in sounds]


@pytest.fixture(scope="module")
def everything(tmp_path_factory) -> Path:
    """A job in which every kind of act has happened."""
    path = tmp_path_factory.mktemp("journal") / "job"
    with new_folder(path) as folder:
        with store.writing(folder) as db:
            lead, gone = people.add(db, "Ada Fenn", "lead", NOW), people.add(db, "Rosa Quint", "installer", NOW)
            journal.write(db, "person-added", {"person": gone.id, "role": gone.role}, gone.name, NOW)
            for kind in ("invited", "password-set", "signed-in", "phone-paired", "phone-shared", "key-given", "cut-off", "person-left"):
                journal.write(db, kind, {"person": gone.id, "by": lead.id}, None, NOW)
        heard = store.receive(folder, note(by=gone.id, audio=(tone(440),))).id
        store.receive(folder, note(by=gone.id, audio=(tone(300, 2.0),)))
        store.receive(folder, note(by=gone.id, text="Straight five on run two."))
        store.add_photo(folder, heard, _digest(picture(7)), Part(picture(7), "p"), gone.id)
        store.add_document(folder, Part(b"%PDF-1.7 a letter", "letter.pdf"), lead.id)
        walked.keep_photo(folder, Part(picture(8), "p"), lead.id)
        while any(worker.work_once(folder, worker.Bench(Ears))):
            pass
        store.correct(folder, _new(), heard, 0, "mark", "14", lead.id)
        store.confirm(folder, _new(), heard, gone.id)
        unheard = folder.db.execute("SELECT id FROM notes WHERE state = 'unheard'").fetchone()[0]
        store.hear_again(folder, _new(), heard, lead.id)
        store.type_words(folder, _new(), unheard, "Elbow nine.", lead.id)
        store.withdraw(folder, _new(), unheard, gone.id)
        store.catch_up(folder, store.Reckoner())
        report = make_day(folder, DAY.isoformat(), ("en",), NOW).document["content"]
        store.sign(folder, _new(), DAY, lead.id, "lead", "", report)
        for kind in (walked.DRAWN, walked.LOOKED, walked.WALKED, walked.LEAK, holds.RELEASED, holds.HELD_AGAIN, "decided"):
            acts._do(folder, _new(), kind, lead.id, NOW, {"words": kind}, note=None, day=DAY.isoformat())
        erasing.erase(folder, gone.id, lead.id, NOW)
        with store.writing(folder) as db:
            journal.write(db, "handed_over", {"package": "0" * 64}, {"file": "out.zip"}, NOW)
    return path


def _new() -> str:
    return str(uuid.uuid4())


def _digest(data: bytes) -> str:
    return hashlib.sha256(data).hexdigest()


@pytest.fixture
def job(everything, tmp_path):
    shutil.copytree(everything, tmp_path / "job")
    return tmp_path / "job"


def rows_of(job: Path) -> list[chain.Row]:
    with store.open_folder(job) as folder:
        return list(journal.each(folder.db))


KINDS = sorted(kinds())


def test_every_kind_that_the_code_writes_has_happened_here(everything):
    assert {row.act for row in rows_of(everything)} == set(KINDS) and len(KINDS) >= 28
    assert keys(everything) == []


@pytest.mark.parametrize("kind", KINDS)
def test_a_row_of_any_kind_that_was_changed_shows(job, kind):
    """Each member of it, changed by hand with the guards taken away and put back."""
    row = next(one for one in rows_of(job) if one.act == kind)
    changes = {
        "at": "2020-01-01T00:00:00+00:00", "act": "received" if kind != "received" else "heard",
        "ids": json.dumps({"note": "another"}), "digest": "0" * 64, "before": "1" * 64, "hash": "2" * 64,
    }  # fmt: skip
    chained = lambda: [one.key for one in proving.journal_chain(folder.db)]  # noqa: E731
    with store.open_folder(job) as folder:
        for member, value in changes.items():
            by_hand(job, (f"UPDATE journal SET {member} = ? WHERE seq = ?", value, row.seq), guards=GUARDS)
            assert chained(), f"{member} of {kind}"
            if member == "ids":
                assert {one for one in keys(job) if one.startswith("store.chain")}, "doctor says so too"
            was = chain.canonical(row.ids).decode() if member == "ids" else getattr(row, member)
            by_hand(job, (f"UPDATE journal SET {member} = ? WHERE seq = ?", was, row.seq), guards=GUARDS)
        assert not chained()


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind != "handed_over"])
def test_a_journal_hashed_anew_from_any_row_on_shows_against_a_printed_report(job, kind):
    """Whoever rewrites all that follows makes a chain that holds; the newest hash on paper is not in it."""
    with store.open_folder(job) as folder:
        printed = journal.newest(folder)
    (job / "reports" / "day-2026-10-15.json").write_text(json.dumps({"reports": [{"journal": printed}]}))
    assert keys(job) == []
    rows = rows_of(job)
    at = next(number for number, row in enumerate(rows) if row.act == kind)
    last, changes = rows[at - 1] if at else None, []
    for row in rows[at:]:
        last = chain.following(last, "2026-10-14T16:00:01+00:00" if row.seq == at + 1 else row.at, row.act, row.ids, row.digest)
        changes.append(("UPDATE journal SET at = ?, before = ?, hash = ? WHERE seq = ?", last.at, last.before, last.hash, last.seq))
    by_hand(job, *changes, guards=GUARDS)
    assert "store.chain-not-printed" in keys(job)


@pytest.fixture(scope="module")
def package(everything, tmp_path_factory) -> tuple[dict[str, bytes], str]:
    """The files of a package that carries this journal."""
    home = tmp_path_factory.mktemp("package")
    (home / "spool").mkdir()
    with store.open_folder(everything) as folder:
        carried = list(journal.rows(folder))
    with open(home / "out.zip", "wb") as file:
        built = build(file, paper_days.closeout(home, journal=lambda: iter(carried), files=()), home / "spool")
    with zipfile.ZipFile(home / "out.zip") as archive:
        return {info.filename.removeprefix(f"{built.base}/"): archive.read(info) for info in archive.infolist()}, built.base


def packed(package, path: Path, change) -> Path:
    """The package again with its journal changed and every list of digests made to fit."""
    held, base = dict(package[0]), package[1]
    rows = [json.loads(line) for line in held["data/journal/journal.jsonl"].splitlines()]
    change(rows)
    held["data/journal/journal.jsonl"] = b"".join((json.dumps(row) + "\n").encode() for row in rows)
    relisted(held)
    with zipfile.ZipFile(path, "w", zipfile.ZIP_STORED) as archive:
        for name, content in held.items():
            archive.writestr(zipfile.ZipInfo(f"{base}/{name}", (1980, 1, 1, 0, 0, 0)), content)
    return path


@pytest.mark.parametrize("kind", KINDS)
def test_a_row_of_any_kind_that_was_changed_in_a_package_shows_though_every_list_fits(package, tmp_path, kind):
    for member, value in (("at", "2020-01-01T00:00:00+00:00"), ("ids", {"note": "another"}), ("digest", "0" * 64)):
        def change(rows):
            next(row for row in rows if row["act"] == kind)[member] = value

        verdict = verify(packed(package, tmp_path / f"{member}.zip", change))
        assert verdict.status == 1
        assert {one.key for one in verdict.problems} & {"store.chain-altered", "store.chain-broken"}, member


def test_a_package_whose_journal_was_left_alone_has_no_such_problem(package, tmp_path):
    """What differs elsewhere in this made package is not the journal's: the tests above do not find it by chance."""
    verdict = verify(packed(package, tmp_path / "same.zip", lambda rows: None))
    assert not [one.key for one in verdict.problems if one.key.startswith("store.chain")]


# --- paper


def test_every_report_of_a_day_prints_the_newest_hash_there_was(tmp_path):
    """On paper in full: in HTML, PDF and JSON alike, in every language of the report."""
    with new_folder(tmp_path / "job") as folder:
        store.receive(folder, note(text="Straight five on run two."))
        worker.work_once(folder, worker.Bench(Ears))
        newest = journal.newest(folder)["hash"]
        made = make_day(folder, DAY.isoformat(), ("en", "es"), NOW)
    assert [one["journal"]["hash"] for one in made.document["reports"]] == [newest, newest]
    paper = subprocess.run(["pdftotext", "-raw", made.files["pdf"], "-"], check=True, capture_output=True, text=True).stdout
    for printed in (made.files["html"].read_text(encoding="utf-8"), paper):
        assert re.sub(r"\s", "", printed).count(newest) >= 2
