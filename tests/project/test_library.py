"""The public API: building a case equals loading it, imports are lazy, errors are one line."""

from __future__ import annotations

import ast
import json
import subprocess
import sys
import sysconfig
import tomllib
import venv
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest

import diagnose as api
from diagnose.circuit.budget import budget as budget_of
from diagnose.diagnosis import Diagnosis
from diagnose.expectations import failures
from diagnose.planning.choosing import SURE
from diagnose.teardown.plan import Plan
from knowledge.book import the_book
from tests.studies.refresh_readme import README, blocks
from tests.support.command_line import call
from tests.support.rebuilding import rebuilt

ROOT = Path(__file__).parents[2]
CASES = sorted(ROOT.glob("cases/*.toml")) + sorted(ROOT.glob("tests/confirmed/cases/*.toml"))[::9]
PETREL = ROOT / "cases" / "petrel.toml"
BOOK = the_book()


# ------------------------------------------------------------------------------ build and load


@pytest.mark.parametrize("path", CASES, ids=lambda p: p.stem)
def test_building_a_case_equals_loading_it(path: Path) -> None:
    """Entry by entry through the builder: the same case but for its end and expectations."""
    raw = tomllib.loads(path.read_text("utf-8"))
    raw.get("job", {}).pop("source", None)
    for name in ("closed", "expect"):
        raw.pop(name, None)
    if "card" in raw.get("engine", {}):
        raw["engine"]["card"] = str(path.parent / raw["engine"]["card"])
    loaded = api.load_case(path)
    number = max(int(e["no"]) for k in raw if isinstance(raw[k], list) for e in raw[k])
    built = rebuilt(raw).build()
    entries = "finding_records measurements readings start_readings baseline task_records"
    for field in [*entries.split(), "behaviours", "trials", "earlier"]:
        mine, theirs = getattr(built, field), getattr(loaded, field)
        assert [replace(x, entry=None) for x in mine] == [replace(x, entry=None) for x in theirs]
        assert [x.entry.note for x in mine] == [x.entry.note for x in theirs]
    assert built.last_number == number
    for field in ("layout", "profile", "limits", "dimensions", "features"):
        assert getattr(built, field) == getattr(loaded, field), field
    assert built.facts() == loaded.facts()


def plover() -> api.CaseBuilder:
    job = api.CaseBuilder(
        title="Plover, yard launch",
        layout="skew_gear_four",
        lacks=["oil_cooler"],
        limits={"hot_idle_pressure": "14 psi"},
        dimensions={"relief_setting": "55 psi"},
    )
    job.finding("needle_flickers", note="at idle")
    job.finding("bearing_knock", "probably not")
    job.finding("fuel_smell", "unknown")
    job.reading("700 rpm 20 C 48 psi direct")
    job.reading("700 rpm 90 C 9 psi ±1 psi direct")
    job.reading("2500 rpm 92 C 30 psi")
    job.measurement("main_clearance", "0.0045 in", where="main 2")
    job.baseline("700 rpm 90 C 24 psi")
    job.task("nothing_left_inside", "done")
    return job


def test_toml_of_a_builder_is_the_same_case() -> None:
    job = plover()
    job.finding("needle_flickers", False, replaces=1)
    job.withdraw(2)
    case = job.build()
    assert api.parse_case(job.toml()) == case
    states = {s.finding.id: s.observation for s in case.finding_records}
    assert "bearing_knock" not in states
    flickers = states["needle_flickers"]
    assert flickers is not None
    assert flickers.state.value == "absent"
    assert states["fuel_smell"] is None
    (clearance,) = case.measurements
    assert clearance.value == pytest.approx(0.0045 * 0.0254)


def test_a_case_file_is_loaded_up_to_an_entry(tmp_path: Path) -> None:
    path = tmp_path / "plover.toml"
    path.write_text(plover().toml(), "utf-8")
    assert replace(api.load_case(str(path)), path=None) == plover().build()
    assert api.load_case(path, last_entry=3).last_number == 3


# ------------------------------------------------------------------------------ what follows


