"""What ``budget`` prints: pressure missing, what explains it, what is left."""

from __future__ import annotations

from diagnose.output.documents.budget import BudgetAccount, BudgetDocument, BudgetRow
from diagnose.output.lines import columns, together, width, wrapped


def budget_text(document: BudgetDocument) -> str:
    """Return the budget as lines for a terminal."""
    return together(
        [
            wrapped(f"Pressure budget: {document.title or 'case without a title'}", 0, 2),
            wrapped(f"In short: {document.headline}.", 0, 2) if document.headline else [],
            wrapped(document.closed, 0, 2) if document.closed else [],
            *(_account(a) for a in document.accounts),
            wrapped(document.differs, 0, 2) if document.differs else [],
            wrapped(document.read_next, 0, 2) if document.read_next else [],
            [] if document.accounts[0].shares else _nothing(),
            _notes(document),
        ]
    )


def _account(account: BudgetAccount) -> list[str]:
    lines = wrapped(account.heading, 0, 2)
    heading = "  of which" if account.missing else "  of which is lost to"
    for before, row in zip((None, *account.rows), account.rows, strict=False):
        if row.is_share and not (before and before.is_share):
            lines.append(heading)
        lines += _row(row, 4 if row.is_share else 2)
    if account.verdict:
        lines += wrapped(account.verdict, 2, 4)
    if account.starved > 0.1:
        lines += wrapped(
            f"In {100 * account.starved:.0f} % of plausible engines the faults found leave the "
            "bearings no oil at all here.",
            2,
            4,
        )
    return lines


def _row(row: BudgetRow, indent: int) -> list[str]:
    """The words at the left, the figure in its column at the right."""
    column = width() - 24
    lines = wrapped(row.says, indent, indent + 2)
    last = lines[-1]
    if columns(last) >= column:
        return [*lines, " " * column + row.figure]
    lines[-1] = last + " " * (column - columns(last)) + row.figure
    return lines


def _nothing() -> list[str]:
    return wrapped(
        "Nothing measured in this case bears on the circuit. Measured clearances (main, rod, cam, "
        "pump), pickup gap, fuel or viscosity by the laboratory would."
    )


def _notes(document: BudgetDocument) -> list[str]:
    way = "over every order of putting them right"
    if not document.exact:
        way = "over many random orders of putting them right (too many findings for all)"
    lines = wrapped(
        f"Each share is the mean gain {way} (Shapley), so it does not depend on which was found "
        "first, and the shares add up. Means; in brackets the range of nine plausible engines in "
        "ten. The model is good for trends; single figures may be off by some 40 % unless the case "
        "has a [[baseline]]. Bearings not measured are taken to be like those that were.",
    )
    if document.unused:
        unused = ", ".join(document.unused)
        lines += wrapped(f"Not used, as the circuit has no such figure: {unused}.")
    return lines
