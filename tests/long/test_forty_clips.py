"""All forty clips at once and each alone, by Whisper itself: two minutes of hearing; some of them are heard in tests/test_hearing.py."""

import os
import sys

sys.path.insert(0, os.path.dirname(os.path.dirname(__file__)))
from test_hearing import FORTY, HERE, alike, alone  # noqa: E402

from logbook.decoding import sound  # noqa: E402


def test_forty_clips_together_are_heard_as_each_alone(ears):
    clips = [sound.decode(HERE / row["file"]) for row in FORTY]
    together = ears.hear(clips, languages=[row["language"] for row in FORTY])
    assert len(clips) == 40 and any(one.words for one in together)
    alike(together, alone(ears, clips, FORTY))
