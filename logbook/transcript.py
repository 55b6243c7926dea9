"""A transcript: the engine's words as they came, each with its seconds and its probability.

`text` is the words joined as they came, stripped at both ends, never normalised; `start` and `end` count
code points of `text`, end exclusive. `heard` of a word is its lowest token probability, 0 to 1, and low for a
word in which the recording ends.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True)
class Alternative:
    words: str
    heard: float
    over: int = 1  # how many words it stands for: "24" over the two words "20 4"


@dataclass(frozen=True)
class Word:
    words: str
    start: int
    end: int
    second: float
    until: float
    heard: float
    alternatives: tuple[Alternative, ...] = ()


@dataclass(frozen=True)
class Doubt:
    """Whisper's own doubts: no-speech probability, mean log probability, compression ratio of the text."""

    no_speech: float
    mean_log_probability: float
    compression: float


@dataclass(frozen=True)
class Unheard:
    second: float
    until: float
    why: str  # noise no_speech repetition echo language torn too_long cut_off; the last three of one moment or to the end


@dataclass(frozen=True)
class Transcript:
    engine: str
    weights: str
    settings: Mapping[str, object]
    language: str | None
    text: str
    words: tuple[Word, ...]
    doubt: Doubt
    unheard: tuple[Unheard, ...] = field(default=())


def to_json(transcript: Transcript | None) -> dict | None:
    if transcript is None:
        return None
    doubt = transcript.doubt
    return {
        "engine": transcript.engine,
        "weights": transcript.weights,
        "settings": dict(transcript.settings),
        "language": transcript.language,
        "text": transcript.text,
        "words": [
            {
                "words": word.words,
                "start": word.start,
                "end": word.end,
                "second": word.second,
                "until": word.until,
                "heard": word.heard,
                "alternatives": [{"words": a.words, "heard": a.heard} | ({"over": a.over} if a.over > 1 else {}) for a in word.alternatives],
            }
            for word in transcript.words
        ],
        "doubt": {
            "no_speech": doubt.no_speech,
            "mean_log_probability": doubt.mean_log_probability,
            "compression": doubt.compression,
        },
        "unheard": [{"second": u.second, "until": u.until, "why": u.why} for u in transcript.unheard],
    }


def from_json(doc: dict | None) -> Transcript | None:
    if doc is None:
        return None
    return Transcript(
        engine=doc["engine"],
        weights=doc["weights"],
        settings=doc["settings"],
        language=doc["language"],
        text=doc["text"],
        words=tuple(
            Word(
                w["words"], w["start"], w["end"], w["second"], w["until"], w["heard"],
                tuple(Alternative(a["words"], a["heard"], a.get("over", 1)) for a in w["alternatives"]),
            )
            for w in doc["words"]
        ),
        doubt=Doubt(**doc["doubt"]),
        unheard=tuple(Unheard(u["second"], u["until"], u["why"]) for u in doc["unheard"]),
    )  # fmt: skip


def misfit(transcript: Transcript) -> str | None:
    """What of a transcript that came from outside does not fit its shape; None where all of it does."""
    if not isinstance(transcript.text, str) or not isinstance(transcript.language, (str, type(None))):
        return "text, language"
    for word in transcript.words:
        places = (word.start, word.end)
        if not isinstance(word.words, str) or any(type(place) is not int for place in places) or not 0 <= word.start <= word.end <= len(transcript.text):
            return "words: start, end"
        if not all(_is_number(one) for one in (word.second, word.until, word.heard, *(a.heard for a in word.alternatives))):
            return "words: second, until, heard"
        if not all(isinstance(a.words, str) and type(a.over) is int and a.over > 0 for a in word.alternatives):
            return "words: alternatives"
    doubt = transcript.doubt
    if not all(_is_number(one) for one in (doubt.no_speech, doubt.mean_log_probability, doubt.compression)):
        return "doubt"
    if not all(_is_number(gap.second) and _is_number(gap.until) and isinstance(gap.why, str) for gap in transcript.unheard):
        return "unheard"
    return None


def _is_number(value: object) -> bool:
    return type(value) in (int, float) and abs(value) < 1e9
