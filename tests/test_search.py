"""Search: what was said is found by its words, a piece by its mark however it is written, and nothing that was erased.

SQLite's FTS5 is asked with quoted terms alone, so that no sign of a reader is ever part of its query language.
"""

from __future__ import annotations

import uuid
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desk import PAGE, open_desk
from handing import new_folder, note
from logbook import store
from logbook.store import search
from logbook.worker import Bench, work_once

SAID = {
    "elbow": "Elbow T four on run two, twelve by ten, turning vanes in, above the kitchen corridor, stapled every three, taped.",
    "straight": "Straight B-12 on run five, eighteen by twelve, in the canción room, stapled every two, taped with 181A-P, rubbed down.",
}


@pytest.fixture(scope="module")
def desk(tmp_path_factory):
    made = open_desk(tmp_path_factory.mktemp("search"))
    ids = {name: made.hand_in(text=text).json["id"] for name, text in SAID.items()}
    made.notes = ids
    answer(made)
    return made


def answer(desk) -> None:
    with desk.folder() as folder:
        work_once(folder, Bench(None))


def hits(desk, asked: str, **more) -> list[tuple[str, str]]:
    with desk.folder() as folder:
        return [(one.what, one.id) for one in search.search(folder, asked, **more).hits]


def whats(desk, asked: str, **more) -> set[str]:
    return {what for what, _ in hits(desk, asked, **more)}


@pytest.mark.parametrize("asked", ["turning vanes", "VANES kitchen", "corrid", '"kitchen corridor"', "  vanes   "])
def test_what_was_said_is_found_by_its_words(desk, asked):
    assert ("note", desk.notes["elbow"]) in hits(desk, asked)
    assert ("note", desk.notes["straight"]) not in hits(desk, asked)


@pytest.mark.parametrize("asked", ["vanes bathroom", '"corridor kitchen"', "anes"])
def test_all_terms_must_be_there_and_quoted_words_stand_together(desk, asked):
    assert hits(desk, asked) == []


@pytest.mark.parametrize("asked", ["cancion", "CANCIÓN", "canciôn"])
def test_accents_do_not_matter(desk, asked):
    assert ("note", desk.notes["straight"]) in hits(desk, asked)


@pytest.mark.parametrize("asked", ["T4", "t-4", '"T 4"', "B12", "b-12", "B 12"])
def test_a_piece_is_found_by_its_mark_however_it_is_written(desk, asked):
    assert "piece" in whats(desk, asked, only="piece")


def test_a_number_is_not_the_start_of_another(desk):
    assert hits(desk, "run 5", only="piece") and not hits(desk, "run 1", only="piece")


def test_a_piece_is_found_by_a_rule_that_does_not_hold(desk):
    assert "piece" in whats(desk, "staple-spacing") and "piece" in whats(desk, "staple spacing run 2")


@pytest.mark.parametrize(
    "asked",
    ["", "   ", '"', '""', "*", "AND", "NOT vanes", "vanes OR", "vanes*", "(vanes", "words:vanes", "NEAR(a b)", "^vanes", "-vanes", "a\x00b", "'; DROP TABLE notes;--", "{}", "\\", "+", "🦆", "x" * 500, " ".join("abcdefghijklmnop")],
)  # fmt: skip
def test_no_sign_is_a_query_language(desk, asked):
    hits(desk, asked)
    assert desk.by_key("lead", "GET", "/search", query_string={"q": asked}, headers=PAGE).status_code == 200


@given(st.text(max_size=60))
def test_any_text_may_be_asked(desk_for_laws, asked):
    with desk_for_laws.folder() as folder:
        search.search(folder, asked)


@pytest.fixture(scope="module")
def desk_for_laws(desk):
    return desk


def test_every_prefix_of_a_said_word_finds_its_note(desk):
    for length in range(3, len("corridor") + 1):
        assert ("note", desk.notes["elbow"]) in hits(desk, "corridor"[:length])


def test_the_hit_is_shown_among_its_words(desk):
    with desk.folder() as folder:
        found = search.search(folder, "vanes", only="note").hits[0]
    assert ("vanes", True) in found.shown and any("turning" in text for text, hit in found.shown if not hit)


def test_pages_follow_each_other_without_a_gap(tmp_path):
    with new_folder(tmp_path / "job") as folder:
        for number in range(7):
            store.receive(folder, note(text=f"Straight {number} on run two, eighteen by twelve, duckweed."))
        seen, start = [], 0
        while start is not None:
            found = search.search(folder, "duckweed", start=start, limit=3)
            assert found.total == 7
            seen += [hit.id for hit in found.hits]
            start = found.next
    assert len(seen) == len(set(seen)) == 7


