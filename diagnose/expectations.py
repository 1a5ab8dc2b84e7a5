"""Compare a diagnosis with the case's own ``[expect]``."""

from __future__ import annotations

from diagnose.diagnosis import Diagnosis


def failures(diagnosis: Diagnosis) -> list[str]:
    """Differences from what the case expects, one line each."""
    expect = diagnosis.case.expect
    if expect is None:
        return ["the case has no [expect]"]
    names = [r.cause.id for r in diagnosis.ranking]
    out = []
    for key, many in (("first", 1), ("among_three", 3), ("among_five", 5)):
        wanted = getattr(expect, key)
        if wanted and not set(wanted) & set(names[:many]):
            out.append(
                f"expected {' or '.join(wanted)} {key.replace('_', ' ')}, got {names[:many]}"
            )
    if expect.alarm is not None and expect.alarm != bool(diagnosis.alarms):
        out.append(f"expected {'an alarm' if expect.alarm else 'no alarm'}")
    if expect.contradiction is not None and expect.contradiction != bool(diagnosis.contradictions):
        out.append(f"expected {'a' if expect.contradiction else 'no'} contradiction")
    return out
