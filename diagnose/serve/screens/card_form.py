"""What the form of an engine's card says: the figures that were changed, and what is wrong with them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from diagnose.case.card import BASELINE, Card
from diagnose.case.card_text import card_value
from diagnose.case.card_writing import GRADE, Sound
from diagnose.case.file_faults import Faults
from diagnose.entry.readings import parse_baseline
from diagnose.errors import UsageError
from diagnose.serve import forms
from diagnose.serve.exchange import Asked
from knowledge.book import the_book
from knowledge.card import CardFigure, Form

LONGEST = 200  #: characters of a field
ABOUT = ("name", "manual", "layout", GRADE)  #: what the card says besides its figures
SOUND = f"{BASELINE}."  #: before the place of a pressure when the engine was sound


@dataclass(frozen=True, slots=True)
class ChangedFigures:
    """Entries of a card that a form changes, by id: what was typed, and what stood there before."""

    given: Mapping[str, str]
    was: Mapping[str, str]  #: when the form was made


def changed_figures(asked: Asked) -> ChangedFigures:
    """What a form changes of the card."""
    figures, given, was = the_book().card_figures, {}, {}
    for id_ in (*ABOUT, *figures):
        before = asked.text(f"was:{id_}")
        if f"g:{id_}" in asked.form:
            typed = asked.text(f"g:{id_}")[:LONGEST]
        elif id_ in figures:
            typed = _composed(asked, figures[id_])
        else:
            continue
        if typed != before:
            given[id_], was[id_] = typed, before
    for name in [n for n in asked.form if n.startswith(f"g:{SOUND}")][:LONGEST]:
        id_ = name.removeprefix("g:")
        typed, before = asked.text(name)[:LONGEST].strip(), asked.text(f"was:{id_}")
        if typed != before and id_.removeprefix(SOUND).isdecimal() and len(id_) < len(SOUND) + 4:
            given[id_], was[id_] = typed, before
    return ChangedFigures(given, was)


def _composed(asked: Asked, figure: CardFigure) -> str:
    """What one would write for the fields of a figure: "0.0010 to 0.0025 in, limit 0.0035 in"."""
    low, high, worn = (
        asked.text(f"{part}:{figure.id}").replace(",", ".")[:40] for part in ("lo", "hi", "wo")
    )
    unit = asked.text(f"un:{figure.id}")
    if low and high:
        fit = f"{low} to {forms.with_unit(high, unit)}"
    elif figure.form is Form.FITTED and (low or high):
        fit = f"at {'least' if low else 'most'} {forms.with_unit(low or high, unit)}"
    else:
        fit = forms.with_unit(low or high, unit) if low or high else ""
    limit = f"limit {forms.with_unit(worn, unit)}" if worn else ""
    return ", ".join(filter(None, (fit, limit)))


def sound_pressures(given: Mapping[str, str]) -> dict[int, Sound]:
    """Pressures when the engine was sound by their place; without fields to take one out.

    Raises UsageError for one that cannot be read.
    """
    return {
        int(id_.removeprefix(SOUND)): parse_baseline(text) if text else {}
        for id_, text in given.items()
        if id_.startswith(SOUND)
    }


def faults_in(given: Mapping[str, str], card: Card) -> list[str]:
    """What cannot be among figures that were typed, a line each with what they are called."""
    figures, faults = the_book().card_figures, Faults()
    for id_, text in given.items():
        if text and id_ in figures:
            unit = card.units.get(figures[id_].dimension)
            card_value(text, figures[id_], unit, name_of_figure(id_), faults)
        elif text and id_.startswith(SOUND):
            try:
                parse_baseline(text)
            except UsageError as fault:
                faults.add(str(fault))
    return list(faults)


def name_of_figure(id_: str) -> str:
    """What an entry is called on the screen."""
    if id_ in the_book().card_figures:
        says = the_book().card_figures[id_].says
        return says[:1].upper() + says[1:]
    if id_.startswith(SOUND):
        return "When it was sound"
    return {GRADE: "Oil", "layout": "How it is built"}.get(id_, id_.capitalize())
