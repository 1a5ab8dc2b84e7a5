"""The documents of ``lookup`` and ``show``: words of the book, each field in plain values."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, fields
from enum import Enum
from typing import Any

from diagnose.inference.chaining import Facts, infer
from diagnose.lookup.finder import KINDS, Hit, Word
from diagnose.output.as_json import IF_GIVEN, only
from diagnose.output.documents.facts import fact_sentence
from diagnose.output.documents.named import Named, named
from diagnose.signoff.judging import figures
from diagnose.understanding.words.facts import Fact
from knowledge.book import Book
from knowledge.cautions import CAUTIONS
from knowledge.limits import Limit
from knowledge.model import (
    DOWN,
    STRONG_DOWN,
    STRONG_UP,
    UP,
    Cause,
    Finding,
    Measure,
    Shifts,
    Source,
)
from knowledge.rule_api import Computed, Inhibitor, InhibitorGroup, Link, LinkGroup
from knowledge.units import DIMENSIONS
from knowledge.units import show as shown
from knowledge.work import Band, Caution, Task

#: what a shift says of how common a cause is
OFTENER = {
    STRONG_UP: "much commoner",
    UP: "commoner",
    DOWN: "rarer",
    STRONG_DOWN: "much rarer",
}
MARKS = {STRONG_UP: "++", UP: "+", None: "0", DOWN: "-", STRONG_DOWN: "--"}  #: in JSON
#: how the fields of a word are called on the screen, where not by their own name
LABELS = {
    "access": "open first",
    "after": "called for by",
    "also": "also called",
    "always": "every repair",
    "asks": "asked as",
    "background": "without a fault",
    "bands": "accepted",
    "covers": "does away with",
    "costs": "costs through",
    "damage": "is damage",
    "decided_by": "that check shows",
    "decides": "to decide which",
    "denies": "if not there",
    "destroys": "lost by it",
    "follows": "if left",
    "for_causes": "renewed for",
    "for_places": "to close",
    "guards": "guards against",
    "hold": "if it fails",
    "holds_if_failed": "stops if failed",
    "keep": "record first",
    "limits": "maker's limit",
    "matches": "fits",
    "measure_first": "before ordering",
    "mechanism": "what it does",
    "needs_running": "engine running",
    "non_matches": "does not fit",
    "opens": "repair opens",
    "origins": "comes of",
    "plausible": "can be",
    "proofs": "proved by",
    "rate": "how common",
    "reveals": "shows",
    "shifts": "after",
    "side": "kind of limit",
    "spread": "usual error",
    "stage": "learned",
    "states": "states of oil",
    "station": "where",
    "typical": "usual",
    "waits_minutes": "waits, minutes",
}
#: what is shown of a word that refers to a quantity, or of links; of any other, every field
SHOWN: dict[type, tuple[str, ...]] = {
    Measure: (
        "id",
        "station",
        "says",
        "asks",
        "dimension",
        "plausible",
        "source",
        "spread",
        "also",
    ),
    Limit: ("id", "says", "dimension", "side", "typical", "source"),
    LinkGroup: ("id", "station", "says", "note", "links", "matches", "non_matches"),
    InhibitorGroup: ("id", "station", "says", "note", "inhibitors", "matches", "non_matches"),
}


@dataclass(frozen=True, kw_only=True)
class FoundWord:
    """A word that fits the phrase looked up, and how well, 0 to 1."""

    id: str
    kind: str
    says: str
    score: float


@dataclass(frozen=True, kw_only=True)
class HitsDocument:
    """Everything ``lookup`` of a phrase answers: what is understood of it, then words, best first."""

    understood: tuple[str, ...] | None = field(default=None, metadata=IF_GIVEN)
    hits: tuple[FoundWord, ...]


@dataclass(frozen=True, kw_only=True)
class Row:
    """A labelled row of a word: one text or several."""

    label: str
    texts: tuple[str, ...]


@dataclass(frozen=True, kw_only=True)
class BookWord:
    """A word of the book: its fields as JSON shows them, and as labelled rows."""

    word: Named
    kind: str
    fields: Mapping[str, Any]
    rows: tuple[Row, ...] = ()


@dataclass(frozen=True, kw_only=True)
class ListDocument:
    """Every word of one kind."""

    kind: str
    words: tuple[BookWord, ...] = field(metadata=only("fields"))


@dataclass(frozen=True, kw_only=True)
class ShowDocument:
    """Everything the book holds on one id; several words may have it."""

    words: tuple[BookWord, ...] = field(metadata=only("fields"))


def hits_document(
    hits: Sequence[Hit], understood: Sequence[Fact] = (), book: Book | None = None
) -> HitsDocument:
    """Build the document of a search; ``understood``: facts read of the phrase, of ``book``.

    What the facts are about goes before the other hits.
    """
    named = [*_named_by(understood, book)] if book else []
    every = {id(w): FoundWord(id=w.id, kind=kind_of(w), says=w.says, score=1.0) for w in named}
    for h in hits:
        found = FoundWord(id=h.word.id, kind=kind_of(h.word), says=h.word.says, score=h.score)
        every.setdefault(id(h.word), found)
    return HitsDocument(
        understood=tuple(fact_sentence(f, book) for f in understood)
        if book and understood
        else None,
        hits=tuple(every.values()),
    )


def _named_by(facts: Sequence[Fact], book: Book) -> Iterator[Word]:
    """The words of the book that facts are about."""
    for fact in facts:
        tables: tuple[Mapping[str, Word], ...] = (
            book.findings,
            book.measures,
            book.tasks,
            book.trials,
            book.areas,
            book.layouts,
        )
        what = str(fact.fields.get("what") or fact.fields.get("layout") or "")
        yield from (table[what] for table in tables if what in table)


def list_document(kind: str, words: Sequence[Word]) -> ListDocument:
    """Build the document of a list of words of one kind."""
    return ListDocument(kind=kind, words=tuple(_book_word(w) for w in words))


def show_document(words: Sequence[Word], book: Book) -> ShowDocument:
    """Build the document of every word of one id, with its links and the checks that show it."""
    return ShowDocument(
        words=tuple(_book_word(w, (*_own_rows(w), *_around(w, book))) for w in words)
    )


def kind_of(word: Word) -> str:
    """Return 'finding', 'cause' ..."""
    return next(name for name, (its, _) in KINDS.items() if isinstance(word, its))


def _book_word(word: Word, rows: tuple[Row, ...] = ()) -> BookWord:
    kind = kind_of(word)
    (name,) = named([word])
    return BookWord(word=name, kind=kind, fields={"kind": kind, **_plain(word)}, rows=rows)


def _own_rows(word: Word) -> Iterator[Row]:
    """Every field that is not empty, in the words a person reads."""
    values = _plain(word)
    if isinstance(word, Cause):
        values["shifts"] = [
            f"{fact.replace('_', ' ')}: {OFTENER[shift]}" for fact, shift in word.shifts.items()
        ]
    if isinstance(word, LinkGroup):
        values["links"] = [
            f"{k.strength.name.lower()}: {k.parent.id} to {k.child.id}; {_simple(k.source)}"
            for k in word.links
        ]
    if isinstance(word, InhibitorGroup):
        values["inhibitors"] = [
            f"{k.strength.name.lower()}: {k.child.id} while {k.parent.id}; {_simple(k.source)}"
            for k in word.inhibitors
        ]
    if "cautions" in values:
        values["cautions"] = [
            w.says for name in values["cautions"] for w in CAUTIONS[Caution(name)]
        ]
    if isinstance(word, Measure | Limit | Task):
        del values["dimension"]
    for key, value in values.items():
        if key != "says" and value not in ("", [], None, False):
            texts = value if isinstance(value, list) else [value]
            label = LABELS.get(key, key.replace("_", " "))
            yield Row(label=label, texts=tuple("yes" if t is True else str(t) for t in texts))


def _plain(word: Word) -> dict[str, Any]:
    """Every field of a word but what it does, as text, numbers and lists."""
    out: dict[str, Any] = {}
    for name in SHOWN.get(type(word)) or [each.name for each in fields(word)]:
        value = getattr(word, name)
        if name == "does":
            continue
        if name in ("plausible", "typical", "spread"):
            value = _figures(word, value, difference=name == "spread") if value else ""
        elif name == "bands":
            value = tuple(_band(band, word) for band in value)
        elif isinstance(value, Shifts):
            value = " ".join(MARKS[getattr(value, each.name)] for each in fields(value))
        out[name] = _simple(value)
    return out


def _figures(word: Any, value: float | tuple[float, ...], difference: bool) -> str:
    """Figures in the dimension's first unit; a spread of 2 K is one of 2 C."""
    dimension = DIMENSIONS[word.dimension]
    values = value if isinstance(value, tuple) else (value,)
    offset = dimension.units[0].offset if difference else 0.0
    return " to ".join(shown(v + offset, dimension) for v in values) if any(values) else ""


