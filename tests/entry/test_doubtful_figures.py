"""Figures that can hardly be right as typed: no unit of that name, or far off every limit."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.entry.interview import Interview
from diagnose.entry.questions import ConfirmQuestion, NumbersQuestion
from knowledge.book import the_book
from tests.support.command_line import call


@pytest.mark.parametrize("words", ["oil pressure 5 bananas", "hot idle 5 apples"])
def test_a_figure_with_what_is_no_unit_is_refused_in_one_line(words: str, tmp_path: Path) -> None:
    case = tmp_path / "job.toml"
    case.write_text("schema = 1\n", "utf-8")
    code, _, said = call("record", str(case), words)
    unit = words.rpartition(" ")[2]
    assert (code, said) == (2, f"'{words}': no unit is called '{unit}'; write it like 5 psi\n")
    assert case.read_text("utf-8") == "schema = 1\n"


@pytest.mark.parametrize(
    ("words", "doubted"),
    [("mains 40 thou", True), ("mains 0.0004 thou", True), ("mains 6 thou", False)],
)
def test_a_value_far_off_its_limit_is_doubted(words: str, doubted: bool, tmp_path: Path) -> None:
    case = tmp_path / "job.toml"
    case.write_text("schema = 1\n", "utf-8")
    out = " ".join(call("record", str(case), words)[1].split())
    assert "the limit of" in out
    assert ("check the figure and its unit" in out) is doubted


def test_values_of_several_bearings_name_each_and_the_limit_once(tmp_path: Path) -> None:
    """The source stands with the first; the others say by how much."""
    case = tmp_path / "job.toml"
    case.write_text("schema = 1\n", "utf-8")
    out = call("record", str(case), "main 1 .0038, main 2 .0040, main 3 .0020 in").out
    lines = out.splitlines()
    assert [f"main_clearance, main {n}: " in out for n in (1, 2, 3)] == [True] * 3
    assert out.count("Engine Builder") == 1
    second = next(i for i, line in enumerate(lines) if "main 2: " in line)
    assert " ".join(lines[second + 1].split()) == "over the limit of 0.0035 in by 0.0005"
    assert lines[second + 3].split() == ["within", "limits"]


@pytest.mark.parametrize(("typed", "is_asked"), [("2 60", True), ("30 60", False)])
def test_less_at_speed_than_at_idle_is_shown_before_it_is_kept(
    typed: str, is_asked: bool, tmp_path: Path
) -> None:
    """A bare 2 may be the number of a choice."""
    path = tmp_path / "job.toml"
    interview = Interview.begin(path, the_book())
    for line in ("4", "diesel lorry, 14 psi at hot idle", "", "d"):
        assert interview.reply(line) is None
    while not isinstance(interview.next_question(), NumbersQuestion):
        assert interview.reply("d") is None
    assert interview.reply(typed) is None
    question = interview.next_question()
    assert isinstance(question, ConfirmQuestion) is is_asked
    if is_asked:
        assert interview.reply("n") is None
        assert len(load(path, the_book()).readings) == 1, "only the story's"
        assert not isinstance(interview.next_question(), NumbersQuestion)
