"""What ``bearings`` prints: one line for each bearing, the order, the next thing to do."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.output.documents.bearings import BearingRow, BearingsDocument
from diagnose.output.lines import as_typed, headed, together, wrapped

MOST_LINES = 13  #: bearings shown one by one; of more, those that are right share a line


def bearings_text(document: BearingsDocument, *, full: bool = False, saved: int = 0) -> str:
    """Return the bearings as lines for a terminal.

    ``full``: with the arithmetic and sources. ``saved``: so many readings were just written.
    """
    lines = wrapped(f"{document.title}: {document.count}")
    if saved and document.case:
        name = as_typed(document.case)
        what = "1 reading" if saved == 1 else f"{saved} readings"
        lines += wrapped(f"{what} saved in {name}", 0, 2, whole=[name])
    blocks = [lines + (_rows(document) if document.bearings else [])]
    if full:
        blocks += [_arithmetic(document), _advice(document), _instruments(document)]
    whose = wrapped(f"! {document.other_size}", 0, 2) if document.other_size else []
    blocks += [
        [*_wanted(document, full), *_order(document, full), *_pressure(document, full), *whose]
    ]
    blocks += [_next_lines(document)]
    return together(blocks)


def _rows(document: BearingsDocument) -> list[str]:
    rows = sorted(document.bearings, key=lambda r: r.rank)
    wide = max(len(r.clearance) for r in rows)
    head = f"  {'bearing':8}{'clearance':{max(wide, 9)}} {'oval':>6} {'taper':>6}  verdict"
    lines = [head]
    doubt = headed("Check: ", document.doubt) if document.doubt else []
    shown = rows if len(rows) <= MOST_LINES else [r for r in rows if r.flags]
    for row in shown:
        lines += _row(row, max(wide, 9))
    return [*lines, *_sound([r for r in rows if r not in shown]), *doubt]


def _row(row: BearingRow, wide: int) -> list[str]:
    mark = "!" if row.flags else " "
    head = f"{mark} {row.bearing:8}{row.clearance:{wide}} {row.oval:>6} {row.taper:>6}  "
    return headed(head, row.verdict)


def _sound(rows: list[BearingRow]) -> Iterator[str]:
    """Those that are right, in a line for each kind."""
    for kind in ("main", "rod"):
        mine = [r for r in rows if r.bearing.startswith(kind) and r.clearance_mm is not None]
        if mine:
            ordered = sorted(mine, key=lambda r: r.clearance_mm or 0.0)
            yield from wrapped(
                f"{len(mine)} more {kind}s: {ordered[0].clearance} to {ordered[-1].clearance}, "
                "nothing wrong",
                2,
                4,
            )


def _wanted(document: BearingsDocument, full: bool) -> list[str]:
    if not full:
        text = "; ".join(t.brief for t in document.targets)
        return headed("Wanted: ", f"{text} (sources: --full)") if text else []
    return [
        line
        for i, t in enumerate(document.targets)
        for line in headed("Wanted: " if i == 0 else "        ", t.line)
    ]


def _order(document: BearingsDocument, full: bool) -> list[str]:
    """The shells; what is unclear yet; what to know before the order is sent."""
    texts = [row.says if full else row.brief for row in document.orders]
    texts += document.held
    if document.unclear:
        texts.append(f"{', '.join(document.unclear)}: after its journal is measured")
    lines = [
        line
        for i, text in enumerate(texts)
        for line in headed("Order:  " if i == 0 else "        ", text)
    ]
    if full:
        notes = (*document.grinding, *document.notes)
        return [*lines, *(line for note in notes for line in wrapped(note, 8, 8))]
    return lines + (["        before you order, read the notes: --full"] if document.notes else [])


def _pressure(document: BearingsDocument, full: bool) -> list[str]:
    if not document.hot_idle:
        return []
    if full:
        wide = max(len(row.choice) for row in document.hot_idle)
        lines = [f"Gauge:  hot idle, {document.hot_idle_at}"]
        return [*lines, *(f"        {r.choice:{wide}}  {r.figure}" for r in document.hot_idle)]
    first, *others = document.hot_idle[:2]
    said = "; ".join(
        [
            f"{first.choice} {first.figure}",
            *(
                f"{row.choice} and nothing else put right "
                f"{'the same' if row.figure == first.figure else row.figure}"
                for row in others
            ),
        ]
    )
    return headed("Gauge:  ", f"hot idle, {document.hot_idle_at}: {said}")


def _next_lines(document: BearingsDocument) -> list[str]:
    says, *commands = document.next
    lines = headed("Next: ", says)
    return [*lines, *(f"  {command}" for command in commands)]


def _arithmetic(document: BearingsDocument) -> list[str]:
    lines = ["The arithmetic, line by line (± covers nineteen readings in twenty)"]
    for row in document.bearings:
        lines.append(f"  {row.bearing}")
        for each in row.arithmetic:
            lines += wrapped(each, 4, 6)
    return lines if document.bearings else []


def _advice(document: BearingsDocument) -> list[str]:
    lines = []
    for target in document.targets:
        lines.append(
            f"Clearance of {target.kind}, sources side by side (the first that fits is used)"
        )
        for advice in target.advice:
            lines += wrapped(f"{advice.band}: {advice.says} [{advice.key}]", 2, 4)
    sources = {a.key: a.source for t in document.targets for a in t.advice}
    return [
        *lines,
        *(line for k, title in sources.items() for line in wrapped(f"[{k}] {title}", 2, 4)),
    ]


def _instruments(document: BearingsDocument) -> list[str]:
    lines = []
    if document.made_sizes:
        lines = headed("Shells chosen from: ", "; ".join(document.made_sizes))
    lines.append("Errors of the instruments, and limits of form")
    return [*lines, *(line for i in document.instruments for line in wrapped(i, 2, 4))]
