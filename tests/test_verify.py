"""Damage of every kind is found, all of it at once, from the package alone."""

import json
import struct
import subprocess
import sys
import zipfile
from pathlib import Path

import paper_days
import pytest
from jsonschema import Draft202012Validator

from logbook.cli import main
from logbook.handover import signing
from logbook.handover.verify import NOT_A_PACKAGE, NOT_WHOLE, WHOLE, verify
from logbook.paper.package import build
from logbook.wording import has


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    folder = tmp_path_factory.mktemp("verify")
    (folder / "spool").mkdir()
    with open(folder / "out.zip", "wb") as file:
        built = build(file, paper_days.closeout(folder), folder / "spool")
    return folder / "out.zip", built.base


@pytest.fixture
def again(made, tmp_path):
    """Packs the package again after `change(files)` was let at its {name: bytes}; stored, in the old order."""

    def pack(change=lambda files: None, compression=zipfile.ZIP_STORED):
        with zipfile.ZipFile(made[0]) as archive:
            files = {info.filename.removeprefix(f"{made[1]}/"): archive.read(info) for info in archive.infolist()}
        change(files)
        out = tmp_path / "changed.zip"
        with zipfile.ZipFile(out, "w", compression) as archive:
            for name, content in files.items():
                archive.writestr(zipfile.ZipInfo(name[1:] if name.startswith("!") else f"{made[1]}/{name}", (1980, 1, 1, 0, 0, 0)), content, compression)
        return out

    return pack


def found(path, key=None):
    verdict = verify(path, key)
    for one in (*verdict.problems, *verdict.remarks):
        for language in ("en", "es"):
            assert has(f"{one.key}.error", language) and has(f"{one.key}.cure", language), one.key
    return verdict.status, {(one.key.removeprefix("verify."), one.where) for one in verdict.problems}


def test_a_whole_package_is_whole(made):
    verdict = verify(made[0])
    assert (verdict.status, verdict.problems) == (WHOLE, [])
    assert [one.key for one in verdict.remarks] == ["verify.unsigned"]
    assert verdict.journal and verdict.files == 33


def test_packing_it_the_same_way_again_is_the_same(again):
    assert found(again())[0] == WHOLE


def test_packed_again_by_another_program_is_told_apart(again):
    verdict = verify(again(compression=zipfile.ZIP_DEFLATED))
    assert verdict.status == WHOLE
    assert "verify.packed-again" in [one.key for one in verdict.remarks]


@pytest.mark.parametrize("name", ["data/cover.pdf", "data/register/as-built.csv", "data/notes/notes.jsonl", "data/journal/journal.jsonl", "data/job/job.toml"])
def test_a_flipped_byte_is_found(again, name):
    def flip(files):
        files[name] = bytes([files[name][0] ^ 1]) + files[name][1:]

    status, problems = found(again(flip))
    assert status == NOT_WHOLE and ("changed", name) in problems


def contents(path):
    with zipfile.ZipFile(path) as archive:
        return {info.filename: archive.read(info) for info in archive.infolist()}


