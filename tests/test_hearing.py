"""What the ears must do: batch as alone, nothing out of noise, words with seconds, long sounds in windows."""

import json
import re
from pathlib import Path

import numpy as np
import pytest

from logbook import limits
from logbook.decoding import sound
from logbook.decoding.sound import RATE, Sound
from logbook.hearing import cleaning, doubt, engine, prompt, scripted, second, windows
from logbook.transcript import Transcript, Unheard, Word, from_json, to_json

HERE = Path(__file__).parent / "cases" / "hearing"
FORTY = json.loads((HERE / "clips.json").read_text(encoding="utf-8"))
CLIPS = [*FORTY[2::6], FORTY[35]]  # both languages and every condition; all forty are heard in tests/long/test_forty_clips.py


def a_sound(samples, name="x") -> Sound:
    samples = np.asarray(samples, np.float32)
    return Sound(samples, samples.size / RATE, samples.size / RATE, "0" * 64, name)


# --- the parts that need no model


@pytest.mark.parametrize("seconds, fed", [(0.2, 4), (3.5, 4), (3.6, 8), (15.5, 16), (15.6, 20), (29.5, 30)])
def test_the_encoder_gets_the_note_s_length_in_steps(seconds, fed):
    assert windows.Window(0.0, np.zeros(round(seconds * RATE), np.float32)).fed == fed


def test_a_long_sound_is_cut_where_it_is_quiet_and_nothing_is_lost():
    speech = np.random.default_rng(1).standard_normal(70 * RATE).astype(np.float32) * 0.1
    for pause in (20, 45):
        speech[pause * RATE : (pause + 1) * RATE] *= 0.001
    cut = windows.cut(speech)
    assert [round(window.start) for window in cut] in ([0, 20, 45], [0, 21, 46])
    assert np.array_equal(np.concatenate([window.samples for window in cut]), speech)
    assert max(window.seconds for window in cut) <= windows.LONGEST


@pytest.mark.parametrize("seconds, groups", [([], []), ([4] * 9, [8, 1]), ([4, 4, 60, 60], [3, 1]), ([200, 4, 4], [1, 2])])
def test_so_many_are_heard_side_by_side(seconds, groups):
    found = list(windows.side_by_side(range(len(seconds)), seconds, 8, 100))
    assert [len(group) for group in found] == groups
    assert [one for group in found for one in group] == list(range(len(seconds)))


def word(second, until):
    return Word("tape", 0, 4, second, until, 0.9)


@pytest.mark.parametrize(
    "words, unheard, found",
    [
        ([(0.5, 1.0), (6.0, 7.0), (14.0, 15.0)], [], []),
        ([(0.5, 1.0), (12.0, 13.0)], [], [(1.0, 12.0, "no_speech")]),
        ([(0.5, 1.0)], [], [(1.0, 20.0, "no_speech")]),
        ([(10.0, 11.0)], [], [(0.0, 10.0, "no_speech"), (11.0, 20.0, "no_speech")]),
        ([(0.5, 1.0), (18.0, 19.0)], [(2.0, 17.0, "noise")], [(2.0, 17.0, "noise")]),
        ([], [(0.0, 20.0, "noise")], [(0.0, 20.0, "noise")]),
    ],
)
def test_a_long_pause_is_told(words, unheard, found):
    told = windows.with_pauses([Unheard(*one) for one in unheard], [word(*one) for one in words], 20.0)
    assert told == [Unheard(*one) for one in found]


MEASURED = doubt.Measures(no_speech=0.2, mean_log=-0.3, plain=-0.9, ended=True)


