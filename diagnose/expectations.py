"""Hold an answer against the case's own ``[expect]``; imported by ``cli`` and tests."""

from __future__ import annotations

from diagnose.diagnosis import Diagnosis


def failures(answer: Diagnosis) -> list[str]:
    """What is not as the case expects, one sentence each."""
    expect = answer.case.expect
    if expect is None:
        return ["the case has no [expect]"]
    names = [r.cause.id for r in answer.ranking]
    out = []
    for key, many in (("first", 1), ("among_three", 3), ("among_five", 5)):
        wanted = getattr(expect, key)
        if wanted and not set(wanted) & set(names[:many]):
            out.append(
                f"expected {' or '.join(wanted)} {key.replace('_', ' ')}, got {names[:many]}"
            )
    if expect.alarm is not None and expect.alarm != bool(answer.alarms):
        out.append(f"expected {'an alarm' if expect.alarm else 'no alarm'}")
    if expect.contradiction is not None and expect.contradiction != bool(answer.contradictions):
        out.append(f"expected {'a' if expect.contradiction else 'no'} contradiction")
    return out
