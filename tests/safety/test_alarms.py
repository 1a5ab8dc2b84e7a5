"""Every alarm with its severity, what takes it back, and each limit just below, at and above.

Limits: 7 psi at idle and 20 psi from 2000 rpm (owner's handbooks), 2 bar at working speed for a
farm diesel (its shop manual), 90 psi cold (common practice). The rows are written from these.
"""

from __future__ import annotations

import pytest

from diagnose.bookcheck.examples import yields
from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.case.writing import Fields, table_text
from diagnose.diagnosis import Diagnosis
from knowledge.alarm import Alarm
from knowledge.book import the_book
from knowledge.model import Severity
from tests.support.alarm_table import Row, kept, tried
from tests.support.reviews import review

BOOK = the_book()
STOP, DO_NOT_RUN, CARE = Severity.STOP, Severity.DO_NOT_RUN, Severity.CARE
DIESEL = 'has = ["diesel"]\n'


def case_of(
    *present: str,
    absent: tuple[str, ...] = (),
    readings: tuple[str, ...] = (),
    engine: str = "",
) -> Case:
    """A case on an engine without a known circuit; a reading: '700 rpm, 90 C, 7 psi, direct'."""
    text = f"schema = 1\n[engine]\n{engine}"
    states = [(f, "present") for f in present] + [(f, "absent") for f in absent]
    for i, (what, state) in enumerate(states, 1):
        text += "\n" + table_text("[[finding]]", {"no": i, "what": what, "state": state})
    for i, said in enumerate(readings, len(states) + 1):
        rpm, oil, pressure, *more = said.split(", ")
        fields: Fields = {"no": i, "rpm": rpm, "oil": oil, "pressure": pressure}
        extra = {k or "gauge": v for k, _, v in (m.rpartition("=") for m in more)}
        day = extra.pop("when", "")
        text += "\n" + table_text("[[reading]]", {**fields, **extra})
        text += f"when = {day}\n" if day else ""
    return from_text(text, None, BOOK)


def standing(case: Case) -> set[tuple[str, Severity]]:
    """Rule and severity of each alarm that stands."""
    answer = Diagnosis(BOOK, case)
    return {(answer.inference.result.alarms[a].rule.id, a.severity) for a in answer.alarms}


# ------------------------------------------------------------------------ what is seen

KEPT = kept()
ZERO, FELL, SHOWN = "gauge_reads_zero", "fell_suddenly", "pressure_shown_since"


def named(row: Row) -> str:
    return f"{row.rule}: {' '.join(row.present)}"


def test_the_table_is_what_the_rules_do() -> None:
    """Severity and premises of every alarm; the table is read through before it is changed."""
    assert tried() == KEPT
    assert len({row.rule for row in KEPT}) >= 50


@pytest.mark.parametrize("row", KEPT, ids=named)
def test_an_alarm_is_in_the_answer(row: Row) -> None:
    mine = (row.rule, Severity[row.severity])
    present = list(row.present)
    assert mine in standing(case_of(*present))
    for one in present:
        rest = [f for f in present if f != one]
        assert mine not in standing(case_of(*rest, absent=(one,)))


@pytest.mark.parametrize("row", KEPT, ids=named)
def test_only_what_the_panel_gauge_showed_is_taken_back(row: Row) -> None:
    """Somebody's word that pressure was shown since answers no other alarm."""
    mine = (row.rule, Severity[row.severity])
    taken_back = mine not in standing(case_of(*dict.fromkeys((*row.present, SHOWN))))
    assert taken_back is (row.present in {(ZERO,), (FELL,), ("gone_at_the_next_start",)})


def test_the_zero_stands_until_pressure_was_seen() -> None:
    """A no, or a trusted gauge read low, takes nothing back; a yes leaves a caution."""
    stop = ("no_pressure_means_stop_now", STOP)
    assert stop in standing(case_of(ZERO))
    assert stop in standing(case_of(ZERO, absent=(SHOWN,)))
    assert stop in standing(case_of(ZERO, "direct_gauge_low"))
    assert standing(case_of(ZERO, SHOWN)) == {("trusted_gauge_shows_it_is_there", CARE)}
    assert standing(case_of(SHOWN)) == set()
    there = ("trusted_gauge_shows_it_is_there", STOP)
    assert there in standing(case_of(ZERO, SHOWN, "direct_gauge_low"))
    assert there in standing(case_of(SHOWN, "direct_gauge_zero"))
    assert standing(case_of(SHOWN, "direct_gauge_low")) == {("low_by_how_much_unknown", CARE)}


