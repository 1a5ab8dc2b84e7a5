"""``review`` of a folder: one line for each case, worked out by one process or several."""

from __future__ import annotations

import contextlib
import gc
import json
import multiprocessing
import os
import signal
import sys
import threading
import time
from collections import deque
from collections.abc import Callable, Generator, Iterator, Sequence
from concurrent.futures import Future, ProcessPoolExecutor
from pathlib import Path

import typer

from diagnose.case.loading import load, named
from diagnose.cli import printing
from diagnose.diagnosis import Diagnosis
from diagnose.errors import BadCaseError, NoCaseError, UserError, plain
from diagnose.expectations import failures
from diagnose.output.as_json import as_json
from diagnose.output.documents.glance import (
    Glance,
    GlanceDocument,
    UnreadDocument,
    glance_document,
    unread_document,
)
from diagnose.output.lines import columns
from diagnose.output.text.glance import line, summary
from knowledge.book import the_book

AHEAD = 4  #: cases handed out for each process before the first of them is back
PATIENCE, BEAT = 1.0, 0.5  #: s before progress is shown, and between two figures


def show_many(folder: Path, print_json: bool, check: bool, jobs: int) -> None:
    """Print a line, or with ``print_json`` a JSON object in a line, for each case in the folder.

    A file that is no case is told on stderr and the rest goes on; then exit as for a bad case.
    With ``check`` exit 1 where a case that has an [expect] came out otherwise, or none has one.
    """
    paths = cases_in(folder)
    longest = max(columns(p.name) for p in paths)
    reviewed = stops = unread = checked = missed = 0
    every = contextlib.closing(glances(paths, check, jobs))
    with _progress(len(paths)) as done, every as all_found:
        for path, found in zip(paths, all_found, strict=True):
            done()
            if isinstance(found, UnreadDocument):
                unread += 1
                printing.remark_lines(found.first_fault)
            else:
                reviewed += 1
                stops += not found.may_run
                checked += found.unmet is not None
                missed += bool(found.unmet)
            if print_json:
                printing.answer(json.dumps(as_json(found)))
            elif isinstance(found, GlanceDocument):
                printing.answer(line(found, path.name, longest))
            if isinstance(found, GlanceDocument):
                printing.remark_lines(*(f"{named(path)}: {f}" for f in found.unmet or ()))
    if check and not checked:
        printing.remark_lines(f"{named(folder)}: no case here has an [expect]")
    printing.remark(summary(reviewed, stops, unread, missed if check else None, checked), 0, 2)
    if unread:
        raise typer.Exit(BadCaseError.code)
    if check and (missed or not checked):
        raise typer.Exit(1)


def cases_in(folder: Path) -> list[Path]:
    """The .toml files of a folder by name, not of the folders in it. Raises NoCaseError."""
    try:
        with os.scandir(folder) as entries:
            names = sorted(e.name for e in entries if not e.is_dir() and _is_toml(e.name))
    except OSError as error:
        raise NoCaseError(named(folder), [error.strerror or str(error)]) from None
    if not names:
        raise NoCaseError(named(folder), ["no case in this folder; cases end in .toml"])
    return [folder / name for name in names]


def _is_toml(name: str) -> bool:
    return name.lower().endswith(".toml")


def at_a_glance(path: Path, check: bool) -> Glance:
    """Review one file; with ``check`` also compare the answer with what the case expects."""
    try:
        answer = Diagnosis(the_book(), load(path, the_book()))
        expects = check and answer.case.expect is not None
        return glance_document(answer, failures(answer) if expects else None)
    except UserError as error:
        return unread_document(path, str(error).splitlines())
    except Exception as error:  # one file must not end the others
        fault = plain(f"{type(error).__name__}: {error}", 200)
        first = f"{named(path)}: a fault of diagnose itself, {fault}; please report it"
        return UnreadDocument(case=str(path), faults=(fault,), first_fault=first)


def glances(paths: Sequence[Path], check: bool, jobs: int) -> Generator[Glance]:
    """What each file comes to, in the order of the files, no more kept than is under way."""
    jobs = min(jobs, len(paths))
    if jobs == 1:
        _tidy()
        yield from (at_a_glance(path, check) for path in paths)
        return
    waiting: deque[Future[Glance]] = deque()
    fresh = multiprocessing.get_context("spawn")  # copies of a process with threads may hang
    with ProcessPoolExecutor(jobs, fresh, initializer=_alone) as pool:
        try:
            for path in paths:
                with _uninterrupted():
                    waiting.append(pool.submit(at_a_glance, path, check))
                if len(waiting) >= AHEAD * jobs:
                    yield waiting.popleft().result()
            while waiting:
                yield waiting.popleft().result()
        finally:
            pool.shutdown(wait=True, cancel_futures=True)


def _tidy() -> None:
    """The book stays for good; what is left of a case is cleared away soon, as it is not alone."""
    the_book()
    gc.freeze()
    gc.set_threshold(2_000)


def _alone() -> None:
    """A worker tidies up too, and ends when the command is gone, however that ended."""
    _tidy()

    def watch() -> None:
        command = multiprocessing.parent_process()
        if command is not None:
            command.join()
            os._exit(1)

    threading.Thread(target=watch, daemon=True).start()


@contextlib.contextmanager
def _uninterrupted() -> Iterator[None]:
    """A worker that is started in here never hears Ctrl-C; the command hears it afterwards."""
    if not hasattr(signal, "pthread_sigmask"):
        yield
        return
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)


@contextlib.contextmanager
def _progress(many: int) -> Iterator[Callable[[], None]]:
    """Call for each case done: how many, on a terminal that does not show the lines themselves."""
    shown = done = 0
    said = time.monotonic() + PATIENCE - BEAT
    wanted = sys.stderr.isatty() and not sys.stdout.isatty()

    def one_more() -> None:
        nonlocal shown, done, said
        done += 1
        if wanted and time.monotonic() - said >= BEAT:
            said = time.monotonic()
            text = f"{done:,} of {many:,} cases"
            _over_it(text.ljust(shown))
            shown = len(text)

    try:
        yield one_more
    finally:
        if shown:
            _over_it(" " * shown + "\r")


def _over_it(text: str) -> None:
    """Over what stands in the terminal's line."""
    printing.remark_lines()
    with contextlib.suppress(OSError):
        typer.echo("\r" + text, err=True, nl=False)
