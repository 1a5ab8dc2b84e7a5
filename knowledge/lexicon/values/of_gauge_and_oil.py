"""What people call the quantities of gauge, sender, running and oil. Common practice."""

from __future__ import annotations

#: by the id of the quantity
VALUES: dict[str, tuple[str, ...]] = {
    "build_up_time": (
        "to|till|until|before build|builds|built|building up? oil? pressure?",
        "to build|come|get up? oil? pressure|to?",
        "build up? time|delay",
        "buildup time|delay",
        "until|till|before .. pressure|gauge|needle shows|showed|comes|came|moves|moved|registers",
        "time|delay to pressure",
        "for .. pressure|gauge|needle to move|show|come|build|rise|register",
    ),
    "decay_time": (
        "to drop|fall|decay to zero|nothing",
        "decay time",
        "pressure decay|decays|bleeds .. after|on|at stop|stopping|shutdown|off",
        "shutdown decay",
    ),
    "switch_pressure": (
        "pressure? switch .. , opens|closes|trips|changes|operates over? at",
        "switch is|was? opens|closes|trips|operates|changes|makes|breaks|set|setpoint|point|rated|stamped|marked|labelled|stated over|at|as|with|for?",
        "oil? pressure? switch setting",
    ),
    "sender_resistance_at_rest": (
        "sender|sensor|transmitter|unit at? rest? reads|read|measures|measured|resistance|ohms|shows?",
        "sending unit at? rest? reads|read|measures|measured|resistance|ohms?",
        "ohms at rest",
    ),
    "sender_ground_resistance": (
        "sender|sensor|unit|block ground|earth|grounding|earthing resistance?",
        "ground|earth resistance|path",
        "sender|sensor|switch body|case|hex|thread|casing to the? ground|earth|negative|battery|hull|block|frame|chassis|engine",
        "sender|sensor body|case|hex|shell",
    ),
    "idle_speed_counted": (
        "idle|tickover speed|rpm",
        "idles|idling|idle at|is|was|counted|set",
        "tick over speed?",
        "idle|tickover by|with|on|per laser|photo|strobe|optical|digital|hand tach|tacho|tachometer?",
    ),
    "panel_error": (
        "panel|dash|cab gauge .. low|high|off|out|under|over by?",
        "difference between .. gauge|gauges",
    ),
    "oil_heat": (
        "oil temp|temps|temperature|temperatures|heat",
        "temp|temperature of the? oil",
        "sump temp|temperature",
        "oil is|was|at|reaches|reached|runs|ran|gets|got|hits|hit",
    ),
    "fuel_share": (
        "fuel|petrol|gasoline|gas|diesel dilution? in the? oil",
        "fuel dilution",
        "fuel share|content|percentage|percent",
        "fuel|petrol|gasoline|diesel",
    ),
    "viscosity_at_100c": (
        "viscosity at? ..",
        "kinematic? viscosity",
        "oil viscosity",
        "vis at?",
        "kv100",
    ),
    "drained_volume": (
        "drained|emptied it|oil|sump and|, there|it|i was|were|had|got only|just|about?",
        "drained|drain out|off?",
        "came|come|ran|poured|got|get|drains out|off",
        "came|ran|poured|got|get .. out",
        "out of the? sump|pan|engine",
        "oil drained|out",
        "in the? jug|bucket|drain",
    ),
    "filter_bypass": (
        "filter? =bypass valve? opens|opened|set|setting|cracks|lifts|rated|pressure?",
        "oil? filter =bypass",
    ),
    "filter_drop": (
        "drop|difference|differential across|over the? oil? filter",
        "filter pressure? drop|differential",
    ),
}
