"""The geometry of fittings: drawings of what was said, and cut sheets before the knife."""
