"""Concept names of the kinds of fittings, as the grammar of the reader writes them."""

from logbook.facts import KINDS

KIND_CONCEPTS = tuple("K_" + kind.upper() for kind in KINDS)
