"""The lead's desk over the real store: the list, one finding a page, decisions as forms, several at once."""

from __future__ import annotations

import html
import io
import re
import uuid
from datetime import UTC, datetime, timedelta

import pytest

from desk import NAMES, PAGE, PASSWORD, finding, open_desk, piece_of, token, work
from handing import picture
from logbook import store
from logbook.store import people
from logbook.wording import say

GOOD = "stapled every two, taped with 181A-P, rubbed down"
SAYS = {
    "7": "Straight seven on run two, eighteen by twelve, stapled every three, taped with 181A-P, rubbed down.",
    "8": "Straight eight on run two, eighteen by twelve, stapled every three, taped with 181A-P, rubbed down.",
    "9": "Elbow nine on run one, eighteen by twelve, ninety degrees, vanes in, stapled every two, taped with cloth tape, rubbed down.",
    "10": f"Straight ten on run two, eighteen by twelve, {GOOD}.",
}


@pytest.fixture
def desk(tmp_path):
    made = open_desk(tmp_path)
    for number, text in enumerate(SAYS.values()):
        assert made.hand_in(text=text, spoken_at=f"2026-10-14T08:{number:02}:00-05:00").status_code == 201
    work(made)
    return made


def pick(desk, mark: str, rule: str) -> str:
    return f"{piece_of(desk, mark)} {rule} {finding(desk, mark, rule)['edition']}"


class Lead:
    """A lead's browser without JavaScript: pages and the forms on them."""

    def __init__(self, desk, name: str = NAMES["lead"]):
        self.desk, self.client = desk, desk.app.test_client()
        form = {"name": name, "password": PASSWORD, "csrf_token": token(self.client, "/enter")}
        assert self.client.post("/enter", data=form, headers=PAGE).status_code == 303
        self.csrf = self.client.get("/me").json["csrf"]

    def page(self, path: str) -> str:
        answer = self.client.get(path, headers=PAGE)
        assert answer.status_code == 200, answer.text
        return answer.text

    def settle(self, mark: str, rule: str, decision: str, **more):
        form = {"csrf_token": self.csrf, "id": str(uuid.uuid4()), "edition": finding(self.desk, mark, rule)["edition"], "decision": decision}
        return self.client.post(f"/desk/{piece_of(self.desk, mark)}/{rule}", data=form | more, headers=PAGE)

    def several(self, picks, decision: str, **more):
        form = {"csrf_token": self.csrf, "id": str(uuid.uuid4()), "pick": picks, "decision": decision}
        return self.client.post("/desk", data=form | more, headers=PAGE)


@pytest.fixture
def lead(desk):
    return Lead(desk)


def tomorrow() -> str:
    return (datetime.now(UTC).date() + timedelta(days=2)).isoformat()


def rows(page: str) -> list[str]:
    """What stands on the list, in its order: "mark rule"."""
    return re.findall(r'<a href="/desk/[^/"]+/([\w-]+)(?:\?[^"]*)?"><b>[^<]*?(\w+)</b>', page)


def test_the_list_shows_what_stands_open_the_most_serious_first(lead):
    found = [(rule, mark) for rule, mark in rows(lead.page("/desk")) if rule in ("staple-spacing", "closure-listed")]
    assert found == [("closure-listed", "9"), ("staple-spacing", "7"), ("staple-spacing", "8")]


def test_every_count_leads_to_its_findings_also_where_they_stand_on_another_page(desk, lead):
    for first in (20, 32, 44, 56):
        desk.hand_in(text=f"Straight sections {first} through {first + 11} on run two, 18 by 12, stapled every three, taped with 181A-P.")
    work(desk)
    page = lead.page("/desk")
    tallies = re.findall(r'<a href="([^"]*)#(level-[\w-]+)"><b>(\d+)</b>', page)
    assert {name for _, name, _ in tallies} >= {"level-departs", "level-unsaid"}
    elsewhere = [html.unescape(path) for path, _, _ in tallies if path]
    assert elsewhere, "with so many the last level begins on another page"
    for path, name, count in tallies:
        held = lead.page(html.unescape(path)) if path else page
        section = held.split(f'<h2 id="{name}">', 1)[1].split("<h2", 1)[0]
        assert rows(section), f"{name}: its first ones are where its count leads"
        assert not path or len(rows(section)) == min(int(count), 40), "and they begin the page"


