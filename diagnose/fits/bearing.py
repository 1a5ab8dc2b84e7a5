"""Readings of one bearing as numbers: clearance with its error, out of round, taper, bell mouth.

Metres in, metres out, clearances on the diameter; knows neither case nor unit.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from statistics import fmean

from knowledge.stations.bearings import sizes

#: readings of a diameter: places along the part, front first; at each, one or two angles.
#: The first angle is in line with the load (a rod's length; square to the joint).
Grid = tuple[tuple[float, ...], ...]


class Kind(StrEnum):
    """Which bearings of a crank."""

    MAIN = "main"
    ROD = "rod"

    @property
    def plural(self) -> str:
        """All of them, as a person types it."""
        return f"{self.value}s"


@dataclass(frozen=True, slots=True, order=True)
class Place:
    """One bearing of an engine, counted from the front; number 0: those not named one by one."""

    kind: Kind
    number: int

    @property
    def says(self) -> str:
        """Its name.

        >>> Place(Kind.MAIN, 3).says, Place(Kind.ROD, 0).says
        ('main 3', 'rods')
        """
        return f"{self.kind.value} {self.number}" if self.number else self.kind.plural

    def covers(self, other: Place) -> bool:
        """Whether what is said of this is said of the other: it is that one, or all of its kind.

        >>> Place(Kind.ROD, 0).covers(Place(Kind.ROD, 2)), Place(Kind.ROD, 1).covers(Place(Kind.ROD, 2))
        (True, False)
        """
        return self == other or (self.kind is other.kind and not self.number)


@dataclass(frozen=True, slots=True)
class Readings:
    """What was measured of one bearing [m]; empty: not measured."""

    bore: Grid = ()  #: housing without shells, cap at torque
    inside: Grid = ()  #: bearing with its shells, cap at torque
    journal: Grid = ()
    shell: tuple[float, ...] = ()  #: wall of upper and lower shell, or one figure for both
    strip: tuple[float, ...] = ()  #: clearance by gauge strip
    crush: tuple[float, ...] = ()  #: how far a shell stands proud of the joint
    spread: tuple[float, ...] = ()  #: how much wider than its bore a loose shell is
    undersize: float = 0.0  #: of the shells measured


class Way(StrEnum):
    """How a clearance was measured."""

    INSIDE = "bore gauge in the shells"
    PARTS = "bore, shells and journal"
    STRIP = "gauge strip"


@dataclass(frozen=True, slots=True)
class Step:
    """One line of the arithmetic: a figure [m], its sign in the sum, and where it is from."""

    says: str
    value: float
    sign: int = 1


@dataclass(frozen=True, slots=True)
class Clearance:
    """A clearance [m] with its error (one standard deviation) and how it came about."""

    value: float
    error: float
    way: Way
    least: float  #: of the places along the bearing
    most: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Form:
    """The shape of a bore or journal [m]; None: not enough readings."""

    mean: float
    least: float
    most: float
    oval: float | None  #: largest difference of two angles at one place
    taper: float | None  #: largest difference of the two ends at one angle
    waist: float | None  #: ends above the middle: a bell-mouthed bore, a journal worn in the middle


def form_of(grid: Grid) -> Form | None:
    """Return the shape of a part from its readings; None without any.

    >>> form = form_of(((50.00e-3, 50.01e-3), (50.02e-3, 50.02e-3)))
    >>> round(form.oval * 1e3, 3), round(form.taper * 1e3, 3), form.waist
    (0.01, 0.02, None)
    """
    every = [v for place in grid for v in place]
    if not every:
        return None
    twice = [max(place) - min(place) for place in grid if len(place) > 1]
    taper = waist = None
    if len(grid) > 1:
        ends = list(zip(grid[0], grid[-1], strict=False))
        taper = max(abs(front - rear) for front, rear in ends)
        if len(grid) > 2:
            middle = grid[len(grid) // 2]
            bends = [(f + r) / 2 - m for (f, r), m in zip(ends, middle, strict=False)]
            waist = max(bends, key=abs)
    return Form(fmean(every), min(every), max(every), max(twice, default=None), taper, waist)


def slip_in(r: Readings) -> tuple[float, float] | None:
    """Return two readings [m] that cannot both be right: a wrong digit or unit; None without.

    Readings of one diameter lie close together, and a housing is wider than its journal.

    >>> slip_in(Readings(journal=((50.01e-3,), (50.00e-3,)))) is None
    True
    >>> slip_in(Readings(journal=((50.01e-3,), (55.00e-3,))))
    (0.055, 0.05001)
    """
    forms = [form for form in map(form_of, (r.bore, r.inside, r.journal)) if form is not None]
    for form in forms:
        if form.most - form.least > sizes.MOST_APART:
            return form.most, form.least
    bore, journal = form_of(r.bore), form_of(r.journal)
    if bore is not None and journal is not None and bore.mean <= journal.mean:
        return bore.mean, journal.mean
    return None


def clearances(r: Readings) -> tuple[Clearance, ...]:
    """Return the clearance by each way that was measured, the most exact first.

    The bore counts in line with the load, the journal as the mean of its readings. Diameters with
    a slip in them give none.
    """
    by_size = (_inside(r), _parts(r)) if slip_in(r) is None else ()
    found = [c for c in (*by_size, _strip(r)) if c is not None]
    return tuple(sorted(found, key=lambda c: c.error))


def _inside(r: Readings) -> Clearance | None:
    if not r.inside or not r.journal:
        return None
    return _difference(r.inside, (), r.journal, Way.INSIDE)


def _parts(r: Readings) -> Clearance | None:
    if not r.bore or not r.shell or not r.journal:
        return None
    upper, lower = r.shell[0], r.shell[-1]
    shells = (Step("upper shell", upper, -1), Step("lower shell", lower, -1))
    return _difference(r.bore, shells, r.journal, Way.PARTS, len(r.shell) == 1)


def _difference(
    hole: Grid, shells: tuple[Step, ...], journal: Grid, way: Way, alike: bool = False
) -> Clearance:
    """Return hole minus shells minus journal; ``alike``: one wall stands for both shells."""
    walls = sum(s.value for s in shells)
    across = fmean(place[0] for place in hole)
    size = fmean(v for place in journal for v in place)
    value = across - walls - size
    each = [value]
    if len(hole) == len(journal):
        each = [h[0] - walls - fmean(j) for h, j in zip(hole, journal, strict=True)]
    name = "inside the shells" if way is Way.INSIDE else "housing bore"
    steps = (Step(name, across), *shells, Step("journal", size, -1))
    error = error_of(len(shells), alike)
    return Clearance(value, error, way, min(each), max(each), steps)


def error_of(shells: int, alike: bool = False) -> float:
    """Return the error of bore less shells less journal, one standard deviation [m].

    ``alike``: one wall was measured for both; what is used twice errs the same way twice.

    >>> [round(error_of(n, alike) * 1e3, 4) for n, alike in ((0, False), (2, False), (2, True))]
    [0.0057, 0.0067, 0.0076]
    """
    walls = shells * (2 if alike else 1) * sizes.SHELL_ERROR**2
    return float((sizes.BORE_ERROR**2 + walls + sizes.JOURNAL_ERROR**2) ** 0.5)


def _strip(r: Readings) -> Clearance | None:
    if not r.strip:
        return None
    value = fmean(r.strip)
    steps = (Step("gauge strip", value),)
    return Clearance(value, sizes.STRIP_ERROR, Way.STRIP, min(r.strip), max(r.strip), steps)


def mean_leak(values: Sequence[float]) -> float:
    """Return the clearance that leaks as much as several do together [m]: flow goes as its cube.

    >>> round(mean_leak([0.05e-3, 0.05e-3]) * 1e3, 3)
    0.05
    """
    return float(fmean(v**3 for v in values) ** (1 / 3))
