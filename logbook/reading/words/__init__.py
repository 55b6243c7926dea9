"""The words of a text: tokens, numbers, measures, items of the lexicon, and patterns that are tried only where they can stand."""
