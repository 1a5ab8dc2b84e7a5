"""The document of ``forecast --at``: what the gauge should show at stated speeds and heats."""

from __future__ import annotations

from dataclasses import dataclass, field

from diagnose.case.case import Case
from diagnose.circuit.band import Band
from diagnose.circuit.expected import Expected, LearnedFrom
from diagnose.circuit.pressure_law import At
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.scale import Scale, scale_of
from knowledge.units import PSI, ZERO_CELSIUS

BASIS = {
    LearnedFrom.SOUND: "The gauge should show, from {} of the sound engine:",
    LearnedFrom.NOW: (
        "As the engine is now, the gauge should show about this, from {} (to see what is "
        "right, add a [[baseline]]):"
    ),
    LearnedFrom.USUAL: "Usual for its kind, as the case has no reading and no [[baseline]]:",
}


@dataclass(frozen=True, kw_only=True)
class ExpectedPressure:
    """One state: speed [rpm], oil [°C], pressure [psi]; mean of the middle half, and middle 90 %."""

    rpm: float
    oil_c: float
    psi: Band
    at: str = field(metadata=NOT_IN_JSON)  #: the state in words
    figure: str = field(metadata=NOT_IN_JSON)  #: the pressure in the case's unit


@dataclass(frozen=True, kw_only=True)
class ExpectedDocument:
    """Everything ``forecast --at`` answers."""

    case: str | None  #: path of the case file
    learned_from: str  #: baseline, readings or usual
    readings: int  #: number of pressures learned from
    at: tuple[ExpectedPressure, ...]
    further: tuple[str, ...]  #: the reading that would settle most; empty where none would
    basis: str = field(metadata=NOT_IN_JSON)


def expected_document(found: Expected, case: Case) -> ExpectedDocument:
    """Build the document of the pressures expected of a case's engine."""
    scale = scale_of(case)
    rows = tuple(
        ExpectedPressure(
            rpm=round(state.rpm, 1),
            oil_c=round(state.temperature - ZERO_CELSIUS, 1),
            psi=_in_psi(band),
            at=_state_in_words(state, scale),
            figure=scale.range(band),
        )
        for state, band in zip(found.at, found.bands, strict=True)
    )
    readings = "1 reading" if found.readings == 1 else f"{found.readings} readings"
    return ExpectedDocument(
        case=str(case.path) if case.path else None,
        learned_from=found.learned_from.value,
        readings=found.readings,
        at=rows,
        further=(_state_in_words(found.further, scale),) if found.further else (),
        basis=BASIS[found.learned_from].format(readings),
    )


def _in_psi(band: Band) -> Band:
    return Band(*(round(p / PSI, 1) for p in (band.low, band.mean, band.high)))


def _state_in_words(state: At, scale: Scale) -> str:
    return f"{state.rpm:.0f} rpm, oil {scale.heat(state.temperature)}"
