"""What the phone does with the answer, and what goes with a note: each test is one thing a person does with his thumb."""

from __future__ import annotations

import io
import uuid
from datetime import UTC, datetime

import pytest
import segno
from PIL import Image

from handing import picture
from logbook import store
from logbook.hearing import scripted
from logbook.store import people
from logbook.worker import Bench, work_once
from test_kept import add, photo
from test_pages import problems
from test_phone import hand_in, ready, received, speak, spoken_for

STRAIGHT = "Straight seven on run two, eighteen by twelve, stapled every two, taped with 181A-P."  # nothing of rubbing it down
TRANSITION = "Transition eight on run two, 18 by 12 to 18 by 10, top down two, back 24, stapled every two, taped with 181A-P, rubbed down."


class Ears:
    """Hears the words that are set before, and the move faintly."""

    name = "prepared"

    def hear(self, sounds, *, languages):
        return [scripted.spread(TRANSITION, sound.seconds, "en") for sound in sounds]


def answered(desk) -> None:
    with desk.folder() as folder:
        while any(work_once(folder, Bench(Ears))):
            pass


def type_note(page, text: str) -> None:
    page.click("#typing summary") if not page.is_visible("#text") else None
    page.fill("#text", text)


def told(page, desk, text: str = STRAIGHT) -> dict:
    """A typed note, handed in and answered; the page shows the answer."""
    type_note(page, text)
    hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    answered(desk)
    page.wait_for_selector("html[data-answer=answered]", state="attached")
    return newest(desk)


def newest(desk) -> dict:
    return received(desk)[-1]


def value(note: dict, name: str, position: int = 0):
    return next((fact["value"] for fact in note["fittings"][position]["facts"] if fact["name"] == name), None)


def finding(note: dict, rule: str) -> dict:
    return next(one for one in note["fittings"][0]["findings"] if one["rule"] == rule)


def press(page, selector: str) -> None:
    page.evaluate("() => { document.documentElement.dataset.state = ''; }")
    page.click(selector)
    page.wait_for_selector("html[data-state=queued]", state="attached")


def pressed(page, desk, note: str) -> dict:
    """Waits until what was pressed is in and judged, and the page knows it."""
    page.wait_for_selector('#queue[data-waiting="0"]')
    answered(desk)
    page.evaluate("() => dispatchEvent(new Event('online'))")
    page.wait_for_selector("html[data-answer=answered]", state="attached")
    with desk.folder() as folder:
        return store.note_document(folder, note, "en")


def test_words_that_nobody_checked_stand_on_the_answer(site, visit):
    page = visit()
    ready(page)
    told(page, site[1], f"{STRAIGHT} The tape has a mind of its own behind the beam.")
    assert page.locator("[data-unread]").inner_text().splitlines()[0] == "Not understood: “The tape has a mind of its own behind the beam”"
    page.goto("/phone#mine")
    row = page.locator("#mine .note-row").first
    row.wait_for()
    assert "some words not understood" in row.inner_text() and "good as said" not in row.inner_text()
    page.goto("/phone#speak")
    told(page, site[1])
    assert page.locator("[data-unread]").count() == 0


def test_words_that_a_question_quotes_are_told_once_and_end_with_one_tap(site, visit):
    page = visit()
    ready(page)
    words = "the tape has a mind of its own behind the beam"
    note = told(page, site[1], f"Straight 4 on run two, 12 by 8, stapled every two, {words}.")
    assert page.locator("[data-unread]").count() == 0
    asked = page.locator("#note .ask", has_text=words)
    assert asked.locator(".question").inner_text() == 'Is it taped all around? Say "taped all around", or what is not.'
    press(page, "#note .ask button >> text=Closed with tape: yes")
    after = pressed(page, site[1], note["id"])
    assert finding(after, "taped")["verdict"] == "meets"
    page.wait_for_function("words => !document.querySelector('#note .ask')?.innerText.includes(words)", arg=words)
    assert page.locator("[data-unread]").count() == 0
    page.goto("/phone#mine")
    page.wait_for_selector("#mine .note-row")
    assert "some words not understood" not in page.inner_text("#mine")


def test_of_a_length_the_value_that_was_said_is_one_tap_and_another_a_form(site, visit):
    page = visit()
    ready(page)
    note = told(page, site[1], "Straight 7 on run two, 12 by 8, stapled every two, but the staples play three card tricks in the corner, taped with 181A-P, rubbed down.")
    asked = page.locator("#note .ask", has_text="the staples play three card tricks")
    assert asked.get_by_role("button").all_inner_texts()[:1] == ["Staples every: 2 in."]
    asked.get_by_role("button", name="No, set it right").click()
    asked.locator("form input").fill("3")
    press(page, "#note .ask form button >> text=Keep this value")
    after = pressed(page, site[1], note["id"])
    assert finding(after, "staple-spacing")["verdict"] == "departs" and value(after, "staple_spacing") == 3


