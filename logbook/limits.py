"""The limits of the rule book: name, shape, unit and default of every number or word that a rule compares with.

No number lives inside a rule function: a rule reads `job.limit("staple_spacing")`, and the job file may set each of
them under `[limits]`. A published limit has no tolerance; a limit of the shop's own is met inside its tolerance, which
stands here too. Where a default comes from is told by the rule's `Source`; `note` says what the row itself is.

Shapes and their value inside the process:
    length          Fraction of inches            slope      (Fraction, Fraction): rise in run
    number, share   Fraction                      choice     str, one of `values`
    optional        Fraction of inches, or None: nobody published one and the job may fill it
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True)
class Limit:
    name: str
    shape: str
    default: object
    unit: str | None = None
    values: tuple[str, ...] = ()
    note: str = ""


def _in(name, value, note=""):
    return Limit(name, "length", Fraction(value), "in", note=note)


def _number(name, value, unit, note=""):
    return Limit(name, "number", Fraction(value), unit, note=note)


END = ("female", "male")

LIMITS: tuple[Limit, ...] = (
    # transitions, offsets, elbows
    Limit("slope", "slope", (Fraction(2), Fraction(12)), note="steepest side of a transition"),
    _in("set_back_tolerance", "1/2", "a set-back may be short by this"),
    Limit("set_back_share", "share", Fraction(5, 100), note="and never by more than this share of the set-back"),
    _in("size_tolerance", "1/8", "sizes and moves"),
    _in("slope_said_tolerance", "1/4", "a move against the slope said beside it"),
    _number("widening_angle", 15, "°", "included angle of a pair of sides that widens along the air"),
    _number("bare_turn", 60, "°", "turn of one cut from which a square throat needs vanes"),
    _number("throat_ratio", "1.5", None, "centreline radius over width"),
    Limit("groove_step", "choice", "inside", values=("inside", "outside")),
    Limit("made_from", "choice", "female", values=END),
    Limit("air_leaves_by", "choice", "female", values=END),
    # closing
    _in("staple_spacing", 2),
    _in("staple_leg", "1/2", "1 in. board"),
    Limit("staple_leg_thick", "optional", None, "in", note="thicker board: from its own listing sheet"),
    Limit("staple_clinch", "choice", "outward", values=("outward", "inward")),
    _in("cross_tab_length", 8),
    _in("cross_tab_spacing", 12),
    _in("tape_width_1", "2.5", "pressure tape, 1 in. board"),
    _in("tape_width_1_5", 3, "pressure tape, 1-1/2 in. board, advice"),
    _in("tape_width_2", 3, "pressure tape, 2 in. board"),
    _in("tape_width_heat", 3, "heat-activated tape"),
    _number("cold", 50, "°F", "pressure tape at or below this is preheated"),
    _number("all_sides", 4, None),
    _in("gap", 0),
    _in("tape_mends", "1/2", "widest tear that tape alone may mend"),
    # metal
    _in("screw_spacing", 16, "metal on board"),
    _in("screw_spacing_sleeve", 12, "damper sleeve"),
    _in("washer_size", "2.5"),
    _number("metal_tape_pressure", 1, "in. w.g.", "from here on fabric and mastic at metal"),
    # limits of use
    _number("static_pressure", 2, "in. w.g.", "either sign"),
    _number("air_temperature", 250, "°F"),
    _number("velocity", 2400, "fpm"),
    _number("aspect_ratio", 4, None),
    _number("riser_storeys", 2, None),
    _number("span_pressure", "0.5", "in. w.g.", "the three spans below hold up to this pressure"),
    _in("span_475", 36),
    _in("span_800", 36),
    _in("span_1400", 42),
    # hanging
    _in("hanger_wide_from", 48, "width from which the wide row holds"),
    _in("hanger_low_below", 12, "height below which the low row holds"),
    _in("hanger_deep_from", 24, "height from which the deep row holds"),
    _in("hanger_spacing_wide", 48),
    _in("hanger_spacing_low", 48),
    _in("hanger_spacing_middle", 72),
    _in("hanger_spacing_deep", 96),
    _number("accessory_weight", 50, "lb"),
    # leak test
    _number("leakage_class", 6, "cfm/100 ft²"),
    # photos
    _number("photos", 1, None),
    _number("photo_minutes", 60, "min"),
    _number("photo_sharpness", 6, None, "variance of the Laplacian at 1024 px: real photos measured 12 and up sharp, 1 to 4 blurred"),
    _number("photo_light", 35, None, "mean grey value, 0 to 255"),
    _number("photo_likeness", 2, "bits", "differing bits of two 64-bit picture prints, at most"),
    # what hedges and faint words are worth
    _in("hedge_length", "1/2", "'about' is worth the greater of this"),
    Limit("hedge_share", "share", Fraction(5, 100), note="and this share of the value"),
    # measured on 4,573 words that base Whisper heard in synthetic trade clips: from 0.4 on a word is oftener right than
    # wrong in English (0.64) and in Spanish (0.54), a number from 0.5 on is right three times in four
    Limit("faint", "share", Fraction(2, 5), note="a word heard below this probability is faint"),
    Limit("faint_number", "share", Fraction(1, 2), note="a number heard below this probability is faint"),
)
BY_NAME = {limit.name: limit for limit in LIMITS}
DEFAULTS = {limit.name: limit.default for limit in LIMITS}

# What may stand in for speech, and by which way: `job` is [standing] of the job file (service, pressures and
# temperatures also under [runs]), `shift` a start-of-shift note, `phrase` a crew phrase said aloud on each piece.
# Only materials and method may stand.
STANDS: dict[str, tuple[str, ...]] = {
    "service": ("job", "shift"),
    "made_from": ("shift",),
    "air_leaves_by": ("job", "shift"),
    "shiplap_sides": ("shift",),
    "butt_sides": ("shift",),
    "groove_step": ("shift", "phrase"),
    "panel_seated": ("phrase",),
    "stapled": ("phrase",),
    "cross_tabs": ("phrase",),
    "taped": ("phrase",),
    "rubbed_down": ("phrase",),
    "staple_spacing": ("shift", "phrase"),
    "staple_leg": ("job", "shift"),
    "staple_clinch": ("job", "shift"),
    "cross_tab_length": ("shift", "phrase"),
    "cross_tab_spacing": ("shift", "phrase"),
    "closure": ("job", "shift"),
    "closure_mark": ("job", "shift"),
    "tape_width": ("job", "shift"),
    "surface_temperature": ("shift",),
    "hanger_spacing": ("job",),
    "reinforced": ("job",),
    "board_thickness": ("job", "shift"),
    "board_class": ("job", "shift"),
    "static_pressure": ("job",),  # also a run
    "air_temperature": ("job",),
    "screw_spacing": ("shift",),
    "washer_size": ("shift",),
}

# The print on a listed closure (UL 181A parts I, II, III): one mark never passes another closure.
MARK_OF = {"tape_pressure": "181A-P", "tape_heat": "181A-H", "mastic": "181A-M"}


def may_stand(name: str, via: str) -> bool:
    return via in STANDS.get(name, ())

# The book's order; `rules.RULES` holds the same ids in the same order (a test compares them).
RULE_IDS: tuple[str, ...] = (
    "mark-said", "sizes-said", "transition-slope", "sizes-agree", "slope-agrees", "transition-angle", "offset-angle",
    "elbow-vanes", "elbow-throat", "groove-step", "fastened", "staple-spacing", "staple-leg", "staple-clinch",
    "cross-tabs", "taped", "closure-listed", "tape-width", "tape-cold", "rubbed-down", "surface-clean", "trimmed",
    "edges-known", "made-from-end", "air-leaves-by", "all-sides", "joint-tight", "joined", "damage-repaired",
    "damage-method", "nothing-open", "as-planned", "run-sizes", "run-ends", "metal-fastening", "metal-closure",
    "tabs-bent", "allowed-there", "static-pressure", "air-temperature", "velocity", "aspect-ratio",
    "span-unreinforced", "hanger-spacing", "accessory-hung", "leak-test", "photo-there", "photo-of-other",
    "photo-reused", "photo-time", "photo-sharp", "looked-agrees",
)  # fmt: skip
