"""Published values as test cases: reads data/published_checks.toml, turns every quantity to SI.

A test file holds a table from entry id (or a pattern of ids) to the product's formula:

    FORMULAS = {"esposito-8-4-orifice": lambda c: orifice_flow(c["dp"], ...)}

    @pytest.mark.parametrize(("check", "formula"), cases(FORMULAS))
    def test_reproduces(check, formula):
        assert_meets(check, formula(check))

Known bad print (ERRATUM) is never asserted; an entry that an own calculation failed to meet is
expected to fail, and says why; what rests on memory or shop practice says so in the test's name.
"""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from fnmatch import fnmatchcase
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import pytest

PATH = Path(__file__).parents[1] / "data" / "published_checks.toml"

INCH, LBF, GALLON = 0.0254, 4.4482216152605, 3.785411784e-3
PSI = LBF / INCH**2
#: unit: (factor, offset), SI = factor * value + offset
UNITS = {
    "1": (1.0, 0.0),
    "S": (1.0, 0.0),
    "Qs/(r c N l)": (1.0, 0.0),
    "Q/(rcNl)": (1.0, 0.0),
    "h0/c": (1.0, 0.0),
    "percent": (0.01, 0.0),
    "SUS": (1.0, 0.0),  # a scale, not a unit: left as printed
    "m": (1.0, 0.0),
    "mm": (1e-3, 0.0),
    "um": (1e-6, 0.0),
    "in": (INCH, 0.0),
    "in2": (INCH**2, 0.0),
    "K": (1.0, 0.0),
    "degC": (1.0, 273.15),
    "degF": (5 / 9, 273.15 - 32 * 5 / 9),
    "Pa.s": (1.0, 0.0),
    "mPa.s": (1e-3, 0.0),
    "cP": (1e-3, 0.0),
    "microreyn": (1e-6 * PSI, 0.0),
    "lbf.s/ft2": (LBF / 0.3048**2, 0.0),
    "m2/s": (1.0, 0.0),
    "mm2/s": (1e-6, 0.0),
    "mm2/s (upper bound)": (1e-6, 0.0),
    "kg/m3": (1.0, 0.0),
    "J/(kg.K)": (1.0, 0.0),
    "1/K": (1.0, 0.0),
    "kPa": (1e3, 0.0),
    "MPa": (1e6, 0.0),
    "psi": (PSI, 0.0),
    "Pa/m": (1.0, 0.0),
    "kN": (1e3, 0.0),
    "lbf": (LBF, 0.0),
    "lbf/in": (LBF / INCH, 0.0),
    "lbf.in": (LBF * INCH, 0.0),
    "lbf.ft": (LBF * 0.3048, 0.0),
    "m/s": (1.0, 0.0),
    "rev/s": (1.0, 0.0),
    "rev/min": (1 / 60, 0.0),
    "m3/s": (1.0, 0.0),
    "mm3/s": (1e-9, 0.0),
    "cm3": (1e-6, 0.0),
    "cm3/rev": (1e-6, 0.0),
    "cm3/min": (1e-6 / 60, 0.0),
    "in3/s": (INCH**3, 0.0),
    "in3/h": (INCH**3 / 3600, 0.0),
    "in3/rev": (INCH**3, 0.0),
    "L/min": (1e-3 / 60, 0.0),
    "L/min per side": (1e-3 / 60, 0.0),
    "L/min/kPa": (1e-6 / 60, 0.0),
    "gal/min": (GALLON / 60, 0.0),
    "W": (1.0, 0.0),
    "hp": (550 * LBF * 0.3048, 0.0),
    "Btu/s": (1055.05585262, 0.0),
}


@dataclass(frozen=True)
class Check:
    """One published value with its inputs, in SI where they carry a unit; speeds in rev/s."""

    id: str
    group: str
    quantity: str
    inputs: Mapping[str, Any]
    expected: Any
    absolute: float | None
    relative: float | None
    source: str
    provenance: str
    formula: bool
    reproduced: bool
    note: str

    def __getitem__(self, name: str) -> Any:
        """An input [SI]; what the entry only says in words is a KeyError."""
        return self.inputs[name]

    @property
    def erratum(self) -> bool:
        """Known bad print, never to be asserted."""
        return self.id.endswith("ERRATUM")

    @property
    def title(self) -> str:
        """The id, and what it rests on where that is no published page."""
        return self.id if self.provenance == "published" else f"{self.id}, {self.provenance}"


