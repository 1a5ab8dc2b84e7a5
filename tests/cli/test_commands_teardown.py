"""``teardown`` as a user runs it: forms, options, cautions, what changed, eighty columns."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.entry.requests import parse_certainty
from knowledge.access import CROWDED, EXPERIENCE
from knowledge.book import the_book
from knowledge.work import Access
from tests.support.command_line import Done, call, in_eighty_columns, run
from tests.support.complaints import (
    COMPLAINTS,
    JOBS,
    OPEN,
    blocks,
    checks,
    flat,
    path_of,
    plan,
    teardown,
    tree,
)
from tests.support.examples import one_in

BOOK = the_book()
FORMS = [("--json",), ("--markdown",), ("--blanks",)]
KEYS = """schema case title layout alarms may_stop confirmed minutes found stages not_planned
loose_ends changed"""
STAGE_KEYS = """opens minutes opening_minutes reach found why cautions checks while_open"""
CHECK_KEYS = "inspection minutes evidence measures outcomes"
OUTCOME_KEYS = "finding chance leads leads_with stop next"


def one_line(done: Done, code: int, *parts: str) -> None:
    assert (done.code, done.out, len(done.err.splitlines())) == (code, "", 1), done
    for part in parts:
        assert part in done.err
    assert len(done.err) < 300


# --------------------------------------------------------------------------- every job


@pytest.mark.parametrize("name", one_in(4, list(JOBS)))
def test_every_job_has_its_plan_in_eighty_columns(name: str) -> None:
    done = teardown(name)
    assert (done.code, done.err) == (0, "")
    assert done.out.startswith("Teardown plan: ")
    in_eighty_columns(done.out)
    assert "These come first" in done.out


@pytest.mark.own_diagnoses
@pytest.mark.parametrize(
    ("name", "form"),
    [
        *((name, ()) for name in [*JOBS][::9]),
        *(("skua", f) for f in FORMS),
        *(pytest.param("winch_begun", f, marks=pytest.mark.long) for f in FORMS),
        *(pytest.param(name, (), marks=pytest.mark.long) for name in JOBS),
    ],
    ids=str,
)
def test_the_same_plan_twice(name: str, form: tuple[str, ...]) -> None:
    """Byte for byte, and reading it changes nothing."""
    assert call("teardown", path_of(name), "--all", *form) == teardown(name, *form)
    assert path_of(name).read_text("utf-8") == JOBS[name]
    assert {p.suffix for p in path_of(name).parent.iterdir()} == {".toml"}


@pytest.mark.parametrize("name", one_in(2, ["skua", "heron"]))
def test_the_same_plan_in_another_process(tmp_path: Path, name: str) -> None:
    """Whatever order Python's sets have there; plain though colours are asked for."""
    path = tmp_path / f"{name}.toml"
    path.write_text(JOBS[name], "utf-8")
    one, other = (
        run("teardown", path, "--all", PYTHONHASHSEED=seed, FORCE_COLOR="1", TERM="xterm-256color")
        for seed in ("1", "2")
    )
    assert one == other
    assert one.code == 0
    in_eighty_columns(one.out)


@pytest.mark.parametrize("name", one_in(3, list(JOBS)))
def test_plan_as_data(name: str) -> None:
    data = plan(name)
    assert data["schema"] == 1
    assert set(data) >= set(KEYS.split())
    assert set(data["minutes"]) >= {"made_anew", "to_the_letter", "all"}
    assert set(data["loose_ends"]) >= {"unexplained", "pressure_closed", "follow"}
    assert data["changed"] is None
    left = 1.0
    for stage in data["stages"]:
        assert set(stage) >= set(STAGE_KEYS.split())
        assert stage["checks"]
        assert stage["reach"] == pytest.approx(left)
        left -= stage["found"]
        own = sum(c["minutes"] for c in stage["checks"])
        assert stage["minutes"] == pytest.approx(stage["opening_minutes"] + own)
        for check in stage["checks"]:
            assert set(check) >= set(CHECK_KEYS.split())
            assert check["outcomes"][-1]["finding"] is None
            assert sum(o["chance"] for o in check["outcomes"]) == pytest.approx(1.0)
            for outcome in check["outcomes"]:
                assert set(outcome) >= set(OUTCOME_KEYS.split())
                assert outcome["leads"] in BOOK.causes
                assert outcome["finding"] in {*BOOK.findings, None}
                assert outcome["next"] in {*BOOK.inspections, None}
    assert left == pytest.approx(1.0 - data["found"])
    assert sum(s["minutes"] for s in data["stages"]) == pytest.approx(data["minutes"]["all"])


