"""What a measured value of a task comes to: one table of verdicts, worked out by hand.

Every figure is in millimetres. Each row names the verdict that the rules of the sheet call for:
the engine's own figure decides alone, near an end nobody can be sure, a value that only another
source accepts is borderline.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.case.case import TaskRecord
from diagnose.case.loading import from_text
from diagnose.case.schema import WorkEntry
from diagnose.diagnosis import Diagnosis
from diagnose.signoff.judging import NOTHING_KNOWN, EngineFigures, Judged, Verdict, judged
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from knowledge.engines import features
from knowledge.limits import Limit, Side
from knowledge.model import Finding, Quantity
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.units import DIMENSIONS, parse
from knowledge.work import Access, Band, Phase, Task

BOOK = the_book()
MM = 1e-3
GOOD, MAYBE, BAD = Verdict.PASSED, Verdict.BORDERLINE, Verdict.FAILED

GAP = Quantity(
    id="gap", says="the gap", dimension="length", plausible=(0.0, 10 * MM), source=JUDGEMENT
)
LEAST = Limit(
    id="least",
    says="least",
    quantities=(GAP,),
    side=Side.LEAST,
    typical=1.1 * MM,
    source=JUDGEMENT,
)
MOST = Limit(
    id="most",
    says="most",
    quantities=(GAP,),
    side=Side.MOST,
    typical=1.9 * MM,
    source=JUDGEMENT,
)
FIRST = Band(low=1.0 * MM, high=2.0 * MM, source=COMMON_PRACTICE, says="the first source")
WIDER = Band(low=0.5 * MM, high=3.0 * MM, source=JUDGEMENT, says="the wider source")
TASK = Task(
    id="gap",
    phase=Phase.SUMP,
    says="the gap",
    how=(),
    source=COMMON_PRACTICE,
    dimension="length",
    bands=(FIRST, WIDER),
    limits=(LEAST, MOST),
    spread=0.1 * MM,
)


def judge(mm: float, task: Task = TASK, own: Mapping[str, float] | None = None) -> Judged:
    """The verdict on a value, with the engine's own figures ``least`` and ``most`` where given."""
    entry = WorkEntry(no=1, what=task.id, value=f"{mm} mm")
    ends = {"least": LEAST, "most": MOST}
    limits = {ends[k]: v * MM for k, v in (own or {}).items()}
    return judged(task, TaskRecord(entry, task, mm * MM), EngineFigures(limits=limits))


# ------------------------------------------------------------------------ the table of verdicts

#: value, verdict with two sources, verdict where the first source is the only one
NO_OWN = [
    (1.50, GOOD, GOOD),
    (1.15, GOOD, GOOD),  # more than one error inside
    (1.85, GOOD, GOOD),
    (1.05, MAYBE, MAYBE),  # inside, within the error
    (1.95, MAYBE, MAYBE),
    (1.00, MAYBE, MAYBE),  # exactly on the limit
    (2.00, MAYBE, MAYBE),
    (0.95, MAYBE, MAYBE),  # outside, within the error
    (2.05, MAYBE, MAYBE),
    (0.85, MAYBE, BAD),  # clearly outside; the wider source accepts it
    (2.50, MAYBE, BAD),
    (0.30, BAD, BAD),  # outside both
    (3.50, BAD, BAD),
]


@pytest.mark.parametrize(("mm", "both", "alone"), NO_OWN)
def test_without_an_own_figure(mm: float, both: Verdict, alone: Verdict) -> None:
    assert judge(mm).verdict is both
    assert judge(mm, replace(TASK, bands=(FIRST,))).verdict is alone


#: own figures, value, verdict: other sources accept most of these and have no say
OWN = [
    ({"least": 1.2, "most": 1.8}, 1.50, GOOD),
    ({"least": 1.2, "most": 1.8}, 1.25, MAYBE),
    ({"least": 1.2, "most": 1.8}, 1.75, MAYBE),
    ({"least": 1.2, "most": 1.8}, 1.15, MAYBE),
    ({"least": 1.2, "most": 1.8}, 1.85, MAYBE),
    ({"least": 1.2, "most": 1.8}, 1.05, BAD),  # both sources accept it
    ({"least": 1.2, "most": 1.8}, 1.95, BAD),
    ({"least": 0.2, "most": 5.0}, 0.40, GOOD),  # neither source accepts it
    ({"least": 0.2, "most": 5.0}, 4.00, GOOD),
    # one own end: the other end stays the typical one, 1.1 and 1.9 mm
    ({"least": 0.6}, 0.75, GOOD),
    ({"least": 0.6}, 0.45, BAD),
    ({"least": 0.6}, 2.50, BAD),
    ({"least": 0.6}, 1.85, MAYBE),
    ({"least": 0.6}, 2.05, BAD),
    ({"most": 3.0}, 2.80, GOOD),
    ({"most": 3.0}, 3.15, BAD),
    ({"most": 3.0}, 0.85, BAD),
    ({"most": 3.0}, 1.05, MAYBE),
]


