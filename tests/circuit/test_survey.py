"""The hydraulic survey: what it finds, how it is shown, and how it enters the cause graph."""

from __future__ import annotations

import json
import subprocess
import sys
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import Point, healthy, shown
from diagnose.circuit.fitting import HEALTHY, NEITHER, GaugeError, log_density
from diagnose.circuit.survey import Survey, survey
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError
from diagnose.inference.causegraph import (
    MISFIT,
    MOST_RATIO,
    READINGS,
)
from diagnose.inference.network import SEEN
from diagnose.output.html.charts import curves
from diagnose.output.plot import Plot
from diagnose.output.text.plot import plot_lines
from knowledge.book import the_book
from knowledge.units import PSI
from tests.studies.survey_study import study
from tests.support.command_line import call, environment
from tests.support.examples import one_in
from tests.support.reviews import review

BOOK = the_book()
BASE = """
schema = 1
[job]
title = "Plover, workshop V8"
[engine]
layout = "distributor_v8"
[engine.limits]
relief_setting = "50 psi"
"""
AT = [(700, 95), (1200, 95), (2500, 95), (4000, 95), (700, 25), (2000, 25), (700, 60)]


def text(pressures: list[float], gauge: str = "direct", known: bool = True) -> str:
    """A case with these readings; with what a sound engine of the kind showed before."""
    out = BASE
    entries = [("reading", p, f'gauge = "{gauge}"\n') for p in pressures]
    at = AT[: len(pressures)]
    if known:
        sound = sounds(None, 0.0)
        entries += [("baseline", float(p), "") for p in sound]
        at = at + AT
    for i, ((kind, p, more), (rpm, heat)) in enumerate(zip(entries, at, strict=True), 1):
        out += f'[[{kind}]]\nno = {i}\nrpm = "{rpm} rpm"\noil = "{heat} C"\n'
        out += f'pressure = "{max(p, 0.0):.1f} psi"\n{more}'
    return out


def example(*words: object, **more: object) -> Case:
    return from_text(text(*words, **more), None, BOOK)  # type: ignore[arg-type]


def sounds(condition: str | None, severity: float, count: int = 7) -> list[float]:
    """What this engine shows with a condition [psi]."""
    engine = healthy(from_text(BASE, None, BOOK))
    if condition:
        engine = FAULTS[condition].apply(engine, severity)
    points = [Point(n, t + 273.15, 0.0) for n, t in AT[:count]]
    return [float(p) / PSI for p in shown(engine, points)]


def found(condition: str | None, severity: float, count: int = 7, **more: object) -> Survey:
    return survey(example(sounds(condition, severity, count), **more), BOOK)


# ------------------------------------------------------------------------------ what it finds


@pytest.mark.parametrize("condition", one_in(3, list(FAULTS)))
def test_a_condition_is_found_with_its_severity(condition: str) -> None:
    """Readings without noise, baseline known: its severity, and among the first two or not far
    behind the first: a little air drawn in looks like a leaking seat, or like a lesser pump."""
    got = found(condition, 0.6)
    ranked = [r for r in got.rows if r.id in FAULTS]
    row = next(r for r in ranked if r.id == condition)
    assert row in ranked[:2] or row.share > ranked[0].share / 4
    assert row.severity.low - 0.2 <= 0.6 <= row.severity.high + 0.2
    assert row.ratio > 5
    assert row.shown
    assert sum(r.share for r in got.rows) == pytest.approx(1.0)


def test_a_sound_circuit_is_called_sound() -> None:
    got = found(None, 0.0)
    assert got.rows[0].id == HEALTHY
    assert all(e.if_present <= e.if_absent * 1.5 for e in got.likelihoods.values())


def test_only_cold_and_hot_tell_thin_oil_from_wide_bearings() -> None:
    """Two hot readings leave them alike; seven cold and hot do not."""

    def apart(got: Survey) -> float:
        return got.share("oil_thin") / max(got.share("clearances_wide"), 1e-9)

    assert 1 / 8 < apart(found("oil_thin", 0.6, 2)) < 8
    assert apart(found("oil_thin", 0.6, 7)) > 3 * apart(found("oil_thin", 0.6, 2))


