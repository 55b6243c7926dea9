"""Files that mean harm, made here byte by byte from the formats' own rules; `tests/cases/hostile/files.toml` names them.

Every maker takes a `Trap`: a path that must not be read and an address that must not be called.
"""

from __future__ import annotations

import gzip
import io
import random
import struct
import wave
import zipfile
import zlib
from dataclasses import dataclass
from pathlib import Path

from handing import picture, tone

CLIP = Path(__file__).parent / "cases" / "hearing" / "00.ogg"
SVG = b'<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"><script>alert(1)</script></svg>'
HTML = b"<!DOCTYPE html><script>alert(1)</script>"


@dataclass(frozen=True)
class Trap:
    file: str = "/etc/hostname"
    address: str = "http://127.0.0.1:9/trap"


def zeros(megabytes: int) -> bytes:
    """So many MB of zeros as zlib packs them (RFC 1950, 1951), without packing them each time."""
    packer = zlib.compressobj(9, zlib.DEFLATED, -15)
    block = packer.compress(bytes(1 << 20)) + packer.flush(zlib.Z_FULL_FLUSH)
    return b"\x78\xda" + block * megabytes + b"\x03\x00" + struct.pack(">I", ((megabytes << 20) % 65521) << 16 | 1)


# --- pictures


def _chunk(name: bytes, body: bytes) -> bytes:
    return struct.pack(">I", len(body)) + name + body + struct.pack(">I", zlib.crc32(name + body))


