"""The journal's chain: any changed, dropped, added or exchanged row shows; a rewrite shows against paper."""

import hashlib
import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from logbook import chain

ACTS = ("received", "heard", "judged", "corrected", "decided", "signed", "erased")
IDS = st.dictionaries(st.sampled_from(("note", "piece", "by", "act")), st.text(max_size=12), max_size=3)
ROWS = st.lists(st.tuples(st.sampled_from(ACTS), IDS, st.dictionaries(st.text(max_size=5), st.integers(0, 99), max_size=2)), min_size=1, max_size=12)


def journal(acts, start: chain.Row | None = None) -> list[chain.Row]:
    rows, last = [], start
    for number, (act, ids, content) in enumerate(acts):
        digest = chain.digest(bytes([number]) * chain.SALT_BYTES, content)
        last = chain.following(last, f"2026-10-14T10:{number:02d}:00+00:00", act, ids, digest)
        rows.append(last)
    return rows


def keys(rows, **more) -> list[str]:
    return [one.key for one in chain.problems(rows, **more)]


@given(ROWS)
def test_what_was_written_in_order_holds_from_any_row_on(acts):
    rows = journal(acts)
    assert keys(rows) == []
    assert keys(rows, newest=rows[-1].hash) == []
    for at in range(1, len(rows)):
        assert keys(rows[at:], before=rows[at - 1]) == []


@given(ROWS, st.data())
def test_a_row_that_was_changed_in_any_member_is_found_and_named(acts, data):
    rows = journal(acts)
    at = data.draw(st.integers(0, len(rows) - 1))
    row, member = rows[at], data.draw(st.sampled_from(("seq", "at", "act", "ids", "digest", "before", "hash")))
    value = getattr(row, member)
    other = value + 1 if member == "seq" else dict(value) | {"note": "another note entirely"} if member == "ids" else value[:-1] + chr(ord(value[-1]) ^ 1)
    rows[at] = replace(row, **{member: other})
    found = list(chain.problems(rows))
    assert found and (found[0].where == f"journal {rows[at].seq}")


@given(ROWS, st.data())
def test_a_row_that_was_changed_and_hashed_anew_breaks_the_row_after_it_or_the_paper(acts, data):
    """Whoever knows how the hash is made can make one row fit; not the rows after it, nor what was printed."""
    rows = journal(acts)
    printed = rows[-1].hash
    at = data.draw(st.integers(0, len(rows) - 1))
    forged = replace(rows[at], act=rows[at].act + "?")
    rows[at] = replace(forged, hash=chain.hash_of(forged.seq, forged.at, forged.act, forged.ids, forged.digest, forged.before))
    if at < len(rows) - 1:
        assert keys(rows) == ["store.chain-broken"]
    else:
        assert keys(rows, newest=printed) == ["store.chain-not-printed"]


@given(ROWS, st.data())
def test_a_row_that_is_gone_or_came_twice_is_found(acts, data):
    rows = journal(acts)
    at = data.draw(st.integers(0, len(rows) - 1))
    if at < len(rows) - 1:
        assert "store.chain-gap" in keys(rows[:at] + rows[at + 1 :])
    else:
        assert keys(rows[:-1], newest=rows[-1].hash) == ["store.chain-not-printed"]
    assert "store.chain-gap" in keys(rows[: at + 1] + rows[at:])


@given(ROWS, ROWS)
def test_a_journal_written_anew_from_the_start_shows_against_paper_alone(acts, others):
    old, new = journal(acts), journal(others, journal([("received", {"note": "forged"}, {})])[0])
    whole = [chain.following(None, "2026-10-14T09:00:00+00:00", "received", {"note": "forged"}, "0" * 64)]
    for row in new:
        whole.append(chain.following(whole[-1], row.at, row.act, row.ids, row.digest))
    assert keys(whole) == []
    assert keys(whole, newest=old[-1].hash) == ["store.chain-not-printed"]


def test_the_hash_is_what_anybody_can_compute():
    """SHA-256 (FIPS 180-4) over the row as JSON in the canonical form of RFC 8785, computed here without our code."""
    row = journal([("received", {"note": "n", "by": "é"}, {})])[0]
    body = {"seq": 1, "at": row.at, "act": "received", "ids": {"note": "n", "by": "é"}, "digest": row.digest, "before": "0" * 64}
    canonical = json.dumps(body, sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode()
    assert row.hash == hashlib.sha256(canonical).hexdigest()


@pytest.mark.parametrize("one, other", [({"a": 1, "b": 2}, {"b": 2, "a": 1}), ({"x": 1.0}, {"x": 1}), ({"x": "\u00e9"}, {"x": "é"})])
def test_one_value_has_one_form(one, other):
    """RFC 8785 sections 3.2.2 and 3.2.3: members sorted, numbers as ECMAScript prints them."""
    assert chain.canonical(one) == chain.canonical(other)


def test_the_canonical_form_is_that_of_the_standard():
    """The example of RFC 8785, section 3.2.2."""
    given_there = {"numbers": [333333333.33333329, 1e30, 4.50, 2e-3, 0.000000000000000000000000001], "literals": [None, True, False]}
    assert chain.canonical(given_there) == b'{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27]}'


def test_a_salt_hides_what_was_digested():
    assert chain.digest(b"a" * 16, "Rosa Quint") != chain.digest(b"b" * 16, "Rosa Quint")
