"""Texts as people type them: what each states is read, and what it does not state is not."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

Case = tuple[str, tuple[str, ...], tuple[str, ...]]

THEN_AND_NOW: tuple[Case, ...] = (
    (
        "hot idle went from 25 to 8 since the sump was off for a gasket",
        ("reading 8 psi hot, idle",),
        (),
    ),
    ("it went from 60 down to 15 hot at 2000", ("reading 15 psi hot, 2000 rpm",), ()),
    ("it has come down from 30 to 12 at idle", ("reading 12 psi idle",), ()),
    (
        "Pressure was 60 and is now 35 hot at 2500",
        ("reading 35 psi hot, 2500 rpm",),
        ("reading 60 psi",),
    ),
    ("it was 25 at idle, it is 10 now", ("reading 10 psi idle",), ("reading 25 psi idle",)),
    ("pressure was 50 psi and it's 30 today", ("reading 30 psi",), ("reading 50 psi",)),
    ("idle went from 900 to 700", (), ("reading 700 psi idle",)),
    ("compression went from 140 to 95 hot", (), ("reading 95 psi hot",)),
    (
        "Pressure gone up to 90 cold since the new pump, used to be 60",
        ("reading 90 psi cold",),
        ("behaviour lost cold, work",),
    ),
    ("pressure gone, light on", ("behaviour lost", "behaviour lamp"), ()),
)
NOT_SO: tuple[Case, ...] = (
    (
        "if the pressure ever fell under 10 I'd stop at once, but so far it has not",
        (),
        ("reading under 10 psi", "finding ran_on_without_pressure absent"),
    ),
    ("I'd say it drops to 10 psi if I let it idle", ("reading 10 psi idle",), ()),
    ("I'd just changed the oil when the light came on", ("behaviour lamp",), ()),
    (
        "replaced the oil pump drive rod because it was twisted",
        ("earlier pump_drive renewed",),
        ("finding drive_shaft_broken present",),
    ),
    (
        "pump drive shaft is twisted because it was overloaded",
        ("finding drive_shaft_broken present",),
        (),
    ),
    ("nothing sticks to a magnet", ("finding magnetic_metal absent",), ()),
    ("nothing on the stick", ("finding dipstick_dry present",), ()),
    ("flat tappet cam", (), ("finding lifters_found_drained present",)),
    ("lifters are flat", ("finding lifters_found_drained present",), ()),
    (
        "pulled the filter and it's full of oil",
        (),
        ("finding filter_packed present", "finding level_correct present"),
    ),
    ("checked the oil and it's full of oil", ("finding level_correct present",), ()),
    (
        "engine ran out of oil, filled it up",
        (),
        ("finding dipstick_dry present", "finding oil_loss_fast present"),
    ),
    ("it has run out of oil", ("finding dipstick_dry present",), ()),
    (
        "blocked off the piston squirters to try it",
        (),
        ("finding piston_jet_found_broken present",),
    ),
    (
        "sits at 40 psi all the way home",
        ("reading 40 psi",),
        ("finding needle_stuck_at_one_value present",),
    ),
    (
        "gauge sits at 40 all the time",
        ("finding needle_stuck_at_one_value present",),
        (),
    ),
)
SHOWN: tuple[Case, ...] = (
    ("It lost all pressure for a minute or so", ("behaviour lost",), ()),
    ("pressure drops after two minutes", ("behaviour low after minutes of running",), ()),
    (
        "Pressure good in the morning, poor by afternoon",
        ("behaviour normal cold", "behaviour low late in a run"),
        (),
    ),
    ("pressure is ok till it warms through", ("behaviour low hot",), ("behaviour low cold",)),
    ("clatter from the top end, dies away", ("behaviour ticking",), ("behaviour falling",)),
    ("pressure dies away at idle", ("behaviour falling idle",), ()),
    ("everything is 15 lower than before the regasket", ("behaviour low",), ()),
    ("it's 10 psi down across the board", ("behaviour low",), ("reading 10 psi any speed",)),
    ("lost all pressure once, about a month ago", ("behaviour lost once",), ()),
    (
        "low pressure. new filter, better for a week then back where it was",
        ("behaviour low",),
        ("behaviour low recovered by itself",),
    ),
    ("pressure drops in bends, then back", ("behaviour low bends recovered by itself",), ()),
)

SHOWN_TOO: tuple[Case, ...] = (
    (
        "needle just above the red in traffic, middle of the gauge on the open road",
        (),
        ("behaviour low idle, at speed",),
    ),
    ("when I come off the motorway the lamp glows", ("behaviour unsteady slowing to idle",), ()),
    ("light came on in a bend, never before or since", ("behaviour lamp bends once",), ()),
    ("pressure has been dropping about 5 psi a year", ("behaviour low",), ("reading about 5 psi",)),
    (
        "drops 20 psi the moment the thermostat opens",
        ("behaviour low",),
        ("earlier cooling_system opened",),
    ),
)
HUNG: tuple[Case, ...] = (
    (
        "rattle at idle when hot, pressure 8, rev to 1500 rattle stops, pressure 25",
        ("reading 8 psi hot, idle", "reading 25 psi hot, 1500 rpm"),
        (),
    ),
    (
        "alarm sounds and gauge shows 10, back the throttle off and it recovers",
        ("reading 10 psi",),
        ("reading 10 psi slowing to idle",),
    ),
    (
        "the sump came off for a new gasket, no trouble till then",
        (),
        ("trial seals_renewed cured",),
    ),
    (
        "rev it to 3000 and hold, pressure climbs to 50 then slowly falls away",
        ("behaviour falling",),
        ("finding falls_as_revs_rise present",),
    ),
    ("pressure drops off as revs go up", ("finding falls_as_revs_rise present",), ()),
    (
        "turned the oil pump with a drill and got 60 psi and oil at every rocker bar the last two",
        ("finding drill_gives_good present",),
        ("finding good_at_pump_low_in_gallery present",),
    ),
    (
        "put a litre of oil in and the light went off",
        ("trial topped_up cured",),
        ("finding oil_loss_fast present",),
    ),
    (
        "put 1 litre of conditioner in and the light went off",
        (),
        ("trial topped_up cured",),
    ),
    ("low since I bought it three years ago", ("behaviour low",), ("behaviour low standing",)),
    ("low after standing three years", ("behaviour low standing",), ()),
    ("air bubbles in the oil on the dipstick", ("finding foam_on_stick present",), ()),
    (
        "Pressure gone up to 90 since the new pump",
        (),
        ("trial new_pump helped",),
    ),
)
BESIDE: tuple[Case, ...] = (
    (
        "oil pressure is steady at all speeds but much lower than last year",
        ("behaviour low constant",),
        ("behaviour normal constant",),
    ),
    ("pressure is steady at 2000", ("behaviour normal at speed",), ()),
    (
        "oil light at traffic lights, then changed oil to 10w60 and light is gone",
        ("behaviour lamp idle", "trial thicker_oil cured"),
        (),
    ),
    ("changed to 5w20 and now the light flickers", ("behaviour unsteady oil grade change",), ()),
    (
        "hot the pressure goes from 4 bar to 1, and below 1000 rpm the buzzer sounds",
        (),
        ("reading 1 bar 1000 rpm", "reading 1 bar hot, 1000 rpm"),
    ),
    ("at idle the light comes on, 10 psi", ("reading 10 psi idle",), ()),
    ("pulled the distributor, spun the pump, 60 psi", (), ("reading 60 psi",)),
    (
        "no pressure. pulled the distributor, primed it, put it back together, zero again",
        (),
        ("trial engine_rebuilt no difference",),
    ),
)
OUT_OF_PLACE: tuple[Case, ...] = (
    (
        "the clutch was replaced, pressure drops to 5 psi when I press the pedal",
        ("behaviour low clutch pressed",),
        ("behaviour low off idle",),
    ),
    ("pressure comes up when I press the pedal", (), ("behaviour normal clutch pressed",)),
    (
        "light on at idle once it's hot, blip the throttle and out it goes",
        ("behaviour lamp idle, hot",),
        ("behaviour lamp idle, off idle, hot",),
    ),
    ("light on at idle, and on when I blip the throttle", ("behaviour lamp idle, off idle",), ()),
    (
        "I changed to 5w30 and the gauge has read lower ever since",
        (),
        ("earlier instrument renewed",),
    ),
    ("replaced the pump and gauge", ("earlier instrument renewed",), ()),
    (
        "gave the relief piston a polish with 1000 grit",
        (),
        ("finding oil_black_and_gritty present",),
    ),
    ("oil is black with grit in it", ("finding oil_black_and_gritty present",), ()),
)
BEGAN: tuple[Case, ...] = (
    (
        "engine ran out of oil on the motorway, filled it up, pressure is now 20 lower",
        ("behaviour low",),
        ("behaviour low at speed",),
    ),
    ("at speed on the motorway, pressure is now lower", ("behaviour low at speed",), ()),
    (
        "had the head gasket done, that's when it started. lamp flickers at idle",
        ("behaviour unsteady idle, work",),
        (),
    ),
    (
        "changed the oil and that's when it began, low pressure",
        ("behaviour low oil change",),
        (),
    ),
    ("changed the oil and that's when I saw the filter, low pressure", ("behaviour low",), ()),
    (
        "it ran low on oil last year, topped it up. low pressure",
        ("behaviour low",),
        ("finding dipstick_low present",),
    ),
    (
        "low pressure, slow to build. new o-ring on the pickup fixed the slow build",
        ("trial pickup_seal_renewed cured",),
        ("finding freshly_rebuilt present",),
    ),
)
MEASURED: tuple[Case, ...] = (
    ("idle is 950", ("finding idle_speed_counted 950 rpm",), ()),
    ("it idles at about 900", ("finding idle_speed_counted 900 rpm",), ()),
    ("comes on again when it idles at 600", (), ("finding idle_speed_counted 600 rpm",)),
    ("idle is 12", ("reading 12 psi idle",), ()),
    (
        "spec is 45 psi at 2000, i get 28",
        ("limit hot_running_pressure 45 psi", "reading 28 psi 2000 rpm"),
        (),
    ),
    ("the book wants 45 at 2000 rpm, i get 28", ("reading 28 psi 2000 rpm",), ()),
    ("spec is 80 ft lbs, i get 60", (), ("reading 60 psi",)),
    ("spec 0.002, i got 0.004", (), ("reading 0.004 psi",)),
    (
        "spring measures 2.02 free, spec 2.30",
        ("finding relief_spring_length 2.02 in", "finding relief_spring_short_or_broken present"),
        (),
    ),
    (
        "relief spring is 2.1 inches long, the new one 2.3",
        (
            "finding relief_spring_length 2.1 inches",
            "finding relief_spring_short_or_broken present",
        ),
        (),
    ),
    (
        "relief spring 2.35, book says 2.30",
        ("finding relief_spring_length 2.35 in",),
        ("finding relief_spring_short_or_broken present",),
    ),
    (
        "the pump screen wasn't pushed all the way in",
        ("finding pickup_fixing_loose present",),
        (),
    ),
    ("pickup was pushed fully home", (), ("finding pickup_fixing_loose present",)),
    (
        "strainer hadn't been pushed right in",
        ("finding pickup_fixing_loose present",),
        ("finding screen_crushed absent",),
    ),
    ("oil pump cover flat, no scratches", ("finding cover_grooved absent",), ()),
    ("oil pump cover flat, deep grooves in it", (), ("finding cover_grooved absent",)),
    (
        "sludge from the strainer, cleaned in August",
        ("earlier pickup cleaned",),
        ("finding sludge_on_screen present",),
    ),
    ("sludge on the strainer, dropped the pan", ("finding sludge_on_screen present",), ()),
)


@pytest.mark.parametrize(
    ("text", "stated", "not_stated"),
    [
        *THEN_AND_NOW,
        *NOT_SO,
        *SHOWN,
        *SHOWN_TOO,
        *HUNG,
        *BESIDE,
        *OUT_OF_PLACE,
        *BEGAN,
        *MEASURED,
    ],
    ids=lambda x: str(x)[:40],
)
def test_what_is_stated_is_read_and_no_more(
    text: str, stated: tuple[str, ...], not_stated: tuple[str, ...]
) -> None:
    """Each stated fact is among those read; none of the others is."""
    found = [f.short for f in read(text, the_book()).facts]
    assert set(stated) <= set(found)
    assert not set(not_stated) & set(found)


@pytest.mark.parametrize(
    ("text", "key", "value"),
    [
        ("It lost all pressure for a minute or so", "lasts", "1 min"),
        ("light came on for a minute on the motorway", "lasts", "1 min"),
        ("knocking on start up dies away after 5 seconds", "lasts", "5 s"),
        ("light takes 5 seconds to go out hot, cold it goes straight out", "never", ["cold"]),
        ("went from 25 to 8 at hot idle", "usual", "25 psi"),
        ("it was 60 at 2500, and is now 35", "usual", "60 psi"),
    ],
)
def test_a_detail_is_read(text: str, key: str, value: object) -> None:
    """How long it showed, when it never does, what it showed once."""
    facts = read(text, the_book()).facts
    assert [f.fields[key] for f in facts if key in f.fields] == [value]
