"""What is still worth a look once a cause is found: where it came from, what it has damaged."""

from __future__ import annotations

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.next_checks import checks_afterwards
from diagnose.output.documents.review import review_document
from diagnose.output.text.review_brief import review_brief
from knowledge.book import the_book
from knowledge.questions.afterwards import AFTERWARDS

BOOK = the_book()


def diesel(**more: str) -> Diagnosis:
    """A diesel with fuel in its oil, and further findings."""
    found = {"fuel_smell": "present", "level_risen": "present", "oil_thin_on_stick": "present"}
    entries = "".join(
        f'\n[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "{state}"\n'
        for no, (what, state) in enumerate({"diesel": "present", **found, **more}.items(), 1)
    )
    return Diagnosis(BOOK, from_text(f"schema = 1\n{entries}", None, BOOK))


def test_where_the_fuel_gets_in_is_offered_until_somebody_looked() -> None:
    """The cause is found, its origin is not: the screen names the checks, each with its reason."""
    shown = review_brief(review_document(diesel(), "job.toml"))
    assert "look for where fuel gets into the oil (15 min): until the way in is found" in " ".join(
        shown.split()
    )
    left = {c.inspection for c in checks_afterwards(diesel(fuel_gets_in="present"))}
    assert left == {"cut_the_filter_open"}


def test_only_an_engine_with_a_turbo_has_its_turbo_looked_at() -> None:
    """What this engine does not have is not looked at."""
    with_turbo = {c.inspection for c in checks_afterwards(diesel(turbocharged="present"))}
    without = {c.inspection for c in checks_afterwards(diesel())}
    assert with_turbo - without == {"look_into_the_turbo"}


def test_nothing_while_the_cause_is_open() -> None:
    """Of a cause that is only suspected there is nothing to follow."""
    assert checks_afterwards(diesel(fuel_smell="absent", level_risen="absent")) == ()


def test_they_are_of_the_book() -> None:
    """Every cause and check that is named exists."""
    for each in AFTERWARDS:
        assert each.cause in BOOK.causes
        assert each.check in BOOK.inspections
