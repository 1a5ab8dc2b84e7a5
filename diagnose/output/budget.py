"""What ``budget`` prints: pressure missing, what explains it, what is left."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from diagnose.case.case import Case
from diagnose.circuit.band import Band
from diagnose.circuit.budget import Account, Budget
from diagnose.circuit.deviations import Deviation
from diagnose.output.lines import columns, together, width, wrapped
from diagnose.output.scale import Scale, scale_of
from knowledge.units import TEMPERATURE, show


def budget(drawn: Budget, case: Case) -> str:
    """The whole budget as text."""
    scale = scale_of(case)
    head = wrapped(f"Pressure budget: {case.job.title or 'case without a title'}", 0, 2)
    blocks = [head, *(_account(a, drawn.findings, scale) for a in drawn.accounts)]
    return together([*blocks, _nothing(drawn), _notes(drawn)])


def _account(account: Account, findings: tuple[Deviation, ...], scale: Scale) -> list[str]:
    lines = wrapped(where(account, scale), 0, 2)
    healthy, *others = rows(account, findings, scale)
    lines += _row(*healthy, 2)
    for i, (label, figure) in enumerate(others):
        share = i - bool(account.shortfall)
        if share == 0 and findings:
            lines.append("  of which" if account.shortfall else "  of which is lost to")
        lines += _row(label, figure, 4 if 0 <= share < len(findings) else 2)
    if account.unexplained:
        lines += wrapped(verdict_of(account, scale), 2, 4)
    if account.starved > 0.1:
        lines += wrapped(
            f"In {100 * account.starved:.0f} % of plausible engines what was found leaves the "
            "bearings no oil at all here.",
            2,
            4,
        )
    return lines


def rows(
    account: Account, findings: tuple[Deviation, ...], scale: Scale
) -> Iterator[tuple[str, str]]:
    """Every line of an account with its figure: sound, missing, each share, together, the rest."""
    yield "a sound engine of this kind shows", scale.range(account.healthy)
    if account.shortfall:
        yield "missing", scale.range(account.shortfall)
    if findings:
        shares = sorted(zip(findings, account.shares, strict=True), key=lambda s: -s[1].middle)
        for found, share in shares:
            yield named(found), scale.range(share)
        yield "explained together", scale.range(account.explained)
    if account.unexplained:
        says, band = rest(account, account.unexplained)
        yield says, scale.range(band)


def where(account: Account, scale: Scale) -> str:
    """The state of running, and what was read there."""
    point = account.point
    heat = show(point.temperature, TEMPERATURE)
    at = f"{point.name.capitalize()}: {point.rpm:.0f} rpm, {heat}"
    if not point.temperature_told:
        at += " (assumed)"
    if point.read is None:
        return f"{at}: no reading; figures of the model alone"
    reading = point.read.reading
    return f"{at}: {reading.gauge} gauge reads {scale.one(reading.pressure)} (entry {point.read.entry.no})"


def named(found: Deviation) -> str:
    """A finding with its figure."""
    seen = ": not measured, assumed " if found.assumed else " "
    return f"{found.says}{seen}{found.found}"


def rest(account: Account, left: Band) -> tuple[str, Band]:
    """What is left in words, as a positive figure."""
    if left.middle >= 0:
        return "still missing", left
    return "explained beyond what is missing", Band(-left.high, -left.middle, -left.low)


def verdict_of(account: Account, scale: Scale) -> str:
    """Whether the account closes, in a sentence; empty where nothing was read."""
    left = account.unexplained
    if left is None:
        return ""
    if account.overdrawn:
        return (
            "Overdrawn: what was found should cost more than is missing. Bearings not measured "
            "may be better than those that were, or a figure is off."
        )
    if account.closed:
        return "Closed: what was found explains what is missing."
    if account.closed is None:
        return (
            f"May not be closed: {scale.one(left.middle)} more would fit, "
            "and so would nothing more."
        )
    return f"Not closed: something not found yet still loses about {scale.one(left.middle)}."


def _row(label: str, value: str, indent: int) -> list[str]:
    room = width() - 24
    lines = wrapped(label, indent, indent + 2)
    last = lines[-1]
    if columns(last) >= room:
        return [*lines, " " * room + value]
    lines[-1] = last + " " * (room - columns(last)) + value
    return lines


def _nothing(drawn: Budget) -> list[str]:
    if drawn.findings:
        return []
    return wrapped(
        "Nothing measured in this case bears on the circuit. Measured clearances (main, rod, cam, "
        "pump), pickup gap, fuel or viscosity by the laboratory would."
    )


def _notes(drawn: Budget) -> list[str]:
    way = "over every order of putting them right"
    if not drawn.exact:
        way = "over many random orders of putting them right (too many findings for all)"
    lines = wrapped(
        f"Each share is the mean gain {way} (Shapley), so it does not depend on which was found "
        "first, and the shares add up. Means; in brackets what nine plausible engines in ten keep "
        "to. The model is good for trends; single figures may be off by some 40 % unless the case "
        "has a [[baseline]]. Bearings not measured are taken to be like those that were.",
    )
    if drawn.unused:
        lines += wrapped(f"Not used, the circuit knows no such figure: {', '.join(drawn.unused)}.")
    return lines


def still_missing(drawn: Budget, case: Case) -> str:
    """One line for the review: how much of the missing pressure nothing found explains."""
    rest = drawn.unexplained
    if rest is None:
        return ""
    account, missing, short = rest
    where, scale = account.point.name, scale_of(case)
    if account.closed:
        return f"What was found explains the pressure missing at {where}."
    sure = "not closed" if account.closed is False else "may not be closed"
    return (
        f"What was found explains {scale.figure(account.explained.middle)} of "
        f"{scale.one(short.middle)} missing at {where}; "
        f"{scale.one(missing.middle)} still missing: {sure}."
    )


def data(drawn: Budget, case: Case) -> dict[str, Any]:
    """Everything ``budget`` shows, in pascals."""
    return {
        "case": str(case.path) if case.path else None,
        "unit": "Pa",
        "exact": drawn.exact,
        "accounts": [
            {
                "at": a.point.name,
                "rpm": a.point.rpm,
                "oil": a.point.temperature,
                "reading": a.point.read.entry.no if a.point.read else None,
                "healthy": banded(a.healthy),
                "missing": banded(a.shortfall),
                "shares": [
                    {
                        "finding": d.id,
                        "says": d.says,
                        "found": d.found,
                        "assumed": d.assumed,
                        "share": banded(s),
                    }
                    for d, s in zip(drawn.findings, a.shares, strict=True)
                ],
                "explained": banded(a.explained),
                "unexplained": banded(a.unexplained),
                "closed": a.closed,
                "overdrawn": a.overdrawn,
                "starved": a.starved,
            }
            for a in drawn.accounts
        ],
        "unused": list(drawn.unused),
    }


def banded(band: Band | None) -> dict[str, float] | None:
    """A band as data."""
    return None if band is None else {"low": band.low, "mean": band.middle, "high": band.high}
