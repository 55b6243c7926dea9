"""How a tag is read from a photo: python tests/bench/tags.py   (prints the table of docs/tags.md, asserts nothing)

A drawn scene of a 12-megapixel phone picture (4032 x 3024, JPEG 80, sensor noise): a silver board with its print, other
paper, and one tag as it is printed. Each row changes one thing and asks in steps how far it may go until fewer than 9
of 10 scenes are read. Distances are reckoned for a phone's main camera, 65 degrees across its long side, as most are.
"""

from __future__ import annotations

import io
import math
import sys
import time
from collections.abc import Callable
from functools import lru_cache

import numpy as np
import segno
from PIL import Image, ImageFilter

from logbook.decoding import picture_reading
from logbook.photos import tags

WIDE, HIGH = 4032, 3024
VIEW = math.radians(65)
TEXT = tags.text("tqwvkeld", "B-12")
SCENES = 10
ENOUGH = 9


def tag(side: int) -> Image.Image:
    """The code with its quiet margin, `side` pixels."""
    out = io.BytesIO()
    segno.make(TEXT, error="q", micro=False).save(out, kind="png", scale=24, border=4)
    return Image.open(out).convert("L").resize((side, side), Image.Resampling.BOX)


@lru_cache(maxsize=SCENES)
def board(seed: int) -> Image.Image:
    """A silver facing with reinforcing threads, brushed light and printed lines, as grey values."""
    chance = np.random.default_rng(1000 + seed)
    light = np.linspace(*chance.uniform(120, 210, 2), WIDE)[None, :] + np.linspace(0, chance.uniform(-40, 40), HIGH)[:, None]
    scene = light + chance.normal(0, 3, (HIGH, WIDE))
    step = int(chance.integers(36, 60))
    scene[::step] -= 18
    scene[:, ::step] -= 18
    for _ in range(40):
        x, y, long = int(chance.integers(0, WIDE - 400)), int(chance.integers(0, HIGH - 20)), int(chance.integers(60, 380))
        scene[y : y + 12, x : x + long : 7] -= 90
    return Image.fromarray(np.clip(scene, 0, 255).astype(np.uint8))


def slanted(image: Image.Image, degrees: float) -> Image.Image:
    """The tag turned about its upright middle, seen from ten times its side away; what lies around it is left clear."""
    side, far, angle = image.width, 10 * image.width, math.radians(degrees)
    old = [(0, 0), (side, 0), (side, side), (0, side)]
    new = []
    for x, y in old:
        across, up = x - side / 2, y - side / 2
        depth = far + across * math.sin(angle)
        new.append((side / 2 + across * math.cos(angle) * far / depth, side / 2 + up * far / depth))
    rows = []
    for (x, y), (u, v) in zip(new, old):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
    numbers = np.linalg.solve(np.array(rows, float), np.array(old, float).ravel())
    both = Image.merge("LA", (image, Image.new("L", image.size, 255)))
    return both.transform(image.size, Image.Transform.PERSPECTIVE, tuple(numbers), Image.Resampling.BICUBIC)


@lru_cache(maxsize=1)
def grain() -> np.ndarray:
    return np.random.default_rng(5).normal(0, 1, (HIGH, WIDE)).astype(np.float32)


