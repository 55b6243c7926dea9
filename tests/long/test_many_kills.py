"""200 kills with a seed of its own each time, printed: `KILL_SEED=… pytest -s tests/long/test_many_kills.py` runs it again."""

import os
import secrets
import sys


sys.path.insert(0, os.path.dirname(os.path.dirname(__file__)))
import killing  # noqa: E402


def test_two_hundred_kills_while_hearing_runs(tmp_path, capsys):
    """Each at a moment when the worker, a process of its own, holds notes: it is killed alone, with the server, or left behind."""
    seed = int(os.environ.get("KILL_SEED") or secrets.randbelow(10**9))
    with capsys.disabled():
        print(f"\nseed {seed}")
    site = killing.lay(tmp_path, seed)
    kills = int(os.environ.get("KILLS", "200"))
    killing.run(site, kills, phones=3, while_hearing=True)
    found = killing.check(site)
    with capsys.disabled():
        print(found)
    assert min(site.kills.values()) > 0 and site.heard_then > kills * 0.8


def test_two_hundred_kills(tmp_path, capsys):
    seed = int(os.environ.get("KILL_SEED") or secrets.randbelow(10**9))
    with capsys.disabled():
        print(f"\nseed {seed}")
    site = killing.lay(tmp_path, seed)
    killing.run(site, int(os.environ.get("KILLS", "200")), phones=4)
    found = killing.check(site)
    with capsys.disabled():
        print(found)
    assert min(site.kills.values()) > 0 and found["acknowledged"] > 200
