"""How long an engine has run since it was rebuilt: "rebuilt straight six, 50 hours on it"."""

from __future__ import annotations

from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.service import driven_in, run_in
from diagnose.understanding.work.jobs import Job
from knowledge.lexicon.words.word_sets import set_of as _set

#: work after which hours and miles are counted
_COUNTED_FROM = frozenset(["whole_engine", "other_engine", "bearings"])
_LEADS = _set(
    ", ( and with has had now it only just about around some barely under maybe roughly engine motor"
)
#: what may stand behind the figure in its clause
_TRAILS = _set(
    "on it her him the clock meter this one engine motor build rebuild since then so far old run"
    " running now in total ) of time and"
)
_ENOUGH = 6  #: words behind a figure that are looked at


def run_since(job: Job) -> tuple[str, Mark[object]] | None:
    """The time since a rebuild that hours or miles say, and the words for it; None where unsaid."""
    line = job.line
    if job.area not in _COUNTED_FROM:
        return None
    for k in range(job.last, len(line.tokens)):
        token = line.tokens[k]
        hours = "hours" in token.kinds
        if hours or "distance" in token.kinds:
            end = min(line.clause(k).last, k + 1 + _ENOUGH)
            behind = {line.word(n) for n in range(k + 1, end) if not line.tokens[n].is_mark}
            if behind - _TRAILS:
                return None  # "rebuilt engine, 20 hours of work"
            return (run_in(token) if hours else driven_in(token)), Mark(True, k, end)
        if token.word not in _LEADS:
            return None
    return None
