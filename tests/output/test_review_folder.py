"""``review`` of a folder: one line for each case, whatever the file, with any number of processes."""

from __future__ import annotations

import json
import os
import pty
import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from diagnose.case.loading import load
from diagnose.history.shop import read_shop
from diagnose.output.documents import folder as folder_documents
from diagnose.output.documents.glance import Glance, unread_document
from knowledge.book import the_book
from tests.support.command_line import ROOT, Done, call, environment, in_eighty_columns, run
from tests.support.examples import one_in

NAMES = ("petrel", "dunlin", "gannet", "winch")
#: a case that is soon reviewed
SMALL = """schema = 1
[engine]
layout = "skew_gear_six"
[[finding]]
no = 1
what = "needle_flickers"
state = "present"
"""


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Four cases out of order, and what is no case of this folder."""
    for name in NAMES:
        shutil.copy(ROOT / "cases" / f"{name}.toml", tmp_path)
    (tmp_path / "notes.txt").write_text("no case", "utf-8")
    (tmp_path / "older").mkdir()
    shutil.copy(ROOT / "cases" / "tern.toml", tmp_path / "older")
    (tmp_path / "folder.toml").mkdir()
    return tmp_path


def rows(done: Done) -> list[dict[str, Any]]:
    """The objects printed, one a line."""
    return [json.loads(line) for line in done.out.splitlines()]


def test_a_line_a_case_by_name(folder: Path) -> None:
    done = call("review", folder)
    assert done.code == 0
    assert [line.split()[0] for line in done.out.splitlines()] == sorted(
        f"{name}.toml" for name in NAMES
    )
    in_eighty_columns(done.out)
    assert done.err == "4 cases reviewed; 3 with a stop.\n"


@pytest.mark.parametrize("name", NAMES)
def test_the_line_says_what_the_review_says(folder: Path, name: str) -> None:
    """Likeliest cause, its chance, the stop and the next check, as of the case alone."""
    case = folder / f"{name}.toml"
    alone = json.loads(call("review", case, "--json").out)
    row = next(r for r in rows(call("review", folder, "--json")) if r["case"] == str(case))
    first = alone["causes"][0]
    assert (row["cause"], row["probability"]) == (first["id"], first["probability"])
    assert row["next"] == (alone["next"][0]["inspection"] if alone["next"] else None)
    assert row["alarms"] == alone["alarms"]
    stops = {"stop the engine", "do not start or run"}
    assert row["may_run"] is not bool(stops & {a["severity"] for a in row["alarms"]})
    line = next(x for x in call("review", folder).out.splitlines() if x.startswith(name))
    assert first["id"] in line
    assert ("STOP" in line) is not row["may_run"]


def test_a_closed_job_stops_nothing(folder: Path) -> None:
    """Its line has no STOP, and the summary does not count it."""
    stopped = next(x for x in call("review", folder).out.splitlines() if "  STOP" in x).split()[0]
    done = call("close", folder / stopped, "--how", "seen", "--reason", "sold")
    assert done.code == 0
    after = call("review", folder)
    line = next(x for x in after.out.splitlines() if x.startswith(stopped))
    assert "STOP" not in line
    assert line.endswith("closed")
    assert after.err == "4 cases reviewed; 2 with a stop.\n"


def test_a_bad_file_is_reported_and_the_others_are_reviewed(folder: Path) -> None:
    (folder / "aaa.toml").write_text("schema = 9\n[engine]\nlayuot = 'x'\n", "utf-8")
    (folder / "gone.toml").symlink_to(folder / "nowhere.toml")
    done = call("review", folder)
    assert done.code == 65
    assert len(done.out.splitlines()) == 4
    errors = done.err.splitlines()
    assert len(errors) == 3
    assert errors[0].startswith(f"{folder / 'aaa.toml'}: ")
    assert errors[0].endswith(" more)")
    assert "gone.toml" in errors[1]
    assert errors[2] == "4 cases reviewed; 3 with a stop; 2 could not be read."
    bad = [r for r in rows(call("review", folder, "--json")) if "faults" in r]
    assert [Path(r["case"]).name for r in bad] == ["aaa.toml", "gone.toml"]
    assert all(r["schema"] == 1 and r["faults"] for r in bad)


def test_a_fault_of_ours_ends_one_case_only(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    whole = load

    def broken(path: Path, *more: Any) -> Any:
        if path.name == "gannet.toml":
            raise ZeroDivisionError("x / 0")
        return whole(path, *more)

    monkeypatch.setattr(folder_documents, "load", broken)
    done = call("review", folder)
    assert done.code == 65
    assert len(done.out.splitlines()) == 3
    assert "gannet.toml: a fault of diagnose itself, ZeroDivisionError: x / 0" in done.err


def expecting(folder: Path, name: str, first: str) -> None:
    """The case with another expectation, or with none."""
    path = folder / f"{name}.toml"
    text = path.read_text("utf-8").split("[expect]")[0]
    path.write_text(text + (f'[expect]\nfirst = ["{first}"]\n' if first else ""), "utf-8")


def test_a_case_in_capitals_is_a_case_in_every_list(tmp_path: Path) -> None:
    path = tmp_path / "PETREL.TOML"
    path.write_text(SMALL, "utf-8")
    assert folder_documents.case_files(tmp_path) == [path]
    assert folder_documents.toml_files(tmp_path) == [path]
    assert read_shop(tmp_path, the_book()).open == 1


def test_expectations_are_checked(folder: Path) -> None:
    done = call("review", folder, "--check")
    assert done.code == 0
    assert done.err.endswith("4 checked, 0 not as expected.\n")
    expecting(folder, "dunlin", "relief_debris")
    expecting(folder, "winch", "")
    done = call("review", folder, "--check")
    assert done.code == 1
    assert "dunlin.toml: expected relief_debris first, got" in done.err
    assert done.err.endswith("3 checked, 1 not as expected.\n")
    unmet = {
        Path(r["case"]).stem: r.get("unmet")
        for r in rows(call("review", folder, "--check", "--json"))
    }
    assert unmet["dunlin"]
    assert unmet["petrel"] == []
    assert unmet["winch"] is None


def test_nothing_expected_is_no_check(folder: Path) -> None:
    for name in NAMES:
        expecting(folder, name, "")
    done = call("review", folder, "--check")
    assert done.code == 1
    assert f"{folder}: no case here has an [expect]" in done.err


def test_an_empty_folder(tmp_path: Path) -> None:
    done = call("review", tmp_path)
    assert (done.code, done.out) == (66, "")
    assert done.err == f"{tmp_path}: no case in this folder; cases end in .toml\n"


def test_history_is_applied_to_one_case_at_a_time(folder: Path) -> None:
    done = call("review", folder, "--with-history", folder)
    assert (done.code, done.out) == (2, "")
    assert done.err.startswith("with-history: ")


def command(*words: str | Path) -> list[str]:
    """The command in a process of its own."""
    return [sys.executable, "-m", "diagnose", *map(str, words)]


@pytest.mark.parametrize("form", one_in(2, [[], ["--json"]]))
def test_two_processes_print_what_one_prints(folder: Path, form: list[str]) -> None:
    (folder / "bad.toml").write_text("schema = 9\n", "utf-8")
    for name in ("petrel", "winch"):  # take longest
        (folder / f"{name}.toml").unlink()
    words: list[str | Path] = ["review", folder, "--check", *form, "--jobs"]
    one, two = call(*words, "1"), run(*words, "2")
    assert two == one
    assert one.code == 65


def test_no_more_is_worked_out_than_is_asked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    """The cases come one by one: ten thousand need no more memory than one."""
    seen: list[Path] = []

    def review(path: Path, check: bool) -> Glance:
        seen.append(path)
        return unread_document(path, ["left out"])

    monkeypatch.setattr(folder_documents, "review_file", review)
    paths = [Path(str(i)) for i in range(10_000)]
    found = folder_documents.review_files(paths, check=False, jobs=1)
    for _ in range(3):
        next(found)
    assert seen == [Path("0"), Path("1"), Path("2")]


def many(folder: Path, copies: int) -> Path:
    """So many copies of one small case."""
    for i in range(copies):
        (folder / f"{i:04}.toml").write_text(SMALL, "utf-8")
    return folder


def nobody_is_left(group: int) -> None:
    """Every process of the group ends within half a minute; zombies do not count."""
    until = time.monotonic() + 30
    while True:
        states = subprocess.run(["ps", "-eo", "pgid=,stat="], capture_output=True, check=True)
        lines = (line.split() for line in states.stdout.decode().splitlines())
        if not any(int(pgid) == group and not stat.startswith("Z") for pgid, stat in lines):
            return
        assert time.monotonic() < until, "a worker is left"
        time.sleep(0.1)


@pytest.mark.parametrize("jobs", ["1", "2"])
def test_interrupted(tmp_path: Path, jobs: str) -> None:
    """Ctrl-C reaches every process of the terminal: one line, exit code 130, no process left."""
    with subprocess.Popen(
        command("review", many(tmp_path, 200), "--jobs", jobs),
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        env=environment(),
        start_new_session=True,
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.default_int_handler),
    ) as process:
        assert process.stdout
        process.stdout.readline()
        os.killpg(process.pid, signal.SIGINT)
        out, err = process.communicate(timeout=60)
    assert process.returncode == 130
    assert len(out.splitlines()) < 190
    assert err.decode().strip() == "stopped; what was saved is kept"
    nobody_is_left(process.pid)


def test_the_workers_end_with_the_command(tmp_path: Path) -> None:
    """Killed outright, it leaves no process behind."""
    with subprocess.Popen(
        command("review", many(tmp_path, 200), "--jobs", "2"),
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        env=environment(),
        start_new_session=True,
    ) as process:
        assert process.stdout
        process.stdout.readline()
        process.kill()
    nobody_is_left(process.pid)


@pytest.mark.parametrize("terminal", [True, False])
def test_progress_is_for_a_terminal(tmp_path: Path, terminal: bool) -> None:
    """How far it is, where standard error is a terminal and the lines go elsewhere."""
    folder = many(tmp_path, 4)
    quick = "from diagnose.cli import progress as p; p.COUNT_AFTER = p.COUNT_EVERY = 0.0\n"
    code = f"{quick}from diagnose.cli.app import main; main(['review', {str(folder)!r}, '--jobs', '1'])"
    ours, theirs = pty.openpty() if terminal else os.pipe()
    with subprocess.Popen(
        [sys.executable, "-c", code], stdout=subprocess.PIPE, stderr=theirs, env=environment()
    ) as process:
        os.close(theirs)
        received = b""
        while part := _read(ours):
            received += part
        out, _ = process.communicate(timeout=60)
    os.close(ours)
    assert len(out.splitlines()) == 4
    assert (b"\r2 of 4 cases" in received) is terminal
    assert received.rstrip().endswith(b"4 cases reviewed; 0 with a stop.")


def _read(source: int) -> bytes:
    """What has come, nothing once the other end is closed."""
    try:
        return os.read(source, 4096)
    except OSError:
        return b""