def test_diagnosis_is_the_one_of_the_commands() -> None:
    case = api.load_case(PETREL)
    answer = api.diagnose(case)
    assert failures(answer) == []
    assert [r.cause.id for r in answer.ranking] == [
        r.cause.id for r in Diagnosis(BOOK, case).ranking
    ]
    top = answer.ranking[0].cause.id
    assert answer.reasons.for_cause(top) == answer.reasons.weights([top])[top]
    assert not answer.may_run
    assert {a.severity.name for a in answer.alarms} >= {"STOP"}


def test_review_says_the_diagnosis_in_words() -> None:
    answer = api.diagnose(api.load_case(PETREL))
    document = api.review(answer)
    first = document.causes[0]
    assert (first.id, first.remedy) == ("relief_debris", answer.ranking[0].cause.remedy)
    assert [item.finding for item in (*first.pro, *first.con)]
    assert all(item.says for item in first.pro)
    assert document.in_short
    printed = json.loads(call("review", PETREL, "--json").out)
    assert printed == {"schema": 1, **api.as_json(api.review(answer, for_json=True))}
    assert api.review(api.diagnose(plover().build())).case is None


def test_closed_jobs_of_a_folder_give_factors() -> None:
    """One closed job there: its cause counts for more, and nothing does without it."""
    learned = api.learned_factors(ROOT / "cases")
    assert set(learned) == set(BOOK.causes)
    assert max(learned, key=learned.__getitem__) == "pickup_tube_loose"
    nothing = api.learned_factors(ROOT / "cases", without=ROOT / "cases" / "gannet.toml")
    assert set(nothing.values()) == {1.0}


def test_learned_factors_move_the_ranking() -> None:
    case = plover().build()
    before = {r.cause.id: r.probability for r in api.diagnose(case).ranking}
    learned = {"relief_debris": 5.0}
    after = {r.cause.id: r.probability for r in api.diagnose(case, learned=learned).ranking}
    assert after["relief_debris"] > before["relief_debris"]


def test_plan_takes_its_wishes() -> None:
    answer = api.diagnose(plover().build())
    assert api.plan(answer).request == Plan(answer).request
    assert api.plan(answer).request.until == SURE
    short = api.plan(answer, minutes=30)
    assert 0 < sum(s.minutes for s in short.stages) <= 30
    slow = api.plan(answer, first_time=True, crowded=True)
    assert slow.stages[0].minutes > api.plan(answer).stages[0].minutes


def test_survey_budget_and_forecast_of_a_built_case() -> None:
    case = plover().build()
    found = api.survey(case)
    assert sum(row.share for row in found.rows) == pytest.approx(1.0)
    accounts = api.budget(case).accounts
    assert [a.explained for a in accounts] == [a.explained for a in budget_of(case).accounts]
    assert 0 < accounts[0].explained.mean < accounts[0].healthy.mean < 1e6  # Pa
    result = api.forecast(case, ["main_clearance=0.0025 in"], target="20 psi")
    after, before = result.hot_pressure(result.after, 700), result.hot_pressure(result.before, 700)
    assert after.shape == (48,)
    assert 1e4 < before.mean() < after.mean() < 1e6
    assert result.targets[0].pressure == pytest.approx(api.parse_value("20 psi", "pressure"))


def test_parsing_needs_no_case() -> None:
    reading = api.parse_reading("700 rpm, 95 C, 8 psi direct").in_si()
    assert (reading.rpm, reading.gauge) == (700.0, "direct")
    assert reading.oil_temperature == pytest.approx(368.15)
    assert reading.pressure == pytest.approx(8 * 6894.757)
    assert api.parse_answer("70 %") == api.Answer("present", 0.7)
    assert api.parse_value("1/4 in", "length") == (pytest.approx(0.00635))


def test_words_of_the_book_are_found_by_other_words() -> None:
    hits = api.find_words("main bearing clearance", kind="measure", most=2)
    assert hits[0].word.id == "main_clearance"
    assert len(hits) <= 2
    assert all(h.word.id in BOOK.measures for h in hits)
    assert api.find_words("xqzzy vvvv") == []


# ------------------------------------------------------------------------------------ errors

