"""``ask`` and ``record``: what is entered goes into the case, and nothing else does."""

from __future__ import annotations

import itertools
from datetime import date
from pathlib import Path

import pytest

from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.case.writing import start
from diagnose.cli.interviewing import MOST_MISSES
from diagnose.output.lines import columns, wrapped
from diagnose.output.text.interview import STOP_NOW
from knowledge.book import the_book
from knowledge.units import PSI
from tests.support.command_line import ROOT, Done, call, in_eighty_columns

BOOK = the_book()


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "petrel.toml"


@pytest.fixture
def case(path: Path) -> Path:
    start(path, BOOK, {"title": "Petrel"}, {"layout": "distributor_v8"})
    return path


def ask(path: Path, *answers: str, questions: int = 1) -> Done:
    done = call("ask", path, "--questions", str(questions), answers="\n".join([*answers, ""]))
    assert done.code == 0, done
    in_eighty_columns(done.err)
    in_eighty_columns(done.out)
    return done


def standing(path: Path) -> dict[str, str | None]:
    """What stands in the case, by finding."""
    return {s.finding.id: s.entry.state for s in load(path, BOOK).finding_records}


# ----------------------------------------------------------------------------------------- ask


def test_ask_from_piped_answers(path: Path) -> None:
    done = ask(path, "2", "", "1", "2", "1", "d", "1", "10 40 60", "2", "3", "stop")
    case = load(path, BOOK)
    assert case.layout.id == "marine_petrol_v8"
    assert len(case.readings) == 3
    now = standing(path)
    assert (now["bearing_knock"], now["level_correct"], now["dipstick_low"]) == (
        "present",
        "present",
        "absent",
    )
    assert (now["electric_gauge"], now["freshly_rebuilt"]) == ("unknown", "present")
    assert done.out.startswith("Case without a title\n\nDO NOT START OR RUN: Bottom end knocks")
    assert done.err.index(STOP_NOW) < done.err.index("What kind of engine is it?")


def test_ask_reads_the_story(path: Path) -> None:
    """It is shown as facts with their words, and is in the case once it is confirmed."""
    done = ask(path, "4", "V8, needle dances at idle, grumpy", "", "stop")
    assert "“needle dances at idle”" in done.err
    assert "grumpy" in done.err
    assert load(path, BOOK).behaviours
    assert load(path, BOOK).layout.id == "distributor_v8"
    assert load(path, BOOK).job.complaint == "V8, needle dances at idle, grumpy"


def test_ask_says_its_best_guess_after_each_answer(path: Path) -> None:
    done = ask(path, "4", "V8, 5 psi at hot idle, 40 at 2000 rpm, 60 cold", "", "1", "1", "stop")
    assert done.err.count("Best guess so far: nothing stands out yet. First: ") == 2
    said = " ".join(done.err.split())
    assert said.count("then read, rub and smell the dipstick") == 1  # the level is answered next
    assert done.err.count("\nBest guess and first step as before") == 1


def test_a_guess_that_has_changed_is_said_anew(path: Path) -> None:
    story = "petrol four in a car, oil lamp comes on in bends only, on the straight it is fine"
    done = ask(path, "4", story, "", "d", "1", "stop")
    guesses = [x for x in done.err.splitlines() if x.startswith("Best guess")]
    assert guesses[0].startswith("Best guess so far: too little oil in the sump (")
    assert any(x.startswith("Best guess so far: ") for x in guesses[1:])


def test_ask_why_back_and_nonsense(path: Path) -> None:
    done = ask(
        path,
        *("back", "why", "y", "4", "why", "", "why", "99", "d"),  # safety, story, engine
        *("why", "x", "back", "d", "1", "-1", "zzz", "y", "n", "stop"),  # level, engine, gauge
    )
    for message in (
        "There is no question before this one",
        "every further minute of running",
        "Which: 1 zero, 2 a knock, 3 both?",
        "Your words are kept",
        "How it is built says",
        "A number from 1 to 8, or d for don't know.",
        "the commonest fault",
        "A number from 1 to 4, or d for don't know.",
        "A number from 1 to 3, or d for don't know.",
        "Stopped here; everything is saved.",
    ):
        assert message in " ".join(done.err.split())
    assert standing(path)["level_correct"] == "present"


@pytest.mark.parametrize("given", range(8))
def test_ask_keeps_everything_when_the_answers_end(path: Path, given: int) -> None:
    """Input that ends, or 'stop', after any number of answers."""
    answers = ["4", "oil milky, V8", "", "1", "1", "8", "5 40 60", "1"][:given]
    entries = [0, 2, 2, 3, 7, 10]
    for last in ([], ["STOP"]):
        path.unlink(missing_ok=True)
        done = ask(path, *answers, *last)
        assert "Stopped here" in done.err
        assert path.exists() == (given > 0) == bool(done.out)
        if 0 < given < len(entries):
            shown = given == 2 and not last  # what was shown is kept at the end of the input
            assert load(path, BOOK).last_number == entries[given] + shown


