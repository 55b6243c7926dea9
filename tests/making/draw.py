"""Draws the pictures of the demonstration again: fittings with a tag, labelled as drawn, with EXIF as a phone writes it.

`python tests/making/draw.py` reads `logbook/demo/day.toml` and writes the pictures beside the recordings. Nothing in
them was photographed; the time, turn and position in their EXIF are written here.
"""

from __future__ import annotations

import hashlib
import io
import random
import tomllib
from datetime import datetime
from pathlib import Path

import segno
from PIL import Image, ImageDraw, ImageFont

from logbook.photos import tags

DEMO = Path(__file__).resolve().parent.parent.parent / "logbook" / "demo"
FACE = DEMO.parent / "face" / "AtkinsonHyperlegibleNext-Bold.ttf"
WIDE, HIGH = 1280, 960
TURNS = {1: None, 3: Image.Transpose.ROTATE_180, 6: Image.Transpose.ROTATE_90, 8: Image.Transpose.ROTATE_270}
CAMERA = ("Drawn", "drawn camera {phone}")
LATITUDE, LONGITUDE = 0.0012, 0.0034  # a point in the sea: no building stands there


def draw(mark: str, kind: str, job: str, with_tag: bool) -> Image.Image:
    """A silver box of board on a bench, seen at a slant that its mark decides."""
    chance = random.Random(hashlib.sha256(f"{mark} {kind}".encode()).digest())
    shade = chance.randint(90, 150)
    image = Image.new("RGB", (WIDE, HIGH), (shade, shade - 8, shade - 22))
    pen = ImageDraw.Draw(image)
    for _ in range(60):  # the bench and the wall behind it
        x, y = chance.randint(0, WIDE), chance.randint(0, HIGH)
        grey = chance.randint(70, 175)
        pen.rectangle((x, y, x + chance.randint(30, 260), y + chance.randint(5, 60)), fill=(grey, grey, grey - 10))
    left, top = chance.randint(120, 300), chance.randint(220, 330)
    right, bottom = left + chance.randint(620, 780), top + chance.randint(330, 430)
    lift, shift = chance.randint(70, 130), chance.randint(60, 150)
    narrow = chance.randint(50, 90) if kind in ("transition", "offset") else 0
    silver = chance.randint(185, 215)
    front = [(left, top), (right, top + narrow), (right, bottom), (left, bottom)]
    lid = [(left, top), (left + shift, top - lift), (right + shift, top - lift + narrow), (right, top + narrow)]
    side = [(right, top + narrow), (right + shift, top - lift + narrow), (right + shift, bottom - lift), (right, bottom)]
    pen.polygon(front, fill=(silver, silver, silver + 6))
    pen.polygon(lid, fill=(silver + 25, silver + 25, silver + 30))
    pen.polygon(side, fill=(silver - 60, silver - 60, silver - 52))
    for step in range(0, right - left, 26):  # the scrim of the facing
        pen.line((left + step, top + narrow * step // (right - left), left + step, bottom), fill=(silver - 22,) * 3)
    for y in range(top + narrow + 10, bottom, 26):
        pen.line((left, y, right, y), fill=(silver - 18,) * 3)
    pen.line((right - 46, top + narrow, right - 46, bottom), fill=(238, 238, 240), width=44)  # the tape
    if kind == "elbow":
        pen.polygon([(right, top), (right + 110, top), (right + 110, bottom + 120), (right - 160, bottom + 120), (right - 160, bottom), (right, bottom)], fill=(silver - 30,) * 3)
    if kind == "branch":
        pen.polygon([(left + 260, bottom), (left + 470, bottom), (left + 470, bottom + 130), (left + 260, bottom + 130)], fill=(silver - 40,) * 3)
    if with_tag:
        _stick(image, job, mark, (left + 50, top + 110), chance.uniform(-12, 12))
    pen.text((24, HIGH - 48), "drawn, not a photograph", font=ImageFont.truetype(str(FACE), 34), fill=(250, 250, 250), stroke_width=2, stroke_fill=(20, 20, 20))
    return image


def _stick(image: Image.Image, job: str, mark: str, at: tuple[int, int], turn: float) -> None:
    out = io.BytesIO()
    segno.make(tags.text(job, mark), error="q", micro=False).save(out, kind="png", scale=6, border=4)
    code = Image.open(out).convert("RGB")
    paper = Image.new("RGBA", (code.width, code.height + 46), "white")
    paper.paste(code, (0, 46))
    ImageDraw.Draw(paper).text((14, 2), mark, font=ImageFont.truetype(str(FACE), 44), fill="black")
    stuck = paper.rotate(turn, Image.Resampling.BICUBIC, expand=True)
    image.paste(stuck, at, stuck)


def exif_of(image: Image.Image, at: datetime, turn: int, phone: str, place: bool) -> Image.Exif:
    exif = image.getexif()
    exif[0x010F], exif[0x0110], exif[0x0112] = CAMERA[0], CAMERA[1].format(phone=phone), turn
    inner = exif.get_ifd(0x8769)
    inner[0x9003], inner[0x9011] = at.strftime("%Y:%m:%d %H:%M:%S"), f"{at:%z}"[:3] + ":" + f"{at:%z}"[3:]
    if place:
        gps = exif.get_ifd(0x8825)
        gps[1], gps[2], gps[3], gps[4] = "N", (0.0, 0.0, LATITUDE * 3600), "E", (0.0, 0.0, LONGITUDE * 3600)
    return exif


def main() -> None:
    day = tomllib.loads((DEMO / "day.toml").read_text(encoding="utf-8"))
    for note in day["notes"]:
        for photo in note.get("photos", ()):
            image = draw(photo["mark"], photo["kind"], day["job"], photo.get("tag", False))
            path, turn = DEMO / "notes" / photo["file"], photo.get("turn", 1)
            if photo.get("bare"):  # as a messenger sends it: smaller, without EXIF
                image.resize((960, 720)).save(path, quality=70)
                continue
            at, exif = datetime.fromisoformat(photo["at"]), None
            exif = exif_of(image, at, turn, note["by"], photo.get("place", True))
            laid = image if TURNS[turn] is None else image.transpose(TURNS[turn])
            laid.save(path, quality=photo.get("quality", 80), exif=exif)
            print(path.name, path.stat().st_size)


if __name__ == "__main__":
    main()
