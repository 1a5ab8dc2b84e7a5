"""What a saved reading of the first start answers is not asked for again at sign-off."""

from __future__ import annotations

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.signoff import signoff_document
from diagnose.output.text.signoff_brief import signoff_brief
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from knowledge.work import Access

BOOK = the_book()
OPENED = frozenset({Access.SUMP_OFF})
READ = """
[[reading]]
no = {no}
rpm = "{rpm}"
oil = "hot"
pressure = "{pressure}"
gauge = "direct"
{at}"""
START = 'at = "start"\n'


def sheet(*readings: str, opened: frozenset[Access] = OPENED) -> Signoff:
    """A sheet of an engine on which something was opened, with readings."""
    return Signoff(
        Diagnosis(BOOK, from_text("schema = 1\n" + "".join(readings), None, BOOK)),
        0.9,
        opened=opened,
    )


def still_open(one: Signoff) -> set[str]:
    """The tasks that are not answered yet."""
    return {i.task.id for i in one.items if not i.worked}


ASKED = {"first_pressure_timed", "pressure_at_hot_idle", "pressure_hot_at_2000"}


def test_readings_of_the_first_start_answer_its_tasks() -> None:
    """Hot idle and speed as they were read; that the gauge moved is shown by them."""
    assert still_open(sheet()) >= {*ASKED, "direct_gauge_fitted"}
    read = sheet(
        READ.format(no=1, rpm="idle", pressure="26 psi", at=START),
        READ.format(no=2, rpm="2000 rpm", pressure="47 psi", at=START),
    )
    assert not still_open(read) & {*ASKED, "direct_gauge_fitted"}
    values = {i.task.id: [w.entry.value for w in i.worked] for i in read.items}
    assert values["pressure_at_hot_idle"] == ["26 psi"]
    assert values["pressure_hot_at_2000"] == ["47 psi"]


def test_a_low_reading_fails_its_task() -> None:
    """It counts as a value that was written down there."""
    low = sheet(READ.format(no=1, rpm="idle", pressure="4 psi", at=START))
    verdict = next(i for i in low.items if i.task.id == "pressure_at_hot_idle").judged.verdict
    assert verdict.name == "FAILED"


def test_readings_of_the_fault_are_none_of_the_start() -> None:
    """Only the gauge counts, and only where nothing was open."""
    before = READ.format(no=1, rpm="idle", pressure="26 psi", at="")
    assert still_open(sheet(before)) >= {*ASKED, "direct_gauge_fitted"}
    switch = before + '[[finding]]\nno = 2\nwhat = "switch_pressure"\nvalue = "3 bar"\n'
    closed = '[[closed]]\nno = 3\ncauses = ["sender_faulty"]\n'
    nothing = sheet(switch, closed, opened=frozenset())
    assert "direct_gauge_fitted" in {i.task.id for i in nothing.items}
    assert "direct_gauge_fitted" not in still_open(nothing)


def test_an_engine_just_rebuilt_is_offered_its_whole_sheet() -> None:
    """Nothing was opened in the job: all of it was before."""
    rebuilt = '[[finding]]\nno = 1\nwhat = "freshly_rebuilt"\nstate = "present"\n'
    shown = signoff_brief(signoff_document(sheet(rebuilt, opened=frozenset()), (), "job.toml"))
    assert "diagnose signoff job.toml --whole-engine" in shown
    plain = signoff_brief(signoff_document(sheet(opened=frozenset()), (), "job.toml"))
    assert "--whole-engine" not in plain
