"""Whisper hears: windows to mel, encoder on the note's own length, one decoder, word times, doubts.

This is the only module of the package that joins torch and the released openai-whisper modules into an engine
(its neighbours `decoder`, `alignment`, `packed` are its parts). Words are never changed here.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

import numpy as np
import torch
import torch.nn.functional as F
import whisper
from whisper.tokenizer import get_tokenizer

from logbook.decoding.sound import RATE, Sound
from logbook.hearing import alignment, doubt, numbers_again, prompt, second, weights, windows
from logbook.hearing.cleaning import cleaned
from logbook.hearing.decoder import Decoder, Hypothesis, bfloat16_is_fast
from logbook.hearing.memory import Memory, joined
from logbook.hearing.windows import Window
from logbook.hearing.words import groups, half_heard, spoken, words_of
from logbook.mistake import Mistake
from logbook.transcript import Doubt, Transcript, Unheard, Word

LANGUAGES = ("en", "es")
# What Whisper also takes a short or muffled note for; English notes hardly ever come near these
TAKEN_FOR = {"en": ("en",), "es": ("es", "la", "it", "pt", "ca", "gl")}
BATCH, BATCH_SECONDS = 8, 96  # windows that are heard side by side, and what the encoder gets of them all: 1.2 MB a second
BEAMS = 4  # texts side by side where a doubtful note is heard again
SLOWER = 1.12  # and how much slower it is played then
TOKENS_A_SECOND, TOKENS_AT_LEAST = 7, 16  # a faster text is a runaway
PROMPT_ROOM = 200  # tokens of the prompt at most


class First(NamedTuple):
    """What one step without any prompt says: probability of no speech; share of `LANGUAGES` among all that Whisper knows."""

    no_speech: float
    known: float


@dataclass(frozen=True)
class Heard:
    """One window heard: text, words with seconds of the whole sound, doubts; `why` when it stands for nothing."""

    text: str
    words: tuple[Word, ...]
    doubt: Doubt
    why: str | None
    measures: doubt.Measures
    again: bool = False  # by the second hearing


def make(name: str = "base", threads: int | None = None) -> Whisper | Mistake:
    found = weights.find(name)
    return found if isinstance(found, Mistake) else Whisper(found, threads)


class Whisper:
    """The engine with its model loaded. `hear` is a pure function of the sounds."""

    name = "openai-whisper"
    in_stretches = True

    def __init__(self, found: weights.Weights, threads: int | None = None):
        torch.set_num_threads(threads or os.cpu_count() or 1)
        model = whisper.load_model(str(found.path), device="cpu")
        model.set_alignment_heads(whisper._ALIGNMENT_HEADS[found.name])
        self.weights = found.name
        self.model = model.eval()
        self.numbers = _lighten(model.encoder)
        self.decoder = Decoder(model)
        self.tokenizers = {code: get_tokenizer(True, language=code, task="transcribe") for code in LANGUAGES}
        self.language_tokens = [self.tokenizers["en"].to_language_token(code) for code in LANGUAGES]
        self.taken_for = [[self.tokenizers["en"].to_language_token(one) for one in TAKEN_FOR[code]] for code in LANGUAGES]
        self.all_languages = list(self.tokenizers["en"].all_language_tokens)
        self.barred, self.barred_first = self._barred()
        self.groups = [torch.tensor(sorted({token for one in some for token in one})) for some in
                       zip(*(groups(tokenizer) for tokenizer in self.tokenizers.values()), strict=True)]  # fmt: skip
        self.prompts = {code: self._prompt(code) for code in LANGUAGES}
        self.grammars = {code: numbers_again.grammar(self.tokenizers[code], code) for code in LANGUAGES}
        self.settings = {
            "length_step_seconds": windows.STEP,
            "prompt": True,
            "cleaned": True,
            "beams": 1,
            "no_speech_limit": doubt.NO_SPEECH,
            "encoder": str(self.numbers).removeprefix("torch."),
            "threads": torch.get_num_threads(),
        }

    @torch.inference_mode()
    def hear(self, sounds: Sequence[Sound], *, languages: Sequence[str | None]) -> list[Transcript]:
        cut = [windows.cut(sound.samples) for sound in sounds]
        every = sorted(((i, n) for i, some in enumerate(cut) for n in range(len(some))), key=lambda at: cut[at[0]][at[1]].fed)
        found = list(languages)
        steps: dict[tuple[int, int], torch.Tensor] = {}  # log probabilities of each window's first step
        heard: dict[tuple[int, int], Heard] = {}
        late = []  # groups with a window of a sound whose language is not known before its last window
        for group in windows.side_by_side(every, [cut[i][n].fed for i, n in every], BATCH, BATCH_SECONDS):
            encoded = self._encoded([cut[i][n] for i, n in group])
            memory = self._memory(encoded)
            steps |= zip(group, self.decoder.first_step(self.tokenizers["en"].sot, memory), strict=True)
            for i in {i for i, _ in group if not found[i]}:
                if all((i, n) in steps for n in range(len(cut[i]))):
                    found[i] = self._language([steps[i, n] for n in range(len(cut[i]))])
            if all(found[i] for i, _ in group):
                heard |= self._group(group, cut, memory, steps, found)
            else:
                late.append((group, encoded))  # a twelfth of its memory
        for group, encoded in late:
            heard |= self._group(group, cut, self._memory(encoded), steps, found)
        return [
            self._transcript(sound, found[i], [(cut[i][n], heard[i, n]) for n in range(len(cut[i]))])
            for i, sound in enumerate(sounds)
        ]

    @torch.inference_mode()
    def hear_again(self, sound: Sound, *, language: str | None) -> Transcript:
        """The better of two slower ways: several texts kept side by side, and the sound played slower and lower.

        All 30 seconds for the encoder was tried too: more words were wrong.
        """
        many = self._side_by_side(sound, language)
        slow = self._slower(sound, language)
        return slow if second.is_better(slow, many) else many

    def _side_by_side(self, sound: Sound, language: str | None) -> Transcript:
        cut = windows.cut(sound.samples)
        memories = [self.decoder.memory(self._encode([window], window.fed)) for window in cut]
        steps = [self.decoder.first_step(self.tokenizers["en"].sot, memory)[0] for memory in memories]
        language = language or self._language(steps)
        parts = []
        for window, memory, logs in zip(cut, memories, steps, strict=True):
            first = self._first(logs)
            (one,) = self._decoded([window], memory, [self.prompts[language]], [language], [first], BEAMS)
            if first.no_speech >= doubt.NO_SPEECH:
                one = replace(one, text="", words=(), why="no_speech")
            parts.append((window, one))
        heard = self._transcript(sound, language, parts)
        return replace(heard, settings=heard.settings | {"beams": BEAMS, "second": True})

    def _slower(self, sound: Sound, language: str | None) -> Transcript:
        """Heard at a lower speed and pitch; seconds are those of the sound as it came."""
        count = int(sound.samples.size * SLOWER)
        samples = np.interp(np.linspace(0, sound.samples.size - 1, count), np.arange(sound.samples.size), sound.samples)
        slow = replace(sound, samples=samples.astype(np.float32), seconds=count / RATE, whole_seconds=sound.whole_seconds * SLOWER)
        (heard,) = self.hear([slow], languages=[language])

        def back(second: float) -> float:
            return round(second / SLOWER, 2)

        words = tuple(replace(word, second=back(word.second), until=back(word.until)) for word in heard.words)
        unheard = tuple(replace(gap, second=back(gap.second), until=back(gap.until)) for gap in heard.unheard)
        return replace(heard, words=words, unheard=unheard, settings=heard.settings | {"slower": SLOWER, "second": True})

    # --- steps

    def _encoded(self, some: Sequence[Window]) -> list[torch.Tensor]:
        """The encoder's output of windows in order of their length, those of one length in one tensor."""
        return [self._encode([one for one in some if one.fed == fed], fed) for fed in dict.fromkeys(one.fed for one in some)]

    def _memory(self, encoded: Sequence[torch.Tensor]) -> Memory:
        return joined([self.decoder.memory(one) for one in encoded])

    def _encode(self, some: Sequence[Window], fed: int) -> torch.Tensor:
        """(B, 50 * fed, D): the encoder on exactly `fed` seconds, the note's own length and not Whisper's 30."""
        side = self.model.encoder
        mel = torch.stack([_mel(cleaned(window.samples), fed) for window in some]).to(self.numbers)
        x = F.gelu(side.conv2(F.gelu(side.conv1(mel)))).transpose(1, 2)
        x = (x + side.positional_embedding[: x.shape[1]]).to(self.numbers)
        for block in side.blocks:
            x = block(x)
        return side.ln_post(x).float()

    def _language(self, steps: Sequence[torch.Tensor]) -> str:
        """The likelier of the languages we know, over all windows, silent ones counting little."""
        total = torch.zeros(len(LANGUAGES))
        for logs in steps:
            speech = 1.0 - logs[self.tokenizers["en"].no_speech].exp()
            total += speech * torch.stack([logs[some].logsumexp(-1) for some in self.taken_for]).log_softmax(-1)
        return LANGUAGES[int(total.argmax())]

    def _group(self, group, cut, memory: Memory, steps, found: Sequence[str]) -> dict[tuple[int, int], Heard]:
        """Windows in order of their length, (sound, window), heard or found silent."""
        heard, spoken = {}, []
        for row, place in enumerate(group):
            first = self._first(steps[place])
            if first.no_speech >= doubt.NO_SPEECH:
                silence = doubt.Measures(first.no_speech, 0.0, 0.0, True)
                heard[place] = Heard("", (), Doubt(round(first.no_speech, 4), 0.0, 0.0), "no_speech", silence)
            else:
                spoken.append((row, place, first))
        if spoken:
            places = [place for _, place, _ in spoken]
            some = self._words(
                [cut[i][n] for i, n in places], memory.of([row for row, _, _ in spoken]), [found[i] for i, _ in places],
                [first for _, _, first in spoken],
            )  # fmt: skip
            heard |= zip(places, some, strict=True)
        return heard

    def _first(self, logs: torch.Tensor) -> First:
        """What the one step without prompt says, of its log probabilities (vocabulary)."""
        spoken = logs[self.all_languages].logsumexp(-1)
        return First(float(logs[self.tokenizers["en"].no_speech].exp()), float((logs[self.language_tokens].logsumexp(-1) - spoken).exp()))

    def _words(self, some, memory: Memory, languages: Sequence[str], firsts: Sequence[First]) -> list[Heard]:
        prompts = [self.prompts[code] for code in languages]
        heard = self._decoded(some, memory, prompts, languages, firsts)
        return [
            self._again(window, language, first) or one if doubt.may_hear_again(one.why, first.no_speech) else one
            for window, one, language, first in zip(some, heard, languages, firsts, strict=True)
        ]

    def _again(self, window: Window, language: str, first: First) -> Heard | None:
        """A stumbled hearing once more: all 30 seconds for the encoder, with the prompt and then without it."""
        memory = self.decoder.memory(self._encode([window], windows.WHOLE))
        bare = [*self.tokenizers[language].sot_sequence, self.tokenizers[language].no_timestamps]
        for before in (self.prompts[language], bare):
            (one,) = self._decoded([window], memory, [before], [language], [first])
            if doubt.stands_again(one.why, one.measures):
                return replace(one, again=True)
        return None

    def _decoded(
        self, some, memory: Memory, prompts, languages: Sequence[str], firsts: Sequence[First], beams: int = 1
    ) -> list[Heard]:
        limits = [int(TOKENS_A_SECOND * window.seconds) + TOKENS_AT_LEAST for window in some]
        end = self.tokenizers["en"].eot
        means = {"end": end, "barred": self.barred, "barred_first": self.barred_first, "groups": self.groups}
        if beams == 1:
            hypotheses = self.decoder.greedy(prompts, memory, limits, **means)
        else:
            hypotheses = [
                self._kept(self.decoder.beam(prompts[i], memory.of([i]), limits[i], width=beams, **means), prompts[i], memory.of([i]))
                for i in range(len(some))
            ]
        timed = {}
        for code in set(languages):  # the start sequence differs by language
            items = [i for i, c in enumerate(languages) if c == code and hypotheses[i].tokens]
            if not items:
                continue
            head = [*self.tokenizers[code].sot_sequence, self.tokenizers[code].no_timestamps]
            texts, lengths = [hypotheses[i].tokens for i in items], [some[i].seconds for i in items]
            for i, one in zip(items, alignment.times(self.decoder, memory.of(items), head, texts, lengths, end), strict=True):
                timed[i] = one
        return [
            self._heard(window, hypotheses[i], timed.get(i), languages[i], firsts[i], memory.of([i])) for i, window in enumerate(some)
        ]

    def _kept(self, found: Hypothesis, before: Sequence[int], memory: Memory) -> Hypothesis:
        return replace(found, kept=self.decoder.keep(before, found.tokens, memory))

    def _heard(self, window: Window, found: Hypothesis, timed, language: str, first: First, memory: Memory) -> Heard:
        text = self.tokenizers[language].decode(list(found.tokens)).strip()
        plain = sum(timed.logs) / len(timed.logs) if timed else 0.0
        measures = doubt.Measures(first.no_speech, found.mean_log, plain, found.ended, window.seconds, first.known)
        told = Doubt(round(first.no_speech, 4), round(found.mean_log, 4), round(doubt.compression(text), 4))
        why = doubt.why_unheard(text, language, measures)
        if why:
            return Heard("", (), told, why, measures)
        said = spoken(self.tokenizers[language], found.tokens)
        numbers = numbers_again.again(self.decoder, found, memory, said, self.grammars[language], self.barred)
        return Heard(text, words_of(self.tokenizers[language], found, timed, window.start, said, numbers), told, None, measures)

    def _transcript(self, sound: Sound, language: str, parts: Sequence[tuple[Window, Heard]]) -> Transcript:
        text, words, unheard = "", [], []
        for window, heard in parts:
            if heard.why:
                unheard.append(Unheard(round(window.start, 2), round(window.start + window.seconds, 2), heard.why))
                continue
            text = f"{text} {heard.text}" if text else heard.text
            offset = len(text) - len(heard.text)
            words += [replace(word, start=word.start + offset, end=word.end + offset) for word in heard.words]
        unheard = windows.run_together(windows.with_pauses(unheard, words, sound.seconds))
        if words and windows.stops_short(sound.samples):
            unheard.append(Unheard(round(sound.seconds, 2), round(sound.seconds, 2), "cut_off"))
            words[-1] = half_heard(words[-1])
        if sound.whole_seconds > sound.seconds + 1.0:
            unheard.append(Unheard(round(sound.seconds, 2), round(sound.whole_seconds, 2), "too_long"))
        spoken = [heard.doubt for _, heard in parts if not heard.why] or [heard.doubt for _, heard in parts]
        worst = Doubt(
            max(d.no_speech for d in spoken),
            min(d.mean_log_probability for d in spoken),
            max(d.compression for d in spoken),
        )
        again = [round(window.start, 2) for window, heard in parts if heard.again]
        settings = self.settings | ({"heard_again_from": again} if again else {})
        return Transcript(
            self.name, self.weights, settings, language if text else None, text, tuple(words), worst, tuple(unheard)
        )

    # --- made once

    def _barred(self) -> tuple[torch.Tensor, torch.Tensor]:
        """What is no word: -inf for symbols, special tokens and times (as the released decoder bars them)."""
        t = self.tokenizers["en"]
        barred = torch.zeros(self.model.dims.n_vocab)
        barred[list(t.non_speech_tokens)] = -torch.inf
        barred[t.eot + 1 :] = -torch.inf
        first = torch.zeros_like(barred)
        first[t.encode(" ") + [t.eot]] = -torch.inf
        return barred, first

    def _prompt(self, language: str) -> list[int]:
        t = self.tokenizers[language]
        before = t.encode(" " + prompt.PROMPTS[language])[-PROMPT_ROOM:]
        return [t.sot_prev, *before, *t.sot_sequence, t.no_timestamps]


def _lighten(encoder) -> torch.dtype:
    """The encoder's matrices in bfloat16 where the processor multiplies it: a third of the time, the same words."""
    if not bfloat16_is_fast():
        return torch.float32
    for module in encoder.modules():
        if isinstance(module, torch.nn.Linear | torch.nn.Conv1d):  # norms stay float32, as the released ones need
            module.bfloat16()
    return torch.bfloat16


def _mel(samples: np.ndarray, fed: int) -> torch.Tensor:
    padded = np.zeros(fed * RATE, np.float32)
    padded[: samples.size] = samples[: padded.size]
    return whisper.log_mel_spectrogram(padded)
