"""One whole job in the commands a person types; ``python -m tests.support.full_job FILE`` writes it again.

An invented harbour launch of the island boatyard, from the first flicker to the closed job. What
it comes to is kept as ``cases/gannet.toml``; the test types everything again and compares.
"""

from __future__ import annotations

import sys
import tomllib
from collections.abc import Sequence
from pathlib import Path
from typing import NamedTuple

from tests.support.command_line import Done, call


class Step(NamedTuple):
    """A command, what is typed at its prompts, and what must show."""

    words: tuple[str, ...]
    typed: tuple[str, ...] = ()
    code: int = 0
    shows: tuple[str, ...] = ()


DAY, LATER, LAST = "2026-06-02", "2026-06-05", "2026-06-09"
CASE = "CASE"  #: stands for the case file in a step
SHEET = "SHEET"  #: stands for a sheet to fill in

FLICKER = (
    Step(
        ("ask", CASE, "--by", "Maud", "--questions", "0"),
        (
            "4",
            "Gannet, harbour launch, petrol V8. Needle wavers under way since the pump was renewed",
            "", "d", "1", "d", "d", "d", "1",
        ),
    ),
    Step(
        (
            "record", CASE, "direct_gauge_unsteady=yes", "level_correct=yes", "dipstick_low=no",
            "foam_on_stick=yes", "--reading", "700 rpm 88 C 14 psi direct",
            "--reading", "2500 rpm 90 C 38 psi direct", "--when", DAY, "--by", "Maud",
        ),
        shows=("saved in",),
    ),
    Step(("review", CASE), shows=("Next: ",)),
    Step(("survey", CASE), shows=("700 rpm",)),
    Step(("teardown", CASE), shows=("Now, stage 1", "caution:", "found by then")),
    Step(
        ("record", CASE, "overfill_steadies_it=yes", "--when", DAY, "--by", "Maud"),
        shows=("--since",),
    ),
    Step(("teardown", CASE, "--since", "24"), shows=("What changed since entry 24",)),
)  # fmt: skip
OPENED = (
    Step(
        (
            "record", CASE, "pickup_tube_rocks=yes", "pickup_fixing_loose=yes", "metal_in_pan=no",
            "screen_blocked=no", "pickup_gap=9 mm", "shells_wiped=no",
            "main_clearance=0.0028 in", "pump_end_clearance=0.003 in",
            "--when", LATER, "--by", "Isak",
        ),
    ),
    Step(("teardown", CASE), shows=("oil pickup tube or its bolts loose", "Before you put anything together")),
    Step(("budget", CASE), shows=("Pressure budget: Gannet",)),
    Step(("forecast", CASE), shows=("rpm",)),
    Step(("close", CASE, "--how", "seen"), code=2, shows=("still open", "sign-off not finished")),
    Step(
        (
            "record", CASE, "windage_tray=yes", "pressed_pickup=yes", "piston_jets=no",
            "--when", LATER, "--by", "Isak",
        ),
    ),
)  # fmt: skip
#: values a mechanic wrote into the sheet; everything that is not measured is done
MEASURED = {
    "length": "0.002 in",
    "pickup_gap_fitted": "3/8 in",
    "pump_cover_screws_torqued": "8 lb-ft",
    "pump_bolts_torqued": "30 lb-ft",
    "caps_torqued": "70 lb-ft",
    "rod_caps_torqued": "45 lb-ft",
    "tray_bolts_torqued": "15 in-lb",
    "tray_clears_crank": "0.080 in",
    "rods_clear_block_and_sump": "0.080 in",
    "main_clearance_fitted": "0.0022 in",
    "rod_clearance_fitted": "0.0022 in",
    "crank_end_float_set": "0.006 in",
    "journals_round": "0.0002 in",
    "journals_smooth": "0.00001 in",
    "main_bores_in_line": "0.0005 in",
    "neighbour_bores_in_line": "0.0003 in",
    "lifter_bore_taper_checked": "0.0001 in",
    "cam_clearance_fitted": "0.003 in",
    "pickup_bolt_torqued": "12 N·m",
    "sump_bolts_torqued": "9 lb-ft",
    "sump_flange_flat": "0.003 in",
    "priming_pressure_timed": "40 s",
    "priming_pressure_reached": "45 psi",
    "cranked_to_pressure": "45 psi",
}
LATE = ("first start", "run-in")  #: phases that come after the first readings
AFTER = {
    "first_pressure_timed": "4 s",
    "pressure_cold_watched": "60 psi",
    "pressure_hot_at_2000": "52 psi",
    "pressure_at_hot_idle": "36 psi",
    "oil_heat_watched": "92 C",
    "turbo_idled": "60 s",
    "heat_cycles_done": "3",
    "first_oil_change_done": "1 h",
    "panel_gauge_agrees": "3 psi",
}
STARTED = (
    Step(("signoff", CASE, "--start"), shows=("The gauge should show", "shut down")),
    Step(
        (
            "record", CASE, "--reading", "700 rpm 22 C 44 psi direct start",
            "--reading", "700 rpm 88 C 36 psi direct start",
            "--reading", "2000 rpm 90 C 52 psi direct start", "--when", LAST, "--by", "Isak",
        ),
    ),
    Step(("signoff", CASE, "--start"), shows=("as predicted",)),
)  # fmt: skip
CLOSED = (
    Step(
        (
            "close", CASE, "--how", "tube rocked by hand, both bracket bolts finger-tight",
            "--remedy", "new tube, bolted bracket, tacked with the pump stripped",
            "--minutes", "560 min", "--by", "Isak",
            "--reason", "no figure of the circuit stands for air drawn in at a loose tube",
        ),
        shows=("closed: oil pickup tube or its bolts loose",),
    ),
    Step(("history", "."), shows=("pickup_tube_loose",)),
)  # fmt: skip


