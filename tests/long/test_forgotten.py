"""Twenty minutes of noise give no word and no fact; ten forgotten minutes give the note in them. Real ears: some minutes.

    python -m pytest tests/long/test_forgotten.py
"""

import sys
from pathlib import Path

import numpy as np
import pytest

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE.parent), str(HERE.parent / "making"), str(HERE.parent / "bench")]
import bad_sound  # noqa: E402
import waiting  # noqa: E402

from logbook import store, worker  # noqa: E402
from logbook.decoding import sound  # noqa: E402
from logbook.decoding.sound import RATE, Sound  # noqa: E402
from logbook.reading import read  # noqa: E402

BAD = HERE.parent / "cases" / "hearing" / "bad"


def a_sound(samples) -> Sound:
    samples = np.asarray(samples, np.float32)
    return Sound(samples, samples.size / RATE, samples.size / RATE, "0" * 64, "x")


@pytest.mark.parametrize("kind", bad_sound.KINDS)
def test_two_minutes_of_each_noise_give_no_word(ears, kind):
    language = ("en", "es")[bad_sound.KINDS.index(kind) % 2]
    (heard,) = ears.hear([a_sound(bad_sound.noise(kind, 110, bad_sound.KINDS.index(kind)))], languages=[language])
    assert heard.text == "" and heard.language is None
    assert sum(gap.until - gap.second for gap in heard.unheard) == pytest.approx(110, abs=0.1)


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("level", [1.0, 3.0])
def test_other_people_s_talk_across_a_hall_gives_no_fact(ears, language, level):
    one = sound.decode(BAD / "across-a-hall.ogg").samples
    (heard,) = ears.hear([a_sound(level * np.concatenate([one[5 * RATE * n :] for n in range(3)]))], languages=[language])
    assert [fact.name for entry in read(heard.text, language=language, transcript=heard).fittings for fact in entry.facts] == []


@pytest.mark.parametrize("place", ["first", "in the middle"])
def test_ten_forgotten_minutes_give_the_note_in_them_and_the_rest_is_told(tmp_path, ears, place):
    long, note = waiting.forgotten(10), sound.decode(BAD / "plain.ogg")
    if place == "in the middle":
        silence = np.zeros(290 * RATE, np.float32)
        long = waiting.as_wav(np.concatenate([silence, note.samples, silence]))
    site = waiting.Site(tmp_path, ears)
    with site.folder:
        alone, forgotten = site.hand_in((BAD / "plain.ogg").read_bytes()), site.hand_in(long)
        while site.round():
            pass
        one, other = (store.note_document(site.folder, id, "en") for id in (alone, forgotten))
    assert isinstance(site.bench, worker.Bench) and other["state"] == "answered"

    def told(document) -> set:
        return {(fact["name"], str(fact["value"])) for entry in document["fittings"] for fact in entry["facts"]}

    assert told(other) >= {fact for fact in told(one) if fact[0] in ("kind", "mark", "inlet_size", "outlet_size", "side_moves")}
    assert len(other["fittings"]) == 1
    assert sum(gap["until"] - gap["second"] for gap in other["transcript"]["unheard"]) > 560
