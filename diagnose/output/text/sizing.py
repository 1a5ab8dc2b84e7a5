"""What ``sizing`` prints: one screen on pump, relief valve and oil; ``full`` adds the rest."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.output.documents.sizing import BRANCHES, SizingDocument
from diagnose.output.lines import percent, together, wrapped

FEW_OILS = 4  #: grades shown on one screen
NAMES, WIDE = 17, 12  #: columns of a row's name, of a figure


def sizing_text(document: SizingDocument, *, full: bool = False) -> str:
    """Return pump, relief and oil as lines for a terminal; ``full``: with everything."""
    head = [
        *wrapped(f"Sizing: {document.title or 'case without a title'}", 0, 2),
        *wrapped(document.wanted),
    ]
    if not document.fits:
        head += wrapped(
            "! The circuit does not agree with the readings: these are figures of its dimensions "
            "alone. What could explain it: diagnose forecast.",
            0,
            2,
        )
    blocks = [head, _pump(document), _choices(document), _spring(document, full)]
    if full:
        blocks += [_oils(document, full), _needs(document), _taken(document), _notes(document)]
    else:
        blocks += [[*_oils(document, full), *_notes(document, brief=True)]]
    return together(blocks)


def _pump(document: SizingDocument) -> list[str]:
    lines = wrapped(f"Pump: {document.pump.says}", 0, 2)
    for warning in filter(None, (document.leak_first, document.other_size)):
        lines += wrapped(f"! {warning}", 0, 2)
    return lines


def _table(heads: Sequence[str], rows: Sequence[Sequence[str]], first: str) -> list[str]:
    """A table of names and figures; each figure as wide as the widest of its column."""
    widths = [
        max(len(x) for x in column) for column in zip(heads, *(r[1:] for r in rows), strict=True)
    ]
    names = max(len(first), *(len(r[0]) + 2 for r in rows))
    lines = [
        first.ljust(names) + "".join(f"  {h:>{w}}" for h, w in zip(heads, widths, strict=True))
    ]
    for row in rows:
        figures = "".join(f"  {x:>{w}}" for x, w in zip(row[1:], widths, strict=True))
        lines.append(f"  {row[0]}".ljust(names) + figures)
    return lines


def _choices(document: SizingDocument) -> list[str]:
    return [
        *_table(document.heads, [c.row for c in document.choices], "Change"),
        *wrapped(document.relief_at_idle, 2),
    ]


def _spring(document: SizingDocument, full: bool) -> list[str]:
    spring = document.spring
    first, *more = spring.says
    if not full and not any(b.found for b in spring.bench):
        return wrapped(f"Relief valve: {' '.join(spring.says)}", 0, 2)
    lines = wrapped(f"Relief valve: {first}", 0, 2)
    for each in more:
        lines += wrapped(each, 2)
    if not full:
        return lines
    blank = "________"
    rows = [(b.says, b.accepts, b.found or blank, b.verdict or "pass / fail") for b in spring.bench]
    lines += _table(("right", "found", "verdict"), rows, "Bench test")
    record = document.record
    return [*lines, *wrapped(f"Write what you found down: {record}", 2, whole=[record])]


def _oils(document: SizingDocument, full: bool) -> list[str]:
    oils = list(document.oils)
    if not full and len(oils) > FEW_OILS:
        own = next((i for i, o in enumerate(oils) if o.in_it), 0)
        start = min(max(own - 1, 0), len(oils) - FEW_OILS)
        oils = [o for i, o in enumerate(oils) if start <= i < start + FEW_OILS or o.right]
    head = "Oil" if document.as_it_leaks is None else "Oil, leaks put right"
    return [
        *_table(document.oil_heads, [o.row for o in oils], head),
        *wrapped(f"{document.oil_says}.", 2),
        *(
            wrapped(document.oil_until if full else document.oil_gives, 2)
            if document.oil_until
            else []
        ),
    ]


def _needs(document: SizingDocument) -> list[str]:
    heads = document.need_heads
    count = len(heads)
    lines = [
        f"Thinnest grade by clearance and oil temperature, and what it gives ({document.unit})",
        f"  {'mains and rods':{NAMES}}" + "".join(f"{h:>{WIDE}}" for h in heads),
    ]
    needs = document.oil_needs
    for i in range(0, len(needs), count):
        cells = "".join(f"{n.cell:>{WIDE}}" for n in needs[i : i + count])
        lines.append(f"  {needs[i].clearance:{NAMES}}{cells}")
    return lines


def _taken(document: SizingDocument) -> list[str]:
    shares = [
        f"{BRANCHES[name]} {percent(share)}"
        for name, share in document.pump.taken_by.items()
        if share > 0.005
    ]
    return wrapped(f"The oil goes through {', '.join(shares)}.", 0, 2)


def _notes(document: SizingDocument, *, brief: bool = False) -> list[str]:
    command = document.next_command
    if brief:
        lines = ["Brackets: nine engines in ten; drive cold; fills to: rpm where it cavitates hot"]
        if document.as_it_leaks is not None:
            lines.append("Leaks put right: bearings and pump stay as they are.")
        if not document.next_is_whole:
            lines.append("Bench sheet, oils by clearance and heat: add --all")
    else:
        lines = wrapped(
            f"In brackets nine engines in ten. Power at {document.heads[1]}, all of it heat in the "
            "oil, relief: by that way; drive: torque on the pump's shaft, cold; fills to: rpm from "
            "which the pump cavitates, hot."
        )
    return [*lines, *wrapped(f"Next: {document.do_next}: {command}", whole=[command])]
