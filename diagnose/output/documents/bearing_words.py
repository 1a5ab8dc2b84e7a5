"""Words for bearings, shells and lengths."""

from __future__ import annotations

from collections.abc import Iterable

from diagnose.bearings.judging import SURE, Flag, Judged, Mark
from diagnose.bearings.table import Bearings
from diagnose.case.bearing_values import unit_of
from diagnose.case.bearings import shown
from diagnose.case.units import units_of as job_units
from diagnose.fits.bearing import Kind, Place
from diagnose.fits.shells import TOLERANCE, Pair
from diagnose.output.lines import percent
from knowledge.units import INCH, LENGTH, MM, unit_named

SIGMAS = 2.0  #: of an error that is shown: covers about nineteen in twenty

SHORT = {
    Flag.IMPOSSIBLE: "impossible, read again",
    Flag.SLIP: "{value} beside {limit}, read again",
    Flag.NO_ROOM: "no room: is new_shell a standard wall?",
    Flag.BELOW_LAST: "below the last undersize",
    Flag.GRIND: "grind",
    Flag.OVER: "over {limit}",
    Flag.TIGHT: "under {limit}",
    Flag.BORE_SIZE: "bore {value}, new {limit}",
    Flag.BORE_OVAL: "bore oval {value}",
    Flag.BORE_TAPER: "bore tapered {value}",
    Flag.BELL_MOUTH: "bore bell-mouthed {value}",
    Flag.AT_LIMIT: "{side} the {bound} {limit}, by no more than the measuring error",
    Flag.FAMILY: "out of family, middle {limit}",
    Flag.DISAGREE: "another way {limit}",
    Flag.JOURNAL_OVAL: "oval",
    Flag.JOURNAL_TAPER: "tapered",
    Flag.CRUSH: "crush {value}, at {end} {limit}",
    Flag.SPREAD: "spread {value}, at {end} {limit}",
}
#: what the value of a flag is compared with, for the long form
AGAINST = {
    Flag.IMPOSSIBLE: "clearance {value} cannot be: a reading or a unit is wrong",
    Flag.SLIP: "{value} beside {limit} cannot be: a digit or a unit is wrong",
    Flag.NO_ROOM: (
        "the figures do not go together: new shells would leave {value}; new_shell is the wall of a "
        "standard shell, undersize what the journal was ground by"
    ),
    Flag.GRIND: "the journal must be ground",
    Flag.JOURNAL_OVAL: "journal out of round {value}, at most {limit}",
    Flag.JOURNAL_TAPER: "journal tapered {value}, at most {limit}",
    Flag.BORE_SIZE: "bore {value}, out of its size when new ({limit} at that end)",
    Flag.BORE_OVAL: "bore out of round {value}, at most {limit}",
    Flag.BORE_TAPER: "bore tapered {value}, at most {limit}",
    Flag.BELL_MOUTH: "bore differs {value} between its ends and its middle, at most {limit}",
    Flag.CRUSH: "crush {value}, should be at {end} {limit}",
    Flag.SPREAD: "spread {value}, should be at {end} {limit}",
    Flag.OVER: "clearance {value}, over the limit of {limit}",
    Flag.TIGHT: "clearance {value}, under the least of {limit}",
    Flag.AT_LIMIT: "clearance {value}, {side} the {bound} of {limit}: too {wrong}",
    Flag.FAMILY: "clearance {value}, the middle of its kind is {limit}",
    Flag.DISAGREE: "clearance {value} by one way and {limit} by another",
}


def figure(value: float, unit: str, finer: int = 0) -> str:
    """A length without its unit, as ``shown`` has it."""
    return shown(value, unit, finer).split()[0]


def of_mark(mark: Mark, unit: str, *, long: bool = False) -> str:
    """What a mark says, its figures in a unit."""
    words = {
        "side": _side(mark),
        "bound": "least" if mark.least else "limit",
        "wrong": "tight" if mark.least else "wide",
        "end": "least" if mark.least else "most",
    }
    if long:
        text = AGAINST.get(mark.flag, SHORT[mark.flag])
        said = text.format(value=shown(mark.value, unit), limit=shown(mark.limit, unit), **words)
        return said if mark.sure >= SURE else f"{said} ({percent(mark.sure)} likely)"
    value, limit = figure(mark.value, unit), figure(mark.limit, unit)
    return SHORT[mark.flag].format(value=value, limit=limit, **words)


