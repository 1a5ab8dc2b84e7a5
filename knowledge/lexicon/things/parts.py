"""The parts that are worked on: their names, and the trial or area each piece of work is."""

from __future__ import annotations

from knowledge.lexicon.things.parts_model import PartWorked
from knowledge.lexicon.things.parts_rare import PARTS_RARE
from knowledge.reports.words import Done

_R, _C, _B, _A, _F = Done.RENEWED, Done.CLEANED, Done.REBUILT, Done.ADJUSTED, Done.REFITTED
#: the longer name is taken where several fit
PARTS: tuple[PartWorked, ...] = (
    PartWorked(
        names=(
            "oil? pressure? sender|sensor|sending-unit|sendor|transmitter|transducer|senders|sensors x2|x3|unit?",
            "oil? pressure? sending unit",
            "oil? pressure switch",
            "oil? switch",
            "oil pressure sensor",
            "oil? pressure? transducer|oilstat|sender-unit|sending-unit",
            "oil? pressure? sender|sensor|switch unit",
            "oil pressure unit",
            "=ops",
            "oil|pressure|warning|idiot|low oil? pressure? warning? light|lamp switch|sender",
        ),
        trials={_R: "new_sender"},
        area="instrument",
    ),
    PartWorked(
        names=(
            "oil? pressure? gauge|gage|guage",
            "oil pressure gauge",
            "capillary oil? gauge",
            "instrument|gauge|dash cluster|panel|binnacle|pod",
            "=cluster|binnacle",
            "oil? pressure clock",
        ),
        trials={_R: "other_gauge"},
        area="instrument",
    ),
    PartWorked(
        names=(
            "gauge? wiring|wire|terminal|loom|harness",
            "sender|sensor|switch wire|wiring|lead|cable",
            "wire|wiring|lead|cable|harness|loom to|for|on|off|from|at|near the? oil? pressure? sender|sensor|switch|gauge|sending-unit",
            "=earths|=grounds",
            "=pigtail|=harness",
            "strap|straps|braid from|between|to|on|off the? gearbox|chassis|engine|block|body|frame|bellhousing|firewall|bulkhead",
            "earth|ground|engine strap|straps|strap|connection|connections|lead|cable",
        ),
        trials=dict.fromkeys((_R, _C, _B, _A), "wiring_repaired"),
        area="instrument",
    ),
    PartWorked(
        names=(
            "connector|plug-on-sender",
            "sender|sensor|switch plug",
            "contacts|pins|spade|plug on|of|in|at the? oil? pressure? sender|sensor|switch",
        ),
        trials={_C: "connector_refitted", _F: "connector_refitted", _R: "wiring_repaired"},
    ),
    PartWorked(
        names=(
            "gauge line|pipe|capillary|tube",
            "oil? line|pipe|tube to|for the? gauge",
            "line|pipe|tube to|from|of it|that|the-clock",
            "capillary",
            "oil? pressure? gauge pipe|hose|line",
        ),
        trials=dict.fromkeys((_R, _C, _B), "gauge_line_renewed"),
        area="instrument",
    ),
    PartWorked(
        names=("oil? filter", "oil filters", "oil? filter? element|cartridge"),
        trials={_R: "new_filter", _A: "filter_tightened"},
        area="filter_change",
    ),
    PartWorked(
        names=("oil? filter|cooler? bypass valve?",),
        trials={_C: "bypass_freed", _R: "bypass_freed"},
    ),
    PartWorked(
        names=(
            "engine|motor|lube? oil and|&|+|plus the|its|oil? filter|filters",
            "oil filter and|& oil",
            "oil and|& oil filter",
        ),
        trials={_R: "right_oil"},
        area="oil_change",
    ),
    PartWorked(
        names=(
            "oil? pump",
            "engine|lube|lubricating|lubrication|main oil? pump",
            "pump",
            "pressure|main pump? section|stage of|in|on? the? dry-sump|drysump|sump? pump?",
        ),
        trials={_R: "new_pump", _B: "pump_rebuilt", _F: "pump_refitted"},
        area="oil_pump",
    ),
    PartWorked(
        names=(
            "high-volume|hv oil? pump",
            "high|hi volume|vol|pressure|capacity oil? pump",
            "hivol|hi-vol|high-capacity|high-pressure oil? pump",
            "bigger|larger|uprated|wider oil? pump",
        ),
        trials={_R: "high_volume_pump"},
        area="oil_pump",
    ),
    PartWorked(
        names=(
            "oil? pump cover|lid|endplate|end-plate|base|backplate gasket|seal|o-ring|oring?",
            "oil? pump gasket|seal|o-ring|oring",
            "cover|lid|endplate|o-ring|oring|gasket|seal of|on|for|from|in|under the|my? oil? pump",
        ),
        trials={_R: "pump_refitted", _F: "pump_refitted", _C: "pump_rebuilt"},
        area="oil_pump",
    ),
    PartWorked(
        names=("standard|stock|original|factory volume|pressure? oil? pump",),
        trials={_R: "standard_pump", _F: "standard_pump"},
        area="oil_pump",
    ),
    PartWorked(
        names=(
            "oil? pump? pressure? relief valve? assembly|assy|unit|kit|cartridge?",
            "pressure regulator",
            "=regulator valve? plunger|piston|assembly|assy?",
            "prv|oprv|pressure-regulator",
            "ball and|& spring|seat|plunger",
            "relief valve|plunger|ball|piston",
            "oil regulator",
            "oil? pressure|overpressure control|regulating|dump|safety valve|plunger",
            "release valve",
            "new|another|different|replacement|bigger =ball",
            "oil? relief|pressure-relief valve? plunger|ball|piston|bore|seat|cap|plug",
            "relief valve? ball|plunger|piston|valve and|& seat|spring|plug",
            "regulator|regulating valve|plunger|piston and|&? spring?",
        ),
        trials={
            _R: "new_relief_valve",
            _C: "relief_cleaned",
            _F: "relief_cleaned",
            _A: "relief_adjusted",
        },
        area="relief_valve",
    ),
    PartWorked(
        names=(
            "oil? pressure? relief|regulator|pressure valve? adjuster|screw|adjusting-screw|adjustment",
            "pressure|relief adjusting screw",
            "=adjuster",
        ),
        trials={_A: "relief_adjusted"},
        area="relief_valve",
    ),
    PartWorked(
        names=(
            "relief valve? spring",
            "stiffer|stronger|heavier|longer|tighter|uprated|high-pressure relief|regulator? valve? spring",
            "high|higher pressure|rate|tension relief? spring",
            "@pressure|@number relief? spring",
            "regulator spring",
            "spring|springs of|in|on|from|for the? oil? pressure? relief|regulator valve?",
        ),
        trials={_R: "stiffer_spring", _A: "stiffer_spring"},
        area="relief_valve",
    ),
    PartWorked(
        names=(
            "oil? pump? pickup|pick-up tube|pipe|screen|strainer?",
            "oil pump screen|strainer|gauze|sieve",
            "pick up tube|pipe|screen?",
            "pickup|strainer|screen|gauze",
            "sump|oil|suction|pan strainer|screen|gauze|filter-screen",
            "pick up",
            "oil|sump|suction? sieve|basket",
            "oil|sump|suction|pump|inlet|intake mesh|sieve|basket|screen",
        ),
        trials={_R: "new_pickup", _C: "pickup_cleaned", _B: "new_pickup", _A: "pickup_gap_set"},
        area="pickup",
    ),
    PartWorked(
        names=(
            "oil? pump? pickup|pick-up|suction|strainer tube|pipe? o-ring|oring|gasket|seal|o-rings",
            "oil? pump? pickup|pick-up|suction|strainer tube|pipe? o ring",
            "pick up o-ring|oring|gasket|seal",
            "pickup o ring",
            "o-ring|oring|seal|gasket between|on|at|of|for|in|to the? oil? pickup|pick-up|suction|strainer tube|pipe?",
            "o ring between|on|at|of|for|in|to the? oil? pickup|pick-up|suction|strainer tube|pipe?",
        ),
        trials={_R: "pickup_seal_renewed"},
        area="pickup",
    ),
    PartWorked(
        names=(
            "suction|tank|inlet hose|pipe|line union|clip|clamp|joint?",
            "union|clip|clamp|joint|hose|pipe on|of|at the? suction|inlet side|pipe|hose?",
        ),
        trials={_R: "suction_hose_renewed", _A: "suction_hose_renewed"},
        area="pickup",
    ),
    PartWorked(
        names=("oil? pan|sump|oilpan",),
        trials={_R: "other_sump", _B: "other_sump", _C: "pickup_cleaned"},
        area="sump",
    ),
    PartWorked(names=("oil? pan|sump gasket",), trials={_R: "seals_renewed"}, area="sump"),
    PartWorked(names=("drain|catch|drip|drainer|waste|draining pan|tray|tub|bowl|bucket",)),
    PartWorked(
        names=(
            "crank? bearings|bearing|shells",
            "main|rod|big-end|mains and|&|+ rod|main|big-end bearings|shells",
            "main|mains and|&|+ big end bearings|shells",
            "big end and|&|+ main bearings|shells",
            "bearing|bottom-end|crank shells|set",
            "rods|rod and|& mains|main bearings?",
            "mains and|&|+|plus|, rods|big-ends",
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
        names=(
            "on|in|for|from my|our|his|this|a|an|the|old @year? old|farm|diesel|work? =pickup",
            "my|our|his|her|this old|diesel|petrol? =pickup was|is|has|had|went|would|runs|ran|just|came|got|does|did|used|started|drives|shows|always|,",
            "=pickup truck",
        ),
    ),
    PartWorked(
        names=("cam|camshaft bearings|bearing|bushes|bushings|bush",),
        trials={_R: "new_cam_bearings"},
        area="cam_bearings",
    ),
    PartWorked(
        names=("lifters|lifter|tappets|hlas", "hydraulic? lash adjusters|adjuster"),
        trials={_R: "new_lifters"},
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
            "piston oil|cooling? jets|jet|squirter",
        ),
        trials={_R: "piston_jets_renewed"},
        area="pistons",
    ),
    PartWorked(names=("oil|head|cam? restrictors|restrictor",), trials={_R: "restrictor_fitted"}),
    PartWorked(names=("idle|tickover|idling speed?",), trials={_A: "idle_raised"}),
    PartWorked(
        names=("gauge|instrument|dash|panel|cluster|ignition? fuse|fuses|relay",),
        trials={_R: "fuse_renewed"},
    ),
    PartWorked(
        names=("=rings|pistons|piston|liners|cylinder|cylinders|barrels|jugs",), area="pistons"
    ),
    PartWorked(
        names=("oil? pump drive shaft?", "intermediate|drive shaft", "hex|oil drive"),
        trials={_R: "pump_drive_renewed"},
        area="pump_drive",
    ),
    PartWorked(
        names=("distributor|dizzy",),
        trials={_R: "distributor_refitted", _F: "distributor_refitted"},
        area="pump_drive",
    ),
    PartWorked(
        names=(
            "oil? cooler|cooler-lines",
            "oil? cooler hose|hoses|line|lines|pipe|pipes|core|fitting|mounts",
            "oil? heat exchanger",
            "engine oil cooler",
        ),
        trials=dict.fromkeys((_R, _C, _B), "cooler_cleaned"),
        area="oil_cooler_or_lines",
    ),
    PartWorked(
        names=(
            "external? oil line|lines|hose|hoses|pipe",
            "remote oil? filter? hoses|hose|lines|line|pipes|pipe",
            "oil|feed|turbo|cooler? banjo bolt|union|fitting?",
            "oil|feed|cooler|line|pipe|hose union|unions",
        ),
        trials={_R: "oil_line_renewed", _A: "oil_line_renewed", _B: "oil_line_renewed"},
        area="oil_cooler_or_lines",
    ),
    PartWorked(
        names=("turbo|turbocharger", "turbo oil? feed? unit|cartridge|feed|pipe|line|hose"),
        trials={_R: "new_turbo", _B: "new_turbo"},
        area="turbo",
    ),
    PartWorked(
        names=(
            "pcv valve?",
            "crankcase? breather hose|pipe|pipes|tube|filter|valve|system?",
            "crankcase ventilation valve|hose?",
        ),
        trials={_R: "breather_cleaned", _C: "breather_cleaned"},
    ),
    PartWorked(
        names=(
            "galleries|gallery|oilways",
            "oil passages|passageways|ways|galleries|galleys",
            "passages|passageways",
        ),
        trials={_C: "galleries_cleaned"},
    ),
    PartWorked(names=("gallery|galley|oil plugs|plug",), trials={_R: "gallery_plugs_fitted"}),
    PartWorked(
        names=("rear main seal?", "front|rear|crank crank? seal"),
        trials={_R: "seals_renewed"},
        area="clutch_or_gearbox",
    ),
    PartWorked(names=("seals|gaskets",), trials={_R: "seals_renewed"}),
    *PARTS_RARE,
)
