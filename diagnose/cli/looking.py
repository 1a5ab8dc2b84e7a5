"""``lookup`` and ``show``: the book itself."""

from __future__ import annotations

from dataclasses import fields
from enum import Enum
from typing import Any

from diagnose.cli import printing
from diagnose.errors import UsageError, nearest, plain
from diagnose.lookup.finder import KINDS, Finder, Hit, Word, shelf
from diagnose.lookup.tokens import tokens
from diagnose.output.lines import labelled, wrapped
from diagnose.signoff.judging import figures
from knowledge.book import Book, the_book
from knowledge.cautions import CAUTIONS
from knowledge.model import DOWN, STRONG_DOWN, STRONG_UP, UP, Cause, Limit, Measure, Shifts, Source
from knowledge.rule_api import Computed, Link, LinkGroup
from knowledge.units import DIMENSIONS
from knowledge.units import show as shown
from knowledge.work import Band, Caution, Task

USUAL = 8  #: hits shown where no number is asked for
#: what a shift says of how common a cause is
OFTENER = {
    STRONG_UP: "much commoner",
    UP: "commoner",
    DOWN: "rarer",
    STRONG_DOWN: "much rarer",
}
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
    "damage": "is damage",
    "denies": "if not there",
    "destroys": "lost by it",
    "follows": "if left",
    "for_causes": "renewed for",
    "for_places": "to close",
    "guards": "guards against",
    "hold": "if it fails",
    "keep": "record first",
    "limits": "maker's limit",
    "matches": "fits",
    "measure_first": "before ordering",
    "mechanism": "what it does",
    "needs_running": "engine running",
    "non_matches": "does not fit",
    "plausible": "can be",
    "rate": "how common",
    "reveals": "shows",
    "shifts": "after",
    "side": "kind of limit",
    "spread": "usual error",
    "stage": "learned",
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
}


def show_lookup(text: str, json: bool, most: int | None, sort: str) -> None:
    """Print the words of the book that fit, or a whole shelf of it."""
    wanted = _kind_named(sort) if sort else ""
    if text.strip():
        kinds = (KINDS[wanted][0],) if wanted else ()
        _show_hits(text, Finder(the_book()).find(text, kinds, most or USUAL), wanted, json)
    elif wanted:
        _show_shelf(shelf(the_book(), wanted)[:most], wanted, json)
    else:
        raise UsageError(
            "nothing to look up; write for instance: diagnose lookup needle dances, "
            f"or for a whole shelf --kind {', '.join(KINDS)}"
        )


def _kind_named(sort: str) -> str:
    """The kind a person named, also by its shelf. Raises UsageError with the nearest."""
    wanted = sort.strip().lower()
    for kind, (_, plural) in KINDS.items():
        if wanted in (kind, plural):
            return kind
    near = nearest(wanted, KINDS)
    raise UsageError(f"no kind '{plain(sort)}'; one of {', '.join(KINDS)}.{near}")


def _show_hits(text: str, hits: list[Hit], wanted: str, json: bool) -> None:
    if json:
        rows = [
            {"id": h.word.id, "kind": kind(h.word), "says": h.word.says, "score": h.score}
            for h in hits
        ]
        printing.data({"hits": rows})
    if not hits and not tokens(text) and text.isascii():
        raise UsageError(
            f"'{plain(text)}' alone says too little; add a word, for instance: "
            "diagnose lookup oil level"
        )
    if not hits:
        among = f" among the {KINDS[wanted][1]}" if wanted else ""
        raise UsageError(
            f"nothing in the book{among} sounds like '{plain(text)}'; try one plain word of it"
        )
    if not json:
        lines = [_line for h in hits for _line in labelled(kind(h.word), _named(h.word), 0, 12)]
        printing.answer("\n".join([*lines, "", f"More on one: diagnose show {hits[0].word.id}"]))


def _show_shelf(words: list[Word], wanted: str, json: bool) -> None:
    if json:
        rows = [{"kind": kind(w), **_plain(w)} for w in words]
        printing.data({"kind": wanted, "words": rows})
    else:
        printing.answer("\n".join(line for w in words for line in wrapped(_named(w), 0, 4)))


def _named(word: Word) -> str:
    return f"{word.says} [{word.id}]"


def kind(word: Word) -> str:
    """'finding', 'cause' ..."""
    return next(name for name, (its, _) in KINDS.items() if isinstance(word, its))