def test_what_fits_no_condition_is_not_forced_on_one() -> None:
    """Valve stuck high and starved when fast at once: none of these alone."""
    both = [44.0, 60.0, 100.0, 20.0, 110.0, 30.0, 95.0]
    got = survey(example(both), BOOK)
    assert got.rows[0].id == NEITHER
    ratios = [e.if_present / e.if_absent for e in got.likelihoods.values()]
    assert all(0.5 < r < 2 for r in ratios)


def test_a_panel_gauge_may_lie_and_a_direct_one_not() -> None:
    """A panel gauge that shows half of everything, cold and hot alike, is the gauge."""
    half = [0.5 * p for p in sounds(None, 0.0)]
    wrong = survey(example(half, gauge="panel"), BOOK)
    assert wrong.rows[0].id == "reading_false"
    straight = survey(example(half, gauge="direct"), BOOK)
    assert "reading_false" not in {r.id for r in straight.rows}


def test_without_a_baseline_it_is_less_sure() -> None:
    known, unknown = found("pump_slip", 0.5), found("pump_slip", 0.5, known=False)
    assert known.calibrated
    assert not unknown.calibrated
    assert unknown.share(HEALTHY) > known.share(HEALTHY)


def test_the_next_reading_separates_the_leaders() -> None:
    """Idle alone leaves much alike; the reading proposed then raises the true one's share."""
    few = found("pump_slip", 0.6, 1)
    next_one = few.further
    assert next_one is not None
    assert 0.03 < next_one.separates <= 1.0
    assert set(next_one.would_show) <= {r.id for r in few.rows[:5]}
    engine = FAULTS["pump_slip"].apply(healthy(from_text(BASE, None, BOOK)), 0.6)
    (shows,) = shown(engine, [Point(next_one.rpm, next_one.temperature, 0.0)])
    psi = float(shows) / PSI
    more = (
        f'[[reading]]\nno = 900\nrpm = "{next_one.rpm:.0f} rpm"\npressure = "{psi:.1f} psi"\n'
        f'oil = "{next_one.temperature - 273.15:.0f} C"\ngauge = "direct"\n'
    )
    after = survey(from_text(text(sounds("pump_slip", 0.6, 1)) + more, None, BOOK), BOOK)
    assert after.share("pump_slip") > few.share("pump_slip")
    middle, sigma = next_one.would_show.get("pump_slip", (psi, 1.0))
    assert abs(psi - middle) < 3 * sigma, "and what it is said to show is what it shows"


def test_no_reading_of_a_running_engine_is_reported() -> None:
    with pytest.raises(UsageError, match="diagnose record"):
        survey(from_text(BASE, None, BOOK), BOOK)


def test_the_same_case_gets_the_same_answer() -> None:
    one, other = found("oil_thin", 0.4), found("oil_thin", 0.4)
    assert one is not other
    assert one.rows == other.rows
    assert one.likelihoods == other.likelihoods
    assert one.rows != found("oil_thin", 0.5).rows, "another engine, another answer"


def test_density_over_engines_is_the_normal_one_where_engines_are() -> None:
    """Engines drawn from a normal: the density is that normal with the gauge's error added."""
    rng = np.random.default_rng(0)
    shows = rng.normal(30.0, 4.0, (4000, 1))
    each = log_density(np.array([35.0]), shows, np.array([[1.5**2]]))
    variance = 16 + 1.5**2
    exact = -0.5 * 25 / variance - 0.5 * np.log(2 * np.pi * variance)
    assert np.log(np.exp(each).mean()) == pytest.approx(exact, abs=0.05)


def test_gauges_of_one_kind_share_their_error() -> None:
    from diagnose.circuit.fitting import errors

    cov = errors(
        [GaugeError(1.5, 1.0), GaugeError(1.5, 1.0), GaugeError(2.0, 2.25)],
        np.array([10.0, 40.0, 40.0]),
    )
    assert cov[0, 1] > 0
    assert cov[0, 2] == 0
    assert np.all(np.linalg.eigvalsh(cov) > 0)