def typed(step: Step, case: Path, sheet: Path) -> Done:
    """The step done on a case."""
    names = {CASE: str(case), SHEET: str(sheet), ".": str(case.parent)}
    words = [names.get(word, word) for word in step.words]
    return call(*words, answers="".join(f"{line}\n" for line in step.typed))


def filled_in(case: Path, sheet: Path, values: dict[str, str], late: bool) -> Step:
    """The sign-off's blanks, filled in as a mechanic would; the step that records them."""
    from knowledge.book import the_book

    book = the_book()
    blanks = call("signoff", str(case), "--blanks").out
    lines = []
    for line in blanks.splitlines():
        name = line.partition(" =")[0]
        task = book.tasks.get(name)
        if task is None or (task.phase.value in LATE) is not late:
            continue
        value = values.get(name, "done" if not task.dimension else values.get(task.dimension, ""))
        if not value:
            raise AssertionError(f"the mechanic has no value for {name} ({task.dimension})")
        lines.append(f'{name} = "{value}"')
    sheet.write_text("\n".join(lines) + "\n", "utf-8")
    day = LAST if late else LATER
    return Step(("record", CASE, "--sheet", SHEET, "--when", day, "--by", "Isak"))


def whole_job(case: Path) -> list[tuple[Step, Done]]:
    """Everything typed, in order, with what came of it."""
    sheet = case.parent / "sheets" / "signoff.toml"
    sheet.parent.mkdir(exist_ok=True)
    done = [(step, typed(step, case, sheet)) for step in (*FLICKER, *OPENED)]
    for late, values, then in ((False, MEASURED, STARTED), (True, AFTER, CLOSED)):
        step = filled_in(case, sheet, values, late)
        done.append((step, typed(step, case, sheet)))
        done += [(step, typed(step, case, sheet)) for step in then]
    return done


def entries(text: str) -> dict[str, object]:
    """A case without the days on which it was typed, and without what makes it a test."""
    raw = tomllib.loads(text)
    raw.pop("expect", None)
    raw["job"].pop("opened", None)
    for each in raw.values():
        for entry in each if isinstance(each, list) else []:
            entry.pop("when", None)
            entry.pop("planned", None)  # moves with every change of the planner
    return raw


def main(arguments: Sequence[str]) -> None:
    """Write the job into a file that is not there yet."""
    for step, done in whole_job(Path(arguments[0])):
        print("$ diagnose", *step.words)
        print(done.out[-600:], done.err)


if __name__ == "__main__":
    main(sys.argv[1:])
