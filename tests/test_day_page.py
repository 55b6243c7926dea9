"""The page of a day on a phone: a long list is folded with its counts in sight, a short one stands open, and nothing is left out."""

from __future__ import annotations

import re

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


def test_a_day_without_notes_says_so_in_words_on_the_list_for_the_break(tmp_path):
    desk = open_desk(tmp_path)
    for language, words in (("en", "No note was made today."), ("es", "Hoy no se hizo ninguna nota.")):
        page = desk.browser("installer").get(f"/questions?language={language}", headers=PAGE).text
        assert words in page and "0 of 0" not in page and "0 de 0" not in page


def test_the_notes_of_a_long_day_fold_and_its_signature_comes_in_reach(tmp_path):
    page = page_of(tmp_path, *(f"Straight {mark} on run two, 18 by 12, {OFF}." for mark in range(10, 17)))
    notes = part(page, "Notes of the day")
    assert "<summary>7 notes</summary>" in notes and len(re.findall(r'href="/entry/', notes)) == 7
