"""The hydraulic survey: which hidden condition the gauge readings point to, and how bad it is.

Readings cold and hot at a few speeds are the cheapest test of the whole circuit.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from math import exp, hypot

import numpy as np

from diagnose.case.case import Case
from diagnose.case.units import JobUnits, units_of
from diagnose.circuit.calibration import sound_points, widths
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.deviations import deviations, oil_grade
from diagnose.circuit.engine_model import Point, healthy, point_of, shown
from diagnose.circuit.fitting import (
    FALSE,
    FOUND,
    HEALTHY,
    NEITHER,
    Fit,
    GaugeError,
    SeverityRange,
    apart,
    fits,
    predicted,
    shares,
    warmer,
)
from diagnose.circuit.further_readings import Curves, Further, Hypothesis, curves, further
from diagnose.circuit.plausible_engines import conditioned, drawn, varied
from diagnose.circuit.survey_evidence import spread_evenly, usable
from diagnose.circuit.survey_found import Known, known_of
from diagnose.errors import UsageError
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.ranges import FloatArray
from diagnose.inference.causegraph import MOST_RATIO
from diagnose.inference.network import Likelihood
from diagnose.ways import Way, to
from knowledge.book import Book
from knowledge.engines.profiles import Profile
from knowledge.model import Gauge, Reading
from knowledge.pressure.gauge import moments
from knowledge.units import PSI

ENGINES = 128  #: plausible engines of one survey: fewer, and chance moves close rankings
SEED = 7  #: the same case gets the same result
#: psi; together the usual errors of ``knowledge.pressure.gauge``
USUAL_ERROR = {Gauge.PANEL: GaugeError(2.0, 2.25), Gauge.DIRECT: GaugeError(1.5, 1.25)}
#: K, and psi for each kelvin below: the circuit misses it (judgement)
WARM, COLD_MISS = 333.15, 0.17
SHOWN_CURVES = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One hypothesis: its posterior under a uniform prior, and its severity."""

    id: str
    says: str
    share: float
    ratio: float  #: likelihood against the sound engine
    severity: SeverityRange
    shown: str  #: the severity in workshop terms; empty where it has none
    measured: bool = False  #: ``shown`` is what was measured or seen of it


@dataclass(frozen=True, kw_only=True)
class Survey:
    """Result of a survey."""

    profile: Profile
    calibrated: bool  #: whether the case has a baseline
    readings: tuple[Reading, ...]
    rows: tuple[Row, ...]  #: likeliest first, with the sound engine and "none alone"
    likelihoods: Mapping[str, Likelihood]  #: for the cause graph, by condition
    curves: tuple[Curves, ...]  #: one for each oil temperature
    further: Further | None  #: the reading that separates the leaders best
    baseline_missed: (
        FloatArray  #: median prediction of sound engines less each known pressure [psi]
    )
    sound: Engine  #: plausible engines without fault
    not_weighed: int = 0  #: usable readings left out because there are too many

    def share(self, id_: str) -> float:
        """Return the share of one hypothesis; 0 if it was not considered."""
        return next((r.share for r in self.rows if r.id == id_), 0.0)


def survey(case: Case, book: Book, readings: Sequence[Reading] | None = None) -> Survey:
    """Compare every hydraulic condition with the case's readings.

    Raises UsageError where there are no readings or no circuit.
    """
    every = usable([r.reading for r in case.readings] if readings is None else readings)
    given = spread_evenly(every)
    if not given:
        raise UsageError(
            "no gauge reading of the running engine; "
            + to(Way.READING, case=case.path.name if case.path else "CASE")
        )
    engine, rng = healthy(case), np.random.default_rng(SEED)
    engine = replace(engine, oil=Oil.of_grade(oil_grade(case)))
    idle, units = case.idle_speed, units_of(case)
    looked = tuple(m for r in given for m in moments(r, idle))
    good = sound_points(case, looked)
    uncertain = widths(case, calibrated=bool(good))
    z = conditioned(engine, drawn(ENGINES, rng), good, rng, widths=uncertain)
    points = [point_of(r, 0.0) for r in looked]
    seen = np.array([r.pressure for r in looked]) / PSI
    off = apart(looked, warmer(ENGINES, points, rng), rng)
    sound = varied(engine, z, uncertain)
    found_on_it = deviations(case, ENGINES, np.random.default_rng(SEED + 1))
    known = known_of(found_on_it, sound, points)
    shows = predicted(engine, z, points, off, widths=uncertain, known=known)
    gauges = [gauge_of(r) for r in looked]
    lying = all(r.gauge is Gauge.PANEL for r in looked)
    bounds = [int(r.at_most) - int(r.at_least) for r in looked]
    found = fits(shows, seen, gauges, rng, may_lie=lying, bounds=bounds)
    share = shares(found, known.deviating, faulty=known.lowers)
    rows = tuple(
        sorted(
            (_row(n, found, share[n], known, book, engine, units) for n in share),
            key=lambda r: (-r.share, r.id),
        )
    )
    leaders = _leaders(rows, found)
    assert case.profile is not None  # ``healthy`` refuses that
    return Survey(
        profile=case.profile,
        calibrated=bool(good),
        readings=given,
        not_weighed=len(every) - len(given),
        rows=rows,
        likelihoods=_likelihoods(found, shares(found, known.deviating), known.deviating),
        curves=curves(engine, z, uncertain, leaders, points, known),
        further=further(sound, leaders, points, [gauge_error_of(looked[0])], known),
        baseline_missed=_missed(sound, good),
        sound=sound,
    )


