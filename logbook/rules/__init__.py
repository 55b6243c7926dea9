"""The rule book, written out in its order. Each rule is data and one pure function in the file of its family."""

from __future__ import annotations

from logbook import findings
from logbook.findings import Finding, Rule, judging
from logbook.job import Job
from logbook.piece import Piece
from logbook.rules import (
    bounds,
    closing,
    damage,
    edges,
    elbows,
    hanging,
    identity,
    joints,
    looking,
    metal,
    photos,
    plan,
    printed,
    slopes,
    stapling,
)
from logbook.runs import Around

RULES: tuple[Rule, ...] = (
    identity.MARK_SAID,
    identity.SIZES_SAID,
    slopes.TRANSITION_SLOPE,
    slopes.SIZES_AGREE,
    slopes.SLOPE_AGREES,
    slopes.TRANSITION_ANGLE,
    slopes.OFFSET_ANGLE,
    elbows.ELBOW_VANES,
    elbows.ELBOW_THROAT,
    edges.GROOVE_STEP,
    stapling.FASTENED,
    stapling.STAPLE_SPACING,
    stapling.STAPLE_LEG,
    stapling.STAPLE_CLINCH,
    stapling.CROSS_TABS,
    closing.TAPED,
    closing.CLOSURE_LISTED,
    closing.TAPE_WIDTH,
    closing.TAPE_COLD,
    closing.RUBBED_DOWN,
    closing.SURFACE_CLEAN,
    edges.TRIMMED,
    edges.EDGES_KNOWN,
    edges.MADE_FROM_END,
    edges.AIR_LEAVES_BY,
    closing.ALL_SIDES,
    joints.JOINT_TIGHT,
    joints.JOINED,
    damage.DAMAGE_REPAIRED,
    damage.DAMAGE_METHOD,
    joints.NOTHING_OPEN,
    plan.AS_PLANNED,
    plan.RUN_SIZES,
    plan.RUN_ENDS,
    metal.METAL_FASTENING,
    metal.METAL_CLOSURE,
    metal.TABS_BENT,
    bounds.ALLOWED_THERE,
    bounds.STATIC_PRESSURE,
    bounds.AIR_TEMPERATURE,
    bounds.VELOCITY,
    bounds.ASPECT_RATIO,
    bounds.SPAN_UNREINFORCED,
    hanging.HANGER_SPACING,
    hanging.ACCESSORY_HUNG,
    bounds.LEAK_TEST,
    photos.PHOTO_THERE,
    photos.PHOTO_OF_OTHER,
    photos.PHOTO_REUSED,
    photos.PHOTO_TIME,
    photos.PHOTO_SHARP,
    looking.LOOKED_AGREES,
)
BY_ID = {rule.id: rule for rule in RULES}


def judge(piece: Piece, around: Around) -> tuple[Finding, ...]:
    """The due findings of a piece, in the order of the book."""
    return findings.judge(piece, around, RULES)


def of_the_job(job: Job) -> tuple[tuple[str, Finding], ...]:
    """What the job file and the schedule themselves say, judged once: (run or mark, finding)."""
    around = Around(job=job)
    nobody = Piece(None, job.id, None, None, (), ())
    return tuple(
        (about, judging.of_outcome(rule, outcome, nobody, job)) for rule, about, outcome in bounds.of_the_job(around)
    )


def book(job: Job, language: str) -> list[dict[str, object]]:
    """The JSON documents of the rules under a job, in the order of the book."""
    return printed.book(RULES, job, language)


def book_digest(job: Job) -> str:
    """The digest of the whole book under a job: findings of a signed day are kept with it."""
    return judging.job_digest(job, RULES)
