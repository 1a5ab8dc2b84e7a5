"""What ``budget`` prints by default: one table for hot idle and cruise, and one sentence.

``text.budget`` has each account with its notes.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.output.documents.budget import BudgetAccount, BudgetDocument, BudgetShare
from diagnose.output.lines import as_typed, columns, width, wrapped
from diagnose.output.text.screen import Block, command_lines, on_screen, report_lines

FIGURE = 20  #: columns of a figure
SHARES = 8  #: measured findings in the table


def budget_brief(document: BudgetDocument) -> str:
    """Return the budget in about thirty lines, the next thing to do last."""
    blocks = [
        Block(wrapped(f"Pressure budget: {document.title or 'case without a title'}", 0, 2)),
        Block(_headline(document)),
        Block(wrapped(f"! {document.other_size}", 0, 2) if document.other_size else []),
        Block(list(_table(document))),
        Block(_verdict(document)),
        Block(wrapped(document.clean_first, 0, 2) if document.clean_first else [], space=False),
        Block(wrapped(document.differs, 0, 2) if document.differs else [], space=False),
        Block(wrapped(document.read_next, 0, 2) if document.read_next else [], space=False),
        Block(_trust(), spare=2, space=False),
        Block(_next_lines(document, _least_settled(document))),
    ]
    return on_screen(blocks)


def _table(document: BudgetDocument) -> Iterator[str]:
    """The rows of all accounts, side by side; the mean of each, its range in brackets."""
    accounts, scale = document.accounts, document.scale
    yield _row(f"Pressure in {scale.unit}", [a.at for a in accounts])
    yield _row("", [f"{a.rpm:.0f} rpm" for a in accounts])
    yield _row("a sound engine shows", [scale.figures(a.healthy) for a in accounts])
    if any(a.read is not None for a in accounts):
        read = [
            "-" if a.read is None else f"{'up to ' * a.read_at_most}{scale.figure(a.read)}"
            for a in accounts
        ]
        yield _row("the gauge reads", read)
        yield _row("missing", [scale.figures(a.missing) if a.missing else "-" for a in accounts])
    if not accounts[0].shares:
        return
    for at in _largest_first(accounts)[:SHARES]:
        figures = FIGURE * len(accounts) + 1
        *above, label = wrapped(accounts[0].shares[at].label, 2, 4, beside=figures)
        yield from above
        yield _row(label, [scale.figures(a.shares[at].share) for a in accounts])
    if len(accounts[0].shares) > SHARES:
        yield f"  and {len(accounts[0].shares) - SHARES} smaller: --full"
    yield _row("explained together", [scale.figures(a.explained) for a in accounts])
    if any(a.unexplained for a in accounts):
        rest = [scale.figures(a.unexplained) if a.unexplained else "-" for a in accounts]
        yield _row("still missing", rest)


def _largest_first(accounts: Sequence[BudgetAccount]) -> list[int]:
    """Places of the shares, the largest at the first account first."""
    shares: tuple[BudgetShare, ...] = accounts[0].shares
    return sorted(range(len(shares)), key=lambda i: -shares[i].share.mean)


def _row(label: str, figures: Sequence[str]) -> str:
    room = width() - FIGURE * len(figures)
    return label + " " * max(1, room - columns(label)) + "".join(f"{f:>{FIGURE}}" for f in figures)


def _headline(document: BudgetDocument) -> list[str]:
    if document.closed:
        return wrapped(f"{document.closed} The figures are from before the repair.", 0, 2)
    headline = document.headline
    return wrapped(f"{headline[:1].upper()}{headline[1:]}.", 0, 2) if headline else []


def _verdict(document: BudgetDocument) -> list[str]:
    if document.closed:
        return []
    first = _least_settled(document)
    if not document.accounts[0].shares:
        return wrapped(
            "Nothing measured bears on the oil circuit yet. Clearances (main, rod, cam, pump), the "
            "pickup gap, fuel in the oil or its viscosity would."
        )
    if first is None:
        why = document.not_compared or "No gauge reading with hot oil at a known speed."
        return wrapped(f"{why} So these are figures of the model alone.")
    return wrapped(f"{first.verdict.rstrip('.')} ({first.at}).")


def _least_settled(document: BudgetDocument) -> BudgetAccount | None:
    """The first account that surely does not close, else perhaps not; None where none was read."""
    read = [a for a in document.accounts if a.verdict]
    order = {False: 0, None: 1, True: 2}
    return min(read, key=lambda a: order[a.closed], default=None)


def _trust() -> list[str]:
    return wrapped("Good for trends: single figures may be off by 40 % without a [[baseline]].")


def _next_lines(document: BudgetDocument, first: BudgetAccount | None) -> list[str]:
    name = as_typed(document.case or "CASE")
    full = ["How it is shared out, and what was not used: --full"]
    if document.closed:
        return [*full, *report_lines(document.case or "CASE")]
    if first is not None and first.closed:
        return [*full, *command_lines("What a repair would give", f"diagnose forecast {name}")]
    return [*full, *command_lines("What to look at next", f"diagnose review {name}")]
