"""What to do next with the bearings, in words and commands."""

from __future__ import annotations

from diagnose.bearings.judging import Flag
from diagnose.bearings.table import Bearings, Step
from diagnose.bearings.targets import standard_journal
from diagnose.fits.bearing import Place
from diagnose.output.documents.bearing_words import is_metric, named_places, units_for
from diagnose.output.lines import as_typed
from knowledge.units import INCH, MM, THOU

#: how many bearings there are, as one may type it; of a parallel twin, as an example
EXAMPLE_METRIC, EXAMPLE_INCH = 62.18 * MM, 2.4483 * INCH  #: m: a main journal as one reads it
NUMBERS = '"mains count 3" "rods count 2"'


SLIPPED = {Flag.IMPOSSIBLE, Flag.SLIP}  #: a reading that cannot be
UNSURE = {Flag.AT_LIMIT, Flag.DISAGREE}  #: marks that another reading may lift


def next_lines(found: Bearings, path: str) -> tuple[str, ...]:
    """The next thing to do: a sentence, and the command to type where there is one."""
    case = as_typed(path)
    places = found.next_places
    which = named_places(places)
    first = places[0] if places else None
    size, fine = units_for(None, found)
    typed, as_fitted = (_typed(case, _example(first, fine), f) for f in ("", "--fitted "))
    match found.next_step:
        case Step.MEASURE if not places:
            return (
                "say how many main and rod bearings it has",
                f"diagnose bearings {case} {NUMBERS}",
            )
        case Step.MEASURE:
            sheet = f"diagnose bearings {case} --html sheet.html"
            return "print the sheet and measure, all dry and clean, caps at torque", sheet, typed
        case Step.CAPS:
            says = "put every cap back in its own place, its right way round; check its bore; then "
            return f"{says}measure {which} again", typed
        case Step.LINE:
            says = f"have the bores of {which} brought into line, then measure again"
            return f"{says}: no shell cures it", typed
        case Step.SHELL_BACKS:
            stamped = "0.25 mm" if is_metric(fine) else "0.010 in"
            sizes = dict.fromkeys(f'"{p.kind.plural} undersize {stamped}"' for p in places)
            says = f"read the size on the shell backs of {which} (0: standard)"
            return says, f"diagnose bearings {case} {' '.join(sizes)}"
        case Step.CHECK:
            return f"read {which} again: the readings do not fit", typed
        case Step.MISSING:
            return f"measure {which}", typed
        case Step.JOURNAL:
            says = f"micrometer on {which}: is it the shell or the journal?"
            return says, _typed(case, _journal(first, size, found))
        case Step.MICROMETER:
            says = f"settle {which} with micrometer and bore gauge"
            return says, _typed(case, _sizes(first, size, found))
        case Step.STANDARD:
            kind = first.kind.plural if first else "mains"
            figures = "62.18 62.20 mm" if is_metric(size) else "2.4479 2.4488 in"
            says = f"look up the {kind} journal when new: the grinder needs it"
            return says, _typed(case, f"{kind} new_journal {figures}")
        case Step.CRANK:
            return (f"{which}: below the last undersize; another crank, or build it up",)
        case Step.BORES:
            return (f"have the bore of {which} checked and resized: no shell cures it",)
        case Step.GRIND:
            return f"crank to the grinder ({which}); then measure as fitted", as_fitted
        case Step.SHELLS:
            return "order, fit dry at full torque, measure as fitted", as_fitted
        case Step.FITTED:
            return f"measure {which} with the new shells in", as_fitted
        case Step.REFIT:
            flags = {m.flag for j in found.fitted if j.place in places for m in j.marks}
            how = "measure again" if flags & SLIPPED or flags <= UNSURE else "other shells"
            return f"{which} as fitted: {how}", as_fitted
        case Step.SOUND:
            return _all_sound(found, case)
        case Step.SIGN_OFF:
            return "every bearing as fitted is in limits: go on", f"diagnose signoff {case}"


def _all_sound(found: Bearings, case: str) -> tuple[str, ...]:
    """What to do where no shells are to order: look elsewhere, or say the limits first."""
    if all(found.targets[j.place.kind] is None for j in found.found):
        says = (
            "no clearance of this engine's maker is known, and none is borrowed: enter yours "
            "under [engine.limits] or on a card"
        )
        return says, f"diagnose review {case}"
    says = "no shells to order: every bearing is in limits, the loss is elsewhere"
    return says, f"diagnose review {case}"


def _typed(case: str, readings: str, option: str = "") -> str:
    """The command that records readings; ``option`` with a space behind it."""
    return f'diagnose bearings {case} {option}"{readings}"'


def _example(place: Place | None, unit: str) -> str:
    """A clearance as one may type it."""
    gap = "0.055 mm" if is_metric(unit) else "2.2 thou"
    return f"{_first_name(place)} strip {gap}"


def _first_name(place: Place | None) -> str:
    """One bearing by its name: of those that are named together, the first.

    >>> from diagnose.fits.bearing import Kind
    >>> _first_name(None), _first_name(Place(Kind.ROD, 0)), _first_name(Place(Kind.ROD, 3))
    ('main 1', 'rod 1', 'rod 3')
    """
    if place is None:
        return "main 1"
    return place.says if place.number else f"{place.kind.value} 1"


def _sizes(place: Place | None, unit: str, found: Bearings) -> str:
    """Journal and bore as one may type them."""
    new, gap = _new_journal(place, unit, found), 0.05 * MM if is_metric(unit) else 2.2 * THOU
    inside, journal = (_in(unit, v) for v in (new + gap, new))
    return f"{_first_name(place)} inside {inside} {unit} journal {journal} {unit}"


def _journal(place: Place | None, unit: str, found: Bearings) -> str:
    """Readings of a journal as one may type them."""
    new, step = _new_journal(place, unit, found), 0.01 * MM if is_metric(unit) else 0.1 * THOU
    figures = " ".join(_in(unit, v) for v in (new, new - step, new, new - step))
    return f"{_first_name(place)} journal {figures} {unit}"


def _new_journal(place: Place | None, unit: str, found: Bearings) -> float:
    """A journal's diameter [m], as an example: this engine's when new, else any."""
    standard = standard_journal(found.case, place.kind) if place else None
    any_size = EXAMPLE_METRIC if is_metric(unit) else EXAMPLE_INCH
    return standard[0] if standard else any_size


def _in(unit: str, value: float) -> str:
    """A diameter in a unit, without it."""
    return f"{value / MM:.2f}" if is_metric(unit) else f"{value / INCH:.4f}"
