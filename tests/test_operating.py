"""What the pages for whoever runs a server say is what the code does; every test that the threat model names is there."""

from __future__ import annotations

import argparse
import ast
import configparser
import re
import shlex
import shutil
import subprocess
import sys
from importlib import import_module
from pathlib import Path

import pytest
from desk import open_desk

from logbook import cli, running
from logbook.settings import UPLOAD_LIMIT
from logbook.store import people
from logbook.store.folder import Floors
from logbook.web import guard, phone, sheets

HERE = Path(__file__).parent.parent
DOCS = {name: (HERE / "docs" / f"{name}.md").read_text(encoding="utf-8") for name in ("privacy", "operating", "threats")}
UNIT = DOCS["operating"].split("<!-- unit -->")[1].split("<!-- /unit -->")[0].split("```ini\n")[1].split("```")[0]


def row(page: str, first: str) -> list[str]:
    """The cells of the row of a table that begins so."""
    found = [line for line in DOCS[page].splitlines() if line.startswith(f"| {first}")]
    assert len(found) == 1, first
    return [cell.strip() for cell in found[0].strip("|").split("|")]


# --- commands


def commands() -> list[tuple[str, list[str]]]:
    found = []
    for name, text in DOCS.items():
        for block in re.findall(r"```sh\n(.*?)```", text, flags=re.S):
            for line in block.splitlines():
                words = shlex.split(line)
                at = next((n for n, word in enumerate(words[:-1]) if word.rsplit("/", 1)[-1] == "logbook" and words[n + 1] in cli.VERBS), None)
                if at is not None:
                    found.append((name, words[at + 1 :]))
    return found


@pytest.mark.parametrize(("page", "words"), [*commands(), ("operating", shlex.split(re.search(r"ExecStart=\S+ (.*)", UNIT)[1]))])
def test_every_command_of_the_pages_is_one_that_the_program_takes(page, words):
    parser = argparse.ArgumentParser()
    import_module(f"logbook.cli.{words[0]}").configure(parser)
    parser.parse_args(words[1:])


def test_the_pages_hold_commands_at_all():
    assert len(commands()) >= 6


# --- the unit


def test_the_unit_is_one_and_narrows_what_a_broken_process_reaches():
    read = configparser.ConfigParser(strict=False, interpolation=None)
    read.optionxform = str
    read.read_string(UNIT)
    service = read["Service"]
    assert service["NoNewPrivileges"] == "yes" and service["ProtectSystem"] == "strict" and service["CapabilityBoundingSet"] == ""
    folder = shlex.split(service["ExecStart"])[3]
    assert any(folder.startswith(one) for one in service["ReadWritePaths"].split())
    assert {line.split("=", 2)[2] for line in UNIT.splitlines() if line.startswith("Environment=")} - {"/var/lib/fitting-logbook"} == {
        "/var/lib/fitting-logbook/state", "/var/lib/fitting-logbook/cache"
    }  # fmt: skip
    assert service["StandardOutput"] == "null", "the first link is a key, and no key stands in a log"
    from logbook.cli.serve import WORKER_FINISHES, WORKER_PUTS_BACK

    assert int(service["TimeoutStopSec"]) > 5 + WORKER_FINISHES + WORKER_PUTS_BACK


@pytest.mark.skipif(not shutil.which("systemd-analyze"), reason="no systemd here")
def test_systemd_itself_finds_no_fault_in_the_unit(tmp_path):
    unit = tmp_path / "fitting-logbook.service"
    unit.write_text(UNIT.replace("/opt/fitting-logbook/.venv/bin/logbook", sys.executable))
    done = subprocess.run(["systemd-analyze", "verify", unit], capture_output=True, text=True, check=False)
    told = [line for line in done.stderr.splitlines() if "fitting-logbook" in line]
    assert told == [], told


# --- figures


def test_how_long_things_are_kept_is_what_the_code_does():
    assert f"{people.LASTS['browser'].days} days" in row("privacy", "browsers")[2]
    assert people.LASTS["phone"] == people.LASTS["script"]
    assert f"{people.LASTS['phone'].days} days" in row("privacy", "phones and keys")[2]
    assert row("privacy", "codes for pairing")[2] == f"{people.INVITATION_LASTS['pair'].seconds // 60} minutes"
    assert row("privacy", "links for a password")[2] == f"{people.INVITATION_LASTS['password'].total_seconds() // 3600:.0f} hours"
    import inspect

    assert "timedelta(days=30)" in inspect.getsource(people.forget_attempts) and "30 days" in row("privacy", "sign-in tries")[2]


