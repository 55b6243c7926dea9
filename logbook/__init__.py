"""A job-site voice and photo logbook with fitting QA for fibrous-glass duct board."""

__version__ = "0.1.0"
