"""The pieces and what is told of each: drafts, roles of measures, entries."""
