"""A small parent for a command: ``python -S started.py COMMAND ...`` prints what the command took.

A child's peak memory counts what its parent held when it was started, so the parent has to be
smaller than any of them; it imports next to nothing.
"""

from __future__ import annotations

import os
import sys
import time


def main(command: list[str]) -> int:
    """Prints wall seconds, CPU seconds and peak kilobytes; the command's exit code."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    quiet = [(os.POSIX_SPAWN_DUP2, nowhere, 1), (os.POSIX_SPAWN_DUP2, nowhere, 2)]
    start = time.perf_counter()
    child = os.posix_spawn(command[0], command, os.environ, file_actions=quiet)
    _, status, usage = os.wait4(child, 0)
    wall = time.perf_counter() - start
    print(wall, usage.ru_utime + usage.ru_stime, usage.ru_maxrss)
    return os.waitstatus_to_exitcode(status)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
