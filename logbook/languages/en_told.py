"""English words that take an act back, answer for it or weigh it."""

from logbook.languages.en_came_off import ENGLISH_CAME_OFF
from logbook.languages.en_echoes import ENGLISH_ECHOES
from logbook.languages.en_voices import ENGLISH_VOICES
from logbook.languages.en_weighed import ENGLISH_WEIGHED
from logbook.languages.told import Told

ENGLISH_TOLD = Told(weighed=ENGLISH_WEIGHED, echoes=ENGLISH_ECHOES, came_off=ENGLISH_CAME_OFF, voices=ENGLISH_VOICES)