@pytest.mark.parametrize(
    "text, changes, why",
    [
        ("Fitting 12, taped and rubbed down.", {}, None),
        ("Fitting 12.", {"no_speech": 0.8}, "no_speech"),
        ("", {}, "no_speech"),
        ("sling, sling, sling, sling", {}, "repetition"),
        ("turn it, turn it, turn it, turn it", {}, "repetition"),
        ("Fitting 97 on run 88, transition", {"plain": -6.0}, "echo"),
        ("Top down 3, back 41.", {"plain": -2.1}, "echo"),
        ("Stapled and taped, 3 inch 181A-P tape", {"plain": -5.0}, "echo"),
        ("Puedo hacer un poco de la línea,", {"plain": -2.7, "mean_log": -2.1}, "noise"),
        # words of the prompt that somebody really said are likely without it too
        ("Shiplap on the sides, butt edge top and bottom, low step to the inside.", {"plain": -1.0}, None),
        ("Fitting 41 on run 6, tee.", {"plain": -1.3}, None),
        # other people's talk across a hall
        ("Fitting up, slid, and then into last round of practice in the valley.", {"plain": -1.25, "mean_log": -1.12, "no_speech": 0.34, "seconds": 26.0}, "noise"),
        ("The doctor has left the field and came back with another tip.", {"plain": -0.7, "mean_log": -0.75, "no_speech": 0.48, "seconds": 26.0}, "noise"),
        ("Codáctrica, recta, la bloria, por el río.", {"plain": -1.75, "mean_log": -1.38, "no_speech": 0.33, "seconds": 12.8}, "noise"),
        # German heard as English; a short answer, of whose language nothing is known; English that Whisper takes for Polish and hears well
        ("Good morning, I have yesterday made the light 12 x 20.", {"mean_log": -0.9, "known": 0.001, "seconds": 12.0}, "language"),
        ("Two inches.", {"mean_log": -0.6, "known": 0.001, "seconds": 1.4}, None),
        ("Fitting four, stapled every two, taped.", {"mean_log": -0.2, "known": 0.01, "seconds": 8.0}, None),
        # faint speech at 8 dB
        ("fitting four, taped", {"plain": -1.9, "mean_log": -0.9, "no_speech": 0.53}, None),
    ],
)
def test_words_or_noise_made_into_words(text, changes, why):
    from dataclasses import replace

    assert doubt.why_unheard(text, "en", replace(MEASURED, **changes)) == why


@pytest.mark.parametrize("language", prompt.PROMPTS)
def test_a_prompt_is_an_echo_of_itself_and_holds_the_numbers_no_job_has(language):
    assert prompt.echoes(prompt.PROMPTS[language], language)
    assert all(re.search(rf"\b{number}\b", prompt.PROMPTS[language]) for number in prompt.PROMPT_NUMBERS)


def voice(seconds: float = 4.0) -> np.ndarray:
    """What comes and goes as syllables do, four a second, with pauses between."""
    t = np.arange(round(seconds * RATE)) / RATE
    return (np.sin(2 * np.pi * 700 * t) * np.maximum(0, np.sin(2 * np.pi * 4 * t))).astype(np.float32)


def level(samples: np.ndarray) -> float:
    return float(np.sqrt((samples.astype(np.float64) ** 2).mean()))


def test_steady_noise_under_a_voice_gets_quieter_and_the_voice_stays():
    said = voice()
    noise = 0.05 * np.random.default_rng(2).standard_normal(said.size).astype(np.float32)
    came, now = said + noise, cleaning.cleaned(said + noise)
    assert now.shape == came.shape and now.dtype == np.float32
    pauses = np.abs(said) == 0
    assert cleaning.QUIETEST - 0.05 < level(now[pauses]) / level(came[pauses]) < 0.7
    assert level(now[~pauses]) / level(came[~pauses]) > 0.95


@pytest.mark.parametrize("size", [0, 1, 500, 63_999, 64_000, 70_000])
def test_a_clean_voice_of_any_length_comes_back_as_it_came(size):
    said = voice(5.0)[:size]
    assert np.allclose(cleaning.cleaned(said), said, atol=1e-5)


def test_noise_without_a_voice_is_left_as_noise():
    """Made quieter it would be less like noise, and Whisper's own test of silence weaker."""
    some = noises()
    for name in ("an empty room", "white", "pink", "hum", "engine"):
        noise = some[name].astype(np.float32)
        assert np.array_equal(cleaning.cleaned(noise), noise), name


