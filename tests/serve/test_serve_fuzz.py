"""Anything sent to any address of the web page: no fault, no trace, nothing outside the folder.

By default a few hundred requests to every address; ``-m long`` sends twenty thousand.
"""

from __future__ import annotations

import re
import shutil
from collections import Counter
from collections.abc import Mapping, Sequence
from pathlib import Path

import matplotlib.font_manager  # noqa: F401 (looks for fonts once, before it is watched)
import pytest

from diagnose.case.loading import load
from diagnose.errors import UserError
from diagnose.serve.album import keep
from diagnose.serve.keys import Door
from knowledge.book import the_book
from tests.support.examples import examples
from tests.support.pictures import jpeg, png
from tests.support.serve_fuzz import METHODS, SECRET, Dice, misses
from tests.support.watching import Seen, watched
from tests.support.web import Page, browser, jobs_in

BEGUN = """schema = 1
[job]
title = "Begun"
complaint = "petrol V8, low when hot"
[[finding]]
no = 1
what = "gauge_reads_low"
state = "present"
"""
FEW, MANY = 60, 20_000
JOBS = (*("begun.toml", "empty.toml") * 3, "petrel.toml", "gannet.toml", "linked.toml")
QUICK = ("empty.toml", "empty.toml", "linked.toml")
#: screens that draw, plan or compute, which the default run leaves to the long one
SLOW = tuple(
    f"/job/{{job}}{screen}"
    for screen in (
        "", "/why", "/report", "/close", "/start", "/teardown", "/teardown/sheet", "/teardown/{stage}", "/forecast",
        "/forecast.svg", "/survey", "/survey.svg", "/budget", "/budget/{account}",
    )
)  # fmt: skip
FRESH = 150  #: requests after which the jobs are as they were


class Fuzzed:
    """A server over a folder, with files beside it that are none of its business."""

    def __init__(self, around: Path, seed: int, asked: Sequence[str] = JOBS) -> None:
        """Make the folder ``jobs`` within ``around``; ``asked``: the jobs that are asked for."""
        self.around, self.jobs = around, around / "jobs"
        self.codes: list[str] = []
        for place in (around / "secret.toml", around / "secret.jpg"):
            place.write_text(f'schema = 1\n[job]\ntitle = "{SECRET}"\n', "utf-8")
        self.jobs.mkdir()
        self.fresh()
        self.tab = browser(self.jobs, door=Door(self.codes.append))
        # every address of the application, as the framework has it
        self.routes = [(r.path, sorted(r.methods - {"HEAD"})) for r in self.tab.app.inner.routes]
        book = the_book()
        self.dice = Dice(
            seed,
            {
                "job": [
                    *("begun.toml", "empty.toml") * 3,
                    "petrel.toml",
                    "gannet.toml",
                    "linked.toml",
                ],
                "check": list(book.inspections),
                "stage": ["1", "2", "3", "12", "sheet"],
                "phase": ["1", "2", "3", "5", "sheet"],
                "account": ["0", "1"],
                "section": ["clearances", "torques", "sizes"],
                "photo": ["001.jpg", "002.png"],
                "file": ["style.css", "comfort.js", "mark.svg"],
            },
        )
        self.sent = 0
        self.seen = Seen()
        self.answered: Counter[tuple[str, str, int]] = Counter()

    def fresh(self) -> None:
        """Put the jobs back as they were."""
        shutil.rmtree(self.jobs)
        self.jobs.mkdir()
        jobs_in(self.jobs, "slip_tractor", "gannet")
        (self.jobs / "slip_tractor.toml").rename(self.jobs / "petrel.toml")
        (self.jobs / "begun.toml").write_text(BEGUN, "utf-8")
        (self.jobs / "empty.toml").write_text("schema = 1\n", "utf-8")
        (self.jobs / "linked.toml").symlink_to(self.around / "secret.toml")
        (self.jobs / "empty.photos").symlink_to(self.around)
        keep(self.jobs / "petrel.toml", jpeg(6), "")
        keep(self.jobs / "petrel.toml", png(), "")

    def ask(
        self, method: str, address: str, body: bytes = b"", headers: Mapping[str, str] | None = None
    ) -> Page:
        """Send a request, and watch what is done for it."""
        with watched(self.seen):
            return self.tab.ask(method, address, body, headers)

    def note(self, page: Page, route: str, method: str, about: object) -> Page:
        """Count an answer, and hold it to what every answer keeps to."""
        self.sent += 1
        self.answered[route, method, page.status] += 1
        wrong = misses(page)
        wrong += ["the folder's own path"] if str(self.around) in page.text else []
        assert not wrong, f"{method} {page.address} {about}: {wrong}"
        return page

    def run(self, wanted: int, leave: Sequence[str] = ()) -> None:
        """Ask for every address by turns, send the forms of what comes back."""
        assert set(leave) <= {route for route, _ in self.routes}
        while self.sent < wanted:
            for route, methods in self.routes:
                if route in leave:
                    continue
                address = self.dice.address(route)
                if self.dice.chance(0.15):
                    self.odd(route, address)
                if "GET" not in methods:
                    continue
                page = self.note(self.ask("GET", address), route, "GET", "")
                if page.status == 200:
                    self.fill_in(page)
                if self.dice.chance(1 / FRESH):
                    self.readable()
                    self.fresh()
        self.readable()

    def odd(self, route: str, address: str) -> None:
        """Send a request no form makes."""
        dice = self.dice
        method = dice.random.choice((*METHODS, "POST", "POST", "GET", "GET"))
        body = dice.anything().encode("utf-8", "surrogateescape") * dice.random.choice((0, 1, 1, 9))
        headers = dice.headers() if dice.chance(0.7) else {}
        self.note(self.ask(method, address, body, headers), route, method, headers)

    def fill_in(self, page: Page) -> None:
        """Send some forms of a page, filled in with anything; often rightly one never saved yet."""
        for place, form in enumerate(page.forms()):
            route = _route_of(self.routes, form.action)
            rightly = 0.3 if self.answered[route, "POST", 303] else 0.7
            if place >= 2 and rightly < 0.5:
                continue
            given = self.dice.fields(form.fields)
            tasks = re.findall(r'name="(t:\w+)"', page.text)
            if tasks and self.dice.chance(rightly):  # a task that is done is a form that is saved
                given = {**form.fields, self.dice.random.choice(tasks): "done"}
            if "figures" in form.fields and self.dice.chance(rightly):  # a bearing measured
                given = {**form.fields, "kind": "main", "number": "1", "measured": "strip"}
                given |= {"figures": "2.5", "unit": "thou"}
            if "remedy" in form.fields and self.dice.chance(rightly):  # a job closed with a reason
                cause = self.dice.random.choice(["relief_debris", "oil_level_low", "sender_faulty"])
                given = {**form.fields, "cause": cause, "how": "seen", "minutes": "20"}
                given |= {"reason": "enough", "by": "me"}
            if form.buttons and self.dice.chance(0.8):
                name, value = self.dice.random.choice(form.buttons)
                given |= {name: value} if name else {}
            if "code" in form.fields and self.dice.chance(0.5):
                given["code"] = self.codes[-1]
            with watched(self.seen):
                if form.files and self.dice.chance(0.7):
                    data = self.dice.random.choice(
                        (jpeg(), png(), jpeg()[:99], b"<svg onload=x()>")
                    )
                    answer = self.tab.upload(page, form.action, form.files[0], data, follow=False)
                else:
                    answer = self.tab.post(form.action, given, follow=False)
            self.note(answer, route, "POST", given)
            if answer.status == 303 and self.dice.chance(0.2):
                to = answer.headers["location"]
                self.note(self.ask("GET", to), _route_of(self.routes, to), "GET", given)

    def readable(self) -> None:
        """Hold every file of the folder to being whole, and nothing beside it to being new."""
        assert {p.name for p in self.around.iterdir()} == {"jobs", "secret.toml", "secret.jpg"}
        for path in self.jobs.glob("*.toml"):
            try:
                load(path, the_book())
            except UserError as fault:
                pytest.fail(f"a saved file cannot be read: {fault}")


