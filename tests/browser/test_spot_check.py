"""A lead looks at a drawn piece on his phone: what was otherwise shows its field, and is a finding on his desk."""

from __future__ import annotations

import uuid
from datetime import date

from handing import picture
from logbook.store import walked
from logbook.worker import Bench, work_once

GOOD = "Straight 1 on run two, eighteen by twelve, stapled every two, flap stapled, taped with 181A-P, rubbed down, scrim shows, air leaves by the female end, step to the inside."


def test_otherwise_than_said_becomes_a_finding_by_thumb(site, visit):
    desk = site[1]
    desk.hand_in(text=GOOD, photo=[picture(1)])
    with desk.folder() as folder:
        work_once(folder, Bench(None))
        lot = walked.draw_spot(folder, str(uuid.uuid4()), date(2026, 10, 14), desk.ids["lead"])
    piece = lot.document["drawn"][0]
    page = visit("lead")
    page.goto("/walk?date=2026-10-14")
    page.click("text=Look at it")
    page.check("[name=how][value=measured]")
    assert not page.is_visible("[name=of-staple_spacing-value]"), "the field waits until it is needed"
    for box in page.locator("input[value=as_said]").all():
        box.check()
    page.check("[name=answer-staple_spacing][value=otherwise]")
    page.fill("[name=of-staple_spacing-value]", "3-1/2")
    page.click("text=Keep what I found")
    page.wait_for_selector("text=Staples every: said 2 in., found 3-1/2 in.")
    with desk.folder() as folder:
        work_once(folder, Bench(None))
    page.goto("/desk")
    still_open = page.locator(f"a[href*='{piece}']").count() - page.locator(f"#settled a[href*='{piece}']").count()
    assert still_open == 1 and page.locator("text=As the lead found it").count()
