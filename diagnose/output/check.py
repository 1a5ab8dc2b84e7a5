"""The check of the whole book as text and as data."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from diagnose.bookcheck.distinguishability import SURE, TELLING, Likeness, Pair
from diagnose.bookcheck.everything import Checked
from diagnose.bookcheck.shapes import Result
from diagnose.output.lines import headed, labelled, percent, together, wrapped

MOST_PAIRS = 12  #: shown where not all are asked for


def check(found: Checked, whole_lists: bool = False) -> str:
    """What was checked with counts, then each fault, then who cannot be told apart."""
    return together(
        [
            [line for result in found.results for line in _result(result)],
            [line for result in found.results for line in _faults(result)],
            _apart(found.alike, whole_lists),
            _silent(found, whole_lists),
            wrapped(verdict(found)),
        ]
    )


def verdict(found: Checked) -> str:
    """One sentence: how many faults, or that there are none."""
    if not found.faults:
        return "Nothing is wrong with the book."
    return f"{found.faults:,} {'thing is' if found.faults == 1 else 'things are'} wrong."


def _result(result: Result) -> list[str]:
    counted = ", ".join(f"{many:,} {what}" for what, many in result.counts.items())
    wrong = f"; {len(result.faults):,} WRONG" if result.faults else ""
    return labelled(result.id, f"{result.says}: {counted}{wrong}", 0, 12)


def _faults(result: Result) -> Iterator[str]:
    for fault in result.faults:
        yield from headed("- ", fault)


def _apart(alike: Likeness, whole_lists: bool) -> list[str]:
    lines = wrapped(
        f"{alike.neighbours:,} pairs of causes look alike. Of these "
        f"{_many(len(alike.never))} cannot be told apart by any one finding, and "
        f"{len(alike.opened):,} more only by one behind a cover. (Told apart: something found, or "
        f"found wanting, in at least {percent(SURE)} of the cases of one, and {TELLING:.0f} times "
        "likelier there.)"
    )
    lines += _listed("Never told apart:", alike.never, whole_lists)
    if whole_lists:
        lines += _listed("Only behind a cover:", alike.opened, whole_lists)
    elif alike.opened:
        lines += wrapped("--all lists them.")
    return lines


def _listed(title: str, pairs: tuple[Pair, ...], whole_lists: bool) -> Iterator[str]:
    if pairs:
        yield title
    shown = pairs if whole_lists else pairs[:MOST_PAIRS]
    for pair in shown:
        text = f"{pair.one.id} and {pair.other.id}, on {_of(pair.layouts, 'layout')}"
        yield from headed("  ", text)
    if len(shown) < len(pairs):
        yield f"  and {len(pairs) - len(shown):,} more; --all lists them"


def _silent(found: Checked, whole_lists: bool) -> list[str]:
    if not found.cases:
        return []
    lines = wrapped(
        f"Tried on {_of(found.cases, 'case')}: {len(found.silent):,} rules spoke in none of them."
    )
    if whole_lists and found.silent:
        lines += wrapped(", ".join(r.id for r in found.silent), 2)
    return lines


def _many(number: int) -> str:
    return f"{number:,}" if number else "none"


def _of(many: int, what: str) -> str:
    return f"1 {what}" if many == 1 else f"{many:,} {what}s"


def data(found: Checked) -> dict[str, Any]:
    """All of it, lists whole."""
    return {
        "faults": found.faults,
        "checks": [
            {"id": r.id, "says": r.says, "counts": dict(r.counts), "faults": list(r.faults)}
            for r in found.results
        ],
        "neighbours": found.alike.neighbours,
        "never_told_apart": [_pair(p) for p in found.alike.never],
        "told_apart_behind_a_cover": [_pair(p) for p in found.alike.opened],
        "cases": found.cases,
        "silent_rules": [r.id for r in found.silent],
    }


def _pair(pair: Pair) -> dict[str, Any]:
    return {"causes": [pair.one.id, pair.other.id], "layouts": pair.layouts}
