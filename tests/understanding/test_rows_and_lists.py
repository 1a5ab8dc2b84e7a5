"""Rows of figures over time, two engines side by side, and trials in lists: every fact, and nothing else."""

from __future__ import annotations

import pytest

from tests.support.readers import by_tell
from tests.support.stated_facts import in_tables

#: pressures that fell one after another, of two engines, or without a unit
FIGURES: dict[str, list[str]] = {
    "oil pressure was 60 then 50 then 40 by the third day": [
        "behaviour: low (course ['worsening'])",
        "reading: 40 psi",
        "usual pressure: 60 psi",
    ],
    "oil pressure went 55, 48, 40, 32 over the season": [
        "behaviour: low (onset gradual)",
        "reading: 32 psi",
        "usual pressure: 55 psi",
    ],
    "oil gauge crept 40 then 30 then 20 in an hour of running": [
        "behaviour: falling",
        "reading: 20 psi (during ['late in a run'])",
    ],
    "oil pressure was 50 last season now 30 at 2500": [
        "reading: 30 psi (rpm 2500 rpm)",
        "usual pressure: 50 psi",
    ],
    "low oil pressure. it used to idle at 20 now 6": [
        "behaviour: low",
        "reading: 6 psi (rpm idle)",
        "usual pressure: 20 psi",
    ],
    "cold start 60, ten minutes later 40, after an hour 12": [
        "reading: 12 psi (during ['late in a run'])",
        "reading: 40 psi (during ['after minutes of running'])",
        "reading: 60 psi (oil cold)",
    ],
    "last week it showed 40 psi, today 10": [
        "reading: 10 psi",
        "usual pressure: 40 psi",
    ],
    "had 40 psi yesterday, today zero": [
        "behaviour: none",
    ],
    "the oil was changed today, 20 psi": [
        "reading: 20 psi",
        "earlier work: oil_change (done renewed)",
    ],
    "pressure 1 bar at 2000 rpm, 2.5 before": [
        "reading: 1 bar (rpm 2000 rpm)",
        "usual pressure: 2.5 bar",
    ],
    "oil pressure had been 45 all its life, now 20": [
        "reading: 20 psi",
        "usual pressure: 45 psi",
    ],
    "it held 45 psi for years. Now 20 at best": [
        "reading: at most 20 psi",
        "usual pressure: 45 psi",
    ],
    "it sat at 45 psi for years, now it reads 20": [
        "reading: 20 psi",
        "usual pressure: 45 psi",
    ],
    "by last fall 4 psi at hot idle": [
        "reading: 4 psi (oil hot, rpm idle)",
    ],
    "oil pressure 1.2 hot, 3.5 cold": [
        "reading: 1.2 bar (oil hot)",
        "reading: 3.5 bar (oil cold)",
    ],
    "tickover 0.8, 3.2 at 2000 on the gauge": [
        "reading: 0.8 bar (rpm idle)",
        "reading: 3.2 bar (rpm 2000 rpm)",
    ],
    "oil gauge 5.5 at hot idle, 40 cold": [
        "reading: 40 psi (oil cold)",
        "reading: 5.5 psi (oil hot, rpm idle)",
    ],
    "oil pressure 25 everywhere, idle or flat out": [
        "reading: 25 psi (rpm any speed)",
    ],
    "at 900 rpm the gauge says 12, at 1500 rpm 20, all hot": [
        "reading: 12 psi (rpm 900 rpm, oil hot)",
        "reading: 20 psi (rpm 1500 rpm, oil hot)",
    ],
    "oil pressure: starboard fine, port low, maybe 20 on the dash": [
        "behaviour: low",
        "feature: in_a_boat (state present)",
        "reading: about 20 psi",
    ],
    "stbd fine, port low on oil pressure": [
        "behaviour: low",
        "feature: in_a_boat (state present)",
    ],
    "starboard 45, port 20 psi at cruise": [
        "feature: in_a_boat (state present)",
        "reading: 20 psi (rpm cruise)",
    ],
    "oil gauge at 25 psi and the oil gauge never moved off it": [
        "reading: 25 psi",
    ],
    "oil gauge never moved off the peg": [
        "behaviour: none",
    ],
    "oil gauge needle in the red at idle": [
        "behaviour: low (during ['idle'])",
    ],
    "genset shuts off after 40 minutes on low oil pressure": [
        "behaviour: low",
        "behaviour: trips (during ['after minutes of running'])",
        "feature: stationary (state present)",
        "layout: generator_diesel",
    ],
    "mechanical gauge says 10 psi and the dash shows 9 psi": [
        "reading: 10 psi (gauge direct)",
        "reading: 9 psi",
    ],
    "two different gauges both say 8 psi": [
        "reading: 8 psi",
    ],
    "compression 150, 140, 130 and oil pressure 20": [
        "reading: 20 psi",
    ],
    "20 psi before it warms up, then 5 psi": [
        "reading: 20 psi (oil cold)",
        "reading: 5 psi",
    ],
    "oil pressure 15 psi less than before": [
        "behaviour: low",
    ],
    "light came on while cruising at 65": [
        "behaviour: lamp (during ['at speed'])",
    ],
    "40 psi cold and 10 hot, used to be 60 and 30": [
        "reading: 10 psi (oil hot)",
        "reading: 40 psi (oil cold)",
        "usual pressure: 30 psi",
        "usual pressure: 60 psi",
    ],
    "before: 45 psi. after: 20 psi": [
        "reading: 20 psi",
        "usual pressure: 45 psi",
    ],
    "engine had 60 psi new. It has 25 now": [
        "reading: 25 psi",
        "usual pressure: 60 psi",
    ],
    "12 volts at the gauge, 0 at the sender": [],
    "port engine good cold but 5 psi at hot idle": [
        "reading: 5 psi (oil hot, rpm idle)",
    ],
    "port engine fine until 3000 rpm then oil pressure drops": [
        "behaviour: low (during ['at speed'])",
    ],
    "starboard fine, the other reads 10 psi": [
        "feature: in_a_boat (state present)",
        "reading: 10 psi",
    ],
    "port good until hot, then 8 psi. starboard 40": [
        "behaviour: low (during ['hot'])",
        "feature: in_a_boat (state present)",
        "reading: 8 psi (oil hot)",
    ],
    "left engine ok. right engine has no oil pressure": [
        "behaviour: none",
    ],
    "oil pressure is fine until it gets hot": [
        "behaviour: low (during ['hot'])",
    ],
    "oil pressure is normal until 5000 rpm": [
        "behaviour: low (during ['at speed'])",
    ],
    "oil pressure was good until the oil change": [
        "earlier work: oil_change (done renewed, before straight before)",
    ],
}
#: trials in lists, and what was not done
TRIALS: dict[str, list[str]] = {
    "low oil pressure even after a new pump and a new sender": [
        "behaviour: low",
        "trial: new_pump (result no difference)",
        "trial: new_sender (result no difference)",
    ],
    "10 psi at idle. that's with a new pump, new relief and fresh 15w40": [
        "reading: 10 psi (rpm idle)",
        "trial: new_pump (result no difference)",
        "trial: new_relief_valve (result no difference)",
        "trial: right_oil (result no difference)",
    ],
    "low oil pressure. pump, sender and filter all new. Same": [
        "behaviour: low",
        "trial: new_filter (result no difference)",
        "trial: new_pump (result no difference)",
        "trial: new_sender (result no difference)",
    ],
    "low oil pressure. changed: oil, filter, sender, PRV. No luck with any": [
        "behaviour: low",
        "trial: new_filter (result no difference)",
        "trial: new_relief_valve (result no difference)",
        "trial: new_sender (result no difference)",
        "trial: right_oil (result no difference)",
    ],
    "low oil pressure. no change from any of these: pump, sender": [
        "behaviour: low",
        "trial: new_pump (result no difference)",
        "trial: new_sender (result no difference)",
    ],
    "low oil pressure. swapped the gauge: zero. swapped the pump: zero": [
        "behaviour: low",
        "behaviour: none",
        "trial: new_pump (result no difference)",
        "trial: other_gauge (result no difference)",
    ],
    "low oil pressure. new sender - nope. pump - nope": [
        "behaviour: low",
        "trial: new_pump (result no difference)",
        "trial: new_sender (result no difference)",
    ],
    "15 psi hot. fitted a new pump (up to 20)": [
        "reading: 15 psi (oil hot)",
        "reading: 20 psi",
        "trial: new_pump (result helped)",
    ],
    "low oil pressure. relief: new spring, no gain": [
        "behaviour: low",
        "trial: stiffer_spring (result no difference)",
    ],
    "low oil pressure. relief shimmed. Still 20": [
        "behaviour: low",
        "trial: stiffer_spring (result no difference)",
    ],
    "oil light on. new switch. Still on. Put a gauge on in place of the switch and got 4 psi": [
        "behaviour: lamp",
        "reading: 4 psi (gauge direct)",
        "trial: new_sender (result no difference)",
    ],
    "low oil pressure, came up to 55 after I put 50 weight in it": [
        "behaviour: low (since oil grade change)",
        "reading: 55 psi",
        "trial: thicker_oil (result cured)",
    ],
    "oil light on. changed the switch - did it again on the next ride": [
        "behaviour: lamp (course ['returns under the same condition'])",
        "trial: new_sender (result cured for a while)",
    ],
    "low oil pressure. new rings and big end shells, mains not touched. Still 15": [
        "behaviour: low",
        "earlier work: pistons (done renewed)",
        "trial: new_rod_bearings (result no difference)",
    ],
    "low oil pressure. nothing I have done made any difference": [
        "behaviour: low",
    ],
    "low oil pressure. nothing was done apart from an oil change": [
        "behaviour: low",
        "earlier work: oil_change (done renewed)",
    ],
    "changed the oil, primed it with a drill and had 60 psi. low oil pressure now": [
        "behaviour: low",
        "earlier work: oil_change (done renewed)",
        "finding: drill_gives_good (state present)",
        "finding: started_unprimed (state absent)",
    ],
    "low oil pressure. new pump gave 3 psi more": [
        "behaviour: low",
        "trial: new_pump (result helped)",
    ],
    "fitted a new pump, 40 psi. 20 hours later down to 15": [
        "earlier work: oil_pump (done renewed)",
        "reading: 15 psi",
        "reading: 40 psi",
    ],
    "so far I've done: sender, pump, pickup. None of it touched it": [
        "trial: new_pickup (result no difference)",
        "trial: new_pump (result no difference)",
        "trial: new_sender (result no difference)",
    ],
    "checked: sender (ok), pump (a bit noisy)": [
        "finding: sender_wrong_on_air (state absent)",
    ],
    "low pressure, changed the filter, now it is lower than before": [
        "behaviour: low",
        "earlier work: filter_change (done renewed, before straight before)",
        "trial: new_filter (result worse)",
    ],
    "cranked the diesel, nothing": [
        "feature: diesel (state present)",
    ],
    "changed the oil on my generator and now it shuts off with low oil": [
        "behaviour: trips",
        "earlier work: oil_change (done renewed)",
        "feature: stationary (state present)",
        "layout: generator_diesel",
    ],
    "low oil pressure. topped it up and it's steady": [
        "behaviour: low",
        "trial: topped_up (result cured)",
    ],
    "low oil pressure. new oil. Put a gauge on and got 20 psi": [
        "behaviour: low",
        "earlier work: oil_change (done renewed)",
        "finding: oil_overdue (state absent)",
        "reading: 20 psi (gauge direct)",
    ],
    "oil gauge bounces at 2200 rpm, steady at idle": [
        "behaviour: unsteady (during ['at speed'], never ['idle'])",
    ],
    "bike has worn clutch plates and low oil pressure": [
        "behaviour: low",
        "feature: in_a_vehicle (state present)",
    ],
    "low oil pressure. changed the sender thinking that was it": [
        "behaviour: low",
        "earlier work: instrument (done renewed)",
    ],
    "low oil pressure. replaced the pressure switch. next week same fault": [
        "behaviour: low",
        "trial: new_sender (result no difference)",
    ],
    "low oil pressure. next week new pump": [
        "behaviour: low",
    ],
    "low oil pressure. dealer changed the sender, same thing two weeks later": [
        "behaviour: low",
        "trial: new_sender (result no difference)",
    ],
    "changed the oil. Fired it up and nothing on the gauge": [
        "behaviour: none (during ['at start'])",
        "earlier work: oil_change (done renewed, before straight before)",
    ],
    "new oil and filter. Pressure fine, 4 bar. 20 hours later down to 1.5 bar hot. Oil came out milky again": [
        "behaviour: normal",
        "earlier work: filter_change (done renewed)",
        "earlier work: oil_change (done renewed)",
        "finding: oil_milky (state present)",
        "finding: oil_overdue (state absent)",
        "reading: 1.5 bar (oil hot)",
        "reading: 4 bar",
    ],
    "low oil pressure. Started with the sender. Made no odds. Then the filter. No odds either. Then a pump, which got me 5 psi": [
        "behaviour: low",
        "trial: new_filter (result no difference)",
        "trial: new_pump (result helped)",
        "trial: new_sender (result no difference)",
    ],
    "low oil pressure. first the sender then the gauge. no change after each": [
        "behaviour: low",
        "trial: new_sender (result no difference)",
        "trial: other_gauge (result no difference)",
    ],
    "low oil pressure. They fitted a new pump and it was fine. For a week": [
        "behaviour: low",
        "trial: new_pump (result cured for a while)",
    ],
    "low oil pressure. Put a new pump in over the weekend. Still reading 10": [
        "behaviour: low",
        "reading: 10 psi",
        "trial: new_pump (result no difference)",
    ],
    "low oil pressure. cleaned the screen. 40 psi": [
        "behaviour: low",
        "reading: 40 psi",
        "trial: pickup_cleaned (result cured)",
    ],
    "low oil pressure. cleaned the screen. 8 psi still": [
        "behaviour: low",
        "reading: 8 psi",
        "trial: pickup_cleaned (result no difference)",
    ],
    "low oil pressure. lifters - nope. cam bearings - fixed": [
        "behaviour: low",
        "trial: new_cam_bearings (result cured)",
        "trial: new_lifters (result no difference)",
    ],
    "oil light. tightened the filter. Off": [
        "trial: filter_tightened (result cured)",
    ],
    "low oil pressure. first thing was the sender": [
        "behaviour: low",
    ],
}
EVERY = {**FIGURES, **TRIALS}


@pytest.mark.parametrize("text", EVERY)
def test_all_of_it_is_read(text: str) -> None:
    """Everything a text states, and nothing else."""
    assert sorted(str(fact) for fact in in_tables(by_tell(text))) == sorted(EVERY[text])
