"""Jobs that have only begun: what a customer said, over different layouts; for tests of the plan."""

from __future__ import annotations

import tempfile
from functools import cache
from pathlib import Path

from diagnose.casefile.writing import Fields, table_text
from tests.command_line import Done, call

CASES = Path(__file__).parent.parent / "cases"

#: name: layout, the words, and what is told of by them
_TOLD: dict[str, tuple[str, str, tuple[str, ...]]] = {
    "heron": (
        "distributor_v8",
        "low at hot idle, fine on the road",
        ("low_hot_idle_good_speed",),
    ),
    "plover": ("skew_gear_six", "needle dances", ("needle_flickers",)),
    "skua": ("tractor_diesel", "gauge fell to nothing in the field", ("gauge_reads_zero",)),
    "knot": ("dry_sump_race", "drops in every long bend", ("falls_in_a_manoeuvre",)),
    "gannet": ("marine_diesel", "never what it was since the winter", ("declined_over_months",)),
    "dipper": ("turbo_ohc_four", "lamp stays on for ten seconds", ("slow_after_standing",)),
    "smew": ("unknown", "no pressure to speak of", ()),
}


def text(name: str) -> str:
    """The case file of one complaint."""
    layout, words, told = _TOLD[name]
    job: Fields = {"title": name.capitalize(), "complaint": words}
    tables = [table_text("[job]", job), table_text("[engine]", {"layout": layout})]
    for number, what in enumerate(told, 1):
        fields: Fields = {"no": number, "what": what, "state": "present"}
        tables.append(table_text("[[finding]]", fields))
    return "schema = 1\n\n" + "\n".join(tables)


COMPLAINTS = {name: text(name) for name in _TOLD}
INVENTED = {path.stem: path.read_text("utf-8") for path in sorted(CASES.glob("*.toml"))}
#: some of them as far as they were told, before anybody looked
BEGUN = {
    f"{n}_begun": "\n# ---".join(INVENTED[n].split("\n# ---")[:2])
    for n in ("crane_truck", "dunlin", "tern", "winch")
}
JOBS = {**COMPLAINTS, **INVENTED, **BEGUN}


@cache
def _folder() -> Path:
    return Path(tempfile.mkdtemp())


@cache
def teardown(name: str, *options: str) -> Done:
    """What the command prints of one job; each is asked once in a test run."""
    path = _folder() / f"{name}.toml"
    path.write_text(JOBS[name], "utf-8")
    return call("teardown", path, *options)
