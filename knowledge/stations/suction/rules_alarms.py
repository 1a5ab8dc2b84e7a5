"""Alarms at the suction side: when to stop, or not to run."""

from knowledge import sources
from knowledge.debris import findings as debris_findings
from knowledge.model import Severity, Station
from knowledge.pressure import behaviour
from knowledge.rule_api import Alarm, Conclusions, Known, example, rules_of
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
            "Pickup off, limit is a tight fit: do not start before it is refitted and the "
            "bearings have been looked at",
        )
    if known.has(findings.SUCTION_UNION_LOOSE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Suction joint loose, limit is tight and free of air: do not start before it is made "
            "good and the pump primed",
        )
    if known.has(findings.TANK_STILL_FULL):
        yield Alarm(
            Severity.STOP,
            "Pressure gone with the tank full, limit is pressure within 10 seconds: stop, find "
            "what parts the tank from the pump",
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
    """A closed inlet, or metal on the mesh, means no start before cause and bearings are seen."""
    if known.has(findings_sump.SCREEN_BLOCKED) or known.has(findings_sump.CLOTH_ON_SCREEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pickup screen covered, limit is a clear mesh: do not start before sump and screen are "
            "clean and the source is known",
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
            "Metal flakes on the screen, limit is none: do not start before the bearings are seen",
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
    """A floor against the pickup starves the pump as soon as the revs rise."""
    if known.has(findings_pickup.PICKUP_GAP_TOO_SMALL):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pickup gap too small, limit 3/16 inch (4.8 mm) unless the maker says otherwise: set "
            "the gap before starting",
        )
    if known.has(behaviour.CHANGED_AFTER_KNOCK) and known.has(findings.SUMP_DENTED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Sump dented and pressure changed since, limit is a flat floor: do not run before the "
            "pickup has been looked at",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings_pickup.TRAY_RUBBED)],
    non_matches=[example(lacks=[findings_pickup.TRAY_RUBBED])],
)
def rods_touch_the_tray(known: Known) -> Conclusions:
    """A tray touched by the rods breaks up into the sump."""
    if known.has(findings_pickup.TRAY_RUBBED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Tray touched by the rods, limit is 0.060 inch (1.5 mm) clear: do not run before tray "
            "and rod bearings have been checked",
        )
