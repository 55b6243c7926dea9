"""When each word was said: a teacher-forced pass over the kept encoder output, then dynamic time warping.

The same method as the released `whisper.timing` (attention of the alignment heads, normalised over tokens,
median of 7 frames, a path of least cost), on as many frames as the note has and for several notes at once.
The warping is numpy along anti-diagonals, because compiling it costs 1.7 s in each process.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import torch
from torch import Tensor

from logbook.hearing.decoder import Decoder
from logbook.hearing.memory import Memory

GROUP = 4  # notes of one pass: 16 at once need 2.6 GB
FRAMES_A_SECOND = 50
MEDIAN = 7


@dataclass(frozen=True)
class Timed:
    """Seconds of the start of each token and of the end of the last one (n + 1), and log probabilities (n)."""

    seconds: tuple[float, ...]
    logs: tuple[float, ...]


def times(
    decoder: Decoder, memory: Memory, head: Sequence[int], texts: Sequence[Sequence[int]], lengths: Sequence[float], end: int
) -> list[Timed]:  # fmt: skip
    """For each text (token ids) of `lengths[i]` seconds; `head` is the start sequence that comes before it."""
    found: dict[int, Timed] = {}
    frames = memory.frames
    alike = [[i for i in range(len(texts)) if frames[i] == length] for length in dict.fromkeys(frames)]
    for some in (some[at : at + GROUP] for some in alike for at in range(0, len(some), GROUP)):
        forced = [[*head, *texts[i], end] for i in some]
        logs, scores = decoder.follow(forced, memory.of(some))
        for row, item in enumerate(some):
            found[item] = _timed(logs[row], scores[row], len(head), texts[item], lengths[item])
    return [found[i] for i in range(len(texts))]


def _timed(logs: Tensor, scores: Tensor, head: int, text: Sequence[int], seconds: float) -> Timed:
    count = len(text)
    frames = max(1, min(scores.shape[-1], round(seconds * FRAMES_A_SECOND)))
    weights = scores[:, : head + count + 1, :frames].softmax(-1)
    spread, mean = torch.std_mean(weights, dim=-2, keepdim=True, unbiased=False)
    weights = _median((weights - mean) / spread)
    # the row before a token is the step that chose it
    path = _path(-weights.mean(0)[head - 1 : head + count].numpy())
    seconds_of = tuple(float(first) / FRAMES_A_SECOND for first in path)
    return Timed(seconds_of, tuple(logs[head - 1 : head - 1 + count].tolist()))


def _median(x: Tensor) -> Tensor:
    half = MEDIAN // 2
    if x.shape[-1] <= half:
        return x
    padded = torch.nn.functional.pad(x, (half, half), mode="reflect")
    return padded.unfold(-1, MEDIAN, 1).median(-1).values


def _path(cost: np.ndarray) -> list[int]:
    """The first column of each row on the path of least cost from corner to corner (rows tokens, columns frames)."""
    rows, columns = cost.shape
    total = np.full((rows + 1, columns + 1), np.inf, np.float32)
    total[0, 0] = 0
    for diagonal in range(2, rows + columns + 1):
        i = np.arange(max(1, diagonal - columns), min(rows, diagonal - 1) + 1)
        j = diagonal - i
        before = np.minimum(np.minimum(total[i - 1, j - 1], total[i - 1, j]), total[i, j - 1])
        total[i, j] = cost[i - 1, j - 1] + before
    first = [0] * rows
    i, j = rows, columns
    while i > 0 and j > 0:
        first[i - 1] = j - 1
        step = np.argmin((total[i - 1, j - 1], total[i - 1, j], total[i, j - 1]))
        i, j = i - (step != 2), j - (step != 1)
    return first
