"""Shared by every test: one way to run hypothesis."""

from hypothesis import HealthCheck, settings

settings.register_profile(
    "logbook", derandomize=True, max_examples=50, deadline=None, suppress_health_check=[HealthCheck.too_slow]
)
settings.load_profile("logbook")
