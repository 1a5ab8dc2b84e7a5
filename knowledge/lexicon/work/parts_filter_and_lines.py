"""Parts that are worked on: filter, cooler, oil lines, galleries and drain plug."""

from __future__ import annotations

from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done

_R, _C, _B, _A, _F = Done.RENEWED, Done.CLEANED, Done.REBUILT, Done.ADJUSTED, Done.REFITTED
PARTS: tuple[PartWorked, ...] = (
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
        names=(
            "galleries|gallery|oilways",
            "oil passages|passageways|ways|galleries|galleys",
            "passages|passageways",
            "oil channels|channel|drillings|drilling|ducts|bores|feeds|holes|tunnels|veins",
        ),
        trials={_C: "galleries_cleaned"},
    ),
    PartWorked(
        names=(
            "gallery|galley|oil|oilway plugs|plug|bung|bungs",
            "missing|lost|forgotten plug|bung",
            "plug|bung behind|in|at the? timing|front|cam|gear cover|case|chest|gears",
        ),
        trials=dict.fromkeys((_R, _A, _F), "gallery_plugs_fitted"),
    ),
    PartWorked(
        names=("engine|motor|lube? oil",),
        trials={_R: "right_oil"},
        area="oil_change",
        area_if=Done.RENEWED,
    ),
    PartWorked(
        names=(
            "oil? filter|cooler head? bypass|by-pass valve?",
            "bypass|by-pass valve? of|in|on|for the? oil? cooler|filter",
            "bypass|by-pass valve in|of the? filter head?",
        ),
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
    PartWorked(names=("oil? filter head|housing|bowl|mount",), area="filter_change"),
    PartWorked(
        names=(
            "oil? filter|cooler head|housing|adapter|adaptor|base o-ring|o-rings|oring|orings|seal|seals|gasket|gaskets",
        ),
        trials={_R: "seals_renewed"},
    ),
    PartWorked(
        names=(
            "hose|hoses|pipe|pipes|line|flexi|flexible|union|unions|fitting|joint on|to|for|from|of|at the? remote|oil? "
            "filter|cooler|cooler-pipe|filter-head hose|pipe|line|feed?",
        ),
        trials=dict.fromkeys((_R, _B, _A, _F), "oil_line_renewed"),
        area="oil_cooler_or_lines",
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
        names=("banjo|hollow bolt|bolts|union?",),
        trials={_C: "galleries_cleaned", _R: "oil_line_renewed", _A: "oil_line_renewed"},
    ),
)
