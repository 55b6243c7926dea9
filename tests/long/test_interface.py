"""Schemathesis against the running server by its own `openapi.json` (MIT; `pip install schemathesis==4.32.5`).

    pytest -s tests/long/test_interface.py            EXAMPLES=200 for more of each operation

Whatever it makes up, well-formed or not, is answered as the document says: no 5xx, the described shape, headers on every answer.
"""

from __future__ import annotations

import os
import subprocess
import sys

import pytest

sys.path.insert(0, os.path.dirname(os.path.dirname(__file__)))
import serving  # noqa: E402

from logbook.settings import state_of  # noqa: E402
from logbook.web import authority  # noqa: E402

pytest.importorskip("schemathesis")
CHECKS = "not_a_server_error,status_code_conformance,content_type_conformance,response_schema_conformance,negative_data_rejection,ignored_auth"


@pytest.mark.parametrize("who", ["lead", "installer", "contractor"])
def test_the_server_answers_as_its_document_says(tmp_path, who, capsys, monkeypatch):
    served = serving.lay(tmp_path).start()
    try:
        ids = [served.hand_in(role)[1] for role in ("installer", "lead")]
        served.settled(ids)
        (tmp_path / "openapi.json").write_bytes(served.ask("GET", "/openapi.json")[2])
        monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
        trusted = authority.path(state_of(served.job))
        command = [
            sys.executable, "-m", "schemathesis.cli", "run", str(tmp_path / "openapi.json"), "--url", f"https://{served.host}", "--tls-verify", str(trusted),
            "-H", f"Authorization: Bearer {served.keys[who]}", "--checks", CHECKS, "--max-examples", os.environ.get("EXAMPLES", "50"), "--seed", "1",
            "--phases", "examples,coverage,fuzzing", "--continue-on-failure", "--no-color",
        ]  # fmt: skip
        done = subprocess.run(command, capture_output=True, text=True, cwd=tmp_path, check=False)
        with capsys.disabled():
            print(done.stdout[-6000:], done.stderr[-1000:])
        assert done.returncode == 0
        assert served.process.poll() is None and "Traceback" not in served.log.read_text()
    finally:
        served.stop()
