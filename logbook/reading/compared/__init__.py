"""Claims set against one another: corrected, mended since, put off, meant of a part, of the rest or of another piece."""