def _side(mark: Mark) -> str:
    """On which side of its limit a value is that is too near to it to be sure.

    It is beyond the limit where that is the likelier.
    """
    if abs(mark.value - mark.limit) <= TOLERANCE:
        return "on"
    return "over" if mark.value > mark.limit else "under"


def units_of(one: Judged, bearings: Bearings) -> tuple[str, str]:
    """The units of one bearing's sizes and clearances: its own, else those of the others.

    Of inches and thousandths the one that most were typed in holds for all, so that a table has one.
    """
    every = [j.measured for j in (one, *bearings.found, *bearings.fitted)]
    size = next((m.unit for m in every if m.unit), "")
    typed = [m.fine_unit for m in every[1:] if m.fine_unit]
    fine = one.measured.fine_unit or next(iter(typed), "")
    if fine and not is_metric(fine):
        fine = max((u for u in typed if not is_metric(u)), key=typed.count, default=fine)
    return size or (fine if is_metric(fine) else "in"), fine or size or "in"


def units_for(kind: Kind | None, bearings: Bearings) -> tuple[str, str]:
    """The units most fitting for the bearings of a kind: those of the first measured."""
    every = (*bearings.fitted, *bearings.found)
    one = next((j for j in every if kind is None or j.place.kind is kind), None)
    one = one or next(iter(every), None)
    if one is None:
        texts = [t for g in bearings.case.bearings.groups.values() for t in g.texts.values()]
        typed = next(filter(None, map(unit_of, texts)), None)
        job = typed or job_units(bearings.case).shown_in(LENGTH) or "in"
        return ("mm", "mm") if is_metric(job) else ("in", "in")
    return units_of(one, bearings)


def is_metric(unit: str) -> bool:
    """Whether a unit is a millimetre."""
    named = unit_named(unit, LENGTH) if unit else None
    return named is not None and named.factor == MM


def named_places(places: Iterable[Place]) -> str:
    """Bearings in few words.

    >>> named_places([Place(Kind.MAIN, 1), Place(Kind.MAIN, 2), Place(Kind.MAIN, 3), Place(Kind.ROD, 5)])
    'mains 1-3, rod 5'
    >>> named_places([Place(Kind.ROD, 0)]), named_places([Place(Kind.ROD, 0), Place(Kind.ROD, 2)])
    ('rods', 'rods')
    """
    parts = []
    every = list(places)
    for kind in Kind:
        numbers = sorted({p.number for p in every if p.kind is kind})
        if 0 in numbers:
            parts.append(kind.plural)
        elif numbers:
            word = kind.value if len(numbers) == 1 else kind.plural
            parts.append(f"{word} {_runs(numbers)}")
    return ", ".join(parts)


def _runs(numbers: list[int]) -> str:
    runs: list[list[int]] = []
    for n in numbers:
        if runs and n == runs[-1][-1] + 1:
            runs[-1].append(n)
        else:
            runs.append([n])
    return ", ".join(
        str(r[0]) if len(r) == 1 else f"{r[0]}-{r[-1]}" if len(r) > 2 else f"{r[0]}, {r[1]}"
        for r in runs
    )


def shell(undersize: float, unit: str) -> str:
    """One shell by its size.

    >>> shell(0.010 * INCH, "in"), shell(0.0, "in"), shell(-0.001 * INCH, "in")
    ('0.010 in undersize', 'standard', '0.001 in thinner than standard')
    """
    if abs(undersize) <= TOLERANCE:
        return "standard"
    factor, name = (MM, "mm") if is_metric(unit) else (INCH, "in")
    text = f"{abs(undersize) / factor:.4f}".rstrip("0")
    least = 2 if name == "mm" else 3
    whole, _, part = text.partition(".")
    size = f"{whole}.{part.ljust(least, '0')} {name}"
    return f"{size} undersize" if undersize > 0 else f"{size} thinner than standard"


def shells(pair: Pair, kind: Kind, unit: str, brief: bool = False) -> str:
    """Both shells of a bearing, and where the thicker one goes."""
    if not pair.mixed:
        return shell(pair.thin, unit)
    place = "on top, in the rod" if kind is Kind.ROD else "below, in the cap"
    thick, thin = shell(pair.thick, unit), shell(pair.thin, unit)
    if brief:
        return f"half {thin}, half {thick} {place.split(',')[0]}"
    return f"one half {thin}, the other {thick} ({place})"
