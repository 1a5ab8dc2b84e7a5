"""``ask``: the interview. Alarms first, then layout and history, then questions by value."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

import typer

from diagnose.casefile.case import Case
from diagnose.casefile.reading import load
from diagnose.casefile.writing import append, set_layout, start
from diagnose.cli.recording import ANSWERS
from diagnose.consultation import Consultation
from diagnose.errors import UsageError
from diagnose.lookup import Finder
from diagnose.planning.questions import best_question
from diagnose.report import review as text
from diagnose.report.lines import wrapped
from knowledge.book import Book, the_book
from knowledge.findings.bearings import BEARING_KNOCK
from knowledge.findings.pressure import GAUGE_READS_ZERO, LAMP_COMES_ON
from knowledge.vocabulary import Finding, Kind

HELP = "y yes, n no, d don't know, why, back, stop here"


class StopHereError(Exception):
    """The person wants to stop; everything is saved."""


class GoBackError(Exception):
    """The person wants the question before this one again."""


@dataclass
class Interview:
    """One conversation over one case file."""

    book: Book
    path: Path
    by: str
    shown: set[str] = field(default_factory=set)
    answered: list[Finding] = field(default_factory=list)

    @property
    def case(self) -> Case:
        """The case as it stands on disk."""
        return load(self.path, self.book)

    def save(self, finding: Finding, state: str, sure: float | None, note: str = "") -> None:
        """Append one answer; an earlier answer to the same question is corrected by it."""
        olds = [s.entry.no for s in self.case.sightings if s.finding is finding]
        fields = {
            "what": finding.id,
            "state": state,
            "sure": sure,
            "replaces": olds[-1] if olds else None,
            "when": date.today(),
            "by": self.by or None,
            "note": note or None,
        }
        append(self.path, self.book, [("finding", fields)])

    def consult(self) -> Consultation:
        """The answer so far; alarms not told yet are told at once."""
        answer = Consultation(self.book, self.case)
        fresh = [a for a in answer.alarms if a.says not in self.shown]
        if fresh:
            say(*(line for line in text.alarms(answer)))
            self.shown.update(a.says for a in fresh)
        return answer


def interview(path: Path | None, questions: int, by: str) -> None:
    """Ask until told to stop, out of questions or out of answers; then print the review."""
    book = the_book()
    path = path or _new_name()
    talk = Interview(book, path, by)
    try:
        if path.exists():
            load(path, book)
            say(f"Going on with {path}. {HELP}.")
            talk.consult()
        else:
            _begin(talk)
        _by_value(talk, questions)
    except (StopHereError, EOFError):
        say("Stopped here; everything is saved.")
    if path.exists():
        typer.echo(text.review(Consultation(book, talk.case), str(path)))


def say(*lines: str) -> None:
    """Prompts and remarks go to stderr: stdout is the answer."""
    for line in lines:
        typer.echo(line, err=True)


def hear(prompt: str) -> str:
    """One line from the person. Raises EOFError, StopHereError."""
    sys.stderr.write(prompt)
    sys.stderr.flush()
    raw = sys.stdin.readline(20_000)
    if not raw:
        raise EOFError
    if not sys.stdin.isatty():
        sys.stderr.write("\n")
    line = raw.strip()
    if line.lower() in ("stop", "stop here", "quit", "exit"):
        raise StopHereError
    return line


def _new_name() -> Path:
    for number in range(1, 1000):
        path = Path(f"case-{date.today().isoformat()}-{number}.toml")
        if not path.exists():
            return path
    raise UsageError("name the case file: diagnose ask petrel.toml")


# ------------------------------------------------------------------------------ the start


def _begin(talk: Interview) -> None:
    say("If the gauge reads zero, or the engine knocks: stop the engine before you read on.")
    say(f"Every answer is saved in {talk.path} as it is given. {HELP}.")
    title = hear("What is it about? One line (boat, tractor, engine): ")
    complaint = hear("What does it do? In your own words: ")
    start(
        talk.path,
        talk.book,
        {
            "title": title or "Oil pressure",
            "opened": date.today(),
            "by": talk.by or None,
            "complaint": complaint or None,
        },
        {"layout": "unknown"},
    )
    _alarm_questions(talk)
    _understand(talk, complaint)
    _layout(talk)
    _history(talk)


def _alarm_questions(talk: Interview) -> None:
    """What may call for stopping the engine is asked before anything else."""
    for finding in (GAUGE_READS_ZERO, BEARING_KNOCK, LAMP_COMES_ON):
        _put(talk, finding)


def _understand(talk: Interview, complaint: str) -> None:
    """Findings that the person's own words seem to name, each confirmed."""
    hits = Finder(talk.book).find(complaint, (Finding,), 6) if complaint else []
    answered = talk.case.answered()
    for hit in hits:
        word = hit.word
        if (
            hit.score >= 0.45
            and isinstance(word, Finding)
            and word.kind is Kind.SEEN
            and word not in answered
        ):
            _put(talk, word)


