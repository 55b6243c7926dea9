"""English that names a thing of the work and means another: the channel of a stranger's videos ("subscribe to the channel" is what a recogniser hears in
silence) or of a show reinforces nothing.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

ENGLISH_NOT_OF_THE_WORK = (
    Plainer(
        (" channel",),
        r"(?:subscrib\w+|thanks? (?:you )?(?:so much )?for (?:watching|listening|tuning in|supporting)|welcome (?:back )?to|check out|visit|video\w*|tun(?:e|ed|ing) in)(?![\w'])[^.!?;]{0,40}? (?P<x>(?:the|my|our|this|your|another|a) channel)(?![\w'])",
        (("x", "the show"),),
    ),
)
