"""Parts that are worked on: gauge, sender and wiring."""

from __future__ import annotations

from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done

_R, _C, _B, _A, _F = Done.RENEWED, Done.CLEANED, Done.REBUILT, Done.ADJUSTED, Done.REFITTED
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
        names=("gauge|instrument|dash|panel|cluster|ignition? fuse|fuses|relay",),
        trials={_R: "fuse_renewed"},
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
            "extra|separate|additional|dedicated|new ground|earth wire|lead|cable to|from|on|off the? sender|sensor|switch body|case|casing?",
            "ground|earth wire|lead|cable to|from|on|off the? sender|sensor|switch body|case|casing",
        ),
        trials={_R: "ground_wire_added"},
        area="instrument",
    ),
)
