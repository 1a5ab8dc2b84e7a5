"""Every bearing on one form, and what decides the shells: sizes when new, undersize, count."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.bearings.table import Bearings, bearings_of, every_place
from diagnose.case.bearing_values import FIELDS, numbers_and_unit
from diagnose.entry.bearings import COUNT, UNIT, BearingsInput, read_blanks, record_bearings
from diagnose.entry.sheets import FilledBlank
from diagnose.errors import UsageError
from diagnose.fits.bearing import Kind, Place
from diagnose.output.documents.bearing_sheet import LIKE
from diagnose.output.documents.bearing_words import is_metric, units_for
from diagnose.serve import forms
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import Answer, Asked, address, go
from diagnose.serve.screens.shared import typed_in
from diagnose.serve.site import Refusal, Site, job_screen
from knowledge.book import the_book

UNITS = ("in", "thou", "mm")
#: of each bearing, with a short heading
OF_ONE = {
    "bore": "Bore, no shells",
    "inside": "Bore, shells in",
    "journal": "Journal",
    "strip": "Plastic strip",
}
#: of all bearings of a kind, what an order of shells rests on first
OF_ALL = ("new_shell", "undersize", "new_journal", "new_bore", "wanted", "sizes")
HINTS = {**LIKE, "undersize": "of the shells it has, or what the crank was ground to; 0: standard"}
HINTS["sizes"] = "those the shop can get, spaces between"
NOTHING = "Nothing was put in. Write a figure into a field."
SAYS_COUNT = "How many there are"


@dataclass(frozen=True, slots=True)
class Field:
    """One field of a bearing or of a kind: its name in the form and what stands there."""

    id: str  #: "journal @ main 3"
    says: str
    like: str
    stands: str
    hint: str = ""


@dataclass(frozen=True, slots=True)
class Section:
    """The fields of one kind: those of all, and those of each bearing by its name."""

    kind: str  #: "main"
    general: tuple[Field, ...]
    each: tuple[tuple[str, tuple[Field, ...]], ...]


def show(site: Site, asked: Asked) -> Answer:
    """The form, with what is known already."""
    with site.job(asked) as known:
        return _form(known, asked)


def save(site: Site, asked: Asked) -> Answer:
    """Save what was changed, all or nothing."""
    path = site.folder.path(asked.job)
    with site.job(asked) as known:
        was = asked.named("was:")
        changed = {id_: text for id_, text in asked.named("b:").items() if was.get(id_) != text}
        if not changed:
            return _form(known, asked, Refusal([NOTHING]))
        read = read_blanks([*_blanks(changed), FilledBlank(UNIT, _unit(asked), "", "")])
        if read.bad:
            return _form(known, asked, Refusal(read.bad))
        try:
            given = BearingsInput(read.given, _is_fitted(asked), forms.details(asked))
            record_bearings(path, the_book(), given)
        except UsageError as fault:
            return _form(known, asked, Refusal(fault.lines))
    return go("job", asked.job, "bearings")


def _blanks(changed: dict[str, str]) -> list[FilledBlank]:
    """What was changed, as blanks of a sheet."""
    found = []
    for id_, text in changed.items():
        field, _, where = id_.partition(" @ ")
        found.append(FilledBlank(field, text[: forms.MOST_TEXT], where, where))
    return found


def _unit(asked: Asked) -> str:
    unit = asked.text("unit")
    return unit if unit in UNITS else UNITS[0]


def _is_fitted(asked: Asked) -> bool:
    return bool(asked.query.get("fitted") or asked.text("fitted"))


def _form(known: Known, asked: Asked, refused: Refusal | None = None) -> Answer:
    found = bearings_of(known.case, with_pressure=False)
    unit, _ = units_for(None, found)
    unit = unit if unit in UNITS else UNITS[0]
    fitted = _is_fitted(asked)
    return job_screen(
        "bearing_sizes.html",
        asked,
        known,
        refused=refused,
        sections=[_section(found, kind, unit, fitted) for kind in Kind],
        fitted=fitted,
        units=UNITS,
        unit=unit,
        typed=typed_in(asked),
        back=(address("job", asked.job, "bearings"), "Bearings"),
    )


def _section(found: Bearings, kind: Kind, unit: str, fitted: bool) -> Section:
    places = [p for p in every_place(found.case, found.counts) if p.kind is kind and p.number]
    return Section(
        kind.value,
        () if fitted else tuple(_of_all(found, kind, unit)),
        tuple((p.says, tuple(_of_one(found, p, unit, fitted))) for p in places),
    )


def _of_all(found: Bearings, kind: Kind, unit: str) -> list[Field]:
    group = found.case.bearings.groups.get(kind)
    texts = group.texts if group else {}
    count = found.counts[kind]
    fields = [Field(f"{COUNT} @ {kind.plural}", SAYS_COUNT, "", str(count or ""))]
    for name in OF_ALL:
        stands = _stands(texts.get(name, ""), unit)
        says = FIELDS[name].says
        id_ = f"{name} @ {kind.plural}"
        fields.append(Field(id_, f"{says[0].upper()}{says[1:]}", "", stands, HINTS[name]))
    return fields


def _of_one(found: Bearings, place: Place, unit: str, fitted: bool) -> list[Field]:
    table = found.case.bearings.fitted if fitted else found.case.bearings.found
    texts = table[place].texts if place in table else {}
    return [
        Field(f"{n} @ {place.says}", says, like(n, unit), _stands(texts.get(n, ""), unit))
        for n, says in OF_ONE.items()
    ]


def like(field: str, unit: str) -> str:
    """A figure of a field as an example, in this unit.

    >>> like("journal", "mm"), like("strip", "in")
    ('62.18 62.17', '0.0022')
    """
    if field == "strip":
        return "0.055" if is_metric(unit) else "2.2" if unit == "thou" else "0.0022"
    if is_metric(unit):
        return "62.18 62.17" if field == "journal" else "66.71 66.70"
    return "2.4482 2.4481" if field == "journal" else "2.6280 2.6279"


def _stands(text: str, unit: str) -> str:
    """A recorded text as the form shows it: without its unit where that is the form's.

    >>> _stands("53.746 53.744 mm", "mm"), _stands("2.2 thou", "in")
    ('53.746 53.744', '2.2 thou')
    """
    groups, given = numbers_and_unit(text)
    if given != unit:
        return text
    return " ".join("/".join(group) for group in groups)
