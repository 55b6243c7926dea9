"""What a page does without something: a trusted certificate, HTTPS, JavaScript, a microphone that is allowed, a mouse, small letters."""

from __future__ import annotations

import os
import shutil
import subprocess
import threading

import pytest
from playwright.sync_api import Error
from waitress.server import create_server

from conftest import FLAGS, chromium, hearing
from desk import NAMES, PASSWORD
from handing import picture, tone
from logbook.web import authority
from logbook.web.relay import Relay
from test_phone import hand_in, ready, received, speak, spoken_for


def sign_in(page, address: str = "", role: str = "installer") -> None:
    page.goto(f"{address}/enter")
    page.fill("[name=name]", NAMES[role])
    page.fill("[name=password]", PASSWORD)
    page.click("main button.press")
    page.wait_for_url(lambda url: "/enter" not in url)


# --- the own authority, as a phone meets it


@pytest.fixture
def secure_site(site, tmp_path):
    """(address, certificate of the authority): the site's application behind the relay, over HTTPS."""
    _, desk = site
    chain, key = authority.ensure(desk.settings.state, ("localhost", "127.0.0.1"))
    server = create_server(lambda e, s: told["app"](e, s), host="127.0.0.1", port=0, threads=8)
    relay = Relay(chain, key, "127.0.0.1", 0, server.effective_port)
    told = {"app": relay.told(desk.app)}
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    relay.start()
    yield f"https://localhost:{relay.port}", authority.path(desk.settings.state)
    relay.stop()
    server.close()
    thread.join(timeout=5)


@pytest.mark.skipif(shutil.which("certutil") is None, reason="certutil (libnss3-tools) puts the authority into the browser's own store")
def test_with_its_authority_trusted_the_page_works_without_signal_over_real_https(secure_site, play, microphone, tmp_path):
    address, certificate = secure_site
    trust = tmp_path / "home" / ".pki" / "nssdb"
    trust.mkdir(parents=True)
    subprocess.run(["certutil", "-N", "-d", f"sql:{trust}", "--empty-password"], check=True)

    def browser():
        env = os.environ | {"HOME": str(tmp_path / "home")}
        return play.chromium.launch(executable_path=chromium(), headless=True, args=[*FLAGS, hearing(microphone)], env=env)

    stranger = browser()
    with pytest.raises(Error, match="ERR_CERT_AUTHORITY_INVALID"):
        stranger.new_page().goto(address)
    stranger.close()
    subprocess.run(["certutil", "-A", "-d", f"sql:{trust}", "-n", "logbook", "-t", "C,,", "-i", certificate], check=True)
    friend = browser()
    page = friend.new_context(permissions=["microphone"], locale="en", base_url=address).new_page()
    sign_in(page)
    ready(page)
    page.context.set_offline(True)
    page.reload()
    page.wait_for_selector("html[data-state=ready]", state="attached")
    speak(page, 1)
    hand_in(page)
    page.context.set_offline(False)
    page.wait_for_selector('#queue[data-waiting="0"]')
    friend.close()


# --- plain HTTP, and a microphone that is refused


@pytest.fixture(scope="module")
def bare(play):
    """A browser that lends no microphone, and knows site.test as this machine: a name that is not secure by itself."""
    flags = [flag for flag in FLAGS if flag != "--use-fake-ui-for-media-stream"]
    browser = play.chromium.launch(executable_path=chromium(), headless=True, args=[*flags, "--host-resolver-rules=MAP site.test 127.0.0.1"])
    yield browser
    browser.close()


@pytest.mark.parametrize("language", ["en", "es"])
def test_over_plain_http_the_page_says_so_and_files_are_handed_in(site, bare, language):
    address = site[0].replace("localhost", "site.test")
    context = bare.new_context(locale=language, viewport={"width": 390, "height": 844})
    page = context.new_page()
    sign_in(page, address)
    page.goto(f"{address}/phone")
    page.wait_for_selector("html[data-state=plain]", state="attached")
    assert "HTTPS" in page.inner_text("#plain") and not page.is_visible("#press")
    page.click("#plain a.press")
    page.wait_for_selector("#hand-in")
    page.wait_for_selector("#speak-told")  # the page's own script tells it, after the form is there
    assert not page.is_visible("#speak-press")
    page.set_input_files("[name=audio]", {"name": "memo.wav", "mimeType": "audio/wav", "buffer": tone(440)})
    page.set_input_files("[name=photo]", {"name": "1.jpg", "mimeType": "image/jpeg", "buffer": picture(1)})
    page.click("#send")
    page.wait_for_url("**/entry/*")
    (note,) = received(site[1])
    assert len(note["digests"]["audio"]) == len(note["digests"]["photos"]) == 1
    context.close()


