"""The clearance each bearing should have, what bounds it, and what other sources say."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from diagnose.case.bearing_counts import known_profile
from diagnose.case.bearings import DIAMETERS, TASKS, journal_sizes
from diagnose.case.card import Card
from diagnose.case.case import BearingGroup, Case
from diagnose.fits.bearing import Kind
from knowledge.limits import Limit
from knowledge.model import Quantity, Source
from knowledge.stations.bearings import quantities, sizes, tasks
from knowledge.stations.bearings.sizes import Use

CLEARANCES: Mapping[Kind, Quantity] = {
    Kind.MAIN: quantities.MAIN_CLEARANCE,
    Kind.ROD: quantities.ROD_CLEARANCE,
}
MOST: Mapping[Kind, Limit] = {
    Kind.MAIN: quantities.MOST_MAIN_CLEARANCE,
    Kind.ROD: quantities.MOST_ROD_CLEARANCE,
}
LEAST = quantities.LEAST_BEARING_CLEARANCE


@dataclass(frozen=True, slots=True)
class Advice:
    """What one source wants: least and most clearance [m], None: open at that end."""

    low: float | None
    high: float | None
    says: str
    source: Source | None  #: None: the engine's own figure, from the case


@dataclass(frozen=True, slots=True)
class Target:
    """The clearance wanted of the bearings of one kind [m], and how sure that is."""

    kind: Kind
    low: float
    high: float
    says: str
    source: Source | None  #: None: the engine's own
    diameter: float | None  #: it was worked out for
    of_this_engine: bool  #: whether that diameter is this engine's; else usual for its kind
    least: float  #: the tightest allowed
    most: float  #: the widest allowed
    own_limit: bool  #: whether ``most`` is the engine's own figure
    advice: tuple[Advice, ...]  #: every source, side by side


def group_of(case: Case, kind: Kind) -> BearingGroup:
    """What the case says of all bearings of a kind, else the engine's card."""
    group = case.bearings.groups.get(kind, BearingGroup())
    if case.card is None:
        return group
    return replace(
        group,
        new_journal=group.new_journal or _on_card(case.card, DIAMETERS[kind].id),
        new_bore=group.new_bore or _on_card(case.card, f"{kind.value}_housing"),
        new_shell=group.new_shell or _on_card(case.card, f"{kind.value}_shell"),
        wanted=group.wanted or _on_card(case.card, f"{kind.value}_clearance"),
    )


def _on_card(card: Card, figure: str) -> tuple[float, ...]:
    """Least and most of a figure of the card; empty where it is open or not there."""
    value = card.values.get(figure)
    if value is None or value.low is None or value.high is None:
        return ()
    return value.low, value.high


def standard_journal(case: Case, kind: Kind) -> tuple[float, float] | None:
    """Least and most diameter of a new journal [m], as far as the case gives it."""
    given = group_of(case, kind).new_journal
    if given:
        return min(given), max(given)
    stated = case.dimensions.get(DIAMETERS[kind])
    return (stated, stated) if stated is not None else None


def use_of(case: Case) -> Use:
    """What the engine is built for."""
    given = [g.use for g in case.bearings.groups.values() if g.use]
    return Use(given[-1]) if given else Use.ROAD


def target_of(case: Case, kind: Kind) -> Target | None:
    """The target for a kind; None where neither figure nor diameter is known."""
    group, use = group_of(case, kind), use_of(case)
    diameter, own = _diameter(case, kind)
    most, least = case.limit(MOST[kind]), case.limit(LEAST)
    advice = tuple(_advice(case, kind, diameter))
    bounds = (diameter, own, least, most, MOST[kind] in case.limits, advice)
    if group.wanted:
        low, high = min(group.wanted), max(group.wanted)
        own_word = case.bearings.groups.get(kind, BearingGroup()).wanted
        says = "wanted in this engine" if own_word else "the engine's card"
        return Target(kind, low, high, says, None, *bounds)
    if diameter is None:
        return None
    guide = next(g for g in sizes.GUIDES if g.use is use)
    low, high = guide.band(diameter)
    says = guide.says
    sound = _sound(case, kind)
    if sound is not None and sound.high is not None and sound.high > high:
        high, says = sound.high, f"{says}, up to {sound.says}"
    return Target(kind, low, high, says, guide.source, *bounds)


def _sound(case: Case, kind: Kind) -> Advice | None:
    """What a sound engine of a kind that is built with wide clearances has; None of others."""
    profile = known_profile(case)
    if profile is None or case.layout.id not in MOST[kind].on_layouts:
        return None
    value, source = profile.numbers[CLEARANCES[kind].id]
    return Advice(None, float(value), "what is usual in this kind", source)


def _advice(case: Case, kind: Kind, diameter: float | None) -> list[Advice]:
    found = [
        Advice(min(w), max(w), "this engine", None) for w in [group_of(case, kind).wanted] if w
    ]
    if diameter is not None:
        found += [Advice(*g.band(diameter), g.says, g.source) for g in sizes.GUIDES]
    sound = _sound(case, kind)
    found += [sound] if sound else []
    bands = [b for b in TASKS[kind].bands if b is not tasks.BY_SIZE]
    return [*found, *(Advice(b.low, b.high, b.says, b.source) for b in bands)]


def _diameter(case: Case, kind: Kind) -> tuple[float | None, bool]:
    """A journal's diameter [m], and whether it is of this engine."""
    standard = standard_journal(case, kind)
    if standard is not None:
        return sum(standard) / 2, True
    name = DIAMETERS[kind].id
    measured = journal_sizes(case.bearings).get(name)
    if measured is not None:
        return measured, True
    profile = known_profile(case)
    if profile is not None:
        return float(profile.numbers[name][0]), False
    return None, False