def _layout(talk: Interview) -> None:
    layouts = list(talk.book.layouts.values())
    say("How is the engine built?")
    for i, layout in enumerate(layouts, 1):
        say(*wrapped(f"{i:2}. {layout.says}", 0, 4))
    while True:
        line = hear("Number (empty: don't know): ")
        if not line or line.lower() in ("d", "?"):
            return
        if line.isdigit() and 1 <= int(line) <= len(layouts):
            chosen = layouts[int(line) - 1]
            set_layout(talk.path, talk.book, chosen.id)
            return
        say(f"A number from 1 to {len(layouts)}, or nothing.")


def _history(talk: Interview) -> None:
    facts = [f for f in talk.book.findings.values() if f.kind is Kind.HISTORY]
    say("What happened to it before? Give the numbers that apply.")
    for i, fact in enumerate(facts, 1):
        say(*wrapped(f"{i:2}. {fact.says}", 0, 4))
    while True:
        line = hear("Numbers, with blanks between (empty: none, or don't know): ")
        words = line.replace(",", " ").split()
        if all(w.isdigit() and 1 <= int(w) <= len(facts) for w in words):
            for number in dict.fromkeys(int(w) for w in words):
                talk.save(facts[number - 1], "present", None)
            return
        say(f"Numbers from 1 to {len(facts)}, or nothing.")


# ------------------------------------------------------------------------- by value


def _by_value(talk: Interview, questions: int) -> None:
    for left in range(questions, 0, -1):
        answer = talk.consult()
        finding = best_question(talk.book.findings.values(), answer.worlds, answer.answered)
        if finding is None:
            say("No open question would tell these causes apart; look instead.")
            return
        _put(talk, finding, f" ({left} left at most)")


def _put(talk: Interview, finding: Finding, remark: str = "") -> None:
    """Ask one question until it is answered; 'back' asks the one before again first."""
    while True:
        line = hear("\n".join(wrapped(finding.asks + remark)) + "\n  y / n / d: ").lower()
        if line in ("why", "why do you ask", "w"):
            say(*why(talk, finding))
        elif line in ("back", "b"):
            _back(talk)
        elif line in ("d", "", "dont know", "don't know", "unknown", "?"):
            talk.save(finding, "unknown", None)
            break
        elif line.replace(" ", "_") in ANSWERS:
            state, sure = ANSWERS[line.replace(" ", "_")]
            talk.save(finding, state, sure)
            break
        else:
            say(f"Please: {HELP}. ('probably' and 'probably not' are answers too.)")
    talk.answered.append(finding)
    talk.consult()


def _back(talk: Interview) -> None:
    if not talk.answered:
        say("This is the first question.")
        return
    _put(talk, talk.answered.pop())


def why(talk: Interview, finding: Finding) -> Sequence[str]:
    """What the answer would do to the ranking, and what is normal."""
    answer = Consultation(talk.book, talk.case)
    lines = []
    if finding.why:
        lines += wrapped(finding.why, 2)
    if finding.normal:
        lines += wrapped(f"Normal: {finding.normal}.", 2)
    if finding.id in answer.network.leak:
        for state, outcome in answer.either_way(finding).items():
            lines += wrapped(
                f"if {state}: {outcome.leads.says} leads, {100 * outcome.leads_with:.0f} % likely",
                2,
                4,
            )
    lines += wrapped(f"Source: {finding.source.title}", 2, 4)
    return lines
