"""What the decoder looks up of the encoder's output.

Notes of different length are decoded side by side, each looking at its own sound: no one's is padded, since a padded
encoder output changes words. So the weights, which are most of what a step reads, are read once for all of them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import torch
import torch.nn.functional as F
from torch import Tensor

Part = tuple[tuple[Tensor, Tensor], ...]  # keys and values of each layer, (B, H, T, 64), of notes of one length


@dataclass(frozen=True)
class Memory:
    """Keys and values of the items in order: parts of one length each, one behind the other."""

    parts: tuple[Part, ...]

    @property
    def frames(self) -> tuple[int, ...]:
        """Encoder frames of each item."""
        return tuple(part[0][0].shape[2] for part in self.parts for _ in range(part[0][0].shape[0]))

    def of(self, items: Sequence[int]) -> Memory:
        """Of these items, in this order. Neighbours are looked at where they lie: a copy of eight notes is 150 MB."""
        where = [(n, row) for n, part in enumerate(self.parts) for row in range(part[0][0].shape[0])]
        runs: list[tuple[int, list[int]]] = []  # (part, its rows)
        for n, row in (where[item] for item in items):
            if runs and runs[-1][0] == n:
                runs[-1][1].append(row)
            else:
                runs.append((n, [row]))
        return Memory(tuple(_rows(self.parts[n], rows) for n, rows in runs))

    def attended(self, layer: int, q: Tensor) -> Tensor:
        """What the queries (B, H, L, 64) find, each in its own item."""
        found, at = [], 0
        for part in self.parts:
            k, v = part[layer]
            found.append(F.scaled_dot_product_attention(q[at : at + k.shape[0]], k, v))
            at += k.shape[0]
        return found[0] if len(found) == 1 else torch.cat(found)

    def scores(self, layer: int, q: Tensor, heads: Sequence[int]) -> Tensor:
        """(B, heads, L, T) before the softmax; only of items of one length."""
        ((k, _),) = (part[layer] for part in self.parts)
        return q[:, heads] @ k[:, heads].transpose(-1, -2) * q.shape[-1] ** -0.5


def joined(memories: Sequence[Memory]) -> Memory:
    return Memory(tuple(part for memory in memories for part in memory.parts))


def _rows(part: Part, rows: list[int]) -> Part:
    neighbours = rows == list(range(rows[0], rows[0] + len(rows)))
    index = slice(rows[0], rows[0] + len(rows)) if neighbours else torch.tensor(rows)
    return tuple((k[index], v[index]) for k, v in part)
