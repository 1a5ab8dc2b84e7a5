"""``serve``: a web page over a folder of case files, on this machine or in the workshop."""

from __future__ import annotations

import os
import shutil
import sys
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
            min=1, max=65535, metavar="NUMBER", help="Another port, if the usual one is taken."
        ),
    ] = None,
) -> None:
    """Work on the jobs of a folder in a browser: the same files, the same answers.

    No account and no outside request. Only this machine can open it unless --lan is given; then
    another machine needs the code that stands on this terminal, once for each. A phone's camera
    reads address and code from the picture below it.
    """
    from diagnose.serve.running import serve as serve_folder

    serve_folder(folder, port, lan=lan, say=printing.remark, draw=draw_address)


def draw_address(address: str) -> None:
    """Draw an address as a QR code on a terminal that can show it; nowhere else."""
    if not sys.stderr.isatty():
        return
    from diagnose.serve.qr import Terminal, drawn

    terminal = Terminal(
        shutil.get_terminal_size((0, 0)).columns,
        blocks=(sys.stderr.encoding or "").lower().replace("-", "") == "utf8",
        colours=not os.environ.get("NO_COLOR") and os.environ.get("TERM") != "dumb",
    )
    printing.drawing(drawn(address, terminal))
