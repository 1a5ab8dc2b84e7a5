"""A change asked for by ``--set name=value``: a parameter and its new value, or another oil."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from diagnose.circuit.parameters import CIRCUIT_PARAMETERS, NAMES, CircuitParameter
from diagnose.errors import UsageError, nearest, plain
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from diagnose.ids import normal_id
from knowledge.stations.oil.grades import grade_named
from knowledge.units import FRACTION, UnitError, parse, unit_in


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """One change: a parameter of the circuit and its new value, or another oil."""

    parameter: CircuitParameter | None  #: None: the oil
    text: str  #: as typed
    value: float = 0.0
    relative: bool = False  #: value is a factor on what is there
    added: bool = False  #: value is added to what is there

    @property
    def id(self) -> str:
        """The name of what is set."""
        return self.parameter.id if self.parameter else "oil"

    @property
    def unit(self) -> str | None:
        """The unit typed, where it is one of the parameter's dimension."""
        return unit_in(self.text, self.parameter.dimension) if self.parameter else None

    def applied_to(self, engine: Engine) -> Engine:
        """Return the engine with this change."""
        if self.parameter is None:
            return with_oil(engine, self.text)
        old = self.parameter.read(engine)
        new = old * self.value if self.relative else old + self.value if self.added else self.value
        return self.parameter.apply(engine, np.clip(new, *self.parameter.plausible))


def with_oil(engine: Engine, grade: str) -> Engine:
    """Return the engine with fresh oil of a grade. Raises ValueError for no such grade."""
    return replace(engine, oil=Oil.of_grade(grade))


def setting(text: str) -> Setting:
    """Parse one ``--set name=value``.

    >>> setting("main_clearance=0.0025 in").value == 0.0025 * 0.0254
    True
    >>> setting("pump_displacement=+25 %").value
    1.25

    Raises UsageError with the nearest name, or the right way to write the value.
    """
    name, equals, typed = (part.strip() for part in text.partition("="))
    id_ = normal_id(name)
    if not equals or not typed:
        raise UsageError(f"--set '{plain(text)}': write name=value, main_clearance=\"0.0025 in\"")
    if id_ == "oil":
        return _oil(typed)
    parameter = NAMES.get(id_)
    if parameter is None:
        known = f" It may be: oil, {', '.join(CIRCUIT_PARAMETERS)}."
        raise UsageError(
            f"--set: no such thing to change, '{plain(name)}'.{nearest(id_, [*NAMES, 'oil']) or known}"
        )
    return value_of(parameter, typed, f"--set {parameter.id}")


def _oil(typed: str) -> Setting:
    try:
        grade_named(typed)
    except ValueError as error:
        raise UsageError(f"--set oil: {error}") from None
    return Setting(parameter=None, text=typed)


def value_of(parameter: CircuitParameter, typed: str, option: str) -> Setting:
    """Parse the value a parameter is set to. Raises UsageError that begins with ``option``."""
    change = typed[0] in "+-"
    try:
        if change and parameter.dimension is not FRACTION and typed.rstrip().endswith("%"):
            factor = 1 + parse(typed, FRACTION)
            if factor <= 0:
                raise UsageError(f"{option}: '{plain(typed)}' leaves nothing of it")
            return Setting(parameter=parameter, text=typed, value=factor, relative=True)
        value = parse(typed, parameter.dimension)
    except UnitError as error:
        raise UsageError(f"{option}: {error}") from None
    low, high = parameter.plausible
    if change:
        return Setting(parameter=parameter, text=typed, value=value, added=True)
    if not low <= value <= high:
        raise UsageError(
            f"{option}: '{plain(typed)}' cannot be; "
            f"expected {parameter.shown(low)} to {parameter.shown(high)}"
        )
    return Setting(parameter=parameter, text=typed, value=value)
