"""A 'no' about the inside of a closed engine is no evidence, is not asked for and opens nothing."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.entry.interview import Interview
from diagnose.entry.questions import CheckQuestion, ChoiceQuestion, FindingQuestion
from knowledge.book import the_book
from knowledge.model import Finding, Stage

BOOK = the_book()
COMPLAINT = (
    "low at hot idle, pump and bearings new, pieces of bearing in the oil pump, screen blocked"
)


def case(*entries: str) -> Case:
    """A case with a low gauge and these further entries."""
    text = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
    text += '[[finding]]\nno = 1\nwhat = "gauge_reads_low"\nstate = "present"\n'
    return from_text(text + "\n".join(entries), None, BOOK)


def entry(no: int, what: str, state: str, learned: str = "told") -> str:
    """One finding, as it stands in a case file."""
    return f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "{state}"\nlearned = "{learned}"\n'


DENIED = entry(2, "bearing_pieces_in_pump", "absent")


def test_a_denial_from_hearsay_changes_no_probability() -> None:
    """Nobody can see into a closed pump."""
    without, with_denial = Diagnosis(BOOK, case()), Diagnosis(BOOK, case(DENIED))
    assert [(r.cause, r.probability) for r in without.ranking] == [
        (r.cause, r.probability) for r in with_denial.ranking
    ]


def test_a_denial_counts_once_something_was_opened() -> None:
    """Whoever opened the engine, or saw something inside, could have seen it."""
    finding = BOOK.findings["bearing_pieces_in_pump"]
    for more in (
        entry(2, "bearing_pieces_in_pump", "absent", "opened"),
        DENIED + entry(3, "metal_in_pan", "present"),
        DENIED + entry(3, "screen_blocked", "absent", "opened"),
    ):
        assert finding in case(more).facts().observations, more
    assert finding not in case(DENIED + entry(3, "metal_in_pan", "absent")).facts().observations
    assert (
        finding
        not in case(DENIED, entry(3, "sump_dented", "absent", "outside"))
        .facts(Stage.OUTSIDE)
        .observations
    )


def test_a_denial_opens_nothing_and_leaves_the_check_to_be_done() -> None:
    """The plan does not take sump and pump for open, and still offers to look."""
    planner = Diagnosis(BOOK, case(DENIED)).planner
    assert planner.opened == Diagnosis(BOOK, case()).planner.opened
    assert BOOK.findings["bearing_pieces_in_pump"] not in planner.answered


def test_an_interview_asks_nothing_about_the_inside(tmp_path: Path) -> None:
    """Not even where the person's own words name it."""
    interview = Interview.begin(tmp_path / "a.toml", BOOK, most=12)
    asked: list[Finding] = []
    for line in ("4", f"V8. {COMPLAINT}", ""):
        assert interview.reply(line) is None
    while (question := interview.next_question()) is not None:
        match question:
            case FindingQuestion():
                asked.append(question.finding)
            case ChoiceQuestion():
                asked += [BOOK.findings[f] for c in question.choices for f in c.there]
            case CheckQuestion():
                asked += question.findings
        interview.reply("d")
    assert asked
    assert not [f.id for f in asked if f.stage is Stage.OPENED]
    assert load(tmp_path / "a.toml", BOOK).denied_unseen() == frozenset()
