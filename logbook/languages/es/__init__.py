"""Spanish: the words that the reader knows."""