def _band(band: Band, word: Any) -> str:
    """What one source accepts, and for which engine or practice."""
    says = f" ({band.says})" if band.says else ""
    return f"{figures(band, word)}{says}; {_simple(band.source)}"


def _simple(value: Any) -> Any:
    if isinstance(value, Source):
        return f"{value.title} ({value.trust})" if value.trust else value.title
    if isinstance(value, Enum):
        return value.value if isinstance(value.value, str) else value.name.lower().replace("_", " ")
    if isinstance(value, Link | Inhibitor):
        return {each.name: _simple(getattr(value, each.name)) for each in fields(value)}
    if isinstance(value, Computed):
        return value.value
    if isinstance(value, Mapping):
        return [f"{_simple(key)}: {_degree(how)}" for key, how in value.items()]
    if isinstance(value, tuple | list):
        return [_simple(v) for v in value if v is not None]
    if hasattr(value, "has") and hasattr(value, "lacks") and hasattr(value, "readings"):
        there = [f.id for f in sorted(value.has, key=lambda f: f.id)]
        gone = [f"not {f.id}" for f in sorted(value.lacks, key=lambda f: f.id)]
        numbers = [f"{r.rpm:.0f} rpm" for r in value.readings] + [m.id for m, _ in value.measures]
        return ", ".join(there + gone + numbers)
    return getattr(value, "id", value)