def test_words_typed_again_replace_and_erased_words_are_gone(tmp_path):
    with new_folder(tmp_path / "job") as folder:
        said = note(text="Straight one, marigold.")
        store.receive(folder, said)
        assert search.search(folder, "marigold").total == 1
        with store.writing(folder) as db:
            db.execute("UPDATE words SET text = '' WHERE note = ?", [said.id])
            search.squeeze(db)
        assert search.search(folder, "marigold").total == 0
        folder.db.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        kept = [bytes(block) for (block,) in folder.db.execute("SELECT block FROM sought_data")]
        assert not any(b"marigold" in block for block in kept), "no part of the index holds the erased word"


def test_a_reason_is_found_and_leads_to_its_piece(desk):
    client = desk.browser("lead")
    with desk.folder() as folder:
        piece = next(one["id"] for one in store.logged(folder) if one["mark"] and "4" in one["mark"])
        found = next(one for one in store.piece_document(folder, piece, "en")["findings"] if one["rule"] == "staple-spacing")
        body = {"id": str(uuid.uuid4()), "rule": "staple-spacing", "edition": found["edition"], "decision": "asked", "reason": "Ask him about the periwinkle seam."}
        assert not hasattr(store.decide(folder, piece, body, desk.ids["lead"], datetime.now(UTC)), "key")
    page = client.get("/search?q=periwinkle", headers=PAGE).text
    assert f"/fitting/{piece}" in page and "<mark>periwinkle</mark>" in page


def test_the_log_of_an_older_version_is_searched_too(tmp_path):
    with new_folder(tmp_path / "job") as folder:
        store.receive(folder, note(text="Straight one on run two, cornflower."))
        with store.writing(folder) as db:
            for name in ("words_sought", "words_sought_again", "acts_sought", "acts_sought_no_more"):
                db.execute(f"DROP TRIGGER {name}")
            db.execute("DROP TABLE sought")
            db.execute("DROP TABLE sought_of")
            db.execute("DELETE FROM _sqlite_migrations WHERE migration_set = 'search'")
    with store.open_folder(tmp_path / "job") as folder:
        assert search.search(folder, "cornflower").total == 1


def test_a_piece_is_found_by_the_area_of_its_row_in_the_schedule(tmp_path):
    with new_folder(tmp_path / "job") as folder:
        job = folder.path / "job.toml"
        job.write_text(job.read_text(encoding="utf-8") + '\n[[schedule]]\nfile = "rows.csv"\n', encoding="utf-8")
        (folder.path / "rows.csv").write_text("mark,run,kind,inlet,area\n4,2,straight,18x12,Boiler room\n", encoding="utf-8")
    with store.open_folder(tmp_path / "job") as folder:
        store.receive(folder, note(text="Straight four on run two, eighteen by twelve."))
        work_once(folder, Bench(None))
        assert [hit.what for hit in search.search(folder, "boiler").hits] == ["piece"]
        assert walked_areas(folder) == ["area:Boiler room"]


def walked_areas(folder) -> list[str]:
    from logbook.store import walked
    from logbook.walk import areas

    return [one.key for one in areas.areas(folder.job.revision(None), *walked.short_pieces(folder))]


def test_an_installer_finds_only_what_his_device_said(desk):
    from logbook.store import people

    with desk.folder() as folder, store.writing(folder) as db:
        other = people.add(db, "Ivo Lark", "installer", datetime.now(UTC))
        _, key = people.give_device(db, other.id, "script", "test", datetime.now(UTC))
    asked = {"Authorization": f"Bearer {key}"} | PAGE
    page = desk.app.test_client().get("/search?q=vanes", headers=asked).text
    assert "Found: 0" in page and "kitchen" not in page
    assert "Found: 0" in desk.app.test_client().get("/search?q=periwinkle", headers=asked).text
    assert "kitchen" in desk.by_key("installer", "GET", "/search?q=vanes", headers=PAGE).text


def test_rules_are_found_by_words_in_the_readers_language(desk):
    client = desk.browser("contractor")
    assert "/rules/transition-slope" in client.get("/search?q=steeper&in=rule", headers=PAGE).text
    assert "/rules/rubbed-down" in client.get("/search?q=rubbed-down&in=rule&language=es", headers=PAGE).text
