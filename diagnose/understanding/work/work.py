"""Read trials with their result."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.pressures.unitless import unit_of
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE
from diagnose.understanding.words.facts import Fact, Value, reader
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.beside_before import by_readings, read_in
from diagnose.understanding.work.came_of import (
    Story,
    Trial,
    came_of,
    in_the_end,
    puts_on_direct_gauge,
)
from diagnose.understanding.work.came_to import PRIMING
from diagnose.understanding.work.jobs import Job, jobs
from diagnose.understanding.work.lone_results import lone_result, named_in_turn
from diagnose.understanding.work.recaps import recaps
from diagnose.understanding.work.result_of import result_of
from diagnose.understanding.work.results_said import results_of
from knowledge.lexicon.work.beside_results import ENOUGH, REST
from knowledge.reports.words import Result, Shows

_SILENT = 2  #: sentences between a trial and its result: "New pump. Primed it. Started her. Same."
_EMPTIED = frozenset(["drained", "refilled"])


@reader(
    {
        "new sender made no difference": ["trial new_sender no difference"],
        "swapped the sender and the gauge, still the same": [
            "trial new_sender no difference",
            "trial other_gauge no difference",
        ],
        "going to swap the sender": [],
        "did my own oil change, put in 3 litres, the light comes on in bends": [],
        "would a new pump help?": [],
        "my friend replaced his pump and it fixed it": [],
        "tried thicker oil, helped a bit": ["trial thicker_oil helped"],
        "the mechanic says it needs a new pump": [],
        "low pressure. The fuel pump leaked. Changed the pump, gauge is back to normal": [],
        "cleaned the relief valve no change": ["trial relief_cleaned no difference"],
        "changed the filter, now pressure is lower than before": [],
        "since I changed the oil pump the light stays on": [],
        "renewed the sender and now the light stays on": [],
        "fitted a new pump, pressure reads less than before": [],
        "pulled the distributor and spun the pump with a drill, still nothing": [],
        "put in a reconditioned pump and pressure went down": [],
        "put in a reconditioned pump and pressure went up": ["trial pump_rebuilt helped"],
        "screen was clogged, cleaned it, pressure back to 50": ["trial pickup_cleaned cured"],
        "the sender was suspect, replaced it, no change": ["trial new_sender no difference"],
        "the screen was clogged, looked at it": [],
        "mains and rods new, no change": ["trial new_bearings no difference"],
        "renewed the sender and the light is still on": ["trial new_sender no difference"],
        "put thicker oil in, now it is worse": ["trial thicker_oil worse"],
        "low pressure. new oil pump. Still the same": ["trial new_pump no difference"],
        "even with a new sender it reads 5 psi": ["trial new_sender no difference"],
        "even with a new sender it reads well": [],
        "after cleaning the screen pressure was back to 45": ["trial pickup_cleaned cured"],
        "no difference with a new filter": ["trial new_filter no difference"],
        "the only thing that helped was thicker oil": ["trial thicker_oil helped"],
        "what fixed it in the end was a new sender": ["trial new_sender cured"],
        "what would fix it is a new sender": [],
        "light went out as soon as I fitted the new switch": ["trial new_sender cured"],
        "swapped the sender, did the trick": ["trial new_sender cured"],
        "did the sender cure it?": [],
        "new pump, 12 at idle went to 30": ["trial new_pump cured"],
        "new pump, went from 10 to 15": ["trial new_pump helped"],
        "shimmed the relief spring, now 20 instead of 10": ["trial stiffer_spring cured"],
        "low pressure even after a new pump": ["trial new_pump no difference"],
        "15 psi hot. new pump (up to 20)": ["trial new_pump helped"],
        "to do: sender, pump, pickup": [],
        "turned the adjuster up two turns": [],
        "pcv valve was gummed solid. Fitted a new valve, cured it": [
            "trial breather_cleaned cured"
        ],
        "the relief spring was shorter than the new one, no change": [],
        "primed the pump, nothing": ["trial pump_primed no difference"],
        "rebuilt my engine with a new pump. 40 cold, then it dropped to 10": [],
        "rebuilt my engine, low pressure. new pump. 10 hot went to 40": ["trial new_pump cured"],
        "low pressure. took the oil pump apart and it is fine": [],
        "low at idle, put it in neutral and it is fine": [],
        "light on. filled it to the full mark, light quit": ["trial topped_up cured"],
        "light on, dry again minutes after topping up": ["trial topped_up cured for a while"],
        "replaced: sender (no), pump (a bit)": [
            "trial new_sender no difference",
            "trial new_pump helped",
        ],
        "low pressure. new pump. Cranked it. Zip": ["trial new_pump no difference"],
        "low pressure. new pump. 40 psi. Next day zero again": ["trial new_pump cured for a while"],
        "low pressure, never had a problem until I changed the pump": [],
        "pressure was just as low before the pump was changed": ["trial new_pump no difference"],
        "pressure low, was low before the rebuild as well": ["trial engine_rebuilt no difference"],
        "20w50, no knocks, lamp goes out straight away": [],
        "8 psi at hot idle. New pump fitted. Ran it an hour. 25 psi at hot idle": [
            "trial new_pump cured"
        ],
        "8 psi at hot idle. New sender fitted. 9 psi hot at idle": [
            "trial new_sender no difference"
        ],
        "8 psi at hot idle. New pump fitted. 60 psi cold": [],
        "8 psi at hot idle. The pump was renewed two years ago. 9 psi hot at idle": [],
        "8 psi at hot idle. New pump fitted. A test gauge shows 25 psi at hot idle": [],
        "8 psi at hot idle. Cleaned the screen and put it back together. 25 psi at hot idle": [
            "trial pickup_cleaned cured"
        ],
        "low pressure. looped the hoses past the cooler, back to 55": [
            "trial cooler_bypassed cured"
        ],
    }
)
def trials(paragraph: Paragraph) -> Iterator[Fact]:
    """Trials that were made, each with what it did."""
    for job, mark, line in tried(paragraph):
        right = mark is not None and mark.value is Result.CURED
        if right and puts_on_direct_gauge(job):
            continue  # a test gauge mends nothing
        if not _is_filling(job):
            yield _trial(job, mark, line)


def _is_filling(job: Job) -> bool:
    """Whether oil went in at an oil change, not to top it up: "did an oil change, put in 3 litres"."""
    words = [t.word for t in job.line.tokens]
    changed = ("oil", "change") in pairwise(words) or bool(_EMPTIED & set(words))
    return job.trial == "topped_up" and changed


def troubles_of(paragraph: Paragraph) -> list[tuple[int, int]]:
    """Where a trouble is named: the number of the sentence and the token."""
    named = [
        (line.number, mark.first)
        for line in paragraph.lines
        for mark in line.stated(line.lexicon.shows)
        if mark.value is not Shows.NORMAL and not line.denied(mark) and not line.usual(mark)
    ]
    low = [
        (line.number, k)
        for line in paragraph.lines
        for k, token in enumerate(line.tokens)
        if "pressure" in token.kinds
        and max(pressures_at(line, k), default=ENOUGH) < ENOUGH
        and not line.usual(Mark(True, k, k + 1))
        and not line.stances.of[k] & UNTRUE
    ]
    return sorted([*named, *low])


def tried(paragraph: Paragraph) -> Iterator[tuple[Job, Mark[Result] | None, Line]]:
    """Each trial, the words for what it did, and the sentence they stand in."""
    story = Story(paragraph, troubles_of(paragraph), unit_of(paragraph))
    said = list(_said(paragraph, story))
    known = {job.trial for job, _, _ in said}
    silent = [j for j in story.own if j.trial not in known]
    yield from said
    if silent:
        yield from by_readings(paragraph, silent, read_in(paragraph), story.worked)


def _said(paragraph: Paragraph, story: Story) -> Iterator[tuple[Job, Mark[Result] | None, Line]]:
    """Each trial of which words say what it did; notes in the story what work there was."""
    waiting: list[Job] = []
    silent = 0  #: sentences since the last that named work or a result
    seen: set[str | None] = set()
    for line, before in zip(paragraph.lines, (None, *paragraph.lines), strict=False):
        results = results_of(line)
        every = jobs(line, before)
        story.built = story.built or any(j.area == "whole_engine" for j in every)
        named = [j for j in every if j.trial]
        if not named and (seen or story.trouble_before(line, 0)):
            named = [*named_in_turn(line, every)]
        if waiting and not (named or results) and (lone := lone_result(line)) is not None:
            results = [lone]
        for job, said in recaps(line, results, every, seen):
            yield job, in_the_end(paragraph, job, said, line), line
            waiting = [w for w in waiting if w.trial != job.trial]
            results = [r for r in results if r != said]
        seen |= {j.trial for j in named}
        own = [j for j in named if not _is_step(j, named)]
        story.worked += every
        story.own += own
        rest = _of_the_rest(line, results)
        known = [
            Trial(story, job, line, named, result_of(job, results, line, named))
            for job in (*waiting, *own)
        ]
        for trial in known:
            if rest is None or trial.is_here:
                yield from ((trial.job, mark, line) for mark in came_of(trial))
            elif not any(n.trial == trial.job.trial for n in named):
                yield trial.job, rest, line
        has_own = any(t.is_here and t.said is not None for t in known)
        if has_own or not (own or waiting):
            waiting = []
        elif results:
            waiting = own
        elif own:
            waiting = [*waiting, *own]
        else:
            silent += 1
            waiting = waiting if silent <= _SILENT and not story.names_trouble(line) else []
        silent = 0 if own else silent


def _is_step(job: Job, own: list[Job]) -> bool:
    """Whether priming is a step of other work named before it: "new pump on, primed it"."""
    others = [j for j in own if j.trial not in PRIMING and j.last <= job.first]
    others = [j for j in others if not j.begins_it and j.area != "whole_engine"]
    return job.trial in PRIMING and bool(others) and not job.tried


def _of_the_rest(line: Line, results: list[Mark[Result]]) -> Mark[Result] | None:
    """The result of "the rest did nothing": of all work that the sentence names not again."""
    return next((r for r in results if line.word(r.first - 1) in REST), None)


def _trial(job: Job, result: Mark[Result] | None, line: Line) -> Fact:
    value = result.value if result else Result.NO_DIFFERENCE
    fields: dict[str, Value] = {"what": str(job.trial), "result": value.value}
    if result is None:
        return Fact("trial", fields, job.line.span(job.marks), 0.8)
    if line is job.line:
        spans = line.span([*job.marks, result])
    else:
        spans = job.line.span(job.marks) + line.span([result])
    return Fact("trial", fields, spans, line.stances.surety(result))
