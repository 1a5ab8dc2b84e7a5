"""Short reports as people write them: every fact a sentence states, and nothing else."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

#: sentences with everything that is read out of them
READ: dict[str, list[str]] = {
    "the oil lamp would not go out": ["behaviour lamp"],
    "spun it over and it would not build oil pressure": ["behaviour none"],
    "the engine was frozen solid": ["finding engine_seized present"],
    "boiled over on the pass, needle in the red": ["finding engine_ran_hot present"],
    "oil pressure down in the red at idle": ["behaviour low idle"],
    "oil pressure reads about fifteen lower since the overhaul": [
        "behaviour low work",
        "earlier whole_engine rebuilt straight before",
    ],
    "hot pressure is a quarter of what it was": ["behaviour low hot"],
    "pressure 15 psi below last summer": ["behaviour low"],
    "no oil pressure to speak of": ["behaviour low"],
    "never made any pressure after the overhaul": [
        "behaviour none work",
        "earlier whole_engine rebuilt straight before",
    ],
    "the pressure goes at the end of each lap": ["behaviour lost returns under the same condition"],
    "pressure well above the handbook figure": ["behaviour high"],
    "needle goes twitchy at 4000 rpm": ["behaviour unsteady at speed"],
    "the oil light lingers after a cold start": ["behaviour slow to build at start, cold"],
    "gauge creeps up over half a minute": ["behaviour slow to build"],
    "smoke first, then the oil light": ["behaviour lamp"],
    "oil alarm only when heeled": ["behaviour lamp seaway", "finding raced_or_heeled present"],
    "it shut down on low oil": ["behaviour trips"],
    "pressure is 55 at first, after ten minutes it is at 20": [
        "reading 55 psi at start",
        "reading 20 psi after minutes of running",
    ],
    "no better than 8 psi at idle": ["reading never above 8 psi idle"],
    "the oil clock says 30": ["reading 30 psi"],
    "put in a new pump, it gives 15 psi less than before": [
        "behaviour low",
        "earlier oil_pump renewed",
    ],
    "the pressure drops in left handers, full back on the straight": [
        "behaviour low bends at speed",
    ],
    "low pressure since the fresh bottom end": [
        "behaviour low work",
        "earlier bearings renewed straight before",
    ],
    "no pressure since the new cam went in": [
        "behaviour none work",
        "earlier camshaft renewed straight before",
    ],
    "pressure is poor since the head went back on": [
        "behaviour low work",
        "earlier cylinder_head taken off and refitted straight before",
    ],
    "timing cover off for a seal, now the light stays on": [
        "behaviour lamp work constant",
        "earlier timing taken off and refitted straight before",
    ],
    "block is back from the machine shop, 5 psi at idle": [
        "earlier machine_shop",
        "reading 5 psi idle",
    ],
    "crank and block were hot-tanked, no pressure": ["behaviour none", "earlier machine_shop"],
    "the white metal was re-poured last winter": ["earlier bearings 1 years"],
    "I had the idle turned down": ["earlier fuel_system adjusted"],
    "low pressure after a vacuum pump was fitted": [
        "behaviour low work",
        "earlier accessory renewed straight before",
    ],
    "put the engine together myself": ["earlier whole_engine rebuilt"],
    "since the engine swap oil pressure is low": [
        "behaviour low work",
        "earlier other_engine renewed straight before",
    ],
    "pressure was poor. changed the filter and the noise is gone": [
        "behaviour low",
        "trial new_filter cured",
    ],
}
#: sentences with near misses, and what little of them is read
NEAR: dict[str, list[str]] = {
    "I would not go out with that lamp on": [],
    "the lamp would not go out if the pump was new": [],
    "no pressure at start at -15": ["behaviour none at start"],
    "the pump is new, started on a freezing morning": [
        "earlier oil_pump renewed",
        "finding stood_in_frost present",
        "finding oil_very_cold present",
    ],
    "the filter came off on a cold start": ["finding filter_found_loose present"],
    "after switch off the level is hard to read": [],
    "servicing was patchy. the oil lamp comes on at speed": [
        "behaviour lamp at speed",
        "finding service_neglected present",
    ],
    "the new pump came from a parts shop": ["earlier oil_pump renewed"],
    "a radiator hose burst": [],
    "the pressure goes to 60 and holds": ["reading 60 psi"],
    "the lab says 20 per cent thinner": [],
    "pressure drops in the bends and goes back up when I stop and wait": ["behaviour low bends"],
    "the idle is down to 500 rpm": ["finding idle_speed_counted 500 rpm"],
    "then the light for the boot": [],
    "the pump went on squealing": ["behaviour squeak"],
    "took the sump off for a look": [],
    "it takes long to build pressure since the new filter": [
        "behaviour slow to build oil change",
        "earlier filter_change renewed straight before",
    ],
    "switched off for lunch": [],
    "the vacuum pump is as it was": [],
}


@pytest.mark.parametrize("text", READ)
def test_a_short_report_is_read(text: str) -> None:
    """Everything it states, and nothing else."""
    assert sorted(f.short for f in read(text, the_book()).facts) == sorted(READ[text])


@pytest.mark.parametrize("text", NEAR)
def test_a_near_miss_is_not_read(text: str) -> None:
    """Words that mean another thing here."""
    assert sorted(f.short for f in read(text, the_book()).facts) == sorted(NEAR[text])
