"""What is told of a part in words that nobody reads puts what was told last in doubt; what is harmless there does not.

The sentences are our own; there is no outside corpus of notes that a reader cannot read.
"""

from __future__ import annotations

import pytest

from logbook.reading import read

LINES = (
    ("Straight 27, stapled at two inches, only the last stretch by the door got away from me.", {"stapled", "staple_spacing"}),
    ("Straight 38, 12 by 8, taped. One corner of it gave me trouble and I gave up on it.", {"taped"}),
    ("Straight 16, stapled every two inches, on the underside they wander a bit.", {"stapled", "staple_spacing"}),
    ("Sleeve 9. Cross tabs every foot, eight inches long. The two at the end are shorter.", {"cross_tabs"}),
    ("Straight 12, 12 by 8, taped. The back was awkward but I got it.", set()),
    ("Straight 16, 12 by 8, taped all around, the bottom took me a while because of the pipe.", set()),
    ("Straight 18, 12 by 8, stapled and taped, rubbed down on every side, the label's on the left.", set()),
    ("Straight 20, stapled every two inches, one staple bent and I pulled it and shot another.", set()),
    ("Straight 22, taped and rubbed. The back end is two foot off the wall.", set()),
    ("Tee 24, taped, joint tight, no gap at the joint, facing clean.", set()),
    ("Straight 28, no flap, cross tabs but none on the bottom.", {"cross_tabs", "stapled"}),
    ("Straight 30, taped. It fell off the horses.", {"facing_damage"}),
    ("Straight 32, taped. It fell off the horses, not a mark on it.", set()),
    ("Offset 34, mastic on half of it.", set()),
    ("Offset 26, I ran low on staples so the last side got one every four inches. Taped.", set()),
)


@pytest.mark.parametrize(("text", "doubted"), LINES, ids=[text for text, _ in LINES])
def test_a_part_that_nobody_read_puts_what_was_told_last_in_doubt(text, doubted):
    (entry,) = read(text).fittings
    assert {name for one in entry.unread for name in one.about} == doubted
