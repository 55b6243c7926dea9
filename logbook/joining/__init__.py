"""Notes join into pieces: by the time they were spoken, whatever the order they came in.

`current` is what one note says now (reading, what the hand pressed, presses in order), `whose` finds the piece an
entry belongs to, `adding` and `moves` let a later saying meet an earlier one, `log` keeps notes and decisions in
the order of their times and puts a late one in its place.
"""