@pytest.mark.parametrize(("own", "mm", "right"), OWN)
def test_the_engines_own_figure_decides_alone(
    own: dict[str, float], mm: float, right: Verdict
) -> None:
    assert judge(mm, own=own).verdict is right


@pytest.mark.parametrize(
    ("limits", "own", "mm", "right"),
    [
        (
            (None, MOST),
            {"most": 1.8},
            0.01,
            GOOD,
        ),  # an own figure with one end leaves the other open
        ((None, MOST), {"most": 1.8}, 2.2, BAD),
        ((LEAST, None), {"least": 1.2}, 90.0, GOOD),
        ((LEAST, None), {"least": 1.2}, 0.9, BAD),
        ((None, None), {"least": 1.2, "most": 1.3}, 1.5, GOOD),  # no such figure for this task
    ],
)
def test_an_open_end_accepts_everything(
    limits: tuple[Limit | None, Limit | None], own: dict[str, float], mm: float, right: Verdict
) -> None:
    assert judge(mm, replace(TASK, limits=limits), own).verdict is right


@pytest.mark.parametrize("mm", [1.0, 2.0])
def test_a_value_on_the_limit_fits_where_nothing_is_misread(mm: float) -> None:
    """1 mm in SI and back is not exactly 1 mm: rounding must not refuse the limit itself."""
    exact = replace(TASK, spread=0.0, bands=(FIRST,))
    assert judge(mm, exact).verdict is GOOD
    assert judge(mm * (1 + 1e-12), exact).verdict is GOOD
    assert judge(mm * (1 - 1e-12), exact).verdict is GOOD
    outside = mm * (1.0001 if mm == 2.0 else 0.9999)
    assert judge(outside, exact).verdict is BAD


def test_a_band_as_narrow_as_the_error_still_has_a_sound_middle() -> None:
    narrow = replace(TASK, bands=(Band(low=1.0 * MM, high=1.04 * MM, source=COMMON_PRACTICE),))
    assert judge(1.02, narrow).verdict is GOOD
    assert judge(1.005, narrow).verdict is MAYBE
    assert judge(1.2, narrow).verdict is BAD


def test_without_any_figure_nothing_passes() -> None:
    assert judge(1.5, replace(TASK, bands=(), limits=(None, None))).verdict is MAYBE


@pytest.mark.parametrize(
    ("mm", "own", "words"),
    [
        (1.5, {}, "fits the first source"),
        (2.5, {}, "outside the first source, but fits the wider source: sources differ"),
        (3.5, {}, "outside the first source"),
        (1.05, {}, "within the measuring error of the limit: measure again"),
        (0.95, {}, "just outside, within the measuring error: measure again"),
        (1.5, {"least": 1.2, "most": 1.8}, "fits this engine's own figure"),
        (1.0, {"least": 1.2, "most": 1.8}, "outside this engine's own figure"),
    ],
)
def test_the_reason_names_the_figure_that_decided(
    mm: float, own: dict[str, float], words: str
) -> None:
    assert judge(mm, own=own).because.startswith(words)


def test_a_source_that_would_refuse_a_good_value_is_named() -> None:
    narrow = Band(low=1.0 * MM, high=1.2 * MM, source=JUDGEMENT, says="the narrow source")
    task = replace(TASK, bands=(FIRST, WIDER, narrow))
    assert judge(1.5, task).because == "fits the first source; the narrow source would refuse it"
    own = judge(1.5, task, {"least": 1.2, "most": 1.8})
    assert own.because == "fits this engine's own figure", "beside the own figure no source counts"


DIESEL = Band(
    low=3.0 * MM,
    high=4.0 * MM,
    source=JUDGEMENT,
    says="the diesel",
    only_with=(features.DIESEL,),
    not_with=(features.IN_A_BOAT,),
)
#: features of the engine, a value, and the verdict with a general band and one for diesels
KINDS = [
    ((), 1.5, GOOD, "fits the first source"),
    ((), 3.5, BAD, "outside the first source"),  # a diesel's figure excuses no other engine
    ((features.DIESEL,), 3.5, GOOD, "fits the diesel; the first source would refuse it"),
    ((features.DIESEL,), 1.5, MAYBE, "outside the diesel, but fits the first source"),
    ((features.DIESEL, features.IN_A_BOAT), 1.5, GOOD, "fits the first source"),
]


@pytest.mark.parametrize(("known", "mm", "right", "because"), KINDS)
def test_the_figure_for_this_kind_of_engine_decides(
    known: tuple[Finding, ...], mm: float, right: Verdict, because: str
) -> None:
    task = replace(TASK, bands=(FIRST, DIESEL))
    record = TaskRecord(WorkEntry(no=1, what=task.id, value=f"{mm} mm"), task, mm * MM)
    found = judged(task, record, EngineFigures(has=lambda f: f in known))
    assert found.verdict is right
    assert found.because.startswith(because)
    assert len(found.compared) == 2, "every source is shown"


