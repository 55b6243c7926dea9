"""Where a note names its pieces, and which words name none."""
