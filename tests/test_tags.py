"""Tags: what stands in the code, and how it is read when it is slanted, small, blurred or badly lit."""

import io

import pytest
import segno
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, ImageEnhance, ImageFilter

from logbook.decoding import pictures
from logbook.facts import bare_mark
from logbook.photos import tags

TEXT = tags.text("tqwvkeld", "B-12")


def test_the_text_is_the_contract_s():
    assert TEXT == "duct-tag:1:tqwvkeld:B-12"
    assert tags.text("tqwvkeld", "T 4/ñ") == "duct-tag:1:tqwvkeld:T%204%2F%C3%B1"


@settings(derandomize=True, max_examples=50)
@given(st.text(min_size=1, max_size=12).filter(str.strip))
def test_a_mark_comes_back_as_it_was_written(mark):
    assert tags.parse(tags.text("tqwvkeld", mark)) == tags.Tag("tqwvkeld", mark)


@pytest.mark.parametrize("words", ["", "hello", "duct-tag:2:tqwvkeld:7", "duct-tag:1::7", "duct-tag:1:tqwvkeld:", "https://x/"])
def test_other_codes_are_no_tags(words):
    assert tags.parse(words) is None


def test_a_tag_names_its_piece_and_no_other():
    assert tags.names([TEXT, "carton 5"], "tqwvkeld", "b12") == (bare_mark("b12") == bare_mark("B-12"))
    assert not tags.names([TEXT], "tqwvkeld", "13") and not tags.names([TEXT], "otherjob", "B-12")


def test_the_sheet_holds_every_mark_and_hides_what_is_markup():
    page = tags.sheet("tqwvkeld", [("1", "1"), ("<b>", None)], "es")
    assert page.count("<svg") == 2 and "&lt;b&gt;" in page and "<b>" not in page and "Corrida 1" in page


def _scene(side: int) -> Image.Image:
    """The code, `side` pixels wide with its margin, on a silver board of 1280 by 960."""
    out = io.BytesIO()
    segno.make(TEXT, error="q", micro=False).save(out, kind="png", scale=20, border=4)
    code = Image.open(out).convert("RGB").resize((side, side), Image.Resampling.LANCZOS)
    board = Image.new("RGB", (1280, 960), (196, 196, 202))
    board.paste(code, (400, 300))
    return board


def _slanted(image: Image.Image, share: float) -> Image.Image:
    """The picture's right edge farther away: `share` of its height lost above and below."""
    w, h, d = image.width, image.height, image.height * share
    # where the corners of the new picture come from: solve the eight numbers of the perspective
    import numpy as np

    new, old = [(0, 0), (w, d), (w, h - d), (0, h)], [(0, 0), (w, 0), (w, h), (0, h)]
    rows = []
    for (x, y), (u, v) in zip(new, old):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
    numbers = np.linalg.solve(np.array(rows, float), np.array(old, float).ravel())
    return image.transform((w, h), Image.Transform.PERSPECTIVE, tuple(numbers), Image.Resampling.BICUBIC)


def _shaded(image: Image.Image) -> Image.Image:
    dark = Image.linear_gradient("L").resize(image.size)
    return Image.composite(image, image.point(lambda v: v // 5), dark)


# what was measured with zxing-cpp 3.1 on a drawn 1280 x 960 scene; False: known not to be read, a press says it then
READ = {
    "400 px wide": (lambda: _scene(400), True),
    "120 px wide": (lambda: _scene(120), True),
    "80 px wide": (lambda: _scene(80), True),
    "30 px wide": (lambda: _scene(30), False),
    "turned 37 degrees": (lambda: _scene(300).rotate(37, fillcolor="grey"), True),
    "slanted, a quarter lost": (lambda: _slanted(_scene(400), 0.25), True),
    "blurred by 2 px at 400 px": (lambda: _scene(400).filter(ImageFilter.GaussianBlur(2)), True),
    "blurred by 12 px at 400 px": (lambda: _scene(400).filter(ImageFilter.GaussianBlur(12)), False),
    "a tenth of the light": (lambda: ImageEnhance.Brightness(_scene(300)).enhance(0.1), True),
    "half in shade": (lambda: _shaded(_scene(400)), True),
    "little contrast": (lambda: ImageEnhance.Contrast(_scene(300)).enhance(0.2), True),
}


@pytest.mark.parametrize("name", READ)
def test_how_a_tag_is_read(tmp_path, name):
    make, read = READ[name]
    make().save(tmp_path / "a.jpg", quality=75)
    assert pictures.look(tmp_path / "a.jpg")["tags"] == ([TEXT] if read else [])
