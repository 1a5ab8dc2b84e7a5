"""``tell``: what it shows, what it writes, and what it does with bad input."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.entry.confirming import Correct, Strike, changed
from diagnose.entry.telling import Account, understand
from diagnose.errors import BadCaseError
from diagnose.output.documents.tell import account_document
from diagnose.output.text.tell import changed_lines
from diagnose.understanding.reader import read
from knowledge.book import the_book
from tests.support.command_line import call, in_eighty_columns

BOOK = the_book()
STORY = "straight six, 5 psi at hot idle, 60 cold. new sender made no difference, no knock. Would a pump help?"


def test_starts_a_case_and_keeps_the_words(tmp_path: Path) -> None:
    """Every fact that is shown is an entry, with its words; the text is the complaint."""
    path = tmp_path / "new.toml"
    done = call("tell", path, STORY)
    assert done.code == 0
    case = load(path, BOOK)
    assert case.job.complaint == STORY
    assert case.layout.id == "skew_gear_six"
    assert [r.entry.pressure for r in case.readings] == ["5 psi", "60 psi"]
    assert [t.trial.id for t in case.trials] == ["new_sender"]
    assert case.readings[0].entry.note == "5 psi at hot idle"
    assert "Would a pump help" in done.out
    assert "No single cause stands out; likeliest places" in done.out
    assert "min)" in done.out


def test_a_cause_that_stands_out_is_named(tmp_path: Path) -> None:
    """Else the places are: a list of causes at four per cent each helps nobody."""
    words = "the oil smells of petrol and the level has gone up, 10 psi at idle"
    done = call("tell", tmp_path / "a.toml", words)
    assert "Likeliest\n  1. petrol or diesel fuel in the oil (" in done.out
    done = call("tell", tmp_path / "b.toml", "oil pressure is low", "--json")
    answer = json.loads(done.out)["answer"]
    assert not answer["stands_out"]
    shares = [s["probability"] for s in answer["stations"]]
    assert len(shares) == 3
    assert shares == sorted(shares, reverse=True)
    assert shares[0] > answer["places"][0]["probability"]


def test_adds_to_a_case_that_is_there(tmp_path: Path) -> None:
    """What stood there stays; the whole text goes with the first entry."""
    path = tmp_path / "old.toml"
    call("tell", path, "no knock")
    before = path.read_text("utf-8")
    done = call("tell", path, "oil level is fine, wibble")
    assert done.code == 0
    after = path.read_text("utf-8")
    assert after.startswith(before)
    assert "said: oil level is fine, wibble" in after


def test_the_same_finding_again_replaces_the_first(tmp_path: Path) -> None:
    """A later word on the same thing corrects the earlier one."""
    path = tmp_path / "c.toml"
    call("tell", path, "no knock")
    call("tell", path, "it knocks now, no leaks")
    call("tell", path, "no knock, oil level is fine")
    numbers = [
        s.entry.no for s in load(path, BOOK).finding_records if s.finding.id == "bearing_knock"
    ]
    assert len(numbers) == 1


def test_what_is_said_again_is_written_once(tmp_path: Path) -> None:
    """A repeated account adds what is new; the same reading is no second measurement."""
    path = tmp_path / "c.toml"
    call("tell", path, "low since the rebuild, 12 psi at hot idle, new sender made no difference")
    call("tell", path, "low since the rebuild, 12 psi at hot idle, 40 psi at 2000 rpm hot")
    case = load(path, BOOK)
    assert [r.entry.pressure for r in case.readings] == ["12 psi", "40 psi"]
    assert len(case.behaviours) == len(case.trials) == 1
    call("tell", path, "12 psi at hot idle, wibble")
    again = load(path, BOOK)
    assert len(again.readings) == 2
    assert len(again.standing) == len(case.standing)
    assert "wibble" in path.read_text("utf-8")


def test_json_has_what_was_understood_and_what_not(tmp_path: Path) -> None:
    """The keys a program reads."""
    done = call("tell", tmp_path / "j.toml", STORY, "--json")
    answer = json.loads(done.out)
    assert answer["schema"] == 1
    keys = {"fact", "state", "value", "when", "words", "sure"}
    assert all(keys <= fact.keys() for fact in answer["understood"])
    facts = {(f["fact"], f["state"], f["value"], f["when"]) for f in answer["understood"]}
    assert ("reading", "", "5 psi", "hot, idle") in facts
    assert ("new_sender", "no difference", "", "") in facts
    assert ("bearing_knock", "absent", "", "") in facts
    assert answer["not_understood"] == ["Would a pump help"]
    assert len(answer["answer"]["places"]) == 3
    assert 1 <= len(answer["answer"]["checks"]) <= 3


def test_reads_standard_input(tmp_path: Path) -> None:
    """Without words on the command line."""
    path = tmp_path / "s.toml"
    assert call("tell", path, "--yes", answers="no leaks\n").code == 0
    assert [s.finding.id for s in load(path, BOOK).finding_records] == ["oil_seen_outside"]


@pytest.mark.parametrize(
    ("words", "answers"),
    [((), ""), (("...",), ""), (("",), ""), (("x" * 10_001,), "")],
    ids=["no input", "marks", "empty", "too long"],
)
def test_bad_input_is_one_clear_line(words: tuple[str, ...], answers: str, tmp_path: Path) -> None:
    """On stderr, with the exit code of a wrong command; no case is made."""
    path = tmp_path / "b.toml"
    done = call("tell", path, *words, answers=answers)
    assert done.code == 2
    assert done.err.count("\n") == 1
    assert not path.exists()


def test_nothing_understood_of_more_words_writes_nothing(tmp_path: Path) -> None:
    """A case that is there stays as it is; a new one keeps the words."""
    path = tmp_path / "n.toml"
    assert call("tell", path, "lorem ipsum dolor").code == 0
    before = path.read_bytes()
    assert tomllib.loads(before.decode())["job"]["complaint"] == "lorem ipsum dolor"
    done = call("tell", path, "sit amet")
    assert done.code == 2
    assert path.read_bytes() == before


@pytest.mark.parametrize(
    "text",
    [
        '"""\n[[finding]]\nno = 1\nwhat = "wet_sumps"',
        "\x1b[31mno leaks\x07",
        "<script>alert(1)</script> no leaks",
        "'; drop table cases; -- no leaks",
        "no leaks \u202e\u0000\ud83d\ude00",
        "{{ 7 * 7 }} ${HOME} `id` %s no leaks",
    ],
)
def test_hostile_text_is_inert(text: str, tmp_path: Path) -> None:
    """It is kept as text and printed without control characters."""
    path = tmp_path / "h.toml"
    done = call("tell", path, answers=text.encode("utf-8", "replace"))
    assert "Traceback" not in done.err
    assert "\x1b" not in done.out + done.err
    if path.exists():
        found = {s.finding.id for s in load(path, BOOK).finding_records}
        assert found <= {"oil_seen_outside"}


