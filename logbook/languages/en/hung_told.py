"""English words for what hangs on the duct, told by what was let to carry it."""

from __future__ import annotations

from logbook.languages.language import State

_PIECE = r"(?:the |that |this |my |it|number |piece )*[\w -]{0,40}?"

ENGLISH_HUNG_TOLD: tuple[State, ...] = (
    State(
        "accessory_supported",
        False,
        (rf"(?:let|letting|made|making|having) {_PIECE} (?:carry|hold up|hold|bear|take|support)(?: up)?(?: all)?(?: the| that| its)?(?: weight of(?: the| that)?)?(?= (?:\d|\w+[ -](?:\w+[ -])?pound|lb|damper|coil|heater|box|it|weight|whole))",),
        ("LB", "ACCESSORY", "WEIGHS"),
        apart=True,
        cues=(" carry", " hold", " bear", " support", " take"),
    ),
)