def test_the_path_in_numpy_is_the_path_of_the_released_warping():
    pytest.importorskip("torch")
    from whisper.timing import dtw_cpu

    from logbook.hearing import alignment

    r = np.random.default_rng(3)
    for rows, columns in ((1, 5), (4, 4), (7, 40), (30, 200)):
        cost = r.standard_normal((rows, columns)).astype(np.float32)
        tokens, frames = dtw_cpu.py_func(cost.astype(np.float64)) if rows * columns < 500 else dtw_cpu(cost)
        first = [int(frames[tokens == row].min()) for row in range(rows)]
        assert alignment._path(cost) == first


# --- prepared transcripts


def test_prepared_transcripts_by_digest_by_stem_and_as_text(tmp_path):
    one = scripted.spread("Fitting 7, taped.", 3.0, "en")
    (tmp_path / f"{'a' * 64}.json").write_text(json.dumps(to_json(one)), encoding="utf-8")
    (tmp_path / "7.txt").write_text("Codo de\nnoventa.", encoding="utf-8")
    (tmp_path / "8.txt").write_text("", encoding="utf-8")
    (tmp_path / "9.json").write_text("{", encoding="utf-8")
    ears = engine.make("scripted", tmp_path)
    sounds = [Sound(np.zeros(3 * RATE, np.float32), 3.0, 3.0, digest * 64, name)
              for digest, name in (("a", "x.ogg"), ("b", "7.ogg"), ("c", "8.ogg"), ("d", "9.ogg"), ("e", "10.ogg"))]  # fmt: skip
    by_digest, by_stem, silent, torn, none = ears.hear(sounds, languages=[None, "es", None, None, None])
    assert by_digest == from_json(to_json(one))
    assert by_stem.text == "Codo de noventa." and [w.second for w in by_stem.words] == [0.0, 1.0, 2.0]
    assert all(by_stem.text[w.start : w.end] == w.words for w in by_stem.words)
    assert silent.text == "" and silent.unheard[0].why == "no_speech"
    assert (torn.key, none.key) == ("hearing.bad-prepared", "hearing.no-prepared")


@pytest.mark.parametrize("name, key", [("scripted", "hearing.no-folder"), ("ear trumpet", "hearing.no-engine")])
def test_an_engine_that_cannot_be_made_is_told(name, key):
    assert engine.make(name).key == key


# --- Whisper itself: one model for all


@pytest.fixture(scope="module")
def clips():
    return [sound.decode(HERE / row["file"]) for row in CLIPS]


@pytest.fixture(scope="module")
def together(ears, clips) -> list[Transcript]:
    return ears.hear(clips, languages=[row["language"] for row in CLIPS])


def test_clips_together_are_heard_as_each_alone(ears, clips, together):
    assert {(row["language"], row["condition"]) for row in CLIPS} >= {("en", "clean"), ("es", "clean")}
    assert {row["condition"] for row in CLIPS} == {row["condition"] for row in FORTY}
    alike(together, alone(ears, clips, CLIPS))


def alone(ears, clips, rows) -> list[Transcript]:
    return [ears.hear([one], languages=[row["language"]])[0] for one, row in zip(clips, rows, strict=True)]


def alike(together: list[Transcript], alone: list[Transcript]) -> None:
    """What is heard well is heard alike. Many at once are added up in another order than one, and how, hangs on the processor: a word that is faint both times may differ by it ("mandel", "mandal" at 0.15), and hardly any is."""
    assert [len(one.words) for one in alone] == [len(one.words) for one in together]
    pairs = [pair for one, other in zip(alone, together, strict=True) for pair in zip(one.words, other.words, strict=True)]
    unlike = [(w, o) for w, o in pairs if w.words != o.words]
    assert not [(w, o) for w, o in unlike if max(w.heard, o.heard) >= limits.DEFAULTS["faint"] / 2]
    assert len(unlike) <= len(pairs) / 100
    assert [w.second for w, _ in pairs] == pytest.approx([o.second for _, o in pairs], abs=0.06)


def test_words_come_in_order_with_their_place_second_and_probability(together, clips):
    for transcript, one in zip(together, clips, strict=True):
        assert from_json(json.loads(json.dumps(to_json(transcript)))) == transcript
        assert all(transcript.text[w.start : w.end] == w.words for w in transcript.words)
        assert " ".join(w.words for w in transcript.words) == transcript.text
        seconds = [value for w in transcript.words for value in (w.second, w.until)]
        assert seconds == sorted(seconds) and (not seconds or seconds[-1] <= one.seconds + 0.05)
        assert all(0 <= w.heard <= 1 for w in transcript.words)


