"""What a bearing comes to in a few words, and how many of an engine's bearings are known."""

from __future__ import annotations

from diagnose.bearings.judging import Judged
from diagnose.bearings.table import Bearings
from diagnose.fits.bearing import Kind
from diagnose.output.documents.bearing_words import figure, of_mark


def verdict(one: Judged, found: Bearings, unit: str) -> str:
    """What is wrong with a bearing, or how its clearance compares with what is wanted."""
    new = "fitted: " if one in found.fitted else ""
    target = found.targets[one.place.kind]
    if one.marks:
        return new + ", ".join(dict.fromkeys(of_mark(m, unit) for m in one.marks))
    best = one.clearance
    if best is None:
        choice = found.by_sizes.get(one.place)
        if choice is not None:
            return f"{figure(choice.clearance, unit)} with this order, by its sizes"
        return f"{new}no clearance yet"
    if target is None:
        return f"{new}measured"
    if best.value > target.high:
        return f"{new}wide, within the limit"
    if best.value < target.low:
        return f"{new}tight, within the limit"
    return f"{new}as wanted"


def count_said(found: Bearings) -> str:
    """How many of the engine's bearings were measured, and how many follow from their sizes."""
    measured = [text for kind in Kind if (text := _measured(found, kind))]
    worked = [text for kind in Kind if (text := _by_sizes(found, kind))]
    said = [f"{' and '.join(measured)} measured"] if measured else []
    return "; ".join(said + ([f"{' and '.join(worked)} worked out from sizes"] if worked else []))


def _measured(found: Bearings, kind: Kind) -> str:
    """How many of a kind have a clearance; empty where all are worked out."""
    mine = [j for j in found.shown if j.place.kind is kind and j.clearance is not None]
    together = any(j.place.number == 0 for j in mine)
    known = len(mine) - together
    parts = []
    if known or not (together or _worked(found, kind)):
        parts.append(_of_all(known, found, kind))
    if together:
        parts.append(f"{'the other' if known else 'all'} {kind.plural} as one figure")
    return " and ".join(parts)


def _by_sizes(found: Bearings, kind: Kind) -> str:
    worked = _worked(found, kind)
    return _of_all(worked, found, kind) if worked else ""


def _worked(found: Bearings, kind: Kind) -> int:
    return sum(place.kind is kind for place in found.by_sizes)


def _of_all(known: int, found: Bearings, kind: Kind) -> str:
    every = found.counts[kind]
    word = kind.value if known == 1 and not every else kind.plural
    return f"{known} of {every} {word}" if every else f"{known} {word}"
