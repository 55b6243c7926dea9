"""The page of a day on a phone: a long list is folded with its counts in sight, a short one stands open, and nothing is left out."""

from __future__ import annotations

import re
import uuid

import pytest

from desk import PAGE, open_desk, work
from logbook.web import days

OFF = "stapled every three, taped with 181A-P, rubbed down"
DAY = "/day/2026-10-14"


def page_of(tmp_path, *texts) -> str:
    desk = open_desk(tmp_path)
    for at, text in enumerate(texts):
        assert desk.hand_in(text=text, spoken_at=f"2026-10-14T10:{at:02}:00-05:00").status_code == 201
    work(desk)
    return desk.browser("lead").get(DAY, headers=PAGE).text


def part(page: str, head: str) -> str:
    """From a head of the page to the next one."""
    return page.split(f">{head}</h2>", 1)[1].split("<h2", 1)[0]


def links(text: str, rule: str) -> list[str]:
    return re.findall(rf'href="/(?:desk|fitting)/([^/"#]+)(?:/{rule}|#r-{rule})"', text)


@pytest.mark.parametrize("last", [10 + days.UNFOLDED - 1, 10 + days.UNFOLDED])
def test_every_fitting_of_a_long_list_is_folded_with_what_is_off_in_sight(tmp_path, last):
    page = page_of(tmp_path, f"Straight sections 10 through {last} on run two, 18 by 12, {OFF}.")
    flagged, count = part(page, "Flagged and not settled"), last - 9
    summaries = re.findall(r"<summary>(.*?)</summary>", flagged, re.S)
    if count <= days.UNFOLDED:
        assert summaries == [] and "straight section 10, run 2" in flagged
    else:
        assert len(summaries) == count and all("1 off" in " ".join(re.sub(r"<[^>]+>", "", one).split()) for one in summaries)
        assert all(f"straight section {mark}, run 2" in summary for mark, summary in zip(range(10, last + 1), summaries, strict=True))
    assert len(set(links(flagged, "staple-spacing"))) == count, "each can be gone to, folded or not"


def test_what_is_asked_folds_as_one_with_how_much_it_is(tmp_path):
    page = page_of(tmp_path, "Straight sections 10 through 16 on run two, 18 by 12, stapled every two, taped, rubbed down.")
    asked = part(page, "Not said or not clear")
    told = re.search(r"<summary>(\d+) in (\d+) fittings</summary>", asked)
    assert told.group(2) == "7" and int(told.group(1)) == len(re.findall(r"<li><span class=\"verdict", asked.split("</details>", 1)[0])) >= 7
    assert len(set(links(asked, "closure-listed"))) == 7


def test_a_correction_is_headed_like_the_piece_it_amends_wherever_notes_are_listed(tmp_path):
    desk = open_desk(tmp_path)
    told = ("Straight seven on run two, 18 by 12, stapled every two, taped with 181A-P, rubbed down.", "Correction on fitting seven, the staples are every three, kerplunk the moof.")
    for at, text in enumerate(told):
        desk.hand_in(text=text, spoken_at=f"2026-10-14T10:{at:02}:00-05:00")
    work(desk)
    for path, role in (("/log", "lead"), (DAY, "lead"), ("/questions?date=2026-10-14", "installer")):
        page = desk.browser(role).get(path, headers=PAGE).text
        heads = [" ".join(re.sub(r"<[^>]+>", "", one).split()) for one in re.findall(r'<a href="/entry/[^"]+">(.*?)</a>', page, re.S)]
        assert heads and all("straight section 7" in one for one in heads), (path, heads)
    note = desk.by_key("lead", "GET", "/notes").json["notes"][1]
    assert note["fittings"][0]["of_piece"] == {"kind": "straight"} and not any(fact["name"] == "kind" for fact in note["fittings"][0]["facts"]), "his words stay his words"


def test_a_signature_says_that_the_day_changed_after_it(tmp_path):
    desk = open_desk(tmp_path)
    desk.hand_in(text="Straight seven on run two, 18 by 12, stapled every two.")
    work(desk)
    lead, changed = desk.browser("lead"), "The day changed after this signature."
    form = {name: re.search(f'name="{name}" value="([^"]+)"', lead.get(DAY, headers=PAGE).text.split("/signatures")[1]).group(1) for name in ("csrf_token", "id", "report")}
    assert lead.post("/days/2026-10-14/signatures", data=form, headers=PAGE).status_code == 303
    assert changed not in lead.get(DAY, headers=PAGE).text
    desk.hand_in(text="Straight eight on run two, 18 by 12.", spoken_at="2026-10-14T16:50:00-05:00")
    work(desk)
    assert changed in lead.get(DAY, headers=PAGE).text and changed in desk.browser("contractor").get(DAY, headers=PAGE).text


def test_a_note_that_was_taken_back_says_so_where_notes_are_listed_and_on_its_own_page(tmp_path):
    desk = open_desk(tmp_path)
    pressed, voiced = (desk.hand_in(text=f"Straight {mark} on run two, 18 by 12.", spoken_at=f"2026-10-14T10:0{at}:00-05:00").json["id"] for at, mark in enumerate(("seven", "eight")))
    desk.hand_in(text="Scrap that, I was talking to the electrician.", spoken_at="2026-10-14T10:05:00-05:00")
    assert desk.by_key("installer", "POST", f"/notes/{pressed}/withdraw", json={"id": str(uuid.uuid4())}).status_code in (200, 201)
    work(desk)
    lead = desk.browser("lead")
    for path in ("/log", DAY):
        rows = re.split(r"<tr|<li", lead.get(path, headers=PAGE).text)
        assert ["taken back" in next(row for row in rows if f"/entry/{note}" in row) for note in (pressed, voiced)] == [True, True], path
    assert "counts for no fitting" in lead.get(f"/entry/{pressed}", headers=PAGE).text
    assert "Taken back by a later note" in lead.get(f"/entry/{voiced}", headers=PAGE).text


def test_a_day_without_notes_says_so_in_words_on_the_list_for_the_break(tmp_path):
    desk = open_desk(tmp_path)
    for language, words in (("en", "No note of yours was made today."), ("es", "Hoy no se hizo ninguna nota suya.")):
        page = desk.browser("installer").get(f"/questions?language={language}", headers=PAGE).text
        assert words in page and "0 of 0" not in page and "0 de 0" not in page


def test_the_notes_of_a_long_day_fold_and_its_signature_comes_in_reach(tmp_path):
    page = page_of(tmp_path, *(f"Straight {mark} on run two, 18 by 12, {OFF}." for mark in range(10, 17)))
    notes = part(page, "Notes of the day")
    assert "<summary>7 notes</summary>" in notes and len(re.findall(r'href="/entry/', notes)) == 7
