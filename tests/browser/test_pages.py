"""Every page in a real browser: axe finds nothing, nothing is wider than the screen, 200 % text still fits."""

from __future__ import annotations

import uuid
from pathlib import Path

import pytest

from desk import work
from handing import picture

AXE = (Path(__file__).parent / "axe.min.js").read_text()
PAGES = {  # every page as it stands is opened by test_every_page.py; these are pages with something in them
    "installer": ("/layout?kind=transition&large=20x14&small=20x11&flat=bottom",),
    "lead": ("/search?q=straight",),
}
CASES = [(role, path) for role, paths in PAGES.items() for path in paths]


def problems(page) -> list[str]:
    page.evaluate(AXE)  # through the debugger, so that the page's own policy stays as it is
    found = page.evaluate("axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})")
    assert len(found["passes"]) > 10, "axe looked at nothing"
    return [f"{one['id']}: {node['html'][:120]}" for one in found["violations"] for node in one["nodes"]]


@pytest.mark.parametrize(("role", "path"), CASES)
@pytest.mark.parametrize("language", ["en", "es"])
def test_axe_finds_nothing(visit, role, path, language):
    page = visit(role, language)
    assert page.goto(path).ok, "a refusal is no page"
    assert problems(page) == []
    assert page.get_attribute("html", "lang") == language
    for width in (320, 390, 1280):
        page.set_viewport_size({"width": width, "height": 844})
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), width


@pytest.mark.parametrize("language", ["en", "es"])
def test_an_entry_and_the_phone_have_nothing_for_axe(site, visit, language):
    note = site[1].hand_in().json["id"]
    page = visit("installer", language)
    page.goto(f"/entry/{note}")
    assert problems(page) == []
    page.goto("/phone")
    page.wait_for_selector("html[data-state=ready]", state="attached")
    for screen in ("speak", "mine", "break", f"note/{note}"):
        page.goto(f"/phone#{screen}")
        page.wait_for_selector(f"#screen-{screen.split('/')[0]}:not([hidden])")
        assert problems(page) == [], screen


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_walk_of_a_drawn_piece_has_nothing_for_axe(site, visit, language):
    from datetime import UTC, datetime

    from logbook.store import walked
    from logbook.worker import Bench, work_once

    desk = site[1]
    desk.hand_in(text="Straight 1 on run two, eighteen by twelve, stapled every two, flap stapled, taped with 181A-P, rubbed down, scrim shows, air leaves by the female end, step to the inside.", photo=[picture(1)])
    with desk.folder() as folder:
        work_once(folder, Bench(None))
        lot = walked.draw_spot(folder, str(uuid.uuid4()), datetime(2026, 10, 14, tzinfo=UTC).date(), desk.ids["lead"])
    page = visit("lead", language)
    for path in ("/walk?date=2026-10-14", f"/walk/look/{lot.document['drawn'][0]}", "/walk/list?area=run:2", "/walk/release?area=run:2", "/run?run=2"):
        assert page.goto(path).ok, path
        assert problems(page) == [], path
        for width in (320, 390, 1280):
            page.set_viewport_size({"width": width, "height": 844})
            assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), (path, width)


def test_a_note_is_handed_in_by_keyboard_alone(site, visit):
    page = visit()
    page.goto("/")
    page.focus("[name=text]")
    page.keyboard.type("Straight seven on run two, eighteen by twelve.")
    page.focus("#send")
    page.keyboard.press("Enter")
    page.wait_for_url("**/entry/*")


def test_every_press_is_large_enough_for_a_glove(visit):
    page = visit()
    for path in ("/", "/phone"):
        page.goto(path)
        page.wait_for_load_state("networkidle")
        small = page.evaluate(
            "[...document.querySelectorAll('main button, main .press')].filter(e => e.offsetParent)"
            ".filter(e => e.getBoundingClientRect().height < 64).map(e => e.textContent)"
        )
        assert small == [], path


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_folded_day_is_short_on_a_phone_opens_by_a_tap_and_prints_whole(site, visit, language):
    site[1].hand_in(text="Straight sections 10 through 29 on run two, 18 by 12, stapled every three, taped with 181A-P, rubbed down.")
    work(site[1])
    page = visit("lead", language)
    page.goto("/day/2026-10-14")
    assert problems(page) == []
    folds = page.locator("main .fold")
    assert folds.count() > 20
    hidden = "all => all.filter((one) => !one.checkVisibility({ contentVisibilityProperty: true, contentVisibilityAuto: true })).length"
    rows = page.locator(".fold li")
    count = rows.count()
    assert rows.evaluate_all(hidden) == count > 20, "folded at first"
    first = folds.first
    first.locator("summary").click()
    assert first.locator("a").first.is_visible()
    page.emulate_media(media="print")
    assert rows.evaluate_all(hidden) == 0, "paper has no fold to press"


def test_axe_would_find_a_fault(visit):
    page = visit(None)
    page.goto("/enter")
    page.evaluate("document.querySelector('label').replaceWith(document.querySelector('[name=name]'))")
    assert any("label" in found for found in problems(page))


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("path", ["/", "/phone"])
def test_the_words_on_the_big_press_stand_inside_its_shape(visit, path, language):
    """The shape is cut in at two corners: light letters over the cut would stand on the light page and not be read."""
    page = visit("installer", language, width=360)
    page.goto(path)
    page.wait_for_selector(".speak:visible")
    inside = page.evaluate("""() => {
        const press = document.querySelector(".speak"), box = press.getBoundingClientRect(), text = document.createRange();
        const cut = parseFloat(/calc\\(100% - ([0-9.]+)px\\)/.exec(getComputedStyle(press).clipPath)[1]);
        text.selectNodeContents(press);
        const words = text.getBoundingClientRect();
        return words.width > 50 && words.left >= box.left + cut && words.right <= box.right - cut;
    }""")
    assert inside


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("who", ["installer", "lead", "contractor"])
def test_the_head_of_a_page_takes_two_rows_on_a_phone_and_every_page_is_in_reach(site, visit, who, language):
    page = visit(who, language)
    page.goto("/rules")
    rows = page.evaluate("() => [...document.querySelectorAll('.top .whose, .top nav > ul a, .top summary')].map((one) => Math.round(one.getBoundingClientRect().top + one.getBoundingClientRect().height / 2))")
    assert len({row for row in rows}) == 2, rows
    page.click(".top summary")
    shown = page.locator(".top nav a:visible").count()
    page.set_viewport_size({"width": 1280, "height": 844})
    assert page.locator(".top nav a:visible").count() == shown >= 5


def test_what_is_said_and_what_is_typed_stand_apart_on_the_form(visit):
    page = visit()
    page.goto("/")
    said, typed = (page.locator(f".either label:has([name={name}])").bounding_box() for name in ("audio", "text"))
    assert typed["y"] - (said["y"] + said["height"]) >= 16, "a glove tells the two fields apart"
