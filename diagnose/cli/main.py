"""Where ``diagnose`` starts; stopped while it still loads, it ends in the same one line."""

from __future__ import annotations

import gc
import os
import sys
from typing import NoReturn

from diagnose.cli import INTERRUPTED, STOPPED


def main() -> NoReturn:
    """Load the commands and run one."""
    gc.set_threshold(1_000_000)  # a command ends before collecting cycles would pay
    os.environ.setdefault("PYDANTIC_DISABLE_PLUGINS", "1")  # none is used; searching takes time
    try:
        from diagnose.cli.app import main as run

        run()
    except KeyboardInterrupt:
        sys.stderr.write(f"\n{STOPPED}\n")
        sys.exit(INTERRUPTED)
    finally:
        gc.freeze()  # no collection on the way out either