def test_the_list_of_one_run_holds_that_run_alone(lead):
    assert {mark for _, mark in rows(lead.page("/desk?run=1"))} == {"9"}


def test_one_page_holds_everything_to_settle_it(desk, lead):
    page = lead.page(f"/desk/{piece_of(desk, '7')}/staple-spacing")
    for wanted in ("stapled every three", "drawing.svg", say("desk.history", "en"), 'name="decision" value="concession"', say("desk.not-planned", "en")):
        assert wanted in page.replace("</mark>", "").replace('<mark class="said used">', ""), wanted
    for label, value in (("Spacing (in.)", "3"), ("Limit (in.)", "2")):
        assert re.search(rf"<dt>{re.escape(label)}</dt><dd>{value}</dd>", page), label
    assert finding(desk, "7", "staple-spacing")["source"] in page.replace("&#39;", "'")


def test_the_digest_of_a_photo_is_no_reading_for_a_lead(desk, lead):
    for mark in ("11", "12"):
        desk.hand_in(text=f"Straight {mark} on run two, eighteen by twelve, {GOOD}.", photo=[picture(1)], spoken_at=f"2026-10-14T09:{mark}:00-05:00")
    work(desk)
    assert finding(desk, "12", "photo-reused")["verdict"] == "departs"
    told = lead.page(f"/desk/{piece_of(desk, '12')}/photo-reused").split("<article", 1)[1].split("</article>")[0]
    assert say("rules.photo-reused.name", "en") in told and not re.search("[0-9a-f]{64}", told)


def test_a_decision_leads_to_the_next_one_and_counts_at_once(desk, lead):
    first = lead.client.get("/desk/next", headers=PAGE).headers["Location"]
    assert first == f"/desk/{piece_of(desk, '9')}/closure-listed"
    answer = lead.settle("9", "closure-listed", "rework", reason="Tape it again.", owner=desk.ids["installer"], due=tomorrow())
    assert answer.status_code == 303
    following = answer.headers["Location"].split("?")[0]
    assert following != first and not following.endswith("/desk")
    with desk.folder() as folder:
        [item] = [one for one in store.waiting(folder) if one.rule == "closure-listed"]
    assert (item.stands, item.decision, item.owner, item.due.isoformat()) == ("in hand", "rework", desk.ids["installer"], tomorrow())
    work(desk)
    assert finding(desk, "9", "closure-listed")["stands"] == "in hand"
    day = lead.page("/day/2026-10-14")
    listed = day.split(f">{say('pages.day-open', 'en')}</h2>")[1].split("<h2")[0].count('<span class="verdict')
    assert re.search(r"<b>(\d+)</b> findings open or in hand", day)[1] == str(listed), "what is in hand is counted, and by its name; other pages count fittings"


def test_a_concession_nobody_on_site_may_grant_is_refused_without_the_paper_and_what_was_typed_stays(desk, lead):
    refused = lead.settle("9", "closure-listed", "concession", reason="Only until the tape comes.")
    assert refused.status_code == 422 and say("review.granted-elsewhere-neither.cure", "en") in refused.text
    assert "Only until the tape comes." in refused.text
    assert "A concession on Listed closure needs" in refused.text  # the page names the rule as people do, not by its id
    lead.settle("9", "closure-listed", "concession", reason="Granted.", granted_by="the engineer", document=(io.BytesIO(b"%PDF-1.7 letter"), "letter.pdf"))
    work(desk)
    assert finding(desk, "9", "closure-listed")["stands"] == "settled"


def test_what_was_heard_wrong_is_set_right_and_the_first_words_stay(desk, lead):
    assert lead.settle("7", "staple-spacing", "heard_wrong", name="staple_spacing", value="2").status_code == 303
    work(desk)
    found = finding(desk, "7", "staple-spacing")
    assert (found["verdict"], found["stands"]) == ("meets", "settled")
    with desk.folder() as folder:
        [fact] = [one for one in store.piece_document(folder, piece_of(desk, "7"), "en")["facts"] if one["name"] == "staple_spacing"]
    assert (fact["value"], fact["via"], [was["value"] for was in fact["was"]]) == (2, "lead", [3])


