"""Anything sent to any address of the web page: no fault, no trace, nothing outside the folder (long)."""

from __future__ import annotations

import os
import random
import signal
import string
import subprocess
import sys
import time
from pathlib import Path
from urllib.error import HTTPError
from urllib.parse import quote, urlencode
from urllib.request import HTTPCookieProcessor, OpenerDirector, Request, build_opener

import pytest

from diagnose.case.loading import load
from diagnose.errors import UserError
from diagnose.serve.addresses import ADDRESSES
from knowledge.book import the_book
from tests.support.command_line import environment
from tests.support.examples import examples
from tests.support.pictures import jpeg
from tests.support.serving import free_port
from tests.support.web import Browser, Page, browser, jobs_in

SECRET = "KEEP-THIS-TO-YOURSELF"
JOBS = ("petrel", "dunlin", "gannet", "generator")
NASTY = (
    "", " ", "0", "-1", "1e999", "nan", "9" * 400, "../../secret.toml", "..%2f..%2fsecret.toml", "/etc/passwd",
    "%00", "\x00", "\ud800".encode("utf-8", "surrogatepass").decode("latin-1"), "é漢\u202e", "<script>alert(1)</script>",
    "{{ 7*7 }}", "{% raw %}", "' OR 1=1", "; rm -rf /", "yes", "no", "unknown", "done", "skipped", "4.5 thou",
    "5 psi at hot idle", "main 3", "[[finding]]\nno = 1", '"""', "\n" * 50, "a" * 2500, "true", "1", "2",
)  # fmt: skip
WORDS = (
    "oil level ok",
    "no 3 main 4.5 thou",
    "12 psi at hot idle",
    "backlash 12 thou",
    "knock",
    "new pump cured it",
)


def anything(dice: random.Random) -> str:
    """A text of one kind or another."""
    kind = dice.random()
    if kind < 0.55:
        return dice.choice(NASTY)
    if kind < 0.8:
        return dice.choice(WORDS)
    return "".join(dice.choices(string.printable + "é漢\u202e\u200d", k=dice.randrange(1, 60)))


def address(dice: random.Random) -> str:
    """An address of the server with something in each of its parts, mostly right."""
    path = dice.choice(ADDRESSES).path
    book = the_book()
    right = {
        "{job}": [f"{n}.toml" for n in JOBS],
        "{check}": list(book.inspections),
        "{stage}": ["1", "2", "3", "12", "sheet"],
        "{phase}": ["1", "2", "3", "5", "sheet"],
        "{account}": ["0", "1"],
        "{photo}": ["001.jpg", "002.png"],
        "{file}": ["style.css", "comfort.js"],
    }
    for part, values in right.items():
        if part in path:
            value = dice.choice(values) if dice.random() < 0.85 else quote(anything(dice), safe="%")
            path = path.replace(part, value)
    if dice.random() < 0.3:
        names = (
            "q",
            "show",
            "why",
            "whole",
            "saved",
            "stage",
            "step",
            "main_clearance",
            "oil",
            "relief_setting",
        )
        path += "?" + urlencode(
            {dice.choice(names): anything(dice) for _ in range(dice.randrange(1, 4))}
        )
    return path


def fields(form: dict[str, list[str]], dice: random.Random) -> dict[str, str | list[str]]:
    """A form as it is, with something else in some of its fields."""
    given: dict[str, str | list[str]] = dict(form)
    for name in dice.sample(sorted(form), min(len(form), dice.randrange(0, 6))):
        if name not in ("token", "once") or dice.random() < 0.1:
            given[name] = anything(dice)
    book = the_book()
    for _ in range(dice.randrange(0, 4)):
        word = dice.choice([*book.findings, *book.measures, *book.tasks])
        given[dice.choice(("f:", "m:", "t:", "w:", "u:", "n:", "at:")) + word] = anything(dice)
    for name in (
        "kept",
        "none",
        "agreed",
        "answer",
        "pick",
        "words",
        "cause",
        "how",
        "reason",
        "withdraw",
    ):
        if dice.random() < 0.2:
            given[name] = anything(dice)
    return given


def sound(page: Page, about: str) -> None:
    """Hold an answer to what every answer keeps to."""
    assert page.status < 500, about
    assert page.status in (200, 303, 400, 403, 404, 405, 409, 413, 421), about
    text = page.text
    assert SECRET not in text, about
    assert "Traceback" not in text, about
    assert "<script>alert" not in text, about
    if page.headers.get("content-type", "").startswith("text/html"):
        assert "default-src 'none'" in page.headers["content-security-policy"], about


@pytest.mark.long
def test_anything_to_any_address(tmp_path: Path) -> None:
    """Twenty thousand requests: pages, forms filled with anything, uploads."""
    jobs = tmp_path / "jobs"
    jobs.mkdir()
    for place in (tmp_path / "secret.toml", tmp_path / "secret.jpg"):
        place.write_text(f'schema = 1\n[job]\ntitle = "{SECRET}"\n', "utf-8")
    tab = browser(jobs_in(jobs, *JOBS))
    dice, seen, sent = random.Random(11), 0, 0
    wanted = examples(20_000)
    while sent < wanted:
        path = address(dice)
        page = _asked(tab, path)
        sent += 1
        sound(page, path)
        seen += page.status == 200
        if page.status != 200 or '<form method="post"' not in page.text:
            continue
        for _ in range(3):
            form = page.form()
            given = fields(form.fields, dice)
            if 'name="photo"' in page.text and dice.random() < 0.3:
                answer = tab.upload(page, "photos", "photo", jpeg()[: dice.randrange(1, 400)])
            else:
                answer = tab.post(form.action, given, follow=dice.random() < 0.3)
            sent += 1
            sound(answer, f"{form.action} {given}")
    assert seen > wanted / 10
    assert {p.name for p in tmp_path.iterdir()} == {"jobs", "secret.toml", "secret.jpg"}
    for path_ in jobs.glob("*.toml"):
        try:
            load(path_, the_book())
        except UserError as fault:
            pytest.fail(f"a saved file cannot be read: {fault}")


def _asked(tab: Browser, path: str) -> Page:
    try:
        return tab.get(path, follow=False)
    except UnicodeEncodeError:
        return Page(404, {}, b"", path)


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
