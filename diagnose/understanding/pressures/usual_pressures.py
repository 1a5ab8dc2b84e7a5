"""Which usual pressure belongs to which one read now: "40 cold and 10 hot, used to be 60 and 30"."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace

from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.pressures.gauges_compared import RUN, Pressure
from diagnose.understanding.words.facts import Fact
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Token
from knowledge.lexicon.shows.speeds import HEAT
from knowledge.reports.words import Circumstance, Speed

FAST_IDLE = 1100.0  #: rpm; what is read at a higher speed is not of an idle


def is_heat(mark: Mark[object]) -> bool:
    """Whether a mark says how hot it was."""
    return isinstance(mark.value, Circumstance) and mark.value in HEAT


def is_none(pressure: Pressure) -> bool:
    """Whether it is no pressure at all, which is usual for no engine: "had 0, now 35"."""
    return pressure.mark.value.split(" ")[0] in ("0", "zero")


def partners(now: list[Pressure], then: list[Pressure]) -> dict[int, Pressure]:
    """The usual pressure of each one read: of the same heat, else of none; the nearest of those."""
    found: dict[int, Pressure] = {}
    if len(now) == len(then) and not any(p.near for p in then):
        return dict(enumerate(then))  # "40 cold and 10 hot, used to be 60 and 30"
    pairs = [(k, u) for k in range(len(now)) for u in then if not of_another_run(now[k], u)]
    for k, usual in sorted(pairs, key=lambda pair: _apart(now[pair[0]], pair[1])):
        if k not in found and usual not in found.values():
            found[k] = usual
    return found


def nearest_made(made: list[tuple[Pressure, Pressure | None]], usual: Pressure) -> int:
    """The place of the pressure read before that a later sentence's usual one is of; -1: of none.

    The last, unless another is more alike: "8 at hot idle, 30 at 3000. Before it had 20 at hot idle".
    """
    able = [k for k, (_, old) in enumerate(made) if old is None]
    able = [k for k in able if not of_another_run(made[k][0], usual)]
    return min(able, key=lambda k: (_apart(made[k][0], usual)[0], -k), default=-1)


def sound_ones(
    then: Iterable[Pressure],
    made: Sequence[tuple[Pressure, Pressure | None]],
    as_reading: Callable[[Pressure, None], Fact],
) -> list[Fact]:
    """The usual pressures of a known speed or heat that stand beside none of now, as facts."""
    used = {id(usual) for _, usual in made}
    stated = [p for p in then if any(m.value in RUN or is_heat(m) for m in p.near)]
    found = [as_reading(p, None) for p in stated if not p.left and id(p) not in used]
    kept = [{k: v for k, v in f.fields.items() if k != "gauge"} for f in found]
    return [replace(f, table="baseline", fields=k) for f, k in zip(found, kept, strict=True)]


def of_another_run(now: Pressure, usual: Pressure) -> bool:
    """Whether a usual pressure was read at another speed, or stands apart from one read cold."""
    if (fast := _is_fast(now)) is not None and _is_fast(usual) is not None:
        return fast is not _is_fast(usual)
    cold = any(m.value is Circumstance.COLD for m in now.near)
    of_speed = any(m.value in RUN for m in usual.near)
    return cold and of_speed and usual.line is not now.line


def _is_fast(pressure: Pressure) -> bool | None:
    """Whether it was read above idle; None where that is not known or it was so at any speed."""
    for mark in pressure.near:
        token = mark.value
        if isinstance(token, Token) and "rpm" in token.kinds:
            return float(token.value.split(" ")[0]) > FAST_IDLE
        if token in (Speed.IDLE, Circumstance.IDLE):
            return False
        if token in (Speed.CRUISE, Speed.FULL, Circumstance.SPEED):
            return True
    return None


def _apart(now: Pressure, usual: Pressure) -> tuple[int, int]:
    """How little a usual pressure is that of one read now: heat and speed, then the distance."""
    heats = [{m.value for m in p.near if is_heat(m)} for p in (now, usual)]
    speeds = [{str(m.value) for m in p.near if m.value in RUN} for p in (now, usual)]
    unlike = 1 if heats[0] != heats[1] else 0
    unlike += sum(all(said) and not said[0] & said[1] for said in (heats, speeds))
    unlike += not (heats[1] or speeds[1]) and _risen(now, usual)
    return unlike, abs(usual.mark.first - now.mark.first)


def _risen(now: Pressure, usual: Pressure) -> bool:
    """Whether more is read now: of "8 hot, 50 cold, used to be 25" the one that fell is meant."""
    values = [max(pressures_at(p.line, p.mark.last - 1), default=0.0) for p in (now, usual)]
    return values[0] > values[1] > 0.0
