"""More parts that are worked on; the shape and the common ones are in ``parts``."""

from __future__ import annotations

from knowledge.lexicon.things.parts_model import PartWorked
from knowledge.reports.words import Done

_R, _C, _B, _A, _F = Done.RENEWED, Done.CLEANED, Done.REBUILT, Done.ADJUSTED, Done.REFITTED
PARTS_RARE: tuple[PartWorked, ...] = (
    PartWorked(names=("clutch|gearbox|transmission",), area="clutch_or_gearbox"),
    PartWorked(names=("gearbox|transmission|clutch oil|fluid",), area="clutch_or_gearbox"),
    # of other systems: no oil change and no oil filter
    PartWorked(
        names=(
            "diff|differential|axle|hydraulic|fork|steering|brake|hub oil|fluid",
            "air|cabin|pollen|hydraulic|vacuum filter|filters|cleaner element?",
            "temp|temperature|coolant|crank|cam|knock|speed|oxygen|lambda|map sensor|sender",
            "fuel|gas|petrol tank? gauge|sender|sensor",
            "fuel pressure regulator",
        ),
    ),
    PartWorked(names=("fuel|diesel|petrol|inline filter|filters element?",), area="fuel_system"),
    PartWorked(
        names=("fuel|lift|injection|hp pump", "injectors|injector|carb|carburettor|carburetor"),
        area="fuel_system",
    ),
    PartWorked(
        names=(
            "battery|alternator|points|coil",
            "points plugs|plug",
            "plugs and|& points|leads|coil",
        ),
        area="ignition_or_electrics",
    ),
    PartWorked(
        names=("voltage|alternator|charging|fuel|fuel-pressure|gas|dynamo regulator",),
        area="ignition_or_electrics",
    ),
    PartWorked(names=("spark plugs|plug",), area="ignition_or_electrics", area_if=Done.RENEWED),
    PartWorked(
        names=("radiator|thermostat|heat-exchanger", "raw? water pump"), area="cooling_system"
    ),
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
        names=("engine|motor|lube? oil",),
        trials={_R: "right_oil"},
        area="oil_change",
        area_if=Done.RENEWED,
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
        names=("oil? filter head? bypass valve?", "bypass|by-pass valve in|of the? filter head?"),
        trials=dict.fromkeys((_C, _R, _B), "bypass_freed"),
    ),
    PartWorked(
        names=(
            "o-rings|o-ring|orings|oring|seals|seal|gasket|gaskets on|of|for|in|at|between the? oil? transfer|feed|gallery|"
            "jumper|passage tube|tubes|pipe|pipes|passage?",
            "oil? transfer|gallery|jumper|feed-tube tube? o-rings|o-ring|seals|seal|gasket",
            "front|timing cover gasket|gaskets|o-ring|seal",
            "oil transfer tube|tubes",
        ),
        trials={_R: "gallery_seals_renewed"},
        area="timing",
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
            "drain|sump plug washer|gasket?",
            "washer|gasket on|for|of|under the? drain|sump plug",
        ),
        trials=dict.fromkeys((_R, _A, _F), "drain_plug_tightened"),
    ),
    PartWorked(
        names=(
            "oil? cooler|radiator|cylinder fins|matrix|face|core-face",
            "fins of|on the? cooler|radiator|oil-cooler",
            "oil? cooler|cooling|air duct|ducting|ducts|shroud|baffle|baffles|fan",
        ),
        trials=dict.fromkeys((_R, _C, _B, _F), "oil_cooling_improved"),
        area="cooling_system",
    ),
    PartWorked(
        names=(
            "fuel|lift pump diaphragm|seal?",
            "injector|injectors",
            "injector|injectors seals|seal|washers|o-rings",
            "leaking|leaky|dribbling injector|injectors",
            "float|needle|carb|carburettor|carburetor float|needle|valve|seat",
            "float|carb|carburettor|carburetor",
        ),
        trials=dict.fromkeys((_R, _B), "fuel_leak_mended"),
        area="fuel_system",
    ),
    PartWorked(
        names=(
            "oil? pump drive gear|shaft|chain|coupling|coupler",
            "oil? pump shaft|driveshaft|drive-shaft|chain|coupling|coupler|sprocket|belt|quill",
            "oil? pump drive belt|sprocket|rod|quill|key|pin",
            "hex|quill|tongue drive? shaft|rod",
            "intermediate|skew|jack shaft|gear|pinion",
            "distributor|dizzy|worm drive? gear|gears",
        ),
        trials={_R: "pump_drive_renewed"},
        area="pump_drive",
    ),
    PartWorked(
        names=(
            "oil? pump bolts|bolt|screws|cover-bolts|mounting-bolts",
            "bolts|bolt|screws|nuts on|of|holding the? oil? pump",
            "oil? pump cover|mount|mounting bolts|screws|bolt",
        ),
        trials={_A: "pump_refitted", _R: "pump_refitted"},
        area="oil_pump",
    ),
    PartWorked(
        names=(
            "relief ball|plunger|piston|valve and|& spring",
            "ball|plunger and|& relief? spring",
        ),
        trials={_R: "new_relief_valve", _C: "relief_cleaned"},
        area="relief_valve",
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
        names=("scavenge pump|belt|stage|section belt?", "dry-sump|drysump belt", "dry sump belt"),
        trials=dict.fromkeys((_R, _B, _C, _A), "scavenge_mended"),
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
    PartWorked(
        names=(
            "vacuum|hydraulic|steering|power-steering|servo|air pump",
            "governor|magneto|compressor",
            "blanking plate|cover",
        ),
        area="accessory",
    ),
    PartWorked(names=("oil? filter head|housing|bowl|mount",), area="filter_change"),
    PartWorked(
        names=(
            "oil? filter|cooler head|housing|adapter|adaptor|base o-ring|o-rings|oring|orings|seal|seals|gasket|gaskets",
        ),
        trials={_R: "seals_renewed"},
    ),
    PartWorked(
        names=(
            "little|small|tiny|filter|mesh? screen|filter|gauze|restrictor|strainer under|below|behind|beneath the? oil? pressure? sender|switch|sensor|gauge|it",
        ),
        trials=dict.fromkeys((_R, _C, _F), "gauge_line_renewed"),
        area="instrument",
    ),
    PartWorked(
        names=(
            "oil? pump rotors|=gears|internals|vanes|innards",
            "rotors|gears|vanes|internals|innards in|into|for|to|on the? oil? pump",
            "oil? pump rebuild|repair|overhaul|service kit",
            "oil? pump end float|clearance",
            "oil? pump cover|end-plate|endplate|backplate|back-plate|end plate?",
            "=rotors",
            "rotor set",
        ),
        trials=dict.fromkeys((_R, _B, _C, _A), "pump_rebuilt"),
        area="oil_pump",
    ),
    PartWorked(
        names=(
            "hose|hoses|pipe|pipes|line|flexi|flexible|union|unions|fitting|joint on|to|for|from|of|at the? remote|oil? "
            "filter|cooler|cooler-pipe|turbo|filter-head hose|pipe|line|feed?",
        ),
        trials=dict.fromkeys((_R, _B, _A, _F), "oil_line_renewed"),
        area="oil_cooler_or_lines",
    ),
    PartWorked(
        names=(
            "windage|scraper tray?",
            "crank? scraper and|& windage? tray?",
            "sump|pan|trap-door? baffle|baffles|baffling plate?",
            "baffle|baffles|trap-door|trap-doors|tray in|into|for|to the? oil? sump|pan",
            "baffled|baffle sump|pan|oil-pan",
            "trap door|doors in|to|into? the? sump|pan?",
        ),
        trials=dict.fromkeys((_R, _B, _F), "sump_baffled"),
        area="sump",
    ),
    PartWorked(
        names=("hose|pipe|line from|between the? oil? tank to|and the? oil? pump",),
        trials=dict.fromkeys((_R, _A, _B), "suction_hose_renewed"),
        area="pickup",
    ),
    PartWorked(
        names=(
            "extra|separate|additional|dedicated|new ground|earth wire|lead|cable to|from|on|off the? sender|sensor|switch body|case|casing?",
            "ground|earth wire|lead|cable to|from|on|off the? sender|sensor|switch body|case|casing",
        ),
        trials={_R: "ground_wire_added"},
        area="instrument",
    ),
    PartWorked(
        names=("oil? filter gasket|seal|o-ring|oring|ring",),
        trials=dict.fromkeys((_R, _F), "filter_tightened"),
        area="filter_change",
    ),
    PartWorked(
        names=("drain|sump|oil-drain plug", "plug in|on|of the? sump|pan"),
        trials=dict.fromkeys((_R, _A, _F), "drain_plug_tightened"),
    ),
    PartWorked(
        names=("liftpump|fuelpump",),
        trials=dict.fromkeys((_R, _B), "fuel_leak_mended"),
        area="fuel_system",
    ),
    PartWorked(
        names=("banjo|hollow bolt|bolts|union?",),
        trials={_C: "galleries_cleaned", _R: "oil_line_renewed", _A: "oil_line_renewed"},
    ),
)
