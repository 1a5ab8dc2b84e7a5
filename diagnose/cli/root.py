"""The command itself, before any of its parts: version, colour."""

from __future__ import annotations

import os
import sys
from typing import Annotated

import typer

from diagnose import __version__
from diagnose.cli import printing

app = typer.Typer(
    rich_markup_mode=None,
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    context_settings={"help_option_names": ["-h", "--help"]},
    help="Find the root cause of low, lost or flickering engine oil pressure.\n\n"
    "If the gauge reads zero or the engine knocks: stop the engine first, read on after.",
)


def _version(wanted: bool) -> None:
    if wanted:
        printing.answer(f"diagnose {__version__}")
        raise typer.Exit


@app.callback()
def common(
    context: typer.Context,
    version: Annotated[
        bool, typer.Option("--version", callback=_version, is_eager=True, help="Show the version.")
    ] = False,
) -> None:
    """Set colour once for every command."""
    context.color = sys.stdout.isatty() and "NO_COLOR" not in os.environ
