"""What ``signoff --start`` prints by default: pressures to expect, limits in a line each.

``text.first_start`` has every limit with its sources.
"""

from __future__ import annotations

from diagnose.output.documents.first_start import FirstStartDocument
from diagnose.output.documents.named import UNTITLED
from diagnose.output.documents.signoff_items import SignoffItem
from diagnose.output.lines import as_typed, headed, percent, width, wrapped
from diagnose.output.text.first_start import unpredicted
from diagnose.output.text.screen import Block, command_lines, cut, on_screen

BLOCKING, CAUSES = 2, 3  #: shown


def first_start_brief(document: FirstStartDocument) -> str:
    """Return the first start's figures and limits on one screen, what to type last."""
    care = wrapped(f"Take care: {'; '.join(document.care)}.", 0, 2) if document.care else []
    blocks = [
        Block([cut(f"First start: {document.title or UNTITLED}", width())]),
        Block(_held_up(document)),
        Block(_predicted(document)),
        Block(care),
        *_watch(document),
        Block(_read(document)),
        Block(_reopened(document)),
        Block(_next_lines(document)),
    ]
    return on_screen(blocks, tight=True)


def _held_up(document: FirstStartDocument) -> list[str]:
    if not document.blocking:
        return []
    checks = len(document.blocking)
    many = f"{checks} checks are" if checks > 1 else "one check is"
    first = "; ".join(t.says for t in document.blocking[:BLOCKING])
    return wrapped(f"DO NOT START YET: {many} open or failed: {first}.", 0, 2)


def _predicted(document: FirstStartDocument) -> list[str]:
    table = document.table
    if table is None:
        return unpredicted(document)
    right = "all but what is left put right" if document.left else "all faults put right"
    whose = "A test gauge would show" if document.by_lamp else "The gauge should show"
    lines = [f"{whose} with {right}, {table.unit}: mean (nine in ten)"]
    lines.append("  oil        " + "".join(f"{f'{rpm} rpm':>16}" for rpm in table.speeds))
    for row in table.rows:
        lines.append(f"  {row.heat:10} " + "".join(f"{cell:>16}" for cell in row.cells))
    return lines


def _watch(document: FirstStartDocument) -> list[Block]:
    if not document.watch:
        none = "Nothing you opened needs watching at the start; every limit of a first start"
        command = f"diagnose signoff {as_typed(document.path)} --start --whole-engine"
        return [Block(command_lines(none, command))]
    first = [i for i in document.watch if not i.limits]
    lines = ["Watch, and shut down at the limit (each with its source: --all)"]
    lines += [line for i in document.watch if i.limits for line in _limit(i)]
    lines += wrapped("; ".join(_head(i.says) for i in first), 2, 4) if first else []
    return [Block(lines, spare=1 if document.reopened else 0)]


def _head(says: str) -> str:
    """What stands before the colon of a sight, or after it where one word stands before it."""
    head, _, rest = says.partition(": ")
    return head if " " in head else rest or head


def _limit(item: SignoffItem) -> list[str]:
    """A watch with its deciding limit, the source left to the whole text."""
    return headed(f"  {item.deciding:17}  ", item.says)


def _read(document: FirstStartDocument) -> list[str]:
    lines = ["Read so far"] if document.read else []
    for text in document.read_says:
        lines += wrapped(text, 2, 4)
    return lines


def _reopened(document: FirstStartDocument) -> list[str]:
    if not document.reopened:
        return []
    lines = wrapped("Less than predicted: look again. From these readings, likeliest first:")
    for cause in document.reopened[:CAUSES]:
        lines += headed(f"  {percent(cause.probability):>6}  ", cause.says)
    return lines


def _next_lines(document: FirstStartDocument) -> list[str]:
    name = as_typed(document.path)
    if document.reopened:
        return command_lines("Next", f"diagnose review {name}")
    if document.blocking:
        return command_lines("First", f"diagnose signoff {name}")
    if document.by_lamp:
        command = f'diagnose record {name} --after-repair "light out at once, stays out hot"'
        return command_lines("Write down what the lamp does", command)
    reading = f'"800 rpm {document.example} direct start"'
    command = f"diagnose record {name} --reading {reading}"
    return command_lines("Write down cold idle, then every few minutes", command)