def find_word(name: str, book: Book) -> list[Word]:
    """Every word of that id, whatever its kind. Raises UsageError with the nearest."""
    wanted = name.strip().lower().replace("-", "_").replace(" ", "_")
    if not wanted:
        raise UsageError("which word? for instance: diagnose show needle_flickers")
    every = [w for kind in KINDS for w in shelf(book, kind)]
    found = [w for w in every if w.id == wanted]
    if not found:
        near = nearest(wanted, dict.fromkeys(w.id for w in every))
        raise UsageError(f"no '{plain(name)}' in the book.{near}{try_lookup(name)}")
    return found


def try_lookup(name: str) -> str:
    """' Try: diagnose lookup …', with the words in ``name``, if any."""
    words = "".join(c if c.isalnum() else " " for c in name[:60]).split()
    return f" Try: diagnose lookup {' '.join(words)}" if words else ""


def show_word(name: str, json: bool) -> None:
    """Print all that the book holds on one word."""
    book = the_book()
    words = find_word(name, book)
    if json:
        printing.data({"words": [{"kind": kind(w), **_plain(w)} for w in words]})
        return
    lines = []
    for word in words:
        lines += ["", *wrapped(f"{kind(word)}: {word.says}")]
        for key, value in _told(word).items():
            if key != "says" and value not in ("", [], None, False):
                label = LABELS.get(key, key.replace("_", " "))
                for i, part in enumerate(value if isinstance(value, list) else [value]):
                    lines += labelled(label if i == 0 else "", _said(part), 2, 18)
        lines += _around(word, book)
    printing.answer("\n".join(lines[1:]))


def _told(word: Word) -> dict[str, Any]:
    """Every field in the words a person reads."""
    out = _plain(word)
    if isinstance(word, Cause):
        out["shifts"] = [
            f"{fact.replace('_', ' ')}: {OFTENER[shift]}" for fact, shift in word.shifts.items()
        ]
    if isinstance(word, LinkGroup):
        out["links"] = [
            f"{k.strength.name.lower()}: {k.parent.id} to {k.child.id}; {_simple(k.source)}"
            for k in word.links
        ]
    if "cautions" in out:
        out["cautions"] = [w.says for name in out["cautions"] for w in CAUTIONS[Caution(name)]]
    if isinstance(word, Measure | Limit | Task):
        del out["dimension"]
    return out


def _said(value: Any) -> str:
    return "yes" if value is True else str(value)


def _plain(word: Word) -> dict[str, Any]:
    """Every field of a word but what it does, as text, numbers and lists."""
    out: dict[str, Any] = {}
    for name in SHOWN.get(type(word)) or [field.name for field in fields(word)]:
        value = getattr(word, name)
        if name == "does":
            continue
        if name in ("plausible", "typical", "spread"):
            value = _figures(word, value, difference=name == "spread") if value else ""
        elif name == "bands":
            value = tuple(_band(band, word) for band in value)
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
    if isinstance(value, Shifts):
        return {fact: _simple(shift) for fact, shift in value.items()}
    if isinstance(value, Link):
        return {field.name: _simple(getattr(value, field.name)) for field in fields(value)}
    if isinstance(value, Computed):
        return value.value
    if isinstance(value, tuple | list):
        return [_simple(v) for v in value if v is not None]
    if hasattr(value, "has") and hasattr(value, "lacks") and hasattr(value, "readings"):
        there = [f.id for f in sorted(value.has, key=lambda f: f.id)]
        gone = [f"not {f.id}" for f in sorted(value.lacks, key=lambda f: f.id)]
        numbers = [f"{r.rpm:.0f} rpm" for r in value.readings] + [m.id for m, _ in value.measures]
        return ", ".join(there + gone + numbers)
    return getattr(value, "id", value)


def _around(word: Word, book: Book) -> list[str]:
    """Who reveals a finding; what a cause or condition brings about."""
    from diagnose.inference.chaining import Facts, infer

    links = infer(book.statements, Facts()).links
    lines = []
    down = [k for k in links if k.parent is word]
    up = [k for k in links if k.child is word]
    for label, these in (("leads to", down), ("comes of", up)):
        for i, link in enumerate(sorted(these, key=lambda k: -k.strength.value)):
            other = link.child if label == "leads to" else link.parent
            text = f"{link.strength.name.lower()}: {_named(other)}"
            lines += labelled(label if i == 0 else "", text, 2, 18)
    seen_by = [i for i in book.inspections.values() if word in (*i.reveals, *i.measures)]
    for i, inspection in enumerate(seen_by):
        lines += labelled("seen by" if i == 0 else "", _named(inspection), 2, 18)
    return lines
