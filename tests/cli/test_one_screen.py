"""Default answers of the commands: one screen, the next thing to do last, everything one option away."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

import pytest

from knowledge.cautions import CAUTIONS
from tests.support.command_line import ROOT, Done, call, in_eighty_columns
from tests.support.examples import one_in

CASES = sorted((ROOT / "cases").glob("*.toml"))
PLANNED = one_in(4, [p.stem for p in CASES])
MOST = {"teardown": 48, "signoff": 30, "budget": 30, "forecast": 30, "survey": 30}
CAUTION = re.compile(r"^ *caution: .*(?:\n {4,}.*)*", re.MULTILINE)


@cache
def shown(command: str, name: str, *options: str) -> str:
    """What a command prints of a worked case."""
    done = call(command, ROOT / "cases" / f"{name}.toml", *options)
    assert (done.code, done.err) == (0, "")
    return done.out


def last_lines(text: str) -> str:
    """What the screen ends with."""
    return "\n".join(text.rstrip().splitlines()[-3:])


@pytest.mark.parametrize("name", PLANNED)
@pytest.mark.parametrize("command", ["teardown", "signoff"])
def test_a_screen_ends_with_what_to_do(command: str, name: str) -> None:
    text = shown(command, name)
    in_eighty_columns(text)
    assert len(text.splitlines()) <= MOST[command]
    assert len(CAUTION.sub("", text).splitlines()) <= 45
    assert re.search(r"diagnose (record|signoff|close|review|report) ", last_lines(text))


@pytest.mark.parametrize(
    ("command", "name"),
    [("budget", "dunlin"), ("forecast", "turnstone"), ("survey", "eider"), ("budget", "petrel")],
)
def test_the_circuit_fits_one_screen(command: str, name: str) -> None:
    text = shown(command, name)
    in_eighty_columns(text)
    assert len(text.splitlines()) <= MOST[command]
    assert "diagnose " in last_lines(text)
    assert "--full" in text


@pytest.mark.parametrize("name", one_in(4, ["gannet", "tern", "whimbrel", "generator"]))
def test_a_first_start_of_a_whole_engine_fits_one_screen(name: str) -> None:
    text = shown("signoff", name, "--start", "--whole-engine")
    in_eighty_columns(text)
    assert len(text.splitlines()) <= 30
    assert "Watch, and shut down at the limit" in text
    assert text.splitlines()[-2] == ""
    assert "diagnose " in last_lines(text)


def test_the_stage_shown_is_the_first_and_its_cautions_are_there() -> None:
    text, whole = shown("teardown", "petrel"), shown("teardown", "petrel", "--all")
    steps = re.findall(r"^  (1\.\d+)  (.+?) \(\d+ min\)", text, re.MULTILINE)
    assert steps
    flat = " ".join(whole.split())
    for number, says in steps:
        assert f"{number} {' '.join(says.split())}" in flat
    named = {w.short: w.says for each in CAUTIONS.values() for w in each}
    (care,) = CAUTION.findall(text)
    for short in " ".join(care.split()).removeprefix("caution: ").split("; "):
        assert f"caution: {named[short]}" in flat


def test_one_stage_in_full() -> None:
    text = shown("teardown", "petrel", "--stage", "2")
    assert "Stage 2 of" in text
    assert "Stage 1 of" not in text
    assert "[____]" in text
    assert "caution: " in text
    assert "diagnose record" in last_lines(text)


@pytest.mark.parametrize(
    ("stage", "says"),
    [("99", "stage: no stage 99; the stages are 1 to "), ("0", "greater than or equal to 1")],
)
def test_a_stage_that_is_not_there(stage: str, says: str) -> None:
    done = call("teardown", ROOT / "cases" / "petrel.toml", "--stage", stage)
    assert (done.code, done.out) == (2, "")
    assert says in done.err


def test_a_sign_off_counts_what_is_open_by_phase() -> None:
    text, whole = shown("signoff", "petrel"), shown("signoff", "petrel", "--all")
    rows = re.findall(r"^ +\d+  .+?(\d+|-) +(\d+|-) +(\d+|-)$", text, re.MULTILINE)
    counted = [sum(int(n) for n in column if n != "-") for column in zip(*rows, strict=True)]
    assert counted == [whole.count("[ ] "), whole.count("[!] "), whole.count("[x] ")]
    assert f"0 of {sum(counted)} tasks done" in text
    first = re.findall(r"\[ \] 1\.1  (.+?) \[", whole)[0]
    assert f"Next: {first}" in text


@pytest.mark.parametrize(
    "word", ["relief_debris", "pump_end_clearance", "read_the_stick", "oil_pump"]
)
def test_show_fits_one_screen(word: str) -> None:
    brief, full = call("show", word), call("show", word, "--full")
    assert (brief.code, full.code) == (0, 0)
    in_eighty_columns(brief.out)
    assert len(brief.out.splitlines()) <= 30
    assert f"diagnose show {word} --full" in brief.out
    assert len(full.out) > len(brief.out) - 120


def test_a_long_list_says_how_much_it_leaves_out() -> None:
    brief = call("lookup", "--kind", "finding").out
    every = call("lookup", "--kind", "finding", "--full").out
    assert len(brief.splitlines()) <= 30
    more = int(re.findall(r"([\d,]+) more: --full", brief)[0].replace(",", ""))
    assert brief.count("]\n") + more == len(re.findall(r"\[[a-z0-9_]+\]$", every, re.MULTILINE))


def why(cause: str, *options: str) -> Done:
    """The reasons for one cause of one case."""
    return call("review", ROOT / "cases" / "petrel.toml", "--why", cause, *options)


def test_why_says_how_strong_in_words() -> None:
    done = why("relief-debris")
    assert done.code == 0
    in_eighty_columns(done.out)
    assert len(done.out.splitlines()) <= 30
    assert re.search(r"^  strong  there is debris on the relief seat", done.out, re.MULTILINE)
    assert set(re.findall(r"^  (strong|some|slight) ", done.out, re.MULTILINE)) >= {
        "strong",
        "slight",
    }
    assert not re.search(r"\bdB\b", done.out)
    assert '"decibans"' in why("relief_debris", "--json").out


def test_why_of_a_cause_far_down_the_ranking() -> None:
    done = why("pump_gear_wear")
    assert "number 2; the likeliest is debris under the relief valve" in " ".join(done.out.split())


def test_why_of_what_is_no_cause() -> None:
    done = why("relief_debri")
    assert (done.code, done.out) == (2, "")
    assert "Did you mean 'relief_debris'?" in done.err


def test_a_folder_has_no_why() -> None:
    done = call("review", Path("cases"), "--why", "relief_debris")
    assert (done.code, done.out) == (2, "")


@pytest.mark.parametrize("name", one_in(3, ["petrel", "bullfinch", "dunlin"]))
def test_sizing_fits_one_screen(name: str) -> None:
    text = shown("sizing", name)
    in_eighty_columns(text)
    assert len(text.splitlines()) <= 30
    assert "Next: " in last_lines(text)
    assert "--all" in text or "--full" in last_lines(text)


def test_a_card_with_much_on_it_fits_one_screen() -> None:
    """What a table holds beyond two lines is counted; the whole is one option away."""
    card = ROOT / "cases" / "cards" / "workboat_v8.toml"
    brief, whole = call("card", card).out, call("card", card, "--all").out
    in_eighty_columns(brief)
    assert len(brief.splitlines()) <= 30
    assert 'card = "workboat_v8.toml"' in last_lines(brief)
    more = sum(int(n) for n in re.findall(r"; (\d+) more", brief))
    assert more > 0
    assert "oil_capacity" in whole
