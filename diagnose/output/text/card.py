"""What ``card`` prints: one screen of what is there and what is missing."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby
from pathlib import PurePath

from diagnose.output.documents.card import CardDocument, CardEntry
from diagnose.output.lines import labelled, together, wrapped
from knowledge.engines.layouts import UNKNOWN

MOST_MISSING = 4  #: shown unless all are asked for
MOST_SAID = 110  #: characters of a table's figures, unless all are asked for
SIZES = "sizes"  #: the table of which only the ids are shown, unless all is asked for
SHORT, WIDE = 12, 25  #: columns of a table's name, of a figure's id


def card_text(document: CardDocument, *, full: bool = False) -> str:
    """Return the card as lines for a terminal; ``full``: every figure that is missing."""
    of = f"{document.filled} of {document.possible} figures"
    kind = "" if document.layout == UNKNOWN.id else f" ({document.layout})"
    head = wrapped(f"Card of {document.name}{kind}: {of}")
    if document.manual:
        head += wrapped(f"from {document.manual}", 2)
    if document.started:
        head = wrapped(f"Written: {document.card}, {of} filled in.")
    return together(
        [head, _figures_there(document, full), _missing(document, full), _next_lines(document)]
    )


def _figures_there(document: CardDocument, full: bool) -> list[str]:
    lines = []
    for section, entries in groupby(document.there, key=lambda e: e.section):
        there = list(entries)
        said = "; ".join(f"{e.id} {e.written}" for e in there)
        if not full:
            said = _brief(there)
        lines += labelled(section, said, column=SHORT + 3)
    if document.baseline:
        sound = "; ".join(b.written for b in document.baseline)
        lines += labelled("baseline", sound, column=SHORT + 3)
    if document.oil_grade:
        lines += labelled("grade", document.oil_grade, column=SHORT + 3)
    return ["There", *lines] if lines else []


def _brief(there: Sequence[CardEntry]) -> str:
    """The first figures of a table, as many as fit in two lines, and how many more there are."""
    only_names = there[0].section == SIZES
    said: list[str] = []
    for i, each in enumerate(there):
        one = each.id if only_names else f"{each.id} {each.written}"
        left = len(there) - i - 1
        rest = f"; {left} more" if left else ""
        if said and len("; ".join([*said, one])) + len(rest) > MOST_SAID:
            return "; ".join(said) + f"; {left + 1} more"
        said.append(one)
    return "; ".join(said)


def _missing(document: CardDocument, full: bool) -> list[str]:
    if not document.missing:
        return ["Nothing is missing."]
    shown = document.missing if full else document.missing[:MOST_MISSING]
    lines = ["Missing, the most useful first, and where a manual usually prints it"]
    for gap in shown:
        about = f"{gap.says} [{gap.manual}]" if full else gap.manual
        lines += labelled(gap.id, about, column=WIDE + 3)
    left = len(document.missing) - len(shown)
    return [*lines, *wrapped(f"and {left} more: {document.command} --full", 2)] if left else lines


def _next_lines(document: CardDocument) -> list[str]:
    lines = []
    if document.missing:
        gap = document.missing[0]
        example = f'{document.command} {gap.id}="{gap.write}"'
        lines += wrapped(f"Fill one in, a figure for each _: {example}", whole=[example])
    name = PurePath(document.card).name
    return [
        *lines,
        *wrapped(f'A job in the same folder uses it by card = "{name}" under its [engine].'),
    ]
