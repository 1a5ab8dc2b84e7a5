"""What ``budget`` prints: pressure missing, what explains it, what is left."""

from __future__ import annotations

from typing import Any

from diagnose.bench.band import Band
from diagnose.casefile.case import Case
from diagnose.repair.budget import Account, Budget
from diagnose.repair.deviations import Deviation
from diagnose.report.lines import columns, together, width, wrapped
from diagnose.report.scale import Scale, scale_of
from knowledge.units import TEMPERATURE, show


def budget(drawn: Budget, case: Case) -> str:
    """The whole budget as text."""
    scale = scale_of(case)
    head = wrapped(f"Pressure budget: {case.job.title or 'case without a title'}", 0, 2)
    blocks = [head, *(_account(a, drawn.findings, scale) for a in drawn.accounts)]
    return together([*blocks, _nothing(drawn), _notes(drawn)])


def _account(account: Account, findings: tuple[Deviation, ...], scale: Scale) -> list[str]:
    lines = wrapped(_where(account, scale), 0, 2)
    rows = [("a sound engine of this kind shows", account.healthy)]
    if account.shortfall:
        rows.append(("missing", account.shortfall))
    for label, band in rows:
        lines += _row(label, band, scale, 2)
    if findings:
        lines.append("  of which" if account.shortfall else "  of which is lost to")
        shares = sorted(zip(findings, account.shares, strict=True), key=lambda s: -s[1].middle)
        for found, share in shares:
            lines += _row(_named(found), share, scale, 4)
        lines += _row("explained together", account.explained, scale, 2)
    if account.unexplained:
        lines += _row(*_rest(account, account.unexplained), scale, 2)
        lines += wrapped(_verdict(account, account.unexplained, scale), 2, 4)
    if account.starved > 0.1:
        lines += wrapped(
            f"In {account.starved:.0%} of plausible engines what was found leaves the bearings "
            "no oil at all here.",
            2,
            4,
        )
    return lines


def _where(account: Account, scale: Scale) -> str:
    point = account.point
    heat = show(point.temperature, TEMPERATURE)
    at = f"{point.name.capitalize()}: {point.rpm:.0f} rpm, {heat}"
    if not point.temperature_told:
        at += " (assumed)"
    if point.read is None:
        return f"{at}: no reading; figures of the model alone"
    reading = point.read.reading
    return f"{at}: {reading.gauge} gauge reads {scale.one(reading.pressure)} (entry {point.read.entry.no})"


def _named(found: Deviation) -> str:
    seen = ": not measured, assumed " if found.assumed else " "
    return f"{found.says}{seen}{found.found}"


def _rest(account: Account, rest: Band) -> tuple[str, Band]:
    if rest.middle >= 0:
        return "still missing", rest
    return "explained beyond what is missing", Band(-rest.high, -rest.middle, -rest.low)


def _verdict(account: Account, rest: Band, scale: Scale) -> str:
    if account.overdrawn:
        return (
            "Overdrawn: what was found should cost more than is missing. Bearings not measured "
            "may be better than those that were, or a figure is off."
        )
    if account.closed:
        return "Closed: what was found explains what is missing."
    if account.closed is None:
        return (
            f"May not be closed: {scale.one(rest.middle)} more would fit, "
            "and so would nothing more."
        )
    return f"Not closed: something not found yet still loses about {scale.one(rest.middle)}."


def _row(label: str, band: Band, scale: Scale, indent: int) -> list[str]:
    value = scale.range(band)
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
