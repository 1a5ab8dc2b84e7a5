"""The owner's report: everything the other commands answer, with the figures beside it."""

from __future__ import annotations

import json
import re
from itertools import pairwise, permutations, product
from pathlib import Path
from random import Random
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.case.loading import load
from diagnose.circuit.budget import budget
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.budget import budget_document
from diagnose.output.documents.cause_graph import focused_graph, leading_causes_graph
from diagnose.output.documents.reasons import is_there
from diagnose.output.html.graph_picture import graph_svg
from diagnose.output.html.layered import GAP, Laid, Place, crossings, laid_out
from diagnose.output.html.report_figures import bars_of
from knowledge.book import the_book
from tests.output.test_pages import EVERY, page_once, stands_alone
from tests.support.command_line import call
from tests.support.complaints import CASES, path_of
from tests.support.examples import one_in
from tests.support.page import Page

BOOK = the_book()
#: a third of the cases; their pages are also read in ``test_pages``; the others run with the long suite
SOME = one_in(6, EVERY)
SVG = "{http://www.w3.org/2000/svg}"


def consulted(path: Path) -> Diagnosis:
    return Diagnosis(BOOK, load(path, BOOK))


def tight(text: str) -> str:
    """Without any blank: cells of a table stand close."""
    return "".join(text.split())


# ------------------------------------------------------------------------------ the page


@pytest.fixture(scope="module")
def gannet() -> Page:
    return stands_alone(page_once("report", CASES / "gannet.toml"))


def test_a_closed_job_names_its_cause(gannet: Page) -> None:
    case = load(CASES / "gannet.toml", BOOK)
    assert case.closed is not None
    for text in (
        case.job.complaint,
        case.closed.causes[0].says,
        case.closed.entry.how,
        case.closed.entry.remedy,
        "2026-06-20",
    ):
        assert text in gannet.words


def test_every_finding_has_its_date(gannet: Page) -> None:
    case = load(CASES / "gannet.toml", BOOK)
    flat = tight(gannet.words)
    for seen in case.finding_records:
        when = seen.entry.when
        assert when is not None
        if seen.observation is None:  # asked, answer unknown
            continue
        assert tight(seen.finding.says) in flat
        assert f"{when}" in flat  # once for a run of lines of one day


def test_what_nobody_knew_is_only_counted(gannet: Page) -> None:
    case = load(CASES / "gannet.toml", BOOK)
    unknown = [s for s in case.finding_records if s.observation is None]
    assert unknown
    assert f"{len(unknown)} more asked about, and not known" in gannet.words
    assert not any(f"{s.entry.when}{s.finding.says}" in tight(gannet.words) for s in unknown)


def test_chances_are_those_of_review(gannet: Page) -> None:
    data = json.loads(call("review", CASES / "gannet.toml", "--json").out)
    for row in data["causes"][:5]:
        shown = re.search(
            re.escape(BOOK.causes[row["id"]].says) + r": ([<>]?) ?(\d+) %", gannet.words
        )
        assert shown, row["id"]
        assert int(shown[2]) == pytest.approx(100 * row["probability"], abs=1.0)


def test_the_survey_is_that_of_the_command(gannet: Page) -> None:
    data = json.loads(call("survey", CASES / "gannet.toml", "--json").out)
    for row in data["conditions"][:3]:
        assert row["says"] in gannet.words
        assert f"{100 * row['share']:.0f} %" in gannet.words
    speeds = {r["rpm"] for r in data["readings"]}
    assert all(f"{rpm:.0f} rpm" in gannet.words for rpm in speeds)


def test_figures_keep_to_the_units_of_the_case() -> None:
    """Pressures in bar with their decimals, limits in the unit the value was measured in."""
    page = stands_alone(page_once("report", CASES / "dunlin.toml"))
    data = json.loads(call("survey", CASES / "dunlin.toml", "--json").out)
    for reading in data["readings"]:
        assert f"{reading['psi'] * 0.0689476:.1f}" in page.words
    assert re.search(r"sound engine of this kind, nine in ten\s*\d\.\d to \d\.\d", page.words)
    assert "at most 0.1 mm (this engine's own figure)" in page.words


def test_the_budget_is_that_of_the_command(gannet: Page) -> None:
    """Each line of the account, with its figure."""
    text = call("budget", CASES / "gannet.toml", "--full").out
    rows = re.findall(r"^  +(\S.*?)  +(-?\d+ psi \(.*\))$", text, re.MULTILINE)
    assert len(rows) > 8
    flat = tight(gannet.words)
    for says, figure in rows:
        assert tight(f"{says} {figure}") in flat


