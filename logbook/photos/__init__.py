"""Photos as evidence: tags that tie a photo to a piece. What a picture measures is in `decoding/pictures.py`."""
