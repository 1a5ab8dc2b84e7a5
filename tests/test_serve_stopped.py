"""The server killed while it saves: what it said is saved stands in the file (long)."""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
import time
from pathlib import Path
from urllib.error import HTTPError
from urllib.parse import urlencode
from urllib.request import HTTPCookieProcessor, OpenerDirector, Request, build_opener

import pytest

from diagnose.case.loading import load
from knowledge.book import the_book
from tests.support.command_line import environment
from tests.support.examples import examples
from tests.support.serving import free_port
from tests.support.web import Page, jobs_in


@pytest.mark.long
def test_stopped_at_any_moment_nothing_acknowledged_is_lost(tmp_path: Path) -> None:
    """The server is killed while it saves; what it said is saved stands in the file."""
    path = jobs_in(tmp_path, "petrel") / "petrel.toml"
    acknowledged: list[str] = []
    dice, number = random.Random(5), 0
    for _ in range(examples(20)):
        port = free_port()
        words = [sys.executable, "-m", "diagnose", "serve", str(tmp_path), "--port", str(port)]
        server = subprocess.Popen(words, env=environment(), stderr=subprocess.PIPE, text=True)
        assert server.stderr is not None
        server.stderr.readline()
        opener = build_opener(HTTPCookieProcessor())
        until = time.monotonic() + dice.uniform(2.0, 6.0)
        try:
            while time.monotonic() < until:
                number += 1
                if _entered(opener, f"http://localhost:{port}", number):
                    acknowledged.append(f"place {number}")
                if dice.random() < 0.1:
                    break
        finally:
            os.kill(server.pid, signal.SIGKILL)
            server.wait()
    case = load(path, the_book())
    places = [m.entry.where for m in case.measurements]
    assert len(acknowledged) > 20
    assert set(acknowledged) <= set(places)
    assert len(places) == len(set(places))


def _entered(opener: OpenerDirector, base: str, number: int) -> bool:
    """Enter one value; whether the server said that it is saved."""
    with opener.open(f"{base}/job/petrel.toml/note", timeout=60) as answer:
        page = Page(answer.status, {}, answer.read(), f"{base}/job/petrel.toml/note")
    form = page.form("note")
    given = {**form.fields, "words": "main bearing clearance 3 thou", "where": f"place {number}"}
    data = urlencode(given, doseq=True).encode()
    try:
        with opener.open(Request(form.action, data), timeout=60) as answer:
            return "Saved" in answer.read().decode()
    except HTTPError:
        return False
