"""Figures on the page: judged as they are typed, in the units of the job, large where they count."""

from __future__ import annotations

import re
from pathlib import Path
from urllib.parse import urlencode

import pytest

from diagnose.case.loading import load
from diagnose.serve.screens.trying import ranges_of
from knowledge.book import the_book
from tests.support.web import Browser, Page, browser, jobs_in

JOB = 'schema = 1\n[job]\ntitle = "Trial"\n[engine]\nlayout = "distributor_v8"\n'
METRIC = JOB + (
    '[[reading]]\nno = 1\nrpm = "800 rpm"\ncoolant = "85 C"\npressure = "0.4 bar"\n'
    '[[finding]]\nno = 2\nwhat = "main_clearance"\nvalue = "0.12 mm"\n'
)


@pytest.fixture(scope="module")
def tab(tmp_path_factory: pytest.TempPathFactory) -> Browser:
    folder = jobs_in(tmp_path_factory.mktemp("jobs"), "turnstone")
    (folder / "trial.toml").write_text(JOB, "utf-8")
    (folder / "metric.toml").write_text(METRIC, "utf-8")
    return browser(folder)


def judged(tab: Browser, job: str = "trial", **fields: str) -> Page:
    """The verdict on what stands in the fields, "_" for the first ":"."""
    given = {name.replace("_", ":", 1): value for name, value in fields.items()}
    return tab.get(f"/job/{job}.toml/verdict?{urlencode(given)}")


def test_a_value_is_judged_before_it_is_saved(tab: Browser) -> None:
    """As it will be judged when it is; nothing is written."""
    path: Path = tab.app.site.folder.root / "turnstone.toml"
    before = path.read_bytes()
    page = judged(tab, "turnstone", m_main_clearance="4.5", u_main_clearance="thou")
    assert page.words == "Over the limit of 3.5 thou by 1 (this engine's own figure)"
    assert 'class="verdict off"' in page.text
    page = judged(tab, "turnstone", m_main_clearance="2,5", u_main_clearance="thou")
    assert page.words.startswith("Within limits")
    assert 'class="verdict fits"' in page.text
    assert path.read_bytes() == before


def test_readings_and_tasks_are_judged_too(tab: Browser) -> None:
    page = tab.get("/job/trial.toml/verdict?at:hot_idle=5&unit=psi&gauge=direct")
    assert page.words.startswith("Under the limit")
    page = judged(tab, "turnstone", m_main_clearance_fitted="4.5", u_main_clearance_fitted="thou")
    assert page.words.startswith("Failed")


@pytest.mark.parametrize(
    "fields",
    [{}, {"m_main_clearance": ""}, {"m_main_clearance": "4."}, {"m_main_clearance": "<script>"},
     {"m_nothing": "4"}, {"m_main_clearance": "9" * 400}, {"x": "1"}],
)  # fmt: skip
def test_half_a_value_does_no_harm(tab: Browser, fields: dict[str, str]) -> None:
    """What is being typed is often none yet."""
    page = judged(tab, **fields)
    assert page.status == 200
    assert "<script>" not in page.text
    assert "main_clearance" not in page.words


@pytest.mark.parametrize(
    ("job", "pressure", "length"), [("trial", "psi", "thou"), ("metric", "bar", "mm")]
)
def test_the_units_of_the_job_come_first(
    tab: Browser, job: str, pressure: str, length: str
) -> None:
    """In the readings, the bearings, a check that measures, and on the sliders."""
    chosen = r'<option value="([^"]*)" selected>|<option selected>([^<]*)</option>'
    small = "in" if length == "thou" else length
    for screen, wanted in (
        ("readings", pressure),
        ("bearings", small),
        ("check/lay_plastic_thread", small),
    ):
        text = tab.get(f"/job/{job}.toml/{screen}").text
        found = ["".join(pair) for pair in re.findall(chosen, text)]
        assert wanted in found or (wanted in ("psi", "in") and not found), screen
    case = load(tab.app.site.folder.root / f"{job}.toml", the_book())
    assert {s.unit for s in ranges_of(case)} == {pressure, length}


def test_what_a_slider_comes_to_stands_in_large_figures(tab: Browser) -> None:
    """Hot idle and about 2000 rpm, before and after; the part alone for a script."""
    path = "/job/trial.toml/forecast"
    whole = tab.get(f"{path}?main_clearance=2")
    glance = whole.text.partition('id="glance"')[2].partition("</div>")[0]
    figures = re.findall(r"(\d+) <span.*?<b>(\d+)</b>", glance)
    assert len(figures) == 2
    rows = re.findall(r'<th scope="row" class="number">.*?</tr>', whole.text)
    for before, after in figures:
        assert any(f"<b>{before}</b>" in r and f"<b>{after}</b>" in r for r in rows)
    parts = tab.ask("GET", f"{path}?main_clearance=2", b"", {"x-part": "1"})
    assert re.findall(r'^<(?:div|section) id="(\w+)"', parts.text, re.M) == ["glance", "predicted"]
    assert "<html" not in parts.text


@pytest.mark.parametrize(
    ("pressure", "mark", "advice"),
    [("82 psi", 'verdict off">too high', True), ("48 psi", 'verdict fits">as it should be', False)],
)
def test_a_first_start_above_what_was_predicted_is_no_tick(
    pressure: str, mark: str, advice: bool, tmp_path: Path
) -> None:
    start = f'[[reading]]\nno = 1\nrpm = "2000 rpm"\noil = "hot"\npressure = "{pressure}"\n'
    (tmp_path / "high.toml").write_text(JOB + start + 'at = "start"\n', "utf-8")
    page = browser(tmp_path).get("/job/high.toml/start")
    assert mark in page.text
    assert ("look at the relief valve and its spring" in page.text) is advice


def test_what_was_found_can_be_put_right_in_a_trial(tmp_path: Path) -> None:
    """A found fault has its own field; ticked, the pressure after it is shown."""
    found = """
[[reading]]
no = 1
rpm = "2000 rpm"
oil = "hot"
pressure = "20 psi"
gauge = "direct"
[[finding]]
no = 2
what = "cooler_found_blocked"
state = "present"
"""
    (tmp_path / "cooler.toml").write_text(JOB + found, "utf-8")
    tab, path = browser(tmp_path), "/job/cooler.toml/forecast"
    page = tab.get(path)
    assert "Put right what was found" in page.words
    assert 'name="fix-cooler"' in page.text
    after = tab.get(f"{path}?fix-cooler=1")
    assert "after the change" in after.text
    now, then = re.findall(r"(\d+) <span.*?<b>(\d+)</b>", after.text)[-1]
    assert int(then) > int(now)
    assert 'name="fix-cooler" value="1" checked' in after.text
    sound = tab.get("/job/cooler.toml/forecast?main_clearance=2").text
    assert "fix-mains" not in sound, "the mains were not found wrong"