def test_a_pressure_no_gauge_can_show_is_left_over(tmp_path: Path) -> None:
    """It is shown as not understood, and the rest is written."""
    told = understand(tmp_path / "p.toml", "9000 psi at idle, no leaks", BOOK)
    assert [f.name for f in told.understanding.facts] == ["oil_seen_outside"]
    assert "9000 psi at idle" in told.understanding.not_understood


def test_no_terminal_writes_without_asking(tmp_path: Path) -> None:
    """A pipe is not asked."""
    path = tmp_path / "q.toml"
    assert call("tell", path, "no leaks", answers="").code == 0
    assert len(load(path, BOOK).finding_records) == 1


@pytest.mark.parametrize(
    ("words", "stops"),
    [
        ("5 psi at hot idle, lifters ticking at idle when hot", ["5 psi at hot idle, limit 7"]),
        ("0 psi at idle hot, gauge reads zero", ["0 psi"]),
        ("5 psi at hot idle, gauge reads zero", ["gauge reads zero", "5 psi at hot idle"]),
        ("gauge reads zero", ["gauge reads zero"]),
        ("gauge reads low, lifters ticking at idle when hot", ["gauge low and the valve gear"]),
        ("5 psi at hot idle, bottom end knock", ["5 psi at hot idle", "Knock with", "Bottom end"]),
    ],
)
def test_alarms_that_say_the_same_are_one(words: str, stops: list[str], tmp_path: Path) -> None:
    """The one with the figure stays; what is graver or of something else is never left out."""
    done = call("tell", tmp_path / "a.toml", words)
    lines = [x for x in done.out.splitlines() if x.startswith(("STOP THE ENGINE: ", "DO NOT"))]
    said = [x.split(": ", 1)[1] for x in lines]
    assert len(said) == len(stops), said
    assert all(any(x.startswith(stop) for x in said) for stop in stops), said
    assert len(call("review", tmp_path / "a.toml").out.split("STOP THE ENGINE")) >= len(
        [x for x in lines if x.startswith("STOP")]
    )


