"""``bearings``: readings typed or from a sheet, what they come to, and who else knows them."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose import budget, forecast, judge_bearings, load_case, parse_case
from diagnose.bearings.judging import Flag
from diagnose.bearings.table import Bearings, Step, bearings_of
from diagnose.case.case import Case
from diagnose.fits.bearing import Kind, Place
from diagnose.signoff.judging import EngineFigures, Verdict, judged
from knowledge.units import INCH, MM
from tests.support.examples import examples

HEAD = 'schema = 1\n[job]\ntitle = "Test V8"\n[engine]\nlayout = "distributor_v8"\n'
ENGINE = HEAD + 'oil = "SAE 30"\n'


def case_of(*entries: str, head: str = HEAD) -> Case:
    """A case with bearings, each ``what; field = value; ...``."""
    text = head
    for number, entry in enumerate(entries, 1):
        what, *fields = (part.strip() for part in entry.split(";"))
        text += f'[[bearing]]\nno = {number}\nwhat = "{what}"\n'
        for each in fields:
            name, _, value = each.partition("=")
            text += f'{name.strip()} = "{value.strip()}"\n'
    return parse_case(text)


def judged_alone(case: Case) -> Bearings:
    """The bearings judged without their pressures, for which the circuit is solved."""
    return bearings_of(case, with_pressure=False)


def flags(case: Case) -> dict[str, set[Flag]]:
    return {j.place.says: {m.flag for m in j.marks} for j in judged_alone(case).found}


# ------------------------------------------------------------------------------- what is wrong

NEW = "mains; new_journal = 2.4479 2.4488 in; new_shell = 0.0955 in; new_bore = 2.6406 2.6416 in"
GOOD = "bore = 2.6412 2.6413 2.6412 2.6413 in; shell = 0.0954 0.0955 in"


@pytest.mark.parametrize(
    ("reading", "right"),
    [
        ("strip = 2.2 thou", set()),
        ("strip = 4.6 thou", {Flag.OVER}),
        ("strip = 3.4 thou", {Flag.AT_LIMIT}),
        ("strip = 0.2 thou", {Flag.TIGHT}),
        (f"{GOOD}; journal = 2.4483 2.4482 2.4483 2.4482 in", set()),
        (f"{GOOD}; journal = 2.4484 2.4474 2.4484 2.4474 in", {Flag.JOURNAL_OVAL, Flag.GRIND}),
        (f"{GOOD}; journal = 2.4485 2.4485 2.4476 2.4476 in", {Flag.JOURNAL_TAPER, Flag.GRIND}),
        (
            "bore = 2.6412 2.6420 2.6412 2.6420 in; shell = 0.0955 in; journal = 2.4482 in",
            {Flag.BORE_OVAL},
        ),
        (
            "bore = 2.6408 2.6408 2.6414 2.6414 in; shell = 0.0953 in; journal = 2.4483 in",
            {Flag.BORE_TAPER},
        ),
        (
            "bore = 2.6416 2.6410 2.6416 in; shell = 0.0955 in; journal = 2.4483 in",
            {Flag.BELL_MOUTH},
        ),
        ("bore = 2.6425 in; shell = 0.0961 in; journal = 2.4483 in", {Flag.BORE_SIZE}),
        ("inside = 2.4503 in; journal = 2.4482 in; strip = 3.3 thou", {Flag.DISAGREE}),
        ("inside = 2.4403 in; journal = 2.4482 in", {Flag.IMPOSSIBLE}),
        ("strip = 2.2 thou; crush = 0.0002 in", {Flag.CRUSH}),
        ("strip = 2.2 thou; spread = 0.0010 in", {Flag.SPREAD}),
    ],
)
def test_each_fault_is_flagged_and_no_other(reading: str, right: set[Flag]) -> None:
    assert flags(case_of(NEW, f"main 2; {reading}"))["main 2"] == right


def test_a_bearing_out_of_family_is_named_and_its_family_is_not() -> None:
    """Four alike and one well away, though within the limit."""
    found = flags(
        case_of(
            *(f"main {n}; inside = 2.4503 in; journal = 2.4484 in" for n in (1, 2, 4, 5)),
            "main 3; inside = 2.4515 in; journal = 2.4484 in",
        )
    )
    assert {n for n, f in found.items() if Flag.FAMILY in f} == {"main 3"}


def test_a_journal_below_the_last_undersize_is_named() -> None:
    found = judged_alone(case_of(NEW, f"main 1; {GOOD}; journal = 2.4160 2.4150 in"))
    assert {Flag.BELOW_LAST, Flag.GRIND} <= {m.flag for m in found.found[0].marks}


def test_the_engines_own_limit_of_form_decides() -> None:
    """A journal 0.0010 in out of round is sound in an engine that allows 0.0012 in."""
    oval = f"main 1; {GOOD}; journal = 2.4488 2.4478 2.4488 2.4478 in"
    own = ENGINE + '[engine.limits]\njournal_oval = "0.0012 in"\n'
    assert Flag.JOURNAL_OVAL in flags(case_of(NEW, oval))["main 1"]
    assert Flag.JOURNAL_OVAL not in flags(case_of(NEW, oval, head=own))["main 1"]


# -------------------------------------------------------------------------------- what to order


def test_one_bad_journal_grinds_all_of_its_kind() -> None:
    """To the size that gives the middle of what is wanted in each bore."""
    case = case_of(
        NEW,
        "mains; wanted = 0.0018 0.0024 in",
        f"main 1; {GOOD}; journal = 2.4484 2.4484 in",
        f"main 2; {GOOD}; journal = 2.4480 2.4465 2.4480 2.4465 in",
    )
    order = judged_alone(case).orders[Kind.MAIN]
    assert order.ground == pytest.approx(0.010 * INCH)
    assert [c.place.number for c in order.choices] == [1, 2]
    for choice in order.choices:
        assert choice.clearance == pytest.approx(0.0021 * INCH)
        assert choice.journal == pytest.approx((2.6412 - 2 * 0.0955 - 0.0021 - 0.010) * INCH)


def test_the_case_may_say_which_undersizes_can_be_had() -> None:
    worn = f"main 1; {GOOD}; journal = 2.4480 2.4465 2.4480 2.4465 in"
    listed = judged_alone(case_of(NEW, "mains; sizes = 0.020 0.040 in", worn))
    assert listed.orders[Kind.MAIN].ground == pytest.approx(0.020 * INCH)


def test_millimetres_get_metric_undersizes() -> None:
    new = "mains; new_journal = 60.00 60.02 mm"
    worn = case_of(new, "main 1; inside = 60.06 mm; journal = 59.99/59.95 mm")
    sound = case_of(new, "main 1; inside = 60.06 mm; journal = 60.01/60.01 mm")
    assert judged_alone(worn).orders[Kind.MAIN].ground == pytest.approx(0.25 * MM)
    assert judged_alone(sound).orders[Kind.MAIN].ground is None


@pytest.mark.parametrize(
    ("reading", "unclear", "undersize"),
    [
        ("strip = 4.6 thou", [1], None),
        ("strip = 4.6 thou; journal = 2.4484/2.4483 in", [], 0.0),
        ("strip = 4.6 thou; journal = 2.4464/2.4463 in", [], 0.002),
    ],
)
def test_a_wide_bearing_is_worn_shell_or_worn_journal(
    reading: str, unclear: list[int], undersize: float | None
) -> None:
    """By a strip alone nobody can say which; with the journal measured the order follows it."""
    order = judged_alone(case_of(NEW, f"main 1; {reading}")).orders[Kind.MAIN]
    assert [p.number for p in order.unclear] == unclear
    sizes = [c.pair.undersize / INCH for c in order.choices]
    assert sizes == ([] if undersize is None else [pytest.approx(undersize, abs=1e-6)])


def test_tighter_clearances_never_give_less_pressure() -> None:
    found = judge_bearings(case_of("main 1; strip = 4.6 thou", "rod 1; strip = 2.9 thou"))
    by_name = {row.option.says: row.band.mean for row in found.pressures.rows}
    assert by_name["all at the tight end"] > by_name["all at the wide end"] > by_name["as found"]
    assert by_name["with this order"] > by_name["as found"]


def test_an_engine_of_no_known_kind_is_held_to_no_figures_of_another() -> None:
    """Neither how many bearings it has nor what is wanted of them is taken from any profile."""
    head = 'schema = 1\n[engine]\nlayout = "unknown"\n'
    found = judged_alone(case_of("main 1; strip = 4.6 thou", head=head))
    assert set(found.counts.values()) == {None}
    assert set(found.targets.values()) == {None}
    assert (found.missing, found.orders, found.found[0].marks) == ((), {}, ())
    sized = judged_alone(case_of(NEW, "main 1; strip = 4.6 thou", head=head))
    assert sized.targets[Kind.MAIN] is not None


def test_without_a_circuit_the_rest_is_answered_and_says_so() -> None:
    case = replace(case_of("main 1; strip = 2.2 thou"), profile=None)
    found = judge_bearings(case)
    assert found.found[0].clearance is not None
    assert found.pressures.why_not.startswith("not computed: ")


# ------------------------------------------------------------------------- one value, one place


def test_a_measured_bearing_counts_for_review_and_budget() -> None:
    """As the same clearance does that is recorded as a finding."""
    from_table = case_of("main 3; strip = 0.0046 in")
    recorded = parse_case(
        HEAD + '[[finding]]\nno = 1\nwhat = "main_clearance"\nvalue = "0.0046 in"\n'
        'where = "main 3"\n'
    )
    one, other = budget(from_table), budget(recorded)
    assert one.findings[0].id == other.findings[0].id == "main_clearance"
    assert one.accounts[0].explained.mean == pytest.approx(other.accounts[0].explained.mean)
    assert from_table.facts().measures == recorded.facts().measures


def test_what_record_wrote_stands_in_the_table_and_counts_once() -> None:
    case = parse_case(
        HEAD
        + '[[finding]]\nno = 1\nwhat = "main_clearance"\nvalue = "4.6 thou"\nwhere = "no 3 main"\n'
    )
    found = judged_alone(case)
    assert [j.place for j in found.found] == [Place(Kind.MAIN, 3)]
    assert found.found[0].clearance is not None
    assert found.found[0].clearance.value == pytest.approx(0.0046 * INCH)
    assert len(case.measurements) == 1


def test_a_bearing_measured_again_with_micrometers_takes_the_place_of_the_strip() -> None:
    """Both stand in the file; one counts."""
    text = HEAD + (
        '[[finding]]\nno = 1\nwhat = "main_clearance"\nvalue = "3.4 thou"\nwhere = "main 3"\n'
        '[[bearing]]\nno = 2\nwhat = "main 3"\ninside = "2.4510 in"\njournal = "2.4485 in"\n'
    )
    case = parse_case(text)
    assert [m.value for m in case.measurements] == [pytest.approx(0.0025 * INCH)]


def test_a_journal_surely_out_of_true_is_a_finding() -> None:
    oval = case_of(f"main 1; {GOOD}; journal = 2.4490 2.4478 in")
    tapered = case_of(f"main 1; {GOOD}; journal = 2.4486 2.4486 2.4482 2.4482 in")
    assert [r.finding.id for r in oval.finding_records] == ["journal_not_true"]
    assert not tapered.finding_records


def test_fitted_clearances_count_for_sign_off_and_not_as_found() -> None:
    case = case_of("main 1; strip = 2.2 thou; at = build", "main 2; strip = 9 thou; at = build")
    assert not case.measurements
    assert [w.task.id for w in case.task_records] == ["main_clearance_fitted"] * 2
    results = [judged(w.task, w, EngineFigures.of(case)).verdict for w in case.task_records]
    assert results == [Verdict.PASSED, Verdict.FAILED]


@settings(max_examples=examples(40), deadline=None)
@given(order=st.permutations(range(6)))
def test_the_order_of_entries_changes_nothing(order: list[int]) -> None:
    entries = [
        NEW,
        "rods; wanted = 1.8 2.4 thou",
        f"main 1; {GOOD}; journal = 2.4483 in",
        "main 2; strip = 2.4 thou",
        "rod 1; strip = 2.0 thou",
        "rod 2; strip = 3.9 thou",
    ]

    def row(case: Case) -> list[object]:
        found = list(case.bearings.found.values())
        return [(b.place, b.readings, b.unit) for b in found] + [case.bearings.groups]

    shuffled = case_of(*(entries[i] for i in order))
    assert row(shuffled) == row(case_of(*entries))
    assert sorted(m.value for m in shuffled.measurements) == sorted(
        m.value for m in case_of(*entries).measurements
    )


def test_a_case_file_with_wrong_bearings_says_which() -> None:
    from diagnose.errors import BadCaseError

    with pytest.raises(BadCaseError) as bad:
        case_of("mian 3; strip = 2 thou", "main 1; strip = 2 miles", "rod 1; colour = red")
    text = str(bad.value)
    assert "no such bearing 'mian 3'" in text
    assert "bearing no = 2: strip" in text
    assert "colour: no such field" in text


def test_the_engines_card_goes_before_what_is_usual(tmp_path: Path) -> None:
    """Its sizes, its clearances and its limit of form; the case's own words go before the card."""
    (tmp_path / "v8_card.toml").write_text(
        'card = 1\n[engine]\nlayout = "distributor_v8"\n[clearances]\n'
        'main_clearance = "0.0012 to 0.0022 in, limit 0.0028 in"\n'
        'journal_out_of_round = "at most 0.0012 in"\n'
        '[sizes]\nmain_diameter = "2.4479 to 2.4488 in"\nmain_shell = "0.0955 in"\n',
        "utf-8",
    )
    case = tmp_path / "job.toml"
    case.write_text(
        'schema = 1\n[engine]\ncard = "v8_card.toml"\n[[bearing]]\nno = 1\nwhat = "main 1"\n'
        'bore = "2.6412 in"\njournal = "2.4490 2.4480 2.4490 2.4480 in"\nshell = "0.0955 in"\n',
        "utf-8",
    )
    found = judged_alone(load_case(case))
    target = found.targets[Kind.MAIN]
    assert target is not None
    assert [round(v / INCH, 4) for v in (target.low, target.high, target.most)] == [
        0.0012,
        0.0022,
        0.0028,
    ]
    assert not found.found[0].marks
    assert not found.orders[Kind.MAIN].old_shells
    text = case.read_text("utf-8")
    case.write_text(f'{text}\n[[bearing]]\nno = 2\nwhat = "mains"\nwanted = "2 3 thou"\n', "utf-8")
    own = judged_alone(load_case(case)).targets[Kind.MAIN]
    assert own is not None
    assert own.low == pytest.approx(0.0020 * INCH)


