"""The document of ``survey``: what the gauge readings say of the oil circuit."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from diagnose.case.case import Case
from diagnose.circuit.fitting import HEALTHY, NEITHER, SeverityRange
from diagnose.circuit.further_readings import Curves, Further, sound_band
from diagnose.circuit.survey import Row, Survey
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.plot import Plot
from diagnose.output.scale import Scale, scale_of
from knowledge.engines.layouts import UNKNOWN
from knowledge.model import Reading
from knowledge.pressure.gauge import USUAL_HOT
from knowledge.units import PSI, ZERO_CELSIUS

CLEAR, LEADS = 0.7, 0.4  #: share from which the first is clear, or leads (judgement)
POOR = 2.5  #: psi: known pressures missed by more than this are mentioned


@dataclass(frozen=True, kw_only=True)
class SurveyReading:
    """A gauge reading the survey rests on."""

    rpm: float
    oil_c: float | None
    psi: float
    gauge: str
    tap: str
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class SurveyCondition:
    """A hidden condition: how well it explains the readings, and how bad it would be."""

    id: str
    says: str
    share: float
    severity: SeverityRange
    means: str  #: the severity in workshop terms; empty where it has none
    measured: bool  #: ``means`` is what was measured or seen
    likelihood_ratio: float  #: against the sound engine
    graph_ratio: float | None  #: what the cause graph takes from it
    is_condition: bool = field(metadata=NOT_IN_JSON)  #: False: sound engine, or none of these


@dataclass(frozen=True, kw_only=True)
class SurveyCurves:
    """Pressure over speed at one oil temperature: each leading condition, and what was read."""

    oil_c: float
    rpm: tuple[float, ...]
    psi: Mapping[str, tuple[float, ...]]
    read: tuple[tuple[float, float], ...]  #: rpm, psi


@dataclass(frozen=True, kw_only=True)
class NextReading:
    """The gauge reading that separates the leading conditions best."""

    rpm: float
    oil_c: float
    separates: float  #: 0 to 1
    would_show_psi: Mapping[str, tuple[float, float]]  #: mean, standard deviation
    oil: str = field(metadata=NOT_IN_JSON)
    would_show: tuple[str, ...] = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class SurveyDocument:
    """Everything ``survey`` answers."""

    case: str | None  #: path of the case file
    profile: str
    calibrated: bool  #: held to pressures known good
    readings: tuple[SurveyReading, ...]
    conditions: tuple[SurveyCondition, ...]  #: likeliest first
    curves: tuple[SurveyCurves, ...]
    read_next: NextReading | None
    baseline_missed_psi: tuple[float, ...]
    title: str = field(metadata=NOT_IN_JSON)
    circuit: str = field(metadata=NOT_IN_JSON)
    scale: Scale = field(metadata=NOT_IN_JSON)
    plots: tuple[Plot, ...] = field(metadata=NOT_IN_JSON)  #: of ``curves``, in the case's unit
    may_run: bool = field(metadata=NOT_IN_JSON)  #: no alarm forbids running the engine
    baseline_missed: str = field(metadata=NOT_IN_JSON)  #: the worst miss; empty where it is small
    layout_assumed: bool = field(metadata=NOT_IN_JSON)
    in_short: str = field(metadata=NOT_IN_JSON)  #: in a sentence, without its full stop
    not_weighed: int = field(metadata=NOT_IN_JSON)  #: readings left out: there are too many


MUCH_BETTER = 2.0  #: times as well as a sound engine that a fault must fit (judgement)


def survey_document(survey: Survey, case: Case, *, may_run: bool = True) -> SurveyDocument:
    """Build the document of a survey; ``may_run``: no alarm forbids running the engine."""
    scale = scale_of(case)
    missed = tuple(float(m) for m in survey.baseline_missed)
    worst = max(map(abs, missed), default=0.0)
    return SurveyDocument(
        case=str(case.path) if case.path else None,
        profile=survey.profile.id,
        calibrated=survey.calibrated,
        readings=tuple(_reading(r, scale) for r in survey.readings),
        conditions=tuple(_condition(r, survey) for r in survey.rows),
        curves=tuple(_curves(c) for c in survey.curves),
        read_next=_next_reading(survey.further, survey, scale) if survey.further else None,
        baseline_missed_psi=missed,
        title=case.job.title,
        circuit=_circuit(survey, case),
        scale=scale,
        plots=tuple(_plot(c, survey, scale) for c in survey.curves),
        may_run=may_run,
        baseline_missed=scale.one(worst * PSI) if worst > POOR else "",
        layout_assumed=case.layout is UNKNOWN and case.engine.profile is None,
        in_short=_in_short(survey),
        not_weighed=survey.not_weighed,
    )


def _circuit(survey: Survey, case: Case) -> str:
    """Whose typical dimensions they are; of another layout, that it is the nearest in figures."""
    profile = survey.profile
    own = case.engine.profile is not None or case.layout.id in profile.layouts[:1]
    if own or case.layout is UNKNOWN:
        return profile.says
    return f"the nearest in figures to this layout: {profile.says}"


def _in_short(survey: Survey) -> str:
    """Say what the readings come to, however little that is."""
    ranked = sorted(survey.rows, key=lambda r: -r.share)
    first, faults = ranked[0], [r for r in ranked if r.id not in (HEALTHY, NEITHER)]
    if first.share >= LEADS and first.id == HEALTHY:
        return "The readings are what a sound engine of this kind shows"
    if first.share >= LEADS and first.id == NEITHER:
        return "No single fault fits the readings: several together, or a reading is wrong"
    sound = next((r.share for r in ranked if r.id == HEALTHY), 0.0)
    if first.share < min(LEADS, MUCH_BETTER * sound):
        return (
            "A sound engine of this kind may show such readings: no fault is needed to explain them"
        )
    if first.share >= CLEAR:
        return f"The readings point to one thing: {first.says}"
    if first.share >= LEADS:
        return f"Best fit: {first.says}; not certain yet"
    return f"The readings cannot tell them apart yet: {', or '.join(r.says for r in faults[:2])}"


def _reading(reading: Reading, scale: Scale) -> SurveyReading:
    oil, heat = None, f"oil not measured, taken as {scale.heat(USUAL_HOT)}"
    if reading.oil_temperature is not None:
        oil = reading.oil_temperature - ZERO_CELSIUS
        heat = scale.heat(oil + ZERO_CELSIUS)
    look = reading.said or f"{reading.rpm:.0f} rpm, {heat}: {scale.one(reading.pressure)}"
    return SurveyReading(
        rpm=reading.rpm,
        oil_c=oil,
        psi=reading.pressure / PSI,
        gauge=reading.gauge,
        tap=reading.tap,
        says=f"{look} ({reading.gauge}, {reading.tap})",
    )


def _condition(row: Row, survey: Survey) -> SurveyCondition:
    likelihood = survey.likelihoods.get(row.id)
    return SurveyCondition(
        id=row.id,
        says=row.says,
        share=row.share,
        severity=row.severity,
        means=row.shown,
        measured=row.measured,
        likelihood_ratio=row.ratio,
        graph_ratio=likelihood.if_present / likelihood.if_absent if likelihood else None,
        is_condition=row.id not in (HEALTHY, NEITHER),
    )


def _curves(curves: Curves) -> SurveyCurves:
    return SurveyCurves(
        oil_c=curves.temperature - ZERO_CELSIUS,
        rpm=tuple(float(n) for n in curves.rpm),
        psi={name: tuple(float(p) for p in line) for name, line in curves.lines.items()},
        read=curves.read,
    )


def _plot(curves: Curves, survey: Survey, scale: Scale) -> Plot:
    """Pressure over speed, with the band a sound engine keeps to."""
    factor = PSI / scale.factor
    low, high = sound_band(survey.sound, curves)
    known = all(r.oil_temperature and not r.oil_spread for r in survey.readings)
    return Plot(
        title=f"Oil at {'' if known else 'about '}{scale.heat(curves.temperature)}",
        x_label="rpm",
        y_label=scale.unit,
        x=[float(n) for n in curves.rpm],
        lines={
            name.replace("_", " "): [float(p) * factor for p in line]
            for name, line in curves.lines.items()
        },
        points=[(n, p * factor) for n, p in curves.read],
        band=([float(p) * factor for p in low], [float(p) * factor for p in high]),
        band_says="sound engine of this kind, nine in ten",
    )


def _next_reading(further: Further, survey: Survey, scale: Scale) -> NextReading:
    names = {r.id: r.says for r in survey.rows} | {HEALTHY: "the circuit is sound"}
    oil = further.temperature - ZERO_CELSIUS
    would_show = []
    for name, (mean, spread) in further.would_show.items():
        error = f"{spread * PSI / scale.factor:.{scale.decimals}f}"
        would_show.append(f"{scale.one(mean * PSI)} (give or take {error}) if {names[name]}")
    return NextReading(
        rpm=further.rpm,
        oil_c=oil,
        separates=further.separates,
        would_show_psi=further.would_show,
        oil=scale.heat(oil + ZERO_CELSIUS),
        would_show=tuple(would_show),
    )
