"""Nothing may take a note away: a server killed in the middle of an upload, a phone that is closed, no room, a sign-in that ended.

The server is the ordinary `logbook serve`; between it and the browser stands a gate that can hold an upload half-way.
"""

from __future__ import annotations

import os
import random
import signal
import socket
import threading
from contextlib import suppress
from datetime import UTC, datetime
from pathlib import Path

import pytest

import killing
from conftest import FLAGS, LATEST, chromium, hearing
from handing import picture
from logbook import store
from logbook.store import people
from test_running import wait_for
from test_phone import hand_in, ready, received, send_now, speak


class Gate:
    """Carries between browser and server; `hold` lets this many more bytes of the browser through, then no more; `mute` swallows what the server answers to a note."""

    def __init__(self, to_port: int):
        self.to_port, self.left, self.midway, self.mute = to_port, None, threading.Event(), False
        self.listening = socket.create_server(("127.0.0.1", 0))
        self.port = self.listening.getsockname()[1]
        self.lines: list[socket.socket] = []
        self.muted: set[socket.socket] = set()
        threading.Thread(target=self._accept, daemon=True).start()

    def hold(self, left: int) -> None:
        self.midway.clear()
        self.left = left

    def open(self) -> None:
        """Every line that was held is cut, as a network does."""
        self.left, self.mute = None, False
        for line in self.lines:
            with suppress(OSError):
                line.shutdown(socket.SHUT_RDWR)  # a thread that reads would hold it open
            line.close()
        self.lines = []

    def close(self) -> None:
        self.open()
        self.listening.close()

    def _accept(self) -> None:
        while True:
            try:
                browser, _ = self.listening.accept()
            except OSError:
                return
            try:
                server = socket.create_connection(("127.0.0.1", self.to_port))
            except OSError:
                browser.close()
                continue
            self.lines += [browser, server]
            threading.Thread(target=self._carry, args=(browser, server, True), daemon=True).start()
            threading.Thread(target=self._carry, args=(server, browser, False), daemon=True).start()

    def _carry(self, one: socket.socket, other: socket.socket, up: bool) -> None:
        try:
            while data := one.recv(65536):
                if up and self.left is not None:
                    data, self.left = data[: self.left], max(0, self.left - len(data))
                if up and self.mute and b"POST /notes " in data:
                    self.muted.add(one)
                if not up and other in self.muted:
                    continue
                other.sendall(data)
                if up and self.left == 0:
                    self.midway.set()
                    return
            other.shutdown(socket.SHUT_WR)
        except OSError:
            pass


class Served:
    """A job folder under `logbook serve`, which can be killed and started again."""

    def __init__(self, home: Path):
        self.site = killing.lay(home, 1)
        self.server = None
        self.start()
        self.gate = Gate(self.site.port)

    @property
    def address(self) -> str:
        return f"http://localhost:{self.gate.port}"

    def start(self) -> None:
        self.server = killing.start(self.site)

    def kill(self) -> None:
        os.kill(self.server.pid, signal.SIGKILL)
        self.server.wait()
        self.server.stdout.close()

    def code(self) -> str:
        with store.open_folder(self.site.job) as folder, store.writing(folder) as db:
            return people.invite(db, people.by_name(db, "Rosa Quint").id, "pair", datetime.now(UTC))

    def notes(self) -> list[dict]:
        with store.open_folder(self.site.job) as folder:
            return store.notes_since(folder, None, 50, store.Filters(), "en")["notes"]


@pytest.fixture
def served(tmp_path):
    (tmp_path / "site").mkdir()
    made = Served(tmp_path / "site")
    yield made
    made.gate.close()
    if made.server.poll() is None:
        made.server.terminate()
        made.server.wait(30)
        made.server.stdout.close()


def pair(page, address: str, code: str) -> None:
    page.set_default_timeout(LATEST)
    page.goto(f"{address}/pair#{code}")
    page.click("main form button.press >> text=Pair")
    page.wait_for_selector("html[data-state=ready]", state="attached")
    page.wait_for_selector("html[data-shelf=ready]", state="attached")


