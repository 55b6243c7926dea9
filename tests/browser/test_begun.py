"""A note that was begun is never out of hand: what is typed is kept as it is typed, and an answer between does not push it away."""

from __future__ import annotations

from test_answering import answered
from test_phone import hand_in, ready, received, send_now, speak, spoken_for

SEVEN = "Straight seven on run two, eighteen by twelve."
KEPT = "words => import('/static/outbox.js').then((box) => box.all('drafts')).then((all) => all.some((one) => one.fields.text === words))"


def type_in(page, words: str) -> None:
    if not page.is_visible("#text"):
        page.click("#typing summary")
    page.fill("#text", words)


def test_typed_words_are_there_after_the_page_died(site, visit):
    page = visit()
    ready(page)
    type_in(page, SEVEN)
    page.wait_for_function(KEPT, arg=SEVEN)
    page.reload()  # nothing was pressed
    page.wait_for_selector("#cut-off:not([hidden])")
    assert page.is_visible("#text") and page.input_value("#text") == SEVEN
    hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    assert len(received(site[1])) == 1
    page.reload()
    page.wait_for_selector("html[data-state=ready]", state="attached")
    assert page.input_value("#text") == "" and page.is_hidden("#cut-off")


def test_an_answer_between_takes_nothing_from_the_note_that_is_being_spoken(site, visit):
    page = visit()
    ready(page)
    type_in(page, SEVEN)
    hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    answered(site[1])
    page.evaluate("() => dispatchEvent(new Event('online'))")
    page.wait_for_selector("html[data-answer=answered]", state="attached")
    page.click("#next-one")
    page.click("#press")
    page.wait_for_selector("html[data-state=listening]", state="attached")
    spoken_for(page, 2)
    page.click("#nav a[href='#mine']")
    page.click("#mine a >> nth=0")
    page.click("#note .ask button >> text=Answer by voice >> nth=0")  # he still speaks
    page.wait_for_selector("#answering:not([hidden])")
    assert page.locator("#parts audio").count() == 0 and "kept on this phone" in page.inner_text("#cut-off")
    type_in(page, "Taped all around.")
    hand_in(page)
    page.click("#next-one")
    page.wait_for_selector("#parts audio")  # what he was saying is in his hand again, whole
    with page.expect_response(lambda came: came.url.endswith("/notes") and came.request.method == "POST"):
        hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"][data-refused="0"]')
    spoken, answer, seven = sorted(received(site[1]), key=lambda note: (not note["digests"]["audio"], note["answers"] is None))
    assert len(spoken["digests"]["audio"]) == 1 and spoken["answers"] is None
    assert answer["answers"] == seven["id"] and answer["digests"]["audio"] == []


def test_what_is_typed_beside_the_sound_comes_too_and_two_presses_hand_in_once(site, visit):
    page = visit()
    ready(page)
    page.context.set_offline(True)
    speak(page, 1)
    type_in(page, "The tape on the far side peels.")
    page.dblclick("#hand-in")
    page.wait_for_selector('#queue[data-waiting="2"]')
    page.context.set_offline(False)
    page.wait_for_selector('#queue[data-waiting="0"][data-refused="0"]')
    typed, spoken = sorted(received(site[1]), key=lambda note: len(note["digests"]["audio"]))
    assert typed["answers"] == spoken["id"] and typed["digests"]["text"] and len(spoken["digests"]["audio"]) == 1


def test_a_note_that_the_server_falls_over_holds_up_no_other(site, visit):
    page = visit()
    ready(page)
    page.context.set_offline(True)
    for mark in ("seven", "eight"):
        page.goto("/phone#speak")
        type_in(page, f"Straight {mark} on run two.")
        hand_in(page)
        page.click("#next-one")
    page.context.route("**/notes", lambda route: route.fulfill(status=500, body="") if "seven" in (route.request.post_data or "") else route.continue_())
    page.context.set_offline(False)
    page.wait_for_selector('#queue[data-waiting="1"][data-refused="0"]')
    page.wait_for_function("() => document.getElementById('queue-told').textContent.includes('error 500')")
    assert len(received(site[1])) == 1
    page.context.unroute("**/notes")
    page.context.route("**/notes", lambda route: route.fulfill(status=507, headers={"Retry-After": "60"}, json={"error": "", "cure": ""}))
    send_now(page)
    page.wait_for_function("() => document.getElementById('queue-told').textContent.includes('no room left and takes nothing in')")
    assert page.get_attribute("#queue", "data-waiting") == "1"
    page.context.unroute("**/notes")
    send_now(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    assert len(received(site[1])) == 2 and "500" not in page.inner_text("#queue-told")


def test_a_begun_note_is_in_the_hands_of_one_page(site, visit):
    first = visit()
    ready(first)
    type_in(first, SEVEN)
    first.wait_for_function(KEPT, arg=SEVEN)
    second = first.context.new_page()
    ready(second)
    assert "open in another page" in second.inner_text("#cut-off") and second.input_value("#text") == ""
    type_in(second, "Tee nine on run two.")
    hand_in(second)  # the other page's note is not in it
    second.wait_for_selector('#queue[data-waiting="0"]')
    second.click("#next-one")
    second.click("#cut-off button")  # taken over here: now the first says so
    second.wait_for_function("words => document.getElementById('text').value === words", arg=SEVEN)
    first.wait_for_function("() => document.getElementById('cut-off').textContent.includes('now open in another page')")
    assert first.input_value("#text") == ""
    hand_in(second)
    second.wait_for_selector('#queue[data-waiting="0"]')
    second.click("#next-one")
    assert second.is_hidden("#cut-off") and len(received(site[1])) == 2