# ------------------------------------------------------------------------ what is read

RELIEF_80 = '[engine.limits]\nrelief_setting = "80 psi"\n'
OWN = '[engine.limits]\nstop_idle_pressure = "12 psi"\nstop_running_pressure = "30 psi"\n'
#: readings, words of the engine, whether the engine must be stopped
READ: list[tuple[tuple[str, ...], str, bool]] = [
    # below 7 psi, up to 2000 rpm
    (("700 rpm, 90 C, 6.9 psi",), "", True),
    (("700 rpm, 90 C, 7 psi",), "", False),
    (("700 rpm, 90 C, 7.1 psi",), "", False),
    (("700 rpm, 90 C, 6.9 psi, direct",), "", True),
    (("1999 rpm, 90 C, 6.9 psi",), "", True),
    (("1999 rpm, 90 C, 19.9 psi",), "", False),
    # below 20 psi from 2000 rpm on
    (("2000 rpm, 90 C, 19.9 psi",), "", True),
    (("2000 rpm, 90 C, 20 psi",), "", False),
    (("2001 rpm, 90 C, 19.9 psi, direct",), "", True),
    (("4000 rpm, 90 C, 20.1 psi",), "", False),
    # the engine's own stop figures go before these
    (("700 rpm, 90 C, 11.9 psi",), OWN, True),
    (("700 rpm, 90 C, 12 psi",), OWN, False),
    (("2000 rpm, 90 C, 29.9 psi",), OWN, True),
    (("2000 rpm, 90 C, 30 psi",), OWN, False),
    (("700 rpm, 90 C, 3 psi",), '[engine.limits]\nstop_idle_pressure = "2 psi"\n', False),
    # not by itself running, or read before the gallery
    (("340 rpm, 90 C, 2 psi",), "", False),
    (("350 rpm, 90 C, 2 psi",), "", True),
    (("700 rpm, 90 C, 2 psi, tap=pump",), "", False),
    # a diesel at working speed, 2 bar
    (("1800 rpm, 90 C, 1.99 bar",), DIESEL, True),
    (("1800 rpm, 90 C, 2 bar",), DIESEL, False),
    (("1800 rpm, 90 C, 1.99 bar",), "", False),
    (("1500 rpm, 90 C, 1.99 bar",), DIESEL, True),
    (("1499 rpm, 90 C, 1.99 bar",), DIESEL, False),
    (("2200 rpm, 90 C, 1.4 bar", "2200 rpm, 90 C, 3.5 bar, direct"), DIESEL, False),
    (("2200 rpm, 90 C, 1.4 bar", "2200 rpm, 90 C, 1.9 bar, direct"), DIESEL, True),
    (("2200 rpm, 90 C, 1.4 bar", "2200 rpm, 90 C, 3.5 bar"), DIESEL, True),
    # cold, past 90 psi or past the setting and a fifth
    (("2000 rpm, 20 C, 90 psi",), "", False),
    (("2000 rpm, 20 C, 90.1 psi",), "", True),
    (("2000 rpm, 44.9 C, 90.1 psi",), "", True),
    (("2000 rpm, 46 C, 90.1 psi",), "", False),
    (("2000 rpm, 20 C, 95.9 psi",), RELIEF_80, False),
    (("2000 rpm, 20 C, 96.1 psi",), RELIEF_80, True),
    (("2000 rpm, 20 C, 90.1 psi, tap=pump",), "", False),
    # a panel gauge is refuted by a trusted one at the same moment, and by nothing else
    (("700 rpm, 90 C, 5 psi", "700 rpm, 90 C, 7 psi, direct"), "", False),
    (("700 rpm, 90 C, 5 psi", "700 rpm, 90 C, 6.9 psi, direct"), "", True),
    (("700 rpm, 90 C, 5 psi", "700 rpm, 90 C, 30 psi"), "", True),
    (("700 rpm, 90 C, 5 psi", "900 rpm, 90 C, 30 psi, direct"), "", True),
    (("700 rpm, 90 C, 5 psi", "700 rpm, 60 C, 30 psi, direct"), "", True),
    (("700 rpm, 90 C, 5 psi, direct", "700 rpm, 90 C, 30 psi, direct"), "", True),
    (
        (
            "700 rpm, 90 C, 5 psi, when=2026-05-01",
            "700 rpm, 90 C, 30 psi, direct, when=2026-05-01",
        ),
        "",
        False,
    ),
    (
        (
            "700 rpm, 90 C, 5 psi, when=2026-05-01",
            "700 rpm, 90 C, 30 psi, direct, when=2026-05-02",
        ),
        "",
        True,
    ),
]


