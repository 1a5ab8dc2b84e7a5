"""``history`` and ``--with-history`` as a user runs them."""

from __future__ import annotations

import json
import os
import re
import tomllib
from pathlib import Path

import pytest

from tests.support.command_line import Done, anyones, as_nobody, call, in_eighty_columns
from tests.support.history_jobs import KNOWN, SEEN, a_folder, job_text, three_jobs
from tests.support.watching import snapshot

__all__ = ["anyones"]

LINE = re.compile(r"with the shop's .*?; without it: diagnose \w+ \S+")
EVIL = "e\x1b[31m\u202e"


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    """A folder of two closed jobs and an open one."""
    return three_jobs(tmp_path / "jobs")


def said(done: Done) -> str:
    """What was printed, in one line."""
    assert (done.code, done.err) == (0, "")
    lines = [x for x in done.out.splitlines() if "--with-history /" not in x]
    in_eighty_columns("\n".join(x for x in lines if not x.lstrip().startswith("/")))  # a path
    return " ".join(done.out.split())


# -------------------------------------------------------------------------------------- history


def test_help() -> None:
    done = call("history", "--help")
    assert done.out.startswith("Usage: diagnose history [OPTIONS] [DIR]")
    in_eighty_columns(done.out)
    for words in (["review", "-h"], ["teardown", "-h"]):
        assert "--with-history" in call(*words).out
    assert "history" in call().err


