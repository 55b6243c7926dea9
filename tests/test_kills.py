"""Kill -9 of the server, its worker and both, at random moments under hand-ins: nothing acknowledged is lost."""

import sys

import killing
import pytest

SEED = 20_261_014
KILLS = 24


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="looks processes up in /proc")
def test_every_acknowledged_note_is_there_whole_and_once(tmp_path, capsys):
    site = killing.lay(tmp_path, SEED)
    killing.run(site, KILLS)
    found = killing.check(site)
    with capsys.disabled():
        print(f"\nseed {SEED}: {found}")
    assert sum(site.kills.values()) == KILLS and min(site.kills.values()) > 0
    assert found["acknowledged"] > KILLS and found["answered under kills"], "a run without load proves nothing"
