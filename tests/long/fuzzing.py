"""Coverage-guided fuzzing of everything that reads what strangers made (Atheris, Apache-2.0; `pip install atheris==3.0.0`).

    python tests/long/fuzzing.py TARGET [libFuzzer options]       for instance: reader -max_total_time=300

Targets: sound picture stripping reader jobfile schedule transcript fact pressed fields verify. Seeds are made of the cases
of the tests, in a new folder; what was found is printed with its base64. A crash is anything but an answer: an exception
that the reading code does not promise, or a promise about the answer that does not hold. Decoders run in the fuzzer as they
do in their child: a signal there is one failed note, and still told here. Every crash found becomes a case of the suite.
"""

from __future__ import annotations

import io
import json
import sys
import tempfile
import tomllib
from pathlib import Path

import atheris

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE.parents[1]), str(HERE.parent)]
CASES = HERE.parent / "cases"
CLIPS = CASES / "hearing"

with atheris.instrument_imports(include=["logbook"], enable_loader_override=False):
    from logbook import facts, intake, job, reading, said, schedule, transcript
    from logbook.decoding import picture_reading, samples
    from logbook.handover import stripping
    from logbook.handover.verify import verify as examine
    from logbook.job import reading as job_reading
    from logbook.joining.values import read_value
    from logbook.mistake import Mistake
    from logbook.web import pressing


def sound(data: bytes) -> None:
    if intake.kind(data[: intake.HEAD]) not in intake.SOUND_KINDS:
        return
    came = []
    told = samples.read(io.BytesIO(data), came.append, max_seconds=20)
    assert isinstance(told, Mistake) or sum(map(len, came)) <= 20 * 16_000 * 4


def picture(data: bytes) -> None:
    if intake.kind(data[: intake.HEAD]) not in intake.PICTURE_KINDS:
        return
    told = picture_reading.read(io.BytesIO(data), lambda body: None, max_pixels=200_000, max_ratio=20, thumbnail=64)
    assert isinstance(told, Mistake) or json.dumps(told)


def strip(data: bytes) -> None:
    bare = stripping.stripped(data)
    assert bare is None or len(bare) < len(data) + 64


def reader(data: bytes) -> None:
    text = data[1:].decode("utf-8", "replace")
    read = reading.read(text, language=(None, "en", "es")[(data[0] if data else 0) % 3])
    for entry in read.fittings:
        for fact in entry.facts:
            if fact.words is not None:
                assert text[fact.start : fact.end] == fact.words, fact
    json.dumps(said.reading_to_json(read))


def jobfile(data: bytes) -> None:
    read = job_reading.parse(data.decode("utf-8", "replace"))
    assert isinstance(read, job.Job) or (read and all(isinstance(one, Mistake) for one in read))


def plan(data: bytes) -> None:
    rows, mistakes = schedule.read(data.decode("utf-8", "replace"), "schedule.csv")
    schedule.revision("A", None, rows)
    assert rows or mistakes or not data.strip()


def heard(data: bytes) -> None:
    try:
        doc = json.loads(data)
    except (ValueError, RecursionError):
        return
    try:
        came = transcript.from_json(doc)
    except (KeyError, TypeError, ValueError, AttributeError):
        return
    if came is not None and transcript.misfit(came) is None:
        reading.read(came.text, transcript=came)


def fact(data: bytes) -> None:
    try:
        doc = json.loads(data)
    except (ValueError, RecursionError):
        return
    if not isinstance(doc, dict):
        return
    for name, value in doc.items():
        read = read_value(name, value)
        if not isinstance(read, Mistake) and name in facts.BY_NAME:
            json.dumps(facts.to_json(name, read), allow_nan=False)


def pressed(data: bytes) -> None:
    fields = dict(part.partition("=")[::2] for part in data.decode("utf-8", "replace").split("&"))
    read = pressing.value(fields)
    if not isinstance(read, Mistake):
        read_value(fields.get("name", ""), read)


def fields(data: bytes) -> None:
    given = dict(part.partition("=")[::2] for part in data.decode("utf-8", "replace").split("&"))
    read = intake.from_form(given, "installer-1")
    assert isinstance(read, (Mistake, intake.Incoming))


def verify(data: bytes) -> None:
    with tempfile.NamedTemporaryFile(suffix=".zip") as file:
        file.write(data)
        file.flush()
        examine(Path(file.name))


def _words() -> list[bytes]:
    text = "\n".join(path.read_text(encoding="utf-8") for path in sorted((CASES / "reading").glob("*.txt")))
    lines = [line.split("=>")[0].strip() for line in text.splitlines() if line.strip() and not line.startswith("#")]
    return [bytes([number % 3]) + line.encode() for number, line in enumerate(lines[::4])]


def _wrong_jobs() -> list[bytes]:
    from logbook.job import template

    told = tomllib.loads((CASES / "job" / "wrong.toml").read_text(encoding="utf-8"))
    found = [one for group in told.values() if isinstance(group, list) for case in group for one in case.values() if isinstance(one, str) and "=" in one]
    return [template("abcdefgh", "A job").encode(), (HERE.parents[1] / "logbook/demo/job.toml").read_bytes(), *(one.encode() for one in found)]


