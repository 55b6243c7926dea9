"""What is installed is whole: every file of the package and every schema is carried by the wheel."""

import subprocess
import sys
import zipfile
from pathlib import Path

HERE = Path(__file__).parent.parent


def test_the_wheel_carries_every_file_and_every_schema(tmp_path):
    source = tmp_path / "source"
    subprocess.run(["git", "clone", "-q", str(HERE), str(source)], check=True)
    command = [sys.executable, "-m", "pip", "wheel", "-q", "--no-deps", "--disable-pip-version-check", "-w", str(tmp_path), str(source)]
    subprocess.run(command, check=True, capture_output=True)
    (wheel,) = tmp_path.glob("fitting_logbook-*.whl")
    with zipfile.ZipFile(wheel) as archive:
        carried = set(archive.namelist())
    wanted = {path.relative_to(source).as_posix() for path in (source / "logbook").rglob("*") if path.is_file()}
    assert wanted - carried == set()
    schemas = {name.rpartition("/")[2] for name in carried if "/share/fitting-logbook/schemas/" in name}
    assert schemas == {path.name for path in (source / "schemas").glob("*.json")}
