"""The engine's card: name it, enter and change its figures, see what is missing and where it stands."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from diagnose.case.card import BASELINE, Card, load_card
from diagnose.case.card_naming import name_card
from diagnose.case.card_writing import (
    GRADE,
    SOUND_SAYS,
    SOUND_WHERE,
    baseline_of,
    figures_of,
    start_card,
    write_figures,
)
from diagnose.errors import CannotWriteError, UsageError
from diagnose.output.documents.card import CardDocument, CardGap, card_document
from diagnose.output.documents.check_sheet import units_of
from diagnose.serve.cards import CARDS, cards_in, new_card, own_card
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import Answer, Asked, NotHereError, address, go
from diagnose.serve.screens.card_form import (
    ABOUT,
    LONGEST,
    SOUND,
    ChangedFigures,
    changed_figures,
    faults_in,
    name_of_figure,
    sound_pressures,
)
from diagnose.serve.screens.shared import typed_in
from diagnose.serve.site import Refusal, Site, job_screen, without_folder
from knowledge.book import the_book
from knowledge.card import Section
from knowledge.engines.layouts import UNKNOWN
from knowledge.units import DIMENSIONS, unit_named

MOST_WANTED = 5  #: of the missing figures that the first screen asks for
TITLES = {
    Section.PRESSURES: ("Pressures", "oil hot unless it says otherwise"),
    Section.CLEARANCES: ("Clearances", "as fitted, and the wear limit where it is printed"),
    Section.TORQUES: ("Torques", "as printed"),
    Section.SETTINGS: ("Settings", "running, and the relief spring"),
    Section.OIL: ("Oil", "how much, how hot"),
    Section.SIZES: ("Sizes", "journals, bores, and what the oil circuit is made of"),
}
NOTHING = "Nothing was changed."


class ChangedError(Exception):
    """Figures were changed in another place since the form was made.

    ``changes``: what each is now, a line for each.
    """

    def __init__(self, changes: Sequence[str]) -> None:
        self.changes = tuple(changes)
        super().__init__("; ".join(self.changes))


@dataclass(frozen=True, slots=True)
class Field:
    """One figure to fill in; ``written`` is empty where it is missing."""

    id: str
    says: str
    manual: str
    form: str
    units: tuple[str, ...] = ()
    unit: str = ""
    written: str = ""


def show(site: Site, asked: Asked) -> Answer:
    """What the card holds and what is missing, the most useful first; or which card to go by."""
    with site.job(asked) as known:
        return _card(site, known, asked)


def save(site: Site, asked: Asked) -> Answer:
    """Write figures, or let the job go by a card that is there or begun now."""
    with site.job(asked) as known:
        try:
            if asked.text("start"):
                return _named(site, asked, _begun(site, known, asked))
            if asked.text("choose"):
                return _named(site, asked, _chosen(site, asked))
        except (CannotWriteError, UsageError) as fault:
            faults = without_folder(fault.lines, site.folder.root)
            return _card(site, known, asked, Refusal(faults))
        return _saved(site, known, asked, None)


def show_section(site: Site, asked: Asked) -> Answer:
    """Every figure of one table of the card."""
    with site.job(asked) as known:
        return _section(site, known, asked, _section_of(asked))


def save_section(site: Site, asked: Asked) -> Answer:
    """Write figures of one table."""
    with site.job(asked) as known:
        return _saved(site, known, asked, _section_of(asked))


def _section_of(asked: Asked) -> Section:
    try:
        return Section(asked.parts["section"])
    except ValueError:
        raise NotHereError("A card has no such table.") from None


def _begun(site: Site, known: Known, asked: Asked) -> str:
    """Begin a card with what the job says of its engine; its file. Raises UsageError."""
    book, root = the_book(), site.folder.root
    figures = figures_of(known.case, book)
    engine = {k: figures.pop(k, "") for k in ("name", "layout", "manual")}
    engine["name"] = asked.text("name")[:LONGEST]
    file = new_card(root, engine["name"])
    (root / CARDS).mkdir(exist_ok=True)
    start_card(root / file, book, engine, figures, baseline_of(known.case))
    return file


def _chosen(site: Site, asked: Asked) -> str:
    """The card that was chosen. Raises UsageError where the folder has none of that name."""
    file = asked.text("choose")
    if file not in {line.file for line in cards_in(site.folder.root, the_book())}:
        raise UsageError("That card is not here any more; choose another.")
    return file


def _named(site: Site, asked: Asked, file: str) -> Answer:
    """Let the job go by a card."""
    path = site.folder.path(asked.job)
    if path.is_symlink():
        raise UsageError("This job is a link to another file; name the card in that one.")
    name_card(path, the_book(), file, asked.text("named"))
    site.interviews.forget(path)
    return go("job", asked.job, "card")


def _saved(site: Site, known: Known, asked: Asked, section: Section | None) -> Answer:
    """Write the figures that were changed, or show the form again."""

    def again(refused: Refusal) -> Answer:
        if section is None:
            return _card(site, known, asked, refused)
        return _section(site, known, asked, section, refused)

    file = own_card(site.folder.root, known.case)
    if file is None:
        return again(Refusal(["This job names no card of this folder."], status=409))
    figures = changed_figures(asked)
    given = figures.given
    if not given:
        return again(Refusal([NOTHING]))
    if wrong := faults_in(given, load_card(file, the_book())):
        return again(Refusal(wrong))
    insist = bool(asked.text("insist"))

    def check(now: Card) -> None:
        _check(now, figures, insist=insist)

    try:
        printed = {i: text for i, text in given.items() if not i.startswith(SOUND)}
        write_figures(file, the_book(), printed, check, sound_pressures(given))
    except ChangedError as other:
        return again(Refusal(meanwhile=other.changes, status=409))
    except UsageError as fault:
        return again(Refusal(without_folder(fault.lines, site.folder.root)))
    further = (section.value,) if section else ()
    return go("job", asked.job, "card", *further, saved=",".join(given))


def _written(card: Card) -> dict[str, str]:
    """Every entry of a card as it is written; what is missing is not in it."""
    document = card_document(card, the_book())
    about = (card.engine.name, card.engine.manual, _layout(card), card.oil_grade)
    found = dict(zip(ABOUT, about, strict=True)) | {e.id: e.written for e in document.there}
    found |= {f"{SOUND}{i}": b.written for i, b in enumerate(document.baseline)}
    return {id_: text for id_, text in found.items() if text}


def _layout(card: Card) -> str:
    layout = card.engine.layout
    return "" if layout == UNKNOWN.id else layout


def _check(now: Card, figures: ChangedFigures, *, insist: bool) -> None:
    """Raise ChangedError where another place changed what the person changes now."""
    there = _written(now)
    given, was = figures.given, figures.was
    other = [i for i in given if there.get(i, "") not in (was[i], given[i])]
    if other and not insist:
        raise ChangedError([f"{name_of_figure(i)}: {there.get(i) or 'taken out'}" for i in other])


def _card(site: Site, known: Known, asked: Asked, refused: Refusal | None = None) -> Answer:
    root, book = site.folder.root, the_book()
    file = own_card(root, known.case)
    words = {"typed": typed_in(asked), "name_now": known.case.engine.name}
    if file is None or asked.query.get("other"):
        return job_screen(
            "card_choose.html",
            asked,
            known,
            refused=refused,
            cards=cards_in(root, book),
            outside=known.case.card is not None and file is None,
            named=_named_now(known),
            **words,
        )
    card, document = _read(file)
    wanted = [g for g in document.missing if g.id not in (GRADE, BASELINE)][:MOST_WANTED]
    there, missing = document.there, document.missing
    return job_screen(
        "card.html",
        asked,
        known,
        refused=refused,
        card=document,
        about=_written(card),
        file=file.relative_to(root).as_posix() if root in file.parents else file.name,
        layouts=[(x.id, x.says) for x in book.layouts.values() if x is not UNKNOWN],
        sound=[(f"{SOUND}{i}", b.written) for i, b in enumerate(document.baseline)],
        another=f"{SOUND}{len(document.baseline)}",
        sound_says=(SOUND_SAYS, SOUND_WHERE),
        wanted=[_field(card, g) for g in wanted],
        sections=[
            (
                section.value,
                *TITLES[section],
                sum(e.section == section.value for e in there),
                sum(g.section == section.value and g.id != GRADE for g in missing),
            )
            for section in Section
        ],
        saved=_saved_now(asked, card),
        **words,
    )


def _section(
    site: Site,
    known: Known,
    asked: Asked,
    section: Section,
    refused: Refusal | None = None,
) -> Answer:
    file = own_card(site.folder.root, known.case)
    if file is None and refused is None:
        return go("job", asked.job, "card")
    if file is None:
        return _card(site, known, asked, refused)
    card, document = _read(file)
    gaps = {g.id: g for g in document.missing}
    written = _written(card)
    figures = [f for f in the_book().card_figures.values() if f.section is section]
    missing = sorted((f for f in figures if f.id in gaps), key=lambda f: f.rank)
    return job_screen(
        "card_section.html",
        asked,
        known,
        refused=refused,
        section=section.value,
        heading=TITLES[section],
        missing=[_field(card, gaps[f.id]) for f in missing],
        there=[
            Field(f.id, name_of_figure(f.id), f.manual, f.form.value, written=written[f.id])
            for f in figures
            if f.id in written
        ],
        saved=_saved_now(asked, card),
        typed=typed_in(asked),
        back=(address("job", asked.job, "card"), "The engine’s card"),
    )


def _read(file: Path) -> tuple[Card, CardDocument]:
    card = load_card(file, the_book())
    return card, card_document(card, the_book())


def _field(card: Card, gap: CardGap) -> Field:
    """A figure that is missing."""
    figure = the_book().card_figures[gap.id]
    units = units_of(figure.dimension)
    usual = card.unit(figure.dimension) or (figure.quantity.unit if figure.quantity else None)
    named = unit_named(usual, DIMENSIONS[figure.dimension]) if usual else None
    unit = named.names[0] if named else units[0]
    return Field(
        id=gap.id,
        says=name_of_figure(gap.id),
        manual=gap.manual,
        form=figure.form.value,
        units=units if unit in units else (unit, *units),
        unit=unit,
    )


def _named_now(known: Known) -> str:
    """The card that the case names, as it is written there."""
    return str(known.case.engine.card or "")


def _saved_now(asked: Asked, card: Card) -> list[str]:
    """What was saved just now, as it stands."""
    ids = asked.query.get("saved", "")[:2_000].split(",")
    written, figures = _written(card), the_book().card_figures
    wanted = [i for i in dict.fromkeys(ids) if i in figures or i in ABOUT or i.startswith(SOUND)]
    return [f"{name_of_figure(i)}: {written.get(i, 'taken out')}" for i in wanted]