def photo(number: int) -> dict:
    return {"name": f"{number}.jpg", "mimeType": "image/jpeg", "buffer": picture(number)}


def large(number: int, size: int) -> dict:
    """A JPEG with so many bytes behind its end, as some cameras write them."""
    return photo(number) | {"buffer": picture(number) + random.Random(number).randbytes(size)}


def add(page, *photos: dict) -> None:
    page.evaluate("() => { document.documentElement.dataset.state = 'adding'; }")
    page.set_input_files("#album", list(photos))
    page.wait_for_selector("html[data-state=photographed]", state="attached")


def test_a_server_killed_in_the_middle_of_an_upload_gets_the_note_once(served, chrome):
    context = chrome.new_context(permissions=["microphone"], locale="en")
    page = context.new_page()
    pair(page, served.address, served.code())
    speak(page, 1)
    add(page, large(1, 2_000_000))
    served.gate.hold(900_000)
    hand_in(page)
    assert served.gate.midway.wait(20), "half of it is on the way"
    served.kill()
    served.gate.open()
    page.wait_for_function("() => document.getElementById('queue').dataset.waiting === '1'")
    assert served.notes() == []
    served.start()
    send_now(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    (note,) = served.notes()
    assert len(note["digests"]["audio"]) == len(note["digests"]["photos"]) == 1
    page.click("#next-one")
    page.reload()
    page.wait_for_selector("html[data-state=ready]", state="attached")
    assert len(served.notes()) == 1
    context.close()


def test_an_upload_that_hangs_is_given_up_told_and_comes_in_once(served, chrome):
    context = chrome.new_context(permissions=["microphone"], locale="en")
    page = context.new_page()
    page.clock.install()
    pair(page, served.address, served.code())
    page.wait_for_selector('#queue[data-waiting="0"]')
    add(page, large(1, 2_000_000))
    page.click("#typing summary")
    page.fill("#text", "Straight seven on run two.")
    served.gate.hold(900_000)  # the network stands still half-way, and no line breaks
    hand_in(page)
    assert served.gate.midway.wait(20)
    for _ in range(10):  # the page's clock runs ahead; how many bytes the machine takes in before they stand still is its own
        page.clock.run_for(70_000)
        if "No answer came" in page.inner_text("#queue-told"):
            break
    assert "kept on this phone" in page.inner_text("#queue-told")
    page.wait_for_function("() => document.getElementById('note').innerText.includes('no answer came. It is kept on this phone')")
    assert served.notes() == [] and page.get_attribute("#queue", "data-waiting") == "1"
    served.gate.open()
    served.gate.mute = True  # the server takes every byte, and what it answers never comes
    send_now(page)
    wait_for(lambda: len(served.notes()) == 1, "the server has it")
    assert page.get_attribute("#queue", "data-waiting") == "1"
    served.gate.open()
    send_now(page)
    page.wait_for_selector('#queue[data-waiting="0"][data-refused="0"]')
    assert "No answer" not in page.inner_text("#queue-told") and len(served.notes()) == 1
    context.close()


def test_three_notes_with_photos_outlive_the_app_and_the_server(served, play, microphone, tmp_path):
    def opened():
        return play.chromium.launch_persistent_context(
            tmp_path / "phone", executable_path=chromium(), headless=True, args=[*FLAGS, hearing(microphone)], permissions=["microphone"], locale="en"
        )  # fmt: skip

    app = opened()
    page = app.pages[0]
    pair(page, served.address, served.code())
    app.set_offline(True)
    for number in range(3):
        speak(page, 1)
        add(page, photo(number))
        hand_in(page)
        page.click("#next-one")
        page.wait_for_selector("#screen-speak:not([hidden])")
    page.wait_for_selector('#queue[data-waiting="3"]')
    app.close()  # the app is gone, not only its page
    served.kill()
    served.start()
    app = opened()
    app.set_offline(True)
    page = app.pages[0]
    page.set_default_timeout(LATEST)
    page.goto(f"{served.address}/phone")
    page.wait_for_selector('#queue[data-waiting="3"]')
    assert served.notes() == []
    app.set_offline(False)
    page.wait_for_selector('#queue[data-waiting="0"][data-refused="0"]')
    notes = served.notes()
    assert len(notes) == len({note["id"] for note in notes}) == 3
    assert [note["spoken_at"] for note in notes] == sorted(note["spoken_at"] for note in notes), "in order"
    assert all(len(note["digests"]["audio"]) == len(note["digests"]["photos"]) == 1 for note in notes)
    assert len({note["digests"]["photos"][0] for note in notes}) == 3
    app.close()


def test_a_token_that_is_too_old_refuses_nothing(site, visit):
    page = visit()
    ready(page)

    def of_yesterday(route):
        told = route.fetch()
        route.fulfill(response=told, json=told.json() | {"csrf": "of yesterday"})

    page.route("**/me", of_yesterday, times=1)
    page.click("#typing summary")
    page.fill("#text", "Straight seven on run two, eighteen by twelve.")
    with page.expect_response(lambda answer: answer.request.method == "POST" and answer.url.endswith("/notes")) as asked:
        hand_in(page)
    assert asked.value.status == 400
    page.wait_for_selector('#queue[data-waiting="1"][data-refused="0"]')
    send_now(page)
    page.wait_for_selector('#queue[data-waiting="0"][data-refused="0"]')
    assert len(received(site[1])) == 1


def test_no_room_is_told_before_and_loses_nothing(site, visit):
    page = visit()
    debugger = page.context.new_cdp_session(page)

    def room(size: int | None) -> None:
        """So many bytes may be stored in all; None: as many as the machine lends. The browser looks anew every half minute."""
        debugger.send("Storage.overrideQuotaForOrigin", {"origin": site[0]} | ({} if size is None else {"quotaSize": size}))

    room(11_000_000)  # the page itself takes half a megabyte, its reserve eight
    ready(page)
    page.context.set_offline(True)
    speak(page, 1)
    add(page, large(1, 5_000_000))  # more than is free, less than with the reserve
    page.click("#tongue")  # the page looks at its room again
    page.wait_for_selector("html[data-room=little][lang=es]", state="attached")
    assert "Casi no queda espacio" in page.inner_text("#queue-told")
    page.click("#tongue")
    page.wait_for_selector("html[lang=en]", state="attached")
    add(page, large(2, 9_000_000))
    assert "no room" in page.inner_text("#checks")
    page.click("#press")
    page.wait_for_selector("html[data-state=full]", state="attached")
    assert page.is_visible("#text") and "hardly any room" in page.inner_text("#press-told")
    page.click("#hand-in")
    page.wait_for_selector("html[data-room=none]", state="attached")
    assert page.get_attribute("#queue", "data-waiting") == "0", "it is not handed in without its second photo"
    page.evaluate("() => { document.documentElement.dataset.state = ''; }")
    room(None)
    page.wait_for_function("() => { document.getElementById('hand-in').click(); return document.documentElement.dataset.state === 'queued'; }", polling=3000, timeout=60_000)
    page.context.set_offline(False)
    page.wait_for_selector('#queue[data-waiting="0"]')
    (note,) = received(site[1])
    assert len(note["digests"]["audio"]) == 1 and len(note["digests"]["photos"]) == 2


def test_a_sign_in_that_ended_without_signal_is_paired_anew_and_hands_in(site, visit):
    page = visit()
    ready(page)
    page.context.set_offline(True)
    page.click("#typing summary")
    page.fill("#text", "Straight seven on run two, eighteen by twelve.")
    hand_in(page)
    page.context.clear_cookies()
    page.context.set_offline(False)
    page.wait_for_selector("#pair-again")
    assert "stays here" in page.inner_text("#queue-told") and page.get_attribute("#queue", "data-waiting") == "1"
    assert received(site[1]) == []
    with site[1].folder() as folder, store.writing(folder) as db:
        code = people.invite(db, site[1].ids["installer"], "pair", datetime.now(UTC))
    page.click("#pair-again")
    page.fill("[name=code]", code.lower())
    page.click("main form button.press >> text=Pair")
    page.wait_for_selector('#queue[data-waiting="0"]')
    assert len(received(site[1])) == 1
