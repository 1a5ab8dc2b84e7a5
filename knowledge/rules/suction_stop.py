"""When the suction side says stop."""

from knowledge.findings.behaviour import CHANGED_AFTER_KNOCK
from knowledge.findings.debris import METAL_IN_SCREEN
from knowledge.findings.suction import (
    PICKUP_FELL_OFF,
    PICKUP_GAP_TOO_SMALL,
    SUCTION_UNION_LOOSE,
    SUMP_DENTED,
    TANK_STILL_FULL,
    TRAY_RUBBED,
)
from knowledge.findings.suction_debris import (
    CLOTH_ON_SCREEN,
    ICE_AT_SCREEN,
    SCREEN_BLOCKED,
)
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Known,
    case_of,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import GMC, HB17, WTS
from knowledge.vocabulary import Severity, Station

rule = rules_of(Station.SUCTION)


@rule(
    source=GMC,
    catches=[case_of(PICKUP_FELL_OFF), case_of(SUCTION_UNION_LOOSE), case_of(TANK_STILL_FULL)],
    spares=[case_of(lacks=[PICKUP_FELL_OFF, SUCTION_UNION_LOOSE, TANK_STILL_FULL])],
)
def pump_cut_off_from_its_oil(known: Known) -> Conclusions:
    """A pump cut off from its oil draws air: the bearings run dry within seconds."""
    if known.has(PICKUP_FELL_OFF):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pickup off, limit is a tight fit: do not start before it is refitted and the "
            "bearings have been looked at",
        )
    if known.has(SUCTION_UNION_LOOSE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Suction joint loose, limit is tight and free of air: do not start before it is made "
            "good and the pump primed",
        )
    if known.has(TANK_STILL_FULL):
        yield Alarm(
            Severity.STOP,
            "Pressure gone with the tank full, limit is pressure within 10 seconds: stop, find "
            "what parts the tank from the pump",
        )


@rule(
    source=CP,
    catches=[
        case_of(SCREEN_BLOCKED),
        case_of(CLOTH_ON_SCREEN),
        case_of(ICE_AT_SCREEN),
        case_of(METAL_IN_SCREEN),
    ],
    spares=[case_of(lacks=[SCREEN_BLOCKED, CLOTH_ON_SCREEN, ICE_AT_SCREEN, METAL_IN_SCREEN])],
)
def inlet_closed(known: Known) -> Conclusions:
    """A closed inlet, or metal on the mesh, means no start before cause and bearings are seen."""
    if known.has(SCREEN_BLOCKED) or known.has(CLOTH_ON_SCREEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pickup screen covered, limit is a clear mesh: do not start before sump and screen are "
            "clean and the source is known",
        )
    if known.has(ICE_AT_SCREEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Ice at the pickup, limit is none: do not crank or start, thaw with gentle heat and no "
            "flame, then drain the water",
        )
    if known.has(METAL_IN_SCREEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Metal flakes on the screen, limit is none: do not start before the bearings are seen",
        )


@rule(
    source=HB17,
    catches=[case_of(PICKUP_GAP_TOO_SMALL), case_of(CHANGED_AFTER_KNOCK, SUMP_DENTED)],
    spares=[case_of(SUMP_DENTED), case_of(lacks=[PICKUP_GAP_TOO_SMALL, SUMP_DENTED])],
)
def floor_too_near_the_pickup(known: Known) -> Conclusions:
    """A floor against the pickup starves the pump as soon as the revs rise."""
    if known.has(PICKUP_GAP_TOO_SMALL):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pickup gap too small, limit 3/16 inch (4.8 mm) unless the maker says otherwise: set "
            "the gap before starting",
        )
    if known.has(CHANGED_AFTER_KNOCK) and known.has(SUMP_DENTED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Sump dented and pressure changed since, limit is a flat floor: do not run before the "
            "pickup has been looked at",
        )


@rule(source=WTS, catches=[case_of(TRAY_RUBBED)], spares=[case_of(lacks=[TRAY_RUBBED])])
def rods_touch_the_tray(known: Known) -> Conclusions:
    """A tray touched by the rods breaks up into the sump."""
    if known.has(TRAY_RUBBED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Tray touched by the rods, limit is 0.060 inch (1.5 mm) clear: do not run before tray "
            "and rod bearings have been checked",
        )
