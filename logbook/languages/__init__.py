"""What the reader knows of a language: words and the concepts of the trade they stand for. Data only."""

from __future__ import annotations

from logbook.languages.en import language as en
from logbook.languages.es import language as es
from logbook.languages.language import Language

LANGUAGES: dict[str, Language] = {"en": en.LANGUAGE, "es": es.LANGUAGE}
