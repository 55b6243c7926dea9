"""Pictures: what is measured, what is refused in words, and that a phone's turn, time and place are read right."""

import io
import json
from pathlib import Path

import exifread
import pytest
from PIL import Image, ImageFilter

from logbook.decoding import pictures
from logbook.mistake import Mistake
from logbook.wording import LANGUAGES, has

NOTES = Path(__file__).parent.parent / "logbook" / "demo" / "notes"

def _source() -> Image.Image:
    """A picture whose corners tell which way up it is: red top left, blue bottom right."""
    image = Image.open(NOTES / "42-elbow.jpg").convert("RGB")
    image.paste((255, 0, 0), (0, 0, 120, 120))
    image.paste((0, 0, 255), (840, 600, 960, 720))
    return image


@pytest.mark.parametrize("turn", range(1, 9))
def test_every_turn_of_the_camera_stands_upright(tmp_path, turn):
    # TIFF 6.0 / Exif 2.3, tag 0x0112: the eight values and what each asks of the reader
    image = _source()
    undo = {2: 0, 3: 3, 4: 1, 5: 5, 6: 2, 7: 6, 8: 4}  # Pillow's Transpose that lays the pixels so
    laid = image if turn == 1 else image.transpose(Image.Transpose(undo[turn]))
    exif = image.getexif()
    exif[0x0112] = turn
    laid.save(tmp_path / "a.jpg", quality=95, exif=exif)
    seen, small = pictures.look_and_shrink(tmp_path / "a.jpg")
    upright = Image.open(io.BytesIO(small))
    assert (seen["width"], seen["height"]) == (960, 720)
    assert upright.size == (640, 480) and not upright.getexif()
    assert upright.getpixel((30, 30))[0] > 200 and upright.getpixel((610, 450))[2] > 200


def test_time_place_and_camera_agree_with_another_reader():
    # checked against exifread, an EXIF reader of other authors
    for file in sorted(NOTES.glob("*.jpg")):
        seen = pictures.look(file)
        with file.open("rb") as opened:
            other = exifread.process_file(opened, details=False)
        if not other:
            assert seen["no_exif"] and seen["captured"] is None
            continue
        taken = f"{other['EXIF DateTimeOriginal']}{other['EXIF OffsetTimeOriginal']}"
        assert seen["captured"].replace("-", ":", 2).replace("T", " ") == taken
        assert seen["camera"] == f"{other['Image Make']} {other['Image Model']}"
        assert exifread.utils.get_gps_coords(other) == pytest.approx((seen["latitude"], seen["longitude"]), abs=1e-5)


def test_a_picture_saved_anew_has_the_print_of_the_first_and_others_have_not():
    prints = {file.stem: int(pictures.look(file)["dhash"], 16) for file in NOTES.glob("*.jpg")}
    apart = {(a, b): (prints[a] ^ prints[b]).bit_count() for a in prints for b in prints if a < b}
    assert apart.pop(("03-straight-no-tape", "06-straight-old-photo")) == 0
    assert min(apart.values()) > 10


def test_sharpness_falls_with_blur_and_light_with_darkness(tmp_path):
    image, last = _source(), 1e9
    for blur in (0, 1, 2, 4, 8):
        image.filter(ImageFilter.GaussianBlur(blur)).save(tmp_path / "a.png")
        seen = pictures.look(tmp_path / "a.png")
        assert seen["sharpness"] < last
        last = seen["sharpness"]
    assert last < 8
    image.point(lambda value: value // 8).save(tmp_path / "a.png")
    assert pictures.look(tmp_path / "a.png")["light"] < 35


def test_heic_is_read_like_jpeg(tmp_path):
    heif = pytest.importorskip("pillow_heif")
    heif.register_heif_opener()
    exif = Image.Exif()
    exif.get_ifd(0x8769)[0x9003] = "2026:10:14 08:00:00"
    _source().save(tmp_path / "a.heic", exif=exif)
    seen = pictures.look(tmp_path / "a.heic")
    assert (seen["width"], seen["captured"]) == (960, "2026-10-14T08:00:00")


def test_a_copy_without_exif_and_a_screenshot_are_said_to_be_so(tmp_path):
    seen = pictures.look(NOTES / "42-elbow.jpg")
    assert seen["no_exif"] and not seen["screenshot"]
    _source().save(tmp_path / "a.png")
    assert pictures.look(tmp_path / "a.png")["screenshot"]


def _bomb(width: int, height: int) -> bytes:
    out = io.BytesIO()
    Image.new("1", (width, height)).save(out, "PNG")
    return out.getvalue()


JPEG = (NOTES / "01-straight.jpg").read_bytes()
BAD = {
    "empty": (b"", "photos.empty-file"),
    "torn": (JPEG[: len(JPEG) // 2], "photos.unreadable"),
    "stub": (JPEG[:40], "photos.unreadable"),
    "svg": (b'<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>', "photos.unreadable"),
    "page": (b"<!doctype html><script>1</script>" + JPEG, "photos.unreadable"),
    "film": (b"GIF89a" + bytes(200), "photos.unreadable"),
    "heic stub": (b"\0\0\0\x18ftypheic" + bytes(300), "photos.unreadable"),
    "noise": (bytes(range(256)) * 20, "photos.unreadable"),
    "bomb": (_bomb(20_000, 20_000), "photos.too-many-pixels"),
    "strip": (_bomb(1, 100_000), "photos.odd-shape"),
}


@pytest.mark.parametrize("name", BAD)
def test_what_is_no_photo_is_told_in_words(tmp_path, name):
    data, key = BAD[name]
    (tmp_path / "a.jpg").write_bytes(data)
    answer = pictures.look(tmp_path / "a.jpg")
    assert isinstance(answer, Mistake) and answer.key == key
    assert all(has(f"{key}.{part}", language) for part in ("error", "cure") for language in LANGUAGES)


def test_what_is_seen_goes_into_a_document():
    json.dumps(pictures.look(NOTES / "04-branch.jpg"))
