"""What was reported of behaviour, trials and earlier work, as short plain sentences."""

from __future__ import annotations

from collections.abc import Collection, Iterable

from diagnose.case.case import Case
from diagnose.output.lines import duration
from knowledge.model import Gauge
from knowledge.reports.shapes import Behaviour, EarlierWork, TrialMade
from knowledge.reports.words import Circumstance, Course, Hands, Onset, Result, Shows, Since

#: what shows, where its own word is no sentence by itself
_SHOWS = {
    Shows.LOW: "pressure low",
    Shows.NONE: "no pressure",
    Shows.HIGH: "pressure too high",
    Shows.UNSTEADY: "pressure unsteady",
    Shows.LAMP: "lamp on",
    Shows.SLOW: "pressure slow to build",
    Shows.LOST: "pressure lost",
    Shows.FALLING: "pressure falling",
    Shows.NORMAL: "pressure normal",
    Shows.TRIPS: "stopped by its own protection",
    Shows.ALARM: "general alarm",
}
#: circumstances that are no adverb by themselves
_WHEN = {
    Circumstance.IDLE: "at idle",
    Circumstance.OFF_IDLE: "just off idle",
    Circumstance.SLOWING: "on slowing to idle",
    Circumstance.BENDS: "in bends",
    Circumstance.BRAKING: "under braking",
    Circumstance.SLOPE: "on slopes",
    Circumstance.SEAWAY: "in a seaway",
    Circumstance.ROUGH_ROAD: "on bumps",
    Circumstance.LOAD: "under load",
    Circumstance.ELECTRICAL: "with electrical load",
    Circumstance.WET: "in the wet",
    Circumstance.LOW_LEVEL: "with the oil level low",
    Circumstance.CLUTCH: "with the clutch pressed",
    Circumstance.TOUCHED: "with the wiring touched",
    Circumstance.RANDOM: "with no pattern",
}
_CAME = {Onset.SUDDEN: "came suddenly", Onset.GRADUAL: "came gradually"}
_WENT = {Course.NOT_REPRODUCED: "could not be reproduced", Course.ONCE: "only once"}
_SINCE = {
    Since.FIRST_START: "since the first start",
    Since.OIL_CHANGE: "since the oil change",
    Since.GRADE: "since the oil grade changed",
    Since.DATE: "began on a day when nothing was done",
    Since.ALWAYS: "always so",
}
_RESULT = {
    Result.CURED: "cured it",
    Result.HELPED: "helped",
    Result.FOR_A_WHILE: "cured it for a while",
    Result.NO_DIFFERENCE: "made no difference",
    Result.WORSE: "made it worse",
}
_HANDS = {
    Hands.OWNER: "by the owner",
    Hands.SHOP: "by a workshop",
    Hands.MACHINE_SHOP: "by a machine shop",
    Hands.EARLIER_OWNER: "by an earlier owner",
}


def reported_sentences(case: Case) -> dict[int, str]:
    """Return what was reported, a sentence by the number of each entry, in their order."""
    said = [(b.entry.no, behaviour_sentence(b.behaviour)) for b in case.behaviours]
    said += [(t.entry.no, trial_sentence(t.made)) for t in case.trials if t.made]
    said += [(e.entry.no, earlier_sentence(e.work)) for e in case.earlier]
    said += [(e.entry.no, f"{earlier_sentence(e.work)}, in this repair") for e in case.repairs]
    return dict(sorted(said))


def behaviour_sentence(b: Behaviour) -> str:
    """Return a behaviour as a sentence without a full stop.

    >>> from knowledge.reports.words import Circumstance as C
    >>> behaviour_sentence(Behaviour(Shows.LOW, frozenset({C.IDLE, C.HOT}), only=True))
    'pressure low hot, at idle only'
    """
    text = _SHOWS.get(b.shows, b.shows.value)
    if b.gauge is not Gauge.PANEL:
        text += " on a trusted gauge" if b.gauge is Gauge.DIRECT else " by the lamp"
    if b.during:
        text += f" {_when(b.during)}"
    if b.only:
        text += " only"
    if b.never:
        text += f", never {_when(b.never)}"
    more = [_CAME[b.onset]] if b.onset else []
    more += [_WENT.get(c, c.value) for c in Course if c in b.course]
    if b.since:
        more.append(_SINCE.get(b.since, f"since {b.since.value}"))
    if b.lasts is not None:
        more.append(f"lasts {_time(b.lasts)}")
    if b.with_pressure:
        more.append("goes with the pressure")
    return "; ".join([text, *more])


def trial_sentence(made: TrialMade) -> str:
    """Return a trial and what it did."""
    return f"{made.trial.says}, and that {_RESULT[made.result]}"


def earlier_sentence(work: EarlierWork) -> str:
    """Return earlier work, how long before the trouble it was done, and by whom."""
    parts = [f"{work.area.says} ({work.done.value})" if work.done else work.area.says]
    if work.before is not None:
        parts.append(f"{_time(work.before)} before" if work.before else "straight before")
    if work.hands:
        parts.append(_HANDS[work.hands])
    return ", ".join(parts)


def _when(during: Collection[Circumstance]) -> str:
    """The circumstances, in the order of their list but heat first."""
    heat = (Circumstance.COLD, Circumstance.WARMING, Circumstance.HOT)
    ordered: Iterable[Circumstance] = [
        *(c for c in heat if c in during),
        *(c for c in Circumstance if c in during and c not in heat),
    ]
    return ", ".join(_WHEN.get(c, c.value) for c in ordered)


def _time(seconds: float) -> str:
    """A time in the unit a person would use.

    >>> _time(12.0), _time(5400.0), _time(1.3e6)
    ('12 s', '90 min', '15 days')
    """
    if seconds < 120.0:
        return f"{seconds:.0f} s"
    if seconds < 2 * 86400.0:
        return duration(seconds / 60.0)
    days = seconds / 86400.0
    for name, length in (("years", 365.0), ("months", 30.4), ("weeks", 7.0)):
        if days >= 3 * length:
            return f"{days / length:.0f} {name}"
    return f"{days:.0f} days"
