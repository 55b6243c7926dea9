"""What people go and see for themselves, beside what the installers said: pure functions on what the log holds.

    lots.py       the spot check: a few pieces drawn so that the draw can be shown again, and said against found
    areas.py      the pieces and planned fittings of a job by area
    rounds.py     the walk list: the answers to the published check-list questions, area by area
    releases.py   what is not yet joined, looked at or settled in an area before its ceiling closes
    leaks.py      leak-test records: allowable, measured, instrument, calibration, witness

What was seen is kept as acts of its own. It never changes what was said and never stands among it.
"""
