"""Where a photo was taken and how a person sounds are for lead and office; the others get copies and words."""

from __future__ import annotations

import hashlib
import io
import json
import zipfile
from datetime import UTC, datetime

import exifread
import pytest
from handing import SAID, tone
from paper_days import with_exif
from PIL import Image

from desk import PAGE, note_form, open_desk
from logbook import store, worker
from logbook.handover import stripping
from logbook.hearing import scripted
from logbook.intake import Part
from logbook.paper.handing_over import hand_over
from logbook.paper.making import make_day

SEES = {"lead", "keeper"}
ROLES = ("installer", "lead", "contractor", "keeper")


@pytest.fixture(scope="module")
def desk(tmp_path_factory):
    desk = open_desk(tmp_path_factory.mktemp("places"))
    facts = json.dumps([{"latitude": 12.34567, "longitude": -98.24685, "accuracy_m": 4}])
    desk.note = desk.hand_in(photo=[with_exif(3), webp()], photo_facts=facts).json["id"]
    desk.spoken = desk.by_key("installer", "POST", "/notes", data=note_form(audio=[tone(440)])).json["id"]
    with desk.folder() as folder:
        worker.work_once(folder, worker.Bench(Ears))
    return desk


class Ears:
    name = "prepared"

    def hear(self, sounds, *, languages):
        return [scripted.spread(SAID, sound.seconds, "en") for sound in sounds]


def _now():
    return datetime.now(UTC)


def webp(seed: int = 4) -> bytes:
    """A WebP with a position, an orientation and a colour profile's worth of other chunks."""
    out = io.BytesIO()
    image = Image.open(io.BytesIO(with_exif(seed)))
    told = Image.Exif()
    told[0x0112] = 6
    told.get_ifd(0x8825).update({1: "N", 2: (12.0, 34.0, 56.0), 3: "W", 4: (98.0, 7.0, 6.0)})
    image.save(out, "WEBP", exif=told, xmp=b"<x>12,34.9N</x>", lossless=True)
    return out.getvalue()


def gps(content: bytes) -> list[str]:
    """Tags of a position, as readers by other authors find them."""
    own = Image.open(io.BytesIO(content)).getexif().get_ifd(0x8825)
    return [*own, *(name for name in exifread.process_file(io.BytesIO(content)) if name.startswith("GPS"))]


@pytest.mark.parametrize("made", [with_exif(3), webp()], ids=["jpeg", "webp"])
@pytest.mark.parametrize("who", ROLES)
def test_only_lead_and_office_get_the_place_with_the_photo(desk, who, made):
    digest = hashlib.sha256(made).hexdigest()
    assert gps(made), "the photo has a position, or this shows nothing"
    given = desk.by_key(who, "GET", f"/notes/{desk.note}/photos/{digest}")
    assert given.status_code == 200
    if who in SEES:
        assert given.data == made
        return
    assert not gps(given.data) and b"12,34.9N" not in given.data
    copy, original = Image.open(io.BytesIO(given.data)), Image.open(io.BytesIO(made))
    assert copy.tobytes() == original.tobytes(), "no pixel changed"
    assert dict(copy.getexif()) == {0x0112: 6}, "only how the picture lies stays"


@pytest.mark.parametrize("who", ROLES)
def test_only_lead_and_office_are_told_the_place(desk, who):
    with desk.folder() as folder:
        (piece,) = [one["id"] for one in store.logged(folder) if one["mark"] == "7" and one["run"] == "2"][:1]
    paths = [f"/notes/{desk.note}", "/notes", f"/pieces/{piece}"]
    paths += ["/days/2026-10-14"] if who != "installer" else []
    paths += ["/questions?date=2026-10-14"] if who in ("installer", "lead") else []
    for path in paths:
        given = desk.by_key(who, "GET", path)
        assert given.status_code == 200
        told = ("12.34567" in given.text, "-98.24685" in given.text, "12.582" in given.text)
        expected = (False, False, False) if who not in SEES or path.startswith("/questions") and who == "lead" else (True, True, True)
        assert told == expected, path