FAULTS: list[tuple[str, Callable[[], object], type[api.UserError], str]] = [
    ("unknown id", lambda: plover().finding("needle_dances"), api.UsageError, "Did you mean 'needle_flickers'?"),
    ("a cause", lambda: plover().finding("relief_debris"), api.UsageError, "is a cause"),
    ("no answer", lambda: plover().finding("needle_flickers", "often"), api.UsageError, "'often' is no answer"),
    ("a measure as a finding", lambda: plover().finding("main_clearance", "0.1 mm"), api.UsageError, "use measurement()"),
    ("a finding as a measure", lambda: plover().measurement("needle_flickers", "yes"), api.UsageError, "use finding()"),
    ("a task as a finding", lambda: plover().finding("nothing_left_inside", "done"), api.UsageError, "use task()"),
    ("no unit", lambda: plover().measurement("main_clearance", "0.1"), api.UsageError, "main_clearance: '0.1' is no length"),
    ("half a reading", lambda: plover().reading("700 rpm 90 C"), api.UsageError, "needs a pressure"),
    ("a gauge in a baseline", lambda: plover().baseline("700 rpm 90 C 20 psi direct"), api.UsageError, "no word for gauge"),
    ("no such entry", lambda: plover().withdraw(99), api.UsageError, "no entry 99"),
    ("no such layout", lambda: api.CaseBuilder(layout="skew_gear_for").build(), api.BadCaseError, "'skew_gear_four'"),
    ("an impossible figure", lambda: built_with("9 m"), api.BadCaseError, "cannot be"),
    ("an aircraft", lambda: api.CaseBuilder(aircraft=True).build(), api.OutOfScopeError, "aircraft"),
    ("no file", lambda: api.load_case("no/such.toml"), api.NoCaseError, "no folder no"),
    ("no folder", lambda: api.learned_factors("no/such"), api.NoCaseError, "no/such"),
    ("no such kind", lambda: api.find_words("oil", kind="findings"), api.UsageError, "'finding'"),
    ("no TOML", lambda: api.parse_case("schema = "), api.BadCaseError, "not a TOML file"),
    ("no reading", lambda: api.survey(api.CaseBuilder(layout="skew_gear_four").build()), api.UsageError, "no gauge reading"),
    ("an unknown change", lambda: api.forecast(plover().build(), ["main_clearence=1 mm"]), api.UsageError, "'main_clearance'"),
    ("an unreadable target", lambda: api.forecast(plover().build(), [], target="high"), api.UsageError, "high"),
    ("certainty of one", lambda: api.plan(api.diagnose(plover().build()), until=1.0), api.UsageError, "until: 1"),
    ("no minutes", lambda: api.plan(api.diagnose(plover().build()), minutes=0), api.UsageError, "minutes: 0"),
    ("a finding's value", lambda: api.parse_value("1 mm", "needle_flickers"), api.UsageError, "has no value"),
    ("a wrong dimension", lambda: api.parse_value("8 psi", "length"), api.UsageError, "length: '8 psi'"),
]  # fmt: skip


def built_with(clearance: str) -> api.Case:
    job = plover()
    job.measurement("rod_clearance", clearance)
    return job.build()


@pytest.mark.parametrize(
    ("call", "error", "part"), [f[1:] for f in FAULTS], ids=[f[0] for f in FAULTS]
)
def test_errors_are_one_clear_line(
    call: Callable[[], object], error: type[api.UserError], part: str
) -> None:
    with pytest.raises(error) as raised:
        call()
    text = str(raised.value)
    assert part in text
    assert len(text.splitlines()) == 1


def test_every_fault_of_a_case_is_found_at_once() -> None:
    job = api.CaseBuilder(layout="no_such", limits={"hot_idle_pressure": "14"})
    job.measurement("rod_clearance", "9 m")
    with pytest.raises(api.BadCaseError) as raised:
        job.build()
    assert len(raised.value.faults) == 3


# ------------------------------------------------------------------------------ import and types


def test_every_public_name_loads_and_has_a_docstring() -> None:
    for name in api.__all__:
        value = getattr(api, name)
        assert name == "__version__" or (value.__doc__ or "").strip(), name
    assert set(api.__all__) <= set(dir(api))
    with pytest.raises(AttributeError, match="no attribute 'nothing'"):
        _ = api.nothing  # type: ignore[attr-defined]


