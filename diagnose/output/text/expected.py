"""What ``forecast --at`` prints: what the gauge should show."""

from __future__ import annotations

from diagnose.output.documents.expected import ExpectedDocument
from diagnose.output.lines import together, wrapped


def expected_text(document: ExpectedDocument) -> str:
    """Return the expected pressures as lines for a terminal."""
    wide = max((len(row.at) for row in document.at), default=0)
    further = [
        line
        for state in document.further
        for line in wrapped(f"A reading at {state} would narrow this most.")
    ]
    return together(
        [
            wrapped(document.basis),
            [f"  {row.at:{wide}}   {row.figure}" for row in document.at],
            wrapped("In brackets: the range of nine engines in ten."),
            further,
        ]
    )