def _png(width: int, height: int, bits: int = 1, colour: int = 0, more: bytes = b"", body: bytes | None = None) -> bytes:
    """PNG (W3C recommendation): all rows zero, packed; `body` replaces the packed rows."""
    row = bytes(1 + (width * bits * {0: 1, 2: 3, 6: 4}[colour] + 7) // 8)
    packer = zlib.compressobj(9)
    packed = packer.compress(row * height) + packer.flush() if body is None else body
    head = struct.pack(">IIBBBBB", width, height, bits, colour, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + _chunk(b"IHDR", head) + more + _chunk(b"IDAT", packed) + _chunk(b"IEND", b"")


def png_bomb(_: Trap) -> bytes:
    return _png(20_000, 20_000)


def png_tall(_: Trap) -> bytes:
    return _png(1, 100_000)


def png_wide(_: Trap) -> bytes:
    return _png(100_000, 1)


def png_lies(_: Trap) -> bytes:
    return _png(2**31 - 1, 2**31 - 1, 8, 2, body=zlib.compress(bytes(10)))


def png_no_size(_: Trap) -> bytes:
    return _png(0, 0, 8, 2)


def png_under_the_bar(_: Trap) -> bytes:
    return _png(7000, 7000, 8, 2)


def png_deep(_: Trap) -> bytes:
    return _png(7000, 7000, 16, 6, body=zlib.compress(bytes(7000 * 8 + 1) * 300, 9))


def png_text_bomb(_: Trap) -> bytes:
    return _png(64, 64, 8, 2, more=_chunk(b"zTXt", b"Comment\0\0" + zeros(300)))


def png_profile_bomb(_: Trap) -> bytes:
    return _png(64, 64, 8, 2, more=_chunk(b"iCCP", b"profile\0\0" + zeros(300)))


def png_with_page(_: Trap) -> bytes:
    return _png(64, 64, 8, 2, more=_chunk(b"tEXt", b"Comment\0" + HTML))


def png_as_is(_: Trap) -> bytes:
    return _png(64, 64, 8, 2)


def jpeg_lies(_: Trap) -> bytes:
    """The frame header says 65,500 by 65,500 (T.81 B.2.2)."""
    good = bytearray(picture(3))
    at = good.index(b"\xff\xc0")
    good[at + 5 : at + 9] = struct.pack(">HH", 65_500, 65_500)
    return bytes(good)


def jpeg_hollow(_: Trap) -> bytes:
    """7,000 by 7,000 and nothing behind it."""
    good = bytearray(picture(3))
    at = good.index(b"\xff\xc0")
    good[at + 5 : at + 9] = struct.pack(">HH", 7000, 7000)
    return bytes(good[: good.index(b"\xff\xda") + 20])


def jpeg_many_scans(_: Trap) -> bytes:
    """A progressive picture whose last scan is repeated 20,000 times."""
    from PIL import Image

    out = io.BytesIO()
    Image.new("L", (4000, 3000)).save(out, "JPEG", progressive=True)
    good = out.getvalue()
    last = good.rindex(b"\xff\xda")
    return good[:last] + good[last:-2] * 20_000 + b"\xff\xd9"


def jpeg_and_zip(_: Trap) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as file:
        file.writestr("../../../../tmp/out-of-the-folder", "x")
    return picture(4) + out.getvalue()


def jpeg_and_page(_: Trap) -> bytes:
    return picture(5) + HTML


def jpeg_and_comment(_: Trap) -> bytes:
    good = picture(6)
    body = b"*/=alert(1);/*" + HTML
    return good[:2] + b"\xff\xfe" + struct.pack(">H", len(body) + 2) + body + good[2:]


def _exif(**odd) -> bytes:
    from PIL import Image

    exif = Image.Exif()
    exif[0x010F], exif[0x0110], exif[0x010E] = "<script>alert(1)</script>", "'\"><img src=x onerror=alert(1)>", "=cmd|' /C calc'!A0"
    exif.get_ifd(0x8769).update({0x9003: "2026:10:14 10:00:00", 0xA431: "\u202e../../../etc/passwd", 0x9286: b"ASCII\0\0\0" + HTML})
    out = io.BytesIO()
    Image.effect_noise((160, 120), 90).convert("RGB").save(out, "JPEG", exif=exif)
    return out.getvalue()


def jpeg_exif_markup(_: Trap) -> bytes:
    return _exif()


def jpeg_exif_wrong_type(_: Trap) -> bytes:
    """The resolution of a picture told as text where two numbers belong: the fuzzer's find. The picture is good."""
    from PIL import Image

    exif = Image.Exif()
    exif[0x011A], exif[0x0112] = 72.0, 6
    out = io.BytesIO()
    Image.effect_noise((160, 120), 90).convert("RGB").save(out, "JPEG", exif=exif)
    made = out.getvalue()
    entry = made.index(b"\x01\x1a\x00\x05") if b"\x01\x1a\x00\x05" in made else made.index(b"\x1a\x01\x05\x00")
    big = made[entry : entry + 2] == b"\x01\x1a"
    return made[: entry + 2] + (b"\x00\x02" if big else b"\x02\x00") + made[entry + 4 :]


def jpeg_exif_loop(_: Trap) -> bytes:
    """An EXIF block whose directories point at themselves (TIFF 6.0, offset to the next IFD)."""
    good = picture(7)
    tiff = b"II*\0" + struct.pack("<I", 8) + struct.pack("<HHHII", 1, 0x8769, 4, 1, 8) + struct.pack("<I", 8)
    body = b"Exif\0\0" + tiff
    return good[:2] + b"\xff\xe1" + struct.pack(">H", len(body) + 2) + body + good[2:]


def _code(text: str) -> bytes:
    import segno

    out = io.BytesIO()
    segno.make(text, error="m").save(out, kind="png", scale=8, border=4)
    from PIL import Image

    jpeg = io.BytesIO()
    Image.open(out).convert("RGB").save(jpeg, "JPEG")
    return jpeg.getvalue()


def tag_with_markup(_: Trap) -> bytes:
    return _code("<img src=x onerror=alert(1)>")


def tag_with_formula(_: Trap) -> bytes:
    return _code("=HYPERLINK(\"http://elsewhere.example\",\"x\")")


def tag_that_leads_out(_: Trap) -> bytes:
    return _code("duct-tag:1:..%2F..%2F..%2Fetc:%2e%2e%2fpasswd")


def webp_lies(_: Trap) -> bytes:
    """VP8X canvas of 2^24 by 2^24 (RFC 9649, 2.7)."""
    body = b"WEBPVP8X" + struct.pack("<I", 10) + bytes([0x10, 0, 0, 0]) + b"\xff" * 6
    return b"RIFF" + struct.pack("<I", len(body)) + body


def heic_hollow(_: Trap) -> bytes:
    return struct.pack(">I4s4sI", 16, b"ftyp", b"heic", 0) + struct.pack(">I4s", 2**31 - 1, b"meta") + random.Random(2).randbytes(3000)


def gif_and_script(_: Trap) -> bytes:
    return b"GIF89a/*" + bytes(20) + b"*/=1;alert(1)"


def svg(_: Trap) -> bytes:
    return SVG


def svg_with_head(_: Trap) -> bytes:
    return b'\xef\xbb\xbf<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/passwd">]>' + SVG


def page(_: Trap) -> bytes:
    return HTML


def gz_bomb(_: Trap) -> bytes:
    return gzip.compress(bytes(30_000_000), 9)


def zip_in_zip(_: Trap) -> bytes:
    inner = bytes(10_000_000)
    for level in range(4):
        out = io.BytesIO()
        with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as file:
            for number in range(4):
                file.writestr(f"{level}-{number}", inner)
        inner = out.getvalue()
    return inner


def paper(_: Trap) -> bytes:
    return b"%PDF-1.7\n1 0 obj<</OpenAction<</S/JavaScript/JS(app.alert(1))>>>>endobj"


def noise(_: Trap) -> bytes:
    return random.Random(1).randbytes(20_000)


def sound_as_is(_: Trap) -> bytes:
    return tone(512)


def picture_as_is(_: Trap) -> bytes:
    return picture(8)


# --- lists and addresses instead of sound


def m3u(trap: Trap) -> bytes:
    return f"#EXTM3U\n{trap.address}\n{trap.file}\n".encode()


def hls(trap: Trap) -> bytes:
    return f"#EXTM3U\n#EXT-X-TARGETDURATION:10\n#EXTINF:10,\n{trap.address}\n#EXTINF:10,\nfile://{trap.file}\n#EXT-X-ENDLIST\n".encode()


def ffconcat(trap: Trap) -> bytes:
    return f"ffconcat version 1.0\nfile '{trap.file}'\nfile '{trap.address}'\n".encode()


def pls(trap: Trap) -> bytes:
    return f"[playlist]\nFile1={trap.address}\nNumberOfEntries=1\n".encode()


def sdp(_: Trap) -> bytes:
    return b"v=0\no=- 0 0 IN IP4 127.0.0.1\ns=x\nc=IN IP4 127.0.0.1\nt=0 0\nm=audio 5004 RTP/AVP 97\na=rtpmap:97 opus/48000/2\n"


def id3_then_list(trap: Trap) -> bytes:
    return b"ID3\x04\0\0\0\0\0\0" + hls(trap)


def adts_then_list(trap: Trap) -> bytes:
    return b"\xff\xf1\x50\x80\x00\x1f\xfc" + hls(trap)


def ebml_then_list(trap: Trap) -> bytes:
    return b"\x1a\x45\xdf\xa3" + hls(trap)


def riff_then_list(trap: Trap) -> bytes:
    return b"RIFF\xff\xff\xff\xffWAVE" + hls(trap)


def ogg_then_list(trap: Trap) -> bytes:
    return CLIP.read_bytes()[:58] + ffconcat(trap)


def _box(kind: bytes, *parts: bytes) -> bytes:
    body = b"".join(parts)
    return struct.pack(">I4s", 8 + len(body), kind) + body


def _mp4(dref: bytes, brand: bytes = b"isom", samples: int = 16_000, seconds: int = 1, more: bytes = b"") -> bytes:
    """ISO/IEC 14496-12: one sound track of 16-bit samples (`sowt`), whose bytes the data reference says lie elsewhere."""
    matrix = struct.pack(">9I", 0x10000, 0, 0, 0, 0x10000, 0, 0, 0, 0x40000000)
    mvhd = _box(b"mvhd", struct.pack(">5I", 0, 0, 0, 16_000, 16_000 * seconds), struct.pack(">IH10x", 0x10000, 0x100), matrix, bytes(24), struct.pack(">I", 2))
    tkhd = _box(b"tkhd", struct.pack(">6I", 7, 0, 0, 1, 0, 16_000 * seconds), bytes(8), struct.pack(">4H", 0, 0, 0x100, 0), matrix, bytes(8))
    mdhd = _box(b"mdhd", struct.pack(">5I", 0, 0, 0, 16_000, 16_000 * seconds), struct.pack(">2H", 0x55C4, 0))
    hdlr = _box(b"hdlr", struct.pack(">2I4s12x", 0, 0, b"soun"), b"\0")
    sowt = _box(b"sowt", bytes(6), struct.pack(">H8x4HI", 1, 1, 16, 0, 0, 16_000 << 16))
    stbl = _box(
        b"stbl", _box(b"stsd", struct.pack(">2I", 0, 1), sowt), _box(b"stts", struct.pack(">4I", 0, 1, samples, 1)),
        _box(b"stsc", struct.pack(">5I", 0, 1, 1, samples, 1)), _box(b"stsz", struct.pack(">3I", 0, 2, samples)), _box(b"stco", struct.pack(">3I", 0, 1, 40)),
    )  # fmt: skip
    minf = _box(b"minf", _box(b"smhd", bytes(8)), _box(b"dinf", _box(b"dref", struct.pack(">2I", 0, 1), dref)), stbl)
    moov = _box(b"moov", mvhd, _box(b"trak", tkhd, _box(b"mdia", mdhd, hdlr, minf)), more)
    return _box(b"ftyp", brand, bytes(4), b"isomqt  ") + _box(b"mdat", tone(450)[44:]) + moov


def mp4_at_an_address(trap: Trap) -> bytes:
    return _mp4(_box(b"url ", bytes(4), trap.address.encode(), b"\0"))


def mp4_in_a_file(trap: Trap) -> bytes:
    """A QuickTime alias (`alis`) with an absolute path, as old Macs wrote it."""
    path = trap.file.encode()
    record = bytes(4) + struct.pack(">HH", 150 + len(path), 2) + bytes(2) + bytes([4]) + b"disk".ljust(27) + bytes(12)
    record += bytes([len(path) % 256]) + path[:63].ljust(63, b"\0") + bytes(16) + struct.pack(">2h", 0, 1) + bytes(16)
    record += struct.pack(">2H", 18, len(path)) + path + bytes(len(path) % 2) + struct.pack(">2H", 0xFFFF, 0)
    return _mp4(_box(b"alis", bytes(4), record), b"qt  ")


def mp4_with_list(trap: Trap) -> bytes:
    return _box(b"ftyp", b"isom", bytes(4), b"isom") + _box(b"mdat", hls(trap)) + hls(trap)


def mp4_reference_movie(trap: Trap) -> bytes:
    """A QuickTime movie that is nothing but a reference to another (`rmra`)."""
    rdrf = _box(b"rdrf", bytes(4), b"url ", struct.pack(">I", len(trap.address) + 1), trap.address.encode(), b"\0")
    return _box(b"ftyp", b"qt  ", bytes(4), b"qt  ") + _box(b"moov", _box(b"rmra", _box(b"rmda", rdrf)))


def mp4_packed_bomb(_: Trap) -> bytes:
    """A compressed movie header (`cmov`) that says and holds 400 MB."""
    cmov = _box(b"cmov", _box(b"dcom", b"zlib"), _box(b"cmvd", struct.pack(">I", 400 << 20), zeros(400)))
    return _box(b"ftyp", b"qt  ", bytes(4), b"qt  ") + _box(b"moov", cmov)


def mp4_endless(_: Trap) -> bytes:
    return _mp4(_box(b"url ", struct.pack(">I", 1)), samples=2**31 - 1, seconds=130_000)


def mp4_nested(_: Trap) -> bytes:
    inner = b""
    for _depth in range(3000):
        inner = _box(b"moov", inner)
    return _box(b"ftyp", b"isom", bytes(4), b"isom") + inner


# --- sound that never ends, or lies about itself


def _crc(data: bytes, bits: int, poly: int) -> int:
    value, top = 0, 1 << bits - 1
    for byte in data:
        value ^= byte << bits - 8
        for _ in range(8):
            value = (value << 1 ^ poly if value & top else value << 1) & (1 << bits) - 1
    return value


def flac_endless(_: Trap) -> bytes:
    """FLAC (RFC 9639): 20,000 frames of one value, each 4 seconds in 17 bytes; a day in a third of a megabyte."""
    info = struct.pack(">HH", 65_535, 65_535) + bytes(6) + ((16_000 << 44) | (0 << 41) | (15 << 36)).to_bytes(8, "big") + bytes(16)
    out = [b"fLaC", bytes([0x80]), struct.pack(">I", len(info))[1:], info]
    for number in range(20_000):
        told = bytes([number]) if number < 0x80 else chr(number).encode("utf-8", "surrogatepass")
        head = b"\xff\xf8\x70\x08" + told + struct.pack(">H", 65_534)
        frame = head + bytes([_crc(head, 8, 0x07)]) + b"\x00" + struct.pack(">h", 1000 + number % 2 * 500)
        out.append(frame + struct.pack(">H", _crc(frame, 16, 0x8005)))
    return b"".join(out)


def _wav(channels: int = 1, rate: int = 16_000, bits: int = 16, data: bytes = b"", size: int | None = None, align: int | None = None) -> bytes:
    align = channels * bits // 8 if align is None else align
    head = struct.pack("<HHIIHH", 1, channels, rate, (rate * align) & 0xFFFFFFFF, align & 0xFFFF, bits)
    return b"RIFF\xff\xff\xff\xffWAVEfmt " + struct.pack("<I", 16) + head + b"data" + struct.pack("<I", len(data) if size is None else size) + data


def wav_lies(_: Trap) -> bytes:
    return _wav(data=tone(310)[44:], size=0xFFFFFFFF)


def wav_slow(_: Trap) -> bytes:
    """One sample a second for a day: every byte becomes 16,000 samples."""
    return _wav(rate=1, bits=8, data=random.Random(3).randbytes(86_400))


def wav_no_rate(_: Trap) -> bytes:
    return _wav(rate=0, data=tone(310)[44:])


def wav_many_channels(_: Trap) -> bytes:
    return _wav(channels=65_535, data=random.Random(3).randbytes(400_000))


def wav_no_bits(_: Trap) -> bytes:
    return _wav(bits=0, data=tone(310)[44:], align=0)


def wav_as_is(_: Trap) -> bytes:
    return tone(777)


def wav_old_title(_: Trap) -> bytes:
    """A title in Latin-1: the fuzzer's find. The sound is good."""
    title = b"INFOINAM" + struct.pack("<I", 6) + b"Ca\xf1er\xed"
    whole = tone(640)[12:] + b"LIST" + struct.pack("<I", len(title)) + title
    return b"RIFF" + struct.pack("<I", len(whole) + 4) + b"WAVE" + whole


def aac_changes_rate(_: Trap) -> bytes:
    """ADTS frames of 44.1 kHz stereo, then of 16 kHz mono: the fuzzer's find. Both are good."""
    return _adts(44_100, "stereo") + _adts(16_000, "mono")


def _adts(rate: int, layout: str) -> bytes:
    import av
    import numpy as np

    out = io.BytesIO()
    with av.open(out, "w", format="adts") as container:
        stream = container.add_stream("aac", rate=rate, layout=layout)
        wave_form = (0.3 * np.sin(np.arange(rate) / 9)).astype(np.float32)
        samples = np.stack([wave_form] * (2 if layout == "stereo" else 1))
        for start in range(0, rate - 1024, 1024):
            frame = av.AudioFrame.from_ndarray(np.ascontiguousarray(samples[:, start : start + 1024]), format="fltp", layout=layout)
            frame.sample_rate, frame.pts = rate, start
            container.mux(stream.encode(frame))
        container.mux(stream.encode(None))
    return out.getvalue()


def flac_with_linked_cover(trap: Trap) -> bytes:
    """A cover that is only an address (RFC 9639, 8.8: media type `-->`)."""
    import av
    import numpy as np

    out = io.BytesIO()
    with av.open(out, "w", format="flac") as container:
        stream = container.add_stream("flac", rate=16_000, layout="mono")
        samples = (8000 * np.sin(np.arange(16_000) / 9)).astype(np.int16).reshape(1, -1)
        for start in range(0, 16_000, 4000):
            frame = av.AudioFrame.from_ndarray(np.ascontiguousarray(samples[:, start : start + 4000]), format="s16", layout="mono")
            frame.sample_rate, frame.pts = 16_000, start
            container.mux(stream.encode(frame))
        container.mux(stream.encode(None))
    good, link = out.getvalue(), trap.address.encode()
    cover = struct.pack(">II3sI", 3, 3, b"-->", 0) + bytes(16) + struct.pack(">I", len(link)) + link
    return good[:42] + bytes([6]) + struct.pack(">I", len(cover))[1:] + cover + good[42:]


def webm_hollow(_: Trap) -> bytes:
    """An element that says it is 2^56 - 2 bytes long (RFC 8794)."""
    return b"\x1a\x45\xdf\xa3\x01\xff\xff\xff\xff\xff\xff\xfe" + random.Random(4).randbytes(500)


def ogg_torn_everywhere(_: Trap) -> bytes:
    clip, rng = bytearray(CLIP.read_bytes()), random.Random(5)
    for _ in range(len(clip) // 40):
        clip[rng.randrange(200, len(clip))] = rng.randrange(256)
    return bytes(clip)


def wav_of_nothing(_: Trap) -> bytes:
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((1, 2, 16_000, 0, "NONE", ""))
    return out.getvalue()
