"""Which gauge a pressure was read on or shows it, and marks of a sentence that stand together."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.instruments_named import NOT_BESIDE
from knowledge.lexicon.shows.test_gauge_says import NOT_THE_ONE, OF_THE_CAR, PUT_ON, TESTERS

_FAR, _MODIFIERS = 5, 4  #: words from what is done to the gauge, and from "a" to it


def direct_named(line: Line) -> list[Mark[bool]]:
    """The words for a gauge of its own; "mine" is one where the panel's is named as well."""
    panel = line.find(line.lexicon.panel)
    own = [m for m in line.find(line.lexicon.own) if not any(m.overlaps(p) for p in panel)]
    own = [m for m in own if not line.words(m.first, m.last) & NOT_BESIDE]
    own = own if panel else []
    return [*line.find(line.lexicon.direct), *own, *_put_on(line)]


def _put_on(line: Line) -> Iterator[Mark[bool]]:
    """Gauges that are put on, other than the one spoken of: "my mechanic hooked up his gauge"."""
    for k, token in enumerate(line.tokens):
        if token.word not in TESTERS or line.word(k + 1) in TESTERS:
            continue
        near = range(max(0, k - _FAR), k)
        # "the gauge" is the one spoken of, "the works gauge" another
        which = next(
            (
                n
                for n in reversed(near)
                if line.word(n) in NOT_THE_ONE or (line.word(n) == "the" and n < k - 1)
            ),
            None,
        )
        if which is None or k - which > _MODIFIERS or OF_THE_CAR & line.words(which, k):
            continue
        if PUT_ON & line.words(max(0, which - _FAR), which):
            yield Mark(True, which, k + 1)


def gauges_named(line: Line) -> list[Mark[object]]:
    """The words that say which gauge showed it."""
    return [*direct_named(line), *line.find(line.lexicon.panel)]


def in_groups(line: Line, marks: list[Mark[object]]) -> Iterator[tuple[Mark[object], Mark[object]]]:
    """Each mark with the run of marks it stands in: "hot idle" is one thing to say."""
    runs: list[list[Mark[object]]] = []
    for mark in sorted(marks, key=lambda m: (m.first, m.last)):
        if runs and mark.first <= max(m.last for m in runs[-1]):
            runs[-1].append(mark)
        else:
            runs.append([mark])
    for run in runs:
        whole = Mark(True, run[0].first, max(m.last for m in run))
        for mark in run:
            yield mark, whole
