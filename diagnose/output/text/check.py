"""``check`` on a terminal: counts, then each fault, then the causes no finding distinguishes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.output.documents.check import AlikePair, CheckDocument, CheckedPart
from diagnose.output.lines import headed, labelled, percent, together, wrapped

MOST_PAIRS = 12  #: shown where not all are asked for


def check_text(document: CheckDocument, whole_lists: bool = False) -> str:
    """Render the check as text; with ``whole_lists`` no list is cut short."""
    return together(
        [
            [line for part in document.checks for line in _counts(part)],
            [
                line
                for part in document.checks
                for fault in part.faults
                for line in headed("- ", fault)
            ],
            _alike(document, whole_lists),
            _silent(document, whole_lists),
            wrapped(verdict(document.faults)),
        ]
    )


def verdict(faults: int) -> str:
    """Say how many faults there are.

    >>> verdict(1)
    '1 thing is wrong.'
    """
    if not faults:
        return "Nothing is wrong with the book."
    return f"{faults:,} {'thing is' if faults == 1 else 'things are'} wrong."


def _counts(part: CheckedPart) -> list[str]:
    counted = ", ".join(f"{many:,} {what}" for what, many in part.counts.items())
    wrong = f"; {len(part.faults):,} WRONG" if part.faults else ""
    return labelled(part.id, f"{part.says}: {counted}{wrong}", 0, 12)


def _alike(document: CheckDocument, whole_lists: bool) -> list[str]:
    never, opened = document.never_distinguished, document.distinguished_behind_a_cover
    lines = wrapped(
        f"{document.neighbours:,} pairs of causes are similar. No single finding distinguishes "
        f"{_number(len(never))} of them, and only findings behind a cover {len(opened):,} more. (A "
        f"finding distinguishes two causes where it, or its absence, comes with at least "
        f"{percent(document.sure)} of the cases of one and is {document.telling:.0f} times likelier "
        "there.)"
    )
    lines += _pair_lines("Indistinguishable:", never, whole_lists)
    if whole_lists:
        lines += _pair_lines("Only behind a cover:", opened, whole_lists)
    elif opened:
        lines += wrapped("--all lists them.")
    return lines


def _pair_lines(title: str, pairs: Sequence[AlikePair], whole_lists: bool) -> Iterator[str]:
    if pairs:
        yield title
    shown = pairs if whole_lists else pairs[:MOST_PAIRS]
    for pair in shown:
        yield from headed(
            "  ", f"{' and '.join(pair.causes)}, on {_counted(pair.layouts, 'layout')}"
        )
    if len(shown) < len(pairs):
        yield f"  and {len(pairs) - len(shown):,} more; --all lists them"


def _silent(document: CheckDocument, whole_lists: bool) -> list[str]:
    if not document.cases:
        return []
    lines = wrapped(
        f"Run on {_counted(document.cases, 'case')}: {len(document.silent_rules):,} rules and link groups "
        "fired in none of them."
    )
    if whole_lists and document.silent_rules:
        lines += wrapped(", ".join(document.silent_rules), 2)
    return lines


def _number(number: int) -> str:
    return f"{number:,}" if number else "none"


def _counted(many: int, what: str) -> str:
    return f"1 {what}" if many == 1 else f"{many:,} {what}s"
