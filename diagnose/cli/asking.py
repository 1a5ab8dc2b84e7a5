"""``ask``: the interview. Alarms first, then layout and history, then questions by value."""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.disk import ready
from diagnose.case.loading import load, named
from diagnose.case.schema import LONGEST
from diagnose.case.writing import Entries, Fields, append_by, start, tell_engine
from diagnose.cli import printing
from diagnose.cli.entries import ANSWERS
from diagnose.cli.printing import say, tell
from diagnose.cli.prompting import BACK, DONT_KNOW, HELP, WHY, GoBackError, Prompter, StopHereError
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError, plain
from diagnose.lookup.finder import Finder
from diagnose.output import review as text
from diagnose.output.lines import headed, wrapped
from diagnose.planning.questions import best_question
from knowledge.book import Book, the_book
from knowledge.model import Finding, Kind
from knowledge.pressure.patterns import GAUGE_READS_ZERO, LAMP_COMES_ON
from knowledge.stations.bearings.findings import BEARING_KNOCK

#: what may call for stopping the engine is asked before anything else
GRAVE = (GAUGE_READS_ZERO, BEARING_KNOCK, LAMP_COMES_ON)
SOUNDS_LIKE = 0.45  #: how well a finding must fit the person's own words to be asked for


@dataclass
class Interview:
    """One conversation over one case file."""

    book: Book
    path: Path
    by: str
    prompter: Prompter = field(default_factory=Prompter)
    shown: set[str] = field(default_factory=set)
    answered: list[Finding] = field(default_factory=list)

    @property
    def case(self) -> Case:
        """The case as it stands on disk."""
        return load(self.path, self.book)

    def save(self, finding: Finding, state: str, sure: float | None) -> None:
        """Append one answer; an earlier answer to the same question is corrected by it."""

        def entry(case: Case) -> Entries:
            olds = [s.entry.no for s in case.sightings if s.finding is finding]
            fields = {
                "what": finding.id,
                "state": state,
                "sure": sure,
                "replaces": olds[-1] if olds else None,
                "when": date.today(),
                "by": self.by or None,
            }
            return [("finding", fields)]

        append_by(self.path, self.book, entry)
        self.prompter.got()

    def consult(self) -> Diagnosis:
        """The answer so far; alarms not told yet are told at once."""
        answer = Diagnosis(self.book, self.case)
        fresh = [a for a in answer.alarms if a.says not in self.shown]
        if fresh:
            say(*text.alarms(answer))
            self.shown.update(a.says for a in fresh)
        return answer


def interview(path: Path | None, questions: int, by: str) -> None:
    """Ask until told to stop, out of questions or out of answers; then print the review."""
    if len(by) > LONGEST or by != by.encode("utf-8", "replace").decode("utf-8"):
        raise UsageError(f"by: '{plain(by)}' is no name; at most {LONGEST:,} characters of UTF-8")
    book = the_book()
    path = path or _new_name()
    talk = Interview(book, path, by)
    try:
        if os.path.lexists(path):
            _go_on(talk)
        else:
            _begin(talk)
        _first_questions(talk)
        _by_value(talk, questions)
    except (StopHereError, EOFError):
        saved = os.path.exists(path)
        tell(
            f"Stopped here; {'everything is saved' if saved else 'nothing was said, nothing saved'}."
        )
    if os.path.exists(path):
        printing.answer(text.review(Diagnosis(book, talk.case), str(path)))


def _new_name() -> Path:
    for number in range(1, 1000):
        path = Path(f"case-{date.today().isoformat()}-{number}.toml")
        if not os.path.lexists(path):
            return path
    raise UsageError("name the case file: diagnose ask petrel.toml")


# ------------------------------------------------------------------------------ the start


def _go_on(talk: Interview) -> None:
    """Take up a case; going back leads through the answers it has."""
    case = talk.case
    ready(talk.path)
    tell(f"Going on with {named(talk.path)}. {HELP}.")
    talk.answered += [s.finding for s in case.sightings]
    talk.consult()


def _begin(talk: Interview) -> None:
    """Make the case as soon as there is something to keep."""
    ready(talk.path)
    tell("If the gauge reads zero, or the engine knocks: stop the engine before you read on.")
    tell(f"Every answer is saved in {named(talk.path)} as it is given. {HELP}.")
    while True:
        title = _title(talk)
        complaint = ""
        try:
            complaint = talk.prompter.words(
                "What does it do? In your own words: ",
                "Your words are kept, and what they seem to name is asked next.",
            )
        except GoBackError:
            continue
        except (StopHereError, EOFError):
            _start(talk, title, complaint)
            raise
        _start(talk, title, complaint)
        return


def _title(talk: Interview) -> str:
    while True:
        try:
            return talk.prompter.words(
                "What is it about? One line (boat, tractor, engine): ",
                "It heads the review, so that you know the case again.",
            )
        except GoBackError:
            talk.prompter.missed("This is the first question.")


def _start(talk: Interview, title: str, complaint: str) -> None:
    job: Fields = {
        "title": title or "Oil pressure",
        "opened": date.today(),
        "by": talk.by or None,
        "complaint": complaint or None,
    }
    start(talk.path, talk.book, job)


