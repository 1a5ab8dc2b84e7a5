"""The document of ``budget``: pressure missing, what explains it, what is left."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace

from diagnose.case.case import Case
from diagnose.circuit.band import Band
from diagnose.circuit.budget import NEGLIGIBLE, Account, Budget
from diagnose.circuit.deviations import Deviation
from diagnose.circuit.operating_points import is_hot, latest_readings
from diagnose.circuit.worth_reading import engines_as_read, further_for_missing
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.job_end import ended
from diagnose.output.documents.other_size import other_size
from diagnose.output.documents.worth_reading import (
    NONE_WORTH_IT,
    FurtherReading,
    further_reading,
)
from diagnose.output.scale import Scale, scale_of
from knowledge.pressure.gauge import HOT, IDLE_SLACK
from knowledge.stations.suction.quantities import SCREEN_OPEN_SHARE

MOST_OF_IT = 0.7  #: share of what is explained from which one finding is named


@dataclass(frozen=True, kw_only=True)
class BudgetShare:
    """What one finding takes of the pressure [Pa]."""

    finding: str
    says: str
    found: str
    assumed: bool
    share: Band
    label: str = field(metadata=NOT_IN_JSON)  #: the finding with its figure


@dataclass(frozen=True, kw_only=True)
class BudgetRow:
    """One line of an account: what it is, and the pressure in the case's unit."""

    says: str
    figure: str
    is_share: bool = False


@dataclass(frozen=True, kw_only=True)
class BudgetAccount:
    """The budget at one state of running; pressures [Pa], speed [rpm], oil [K]."""

    at: str
    rpm: float
    oil: float
    reading: int | None  #: number of the entry; None where the gauge was not read
    healthy: Band
    missing: Band | None
    shares: tuple[BudgetShare, ...]
    explained: Band
    unexplained: Band | None
    closed: bool | None
    overdrawn: bool
    starved: float  #: share of plausible engines whose bearings get no oil
    heading: str = field(metadata=NOT_IN_JSON)
    rows: tuple[BudgetRow, ...] = field(metadata=NOT_IN_JSON)
    verdict: str = field(metadata=NOT_IN_JSON)  #: empty where nothing was read
    rest: BudgetRow | None = field(metadata=NOT_IN_JSON)  #: ``unexplained`` as a positive figure
    read: float | None = field(metadata=NOT_IN_JSON)  #: pressure on the gauge
    read_at_most: bool = field(metadata=NOT_IN_JSON)  #: the gauge never goes above that


@dataclass(frozen=True, kw_only=True)
class BudgetDocument:
    """Everything ``budget`` answers."""

    case: str | None  #: path of the case file
    unit: str  #: of the pressures in this document
    exact: bool  #: every order of the findings worked out, not a sample
    accounts: tuple[BudgetAccount, ...]
    unused: tuple[str, ...]  #: measured values the circuit has no figure for
    further: FurtherReading | None  #: None where none is worth it, or none was looked for
    title: str = field(metadata=NOT_IN_JSON)
    scale: Scale = field(metadata=NOT_IN_JSON)
    headline: str = field(metadata=NOT_IN_JSON)  #: as in the review; may be empty
    differs: str = field(metadata=NOT_IN_JSON)  #: where the ranking differs; may be empty
    read_next: str = field(metadata=NOT_IN_JSON)  #: the further reading; may be empty
    closed: str = field(metadata=NOT_IN_JSON)  #: how it ended; empty while not repaired
    other_size: str  #: that its figures are of another engine; may be empty
    not_compared: str = field(metadata=NOT_IN_JSON)  #: why what was read at idle is not used
    clean_first: str = field(
        metadata=NOT_IN_JSON
    )  #: what to clean before more is stripped; or empty