def test_a_microphone_that_is_refused_leaves_typing_and_files(site, bare):
    context = bare.new_context(locale="en", base_url=site[0])
    page = context.new_page()
    sign_in(page)
    ready(page)
    page.click("#press")
    page.wait_for_selector("html[data-state=refused]", state="attached")
    assert "was refused" in page.inner_text("#press-told")
    assert page.is_visible("#text") and page.is_visible("#by-file a")
    page.fill("#text", "Straight seven on run two, eighteen by twelve.")
    hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    assert len(received(site[1])) == 1
    context.close()


# --- without JavaScript


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_plain_form_hands_a_note_in_without_javascript(site, chrome, language):
    context = chrome.new_context(java_script_enabled=False, locale=language, base_url=site[0], viewport={"width": 390, "height": 844})
    page = context.new_page()
    sign_in(page)
    page.goto("/phone")
    assert page.is_visible("noscript a")
    page.click("noscript a")
    assert not page.is_visible("#speak")
    page.set_input_files("[name=audio]", {"name": "memo.wav", "mimeType": "audio/wav", "buffer": tone(440)})
    page.set_input_files("[name=photo]", [{"name": f"{n}.jpg", "mimeType": "image/jpeg", "buffer": picture(n)} for n in (1, 2)])
    page.click("#send")
    page.wait_for_url("**/entry/*")
    (note,) = received(site[1])
    assert len(note["digests"]["audio"]) == 1 and len(note["digests"]["photos"]) == 2
    page.goto("/")
    page.fill("[name=text]", "Straight seven on run two, eighteen by twelve.")
    page.click("#send")
    page.wait_for_url("**/entry/*")
    assert len(received(site[1])) == 2
    context.close()


# --- keyboard and large letters


def test_a_note_is_spoken_and_handed_in_by_keyboard_alone(site, visit):
    page = visit()
    ready(page)
    page.focus("#press")
    page.keyboard.press("Enter")
    page.wait_for_selector("html[data-state=listening]", state="attached")
    spoken_for(page, 1)
    page.keyboard.press("Space")
    page.wait_for_selector("html[data-state=recorded]", state="attached")
    reached = []
    for _ in range(30):
        page.keyboard.press("Tab")
        reached.append(page.evaluate("() => document.activeElement.id"))
        if reached[-1] == "hand-in":
            break
    assert {"camera", "album"} <= set(reached), "photos are reached on the way"
    page.keyboard.press("Enter")
    page.wait_for_selector("html[data-state=queued]", state="attached")
    page.wait_for_selector('#queue[data-waiting="0"]')
    page.wait_for_selector("#screen-note:not([hidden])")
    assert page.evaluate("() => document.activeElement.tagName") == "H1", "the new screen is where the keyboard is"
    assert len(received(site[1])) == 1


@pytest.mark.parametrize("language", ["en", "es"])
def test_letters_twice_as_large_lose_nothing(site, visit, language):
    """WCAG 2.2, 1.4.4: text grows to 200 % without loss of content; nothing is cut off and nothing needs scrolling sideways."""
    note = site[1].hand_in().json["id"]
    page = visit("installer", language)
    ready(page)
    for path in ("/phone#speak", "/phone#mine", "/phone#break", f"/phone#note/{note}", "/", "/log", "/questions", f"/entry/{note}", "/pair", "/trust"):
        page.goto(path)
        page.wait_for_load_state("networkidle")
        page.evaluate("() => { document.documentElement.style.fontSize = '225%'; document.querySelectorAll('details').forEach((one) => { one.open = true; }); }")
        lost = page.evaluate("""() => {
            const seen = (e) => e.offsetParent && !e.closest(".aside, svg, select, thead") && e.textContent.trim();
            const out = [...document.querySelectorAll("main *, header *, #queue *")].filter(seen).filter((e) => {
                const box = e.getBoundingClientRect();
                return box.right > innerWidth + 1 || (getComputedStyle(e).overflowX !== "visible" && e.scrollWidth > e.clientWidth + 1);
            });
            return [document.documentElement.scrollWidth > innerWidth ? "the page" : "", ...out.map((e) => `${e.tagName}.${e.className} ${e.textContent.trim().slice(0, 40)}`)].filter(Boolean);
        }""")
        assert lost == [], (path, "\n".join(lost))