def test_ask_goes_on_with_a_case(path: Path) -> None:
    """What was left open at the start is asked; what was answered is not, but for 'back'."""
    ask(path, "4", "", "stop")
    before = path.read_text()
    done = ask(path, "back", "d", "d", "1", "stop")
    assert "Going on with" in done.err
    assert "In your own words" not in done.err
    assert path.read_text().startswith(before)
    assert standing(path)["bearing_knock"] == "unknown"
    assert standing(path)["level_correct"] == "present"
    before = path.read_text()
    done = ask(path, "stop")
    assert "What kind of engine is it?" not in done.err
    assert "dipstick" not in done.err.partition("Stopped")[0]
    assert path.read_text() == before


def test_ask_stops_asking(path: Path) -> None:
    answers = ["4", "", "d", "d", "d", "d", "d", "d", "d"]
    assert "left at most" not in ask(path, *answers, questions=0).err
    path.unlink()
    assert "(2 left at most)" in ask(path, *answers, "stop", questions=2).err


def test_ask_stops_where_nothing_would_change_the_first_check(path: Path) -> None:
    done = ask(path, *["d"] * 80, questions=60)
    assert "More questions would not change what to check first." in done.err


@pytest.mark.parametrize("word", ["back", "why", "perhaps", "99", "y"])
def test_ask_is_not_caught_in_an_endless_pipe(path: Path, word: str) -> None:
    done = ask(path, "4", "x", "", "d", *itertools.repeat(word, 4 * MOST_MISSES))
    assert f"{MOST_MISSES} lines in a row answered no question." in done.err
    assert load(path, BOOK).job.complaint == "x"


@pytest.mark.parametrize(
    ("typed", "kept"),
    [
        (b"a\xff\xfeb", "a\ufffd\ufffdb"),
        ("ضغط".encode(), "ضغط"),
        (b"a\x00\x1b[31mb", "a\x00\x1b[31mb"),
        (b"x" * 3_000_000 + b"\nshorter", "shorter"),
        (b'"""\\ \' [engine] #', '"""\\ \' [engine] #'),
        (b"d", ""),
    ],
)
def test_ask_of_odd_input(path: Path, typed: bytes, kept: str) -> None:
    done = call("ask", path, answers=b"4\n" + typed + b"\n\nstop\n")
    assert done.code == 0
    assert load(path, BOOK).job.complaint == kept
    assert "\x1b" not in done.out + done.err


def test_ask_names_its_own_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    for number in (1, 2):
        assert call("ask", answers="4\n\nstop\n").code == 0
        assert (tmp_path / f"case-{date.today()}-{number}.toml").exists()


# -------------------------------------------------------------------------------------- record


def record(case: Path, *words: str) -> Case:
    before = case.read_text()
    done = call("record", case, *words)
    assert (done.code, done.err) == (0, "")
    assert done.out.splitlines()[-1].startswith(f"saved in {case}; ")
    in_eighty_columns(done.out)
    assert case.read_text().startswith(before)
    return load(case, BOOK)


def test_record_answers(case: Path) -> None:
    """Every answer is tried in test_entry_parsers."""
    [sighting] = record(case, "Needle-Flickers=Probably not").finding_records
    assert (sighting.entry.state, sighting.entry.sure) == ("absent", 0.8)
    assert sighting.entry.when == date.today()


def test_record_details_corrections_and_withdrawals(case: Path) -> None:
    words = ["--note", "n", "--where", "rod 3", "--by", "Ann", "--when", "2026-05-01"]
    [first] = record(case, "bearing_knock=yes", *words, "--learned", "opened").finding_records
    entry = first.entry
    assert (entry.note, entry.where, entry.by, entry.learned) == ("n", "rod 3", "Ann", "opened")
    assert str(entry.when) == "2026-05-01"
    assert len(record(case, "bearing_knock=no", "--where", "rod 4").finding_records) == 2
    after = record(case, "bearing_knock=no", "--where", "rod 3").finding_records
    assert {s.entry.where: s.entry.state for s in after} == {"rod 3": "absent", "rod 4": "absent"}
    after = record(case, "needle_flickers=yes", "--replaces", "2").finding_records
    assert {s.entry.no for s in after} == {3, 4}
    assert {s.entry.no for s in record(case, "--withdraw", "3").finding_records} == {4}


def test_record_measures_and_readings(case: Path) -> None:
    readings = ["--reading", "700 rpm, 95 C, 8 psi", "--reading", "3.1 BAR 2500 rev/min direct"]
    after = record(case, "main_clearance=3/1000 in", *readings)
    assert after.measurements[0].value == pytest.approx(0.003 * 0.0254)
    assert [r.reading.gauge for r in after.readings] == ["panel", "direct"]
    assert after.readings[0].reading.pressure == pytest.approx(8 * PSI)
    assert after.readings[1].reading.oil_temperature is None
    after = record(case, "main_clearance=0.1mm", "--withdraw", "2")
    assert [m.entry.no for m in after.measurements] == [4]
    assert [r.entry.no for r in after.readings] == [3]


