"""What must be settled before shells are ordered.

A clearance tells which shells to order only with the size of the shells that are in, and only where
its caps and bores are as they were made.
"""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum

from diagnose.bearings.judging import Judged
from diagnose.bearings.targets import group_of
from diagnose.case.case import Case
from diagnose.fits.bearing import Kind
from knowledge.history.areas_inside import BEARINGS
from knowledge.model import Finding, State
from knowledge.stations.assembly.findings import CAPS_MIXED
from knowledge.stations.bearings.findings_measured import MAIN_BORES_OUT_OF_LINE
from knowledge.stations.bearings.findings_shell_map import WRONG_SHELLS_FITTED
from knowledge.stations.bearings.trials import CRANK_REGROUND


class Hold(Enum):
    """Why no shells of a kind are ordered yet."""

    CAPS = "caps_in_their_places"
    BORES = "bores_in_line"
    SHELL_BACKS = "read_shell_backs"


def hold_of(case: Case, kind: Kind, judged: Sequence[Judged]) -> Hold | None:
    """What to settle before shells of this kind are ordered; ``judged``: all of the kind."""
    if _was_seen(case, CAPS_MIXED):
        return Hold.CAPS
    if kind is Kind.MAIN and _was_seen(case, MAIN_BORES_OUT_OF_LINE):
        return Hold.BORES
    if _may_be_undersize(case) and _size_unknown(case, kind, judged):
        return Hold.SHELL_BACKS
    return None


def crank_was_ground(case: Case) -> bool:
    """Whether the shells that are in are known not to be of the size the crank was ground to."""
    return _was_seen(case, WRONG_SHELLS_FITTED)


def _was_seen(case: Case, finding: Finding) -> bool:
    seen = case.facts().observations.get(finding)
    return seen is not None and seen.state is State.PRESENT


def _may_be_undersize(case: Case) -> bool:
    """Whether somebody worked on the crank or its bearings before, so that standard is a guess."""
    worked_on = any(e.work.area is BEARINGS for e in case.earlier)
    ground = any(t.trial is CRANK_REGROUND and t.made for t in case.trials)
    return crank_was_ground(case) or worked_on or ground


def _size_unknown(case: Case, kind: Kind, judged: Sequence[Judged]) -> bool:
    """Whether a bearing counts as one with standard shells only because nobody has said its size."""
    if group_of(case, kind).new_shell:
        return False  # its shells are then chosen by bore, journal and wall
    return any("undersize" not in j.measured.texts for j in judged if j.clearance is not None)