def test_a_look_needs_how_and_what_and_settles_where_it_meets(desk, lead):
    refused = lead.settle("7", "staple-spacing", "looked", name="staple_spacing", value="2")
    assert refused.status_code == 422 and say("review.no-way-to-look.cure", "en") in refused.text
    for mark, value, stands in (("7", "2", "settled"), ("8", "3", "open")):
        assert lead.settle(mark, "staple-spacing", "looked", name="staple_spacing", value=value, how="measured").status_code == 303
        work(desk)
        assert finding(desk, mark, "staple-spacing")["stands"] == stands
    assert re.search(r"<td>3 in\.</td><td><b>2 in\.</b>", lead.page(f"/desk/{piece_of(desk, '7')}/staple-spacing"))


def test_what_stays_open_needs_somebody_and_a_day(desk, lead):
    for missing in ("owner", "due"):
        fields = {"owner": desk.ids["installer"], "due": tomorrow()} | {missing: ""}
        refused = lead.settle("7", "staple-spacing", "rework", **fields)
        assert refused.status_code == 422 and say(f"desk.no-{missing}.error", "en") in refused.text
    assert lead.settle("7", "staple-spacing", "concession", reason="Low pressure.").status_code == 303, "what is settled needs neither"


def test_several_for_the_same_reason_are_all_kept_or_none(desk, lead):
    both = [pick(desk, "7", "staple-spacing"), pick(desk, "8", "staple-spacing")]
    refused = lead.several([*both, pick(desk, "9", "closure-listed")], "concession", reason="Low pressure.")
    assert refused.status_code == 422 and refused.text.count(" checked") >= 3 and "Low pressure." in refused.text
    assert "9 Listed closure: " in refused.text, "it says which one was refused"
    with desk.folder() as folder:
        assert folder.db.execute("SELECT count(*) FROM acts WHERE act = 'decided'").fetchone()[0] == 0
    assert lead.several(both, "concession", reason="Low pressure.").headers["Location"] == "/desk?done=2"
    work(desk)
    assert [finding(desk, mark, "staple-spacing")["stands"] for mark in ("7", "8")] == ["settled", "settled"]


def test_of_two_people_at_one_finding_the_second_is_told_and_presses_again_if_he_means_it(desk, lead):
    with desk.folder() as folder, store.writing(folder) as db:
        people.keep_password(db, people.add(db, "Bo Marsh", "lead", datetime.now(UTC)).id, people.hashed(PASSWORD))
    other = Lead(desk, "Bo Marsh")
    path = f"/desk/{piece_of(desk, '7')}/staple-spacing"
    seen = [re.search(r'name="seen" value="([^"]*)"', one.page(path)).group(1) for one in (lead, other)]
    assert lead.settle("7", "staple-spacing", "rework", owner=desk.ids["installer"], due=tomorrow(), seen=seen[0]).status_code == 303
    late = other.settle("7", "staple-spacing", "concession", reason="inside the plant room", seen=seen[1])
    assert late.status_code == 409 and re.search(r"Ada Fenn decided this on [^<]*\d:\d\d[^<]*, while you had it open: rework", late.text) and 'value="inside the plant room"' in late.text
    with desk.folder() as folder:
        assert [one["decision"] for one in store.piece_document(folder, piece_of(desk, "7"), "en")["decisions"]] in ([], ["rework"]) and store.pending(folder, piece_of(desk, "7"), "staple-spacing")["decision"] == "rework"
    again = re.search(r'name="seen" value="([^"]*)"', late.text).group(1)
    assert other.settle("7", "staple-spacing", "concession", reason="inside the plant room", seen=again).status_code == 303
    stale = f"{pick(desk, '7', 'staple-spacing')} {again}"
    assert lead.several([stale], "asked", owner=desk.ids["installer"], due=tomorrow()).status_code == 409, "from a list that was loaded before, too"


