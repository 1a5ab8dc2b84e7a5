"""``serve``: a web page over a folder of case files, on this machine or in the workshop."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli import printing


def serve(
    folder: Annotated[
        Path,
        typer.Argument(
            metavar="DIR", readable=False, help="The folder of the jobs; this one if left out."
        ),
    ] = Path(),
    lan: Annotated[
        bool,
        typer.Option("--lan", help="Let phones and tablets of the network in, by a code."),
    ] = False,
    port: Annotated[
        int | None,
        typer.Option(
            min=1, max=65535, metavar="NUMBER", help="The port, where the usual is taken."
        ),
    ] = None,
) -> None:
    """Work on the jobs of a folder in a browser: the same files, the same answers.

    No account and no outside request. Only this machine can open it unless --lan is given; then
    another machine needs the code that stands on this terminal, once for each.
    """
    from diagnose.serve.running import serve as serve_folder

    serve_folder(folder, port, lan=lan, say=printing.remark)