# ------------------------------------------------------------------------- the study, reduced


@pytest.mark.long
@pytest.mark.parametrize("trials", [13, 130], ids="{} engines".format)
def test_study_reduced(trials: int) -> None:
    """The identification study, each condition once: floors well below what the full run prints."""
    tallies = study(trials)
    seven, two = tallies["all 13", True, 7], tallies["all 13", True, 2]
    assert seven.first / seven.trials >= 0.6
    assert seven.second / seven.trials >= 0.7
    assert np.mean(seven.shares) > np.mean(two.shares)
    assert np.mean(seven.shares) > np.mean(tallies["all 13", False, 7].shares) - 0.05


# ------------------------------------------------------------------------ in the cause graph


def test_the_survey_is_evidence_in_place_of_findings_from_readings() -> None:
    """Not both: the readings as a whole are evidence, and no finding derived from them is."""
    case = example(sounds("clearances_wide", 0.6))
    answer = Diagnosis(BOOK, case)
    assert answer.inference.survey is not None
    fits = {n for n, e in answer.inference.survey.likelihoods.items() if e.if_present > e.if_absent}
    against = {
        n for n, e in answer.inference.survey.likelihoods.items() if e.if_present < e.if_absent
    }
    graph = answer.inference.graph
    assert fits
    assert against
    assert not (fits | against) & set(answer.inference.evidence), "all of it is one node"
    assert set(graph.predecessors(READINGS)) == fits | {MISFIT}
    assert set(graph.predecessors(MISFIT)) <= against
    assert answer.inference.evidence[READINGS] == SEEN
    assert not {"good_cold_low_hot", "direct_gauge_low", "low_at_all_speeds"} & set(
        answer.inference.evidence
    )
    worded = Diagnosis(BOOK, replace(case, profile=None))
    assert worded.inference.survey is None
    assert {"direct_gauge_low", "low_at_all_speeds"} <= set(worded.inference.evidence)
    for likelihood in answer.inference.survey.likelihoods.values():
        assert (
            1 / MOST_RATIO - 1e-9
            <= likelihood.if_present / likelihood.if_absent
            <= MOST_RATIO + 1e-9
        )
    assert answer.inference.belief("clearances_wide") > 5 * answer.inference.belief("pump_slip")
    assert "a known fault of the circuit" in call_review(case)


def call_review(case: Case) -> str:
    return review(Diagnosis(BOOK, case), "plover.toml")


def test_findings_entered_by_hand_stay_evidence() -> None:
    case_text = text(sounds("clearances_wide", 0.6)) + (
        '[[finding]]\nno = 90\nwhat = "good_cold_low_hot"\nstate = "present"\n'
    )
    answer = Diagnosis(BOOK, from_text(case_text, None, BOOK))
    assert "good_cold_low_hot" in answer.inference.evidence


@pytest.mark.parametrize("count", [1, 2, 4])
def test_few_readings_or_one_heat_keep_to_words(count: int) -> None:
    """Two readings, or any number at one heat, are no survey for the graph."""
    case = example(sounds("pump_slip", 0.6, count))
    assert Diagnosis(BOOK, case).inference.survey is None


PROBE = """
import sys
from pathlib import Path
from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.review import review_document
from diagnose.output.text.review import review_text
from knowledge.book import the_book
book = the_book()
review_text(review_document(Diagnosis(book, load(Path(sys.argv[1]), book)), "case.toml"))
print([m for m in sys.modules if m.split(".")[0] == "scipy" or m.startswith("diagnose.hydraulics")])
"""


def test_review_without_readings_loads_no_physics(tmp_path: Path) -> None:
    """Neither scipy nor the circuit; with readings the circuit, and scipy not even then."""
    finding = '[[finding]]\nno = 90\nwhat = "needle_flickers"\nstate = "present"\n'
    for content, wanted in ((BASE + finding, False), (text(sounds("pump_slip", 0.6)), True)):
        path = tmp_path / "case.toml"
        path.write_text(content)
        done = subprocess.run(
            [sys.executable, "-c", PROBE, path], capture_output=True, text=True,
            env=environment(), check=True,
        )  # fmt: skip
        assert ("diagnose.hydraulics.circuit" in done.stdout) is wanted
        assert "scipy" not in done.stdout