def test_of_several_ticked_together_what_another_decided_meanwhile_is_told_and_nothing_is_kept(desk, lead):
    with desk.folder() as folder, store.writing(folder) as db:
        people.keep_password(db, people.add(db, "Bo Marsh", "lead", datetime.now(UTC)).id, people.hashed(PASSWORD))
    desk.hand_in(text="Straight eleven on run two, eighteen by twelve, stapled every three.", spoken_at="2026-10-14T09:00:00-05:00")
    work(desk)
    other = Lead(desk, "Bo Marsh")
    loaded = other.page(f"/desk/{piece_of(desk, '11')}/staple-spacing")
    seen = re.search(r'name="seen" value="([^"]*)"', loaded).group(1)
    ticked = [one for one in re.findall(r'name="also" value="([^"]*)"', loaded)]
    first, *more = [one.split(" ")[0] for one in ticked]
    assert more and lead.settle("11", first, "concession", reason="seen on site").status_code == 303
    late = other.settle("11", "staple-spacing", "concession", reason="inside the plant room", seen=seen, also=ticked)
    assert late.status_code == 409 and re.search(say(f"rules.{first}.name", "en") + r": Ada Fenn decided this on [^<]*\d:\d\d", late.text)
    assert "inside the plant room" in late.text and store_pending(desk, "11", "staple-spacing") is None, "nothing of it is kept"
    again = re.findall(r'name="also" value="([^"]*)" checked', late.text)
    assert {one.split(" ")[0] for one in again} == {first, *more}, "what was ticked stays ticked"
    assert other.settle("11", "staple-spacing", "concession", reason="inside the plant room", seen=seen, also=again).status_code == 303


def store_pending(desk, mark: str, rule: str):
    with desk.folder() as folder:
        return store.pending(folder, piece_of(desk, mark), rule)


def test_the_verdict_at_the_desk_speaks_of_the_note_and_not_to_the_one_who_spoke(desk, lead):
    path = f"/desk/{piece_of(desk, '7')}/staple-leg"
    for language, of_note, to_him in (("en", "not said", "you didn&#39;t say"), ("es", "no se dijo", "usted no dijo")):
        lead.client.set_cookie("language", language)
        for page in (lead.page(path), lead.page("/desk"), lead.page(f"/fitting/{piece_of(desk, '7')}")):
            main = re.search(r"<main.*</main>", page, re.DOTALL).group()
            assert of_note in main.casefold() and to_him not in main
    installer = desk.browser("installer").get(f"/fitting/{piece_of(desk, '7')}", headers=PAGE).text
    assert "you didn&#39;t say" in installer


def test_what_was_accepted_together_by_mistake_is_found_again_and_decided_anew_together(desk, lead):
    picks = [pick(desk, mark, "staple-spacing") for mark in ("7", "8")]
    assert lead.several(picks, "concession", reason="as agreed").status_code == 303
    for judged in (False, True):  # at once, and after the pieces were reckoned with it
        work(desk) if judged else None
        page = lead.page("/desk?done=2")
        assert 'href="#settled"' in page and "Settled lately: 2" in page and page.count("as agreed") == 2
    ended = re.findall(r'name="pick" value="([^"]+)"', page.split('id="settled"')[1])
    assert sorted(one.rsplit(" ", 1)[0] for one in ended) == sorted(picks)
    assert lead.several(ended, "asked", reason="look again", owner=desk.ids["installer"], due=tomorrow()).status_code == 303
    work(desk)
    page = lead.page("/desk")
    assert "Settled lately" not in page and {"7 staple-spacing", "8 staple-spacing"} <= {f"{mark} {rule}" for rule, mark in rows(page)}
    with desk.folder() as folder:
        assert [one["decision"] for one in store.piece_document(folder, piece_of(desk, "7"), "en")["decisions"]] == ["concession", "asked"], "both stay"


def test_each_row_says_whose_words_they_are_and_of_which_day(lead):
    row = lead.page("/desk").split(">straight section 7<")[1].split("</li>")[0]
    assert "Said by Rosa Quint, Wednesday, October 14, 2026." in row


def test_the_same_press_twice_decides_once(desk, lead):
    both, same = [pick(desk, "7", "staple-spacing"), pick(desk, "8", "staple-spacing")], str(uuid.uuid4())
    for _ in range(2):
        assert lead.several(both, "concession", reason="Low pressure.", id=same).status_code == 303
    with desk.folder() as folder:
        assert folder.db.execute("SELECT count(*) FROM acts WHERE act = 'decided'").fetchone()[0] == 2


