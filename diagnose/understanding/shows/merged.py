"""Of what is said twice to show, the fuller once: "low, low at idle when hot"."""

from __future__ import annotations

from diagnose.understanding.shows.heads import Head
from knowledge.lexicon.words.joints import UNTIL
from knowledge.reports.words import Shows


def merged(heads: list[Head]) -> list[Head]:
    """The heads, those left out of which another of the same says as much and more."""
    kept: list[Head] = []
    for k, head in enumerate(heads):
        richer = [
            o
            for n, o in enumerate(heads)
            if n != k and _within(head, o) and not (_within(o, head) and n > k)
        ]
        if not richer:
            kept.append(head)
            continue
        richer[0].used += head.used
    return [h for h in kept if h.mark.value is not Shows.NORMAL or _says_when(h)]


def _within(one: Head, other: Head) -> bool:
    """Whether all that is said of one head is said of another of the same."""
    return (
        one.mark.value is other.mark.value
        and one.gauge == other.gauge
        and set(one.during) <= set(other.during)
        and set(one.never) <= set(other.never)
        and set(one.course) <= set(other.course)
        and one.onset in ("", other.onset)
        and one.since in ("", other.since)
        and one.lasts in ("", other.lasts)
    )


def _says_when(head: Head) -> bool:
    """Whether "normal" says more than that the engine runs: when, or by which instrument."""
    named = any(
        head.mark.first <= m.first < head.mark.last
        for m in head.line.find(head.line.lexicon.instrument)
    )
    behind = range(head.mark.last, len(head.line.tokens))
    ends = any(head.line.word(k) in UNTIL for k in behind)
    return bool(head.during) or (named and not ends)  # "fine until I brake"
