"""A whole job, from the first flicker to the closed case, with only the commands a user types."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support.command_line import ROOT, Done
from tests.support.full_job import Step, entries, whole_job


@pytest.fixture(scope="module")
def job(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, list[tuple[Step, Done]]]:
    case = tmp_path_factory.mktemp("yard") / "gannet.toml"
    return case, whole_job(case)


def test_every_command_does_what_it_should(job: tuple[Path, list[tuple[Step, Done]]]) -> None:
    for step, done in job[1]:
        assert done.code == step.code, (step.words, done.err)
        for text in step.shows:
            assert text in done.out + done.err, (step.words, text)


def test_the_case_it_leaves_is_the_one_in_cases(job: tuple[Path, list[tuple[Step, Done]]]) -> None:
    """The days apart, what was typed is what the worked case holds."""
    kept = (ROOT / "cases" / "gannet.toml").read_text("utf-8")
    assert entries(job[0].read_text("utf-8")) == entries(kept)


def test_the_close_names_what_stood_open(job: tuple[Path, list[tuple[Step, Done]]]) -> None:
    """Refused while the sheet was empty; closed with the reason and the shortfall on record."""
    refused = next(d for s, d in job[1] if s.words[0] == "close" and s.code == 2)
    assert "sign-off not finished" in refused.err
    text = job[0].read_text("utf-8")
    assert "some of the missing pressure is not explained" in text
    assert "no figure of the circuit stands for air" in text
