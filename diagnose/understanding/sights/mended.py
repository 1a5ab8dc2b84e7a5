"""Faults that are said to be mended: "the sump leak is fixed". They are no longer there."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.facts import Fact, is_inside
from diagnose.understanding.work.jobs import jobs
from knowledge.lexicon.meant.mended import BETWEEN, CURES, MENDED, OPENED, PRONOUNS, WHY
from knowledge.lexicon.shows.beside_pressure import FINDING_OF
from knowledge.model import Stage
from knowledge.reports.words import Done, Result

_BEHIND = 5  #: words from a fault to what was done to it
_REASON = 6  #: words before a fault in which it is said to be the reason for work


def without_mended(facts: Iterable[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts without findings whose words say at once that they were put right."""
    return [f for f in facts if not (_is_seen(f) and _is_mended(f, paragraph))]


def _shows_no_more(fact: Fact) -> bool:
    """Whether it denies what showed: the lamp, a noise."""
    return fact.is_absent and fact.name in FINDING_OF.values()


#: undone again: what the gauge shows with it is no reading of this engine
_FOR_A_TRIAL = frozenset(["cooler_bypassed"])


def without_cured(facts: Iterable[Fact]) -> list[Fact]:
    """The facts without what shows only in the words that say it was cured.

    "Topped it up and the light has stayed off" is a trial, not a lamp that never came on.
    """
    listed = list(facts)
    cured = [
        s for f in listed if f.table == "trial" and f.state == Result.CURED.value for s in f.spans
    ]
    tried = [s for f in listed if f.name in _FOR_A_TRIAL for s in f.spans]
    return [
        f
        for f in listed
        if not ((f.table == "behaviour" or _shows_no_more(f)) and f.is_within(cured))
        and not (f.table == "reading" and any(is_inside((a, a + 1), tried) for a, _ in f.spans))
    ]


def _is_seen(fact: Fact) -> bool:
    return fact.table == "finding" and fact.is_present


def _is_inside(fact: Fact, paragraph: Paragraph) -> bool:
    """Whether it is the state of a part that is seen only when it is out."""
    finding = paragraph.lexicon.book.findings.get(fact.name)
    return finding is not None and finding.stage is Stage.OPENED


def _is_mended(fact: Fact, paragraph: Paragraph) -> bool:
    """Whether a word for mending stands straight before or behind the words of a fact."""
    first, last = fact.spans[0][0], fact.spans[-1][1]
    for line in paragraph.lines:
        places = [k for k, t in enumerate(line.tokens) if first <= t.start < last and t.end <= last]
        if not places or any(line.word(k) in MENDED for k in places):
            continue
        return (
            _behind(line, places[-1] + 1)
            or _before(line, places[0] - 1)
            or _of_the_old_part(line, places[0])
            or (_is_inside(fact, paragraph) and _is_why(line, places))
        )
    return False


def _of_the_old_part(line: Line, at: int) -> bool:
    """Whether it is why a part was renewed: "new sender, because the old one leaked"."""
    lead = [line.word(k) for k in range(max(0, at - _REASON), at)]
    why = next((n for n, word in enumerate(lead) if word in WHY), None)
    return why is not None and "old" in lead[why:] and bool(jobs(line))


def _is_why(line: Line, places: Sequence[int]) -> bool:
    """Whether its words are why its part was renewed: "replaced the rod because it was twisted"."""
    first = max(0, places[0] - _REASON)
    ways = zip(range(first, places[-1]), range(first + 1, places[-1] + 1), strict=True)
    why = next((k for k, n in ways if line.word(k) in WHY and line.word(n) in PRONOUNS), None)
    return why is not None and any(
        j.done is Done.RENEWED and j.first < why and why - j.last <= _BEHIND for j in jobs(line)
    )


def _behind(line: Line, at: int) -> bool:
    """Whether "is fixed", "has been cured last year" follows at a place."""
    for k in range(at, min(at + _BEHIND, len(line.tokens))):
        if line.word(k) in MENDED:
            return not (line.word(k) in CURES and line.word(k + 1) in ("it", "that", "the"))
        if line.word(k) not in BETWEEN:
            return False
    return False


def _before(line: Line, at: int) -> bool:
    """Whether "fixed the", "cured a" or "opened for a" leads to a place."""
    while at >= 0 and line.word(at) in ("the", "a", "an", "my", "that", "some", "all", "its"):
        at -= 1
    reason = at > 0 and line.word(at) == "for" and line.word(at - 1) in OPENED
    return at >= 0 and (line.word(at) in CURES or reason)