def _first_questions(talk: Interview) -> None:
    """Whatever of the opening questions the case has no answer to yet."""
    answered = talk.case.answered()
    for finding in GRAVE:
        if finding not in answered:
            _put(talk, finding)
    case = talk.case
    if not case.engine_told:
        _understand(talk, case.job.complaint)
        _layout(talk)
    if not any(s.finding.kind is Kind.HISTORY for s in case.sightings):
        _history(talk)


def _understand(talk: Interview, complaint: str) -> None:
    """Findings that the person's own words seem to name, each confirmed."""
    for hit in Finder(talk.book).find(complaint, (Finding,), 6) if complaint else []:
        word = hit.word
        if (
            hit.score >= SOUNDS_LIKE
            and isinstance(word, Finding)
            and word.kind is Kind.SEEN
            and word not in talk.case.answered()
        ):
            _put(talk, word)


def _layout(talk: Interview) -> None:
    layouts = list(talk.book.layouts.values())
    menu = [layout.says for layout in layouts]
    why = "The layout says which parts there are, and so which faults there can be."
    chosen = _choose(talk, "How is the engine built?", menu, "Number (empty: don't know): ", why, 1)
    tell_engine(talk.path, talk.book, {"layout": layouts[chosen[0]].id if chosen else "unknown"})


def _history(talk: Interview) -> None:
    facts = [f for f in talk.book.findings.values() if f.kind is Kind.HISTORY]
    menu = [fact.says for fact in facts]
    why = "What happened to an engine makes some faults far more common."
    title = "What happened to it before? Give the numbers that apply."
    prompt = "Numbers, with blanks between (empty: none, or don't know): "
    for number in _choose(talk, title, menu, prompt, why, len(facts)):
        talk.save(facts[number], "present", None)


def _choose(
    talk: Interview, title: str, menu: Sequence[str], prompt: str, why: str, most: int
) -> list[int]:
    """Places in the menu that the person names, at most so many."""
    tell(title)
    for i, says in enumerate(menu, 1):
        say(*headed(f"{i:2}. ", says))
    while True:
        line = talk.prompter.hear(prompt).lower()
        numbers = line.replace(",", " ").split()
        if line in WHY:
            talk.prompter.missed(why)
        elif line in BACK:
            _back(talk)
        elif line in (*DONT_KNOW, "none", "no", "n"):
            talk.prompter.got()
            return []
        elif len(numbers) <= most and all(_names(n, menu) for n in numbers):
            talk.prompter.got()
            return list(dict.fromkeys(int(n) - 1 for n in numbers))
        else:
            many = "A number" if most == 1 else "Numbers"
            talk.prompter.missed(f"{many} from 1 to {len(menu)}, or nothing.")


def _names(number: str, menu: Sequence[str]) -> bool:
    return number.isdecimal() and len(number) < 5 and 1 <= int(number) <= len(menu)


# ------------------------------------------------------------------------- by value


def _by_value(talk: Interview, questions: int) -> None:
    for left in range(questions, 0, -1):
        answer = talk.consult()
        finding = best_question(
            talk.book.findings.values(), answer.planner.single_cause_model, answer.planner.answered
        )
        if finding is None:
            tell("No open question would tell these causes apart; look instead.")
            return
        _put(talk, finding, f" ({left} left at most)")


def _put(talk: Interview, finding: Finding, remark: str = "") -> None:
    """Ask one question until it is answered; 'back' asks the one before again first."""
    while True:
        line = talk.prompter.hear(
            "\n".join(wrapped(finding.asks + remark)) + "\n  y / n / d: "
        ).lower()
        known = "_".join(line.replace("'", "").replace("’", "").split())
        if line in WHY:
            say(*why(talk, finding))
            talk.prompter.missed()
        elif line in BACK:
            _back(talk)
        elif line in DONT_KNOW:
            talk.save(finding, "unknown", None)
            break
        elif known in ANSWERS:
            talk.save(finding, *ANSWERS[known])
            break
        else:
            talk.prompter.missed(
                f"Please: {HELP}. ('probably' and 'probably not' are answers too.)"
            )
    talk.answered.append(finding)
    talk.consult()


def _back(talk: Interview) -> None:
    if not talk.answered:
        talk.prompter.missed("This is the first question.")
        return
    _put(talk, talk.answered.pop())


def why(talk: Interview, finding: Finding) -> Sequence[str]:
    """What the answer would do to the ranking, and what is normal."""
    answer = Diagnosis(talk.book, talk.case)
    lines = []
    if finding.why:
        lines += wrapped(finding.why, 2)
    if finding.normal:
        lines += wrapped(f"Normal: {finding.normal}.", 2)
    if finding.id in answer.inference.network.leak:
        for state, outcome in answer.planner.either_way(finding).items():
            lines += wrapped(
                f"if {state}: {outcome.leads.says} leads, {100 * outcome.leads_with:.0f} % likely",
                2,
                4,
            )
    lines += wrapped(f"Source: {finding.source.title}", 2, 4)
    return lines
