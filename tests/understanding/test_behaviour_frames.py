"""What gauge, lamp and pressure do is read in many ways of saying it: things crossed with frames.

The lists are in ``data/behaviour_frames.toml``; a third of them was kept back.
"""

from __future__ import annotations

import random
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from itertools import product
from pathlib import Path
from typing import Any

import pytest

from tests.support.agreement import Outcome, outcome, total
from tests.support.readers import by_tell
from tests.support.stated_facts import from_states, in_tables

DATA = Path(__file__).parents[1] / "data" / "behaviour_frames.toml"
EACH = 4  #: things that a frame is crossed with
#: of these also much may be read that is not looked at here: what kind of engine, what was done
BESIDE = frozenset(
    [
        "normal",
        "in_a_vehicle",
        "in_a_boat",
        "in_a_tractor",
        "stationary",
        "electric_gauge",
        "lamp_only",
        "tilts",
        "engine_runs_normally",
        "hydraulic_lifters",
        "pushrod_engine",
        "oil_just_changed",
        "freshly_rebuilt",
        "just_worked_on",
        "stood_long",
        "raced_or_heeled",
        "worked_hard",
        "second_instrument_disagrees",
        "returns_the_same_way",
        "reading",
        "whole_engine",
        "oil_change",
        "cylinder_head",
        "sump_dented",
        "noise_with_pressure_loss",
        "hot_and_thin",
        "dipstick_low",
        "long_unchanged",
        "worse_in_the_wet",
        "needle_stuck_at_one_value",
        "more_than_it_can_make",
        "sank_while_running",
        "fell_suddenly",
        "changed_with_grade",
        "changed_with_oil_change",
        "no_pattern_to_it",
        "engine_banged_or_shook",
        "deep_knock_under_load",
        "rattle_of_unknown_place",
        "timing_cover_rattles",
        "bearing_knock",
        "pump_noise",
        "engine_ran_hot",
        "began_after_revving_hard",
        "grows_worse",
        "lamp",
        "sudden",
        "gradual",
        "once",
        "storage",
    ]
)
#: least share of facts read, and most facts read that nothing states, of those that are stated
BOUNDS = {False: (0.965, 0.015), True: (0.79, 0.06)}
Row = dict[str, Any]


@dataclass(frozen=True)
class Said:
    """A sentence, the facts it states, each in the ways it may be read, and what may be read besides."""

    text: str
    states: tuple[tuple[Row, ...], ...]
    may: frozenset[str]

    def read(self) -> Outcome:
        """How it is read, by the best of the ways."""
        facts = in_tables(by_tell(self.text))
        best = None
        for way in product(*self.states):
            one = outcome(facts, from_states(way), self.may)
            if best is None or one.all.found > best.all.found:
                best = one
            if best.all.found == best.all.stated:
                break
        assert best is not None
        return best


@cache
def rows(kind: str, kept_back: bool) -> tuple[Row, ...]:
    """The entries of one kind, of one part of the lists."""
    listed = tomllib.loads(DATA.read_text("utf-8"))[kind]
    return tuple(r for r in listed if r.get("kept_back", False) is kept_back)


def crossed(kept_back: bool) -> Iterator[Said]:
    """Each frame with some things."""
    chance = random.Random(1)
    for frame in rows("frame", kept_back):
        for _ in range(EACH):
            yield said(frame, kept_back, chance)


def said(frame: Row, kept_back: bool, chance: random.Random) -> Said:
    """A frame filled with things."""
    text, of = frame["text"], frame["of"]
    show, when, noise = (chance.choice(rows(k, kept_back)) for k in ("show", "when", "noise"))
    key = "sentence" if "{KS}" in text else "phrase"
    course = chance.choice([c for c in rows("course", kept_back) if key in c])
    subject = show["subject"]
    slots = {
        "S": f"{subject} {show['now']}",
        "P": f"{subject} {show['past']}",
        "I": f"{subject} {show['ing']}",
        "V": f"{subject} {show['plain']}",
        "N": show["note"],
        "C": when["phrase"],
        "K": course.get("phrase", ""),
        "KS": course.get("sentence", ""),
        "Z": noise["noun"],
        "ZC": noise["now"],
        "ZP": noise["past"],
    }
    during = when["during"] if "{C}" in text else [[]]
    of_noise = "z" in of and "s" not in of
    states = []
    if not of_noise:
        more: dict[str, bool | list[str]] = {"only": True} if "o" in of else {}
        more |= {"never": ["cold"]} if "n" in of else {}
        lamp = {"gauge": "lamp"} if {"light", "lamp"} & set(subject.split()) else {}
        courses = course["said"] if "k" in of else [{}]
        in_ways = product(show["shows"], during if {"s", "n"} & set(of) else [[]], courses)
        states.append(tuple({"shows": s, "during": d, **lamp, **more, **c} for s, d, c in in_ways))
    if "z" in of:
        when_heard = during if of_noise else [[]]
        states.append(
            tuple({"shows": s, "during": d} for s, d in product(noise["shows"], when_heard))
        )
    if "c" in of:
        states.append(({"shows": "normal", "during": ["cold"]},))
    if "h" in of:
        states.append(({"shows": "normal", "during": ["at speed"]},))
    may = BESIDE | set(when["may"]) | set(noise.get("may", ())) | set(course["may"]) | {"True"}
    may |= {d for each in during for d in each} if "z" in of else set()
    may |= {"returns under the same condition", "comes and goes"} if "k" not in of else set()
    return Said(
        text.format(**slots), tuple(states), frozenset(may - ({"True"} if "o" in of else set()))
    )


@pytest.mark.parametrize("kept_back", [False, True], ids=["developed on", "kept back"])
def test_what_shows_is_read_in_every_frame(kept_back: bool) -> None:
    """Nearly all that is stated is read, and little else."""
    read = total(s.read() for s in crossed(kept_back))
    least, most = BOUNDS[kept_back]
    assert read.all.found / read.all.stated >= least
    assert len(read.wrong) / read.all.stated <= most


def test_the_lists_are_long_enough() -> None:
    """Both parts have frames and things of every kind."""
    for kind, least in {"frame": 22, "show": 9, "when": 12, "course": 10, "noise": 5}.items():
        assert all(len(rows(kind, kept_back)) >= least for kept_back in (False, True)), kind