def _degree(how: Any) -> str:
    """How surely a trial cures a cause, or how readily work brings one about, and its source.

    Of findings that another explains: their ids.
    """
    if isinstance(how, tuple) and all(isinstance(each, Finding) for each in how):
        return ", ".join(each.id for each in how)
    if isinstance(how, tuple):
        strength, source = how
        return f"{_simple(strength)}; {_simple(source)}"
    return f"{how:g}"


def _around(word: Word, book: Book) -> Iterator[Row]:
    """What leads to a word or keeps it away, and the reverse; the checks that show a finding."""
    stated = infer(book.statements, Facts())
    for label, upward, kind in (
        ("leads to", False, stated.links),
        ("comes of", True, stated.links),
        ("keeps away", False, stated.inhibitors),
        ("kept away by", True, stated.inhibitors),
    ):
        links: list[Link | Inhibitor] = sorted(kind, key=lambda k: -k.strength.value)
        ends = [
            (k.strength, k.parent if upward else k.child)
            for k in links
            if word is (k.child if upward else k.parent)
        ]
        if ends:
            texts = (f"{strength.name.lower()}: {end.says} [{end.id}]" for strength, end in ends)
            yield Row(label=label, texts=tuple(texts))
    seen_by = [i for i in book.inspections.values() if word in (*i.reveals, *i.measures)]
    if seen_by:
        yield Row(label="seen by", texts=tuple(map(str, named(seen_by))))