def budget_document(
    budget: Budget,
    case: Case,
    headline: str = "",
    differs: str = "",
    held_up: int = 0,
    uncosted: Sequence[str] = (),
) -> BudgetDocument:
    """Build the document of a case's pressure budget, under the headline of its review.

    ``held_up``: open tasks that forbid the start of the repaired engine. ``uncosted``: found faults
    that cost pressure, of which nothing was measured.
    """
    scale = scale_of(case)
    return BudgetDocument(
        case=str(case.path) if case.path else None,
        unit="Pa",
        exact=budget.exact,
        accounts=tuple(_account(a, budget.findings, scale, uncosted) for a in budget.accounts),
        unused=tuple(budget.unused),
        further=None,
        title=case.job.title,
        scale=scale,
        headline=headline,
        differs=differs,
        read_next="",
        closed=ended(case, held_up),
        other_size=other_size(case),
        not_compared=_not_compared(case, scale),
        clean_first=_clean_first(budget),
    )


def _clean_first(budget: Budget) -> str:
    """What lies loose on a screen closes it further while the pump draws; empty where none was seen."""
    seen = [
        f
        for f in budget.findings
        if f.assumed and f.parameter and f.parameter.id == SCREEN_OPEN_SHARE.id
    ]
    if not seen or all(a.closed for a in budget.accounts):
        return ""
    return (
        f"{seen[0].says[:1].upper()}{seen[0].says[1:]}: that is how it looked with the sump off. "
        "The pump draws loose pieces onto the mesh, so it may have cost more while it ran: clean "
        "it and read the gauge hot before you strip further."
    )


def _not_compared(case: Case, scale: Scale) -> str:
    """Why the latest reading at idle is no hot idle; empty where there is none."""
    idle = [r for r in latest_readings(case) if r.reading.rpm <= IDLE_SLACK * case.idle_speed]
    if not idle:
        return ""
    reading = idle[-1].reading
    read = f"The {scale.one(reading.pressure)} at {reading.rpm:.0f} rpm"
    heat = reading.oil_temperature
    if heat is not None and not is_hot(reading):
        about = "about " if reading.oil_spread else ""
        return (
            f"{read} was read with oil at {about}{scale.heat(heat)}; hot idle is {scale.heat(HOT)} "
            "or more: read it again hot, at the oil."
        )
    return f"{read} is no use here: speed or oil temperature are known too roughly."


def with_further_reading(document: BudgetDocument, case: Case, *, may_run: bool) -> BudgetDocument:
    """Add the further reading that would settle most what is missing at hot idle.

    ``may_run``: whether the engine may be run to read it. Raises UsageError without a circuit.
    """
    if document.closed:
        return document
    state = engines_as_read(case)
    worth = further_for_missing(case, state).best(may_run=may_run)
    left = document.accounts[0].unexplained
    further = further_reading(
        worth,
        "what is missing" if left else "hot idle",
        document.scale,
        0.5 * (left.high - left.low) if left else None,
    )
    none = NONE_WORTH_IT if state.fits and may_run else ""
    return replace(document, further=further, read_next=further.says if further else none)


def still_missing(budget: Budget, case: Case) -> str:
    """Say in a sentence how much of the missing pressure nothing found explains; may be empty."""
    rest = budget.unexplained
    if rest is None:
        return ""
    account, left, missing = rest.account, rest.unexplained, rest.missing
    where, scale = account.point.name, scale_of(case)
    if missing.high < -NEGLIGIBLE:
        return ""
    if account.closed:
        return f"What was found explains the pressure missing at {where}."
    sure = "not settled" if account.closed is False else "perhaps not settled"
    found = account.explained.mean
    rest_of_it = f"{scale.one(left.mean)} still missing: {sure}."
    none = f"What was found explains none of the {scale.one(missing.mean)} missing at {where}"
    if scale.figure(found) in (scale.figure(0.0), scale.figure(-0.0)):
        return f"{none}: {sure}."
    if found < 0.0:  # thicker oil, say
        return (
            f"{none}: it adds {scale.one(-found)}, so {scale.one(left.mean)} are lost "
            f"elsewhere, {sure}."
        )
    return (
        f"What was found explains {scale.figure(found)} of "
        f"{scale.one(missing.mean)} missing at {where}; {rest_of_it}{_most_of_it(budget, account)}"
    )


def _most_of_it(budget: Budget, account: Account) -> str:
    """Name the one finding that explains most; empty where several share it, or it stands alone."""
    share, largest = max(
        zip(account.shares, budget.findings, strict=True), key=lambda pair: pair[0].mean
    )
    alone = len(budget.findings) == 1 or share.mean < MOST_OF_IT * account.explained.mean
    if alone:
        return ""
    seen = "not measured, assumed " if largest.assumed else ""
    return f" The largest part: {largest.says} ({seen}{largest.found})."