@pytest.mark.parametrize(("picks", "decision", "key"), [([], "rework", "desk.nothing-picked"), (["a b c"], "looked", "desk.one-by-one")])
def test_several_that_cannot_be_are_refused(lead, picks, decision, key):
    refused = lead.several(picks, decision)
    assert refused.status_code == 422 and say(f"{key}.error", "en", expected="rework, repair, concession, scrap, asked") in refused.text


def test_other_findings_of_the_fitting_are_settled_with_it(desk, lead):
    desk.hand_in(text="Straight eleven on run two, eighteen by twelve.", spoken_at="2026-10-14T09:00:00-05:00")
    work(desk)
    also = f"taped {finding(desk, '11', 'taped')['edition']}"
    answer = lead.settle("11", "fastened", "asked", also=[also], owner=desk.ids["installer"], due=tomorrow())
    assert answer.status_code == 303
    with desk.folder() as folder:
        decided = {one.rule for one in store.waiting(folder) if one.decision == "asked"}
    assert decided == {"fastened", "taped"}


def test_rework_is_closed_by_a_new_note_and_the_page_shows_before_and_after(desk, lead):
    lead.settle("7", "staple-spacing", "rework", owner=desk.ids["installer"], due=tomorrow())
    work(desk)
    path = f"/desk/{piece_of(desk, '7')}/staple-spacing"
    assert say("desk.nothing-after", "en") in lead.page(path)
    later = (datetime.now(UTC) + timedelta(seconds=2)).isoformat(timespec="seconds")
    desk.hand_in(text="Fitting seven on run two, staples every two.", spoken_at=later)
    work(desk)
    assert finding(desk, "7", "staple-spacing")["stands"] == "closed"
    page = lead.page(path)
    assert re.search(r'<th scope="row">Staples every</th><td>3 in\.</td><td><b>2 in\.</b></td>', page)
    assert say("desk.nothing-after", "en") not in page
    listed = lead.page("/desk")
    assert ("staple-spacing", "7") not in rows(listed)
    assert f'{path}#beside' in listed, "what a note closed can be looked at, before and after"


def test_a_decision_is_followed_by_another_and_both_stay(desk, lead):
    lead.settle("7", "staple-spacing", "rework", owner=desk.ids["installer"], due=tomorrow(), reason="First thought.")
    work(desk)
    lead.settle("7", "staple-spacing", "concession", reason="Second thought.")
    work(desk)
    page = lead.page(f"/desk/{piece_of(desk, '7')}/staple-spacing")
    assert "First thought." in page and "Second thought." in page
    assert finding(desk, "7", "staple-spacing")["stands"] == "settled"


def test_what_is_late_comes_first_and_says_so(desk, lead):
    body = {"rule": "staple-spacing", "edition": finding(desk, "8", "staple-spacing")["edition"], "decision": "rework", "due": "2026-10-14", "owner": desk.ids["installer"]}
    with desk.folder() as folder:
        act = store.decide(folder, piece_of(desk, "8"), body | {"id": str(uuid.uuid4())}, desk.ids["lead"], at=datetime(2026, 10, 14, 16, tzinfo=UTC))
        assert isinstance(act, store.Act)
    page = lead.page("/desk")
    assert rows(page)[0] == ("staple-spacing", "8") and "days late" in page and NAMES["installer"] in page


def test_the_lead_says_what_he_found_and_the_difference_is_a_finding(desk, lead):
    piece = piece_of(desk, "10")
    form = lead.page(f"/look/{piece}?rule=staple-spacing")
    fields = dict(re.findall(r'<input type="hidden" name="(\w+)" value="([^"]*)"', form))
    answer = lead.client.post("/notes", data=fields | {"text": "Staples every three."}, headers=PAGE)
    assert answer.headers["Location"] == f"/desk/{piece}/staple-spacing"
    assert say("facts.state.waiting", "en") in lead.page(answer.headers["Location"]), "his word is not heard yet, and the page says so"
    work(desk)
    assert piece_of(desk, "10") == piece and finding(desk, "10", "looked-agrees")["verdict"] == "departs"
    page = lead.page(f"/desk/{piece}/looked-agrees")
    assert re.search(r'<th scope="row">Staples every</th><td>2 in\.</td><td><b>3 in\.</b>', page)
    assert ("looked-agrees", "10") in rows(lead.page("/desk"))


