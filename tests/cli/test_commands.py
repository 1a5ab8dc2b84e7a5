"""Every command as a user runs it: answers, streams, exit codes, eighty columns."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
from pathlib import Path

import networkx as nx
import pytest

from diagnose import __version__
from diagnose.case.loading import load
from diagnose.case.writing import start
from knowledge.book import the_book
from tests.support.command_line import Done, call, environment, in_eighty_columns, run

BOOK = the_book()
CASES = Path(__file__).parents[1] / "confirmed" / "cases"
EXAMPLE = CASES / "A14.toml"
COMMANDS = ["ask", "record", "review", "survey", "budget", "forecast", "lookup", "show", "graph"]
QUICK = ["A07", "A14", "A17", "A42", "A49", "A51", "B20", "B60", "B65"]
KEYS = """schema case title layout alarms contradictions causes explanations unexplained left_out
evidence log_evidence next"""
FAULT = "a fault of diagnose itself, ZeroDivisionError: x; what was saved is kept; please report it"


@pytest.fixture
def case(tmp_path: Path) -> Path:
    path = tmp_path / "petrel.toml"
    start(path, BOOK, {"title": "Petrel"}, {"layout": "distributor_v8"})
    return path


def one_line(done: Done, code: int, *parts: str) -> None:
    """Nothing on stdout, one line on stderr that says these things."""
    assert done.code == code, done
    assert done.out == ""
    [line] = done.err.splitlines()
    for part in parts:
        assert part in line
    assert "Traceback" not in done.err


# -------------------------------------------------------------------------------- every command


@pytest.mark.parametrize("words", [[], *([c] for c in COMMANDS)], ids=str)
def test_help(words: list[str]) -> None:
    for option in ("-h", "--help"):
        done = call(*words, option)
        assert (done.code, done.err) == (0, "")
        assert done.out.startswith(" ".join(["Usage: diagnose", *words]))
        in_eighty_columns(done.out)


def test_bare_command_shows_help_and_version_is_printed() -> None:
    done = call()
    assert (done.code, done.out) == (2, "")
    assert all(command in done.err for command in COMMANDS)
    assert "..." not in done.err.partition("Commands:")[2], "no command's help is cut short"
    assert call("--version") == (0, f"diagnose {__version__}\n", "")


def test_a_shell_completes_commands_and_options() -> None:
    """A shell asks with variables and no words; that is no call for help."""
    for typed, at, wanted in (
        ("diagnose rev", "1", "review"),
        ("diagnose review --j", "2", "--jobs"),
    ):
        done = run(_DIAGNOSE_COMPLETE="complete_bash", COMP_WORDS=typed, COMP_CWORD=at)
        assert (done.code, done.err) == (0, "")
        assert wanted in done.out.split()


def test_every_command_in_a_process_of_its_own(tmp_path: Path) -> None:
    """The happy path, streams piped, no colour, nothing on stderr but the interview."""
    answers = "1\nPetrel, the gauge reads zero\n\n3\nstop\n"
    done = run("ask", "petrel.toml", "--by", "Ann", answers=answers, cwd=tmp_path)
    assert done.code == 0
    assert done.err.count("STOP THE ENGINE now. Do not run it again until the cause is found.") == 1
    assert done.err.index("STOP THE ENGINE now") < done.err.index("In your own words")
    assert "STOP THE ENGINE: gauge reads zero" in done.out
    for words, begins in (
        (["record", "petrel.toml", "needle_flickers=yes"], "   3  needle_flickers: present"),
        (["review", "petrel.toml"], "Petrel, the gauge reads zero\n\nSTOP THE ENGINE: "),
        (
            ["lookup", "needle", "dances"],
            "understood  pressure unsteady\n\nfinding     the needle wavers",
        ),
        (["show", "needle-flickers"], "finding: the needle wavers"),
        (["graph", "petrel.toml", "--format", "dot"], "digraph causes {"),
    ):
        done = run(*words, cwd=tmp_path, NO_COLOR="1")
        assert (done.code, done.err) == (0, "")
        assert done.out.startswith(begins)
        assert "\x1b" not in done.out
    assert [p.name for p in tmp_path.iterdir()] == ["petrel.toml"]


USAGE = [
    (["frobnicate"], ["no such command 'frobnicate'", "diagnose --help"]),
    (["reviw", "x"], ["Did you mean 'review'?"]),
    (["review"], ["missing argument 'CASE'", "diagnose review --help"]),
    (["review", "x.toml", "--jsn"], ["no such option '--jsn'", "Did you mean '--json'?"]),
    (["record", "x.toml", "--readin", "x"], ["Did you mean '--reading'?"]),
    (["review", "x.toml", "y.toml"], ["unexpected extra argument"]),
    (["review", "x.toml", "--causes", "0"], ["--causes", "greater than or equal to 1"]),
    (["review", "x.toml", "--causes", "many"], ["--causes", "integer"]),
    (["graph", "x.toml", "--format"], ["--format", "requires an argument"]),
    (["ask", "x.toml", "--questions", "61"], ["--questions", "60"]),
    (["lookup"], ["nothing to look up", "--kind"]),
    (["lookup", ""], ["nothing to look up"]),
    (["lookup", "the", "oil"], ["'the oil' alone says too little", "lookup oil level"]),
    (["lookup", "zzzz"], ["nothing in the book sounds like 'zzzz'"]),
    (["lookup", "مرحبا\x1b[31m\n"], ["'مرحبا\\x1b[31m\\n'"]),
    (["lookup", "--kind", "caus"], ["no kind 'caus'", "Did you mean 'cause'?"]),
    (["show", ""], ["which word?"]),
    (["show", "bearing_nock"], ["Did you mean 'bearing_knock'?"]),
    (["show", "x" * 100_000], ["no 'xxx"]),
    (["graph", str(EXAMPLE), "--format", "png"], ["one of json, graphml, dot, bif, svg"]),
    (["graph", str(EXAMPLE), "--focus", "relief_debri"], ["Did you mean 'relief_debris'?"]),
    (["x" * 100_000], ["no such command 'xxx"]),
]


@pytest.mark.parametrize(("words", "parts"), USAGE, ids=lambda v: " ".join(v)[:40])
def test_usage_errors_are_one_clear_line(words: list[str], parts: list[str]) -> None:
    done = call(*words)
    one_line(done, 2, *parts)
    assert len(done.err) < 500


def test_no_case_and_bad_case(tmp_path: Path) -> None:
    bad = tmp_path / "bad.toml"
    bad.write_text("schema = 2\n")
    for words in (["review"], ["record"], ["graph"]):
        more = ["x=yes"] if words == ["record"] else []
        one_line(call(*words, tmp_path / "bda.toml", *more), 66, "did you mean", "bad.toml")
        one_line(call(*words, bad, *more), 65, "'2' is unknown here; this is 1")
        one_line(call(*words, "/dev/zero", *more), 66, "no ordinary file")
    one_line(call("ask", bad), 65, "this is 1")
    one_line(call("ask", tmp_path / "no" / "x.toml"), 73, "there is no such folder")
    one_line(call("ask", tmp_path / ("x" * 300)), 73, "File name too long")


def test_a_fault_of_ours_is_one_line(monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError("x")

    monkeypatch.setattr("diagnose.case.loading.load", broken)
    one_line(call("review", EXAMPLE), 70, FAULT)


def test_a_closed_pipe_is_no_error(case: Path) -> None:
    with case.open("a") as file:
        file.write('[expect]\nfirst = ["coolant_in_oil"]\n')
    for words, code, message in (
        (["lookup", "--kind", "rule", "--json"], 0, ""),
        (["review", str(case), "--check", "--json"], 1, "expected coolant_in_oil first"),
    ):
        with subprocess.Popen(
            [sys.executable, "-m", "diagnose", *words],
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            env=environment(),
        ) as process:
            assert process.stdout
            process.stdout.close()
            assert process.stderr
            err = process.stderr.read().decode()
        assert process.returncode == code
        assert message in err
        assert len(err.splitlines()) == code


def test_closed_streams_are_no_error() -> None:
    words = f"{sys.executable} -m diagnose show needle_flickers"
    for closed in (">&-", "<&- >&- 2>&-"):
        done = subprocess.run(
            ["sh", "-c", f"{words} {closed}"], capture_output=True, env=environment(), check=False
        )
        assert (done.returncode, done.stderr) == (0, b""), closed


@pytest.mark.parametrize("loading", ["typer", "diagnose.cli.printing", "diagnose.lookup.finder"])
def test_interrupted_while_it_loads(loading: str) -> None:
    """Whatever is being imported, it is one line and no traceback."""
    stop_there = f"""