# -------------------------------------------------------------------------------- the command


@pytest.fixture
def path(tmp_path: Path) -> Path:
    place = tmp_path / "plover.toml"
    place.write_text(text(sounds("pump_slip", 0.7)))
    return place


def test_command_prints_shares_curves_and_the_next_reading(path: Path) -> None:
    done = call("survey", path, "--full")
    assert done.code == 0
    assert "[pump_slip]" in done.out
    assert "none of these alone" in done.out
    assert "Oil at 95 C" in done.out
    assert "O read" in done.out
    assert max(map(len, done.out.splitlines())) <= 80


def test_command_as_data(path: Path) -> None:
    got = json.loads(call("survey", path, "--json").out)
    assert got["schema"] == 1
    assert sum(c["share"] for c in got["conditions"]) == pytest.approx(1.0)
    assert len(got["curves"]) == 3
    assert len(got["readings"]) == 7


def test_readings_may_be_given_and_are_not_kept(path: Path) -> None:
    before = path.read_text()
    done = call("survey", path, "--reading", "3000 rpm 95 C 3.4 bar direct pump +-1 psi", "--json")
    last = json.loads(done.out)["readings"][-1]
    assert last["tap"] == "pump"
    assert last["psi"] == pytest.approx(49.3, abs=0.1)
    assert path.read_text() == before


def test_picture_is_one_sound_svg(path: Path, tmp_path: Path) -> None:
    place = tmp_path / "curves.svg"
    assert call("survey", path, "--svg", place).code == 0
    root = ElementTree.parse(place).getroot()
    assert root.tag.endswith("svg")
    read = [g for g in root.findall(".//{*}g") if "-read-" in g.get("id", "")]
    assert sum(len(g.findall(".//{*}use")) for g in read) == 7
    words = "".join(root.itertext())
    assert "sound engine of this kind" in words
    assert "Oil at 95 C" in words
    assert not root.findall(".//{*}script")


@pytest.mark.parametrize(
    ("words", "code", "says"),
    [
        (("--reading", "700 rpm 8 pounds of oil"), 2, "not understood"),
        (("--reading", "9 rpm 95 C 8 psi"), 2, "cannot be right"),
        (("--svg", "curves.png"), 2, "must end in .svg"),
        (("--svg", "/nowhere/at/all/curves.svg"), 73, "curves.svg"),
    ],
)
def test_what_is_wrong_is_one_line(
    path: Path, words: tuple[str, ...], code: int, says: str
) -> None:
    done = call("survey", path, *words)
    assert done.code == code
    assert says in done.err
    assert done.out == ""


# ----------------------------------------------------------------------------------- the plot


def test_plot_keeps_its_size_and_hides_no_sharp_change() -> None:
    plot = Plot(
        title="",
        x_label="rpm",
        y_label="psi",
        x=[0.0, 100.0],
        lines={"<a>": [0.0, 0.0]},
        points=[(50.0, 0.0)],
    )
    lines = plot_lines(plot, 60, 10)
    assert max(map(len, lines)) <= 60
    assert sum(line.count("O") for line in lines[:10]) == 1
    picture = curves([plot], "one")
    assert "<a>" not in picture
    assert "&lt;a&gt;" in picture
    assert picture == curves([plot], "one"), "the same plot, the same bytes"


def test_normal_cold_readings_blame_no_screen() -> None:
    """A sound V8 holds more pressure cold than the circuit shows: 28 and 50 psi hot, 62 and 68 cold."""
    text = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
    rows = ((700, 95, 28), (2500, 95, 50), (900, 20, 62), (2000, 20, 68))
    for no, (rpm, heat, psi) in enumerate(rows, 1):
        text += f'[[reading]]\nno = {no}\nrpm = "{rpm} rpm"\noil = "{heat} C"\n'
        text += f'pressure = "{psi} psi"\n'
    found = survey(from_text(text, None, BOOK), BOOK)
    assert found.rows[0].id == "healthy"
    assert found.share("suction_throttled") < 0.15
