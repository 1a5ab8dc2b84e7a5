"""Sentences of owners' accounts: what is read from each, and what must not be."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

BOOK = the_book()
#: each with all that is read from it
EXACTLY: dict[str, list[str]] = {
    # turns of phrase
    "I took hold of the crank and gave it a tug": [],
    "then we went twice around the block": [],
    "there was a bang that shook the windows": ["finding engine_banged_or_shook present"],
    "the system cuts four cylinders at cruise": [],
    "I changed down from 4th to 3rd, pressure stayed low": ["behaviour low"],
    # denials that deny nothing
    "no leaks apart from a drip at the sump gasket": ["finding seal_or_gasket_wet present"],
    "no metal in the filter except some bits of copper": ["finding copper_flakes present"],
    "I had no clue that there was a big oil leak": ["finding oil_loss_fast present"],
    "never realised the screen was blocked": [],
    "there is a relief valve so it couldn't blow out the gaskets": [],
    "no metal in the filter except the usual fine paste": [
        "finding fine_dust_only present",
        "finding metal_in_filter absent",
    ],
    # oil poured in, and gauges looked at
    "the gallery plugs were out for cleaning": ["earlier machine_shop cleaned"],
    "I added a pint of oil": ["earlier oil_added renewed"],
    "There is a tap in the oil line": ["finding tank_tap present"],
    "It has a one way check valve in the oil supply line": ["finding tank_tap present"],
    "I switched to the second tank": [],
    "I checked the oil, empty": ["finding dipstick_dry present"],
    "dipped the oil and the engine was bone dry": ["finding dipstick_dry present"],
    # what was filled in, and what only sounds like trouble
    "I remembered a spot where I always kiss the road": [],
    "we could not find the problem, so we loaded up and headed home": [],
    "I could hear this thing bouncing off the floor": [],
    "I screwed on the new filter and dumped in seven quarts of oil": [
        "earlier oil_change renewed",
        "finding oil_overdue absent",
    ],
    "new filter and poured oil in": ["earlier filter_change renewed", "finding oil_overdue absent"],
    "filter poured oil everywhere": ["finding filter_seat_leaks present"],
    "I saw no evidence of a problem, the oil alarm stayed on": ["behaviour lamp constant"],
    "I started the engine and the gauge read fine": ["behaviour normal"],
    "oil pressure is low. He added 2 gallons of oil to the engine": [
        "behaviour low",
        "earlier oil_added renewed",
    ],
    "no oil reached the pressure gauge": ["behaviour none"],
    "low oil pressure, then a complete engine shutdown": [
        "behaviour low",
        "finding stopped_with_loss_of_power present",
    ],
    "the oil that came out was dirty and thick": ["finding sludge_seen present"],
    "the oil level seemed slightly elevated": ["finding level_slightly_high present"],
    "there was a chunk of aluminium on the undertray": ["finding sump_found_holed present"],
    "something hit the underside and the oil light came on": ["behaviour lamp a blow to the sump"],
    "low pressure at idle but good pressure at speed": [
        "behaviour low idle",
        "behaviour normal at speed",
    ],
    "can't remember putting the gallery plugs back in": ["finding plugs_not_counted present"],
    "There was a galley plug. No one could remember putting that one back": [
        "finding plugs_not_counted present"
    ],
    "No one could remember putting that one back": [],
    "pressure is good at start up but drops to zero": [
        "behaviour normal at start",
        "behaviour none",
    ],
    # questions
    "So this means I have got a bad sender?": [],
    # a thing of another kind
    "every few weeks the number 3 plug fouls": [],
    "the filter lies on its side and holds very little oil": [],
    "the petrol ran out of its tank and into the engine overnight": [],
    "the gauge is calibrated from 0 to 10": [],
    "the needle jumps past the highest mark on the gauge (80 psi)": ["behaviour unsteady"],
    "The engine was serviced 3 months ago. It shows a higher head temperature than the other": [
        "earlier oil_change renewed 3 months"
    ],
    "No pressure at all. It has not been on the road for 15 years": [
        "behaviour none",
        "finding stood_long present",
    ],
    "I am running SAE 40W oil": ["oil SAE 40"],
    "drained it so that I could drop the sump": [],
    "three gauges, all reading the same": ["trial other_gauge no difference"],
    "the pump was refilled so that I could drive it home": [],
    "took the line off at the block and no oil at all came": [],
    "I fished with a magnet to get the piece out": [],
    "white smoke from the exhaust, nothing else": ["finding white_plume present"],
    "compression 140, 138, 142 and 90": [],
    "I have a sender with a red light in the dash": [],
    "there was a small change in one of the gauges": [],
    "oil level was 3/4 of the way up the stick, needle at the 1/2 mark, light is on": [
        "behaviour lamp"
    ],
    "low pressure once the engine is up to normal running temperature": ["behaviour low hot"],
    "starts at once even in the coldest of winters": [],
    "the oil levels are as per the manual": ["finding level_correct present"],
    "the car was parked up and has not been on the road for 9 years": [
        "finding in_a_vehicle present",
        "finding stood_long present",
    ],
}
#: each with what must be among what is read
READ: dict[str, str] = {
    "the gallery plugs were pulled by the machine shop and the builder replaced those": (
        "finding plugs_fitted_by_others present"
    ),
    "nobody could remember putting the plug back": "finding plugs_not_counted present",
    "a drip at the curly bit of the oil pipe up to the oil pressure gauge": (
        "finding gauge_line_leaking present"
    ),
    "oil runs out while it idles, no leak with the engine off": (
        "finding leaks_only_running present"
    ),
    "I drained the oil and poured in five litres": "earlier oil_change renewed",
    "we have just paid for a full regular service": "earlier oil_change renewed straight before",
    "added a quart of oil, no change": "trial topped_up no difference",
    "pulled the dipstick and it had milky sludge on it": "finding oil_milky present",
    "I pulled the dipstick. It has creamy goo on it.": "finding oil_milky present",
    "creamy film under the filler cap only": "finding cream_in_filler_only present",
    "the dipstick tube is where the gases come out": "finding blow_by_high present",
    "neither gauge showed any pressure": "behaviour none",
    "packed the pump with grease and still couldn't get a reading": "trial pump_primed no difference",
    "I let it idle for ten minutes before I noticed the oil light": (
        "finding ran_on_without_pressure present"
    ),
    "if I rev the engine the oil light goes out": "finding rises_just_off_idle present",
    "the pressure only drops in long right hand corners": "behaviour low bends",
    "pressure sometimes drops when I brake": "behaviour low braking comes and goes",
    "the gauge immediately falls at idle": "behaviour low idle",
    "at a stop light it falls to 5": "behaviour low idle",
    "the red stop light came on": "behaviour lamp idle",
    "oil is pushing out of the breather": "finding blow_by_high present",
    "the highest reading on the gauge is 20 psi": "reading 20 psi",
    "smoke pours from under the truck near the exhaust": "finding burning_oil_smoke present",
    "no oil at all came out of the drain": "finding dipstick_dry present",
    "it took 3 quarts to bring it up to the mark": "finding dipstick_low present",
    "pressure is about 4 to 4.5-bar at 3000-rpm": "reading 4 to 4.5 bar 3000 rpm",
    "low pressure when it is up to normal running temperature and idling": "behaviour low idle, hot",
    "revved it so I could see the gauge drop to zero": "behaviour none",
    "no pressure when throttling up either": "behaviour none at speed",
    "in some turns the alarm triggers": "behaviour lamp bends",
    "looked at the dipstick, it was down a bit over a quart": "finding dipstick_low present",
    "it seems the sender wire is grounded somewhere": "finding wire_open_or_shorted present",
    "thicker oil raised the pressure only a few pounds": "trial thicker_oil helped",
    "I grabbed the crank and there was far too much play": "finding crank_moves_endwise present",
    "the pressure is normal when it is up to running temperature": "behaviour normal hot",
    "the light flickers. It only does so in left hand bends": "behaviour unsteady bends",
    "it took 15 seconds without oil pressure at start": "behaviour slow to build at start",
    "a magnet picked up slivers in the sump": "finding magnetic_metal present",
    "started it without oil": "finding not_refilled present",
    "oil light went on and I carried on for 3 miles": "finding ran_on_without_pressure present",
    "no leaks at all": "finding oil_seen_outside absent",
    "it is an old harbour tug": "finding in_a_boat present",
    "the gallery plug behind the cam gear is missing": "finding gallery_plug_found_missing present",
}
#: each with what must not be
NOT_READ: dict[str, str] = {
    "I started the engine and the gauges all read OK": "trial",
    "screwed on the new filter and dumped in seven quarts of oil": "finding oil_loss_fast",
    "drained the oil and put in seven quarts of oil": "finding drained_volume",
    "a filter and a quart of oil went in": "finding oil_loss_fast",
    "it broke at the centre bearing, completely starved of oil": "finding dipstick_dry",
    "a mile after pulling onto the highway it stalled": "finding worked_hard",
    "pressure went up all at once": "finding fell_suddenly",
    "it has a valve against wet sumping": "finding wet_sumps",
    "the engine was bone dry when I dipped it": "finding oil_seen_outside",
    "it runs out while it idles, no leak with the engine off": "finding oil_seen_outside absent",
    "I pulled the dipstick and there was milky sludge on it": "finding cream_in_filler_only present",
    "the pressure drops to nothing. It goes round curves on rails": "behaviour none bends",
    "changed the oil, let it idle for a while, it was slightly better": (
        "trial right_oil cured for a while"
    ),
    "the light went on while idling": "finding ran_on_without_pressure present",
    "the engine ran 15 seconds without oil": "behaviour slow to build",
    "it idled five minutes before I saw that the gauge was at zero": "finding ten_seconds_or_more present",
    "the gauge sat at the 1/4 mark, pressure is low": "reading 4 psi",
    "when I got back the running pressure was 50": "finding ran_on_without_pressure present",
    "no pressure when throttling up": "behaviour none slowing to idle",
    "pressure is about 4 to 4.5-bar": "reading 4 to 4.5 psi",
    "this engine felt hotter than the good one, its pressure was lower": "behaviour normal",
    "at a stop light the pressure falls": "behaviour lamp",
    "at 3000 rpm it holds 45 but at a stop light it falls to 5": "finding falls_as_revs_rise present",
    "the relief plunger was stuck in its bore": "earlier relief_valve",
    "the dipstick tube blows gas": "finding pickup_fell_off present",
    "no knocks, even with the gauge at zero": "behaviour none wiring touched",
}


def said(text: str) -> set[str]:
    return {f.short for f in read(text, BOOK).facts}


@pytest.mark.parametrize("text", EXACTLY, ids=lambda t: t[:40])
def test_just_that_is_read(text: str) -> None:
    assert said(text) == set(EXACTLY[text])


@pytest.mark.parametrize("text", READ, ids=lambda t: t[:40])
def test_it_is_read(text: str) -> None:
    assert READ[text] in said(text)


@pytest.mark.parametrize("text", NOT_READ, ids=lambda t: t[:40])
def test_it_is_not_read(text: str) -> None:
    assert not any(short.startswith(NOT_READ[text]) for short in said(text))