def test_is_this_twelve_has_a_yes_that_tells_the_mark_and_nothing_else(site, visit):
    folder = site[1].settings.folder
    (folder / "schedule.csv").write_text("mark,run,kind,inlet\n12,2,straight,20x14\n40,3,straight,20x14\n")
    (folder / "job.toml").write_text((folder / "job.toml").read_text() + '\n[[schedule]]\nfile = "schedule.csv"\nrevision = "B"\n')
    page = visit()
    ready(page)
    note = told(page, site[1], "Straight 2 on run two, 20 by 14, stapled every two, taped with 181A-P, rubbed down, air leaves by the female end.")
    assert "Is this 12?" in page.inner_text("#note .ask >> nth=0")
    press(page, "#note .ask button >> text=Yes, it is 12")
    after = pressed(page, site[1], note["id"])
    assert value(after, "mark") == "12" and finding(after, "as-planned")["verdict"] == "meets"
    assert "heard_right" not in after and "confirmed" not in after
    assert finding(after, "photo-there")["verdict"] == "unsaid", "what was not said is still not said"


def test_one_tap_answers_what_was_not_said(site, visit):
    page = visit()
    ready(page)
    note = told(page, site[1])
    asked = [rule for _, rule in note["questions"]]
    assert 1 <= page.locator("#note .ask").count() == len(asked) <= 2 and "rubbed-down" in asked
    press(page, "#note .ask button >> text=Rubbed down: yes")
    after = pressed(page, site[1], note["id"])
    assert value(after, "rubbed_down") is True and finding(after, "rubbed-down")["verdict"] == "meets"
    (fact,) = [fact for fact in after["fittings"][0]["facts"] if fact["name"] == "rubbed_down"]
    assert fact["via"] == "pressed"
    page.wait_for_function("() => !document.getElementById('note').innerText.includes('Rubbed down: yes')")


def test_a_fact_is_set_right_or_was_not_said_and_what_was_heard_stays(site, visit):
    page = visit()
    ready(page)
    note = told(page, site[1], TRANSITION)
    page.click("#note summary >> text=What was understood")
    page.click("button.fact >> text=Outlet")
    page.fill("#note form input >> nth=1", "10-1/2")
    press(page, "#note form button >> text=Keep this value")
    after = pressed(page, site[1], note["id"])
    assert value(after, "outlet_size") == [18, 10.5]
    (fact,) = [fact for fact in after["fittings"][0]["facts"] if fact["name"] == "outlet_size"]
    assert fact["was"][0]["value"] == [18, 10]
    page.wait_for_function("() => document.getElementById('note').innerText.includes('10-1/2')")  # the fold stays open
    page.click("button.fact >> text=Rubbed down")
    press(page, "#note form button >> text=I did not say that")
    after = pressed(page, site[1], note["id"])
    assert value(after, "rubbed_down") is None and finding(after, "rubbed-down")["verdict"] == "unsaid"


def test_that_is_right_and_taking_a_note_back(site, visit):
    page = visit()
    ready(page)
    note = told(page, site[1])
    press(page, "#note button >> text=That is right")
    after = pressed(page, site[1], note["id"])
    assert after["confirmed"] and after["heard_right"] and finding(after, "rubbed-down")["verdict"] == "unsaid"
    page.wait_for_selector("#note .stands")
    page.click("#note summary >> text=Take this note back")
    press(page, "#note details button >> text=Take it back")
    pressed(page, site[1], note["id"])
    page.wait_for_selector("#note .told >> text=You took this note back")
    with site[1].folder() as folder:
        assert store.note_document(folder, note["id"], "en")["withdrawn_at"] and store.piece_document(folder, note["fittings"][0]["piece"], "en") is None


def test_an_answer_by_speech_belongs_to_its_note(site, visit):
    page = visit()
    ready(page)
    note = told(page, site[1])
    page.click("#note .ask button >> text=Answer by voice >> nth=0")
    page.wait_for_selector("#answering:not([hidden])")
    assert "straight section 7" in page.inner_text("#answering")
    speak(page, 1)
    hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    assert newest(site[1])["answers"] == note["id"]


def test_who_answers_by_voice_has_the_question_that_he_pressed_before_him(site, visit):
    page = visit()
    ready(page)
    note = told(page, site[1], "Straight seven on run two, eighteen by twelve.")
    page.goto("/phone#break")
    page.wait_for_selector("#break .ask")
    questions = page.locator("#break .question").all_inner_texts()
    assert len(questions) > 2 == len(note["questions"]), "the list for the break asks more than the answer does"
    page.locator("#break .ask").nth(2).get_by_role("button", name="Answer by voice").click()
    page.wait_for_selector("#answering:not([hidden])")
    assert page.locator("#answering .question").all_inner_texts() == [questions[2]]


