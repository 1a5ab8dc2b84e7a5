"""Taps and keystrokes from the story to the first right check, on the page and by commands.

``python -m tests.studies.taps`` prints the table for three whole jobs, each the short way (the
story and nothing else) and by way of all questions. A tap is a link, a button, a tick or a field
gone into; keystrokes are what is typed, with Enter at the end of each line. A check that is not
right is answered as it would be, on both ways, and the next one taken; a check is right if it would
show what is wrong, or whether the trouble is real. Questions are answered as the owner of the job
knows them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.entry.interview import Interview
from diagnose.entry.picking import Reply
from diagnose.entry.questions import TextQuestion
from diagnose.entry.recording import Input, record
from diagnose.output.documents.review import review_document
from knowledge.book import the_book
from knowledge.work import Inspection
from tests.support.command_line import call
from tests.support.owner import Owner
from tests.support.shared_diagnoses import share
from tests.support.three_jobs import THREE, WholeJob
from tests.support.web import Browser, Form, Page, browser

MOST_CHECKS, MOST_PROMPTS = 12, 60


@dataclass
class Count:
    """What it took."""

    job: str
    way: str
    taps: int = 0
    keys: int = 0
    prompts: int = 0  #: questions answered
    checks: int = 0  #: proposed, with the right one
    right: str = ""  #: what the right check is; empty: none came


@dataclass
class Thumb:
    """A person at the page: each thing tapped has to be on it."""

    tab: Browser
    page: Page
    count: Count

    def link(self, end: str) -> None:
        """Follow a link of the page. Raises AssertionError where it has none that ends so."""
        target = next((a for a in self.page.links() if a.endswith(end)), None)
        assert target is not None, f"no link to {end} on {self.page.address}"
        self.count.taps += 1
        self.page = self.tab.get(target)

    def send(self, form: Form, button: tuple[str, str] | None = None, /, **given: str) -> None:
        """Fill in fields and press a button, the nameless one by default."""
        self.count.taps += 1 + len(given)
        self.count.keys += sum(map(len, given.values()))
        assert button is None or button in form.buttons, button
        fields = {**form.fields, **given, **(dict([button]) if button else {})}
        self.page = self.tab.post(form.action, fields)
        assert self.page.status == 200, self.page.words[:300]


def on_the_page(job: WholeJob, folder: Path, questions: bool) -> Count:
    """Count the taps of a job on the page."""
    count = Count(job.name, "page, all questions" if questions else "page")
    tab = browser(folder)
    thumb = Thumb(tab, tab.get("/"), count)
    thumb.link("/new")
    thumb.send(thumb.page.form("/new"), story=job.story)
    thumb.send(thumb.page.form("/new"), ("agreed", "1"))
    file = thumb.page.address.split("/")[2]
    if questions:
        owner = _owner(job, folder)
        with tab.app.site.interviews.of(folder.resolve() / file) as interview:
            pass  # the one that the page goes on with
        while (question := interview.next_question()) is not None:
            _answer(thumb, owner.answer(question) or "y")
            count.prompts += 1
            assert count.prompts < MOST_PROMPTS, question
    thumb.link(f"/job/{file}")
    while (check := next_check(folder / file)) is not None and count.checks < MOST_CHECKS:
        count.checks += 1
        if check.id in job.right:
            assert check.says in thumb.page.words
            count.right = check.says
            break
        if len(check.reveals) > 1:  # its own screen has a button for all that is not so
            thumb.page, count.taps = tab.get(f"/job/{file}/check/{check.id}"), count.taps + 1
        form = thumb.page.form(f"check/{check.id}")
        names = [n for n in form.fields if n.startswith("f:")]
        so = {n: "yes" for n in names if n[2:] in job.seen}
        rest = {"none": "1"} if ("none", "1") in form.buttons else dict.fromkeys(names, "no")
        ticks = {"kept": "1"} if check.keep else {}
        count.taps += len(so) + len(ticks) + 1
        thumb.page = tab.post(form.action, {**form.fields, **rest, **so, **ticks})
        assert thumb.page.status == 200, thumb.page.words[:300]
    return count


def _answer(thumb: Thumb, typed: str) -> None:
    """Give an answer of the interview, typed as a command takes it, by buttons, ticks and fields."""
    form = thumb.page.form("/ask")
    if ("answer", typed) in form.buttons:
        thumb.send(form, ("answer", typed))
        return
    slots = [n for n in form.fields if n.startswith("at:")]
    if slots:
        figures = dict(zip(slots, typed.split(), strict=False))
        thumb.send(form, **{n: f for n, f in figures.items() if f != "-"})
        return
    thumb.count.taps += len(typed.split()) + 1
    thumb.page = thumb.tab.post(form.action, {**form.fields, "pick": typed.split()})


def by_commands(job: WholeJob, folder: Path, questions: bool) -> Count:
    """Count the keystrokes of a job in commands."""
    count = Count(job.name, "commands, all questions" if questions else "commands")
    path = folder / "b.toml"

    def typed(line: str) -> None:
        count.keys += len(line) + 1

    if questions:
        typed("diagnose ask b.toml")
        owner, interview = _owner(job, folder), Interview.begin(path, the_book())
        while (question := interview.next_question()) is not None:
            asked_for = isinstance(question, TextQuestion)
            line = job.story if asked_for else owner.answer(question)
            count.prompts += 1
            assert count.prompts < MOST_PROMPTS, question
            typed(line)
            reply = interview.reply(line)
            assert reply is None or reply is Reply.CHANGED, (question, line)
    else:
        typed(f'diagnose tell b.toml "{job.story}"')
        typed("y")
        assert call("tell", path, job.story, "--yes").code == 0
    typed("diagnose review b.toml")
    while (check := next_check(path)) is not None and count.checks < MOST_CHECKS:
        count.checks += 1
        if check.id in job.right:
            count.right = check.says
            break
        _written(job, path, check, typed)
        typed("diagnose review b.toml")
    return count


def _written(job: WholeJob, path: Path, check: Inspection, typed: Callable[[str], None]) -> None:
    """Write down all that a check showed."""
    facts = [f"{f.id}={'yes' if f.id in job.seen else 'no'}" for f in check.reveals]
    typed(f"diagnose record b.toml {' '.join(facts)}")
    record(path, the_book(), Input(facts=facts))


def next_check(path: Path) -> Inspection | None:
    """The check that page and review propose for a case."""
    document = review_document(Diagnosis(the_book(), load(path, the_book())), path.name)
    return the_book().inspections[document.next[0].inspection] if document.next else None


def _owner(job: WholeJob, folder: Path) -> Owner:
    """Who answers the questions of a job; what he knows is kept beside the folder."""
    path = folder.with_name(f"{folder.name}-{job.name}-known.toml")
    path.write_text(job.facts, "utf-8")
    return Owner(path, tells=False)


def counts(job: WholeJob) -> Iterator[Count]:
    """Every way through a job."""
    for way in (on_the_page, by_commands):
        for questions in (False, True):
            with TemporaryDirectory() as place:
                folder = Path(place) / "jobs"
                folder.mkdir()
                yield way(job, folder, questions)


def line(count: Count) -> str:
    """A row of the table."""
    figures = f"{count.taps or '-':>6}{count.keys:>6}{count.prompts:>11}{count.checks:>8}"
    return f"{count.job:4}{count.way:24}{figures}  {count.right or 'none'}"


def main(jobs: Sequence[WholeJob] = THREE) -> None:
    """Print the table."""
    share()
    print(
        f"{'job':4}{'way':24}{'taps':>6}{'keys':>6}{'questions':>11}{'checks':>8}  first right check"
    )
    for job in jobs:
        for count in counts(job):
            print(line(count), flush=True)


if __name__ == "__main__":
    main()
