"""Shared by every test: one way to run hypothesis, one pair of real ears, and which tests stay together when two processes share the suite."""

import os

import pytest
from hypothesis import HealthCheck, settings

os.environ.setdefault("OMP_WAIT_POLICY", "PASSIVE")  # before torch: threads that spin on a busy machine take minutes for seconds
settings.register_profile(
    "logbook", derandomize=True, max_examples=50, deadline=None, suppress_health_check=[HealthCheck.too_slow]
)
settings.load_profile("logbook")


HEAR = ("test_answer", "test_bad_sound", "test_demo", "test_hearing", "test_numbers_again", "test_weights")  # with Whisper itself
READ = ("test_beside", "test_piece_by_piece", "test_reading", "test_reading_laws")  # nothing but text: each test goes where there is room


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items):
    """A file stays in one process, for what its tests share is made once; and all that hears, for its weights are loaded once."""
    for item in items:
        if item.path.stem not in READ:
            item.add_marker(pytest.mark.xdist_group("ears" if item.path.stem in HEAR else item.path.stem))


@pytest.fixture(scope="session")
def ears():
    """Whisper itself, loaded once for every test that hears with it."""
    pytest.importorskip("whisper")
    from logbook.hearing import engine
    from logbook.mistake import Mistake

    made = engine.make("whisper")
    assert not isinstance(made, Mistake), made
    return made