@pytest.mark.parametrize(("mm", "fits"), [(3.5, "fits"), (1.5, "is outside")])
def test_no_figure_for_this_kind_of_engine_is_said(mm: float, fits: str) -> None:
    """A figure of another kind of engine neither passes nor fails anything."""
    task = replace(TASK, bands=(DIESEL,))
    record = TaskRecord(WorkEntry(no=1, what=task.id, value=f"{mm} mm"), task, mm * MM)
    found = judged(task, record, NOTHING_KNOWN)
    assert found.verdict is MAYBE
    assert found.because.startswith("no figure for this engine: enter yours")
    assert f"it {fits} the diesel" in found.because


#: what was recorded without a value, and what it comes to
WORDS = [("done", GOOD), ("failed", BAD), ("skipped", Verdict.LEFT_OUT)]


@pytest.mark.parametrize(("state", "right"), WORDS)
def test_without_a_value_the_persons_word_counts(state: str, right: Verdict) -> None:
    entry = WorkEntry.model_validate({"no": 1, "what": "gap", "state": state, "note": "by hand"})
    found = judged(TASK, TaskRecord(entry, TASK), NOTHING_KNOWN)
    assert (found.verdict, found.because) == (right, "by hand")
    assert judged(TASK, None, NOTHING_KNOWN).verdict is Verdict.OPEN


# ------------------------------------------------------------------------ pounds off by twelve

OFF = [
    ("tray_bolts_torqued", "15 lb-ft", "much"),
    ("tray_bolts_torqued", "15 ft-lb", "much"),
    ("pump_cover_screws_torqued", "15 in-lb", "little"),
    ("pump_bolts_torqued", "360 lb-ft", "much"),
    ("pump_bolts_torqued", "30 in-lb", "little"),
]
INCH_POUND, FOOT_POUND = 0.1129848290, 1.3558179483  #: N·m (NIST SP 811, Appendix B.8)


@pytest.mark.parametrize(("task", "value", "which"), OFF)
def test_a_torque_off_by_twelve_names_the_direction_and_the_right_value(
    task: str, value: str, which: str
) -> None:
    text = f'schema = 1\n[[work]]\nno = 1\nwhat = "{task}"\nvalue = "{value}"\n'
    found = judged(BOOK.tasks[task], from_text(text, None, BOOK).task_records[0], NOTHING_KNOWN)
    assert found.verdict is BAD
    said = re.match(r"(.+) is twelve times too (much|little): (.+?) would fit", found.because)
    assert said, found.because
    assert said[1] == value
    assert said[2] == which
    number, unit = value.split()
    newton_metres = float(number) * (INCH_POUND if unit == "in-lb" else FOOT_POUND)
    right = parse(said[3], DIMENSIONS["torque"])
    factor = 12.0 if which == "little" else 1 / 12.0
    assert right == pytest.approx(newton_metres * factor, rel=2e-3)
    bands = BOOK.tasks[task].bands
    assert any((b.low or 0) <= right <= (b.high or 1e9) for b in bands), "and it does fit"


def test_only_a_torque_is_taken_for_the_wrong_pounds() -> None:
    """A length twelve times too long is just wrong."""
    found = judge(1.5 * 12)
    assert found.verdict is BAD
    assert "twelve" not in found.because


# ------------------------------------------------------------------------ several places

GRAVITY = [BAD, MAYBE, Verdict.LEFT_OUT, GOOD]  #: the gravest first
#: what may be recorded of one main bearing's clearance, and its verdict
AT_A_PLACE = {
    'value = "0.0022 in"': GOOD,
    'value = "0.0025 in"': MAYBE,
    'value = "0.0060 in"': BAD,
    'state = "skipped"\nnote = "no gauge wire"': Verdict.LEFT_OUT,
}


@given(st.lists(st.sampled_from(sorted(AT_A_PLACE)), min_size=1, max_size=5))
def test_of_several_places_the_gravest_decides(places: list[str]) -> None:
    text = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
    for i, said in enumerate(places, 1):
        text += f'[[work]]\nno = {i}\nwhat = "main_clearance_fitted"\nwhere = "{i}"\n{said}\n'
    sheet = Signoff(
        Diagnosis(BOOK, from_text(text, None, BOOK)), 0.9, frozenset({Access.CRANK_OUT})
    )
    (item,) = [i for i in sheet.items if i.task.id == "main_clearance_fitted"]
    expected = min((AT_A_PLACE[p] for p in places), key=GRAVITY.index)
    assert item.judged.verdict is expected
    assert len(item.worked) == len(places)
    assert item.blocks == (expected is BAD)
