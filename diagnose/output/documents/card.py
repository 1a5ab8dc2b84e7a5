"""The document of ``card``: what an engine's card holds, and what is missing, most useful first."""

from __future__ import annotations

from dataclasses import dataclass, field

from diagnose.case.card import BASELINE, Card
from diagnose.case.card_text import CardValue
from diagnose.case.card_writing import GRADE, SOUND_SAYS, SOUND_WHERE, WRITE_SOUND, how_to_write
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.lines import as_typed
from knowledge.book import Book
from knowledge.card import Section
from knowledge.units import DIMENSIONS

GRADE_RANK, BASELINE_RANK = 6, 2  #: of the oil's grade and of readings among the figures
GRADE_SAYS = "the oil its maker asks for"
GRADE_MANUAL = "oils and capacities"


@dataclass(frozen=True, kw_only=True)
class CardEntry:
    """A figure that is there, as written and in SI; ``low`` or ``high`` None: open at that end."""

    id: str
    section: str
    says: str
    written: str
    low: float | None
    high: float | None
    limit: float | None  #: the wear limit
    si_unit: str


@dataclass(frozen=True, kw_only=True)
class CardGap:
    """A figure that is missing, and where a workshop manual usually prints it."""

    id: str
    section: str
    says: str
    manual: str
    write: str  #: its form with blanks


@dataclass(frozen=True, kw_only=True)
class CardPressure:
    """A pressure of the sound engine, as written and in SI [rpm, K, Pa]."""

    written: str
    rpm: float
    oil: float | None
    pressure: float


@dataclass(frozen=True, kw_only=True)
class CardDocument:
    """Everything ``card`` answers."""

    card: str  #: path of the file
    name: str
    manual: str
    layout: str
    oil_grade: str
    filled: int
    possible: int  #: figures this engine can have
    there: tuple[CardEntry, ...]
    baseline: tuple[CardPressure, ...]  #: when the engine was sound
    missing: tuple[CardGap, ...]  #: the most useful first
    started: bool  #: whether the file was made just now
    command: str = field(metadata=NOT_IN_JSON)  #: that shows or fills this card, as typed


def card_document(card: Card, book: Book, *, started: bool = False) -> CardDocument:
    """Build the document of one card."""
    there = tuple(_entry(v) for v in sorted(card.values.values(), key=_place))
    missing = tuple(gap for _, gap in sorted(_gaps(card, book), key=lambda g: g[0]))
    path = str(card.path) if card.path else ""
    return CardDocument(
        card=path,
        name=card.name,
        manual=card.engine.manual,
        layout=card.engine.layout,
        oil_grade=card.oil_grade,
        filled=card.filled,
        possible=card.filled + len(missing),
        there=there,
        baseline=tuple(
            CardPressure(
                written=b.typed,
                rpm=b.reading.rpm,
                oil=b.reading.oil_temperature,
                pressure=b.reading.pressure,
            )
            for b in card.baseline
        ),
        missing=missing,
        started=started,
        command=f"diagnose card {as_typed(path)}",
    )


def _gaps(card: Card, book: Book) -> list[tuple[int, CardGap]]:
    """What the card lacks, each with its rank: the most useful have the lowest."""
    gaps = [
        (
            f.rank,
            CardGap(
                id=f.id,
                section=f.section.value,
                says=f.says,
                manual=f.manual,
                write=how_to_write(f, card.unit(f.dimension)),
            ),
        )
        for f in card.missing(book)
    ]
    if not card.oil_grade:
        gap = CardGap(
            id=GRADE,
            section=Section.OIL.value,
            says=GRADE_SAYS,
            manual=GRADE_MANUAL,
            write="20W-50 or SAE 30",
        )
        gaps.append((GRADE_RANK, gap))
    if not card.baseline:
        gap = CardGap(
            id=BASELINE,
            section=BASELINE,
            says=SOUND_SAYS,
            manual=SOUND_WHERE,
            write=WRITE_SOUND,
        )
        gaps.append((BASELINE_RANK, gap))
    return gaps


def _place(value: CardValue) -> tuple[int, int]:
    return list(Section).index(value.figure.section), value.figure.rank


def _entry(value: CardValue) -> CardEntry:
    figure = value.figure
    return CardEntry(
        id=figure.id,
        section=figure.section.value,
        says=figure.says,
        written=value.written,
        low=value.low,
        high=value.high,
        limit=value.worn,
        si_unit=DIMENSIONS[figure.dimension].si,
    )