@cache
def checks() -> tuple[Check, ...]:
    """Every entry of the file."""
    return tuple(_read(entry) for entry in tomllib.loads(PATH.read_text("utf-8"))["check"])


def check(id_: str) -> Check:
    """The entry of that id."""
    return next(c for c in checks() if c.id == id_)


def matching(*patterns: str) -> tuple[Check, ...]:
    """The entries whose id meets one of the patterns."""
    return tuple(c for c in checks() if _meets(c, patterns))


def in_group(*groups: str) -> tuple[Check, ...]:
    """The entries of these groups."""
    return tuple(c for c in checks() if c.group in groups)


def cases(formulas: Mapping[str, Callable[[Check], Any]]) -> list[Any]:
    """Test cases (check, formula) for every formula entry a pattern of ``formulas`` meets.

    Raises LookupError for a pattern without an entry, and for an entry met twice.
    """
    found: dict[str, Any] = {}
    for pattern, formula in formulas.items():
        entries = [c for c in matching(pattern) if c.formula and not c.erratum]
        if not entries:
            raise LookupError(f"no published formula entry meets {pattern}")
        for entry in entries:
            if entry.id in found:
                raise LookupError(f"{entry.id} is met by two patterns, one of them {pattern}")
            found[entry.id] = pytest.param(entry, formula, id=entry.title, marks=_marks(entry))
    return list(found.values())


def unclaimed(patterns: Iterable[str]) -> list[str]:
    """Formula entries, but for known bad print, that no pattern meets."""
    wanted = tuple(patterns)
    return [c.id for c in checks() if c.formula and not c.erratum and not _meets(c, wanted)]


def assert_meets(entry: Check, value: Any) -> None:
    """``value`` [SI] lies within the entry's own tolerance of what was printed."""
    assert not entry.erratum, f"{entry.id} is bad print"
    if entry.relative is not None:
        wanted = pytest.approx(entry.expected, rel=entry.relative, abs=0.0)
    else:
        wanted = pytest.approx(entry.expected, rel=0.0, abs=entry.absolute)
    assert np.asarray(value).item() == wanted, f"{entry.quantity} ({entry.source})"


def _meets(entry: Check, patterns: Iterable[str]) -> bool:
    return any(fnmatchcase(entry.id, p) for p in patterns)


def _marks(entry: Check) -> tuple[Any, ...]:
    return () if entry.reproduced else (pytest.mark.xfail(strict=True, reason=entry.note),)


def _read(entry: dict[str, Any]) -> Check:
    expected, absolute = entry["expected"], entry["tolerance"].get("abs")
    rise = " rise" in entry["quantity"]  # a difference of temperatures is scaled, not shifted
    if absolute is not None and isinstance(expected, dict) and "unit" in expected:
        absolute *= UNITS[expected["unit"]][0]
    return Check(
        id=entry["id"],
        group=entry["group"],
        quantity=entry["quantity"],
        inputs={k: _si(v) for k, v in entry["inputs"].items()},
        expected=_si(expected, rise=rise),
        absolute=absolute,
        relative=entry["tolerance"].get("rel"),
        source=entry["source"],
        provenance=entry["provenance"],
        formula=entry["formula"],
        reproduced=entry.get("reproduced", True),
        note=entry.get("note", ""),
    )


def _si(value: Any, *, rise: bool = False) -> Any:
    """A quantity in SI; words and plain numbers as they stand, ``inf`` as a number."""
    if isinstance(value, str) and value == "inf":
        return np.inf
    if isinstance(value, dict) and "unit" in value:
        factor, offset = UNITS[value["unit"]]
        return factor * value["value"] + (0.0 if rise else offset)
    return value
