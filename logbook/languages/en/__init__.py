"""English: the words that the reader knows."""
