"""Sound files of every kind become samples; what is no sound becomes a sentence with a cure."""

import subprocess
import sys
from pathlib import Path

import av
import numpy as np
import pytest

from logbook import wording
from logbook.decoding import child, sound
from logbook.mistake import Mistake

CLIP = Path(__file__).parent / "cases" / "hearing" / "00.ogg"
TONE = (0.3 * np.sin(2 * np.pi * 440 * np.arange(4 * 48_000) / 48_000)).astype(np.float32)
KINDS = {
    "webm": ("webm", "libopus", "flt"), "ogg": ("ogg", "libopus", "flt"), "m4a": ("ipod", "aac", "fltp"),
    "mp4": ("mp4", "aac", "fltp"), "mp3": ("mp3", "mp3", "fltp"), "flac": ("flac", "flac", "s16"),
    "wav": ("wav", "pcm_s16le", "s16"),
}  # fmt: skip


def write(file: Path, kind: str, samples: np.ndarray = TONE) -> Path:
    container, codec, layout = KINDS[kind]
    with av.open(str(file), "w", format=container) as out:
        stream = out.add_stream(codec, rate=48_000)
        stream.layout = "mono"
        resampler = av.AudioResampler(format=layout, layout="mono", rate=48_000)
        frame = av.AudioFrame.from_ndarray(samples[None], format="flt", layout="mono")
        frame.rate = 48_000
        for part in (*resampler.resample(frame), *resampler.resample(None)):
            part.pts = None
            out.mux(stream.encode(part))
        out.mux(stream.encode(None))
    return file


def pitch(samples: np.ndarray) -> float:
    return float(np.abs(np.fft.rfft(samples)).argmax() * sound.RATE / samples.size)


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_that_a_phone_makes(tmp_path, kind):
    heard = sound.decode(write(tmp_path / f"note.{kind}", kind))
    assert heard.samples.dtype == np.float32
    assert heard.seconds == pytest.approx(4, abs=0.1)
    assert pitch(heard.samples[8000:48_000]) == pytest.approx(440, abs=2)
    assert not heard.broken


@pytest.mark.parametrize("kind", ["webm", "ogg", "mp3", "flac", "wav"])
def test_half_a_file_gives_the_half_that_is_there(tmp_path, kind):
    file = write(tmp_path / f"note.{kind}", kind)
    file.write_bytes(file.read_bytes()[: file.stat().st_size // 2])
    assert 1.0 < sound.decode(file).seconds < 3.0


def test_a_torn_packet_is_stepped_over(tmp_path):
    file = write(tmp_path / "note.mp3", "mp3")
    data = bytearray(file.read_bytes())
    data[len(data) // 2 : len(data) // 2 + 900] = bytes(range(256))[::-1] * 3 + bytes(132)
    file.write_bytes(data)
    assert sound.decode(file).seconds > 3.0


def test_a_long_recording_is_used_to_its_limit_and_its_whole_length_known(tmp_path):
    heard = sound.decode(write(tmp_path / "note.ogg", "ogg"), max_seconds=1.5)
    assert heard.seconds == pytest.approx(1.5)
    assert heard.whole_seconds == pytest.approx(4, abs=0.1)


@pytest.mark.parametrize(
    "name, content, key",
    [
        ("empty.ogg", b"", "hearing.empty-file"),
        ("text.wav", b"top down four, back twenty-four", "hearing.unreadable"),
        ("half-head.wav", b"RIFF\x24\x00\x00\x00WAVE", "hearing.unreadable"),
        ("list.m3u8", b"#EXTM3U\n#EXTINF:10,\nhttp://127.0.0.1:9/a.ts\n#EXT-X-ENDLIST\n", "hearing.unreadable"),
        ("list.ogg", b"ffconcat version 1.0\nfile '/etc/hostname'\n", "hearing.unreadable"),
    ],
)
def test_what_is_no_sound_is_told_with_its_cure(tmp_path, name, content, key):
    (tmp_path / name).write_bytes(content)
    told = sound.decode(tmp_path / name)
    assert isinstance(told, Mistake) and told.key == key
    for language in wording.LANGUAGES:
        assert name in wording.say(f"{told.key}.error", language, **told.values)
        assert wording.say(f"{told.key}.cure", language, **told.values)


def test_perfect_silence_is_a_microphone_that_was_off(tmp_path):
    told = sound.decode(write(tmp_path / "off.wav", "wav", np.zeros(48_000, np.float32)))
    assert told.key == "hearing.silent"


def test_no_such_file():
    assert sound.decode("nowhere.ogg").key == "decoding.no-file"


# --- the child


def task(tmp_path: Path, body: str) -> Path:
    """A module that the child imports, told by the path of Python."""
    (tmp_path / "stranger.py").write_text(f"import os, time\ndef read(file, put, **settings):\n    {body}\n")
    return tmp_path


@pytest.mark.parametrize(
    "body, key",
    [
        ("return len(b'x' * 10**9)", "decoding.too-big"),
        ("\n    while True: pass", "decoding.too-slow"),
        ("os.kill(os.getpid(), 11)", "decoding.crashed"),
        ("raise ValueError('torn')", "decoding.crashed"),
        ("os.write(os.open('left-behind', os.O_CREAT | os.O_WRONLY), b'x')", "decoding.crashed"),
        ("return {'files': [open(os.devnull) for _ in range(99)]}", "decoding.crashed"),
        ("os._exit(0)", "decoding.crashed"),
    ],
)
def test_a_decoder_that_misbehaves_is_an_answer(tmp_path, monkeypatch, body, key):
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(child, "PACKAGE_PARENT", f"{child.PACKAGE_PARENT}:{task(tmp_path, body)}")
    told = child.run("stranger:read", CLIP, child.Limits(cpu=1))
    assert isinstance(told, Mistake) and told.key == key


def test_bulk_and_values_come_back_whole(tmp_path, monkeypatch):
    body = "print('noise of a library'); put(b'ab'); put(b'c' * 300_000); return {'bytes': len(file.read()), **settings}"
    monkeypatch.setattr(child, "PACKAGE_PARENT", f"{child.PACKAGE_PARENT}:{task(tmp_path, body)}")
    answer = child.run("stranger:read", CLIP, word="said")
    assert answer.values == {"bytes": CLIP.stat().st_size, "word": "said"}
    assert answer.data == b"ab" + b"c" * 300_000


def test_the_parent_never_loads_the_decoder():
    code = "import sys, logbook.decoding.sound; sys.exit('av' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], cwd=child.PACKAGE_PARENT, check=False).returncode == 0