@pytest.mark.parametrize(
    ("words", "command"),
    [
        ("no leaks", "ask"),
        ("5 psi at hot idle", "ask"),
        ("straight six", "ask"),
        ("straight six, 40 psi at hot idle", "review"),
    ],
)
def test_the_next_command_is_the_one_that_helps(words: str, command: str, tmp_path: Path) -> None:
    """Ask while layout or pressure is not known; then the review."""
    path = tmp_path / "n.toml"
    done = call("tell", path, words)
    assert done.out.split("Next:")[1].split() == ["diagnose", command, str(path)]
    in_eighty_columns(done.out.split("saved in")[0])
    if "psi" not in words:
        said = " ".join(done.out.split())
        assert "Pressure unknown: run it only to read a gauge; stop below 7 psi" in said


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ("40 psi at hot idle", "It may run on while you look: nothing known is against it."),
        ("the oil lamp stays out", "It may run on while you look: nothing known is against it."),
        ("oil lamp flickers at hot idle", "Run it only as that says."),
        ("oil is below the add mark", "It may run on with that care."),
        ("oil light flickers above 3500 rpm after 15 min", "STOP THE ENGINE: oil lamp flickers"),
        ("black bits came out of the filter", "Pressure unknown: run it only to read a gauge"),
        ("help my engine", "Pressure unknown: run it only to read a gauge"),
    ],
)
def test_whether_it_may_run_needs_a_word_of_the_pressure(
    words: str, says: str, tmp_path: Path
) -> None:
    path = tmp_path / "n.toml"
    done = " ".join(call("tell", path, words).out.split())
    assert says in done
    assert done.count("may run") <= 1
    assert ("No cause is likelier than another yet." in done) is (words == "help my engine")
    shown = " ".join(call("review", path).out.split())
    assert (
        says in shown or words == "help my engine" or says.endswith(("that care.", "as that says."))
    )


@pytest.mark.parametrize("layout", ["", "flathead six, "])
def test_the_grade_of_the_oil_is_written_once(layout: str, tmp_path: Path) -> None:
    """The circuit reckons with the oil that was named; another grade later is not written."""
    path = tmp_path / "o.toml"
    assert call("tell", path, f"{layout}running 20w50 in it, 15 psi at hot idle").code == 0
    case = load(path, BOOK)
    assert (case.engine.oil, case.has_engine) == ("20W-50", bool(layout))
    told = understand(path, "the oil in it is 10w30", BOOK)
    assert not told.understanding.facts
    assert told.understanding.not_understood
    again = understand(path, "running 20w50 in it", BOOK).understanding
    assert not again.facts
    assert "20w50" not in " ".join(again.not_understood), "it is known"
    refused = call("record", path, "oil is 10w30")
    assert refused.code != 0
    assert 'grade = "10W-30" under [oil]' in refused.err
    assert load(path, BOOK).engine.oil == "20W-50"


def test_no_grade_that_there_is_not(tmp_path: Path) -> None:
    """A grade no standard has is no fact, and a file with one says so in a line."""
    told = understand(tmp_path / "x.toml", "running 23w47 in it, 15 psi at hot idle", BOOK)
    assert [f.table for f in told.understanding.facts] == ["reading"]
    path = tmp_path / "y.toml"
    path.write_text('schema = 1\n[oil]\ngrade = "23W-47"\n', "utf-8")
    with pytest.raises(BadCaseError, match="'23W-47' is no SAE J300 grade"):
        load(path, BOOK)