@pytest.mark.parametrize("word", ["Yes.", "It's good."])
def test_an_answer_in_which_nothing_was_understood_says_so_and_the_question_waits_right_there(site, visit, word):
    page = visit()
    ready(page)
    asked = told(page, site[1], STRAIGHT)
    page.click("#note .ask button >> text=Answer by voice >> nth=0")
    page.wait_for_selector("#answering:not([hidden])")
    answer = told(page, site[1], word)
    assert answer["answers"] == asked["id"] and answer["fittings"] == []
    assert page.inner_text("#note h1") == "Nothing understood"
    assert "nothing follows from them" in page.inner_text("#note [data-empty]")
    assert problems(page) == []
    press(page, "#note .ask button >> text=Rubbed down: yes")
    after = pressed(page, site[1], asked["id"])
    assert value(after, "rubbed_down") is True, "the press goes to the note that was asked"
    page.wait_for_function("() => !document.getElementById('note').innerText.includes('Rubbed down: yes')")
    page.goto("/phone#mine")
    page.wait_for_selector("#mine .note-row")
    assert "Nothing understood" in page.locator("#mine .note-row").first.inner_text()


def test_the_list_for_the_break_asks_a_piece_once_and_everything(site, visit):
    page = visit()
    ready(page)
    for text in (STRAIGHT, TRANSITION, "Straight seven on run two: the far side is closed."):
        page.goto("/phone#speak")
        told(page, site[1], text)
    page.goto("/phone#break")
    page.wait_for_selector("#break .ask")
    assert page.inner_text("#break .big") == "2 of your 3 need a word."
    assert page.locator("#break section").count() == 2, "two notes about straight seven are one line"
    taps = page.locator("#break .two button")
    assert {"Rubbed down: yes", "outside"} <= set(taps.all_inner_texts()) and len(set(taps.evaluate_all("all => all.map((one) => getComputedStyle(one).backgroundColor)"))) == 1, "what answers in one tap looks alike"
    for number in range(page.locator("#break section").count()):
        questions = page.locator(f"#break section >> nth={number} >> .question").all_inner_texts()
        assert len(questions) == len(set(questions)) >= 1


def test_a_photo_is_added_to_a_note_that_is_in(site, visit):
    page = visit()
    ready(page)
    note = told(page, site[1], TRANSITION)
    assert finding(note, "photo-there")["verdict"] == "unsaid"
    with page.expect_response("**/photos/**"):
        page.set_input_files("#note input[type=file] >> nth=0", [photo(3)])
    after = pressed(page, site[1], note["id"])
    assert len(after["photos"]) == 1 and finding(after, "photo-there")["verdict"] == "meets"


def test_small_photos_go_first_and_the_originals_follow_by_a_press(site, visit):
    page = visit()
    page.context.grant_permissions(["geolocation", "microphone"])
    page.context.set_geolocation({"latitude": 45.5, "longitude": -122.6})
    ready(page)
    type_note(page, TRANSITION)
    page.set_input_files("#camera", [{"name": "1.jpg", "mimeType": "image/jpeg", "buffer": turned()}])
    page.wait_for_selector("html[data-state=photographed]", state="attached")
    page.check("#later")
    hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"][data-originals="1"]')
    answered(site[1])
    note = newest(site[1])
    (small,) = note["photos"]
    assert small["place"]["latitude"] == 45.5 and small["taken_from"] == "phone" and note["photos_to_come"] == [small["copy_of"]]
    assert finding(note, "photo-there")["verdict"] == "meets"
    with site[1].folder() as folder:
        shown = Image.open(store.original(folder, small["sha256"]))
        assert max(shown.size) == 1280 and shown.height > shown.width, "small, and upright as the camera meant it"
    page.reload()
    page.click("#send-now >> text=Send the originals")
    page.wait_for_selector('#queue[data-originals="0"]')
    note = newest(site[1])
    (whole,) = note["photos"]
    assert whole["sha256"] == small["copy_of"] and whole["place"]["latitude"] == 45.5 and note["copies"][0]["sha256"] == small["sha256"]
    with site[1].folder() as folder:
        assert store.original(folder, whole["sha256"]).read_bytes() == turned(), "the original, as the camera wrote it"


def turned() -> bytes:
    """A JPEG that lies on its side and says so (EXIF orientation 6)."""
    wide = Image.open(io.BytesIO(picture(7))).resize((2400, 1600))
    exif = wide.getexif()
    exif[0x0112] = 6
    out = io.BytesIO()
    wide.save(out, "JPEG", exif=exif, quality=95)
    return out.getvalue()