def test_first_start_and_sign_off_are_there(gannet: Page) -> None:
    assert gannet.words.count("as predicted") == 3
    signed = call("signoff", CASES / "gannet.toml", "--json").out
    worked = [i for i in json.loads(signed)["items"] if i["verdict"] != "open"]
    assert len(worked) > 50
    for item in worked:
        assert BOOK.tasks[item["task"]].says in gannet.words


@pytest.mark.parametrize("case", SOME, ids=lambda p: p.stem)
def test_every_case_has_cautions_sources_and_deferrals(case: Path) -> None:
    page = stands_alone(page_once("report", case))
    for heading in ("The answer", "Sources of what is shown", "These come first"):
        assert heading in page.words
    assert "aircraft" in page.words


def test_an_open_job_shows_alarms_and_what_is_next() -> None:
    page = stands_alone(page_once("report", path_of("winch_begun")))
    assert "What is planned next" in page.words
    alarmed = stands_alone(page_once("report", CASES / "petrel.toml"))
    assert alarmed.words.index("STOP THE ENGINE") < alarmed.words.index("The answer")


# ------------------------------------------------------------------------------ the waterfall


@pytest.mark.parametrize("name", ["gannet", "dunlin", "tern", "generator"])
def test_bars_lead_from_the_sound_engine_to_the_gauge(name: str) -> None:
    """Each begins where the one before ended; the last is what was read, nothing is lost between."""
    case = load(CASES / f"{name}.toml", BOOK)
    document = budget_document(budget(case), case)
    scale = document.scale
    for account in document.accounts:
        first, *steps, last = bars_of(account, scale)
        assert first.end == pytest.approx(account.healthy.mean / scale.factor)
        at = first.end
        for bar in steps:
            assert bar.start == pytest.approx(at)
            at = bar.end
        assert at == pytest.approx(last.end, abs=2 * scale.least / scale.factor)
        if account.read is not None:
            assert last.end == pytest.approx(account.read / scale.factor)


# ------------------------------------------------------------------------------ the picture


def boxes(laid: Laid, column: dict[str, int], tall: dict[str, float]) -> None:
    """No two boxes of a column touch; all lie on the sheet."""
    for k in set(column.values()):
        mine = sorted((n for n in column if column[n] == k), key=lambda n: laid.middle[n])
        for a, b in pairwise(mine):
            free = laid.middle[b] - laid.middle[a] - (tall[a] + tall[b]) / 2
            assert free >= GAP - 1e-6
        for n in mine:
            assert laid.middle[n] - tall[n] / 2 >= -1e-6
            assert laid.middle[n] + tall[n] / 2 <= laid.tall + 1e-6


@st.composite
def layered(draw: st.DrawFn) -> tuple[dict[str, int], list[tuple[str, str]], dict[str, float]]:
    sizes = draw(st.lists(st.integers(1, 5), min_size=2, max_size=5))
    column = {f"{k}{i}": k for k, size in enumerate(sizes) for i in range(size)}
    every = [(a, b) for a, b in product(column, column) if column[a] < column[b]]
    links = draw(st.lists(st.sampled_from(every), unique=True, max_size=14))
    tall = {n: draw(st.floats(10, 90)) for n in column}
    return column, links, tall


@given(layered())
def test_boxes_never_touch_and_links_pass_between(
    graph: tuple[dict[str, int], list[tuple[str, str]], dict[str, float]],
) -> None:
    column, links, tall = graph
    laid = laid_out(column, links, tall)
    boxes(laid, column, tall)
    for (a, b), way in laid.ways.items():
        assert [k for k, _ in way] == list(range(column[a] + 1, column[b]))
        for k, height in way:
            for n in (n for n in column if column[n] == k):
                assert abs(laid.middle[n] - height) > tall[n] / 2
    assert laid == laid_out(column, links, tall)


def drawn_crossings(left: int, right: int, links: list[tuple[str, str]]) -> tuple[int, int]:
    """As laid out, and of the best of all orders."""
    names = [f"a{i}" for i in range(left)], [f"b{i}" for i in range(right)]
    column = {n: k for k, side in enumerate(names) for n in side}
    laid = laid_out(column, links, dict.fromkeys(column, 20.0))
    steps: list[tuple[Place, Place]] = list(links)
    order = [sorted(side, key=laid.middle.__getitem__) for side in names]
    mine = crossings(order, steps)
    orders = product(permutations(names[0]), permutations(names[1]))
    return mine, min(crossings([a, b], steps) for a, b in orders)