@pytest.mark.parametrize(
    ("words", "title"),
    [
        (
            "Three cylinder diesel tractor, 6800 hours. Low at hot idle",
            "Three cylinder diesel tractor, 6800 hours",
        ),
        (
            "small block V8 truck, 5 psi at hot idle, 60 cold, lifters tick",
            "small block V8 truck, 5 psi at hot idle, 60 cold",
        ),
    ],
)
def test_a_new_case_has_a_title(words: str, title: str, tmp_path: Path) -> None:
    """It begins as the story does, and every screen shows it."""
    path = tmp_path / "port_six.toml"
    assert call("tell", path, words).code == 0
    assert load(path, BOOK).job.title == title
    assert "without a title" not in call("review", path).out


def test_a_correction_shows_only_what_it_changed() -> None:
    """The fact with its new words, what was struck out, and how many are left."""
    first = Account(Path("x.toml"), STORY, read(STORY, BOOK), is_new=True)
    shown = account_document(first, BOOK)
    pressure = next(f.number for f in shown.understood if f.says.endswith("5 psi at hot idle"))
    second = changed(first, Correct(pressure, "7 psi at hot idle"), BOOK)
    now = account_document(second, BOOK)
    lines = changed_lines(shown, now)
    assert lines[0].split(maxsplit=1)[1] == "reading: 7 psi at hot idle"
    assert lines[-1] == f"{len(shown.understood)} facts in all."
    assert len(lines) == 3
    third = account_document(changed(second, Strike(frozenset([1])), BOOK), BOOK)
    after = changed_lines(now, third)
    assert after[0] == "Deleted: 1"
    left = [line.split()[0] for line in after[1:-1] if not line.startswith("     ")]
    assert left == [str(f.number) for f in third.understood], "each that is left is named"
    assert after[-1] == f"{len(now.understood) - 1} facts in all."


def test_a_file_that_is_not_there_is_not_taken_for_any_other(tmp_path: Path) -> None:
    """Only for one with a name that is much like it."""
    (tmp_path / "bike.toml").write_text("schema = 1\n", "utf-8")
    assert "did you mean" not in call("review", tmp_path / "nofile.toml").err
    assert "bike.toml" in call("review", tmp_path / "bikes.toml").err


@pytest.mark.parametrize("words", [("-", "5 psi at idle"), ("-",)])
def test_a_dash_is_no_name_of_a_case(
    words: tuple[str, ...], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It is the standard input elsewhere; no file of that name is made."""
    monkeypatch.chdir(tmp_path)
    done = call("tell", *words, answers="5 psi at idle")
    assert done.code == 2
    assert "a dash is no name of a case" in " ".join(done.err.split())
    assert list(tmp_path.iterdir()) == []


def account_of(words: str) -> Account:
    return Account(Path("x.toml"), words, read(words, BOOK), is_new=True)


def test_a_reading_is_corrected_in_the_words_of_record() -> None:
    """The oil's heat and the trusted gauge stay what they are typed as."""
    first = account_of("22 psi at 2000 rpm")
    (fact,) = changed(first, Correct(1, "22 psi 2000 rpm 180F direct"), BOOK).understanding.facts
    assert fact.fields == {
        "pressure": "22 psi",
        "rpm": "2000 rpm",
        "oil": "180 F",
        "gauge": "direct",
    }
    bare = changed(first, Correct(1, "2"), BOOK).understanding.facts[0].fields
    assert bare == {"pressure": "2 psi", "rpm": "2000 rpm"}


def test_words_that_begin_with_a_figure_are_new_where_they_correct_nothing() -> None:
    """Without "=" behind it, a number may count something."""
    first = account_of(STORY)
    added = changed(first, Correct(4, "cylinders", signed=False), BOOK).understanding.facts
    before = [f.short for f in first.understanding.facts]
    assert "bearing rods 6" in before
    assert [f.short for f in added] == [s.replace("rods 6", "rods 4") for s in before]
