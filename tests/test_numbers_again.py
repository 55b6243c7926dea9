"""Numbers weighed once more: what may stand in a number's place, and that trying it is what the decoder itself would say."""

import json
from pathlib import Path

import pytest

from logbook.decoding import sound
from logbook.hearing import windows
from logbook.transcript import Alternative, Doubt, Transcript, Word, from_json, misfit, to_json

HERE = Path(__file__).parent / "cases" / "hearing"
CLIPS = json.loads((HERE / "clips.json").read_text(encoding="utf-8"))


@pytest.mark.parametrize(
    "word, language, figures",
    [
        ("20,", "en", "20"), ("seven", "en", "7"), ("Twenty-four.", "en", "24"), ("8th", "en", "8th"), ("5-8,", "en", "5-8"), ("24x18", "en", "24x18"),
        ("181A-P", "en", None), ("to", "en", None), ("now", "en", None), ("ocho", "es", "8"), ("treinta", "es", "30"), ("un", "es", None), ("y", "es", None),
    ],
)  # fmt: skip
def test_a_word_that_is_a_number(word, language, figures):
    pytest.importorskip("whisper")
    from logbook.hearing.words import number

    assert number(word, language) == figures


def test_an_alternative_that_stands_for_two_words_is_kept_as_it_was():
    word = Word("20", 0, 2, 0.0, 0.5, 0.5, (Alternative("24", 0.4, 2), Alternative("30", 0.1)))
    heard = Transcript("x", "y", {}, "en", "20 for", (word, Word("for", 3, 6, 0.5, 1.0, 0.4)), Doubt(0.0, 0.0, 1.0))
    told = to_json(heard)
    assert told["words"][0]["alternatives"] == [{"words": "24", "heard": 0.4, "over": 2}, {"words": "30", "heard": 0.1}]
    assert from_json(json.loads(json.dumps(told))) == heard
    told["words"][0]["alternatives"][0]["over"] = 0
    assert misfit(from_json(told)) == "words: alternatives"


@pytest.fixture(scope="module")
def decoded(ears):
    """A clip's memory, prompt and hypothesis, heard beside a longer prompt so that its own is padded."""
    import torch

    row = max((row for row in CLIPS if row["condition"] == "clean" and row["language"] == "en"), key=lambda row: len(row["text"]))
    (window,) = windows.cut(sound.decode(HERE / row["file"]).samples)
    with torch.inference_mode():
        memory = ears.decoder.memory(ears._encode([window, window], window.fed))
        means = {"end": ears.tokenizers["en"].eot, "barred": ears.barred, "barred_first": ears.barred_first, "groups": ears.groups}
        found = ears.decoder.greedy([ears.prompts["en"], [ears.prompts["en"][0], 50, 60, 70, *ears.prompts["en"][1:]]], memory, [60, 60], **means)[0]
    return memory.of([0]), found


def test_the_text_as_heard_weighs_what_it_weighed(ears, decoded):
    import torch

    from logbook.hearing.branches import Branches

    memory, found = decoded
    assert len(found.tokens) > 8
    with torch.inference_mode():
        for kept in (found.kept, ears.decoder.keep(ears.prompts["en"], found.tokens, memory)):
            branches = Branches(kept)
            for length in range(1, 5):  # two ways at once, one token of each at a time
                nodes = [(start, found.tokens[start : start + length]) for start in (0, 3)]
                logs = ears.decoder.branch(branches, memory, nodes, ears.barred)
                for row, (start, _) in enumerate(nodes):
                    assert float(logs[row, found.tokens[start + length]]) == pytest.approx(found.logs[start + length], abs=0.05)


def test_every_number_word_is_weighed_and_none_is_offered_as_itself(ears, decoded):
    import torch

    from logbook.hearing import numbers_again
    from logbook.hearing.words import number, spoken

    memory, found = decoded
    said = spoken(ears.tokenizers["en"], found.tokens)
    with torch.inference_mode():
        offered = numbers_again.again(ears.decoder, found, memory, said, ears.grammars["en"], ears.barred)
    assert set(offered) == {n for n, one in enumerate(said) if number(one.text, "en") is not None} != set()
    for n, others in offered.items():
        assert all(one.words != number(said[n].text, "en") and numbers_again.AT_LEAST <= one.heard < 1 for one in others)
        assert all(1 <= one.over <= numbers_again.WORDS for one in others)
        assert sum(one.heard for one in others) < 1
