"""Root causes along the pump's drive, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_DOWN,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.pump import findings, findings_bench, findings_drive, findings_mount

PUMP_DRIVE_BROKEN = Cause(
    id="pump_drive_broken",
    station=Station.PUMP,
    says="pump drive broken: shaft, tang, coupling, pin, gear or chain",
    mechanism="the pump stops at once: sudden zero; whatever shares its drive may stop too",
    rate=Rate.COMMON,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="renew the drive and find what jammed or overloaded it",
    source=sources.NAVY_ENGINEMAN,
    follows="bearing failure within seconds to minutes",
    also=(
        "oil pump drive shaft snapped",
        "intermediate shaft broken",
        "oil pump chain broke",
        "sheared oil pump drive",
    ),
)
DRIVE_THAT_SKIPS_BEFORE_IT_LETS_GO = LinkGroup(
    id="drive_that_skips_before_it_lets_go",
    station=Station.PUMP,
    says="A drive often slips and sheds filings before it breaks.",
    parent=PUMP_DRIVE_BROKEN,
    effects={
        conditions.PUMP_DRIVE_ERRATIC: (SOMETIMES, idea_from(sources.WORN_GEAR_THREAD)),
    },
    matches=[example(patterns.GAUGE_READS_ZERO, findings_drive.STEPPED_DOWN_AND_STAYED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, patterns_speed.GOOD_COLD_LOW_HOT)],
)
PUMP_STOPS_AT_ONCE = LinkGroup(
    id="pump_stops_at_once",
    station=Station.PUMP,
    says="A broken drive stops the pump at once: from good pressure to none in seconds.",
    note=(
        "Whatever shares the drive (ignition, tachometer) may stop with it. A drive seldom "
        "breaks without a reason: look for what jammed the pump."
    ),
    parent=PUMP_DRIVE_BROKEN,
    effects={
        conditions.PUMP_NOT_TURNING: (ALWAYS, sources.NAVY_ENGINEMAN),
        patterns.FELL_SUDDENLY: (OFTEN, sources.NAVY_ENGINEMAN),
        findings.DRIVE_PARTNER_STOPPED: (SOMETIMES, COMMON_PRACTICE),
        findings.ROTOR_STILL_WHEN_CRANKED: (SOMETIMES, COMMON_PRACTICE),
        findings_drive.DRIVE_SHAFT_BROKEN: (OFTEN, COMMON_PRACTICE),
        findings_drive.DRIVE_GEAR_STRIPPED: (SOMETIMES, COMMON_PRACTICE),
        findings_drive.DRIVE_COUPLING_SHEARED: (SOMETIMES, COMMON_PRACTICE),
        findings_drive.PUMP_CHAIN_BROKEN: (SOMETIMES, sources.MOTORCYCLE_MANUAL),
        findings_drive.DRIVE_NOT_ENGAGED: (SOMETIMES, COMMON_PRACTICE),
        findings_bench.STEEL_SLIVERS_IN_PUMP: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(patterns.FELL_SUDDENLY, findings_drive.DRIVE_SHAFT_BROKEN),
        example(patterns.FELL_SUDDENLY, findings.DRIVE_PARTNER_STOPPED),
        example(findings_drive.DRIVE_COUPLING_SHEARED),
        example(patterns.FELL_SUDDENLY, findings.ROTOR_STILL_WHEN_CRANKED),
    ],
    non_matches=[
        example(patterns.FELL_SUDDENLY, lacks=[findings_drive.PUMP_SEEN_STANDING]),
        example(
            patterns.FELL_SUDDENLY,
            lacks=[findings_drive.DRIVE_SHAFT_BROKEN, findings_drive.DRIVE_GEAR_STRIPPED],
        ),
    ],
)

PUMP_DRIVE_SLIP = Cause(
    id="pump_drive_slip",
    station=Station.PUMP,
    says="pump drive worn or rounded so that it slips or lags",
    mechanism="the pump slips with its drive: pressure drops now and then, or builds up late",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="fit a new shaft with a steel collar, and the worn gears with it",
    source=sources.PUMP_MAKER_SHAFTS_SCREENS,
    follows="a broken pump drive; filings in the oil",
    also=("rounded oil pump shaft", "worn distributor gear", "hex shaft rounded off"),
)
DRIVE_THAT_SLIPS_OR_LAGS = LinkGroup(
    id="drive_that_slips_or_lags",
    station=Station.PUMP,
    says=(
        "A rounded shaft or worn drive gear slips: pressure comes and goes, ignition timing "
        "scatters."
    ),
    note="Misleads when only the distributor is worn and it does not drive the pump.",
    parent=PUMP_DRIVE_SLIP,
    effects={
        conditions.PUMP_DRIVE_ERRATIC: (ALWAYS, sources.PUMP_MAKER_SHAFTS_SCREENS),
        findings.IGNITION_SCATTERS: (OFTEN, COMMON_PRACTICE),
        findings_drive.DRIVE_SHAFT_ROUNDED: (OFTEN, sources.PUMP_MAKER_SHAFTS_SCREENS),
        findings_drive.DRIVE_GEAR_WORN: (OFTEN, sources.WORN_GEAR_THREAD),
        findings_drive.DRIVE_COUPLING_SHEARED: (SELDOM, JUDGEMENT),
        findings_drive.DRIVE_NOT_ENGAGED: (SELDOM, JUDGEMENT),
        findings_drive.TOO_MUCH_DRIVE_FLOAT: (SOMETIMES, JUDGEMENT),
        findings_bench.STEEL_SLIVERS_IN_PUMP: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.NEEDLE_FLICKERS, findings.IGNITION_SCATTERS),
        example(findings_drive.DRIVE_SHAFT_ROUNDED),
        example(findings_drive.DRIVE_GEAR_WORN, findings_drive.TOO_MUCH_DRIVE_FLOAT),
    ],
    non_matches=[
        example(
            patterns.NEEDLE_FLICKERS,
            lacks=[
                findings.IGNITION_SCATTERS,
                findings_drive.DRIVE_SHAFT_ROUNDED,
                findings_drive.DRIVE_GEAR_WORN,
            ],
        )
    ],
)

PUMP_DRIVE_BIND = Cause(
    id="pump_drive_bind",
    station=Station.PUMP,
    says="pump drive binds: shaft too long, bottomed or out of line",
    mechanism="gears and cover are pushed together and wear fast; the pressure wanders",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="fit the right shaft; set the end float with the pump bolted up",
    source=sources.BLOG_SHAFT_BOUND_2009,
    follows="a failed drive gear and a worn pump cover",
    also=("oil pump shaft too long", "distributor bottoming", "distributor won't drop in"),
)
DRIVE_WITHOUT_END_FLOAT = LinkGroup(
    id="drive_without_end_float",
    station=Station.PUMP,
    says=(
        "A drive without end float binds: it wears out its gear and pushes the pump into its cover."
    ),
    note="Look for a shaft that is too long, or a distributor that will not seat by hand.",
    parent=PUMP_DRIVE_BIND,
    effects={
        conditions.PUMP_DRIVE_ERRATIC: (MOSTLY, sources.BLOG_SHAFT_BOUND_2009),
        conditions.PUMP_SLIP: (SOMETIMES, JUDGEMENT),
        behaviour.CHANGED_WITH_NEW_PUMP: (SOMETIMES, sources.BLOG_SHAFT_BOUND_2009),
        findings_drive.NO_DRIVE_END_FLOAT: (MOSTLY, sources.BLOG_SHAFT_BOUND_2009),
        findings.DISTRIBUTOR_WILL_NOT_SEAT: (OFTEN, sources.BLOG_SHAFT_BOUND_2009),
        findings_drive.DRIVE_SHAFT_TOO_LONG: (OFTEN, COMMON_PRACTICE),
        findings_drive.DRIVE_GEAR_WORN: (OFTEN, sources.DISTRIBUTOR_PRACTICES_2016),
        findings.IGNITION_SCATTERS: (SOMETIMES, JUDGEMENT),
        findings_bench.COVER_GROOVED: (SOMETIMES, COMMON_PRACTICE),
        findings_mount.PUMP_TURNS_ROUGHLY: (SOMETIMES, JUDGEMENT),
        findings.PUMP_NOISE: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(behaviour.CHANGED_WITH_NEW_PUMP, findings_drive.NO_DRIVE_END_FLOAT),
        example(findings.DISTRIBUTOR_WILL_NOT_SEAT),
        example(findings_drive.DRIVE_SHAFT_TOO_LONG),
    ],
    non_matches=[
        example(
            behaviour.CHANGED_WITH_NEW_PUMP,
            lacks=[findings_drive.NO_DRIVE_END_FLOAT, findings.DISTRIBUTOR_WILL_NOT_SEAT],
        )
    ],
)