def test_history(shop: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(shop)
    before = snapshot(shop)
    text = said(call("history", "--full"))
    for part in (
        "Jobs in .: 2 closed jobs; 1 open",
        "2026-05-01 dunlin.toml skew_gear_four - 40",
        "no day eider.toml skew_gear_four - - ",
        "1.5 0.04 debris under the relief valve",
        "The book itself stays unchanged.",
        "diagnose review CASE --with-history .",
    ):
        assert part in text
    assert "Left out" not in text
    assert "Pace" not in text, "nothing was planned"
    assert said(call("history", shop, "--full")) == text.replace(" .: ", f" {shop}: ").replace(
        "--with-history .", f"--with-history {shop}"
    )
    assert snapshot(shop) == before


def test_history_json(shop: Path) -> None:
    done = call("history", shop, "--json")
    assert (done.code, done.err) == (0, "")
    data = json.loads(done.out)
    assert set(data) == {
        "schema", "folder", "jobs", "counted", "open", "left_out", "remarks", "found", "moved", "pace",
    }  # fmt: skip
    assert (data["counted"], data["open"], data["pace"]) == (2, 1, None)
    assert [j["file"] for j in data["jobs"]] == ["dunlin.toml", "eider.toml"]
    assert data["jobs"][0] == {
        "file": "dunlin.toml",
        "layout": "skew_gear_four",
        "causes": ["relief_debris"],
        "minutes_spent": pytest.approx(40.0),
        "minutes_planned": None,
        "closed_on": "2026-05-01",
        "comeback": None,
        "counted": True,
    }
    first = data["found"][0]
    assert (first["cause"], first["jobs"]) == ("relief_debris", 1.5)
    assert first["factor"] == pytest.approx(first["share"] / first["book_share"])
    assert data["moved"][0]["cause"] == "relief_debris"
    assert data["moved"][0]["after"] > data["moved"][0]["before"]


def test_comebacks_are_shown(shop: Path) -> None:
    a_folder(shop, fulmar=job_text("coolant_in_oil", comeback="dunlin.toml"))
    text = said(call("history", shop, "--full"))
    assert "3 closed jobs" in text
    assert "2 jobs counted; 1 not, because the engine came back" in text
    assert "came back; not counted" in text
    assert "comeback of dunlin.toml" in text
    a_folder(shop, fulmar=job_text("coolant_in_oil", comeback="gone.toml"))
    assert "fulmar.toml: comeback of gone.toml, which is no closed job" in said(
        call("history", shop, "--full")
    )


def test_the_pace_kept_at_closing_stretches_a_plan(tmp_path: Path) -> None:
    """Jobs that took twice what their plans said: a plan with them says more, and why."""
    yard = tmp_path / "yard"
    yard.mkdir()
    for i in range(6):
        (yard / f"job{i}.toml").write_text(
            'schema = 1\n[[closed]]\nno = 1\ncauses = ["relief_debris"]\n'
            'minutes = "400 min"\nplanned = "200 min"\n',
            "utf-8",
        )
    case = tmp_path / "skua.toml"
    case.write_text(
        'schema = 1\n[engine]\nlayout = "skew_gear_four"\n'
        '[[finding]]\nno = 1\nwhat = "gauge_reads_low"\nstate = "present"\n',
        "utf-8",
    )
    plain = json.loads(call("teardown", case, "--json").out)
    slower = json.loads(call("teardown", case, "--json", "--with-history", yard).out)
    assert slower["stages"][0]["checks"][0]["minutes"] > plain["stages"][0]["checks"][0]["minutes"]
    assert "this shop's pace" in " ".join(
        call("teardown", case, "--with-history", yard, "--all").out.split()
    )
    assert json.loads(call("teardown", case, "--json").out) == plain


def test_minutes_planned(shop: Path) -> None:
    text = said(call("history", shop, "--planned", "--full"))
    assert re.search(r"dunlin.toml skew_gear_four 25 40 ", text)
    assert re.search(
        r"Pace: this shop takes 1\.\d\d times the minutes planned \(1 job: 40 min", text
    )
    assert "Whole jobs do not show what one inspection takes" in text
    data = json.loads(call("history", shop, "--planned", "--json").out)
    assert data["jobs"][0]["minutes_planned"] > 0
    assert (data["pace"]["jobs"], data["pace"]["factor"] > 1) == (1, True)


def test_no_closed_job(tmp_path: Path) -> None:
    for jobs, besides in (({}, "0 open"), ({"tern": job_text()}, "1 open")):
        folder = a_folder(tmp_path / "jobs", **jobs)
        assert said(call("history", folder, "--full")) == f"no closed job in {folder}; {besides}"
        data = json.loads(call("history", folder, "--json").out)
        assert (data["jobs"], data["found"], data["moved"]) == ([], [], [])


def test_junk_in_the_folder(shop: Path, tmp_path: Path) -> None:
    """Reported and skipped, each with its reason; what is sound is read all the same."""
    outside = tmp_path / "outside.toml"
    outside.write_text(job_text("coolant_in_oil"))
    (shop / "link.toml").symlink_to(outside)
    (shop / "dangling.toml").symlink_to(tmp_path / "gone")
    (shop / "circle.toml").symlink_to(shop / "circle.toml")
    (shop / "folder.toml").mkdir()
    os.mkfifo(shop / "pipe.toml")
    (shop / "bytes.toml").write_bytes(b"\xff\xfe")
    (shop / "empty.toml").write_text("")
    (shop / "words.toml").write_text("not a case")
    (shop / "project.toml").write_text('[project]\nname = "x"\n')
    (shop / "flies.toml").write_text(job_text("coolant_in_oil").replace("Plover", "Aeroplane"))
    (shop / "unknown.toml").write_text(job_text("no_such_cause"))
    (shop / "time.toml").write_text(job_text("relief_debris", minutes="40 psi"))
    (shop / f"{EVIL}.toml").write_text(EVIL)
    (shop / os.fsdecode(b"\xff.toml")).write_text("")
    (shop / ("x" * 240 + ".toml")).write_text("")
    (shop / "notes.txt").write_text("not looked at")
    (shop / "inner").mkdir()
    (shop / "inner" / "dunlin.toml").write_text(job_text("coolant_in_oil"))
    before = snapshot(tmp_path)
    text = said(call("history", shop, "--full"))
    assert "2 closed jobs; 1 open, 15 files left out" in text
    for part in (
        "link.toml: is a link",
        "dangling.toml: is a link",
        "circle.toml: is a link",
        "folder.toml: is a folder",
        "pipe.toml: is no ordinary file",
        "bytes.toml: byte 0 is not UTF-8",
        "empty.toml: schema: missing",
        "words.toml: not a TOML file",
        "project.toml: project: no such table",
        "flies.toml: engines in type-certificated aircraft are outside this book",
        "unknown.toml: closed no = 9.causes: no such cause",
        "time.toml: closed no = 9: minutes",
    ):
        assert part in text, part
    assert "coolant_in_oil" not in text
    assert "\u202e" not in text
    data = json.loads(call("history", shop, "--json").out)
    assert [j["file"] for j in data["jobs"]] == ["dunlin.toml", "eider.toml"]
    assert len(data["left_out"]) == 15
    line = call("review", shop / "tern.toml", "--with-history", shop)
    assert "; 15 files there left out; without it" in said(line)
    assert snapshot(tmp_path) == before


def test_names_and_comebacks_of_every_kind_keep_to_the_screen(shop: Path) -> None:
    a_folder(shop, **{EVIL: job_text("relief_debris"), "x" * 200: job_text("relief_debris")})
    a_folder(shop, 油圧=job_text("relief_debris", comeback="\\u001b[31m" * 20))
    text = said(call("history", shop, "--full"))
    assert "5 closed jobs" in text
    assert "\u202e" not in text


def test_files_and_folders_one_may_not_read(anyones: Path) -> None:
    three_jobs(anyones)
    (anyones / "dunlin.toml").chmod(0o000)
    done = as_nobody("history", anyones, "--full")
    assert "1 closed job; 1 open, 1 file left out" in said(done)
    assert "dunlin.toml: no permission to read it" in done.out
    closed = a_folder(anyones / "closed")
    closed.chmod(0o000)
    done = as_nobody("history", closed, "--full")
    assert (done.code, done.out) == (66, "")
    assert done.err.endswith("no permission to read it\n")
    closed.chmod(0o700)


@pytest.mark.parametrize(
    ("name", "message"),
    [
        ("gone", "there is no such folder"),
        ("a.toml", "is no folder"),
        ("x" * 300, "File name too long"),
        (f"gone{EVIL}", "there is no such folder"),
    ],
    ids=["gone", "file", "long", "evil"],
)
def test_no_such_folder(tmp_path: Path, name: str, message: str) -> None:
    case = tmp_path / "a.toml"
    case.write_text(job_text())
    for words in (
        ["history"],
        ["review", case, "--with-history"],
        ["teardown", case, "--with-history"],
    ):
        done = call(*map(str, words), tmp_path / name)
        assert (done.code, done.out) == (66, "")
        assert message in done.err
        assert len(done.err.splitlines()) == 1
        assert "\x1b" not in done.err


# --------------------------------------------------------------------------------- with-history


def test_review_with_history(shop: Path) -> None:
    case = shop / "tern.toml"
    plain = call("review", case).out
    done = call("review", case, "--with-history", shop)
    line = LINE.search(said(done))
    assert line
    assert line[0].startswith(f"with the shop's 2 closed jobs in {shop}; without it:")
    assert call("review", case).out == plain, "left out again, all is as it was"
    was, now = (
        json.loads(call("review", case, "--json", *more).out)
        for more in ([], ["--with-history", str(shop)])
    )
    assert "history" not in was
    assert now.pop("history")["jobs"] == 2
    priors = [{c["id"]: c["prior"] for c in answer["causes"]} for answer in (was, now)]
    assert priors[1]["relief_debris"] > priors[0]["relief_debris"]
    assert priors[1]["coolant_in_oil"] < priors[0]["coolant_in_oil"]


def test_the_current_job_is_not_part_of_its_history(
    shop: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Not even by another name of its folder; and with no other there is nothing to learn from."""
    monkeypatch.chdir(shop)
    done = call("review", shop / "dunlin.toml", "--with-history", Path("..") / "jobs")
    assert "with the shop's 1 closed job (this one apart) in" in said(done)
    (shop / "eider.toml").unlink()
    done = call("review", shop / "dunlin.toml", "--with-history", shop)
    assert (done.code, done.out) == (2, "")
    assert done.err == f"with-history: no closed job in {shop} but this one\n"


def test_nothing_to_learn_from(tmp_path: Path) -> None:
    case = a_folder(tmp_path, tern=job_text()) / "tern.toml"
    for command in ("review", "teardown"):
        done = call(command, case, "--with-history", tmp_path)
        assert (done.code, done.out) == (2, "")
        assert done.err == f"with-history: no closed job in {tmp_path}\n"


def test_teardown_with_history(shop: Path) -> None:
    """In each of its forms; the blanks stay TOML, and the sheet can be filled in as ever."""
    case = shop / "tern.toml"
    a_folder(shop, tern=job_text(findings=KNOWN))
    line = LINE.search(said(call("teardown", case, "--with-history", shop)))
    assert line
    assert f"without it: diagnose teardown {case}" in line[0]
    data = json.loads(call("teardown", case, "--with-history", shop, "--json").out)
    assert data["history"]["folder"] == str(shop)
    assert "history" not in json.loads(call("teardown", case, "--json").out)
    blanks = call("teardown", case, "--with-history", shop, "--blanks").out
    assert blanks.startswith("# with the shop's 2 closed jobs")
    assert tomllib.loads(blanks)
    sheet = call("teardown", case, "--with-history", shop, "--markdown").out
    assert sheet.startswith("# Teardown sheet")
    assert "With the shop's 2 closed jobs" in sheet.splitlines()[-1]
    filled = shop / "sheet.md"
    filled.write_text(re.sub(r"(`needle_bounces`|`\w+`): ______", r"\1: no", sheet, count=1))
    assert call("record", case, "--sheet", filled).code == 0
    assert call("teardown", case, "--with-history", shop, "--since", "1").code == 0


def test_forty_jobs_alike_leave_one_clear_answer(shop: Path) -> None:
    """Forty jobs of one cause, on a job that shows it: still one clear answer."""
    a_folder(shop, **{f"job{i}": job_text("relief_debris") for i in range(40)})
    a_folder(shop, open=job_text(findings=KNOWN + SEEN))
    text = said(call("review", "--full", shop / "open.toml", "--with-history", shop))
    assert "with the shop's 42 closed jobs" in text
    assert "almost certainly debris under the relief valve" in text