def test_the_original_keeps_its_place_whoever_asked(desk):
    with desk.folder() as folder:
        kept = store.original(folder, hashlib.sha256(with_exif(3)).hexdigest())
        assert kept.read_bytes() == with_exif(3)


def test_a_picture_whose_camera_data_cannot_be_cut_out_is_given_small(desk):
    """As of a HEIC: the copy that was drawn anew, or nothing."""
    whole = with_exif(5)
    at = whole.index(b"\xff\xdb")
    torn = whole[:at] + b"\0" + whole[at:]  # a byte that belongs to nothing: decoders pass it over, the cutter does not guess
    assert stripping.stripped(torn) is None
    note = desk.hand_in(photo=[torn]).json["id"]
    path = f"/notes/{note}/photos/{hashlib.sha256(torn).hexdigest()}"
    assert desk.by_key("contractor", "GET", path).status_code == 404
    with desk.folder() as folder:
        worker.work_once(folder, worker.Bench(Ears))
    given = desk.by_key("contractor", "GET", path)
    assert given.status_code == 200 and given.data[:2] == b"\xff\xd8" and not gps(given.data)


def test_a_picture_that_a_decision_leans_on_is_given_without_its_place_too(desk):
    with desk.folder() as folder:
        digest = store.add_document(folder, Part(with_exif(6), "letter.jpg"), desk.ids["lead"])
    assert desk.by_key("lead", "GET", f"/documents/{digest}").data == with_exif(6)
    given = desk.by_key("contractor", "GET", f"/documents/{digest}")
    assert given.status_code == 200 and gps(with_exif(6)) and not gps(given.data)


def test_report_and_package_carry_no_place_unless_the_job_says_so(desk, tmp_path):
    file = desk.settings.folder / "job.toml"
    before = file.read_text()
    with desk.folder() as folder:
        told = make_day(folder, "2026-10-14", ("en", "es"), _now())
        assert not any(sign in json.dumps(told.document) for sign in ("12.34567", "98.24685", "12.58222"))
        hand_over(folder, tmp_path / "plain.zip", "en", _now())
    try:
        file.write_text(before.replace("# keep_place = false", "keep_place = true"))
        with desk.folder() as folder:
            hand_over(folder, tmp_path / "places.zip", "en", _now())
    finally:
        file.write_text(before)
    assert places_in(tmp_path / "plain.zip") == set()
    assert places_in(tmp_path / "places.zip") >= {"notes/notes.jsonl", "pieces/pieces.jsonl"} and len(places_in(tmp_path / "places.zip")) > 2


def places_in(package) -> set[str]:
    """The files of a package that tell where a photo was taken."""
    with zipfile.ZipFile(package) as archive:
        held = {info.filename.partition("/data/")[2]: archive.read(info) for info in archive.infolist()}
    photos = {name for name, content in held.items() if name.startswith("photos/") and gps(content)}
    return photos | {name for name, content in held.items() if name.endswith((".jsonl", ".json", ".csv", ".html")) and b"-98.24685" in content}


# --- voices


def hears(desk, who: str) -> int:
    return desk.by_key(who, "GET", f"/notes/{desk.spoken}/sound/0").status_code


def test_a_contractor_reads_the_words_and_hears_the_voice_only_where_the_job_says_so(desk):
    assert {who: hears(desk, who) for who in ROLES} == {"installer": 200, "lead": 200, "contractor": 403, "keeper": 200}
    page = desk.browser("contractor").get(f"/entry/{desk.spoken}", headers=PAGE).text
    assert "<audio" not in page and "personal data" in page
    assert "<audio" in desk.browser("lead").get(f"/entry/{desk.spoken}", headers=PAGE).text
    file = desk.settings.folder / "job.toml"
    before = file.read_text()
    try:
        file.write_text(before.replace("# contractor_hears = false", "contractor_hears = true"))
        assert hears(desk, "contractor") == 200
        assert "<audio" in desk.browser("contractor").get(f"/entry/{desk.spoken}", headers=PAGE).text
    finally:
        file.write_text(before)
    assert hears(desk, "contractor") == 403