def _pictures() -> list[bytes]:
    from PIL import Image

    made = []
    exif = Image.Exif()
    exif[0x010F], exif[0x0112] = "Maker", 6
    exif.get_ifd(0x8769)[0x9003] = "2026:10:14 10:00:00"
    exif.get_ifd(0x8825).update({1: "N", 2: (41.0, 30.0, 1.0), 3: "W", 4: (87.0, 1.0, 2.0)})
    for mode, kind in (("RGB", "JPEG"), ("L", "JPEG"), ("CMYK", "JPEG"), ("P", "PNG"), ("RGBA", "PNG"), ("I;16", "PNG"), ("RGB", "WEBP")):
        out = io.BytesIO()
        Image.new(mode, (24, 20)).save(out, kind, exif=exif)
        made.append(out.getvalue())
    return made


def _sounds() -> list[bytes]:
    import av
    import numpy as np

    made = [path.read_bytes() for path in sorted(CLIPS.glob("*.ogg"), key=lambda path: path.stat().st_size)[:2]]
    wave = (8000 * np.sin(np.arange(8000) / 9)).astype(np.int16).reshape(1, -1)
    for kind, codec in (("wav", "pcm_s16le"), ("flac", "flac"), ("webm", "libopus"), ("mp4", "aac"), ("mp3", "mp3"), ("adts", "aac")):
        out = io.BytesIO()
        with av.open(out, "w", format=kind) as container:
            stream = container.add_stream(codec, rate=48_000, layout="mono")
            frame = av.AudioFrame.from_ndarray(wave, format="s16", layout="mono")
            frame.sample_rate = 48_000
            for packet in _coded(stream, frame):
                container.mux(packet)
        made.append(out.getvalue())
    return made


def _coded(stream, frame):
    import av

    graph = av.AudioResampler(format=stream.codec_context.format, layout="mono", rate=48_000, frame_size=stream.codec_context.frame_size or None)
    for piece in (*graph.resample(frame), *graph.resample(None)):
        yield from stream.encode(piece)
    yield from stream.encode(None)


def _package() -> list[bytes]:
    import paper_days

    from logbook.paper.package import build

    with tempfile.TemporaryDirectory() as place:
        (Path(place) / "spool").mkdir()
        with open(Path(place) / "out.zip", "w+b") as file:
            build(file, paper_days.closeout(Path(place)), Path(place) / "spool")
        return [(Path(place) / "out.zip").read_bytes()]


def _transcripts() -> list[bytes]:
    found = []
    for path in sorted((CASES / "contract").glob("*.json")):
        for doc in _within(json.loads(path.read_text(encoding="utf-8"))):
            if isinstance(doc, dict) and {"engine", "words", "doubt"} <= doc.keys():
                found.append(json.dumps(doc).encode())
    return found


def _facts() -> list[bytes]:
    found = []
    for path in sorted((CASES / "contract").glob("*.json")):
        for doc in _within(json.loads(path.read_text(encoding="utf-8"))):
            if isinstance(doc, dict) and doc.get("name") in facts.BY_NAME and "value" in doc:
                found.append(json.dumps({doc["name"]: doc["value"]}).encode())
    return found


def _within(doc):
    yield doc
    for each in doc.values() if isinstance(doc, dict) else doc if isinstance(doc, list) else ():
        yield from _within(each)


TARGETS = {
    "sound": (sound, _sounds), "picture": (picture, _pictures), "stripping": (strip, _pictures), "reader": (reader, _words),
    "jobfile": (jobfile, _wrong_jobs), "schedule": (plan, lambda: [(HERE.parents[1] / "logbook/demo/schedule.csv").read_bytes()]),
    "transcript": (heard, _transcripts), "fact": (fact, _facts), "verify": (verify, _package),
    "pressed": (pressed, lambda: [f"name={row.name}&value=12&inches=3/4&side=top&by=4&way=in&back=18&width=20&height=14".encode() for row in facts.FACTS]),
    "fields": (fields, lambda: [b"id=11111111-1111-4111-8111-111111111111&spoken_at=2026-10-14T10:00:00-05:00&text=x&photo_facts=[{\"latitude\":1,\"longitude\":2,\"of\":[0]}]&photos_to_come=[]&mark=7"]),
}  # fmt: skip


def main() -> None:
    name, *options = sys.argv[1:]
    target, seeds = TARGETS[name]
    corpus = Path(tempfile.mkdtemp(prefix=f"fuzz-{name}-"))
    for number, seed in enumerate(seeds()):
        (corpus / f"{number:04}").write_bytes(seed)
    atheris.Setup([sys.argv[0], f"-artifact_prefix={corpus}-", *options, str(corpus)], target)
    atheris.Fuzz()


if __name__ == "__main__":
    main()