def _account(
    account: Account, findings: tuple[Deviation, ...], scale: Scale, uncosted: Sequence[str]
) -> BudgetAccount:
    point, rest = account.point, _remainder(account.unexplained, scale)
    shares = tuple(
        BudgetShare(
            finding=found.id,
            says=found.says,
            found=found.found,
            assumed=found.assumed,
            share=share,
            label=_label(found),
        )
        for found, share in zip(findings, account.shares, strict=True)
    )
    return BudgetAccount(
        at=point.name,
        rpm=point.rpm,
        oil=point.temperature,
        reading=point.read.entry.no if point.read else None,
        healthy=account.healthy,
        missing=account.shortfall,
        shares=shares,
        explained=account.explained,
        unexplained=account.unexplained,
        closed=account.closed,
        overdrawn=account.overdrawn,
        starved=account.starved,
        heading=_heading(account, scale),
        rows=tuple(_rows(account, shares, rest, scale)),
        verdict=_verdict(account, scale, uncosted),
        rest=rest,
        read=point.read.reading.pressure if point.read else None,
        read_at_most=bool(point.read and point.read.reading.at_most),
    )


def _label(found: Deviation) -> str:
    seen = ": not measured, assumed " if found.assumed else " "
    return f"{found.says}{seen}{found.found}"


def _heading(account: Account, scale: Scale) -> str:
    """The state of running, and what was read there."""
    point = account.point
    at = f"{point.name.capitalize()}: {point.rpm:.0f} rpm, {scale.heat(point.temperature)}"
    if not point.temperature_known:
        at += " (assumed)"
    if point.read is None:
        return f"{at}: no reading; figures of the model alone"
    reading = point.read.reading
    pressure = f"{'up to ' if reading.at_most else ''}{scale.one(reading.pressure)}"
    return f"{at}: {reading.gauge} gauge reads {pressure} (entry {point.read.entry.no})"


def _rows(
    account: Account, shares: tuple[BudgetShare, ...], rest: BudgetRow | None, scale: Scale
) -> Iterator[BudgetRow]:
    """Every line: sound engine, missing, each share with the largest first, total, rest."""
    sound = scale.range(account.healthy)
    yield BudgetRow(says="a sound engine of this kind shows", figure=sound)
    if account.shortfall:
        yield BudgetRow(says="missing", figure=scale.range(account.shortfall))
    for each in sorted(shares, key=lambda s: -s.share.mean):
        yield BudgetRow(says=each.label, figure=scale.range(each.share), is_share=True)
    if shares:
        yield BudgetRow(says="explained together", figure=scale.range(account.explained))
    if rest:
        yield rest


def _remainder(left: Band | None, scale: Scale) -> BudgetRow | None:
    """What is left, as a positive figure."""
    if left is None:
        return None
    if left.mean >= 0:
        return BudgetRow(says="still missing", figure=scale.range(left))
    beyond = Band(-left.high, -left.mean, -left.low)
    return BudgetRow(says="explained beyond what is missing", figure=scale.range(beyond))


def _verdict(account: Account, scale: Scale, uncosted: Sequence[str]) -> str:
    """Whether the account closes, in a sentence; empty where nothing was read."""
    left, missing = account.unexplained, account.shortfall
    if left is None or missing is None:
        return ""
    if missing.high < -NEGLIGIBLE:
        return (
            f"Nothing is missing: the gauge reads {scale.one(-missing.mean)} more than it should."
        )
    if account.overdrawn:
        return (
            "These faults should cost more than is missing: check the figures again. Bearings not "
            "measured may be better than those that were."
        )
    if account.closed:
        return "Settled: what was found explains what is missing."
    if account.closed is None:
        return f"Perhaps not settled: {scale.one(left.mean)} may still be missing, or nothing."
    if uncosted:
        return (
            f"Not settled: what was found but not measured ({'; '.join(uncosted)}), or a fault not "
            f"found yet, still costs about {scale.one(left.mean)}."
        )
    return f"Not settled: a fault not found yet still costs about {scale.one(left.mean)}."