@pytest.mark.parametrize("name", one_in(3, list(OPEN)))
def test_stages_are_numbered_from_one(name: str) -> None:
    count = len(plan(name)["stages"])
    assert count > 3
    wanted = [(str(i), str(count)) for i in range(1, count + 1)]
    text, sheet = teardown(name).out, teardown(name, "--markdown").out
    assert re.findall(r"^Stage (\d+) of (\d+): ", text, re.MULTILINE) == wanted
    assert re.findall(r"^## Stage (\d+) of (\d+): ", sheet, re.MULTILINE) == wanted
    for number, stage in enumerate(plan(name)["stages"], 1):
        ids = [c["inspection"] for c in stage["checks"]]
        found = re.findall(rf"^  {number}\.(\d+)  ", text, re.MULTILINE)
        assert found == [str(i) for i in range(1, len(ids) + 1)]
        for id_ in ids:
            assert f"[{id_}]" in flat(blocks(text)[number - 1])


@pytest.mark.parametrize("name", OPEN)
def test_no_check_is_planned_twice_and_none_at_a_place_not_opened(name: str) -> None:
    data = plan(name)
    seen = [i.id for _, i in checks(data)]
    assert len(set(seen)) == len(seen)
    opened = {a.value for a, o in tree(name).items() if not o.minutes_in_place}
    for stage, check in checks(data):
        opened |= set(stage["opens"])
        assert check.access.value in opened


def test_odd_titles_and_names(tmp_path: Path) -> None:
    """Wide, endless and hostile titles keep to the screen, and make no blank of their own."""
    for i, title in enumerate(("油圧警告灯 " * 30, "x" * 500, "\x1b[31m\u202ered")):
        path = tmp_path / f"{i}.toml"
        path.write_text(JOBS["smew"].replace('"Smew"', json.dumps(title)), "utf-8")
        done = call("teardown", path, "--all")
        in_eighty_columns(done.out)
        assert "\u202e" not in done.out
    path = tmp_path / "a\n- `fuel_smell`: yes · .toml"
    path.write_text(JOBS["smew"].replace('"Smew"', '"x\\n- `fuel_smell`: yes"'), "utf-8")
    sheet = tmp_path / "sheet.md"
    sheet.write_text(call("teardown", path, "--markdown").out)
    one_line(call("record", path, "--sheet", sheet), 2, "nothing is filled in")


# --------------------------------------------------------------------------- options


@pytest.mark.parametrize("name", one_in(4, list(OPEN)))
def test_only_what_fits_into_the_minutes(name: str) -> None:
    for minutes in ("1", "60", "200"):
        data = plan(name, "--minutes", minutes)
        assert sum(s["minutes"] for s in data["stages"]) <= float(minutes)
        assert data["minutes"]["all"] <= float(minutes)
    assert plan(name, "--minutes", "60")["stages"]
    assert "into 60 min" in flat(teardown(name, "--minutes", "60").out)


@pytest.mark.parametrize("name", one_in(3, list(OPEN)))
def test_on_a_stand_nothing_runs_and_openings_take_a_stands_minutes(name: str) -> None:
    data = plan(name, "--on-stand")
    assert data["stages"]
    places = tree(name)
    for stage, check in checks(data):
        assert not check.needs_running
        way = [places[Access(a)].minutes_on_stand for a in stage["opens"]]
        assert stage["opening_minutes"] == pytest.approx(sum(way))


@pytest.mark.parametrize(
    ("options", "factor"),
    [
        ((), 1.0),
        (("--first-time",), EXPERIENCE["first_time"]),
        (("--little-room",), CROWDED),
        (("--first-time", "--little-room"), EXPERIENCE["first_time"] * CROWDED),
    ],
    ids=str,
)
@pytest.mark.parametrize("name", one_in(3, ["heron", "skua", "gannet"]))
def test_minutes_scale_with_experience_and_space(
    name: str, options: tuple[str, ...], factor: float
) -> None:
    data = plan(name, *options)
    places = tree(name)
    for stage in data["stages"]:
        way = sum(places[Access(a)].minutes_in_place for a in stage["opens"])
        assert stage["opening_minutes"] == pytest.approx(way * factor)
        for check in stage["checks"]:
            own = BOOK.inspections[check["inspection"]].minutes
            assert check["minutes"] == pytest.approx(max(1.0, own * factor))


@pytest.mark.parametrize("name", one_in(3, list(COMPLAINTS)))
def test_closing_up_to_test_costs_more_for_the_same_openings(name: str) -> None:
    data = plan(name, "--closed-up-to-test")
    places = tree(name)
    dearer = 0
    for stage in data["stages"]:
        way = sum(places[Access(a)].minutes_in_place for a in stage["opens"])
        assert stage["opening_minutes"] >= way
        dearer += stage["opening_minutes"] > way
    assert dearer


def test_the_plan_states_for_whom_its_minutes_hold() -> None:
    text = flat(teardown("heron").out)
    assert "Minutes are judgement, for a practised hand, the engine in its place." in text
    options = ("--first-time", "--little-room", "--on-stand", "--closed-up-to-test")
    text = flat(teardown("heron", *options).out)
    for words in ("for the first time", "on a stand", "little room", "closed up again to test"):
        assert words in text


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        *(("confident=0.9", 0.9), ("confident = 85 %", 0.85), ("0.8", 0.8), ("85 %", 0.85)),
        *(("85%", 0.85), ("0.5", 0.5), ("99%", 0.99), (" .75 ", 0.75)),
    ],
)
def test_until_is_understood(typed: str, meant: float) -> None:
    assert parse_certainty(typed) == pytest.approx(meant)


