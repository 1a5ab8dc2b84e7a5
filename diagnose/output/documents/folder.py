"""Review every case file of a folder, in one process or several, with little memory for each."""

from __future__ import annotations

import contextlib
import gc
import multiprocessing
import os
import signal
import threading
from collections import deque
from collections.abc import Generator, Iterator, Sequence
from concurrent.futures import Future, ProcessPoolExecutor
from pathlib import Path

from diagnose.case.card import holds_card
from diagnose.case.files import is_toml
from diagnose.case.loading import load, named
from diagnose.diagnosis import Diagnosis
from diagnose.errors import NoCaseError, UserError, plain
from diagnose.expectations import failures
from diagnose.output.documents.glance import (
    Glance,
    UnreadDocument,
    glance_document,
    unread_document,
)
from knowledge.book import the_book

AHEAD = 4  #: cases handed out to each process before the first of them is back
COLLECT_AFTER = 2_000  #: objects: the memory of one case is freed soon, as others follow


def case_files(folder: Path) -> list[Path]:
    """The .toml files of a folder by name, without those in folders inside and without cards.

    Raises NoCaseError.
    """
    try:
        with os.scandir(folder) as entries:
            names = sorted(e.name for e in entries if not e.is_dir() and is_toml(e.name))
    except OSError as error:
        raise NoCaseError(named(folder), [error.strerror or str(error)]) from None
    paths = [path for path in (folder / name for name in names) if not holds_card(path)]
    if not paths:
        raise NoCaseError(named(folder), ["no case in this folder; cases end in .toml"])
    return paths


def toml_files(folder: Path) -> list[Path]:
    """Every name of a folder that ends in .toml and holds no card, sorted; may be none.

    Raises NoCaseError.
    """
    try:
        paths = sorted(folder / name for name in os.listdir(folder) if is_toml(name))
        return [path for path in paths if not holds_card(path)]
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "no such name"
        raise NoCaseError(named(folder), [f"no folder of cases, {reason}"]) from None


def review_files(paths: Sequence[Path], *, check: bool, jobs: int) -> Generator[Glance]:
    """The result of each file, in the order of ``paths``; no more are kept than are under way.

    With ``check`` each answer is compared with what its case expects. ``jobs``: processes.
    """
    jobs = min(jobs, len(paths))
    if jobs == 1:
        _collect_soon()
        yield from (review_file(path, check) for path in paths)
        return
    waiting: deque[Future[Glance]] = deque()
    spawned = multiprocessing.get_context("spawn")  # a fork of a process with threads may hang
    with ProcessPoolExecutor(jobs, spawned, initializer=_prepare_worker) as pool:
        try:
            for path in paths:
                with _interrupts_blocked():
                    waiting.append(pool.submit(review_file, path, check))
                if len(waiting) >= AHEAD * jobs:
                    yield waiting.popleft().result()
            while waiting:
                yield waiting.popleft().result()
        finally:
            pool.shutdown(wait=True, cancel_futures=True)


def review_file(path: Path, check: bool) -> Glance:
    """The result of one file; whatever goes wrong is part of it."""
    try:
        answer = Diagnosis(the_book(), load(path, the_book()))
        expects = check and answer.case.expect is not None
        return glance_document(answer, failures(answer) if expects else None)
    except UserError as error:
        return unread_document(path, error.lines)
    except Exception as error:  # one file must not end the others
        fault = plain(f"{type(error).__name__}: {error}", 200)
        fault = f"{named(path)}: a fault of diagnose itself, {fault}; please report it"
        return UnreadDocument(case=str(path), faults=(fault,), first_fault=fault)


def _collect_soon() -> None:
    """Keep the book for good; free what is left of a case soon."""
    the_book()
    gc.freeze()
    gc.set_threshold(COLLECT_AFTER)


def _prepare_worker() -> None:
    """Prepare a worker, and end it when the command is gone, however that ended."""
    _collect_soon()

    def watch() -> None:
        command = multiprocessing.parent_process()
        if command is not None:
            command.join()
            os._exit(1)

    threading.Thread(target=watch, daemon=True).start()


@contextlib.contextmanager
def _interrupts_blocked() -> Iterator[None]:
    """Hold Ctrl-C back: a worker started in here never gets it, the command gets it afterwards."""
    if not hasattr(signal, "pthread_sigmask"):
        yield
        return
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)
