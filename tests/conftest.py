"""Shared by every test: one way to run hypothesis, one pair of real ears, and the package compiled once for all the processes that are started."""

import compileall
import os
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

os.environ.setdefault("OMP_WAIT_POLICY", "PASSIVE")  # before torch: threads that spin on a busy machine take minutes for seconds
settings.register_profile(
    "logbook", derandomize=True, max_examples=50, deadline=None, suppress_health_check=[HealthCheck.too_slow]
)
settings.load_profile("logbook")


def pytest_configure(config):
    """Where Python is told to write no bytecode, every server, worker and child of a test would compile the package anew: a second each."""
    if not hasattr(config, "workerinput"):
        compileall.compile_dir(Path(__file__).parent.parent / "logbook", quiet=1)


@pytest.fixture(scope="session")
def ears():
    """Whisper itself, loaded once for every test that hears with it."""
    pytest.importorskip("whisper")
    from logbook.hearing import engine
    from logbook.mistake import Mistake

    made = engine.make("whisper")
    assert not isinstance(made, Mistake), made
    return made
