"""The sheet to fill in with readings of bearings: which blanks, and what stands in the case."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.bearings.table import Bearings, every_place
from diagnose.case.bearing_values import FIELDS, numbers_and_unit
from diagnose.case.bearings import shown
from diagnose.errors import UsageError
from diagnose.fits.bearing import Kind, Place
from diagnose.output.documents.bearing_steps import NUMBERS
from diagnose.output.documents.bearing_words import units_for
from diagnose.output.documents.named import UNTITLED

#: blanks of one bearing, in the order of measuring
OF_ONE = ("bore", "shell", "inside", "journal", "strip")
#: blanks of all bearings of a kind
OF_ALL = ("new_journal", "new_bore", "new_shell", "wanted", "undersize", "crush", "spread")
LIKE = {
    "bore": "front in line, front across, rear in line, rear across; without shells, cap at torque",
    "shell": "upper, lower; ball micrometer, square to the joint",
    "inside": "as the bore, with the shells in; then bore and shell are not needed",
    "journal": "front two ways across, rear two ways across",
    "strip": "front, rear; where no micrometer is at hand",
    "new_journal": "least and most, from the manual",
    "new_bore": "least and most, from the manual",
    "new_shell": "from the shell maker's list",
    "wanted": "least and most, from the manual",
    "undersize": "stamped on the back of the old shells; 0 where standard",
    "crush": "cap on, one bolt slack: gap at the joint",
    "spread": "width of a loose shell less the bore",
}


@dataclass(frozen=True, kw_only=True)
class Blank:
    """One blank: its field, what to write, and what was entered already."""

    field: str
    says: str
    like: str
    entered: str  #: empty: nothing yet
    cells: tuple[str, ...]  #: its figures by place in the page's table


@dataclass(frozen=True, kw_only=True)
class BearingBlanks:
    """The blanks of one bearing, or of all of a kind."""

    name: str  #: "main 3", "rods"
    blanks: tuple[Blank, ...]


@dataclass(frozen=True, kw_only=True)
class KindBlanks:
    """The blanks of one kind of bearing."""

    kind: str  #: "mains"
    general: BearingBlanks
    each: tuple[BearingBlanks, ...]
    wanted: str  #: the clearance wanted; empty: not known


@dataclass(frozen=True, kw_only=True)
class BearingSheet:
    """The whole sheet."""

    title: str
    path: str
    unit: str
    kinds: tuple[KindBlanks, ...]


def bearing_sheet(found: Bearings, path: str) -> BearingSheet:
    """Build the sheet for every bearing of the engine.

    Raises UsageError where nothing says how many it has.
    """
    size, _ = units_for(None, found)
    measured = {j.place for j in (*found.found, *found.fitted) if j.place.number}
    places = sorted({*(p for p in every_place(found.case, found.counts) if p.number), *measured})
    if not places:
        raise UsageError(
            "how many bearings has it? Add --mains and --rods with their numbers, or keep them: "
            f"{NUMBERS}"
        )
    kinds = []
    for kind in Kind:
        mine = [p for p in places if p.kind is kind]
        if mine:
            kinds.append(_kind(found, kind, mine, size))
    title = found.case.job.title.strip() or UNTITLED
    return BearingSheet(title=title, path=path, unit=size, kinds=tuple(kinds))


def _kind(found: Bearings, kind: Kind, places: list[Place], unit: str) -> KindBlanks:
    group = found.case.bearings.groups.get(kind)
    target = found.targets[kind]
    _, fine = units_for(kind, found)
    wanted = ""
    if target is not None:
        wanted = f"{shown(target.low, fine)} to {shown(target.high, fine)} ({target.says})"
    table = found.case.bearings.found
    return KindBlanks(
        kind=kind.plural,
        general=_blanks(kind.plural, OF_ALL, dict(group.texts) if group else {}, unit),
        each=tuple(
            _blanks(p.says, OF_ONE, dict(table[p].texts) if p in table else {}, unit)
            for p in places
        ),
        wanted=wanted,
    )


def _blanks(
    name: str, fields: tuple[str, ...], entered: dict[str, str], unit: str
) -> BearingBlanks:
    return BearingBlanks(
        name=name,
        blanks=tuple(
            Blank(
                field=f,
                says=FIELDS[f].says,
                like=LIKE[f],
                entered=entered.get(f, ""),
                cells=_cells(f, entered.get(f, ""), unit),
            )
            for f in fields
        ),
    )


def _cells(field: str, text: str, unit: str) -> tuple[str, ...]:
    """Figures as typed, of a diameter at front and rear, each two ways across.

    >>> _cells("journal", "49.98 49.97 mm", "mm"), _cells("strip", "2.2 thou", "in")
    (('49.98', '', '49.97', ''), ('2.2 thou', ''))
    """
    groups, given = numbers_and_unit(text)
    ending = f" {given}" if given and given != unit else ""
    if not FIELDS[field].grid:
        flat = [f"{n}{ending}" for group in groups for n in group]
        return tuple([*flat, "", ""][: max(2, len(flat))])
    angled = any(len(group) > 1 for group in groups)
    flat = [n for group in groups for n in group]
    if not angled and len(flat) in (4, 6):
        groups = [flat[i : i + 2] for i in range(0, len(flat), 2)]
    ends = [groups[0], groups[-1]] if len(groups) > 1 else groups
    cells = [n for group in ends for n in (*group, "")[:2]]
    return tuple(f"{n}{ending}" if n else "" for n in [*cells, "", "", "", ""][:4])
