"""The day drawn: slopes and spacings against their limits, and the runs that were worked on."""

from __future__ import annotations

from collections.abc import Mapping

from logbook.day.one_day import Day
from logbook.day.sheet import DASH
from logbook.geometry.plot import Mark, plot
from logbook.geometry.run_drawing import ODD, joint_words, pages
from logbook.geometry.run_drawing import draw as draw_run
from logbook.wording import say

PLOT_ROWS = 24  # a plot stays on one page
RUN_STOPS = 12  # pieces of a run in one drawing: two of them stand beside each other on a page
# rule, the value and the limit in `reckoned`, unit
PLOTS = (
    ("transition-slope", "slope_in_12", "limit_in_12", "in-12"),
    ("staple-spacing", "spacing_in", "limit_in", "in"),
    ("cross-tabs", "spacing_in", "most_spacing_in", "in"),
    ("hanger-spacing", "spacing_in", "limit_in", "in"),
    ("metal-fastening", "spacing_in", "limit_in", "in"),
)


def limits(day: Day, language: str) -> dict:
    """Slopes and spacings plotted against their limits, a mark a fitting."""
    plots = []
    for rule, value, limit, unit in PLOTS:
        marks = [
            Mark(_short(piece, language), doc["reckoned"].get(value), doc["reckoned"].get(limit), doc["verdict"])
            for piece in day.fittings()
            for doc in piece["findings"]
            if doc["rule"] == rule and (doc["verdict"] == "unsaid" or doc["reckoned"].get(value) is not None)
        ]
        for start in range(0, len(marks), PLOT_ROWS):
            drawn = plot(marks[start : start + PLOT_ROWS], language, say(f"report.plot.{rule}", language), say(f"report.plot.{unit}", language), f"p-{language}-{rule}-{start}")
            plots.append({"rule": rule, "svg": drawn.svg, "title": drawn.title, "told": drawn.told, "width": drawn.width, "height": drawn.height})
    return {"title": say("report.limits", language), "plots": plots, "nothing": say("report.no-limits", language)}


def runs_drawn(day: Day, language: str) -> dict:
    """Every run of the day as it was said so far, cut where it is too long for a page, with the joints that do not mate in words."""
    plots, odd = [], []
    for line in day.lines:
        parts = pages(line, RUN_STOPS)
        for at, part in enumerate(parts):
            drawn = draw_run(part, language, f"run-{language}-{len(plots)}")
            title = drawn.title if len(parts) == 1 else say("report.run-part", language, title=drawn.title, part=at + 1, parts=len(parts))
            plots.append({"rule": "run-sizes", "svg": drawn.svg, "title": title, "told": drawn.told, "width": drawn.width, "height": round(drawn.height, 1)})
        odd += [
            say("report.run-odd", language, run=line.run, says=joint_words(line, at, language)) for at, joint in enumerate(line.joints) if joint.state in ODD
        ]
    return {"title": say("report.runs-drawn", language), "plots": plots, "odd": odd, "nothing": say("report.no-runs", language)}


def _short(piece: Mapping, language: str) -> str:
    run = say("report.run", language, run=piece["run"]) if piece["run"] else ""
    return " · ".join(part for part in (run, piece["mark"] or DASH) if part)[:16]
