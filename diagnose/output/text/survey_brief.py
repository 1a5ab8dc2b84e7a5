"""What ``survey`` prints by default: what fits the readings, one sentence, the next reading.

``text.survey`` has the curves and every note.
"""

from __future__ import annotations

from diagnose.output.documents.survey import SurveyDocument
from diagnose.output.lines import as_typed, headed, percent, wrapped
from diagnose.output.text.screen import Block, command_lines, on_screen
from knowledge.units import PSI

SHOWN, READINGS = 5, 4
LEAST = 0.03  #: share of a condition that is worth a line


def survey_brief(document: SurveyDocument) -> str:
    """Return the survey in about thirty lines, the next thing to do last."""
    blocks = [
        Block(wrapped(f"Hydraulic survey: {document.title or 'case without a title'}", 0, 2)),
        Block(_readings(document)),
        Block(_shares(document)),
        Block(wrapped(f"{document.in_short}.", 0, 2)),
        Block(_trust(document), spare=2, space=False),
        Block(_next_lines(document)),
    ]
    return on_screen(blocks)


def _readings(document: SurveyDocument) -> list[str]:
    shown = document.readings[:READINGS]
    text = "; ".join(r.says for r in shown)
    more = len(document.readings) - len(shown) + document.not_weighed
    return wrapped(f"Readings: {text}" + (f"; {more} more" if more else ""), 0, 2)


def _shares(document: SurveyDocument) -> list[str]:
    lines = ["What fits the readings"]
    rows = [c for c in document.conditions if c.share >= LEAST][:SHOWN]
    for row in rows:
        name = f" [{row.id}]" if row.is_condition else ""
        lines += headed(f"  {percent(row.share):>6}  ", row.says + name)
        if row.means:
            about = f"as found: {row.means}" if row.measured else f"if so, roughly: {row.means}"
            lines += wrapped(about, 10, 12)
    rest = sum(c.share for c in document.conditions if c not in rows)
    return [*lines, f"  {percent(rest):>6}  everything else together"]


def _trust(document: SurveyDocument) -> list[str]:
    if document.layout_assumed:
        return wrapped(
            "The layout is not known: computed as a classic four, so good for trends only."
        )
    if document.baseline_missed:
        return wrapped(f"The model misses a known good pressure by {document.baseline_missed}.")
    if document.calibrated:
        return []
    return wrapped(
        "Typical dimensions, not this engine's: pressures when sound ([[baseline]]) help."
    )


def _next_lines(document: SurveyDocument) -> list[str]:
    name = as_typed(document.case or "CASE")
    more = ["Curves and what each would show: --full"]
    reading = document.read_next
    if reading is None:
        return [
            *more,
            *command_lines("No further reading would help. Next", (f"diagnose review {name}")),
        ]
    if not document.may_run:
        stop = wrapped("STOP applies: do not run it, not even for a reading.")
        return [*more, *stop, *command_lines("Next", f"diagnose review {name}")]
    would = wrapped(f"Read next: {reading.rpm:.0f} rpm with the oil at {reading.oil}.", 0, 2)
    if reading.separates < 0.25:
        would += wrapped("They look much alike there too: you need a measurement.", 2)
    mean = next(iter(reading.would_show_psi.values()))[0]
    pressure = document.scale.one(mean * PSI)
    example = f'"{reading.rpm:.0f} rpm {reading.oil} {pressure} direct"'
    return [
        *more,
        *would,
        *command_lines("Write what it reads", f"diagnose record {name} --reading {example}"),
    ]
