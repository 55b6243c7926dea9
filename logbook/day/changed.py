"""What changed since the edition of a day that somebody signed."""

from __future__ import annotations

from collections.abc import Mapping

from logbook.wording import say


def changes(before: Mapping | None, now: Mapping, language: str) -> list[str]:
    """Lines in the reader's language; nothing without an edition before. Both are reports of one language."""
    if before is None:
        return []
    old = next((one for one in before["reports"] if one["language"] == language), before["reports"][0])
    earlier, later = _sheets(old), _sheets(now)
    lines = [say("report.change.new", language, what=_what(later[piece])) for piece in later if piece not in earlier]
    lines += [say("report.change.gone", language, what=_what(earlier[piece])) for piece in earlier if piece not in later]
    for piece in (one for one in later if one in earlier):
        lines += _of_piece(earlier[piece], later[piece], language, old["language"] == language)
    return lines


def _sheets(report: Mapping) -> dict[str, Mapping]:
    return {sheet["piece"]: sheet for part in ("fittings", "leak_tests") for sheet in report[part]["sheets"]}


def _what(sheet: Mapping) -> str:
    return f"{sheet['what']}, {sheet['run_text']}"


def _findings(sheet: Mapping) -> dict[str, Mapping]:
    return {one["rule"]: one for one in (*sheet["findings"], *sheet["good"])}


def _of_piece(old: Mapping, new: Mapping, language: str, same_language: bool) -> list[str]:
    lines, before, after = [], _findings(old), _findings(new)
    for rule in sorted(before.keys() | after.keys()):
        was, is_now = _stand(before.get(rule), language), _stand(after.get(rule), language)
        if was != is_now:
            lines.append(say("report.change.finding", language, what=_what(new), rule=rule, before=was, after=is_now))
        known = {(one["decision"], one["by"], one["at"]) for one in before.get(rule, {}).get("decisions", ())}
        made = [one for one in after.get(rule, {}).get("decisions", ()) if (one["decision"], one["by"], one["at"]) not in known]
        lines += [say("report.change.decision", language, what=_what(new), decision=one["line"]) for one in made]
    if not lines and same_language and old != new:
        lines.append(say("report.change.other", language, what=_what(new)))
    return lines


def _stand(finding: Mapping | None, language: str) -> str:
    """Verdict and where it stands, in the reader's language whatever the earlier report was printed in."""
    if finding is None:
        return "–"
    stands = say(f"facts.stands.{finding['stands'].replace(' ', '-')}", language) if finding["stands"] else ""
    return ", ".join(part for part in (say(f"report.verdict.{finding['verdict']}", language), stands) if part)
