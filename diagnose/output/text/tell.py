"""What ``tell`` prints: numbered facts with their words, what is left over, a minute's answer."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from diagnose.output.documents.tell import AccountDocument, MinuteDocument
from diagnose.output.lines import as_typed, headed, percent, wrapped
from diagnose.output.text.alarms import FEW_STOPS, alarm_lines


def account_lines(document: AccountDocument) -> list[str]:
    """Return each fact with its number and the words it came from, then what is left over."""
    lines = []
    for fact in document.understood:
        lines += wrapped(f"{fact.number:3}  {fact.says}", 0, 5)
        lines += wrapped(f"“{fact.words}”", 7, 8)
    if document.instead:
        lines += wrapped(f"Changes the case: {document.instead}", 0, 2)
    if not document.understood:
        lines.append("Nothing of it was understood.")
    if document.not_understood:
        pieces = "; ".join(f"“{piece}”" for piece in document.not_understood)
        lines += wrapped(f"Not understood: {pieces}", 0, 7)
    return lines


def changed_lines(before: AccountDocument, now: AccountDocument) -> list[str]:
    """Return the facts that a correction changed or added, what it struck out, the count.

    After a strike each fact that is left is named too, without its words.
    """
    old = {fact.number: fact for fact in before.understood}
    new = tuple(f for f in now.understood if old.get(f.number) != f)
    left = [piece for piece in now.not_understood if piece not in before.not_understood]
    lines = account_lines(replace(now, understood=new, not_understood=tuple(left))) if new else []
    gone = sorted(old.keys() - {fact.number for fact in now.understood})
    if gone:
        lines.append(f"Deleted: {', '.join(map(str, gone))}")
        for fact in now.understood:
            lines += wrapped(f"{fact.number:3}  {fact.says}", 0, 5)
    return [*lines, f"{len(now.understood)} facts in all."]


def minute_lines(document: MinuteDocument) -> list[str]:
    """Return stop or run on, where it probably is, what to check in which order, what to do next."""
    lines, name = _other_numbers(document.numbers), as_typed(document.case)
    more = f"diagnose review {name} --full"
    lines += alarm_lines(document.alarms, stops=FEW_STOPS, more=more)
    lines += wrapped(document.verdict, 0, 2) if document.verdict else []
    if document.within_limits:
        kept = "; ".join(document.within_limits)
        lines += wrapped(f"Within limits: {kept}. The engine maker's limits come first.", 0, 2)
    next_ = f"diagnose {document.next} {name}"
    saved = wrapped(f"saved in {name}. Next: {next_}", 0, 2, whole=[name, next_])
    if document.nothing_amiss:
        return [*lines, "No reading is low, and no other sign was understood.", *saved]
    if document.damage:
        said = "; ".join(f"{d.says} ({percent(d.probability)})" for d in document.damage)
        lines += wrapped(f"Damaged by now: {said}", 0, 2)
    if not document.known:
        lines.append("No cause is likelier than another yet.")
    elif document.stands_out:
        lines.append("Likeliest")
        for number, place in enumerate(document.places, 1):
            lines += headed(f"{number:3}. ", f"{place.says} ({percent(place.probability)})")
    else:
        lines.append("No single cause stands out; likeliest places")
        for number, at in enumerate(document.stations, 1):
            share = percent(at.probability)
            lines += headed(f"{number:3}. ", f"{at.says} ({share}), such as {at.cause}")
    if document.first_step:
        lines += wrapped(f"First: {document.first_step}", 0, 2)
    if document.checks:
        lines.append(_heading_of_checks(document))
        for number, check in enumerate(document.checks, 1):
            lines += headed(f"{number:3}. ", f"{check.says} ({check.minutes:.0f} min)")
    return lines + saved


def _heading_of_checks(document: MinuteDocument) -> str:
    if document.to_be_mended:
        return "Before you put it right"
    return "Check then, in this order" if document.first_step else "Check first, in this order"


def _other_numbers(numbers: Mapping[int, int]) -> list[str]:
    """Say under which numbers facts were saved, where these are not those they were shown with."""
    runs: list[list[tuple[int, int]]] = []
    for fact, entry in sorted(numbers.items()):
        if runs and runs[-1][-1] == (fact - 1, entry - 1):
            runs[-1].append((fact, entry))
        elif fact != entry:
            runs.append([(fact, entry)])
    if not runs:
        return []
    said = "; ".join(_renumbered(run[0], run[-1]) for run in runs)
    return wrapped(f"To take one back, use its number in the file: {said}", 0, 2)


def _renumbered(first: tuple[int, int], last: tuple[int, int]) -> str:
    """One run of neighbours, each a fact and its entry."""
    if first == last:
        return f"fact {first[0]} is entry {first[1]}"
    return f"facts {first[0]}-{last[0]} are entries {first[1]}-{last[1]}"