def test_no_byte_changes_a_file_unseen(made, tmp_path):
    """A byte flipped in 300 places from front to back: found, or (hours and rights in the directory) no file is another."""
    whole, files = made[0].read_bytes(), contents(made[0])
    unseen = 0
    for at in range(0, len(whole), len(whole) // 300):
        flipped = tmp_path / "flipped.zip"
        flipped.write_bytes(whole[:at] + bytes([whole[at] ^ 0x10]) + whole[at + 1 :])
        if verify(flipped).status == WHOLE:
            unseen += 1
            assert contents(flipped) == files, f"byte {at}"
    assert unseen < 10


def test_dropped_added_and_renamed_are_all_named_at_once(again):
    def change(files):
        del files["data/cover.pdf"]
        files["data/extra.txt"] = b"more"
        photo = next(name for name in files if name.startswith("data/photos/"))
        files["data/photos/other.jpg"] = files.pop(photo)
        files["data/job/job.toml"] = b"id = 'zzzzzzzz'\n"

    status, problems = found(again(change))
    assert status == NOT_WHOLE
    assert {("dropped", "data/cover.pdf"), ("added", "data/extra.txt"), ("renamed", "data/photos/other.jpg"), ("changed", "data/job/job.toml"),
            ("needed-missing", "data/cover.pdf"), ("oxum", "bag-info.txt")} <= problems  # fmt: skip


@pytest.mark.parametrize("name", ["manifest-sha256.txt", "manifest-sha512.txt", "tagmanifest-sha256.txt", "tagmanifest-sha512.txt", "bag-info.txt", "README.txt"])
def test_a_dropped_list_is_found(again, name):
    status, problems = found(again(lambda files: files.pop(name)))
    assert status == NOT_WHOLE and any(where == name for _, where in problems)


@pytest.mark.parametrize("name", ["manifest-sha256.txt", "tagmanifest-sha512.txt"])
def test_a_broken_list_is_found(again, name):
    def change(files):
        files[name] += b"0123  ../../etc/passwd\nnot a line\n\xff\n"

    status, problems = found(again(change))
    assert status == NOT_WHOLE and any(kind == "manifest-line" for kind, _ in problems)


def test_another_bagit_version_is_found(again):
    status, problems = found(again(lambda files: files.update({"bagit.txt": files["bagit.txt"].replace(b"1.0", b"0.97")})))
    assert ("declaration", "bagit.txt") in problems and status == NOT_WHOLE


def test_a_journal_rewritten_with_its_lists_is_found_by_its_chain(again):
    def change(files):
        rows = [json.loads(line) for line in files["data/journal/journal.jsonl"].splitlines()]
        rows[2]["at"] = "2026-10-13T13:00:00+00:00"
        files["data/journal/journal.jsonl"] = b"".join(json.dumps(row).encode() + b"\n" for row in rows)
        relisted(files)

    status, problems = found(again(change))
    assert status == NOT_WHOLE and ("chain-altered" in {kind.removeprefix("store.") for kind, _ in problems})


def test_a_journal_cut_short_is_found_by_the_day_report(again):
    def change(files):
        files["data/journal/journal.jsonl"] = b"".join(files["data/journal/journal.jsonl"].splitlines(keepends=True)[:3])
        info = files["bag-info.txt"].decode().splitlines()
        third = json.loads(files["data/journal/journal.jsonl"].splitlines()[-1])["hash"]
        files["bag-info.txt"] = "\n".join(f"Journal-Newest-Hash: {third}" if line.startswith("Journal-Newest-Hash") else line for line in info).encode()
        relisted(files)

    status, problems = found(again(change))
    assert status == NOT_WHOLE and any(kind == "day-hash" for kind, _ in problems)


@pytest.mark.parametrize("name", ["!../evil.txt", "!/etc/evil", "!closeout-qmvtkrha/data/../../evil", "!C:/evil", "!closeout-qmvtkrha\\evil", "!closeout-qmvtkrha/data/a\x07b"])
def test_names_that_leave_the_folder_are_found(again, name):
    status, problems = found(again(lambda files: files.update({name: b"x"})))
    assert status == NOT_WHOLE and any(kind == "unsafe-name" for kind, _ in problems)


def test_a_file_beside_the_folder_is_found(again):
    assert ("outside", "beside.txt") in found(again(lambda files: files.update({"!beside.txt": b"x"})))[1]


def test_a_name_twice_is_found(made, tmp_path):
    out = tmp_path / "twice.zip"
    out.write_bytes(made[0].read_bytes())
    with pytest.warns(UserWarning), zipfile.ZipFile(out, "a") as archive:
        archive.writestr(f"{made[1]}/data/cover.pdf", b"another cover")
    status, problems = found(out)
    assert status == NOT_WHOLE and any(kind == "twice" for kind, _ in problems)


def test_names_that_are_one_on_other_systems_are_found(again):
    assert any(kind == "twins" for kind, _ in found(again(lambda files: files.update({"data/COVER.pdf": b"x"})))[1])


def test_a_link_is_found(made, tmp_path):
    out = tmp_path / "link.zip"
    out.write_bytes(made[0].read_bytes())
    info = zipfile.ZipInfo(f"{made[1]}/data/link")
    info.external_attr = 0o120777 << 16
    with zipfile.ZipFile(out, "a") as archive:
        archive.writestr(info, "/etc/passwd")
    assert any(kind == "link" for kind, _ in found(out)[1])


def test_a_bomb_is_not_opened(again):
    verdict = verify(again(lambda files: files.update({"data/bomb": bytes(50_000_000)}), zipfile.ZIP_DEFLATED))
    assert verdict.status == NOT_WHOLE
    assert any(one.key == "verify.bomb" for one in verdict.problems)
    assert verdict.bytes < 5_000_000


def test_a_size_that_lies_is_found(made, tmp_path):
    whole = bytearray(made[0].read_bytes())
    at = whole.rfind(b"PK\x01\x02", 0, whole.rfind(b"data/cover.pdf"))
    whole[at + 24 : at + 28] = struct.pack("<I", 10)
    (tmp_path / "lie.zip").write_bytes(whole)
    assert verify(tmp_path / "lie.zip").status == NOT_WHOLE


@pytest.mark.parametrize("where", ["front", "end", "middle"])
def test_bytes_that_belong_to_nobody_are_found(made, tmp_path, where):
    whole, loose = made[0].read_bytes(), b"MZ hidden program"
    at = {"front": 0, "end": len(whole), "middle": whole.find(b"PK\x01\x02")}[where]
    (tmp_path / "loose.zip").write_bytes(whole[:at] + loose + whole[at:])
    assert verify(tmp_path / "loose.zip").status in (NOT_WHOLE, NOT_A_PACKAGE)


@pytest.mark.parametrize("content", [b"", b"PK\x05\x06" + bytes(18), b"a text, no package", None])
def test_what_is_no_package_is_told_apart(tmp_path, content):
    path = tmp_path / "none.zip"
    if content is not None:
        path.write_bytes(content)
    assert verify(path).status == NOT_A_PACKAGE


def test_half_a_package_is_no_package(made, tmp_path):
    (tmp_path / "half.zip").write_bytes(made[0].read_bytes()[: made[0].stat().st_size // 2])
    assert verify(tmp_path / "half.zip").status == NOT_A_PACKAGE


@pytest.fixture(scope="module")
def signed(tmp_path_factory):
    folder = tmp_path_factory.mktemp("signed")
    private, public = signing.new_key()
    (folder / "firm.pem").write_bytes(private)
    (folder / "firm.pub").write_bytes(public)
    (folder / "other.pub").write_bytes(signing.new_key()[1])
    (folder / "spool").mkdir()
    with open(folder / "out.zip", "wb") as file:
        build(file, paper_days.closeout(folder), folder / "spool", signing.signer(folder / "firm.pem"))
    return folder


def test_a_signature_is_checked_with_the_firms_key(signed):
    key = signing.public_key(signed / "firm.pub")
    assert found(signed / "out.zip", key) == (WHOLE, set())
    assert verify(signed / "out.zip", key).signed_by == signing.fingerprint(key)
    assert [one.key for one in verify(signed / "out.zip").remarks] == ["verify.key-not-given"]


def test_another_key_a_lost_signature_and_a_rebuilt_package_are_found(signed, again, tmp_path):
    assert ("other-key", "tagmanifest-sha256.txt") in found(signed / "out.zip", signing.public_key(signed / "other.pub"))[1]
    assert any(kind == "not-signed" for kind, _ in found(again(), signing.public_key(signed / "firm.pub"))[1])
    with zipfile.ZipFile(signed / "out.zip") as archive:
        signature = archive.read("closeout-qmvtkrha/bag-signature.json")

    def rebuild(files):
        files["data/words.html"] += b"<p>one more word"
        relisted(files)
        files["bag-signature.json"] = signature

    assert any(kind == "signature-wrong" for kind, _ in found(again(rebuild))[1])


def test_the_verb_answers_with_its_exit_code(made, again, capsys, tmp_path):
    assert main(["verify", str(made[0])]) == 0
    assert "Whole: 33 files" in capsys.readouterr().out
    changed = again(lambda files: files.pop("data/cover.pdf"))
    assert main(["verify", str(changed)]) == 1
    assert "- data/cover.pdf: is in the lists, but not in the package." in capsys.readouterr().out
    assert main(["verify", str(changed), "--json"]) == 1
    told = json.loads(capsys.readouterr().out)
    schema = json.loads((Path(__file__).parents[1] / "schemas" / "verify.json").read_text(encoding="utf-8"))
    assert Draft202012Validator(schema).is_valid(told)
    assert not told["whole"] and {"dropped", "needed-missing", "oxum"} <= {one["problem"] for one in told["problems"]}
    assert main(["verify", str(tmp_path / "none.zip")]) == 2
    assert main(["verify", str(made[0]), "--key", str(tmp_path / "none.pem")]) == 2
    assert "Nothing was checked, and the package is as it was." in capsys.readouterr().err  # not "No package was written"


def test_checking_needs_neither_log_nor_ears_nor_pages(made):
    code = f"import sys; from logbook.cli import main; main(['verify', {str(made[0])!r}]); print(sorted({{m.split('.')[0] for m in sys.modules}} & {{'torch', 'whisper', 'sqlite_utils', 'flask', 'typst', 'av', 'PIL'}}))"
    told = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert told.stdout.strip().endswith("[]")


def relisted(files: dict) -> None:
    """What somebody does who changes a package and knows about lists: makes them all again."""
    import hashlib

    payload = {name: content for name, content in files.items() if name.startswith("data/")}
    info = [line for line in files["bag-info.txt"].decode().splitlines() if not line.startswith("Payload-Oxum")]
    files["bag-info.txt"] = "\n".join([*info, f"Payload-Oxum: {sum(map(len, payload.values()))}.{len(payload)}"]).encode()
    for algorithm in ("sha256", "sha512"):
        files[f"manifest-{algorithm}.txt"] = "".join(f"{hashlib.new(algorithm, content).hexdigest()}  {name}\n" for name, content in sorted(payload.items())).encode()
    tags = {name: content for name, content in files.items() if not name.startswith(("data/", "tagmanifest", "bag-signature"))}
    for algorithm in ("sha256", "sha512"):
        files[f"tagmanifest-{algorithm}.txt"] = "".join(f"{hashlib.new(algorithm, content).hexdigest()}  {name}\n" for name, content in sorted(tags.items())).encode()


def test_a_file_without_a_name_and_an_end_record_that_lies_are_problems_and_no_crash(made, tmp_path):
    """Finds of the fuzzer: an empty name in the directory, and offsets that would lie before the file."""
    whole = made[0].read_bytes()
    name = whole.index(b"PK\x01\x02")
    length = struct.unpack_from("<H", whole, name + 28)[0]
    nameless = bytearray(whole)
    struct.pack_into("<H", nameless, name + 28, 0)
    nameless[name + 46 : name + 46 + length] = b""
    size, at = struct.unpack_from("<II", nameless, len(nameless) - 10)
    struct.pack_into("<II", nameless, len(nameless) - 10, size - length, at)
    for number, harmed in enumerate((bytes(nameless), whole[5000:])):
        path = tmp_path / f"{number}.zip"
        path.write_bytes(harmed)
        assert verify(path).status in (NOT_WHOLE, NOT_A_PACKAGE)
