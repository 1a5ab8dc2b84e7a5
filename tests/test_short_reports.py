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
    "pressure comes and goes, no rhyme or reason": ["behaviour lost no pattern comes and goes"],
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
        "earlier filter_change renewed",
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
    "30 at 2,000, 12 at idle": ["reading 30 psi 2000 rpm", "reading 12 psi idle"],
    "shimmed the spring with two washers and now I get 70 cold but hot idle hasn't budged": [
        "trial stiffer_spring no difference",
        "reading 70 psi cold",
    ],
}
#: findings put in a few words, and the one that each must be read as
FOUND: dict[str, str] = {
    "oil runs from the pad joint": "accessory_pad_wet present",
    "the tank goes low and the crankcase is full": "tank_empties_running present",
    "the crank pulley shifts when I press the clutch": "crank_moves_endwise present",
    "the sensor went behind the filter": "gauge_port_moved present",
    "plenty at the pump outlet, little at the far end": "good_at_pump_low_in_gallery present",
    "fine ahead of the filter, weak downstream": "filter_drop_high present",
    "a rod poked out of the crankcase": "rod_through_block present",
    "it nipped up and turned freely when cool": "locked_then_freed present",
    "it turns by hand with a tight spot": "hard_to_turn present",
    "the engine turns in jerks by hand": "hard_to_turn present",
    "black jelly in the filler neck": "sludge_seen present",
    "the samples show lead creeping up": "lead_high_alone present",
    "lab found potassium and sodium": "glycol_found present",
    "lab says the oil is sheared down": "lab_viscosity_low present",
    "analysis found no wear metals": "metals_normal present",
    "the drain interval was doubled": "oil_overdue present",
    "missed services for years": "service_neglected present",
    "swarf in the strainer last time": "debris_seen_before present",
    "the drain tap was half open": "drain_plug_found_loose present",
    "a pool of oil under the car": "oil_on_the_ground present",
    "no drips on the drive": "oil_on_the_ground absent",
    "the whole engine is soaked": "oil_seen_outside present",
    "dry on the outside": "oil_seen_outside absent",
    "it sprays oil only when it runs": "leaks_only_running present",
    "a streak of oil down the road": "oil_trail_behind present",
    "oil level off the bottom of the stick": "dipstick_dry present",
    "level has gone up": "level_risen present",
    "level and viscosity are correct": "level_correct present",
    "an extra litre over the mark steadies it": "overfill_steadies_it present",
    "heated the shed overnight and it was fine": "pressure_back_after_thaw present",
    "the last engine let go": "earlier_breakage present",
    "a chrome sump from a catalogue": "sump_or_pump_swapped present",
    "with an uprated oil pump": "high_volume_pump_fitted present",
    "ropes of sealant along the rail": "sealer_squeezed_out present",
    "the turbo feed hose is split": "turbo_line_leaks present",
    "the hoses are crossed over at the filter head": "remote_hoses_crossed present",
    "there is a bung where the sender was": "no_sender_fitted present",
    "panel shows the same fraction everywhere": "panel_half_or_double present",
    "the sump is full, the oil has flakes in it": "glitter_in_oil present",
    "it burns a pint every trip": "oil_used_fast present",
    "the shop filled it with 0W-20": "oil_grade_too_thin present",
    "a gerotor on the crank nose": "pump_on_crank_nose present",
    "the engine has an external pump": "pump_outside present",
    "the timing wheel has nylon teeth": "plastic_timing_gear present",
    "with a spin-on filter": "spin_on_filter present",
    "an oil-fed chain tensioner": "chain_tensioners present",
    "it has cam phasers": "cam_phasers present",
    "the belt runs in oil": "wet_belt present",
    "oil temp went into the red": "oil_temperature_high present",
    "the level is an inch over": "level_high present",
    "the tank drained into the crankcase while parked": "wet_sumps present",
    "crank end float is far too big": "crank_moves_endwise present",
    "a new set of gauges was put in": "instrument_just_changed present",
    "shorting out plug two softens the knock": "rap_dulled_by_cut_out present",
    "loses coolant every week": "coolant_level_falling present",
    "the tickover is set low": "idle_below_spec present",
    "lab found no fuel in the sample": "lab_fuel_high absent",
    "my wife noticed a trail of oil on the road": "oil_trail_behind present",
    "bought this van three weeks ago": "history_unknown present",
    "the dealer said the oil was low": "dipstick_low present",
    "I haven't dared drive it since": "ran_on_without_pressure absent",
    "the whole sump was on the road": "oil_loss_fast present",
    "oil is grey like milk": "oil_milky present",
    "it never gets up to temperature": "idles_long present",
    "I have been bad about oil changes": "service_neglected present",
    "it was well below add": "dipstick_low present",
    "there is no oil in the car": "dipstick_dry present",
    "under the cap of the oil is a white cream": "cream_in_filler_only present",
    "used a litre and a half in the 500 miles": "oil_used_fast present",
    "dipstick came out clean": "dipstick_dry present",
    "dipstick came out and sprayed oil": "dipstick_pushed_out present",
    "oil hasn't been changed in 15,000 miles": "oil_overdue present",
    "serviced every year without fail": "service_neglected absent",
    "the oil is milky, 42,000 miles, serviced on time": "high_mileage absent",
    "checked the oil, full": "level_correct present",
    "checked the dipstick and it's about halfway": "level_correct present",
    "it's been off the road for six years": "stood_long present",
    "bought it off a bloke in the pub": "history_unknown present",
    "came to a halt on the road": "stopped_with_loss_of_power present",
    "pulled into a lay-by and switched off": "ran_on_without_pressure absent",
    "I didn't get the old filter gasket off": "filter_misfitted present",
}
#: sentences with near misses, and the finding that none of them is
NOT_FOUND: dict[str, str] = {
    "the filter pad is dry": "accessory_pad_wet",
    "the header tank is full": "tank_empties_running",
    "the crank does not move endwise": "crank_moves_endwise present",
    "the crank moves freely by hand": "crank_moves_endwise",
    "the relief valve seized and freed itself": "locked_then_freed",
    "the adjuster is stiff in places": "hard_to_turn",
    "it turns by hand with tight places": "engine_seized",
    "the skipper reports water over the bow": "water_in_sample",
    "the pump key sheared, oil everywhere": "lab_viscosity_low",
    "fitted a new drain plug": "drain_plug_found_loose",
    "oil runs off the stick like water": "dipstick_dry",
    "filled it up to the level": "level_risen",
    "a blob of sealant in the strainer": "sealer_squeezed_out",
    "a new filter": "spin_on_filter",
    "oil squirting from the pump": "piston_jets",
    "the belt is dry": "wet_belt",
    "a red oil can lights up": "oil_temperature_high",
    "it burns a lot of fuel": "oil_used_fast",
    "antifreeze down two pints": "dipstick_low",
    "the fuel tank drained while parked": "wet_sumps",
    "end float is within limits": "crank_moves_endwise present",
    "a big bilge pump": "high_volume_pump_fitted",
    "overfilling it does not help": "overfill_steadies_it present",
    "lost pressure and coolant is fine": "coolant_level_falling",
    "drove a few miles": "high_mileage",
    "the new bike has low oil pressure": "high_mileage",
    "it slowly dropped over the next few miles": "only_small_seeps",
    "topping the radiator up every other day": "oil_used_fast",
    "low engine oil pressure": "dipstick_low",
    "split it and the whole sump came off": "sump_found_holed",
    "it was creeping below 40": "stood_in_frost",
    "when I come to a halt the lamp lights up": "stopped_with_loss_of_power",
    "no leaks I can see on the drive": "stopped_with_loss_of_power",
    "the lamp winks when I stop at junctions": "ran_on_without_pressure",
    "the display said stop engine": "ran_on_without_pressure",
    "the oil's bang on the max line": "engine_banged_or_shook",
    "my right boot was covered in oil": "level_correct",
    "left a trail of oil all the way up the road": "oil_temperature_high",
    "smell of burning oil in the cabin": "oil_behind_panel",
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
    "it may be low on oil, the dealer said": [],
    "wanted to be sure it had enough oil": [],
    "I'd like to know what it has done to the bearings": [],
    "the dash gauge sits below zero": ["behaviour none"],
    "the service light has been on for ages": [],
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


@pytest.mark.parametrize("text", FOUND)
def test_a_finding_in_a_few_words(text: str) -> None:
    """It is among what is read."""
    assert f"finding {FOUND[text]}" in {f.short for f in read(text, the_book()).facts}


@pytest.mark.parametrize("text", NOT_FOUND)
def test_words_of_a_finding_that_mean_another_thing(text: str) -> None:
    """It is not among what is read."""
    got = {f.short for f in read(text, the_book()).facts}
    assert not any(g.startswith(f"finding {NOT_FOUND[text]}") for g in got)
