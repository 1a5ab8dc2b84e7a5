"""Which gauge a pressure was read on or shows it, and marks of a sentence that stand together."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.instruments_named import NOT_BESIDE


def direct_named(line: Line) -> list[Mark[bool]]:
    """The words for a gauge of its own; "mine" is one where the panel's is named as well."""
    panel = line.find(line.lexicon.panel)
    own = [m for m in line.find(line.lexicon.own) if not any(m.overlaps(p) for p in panel)]
    own = [m for m in own if not line.words(m.first, m.last) & NOT_BESIDE]
    own = own if panel else []
    return [*line.find(line.lexicon.direct), *own]


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
