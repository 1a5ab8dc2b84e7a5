"""Pressures of the sound engine on its card: read, written, and used in every job that names it."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose import engine_card
from diagnose.case.card import card_from_text
from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.circuit.deviations import sound_engines
from diagnose.circuit.engine_model import Point, shown
from diagnose.entry.readings import parse_baseline
from diagnose.errors import BadCaseError
from diagnose.hydraulics.ranges import FloatArray
from knowledge.book import the_book
from knowledge.units import PSI
from tests.support.command_line import call
from tests.support.web import browser

BOOK = the_book()
HEAD = 'card = 1\n[engine]\nlayout = "distributor_v8"\n'


def table(rpm: str = "700 rpm", oil: str = "90 C", pressure: str = "32 psi", more: str = "") -> str:
    return f'[[baseline]]\nrpm = "{rpm}"\noil = "{oil}"\npressure = "{pressure}"\n{more}\n'


def job(folder: Path, card: str, own: str = "") -> Case:
    """A job in a folder beside its card."""
    (folder / "trial.toml").write_text(HEAD + card, "utf-8")
    path = folder / "job.toml"
    path.write_text(f'schema = 1\n[engine]\ncard = "trial.toml"\n{own}', "utf-8")
    return load(path, BOOK)


def psi(case: Case) -> list[tuple[float, float]]:
    """Speed and pressure of each reading that counts."""
    return [(b.reading.rpm, round(b.reading.pressure / PSI, 1)) for b in case.baseline]


def test_a_jobs_own_readings_go_before_those_on_the_card(tmp_path: Path) -> None:
    """State by state; of the card the last of each state counts, in words and in figures."""
    card = (
        table(pressure="32 psi")
        + table("2500 rpm", pressure="55 psi")
        + table("750 rpm", pressure="30 psi")
        + table("idle", "cold", "4 bar", 'tap = "pump"')
    )
    assert psi(job(tmp_path, card)) == [(2500, 55.0), (750, 30.0), (700, 58.0)]
    own = table("2400 rpm", "95 C", "50 psi", "no = 1")
    assert psi(job(tmp_path, card, own)) == [(2400, 50.0), (750, 30.0), (700, 58.0)]


def test_what_the_card_knows_calibrates_the_circuit(tmp_path: Path) -> None:
    """Plausible sound engines show what the card says, as if the job said it itself."""
    states = [Point(700, 363.15, 0.0), Point(2500, 363.15, 0.0)]

    def mean(case: Case) -> FloatArray:
        engines = sound_engines(case, 32, np.random.default_rng(3))
        return np.asarray(shown(engines, states).mean(0) / PSI)

    low, high = (
        mean(job(tmp_path, table(pressure=idle) + table("2500 rpm", pressure=fast)))
        for idle, fast in (("18 psi", "40 psi"), ("40 psi", "62 psi"))
    )
    assert low == pytest.approx([18, 40], abs=4)
    assert high == pytest.approx([40, 62], abs=4)
    own = table(pressure="40 psi", more="no = 1") + table(
        "2500 rpm", pressure="62 psi", more="no=2"
    )
    assert mean(job(tmp_path, "", own)) == pytest.approx(high)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (table(pressure="32"), "baseline[1]: pressure: '32' is no pressure here"),
        (table(pressure="3000 psi"), "baseline[1]: pressure '3000 psi' cannot be right"),
        (table(oil="90"), "baseline[1]: oil: '90' is no temperature here"),
        (table() + table("_ rpm"), "baseline[2].rpm: still to be filled in"),
        (table(more="replaces = 1"), "baseline[1].replaces: no such field on a card"),
        (table(more='state = "withdrawn"'), "baseline[1].state: no such field on a card"),
        (table(more='presure = "3 bar"'), "baseline[1].presure: no such field. Did you mean"),
        ('[[baseline]]\nrpm = "700 rpm"\n', "baseline[1]: pressure is missing"),
        ('[baseline]\nrpm = "700 rpm"\n', "baseline: must be a list of tables, each written [["),
        ("baseline = [1]\n", "baseline[1]: must be a table, written [[baseline]]"),
    ],
)
def test_a_bad_reading_is_one_clear_line(text: str, says: str) -> None:
    head = HEAD if text.startswith("[") else text + HEAD
    with pytest.raises(BadCaseError) as bad:
        card_from_text(head + (text if head == HEAD else ""), Path("trial.toml"), BOOK)
    (fault,) = bad.value.faults
    assert says in fault


@given(
    st.integers(400, 6000),
    st.integers(-20, 140),
    st.decimals(1, 9, places=1),
    st.sampled_from(["", " pump", " +-2 psi"]),
)
def test_what_is_shown_can_be_typed_again(rpm: int, oil: int, bar: object, more: str) -> None:
    fields = parse_baseline(f"{rpm} rpm {oil} C {bar} bar{more}")
    given = {k: v for k, v in fields.items() if v}
    text = HEAD + "[[baseline]]\n" + "".join(f'{k} = "{v}"\n' for k, v in given.items())
    (found,) = card_from_text(text, Path("trial.toml"), BOOK).baseline
    assert {k: v for k, v in parse_baseline(found.typed).items() if v} == given


def test_the_command_writes_corrects_and_shows_them(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    made = call("card", "v8", "--layout", "distributor_v8")
    assert made.code == 0
    assert "# [[baseline]]" in Path("v8.toml").read_text("utf-8"), "it waits as a comment"
    done = call("card", "v8", "baseline=700 rpm 90 C 32 psi", "baseline=2500 rpm 90 C 55 psi")
    assert (done.code, done.err) == (0, "")
    again = call("card", "v8", "baseline=720 rpm 92 C 30 psi", "idle_speed=700 rpm")
    assert "baseline     720 rpm 92 C 30 psi; 2500 rpm 90 C 55 psi" in again.out
    text = Path("v8.toml").read_text("utf-8")
    assert len(tomllib.loads(text)["baseline"]) == 2
    bad = call("card", "v8", "baseline=700 rpm 90 C 3000 psi")
    assert bad.code == 2
    assert "cannot be right" in bad.err
    assert Path("v8.toml").read_text("utf-8") == text
    data = json.loads(call("card", "v8", "--json").out)
    assert [round(b["pressure"] / PSI) for b in data["baseline"]] == [30, 55]
    assert data["filled"] == 2
    assert "baseline" not in [gap["id"] for gap in data["missing"]]


def test_a_card_takes_over_a_jobs_own_readings(tmp_path: Path) -> None:
    case = tmp_path / "old.toml"
    case.write_text(f"schema = 1\n{HEAD.split('1', 1)[1]}{table(more='no = 1')}", "utf-8")
    done = call("card", tmp_path / "new", "--from", case)
    assert (done.code, done.err) == (0, "")
    (found,) = engine_card(tmp_path / "new.toml").baseline
    assert found.typed == "700 rpm 90 C 32 psi"


def test_the_page_adds_changes_and_takes_out(tmp_path: Path) -> None:
    job(tmp_path, table())
    tab = browser(tmp_path)

    def send(**given: str) -> str:
        form = tab.get("/job/job.toml/card").form("card")
        typed = {f"g:baseline.{k[1:]}": v for k, v in given.items()}
        return tab.post(form.action, {**form.fields, **typed}).words

    def there() -> list[str]:
        return [b.typed for b in engine_card(tmp_path / "trial.toml").baseline]

    assert "Saved When it was sound: 2500 rpm 90 C 55 psi" in send(_1="2500 rpm 90 C 55 psi")
    assert there() == ["700 rpm 90 C 32 psi", "2500 rpm 90 C 55 psi"]
    send(_0="700 rpm 90 C 31 psi")
    assert there() == ["700 rpm 90 C 31 psi", "2500 rpm 90 C 55 psi"]
    send(_0="")
    assert there() == ["2500 rpm 90 C 55 psi"]
    assert "needs a pressure with its unit" in send(_0="90 C")
    assert there() == ["2500 rpm 90 C 55 psi"]


def test_two_people_at_once_are_told_of_each_other(tmp_path: Path) -> None:
    """One more reading in both forms: the second is asked before it goes over the first."""
    job(tmp_path, table())
    tab = browser(tmp_path)
    first, second = (tab.get("/job/job.toml/card").form("card") for _ in range(2))
    tab.post(first.action, {**first.fields, "g:baseline.1": "2500 rpm 90 C 55 psi"})
    page = tab.post(second.action, {**second.fields, "g:baseline.1": "2000 rpm 90 C 50 psi"})
    assert page.status == 409
    assert "When it was sound: 2500 rpm 90 C 55 psi" in page.words
    assert len(engine_card(tmp_path / "trial.toml").baseline) == 2
