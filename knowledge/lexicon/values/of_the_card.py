"""What people call the quantities of the engine's card: its sizes and lengths. Common practice."""

from __future__ import annotations

#: by the id of the quantity
VALUES: dict[str, tuple[str, ...]] = {
    "main_diameter": (
        "main journal|journals diameter|dia|size|mic|miked|measure|measures|measured",
        "diameter of the? main|mains journal|journals?",
        "main|mains diameter|dia|size",
    ),
    "rod_diameter": (
        "rod|crank journal|journals|pin|pins diameter|dia|size|mic|miked|measure|measures|measured",
        "crankpin|crankpins diameter|dia|size?",
        "diameter of the? rod|crankpin|crankpins journal|journals?",
    ),
    "cam_diameter": (
        "cam|camshaft journal|journals diameter|dia|size|measure|measures|measured",
        "diameter of the? cam|camshaft journal|journals",
    ),
    "lifter_clearance": (
        "lifter|lifters|tappet|tappets bore|bores? clearance|clearances|gap",
        "lifter|tappet to bore clearance?",
        "clearance of|on|in the? lifter|lifters|tappet|tappets bore|bores?",
    ),
    "lifter_diameter": ("lifter|lifters|tappet|tappets diameter|dia|size",),
    "main_length": ("main bearing|shell width|length",),
    "main_groove": ("main bearing|shell? groove width",),
    "rod_length": ("rod bearing|shell width|length",),
    "rod_hole": (
        "oil? hole in the? crankpin|rod",
        "crankpin oil? hole",
    ),
    "cam_length": ("cam bearing width|length",),
    "cam_hole": ("cam bearing oil? hole",),
    "passage_diameter": (
        "passage|gallery bore|diameter|dia|size",
        "main? oil? passage|gallery bored|drilled",
    ),
    "pump_displacement": ("pump displacement|capacity|output",),
    "pump_gear_diameter": ("pump gear|gears|rotor diameter|dia",),
    "pump_gear_length": ("pump gear|gears|rotor length|height|width|depth|tall|long",),
    "relief_port": ("relief|regulator port|hole width|size|diameter|dia",),
    "jet_diameter": ("jet|jets|squirter|squirters|metering hole|holes? diameter|dia|size|bore?",),
    "jet_opens": ("jet|jets|squirter|squirters|nozzle|nozzles open|opens|opened",),
    "open_hole": ("plug|gallery hole diameter|dia|size|bore",),
}