def test_the_measured_journal_decides_the_limit_by_diameter() -> None:
    """Not the journal usual for its kind of engine: 0.00075 in for each inch, and an allowance."""
    head = 'schema = 1\n[engine]\nlayout = "skew_gear_four"\n'
    usual = judged_alone(case_of("main 1; strip = 2 thou", head=head)).targets[Kind.MAIN]
    entry = "main 1; strip = 2 thou; journal = 3.0000/3.0000 in"
    own = judged_alone(case_of(entry, head=head)).targets[Kind.MAIN]
    assert usual is not None
    assert own is not None
    assert own.most == pytest.approx((0.00075 * 3.0 + 0.00125) * INCH)
    assert usual.most < own.most


def test_a_new_journal_and_shell_are_enough_in_a_housing_measured_before() -> None:
    """As fitted the bore is the one found, unless it was measured again."""
    fitted = "main 1; journal = 2.4383 in; shell = 0.1004 in; at = build"
    case = case_of(f"main 1; {GOOD}; journal = 2.4465 in", fitted)
    one = judged_alone(case).fitted[0]
    assert one.clearance is not None
    assert one.clearance.value == pytest.approx((2.6412 - 2 * 0.1004 - 2.4383) * INCH)


def test_a_new_build_is_measured_whole_before_it_is_signed_off() -> None:
    """Where nothing was found before, every bearing of the engine is due as fitted."""
    every = [f"main {n}; strip = 2.5 thou; at = build" for n in range(1, 6)]
    every += [f"rod {n}; strip = 2.0 thou; at = build" for n in range(1, 9)]
    begun = judged_alone(case_of(*every[:12]))
    assert (begun.next_step, begun.next_places) == (Step.FITTED, (Place(Kind.ROD, 8),))
    assert judged_alone(case_of(*every)).next_step is Step.SIGN_OFF


