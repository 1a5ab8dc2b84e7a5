"""Every caution of a check, an opening and a task is shown before the step it belongs to.

``test_cautions_everywhere`` holds the book; this holds what a person reads.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.signoff.sheet import Signoff
from knowledge.access import Opening
from knowledge.book import the_book
from knowledge.cautions import CAUTIONS, RUNNING, Wording
from knowledge.work import Access, Caution, Inspection, Phase
from tests.support.command_line import ROOT, call
from tests.support.complaints import OPEN, flat, path_of, plan
from tests.support.examples import one_in
from tests.support.reviews import next_step

BOOK = the_book()
#: cases whose sign-off is read through: a V8, a boat, a tractor, an engine with a turbocharger
CASES = [ROOT / "cases" / f"{name}.toml" for name in ("petrel", "gannet", "dunlin", "slip_tractor")]


def worded(kinds: Iterable[Caution]) -> list[Wording]:
    """The sentences of each caution that concern every engine."""
    sentences = (w for c in dict.fromkeys(kinds) for w in CAUTIONS[c])
    return [w for w in sentences if not (w.only_with or w.not_with)]


def wordings(kinds: Iterable[Caution]) -> list[str]:
    """How each caution that concerns every engine is worded."""
    return [w.says for w in worded(kinds)]


@cache
def answer_of(path: Path) -> Diagnosis:
    return Diagnosis(BOOK, load(path, BOOK))


# ------------------------------------------------------------------------ the next check


def with_next(answer: Diagnosis, check: Inspection, way: tuple[Opening, ...]) -> Diagnosis:
    """The answer as if this check were to be done next, behind these openings."""
    choice = answer.next_check
    assert choice is not None
    option = replace(choice.option, view=replace(choice.option.view, inspection=check), way=way)
    other, planner = replace(answer), replace(answer.planner)
    vars(planner)["choice"] = replace(choice, option=option)
    vars(other)["planner"] = planner
    return other


@pytest.fixture(scope="module")
def begun() -> Diagnosis:
    return answer_of(path_of("plover"))


@pytest.mark.parametrize("share", one_in(4, range(4)))
def test_every_caution_of_a_check_is_in_the_review(begun: Diagnosis, share: int) -> None:
    for check in list(BOOK.inspections.values())[share::4]:
        text = flat("\n".join(next_step(with_next(begun, check, ()), "case.toml")))
        head = text[: text.index("Write down what you find")]
        for says in wordings(check.cautions):
            assert f"caution: {says}" in head, check.id


def test_every_caution_of_an_opening_is_in_the_review(begun: Diagnosis) -> None:
    check = BOOK.inspections["read_the_stick"]
    shown = 0
    for opening in begun.planner.openings.values():
        if not opening.minutes_in_place:
            continue  # nothing is opened
        text = flat("\n".join(next_step(with_next(begun, check, (opening,)), "case.toml")))
        for says in wordings(opening.cautions):
            shown += 1
            assert f"caution: {says}" in text, opening.access
            assert text.index(f"open: {opening.says}") < text.index("Write down what you find")
    assert shown > 20


@pytest.mark.parametrize("name", OPEN)
def test_the_review_of_a_job_warns_of_its_next_check(name: str) -> None:
    """As printed, with nothing patched: the check, and each opening on the way to it."""
    answer = answer_of(path_of(name))
    assert answer.next_check is not None
    step = answer.next_check.option
    text = flat(call("review", path_of(name)).out).partition(" caution: ")[2]
    whole = flat(call("review", path_of(name), "--full").out)
    kinds = [*step.inspection.cautions, *(c for o in step.way for c in o.cautions)]
    for one in worded(kinds):
        assert one.short in text
        assert f"caution: {one.says}" in whole


@pytest.mark.parametrize("name", ["skua", "knot", "heron"])
def test_the_data_of_a_plan_hold_its_cautions(name: str) -> None:
    for stage in plan(name)["stages"]:
        kinds = [c for k in stage["checks"] for c in BOOK.inspections[k["inspection"]].cautions]
        assert set(wordings(kinds)) <= set(stage["cautions"])


# ------------------------------------------------------------------------ the sign-off sheet


def cautions_by_phase(path: Path) -> dict[Phase, list[str]]:
    """What the tasks of each phase call for, where the whole engine is built."""
    found: dict[Phase, list[Caution]] = {}
    for item in Signoff(answer_of(path), 0.9, whole=True).items:
        found.setdefault(item.task.phase, []).extend(item.task.cautions)
    return {phase: wordings(kinds) for phase, kinds in found.items()}


@pytest.mark.parametrize("path", CASES, ids=lambda p: p.stem)
def test_every_caution_of_a_task_heads_its_phase(path: Path) -> None:
    wanted = cautions_by_phase(path)
    assert sum(map(len, wanted.values())) >= 20
    printed = call("signoff", path, "--whole-engine", "--all").out
    heads = re.findall(r"^(\d+)  .+\n((?:.+\n)*)", printed, flags=re.MULTILINE)
    by_number = {int(number): flat(body) for number, body in heads}
    sheet = re.split(
        r"^## ", call("signoff", path, "--whole-engine", "--markdown").out, flags=re.MULTILINE
    )
    for phase, says in wanted.items():
        number = list(Phase).index(phase) + 1
        for one in says:
            assert f"caution: {one}" in by_number[number], phase
            parts = [p.split("\n### ")[0] for p in sheet if f"> caution: {one}" in p]
            assert parts, f"{phase} on the sheet to fill in"
            assert any(f"> caution: {one}" in p for p in parts), "before the first task"


@pytest.mark.parametrize("path", CASES, ids=lambda p: p.stem)
def test_every_caution_of_a_task_is_on_its_page(path: Path, tmp_path: Path) -> None:
    page = tmp_path / "page.html"
    assert call("signoff", path, "--whole-engine", "--html", page).code == 0
    text = flat(re.sub(r"<[^>]+>", "", page.read_text("utf-8")))
    for says in cautions_by_phase(path).values():
        for one in says:
            assert one.replace("'", "&#39;") in text or one in text


# ------------------------------------------------------------------------ the first start

START = (*RUNNING, Caution.FIRE)


@pytest.mark.parametrize("path", CASES, ids=lambda p: p.stem)
@pytest.mark.parametrize("whole", [(), ("--whole-engine",)])
def test_every_caution_of_the_first_start_is_shown(path: Path, whole: tuple[str, ...]) -> None:
    """Those of any running engine, fire, and those of its own tasks, before the limits to watch."""
    text = flat(call("signoff", path, "--start", "--all", *whole).out)
    tasks = [
        i.task for i in Signoff(answer_of(path), 0.9, whole=bool(whole)).of([Phase.FIRST_START])
    ]
    kinds = [*START, *(c for t in tasks for c in t.cautions)]
    for says in wordings(kinds):
        assert f"caution: {says}" in text
        for task in tasks:
            assert text.index(f"caution: {says}") < text.index(f"[{task.id}]")
    assert not whole or tasks


# ------------------------------------------------------------------------ of some engines

RUNNING_CHECK = next(i for i in BOOK.inspections.values() if set(RUNNING) <= set(i.cautions))


@pytest.mark.parametrize(
    ("engine", "caution"),
    [
        ('layout = "marine_diesel"', Caution.BOAT),
        ('layout = "tractor_diesel"', Caution.TRACTOR),
        ("", Caution.BOAT),  # an unnamed layout may be any
        ("", Caution.TRACTOR),
    ],
)
def test_a_boats_and_a_tractors_cautions_reach_them(
    engine: str, caution: Caution, tmp_path: Path
) -> None:
    case = tmp_path / "case.toml"
    case.write_text(f"schema = 1\n[engine]\n{engine}\n", "utf-8")
    answer = Diagnosis(BOOK, load(case, BOOK))
    text = flat("\n".join(next_step(with_next(answer, RUNNING_CHECK, ()), "case.toml")))
    assert f"caution: {CAUTIONS[caution][0].says}" in text


@pytest.mark.parametrize(
    ("engine", "shown"),
    [('has = ["diesel"]', True), ('lacks = ["diesel"]', False), ("", True)],
)
def test_injection_is_warned_of_unless_it_is_no_diesel(
    engine: str, shown: bool, tmp_path: Path
) -> None:
    case = tmp_path / "case.toml"
    case.write_text(f"schema = 1\n[engine]\n{engine}\n", "utf-8")
    check = next(i for i in BOOK.inspections.values() if Caution.INJECTION in i.cautions)
    answer = Diagnosis(BOOK, load(case, BOOK))
    text = flat("\n".join(next_step(with_next(answer, check, ()), "case.toml")))
    assert (CAUTIONS[Caution.INJECTION][0].says in text) is shown


def test_each_caution_is_called_for_somewhere() -> None:
    """Every caution of the book is shown somewhere."""
    used = {c for i in BOOK.inspections.values() for c in i.cautions}
    used |= {c for t in BOOK.tasks.values() for c in t.cautions}
    used |= {c for o in answer_of(CASES[0]).planner.openings.values() for c in o.cautions}
    assert used == set(Caution)
    assert Access.OUTSIDE in answer_of(CASES[0]).planner.openings


def test_a_tractors_first_start_warns_of_its_drives() -> None:
    """Only the tasks of its first start call for this caution."""
    words = ("signoff", ROOT / "cases" / "slip_tractor.toml", "--start", "--whole-engine")
    caution = CAUTIONS[Caution.TRACTOR][0]
    assert caution.short in flat(call(*words).out).split("Take care: ")[1]
    assert f"caution: {caution.says}" in flat(call(*words, "--all").out)