def _route_of(routes: list[tuple[str, list[str]]], address: str) -> str:
    """The route an address of a form or a redirection belongs to."""
    path = address.partition("?")[0]
    for route, _ in routes:
        if re.fullmatch(re.sub(r"{\w+}", "[^/]+", route), path):
            return route
    raise AssertionError(f"no screen answers {address}")


@pytest.mark.parametrize("many", [FEW, pytest.param(MANY, marks=pytest.mark.long)])
def test_anything_to_any_address(tmp_path: Path, many: int) -> None:
    """Pages, forms filled with anything, uploads, requests that no browser sends."""
    if many == FEW:
        fuzzed = Fuzzed(tmp_path, many, QUICK)
        fuzzed.run(many, SLOW)
    else:
        fuzzed = Fuzzed(tmp_path, many)
        fuzzed.run(examples(many))
    assert fuzzed.seen.outside(fuzzed.jobs) == []
    tried = {route for route, *_ in fuzzed.answered}
    if many == FEW:
        assert tried >= {route for route, _ in fuzzed.routes} - set(SLOW)
        return
    shown = {route for route, method, status in fuzzed.answered if (method, status) == ("GET", 200)}
    assert shown == {route for route, methods in fuzzed.routes if "GET" in methods}
    saved = {r for r, method, status in fuzzed.answered if (method, status) == ("POST", 303)}
    assert saved == {route for route, methods in fuzzed.routes if "POST" in methods}
    print(fuzzed.sent, dict(Counter(status for *_, status in fuzzed.answered.elements())))


def test_what_is_done_outside_is_seen(tmp_path: Path) -> None:
    """The watch itself: reading and writing beside the folder, and other programs, are noted."""
    (tmp_path / "in").mkdir()
    with watched(Seen()) as seen:
        (tmp_path / "in" / "a").write_text("x", "utf-8")
        (tmp_path / "b").write_text("x", "utf-8")
        (tmp_path / "b").read_text("utf-8")
        (tmp_path / "in" / "a").rename(tmp_path / "c")
    found = seen.outside(tmp_path / "in")
    assert found == [
        f"changed {tmp_path / 'b'}",
        f"changed {tmp_path / 'c'}",
        f"read {tmp_path / 'b'}",
    ]


@pytest.mark.parametrize(
    "text",
    [
        "<script>x</script>", "<img src='https://a.example/b.png'>", "<b onclick=x()>", "<svg><a xlink:href='//x'/>",
        "<a href='javascript:x()'>", "<base href='/'>", "<form action='http://evil.example'>", SECRET, "Traceback",
    ],
)  # fmt: skip
def test_what_is_not_inert_is_seen(tmp_path: Path, text: str) -> None:
    """The check itself."""
    page = browser(tmp_path).get("/")
    assert misses(page) == []
    spoilt = page.body.replace(b"<main", text.encode() + b"<main")
    assert misses(Page(page.status, page.headers, spoilt, "/")) != []
    assert misses(Page(page.status, {}, page.body, "/")) != []
