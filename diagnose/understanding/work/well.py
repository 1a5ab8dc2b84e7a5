"""Whether words for a result say only that all was well, which ends no trouble."""

from __future__ import annotations

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import Job
from knowledge.lexicon.work.beside_results import BETTER, ENDED, OF_THE_PART, WELL
from knowledge.reports.words import Done, Result


def only_says_well(line: Line, result: Mark[Result]) -> bool:
    """Whether it says that all was well, which ends no trouble: "new pump, fine for years"."""
    said = line.words(result.first, result.last)
    figures = any(line.tokens[k].is_figure for k in range(result.first, result.last))
    for_a_time = result.value is Result.FOR_A_WHILE and line.word(result.first) == "for"
    return for_a_time or (
        result.value in BETTER and bool(said & WELL) and not (said & ENDED) and not figures
    )


def is_of_the_part(job: Job, result: Mark[Result], line: Line) -> bool:
    """Whether it says how the part was that was taken out to look: "took the pump apart and it is fine"."""
    said = line.words(result.first, result.last)
    looked = job.done in (Done.REFITTED, Done.OPENED) and line is job.line
    return looked and result.value in BETTER and said <= WELL | OF_THE_PART


def ends_a_later_trouble(
    job: Job, result: Mark[Result], line: Line, troubles: list[tuple[int, int]]
) -> bool:
    """Whether what ended came after the work: "oil change, then the light came on; all well now"."""
    work, ended = (job.line.number, job.last), (line.number, line.clause(result.first).first)
    return result.value in BETTER and any(work <= t < ended for t in troubles)
