"""Ways of telling that owners of boats, tractors and plant use: what is read, and what is not.

Each sentence names facts that must be read, and facts (or beginnings of them) that must not.
"""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

#: sentences, what must be read of them, and what must not
SAID: tuple[tuple[str, tuple[str, ...], tuple[str, ...]], ...] = (
    (
        "The oil pressure on the starboard engine had dropped to 0. My husband shut it down and the "
        "bilge was full of black oil.",
        ("behaviour none", "finding oil_in_the_bilge present"),
        (),
    ),
    ("My wife shouted that the oil light was on.", ("behaviour lamp",), ()),
    ("My husband has a boat with no oil pressure.", (), ("behaviour",)),
    ("My brother replaced his pump and that cured it.", (), ("trial",)),
    (
        "Port engine 45 psi, starboard one is the one with the problem, 10 psi at the same revs.",
        (),
        ("reading 45 psi",),
    ),
    ("The oil pressure on the main engine said zero at the lower helm.", ("behaviour none",), ()),
    ("The oil pressure on the other engine dropped to zero.", (), ("behaviour",)),
    ("All the gauges read OK.", (), ("finding other_gauges_also_wrong present",)),
    (
        "All the gauges went dead at the same time.",
        ("finding other_gauges_also_wrong present",),
        (),
    ),
    ("We live off the grid.", (), ("finding raced_or_heeled",)),
    ("The engine died and we drifted onto the piling.", (), ("finding raced_or_heeled",)),
    ("The third time I saw smoke.", (), ("finding bearings_failed_again",)),
    ("Motored out to the buoy.", (), ("earlier transport_or_fitting",)),
    ("I had the oil light on. They dropped the lake 20 feet.", (), ("behaviour low",)),
    ("It had no pressure trouble before.", (), ("behaviour none",)),
    ("The lamp is burning at idle.", ("behaviour lamp idle",), ("finding lamp_dead",)),
    ("I gave it 20 seconds to get off the sand, oil light on.", (), ("behaviour slow",)),
    (
        "I checked oil and water, no issues.",
        ("finding level_correct present",),
        ("finding oil_film",),
    ),
    ("The dipstick is correct.", ("finding level_correct present",), ()),
    ("Dipped it and it was bone dry.", ("finding dipstick_dry present",), ()),
    (
        "The check showed hardly any oil on the dipstick.",
        ("finding dipstick_low present",),
        ("finding dipstick_dry present",),
    ),
    (
        "I looked at the oil and it had dropped.",
        ("finding dipstick_low present",),
        ("behaviour low",),
    ),
    (
        "I watched the pressure and it had dropped.",
        ("behaviour low",),
        ("finding dipstick_low",),
    ),
    ("The whole sumpful was in the bilge.", ("finding oil_in_the_bilge present",), ()),
    ("There is water in the bilge.", (), ("finding oil_in_the_bilge",)),
    (
        "The oil alarm came on and I shut it down.",
        ("behaviour lamp", "finding ran_on_without_pressure absent"),
        (),
    ),
    (
        "The oil light came on so we cut the engine.",
        ("finding ran_on_without_pressure absent",),
        (),
    ),
    (
        "The oil light came on and ten miles later I shut it down.",
        (),
        ("finding ran_on_without_pressure absent",),
    ),
    ("The oil light goes out when I shut it down.", (), ("finding ran_on_without_pressure",)),
    ("It kept cutting out on low oil pressure.", (), ("finding ran_on_without_pressure",)),
    (
        "The pressure was zero. I topped it up and the pressure was fine. A few minutes later it was "
        "at zero again.",
        ("trial topped_up cured for a while",),
        ("trial topped_up cured",),
    ),
    (
        "The light came on. Put a new sender in and the light went out, but when I restarted it was "
        "back.",
        ("trial new_sender cured for a while",),
        (),
    ),
    (
        "It tripped on low oil pressure. New switch fitted, and this Monday it tripped again.",
        ("trial new_sender no difference",),
        (),
    ),
    (
        "It kept tripping on low oil pressure. Fitted a new sender and it never tripped again.",
        ("trial new_sender cured",),
        (),
    ),
    (
        "Low oil pressure. Fitted a new pump and the pressure is good again.",
        ("trial new_pump cured",),
        (),
    ),
    ("Pulled the wire off the sender and the light went out.", (), ("finding sender_wire_off",)),
    ("Took the dipstick out for a look.", (), ("finding filler_cap_found_off",)),
    ("Tried to turn it with a bar, frozen solid.", ("finding engine_seized present",), ()),
    ("When we come back to idle the oil beeper goes.", ("behaviour lamp slowing to idle",), ()),
    (
        "He changed the oil last week. Backing into the slip the alarm for that engine went off.",
        ("behaviour lamp",),
        ("trial", "finding earlier_breakage"),
    ),
    ("The light went off once I topped it up.", ("trial topped_up cured",), ()),
    (
        "Oil pressure dropping at cruise, 30 to 35 on plane where 55 is normal.",
        ("reading 30 to 35 psi cruise",),
        (),
    ),
    (
        "The oil light flickers at idle, goes off the second you touch the throttle.",
        ("finding rises_just_off_idle present",),
        ("behaviour low",),
    ),
    (
        "The engineer put his own gauge on it, 55 psi, and said the switch was bad.",
        ("reading 55 psi",),
        ("finding switch_opens_wrong", "finding sender_wrong_on_air"),
    ),
    ("It has a shutdown switch for low oil.", (), ("finding dipstick_low",)),
    (
        "The oil pressure was reading something but way lower than the good one.",
        ("behaviour low",),
        (),
    ),
    ("It kept switching itself off on low oil pressure.", ("behaviour trips",), ()),
    ("He said the oil light was on.", ("behaviour lamp",), ()),
    ("I shut down on the alarm.", ("finding ran_on_without_pressure absent",), ()),
    ("It was spewing a milky white oil.", ("finding oil_sprayed present",), ()),
    (
        "The gauge used to sit at 40 and never under 15 on tickover. Now it is 5 hot.",
        ("reading 5 psi hot",),
        ("reading never",),
    ),
    (
        "Oil pressure is 60 cold, drops to 20 running and 5 at tickover once hot.",
        ("reading 20 psi cruise", "reading 5 psi hot, idle"),
        (),
    ),
    ("Next to nothing on the gauge at tickover once hot.", ("behaviour low idle, hot",), ()),
    ("The light came on. I have done it many times.", ("behaviour lamp",), ()),
    ("It started okay, then the oil light came on.", (), ("finding engine_runs_normally",)),
    ("This morning the oil light came on.", ("behaviour lamp a date",), ("behaviour lamp cold",)),
    (
        "Changed the engine oil and filter yesterday, launched today.",
        ("earlier oil_change renewed 2 days", "earlier filter_change renewed 2 days"),
        (),
    ),
    (
        "The pressure had dropped from its usual 80 psi to 40.",
        ("behaviour low", "reading 40 psi"),
        ("reading 80 psi",),
    ),
    (
        "We saw the oil pressure fall slowly but steadily.",
        ("behaviour falling",),
        ("behaviour low",),
    ),
    ("The dipstick was empty.", ("finding dipstick_dry present",), ()),
    ("The oil has not been changed for years.", ("finding oil_overdue present",), ()),
    ("The oil has not been changed yet.", (), ("finding oil_overdue",)),
    (
        "I lost all oil pressure. I stopped and trailered it home.",
        ("behaviour lost", "finding ran_on_without_pressure absent"),
        (),
    ),
    (
        "Running on the starboard engine I noticed the oil alarm.",
        (),
        ("finding ran_on_without_pressure",),
    ),
    ("There was a boom and no oil pressure.", ("finding engine_banged_or_shook present",), ()),
    ("Clouds of smoke behind and no oil pressure.", ("behaviour smoke",), ()),
    ("Plug leads off, cranked it for pressure.", (), ("finding sender_wire_off",)),
    ("I poured in 4 litres at the filter.", (), ("finding filter_seat_leaks",)),
    (
        "The engine alarm kept going on and off.",
        (),
        ("finding ran_on", "finding stopped_with_loss"),
    ),
    ("The oil light was on solid till I gave it a handful.", (), ("finding engine_seized",)),
    ("There's a light tapping on the left bank.", (), ("finding raced_or_heeled",)),
    (
        "The oil pressure on No.2 generator is falling from 4 bar to 2.6 over the watch.",
        ("reading 2.6 bar",),
        ("reading 2 bar",),
    ),
    ("It has never had more than 30 psi cold.", ("reading never above 30 psi cold",), ()),
    ("The oil pressure is ten pounds cold and nothing hot.", ("behaviour none hot",), ()),
    (
        "My dad's tractor has lost its oil pressure. It went yesterday.",
        ("behaviour lost", "finding in_a_tractor present"),
        (),
    ),
    (
        "My dad's tractor has lost its oil pressure. My own tractor reads 40 psi.",
        (),
        ("behaviour lost",),
    ),
    ("There was a black line across the lawn.", ("finding oil_trail_behind present",), ()),
    ("I turned it off there and then.", ("finding ran_on_without_pressure absent",), ()),
    (
        "Loosened the union at the filter and spun it: not a drop.",
        ("finding no_oil_at_open_port present",),
        ("finding dipstick_dry",),
    ),
    ("The generator keeps faulting out on low oil pressure.", ("behaviour trips",), ()),
    ("On the climb the temp went up to 230.", ("finding engine_ran_hot present",), ()),
    ("When I got home the dipstick was dry.", ("finding dipstick_dry present",), ()),
    ("When we got it the pressure was 40 psi hot.", (), ("reading 40 psi",)),
    ("I should add that there is no oil on the stick.", ("finding dipstick_dry present",), ()),
    (
        "I thought nothing of it until the engine seized.",
        ("finding engine_seized present",),
        (),
    ),
    ("Does anyone know why the oil light comes on at idle?", ("behaviour lamp idle",), ()),
    ("According to my log the oil light came on at idle.", ("behaviour lamp idle",), ()),
    ("According to the manual the pressure is 40 psi at idle.", (), ("reading",)),
    (
        "The guy at the yard saw that the bilge was full of oil.",
        ("finding oil_in_the_bilge present",),
        (),
    ),
    ("A guy at work had no oil pressure.", (), ("behaviour",)),
    (
        "Another boat called to say there was oil on the water and the engine seized.",
        ("finding engine_seized present",),
        (),
    ),
    ("Another boat had no oil pressure.", (), ("behaviour",)),
    ("I was worried as the oil light came on.", ("behaviour lamp",), ()),
    ("I was worried the oil light would come on.", (), ("behaviour lamp",)),
    (
        "The manual says to stop at once but I kept going with the oil light on.",
        ("finding ran_on_without_pressure present",),
        (),
    ),
    (
        "We were supposed to leave at six but there was no oil on the stick.",
        ("finding dipstick_dry present",),
        (),
    ),
    (
        "I thought it was the gauge and kept going with the oil light on.",
        ("finding ran_on_without_pressure present",),
        (),
    ),
    ("The buzzer went so I hit the stop button.", ("finding ran_on_without_pressure absent",), ()),
    ("I did not drive it any further.", ("finding ran_on_without_pressure absent",), ()),
    (
        "We finished the field with the light on.",
        ("finding ran_on_without_pressure present",),
        ("finding ran_on_without_pressure absent",),
    ),
    ("The temp gauge is steady at 80.", (), ("reading",)),
    ("The oil pressure gauge is steady at 40.", ("reading 40 psi",), ()),
    ("It went from 50 to nothing on the oil gauge.", ("behaviour none",), ()),
    ("The needle is bouncing about.", ("behaviour unsteady",), ()),
    ("The stern was covered in oil.", ("finding oil_on_bodywork present",), ()),
    ("The oil's right where it should be.", ("finding level_correct present",), ()),
    (
        "The fuel gauge and oil gauge both read full.",
        ("finding other_gauges_also_wrong present",),
        (),
    ),
    ("Dipped it and got nothing.", ("finding dipstick_dry present",), ()),
    ("A huge clunk from the engine.", ("finding engine_banged_or_shook present",), ()),
)


@pytest.mark.parametrize(("text", "is_read", "is_not"), SAID, ids=lambda x: str(x)[:40])
def test_what_is_read_of_a_story(
    text: str, is_read: tuple[str, ...], is_not: tuple[str, ...]
) -> None:
    """The facts that are named are read, those ruled out are not."""
    facts = [f.short for f in read(text, the_book()).facts]
    others = [f for f in facts if f not in is_read]
    assert set(is_read) <= set(facts)
    assert not [f for f in others for no in is_not if f.startswith(no)]
