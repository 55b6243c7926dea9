"""The whole way in a real browser: a man speaks into the phone, Whisper hears, and the answer stands on the screen.

The microphone plays a recording of the demonstration: a transition whose slope is too steep.
"""

from __future__ import annotations

import re
import threading
import wave
from importlib.resources import files

import numpy as np
import pytest

from logbook import worker
from logbook.cli.work import ears
from logbook.decoding import sound

from conftest import FLAGS, chromium, hearing
from test_phone import spoken_for

STEEP = "16-transition-steep.ogg"
HEARING = 120_000  # ms: the model is loaded first


@pytest.fixture(scope="module")
def spoken(tmp_path_factory):
    """The recording as the fake device takes it: 48 kHz mono; and how long it is."""
    heard = sound.decode(files("logbook.demo") / "notes" / STEEP)
    samples = np.repeat(heard.samples, 3)
    path = tmp_path_factory.mktemp("spoken") / "note.wav"
    with wave.open(str(path), "wb") as file:
        file.setparams((1, 2, 48_000, 0, "NONE", ""))
        file.writeframes((np.clip(samples, -1, 1) * 32767).astype("<i2").tobytes())
    return path, heard.seconds


@pytest.fixture(scope="module")
def chrome(play, spoken):
    browser = play.chromium.launch(executable_path=chromium(), headless=True, args=[*FLAGS, hearing(spoken[0])])
    yield browser
    browser.close()


@pytest.fixture
def working(site):
    """A worker with real Whisper on the site's job folder."""
    stop = threading.Event()
    thread = threading.Thread(target=worker.work, args=(site[1].settings.folder, worker.Bench(ears("whisper", None)), stop))
    thread.start()
    yield
    stop.set()
    thread.join()


@pytest.mark.parametrize("language", ["en"])
def test_what_was_spoken_into_the_phone_is_answered_on_the_phone(site, working, visit, spoken, language):
    page = visit(language=language)
    page.goto("/phone")
    page.wait_for_selector("html[data-state=ready]", state="attached")
    page.click("#press")
    page.wait_for_selector("html[data-state=listening]", state="attached")
    seconds = int(spoken[1]) + 1
    spoken_for(page, seconds)
    page.click("#press")
    page.wait_for_selector("html[data-state=recorded]", state="attached")
    page.click("#hand-in")
    page.wait_for_selector("html[data-answer=answered]", state="attached", timeout=HEARING)
    answer = page.inner_text("#note")
    assert "top in 2, back 8" in answer.lower()  # what was understood
    assert re.search(r"Not said: .*Photo", answer)  # what was not there
    assert "There is no photo of it." in page.text_content("#note details")
    flagged = page.evaluate("""() => fetch("/notes?limit=1").then((r) => r.json()).then((d) =>
        d.notes[0].fittings[0].findings.filter((f) => f.shows === "flag").map((f) => f.rule))""")
    assert "transition-slope" in flagged  # 3 in 12 never passes, however well it was heard
    assert page.locator("#note svg").count() >= 1  # the drawing of what was said
    page.goto("/log")
    page.click("main a[href*='/entry/'] >> nth=0")
    page.wait_for_selector("blockquote a.said", state="attached")
    assert page.locator("blockquote a.said").count() > 5  # the facts, marked in the words
    assert "transition 13" in page.inner_text("main")
