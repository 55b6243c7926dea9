"""The phone's page in a real browser: speak, hand in, with and without signal."""

from __future__ import annotations

import pytest

from desk import NAMES, PASSWORD
from logbook import store
from logbook.store import people
from logbook.web import phone


def ready(page):
    page.goto("/phone")
    page.wait_for_selector("html[data-state=ready]", state="attached")
    page.wait_for_selector("html[data-shelf=ready]", state="attached")


def speak(page, seconds=2):
    page.click("#press")
    page.wait_for_selector("html[data-state=listening]", state="attached")
    spoken_for(page, seconds)
    page.click("#press")
    page.wait_for_selector("html[data-state=recorded]", state="attached")


def spoken_for(page, seconds: int) -> None:
    """Waits until the clock of the recording shows so many seconds or more: a busy machine skips some."""
    page.wait_for_function("""least => { const at = /(\\d+):(\\d\\d)$/.exec(document.getElementById("press-told").textContent); return at && 60 * at[1] + Number(at[2]) >= least; }""", arg=seconds)


def send_now(page) -> None:
    """Presses the button even where it has just gone: what the phone has sent by itself a moment before needs no press."""
    page.dispatch_event("#send-now", "click")


def hand_in(page):
    page.evaluate("() => { document.documentElement.dataset.state = ''; }")  # that it is queued is told anew
    page.click("#hand-in")
    page.wait_for_selector("html[data-state=queued]", state="attached")


def received(desk):
    with desk.folder() as folder:
        return store.notes_since(folder, None, 50, store.Filters(), "en")["notes"]


def test_speak_photo_and_hand_in(site, visit, pytestconfig):
    page = visit()
    ready(page)
    speak(page)
    page.set_input_files("#album", pytestconfig.rootpath / "logbook/web/static/sign-512.png")
    page.wait_for_selector("html[data-state=photographed]", state="attached")
    hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    (note,) = received(site[1])
    assert len(note["digests"]["audio"]) == 1 and len(note["digests"]["photos"]) == 1
    with site[1].folder() as folder:
        assert store.media_type(folder, note["digests"]["audio"][0]) in ("audio/webm", "audio/mp4")
        assert store.original(folder, note["digests"]["audio"][0]).stat().st_size > 5000


def test_a_photo_alone_says_what_is_lacking_before_it_can_be_handed_in(visit, pytestconfig):
    page = visit()
    ready(page)
    assert page.is_disabled("#hand-in") and page.is_hidden("#needs-words")
    page.set_input_files("#album", pytestconfig.rootpath / "logbook/web/static/sign-512.png")
    page.wait_for_selector("#needs-words:not([hidden])")
    assert page.is_disabled("#hand-in") and "photo alone" in page.inner_text("#needs-words")
    page.click("#typing summary")
    page.fill("#text", "Straight seven.")
    assert page.is_enabled("#hand-in") and page.is_hidden("#needs-words")


def test_three_notes_without_signal_come_in_order_and_once(site, visit):
    page = visit()
    ready(page)
    page.context.set_offline(True)
    for number in ("seven", "eight", "nine"):
        page.goto("/phone#speak")
        page.click("#typing summary") if not page.is_visible("#text") else None
        page.fill("#text", f"Straight {number} on run two, eighteen by twelve.")
        hand_in(page)
        page.wait_for_selector("#screen-note:not([hidden])")
        page.click("#note .stack button >> nth=-1")
        page.wait_for_selector("#screen-speak:not([hidden])")
    page.wait_for_selector('#queue[data-waiting="3"]')
    page.click("#nav a[href='#mine']")
    page.wait_for_selector("#mine .note-row")
    assert "On this phone: “Straight nine on run two" in page.locator("#mine .note-row").first.inner_text()
    page.click("#nav a[href='#break']")
    page.wait_for_selector("#unjudged")
    assert page.inner_text("#unjudged").startswith("Not judged yet: 3.")
    page.reload()  # the app is closed and opened again, still without signal
    page.wait_for_selector('#queue[data-waiting="3"]')
    assert received(site[1]) == []
    page.context.set_offline(False)
    page.wait_for_selector('#queue[data-waiting="0"]')
    spoken = [note["id"] for note in received(site[1])]
    assert len(spoken) == len(set(spoken)) == 3
    times = [note["spoken_at"] for note in received(site[1])]
    assert times == sorted(times)


