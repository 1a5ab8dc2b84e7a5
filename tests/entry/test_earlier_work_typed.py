"""Earlier work as typed: read in any order, read back as written, one clear line for what is wrong."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.case.loading import load
from diagnose.entry.case_builder import CaseBuilder
from diagnose.entry.earlier import EarlierInput, parse_earlier
from diagnose.errors import UsageError
from knowledge.book import the_book
from knowledge.reports.words import Done, Hands
from tests.support.command_line import call

BOOK = the_book()


@pytest.mark.parametrize(
    ("text", "fields"),
    [
        ("oil pump", {"what": "oil_pump"}),
        (
            "oil pump renewed 2 weeks before by workshop",
            {"what": "oil_pump", "done": "renewed", "before": "2 weeks", "hands": "workshop"},
        ),
        ("Oil_Change 3 days ago", {"what": "oil_change", "before": "3 days"}),
        (
            "sump by the machine shop, taken off and refitted, just before",
            {
                "what": "sump",
                "done": "taken off and refitted",
                "before": "straight before",
                "hands": "machine shop",
            },
        ),
        ("nothing", {"what": "nothing"}),
    ],
)
def test_typed_work_is_read(text: str, fields: dict[str, str]) -> None:
    read = {k: v for k, v in parse_earlier(text, BOOK).fields().items() if v is not None}
    assert read == fields


@given(
    area=st.sampled_from(sorted(BOOK.areas.values(), key=lambda a: a.id)),
    done=st.sampled_from([None, *Done]),
    before=st.sampled_from([None, "straight before", "2 weeks", "0.5 h", "10 years"]),
    hands=st.sampled_from([None, *Hands]),
)
def test_a_line_reads_back_as_it_was(
    area: object, done: Done | None, before: str | None, hands: Hands | None
) -> None:
    work = EarlierInput(area=area, done=done, before=before, hands=hands)  # type: ignore[arg-type]
    assert parse_earlier(work.typed(), BOOK) == work


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("oil pmup renewed", "Did you mean 'oil pump'?"),
        ("oil pump renewd", "Did you mean 'renewed'?"),
        ("oil pump 2 fortnights", "is no time here"),
        ("oil pump renewed cleaned", "given twice"),
        ("oil pump by the workshp", "Did you mean 'workshop'?"),
        ("", "no such place of work"),
    ],
)
def test_a_wrong_line_gets_one_clear_line(text: str, part: str) -> None:
    with pytest.raises(UsageError) as refused:
        parse_earlier(text, BOOK)
    assert part in str(refused.value)
    assert "\n" not in str(refused.value)


def test_work_is_recorded_and_corrected(tmp_path: Path) -> None:
    """By the command: what is wrong saves nothing, and a correction replaces."""
    case = tmp_path / "gull.toml"
    case.write_text('schema = 1\n[engine]\nlayout = "distributor_v8"\n', "utf-8")
    assert call("record", str(case), "--earlier", "oil pump renewed 2 weeks before").code == 0
    before = case.read_text("utf-8")
    assert call("record", str(case), "--earlier", "oil pmup").code != 0
    assert case.read_text("utf-8") == before
    done = call(
        "record", str(case), "--earlier", "oil pump renewed 2 months before", "--replaces", "1"
    )
    assert done.code == 0, done.err
    works = load(case, BOOK).facts().earlier
    assert [(w.area.id, round(w.before or 0.0)) for w in works] == [("oil_pump", 5_259_492)]


def test_a_builder_takes_it() -> None:
    builder = CaseBuilder(layout="distributor_v8")
    builder.earlier("oil pump renewed straight before")
    (work,) = builder.build().facts().earlier
    assert (work.area.id, work.done, work.before) == ("oil_pump", Done.RENEWED, 0.0)


def test_earlier_work_in_free_words() -> None:
    """Words for a place that has another name in the list are read as a story is."""
    work = parse_earlier("head gasket renewed 2 weeks before", BOOK)
    assert (work.area.id, work.done) == ("cylinder_head", Done.RENEWED)
    assert work.before


def test_no_such_place_lists_the_places() -> None:
    """Where none is near, all are named."""
    with pytest.raises(UsageError, match=r"Places: .*oil pump.*sump"):
        parse_earlier("zzz qqq", BOOK)
