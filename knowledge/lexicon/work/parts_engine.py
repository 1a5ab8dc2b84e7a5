"""Parts that are worked on: crank, bearings, head, valve gear, seals and turbo."""

from __future__ import annotations

from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done

_R, _C, _B, _A, _F = Done.RENEWED, Done.CLEANED, Done.REBUILT, Done.ADJUSTED, Done.REFITTED
PARTS: tuple[PartWorked, ...] = (
    PartWorked(
        names=(
            "crank? bearings|bearing|shells",
            "main|rod|big-end|mains and|&|+ rod|main|big-end bearings|shells",
            "main|mains and|&|+ big end bearings|shells",
            "big end and|&|+ main bearings|shells",
            "bearing|bottom-end|crank shells|set",
            "rods|rod and|& mains|main bearings?",
            "mains and|&|+|plus|, rods|big-ends",
            "main|mains and|&|+|plus conrod|con-rod|rod|bigend|big-end bearings|shells|inserts",
            "mains|main-bearings and|&|+|plus|, big ends",
            "big ends and|&|+|plus|, mains",
            "bottom end bearings",
        ),
        trials={_R: "new_bearings"},
        area="bearings",
    ),
    PartWorked(
        names=("main bearings|shells", "mains"), trials={_R: "new_main_bearings"}, area="bearings"
    ),
    PartWorked(
        names=(
            "rod|big-end|conrod|connecting-rod bearings|shells",
            "big end bearings|shells?",
            "big ends",
            "=rods",
        ),
        trials={_R: "new_rod_bearings"},
        area="bearings",
    ),
    PartWorked(
        names=("=crank|crankshaft",),
        trials={_B: "crank_reground", _R: "crank_reground"},
        area="bearings",
    ),
    PartWorked(
        names=("crank|crankshaft|cam|camshaft position? sensor", "crank|crankshaft pulley|damper"),
        area="ignition_or_electrics",
    ),
    PartWorked(
        names=("cam|camshaft bearings|bearing|bushes|bushings|bush",),
        trials={_R: "new_cam_bearings"},
        area="cam_bearings",
    ),
    PartWorked(
        names=("lifters|lifter|tappets|hlas", "hydraulic? lash adjusters|adjuster"),
        trials={_R: "new_lifters", _F: "new_lifters"},
        area="camshaft",
    ),
    PartWorked(names=("cam|camshaft|followers|valve-gear",), area="camshaft"),
    PartWorked(
        names=("rockers|rocker shaft|gear?",),
        trials={_R: "rocker_gear_renewed", _B: "rocker_gear_renewed"},
        area="camshaft",
    ),
    PartWorked(
        names=(
            "cylinder? head gasket",
            "cylinder? head|heads",
            "headgasket",
            "both =gaskets",
            "valve job",
            "=valves",
        ),
        area="cylinder_head",
    ),
    PartWorked(
        names=(
            "timing chain|gear|gears|set|belt",
            "cam chain|belt",
            "chain|chains",
            "cambelt",
            "front|timing|chain cover|case|chest",
            "chain kit",
        ),
        trials={_R: "timing_gear_renewed"},
        area="timing",
    ),
    PartWorked(
        names=("timing|cam? chain? tensioner|tensioners",),
        trials={_R: "new_tensioner"},
        area="timing",
    ),
    PartWorked(
        names=(
            "cam|camshaft? phaser|phasers|vvt|vanos",
            "vvt|vct|vanos|cam|valve-timing oil? control? actuator|solenoid|unit|valve|gear|adjuster",
            "variable valve? timing oil? control? solenoid|valve|actuator",
            "oil control valve|solenoid",
            "ocv",
        ),
        trials={_R: "cam_phaser_renewed", _C: "cam_phaser_renewed"},
        area="timing",
    ),
    PartWorked(
        names=(
            "piston|cooling|oil? squirters|squirter|jets",
            "piston|cooling|oil nozzle|nozzles",
            "piston oil|cooling? jets|jet|squirter",
        ),
        trials={_R: "piston_jets_renewed", _F: "piston_jets_renewed", _A: "piston_jets_renewed"},
        area="pistons",
    ),
    PartWorked(names=("oil|head|cam? restrictors|restrictor",), trials={_R: "restrictor_fitted"}),
    PartWorked(names=("idle|tickover|idling speed?",), trials={_A: "idle_raised"}),
    PartWorked(
        names=("=rings|pistons|piston|liners|cylinder|cylinders|barrels|jugs",), area="pistons"
    ),
    PartWorked(
        names=(
            "turbo|turbocharger",
            "feed|oil|supply|oil-feed|drain|return line|pipe|hose|feed to|of|for|on|from the? turbo|turbocharger",
            "turbo oil? feed? unit|cartridge|feed|pipe|line|hose",
        ),
        trials={_R: "new_turbo", _B: "new_turbo"},
        area="turbo",
    ),
    PartWorked(
        names=(
            "pcv valve?",
            "crankcase? breather hose|pipe|pipes|tube|filter|valve|system|gauze|mesh|element|cap|box|baffle?",
            "crankcase ventilation valve|hose?",
        ),
        trials={_R: "breather_cleaned", _C: "breather_cleaned"},
    ),
    PartWorked(
        names=("rear main seal?", "front|rear|crank crank? seal"),
        trials={_R: "seals_renewed"},
        area="clutch_or_gearbox",
    ),
    PartWorked(names=("seals|gaskets",), trials={_R: "seals_renewed"}),
    PartWorked(
        names=(
            "engine|motor|whole-thing",
            "bottom end",
            "short block|engine",
            "two|three|four|six|eight|twin|single|@number cylinder|cyl|pot engine|motor|diesel?",
            "straight|inline|flat|vee six|four|eight|twin|five engine|motor|diesel?",
            "v8|v6|v4|flathead|bigblock|smallblock|big-block|small-block|twincam|twin-cam engine|motor?",
        ),
        trials={_B: "engine_rebuilt"},
        area="whole_engine",
        area_if=Done.REBUILT,
    ),
    PartWorked(
        names=(
            "main|mains|rod|rods|bearing|big-end|crankcase|conrod cap|caps? bolts|bolt|nuts|nut|studs",
            "main|rod|bearing caps",
        ),
        trials={_A: "bolts_tightened"},
        area="bearings",
    ),
    PartWorked(
        names=(
            "crank|crankshaft|front|rear|cam|camshaft|oil|timing|main seal|seals",
            "rocker|valve|cam|tappet cover? gasket|gaskets",
            "sump|pan gasket and|& rear|front|crank seal|seals",
        ),
        trials={_R: "seals_renewed"},
    ),
    PartWorked(
        names=(
            "balance|balancer|counterbalance shaft|shafts|unit? bearings|bushes|bushings|bush?",
            "jackshaft|auxiliary|aux bearings|bushes|bushings",
            "auxiliary|intermediate|jack shaft bearings|bushes|bushings",
            "timing? idler gear? bush|bushing|hub|bearing",
            "timing? idler gear|gears",
            "balance|balancer shaft|shafts assembly|unit?",
        ),
        trials=dict.fromkeys((_R, _B), "new_shaft_bearings"),
    ),
    PartWorked(
        names=("=block|crankcase|cylinder-block", "cracked|bare engine? block"),
        trials={_R: "block_replaced", _B: "engine_rebuilt"},
    ),
    PartWorked(
        names=(
            "oil? drain|return|drainback|drain-back back? holes|passages|slots|hole",
            "=drainbacks|drain-backs",
        ),
        trials={_C: "oil_returns_opened"},
    ),
    PartWorked(
        names=("rocker|rockers bushes|bushings|shaft|shafts|assembly|gear?",),
        trials=dict.fromkeys((_R, _B), "rocker_gear_renewed"),
        area="camshaft",
    ),
)