def test_a_recording_that_was_cut_off_is_still_there(visit):
    page = visit()
    ready(page)
    page.click("#press")
    page.wait_for_selector("html[data-state=listening]", state="attached")
    spoken_for(page, 3)
    page.reload()  # killed in the middle: nothing was stopped or handed in
    page.wait_for_selector("#cut-off:not([hidden])")
    assert page.locator("#parts audio").count() == 1
    assert page.is_enabled("#hand-in")


def test_a_refused_microphone_leaves_typing(visit):
    page = visit(microphone=False)
    page.add_init_script("navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotAllowedError'))")
    ready(page)
    page.click("#press")
    page.wait_for_selector("html[data-state=refused]", state="attached")
    assert page.is_visible("#text") and "type" in page.inner_text("#press-told")


def test_a_session_that_ended_keeps_the_queue(site, visit):
    page = visit()
    ready(page)
    page.context.set_offline(True)
    page.click("#typing summary")
    page.fill("#text", "Straight seven.")
    hand_in(page)
    page.context.clear_cookies()
    page.context.set_offline(False)
    page.wait_for_selector("#pair-again")
    assert page.get_attribute("#queue", "data-waiting") == "1"
    assert received(site[1]) == []


def test_a_refused_note_stays_on_the_phone_with_its_reason(site, visit):
    page = visit()
    ready(page)
    page.click("#typing summary")
    page.fill("#text", "Straight seven.")
    page.context.set_offline(True)
    hand_in(page)
    page.evaluate(
        """() => new Promise((done) => { const asked = indexedDB.open('logbook', 1); asked.onsuccess = () => {
        const queue = asked.result.transaction('queue', 'readwrite').objectStore('queue'); const all = queue.getAll();
        all.onsuccess = () => { const one = all.result[0]; one.fields.kind = 'igloo'; queue.put(one).onsuccess = done; }; }; })"""
    )
    page.context.set_offline(False)
    page.wait_for_selector('#queue[data-refused="1"]')
    page.reload()
    page.wait_for_selector("html[data-answer=refused]", state="attached")
    assert "igloo" in page.inner_text("#note .told")
    assert page.locator("#note .stack button").all_inner_texts() == ["Try again", "Save it as a file", "The next one"]


def test_the_page_speaks_what_was_chosen_at_sign_in_then_what_is_pressed_on_it(site, visit):
    """The device itself asks for English."""
    page = visit(None, "en")
    page.goto("/enter")
    page.click("button[name=language][value=es]")
    page.fill("[name=name]", NAMES["installer"])
    page.fill("[name=password]", PASSWORD)
    page.click("main button.press")
    page.wait_for_url(lambda url: "/enter" not in url)
    ready(page)
    assert page.get_attribute("html", "lang") == "es" and "Pausa" in page.inner_text("#nav-break")
    page.click("#tongue")
    page.wait_for_selector("html[lang=en]", state="attached")
    ready(page)
    assert page.get_attribute("html", "lang") == "en"


def test_where_nothing_was_pressed_it_speaks_what_he_chose_on_another_device(site, visit):
    with site[1].folder() as folder, store.writing(folder) as db:
        people.speak(db, site[1].ids["installer"], "es")
    page = visit(language="en")
    page.goto("/phone")
    page.wait_for_selector("html[lang=es]", state="attached")
    page.goto("/phone#break")
    page.wait_for_selector("#break >> text=Hoy no se hizo ninguna nota suya.")


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_first_load_is_small(visit, language):
    page = visit(None, language)
    bytes_in = []
    page.on("response", lambda answer: bytes_in.append(len(answer.body())) if answer.ok else None)
    page.goto("/phone")
    page.wait_for_selector("html[data-state=ready]", state="attached")
    assert 0 < sum(bytes_in) <= 200_000


def test_everything_the_worker_keeps_is_there(site):
    client = site[1].app.test_client()
    assert [path for path in phone.KEPT if client.get(path).status_code != 200] == []
