"""``review``: the answer to one case."""

from __future__ import annotations

import json as _json
from pathlib import Path

import typer

from diagnose.casefile.reading import load
from diagnose.consultation import Consultation
from diagnose.expecting import failures
from diagnose.report import data
from diagnose.report import review as text
from knowledge.book import the_book


def show_review(path: Path, json: bool, causes: int, check: bool) -> None:
    """Print the answer; with ``check`` exit 1 where it is not what the case expects."""
    book = the_book()
    answer = Consultation(book, load(path, book))
    if json:
        typer.echo(_json.dumps(data.review(answer), indent=2, ensure_ascii=False))
    else:
        typer.echo(text.review(answer, str(path), causes))
    if check:
        faults = failures(answer)
        for fault in faults:
            typer.echo(f"{path}: {fault}", err=True)
        if faults:
            raise typer.Exit(1)
