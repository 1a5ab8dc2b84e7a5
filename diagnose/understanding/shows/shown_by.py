"""On which instrument it shows, and for how long: "lamp on for 15 seconds"."""

from __future__ import annotations

from diagnose.understanding.shows.heads import Head
from knowledge.lexicon.shows.instruments_named import PANEL_WORDS
from knowledge.reports.words import Shows

_LAMPS = frozenset(["light", "lamp", "symbol", "icon", "telltale", "tell-tale"])


def set_gauge(head: Head) -> None:
    """Which instrument shows it, and for how long: "lamp on for 15 seconds"."""
    line, mark = head.line, head.mark
    words = {t.word for t in line.tokens[mark.first : mark.last]}
    if head.mark.value in (Shows.UNSTEADY, Shows.SLOW) and words & _LAMPS:
        head.gauge = "lamp"
    elif head.is_pressure and mark.value not in (Shows.LAMP, Shows.TRIPS):
        clause = line.clause(mark.first)
        direct = line.find(line.lexicon.direct)
        panel = [k for k in range(clause.first, mark.first) if line.word(k) in PANEL_WORDS]
        if any(
            clause.first <= d.first <= mark.last and not any(d.last <= k for k in panel)
            for d in direct
        ):
            head.gauge = "direct"
    if mark.value is Shows.SLOW:
        for token in line.tokens[max(0, mark.first - 3) : mark.last + 5]:
            if token.kinds & {"seconds", "minutes"}:
                head.lasts = token.value
                break
