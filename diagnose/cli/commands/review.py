"""``review``: the answer to a case on one screen, or a line for each case of a folder."""

from __future__ import annotations

import contextlib
import os
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson, WithHistory

if TYPE_CHECKING:
    from diagnose.diagnosis import Diagnosis
    from diagnose.output.documents.glance import GlanceDocument, UnreadDocument


def review(
    case: Annotated[
        Path,
        typer.Argument(
            readable=False, metavar="CASE", help="The case file, or a folder of case files."
        ),
    ],
    json: AsJson = False,
    full: Annotated[
        bool,
        typer.Option("--full", "--all", help="Everything: reasons, rivals, damage, all notices."),
    ] = False,
    causes: Annotated[
        int | None,
        typer.Option(min=1, max=200, metavar="NUMBER", help="How many causes to show of one case."),
    ] = None,
    why: Annotated[
        str, typer.Option(metavar="CAUSE", help="Reasons for and against one cause, by its id.")
    ] = "",
    check: Annotated[
        bool, typer.Option("--check", help="Compare with the case's [expect]; exit 1 if it fails.")
    ] = False,
    with_history: WithHistory = None,
    jobs: Annotated[
        int,
        typer.Option(min=1, max=64, metavar="NUMBER", help="Processes to share a folder between."),
    ] = 1,
) -> None:
    """May it run, what was found, where it most likely began, and the next check: one screen.

    Of a folder: a line a case with the likeliest cause and the next check; --json a line each.
    """
    from diagnose.case.loading import load, named
    from diagnose.diagnosis import Diagnosis
    from diagnose.errors import UsageError
    from diagnose.expectations import failures
    from diagnose.output.documents.review import review_document
    from diagnose.output.documents.shop_learning import shop_learning
    from diagnose.output.text.review import SHOWN, review_text
    from diagnose.output.text.review_brief import CAUSES, review_brief
    from knowledge.book import the_book

    if os.path.isdir(case):  # without the permissions that Path.is_dir needs
        if with_history:
            raise UsageError("with-history: reviews one case at a time; name a case file")
        if why:
            raise UsageError("why: needs one case; name a case file")
        _review_folder(case, print_json=json, check=check, jobs=jobs)
        return
    book = the_book()
    loaded = load(case, book)
    shop = shop_learning(with_history, book, case, "review")
    answer = Diagnosis(book, loaded, learned=shop.factors)
    if why:
        _print_why(answer, why, case, json=json)
        return
    document = review_document(
        answer, str(case), history=shop.note, for_json=json, cause_sets=json or full
    )
    printing.document(
        document,
        lambda d: review_text(d, causes or SHOWN) if full else review_brief(d, causes or CAUSES),
        json=json,
    )
    faults = failures(answer) if check else []
    printing.remark_lines(*(f"{named(case)}: {fault}" for fault in faults))
    if faults:
        raise typer.Exit(1)


def _print_why(answer: Diagnosis, why: str, case: Path, *, json: bool) -> None:
    """Print the reasons for and against one cause. Raises UsageError where there is no such cause."""
    from diagnose.entry.words import parse_cause
    from diagnose.output.documents.why import why_document
    from diagnose.output.text.why import why_text

    cause = parse_cause(why, [r.cause.id for r in answer.ranking])
    document = why_document(answer, cause, str(case))
    printing.document(document, why_text, json=json)


def _review_folder(folder: Path, *, print_json: bool, check: bool, jobs: int) -> None:
    """Print a line, or with ``print_json`` a JSON object in a line, for each case in the folder.

    A file that is no case gets a remark on stderr and the rest goes on; then exit as for a bad
    case. With ``check`` exit 1 where a case that has an [expect] has another result, or none has
    one.
    """
    from json import dumps

    from diagnose.case.loading import named
    from diagnose.cli.progress import counting
    from diagnose.errors import BadCaseError
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.folder import case_files, review_files
    from diagnose.output.documents.glance import GlanceDocument, UnreadDocument
    from diagnose.output.lines import columns
    from diagnose.output.text.glance import folder_summary, glance_line

    paths = case_files(folder)
    longest = max(columns(path.name) for path in paths)
    tally = _Tally()
    results = contextlib.closing(review_files(paths, check=check, jobs=jobs))
    with counting(len(paths)) as count_one, results as documents:
        for path, document in zip(paths, documents, strict=True):
            count_one()
            tally.count(document)
            if isinstance(document, UnreadDocument):
                printing.remark_lines(document.first_fault)
            if print_json:
                printing.answer(dumps(as_json(document)))
            elif isinstance(document, GlanceDocument):
                printing.answer(glance_line(document, path.name, longest))
            if isinstance(document, GlanceDocument):
                printing.remark_lines(*(f"{named(path)}: {f}" for f in document.unmet or ()))
    if check and not tally.checked:
        printing.remark_lines(f"{named(folder)}: no case here has an [expect]")
    missed = tally.missed if check else None
    summary = folder_summary(tally.reviewed, tally.stops, tally.unread, missed, tally.checked)
    printing.remark(summary, 0, 2)
    if tally.unread:
        raise typer.Exit(BadCaseError.code)
    if check and (tally.missed or not tally.checked):
        raise typer.Exit(1)


@dataclass(slots=True)
class _Tally:
    """How many cases of a folder came out how."""

    reviewed: int = 0
    unread: int = 0
    stops: int = 0  #: must not run
    checked: int = 0  #: compared with an [expect]
    missed: int = 0  #: have another result than it

    def count(self, document: GlanceDocument | UnreadDocument) -> None:
        """Count one case."""
        from diagnose.output.documents.glance import UnreadDocument

        if isinstance(document, UnreadDocument):
            self.unread += 1
            return
        self.reviewed += 1
        self.stops += document.must_stop
        self.checked += document.unmet is not None
        self.missed += bool(document.unmet)
