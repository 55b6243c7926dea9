"""One decoder over the released Whisper modules: many notes at once give the same tokens as one by one.

openai-whisper's own decoder knows no padding, so prompts of different length cannot stand in one batch. Here
prompts are padded on the left, each item counts its own positions, and padded keys are masked. After the
prompt one token at a time goes in: several tokens after a cache are silently wrong in the released modules.

Shapes: B items of any length, T encoder frames, L tokens, H heads of width 64, D = 64 H.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import torch
import torch.nn.functional as F
from torch import Tensor

from logbook.hearing.branches import Branches, Kept
from logbook.hearing.memory import Memory

KEPT = 5  # candidates of a step that are kept for alternatives
KEPT_OF_GROUP = 6  # and of each group of tokens that are asked for by name, however unlikely


@dataclass(frozen=True)
class Hypothesis:
    """Tokens without the end token, their log probabilities, and the best candidates at each of their steps."""

    tokens: tuple[int, ...]
    logs: tuple[float, ...]
    candidates: tuple[tuple[tuple[int, float], ...], ...]
    ended: bool  # False: stopped by the limit, as runaways are
    kept: Kept | None = field(default=None, compare=False, repr=False)

    @property
    def mean_log(self) -> float:
        return sum(self.logs) / len(self.logs) if self.logs else 0.0


class Decoder:
    """The text half of a Whisper model, which it takes over. Pure: no call changes anything but its own cache."""

    def __init__(self, model):
        side = model.decoder
        self.heads = model.dims.n_text_head
        self.context = model.dims.n_text_ctx
        self.embedding, self.dtype = side.token_embedding.weight, side.token_embedding.weight.dtype
        self.positions = side.positional_embedding
        self.norm = side.ln
        self.packed = packed(self.embedding)
        if self.packed is not None and torch.equal(self.embedding.half().float(), self.embedding):
            self.embedding = self.embedding.half()  # as they were released: only looked up, half the room
            side.token_embedding = None
        self.blocks = list(side.blocks)
        self.fused = []  # query, key and value of one input in one product: fewer, larger steps
        for block in self.blocks:
            own = block.attn
            weight = torch.cat([own.query.weight, own.key.weight, own.value.weight])
            bias = torch.cat([own.query.bias, torch.zeros_like(own.query.bias), own.value.bias])
            self.fused.append((weight, bias))
            own.query = own.key = own.value = None
        self.watched = {}  # layer -> heads whose attention follows the sound
        for layer, head in model.alignment_heads.indices().T.tolist():
            self.watched.setdefault(layer, []).append(head)

    def memory(self, encoded: Tensor) -> Memory:
        """`encoded` (B, T, D)."""
        layers = []
        for block in self.blocks:
            cross = block.cross_attn
            layers.append((self._split(cross.key(encoded)), self._split(cross.value(encoded))))
        return Memory((tuple(layers),))

    def first_step(self, token: int, memory: Memory) -> Tensor:
        """Log probabilities (B, vocabulary) after the single `token`, without any prompt."""
        items = len(memory.frames)
        tokens = torch.full((items, 1), token)
        state, _ = self._forward(tokens, torch.zeros_like(tokens), memory, None, None)
        return self._logits(state[:, -1]).log_softmax(-1)

    def greedy(
        self,
        prompts: Sequence[Sequence[int]],
        memory: Memory,
        limits: Sequence[int],
        *,
        end: int,
        barred: Tensor,
        barred_first: Tensor,
        favour=None,
        groups: Sequence[Tensor] = (),
    ) -> list[Hypothesis]:
        """The most likely tokens after each prompt, at most `limits[i]` of them.

        `barred` (vocabulary) is added to the logits of every step, `barred_first` to the first. `favour`, when
        given, is called with the tokens so far of one item and gives (token ids, bonus) to add to its logits.
        The likeliest tokens of each of the `groups` are kept among the candidates of a step.
        """
        items, longest = len(prompts), max(map(len, prompts))
        pads = torch.tensor([longest - len(prompt) for prompt in prompts])
        tokens = torch.tensor([[end] * (longest - len(p)) + list(p) for p in prompts])
        columns = torch.arange(longest)
        positions = (columns[None] - pads[:, None]).clamp(min=0)
        real = columns[None] >= pads[:, None]  # (B, L)
        seen = torch.ones(longest, longest, dtype=torch.bool).tril()[None] & real[:, None]
        seen = seen | torch.eye(longest, dtype=torch.bool)[None]  # a padded place sees itself, else NaN
        room = min(max(limits), self.context - longest)
        cache = _Cache(len(self.blocks), items, self.heads, longest + room, self.dtype)
        state, _ = self._forward(tokens, positions, memory, cache, seen[:, None])
        logits = self._logits(state[:, -1])
        keys = torch.cat([real, torch.ones(items, room, dtype=torch.bool)], 1)[:, None, None]

        found: list[list] = [[] for _ in range(items)]  # (token, log probability, candidates)
        ended = [False] * items
        kept: list[Kept | None] = [None] * items
        live = list(range(items))
        for count in range(room):
            scores = logits + barred + (barred_first if count == 0 else 0.0)
            logs = scores.log_softmax(-1)  # before favours: what the ears said
            if favour is not None:
                for row, item in enumerate(live):
                    wanted, bonus = favour([step[0] for step in found[item]])
                    scores[row, wanted] += bonus
            chosen = scores.argmax(-1)
            top = _candidates(logs, groups)
            going = []
            for row, item in enumerate(live):
                token = int(chosen[row])
                if token == end:
                    ended[item] = True
                else:
                    found[item].append((token, float(logs[row, token]), top[row]))
                    if len(found[item]) < limits[item] and count < room - 1:
                        going.append(row)
                        continue
                kept[item] = cache.row(row, int(pads[row]), longest)
            if not going:
                break
            if len(going) < len(live):
                index = torch.tensor(going)
                live = [live[row] for row in going]
                chosen, memory, keys, pads = chosen[index], memory.of(going), keys[index], pads[index]
                cache.keep(index)
            place = longest + count
            state, _ = self._forward(
                chosen[:, None], (place - pads)[:, None], memory, cache, keys[..., : place + 1]
            )  # fmt: skip
            logits = self._logits(state[:, -1])
        return [
            Hypothesis(tuple(s[0] for s in steps), tuple(s[1] for s in steps), tuple(s[2] for s in steps), over, left)
            for steps, over, left in zip(found, ended, kept, strict=True)
        ]

    def beam(
        self, prompt: Sequence[int], memory: Memory, limit: int, *, width: int, end: int, barred: Tensor, barred_first: Tensor, groups=()
    ) -> Hypothesis:
        """The text of the best mean log probability among `width` kept side by side. `memory` is of one item."""
        longest = len(prompt)
        room = min(limit, self.context - longest)
        cache = _Cache(len(self.blocks), 1, self.heads, longest + room, self.dtype)
        seen = torch.ones(longest, longest, dtype=torch.bool).tril()[None, None]
        state, _ = self._forward(torch.tensor([list(prompt)]), torch.arange(longest)[None], memory, cache, seen)
        logits = self._logits(state[:, -1])
        live: list[tuple[float, tuple]] = [(0.0, ())]  # (sum of log probabilities, steps as in `greedy`)
        over: list[tuple[float, tuple, bool]] = []
        for count in range(room):
            logs = (logits + barred + (barred_first if count == 0 else 0.0)).log_softmax(-1)
            best = logs.topk(width + 1)
            told = _candidates(logs, groups)
            ways = [
                (total + log, row, token)
                for row, (total, _) in enumerate(live)
                for token, log in zip(best.indices[row].tolist(), best.values[row].tolist(), strict=True)
            ]
            going = []
            for total, row, token in sorted(ways, reverse=True):
                steps = live[row][1]
                if token == end:
                    over.append((total / (len(steps) + 1), steps, True))
                elif len(going) < width:
                    going.append((total, row, (*steps, (token, float(logs[row, token]), told[row]))))
                if len(going) == width:
                    break
            live = [(total, steps) for total, _, steps in going]
            if len(over) >= width or count == room - 1:
                break
            rows = torch.tensor([row for _, row, _ in going])
            cache.keep(rows)
            if count == 0:
                memory = memory.of([0] * width)
            tokens = torch.tensor([[steps[-1][0]] for _, steps in live])
            state, _ = self._forward(tokens, torch.full_like(tokens, longest + count), memory, cache, None)
            logits = self._logits(state[:, -1])
        over = over or [(total / len(steps), steps, False) for total, steps in live]
        _, steps, ended = max(over, key=lambda one: one[0])
        return Hypothesis(tuple(s[0] for s in steps), tuple(s[1] for s in steps), tuple(s[2] for s in steps), ended)

    def follow(self, texts: Sequence[Sequence[int]], memory: Memory) -> tuple[list[Tensor], Tensor]:
        """Teacher-forced: of each text its tokens' log probabilities but the first's (L - 1), and the watched heads'
        scores (B, heads, longest L, T)."""
        longest = max(map(len, texts))
        tokens = torch.tensor([list(text) + [0] * (longest - len(text)) for text in texts])
        positions = torch.arange(longest).expand(len(texts), -1)
        seen = torch.ones(longest, longest, dtype=torch.bool).tril()[None, None]  # padding is on the right: unseen
        state, watched = self._forward(tokens, positions, memory, None, seen, watch=True)
        logs = []
        for row, text in zip(state, texts, strict=True):  # one by one: of four texts the whole vocabulary is 170 MB
            said = torch.tensor(list(text[1:]))[:, None]
            logs.append(self._logits(row[: len(text) - 1]).log_softmax(-1).gather(1, said)[:, 0])
        return logs, torch.cat(watched, 1)

    def keep(self, prompt: Sequence[int], text: Sequence[int], memory: Memory) -> Kept:
        """What `text` after `prompt` leaves in the cache, read in one go from its beginning. `memory` is of one item."""
        tokens = [*prompt, *text]
        cache = _Cache(len(self.blocks), 1, self.heads, len(tokens), self.dtype)
        seen = torch.ones(len(tokens), len(tokens), dtype=torch.bool).tril()[None, None]
        self._forward(torch.tensor([tokens]), torch.arange(len(tokens))[None], memory, cache, seen)
        return cache.row(0, 0, len(prompt))

    def branch(self, branches: Branches, memory: Memory, nodes: Sequence[tuple[int, tuple[int, ...]]], barred: Tensor) -> Tensor:
        """Log probabilities (R, vocabulary) after the last token of each node: (place in the text where it branches off,
        its tokens, of which all but the last went in before). `memory` is of one item."""
        positions, seen = branches.seen(nodes)
        state, _ = self._forward(torch.tensor([[tokens[-1] for _, tokens in nodes]]), positions, memory, branches, seen)
        return (self._logits(state[0]) + barred).log_softmax(-1)

    # --- the forward pass

    def _split(self, x: Tensor) -> Tensor:
        return x.view(*x.shape[:2], self.heads, -1).transpose(1, 2)

    def _forward(self, tokens, positions, memory, cache, seen, watch=False):
        x = F.embedding(tokens, self.embedding).to(self.dtype) + self.positions[positions]
        watched = []
        for layer, block in enumerate(self.blocks):
            q, k, v = (self._split(part) for part in F.linear(block.attn_ln(x), *self.fused[layer]).chunk(3, -1))
            if cache is not None:
                k, v = cache.add(layer, k, v)
            attended = F.scaled_dot_product_attention(q, k, v, attn_mask=seen)
            x = x + block.attn.out(attended.transpose(1, 2).flatten(2))
            q = self._split(block.cross_attn.query(block.cross_attn_ln(x)))
            if watch and layer in self.watched:
                watched.append(memory.scores(layer, q, self.watched[layer]))
            attended = memory.attended(layer, q)
            x = x + block.cross_attn.out(attended.transpose(1, 2).flatten(2))
            x = x + block.mlp(block.mlp_ln(x))
        return self.norm(x), watched

    def _logits(self, state: Tensor) -> Tensor:
        """(…, vocabulary) float32. The matrix of the vocabulary is half of what a step reads: int8 where it can."""
        if self.packed is None:
            return F.linear(state, self.embedding).float()
        weight, scale = self.packed
        rows = state.reshape(-1, state.shape[-1]).bfloat16()
        return torch._weight_int8pack_mm(rows, weight, scale).float().view(*state.shape[:-1], -1)


def _candidates(logs: Tensor, groups: Sequence[Tensor]) -> list[tuple[tuple[int, float], ...]]:
    """For each row the likeliest tokens, and the likeliest of each group, as (token, log probability)."""
    top = logs.topk(KEPT)
    rows = [dict(zip(some, values, strict=True)) for some, values in zip(top.indices.tolist(), top.values.tolist(), strict=True)]
    for group in groups:
        best = logs[:, group].topk(min(KEPT_OF_GROUP, len(group)))
        for row, (places, values) in enumerate(zip(best.indices, best.values, strict=True)):
            rows[row].update(zip(group[places].tolist(), values.tolist(), strict=True))
    return [tuple(row.items()) for row in rows]


def packed(weight: Tensor) -> tuple[Tensor, Tensor] | None:
    """`weight` as int8 with one scale a row, or None where the processor has no bfloat16 to go with it.

    Only the weight is rounded, each row by itself, and never the state: rounding that depends on the whole
    batch would make a batch hear otherwise than one note alone.
    """
    if not bfloat16_is_fast():
        return None
    scale = weight.abs().amax(1) / 127
    return (weight / scale[:, None]).round().to(torch.int8), scale.bfloat16()


def bfloat16_is_fast() -> bool:
    return torch.cpu._is_avx512_bf16_supported()


class _Cache:
    """Keys and values of the tokens so far, in one block that does not grow."""

    def __init__(self, layers: int, items: int, heads: int, room: int, dtype):
        shape = (items, heads, room, 64)
        self.keys = [torch.empty(shape, dtype=dtype) for _ in range(layers)]
        self.values = [torch.empty(shape, dtype=dtype) for _ in range(layers)]
        self.filled = [0] * layers

    def add(self, layer: int, k: Tensor, v: Tensor) -> tuple[Tensor, Tensor]:
        start = self.filled[layer]
        end = self.filled[layer] = start + k.shape[2]
        self.keys[layer][:, :, start:end] = k
        self.values[layer][:, :, start:end] = v
        return self.keys[layer][:, :, :end], self.values[layer][:, :, :end]

    def row(self, row: int, pad: int, prompt: int) -> Kept:
        """One item's own copy: the block it stands in goes on without it."""
        keys, values = ([part[row : row + 1, :, :end].clone() for part, end in zip(some, self.filled, strict=True)] for some in (self.keys, self.values))
        return Kept(tuple(keys), tuple(values), pad, prompt)

    def keep(self, rows: Tensor) -> None:
        self.keys = [k[rows] for k in self.keys]
        self.values = [v[rows] for v in self.values]
