"""The web page against the library calls it makes: answers, sliders; its memory and its start.

The server runs as the command starts it, in a process of its own; the library works on copies of
the same cases in this process, by turns.
"""

from __future__ import annotations

import re
import statistics
import subprocess
import tempfile
import time
from collections.abc import Iterator, Sequence
from itertools import cycle
from pathlib import Path

from diagnose.case.loading import load
from diagnose.circuit.forecast import forecast, with_other_changes
from diagnose.entry.interview import Interview
from diagnose.entry.requests import parse_changes
from diagnose.entry.telling import understand, write
from diagnose.output.documents.alarms import few_alarm_notices
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.documents.interview import best_guess
from knowledge.book import the_book
from tests.benchmarks.commands import spent
from tests.benchmarks.table import Row
from tests.support.serving import killed_at_last, wire
from tests.support.three_jobs import THREE
from tests.support.web import Browser, jobs_in

JOB = "dunlin.toml"
REQUESTS = 1_000
PAGES = ("/", f"/job/{JOB}", f"/job/{JOB}/why", f"/job/{JOB}/note", f"/job/{JOB}/teardown",
         f"/job/{JOB}/signoff", f"/job/{JOB}/forecast.svg", f"/job/{JOB}/budget", "/shop", "/new")  # fmt: skip
ASIDE = 8  #: questions or moves left out of the figures: caches are filled by then


def rows(rounds: int, few: bool) -> Iterator[Row]:
    """Answers and slider moves, memory, start."""
    with tempfile.TemporaryDirectory() as place:
        folder, beside = Path(place) / "jobs", Path(place) / "beside"
        for each in (folder, beside):
            each.mkdir()
            jobs_in(each, "dunlin", "petrel", "gannet")
        with killed_at_last(folder) as (process, port):
            tab = Browser(wire(port))
            first = _megabytes(process)
            yield _row(
                "an answered question", "reply, next question", *_answers(tab, folder, beside)
            )
            yield _row(
                "a slider moved: figures", "forecast", *_moves(tab, beside, 15 if few else 60)
            )
            yield _memory(tab, process, first, REQUESTS // 5 if few else REQUESTS)
        yield _start(folder, rounds)


def _row(what: str, peer: str, ours: Sequence[float], theirs: Sequence[float]) -> Row:
    """Median of the ratios; in the note the ratio of the 95th percentiles, and milliseconds."""
    ratios = [a / b for a, b in zip(ours, theirs, strict=True)]
    late = [statistics.quantiles(times, n=20)[-1] for times in (ours, theirs)]
    note = (
        f"95th percentile {late[0] / late[1]:.2f}x; {1000 * statistics.median(ours):.0f} ms, "
        f"95th percentile {1000 * late[0]:.0f} ms, {len(ours)} times"
    )
    return Row(f"time: {what}", peer, ratios, note=note)


def _answers(tab: Browser, folder: Path, beside: Path) -> tuple[list[float], list[float]]:
    """Seconds of each answer: sent and the next question shown; the same by the library."""
    ours, theirs = [], []
    for job in THREE:
        for each in (folder, beside):
            write(understand(each / f"{job.name}.toml", job.story, the_book()), the_book(), "")
        interview = Interview.begin(beside / f"{job.name}.toml", the_book())
        page = tab.get(f"/job/{job.name}.toml/ask")
        while interview.next_question() is not None and 'name="question"' in page.text:
            answers = page.form("ask").answers
            answer = next(a for a in ("n", "d", "y") if a in answers)
            start = time.perf_counter()
            page = tab.send(page, "ask", answer=answer)
            ours.append(time.perf_counter() - start)
            start = time.perf_counter()
            _replied(interview, answer)
            theirs.append(time.perf_counter() - start)
    return ours[ASIDE:], theirs[ASIDE:]


def _replied(interview: Interview, answer: str) -> None:
    """What the screen asks of the library for one answer."""
    interview.reply(answer)
    interview.next_question()
    diagnosis = interview.diagnosis()
    best_guess(diagnosis)
    few_alarm_notices(diagnosis)


def _moves(tab: Browser, beside: Path, many: int) -> tuple[list[float], list[float]]:
    """Seconds of each slider move, as the script of the page asks for it, and of its forecast."""
    before = forecast(load(beside / JOB, the_book()), [])
    now = forecast_document(before)
    slider = re.search(r"<input[^>]*main_clearance[^>]*>", tab.get(f"/job/{JOB}/forecast").text)
    assert slider
    low, step = (float(_attribute(slider[0], name)) for name in ("min", "step"))
    unit = _attribute(slider[0], "data-unit")
    ours, theirs = [], []
    for move in range(1, many + ASIDE + 1):
        value = f"{low + move * step:.4g}"
        path = f"/job/{JOB}/forecast?main_clearance={value}"
        start = time.perf_counter()
        page = tab.ask("GET", path, more={"x-part": "1"})
        ours.append(time.perf_counter() - start)
        assert value in page.words, page.words
        start = time.perf_counter()
        changes = parse_changes([f"main_clearance={value} {unit}"])
        forecast_document(with_other_changes(before, changes), now)
        theirs.append(time.perf_counter() - start)
    return ours[ASIDE:], theirs[ASIDE:]


def _attribute(tag: str, name: str) -> str:
    found = re.search(f'{name}="([^"]*)"', tag)
    assert found, tag
    return found[1]


def _memory(tab: Browser, process: subprocess.Popen[str], first: float, many: int) -> Row:
    """Megabytes after many requests against those before the first."""
    for path, _ in zip(cycle(PAGES), range(many), strict=False):
        assert tab.get(path).status == 200, path
    after = _megabytes(process)
    note = f"{after:.0f} MB after {many:,} further requests, {first:.0f} MB before the first"
    return Row("memory: the server", "before the first page", [after / first], note=note)


def _megabytes(process: subprocess.Popen[str]) -> float:
    """Resident memory of a process; Linux only."""
    status = Path(f"/proc/{process.pid}/status").read_text("utf-8")
    return int(status.partition("VmRSS:")[2].split()[0]) / 1024


def _start(folder: Path, rounds: int) -> Row:
    """From the command to the first page, against the wall time of a review."""
    ratios = []
    for turn in range(rounds + 1):  # the first writes the bytecode
        start = time.perf_counter()
        with killed_at_last(folder) as (_, port):
            assert Browser(wire(port)).get("/").status == 200
            ours = time.perf_counter() - start
        theirs = spent(["-m", "diagnose", "review", str(folder / JOB)]).seconds
        if turn:
            ratios.append(ours / theirs)
    return Row("time: from serve to the first page", f"review {JOB}", ratios, "<= 1.5")