def test_type_checkers_and_python_load_the_same_names() -> None:
    """The imports for type checkers name the modules that are loaded."""
    tree = ast.parse((ROOT / "diagnose" / "__init__.py").read_text("utf-8"))
    shown = {
        alias.name: node.module
        for node in ast.walk(tree)
        if isinstance(node, ast.ImportFrom) and (node.module or "").startswith("diagnose.")
        for alias in node.names
    }
    assert shown == vars(api)["_HOME"]
    assert {*shown, "__version__"} == set(api.__all__)


def loaded_by(code: str) -> set[str]:
    """The modules that are loaded after this code, in a Python of its own."""
    code = f"import sys\n{code}\nprint(*sys.modules)"
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True
    )
    return set(done.stdout.split())


def test_import_is_cheap() -> None:
    """Importing the package loads no other module of it, and none of its dependencies."""
    loaded = loaded_by("import diagnose")
    assert not {m for m in loaded if m.startswith(("diagnose.", "knowledge"))}
    assert not loaded & {"numpy", "pydantic", "networkx", "rapidfuzz", "typer", "matplotlib"}


@pytest.mark.parametrize(
    ("code", "absent"),
    [
        ("from diagnose import UserError, BadCaseError", {"knowledge", "numpy", "pydantic"}),
        ("import diagnose; diagnose.load_case('cases/petrel.toml')", {"numpy", "networkx"}),
        (
            "import diagnose\njob = diagnose.CaseBuilder()\n"
            "job.finding('needle_flickers')\ndiagnose.diagnose(job.build()).ranking",
            {"diagnose.hydraulics", "scipy", "typer", "matplotlib"},
        ),
    ],
    ids=["errors", "load", "diagnose"],
)
def test_each_name_loads_only_what_it_needs(code: str, absent: set[str]) -> None:
    assert not loaded_by(code) & absent


CLIENT = """
from diagnose import CaseBuilder, UserError, budget, diagnose, load_case, parse_reading, plan


def likeliest(path: str) -> tuple[str, float]:
    try:
        answer = diagnose(load_case(path))
    except UserError:
        return "", 0.0
    first = answer.ranking[0]
    minutes: float = plan(answer, until=0.8).estimate.expected
    return first.cause.says, first.probability * minutes


job = CaseBuilder(layout="skew_gear_four")
number: int = job.finding("needle_flickers", note="at idle")
pressure: float = parse_reading("700 rpm 8 psi").in_si().pressure
loss: float = budget(job.build()).accounts[0].explained.mean
"""
WRONG = 'job.finding(3)\nnumber = parse_reading("700 rpm 8 psi")\n'
PROGRAMS = [b.program for b in blocks(README.read_text("utf-8").split("\n")) if b.program]


def test_types_reach_a_client(tmp_path: Path) -> None:
    """``mypy --strict`` of programs elsewhere sees the types of the installed packages."""
    venv.create(tmp_path / "env", with_pip=False)
    site = next((tmp_path / "env").glob("lib/python*/site-packages"))
    site.joinpath("here.pth").write_text(f"{ROOT}\n{sysconfig.get_path('purelib')}\n")
    readme = {f"readme{i}.py": program for i, program in enumerate(PROGRAMS)}
    for name, program in {"right.py": CLIENT, "wrong.py": CLIENT + WRONG, **readme}.items():
        (tmp_path / name).write_text(program)
    python = tmp_path / "env" / "bin" / "python"
    command = [sys.executable, "-m", "mypy", "--strict", "--python-executable", str(python)]
    done = subprocess.run(
        [*command, "--cache-dir", str(ROOT / ".mypy_cache"), "right.py", "wrong.py", *readme],
        cwd=tmp_path, capture_output=True, text=True, check=False,
    )  # fmt: skip
    errors = [line.split(" error: ")[0] for line in done.stdout.splitlines() if " error: " in line]
    lines = CLIENT.count("\n")
    assert errors == [f"wrong.py:{lines + 1}:", f"wrong.py:{lines + 2}:"], done.stdout + done.stderr
