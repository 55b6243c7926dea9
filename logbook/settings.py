"""What a server is started with: where the job lies, where its secrets lie, how it is reached."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path

UPLOAD_LIMIT = 400_000_000  # bytes of one hand-in; the store's own bars are lower per part


@dataclass(frozen=True)
class Settings:
    """`state` holds keys and certificates (0700) and is never handed over with the job folder."""

    folder: Path
    state: Path
    address: str
    secure: bool = False
    upload_limit: int = UPLOAD_LIMIT


def state_of(folder: Path) -> Path:
    """The state folder that belongs to a job folder, in the user's own state directory."""
    home = Path(os.environ.get("XDG_STATE_HOME") or Path.home() / ".local" / "state")
    return home / "fitting-logbook" / folder.resolve().as_posix().strip("/").replace("/", "-")