def _leaders(rows: Sequence[Row], found: Mapping[str, Fit]) -> list[Hypothesis]:
    """The likeliest single hypotheses, of which curves are shown."""
    single = [row for row in rows if row.id != NEITHER][:SHOWN_CURVES]
    return [
        Hypothesis(
            id=row.id,
            share=row.share,
            severity=found[row.id].severity.middle,
            engines=found[row.id].engines,
        )
        for row in single
    ]


def gauge_of(reading: Reading) -> GaugeError:
    """Return the reading's own error and the error its gauge shares among its readings [psi].

    Its own holds that of a vague figure and of cold oil.
    How far cold oil stands above the relief setting differs from valve to valve, so a cold reading
    has an error as large as what the circuit may miss.
    """
    gauge = gauge_error_of(reading)
    missed = COLD_MISS * max(0.0, WARM - (reading.oil_temperature or WARM))
    vague = (reading.pressure_spread or 0.0) / PSI
    return GaugeError(hypot(gauge.own, missed, vague), gauge.shared)


def gauge_error_of(reading: Reading) -> GaugeError:
    """Return the gauge's error for one reading and the error it shares among its readings [psi]."""
    usual = USUAL_ERROR[reading.gauge]
    if not reading.error:
        return usual
    total = (usual.own**2 + usual.shared**2) ** 0.5
    ratio = reading.error / PSI / total
    return GaugeError(usual.own * ratio, usual.shared * ratio)


def _row(
    name: str,
    found: Mapping[str, Fit],
    share: float,
    known: Known,
    book: Book,
    engine: Engine,
    units: JobUnits,
) -> Row:
    fit = found[name]
    says = {
        HEALTHY: "the circuit is sound: the readings are what it should show",
        NEITHER: "none of these alone",
    }.get(name) or book.conditions[name].says
    ratio = exp(np.clip(fit.log_likelihood - found[HEALTHY].log_likelihood, -300, 300))
    middle = fit.severity.middle
    in_words, measured = "", name in known.deviating and middle == 0.0
    if measured:
        in_words = known.says(name)
    elif name in known.measured:  # that stays as measured, however bad the condition is
        in_words = f"{known.says(name)} as measured, and more where nobody measured"
    elif name in FAULTS:
        in_words = FAULTS[name].show(engine, middle, units)
    elif name == FALSE:
        in_words = f"shows {100 - 95 * middle:.0f} % of the pressure"
    return Row(
        id=name,
        says=says,
        share=share,
        ratio=ratio,
        severity=fit.severity,
        shown=in_words,
        measured=measured,
    )


def _likelihoods(
    found: Mapping[str, Fit], share: Mapping[str, float], deviating: Collection[str]
) -> dict[str, Likelihood]:
    """Return the likelihood of the readings for each condition, for the cause graph.

    The ratio is against the sound engine, or, where that fits far worse, against the level at
    which the best condition has ``MOST_RATIO``: so the conditions keep their odds among each
    other and none exceeds it. A condition that does not improve on what was found
    (``deviating``) is compared with that. Where no single condition explains the readings, the
    ratios are drawn towards 1.
    """
    by = {n: f.log_likelihood for n, f in found.items() if n not in (HEALTHY, FOUND, NEITHER)}
    most = np.log(MOST_RATIO)
    against = max(found[HEALTHY].log_likelihood, max(by.values()) - most)
    as_found = found[FOUND].log_likelihood if FOUND in found else against
    trust = 1.0 - share[NEITHER]
    out = {}
    for name, log_likelihood in by.items():
        adds_nothing = name not in deviating and log_likelihood <= as_found
        beside = as_found if FOUND in found and adds_nothing else against
        ratio = exp(trust * float(np.clip(log_likelihood - beside, -most, most)))
        out[name] = Likelihood(1.0 / (1.0 + ratio), ratio / (1.0 + ratio))
    return out


def _missed(sound: Engine, known: Sequence[Point]) -> FloatArray:
    """Return the median prediction at the known pressures, less those [psi]."""
    if not known:
        return np.empty(0)
    middle = np.median(shown(sound, known), axis=0)
    return np.asarray((middle - np.array([p.pressure for p in known])) / PSI)
