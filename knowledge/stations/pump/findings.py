"""The pump as it runs, and the checks that show it."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.engines import features
from knowledge.model import COMMON, HARDLY_EVER, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.pressure import patterns_speed
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Access, Caution, Inspection

HIGH_VOLUME_PUMP_FITTED = Finding(
    id="high_volume_pump_fitted",
    station=Station.PUMP,
    says="a high-volume pump or a stiffer relief spring has been fitted",
    asks="High-volume pump or a stiffer relief spring fitted?",
    source=sources.ENGINE_BUILDER_2010,
    denies="pump and spring are the standard ones",
    normal="standard pump and spring",
    background=COMMON,
    also=("high volume oil pump", "HV pump", "high pressure spring", "big block pump"),
)
DRIVE_PARTNER_STOPPED = Finding(
    id="drive_partner_stopped",
    station=Station.PUMP,
    says="something else on the pump's drive stopped too (ignition, tachometer, injection pump)",
    asks="Did anything else on the pump's drive stop (distributor, tachometer, injection pump)?",
    source=idea_from(sources.NAVY_ENGINEMAN),
    denies="everything else on the pump's drive still turns",
    normal="all of them turn",
    why="two things on one shaft that stop together point to the shaft",
    background=VERY_RARE,
    also=(
        "engine cut out when pressure went",
        "rev counter died at the same time",
        "tach stopped working too",
        "lost spark and oil pressure together",
    ),
)
PUMP_NOISE = Finding(
    id="pump_noise",
    station=Station.PUMP,
    says="a whine or rattle comes from the pump and rises with revs",
    asks="At the pump: a whine or rattle that rises with the revs?",
    source=sources.PUMP_CAVITATION_ANSWER,
    denies="the pump is quiet",
    normal="no whine or rattle",
    why="a pump that cannot fill, or draws air, makes noise before you see anything",
    background=RARE,
    also=("oil pump whining", "rattling oil pump", "howling noise from the sump", "pump noisy"),
)
LISTEN_AT_THE_PUMP = Inspection(
    id="listen_at_the_pump",
    station=Station.PUMP,
    says="listen at the pump while you raise the revs",
    steps=(
        "stethoscope or rod on the sump or front cover, nearest the pump",
        "raise the revs slowly and watch the gauge at the same time",
        "only while the pressure is within its limits; stop at any knock",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(PUMP_NOISE, patterns_speed.FALLS_AS_REVS_RISE, patterns_speed.FLICKERS_ONLY_AT_SPEED),
    source=COMMON_PRACTICE,
    tools=("stethoscope",),
    cautions=RUNNING,
    needs_running=True,
    also=("oil pump noise", "whining pump"),
)

ROTOR_STILL_WHEN_CRANKED = Finding(
    id="rotor_still_when_cranked",
    station=Station.PUMP,
    says="the distributor rotor does not turn when the engine is cranked",
    asks="Distributor cap off, cranking: does the rotor stand still?",
    source=COMMON_PRACTICE,
    denies="the rotor turns when cranked",
    stage=Stage.OUTSIDE,
    normal="turns at half engine speed",
    why="five minutes' work that proves the upper half of the drive",
    background=VERY_RARE,
    also=("rotor not turning", "rotor button doesn't spin", "distributor not turning"),
)
IGNITION_SCATTERS = Finding(
    id="ignition_scatters",
    station=Station.PUMP,
    says="ignition timing scatters, or the rotor turns by jerks",
    asks="Strobe, or cranking with the cap off: does timing scatter or the rotor jerk?",
    source=COMMON_PRACTICE,
    denies="ignition timing is steady",
    stage=Stage.OUTSIDE,
    normal="steady marks",
    background=RARE,
    also=("timing jumps around", "spark scatter", "timing mark wanders", "slop in distributor"),
)
WATCH_THE_ROTOR_CRANKED = Inspection(
    id="watch_the_rotor_cranked",
    station=Station.PUMP,
    says="watch the distributor rotor while cranking",
    steps=(
        "ignition off, coil lead earthed (grounded)",
        "cap off, crank a few turns and watch the rotor",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    in_place=True,
    reveals=(ROTOR_STILL_WHEN_CRANKED, IGNITION_SCATTERS),
    source=COMMON_PRACTICE,
    tools=("screwdriver",),
    cautions=(
        Caution.ROTATING,
        Caution.IGNITION,
        Caution.BATTERY,
        Caution.FIRE,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    keep="note where the rotor points before you pull anything",
    also=("is the distributor turning",),
)

STROBE_THE_TIMING = Inspection(
    id="strobe_the_timing",
    station=Station.PUMP,
    says="strobe the timing marks for scatter",
    steps=(
        "only while the pressure is within its limits",
        "hold steady revs and see whether the mark stands still or jumps",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(IGNITION_SCATTERS,),
    source=COMMON_PRACTICE,
    tools=("strobe",),
    cautions=RUNNING,
    needs_running=True,
    also=(
        "timing light",
        "timing jumps about",
    ),
)

DISTRIBUTOR_WILL_NOT_SEAT = Finding(
    id="distributor_will_not_seat",
    station=Station.PUMP,
    says="the distributor did not seat fully by hand and was pulled down by its clamp",
    asks="Distributor: would not seat fully by hand, or was pulled down by its clamp?",
    source=sources.DIARY_SHAFT_BINDS,
    denies="the distributor seats fully by hand",
    stage=Stage.OUTSIDE,
    normal="seats by hand, no gap at the flange",
    background=VERY_RARE,
    also=("distributor won't drop all the way", "gap under distributor", "distributor sits high"),
)
SEE_THE_DISTRIBUTOR_SEAT = Inspection(
    id="see_the_distributor_seat",
    station=Station.PUMP,
    says="check whether the distributor seats by hand",
    steps=(
        "mark its position, slacken the clamp",
        "press by hand: no gap may remain at the flange",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(DISTRIBUTOR_WILL_NOT_SEAT,),
    source=idea_from(sources.DISTRIBUTOR_PRACTICES_2016),
    tools=("spanner", "marker"),
    cautions=(Caution.HOT,),
    keep="mark housing and rotor first",
    also=("distributor down all the way",),
)

TANK_EMPTIES_RUNNING = Finding(
    id="tank_empties_running",
    station=Station.PUMP,
    says="the oil tank empties into the crankcase while running",
    asks="Dry sump: does the tank empty into the crankcase while it runs?",
    source=sources.OIL_AERATION_ARTICLE,
    denies="the tank keeps its level while running",
    stage=Stage.OUTSIDE,
    normal="a steady stream back into the tank",
    background=HARDLY_EVER,
    also=("dry sump tank goes empty", "oil piles up in the crankcase"),
)
NO_RETURN_TO_TANK = Finding(
    id="no_return_to_tank",
    station=Station.PUMP,
    says="no oil comes back to the tank while it runs",
    asks="Dry sump: does no oil come back to the tank while it runs?",
    source=COMMON_PRACTICE,
    denies="oil comes back to the tank while it runs",
    stage=Stage.KNOWN,
    normal="oil in the return within a minute of the start, then in spurts",
    why="oil that comes back was fed first: feed pump and scavenge stage both move it",
    background=RARE,
    also=(
        "no return to the tank",
        "no oil returning to the tank",
        "nothing comes back to the tank",
    ),
)
PUMP_BELT_OFF = Finding(
    id="pump_belt_off",
    station=Station.PUMP,
    says="the belt of an outside pump is off, slack or stripped",
    asks="Outside oil pump: belt off, slack or stripped?",
    source=idea_from(sources.OIL_AERATION_ARTICLE),
    denies="the pump's belt is whole and tight",
    stage=Stage.OUTSIDE,
    normal="whole, aligned and tight",
    background=VERY_RARE,
    also=("dry sump belt came off", "oil pump belt broken", "threw the pump belt"),
)
WATCH_THE_OIL_TANK = Inspection(
    id="watch_the_oil_tank",
    station=Station.PUMP,
    says="dry sump: watch tank, return and pump belt",
    steps=(
        "engine stopped: look at belt and pulleys",
        "engine running: look for a steady return and a steady level in the tank",
        "stop as soon as the level sinks or the needle wavers",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(NO_RETURN_TO_TANK, TANK_EMPTIES_RUNNING, PUMP_BELT_OFF),
    only_with=(features.DRY_SUMP,),
    source=idea_from(sources.OIL_AERATION_ARTICLE),
    tools=("lamp",),
    cautions=RUNNING,
    needs_running=True,
    also=(
        "oil returning to the tank",
        "scavenge return",
    ),
)
