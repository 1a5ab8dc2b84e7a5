"""Jobs that have only begun: what a customer reported, over different layouts."""

from __future__ import annotations

import json
import re
import tempfile
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from types import SimpleNamespace
from typing import Any

from diagnose.case.loading import load
from diagnose.case.writing import Fields, table_text
from knowledge.access import Opening, openings_for
from knowledge.book import the_book
from knowledge.model import State
from knowledge.work import Access, Inspection
from tests.support.command_line import Done, call

BOOK = the_book()
CASES = Path(__file__).parents[2] / "cases"

#: name: layout, the words, and the findings they report
_REPORTED: dict[str, tuple[str, str, tuple[str, ...]]] = {
    "heron": (
        "distributor_v8",
        "low at hot idle, fine on the road",
        ("low_hot_idle_good_speed",),
    ),
    "plover": ("skew_gear_six", "needle dances", ("needle_flickers",)),
    "skua": ("tractor_diesel", "gauge fell to nothing in the field", ("gauge_reads_zero",)),
    "knot": ("dry_sump_race", "drops in every long bend", ("falls_in_a_manoeuvre",)),
    "gannet": ("marine_diesel", "never what it was since the winter", ("declined_over_months",)),
    "scoter": ("marine_diesel", "oil smells of fuel", ("fuel_smell", "gauge_reads_low")),
    "dipper": ("turbo_ohc_four", "lamp stays on for ten seconds", ("slow_after_standing",)),
    "smew": ("unknown", "no pressure to speak of", ()),
}


def text(name: str) -> str:
    """The case file of one complaint."""
    layout, words, reported = _REPORTED[name]
    job: Fields = {"title": name.capitalize(), "complaint": words}
    tables = [table_text("[job]", job), table_text("[engine]", {"layout": layout})]
    for number, what in enumerate(reported, 1):
        fields: Fields = {"no": number, "what": what, "state": "present"}
        tables.append(table_text("[[finding]]", fields))
    return "schema = 1\n\n" + "\n".join(tables)


COMPLAINTS = {name: text(name) for name in _REPORTED}
#: each with the way to its card, so that it can be read in any folder
INVENTED = {
    path.stem: path.read_text("utf-8").replace('card = "', f'card = "{CASES.as_posix()}/')
    for path in sorted(CASES.glob("*.toml"))
}
#: some of them as first reported, before anybody looked
BEGUN = {
    f"{n}_begun": "\n# ---".join(INVENTED[n].split("\n# ---")[:2])
    for n in ("crane_truck", "dunlin", "tern", "winch")
}
JOBS = {**COMPLAINTS, **{f"{n}_whole": t for n, t in INVENTED.items()}, **BEGUN}


OPEN = [*COMPLAINTS, *BEGUN]  #: jobs with something left to look at


@cache
def _folder() -> Path:
    return Path(tempfile.mkdtemp())


def path_of(name: str) -> Path:
    """A file of one job, to be read only."""
    path = _folder() / f"{name}.toml"
    if not path.exists():
        path.write_text(JOBS[name], "utf-8")
    return path


@cache
def teardown(name: str, *options: str) -> Done:
    """What the command prints of one job; each is asked once in a test run."""
    return call("teardown", path_of(name), "--all", *options)


@cache
def plan(name: str, *options: str) -> Any:
    """The plan as data."""
    done = teardown(name, *options, "--json")
    assert (done.code, done.err) == (0, "")
    return json.loads(done.out)


def checks(data: Any) -> Iterator[tuple[Any, Inspection]]:
    """Every check of a plan with its stage."""
    for stage in data["stages"]:
        for check in stage["checks"]:
            yield stage, BOOK.inspections[check["inspection"]]


@cache
def tree(name: str) -> dict[Access, Opening]:
    """What opens what on the engine of a job."""
    features = load(path_of(name), BOOK).features
    return openings_for(lambda f: features.get(f) is State.PRESENT)


def flat(text: str) -> str:
    """The words of a text, wherever its lines end."""
    return " ".join(text.split())


def blocks(text: str) -> list[str]:
    """The stages of a plan's text."""
    return re.split(r"^Stage (?=\d+ of \d+: )", text, flags=re.MULTILINE)[1:]


def inferred(ranking: list[Any], evidence: bool = True) -> Any:
    """An inference with one piece of evidence or none, whose causes have no fault in common."""
    seen, book = {"x": 1} if evidence else {}, SimpleNamespace(faults={})
    return SimpleNamespace(evidence=seen, ranking=ranking, book=book)
