"""Checks that need not be made: questions that were answered, and looks that show nothing yet."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping

from diagnose.case.case import Case
from knowledge.history.findings import OIL_JUST_CHANGED, STARTED_UNPRIMED
from knowledge.model import Finding, Kind, Stage
from knowledge.pressure.behaviour import NONE_FROM_FIRST_START
from knowledge.pressure.direct_gauge import TOP_UP_CURES_FOR_A_WHILE
from knowledge.questions.essentials import GRADE, SINCE
from knowledge.questions.first_steps import HISTORY, OIL_RECORD
from knowledge.questions.premises import PREMISES
from knowledge.questions.shapes import Premise
from knowledge.stations.delivery.findings_filter_cut import (
    CUT_THE_FILTER_OPEN,
    SORT_WHAT_THE_FILTER_HELD,
)
from knowledge.stations.leaks import findings as leaks
from knowledge.stations.leaks import findings_places as places
from knowledge.stations.oil.findings import LEVEL_CORRECT
from knowledge.stations.oil.findings_analysis import LAB_VISCOSITY_HIGH, LAB_VISCOSITY_LOW
from knowledge.stations.oil.findings_record import OIL_USED_FAST
from knowledge.stations.pump.findings_priming import DRILL_GIVES_NONE, NO_OIL_WHEN_CRANKED
from knowledge.work import Inspection

#: no oil has come as far as the filter since it was fitted
DRY = frozenset({NONE_FROM_FIRST_START, NO_OIL_WHEN_CRANKED, DRILL_GIVES_NONE, STARTED_UNPRIMED})
FILTER_CUT = frozenset({CUT_THE_FILTER_OPEN, SORT_WHAT_THE_FILTER_HELD})
#: looks for oil that gets out, and findings that say it does
FOR_LEAKS = frozenset(
    {
        places.FOLLOW_THE_OIL_LINES,
        places.LOOK_AT_THE_DRAIN,
        places.LOOK_AT_FILLER_AND_STICK,
        leaks.SURVEY_FOR_LEAKS,
    }
)
LOST = frozenset(
    {
        *leaks.SURVEY_FOR_LEAKS.reveals,
        *leaks.WATCH_FOR_THE_LEAK_RUNNING.reveals,
        leaks.OIL_TRAIL_BEHIND,
        leaks.OIL_LOSS_FAST,
        leaks.OIL_OVERBOARD,
        OIL_USED_FAST,
        TOP_UP_CURES_FOR_A_WHILE,
    }
)
_FEW_WORDS = 6  #: a complaint of so many words is a story


def asked_already(case: Case, checks: Mapping[str, Inspection]) -> frozenset[Inspection]:
    """Checks by word of which all that is worth asking was said, or asked and not known."""
    answered = {f.id for f in case.answered()}
    asked: dict[str, bool] = {
        HISTORY: _history_said(case, checks[HISTORY]) or any(f in answered for f in SINCE.findings),
        OIL_RECORD: bool(case.engine.oil) or any(f in answered for f in GRADE.findings),
    }
    return frozenset(checks[id_] for id_, is_asked in asked.items() if is_asked)


def known_of_the_oil(case: Case) -> frozenset[Finding]:
    """What a laboratory need not say: how thick an oil is whose grade is known, or known as wrong."""
    named = bool(case.engine.oil) or any(f.id in GRADE.findings for f in case.answered())
    return frozenset({LAB_VISCOSITY_LOW, LAB_VISCOSITY_HIGH}) if named else frozenset()


def shows_nothing(there: Collection[Finding]) -> frozenset[Inspection]:
    """Looks that can show nothing: into a filter through which no oil has gone yet.

    Nor for an outside leak where the sump is full and no oil was seen outside: a leak takes the
    pressure only once it has taken the oil.
    """
    nothing = set(FILTER_CUT) if DRY.intersection(there) else set()
    if LEVEL_CORRECT in there and not LOST.intersection(there):
        nothing |= FOR_LEAKS if OIL_JUST_CHANGED in there else FOR_LEAKS | {places.FEEL_THE_FILTER}
    return frozenset(nothing)


def senseless(
    case: Case, findings: Iterable[Finding], there: Collection[Finding]
) -> frozenset[Finding]:
    """Findings nobody need be asked for, as what they presume is not so.

    ``there``: findings that are present. Where there is no story yet, only what is known to be
    otherwise counts.
    """
    known = {f.id for f in there} | {e.work.area.id for e in case.earlier}
    story = _is_story(case)
    return frozenset(
        f
        for f in findings
        if f.stage is Stage.KNOWN and f.kind is Kind.SEEN and _presumes(f, known, story)
    )


def _presumes(finding: Finding, known: set[str], story: bool) -> bool:
    """Whether a finding presumes what is not so; ``known``: ids of findings and of areas of work."""
    premise = PREMISES.get(finding.id, Premise())
    met = all(known.intersection(group) for group in premise.needs)
    unmet = story and not (met or known.intersection(premise.work))
    return unmet or bool(known.intersection(premise.unless))


def _is_story(case: Case) -> bool:
    return len(case.job.complaint.split()) >= _FEW_WORDS


def _history_said(case: Case, check: Inspection) -> bool:
    """Whether a story says how it came about: after what work, since when, in what way."""
    history = any(r.observation and r.finding in check.reveals for r in case.finding_records)
    course = any(
        b.behaviour.since or b.behaviour.onset or b.behaviour.course for b in case.behaviours
    )
    return _is_story(case) and (course or history or bool(case.earlier))
