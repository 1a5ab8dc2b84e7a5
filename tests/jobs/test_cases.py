"""The worked jobs in ``cases/``: invented, whole from first flicker to closing, and right."""

from __future__ import annotations

import re
import tomllib
from datetime import date
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.expectations import failures
from knowledge.book import the_book
from knowledge.model import Stage

ROOT = Path(__file__).parents[2]
FILES = sorted((ROOT / "cases").glob("*.toml"))
#: a few makers whose names come easily to the pen; the jobs are invented and name none
MAKERS = (
    "ajax|bedford|bmc|bosch|buick|cadillac|caterpillar|chevrolet|chevy|chrysler|cummins|daf|"
    "daimler|detroit diesel|deutz|dodge|ferguson|fiat|ford|fordson|gardner|gmc|honda|international|"
    "isuzu|jaguar|jeep|john deere|kelvin|kohler|kubota|lancia|leyland|lister|lucas|mack|man|"
    "massey|mercedes|mercruiser|mercury|mitsubishi|morris|nissan|oldsmobile|onan|perkins|peugeot|"
    "renault|rolls|rover|saab|scania|smiths|thornycroft|toyota|triumph|vauxhall|vdo|volvo|"
    "westerbeke|yanmar"
)
PATHS = pytest.mark.parametrize("path", FILES, ids=lambda p: p.stem)


@cache
def case_in(path: Path) -> Case:
    """The case as the tool reads it."""
    return load(path, the_book())


@cache
def answer_to(path: Path, stage: Stage = Stage.OPENED) -> Diagnosis:
    """What the tool answers when no more than the stage is known."""
    return Diagnosis(the_book(), case_in(path), stage)


@cache
def raw(path: Path) -> dict[str, Any]:
    """The file as it is written."""
    return tomllib.loads(path.read_text("utf-8"))


def entries(path: Path) -> list[dict[str, Any]]:
    """Everything numbered, in the order of its numbers."""
    kinds = ("finding", "reading", "behaviour", "trial", "earlier", "work", "closed")
    every = [e for k in kinds for e in raw(path).get(k, [])]
    return sorted(every, key=lambda e: int(e["no"]))


def stages(path: Path) -> set[Stage]:
    """How far the person went before the job was closed."""
    case = case_in(path)
    return (
        {s.stage for s in case.finding_records if s.observation}
        | {m.stage for m in case.measurements}
        | {r.stage for r in case.readings}
    )


FULL = [p for p in FILES if stages(p) >= {Stage.KNOWN, Stage.OUTSIDE, Stage.OPENED}]


def test_there_are_enough_full_jobs() -> None:
    """At least eight jobs were reported, at least eight checked from outside, and eight opened."""
    assert len(FULL) >= 8


def test_the_jobs_differ() -> None:
    """The full jobs end in at least six different root causes."""
    ends = {tuple(sorted(expect.first)) for p in FULL if (expect := case_in(p).expect)}
    assert len(ends) >= 6


@PATHS
def test_case_comes_out_as_it_must(path: Path) -> None:
    """Every case names what it must come out as, and does."""
    case = case_in(path)
    assert case.expect is not None
    assert case.expect.first or case.expect.among_three
    assert failures(answer_to(path)) == []


@pytest.mark.parametrize("path", FULL, ids=lambda p: p.stem)
@pytest.mark.parametrize("stage", Stage, ids=lambda s: s.value)
def test_every_stage_runs(path: Path, stage: Stage) -> None:
    """Complaint only, with outside checks, with the engine opened: each gives an answer."""
    answer = answer_to(path, stage)
    assert answer.inference.evidence
    assert len(answer.ranking) > 50
    assert all(0.0 <= r.probability <= 1.0 for r in answer.ranking)
    assert answer.inference.left_out == ()
    assert answer.explanations


@pytest.mark.parametrize("path", FULL, ids=lambda p: p.stem)
def test_opening_up_settles_it(path: Path) -> None:
    """What the job was closed with grows likelier from the complaint to the teardown."""
    case = case_in(path)
    assert case.expect is not None
    chances = []
    for stage in (Stage.KNOWN, Stage.OPENED):
        rows = {r.cause.id: r.probability for r in answer_to(path, stage).ranking}
        chances.append(sum(rows[c] for c in case.expect.first))
    assert chances[0] < chances[1]


@PATHS
def test_case_is_invented_and_marked_so(path: Path) -> None:
    """Invented on top, no maker, first names only."""
    text = path.read_text("utf-8")
    assert text.startswith("# Invented")
    assert not re.findall(rf"\b(?:{MAKERS})\b", text, re.IGNORECASE)
    for entry in (raw(path)["job"], *entries(path)):
        assert re.fullmatch(r"[A-Z][a-z]+", entry["by"]), entry


@PATHS
def test_entries_of_a_case_are_in_order_of_time(path: Path) -> None:
    """Numbers run without a gap, dates never go back, and the job is closed, in a note or so."""
    written = entries(path)
    assert [e["no"] for e in written] == list(range(1, len(written) + 1))
    days: list[date] = [e["when"] for e in written]
    assert days == sorted(days)
    if case_in(path).closed:
        return
    closed = re.match(r"\s*Closed (\d{4}-\d\d-\d\d) by [A-Z][a-z]+\.", raw(path)["job"]["note"])
    assert closed
    assert date.fromisoformat(closed[1]) >= days[-1]


def test_together_they_show_every_way_of_writing() -> None:
    """A correction, an unknown, an unsure sighting, both gauges, limits, measures, a place."""
    every = [e for p in FILES for e in entries(p)]
    assert any("replaces" in e for e in every)
    assert any(e.get("state") == "unknown" for e in every)
    assert any(e.get("sure", 1.0) < 1.0 for e in every)
    assert {e.get("gauge", "panel") for e in every if "rpm" in e} == {"panel", "direct"}
    assert {"pickup_gap", "main_clearance", "rod_clearance", "pump_end_clearance"} <= {
        e["what"] for e in every if "value" in e
    }
    assert any(e.get("where") for e in every)
    assert any(e.get("learned") for e in every)
    assert all(case_in(p).limits for p in FILES if p.stem not in ("slip_tractor", "gannet"))
