"""The packaged weights (a CTranslate2 file in parts) read and rewritten as an openai-whisper checkpoint.

The file is a list of named arrays. Attention keeps query, key and value of one input fused in one matrix, and
a zero bias for the key that Whisper does not have; position tables and names differ. Layout from the published
source of CTranslate2 (`model.cc`, `transformers.py`), checked by hearing with the result.
"""

from __future__ import annotations

import mmap
import struct
from collections.abc import Mapping
from pathlib import Path

import numpy as np
import torch

ARRAY_TYPES = (np.float32, np.int8, np.int16, np.int32, np.float16)
AUDIO_CONTEXT, TEXT_CONTEXT, HEAD_WIDTH = 1500, 448, 64  # the same in all released Whisper models


class _Reader:
    def __init__(self, data):
        self.data, self.at = data, 0

    def number(self, form: str) -> int:
        (value,) = struct.unpack_from(form, self.data, self.at)
        self.at += struct.calcsize(form)
        return value

    def text(self) -> str:
        length = self.number("<H")
        self.at += length
        return bytes(self.data[self.at - length : self.at - 1]).decode()

    def array(self) -> np.ndarray:
        shape = [self.number("<I") for _ in range(self.number("<B"))]
        kind = np.dtype(ARRAY_TYPES[self.number("<B")])
        size = self.number("<I")
        self.at += size
        return np.frombuffer(self.data, kind, size // kind.itemsize, self.at - size).reshape(shape)


def arrays(data: bytes | mmap.mmap) -> dict[str, np.ndarray]:
    """All arrays of the file by name, aliases resolved."""
    reader = _Reader(data)
    reader.number("<I"), reader.text(), reader.number("<I")  # version of the file, name and revision of the model
    found = {}
    for _ in range(reader.number("<I")):
        name = reader.text()
        found[name] = reader.array()
    for _ in range(reader.number("<I")):
        alias = reader.text()
        found[alias] = found[reader.text()]
    return found


def checkpoint(packed: Mapping[str, np.ndarray]) -> dict:
    """`{"dims", "model_state_dict"}` as `whisper.load_model` reads it, float16."""
    state: dict[str, np.ndarray] = {}

    def linear(name: str) -> tuple[np.ndarray, np.ndarray | None]:
        weight = packed[f"{name}/weight"]
        if weight.dtype == np.int8:
            weight = weight.astype(np.float32) / packed[f"{name}/weight_scale"][:, None]
        return weight, packed.get(f"{name}/bias")

    def keep(name: str, weight: np.ndarray, bias: np.ndarray | None = None) -> None:
        state[f"{name}.weight"] = weight
        if bias is not None:
            state[f"{name}.bias"] = bias

    def norm(name: str, source: str) -> None:
        keep(name, packed[f"{source}/gamma"], packed[f"{source}/beta"])

    def attention(name: str, source: str, crossed: bool) -> None:
        if crossed:
            query, memory, out = (linear(f"{source}/linear_{i}") for i in range(3))
            key, value = zip(*(np.split(part, 2) for part in memory), strict=True)
        else:
            fused, out = (linear(f"{source}/linear_{i}") for i in range(2))
            query, key, value = zip(*(np.split(part, 3) for part in fused), strict=True)
        if key[1].any():
            raise ValueError(f"{source}: a bias of the key, which Whisper does not have")
        keep(f"{name}.query", *query)
        keep(f"{name}.key", key[0])
        keep(f"{name}.value", *value)
        keep(f"{name}.out", *out)

    layers = {}
    for side in ("encoder", "decoder"):
        layer = 0
        while f"{side}/layer_{layer}/ffn/linear_0/weight" in packed:
            source, name = f"{side}/layer_{layer}", f"{side}.blocks.{layer}"
            norm(f"{name}.attn_ln", f"{source}/self_attention/layer_norm")
            attention(f"{name}.attn", f"{source}/self_attention", crossed=False)
            if side == "decoder":
                norm(f"{name}.cross_attn_ln", f"{source}/attention/layer_norm")
                attention(f"{name}.cross_attn", f"{source}/attention", crossed=True)
            norm(f"{name}.mlp_ln", f"{source}/ffn/layer_norm")
            keep(f"{name}.mlp.0", *linear(f"{source}/ffn/linear_0"))
            keep(f"{name}.mlp.2", *linear(f"{source}/ffn/linear_1"))
            layer += 1
        layers[side] = layer
    keep("encoder.conv1", *linear("encoder/conv1"))
    keep("encoder.conv2", *linear("encoder/conv2"))
    state["encoder.positional_embedding"] = packed["encoder/position_encodings/encodings"]
    norm("encoder.ln_post", "encoder/layer_norm")
    keep("decoder.token_embedding", packed["decoder/embeddings/weight"])
    state["decoder.positional_embedding"] = packed["decoder/position_encodings/encodings"]
    norm("decoder.ln", "decoder/layer_norm")

    width, mels = state["encoder.conv1.weight"].shape[:2]
    dims = {
        "n_mels": mels, "n_audio_ctx": AUDIO_CONTEXT, "n_audio_state": width, "n_audio_head": width // HEAD_WIDTH,
        "n_audio_layer": layers["encoder"], "n_vocab": state["decoder.token_embedding.weight"].shape[0],
        "n_text_ctx": TEXT_CONTEXT, "n_text_state": width, "n_text_head": width // HEAD_WIDTH,
        "n_text_layer": layers["decoder"],
    }  # fmt: skip
    return {"dims": dims, "model_state_dict": {k: torch.from_numpy(v.astype(np.float16)) for k, v in state.items()}}


def convert(parts: list[Path], target: Path) -> None:
    """Join `parts` in order and write the checkpoint to `target` (the caller renames it into place)."""
    data = b"".join(part.read_bytes() for part in parts)
    torch.save(checkpoint(arrays(data)), target)
