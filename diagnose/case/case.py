"""A case resolved to the words of the book: values in SI units, corrections applied."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property
from pathlib import Path

from diagnose.case.baseline import BaselineReading
from diagnose.case.card import Card
from diagnose.case.card_text import CardValue
from diagnose.case.schema import (
    BearingEntry,
    BehaviourEntry,
    ClosedEntry,
    EarlierEntry,
    Engine,
    Entry,
    Expect,
    FindingEntry,
    Job,
    ReadingEntry,
    TrialEntry,
    WorkEntry,
)
from diagnose.case.usual import with_usual
from diagnose.fits.bearing import Kind as BearingKind
from diagnose.fits.bearing import Place, Readings
from diagnose.inference.chaining import Facts, Observation
from knowledge.engines.features import DIESEL, DRY_SUMP, PLACES
from knowledge.engines.features_build import ONE_OF, SPLASH_LUBRICATED, WITHOUT
from knowledge.engines.features_kinds import (
    IMPLIES,
    KINDS,
    ROLLER_BIG_ENDS,
    TROUGH_FED,
    UNLESS_SAID,
    UNPRESSURED,
)
from knowledge.engines.layouts_old import MAY_BE_SPLASHED
from knowledge.engines.profiles import Profile
from knowledge.history.fresh_build import just_rebuilt
from knowledge.limits import Figure, Limit
from knowledge.model import Cause, Finding, Kind, Measure, Quantity, Reading, Stage, State
from knowledge.pressure.quantities import USUAL_IDLE_SPEED
from knowledge.reports.shapes import Behaviour, EarlierWork, TrialKind, TrialMade
from knowledge.reports.trials import shown_by
from knowledge.reports.when import Speeds, speeds_of
from knowledge.reports.words import Result
from knowledge.work import Layout, Task

_RANK = {stage: rank for rank, stage in enumerate(Stage)}


@dataclass(frozen=True, slots=True)
class FindingRecord:
    """A finding entry that stands."""

    entry: FindingEntry
    finding: Finding
    observation: Observation | None  #: None: asked, and not known
    stage: Stage


@dataclass(frozen=True, slots=True)
class Measurement:
    """A measured value that stands, SI."""

    entry: FindingEntry
    measure: Measure
    value: float
    stage: Stage


@dataclass(frozen=True, slots=True)
class GaugeReading:
    """A gauge reading that stands, SI."""

    entry: ReadingEntry
    reading: Reading
    stage: Stage


@dataclass(frozen=True, slots=True)
class TaskRecord:
    """A task record that stands, with its measured value in SI."""

    entry: WorkEntry
    task: Task
    value: float | None = None


@dataclass(frozen=True, slots=True)
class Closing:
    """The end of a job: its causes, and the minutes spent and planned."""

    entry: ClosedEntry
    causes: tuple[Cause, ...]
    minutes: float | None  #: hands-on minutes, where they were written down
    planned: float | None = None  #: what the plan said at the start, where it was kept


@dataclass(frozen=True, slots=True)
class BehaviourRecord:
    """A reported behaviour that stands."""

    entry: BehaviourEntry
    behaviour: Behaviour
    stage: Stage


@dataclass(frozen=True, slots=True)
class TrialRecord:
    """A trial that was asked about; ``result`` is None where it was not made."""

    entry: TrialEntry | FindingEntry
    trial: TrialKind
    result: Result | None
    stage: Stage

    @property
    def made(self) -> TrialMade | None:
        """The trial with its result; None where it was not made."""
        return None if self.result is None else TrialMade(self.trial, self.result)


@dataclass(frozen=True, slots=True)
class EarlierRecord:
    """Earlier work that stands."""

    entry: EarlierEntry
    work: EarlierWork
    stage: Stage


@dataclass(frozen=True, slots=True)
class MeasuredBearing:
    """What was measured of one bearing [m], the last of each kind of reading."""

    place: Place
    readings: Readings
    entry: BearingEntry | None  #: the last one; None: recorded as a finding or task alone
    unit: str = ""  #: of a size, as typed; empty: none was
    fine_unit: str = ""  #: of a clearance, as typed
    texts: Mapping[str, str] = field(default_factory=dict)  #: what was typed, by field


@dataclass(frozen=True, slots=True)
class BearingGroup:
    """What goes for all mains or all rods [m]; empty: not given."""

    new_journal: tuple[float, ...] = ()
    new_bore: tuple[float, ...] = ()
    new_shell: tuple[float, ...] = ()
    wanted: tuple[float, ...] = ()
    sizes: tuple[float, ...] = ()  #: undersizes available
    use: str = ""  #: 'road', 'hard'; empty: not given
    count: int = 0  #: how many there are; 0: not given
    texts: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class BearingTable:
    """The bearings of the engine as they were measured."""

    found: Mapping[Place, MeasuredBearing] = field(default_factory=dict)
    fitted: Mapping[Place, MeasuredBearing] = field(default_factory=dict)  #: with the new parts
    groups: Mapping[BearingKind, BearingGroup] = field(default_factory=dict)


@dataclass(frozen=True)
class Case:
    """One job."""

    path: Path | None
    job: Job
    engine: Engine
    layout: Layout
    finding_records: tuple[FindingRecord, ...] = ()
    measurements: tuple[Measurement, ...] = ()
    readings: tuple[GaugeReading, ...] = ()
    start_readings: tuple[GaugeReading, ...] = ()  #: readings of the first start after the repair
    limits: Mapping[Limit, float] = field(default_factory=dict)
    layout_limits: Mapping[Limit, Figure] = field(default_factory=dict)  #: by layout or size
    sizes: Mapping[str, float] = field(default_factory=dict)  #: known of its parts by id, SI
    card: Card | None = None  #: the engine's card, where the case names one
    idle_read: float | None = None  #: the slowest speed near idle of a reading, as counted [rpm]
    own_figures: Mapping[str, tuple[CardValue, ...]] = field(default_factory=dict)
    #: the card's figures by task id, without those the case states itself
    profile: Profile | None = None  #: None: no circuit in figures for this layout
    dimensions: Mapping[Quantity, float] = field(default_factory=dict)
    baseline: tuple[BaselineReading, ...] = ()  #: its own before those on the card
    features: Mapping[Finding, State] = field(default_factory=dict)
    task_records: tuple[TaskRecord, ...] = ()
    behaviours: tuple[BehaviourRecord, ...] = ()
    trials: tuple[TrialRecord, ...] = ()
    earlier: tuple[EarlierRecord, ...] = ()
    repairs: tuple[EarlierRecord, ...] = ()  #: work of this repair: no evidence
    bearings: BearingTable = field(default_factory=BearingTable)
    closed: Closing | None = None  #: the last word; None: the job is open
    expect: Expect | None = None
    last_number: int = 0
    standing: Mapping[int, Entry] = field(default_factory=dict)
    has_engine: bool = False  #: whether the file has an [engine]
    has_oil: bool = False  #: whether it has an [oil]
    has_job: bool = False  #: whether it has a [job]

    def facts(self, up_to: Stage = Stage.OPENED) -> Facts:
        """Return what is known up to this stage: observations, readings, measures, limits."""
        observations = {f: Observation(s) for f, s in self.features.items()}
        unseen = self.denied_unseen(up_to)
        for record in self.finding_records:
            if record.observation is None or _RANK[record.stage] > _RANK[up_to]:
                continue
            if record.finding in unseen and record.observation.state is State.ABSENT:
                continue
            observations[record.finding] = _joined(
                observations.get(record.finding), record.observation, record.finding
            )
        made = [t.made for t in self.trials if t.made and _RANK[t.stage] <= _RANK[up_to]]
        for finding, state, sure in (each for m in made for each in shown_by(m)):
            observations[finding] = _joined(
                observations.get(finding), Observation(state, sure), finding
            )
        for kind in self.known_features.keys() & KINDS:  # what goes without saying
            observations.setdefault(kind, Observation(self.known_features[kind]))
        measures: dict[Measure, list[float]] = {}
        for m in self.measurements:
            if _RANK[m.stage] <= _RANK[up_to]:
                measures.setdefault(m.measure, []).append(m.value)
        readings = with_usual(
            [r.reading for r in self.readings if _RANK[r.stage] <= _RANK[up_to]],
            [b.reading for b in self.baseline],
        )
        earlier = tuple(e.work for e in self.earlier if _RANK[e.stage] <= _RANK[up_to])
        behaviours = [b.behaviour for b in self.behaviours if _RANK[b.stage] <= _RANK[up_to]]
        built = any(just_rebuilt(work) for work in earlier)
        return Facts(
            observations,
            readings,
            measures,
            {**{x: f.value for x, f in self.usual_limits.items()}, **self.limits},
            tuple(replace(b, work_named=bool(earlier), just_built=built) for b in behaviours),
            tuple(made),
            earlier,
        )

    def up_to(self, stage: Stage) -> Case:
        """Return the case without the findings and measured values of later stages."""
        return replace(
            self,
            finding_records=tuple(
                r for r in self.finding_records if _RANK[r.stage] <= _RANK[stage]
            ),
            measurements=tuple(m for m in self.measurements if _RANK[m.stage] <= _RANK[stage]),
        )

    def denied_unseen(self, up_to: Stage = Stage.OPENED) -> frozenset[Finding]:
        """Findings inside the engine that were denied while nothing had been opened.

        Such a "no" is no evidence: nobody could have seen it.
        """
        records = [r for r in self.finding_records if _RANK[r.stage] <= _RANK[up_to]]
        if (
            any(_seen_inside(r) for r in records)
            or any(m.stage is Stage.OPENED for m in self.measurements if up_to is Stage.OPENED)
            or any(e.work.done for e in self.earlier if _RANK[e.stage] <= _RANK[up_to])
        ):
            return frozenset()
        return frozenset(r.finding for r in records if r.finding.stage is Stage.OPENED)

    @cached_property
    def known_features(self) -> dict[Finding, State]:
        """What is known of how the engine is built and where it works.

        A [[finding]] about a feature goes before the layout and the [engine] table. An engine
        that works in one place works in no other.
        """
        known = dict(self.features)
        for record in self.finding_records:
            if record.finding.kind is Kind.LAYOUT and record.observation is not None:
                known[record.finding] = record.observation.state
        if any(known.get(place) is State.PRESENT for place in PLACES):
            known = {**dict.fromkeys(PLACES, State.ABSENT), **known}
        for group in ONE_OF:
            if any(known.get(one) is State.PRESENT for one in group):
                known = {**dict.fromkeys(group, State.ABSENT), **known}
        for feature, other in IMPLIES:
            if known.get(feature) is State.PRESENT:
                known.setdefault(other, State.PRESENT)
        if self.layout not in MAY_BE_SPLASHED:
            known.setdefault(SPLASH_LUBRICATED, State.ABSENT)
        for feature in UNLESS_SAID:
            known.setdefault(feature, State.ABSENT)
        if known.get(DRY_SUMP) is not State.PRESENT:  # of a motorcycle nobody can tell
            known.setdefault(ROLLER_BIG_ENDS, State.ABSENT)
        for feature, state, other in WITHOUT:
            if known.get(feature) is state:
                known.setdefault(other, State.ABSENT)
        return known

    @cached_property
    def usual_limits(self) -> Mapping[Limit, Figure]:
        """What is typical of its layout or sizes, but where its features decide."""
        usual = self.layout_limits.items()
        return {x: figure for x, figure in usual if not x.goes_before_layout(self.has)}

    def has(self, feature: Finding) -> bool:
        """Whether the engine is known to have a feature."""
        return self.known_features.get(feature) is State.PRESENT

    @property
    def without_pressure(self) -> bool:
        """Whether nothing in the engine is oiled under pressure, be it by a trough pump."""
        return any(map(self.has, UNPRESSURED)) and not self.has(TROUGH_FED)

    @property
    def speeds(self) -> Speeds:
        """Idle and top speed of the engine."""
        diesel = self.features.get(DIESEL) is State.PRESENT
        return speeds_of(self.limits.get(USUAL_IDLE_SPEED, self.idle_read), diesel)

    @property
    def idle_speed(self) -> float:
        """The engine's own idle speed, else that at which it was read, else the usual one [rpm]."""
        if USUAL_IDLE_SPEED in self.limits or self.idle_read is None:
            return self.limit(USUAL_IDLE_SPEED)
        return self.idle_read

    def limit(self, limit: Limit) -> float:
        """The engine's own figure, else that of its layout, sizes or kind, SI."""
        if limit in self.limits:
            return self.limits[limit]
        usual = self.usual_limits.get(limit)
        return usual.value if usual else limit.printed(self.has)[0].value

    def unit(self, dimension: str, quantity: str = "") -> str | None:
        """The unit of a dimension or quantity on the engine's card; None where it has none."""
        return self.card.unit(dimension, quantity) if self.card else None

    def answered(self) -> frozenset[Finding]:
        """Findings that have an entry, whatever it says."""
        tried = frozenset(f for t in self.trials for f in t.trial.findings)
        seen = frozenset(s.finding for s in self.finding_records)
        return seen | tried | frozenset(self.features)

    @property
    def only_asked(self) -> frozenset[Finding]:
        """Findings a person was asked for and does not know: nobody has looked at them."""
        by_word = Stage.KNOWN.value
        records = self.finding_records
        return frozenset(
            r.finding for r in records if r.observation is None and r.entry.learned == by_word
        )


def _seen_inside(record: FindingRecord) -> bool:
    """Whether this record shows that someone looked inside the engine."""
    if record.observation is None or record.finding.stage is not Stage.OPENED:
        return record.stage is Stage.OPENED and record.observation is not None
    return record.stage is Stage.OPENED or record.observation.state is State.PRESENT


def _joined(old: Observation | None, new: Observation, finding: Finding) -> Observation:
    """Two finding_records of one thing: there in one place is there; features are overruled."""
    if old is None or finding.kind is Kind.LAYOUT:
        return new
    if old.state is new.state:
        return Observation(new.state, max(old.sure, new.sure))
    return old if old.state is State.PRESENT else new
