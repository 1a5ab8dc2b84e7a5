"""Parts that are worked on: pump, relief valve, pickup and sump."""

from __future__ import annotations

from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done

_R, _C, _B, _A, _F = Done.RENEWED, Done.CLEANED, Done.REBUILT, Done.ADJUSTED, Done.REFITTED
PARTS: tuple[PartWorked, ...] = (
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
        names=("standard|stock|original|factory|listed|oem|genuine volume|pressure? oil? pump",),
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
            "oil? pressure valve",
            "valve of|for the? oil? pressure",
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
            "=pick up tube|pipe|screen?",
            "strainer|screen|sieve|pickup and|&|plus suction? pipe|tube",
            "net|sieve|mesh|basket in|of|at|under the? oil? pan|sump",
            "pickup|strainer|screen|gauze",
            "sump|oil|suction|pan strainer|screen|gauze|filter-screen",
            "=pick up",
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
            "=pick up o-ring|oring|gasket|seal",
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
            "drive? shaft|gear|chain|coupling of|for the? oil? pump",
            "oil? pump drive shaft?",
            "intermediate|drive shaft",
            "hex|oil drive",
        ),
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
        trials={_A: "pump_refitted", _R: "pump_refitted", _F: "pump_refitted"},
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
            "oil? tank tap|cock|stopcock|valve",
            "tap|cock|stopcock|valve at|on|under|below|from|of|by the? oil? tank",
            "tap|cock|stopcock|valve between the? oil? tank and the? oil? pump",
        ),
        trials={Done.OPENED: "tank_tap_opened"},
    ),
    PartWorked(
        names=(
            "return|spill|dump|drain|discharge|outlet|bleed hole|passage|port|channel|drilling|line? of|from|for|behind|below|under|at the? oil? pressure? relief|regulator valve?",
            "oil? relief|regulator valve? return|spill|dump|drain|discharge|bleed passage|hole|port|channel|drilling|line?",
        ),
        trials=dict.fromkeys((_C, Done.OPENED, _R), "relief_return_cleared"),
    ),
    PartWorked(
        names=("scavenge pump|belt|stage|section belt?", "dry-sump|drysump belt", "dry sump belt"),
        trials=dict.fromkeys((_R, _B, _C, _A), "scavenge_mended"),
    ),
    PartWorked(
        names=(
            "oil? pump rotors|=gears|internals|vanes|innards",
            "rotors|gears|vanes|internals|innards in|into|for|to|on the? old|same? oil? pump",
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
)
