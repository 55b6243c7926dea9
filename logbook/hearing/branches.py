"""What a decoded text left in the decoder's cache, and other ways of going on that branch off it.

Each way sees the prompt, the text before its start and its own tokens, and nothing else; one token of each goes in at a time.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import torch
from torch import Tensor


@dataclass(frozen=True)
class Kept:
    """Keys and values of one item's prompt and text, for each layer (1, H, columns, 64); its padding and where its text begins."""

    keys: tuple[Tensor, ...]
    values: tuple[Tensor, ...]
    pad: int
    prompt: int  # columns before the text, padding included


class Branches:
    """The tokens that were tried so far, as a cache of the decoder: every one of them stands behind the kept columns."""

    def __init__(self, kept: Kept):
        self.kept = kept
        self.keys, self.values = list(kept.keys), list(kept.values)
        self.chains: dict[tuple, list[int]] = {}  # (start, tokens) -> its columns

    def seen(self, nodes: Sequence[tuple[int, tuple[int, ...]]]) -> tuple[Tensor, Tensor]:
        """Positions (1, R), and which columns each of the new nodes sees (1, 1, R, columns with the new ones)."""
        old = self.keys[0].shape[2]
        seen = torch.zeros(len(nodes), old + len(nodes), dtype=torch.bool)
        for row, (start, tokens) in enumerate(nodes):
            chain = [*self.chains.get((start, tokens[:-1]), ()), old + row]
            self.chains[start, tokens] = chain
            seen[row, self.kept.pad : self.kept.prompt + start] = True
            seen[row, chain] = True
        before = self.kept.prompt - self.kept.pad - 1
        return torch.tensor([[before + start + len(tokens) for start, tokens in nodes]]), seen[None, None]

    def add(self, layer: int, k: Tensor, v: Tensor) -> tuple[Tensor, Tensor]:
        self.keys[layer] = torch.cat([self.keys[layer], k], 2)
        self.values[layer] = torch.cat([self.values[layer], v], 2)
        return self.keys[layer], self.values[layer]
