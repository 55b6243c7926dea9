"""The marks are there before the knife, where there is no signal: the schedule's cut sheets and the last ones made are on the phone."""

from __future__ import annotations

import pytest

from test_cutting import SCHEDULE
from test_pages import problems
from test_phone import ready


@pytest.fixture
def planned(site):
    folder = site[1].settings.folder
    (folder / "schedule.csv").write_text(SCHEDULE)
    job = (folder / "job.toml").read_text()
    (folder / "job.toml").write_text(job + '\n[[schedule]]\nfile = "schedule.csv"\nrevision = "B"\n')
    return site


def kept(page, language="en"):
    page.wait_for_function(
        f"""async () => {{ const opened = await new Promise((done) => {{ const asked = indexedDB.open('logbook', 1); asked.onsuccess = () => done(asked.result); }});
        const found = await new Promise((done) => {{ const asked = opened.transaction('kept').objectStore('kept').get('sheets-{language}'); asked.onsuccess = () => done(asked.result); }});
        opened.close(); return Boolean(found); }}"""
    )


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_sheet_of_the_schedule_opens_without_signal_and_says_what_the_server_says(planned, visit, language):
    served = planned[1].by_key("installer", "GET", f"/phone/sheets?language={language}").json
    number = next(n for n, row in enumerate(served["rows"]) if (row["mark"], row["run"]) == ("3", "2"))
    sheet = served["sheets"][served["rows"][number]["sheet"]]
    page = visit("installer", language)
    ready(page)
    kept(page, language)
    page.context.set_offline(True)
    page.goto("/phone#cut")
    page.wait_for_selector(f"#cut-rows a[href='#cut/{number}']")
    assert page.is_hidden("#cut-new") and ("No signal" if language == "en" else "Sin señal") in page.inner_text("#cut-told")
    assert "B" in page.inner_text("#cut-as-of")
    assert problems(page) == []
    page.click(f"#cut-rows a[href='#cut/{number}']")
    page.wait_for_selector("#cut-sheet svg.drawing")
    shown = page.locator("#cut-sheet").inner_text()
    assert all(f"{value}" in shown for _, value in sheet["sizes"]) and all(step in shown for step in sheet["steps"])
    assert page.locator("#cut-sheet svg text").all_inner_texts()
    assert problems(page) == []
    for width in (320, 390):
        page.set_viewport_size({"width": width, "height": 844})
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")


def test_a_row_that_cannot_be_laid_out_says_why(planned, visit):
    (planned[1].settings.folder / "schedule.csv").write_text("mark,run,kind,inlet,outlet,flat side\n1,2,transition,20x14,20x4,bottom\n")
    page = visit("installer")
    ready(page)
    kept(page)
    page.context.set_offline(True)
    page.goto("/phone#cut/0")
    page.wait_for_selector("#cut-sheet .told")
    assert "of a 48 in. section can be used" in page.inner_text("#cut-sheet")


def test_the_last_sheet_that_was_made_opens_again_and_a_new_one_says_what_it_needs(planned, visit):
    page = visit("installer")
    ready(page)
    page.wait_for_selector("html[data-shelf=ready]", state="attached")
    made, other = "/layout?kind=straight&size=18x12&length=30&laid=1", "/layout?kind=straight&size=16x12&length=30&laid=1"
    page.goto(made)
    page.goto("/layout?kind=offset")  # only a form: nothing to keep
    page.goto("/phone#cut")
    page.wait_for_selector("#cut-made a")
    assert page.locator("#cut-made a").all_inner_texts() == ["Cut sheet: straight section, 18 x 12"]
    page.context.set_offline(True)
    page.click("#cut-made a")
    page.wait_for_selector("img.drawing")
    assert "31 in." in page.inner_text("main")
    assert page.evaluate("document.querySelector('img.drawing').naturalWidth") > 0, "the drawing is kept too"
    page.goto(other)
    page.wait_for_selector("#cut-told")
    assert page.url.endswith("/phone#cut") and "office network" in page.inner_text("#cut-told")


def test_a_changed_limit_brings_other_sheets(planned, visit):
    page = visit("installer")
    ready(page)
    kept(page)
    file = planned[1].settings.folder / "job.toml"
    file.write_text(file.read_text().replace("[limits]", '[limits]\nslope = "1 in 12"', 1))
    page.goto("/phone#cut/0")
    page.reload()
    page.wait_for_function("() => document.querySelector('#cut-sheet').innerText.includes('36 in.')")


def test_the_way_to_the_sheet_stands_beside_the_mark_that_is_pressed(planned, visit):
    page = visit("installer")
    ready(page)
    kept(page)
    page.reload()
    ready(page)
    page.click("#tap-title")
    page.select_option("#piece", index=1)
    page.click("#cut-link a")
    page.wait_for_selector("#cut-sheet svg.drawing")
    assert "3" in page.inner_text("#cut-sheet h1")
