"""What Whisper reads before it listens: a note of this trade, in the speaker's language, of no job.

A prompt written like a note makes trade words far likelier (median word error 0.30 to 0.17 on 48 synthetic
notes); bare terms make it invent. But on noise Whisper repeats its prompt, so the example's numbers are ones
that no job has, and a transcript that holds one of them, or six prompt words in a row, is an echo.
"""

from __future__ import annotations

import re

PROMPTS = {
    "en": (
        "Straight section, 19 by 13, 41 inches long, stapled and taped, scrim showing. "
        "Fitting 97 on run 88, transition, 19 by 13 to 13 by 13, top drops 3 inches, back 41, flat on the bottom, "
        "made from the female end, shiplap on the sides, butt edge top and bottom, low step inside, panel seated. "
        "Stapled every 2 inches, stapled and taped, 3 inch 181A-P tape, wiped it first, rubbed it down, "
        "scrim doesn't show, no gaps, hung it, tied in and taped. Ninety degree elbow with turning vanes, tee, "
        "branch, wye, offset, reducer, round collar, tabs bent tight, end cap, plenum, mastic, no flap, cross tabs, trimmed."
    ),
    "es": (
        "Pieza 97 de la línea 88, transición, 19 por 13 a 13 por 13, arriba baja 3 pulgadas, atrás 41 pulgadas, "
        "recta por abajo. Hecha del lado hembra, rebaje a los lados, canto recto arriba y abajo. "
        "Grapada cada 2 pulgadas, encintada y bien frotada, cinta de 3 pulgadas, 181A-P, falta la cinta de un lado, "
        "sin daños. Codo de noventa con aletas, derivación, collarín, tapa, ducto, macho, masilla, lámina."
    ),
}
PROMPT_NUMBERS = ("97", "88", "41")
PROMPT_SIZE = {"en": re.compile(r"\b19\s*(?:by|x)\s*13\b"), "es": re.compile(r"\b19\s*(?:por|x)\s*13\b")}
ECHO_RUN = 6  # prompt words in a row that nobody says by chance


def words(text: str) -> list[str]:
    return re.findall(r"[\w]+(?:-[\w]+)*", text.casefold())


def echoes(text: str, language: str) -> bool:
    """Whether the text repeats the prompt of `language` instead of what was said."""
    said = words(text)
    if any(number in said for number in PROMPT_NUMBERS) or PROMPT_SIZE[language].search(text.casefold()):
        return True
    prompt = words(PROMPTS[language])
    runs = {tuple(prompt[i : i + ECHO_RUN]) for i in range(len(prompt) - ECHO_RUN + 1)}
    return any(tuple(said[i : i + ECHO_RUN]) in runs for i in range(len(said) - ECHO_RUN + 1))
