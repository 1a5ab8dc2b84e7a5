"""Engines of certified aircraft: every command refuses the case, advises nothing, writes nothing."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.aircraft import speaks_of_aircraft
from diagnose.case.loading import from_text, load
from diagnose.errors import OutOfScopeError
from knowledge.book import the_book
from knowledge.questions.essentials import SAFETY
from tests.support.command_line import Done, call
from tests.support.complaints import INVENTED
from tests.support.history_jobs import a_folder, job_text, three_jobs

BOOK = the_book()
CASE = INVENTED["petrel"]
SPEAKS = {
    "title": CASE.replace('title = "', 'title = "Light aircraft: ', 1),
    "said so": CASE.replace("[engine]", "[engine]\naircraft = true", 1),
    "engine's name": 'schema = 1\n[engine]\nname = "helicopter engine, flat four"\n',
    "complaint": 'schema = 1\n[job]\ntitle = "Flat four"\ncomplaint = "low since the AIRPLANE stood"\n',
}
COMMANDS = [
    ("review",),
    ("review", "--json"),
    ("review", "--check"),
    ("teardown",),
    *(("teardown", form) for form in ("--json", "--markdown", "--blanks")),
    ("teardown", "--since", "1"),
    ("signoff",),
    *(("signoff", form) for form in ("--start", "--whole-engine", "--markdown", "--json")),
    ("bearings",),
    *(("bearings", form) for form in ("--full", "--json", "--markdown", "--blanks")),
    ("bearings", "main 1 strip 2.2 thou"),
    ("budget",),
    ("survey",),
    ("survey", "--reading", "700 rpm 95 C 8 psi"),
    ("forecast",),
    ("forecast", "--set", "oil=15W-40"),
    ("ask",),
    ("graph",),
    ("record", "needle_flickers=yes"),
    ("close", "--cause", "relief_debris", "--how", "seen"),
]


def refused(done: Done, name: str) -> None:
    """One line that says who to go to, and no advice beside it."""
    assert (done.code, done.out, len(done.err.splitlines())) == (65, "", 1), done
    assert done.err.startswith(f"{name}: ")
    for part in (
        "outside this book: stop",
        "a licensed maintenance organisation",
        "aircraft = fal",
    ):
        assert part in done.err


@pytest.mark.parametrize("words", COMMANDS, ids=" ".join)
@pytest.mark.parametrize("where", SPEAKS)
def test_every_command_refuses_an_aircraft(
    tmp_path: Path, words: tuple[str, ...], where: str
) -> None:
    path = tmp_path / "a.toml"
    path.write_text(SPEAKS[where], "utf-8")
    command, *more = words
    refused(call(command, path, *more, answers="y\ny\ny\n"), str(path))
    assert path.read_text("utf-8") == SPEAKS[where]
    assert [p.name for p in tmp_path.iterdir()] == ["a.toml"]


@pytest.mark.parametrize(
    "words",
    [
        "my plane's oil pressure is low",
        "O-320 oil pressure 20 psi after overhaul",
        "IO-540, low hot",
        "crop duster, low at idle",
        "paramotor engine low pressure",
    ],
)
def test_words_of_flying_are_out_of_scope(words: str) -> None:
    assert speaks_of_aircraft(words)


@pytest.mark.parametrize(
    "words",
    [
        "low once the boat is on the plane",
        "takes off well, then the pressure drops",
        "aircraft carrier model boat engine low pressure",
        "hydroplane V8, low in bends",
        "the o-ring of the pickup, 0-60 psi gauge",
        "flew home to fetch a gauge",
        "glow plugs and a flight of steps",
        "thrust plane of the crank is scored",
    ],
)
def test_words_of_the_ground_are_not(words: str) -> None:
    assert not speaks_of_aircraft(words)


@pytest.mark.parametrize("words", ["Light aircraft, low", "Flat four, low in the helicopter"])
def test_ask_begins_no_case_for_an_aircraft(tmp_path: Path, words: str) -> None:
    """As soon as it is said: no further question, no advice, nothing of it in the file."""
    path = tmp_path / "a.toml"
    done = call("ask", path, answers=f"4\n{words}\n" + "y\n" * 5)
    assert (done.code, done.out) == (65, "")
    assert "a licensed maintenance organisation" in done.err.splitlines()[-1]
    assert "All right?" not in done.err
    assert "Best guess" not in done.err
    assert words not in path.read_text("utf-8")
    assert {s.finding.id for s in load(path, BOOK).finding_records} == set(SAFETY.findings)


@pytest.mark.parametrize(
    "word",
    ["seaplane", "Biplanes", "aero engine", "Aeroengine", "aero-engine", "helicopter", "autogiro",
     "float plane", "motor glider", "light plane", "microlight", "airship"],
)  # fmt: skip
def test_every_word_for_an_aircraft_is_recognised(word: str) -> None:
    text = CASE.replace('title = "', f'title = "Off a {word}: ', 1)
    with pytest.raises(OutOfScopeError):
        from_text(text, None, BOOK)


@pytest.mark.parametrize("word", ["hydroplane", "planing launch", "aerated", "air plan", "glide"])
def test_a_word_that_only_sounds_like_it_is_not(word: str) -> None:
    text = CASE.replace('title = "', f'title = "Off a {word}: ', 1)
    assert from_text(text, None, BOOK).engine.aircraft is None


@pytest.mark.parametrize("command", ["review", "teardown", "signoff"])
def test_an_engine_stated_not_to_fly_is_diagnosed(tmp_path: Path, command: str) -> None:
    path = tmp_path / "a.toml"
    path.write_text(SPEAKS["title"].replace("[engine]", "[engine]\naircraft = false", 1), "utf-8")
    assert call(command, path).code == 0


def test_an_aircraft_among_a_shops_jobs_is_left_out_and_the_others_count(tmp_path: Path) -> None:
    shop = three_jobs(tmp_path)
    flies = job_text("coolant_in_oil").replace("Plover", "Aeroplane")
    before = call("history", shop, "--json")
    a_folder(shop, whimbrel=flies)
    done = call("history", shop)
    assert done.code == 0
    assert "2 closed jobs; 1 open, 1 file left out" in " ".join(done.out.split())
    assert "coolant_in_oil" not in done.out
    (shop / "whimbrel.toml").unlink()
    assert call("history", shop, "--json") == before
