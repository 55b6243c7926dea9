"""All text people read, by key, in every language of the product.

One folder a language, one TOML file an area (`mistakes`, `rules`, `facts`, `pages`, …); the key of a text is
`area.` and the path of its tables: `say("mistakes.empty-file.error", "es", name="7.ogg")`. Placeholders are
plain names in braces. A test compares keys and placeholders of the languages and finds keys that nobody uses.
"""

from __future__ import annotations

import tomllib
from functools import cache
from importlib.resources import files

LANGUAGES = ("en", "es")


@cache
def texts(language: str) -> dict[str, str]:
    """Every text of a language, flat: `{"mistakes.empty-file.error": "…"}`."""
    flat: dict[str, str] = {}
    for file in sorted(files(__name__).joinpath(language).iterdir(), key=lambda f: f.name):
        if file.name.endswith(".toml"):
            _flatten(tomllib.loads(file.read_text(encoding="utf-8")), file.name.removesuffix(".toml"), flat)
    return flat


def _flatten(table: dict, path: str, flat: dict[str, str]) -> None:
    for key, value in table.items():
        if isinstance(value, dict):
            _flatten(value, f"{path}.{key}", flat)
        else:
            flat[f"{path}.{key}"] = value


def say(key: str, language: str, /, **values: object) -> str:
    """The text of `key` with its placeholders filled. KeyError: no such text, or a value is missing."""
    return texts(language)[key].format_map(values)


def has(key: str, language: str = "en") -> bool:
    return key in texts(language)