import sys
class Stop:
    def find_spec(self, name, *_):
        if name == {loading!r}:
            raise KeyboardInterrupt
sys.meta_path.insert(0, Stop())
sys.argv = ["diagnose", "lookup", "needle"]
from diagnose.cli.main import main
main()
"""
    done = subprocess.run(
        [sys.executable, "-c", stop_there], capture_output=True, env=environment(), check=False
    )
    assert (done.returncode, done.stdout) == (130, b"")
    assert done.stderr.decode().split("\n") == ["", "stopped; what was saved is kept", ""]


def test_interrupted(tmp_path: Path) -> None:
    with subprocess.Popen(
        [sys.executable, "-m", "diagnose", "ask", "x.toml"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        env=environment(),
        cwd=tmp_path,
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.default_int_handler),
    ) as process:
        assert process.stdin
        assert process.stderr
        process.stdin.write(b"1\nno pressure\n")
        process.stdin.flush()
        received = b""
        while b"All right?" not in received:
            received += os.read(process.stderr.fileno(), 4096)
        process.send_signal(signal.SIGINT)
        out, err = process.communicate(timeout=60)
    assert (process.returncode, out) == (130, b"")
    assert err.decode().strip().splitlines()[-1] == "stopped; what was saved is kept"
    assert [s.finding.id for s in load(tmp_path / "x.toml", BOOK).finding_records] == [
        "gauge_reads_zero"
    ]


# -------------------------------------------------------------------------------------- review


@pytest.mark.parametrize("name", QUICK)
def test_review_in_eighty_columns(name: str) -> None:
    for more, shown in (((), "ost likely"), (("--full",), "Root causes, likeliest first\n\n 1. ")):
        done = call("review", CASES / f"{name}.toml", *more)
        assert (done.code, done.err) == (0, "")
        in_eighty_columns(done.out)
        assert shown in done.out


def test_review_of_odd_titles(tmp_path: Path) -> None:
    """Wide, right-to-left, endless and hostile titles keep to the screen."""
    for i, title in enumerate(
        ("油圧警告灯 " * 30, "ضغط الزيت " * 30, "x" * 500, "\x1b[31m\u202ered")
    ):
        path = tmp_path / f"{i}.toml"
        start(path, BOOK, {"title": title})
        done = call("review", path, "--causes", "1")
        in_eighty_columns(done.out)
        assert "\u202e" not in done.out
    assert call("review", tmp_path / "3.toml", "--causes", "200").code == 0


def test_review_json(tmp_path: Path) -> None:
    done = call("review", CASES.parents[2] / "cases" / "petrel.toml", "--json")
    assert (done.code, done.err) == (0, "")
    answer = json.loads(done.out)
    assert answer["schema"] == 1
    for key in KEYS.split():
        assert key in answer
    first = answer["causes"][0]
    assert set(first) >= {"id", "says", "probability", "prior", "source", "for", "against"}
    assert 0 <= first["probability"] <= 1
    assert answer["next"] == []  # nothing can change it
    low = '[[finding]]\nno = 1\nwhat = "gauge_reads_low"\nstate = "present"\n'
    open_ = tmp_path / "open.toml"
    open_.write_text(f'schema = 1\n[engine]\nlayout = "distributor_v8"\n{low}')
    following = json.loads(call("review", open_, "--json").out)["next"][0]
    assert {"inspection", "says", "minutes", "outcomes"} <= set(following)
    assert answer["alarms"][0]["severity"] == "stop the engine"


def test_review_check(case: Path) -> None:
    plain = case.read_text()
    first = json.loads(call("review", case, "--json").out)["causes"][0]["id"]
    for wanted, code in ((first, 0), ("coolant_in_oil", 1)):
        case.write_text(f'{plain}[expect]\nfirst = ["{wanted}"]\n')
        done = call("review", case, "--check")
        assert (done.code, done.out[:7]) == (code, "Petrel\n")
        assert len(done.err.splitlines()) == code
    case.write_text(plain)
    assert call("review", case, "--check").code == 1


# --------------------------------------------------------------------------------------- graph


def test_graph_in_each_format(tmp_path: Path) -> None:
    out = tmp_path / "graph"
    graphs = {}
    for format in ("json", "graphml", "DOT", "bif"):
        done = call("graph", EXAMPLE, "--format", format)
        assert (done.code, done.err) == (0, "")
        assert call("graph", EXAMPLE, "--format", format, "--out", out) == (0, "", "")
        assert out.read_text("utf-8") == done.out
        graphs[format] = done.out
    data = json.loads(graphs["json"])
    assert data["schema"] == 1
    whole = nx.node_link_graph(data, edges="links")
    assert set(nx.parse_graphml(graphs["graphml"])) == set(whole)
    assert graphs["DOT"].count("penwidth") == whole.number_of_edges()
    assert graphs["bif"].count("variable ") >= len(whole)
    near = call("graph", EXAMPLE, "--focus", "relief-debris").out
    assert 0 < len(json.loads(near)["nodes"]) < len(whole)