def test_the_bars_of_the_pages_are_those_of_the_code():
    assert f"client_max_body_size {UPLOAD_LIMIT // 1_000_000}m" in DOCS["operating"]
    assert f"Below {Floors().derived // 1_000_000} MB" in DOCS["privacy"] and f"below {Floors().receive // 1_000_000} MB" in DOCS["privacy"]


SOUND, PHOTO, LOG, SMALL, REPORT = 20 * 16.2e3, 3e6, 23e3, 23e3, 15e6  # bytes, as the page says where they were measured


@pytest.mark.parametrize(("first", "days"), [("1 day", 1), ("1 month", 22), ("6 months", 132)])
def test_the_room_a_job_takes_is_reckoned_from_the_figures_above_it(first, days):
    _, notes, photos, folder, copied = row("privacy", first)
    notes = int(notes.replace(",", ""))
    assert notes == int(photos.replace(",", "")) == 120 * days
    reckoned = (notes * (SOUND + PHOTO + LOG + SMALL) + days * REPORT) / 1e9
    assert abs(float(folder.split()[0]) - reckoned) <= max(0.05, 0.5 if reckoned >= 10 else 0)
    assert abs(float(copied.split()[0]) - 2 * reckoned) <= (0.5 if reckoned >= 5 else 0.06) + 0.3


def test_what_a_phone_keeps_is_as_heavy_as_told(tmp_path):
    told = DOCS["operating"].split("## What a phone keeps")[1].split("\n## ")[0]
    client = open_desk(tmp_path).app.test_client()
    weights = {path: len(client.get(path).data) for path in phone.KEPT}
    whole, tags = (int(number) for number in re.findall(r"(\d+) kB", told)[:2])
    assert abs(sum(weights.values()) / 1000 - whole) <= 10 and abs(sum(size for path, size in weights.items() if "/qr/" in path) / 1000 - tags) <= 2
    worker = (HERE / "logbook" / "web" / "static" / "worker.js").read_text()
    assert f"at most {sheets.MOST} that differ" in told and f"the last {int(re.search(r'MOST_MADE = (.+?);', worker).group(1)) // 2} that were made" in told


def test_who_hears_and_who_sees_places_is_what_the_guard_says():
    cells = row("privacy", "the recording")
    assert ("yes" in cells[3], "yes" in cells[4], "yes" in cells[5]) == tuple(one in guard.MAY["entry.sound"] for one in ("lead", "keeper", "contractor"))
    assert guard.OPENED_BY_THE_JOB["entry.sound"][0] == "contractor" and "contractor_hears" in cells[5]
    cells = row("privacy", "where a photo was taken")
    order = ("installer", "installer", "lead", "keeper", "contractor")
    assert [cell == "yes" for cell in cells[1:]] == [one in guard.SEES_PLACES for one in order]
    cells = row("privacy", "phones, browsers")
    assert [cell == "yes" for cell in cells[1:]] == [one in guard.MAY["staff.page"] for one in order]


def test_every_event_that_the_code_writes_is_explained():
    named = set(re.findall(r"`([a-z-]+)`", " ".join(line.split("|")[1] for line in DOCS["operating"].split("| event |")[1].split("\n\n")[0].splitlines()[2:])))
    written = {"library", "fell-over", "request-failed"}
    for file in (HERE / "logbook").rglob("*.py"):
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and ast.unparse(node.func) == "running.tell":
                first = node.args[0]
                written |= {first.value} if isinstance(first, ast.Constant) else {first.body.value, first.orelse.value}
    assert named == written
    assert running.MEMBERS >= {"method", "route", "status", "ms", "bytes", "role", "key", "code"}


# --- the threat model


def test_every_test_that_the_threat_model_names_is_there():
    named = re.findall(r"`(test_\w+\.py)::(test_\w+)`", DOCS["threats"])
    assert len(named) >= 40
    for file, test in named:
        tree = ast.parse((HERE / "tests" / file).read_text(encoding="utf-8"))
        assert any(isinstance(node, ast.FunctionDef) and node.name == test for node in tree.body), f"{file}::{test}"


def test_every_row_of_the_threat_model_names_what_shows_it():
    rows = [line for line in DOCS["threats"].splitlines() if line.startswith("| ") and not line.startswith(("| he could", "| it could", "| it happens"))]
    assert len(rows) >= 30 and all("`test_" in line.split("|")[3] for line in rows)
