"""Sound becomes a transcript: Whisper, or prepared transcripts where there is no torch."""
