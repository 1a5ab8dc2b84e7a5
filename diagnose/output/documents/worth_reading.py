"""The part of ``budget`` and ``forecast`` that names the further reading worth most."""

from __future__ import annotations

from dataclasses import dataclass, field

from diagnose.circuit.operating_points import COLD_START
from diagnose.circuit.worth_reading import WARM, WorthReading
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.scale import Scale

NONE_WORTH_IT = "No further gauge reading would narrow these figures by much."


@dataclass(frozen=True, kw_only=True)
class FurtherReading:
    """A reading worth taking, and what it would narrow; rpm, K, Pa."""

    rpm: float
    oil: float
    sound: bool  #: to be asked for: what it showed there when it was sound
    narrows: str  #: the figure that it narrows most
    half_now: float  #: half of the range of nine plausible engines in ten of that figure
    half_then: float  #: expected once it is read
    says: str = field(metadata=NOT_IN_JSON)


def further_reading(
    worth: WorthReading | None, narrows: str, scale: Scale, half: float | None = None
) -> FurtherReading | None:
    """Name the reading in words, or None.

    ``narrows``: what it narrows; ``half``: half of the range shown for that [Pa], if it is not the
    reading's own.
    """
    if worth is None:
        return None
    half = worth.half if half is None else half
    then = worth.narrowed(half)
    state = f"{worth.rpm:.0f} rpm {_warmth(worth.temperature)} ({scale.heat(worth.temperature)})"
    head = f"Ask what it showed when sound at {state}" if worth.sound else f"Read next: {state}"
    return FurtherReading(
        rpm=worth.rpm,
        oil=worth.temperature,
        sound=worth.sound,
        narrows=narrows,
        half_now=half,
        half_then=then,
        says=f"{head}; narrows {narrows} from ±{scale.figure(half)} to ±{scale.one(then)}.",
    )


def _warmth(temperature: float) -> str:
    """The oil in a word."""
    return "cold" if temperature <= COLD_START else "warm" if temperature <= WARM else "hot"
