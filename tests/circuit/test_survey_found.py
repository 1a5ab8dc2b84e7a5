"""The survey starts from what was measured and from the oil in the engine."""

from __future__ import annotations

import time
from dataclasses import replace

import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import Point, healthy, shown
from diagnose.circuit.fitting import HEALTHY
from diagnose.circuit.survey import Survey, survey
from diagnose.diagnosis import Diagnosis
from diagnose.hydraulics.oil import Oil
from knowledge.model import Stage
from knowledge.units import INCH, PSI
from tests.support.circuits import BOOK, a_case, text

AT = ((700, 95), (1500, 95), (2500, 95), (900, 40))
BASE = tuple(f"{n} rpm, {t} C, 1 psi" for n, t in AT)
WIDE = {"main_clearance": "0.0045 in"}


def read_from(made: object) -> tuple[str, ...]:
    """What an engine shows, as readings."""
    points = [Point(n, t + 273.15, 0.0) for n, t in AT]
    every = zip(AT, shown(made, points) / PSI, strict=True)  # type: ignore[arg-type]
    return tuple(f"{n} rpm, {t} C, {p:.1f} psi" for (n, t), p in every)


def sound() -> tuple[str, ...]:
    return read_from(healthy(a_case()))


def worn_mains() -> tuple[str, ...]:
    """What the engine shows with mains of 0.0045 in and nothing else wrong."""
    engine = healthy(a_case())
    wide = tuple(replace(g, clearance_diametral=0.0045 * INCH) for g in engine.mains)
    return read_from(replace(engine, mains=wide))


def surveyed(readings: tuple[str, ...], measured: dict[str, str] | None = None) -> Survey:
    return survey(a_case(measured, readings, sound()), BOOK)


def graph_ratio(found: Survey, condition: str) -> float:
    likelihood = found.likelihoods[condition]
    return likelihood.if_present / likelihood.if_absent


def test_thin_oil_is_not_blamed_where_the_measured_mains_explain_the_loss() -> None:
    got = surveyed(worn_mains(), WIDE)
    first = got.rows[0]
    assert first.id == "clearances_wide"
    assert first.measured
    assert "0.0045 in" in first.shown
    assert got.share("oil_thin") < 0.1 * first.share
    assert graph_ratio(got, "oil_thin") < 1
    assert graph_ratio(got, "clearances_wide") > 10


def test_thin_oil_is_blamed_where_the_mains_are_as_they_should_be() -> None:
    """A value within limits explains nothing, and a measured one cannot be wide.

    Priors as wide as real engines leave less to the oil than narrow ones did.
    """
    engine = FAULTS["oil_thin"].apply(healthy(a_case()), 0.7)
    tight = {"main_clearance": "0.0025 in", "rod_clearance": "0.0025 in"}
    got = surveyed(read_from(engine), tight)
    assert got.share("oil_thin") > 5 * got.share("clearances_wide")
    assert graph_ratio(got, "oil_thin") > 5
    assert not any(r.measured for r in got.rows)


def test_a_further_condition_is_named_where_the_mains_explain_too_little() -> None:
    """Mains a little wide, and a relief valve that bleeds far more than that."""
    engine = healthy(a_case())
    wide = tuple(replace(g, clearance_diametral=0.0032 * INCH) for g in engine.mains)
    both = FAULTS["relief_bleeds"].apply(replace(engine, mains=wide), 0.8)
    got = surveyed(read_from(both), {"main_clearance": "0.0032 in"})
    assert got.share("relief_bleeds") > got.share("clearances_wide")
    assert graph_ratio(got, "relief_bleeds") > 1


def test_what_was_only_seen_is_as_bad_as_the_readings_make_it() -> None:
    """A worn relief seat whose gap nobody measured explains what a gap of a guessed size cannot."""
    bleeds = FAULTS["relief_bleeds"].apply(healthy(a_case()), 0.9)
    readings = read_from(bleeds)
    got = survey(a_case(readings=readings, more="relief_seat_scored"), BOOK)
    without = survey(a_case(readings=readings), BOOK)
    assert got.share("relief_bleeds") > without.share("relief_bleeds")
    assert got.rows[0].id == "relief_bleeds"
    assert "open under a sound spring" in got.rows[0].shown
    assert got.rows[0].severity.middle > 0.7


def test_what_was_measured_is_not_shown_as_something_else() -> None:
    """However bad the condition is, the mains stay at what the gauge strip showed."""
    engine = FAULTS["clearances_wide"].apply(healthy(a_case()), 0.8)
    got = surveyed(read_from(engine), {"main_clearance": "0.0025 in"})
    [row] = [r for r in got.rows if r.id == "clearances_wide"]
    assert row.shown.startswith("main bearing clearance 0.0025 in")
    assert row.shown.endswith("as measured, and more where nobody measured")


@pytest.mark.parametrize(("poured", "condition"), [("5W-20", "oil_thin"), ("10W-40", HEALTHY)])
def test_the_oil_in_the_engine_counts(poured: str, condition: str) -> None:
    """Thin oil that somebody found to be the wrong grade explains the loss by itself."""
    engine = replace(healthy(a_case()), oil=Oil.of_grade(poured))
    more = "oil_grade_too_thin" if poured == "5W-20" else ""
    case = from_text(
        text({}, read_from(engine), sound(), more).replace("10W-40", poured), None, BOOK
    )
    got = survey(case, BOOK)
    assert got.rows[0].id == condition
    assert got.rows[0].measured == (condition == "oil_thin")


def test_what_was_measured_later_does_not_count_before() -> None:
    """At the stage of the complaint nobody had a micrometer in hand."""
    case = a_case(WIDE, worn_mains(), sound())
    told, opened = (shares(case, stage) for stage in (Stage.KNOWN, Stage.OPENED))
    assert told == pytest.approx(shares(replace(case, measurements=()), Stage.OPENED))
    assert opened["clearances_wide"] > told["clearances_wide"]


def shares(case: Case, stage: Stage) -> dict[str, float]:
    """The shares of a survey of the readings, with what is known at a stage."""
    got = survey(case.up_to(stage), BOOK)
    return {r.id: r.share for r in got.rows}


def test_the_diagnosis_takes_the_measured_mains() -> None:
    """In the ranking mains are far before thin oil."""
    ranked = {
        r.cause.id: r.probability
        for r in Diagnosis(BOOK, a_case(WIDE, worn_mains(), sound())).ranking
    }
    assert ranked["bearing_wear_mains"] > 5 * ranked["viscosity_too_low"]


def test_a_survey_takes_no_more_than_a_second_and_a_half() -> None:
    case = a_case(WIDE, worn_mains(), sound())
    began = time.process_time()
    survey(case, BOOK)
    assert time.process_time() - began < 1.5


def test_a_circuit_measured_to_be_worn_is_not_called_sound() -> None:
    """However good the gauge reads, the mains were over the limit; good mains prove nothing."""
    assert surveyed(sound()).share(HEALTHY) > 0.3
    assert surveyed(sound(), WIDE).share(HEALTHY) == 0.0
    assert surveyed(sound(), {"main_clearance": "0.0022 in"}).share(HEALTHY) > 0.3
