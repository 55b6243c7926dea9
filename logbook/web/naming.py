"""The name phones reach this machine by. It stays: the queue on a phone belongs to the address that it was paired with."""

from __future__ import annotations

import ipaddress
import socket
from pathlib import Path

from logbook.mistake import Mistake
from logbook.web.authority import may_vouch_for

KEPT = "name"  # in the state folder
EVERYWHERE = ("0.0.0.0", "::", "")
HERE = ("127.0.0.1", "::1", "localhost")


def name_of(given: str | None, host: str, state: Path) -> str | Mistake:
    """The given name, else the one of the start before, else the host; Mistake where nobody could know it."""
    kept = state / KEPT
    if given:
        state.mkdir(mode=0o700, parents=True, exist_ok=True)
        kept.write_text(given, encoding="utf-8")
        return given
    if kept.exists():
        return kept.read_text(encoding="utf-8").strip()
    if host in EVERYWHERE:
        example = next(iter(addresses()), "192.168.1.20")
        return Mistake("store.needs-name", "--name", {"host": host or "::", "example": example})
    return "localhost" if host in HERE else host


def addresses() -> tuple[str, ...]:
    """The private addresses of this machine, which its certificate should hold beside the name; asks nobody else."""
    found = []
    for family, place in ((socket.AF_INET, ("10.255.255.255", 9)), (socket.AF_INET6, ("fd00::1", 9))):
        with socket.socket(family, socket.SOCK_DGRAM) as probe:
            try:
                probe.connect(place)  # a datagram socket: chooses the way out, sends nothing
            except OSError:
                continue
            found.append(probe.getsockname()[0])
    plain = (ipaddress.ip_address(one.split("%")[0]) for one in found)
    return tuple(dict.fromkeys(str(one) for one in plain if not one.is_loopback and may_vouch_for(one)))
