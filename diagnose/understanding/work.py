"""Read trials with their result."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.before_work import as_low_before, came_after
from diagnose.understanding.came_to import (
    made_pressure,
    pressure_after,
    short_of_usual,
    was_and_now,
)
from diagnose.understanding.changes import pressures_at
from diagnose.understanding.facts import Fact, Value, reader
from diagnose.understanding.jobs import Job, jobs, names_a_grade
from diagnose.understanding.lone_results import lone_result, named_in_turn, only_for_a_while
from diagnose.understanding.paragraph import LAMPS, Line, Paragraph
from diagnose.understanding.phrases import Mark
from diagnose.understanding.primed import is_step
from diagnose.understanding.readings import unit_of
from diagnose.understanding.recaps import brought, even_with, recaps
from diagnose.understanding.result_of import result_of, until
from diagnose.understanding.results_said import (
    RELAPSE,
    comes_otherwise,
    relapse,
    results_of,
    says_again,
)
from diagnose.understanding.stance import UNTRUE
from diagnose.understanding.well import ends_a_later_trouble, is_of_the_part, only_says_well
from knowledge.lexicon.results_words import (
    ADDED,
    ALL_OFF,
    BEGAN,
    BETTER,
    ENOUGH,
    FIRED,
    LEADS_TO_IT,
    REST,
    SAYS_STILL,
)
from knowledge.reports.words import Result, Shows

#: trials that only show what is so: what came of them is the same or a right reading
_ONLY_SHOWS, _SHOWN = frozenset(["other_gauge"]), (Result.NO_DIFFERENCE, Result.CURED)
_SILENT = 2  #: sentences between a trial and its result: "New pump. Primed it. Started her. Same."
_OF_A_GRADE = 3  #: words between a grade of oil and what it did


@reader(
    {
        "new sender made no difference": ["trial new_sender no difference"],
        "swapped the sender and the gauge, still the same": [
            "trial new_sender no difference",
            "trial other_gauge no difference",
        ],
        "going to swap the sender": [],
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
        "low pressure. looped the hoses past the cooler, back to 55": [
            "trial cooler_bypassed cured"
        ],
    }
)
def trials(paragraph: Paragraph) -> Iterator[Fact]:
    """Trials that were made, each with what it did."""
    for job, mark, line in tried(paragraph):
        yield _trial(job, mark, line)


def _led_to_it(job: Job, result: Mark[Result], line: Line, trouble: bool) -> bool:
    """Whether the trouble came with the work: "changed the oil, now it is lower than before".

    A trial is made of a trouble that is there; then it is named before, or "still" says so.
    """
    if trouble or job.tried or not job.area:
        return False
    said = {line.word(k) for k in range(result.first, result.last)}
    if job.area in ("oil_change", "filter_change") and said & FIRED:
        return True  # "changed the oil. Fired it up and nothing on the gauge"
    if result.value is Result.WORSE:
        return not said & {"made", "worse"}
    if line is not job.line:
        return result.value is Result.NO_DIFFERENCE and bool(said & BEGAN)
    between = {line.word(k) for k in range(job.last, result.first + 1)}
    led = job.begins_it or bool(between & LEADS_TO_IT) or bool(said & BEGAN)
    return led and result.value is Result.NO_DIFFERENCE and not said & SAYS_STILL


def _troubles(paragraph: Paragraph) -> list[tuple[int, int]]:
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
    waiting: list[Job] = []
    silent = 0  #: sentences since the last that named work or a result
    seen: set[str | None] = set()
    troubles = _troubles(paragraph)
    lines = paragraph.lines
    built = False
    unit = unit_of(paragraph)
    for line, before in zip(lines, (None, *lines), strict=False):
        results = results_of(line)
        every = jobs(line, before)
        built = built or any(j.area == "whole_engine" for j in every)
        own = [j for j in every if j.trial]
        if not own and (seen or any(t < (line.number, 0) for t in troubles)):
            own = [*named_in_turn(line, every)]
        if waiting and not (own or results) and (lone := lone_result(line)) is not None:
            results = [lone]
        for job, said in recaps(line, results, every, seen):
            yield job, _in_the_end(paragraph, job, said, line), line
            waiting = [w for w in waiting if w.trial != job.trial]
            results = [r for r in results if r != said]
        seen |= {j.trial for j in own}
        rest = _of_the_rest(line, results)
        of_own = False
        for job in (*waiting, *(j for j in own if not is_step(j, own))):
            if rest is not None and job.line is not line:
                if not any(o.trial == job.trial for o in own):
                    yield job, rest, line
                continue
            mark = result_of(job, results, line, own)
            of_own = of_own or (mark is not None and job.line is line)
            trouble = any(t < (job.line.number, job.first) for t in troubles)
            trouble = trouble or as_low_before(job) is not None
            far = mark is not None and mark.first - job.last > _OF_A_GRADE
            if names_a_grade(job) and (not trouble or (far and job.line is line)):
                continue  # "20w50, lamp goes out at once": no more than which oil is in it
            if mark is None and job.line is line:
                mark = even_with(line, job, own, trouble) or until(line, job)
                mark = mark or brought(line, job) or as_low_before(job)
            if mark is not None and job.trial in _ONLY_SHOWS and mark.value not in _SHOWN:
                mark = None  # "put a gauge on it and got 12 psi"
            mark = mark or was_and_now(line, job) or made_pressure(line, job)
            if trouble and job.trial not in _ONLY_SHOWS and _only_a_gain(line, mark):
                mark = pressure_after(paragraph, line, job, own, unit) or mark
            if mark is None and job.line is line and trouble and job.trial not in _ONLY_SHOWS:
                mark = _again_at_once(line, job, own)
            if mark is not None and (
                _led_to_it(job, mark, line, trouble) or is_of_the_part(job, mark, line)
            ):
                continue
            trouble = trouble or (mark is not None and _lamp_went_out(line, mark))
            if mark is not None and not trouble and not built:
                again = _in_the_end(paragraph, job, mark, line)
                trouble = again is not mark and says_again(paragraph.lines[line.number :])
            if mark is not None and job.line is not line and comes_otherwise(line, mark):
                continue  # "new oil. Put a gauge on and got 20"
            later = mark is not None and line is not job.line and mark.value is Result.HELPED
            if later and not (trouble or job.tried) and _names_a_figure(line, mark):
                continue  # "new pump and lifters. At idle it's got 60 psi"
            if mark is not None and mark.value is Result.HELPED and short_of_usual(line, mark):
                continue  # "new pump. Now 0.6 bar hot, used to be 2 bar"
            shown = mark is not None and mark.value is not Result.NO_DIFFERENCE
            if mark is not None and not trouble:
                if only_says_well(line, mark) or (built and shown):
                    continue  # of a part of a build: what the engine did when it ran
                if ends_a_later_trouble(job, mark, line, troubles):
                    continue
            if job.begins_it and not trouble and mark is not None and mark.value is Result.HELPED:
                continue  # "gone up to 90 since the new pump": a trouble that began with it
            if job.line is line and came_after(job):
                continue  # "before the oil change it was fine"
            if job.area == "whole_engine" and (not trouble or _of_other_work(job, line, mark)):
                continue  # what the gauge did after it came of no trial
            if mark is not None:
                yield job, _in_the_end(paragraph, job, mark, line), line
            elif (
                job.line is line
                and job.tried
                and not job.begins_it
                and (trouble or not _twice(job))
            ):
                yield job, None, line
        own = [j for j in own if not is_step(j, own)]
        if of_own or not (own or waiting):
            waiting = []
        elif results:
            waiting = own
        elif own:
            waiting = [*waiting, *own]
        else:
            silent += 1
            waiting = waiting if silent <= _SILENT and not _troubled(line, troubles) else []
        silent = 0 if own else silent


def _of_other_work(job: Job, line: Line, mark: Mark[Result] | None) -> bool:
    """Whether a later sentence names what was done since the rebuild: "added the plug, now 40"."""
    if mark is None or line is job.line:
        return False
    done = any(a.first < mark.first for a in line.stated(line.lexicon.actions))
    return done or any(line.word(k) in ADDED for k in range(mark.first))


def _troubled(line: Line, troubles: list[tuple[int, int]]) -> bool:
    """Whether a sentence names a trouble."""
    return any(number == line.number for number, _ in troubles)


def _in_the_end(paragraph: Paragraph, job: Job, result: Mark[Result], line: Line) -> Mark[Result]:
    """A result, "cured for a while" where the trouble is said to be there again after it."""
    if result.value not in BETTER:
        return result
    if any(only_for_a_while(x) for x in paragraph.lines[line.number + 1 : line.number + 2]):
        return Mark(Result.FOR_A_WHILE, result.first, result.last)
    for each in paragraph.lines[line.number : line.number + RELAPSE]:
        first = result.last if each is line else 0
        others = [j.first for j in jobs(each) if j.trial and j is not job and j.first >= first]
        if each is not line and others and min(others) == 0:
            break
        again = relapse(each, first)
        if again is not None and not any(o < again for o in others):
            return Mark(Result.FOR_A_WHILE, result.first, result.last)
        if others:
            break
    return result


def _again_at_once(line: Line, job: Job, own: list[Job]) -> Mark[Result] | None:
    """The "again" behind a trial of which nothing else came: "new switch, it tripped again"."""
    again = relapse(line, job.last)
    if again is None or line.word(again) == "down" or any(job.last <= o.first < again for o in own):
        return None
    return Mark(Result.NO_DIFFERENCE, again, again + 1)


def _only_a_gain(line: Line, mark: Mark[Result] | None) -> bool:
    """Whether nothing is said to have come of work, or no more than a figure: "idle is now 25"."""
    gain = mark is not None and mark.value is Result.HELPED
    return mark is None or (gain and _names_a_figure(line, mark))


def _names_a_figure(line: Line, mark: Mark[Result] | None) -> bool:
    """Whether a result is no more than a pressure: nothing says that it is so only now, or still."""
    if mark is None:
        return False
    said = {line.word(k) for k in range(mark.first, mark.last)}
    return any(line.tokens[k].is_figure for k in range(mark.first, mark.last)) and not said & {
        "now",
        "still",
        "up",
        "only",
        "more",
    }


def _twice(job: Job) -> bool:
    """Whether it is only said that work was done twice, which with no trouble is no trial."""
    return "twice" in {t.word for t in job.line.tokens} and not any(
        t.word in ("tried", "already") for t in job.line.tokens
    )


def _lamp_went_out(line: Line, mark: Mark[Result]) -> bool:
    """Whether a lamp is out for a time, and so was on before: "light stayed off for ten miles"."""
    clause = line.clause(mark.first)
    said = {line.word(k) for k in range(clause.first, mark.last)}
    return mark.value is Result.FOR_A_WHILE and bool(said & LAMPS) and bool(said & ALL_OFF)


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
