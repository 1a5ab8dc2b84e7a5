"""How owners put it: when between subject and verdict, likenesses, deeds, speeds, searches."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

Case = tuple[str, tuple[str, ...], tuple[str, ...]]

#: the words, the facts that must be read, those that must not
SAID: tuple[Case, ...] = (
    # a sentence without a subject goes on with the gauge
    (
        "Gauge flickers at hot idle. Drops to 5 psi. Comes back to 45 at 2000.",
        ("reading 5 psi hot, idle", "reading 45 psi 2000 rpm"),
        ("behaviour low at speed",),
    ),
    (
        "Pressure was 50 at 2500 and 20 at idle. Now it is 30 at 2500 and 5 at idle",
        ("reading 30 psi 2500 rpm", "reading 5 psi idle"),
        ("reading 20 psi idle", "reading 50 psi 2500 rpm"),
    ),
    # what was read at another speed is no usual pressure of this one
    (
        "used to run 55 at 2000 hot, now the idle hot is 12",
        ("baseline 55 psi hot, 2000 rpm", "reading 12 psi hot, idle"),
        (),
    ),
    # thinner oil is no trial of thicker oil; a race track is no trail of oil
    (
        "changed to 0w20 from 20w50 and hot idle went from 20 to 8",
        ("finding oil_grade_too_thin present", "earlier oil_change renewed"),
        ("trial thicker_oil worse",),
    ),
    (
        "changed from 0w20 to 20w50 and hot idle went from 8 to 20",
        ("trial thicker_oil cured",),
        ("finding oil_grade_too_thin present",),
    ),
    (
        "ran low on oil on the track",
        ("finding dipstick_low present",),
        ("finding oil_trail_behind present",),
    ),
    ("left a trail of oil on the road", ("finding oil_trail_behind present",), ()),
    ("35 cold 8 hot 2500 rpm makes 20", ("reading 8 psi hot", "reading 20 psi 2500 rpm"), ()),
    # parts of another name, and what a lamp does
    (
        "left chain tensioner plunger bore worn through, oil pours out of the tensioner",
        ("finding tensioner_floods present",),
        ("finding relief_seat_scored present", "finding oil_loss_fast present"),
    ),
    (
        "rocker shaft plug fell out of the end",
        ("finding rocker_shaft_found_worn present",),
        ("finding drive_not_engaged present",),
    ),
    ("the electric oil pump for the turbo died", (), ("finding pump_found_failed present",)),
    (
        "filter was hand tight only",
        ("finding filter_found_loose present",),
        ("finding filter_found_loose absent",),
    ),
    ("filter was hand tight", ("finding filter_found_loose absent",), ()),
    ("fitted a bypass kit, all oil now goes through it", (), ("finding oil_used_fast present",)),
    ("goes through a litre of oil a week", ("finding oil_used_fast present",), ()),
    (
        "light flashing at idle, goes off when i rev it",
        ("finding rises_just_off_idle present",),
        ("finding falls_as_revs_rise present",),
    ),
    (
        "when i rev it goes down, when i let off it comes up",
        ("behaviour low at speed",),
        ("finding rises_just_off_idle present",),
    ),
    (
        "the lamp glows dim all the time even switched off",
        ("finding lamp_lit_with_key_off present",),
        (),
    ),
    (
        "pressure gauge reads 30 with the master and the dash says 5",
        ("finding panel_reads_too_low present", "reading 5 psi"),
        (),
    ),
    # what follows "until" is so now
    ("pressure was good until i put 0w20 in", ("oil 0W-20",), ()),
    ("no trouble until last week when the light came on", ("behaviour lamp",), ()),
    (
        "never had a problem till I swapped the oil pump, now it reads 10",
        ("earlier oil_pump renewed straight before", "reading 10 psi"),
        (),
    ),
    (
        "oil light never came on until i changed the filter",
        ("earlier filter_change renewed",),
        ("finding lamp_comes_on absent",),
    ),
    ("the light never came on", ("finding lamp_comes_on absent",), ()),
    # what is measured beside what
    (
        "relief spring 48mm new one 52mm",
        ("finding relief_spring_short_or_broken present",),
        (),
    ),
    (
        "sump holds 5 quarts 3 came out",
        ("finding drained_volume_low present",),
        (),
    ),
    ("pickup to pan gap 3/8", (), ("finding screen_torn present",)),
    ("there is a gap in the pickup screen", ("finding screen_torn present",), ()),
    ("the oil level was right down", (), ("finding level_correct present",)),
    ("the oil level was right", ("finding level_correct present",), ()),
    # a gauge tried on its wire, a port that was opened, oil that reaches one side
    (
        "gauge pegged high with wire off",
        ("finding needle_ignores_lead_test absent",),
        ("finding more_than_it_can_make present",),
    ),
    (
        "gauge zero with the wire grounded",
        ("finding needle_ignores_lead_test absent",),
        ("behaviour none",),
    ),
    (
        "gauge pegged since the wire was repaired",
        ("behaviour high work",),
        ("finding needle_ignores_lead_test absent",),
    ),
    (
        "gauge goes up when i turn the headlights on",
        ("finding needle_follows_loads present",),
        (),
    ),
    ("no oil coming out at the sender hole", ("finding no_oil_at_open_port present",), ()),
    ("oil coming out at the sender", (), ("finding no_oil_at_open_port present",)),
    ("the oil pump won't prime", ("finding no_oil_when_cranked present",), ()),
    (
        "oil comes to the rockers on one side only",
        ("finding no_oil_at_rockers present",),
        ("finding no_oil_at_rockers absent",),
    ),
    (
        "oil gets to the rockers on both sides",
        ("finding no_oil_at_rockers absent",),
        ("finding no_oil_at_rockers present",),
    ),
    # when stands between the pressure and what is said of it
    (
        "oil pressure at hot idle is too low",
        ("behaviour low idle, hot",),
        ("finding idle_below_spec present",),
    ),
    (
        "gauge reading at tickover was very low",
        ("behaviour low idle",),
        ("finding idle_below_spec present",),
    ),
    ("the pressure on the motorway is poor", ("behaviour low at speed",), ()),
    ("oil pressure when the engine is hot is nil", ("behaviour none hot",), ()),
    ("the oil pressure reading at hot idle stayed at zero", ("behaviour none idle, hot",), ()),
    ("the pressure when driving is excellent", ("behaviour normal at speed",), ()),
    ("pressure at idle is not low", (), ("behaviour low idle",)),
    ("is the pressure at idle too low?", (), ("behaviour low idle",)),
    ("boost pressure at idle is low", (), ("behaviour low idle", "behaviour low")),
    ("the idle is low and the oil light comes on", ("finding idle_below_spec present",), ()),
    # "normal" is how the engine is run, "steady" keeps to any figure
    ("12 psi at hot, normal idle speed", (), ("behaviour normal idle, hot", "behaviour normal")),
    ("the gauge holds steady at 4 psi", ("reading 4 psi",), ("behaviour normal",)),
    ("pressure is normal under normal driving", (), ("behaviour low at speed", "behaviour low")),
    (
        "under normal driving the needle hovers at 55",
        ("reading 55 psi cruise",),
        ("behaviour normal at speed", "finding engine_runs_normally present"),
    ),
    ("it sounded like a tractor with a heavy knock", ("behaviour knock",), ()),
    ("the pressure is below normal at idle", ("behaviour low idle",), ()),
    # a sentence of the car says nothing of when
    ("The needle sits on zero. It handles well in the corners.", ("behaviour none",), ()),
    ("The needle sits on zero. It happens in the corners.", ("behaviour none bends",), ()),
    # a noise that is not there then
    ("big end knocks under load. At tickover the knock is absent.", ("behaviour knock load",), ()),
    # a likeness and a question state nothing
    (
        "it was knocking, rather like the sound when a car is low on oil",
        ("behaviour knock",),
        ("finding dipstick_low present",),
    ),
    ("So that means my sender is dead?", (), ("finding sender_wrong_on_air present",)),
    # what a hand does is no noise
    ("gauge at 10, thumping the dash makes it jump", (), ("behaviour knock",)),
    ("gauge at 10, tapping it made it rise to 30", (), ("behaviour ticking",)),
    ("engine started knocking the other day", ("behaviour knock",), ()),
    # how fast one goes is no pressure
    ("oil light comes on when I get back up to 60", (), ("reading 60 psi",)),
    (
        "the needle falls once we hit 70 on the bypass",
        (),
        ("reading 70 psi", "reading 70 psi cruise"),
    ),
    ("oil pressure: I get 40 at idle", ("reading 40 psi idle",), ()),
    ("when I rev it the pressure goes up to 45", ("reading 45 psi cruise",), ()),
    # a step is no pressure, a figure each time is one
    ("pressure keeps dropping, about 4 psi every ten miles", (), ("reading about 4 psi",)),
    ("drops to 6 psi every time I stop", ("reading 6 psi",), ()),
    ("18 psi at idle and 55 psi when not at idle", ("reading 55 psi off idle",), ()),
    # work that looked for the cause did not bring it
    (
        "after trying two gauges it was still low oil pressure",
        ("behaviour low",),
        ("behaviour low work",),
    ),
    ("found the fault after pulling the gearbox: low oil pressure", (), ("behaviour low work",)),
    ("after changing the pump I found the pressure was low", ("behaviour low work",), ()),
    # what came of the throttle, or of other work
    (
        "I change the oil at the recommended intervals. Light flickers. A rev and the light went out.",
        (),
        ("trial right_oil cured",),
    ),
    (
        "rebuilt the engine. Oil pressure was low. I added a plug and the engine has good pressure now.",
        (),
        ("trial engine_rebuilt cured",),
    ),
    (
        "pressure was low. Fitted the forgotten pipe plug, now it is 50",
        ("trial gallery_plugs_fitted cured",),
        (),
    ),
    # parts and places that only sound like another
    (
        "the rod that drives the oil pump keeps snapping",
        ("finding drive_shaft_broken present",),
        ("finding rod_broken present", "finding pump_found_failed present"),
    ),
    (
        "the oil pump keeps freezing up",
        ("finding pump_jammed present",),
        ("finding ice_at_screen present", "finding stood_in_frost present"),
    ),
    ("the oil pickup froze overnight in the frost", ("finding ice_at_screen present",), ()),
    (
        "turned the pump by hand, a quarter turn and then it locked up",
        (),
        ("finding stopped_with_loss_of_power present",),
    ),
    (
        "the pump would only turn a few degrees and then bind",
        ("finding pump_jammed present",),
        (),
    ),
    ("the spark plugs were all oily", (), ("finding all_plugs_accounted_for present",)),
    ("a noise like the sound of a follower", (), ("finding lifter_out_of_bore absent",)),
    ("waited on the hard shoulder, oil light on", ("behaviour lamp",), ("earlier work storage",)),
    ("oil was running its way down the back of the block", (), ("finding dipstick_low present",)),
    (
        "one bearing was so bad I could see right through it",
        ("finding shells_found_ruined present",),
        (),
    ),
    # another gauge, another lamp, another's engine, the whole kind
    ("the fuel gauge needle bounces about", (), ("behaviour unsteady",)),
    ("the oil gauge needle bounces about", ("behaviour unsteady",), ()),
    ("water temperature falls to zero on the gauge", (), ("behaviour none",)),
    ("the engine light came on", (), ("behaviour lamp",)),
    ("the engine oil light came on", ("behaviour lamp",), ()),
    ("his oil pressure was zero, mine reads 40", ("reading 40 psi",), ("behaviour none",)),
    (
        "they are known for worn cam bearings",
        (),
        ("finding cam_bearing_found_bad present",),
    ),
    # what would please, and what sets a lamp off, was not read
    ("I'd be happy with 12 psi at idle", (), ("reading 12 psi idle",)),
    ("the light comes on below 7 psi", ("behaviour lamp",), ("reading under 7 psi",)),
    ("it fell below 7 psi and the light came on", ("reading under 7 psi",), ()),
    (
        "spun the pump by drill and had 40 psi, but with the engine running it shows only 5",
        ("reading 5 psi",),
        ("finding drill_gives_little present",),
    ),
    (
        "gauge reads full scale even with the ignition off",
        ("finding needle_off_zero_at_rest present",),
        (),
    ),
    (
        "the light goes out with the wire off the switch",
        ("finding lamp_on_with_wire_off absent",),
        (),
    ),
    ("sump off, the strainer was clean as a whistle", (), ("finding oil_looks_clean present",)),
    # each pressure with its own speed, whatever road that is
    (
        "when hot it shows 12 at idle and 38 on the move",
        ("reading 12 psi hot, idle", "reading 38 psi hot, cruise"),
        (),
    ),
    (
        "cold it reads 55 psi at tickover and 70 psi at 60mph",
        ("reading 55 psi cold, idle", "reading 70 psi cold, cruise"),
        (),
    ),
    # then and now
    ("oil pressure has gone from 48 to 26", ("reading 26 psi",), ()),
    ("used to show 3 bar at 70mph, these days barely 2", ("reading 2 bar cruise",), ()),
    (
        "three weeks ago I had the head gasket done and now the pressure is low",
        ("earlier cylinder_head renewed 3 weeks", "behaviour low work"),
        (),
    ),
    (
        "the sump had a dent right under the strainer",
        ("finding sump_dented present",),
        ("finding level_correct present",),
    ),
    (
        "no oil on the stick when I checked",
        ("finding dipstick_dry present",),
        ("finding oil_not_checked_long present",),
    ),
    # over the whole dial, with the lamps on, from a drill
    ("the gauge flicks between zero and full", ("behaviour unsteady",), ("behaviour none",)),
    ("the gauge flips between 0 and 80", ("behaviour unsteady",), ("behaviour none",)),
    (
        "gauge drops to zero whenever I switch the headlights on",
        ("behaviour none electrical load returns under the same condition",),
        ("finding needle_off_zero_at_rest absent",),
    ),
    (
        "gauge drops to zero when I switch the engine off",
        ("finding needle_off_zero_at_rest absent",),
        ("behaviour none",),
    ),
    (
        "span the pump with a drill, the pressure came up to 50",
        ("finding drill_gives_good present",),
        ("trial pump_primed cured",),
    ),
    # going on, and not
    (
        "light came on. Only two streets from home, so I drove it back to my house",
        ("finding ran_on_without_pressure present",),
        (),
    ),
    ("turned the ignition to on, gauge at zero", (), ("finding ran_on_without_pressure absent",)),
)


@pytest.mark.parametrize(("words", "wanted", "unwanted"), SAID, ids=[c[0] for c in SAID])
def test_owners_words(words: str, wanted: tuple[str, ...], unwanted: tuple[str, ...]) -> None:
    """What is wanted is among the facts, what is unwanted is not."""
    found = {fact.short for fact in read(words, the_book()).facts}
    assert set(wanted) <= found, found
    assert not set(unwanted) & found, found


@pytest.mark.parametrize(
    ("words", "during", "never"),
    [
        ("at idle the tapping is gone", None, ["idle"]),
        ("tappets are noisy cold, hot they are quiet", ["cold"], ["hot"]),
        ("knocks under load. Stationary or at tickover the knock is absent", ["load"], None),
        ("the needle falls at idle then picks up when I pull away", ["idle"], ["accelerating"]),
        ("the light stays on at idle until it has cooled a bit", ["idle"], ["after a short rest"]),
        ("oil light came on, let it cool, restarted and it was fine", None, ["after a short rest"]),
        (
            "a knock but only under load, when you press the accelerator the knock disappears",
            ["load"],
            None,
        ),
        ("at idle the rattle stops after a minute", ["idle", "after minutes of running"], None),
    ],
)
def test_when_a_noise_is_not_there(
    words: str, during: list[str] | None, never: list[str] | None
) -> None:
    """A noise that is gone at a time is not heard then."""
    heard = [f for f in read(words, the_book()).facts if f.table == "behaviour"]
    assert (heard[0].fields.get("during"), heard[0].fields.get("never")) == (during, never)
