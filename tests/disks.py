"""A real small disk for a test that fills it; only where a mount may be made."""

from __future__ import annotations

import os
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import pytest


@dataclass(frozen=True)
class Disk:
    path: Path

    def mount_anew(self, options: str) -> None:
        """`size=20m` gives it more room, `ro` lets it only be read."""
        subprocess.run(["mount", "-o", f"remount,{options}", str(self.path)], check=True)


@contextmanager
def mounted(at: Path, megabytes: int) -> Iterator[Disk]:
    at.mkdir()
    mount = ["mount", "-t", "tmpfs", "-o", f"size={megabytes}m", "tmpfs", str(at)]
    if os.geteuid() or subprocess.run(mount, capture_output=True).returncode:
        pytest.skip("needs a user who may mount a small disk")
    try:
        yield Disk(at)
    finally:
        subprocess.run(["umount", "-l", str(at)], check=True)
