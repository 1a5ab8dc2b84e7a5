"""What came of a trial, as one sentence has it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from diagnose.understanding.sentences.paragraph import LAMPS, Line, Paragraph
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.before_work import as_low_before, came_after
from diagnose.understanding.work.began_then import lit_since
from diagnose.understanding.work.came_to import (
    is_old,
    little_and_no_more,
    made_pressure,
    pressure_after,
    short_of_usual,
    was_and_now,
)
from diagnose.understanding.work.jobs import Job, jobs, names_a_grade
from diagnose.understanding.work.lone_results import only_for_a_while
from diagnose.understanding.work.recaps import brought, even_with
from diagnose.understanding.work.relapses import RELAPSE, relapse, says_again
from diagnose.understanding.work.result_of import until
from diagnose.understanding.work.results_said import comes_otherwise
from diagnose.understanding.work.well import ends_a_later_trouble, is_of_the_part, only_says_well
from knowledge.lexicon.work.beside_results import (
    ADDED,
    ALL_OFF,
    BEGAN,
    BETTER,
    FIRED,
    LEADS_TO_IT,
    SAYS_STILL,
)
from knowledge.reports.words import Result

#: trials that only show what is so: what came of them is the same or a right reading
_ONLY_SHOWS, _SHOWN = frozenset(["other_gauge"]), (Result.NO_DIFFERENCE, Result.CURED)
_OF_A_GRADE = 3  #: words between a grade of oil and what it did
#: beside a figure: it says more than the pressure, that it is so only now, or still
_NO_MERE_FIGURE = frozenset(["now", "still", "up", "only", "more"])


def puts_on_direct_gauge(job: Job) -> bool:
    """Whether a trusted gauge was put on, rather than another one in the panel."""
    direct = job.line.find(job.line.lexicon.direct)
    named = any(m.first < job.last + 1 and job.first <= m.last for m in direct)
    return job.trial == "other_gauge" and named


@dataclass(slots=True)
class Story:
    """What a text says of trouble, and whether it has named the build of a whole engine yet."""

    paragraph: Paragraph
    troubles: list[tuple[int, int]]  #: where one is named: the number of the sentence, the token
    unit: str  #: of pressures without one
    built: bool = False
    worked: list[Job] = field(default_factory=list)  #: all work, in its order
    own: list[Job] = field(default_factory=list)  #: of it, what may be a trial

    def trouble_before(self, line: Line, at: int) -> bool:
        """Whether a trouble is named before a token of a sentence."""
        return any(t < (line.number, at) for t in self.troubles)

    def names_trouble(self, line: Line) -> bool:
        """Whether a sentence names a trouble."""
        return any(number == line.number for number, _ in self.troubles)


@dataclass(frozen=True, slots=True)
class Trial:
    """A trial beside a sentence that may say what came of it."""

    story: Story
    job: Job
    line: Line
    named: list[Job]  #: all trials that the sentence names
    said: Mark[Result] | None  #: the words for a result in it that belong to this trial

    @property
    def is_here(self) -> bool:
        """Whether the sentence is the one that names the trial."""
        return self.job.line is self.line

    @property
    def only_shows(self) -> bool:
        """Whether it only shows what is so, and changes nothing."""
        return self.job.trial in _ONLY_SHOWS


def came_of(trial: Trial) -> Iterator[Mark[Result] | None]:
    """What came of a trial: None where only that it was made is said, nothing where it is no trial."""
    job, line = trial.job, trial.line
    trouble = trial.story.trouble_before(job.line, job.first) or as_low_before(job) is not None
    if _only_names_the_oil(trial, trouble):
        return
    mark = _result(trial, trouble)
    if mark is not None:
        if _led_to_it(job, mark, line, trouble) or is_of_the_part(job, mark, line):
            return
        trouble = trouble or _lamp_went_out(line, mark) or _comes_again(trial, mark)
        if _is_no_result(trial, mark) or (not trouble and _needs_a_trouble(trial, mark)):
            return
    if trial.is_here and came_after(job):
        return  # "before the oil change it was fine"
    if job.area == "whole_engine" and (not trouble or _of_other_work(job, line, mark)):
        return  # what the gauge did after it came of no trial
    if mark is not None:
        yield in_the_end(trial.story.paragraph, job, mark, line)
    elif trial.is_here and job.tried and not job.begins_it and (trouble or not _twice(job)):
        yield None


def _only_names_the_oil(trial: Trial, trouble: bool) -> bool:
    """Whether it is no more than which oil is in it: "20w50, lamp goes out at once"."""
    far = trial.said is not None and trial.said.first - trial.job.last > _OF_A_GRADE
    return names_a_grade(trial.job) and (not trouble or (far and trial.is_here))


def _result(trial: Trial, trouble: bool) -> Mark[Result] | None:
    """The words for what a trial did: a result, what it led to, or the pressure it made."""
    job, line, named, mark = trial.job, trial.line, trial.named, trial.said
    if mark is None and trial.is_here:
        mark = even_with(line, job, named, trouble) or until(line, job)
        mark = mark or brought(line, job) or as_low_before(job)
    if mark is not None and trial.only_shows and mark.value not in _SHOWN:
        mark = None  # "put a gauge on it and got 12 psi"
    mark = mark or was_and_now(line, job) or made_pressure(line, job)
    if not trouble or trial.only_shows:
        return mark
    if _only_a_gain(line, mark):
        story = trial.story
        mark = pressure_after(story.paragraph, line, job, named, story.unit) or mark
    if mark is None and trial.is_here:
        mark = _again_at_once(line, job, named)
    return mark


def _comes_again(trial: Trial, mark: Mark[Result]) -> bool:
    """Whether a trouble nobody named is there again after what came of a trial."""
    if trial.story.built:
        return False
    paragraph, line = trial.story.paragraph, trial.line
    ended = in_the_end(paragraph, trial.job, mark, line) is not mark
    return ended and says_again(paragraph.lines[line.number :])


def _is_no_result(trial: Trial, mark: Mark[Result]) -> bool:
    """Whether it came of other things, or leaves the pressure short of what it was."""
    if not trial.is_here and comes_otherwise(trial.line, mark):
        return True  # "new oil. Put a gauge on and got 20"
    if not trial.is_here and is_old(trial.job) and _names_a_figure(trial.line, mark):
        return True  # "the pump was renewed two years ago. 9 psi at hot idle"
    if mark.value is not Result.HELPED:
        return False
    little = little_and_no_more(trial.story.paragraph, trial.line, mark)
    return little or short_of_usual(trial.line, mark)  # "Now 0.6 bar hot, used to be 2 bar"


def _needs_a_trouble(trial: Trial, mark: Mark[Result]) -> bool:
    """Whether words are a result only where a trouble was named before."""
    job, line, story = trial.job, trial.line, trial.story
    helped = mark.value is Result.HELPED
    if helped and not trial.is_here and not job.tried and _names_a_figure(line, mark):
        return True  # "new pump and lifters. At idle it's got 60 psi"
    if only_says_well(line, mark) or ends_a_later_trouble(job, mark, line, story.troubles):
        return True
    if story.built and mark.value is not Result.NO_DIFFERENCE:
        return True  # of a part of a build: what the engine did when it ran
    return helped and job.begins_it  # "gone up to 90 since the new pump"


def _led_to_it(job: Job, result: Mark[Result], line: Line, trouble: bool) -> bool:
    """Whether the trouble came with the work: "changed the oil, now it is lower than before".

    A trial is made of a trouble that is there; then it is named before, or "still" says so.
    """
    if line is job.line and lit_since(job, result):
        return True
    if trouble or job.tried or not job.area:
        return False
    said = line.words(result.first, result.last)
    if job.area in ("oil_change", "filter_change") and said & FIRED:
        return True  # "changed the oil. Fired it up and nothing on the gauge"
    if result.value is Result.WORSE:
        return not said & {"made", "worse"}
    if line is not job.line:
        return result.value is Result.NO_DIFFERENCE and bool(said & BEGAN)
    between = line.words(job.last, result.first + 1)
    led = job.begins_it or bool(between & LEADS_TO_IT) or bool(said & BEGAN)
    return led and result.value is Result.NO_DIFFERENCE and not said & SAYS_STILL


def _of_other_work(job: Job, line: Line, mark: Mark[Result] | None) -> bool:
    """Whether a later sentence names what was done since the rebuild: "added the plug, now 40"."""
    if mark is None or line is job.line:
        return False
    done = any(a.first < mark.first for a in line.stated(line.lexicon.actions))
    return done or any(line.word(k) in ADDED for k in range(mark.first))


def in_the_end(paragraph: Paragraph, job: Job, result: Mark[Result], line: Line) -> Mark[Result]:
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
    inside = range(mark.first, mark.last)
    said = {line.word(k) for k in inside}
    return any(line.tokens[k].is_figure for k in inside) and not said & _NO_MERE_FIGURE


def _twice(job: Job) -> bool:
    """Whether it is only said that work was done twice, which with no trouble is no trial."""
    return "twice" in {t.word for t in job.line.tokens} and not any(
        t.word in ("tried", "already") for t in job.line.tokens
    )


def _lamp_went_out(line: Line, mark: Mark[Result]) -> bool:
    """Whether a lamp is out for a time, and so was on before: "light stayed off for ten miles"."""
    clause = line.clause(mark.first)
    said = line.words(clause.first, mark.last)
    return mark.value is Result.FOR_A_WHILE and bool(said & LAMPS) and bool(said & ALL_OFF)