def test_every_choice_of_shells_has_its_pressure() -> None:
    """A thicker shell never gives less; the size is the one that is named."""
    found = judge_bearings(case_of("main 1; strip = 2.9 thou", "rod 1; strip = 2.0 thou"))
    rows = [(r.option.shells, r.band.mean) for r in found.pressures.rows if r.option.shells]
    for kind in Kind:
        mine = [(s.undersize, s.clearance, p) for s, p in rows if s and s.kind is kind]
        assert [round(u / INCH, 4) for u, _, _ in mine] == [0.0, 0.001, 0.002][: len(mine)]
        assert [c for _, c, _ in mine] == sorted((c for _, c, _ in mine), reverse=True)
        assert [p for _, _, p in mine] == sorted(p for _, _, p in mine)


def test_as_found_is_what_forecast_starts_from() -> None:
    case = case_of("main 1; strip = 4.6 thou", "rod 1; strip = 3.0 thou")
    rows = {r.option.says: r.band.mean for r in judge_bearings(case).pressures.rows}
    repair = forecast(case, ["main_clearance=0.00225 in", "rod_clearance=0.001575 in"])
    idle = repair.speeds[0]
    assert rows["as found"] == pytest.approx(repair.hot_pressure(repair.before, idle).mean())
    assert rows["all at the tight end"] == pytest.approx(
        repair.hot_pressure(repair.after, idle).mean()
    )


