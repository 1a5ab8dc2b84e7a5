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
    "the pressure goes at the end of each lap": [
        "behaviour lost returns under the same condition",
        "finding raced_or_heeled present",
    ],
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
    "I had the idle turned down": [
        "earlier fuel_system adjusted",
        "finding idle_below_spec present",
    ],
    "low pressure after a vacuum pump was fitted": [
        "behaviour low work",
        "earlier accessory renewed straight before",
    ],
    "put the engine together myself": ["earlier whole_engine rebuilt"],
    "small V8, fades at high revs": ["behaviour falling at speed", "layout distributor_v8"],
    "pressure comes and goes, no rhyme or reason": [
        "behaviour lost no pattern comes and goes",
        "finding no_pattern_to_it present",
    ],
    "hot at idle the pressure is half": ["behaviour low idle, hot"],
    "pressure is low. a new filter gave two good runs": [
        "behaviour low",
        "trial new_filter cured for a while",
    ],
    "low pressure from the day the new pump went in": [
        "behaviour low work",
        "earlier oil_pump renewed straight before",
    ],
    "gauge flutters at speed. an extra litre over full cured it": [
        "behaviour unsteady at speed",
        "finding overfill_steadies_it present",
        "trial overfilled cured",
    ],
    "needle wavers at speed. drained a quart out, no change": [
        "behaviour unsteady at speed",
        "trial drained_to_mark no difference",
    ],
    "a test gauge at the port reads 60 psi": ["reading 60 psi"],
    "low pressure after the rebuild of the pump": [
        "behaviour low work",
        "earlier oil_pump rebuilt straight before",
    ],
    "since the engine swap oil pressure is low": [
        "behaviour low work",
        "earlier other_engine renewed straight before",
    ],
    "pressure was poor. changed the filter and the noise is gone": [
        "behaviour low",
        "trial new_filter cured",
    ],
    "the oil pressure is lower than normal": ["behaviour low"],
    "oil pressure at idle is lower than it was": ["behaviour low idle"],
    "needle nearly on the L": ["behaviour low"],
    "once it is hot the pressure goes down to nothing": ["behaviour none hot"],
    "it goes down to almost nothing": ["behaviour low"],
    "gauge says 55 cold, then she falls back to 5 or less": [
        "behaviour low",
        "reading 55 psi cold",
        "reading under 5 psi",
    ],
    "flying down the interstate at 75 the oil light came on": ["behaviour lamp at speed"],
    "cruising down the motorway the gauge sits at 45": ["reading 45 psi cruise"],
    "the pressure went back to a normal 25 or 30": ["reading 25 to 30 psi"],
    "oil pressure is low, 105,000 on the clock": [
        "behaviour low",
        "finding high_mileage present",
    ],
    "oil pressure fell, it was a litre and a half low": [
        "behaviour low",
        "finding dipstick_low present",
    ],
    "my brother left me his car, the oil pressure is low": [
        "behaviour low",
        "finding in_a_vehicle present",
    ],
    "the oil light came on. it is out now and stays out": ["behaviour lamp recovered by itself"],
    "took it in for an oil change, then the light came on. All well now.": [
        "behaviour lamp",
        "earlier oil_change renewed",
    ],
    "new filter, started it up and the gauge never moved": [
        "behaviour none at start",
        "earlier filter_change renewed straight before",
    ],
    "ran over a rock and then the oil light came on": ["behaviour lamp a blow to the sump"],
    "oil lite flickers wen hot, goes off soon as i touch the gas": [
        "behaviour unsteady hot",
        "behaviour normal off idle",
        "finding rises_just_off_idle present",
    ],
    "the alarm goes off as soon as I touch the throttle": ["behaviour lamp off idle"],
    "tac tac tac when cold": ["behaviour ticking cold"],
    "it has started flashing the oil light at tickover": ["behaviour unsteady idle"],
    "the oil light has been on for weeks": ["behaviour lamp"],
    "pressure fell, it recovered on the straight": ["behaviour low recovered by itself at speed"],
    "the pressure just sort of faded away over about five minutes": [
        "behaviour falling after minutes of running",
    ],
    "the pressure is non-existent at idle": ["behaviour none idle"],
    "it went into limp mode": ["behaviour lost power"],
    "it sounds like a diesel": ["behaviour ticking"],
    "sounds like a bag of spanners": ["behaviour rattle"],
    "running 20/50": ["oil 20W-50"],
    "pressure has been falling for two years": ["behaviour low gradual"],
    "the needle on my straight eight normally stands at 40, it has fallen to 20": [
        "behaviour low",
        "reading 20 psi",
    ],
    "no pressure on the gauge for about 20 seconds": ["behaviour slow to build"],
    "it drops to 10 in long right handers, oil pressure otherwise 40": [
        "behaviour low bends",
        "reading 10 psi bends",
        "reading 40 psi",
    ],
    "the oil pressure in my engine drops in the bends": ["behaviour low bends"],
    "it glowed faintly at the lights, no gauge just the oil light": [
        "behaviour unsteady idle",
        "finding lamp_only present",
    ],
    "30 at 2,000, 12 at idle": ["reading 30 psi 2000 rpm", "reading 12 psi idle"],
    "shimmed the spring with two washers and now I get 70 cold but hot idle hasn't budged": [
        "trial stiffer_spring no difference",
        "reading 70 psi cold",
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
    "the lab says 20 per cent thinner": ["finding lab_viscosity_low present"],
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
    "oil pressure is down and the cooler is icy to touch": ["behaviour low"],
    "drained the coolant": [],
    "since the rebuild gauge reads 20 psi": [
        "earlier whole_engine rebuilt straight before",
        "reading 20 psi",
    ],
    "took it out for a drive, the needle fell": ["behaviour low"],
    "the port engine reads 60 psi": [],
    "one good run at the hill climb last week": [],
    "dropped a bearing cap in at idle": [],
    "the bottom end is knock-free": [],
    "the vacuum pump is as it was": [],
    "tapped the gauge, no change in the pressure": ["finding tap_frees_needle absent"],
    "was doing 70, then the oil light came on": ["behaviour lamp at speed"],
    "my brother's car had low oil pressure": [],
    "a friend who had the same engine says his ran at 20 psi": [],
    "it may be low on oil, the dealer said": [],
    "wanted to be sure it had enough oil": [],
    "I'd like to know what it has done to the bearings": [],
    "the dash gauge sits below zero": ["behaviour none"],
    "the service light has been on for ages": [],
    "the particulate filter light came on": [],
    "the oil light is flickering, I got recovered home": ["behaviour unsteady"],
    "after an hour I came off at the services": [],
    "topping up the coolant": ["finding coolant_level_falling present"],
    "it's overdue a service": ["finding service_neglected present"],
    "I haven't changed the oil yet": [],
    "the red light came on, nothing on the dipstick": [
        "behaviour lamp",
        "finding dipstick_dry present",
    ],
}


@pytest.mark.parametrize("text", READ)
def test_a_short_report_is_read(text: str) -> None:
    """Everything it states, and nothing else."""
    assert sorted(f.short for f in read(text, the_book()).facts) == sorted(READ[text])


@pytest.mark.parametrize("text", NEAR)
def test_a_near_miss_is_not_read(text: str) -> None:
    """Words that mean another thing here."""
    assert sorted(f.short for f in read(text, the_book()).facts) == sorted(NEAR[text])