def scene(seed: int, side: int, slant=0.0, turn=0.0, blur=0.0, light=1.0, noise=4.0, smear=0, shade=0.0, quality=80, dirt=0.0) -> bytes:
    """One picture as JPEG. `blur` and `smear` are pixels; `light` scales it; `shade` darkens a half of the tag by a share."""
    chance = np.random.default_rng(seed)
    ground = board(seed).convert("LA")
    one = slanted(tag(side), slant) if slant else Image.merge("LA", (tag(side), Image.new("L", (side, side), 255)))
    if shade:
        half = np.asarray(one.getchannel("L"), np.float32)
        half[:, side // 2 :] *= 1 - shade
        one = Image.merge("LA", (Image.fromarray(half.astype(np.uint8)), one.getchannel("A")))
    if dirt:
        grey = np.asarray(one.getchannel("L")).copy()
        for _ in range(60):
            if dirt <= 0:
                break
            spot = max(int(side * 0.07), 1)
            x, y = chance.integers(side // 8, side - side // 8 - spot, 2)
            grey[y : y + spot, x : x + spot] = 90
            dirt -= 0.07**2
        one = Image.merge("LA", (Image.fromarray(grey), one.getchannel("A")))
    one = one.rotate(turn, Image.Resampling.BICUBIC, expand=True, fillcolor=(0, 0)) if turn else one
    x, y = (int(chance.integers(200, span - one.width - 200)) for span in (WIDE, HIGH))
    ground.paste(one, (x, y), one.getchannel("A"))
    grey = ground.getchannel("L")
    if blur:
        grey = grey.filter(ImageFilter.GaussianBlur(blur))
    values = np.asarray(grey, np.float32)
    if smear:
        values = np.mean([np.roll(values, shift, axis=1) for shift in range(smear)], axis=0)
    values = values * light + noise * np.roll(grain(), 97 * seed)
    out = io.BytesIO()
    Image.fromarray(np.clip(values, 0, 255).astype(np.uint8)).convert("RGB").save(out, "JPEG", quality=quality)
    return out.getvalue()


def read(picture: bytes) -> bool:
    return TEXT in picture_reading.codes(Image.open(io.BytesIO(picture)).convert("L"))


def reads(**how) -> int:
    return sum(read(scene(seed, **how)) for seed in range(SCENES))


def furthest(steps, make: Callable[..., dict]) -> tuple[object, object]:
    """The last step that is read, and the first that is not."""
    last = None
    for step in steps:
        if reads(**make(step)) < ENOUGH:
            return last, step
        last = step
    return last, None


def feet(side: float) -> float:
    """How far away a 2 in. tag is `side` pixels wide."""
    return tags.INCHES / (side / WIDE * 2 * math.tan(VIEW / 2)) / 12


ROWS = (
    ("small, straight before it", [300, 200, 150, 120, 100, 80, 70, 60, 50, 40, 30], lambda s: {"side": s}, lambda s: f"{s} px wide, about {feet(s):.0f} ft away"),
    ("slanted, 150 px wide", [20, 30, 40, 50, 55, 60, 65, 70, 75], lambda d: {"side": 150, "slant": d}, lambda d: f"{d}°"),
    ("turned in the picture, 120 px wide", [0, 17, 45, 90, 133, 180], lambda d: {"side": 120, "turn": d}, lambda d: f"{d}°"),
    ("out of focus, 150 px wide", [1, 2, 3, 4, 5, 6, 8], lambda b: {"side": 150, "blur": b}, lambda b: f"blur of {b} px"),
    ("shaken, 150 px wide", [2, 4, 6, 8, 10, 14, 18], lambda n: {"side": 150, "smear": n}, lambda n: f"smear of {n} px"),
    ("dark and noisy, 150 px wide", [0.5, 0.3, 0.2, 0.1, 0.07, 0.05, 0.03], lambda f: {"side": 150, "light": f, "noise": 6.0}, lambda f: f"{f:.0%} of the light"),
    ("half of it in shade, 150 px wide", [0.3, 0.5, 0.7, 0.8, 0.9, 0.95], lambda f: {"side": 150, "shade": f}, lambda f: f"{f:.0%} darker"),
    ("dirt or glue on it, 150 px wide", [0.005, 0.01, 0.02, 0.03, 0.06, 0.1], lambda f: {"side": 150, "dirt": f}, lambda f: f"{f:.1%} of it covered in spots"),
    ("sent by a messenger (JPEG 40), straight", [200, 150, 120, 100, 80, 70, 60, 50], lambda s: {"side": s, "quality": 40}, lambda s: f"{s} px wide"),
    ("slanted 45°, out of focus 1 px, a third of the light", [300, 200, 150, 120, 100, 80, 60], lambda s: {"side": s, "slant": 45, "blur": 1, "light": 0.3}, lambda s: f"{s} px wide, about {feet(s):.0f} ft away"),
)  # fmt: skip


def main() -> None:
    rows = [row for row in ROWS if not sys.argv[1:] or any(word in row[0] for word in sys.argv[1:])]
    print("| how the tag lies | read up to | not read from |\n|---|---|---|")
    for name, steps, make, told in rows:
        last, first = furthest(steps, make)
        print(f"| {name} | {'–' if last is None else told(last)} | {'–' if first is None else told(first)} |", flush=True)
    bare = scene(1, 12)
    begun = time.process_time()
    read(bare)
    print(f"\nA picture without a readable tag takes {time.process_time() - begun:.2f} s of the processor.")


if __name__ == "__main__":
    main()