def test_what_the_lead_wants_reaches_the_installer(desk, lead):
    lead.settle("7", "staple-spacing", "asked", reason="How many did you count?", owner=desk.ids["installer"], due=tomorrow())
    work(desk)
    note = desk.by_key("installer", "GET", f"/pieces/{piece_of(desk, '7')}").json["notes"][0]
    [found] = [f for f in desk.by_key("installer", "GET", f"/notes/{note}").json["fittings"][0]["findings"] if "wants" in f]
    assert (found["rule"], found["wants"]["reason"], found["wants"]["due"]) == ("staple-spacing", "How many did you count?", tomorrow())
    told = desk.by_key("installer", "GET", "/questions?date=2026-10-20").json
    assert [one["id"] for one in told["earlier"]] == [note] and told["notes"] == [], "the next days too, until it is answered"
    for path in (f"/entry/{note}", "/questions?date=2026-10-14", "/questions?date=2026-10-20"):
        assert "How many did you count?" in desk.browser("installer").get(path, headers=PAGE).text, path


def test_words_that_changed_meanwhile_are_decided_anew(desk, lead):
    edition = finding(desk, "7", "staple-spacing")["edition"]
    desk.hand_in(text="Fitting seven on run two, staples every four.", spoken_at="2026-10-14T12:00:00-05:00")
    work(desk)
    refused = lead.settle("7", "staple-spacing", "concession", reason="Low pressure.", edition=edition)
    assert refused.status_code == 422 and say("review.other-edition.cure", "en") in refused.text
    assert finding(desk, "7", "staple-spacing")["edition"] in refused.text and "Low pressure." in refused.text
    assert finding(desk, "7", "staple-spacing")["stands"] == "open"


def test_the_run_that_was_chosen_goes_along_to_the_next_one(desk, lead):
    first = lead.client.get("/desk/next?run=2", headers=PAGE).headers["Location"]
    assert first == f"/desk/{piece_of(desk, '7')}/staple-spacing?run=2"
    answer = lead.settle("7", "staple-spacing", "concession", reason="Low pressure.", run="2")
    assert answer.headers["Location"].startswith(f"/desk/{piece_of(desk, '8')}/staple-spacing?run=2")


def test_only_a_lead_settles_and_others_read(desk):
    path = f"/desk/{piece_of(desk, '7')}/staple-spacing"
    for role in ("contractor", "keeper"):
        page = desk.by_key(role, "GET", path, headers=PAGE)
        assert page.status_code == 200 and 'name="decision"' not in page.text
        assert desk.by_key(role, "POST", path, data={}).status_code == 403
    assert desk.by_key("installer", "GET", path, headers=PAGE).status_code == 403


def test_a_note_that_nobody_could_place_is_on_the_list(desk, lead):
    note = desk.hand_in(text="Staples every two, taped.", spoken_at="2026-10-14T11:00:00-05:00").json["id"]
    work(desk)
    with desk.folder() as folder:
        assert note in {one["id"] for one in store.lost_notes(folder)}
    assert f"/entry/{note}" in lead.page("/desk")


@pytest.mark.parametrize("path", ["/desk/none/taped", "/look/none", "/pieces/none/planned.svg"])
def test_what_is_not_there_is_told(lead, path):
    assert lead.client.get(path, headers=PAGE).status_code == 404


def test_one_check_alone_is_settled_for_all_that_it_flagged(desk, lead):
    page = lead.page("/desk")
    assert 'href="/desk?rule=staple-spacing">Staple spacing: 2</a>' in page
    page = lead.page("/desk?rule=staple-spacing")
    picks = re.findall(r'name="pick" value="([^"]+)"', page)
    assert len(picks) == 2 and all(" staple-spacing " in one for one in picks)
    done = lead.several(picks, "asked", **{"of-rule": "staple-spacing", "owner": "who-built", "due": "2099-01-02", "reason": "add staples"})
    assert (done.status_code, done.location) == (303, "/desk?rule=staple-spacing&done=2")
    with desk.folder() as folder:
        assert {one.owner for one in store.waiting(folder) if one.rule == "staple-spacing"} == {desk.ids["installer"]}
    refused = lead.several([], "asked", **{"of-rule": "staple-spacing"})
    assert refused.status_code == 422 and 'aria-current="true">Staple spacing: 2</a>' in refused.text, "what was chosen stays"