def test_crossings_stay_near_the_fewest_there_can_be() -> None:
    """Against every order of both columns, over many graphs drawn by lot."""
    lot = Random(7)
    found = []
    for _ in range(60):
        left, right = lot.randint(2, 4), lot.randint(2, 4)
        every = [(f"a{i}", f"b{j}") for i in range(left) for j in range(right)]
        found.append(
            drawn_crossings(left, right, lot.sample(every, lot.randint(2, len(every) - 1)))
        )
    mine, fewest = (sum(side) for side in zip(*found, strict=True))
    assert all(m >= f for m, f in found)
    assert fewest > 100
    assert mine <= 1.15 * fewest


@given(st.lists(st.integers(0, 3), min_size=1, max_size=5))
def test_what_need_not_cross_does_not(parents: list[int]) -> None:
    """Findings with one cause each stand in the order of their causes."""
    links = [(f"a{p}", f"b{i}") for i, p in enumerate(parents)]
    assert drawn_crossings(4, len(parents), links) == (0, 0)


def test_a_link_backwards_is_refused() -> None:
    with pytest.raises(ValueError, match="does not go to the right"):
        laid_out({"a": 0, "b": 1}, [("b", "a")], {"a": 1.0, "b": 1.0})


@pytest.mark.parametrize("case", one_in(3, EVERY), ids=lambda p: p.stem)
def test_the_leading_ways_stand_out(case: Path) -> None:
    """Thick boxes are those of the leading cause's likeliest ways, each link of them labelled."""
    answer = consulted(case)
    part = leading_causes_graph(answer)
    root = ElementTree.fromstring(graph_svg(part))
    thick = [r for r in root.iter(f"{SVG}rect") if r.get("stroke-width") == "3.5"]
    assert len(thick) == len({n for way in part.paths for n in way})
    assert all(way[0] == answer.ranking[0].cause.id for way in part.paths)
    for way in part.paths:  # what was looked for and not there was brought about by nothing
        assert is_there(answer, way[-1])
    steps = {s for way in part.paths for s in pairwise(way)}
    labels = [t.text for t in root.iter(f"{SVG}text") if t.get("font-size") == "11"]
    strengths = [answer.inference.graph.edges[s]["strength"] for s in steps]
    assert sorted(map(str, labels)) == sorted(f"{s:.2f}".removeprefix("0") for s in strengths)
    black = [p for p in root.iter(f"{SVG}path") if p.get("stroke") == "#000"]
    assert len(black) == len(steps)


def test_a_stronger_link_is_drawn_thicker() -> None:
    answer = consulted(CASES / "petrel.toml")
    part = leading_causes_graph(answer)
    root = ElementTree.fromstring(graph_svg(part))
    wide = sorted(
        float(p.get("stroke-width", 0)) for p in root.iter(f"{SVG}path") if p.get("stroke")
    )
    strong = sorted(link.strength for link in part.links)
    assert len(wide) == len(strong)
    assert wide == pytest.approx([0.8 + 3.2 * s for s in strong], abs=0.06)


def test_focus_draws_what_ties_it_to_the_findings(tmp_path: Path) -> None:
    answer = consulted(CASES / "winch.toml")
    part = focused_graph(answer, "relief_debris")
    nodes = {n.id for n in part.nodes}
    assert {n for n in nodes if n in answer.inference.network.prior} == {"relief_debris"}
    out = tmp_path / "part.svg"
    done = call(
        "graph", CASES / "winch.toml", "--format", "svg", "--focus", "relief_debris", "--out", out
    )
    assert done.code == 0
    root = ElementTree.parse(out).getroot()
    words = "".join("".join(t.itertext()) for t in root.iter(f"{SVG}text"))
    assert tight("debris under the relief valve") in tight(words)
    assert len(list(root.iter(f"{SVG}rect"))) == len(nodes)
    assert not list(root.iter(f"{SVG}script"))
    absent = [n for n in nodes if n in answer.inference.evidence and not is_there(answer, n)]
    assert absent
    assert tight("".join(root.itertext())).count("notthere:") == len(absent)
    broken = [p for p in root.iter(f"{SVG}path") if p.get("stroke-dasharray")]
    assert len(broken) == sum(link.end in absent for link in part.links)
