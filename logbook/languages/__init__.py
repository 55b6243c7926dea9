"""What the reader knows of a language: words and the concepts of the trade they stand for. Data only."""

from __future__ import annotations

from logbook.languages import en, es
from logbook.languages.language import Language

LANGUAGES: dict[str, Language] = {"en": en.LANGUAGE, "es": es.LANGUAGE}