def test_one_pressure_in_figures_and_in_words_stops_once() -> None:
    words, figures = "idle, hot, 6 psi", "650 rpm, hot, 6 psi"
    for readings in ((words, figures), (figures, words)):
        stops = [a.says for a in Diagnosis(BOOK, case_of(readings=readings)).alarms]
        assert [s for s in stops if "limit 7 psi" in s] == [s for s in stops if "650 rpm" in s]
        assert len([s for s in stops if "limit 7 psi" in s]) == 1
    both = case_of(readings=(figures, "650 rpm, hot, 5 psi, direct"))
    assert len([a for a in Diagnosis(BOOK, both).alarms if "limit 7 psi" in a.says]) == 2


LITTLE = "little_at_hot_idle"
#: readings at idle, words of the engine, whether it may run without load only
BELOW_THE_LEAST: list[tuple[tuple[str, ...], str, bool]] = [
    (("700 rpm, 90 C, 7.1 psi",), "", True),
    (("700 rpm, 90 C, 9.9 psi",), "", True),
    (("700 rpm, 90 C, 10 psi",), "", False),
    (("700 rpm, 90 C, 6.9 psi",), "", False),  # it must be stopped
    (("1500 rpm, 90 C, 9.9 psi",), "", False),
    (("700 rpm, 90 C, 9.9 psi, direct",), "", True),
    (("700 rpm, 90 C, 9.9 psi", "700 rpm, 90 C, 15 psi, direct"), "", False),
    (("700 rpm, 90 C, 9 psi",), '[engine.limits]\nhot_idle_pressure = "8 psi"\n', False),
    (("700 rpm, 90 C, 14 psi",), '[engine.limits]\nhot_idle_pressure = "15 psi"\n', True),
]


@pytest.mark.parametrize(("readings", "engine", "cared"), BELOW_THE_LEAST)
def test_below_the_least_at_idle(readings: tuple[str, ...], engine: str, cared: bool) -> None:
    """Between the stop limit and the least at hot idle the engine runs only for a reading."""
    assert ((LITTLE, CARE) in standing(case_of(readings=readings, engine=engine))) is cared


def test_a_trusted_gauge_that_reads_right_ends_the_care() -> None:
    """And a figure takes its place."""
    care = ("low_by_how_much_unknown", CARE)
    assert care in standing(case_of("gauge_reads_low"))
    assert care not in standing(case_of("gauge_reads_low", absent=("direct_gauge_low",)))
    assert care not in standing(case_of("gauge_reads_low", readings=("700 rpm, 90 C, 15 psi",)))


SHORT = "far_short_at_speed"
#: readings at high revs, words of the engine, whether it is warned of; 10 psi for each 1000 rpm
FAR_SHORT: list[tuple[tuple[str, ...], str, bool]] = [
    (("4000 rpm, 90 C, 24 psi",), "", True),
    (("4000 rpm, 90 C, 24 psi, direct",), "", True),
    (("4000 rpm, 90 C, 29 psi",), "", False),
    (("2000 rpm, 90 C, 21 psi",), "", False),  # the limit at 2000 rpm holds
    (("4000 rpm, 20 C, 24 psi",), "", False),  # cold oil is judged by its own rule
    (("4000 rpm, 90 C, 24 psi", "4000 rpm, 90 C, 50 psi, direct"), "", False),
    (("4000 rpm, 90 C, 24 psi",), '[engine.limits]\nhot_running_pressure = "15 psi"\n', False),
    (("4000 rpm, 90 C, 24 psi",), 'layout = "side_valve"\n', False),
]


@pytest.mark.parametrize(("readings", "engine", "cared"), FAR_SHORT)
def test_far_less_than_the_revs_need(readings: tuple[str, ...], engine: str, cared: bool) -> None:
    """Above the stop limit at 2000 rpm, yet far too little for more revs."""
    assert ((SHORT, CARE) in standing(case_of(readings=readings, engine=engine))) is cared


STOPPED, MAY_RUN = "protection_has_stopped_it", "protection_stopped_it_with_pressure_there"


