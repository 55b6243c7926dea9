"""Steady noise made quieter before Whisper listens: compressors, fans, wind, hum.

What a recording's quietest moments hold is taken for its noise, and of each moment that much is taken away in each
band; `QUIETEST` is always left, so that nothing is silenced and no noise starts to ring. Where nothing stands out from
the noise the sound stays as it came: noise made quieter is less like noise, and Whisper must know it for what it is.
The recording itself is kept and played as it came.
"""

from __future__ import annotations

import numpy as np

FRAME, HOP = 512, 128  # samples: 32 and 8 ms at 16 kHz
SHORTEST = 64_000  # samples: in less than four seconds there is hardly a pause to hear the noise in, and notes were lost
QUIET = 0.15  # the share of moments that is taken for noise
TAKEN = 1.5  # times the noise's power
QUIETEST = 0.4  # of the amplitude that is left at least
SPEECH = slice(10, 110)  # bands of 31 Hz: 300 to 3,400 Hz, where voices are and hum and rumble are not
# Loud over quiet moments there: steady noise and engines 1.2 to 1.9, music 3, speech at 8 dB 9 and more
STANDS_OUT, LOUD = 4.0, 0.9
TINY = 1e-12


def cleaned(samples: np.ndarray) -> np.ndarray:
    """float32 samples at 16 kHz, as many as came."""
    if samples.size < SHORTEST:
        return samples
    spectra = _spectra(samples)
    power = spectra.real**2 + spectra.imag**2  # (moments, bands)
    voice = power[:, SPEECH].sum(1)
    quiet = np.quantile(voice, QUIET)
    if np.quantile(voice, LOUD) < STANDS_OUT * quiet:
        return samples
    noise = power[voice <= quiet].mean(0)
    share = 1 - TAKEN * noise / np.maximum(_smooth(power), TINY)
    return _sound(spectra * np.sqrt(np.clip(share, QUIETEST**2, 1)), samples.size)


WINDOW = np.sqrt(np.hanning(FRAME + 1)[:-1]).astype(np.float32)


def _spectra(samples: np.ndarray) -> np.ndarray:
    moments = -(-samples.size // HOP) + FRAME // HOP - 1
    padded = np.zeros((moments - 1) * HOP + FRAME, np.float32)
    padded[FRAME - HOP : FRAME - HOP + samples.size] = samples
    frames = np.lib.stride_tricks.sliding_window_view(padded, FRAME)[::HOP]
    return np.fft.rfft(frames * WINDOW, axis=1)


def _sound(spectra: np.ndarray, size: int) -> np.ndarray:
    frames = (np.fft.irfft(spectra, FRAME, axis=1) * WINDOW).reshape(len(spectra), FRAME // HOP, HOP)
    whole = np.zeros((len(spectra) + FRAME // HOP - 1, HOP))
    for part in range(FRAME // HOP):
        whole[part : part + len(spectra)] += frames[:, part]
    overlap = FRAME / HOP / 2  # what the squared windows add up to
    return (whole.reshape(-1)[FRAME - HOP : FRAME - HOP + size] / overlap).astype(np.float32)


def _smooth(power: np.ndarray) -> np.ndarray:
    """The mean of each value and its eight neighbours; beyond the edge there is nothing."""
    across = np.pad(power, ((1, 1), (1, 1)))
    across = across[:-2] + across[1:-1] + across[2:]
    return (across[:, :-2] + across[:, 1:-1] + across[:, 2:]) / 9