REFUSED = [
    ([], "nothing to record"),
    (["bearing_knock"], "write it like bearing_knock=yes"),
    (["=yes"], "write it like needle_flickers=yes"),
    (["bearing_nock=yes"], "Did you mean 'bearing_knock'?"),
    (["bearing_knock=perhaps"], "write yes, no, unknown, probably or 70%"),
    (["bearing_knock=170%"], "'170%' is no answer"),
    (["bearing_knock=yes", "bearing_knock=no"], "given 2 times"),
    (["relief_opens_at=4,250 bar"], "8 psi, 0.55 bar or 55 kPa, without a comma"),
    (["=", "--note", "x"], "needle_flickers=yes, without blanks round the '='"),
    (["yes"], "needle_flickers=yes, without blanks round the '='"),
    (["relief_debris=yes"], "is a cause, no finding: record what was seen of it"),
    (["main_clearance=0.05"], "'0.05' is no length here"),
    (["main_clearance=-1 mm"], "expected 0 mm to 2 mm"),
    (["--reading", "700 95 8"], "'700' is not understood"),
    (["--reading", "700 rpm 4,250 bar"], "without a comma"),
    (["--reading", "700 rpm 95 C"], "needs a pressure"),
    (["--reading", "700 rpm hott 8 psi"], "did you mean 'hot'?"),
    (["--reading", "700 rpm 900 psi"], "'900 psi' cannot be right; expected 0 psi to 300 psi"),
    (["--reading", "700 rpm 9 psi", "--where", "x"], "a reading has no place on the engine"),
    (["--withdraw", "7"], "no entry 7 stands"),
    (["bearing_knock=yes", "--replaces", "7"], "no entry 7 stands"),
    (["bearing_knock=yes", "--when", "yesterday"], "'yesterday' is no date; write it like 20"),
    (["bearing_knock=yes", "--learned", "outsid"], "Did you mean 'outside'?"),
    (["bearing_knock=yes", "--note", "x" * 10_001], "note: 10,001 characters; at most 10,000"),
    (["bearing_knock=yes", "--by", "\udcff"], "is not UTF-8 text"),
]


@pytest.mark.parametrize(("words", "message"), REFUSED, ids=lambda v: str(v)[:40])
def test_record_refuses_in_one_line_and_writes_nothing(
    case: Path, words: list[str], message: str
) -> None:
    before = case.read_bytes()
    done = call("record", case, *words)
    assert (done.code, done.out, len(done.err.splitlines())) == (2, "", 1)
    assert message in done.err
    assert len(done.err) < 300
    assert case.read_bytes() == before


def test_record_says_stop_once_when_what_is_recorded_means_stop(case: Path) -> None:
    first = call("record", case, "gauge_reads_zero=yes").out
    assert first.count("STOP THE ENGINE: ") == 1
    assert "STOP" not in call("record", case, "fuel_smell=no").out
    assert "psi at 700 rpm" not in first
    low = call("record", case, "--reading", "700 rpm 95 C 4 psi direct").out
    assert "STOP THE ENGINE: 4 psi (0.3 bar) at 700 rpm" in low
    assert "gauge reads zero" not in low


def test_record_tells_a_reading_of_the_first_start_from_one_of_the_fault(case: Path) -> None:
    words = ("record", case, "--reading")
    assert "first start" in call(*words, "700 rpm 95 C 18 psi direct start").out
    assert "first start" not in call(*words, "700 rpm 95 C 18 psi direct").out


def test_record_tells_all_that_is_wrong_at_once(case: Path) -> None:
    words = ["a=b", "--reading", "z", "--withdraw", "7", "--when", "5", "--replaces", "1"]
    assert len(call("record", case, *words).err.splitlines()) == 5


def test_a_figure_and_its_unit_share_a_line(monkeypatch: pytest.MonkeyPatch) -> None:
    """No line ends between 97 and %, or between 12 and psi, however the words fall."""
    monkeypatch.setenv("COLUMNS", "80")
    for long in range(1, 76):
        for line in wrapped("x" * long + " 97 % likely below 12 psi at 650 rpm and 95 C hot"):
            assert not line[-1].isdigit(), line
            assert columns(line) <= 80
    assert wrapped("7 psi") == ["7 psi"]


def test_first_start_uses_the_unit_of_the_case() -> None:
    shown = call("signoff", ROOT / "cases" / "generator.toml", "--start", "--all").out
    limits = [
        line for line in shown.splitlines() if "limit: at least" in line and " min" not in line
    ]
    assert limits
    assert not any("psi;" in line or "psi (" in line for line in limits)
    assert ' bar direct start"' in shown
    in_eighty_columns(shown)


def test_first_start_without_limits_names_where_to_find_them() -> None:
    shown = call("signoff", ROOT / "cases" / "eider.toml", "--start").out
    assert "limit" in shown.split("needs watching at the start")[1]
    assert "shut down at the limit" not in shown
    whole = call("signoff", ROOT / "cases" / "eider.toml", "--start", "--whole-engine").out
    assert "shut down at the limit" in whole
