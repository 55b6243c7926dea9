"""English words for what hangs on the duct, told by what was let to carry it."""

from __future__ import annotations

from logbook.languages.language import State

_HOLDERS = r"(?:hangers?|straps?|supports?|rods?|brackets?|trapezes?|chains?|cables?|wires?)"
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
    State(
        "accessory_supported",
        True,
        (
            rf"(?:ran|dropped|hung|added|installed|(?<!\w)i put|we put)(?: (?:a|two|three|four|pair|of|couple|some|its|own|separate|new|heavy|threaded|\d/\d|\w+ inch))* {_HOLDERS} (?:to|on|under|for|down to|around) (?:it|that(?! (?:one|side))|the (?:damper|coil|heater|fan|box))\b",
            r"(?:board|duct|straight|tee|branch|elbow|piece)(?: \d+)? (?:doesn't|don't|does not|isn't|never)(?: have to| has to)? (?:carry|carrying|hold|holding|take|taking|bear)(?: up)?(?: (?:a thing|a pound|an ounce|any of it|any weight|any of the weight|anything|the weight|the load|it))(?! yet)",
        ),
        ("LB", "ACCESSORY", "WEIGHS"),
        apart=True,
        cues=(" rod", " strap", " hanger", " wire", " chain", " support", " cable", " trapeze", " bracket", " carry", " hold", " tak", " bear"),
    ),
)