@pytest.mark.parametrize(
    ("readings", "stops"),
    [
        ((), True),
        (("1500 rpm, 90 C, 40 psi, direct",), False),
        (("1500 rpm, hot, 2.8 bar, direct",), False),
        (("1500 rpm, 90 C, 40 psi",), True),
        (("1500 rpm, cold, 40 psi, direct",), True),
        (("1500 rpm, 90 C, 40 psi, direct", "700 rpm, 90 C, 3 psi, direct"), True),
    ],
)
def test_a_trusted_gauge_ends_the_stop_of_the_protection(
    readings: tuple[str, ...], stops: bool
) -> None:
    """Once it showed enough with the oil hot, the engine may run with that gauge on."""
    found = standing(case_of("protection_tripped", readings=readings))
    assert ((STOPPED, DO_NOT_RUN) in found) is stops
    assert ((MAY_RUN, CARE) in found) is not stops


#: the rules that compare readings with a limit in pascals
LIMITED = {
    "reading_below_the_stop_limit",
    "farm_diesel_below_two_bar",
    "far_too_much_when_cold",
}


@pytest.mark.parametrize(("readings", "engine", "stops"), READ)
def test_what_is_read(readings: tuple[str, ...], engine: str, stops: bool) -> None:
    found = {a for a in standing(case_of(readings=readings, engine=engine)) if a[0] in LIMITED}
    found.discard(("far_too_much_when_cold", CARE))  # of the pattern that the readings make
    assert {severity for _, severity in found} == ({STOP} if stops else set())


# ------------------------------------------------------------------------ all of them, and shown


def test_the_tables_hold_every_alarm_of_the_book() -> None:
    """Each rule that can sound an alarm, with each severity its examples give."""
    possible = {
        (rule.id, c.severity)
        for rule in BOOK.rules.values()
        for example in (*rule.matches, *rule.non_matches)
        for c in yields(rule, example)
        if isinstance(c, Alarm)
    }
    rows = {(row.rule, Severity[row.severity]) for row in KEPT}
    met = rows | {(LITTLE, CARE), (SHORT, CARE)}
    read = {a for r, e, stops in READ if stops for a in standing(case_of(readings=r, engine=e))}
    # what is reported, and cold readings: test_alarms_reported; measured: test_wide_clearances;
    # engines without pressure: test_kinds_of_engine;
    # a trusted gauge beside panel or lamp: test_trusted_gauge_refutes
    reported = {
        ("lamp_flickers_at_speed", STOP),
        ("lamp_flickers", CARE),
        ("none_in_the_manoeuvre", STOP),
        ("half_of_the_usual_when_cold", STOP),
        ("little_when_cold", CARE),
        ("bearing_clearance_over_its_limit", DO_NOT_RUN),
        (MAY_RUN, CARE),
        ("as_little_as_it_usually_has", CARE),  # in jobs/test_the_road_to_the_cause
        ("trusted_gauge_beside_panel_or_lamp", CARE),
        ("no_pressure_to_lose", CARE),
        ("no_pressure_to_lose", STOP),
    }
    assert possible - met - read == reported
    assert {rule for rule, _ in read} >= LIMITED


@pytest.mark.parametrize(
    "present",
    [
        ("gauge_reads_zero",),
        ("none_from_first_start",),
        ("falls_in_a_manoeuvre",),
        ("lamp_comes_on",),
    ],
)
def test_an_alarm_is_the_first_thing_shown(present: tuple[str, ...]) -> None:
    answer = Diagnosis(BOOK, case_of(*present))
    text = " ".join(review(answer, "case.toml").split())
    for alarm in answer.alarms:
        said = f"{alarm.severity.value.upper()}: {alarm.says}"
        assert said in text
        assert text.index(said) < text.index("Root causes")
    grave = any(a.severity is not CARE for a in answer.alarms)
    assert answer.may_run is not grave
    runs = {i.id for i in BOOK.inspections.values() if i.needs_running}
    assert runs
    if grave and answer.next_check:
        assert answer.next_check.option.inspection.id not in runs


def test_the_gravest_alarm_comes_first() -> None:
    case = case_of("drill_gives_none", "falls_in_a_manoeuvre", ZERO)
    alarms = Diagnosis(BOOK, case).alarms
    assert {a.severity for a in alarms} == {STOP, DO_NOT_RUN, CARE}
    found = [a.severity for a in alarms if not a.gauge_next]
    assert found == sorted(found, key=list(Severity).index)


def test_a_ban_comes_before_a_stop_that_lets_it_run_with_a_gauge() -> None:
    """Who reads one line only must not start an engine that has to stand."""
    alarms = Diagnosis(BOOK, case_of("drill_gives_none", "falls_in_a_manoeuvre", ZERO)).alarms
    places = {
        a.severity: k for k, a in enumerate(alarms) if a.gauge_next or a.severity is DO_NOT_RUN
    }
    assert places[DO_NOT_RUN] < places[STOP]
