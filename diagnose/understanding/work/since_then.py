"""Trouble that is there since work: "overhaul 3 weeks ago, since then only 0.9 bar at hot idle"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE, Stance
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import Job
from knowledge.lexicon.shows.since import SINCE_THEN
from knowledge.lexicon.words.word_sets import set_of as _set
from knowledge.reports.words import LOSSES, Shows

_WRONG = frozenset((*LOSSES, Shows.UNSTEADY, Shows.SLOW, Shows.LAMP, Shows.FALLING))
_LITTLE = frozenset(["only", "just", "barely", "hardly"])
#: between: all was well at first
_WELL = _set("fine good ok okay great perfect well normal happy until till lovely sweet")
#: the engine was started after the work
_STARTED = _set("started start starting startup start-up fired fire-up refired restarted")
#: between that and the trouble: it was driven, or it is no matter of the first start
_LATER = _set(
    "later drove driven drive driving rode since ago used weeks months years days next morning"
)
_AT_ONCE = frozenset(["seconds", "minutes"])
_SENTENCES = 4  #: from the work to what the start showed
_EARLY = 3  #: words of the next sentence before "since then"


def there_since(job: Job, behind: Line | None) -> Mark[bool] | None:
    """The words of the job's sentence that say so, its own where the next one does; None: unsaid."""
    for at, pair in enumerate(pairwise(t.word for t in job.line.tokens)):
        if at >= job.last and pair in SINCE_THEN and _is_wrong(job.line, at):
            return Mark(True, at, at + 2)
    if behind is None:
        return None
    for at, pair in enumerate(pairwise(t.word for t in behind.tokens[: _EARLY + 1])):
        if pair in SINCE_THEN and _is_wrong(behind, at):
            return Mark(True, job.first, job.last)
    return None


def shown_at_the_start(job: Job, paragraph: Paragraph, troubles: Sequence[tuple[int, int]]) -> bool:
    """Whether the first trouble showed as the engine was started: "new chain. Started it: lamp on"."""
    first = min(troubles, default=None)
    here = job.line.number
    if first is None or first < (here, job.first) or first[0] - here > _SENTENCES:
        return False
    between = [
        token
        for line in paragraph.lines
        for k, token in enumerate(line.tokens)
        if (here, job.last) <= (line.number, k) < first
    ]
    words = {t.word for t in between}
    passed = any("time" in t.kinds and not t.kinds & _AT_ONCE for t in between)
    far = any("distance" in t.kinds for t in between)
    return bool(words & _STARTED) and not (words & (_LATER | _WELL) or passed or far)


def _is_wrong(line: Line, at: int) -> bool:
    """Whether what stands behind "since then" is a trouble, and not that all is well."""
    if line.stances.of[at] & (UNTRUE | Stance.DENIED):
        return False
    shown = [m for m in line.find(line.lexicon.shows) if m.first > at and line.is_stated(m)]
    wrong = [m.first for m in shown if m.value in _WRONG and not line.denied(m)]
    figures = [k for k in range(at, len(line.tokens)) if "pressure" in line.tokens[k].kinds]
    little = [k for k in figures if line.word(k - 1) in _LITTLE]
    first = min((*wrong, *little), default=None)
    return first is not None and not _WELL & line.words(at, first)
