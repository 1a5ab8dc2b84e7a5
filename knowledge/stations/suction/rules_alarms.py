"""Alarms at the suction side: when to stop, or not to run."""

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.debris import findings as debris_findings
from knowledge.model import Severity, Station
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.suction import findings, findings_pickup, findings_sump

rule = rules_of(Station.SUCTION)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings_sump.PICKUP_FELL_OFF),
        example(findings.SUCTION_UNION_LOOSE),
        example(findings.TANK_STILL_FULL),
    ],
    non_matches=[
        example(
            lacks=[
                findings_sump.PICKUP_FELL_OFF,
                findings.SUCTION_UNION_LOOSE,
                findings.TANK_STILL_FULL,
            ]
        )
    ],
)
def pump_cut_off_from_its_oil(known: Known) -> Conclusions:
    """A pump cut off from its oil draws air: the bearings run dry within seconds."""
    if known.has(findings_sump.PICKUP_FELL_OFF):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pickup off, limit is a tight fit: do not start until it is refitted and you have "
            "inspected the bearings",
        )
    if known.has(findings.SUCTION_UNION_LOOSE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Suction joint loose, limit is tight and free of air: do not start until it is repaired "
            "and the pump primed",
        )
    if known.has(findings.TANK_STILL_FULL):
        yield Alarm(
            Severity.STOP,
            "Pressure gone with the tank full, limit is pressure within 10 seconds: stop, find what "
            "cuts the pump off from the tank",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings_sump.SCREEN_BLOCKED),
        example(findings_sump.CLOTH_ON_SCREEN),
        example(findings_sump.ICE_AT_SCREEN),
        example(debris_findings.METAL_IN_SCREEN),
    ],
    non_matches=[
        example(
            lacks=[
                findings_sump.SCREEN_BLOCKED,
                findings_sump.CLOTH_ON_SCREEN,
                findings_sump.ICE_AT_SCREEN,
                debris_findings.METAL_IN_SCREEN,
            ]
        )
    ],
)
def inlet_closed(known: Known) -> Conclusions:
    """Closed inlet, or metal on the screen: do not start until you have inspected the bearings."""
    if known.has(findings_sump.SCREEN_BLOCKED) or known.has(findings_sump.CLOTH_ON_SCREEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pickup screen covered, limit is a clear mesh: do not start until sump and screen are "
            "clean and you know the source",
        )
    if known.has(findings_sump.ICE_AT_SCREEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Ice at the pickup, limit is none: do not crank or start, thaw with gentle heat and no "
            "flame, then drain the water",
        )
    if known.has(debris_findings.METAL_IN_SCREEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Metal flakes on the screen, limit is none: do not start until you have inspected the "
            "bearings",
        )


@rule(
    source=sources.LOWER_ENGINE_NOISE_2006,
    matches=[
        example(findings_pickup.PICKUP_GAP_TOO_SMALL),
        example(behaviour.CHANGED_AFTER_KNOCK, findings.SUMP_DENTED),
    ],
    non_matches=[
        example(findings.SUMP_DENTED),
        example(lacks=[findings_pickup.PICKUP_GAP_TOO_SMALL, findings.SUMP_DENTED]),
    ],
)
def floor_too_near_the_pickup(known: Known) -> Conclusions:
    """With the floor against the pickup, the pump runs short of oil as soon as the revs rise."""
    if known.has(findings_pickup.PICKUP_GAP_TOO_SMALL):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pickup gap too small, limit 3/16 inch (4.8 mm) unless the maker says otherwise: set the "
            "gap before you start",
        )
    if known.has(behaviour.CHANGED_AFTER_KNOCK) and known.has(findings.SUMP_DENTED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Sump dented and pressure changed since, limit is a flat floor: do not run until you "
            "have inspected the pickup",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings_pickup.TRAY_RUBBED)],
    non_matches=[example(lacks=[findings_pickup.TRAY_RUBBED])],
)
def rods_touch_the_tray(known: Known) -> Conclusions:
    """If the rods touch the tray, it breaks up into the sump."""
    if known.has(findings_pickup.TRAY_RUBBED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "The rods touch the windage tray, limit is 0.060 inch (1.5 mm) clear: do not run until "
            "you have checked tray and rod bearings",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings.SUCTION_HOSE_FLATTENS),
        example(patterns_speed.FALLS_AS_REVS_RISE),
    ],
    non_matches=[
        example(lacks=[findings.SUCTION_HOSE_FLATTENS, patterns_speed.FALLS_AS_REVS_RISE]),
        example(patterns.GAUGE_READS_LOW),
    ],
)
def pump_starved_at_speed(known: Known) -> Conclusions:
    """A pump that starves at speed: at idle all looks well, and the bearings fail at speed."""
    if known.has(findings.SUCTION_HOSE_FLATTENS):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Suction hose flattens, limit is a hose that keeps its shape at every speed: do not run "
            "it until you have renewed the hose and found what it sucks against",
        )
    if known.has(patterns_speed.FALLS_AS_REVS_RISE):
        yield Alarm(
            Severity.CARE,
            "pressure falls as the revs rise, the speed where it begins is the limit: stay below "
            "it, without load, until you find the cause",
            lets_run=True,
        )
