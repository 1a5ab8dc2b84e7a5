"""What ``survey`` prints: shares, severities, curves against the readings, the next reading."""

from __future__ import annotations

from diagnose.output.documents.survey import SurveyDocument
from diagnose.output.lines import headed, labelled, percent, together, width, wrapped
from diagnose.output.text.plot import plot_lines

SHOWN = 6
LEAST = 0.01


def survey_text(document: SurveyDocument) -> str:
    """Return the survey as lines for a terminal."""
    return together(
        [
            _head(document),
            _shares(document),
            *(plot_lines(p, width()) for p in document.plots),
            _next_reading(document),
            _notes(document),
        ]
    )


def _head(document: SurveyDocument) -> list[str]:
    lines = wrapped(f"Hydraulic survey: {document.title or 'case without a title'}", 0, 2)
    lines += labelled("circuit", document.circuit, 2, 12)
    held = "held to pressures known good"
    lines += labelled("", held if document.calibrated else "not calibrated: no [[baseline]]", 2, 12)
    for i, reading in enumerate(document.readings):
        lines += labelled("" if i else "readings", reading.says, 2, 12)
    if document.not_weighed:
        left = f"{document.not_weighed:,} more are not weighed; these are spread evenly over all"
        lines += labelled("", left, 2, 12)
    return lines


def _shares(document: SurveyDocument) -> list[str]:
    lines = wrapped("What explains the readings, if all were equally likely before", 0, 2)
    rows = [c for c in document.conditions if c.share >= LEAST][:SHOWN]
    always = [c for c in document.conditions if not c.is_condition and c not in rows]
    for row in [*rows, *always]:
        name = f" [{row.id}]" if row.is_condition else ""
        lines += headed(f"  {percent(row.share):>6}  ", row.says + name)
        if row.means and row in rows:
            about = f"as found: {row.means}" if row.measured else f"if so, roughly: {row.means}"
            lines += wrapped(about, 10, 12)
    rest = sum(c.share for c in document.conditions if c not in rows and c not in always)
    return [*lines, *headed(f"  {percent(rest):>6}  ", "all other conditions together")]


def _next_reading(document: SurveyDocument) -> list[str]:
    reading = document.read_next
    if reading is None:
        return wrapped("No further gauge reading would tell the rest apart.")
    lines = []
    if not document.may_run:
        lines = wrapped(
            "STOP applies to this engine (diagnose review shows why). Do not run it, not even for "
            "a reading, until it is cleared."
        )
    lines += wrapped(
        f"Read next: {reading.rpm:.0f} rpm with the oil at {reading.oil}; it would show about", 0, 2
    )
    for text in reading.would_show:
        lines += wrapped(text, 2, 4)
    if reading.separates < 0.25:
        lines += wrapped("They look much alike there too: you need a measurement.", 2)
    return lines


def _notes(document: SurveyDocument) -> list[str]:
    lines: list[str] = []
    if not document.calibrated:
        lines += wrapped(
            "Dimensions are typical ones, not this engine's. Pressures it showed when sound, as "
            "[[baseline]] entries with rpm, oil and pressure, make the answer sharper.",
        )
    if document.baseline_missed:
        lines += wrapped(
            f"The sound engine misses a known pressure by {document.baseline_missed}: check the "
            "dimensions, the oil grade and the pressures given.",
        )
    if document.layout_assumed:
        lines += wrapped(
            "The layout is not known: computed as a classic four, so good for trends only."
        )
    return lines
