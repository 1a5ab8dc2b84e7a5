"""An uncertain figure: its mean and the range of nine plausible engines in ten."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from diagnose.hydraulics.ranges import Floats

LOW, HIGH = 5.0, 95.0  #: percentiles


@dataclass(frozen=True, slots=True)
class Band:
    """Mean and the range of the middle 90 %; means add up, so shares do."""

    low: float
    mean: float
    high: float

    @classmethod
    def of(cls, values: Floats) -> Band:
        """Over plausible engines.

        >>> Band.of(np.linspace(0.0, 100.0, 101))
        Band(low=5.0, mean=50.0, high=95.0)
        """
        low, high = np.percentile(values, [LOW, HIGH])
        return cls(float(low), float(np.mean(values)), float(high))

    @classmethod
    def of_middle(cls, values: Floats) -> Band:
        """Over draws with a long tail: as its mean that of their middle half.

        >>> Band.of_middle(np.append(np.arange(1.0, 100.0), 9e9)).mean
        50.5
        """
        low, first, third, high = np.percentile(values, [LOW, 25.0, 75.0, HIGH])
        half = np.asarray(values)[(first <= values) & (values <= third)]
        return cls(float(low), float(np.mean(half)), float(high))
