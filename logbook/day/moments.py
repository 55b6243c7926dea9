"""Dates and times as people read them; times stay in the zone they were written with."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime

from logbook.wording import say


def day(iso: str, language: str) -> str:
    """`2026-10-13` -> Tuesday, October 13, 2026."""
    when = date.fromisoformat(iso)
    names = {"weekday": say(f"report.weekday.{when.isoweekday()}", language), "month": say(f"report.month.{when.month}", language)}
    return say("report.date.long", language, day=when.day, year=when.year, **names)


def at(iso: str, language: str) -> str:
    """The hour and minute, as the clock on site showed it."""
    when = datetime.fromisoformat(iso)
    return say("report.date.at", language, hour=f"{when.hour:02}", minute=f"{when.minute:02}")


def full(iso: str, language: str) -> str:
    when = datetime.fromisoformat(iso)
    offset = when.strftime("%z")
    return say(
        "report.date.full", language, month=say(f"report.month.{when.month}", language), day=when.day, year=when.year,
        hour=f"{when.hour:02}", minute=f"{when.minute:02}", offset=f"UTC{offset[:3]}:{offset[3:5]}" if offset else "",
    )  # fmt: skip


def on_day(iso: str, date_iso: str, language: str) -> str:
    """The hour alone on that day, else date and hour."""
    return at(iso, language) if iso[:10] == date_iso else full(iso, language)


def said_by(note: Mapping, date_iso: str, language: str) -> str:
    """Who said a note and when; what his phone's clock said is told beside, where it could not be believed."""
    if "counted_at" in note:
        return say("report.said-clock-off", language, name=note["spoken_by"], **clock_off(note, language))
    return say("report.said-at", language, name=note["spoken_by"], at=on_day(note["spoken_at"], date_iso, language))


def clock_off(note: Mapping, language: str) -> dict[str, str]:
    return {"told": full(note["spoken_at"], language), "received": full(note["received_at"], language)}
