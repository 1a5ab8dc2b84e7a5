"""``signoff`` and ``close``: putting together, first start, and the end of a job."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.case.writing import Entries, append_by
from diagnose.cli import paging, printing
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError, nearest, plain
from diagnose.output import signoff as text
from diagnose.output import signoff_sheet as sheets
from diagnose.output.lines import as_typed, wrapped
from diagnose.planning.choosing import SURE
from diagnose.signoff.closing import obstacles
from diagnose.signoff.parts import parts_list
from diagnose.signoff.sheet import Signoff
from knowledge.book import Book, the_book
from knowledge.units import TIME, UnitError, parse
from knowledge.work import Access


def show_signoff(
    path: Path,
    opened: Sequence[str],
    whole: bool,
    open_only: bool,
    form: str,
    page: Path | None = None,
    sets: Sequence[str] = (),
    left: Sequence[str] = (),
) -> None:
    """Print the sheet in one of the forms, or write it as a page with the first start."""
    paging.ready(page, form)
    book = the_book()
    answer = Diagnosis(book, load(path, book))
    sheet = Signoff(answer, SURE, _places(opened, answer), whole)
    needed = parts_list(sheet.causes, sheet.places, answer.case.features.get, book)
    if page is not None:
        from diagnose.circuit.settings import setting
        from diagnose.output.html.signoff_page import signoff_page

        changes = [setting(s) for s in sets]
        made = signoff_page(sheet, needed, str(path), book, changes, left, open_only=open_only)
        paging.write(page, made, path)
    elif form == "json":
        printing.data(sheets.data(sheet, needed))
    elif form == "markdown":
        printing.answer(sheets.markdown(sheet, needed, str(path)))
    elif form == "blanks":
        printing.answer(sheets.blanks(sheet))
    else:
        printing.answer(text.signoff(sheet, needed, str(path), open_only))


def show_start(
    path: Path,
    opened: Sequence[str],
    whole: bool,
    sets: Sequence[str],
    left: Sequence[str],
    json: bool,
) -> None:
    """Print what the repaired engine should show, and what it does show."""
    from diagnose.circuit.settings import setting
    from diagnose.output import start as start_text
    from diagnose.signoff.start import first_start

    book = the_book()
    case = load(path, book)
    start = first_start(case, book, [setting(s) for s in sets], left)
    if json:
        printing.data(start_text.data(start))
        return
    answer = Diagnosis(book, case)
    sheet = Signoff(answer, SURE, _places(opened, answer), whole)
    printing.answer(start_text.first_start(start, sheet, str(path)))


def _places(names: Sequence[str], answer: Diagnosis) -> frozenset[Access]:
    """Places of the tree of access by name, with what they need. Raises UsageError."""
    found: frozenset[Access] = frozenset()
    known = {a.value: a for a in answer.planner.tree.places}
    for name in _each(names):
        if name not in known:
            raise UsageError(
                f"--opened: no place '{plain(name, 40)}'.{nearest(name, known)} "
                f"One of {', '.join(known)}"
            )
        found |= answer.planner.tree.closure(known[name])
    return found


def _each(names: Sequence[str]) -> Iterator[str]:
    """Every name typed, also several with commas between, as the book writes ids."""
    for name in (n for each in names for n in each.split(",")):
        yield name.strip().lower().replace("-", "_")


def close_job(
    path: Path,
    causes: Sequence[str],
    how: str,
    remedy: str,
    minutes: str,
    reason: str,
    comeback: Path | None,
    by: str,
) -> None:
    """Write the end of a job into its case. Raises UsageError where something stands open."""
    book = the_book()
    if minutes:
        try:
            parse(minutes, TIME)
        except UnitError as error:
            raise UsageError(f"--minutes: {error}") from None

    def make(case: Case) -> Entries:
        answer = Diagnosis(book, case)
        if case.closed is not None and not reason.strip():
            number = case.closed.entry.no
            raise UsageError(f"already closed, entry {number}; to close it anew say why: --reason")
        named = _causes(causes, answer, book)
        against = obstacles(answer, SURE)
        if against and not reason.strip():
            lines = "\n".join(f"- {a}" for a in against)
            raise UsageError(
                f"not closed; still open:\n{lines}\nsee to it, or say why it may stay so: --reason"
            )
        if not how.strip():
            raise UsageError(
                '--how: say how the cause was confirmed, --how "chip found on the seat"'
            )
        return [
            (
                "closed",
                {
                    "when": date.today(),
                    "by": by or None,
                    "causes": named,
                    "how": how,
                    "remedy": remedy or "; ".join(book.causes[c].remedy for c in named),
                    "minutes": minutes or None,
                    "planned": _planned(case, book),
                    "reason": "; ".join((reason, *against)) if against else reason or None,
                    "comeback": comeback.name if comeback else None,
                },
            )
        ]

    case = append_by(path, book, make)
    closed = case.closed
    assert closed is not None
    names = " and ".join(c.says for c in closed.causes)
    lines = wrapped(f"closed: {names}")
    if closed.entry.reason:
        lines += wrapped(f"although: {closed.entry.reason}", 2, 4)
    lines += wrapped(f"saved in {as_typed(str(path))}. The shop's memory: diagnose history")
    printing.answer("\n".join(lines))


def _planned(case: Case, book: Book) -> str | None:
    """What the plan said when only the complaint was known: kept, for the shop's pace."""
    from diagnose.history.shop import minutes_planned

    minutes = minutes_planned(case, book)
    return None if minutes is None else f"{minutes:.0f} min"


def _causes(names: Sequence[str], answer: Diagnosis, book: Book) -> list[str]:
    """The causes named, else those that are as good as certain. Raises UsageError."""
    found = []
    for name in _each(names):
        if name not in book.causes:
            raise UsageError(
                f"--cause: no cause '{plain(name, 40)}'.{nearest(name, book.causes)} "
                "Where the book has none: not_in_the_book"
            )
        found.append(name)
    if found:
        return list(dict.fromkeys(found))
    sure = [r.cause.id for r in answer.ranking if r.probability >= SURE]
    if not sure:
        raise UsageError("--cause: no cause is as good as certain; name it")
    return sure