def test_clean_speech_is_found_and_its_language_too(ears, clips, together):
    clean = [n for n, row in enumerate(CLIPS) if row["condition"] == "clean"]
    assert all(together[n].text for n in clean)
    found = ears.hear([clips[n] for n in clean], languages=[None] * len(clean))
    assert [one.language for one in found] == [CLIPS[n]["language"] for n in clean]


def noises() -> dict[str, np.ndarray]:
    """Ten seconds of each, seeded: what a site and an empty room sound like, without a word."""
    r, t = np.random.default_rng(7), np.arange(10 * RATE) / RATE
    white = r.standard_normal(t.size)
    spectrum, f = np.fft.rfft(white), np.fft.rfftfreq(t.size, 1 / RATE)
    blows = np.zeros(t.size)
    for at in r.integers(0, t.size - 4000, 16):
        blows[at : at + 4000] += r.standard_normal(4000) * np.exp(-np.arange(4000) / 500)
    chords = sum(np.sin(2 * np.pi * tone * t) * ((2 * t) % 4 < n + 1) for n, tone in enumerate((262, 330, 392, 523)))
    return {
        "an empty room": 0.001 * white,
        "white": white,
        "pink": np.fft.irfft(spectrum / np.sqrt(f + 1), t.size),
        "hum": sum(np.sin(2 * np.pi * 60 * n * t) / n for n in (1, 2, 3, 5)) + 0.1 * white,
        "hammering": blows,
        "engine": np.sign(np.sin(2 * np.pi * 27 * t)) + np.fft.irfft(spectrum * (f < 400), t.size),
        "saw": np.fft.irfft(spectrum * (f > 1500), t.size) * (1 + np.sin(2 * np.pi * 0.4 * t)),
        "music": chords,
        "clicks": (r.random(t.size) < 0.0003) * 1.0,
    }


@pytest.mark.parametrize("language", ["en", "es"])
def test_nothing_is_made_out_of_noise(ears, language):
    some = {name: a_sound(0.4 * x / np.abs(x).max() if name != "an empty room" else x) for name, x in noises().items()}
    heard = ears.hear(list(some.values()), languages=[language] * len(some))
    assert {name: one.text for name, one in zip(some, heard, strict=True)} == dict.fromkeys(some, "")
    assert all(one.unheard and one.language is None for one in heard)


def test_a_long_recording_is_heard_around_its_noise(ears, clips, together):
    """Speech, forty seconds of a forgotten microphone, speech: the words of both, and the rest said to be unheard."""
    n = next(n for n, row in enumerate(CLIPS) if row["condition"] == "clean" and row["language"] == "en")
    noise = 0.05 * noises()["pink"] / np.abs(noises()["pink"]).max()
    (heard,) = ears.hear([a_sound(np.concatenate([clips[n].samples, *[noise] * 4, clips[n].samples]))], languages=["en"])
    length = clips[n].seconds
    assert [w for w in heard.words if w.second < length] and [w for w in heard.words if w.second > length + 38]
    assert sum(stretch.until - stretch.second for stretch in heard.unheard) > 10
    assert all(heard.text[w.start : w.end] == w.words for w in heard.words)


def test_two_people_at_once_block_nothing_and_leave_the_doubt_to_see(ears, clips, together):
    """A note with another voice over it: words or none, but never surer than the note alone."""
    (first,) = [n for n, row in enumerate(CLIPS) if row["condition"] == "clean" and row["language"] == "en"]
    other = next(sound.decode(HERE / row["file"]) for row in FORTY if row["condition"] == "clean" and row["language"] == "en")
    size = min(clips[first].samples.size, other.samples.size)
    (both,) = ears.hear([a_sound(clips[first].samples[:size] + other.samples[:size])], languages=["en"])
    assert second.score(both) < second.score(together[first])
    assert both.words or both.unheard
