"""Checks and findings made up for tests of planning."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from diagnose.planning.access_tree import AccessTree
from diagnose.planning.single_cause import (
    SingleCauseModel,
)
from knowledge.access import OPENINGS
from knowledge.model import Finding, Source, Stage, Station
from knowledge.work import Access, Inspection

NOBODY = Source("none", "made up for a test")
OUTSIDE = AccessTree({Access.OUTSIDE: OPENINGS[Access.OUTSIDE]})


def finding(name: str, stage: Stage = Stage.OUTSIDE) -> Finding:
    return Finding(id=name, station=Station.OIL, says="", asks="", source=NOBODY, stage=stage)


def check(name: str, minutes: float, *reveals: Finding, at: Access = Access.OUTSIDE) -> Inspection:
    return Inspection(
        id=name,
        station=Station.OIL,
        says="",
        steps=(),
        minutes=minutes,
        access=at,
        reveals=reveals,
        source=NOBODY,
    )


def table_of(weight: Sequence[float], **shows: Sequence[float]) -> SingleCauseModel:
    causes = tuple(f"c{i}" for i in range(len(weight)))
    return SingleCauseModel(causes, np.array(weight), {n: np.array(p) for n, p in shows.items()})
