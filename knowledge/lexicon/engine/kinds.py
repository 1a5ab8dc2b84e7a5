"""Words of kinds of engine that are oiled in a way of their own; see ``traits``."""

from __future__ import annotations

_ENGINE = "engine|motor|engines|single|unit|flywheel|farm-engine|stationary"
ROTARY: tuple[str, ...] = (
    "wankel|wankels",
    "twin|single|two|three|double rotor rotary? engine|motor|car|wankel",
    "rotary engine|motor|powered|car|engined|rebuild|block",
    "=13b|=12a|=20b|=renesis",
    "eccentric shaft|e-shaft",
    "apex seal|seals",
)
#: that it burns its oil, whatever else is said of it
OIL_BURNT: tuple[str, ...] = (
    "premix|pre-mix|autolube|oil-injected",
    "oil injection pump|system|engine|motor|outboard|bike|two",
    "with oil injection",
)
TWO_STROKE: tuple[str, ...] = ("two|2 stroke|strokes|stroker|cycle", "=2t", *OIL_BURNT)
OPEN_CRANK: tuple[str, ...] = (
    f"hit-and-miss|hit-n-miss|hit-miss|hit'n'miss {_ENGINE}?",
    f"hit and|& miss|and-miss {_ENGINE}",
    "open-crank|hot-bulb|hopper-cooled engine|motor?",
    "open|hot crank|bulb engine|motor",
    "make-and-break|igniter|hopper cooled|fired? engine",
)
SPLASH: tuple[str, ...] = (
    "splash|splashed lubricated|lubrication|lubed|oiled|fed|only|alone|system|engine|oiling",
    "splash-lubricated|splash-lube|splash-fed|splash-oiled",
    "oil? dipper|dippers|slinger on|off|under the|its|each|big? rod|rods|conrod|ends|bigend|caps|cap?",
    "dipper|scoop lubrication|lubricated|on the? rod",
)
TROUGH: tuple[str, ...] = (
    "trough|troughs",
    "splash|dippers and|with|plus a? low-pressure|low|small|little|simple pressure? pump|feed",
    "pump fills|feeds|supplies|to the? dip? tray|dippers|valve-chamber",
    "low|light pressure splash|dip system|lubrication|oiling|engine|six|four",
)
DRIP: tuple[str, ...] = (
    "drip|sight-feed|sight-drip|gravity|wick oiler|oilers|lubricator|lubricators|oil-cup|oil-cups|feed|feeds",
    "sight feed oiler|oilers|lubricator",
    "oil cups|cup|holes on|for|at|feed|feeds|oil the? mains|bearings|rods|crank|crankshaft|cylinder",
    "grease|greaser cup|cups|caps on|for|at|feed the? mains|bearings|rods|rod|crank|main|big-end|crankpin",
    "total-loss|total|constant-loss loss? oil|oiling|lubrication system?",
)
SLOW: tuple[str, ...] = (
    "slow|medium speed ship's|ship|marine|main|stationary? diesel|engine|two",
    "slow-speed|medium-speed|low-speed ship's|ship|marine|main|stationary? diesel|engine",
    "ship's|ship|main main? engine|propulsion with|has|and .. prelube|pre-lube|prelubrication|priming pump",
    "big|large|huge slow|slow-revving|slow-running|slow-turning speed? ship's|ship|marine? diesel|engine",
)
PRELUBE: tuple[str, ...] = (
    "prelube|pre-lube|prelubrication|pre-lubrication|prelubricating|pre-lubricating|preoiling|pre-oiling oil? pump",
    "electric|electrical|motor-driven|hand|semi-rotary|separate prelube|pre-lube|prelubrication|pre-lubrication|priming|lube|lubrication|oil-priming oil? pump",
)
FLOATING_RODS: tuple[str, ...] = (
    "full|fully? floating|full-floating rod|rods|big-end|big|bearing end? bearings|bearing|shells|inserts|bearing-inserts",
    "floating big? rod|end bearings|shells|inserts",
    "floating bearings|shells|inserts",
)
#: of rod big ends; a crankshaft that is said to be a roller one has them too
ROLLER_BIG_ENDS: tuple[str, ...] = (
    "roller|ball|needle|roller-bearing|needle-roller|caged-roller bearing? crank|crankshaft|bottom-end|big-end|big-ends|crankpin",
    "roller|ball|needle|needle-roller bearing|bearings? big|bottom =end|=ends|end|ends",
    "big|bottom =end|end|ends runs|run|is|are on|a roller|rollers|needles|needle",
    "big-end|big-ends|crank|crankshaft runs|run|is|are|all on|in|with rollers|roller|needles|needle|ball-bearings",
    "crank|crankshaft on|in roller|ball|needle bearings|rollers",
)
