"""English with the build of Spanish, as men speak it who learned it on the job."""

from __future__ import annotations

from logbook.languages.calques import Calques

ENGLISH_CALQUES = Calques(
    turned=frozenset("doubled folded closed closed to close closes opened open opens turned pointing pointed point points look looks looking facing face faces bended bent".split()),
    stays=frozenset("remain remains remained stay stays stayed stood finished finish result resulted get got".split()),
    me=frozenset(("me",)),
    his=frozenset("his her".split()),
    him=frozenset("him her it them this".split()),
    lacks=frozenset("lacks lack lacking".split()),
    separated=frozenset("separated separate".split()),
    between=frozenset(("between",)),
    measures=frozenset("measure measures measured measuring has had".split()),
    still=frozenset(("still",)),
    doubled=frozenset("doubled bended folded".split()),
)
