"""The command line: every command, in the order of a job."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from typing import NoReturn

from diagnose.cli import ending, printing
from diagnose.cli.commands import book, case, circuit, together
from diagnose.cli.root import app

COMMANDS = (case, circuit, together, book)  #: imported in this order, which is that of the help


def main(arguments: Sequence[str] | None = None) -> NoReturn:
    """Run a command; whatever goes wrong is one line on stderr and an exit code."""
    printing.prepare()
    sys.exit(ending.run(app, arguments))


if __name__ == "__main__":
    main()