@pytest.mark.parametrize("typed", ["0.8", "80 %"])
def test_the_plan_states_its_target(typed: str) -> None:
    assert "a cause is 80 % likely" in flat(teardown("heron", "--until", typed).out)


@pytest.mark.parametrize(
    "typed",
    [
        *("", "sure", "1.5", "0.2", "0.995", "1", "0,9", "nan", "inf", "-0.9", "85 percent"),
        *("1..2", ".", "%", "9" * 5000, "confident", "confident=", "\x1b[31m", "0.9 0.9", "49 %"),
    ],
)
def test_until_refuses_rubbish(typed: str) -> None:
    done = teardown("heron", "--until", typed)
    one_line(done, 2, "until: '", "write confident=0.9, from 0.5 to 0.99")
    assert "\x1b" not in done.err


@pytest.mark.parametrize("name", ["heron", "dunlin_begun"])
def test_a_lower_bar_is_reached_sooner(name: str) -> None:
    low, high = (plan(name, "--until", u) for u in ("0.6", "0.95"))
    assert low["minutes"]["to_the_letter"] < high["minutes"]["to_the_letter"]
    assert low["found"] > high["found"]


@pytest.mark.parametrize(
    ("options", "message"),
    [
        (["--minutes", "0.5"], "greater than or equal to 1"),
        (["--minutes", "nan"], "--minutes"),
        (["--minutes", "inf"], "less than or equal to 100000"),
        (["--minutes", "many"], "--minutes"),
        (["--since", "-1"], "--since"),
        (["--since", "many"], "--since"),
        (["--on-stnd"], "Did you mean '--on-stand'?"),
        (["--markdwn"], "Did you mean '--markdown'?"),
    ],
)
def test_options_that_are_none(options: list[str], message: str) -> None:
    one_line(teardown("heron", *options), 2, message)


def test_no_case_and_a_bad_case(tmp_path: Path) -> None:
    (tmp_path / "bad.toml").write_text("schema = 2\n")
    one_line(call("teardown", tmp_path / "bda.toml"), 66, "did you mean")
    one_line(call("teardown", tmp_path / "bad.toml"), 65, "this is 1")
    one_line(call("teardown", tmp_path), 66, "is a folder")


# --------------------------------------------------------------------------- what changed


def test_since_shows_what_the_findings_did(tmp_path: Path) -> None:
    path = tmp_path / "heron.toml"
    path.write_text(JOBS["heron"], "utf-8")
    was = json.loads(call("teardown", path, "--json").out)
    words = ["debris_on_relief_seat=yes", "dipstick_low=no", "metal_in_filter=unknown"]
    assert "diagnose teardown" in call("record", path, *words).out
    changed = json.loads(call("teardown", path, "--since", "1", "--json").out)["changed"]
    assert set(changed) >= {"since", "told", "moved", "minutes_before", "minutes_after"}
    assert set(changed) >= {"dropped", "added"}
    assert (changed["since"], changed["told"]) == (1, [w.split("=")[0] for w in words])
    assert changed["minutes_before"] == pytest.approx(was["minutes"]["to_the_letter"])
    first = changed["moved"][0]
    assert first["cause"] == "relief_debris"
    assert first["after"] > first["before"] + 0.3
    planned = {i.id for _, i in checks(was)}
    assert set(changed["dropped"]) <= planned
    assert not set(changed["added"]) & planned
    done = call("teardown", path, "--all", "--since", "1")
    in_eighty_columns(done.out)
    text = flat(done.out)
    assert "What changed since entry 1" in text
    assert "[debris_on_relief_seat]" in text
    assert "there is metal in the filter: not known [metal_in_filter]" in text
    sheet = call("teardown", path, "--since", "1", "--markdown").out
    assert "\n## What changed since entry 1\n" in sheet
    assert "\n- there is metal in the filter: not known\n" in sheet
    later = json.loads(call("teardown", path, "--since", "3", "--json").out)["changed"]
    assert later["told"] == ["metal_in_filter"]
    assert not later["moved"]


def test_since_knows_corrections(tmp_path: Path) -> None:
    """What stood at the time is what is compared with, though it has been corrected since."""
    path = tmp_path / "heron.toml"
    path.write_text(JOBS["heron"], "utf-8")
    call("record", path, "debris_on_relief_seat=yes")
    call("record", path, "debris_on_relief_seat=no")
    assert load(path, BOOK).last_number == 3
    changed = json.loads(call("teardown", path, "--since", "2", "--json").out)["changed"]
    first = changed["moved"][0]
    assert first["cause"] == "relief_debris"
    assert first["after"] < first["before"]


@pytest.mark.parametrize(("name", "since"), [("heron", "1"), ("heron", "7"), ("smew", "0")])
def test_since_refuses_what_nothing_came_after(name: str, since: str) -> None:
    last = 0 if name == "smew" else 1
    one_line(teardown(name, "--since", since), 2, f"the last entry is {last}; nothing came after")