def test_the_tag_in_a_photo_tells_the_piece_before_anybody_speaks(site, visit):
    with site[1].folder() as folder:
        job = folder.job.id
    out = io.BytesIO()
    segno.make(f"duct-tag:1:{job}:T4%2B", error="m").save(out, kind="png", scale=6, border=4)
    scene = Image.new("RGB", (1600, 1200), "#9aa3a8")
    scene.paste(Image.open(out).convert("RGB").rotate(8, expand=True, fillcolor="#ffffff"), (600, 400))
    shot = io.BytesIO()
    scene.save(shot, "JPEG", quality=80)
    page = visit()
    ready(page)
    page.wait_for_function("() => document.getElementById('foot').innerText.includes('Signed in')")
    page.context.set_offline(True)
    add(page, {"name": "tag.jpg", "mimeType": "image/jpeg", "buffer": shot.getvalue()})
    assert page.input_value("#mark") == "T4+" and "T4+" in page.inner_text("#checks")
    add(page, photo(5))
    assert page.input_value("#mark") == "T4+"


def test_of_a_crew_on_one_phone_who_speaks_is_one_tap(site, visit):
    with site[1].folder() as folder, store.writing(folder) as db:
        june = people.add(db, "June Tarn", "installer", datetime.now(UTC))
        code = people.invite(db, site[1].ids["installer"], "pair", datetime.now(UTC))
    page = visit(None)
    page.goto(f"/pair#{code}")
    page.click("main form button.press >> text=Pair")
    page.wait_for_url("**/phone")
    with site[1].folder() as folder, store.writing(folder) as db:
        (device,) = [one for one in people.devices(db) if one.kind == "phone"]
        people.share(db, device.id, (june.id,))
    ready(page)
    page.click("#voices label >> text=June Tarn")
    type_note(page, STRAIGHT)
    hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    note = newest(site[1])
    assert (note["spoken_by"], note["handed_in_by"]) == (june.id, site[1].ids["installer"])
    ready(page)
    assert page.is_checked(f"#voices input[value='{june.id}']"), "she goes on speaking until somebody else is tapped"


@pytest.mark.parametrize("ends", ["another app", "a call"])
def test_what_ends_a_recording_leaves_a_part_and_the_next_press_adds_one(site, visit, ends):
    page = visit()
    page.add_init_script("""const own = MediaStreamTrack.prototype.addEventListener; window.tracks = [];
        MediaStreamTrack.prototype.addEventListener = function (...all) { window.tracks.push(this); return own.apply(this, all); };""")
    ready(page)
    page.click("#press")
    spoken_for(page, 1)
    if ends == "a call":
        page.evaluate("() => window.tracks[0].dispatchEvent(new Event('mute'))")  # what a phone does with the microphone in a call
    else:
        page.evaluate("""() => { Object.defineProperty(document, "visibilityState", { configurable: true, get: () => "hidden" });
            document.dispatchEvent(new Event("visibilitychange")); delete document.visibilityState; }""")
    page.wait_for_selector("html[data-state=recorded]", state="attached")
    assert page.locator("#parts audio").count() == 1
    speak(page, 1)
    assert page.locator("#parts audio").count() == 2
    hand_in(page)
    page.wait_for_selector('#queue[data-waiting="0"]')
    assert len(newest(site[1])["digests"]["audio"]) == 2


def test_held_is_spoken_while_it_is_held(site, visit):
    page = visit()
    ready(page)
    box = page.locator("#press").bounding_box()
    page.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    page.mouse.down()
    spoken_for(page, 1)
    page.mouse.up()
    page.wait_for_selector("html[data-state=recorded]", state="attached")
    page.click("#parts button >> text=Throw it away")
    page.wait_for_function("() => document.querySelectorAll('#parts audio').length === 0")
    assert page.is_disabled("#hand-in")


def test_the_safety_line_comes_once_a_day(visit):
    page = visit()
    ready(page)
    assert page.is_visible("#caution")
    ready(page)
    assert not page.is_visible("#caution")


def test_an_answer_that_comes_late_is_shown_when_it_comes(site, visit):
    page = visit()
    ready(page)
    note = site[1].hand_in(text=STRAIGHT, spoken_at=datetime.now(UTC).isoformat(), id=str(uuid.uuid4())).json["id"]
    page.goto("/phone#mine")
    page.evaluate("() => dispatchEvent(new Event('online'))")
    page.wait_for_selector(f"#mine a[href='#note/{note}']")
    answered(site[1])
    page.wait_for_function("() => document.getElementById('mine').innerText.includes('straight section 7')")
