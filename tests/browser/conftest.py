"""A real server on a free port, a real browser with a file for a microphone, a new context for every test."""

from __future__ import annotations

import shutil
import subprocess
import sys
import threading
import wave
from contextlib import suppress
from pathlib import Path

import numpy as np
import pytest
from playwright.sync_api import sync_playwright
from waitress.server import create_server

sys.path.insert(0, str(Path(__file__).parent.parent))
from desk import NAMES, PASSWORD, open_desk  # noqa: E402

FLAGS = (
    "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync",
    "--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream", "--autoplay-policy=no-user-gesture-required",
)  # fmt: skip

LATEST = 75_000  # ms: a question that hangs while the signal comes back is given up after 30 s, and the next round comes within 30 s


def chromium() -> str:
    for name in ("chromium", "chromium-browser", "google-chrome"):
        if shutil.which(name):
            return shutil.which(name)
    script = Path(__file__).parent.parent / "chromium.sh"
    return subprocess.run(["sh", script], check=True, capture_output=True, text=True).stdout.strip().splitlines()[-1]


@pytest.fixture(scope="session")
def microphone(tmp_path_factory) -> Path:
    """Ten seconds of a swelling tone, 48 kHz mono, the format that the fake device takes."""
    rate, seconds = 48000, 10
    at = np.arange(rate * seconds) / rate
    sound = (0.4 * np.sin(2 * np.pi * 220 * at) * (0.5 + 0.5 * np.sin(2 * np.pi * 2 * at)) * 32767).astype("<i2")
    path = tmp_path_factory.mktemp("sound") / "tone.wav"
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(rate)
        file.writeframes(sound.tobytes())
    return path


@pytest.fixture(scope="session")
def play():
    with sync_playwright() as started:
        yield started


@pytest.fixture(scope="session")
def chrome(play, microphone):
    browser = play.chromium.launch(executable_path=chromium(), headless=True, args=[*FLAGS, hearing(microphone)])
    yield browser
    browser.close()


def hearing(sound: Path) -> str:
    """The flag that makes a file the microphone."""
    return f"--use-file-for-fake-audio-capture={sound}%noloop"


@pytest.fixture
def site(tmp_path):
    """(address, desk): localhost counts as secure, so the microphone and the service worker are there."""
    desk = open_desk(tmp_path)
    server = create_server(desk.app, host="127.0.0.1", port=0, threads=8)

    def serve():
        with suppress(OSError):  # closed at the end of the test, while it looks at its lines
            server.run()

    thread = threading.Thread(target=serve, daemon=True)
    thread.start()
    yield f"http://localhost:{server.effective_port}", desk
    server.close()
    thread.join(timeout=5)


@pytest.fixture
def visit(chrome, site):
    """visit(role, language, microphone=True) -> a page that is signed in; requests to elsewhere fail the test."""
    contexts, elsewhere = [], []

    def come(role: str | None = "installer", language: str = "en", microphone: bool = True, width: int = 390):
        context = chrome.new_context(
            base_url=site[0], locale=language, viewport={"width": width, "height": 844}, bypass_csp=False,
            permissions=["microphone"] if microphone else [],
        )  # fmt: skip
        contexts.append(context)
        context.set_default_timeout(LATEST)
        page = context.new_page()
        page.on("request", lambda r: elsewhere.append(r.url) if not r.url.startswith((site[0], "blob:", "data:")) else None)
        if role:
            page.goto("/enter")
            page.fill("[name=name]", NAMES[role])
            page.fill("[name=password]", PASSWORD)
            page.click("main button.press")
            page.wait_for_url(lambda url: "/enter" not in url)
        return page

    yield come
    for context in contexts:
        context.close()
    assert elsewhere == []
