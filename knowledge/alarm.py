"""What a rule may warn of: an alarm, and findings that do not fit together."""

from __future__ import annotations

from dataclasses import dataclass

from knowledge.model import Finding, Severity


@dataclass(frozen=True, slots=True)
class Alarm:
    """What must be done now, in one line: state, limit, action."""

    severity: Severity
    says: str
    until: Finding | None = None  #: its presence cancels the alarm
    unless_denied: Finding | None = None  #: its absence cancels the alarm
    until_read: bool = False  #: a figure read on a gauge cancels the alarm
    gauge_next: bool = False  #: a stop: the next start is one with a trusted gauge on
    standing: bool = False  #: holds of an engine that is apart, too
    lets_run: bool = False  #: says how it may run: no longer so under one that forbids any start
    of_lamp: bool = False  #: by the lamp alone: a lamp found wrong, with sound pressure, cancels it
    of_pressure: bool = False  #: holds of no engine that is oiled without pressure
    low: bool | None = None  #: of low pressure: whether it names the figure read; None: of more


@dataclass(frozen=True, slots=True)
class Contradiction:
    """Two findings that do not fit together; look at ``recheck`` again first."""

    findings: tuple[Finding, ...]
    says: str
    recheck: Finding
