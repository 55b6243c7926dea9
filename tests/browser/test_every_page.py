"""No page is forgotten: every address that answers with a page is opened by somebody who may, and axe finds nothing in it.

The addresses come from the routes themselves, so a new screen is in the list on the day it is made.
"""

from __future__ import annotations

import uuid
from datetime import UTC, datetime

import pytest

from handing import picture
from logbook import store
from logbook.store import people
from logbook.web import guard
from logbook.worker import Bench, work_once
from test_pages import problems

STEEP = "Transition seven on run two, 20 by 14 to 20 by 11, top down three, back twelve, stapled every two, taped with 181A-P."
WHO = ("installer", "lead", "keeper", None)  # who opens a page: the first of these that may
DIFFERS = ("piece.page", "entry.page", "log.page")  # the lead sees more there


def filled(desk) -> dict[str, str]:
    """One value for every placeholder of an address."""
    note = desk.hand_in(text=STEEP, photo=[picture(1)], id=str(uuid.uuid4())).json["id"]
    with desk.folder() as folder:
        work_once(folder, Bench(None))
        document = store.note_document(folder, note, "en")
        with store.writing(folder) as db:
            first = people.invite(db, None, "first", datetime.now(UTC))
            password = people.invite(db, desk.ids["installer"], "password", datetime.now(UTC))
    return {
        "note": note, "piece": document["fittings"][0]["piece"], "rule": "transition-slope", "date": "2026-10-14",
        "person": desk.ids["installer"], "code": password, "first": first, "sha256": document["photos"][0]["sha256"], "part": "0",
        "kind": "html", "language": "en", "filename": "sign.svg",
    }  # fmt: skip


def addresses(desk) -> dict[str | None, list[str]]:
    """Who -> every address that answers him with a page."""
    values, found, refused = filled(desk), {who: [] for who in WHO}, {}
    clients = {who: desk.browser(who) for who in WHO}
    for rule in sorted(desk.app.url_map.iter_rules(), key=lambda rule: rule.rule):
        if "GET" not in rule.methods:
            continue
        may = guard.MAY[rule.endpoint]
        who = next(one for one in WHO if (one or guard.NOBODY) in may)
        who = None if rule.endpoint.startswith("doors.") and guard.NOBODY in may else who
        path = rule.rule
        for name in rule.arguments:
            value = values["first"] if rule.endpoint == "doors.first_form" else values.get(name, "none")
            path = path.replace(f"<{name}>", value).replace(f"<int:{name}>", value).replace(f"<path:{name}>", value)
        path += ASKED.get(rule.endpoint, "")
        answer = clients[who].get(path, headers={"Accept": "text/html"}, follow_redirects=True)
        if answer.status_code != 200:
            refused[rule.endpoint] = answer.status_code  # a paper that was not made, a lot that was not drawn
        elif answer.mimetype == "text/html" and "attachment" not in answer.headers.get("Content-Disposition", ""):
            found[who].append(path)
            if rule.endpoint in DIFFERS:
                found["lead"].append(path)
    assert not refused.keys() & ASKED.keys() and max(refused.values()) < 500, refused
    return found


ASKED = {"run.page": "?run=2", "run.drawing": "?run=2", "walking.walk_list": "?area=run:2", "walking.release": "?area=run:2"}


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_page_fits_and_axe_finds_nothing_on_it(site, visit, language):
    """What axe finds hangs on a page's parts, which are the same in both languages; how long its words are does not."""
    found = addresses(site[1])
    assert sum(map(len, found.values())) >= 25
    for who, paths in found.items():
        page = visit(who, language)
        for path in (*paths, "/no-such-page"):
            page.goto(path)
            if path == "/phone":
                page.wait_for_selector("html[data-state=ready]", state="attached")
            assert language != "en" or problems(page) == [], path
            assert page.get_attribute("html", "lang") == language
            for width in (320, 1280, 390):
                page.set_viewport_size({"width": width, "height": 844})
                assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), (path, width)
        if who == "lead":
            page.goto("/people")
            page.click("button[name=what][value=phone] >> nth=0")
            page.wait_for_selector(".code-big")
            assert problems(page) == [], "the code that pairs a phone"


@pytest.mark.parametrize("language", ["en", "es"])
def test_axe_finds_nothing_on_the_phone_with_an_answer(site, visit, language):
    note = site[1].hand_in(text=STEEP, spoken_at=datetime.now(UTC).isoformat()).json["id"]
    with site[1].folder() as folder:
        work_once(folder, Bench(None))
    page = visit("installer", language)
    page.goto(f"/phone#note/{note}")
    page.wait_for_selector("html[data-answer=answered]", state="attached")
    page.wait_for_selector("#note .ask")
    page.evaluate("() => document.querySelectorAll('#note details').forEach((one) => { one.open = true; })")
    for fact in range(page.locator("button.fact").count()):
        page.locator("button.fact").first.click()
    assert page.locator("#note form").count() > 5 and problems(page) == []
    page.click("#note .ask .stack:last-child button >> nth=0")
    page.wait_for_selector("#answering:not([hidden])")
    page.evaluate("() => document.querySelectorAll('#screen-speak details').forEach((one) => { one.open = true; })")
    assert problems(page) == []
    page.goto("/phone#break")
    page.wait_for_selector("#break .ask")
    assert problems(page) == []
