"""Read whether a trusted gauge shows what the panel's does: "put a test gauge on, same thing"."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.sentences.stance import UNTRUE
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.came_of import puts_on_direct_gauge
from diagnose.understanding.work.work import tried
from knowledge.lexicon.work.beside_results import ENOUGH
from knowledge.reports.words import Result, Shows

#: what shows of a pressure that is too low, and what a trusted gauge then shows
_MEANS = {
    Shows.NONE: "direct_gauge_zero",
    Shows.LOST: "direct_gauge_zero",
    Shows.LOW: "direct_gauge_low",
    Shows.LAMP: "direct_gauge_low",
    Shows.FALLING: "direct_gauge_low",
}


@reader(
    {
        "low oil pressure. put a mechanical gauge on it and got the same reading": [
            "finding direct_gauge_low present"
        ],
        "dash gauge shows zero. hooked up a test gauge, same thing": [
            "finding direct_gauge_zero present"
        ],
        "8 psi at hot idle. fitted a master gauge, it reads the same as the dash": [
            "finding direct_gauge_low present"
        ],
        "low oil pressure. fitted a new dash gauge, same thing": [],
        "gauge is pegged. put a mechanical gauge on it, same thing": [],
        "low oil pressure. put a mechanical gauge on it and got 50": [
            "finding second_instrument_disagrees present"
        ],
        "low oil pressure. put a mechanical gauge on it and it reads 50": [],
        "low oil pressure. would a mechanical gauge read the same?": [],
    }
)
def confirmed_directly(paragraph: Paragraph) -> Iterator[Fact]:
    """What a trusted gauge that was put on shows: the same as the panel's, or enough."""
    shown = _shown(paragraph)
    for job, result, line in tried(paragraph):
        if result is None or not puts_on_direct_gauge(job):
            continue
        what = ""
        if result.value is Result.CURED:  # sender, wire or gauge: it leaves open which
            what = "second_instrument_disagrees"
        elif shown in _MEANS and result.value is Result.NO_DIFFERENCE:
            what = _MEANS[shown]
        if what:
            fields = {"what": what, "state": "present"}
            spans = {*job.line.span([job.whole]), *line.span([result])}
            yield Fact("finding", dict(fields), tuple(sorted(spans)))


def _shown(paragraph: Paragraph) -> Shows | None:
    """What the pressure was said to do first; low where only a figure says so."""
    said = [
        mark.value
        for line in paragraph.lines
        for mark in line.stated(line.lexicon.shows)
        if mark.value in (*_MEANS, Shows.HIGH) and not line.denied(mark) and not line.usual(mark)
    ]
    if said:
        return said[0]
    low = any(
        "pressure" in token.kinds
        and max(pressures_at(line, k), default=ENOUGH) < ENOUGH
        and not line.usual(Mark(True, k, k + 1))
        and not line.stances.of[k] & UNTRUE
        for line in paragraph.lines
        for k, token in enumerate(line.tokens)
    )
    return Shows.LOW if low else None