def test_readings_that_do_not_fit_give_no_pressure() -> None:
    """Tight bearings and a gauge near nothing: the model may not say what shells would give."""
    head = HEAD + '[[reading]]\nno = 90\nrpm = "700 rpm"\noil = "95 C"\npressure = "0.2 psi"\n'
    head += 'gauge = "direct"\n[[reading]]\nno = 91\nrpm = "2500 rpm"\noil = "95 C"\n'
    head += 'pressure = "70 psi"\ngauge = "direct"\n'
    found = judge_bearings(case_of("main 1; strip = 2.0 thou", head=head))
    assert found.pressures.rows == ()
    assert "does not show what was read" in found.pressures.why_not


@pytest.mark.parametrize(("wider", "together"), [(0.0004, True), (0.0010, False)])
def test_journals_are_ground_to_one_size_that_suits_every_bore(
    wider: float, together: bool
) -> None:
    """Where the bores differ by more than the band allows, each gets its own."""
    bore = 2.6412 + wider
    case = case_of(
        NEW,
        "mains; wanted = 0.0018 0.0024 in",
        "main 1; bore = 2.6412 in; shell = 0.0955 in; journal = 2.4480 2.4465 in",
        f"main 2; bore = {bore:.4f} in; shell = 0.0955 in; journal = 2.4484 2.4484 in",
    )
    order = judged_alone(case).orders[Kind.MAIN]
    sizes = {round((c.journal or 0.0) / INCH, 5) for c in order.choices}
    assert len(sizes) == (1 if together else 2)
    assert (order.grind is not None) is together
    for choice, across in zip(order.choices, (2.6412, bore), strict=True):
        assert choice.journal is not None
        left = across * INCH - 2 * 0.0955 * INCH - 0.010 * INCH - choice.journal
        assert choice.clearance == pytest.approx(left)
        assert 0.00179 * INCH < choice.clearance < 0.00241 * INCH


def test_no_shells_are_ordered_for_what_the_strip_cannot_tell() -> None:
    """A reading within its error of what is wanted, and within the limit: the shells stay standard."""
    near, far = (
        judged_alone(case_of(NEW, f"rod 1; strip = {s} thou")).orders[Kind.ROD]
        for s in ("2.6", "2.8")
    )
    assert [c.pair.undersize for c in near.choices] == [0.0]
    assert all(c.pair.undersize > 0 for c in far.choices)
