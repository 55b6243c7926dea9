"""What signed in, as a lead knows it: the kind of phone or computer and the browser, from what the browser says of itself.

Only these two words are kept (`android-phone chrome`), not the browser's whole line. Rows of before hold the beginning
of that line, which tells the machine and not surely the browser; a key of a script, and whatever somebody called a
device, is told as it stands.
"""

from __future__ import annotations

from logbook.wording import has, say

# what stands in the line -> the word; the first that fits counts
MACHINES = (
    (("iPhone",), "iphone"), (("iPad",), "ipad"), (("Android", "Mobile"), "android-phone"), (("Android",), "android"), (("CrOS",), "chromebook"),
    (("Windows",), "windows"), (("Macintosh",), "mac"), (("Linux",), "linux"),
)  # fmt: skip
BROWSERS = (
    ("Edg", "edge"), ("OPR/", "opera"), ("OPT/", "opera"), ("SamsungBrowser/", "samsung"), ("FxiOS/", "firefox"), ("Firefox/", "firefox"), ("CriOS/", "chrome"),
    ("Chrome", "chrome"), ("Safari/", "safari"),
)  # fmt: skip
UNKNOWN = "unknown"


def known_by(line: str) -> str:
    """The two words of a browser's line: `android-phone chrome`; `unknown` stands for what it does not tell."""
    machine = next((word for signs, word in MACHINES if all(sign in line for sign in signs)), UNKNOWN)
    return f"{machine} {next((word for sign, word in BROWSERS if sign in line), UNKNOWN)}"


def told(called: str, language: str) -> str:
    """A device as people read it."""
    words = [known_by(called).split(" ")[0], UNKNOWN] if called.startswith("Mozilla/") else called.split(" ")
    if len(words) != 2 or not all(has(f"people.{part}-{word}", language) for part, word in zip(("machine", "browser"), words)):
        return called
    machine, browser = words
    if called.startswith("Mozilla/"):
        return say(f"people.machine-{machine}", language)
    return say("people.machine-browser", language, machine=say(f"people.machine-{machine}", language), browser=say(f"people.browser-{browser}", language))
