"""What people call the quantities of bearings, shafts and bores. Common practice."""

from __future__ import annotations

_BRG = "bearing|bearings|bush|bushes|bushing|bushings|journal|journals"
_GAP = "oil? clearance|clearances|gap"

#: by the id of the quantity
VALUES: dict[str, tuple[str, ...]] = {
    "main_clearance": (
        "main|mains bearing|bearings|brg|brgs? oil? clearance|clearances|gap",
        "clearance|clearances of|on|at|in the? main|mains bearing|bearings|brg|brgs?",
        "main|mains plastigage|plastigauge|plastigaged|plastigauged",
        "plastigage|plastigauge|plastigaged|plastigauged the? main|mains",
        "main|mains bearing|bearings|brg|brgs|journal|journals",
    ),
    "rod_clearance": (
        "rod|rods bearing|bearings|brg|brgs? oil? clearance|clearances|gap",
        "big end|ends bearing|bearings|brg|brgs? oil? clearance|clearances?",
        "bigend|bigends bearing|bearings|brg|brgs? oil? clearance|clearances?",
        "clearance|clearances of|on|at|in the? rod|rods bearing|bearings|brg|brgs?",
        "rod|rods plastigage|plastigauge|plastigaged|plastigauged",
        "plastigage|plastigauge|plastigaged|plastigauged the? rod|rods",
        "rod|rods bearing|bearings|brg|brgs|journal|journals",
        "conrod|conrods bearing|bearings|brg|brgs? clearance|clearances?",
        "crankpin|crankpins clearance|clearances",
    ),
    "crank_end_float": (
        "crank|crankshaft end float|play|clearance",
        "crank|crankshaft endplay|endfloat|float",
        "crank|crankshaft moves|moved|slides|slid|shifts|shifted",
        "push|pushed|pull|lever|pry|move|slide the? crank|crankshaft",
        "thrust bearing? clearance|play|gap|float",
        "end float|play of|on|at|in the? crank|crankshaft",
        "endplay|endfloat of|on|at|in the? crank|crankshaft",
    ),
    "cam_bearing_clearance": (
        "cam|camshaft bearing|bearings|brg|brgs|bush|bushes|journal|journals? oil? clearance|clearances|gap",
        "cam|camshaft bearing|bearings|brg|brgs|bush|bushes",
        "clearance of|on|at|in the? cam|camshaft bearing|bearings|brg|brgs?",
    ),
    "journal_taper": (
        "journal|journals|crankpin|crankpins|main|mains|rod|crank journal|journals? taper",
        "taper of|on|at|in the? journal|journals|crankpin|crankpins|crank",
    ),
    "journal_oval": (
        "journal|journals|crankpin|crankpins|crank journal|journals? ovality|oval|out-of-round|roundness",
        "ovality|out-of-round of|on|at|in the? journal|journals|crankpin|crankpins|crank",
        "journal|journals|crankpin|crankpins out of round",
    ),
    "bore_taper": (
        "bearing|housing|tunnel|main|rod bore|bores taper",
        "taper of|on|at|in the? bearing|housing|tunnel|main|rod bore|bores",
    ),
    "bore_oval": (
        "bearing|housing|tunnel|main|rod bore|bores ovality|oval|out-of-round",
        "ovality|out-of-round of|on|at|in the? bearing|housing|tunnel|main|rod bore|bores",
        "bearing|housing|tunnel|main|rod bore|bores out of round",
    ),
    "balance_shaft_clearance": (
        f"balance|balancer|counterbalance shaft|shafts? {_BRG}? {_GAP}",
        f"balance|balancer|counterbalance shaft|shafts {_BRG}",
        f"clearance of|on|at|in the? balance|balancer shaft|shafts? {_BRG}?",
    ),
    "auxiliary_shaft_clearance": (
        f"auxiliary|aux|intermediate|jack shaft {_BRG}? {_GAP}",
        f"auxiliary|aux|intermediate|jack shaft {_BRG}",
        f"jackshaft|layshaft {_BRG}? {_GAP}",
        f"jackshaft {_BRG}",
    ),
    "idler_bush_clearance": (
        f"idler|timing-idler gear? {_BRG}|hub? {_GAP}",
        f"idler gear? {_BRG}|hub",
    ),
    "ring_gap": (
        "piston? ring|rings end? gap|gaps",
        "end? gap|gaps of|on|at|in the? piston? ring|rings",
    ),
    "rod_side_clearance": (
        "rod|rods|conrod|conrods|big-end|bigend side clearance|play|float",
        "side clearance|play|float of|on|at|in the? rod|rods|conrod|conrods",
    ),
    "crank_turning_torque": (
        "turning|breakaway|rotating torque",
        "crank|crankshaft turns|turn|turned|rotates freely|free? by? hand|wrench? ,? at|with?",
        "turns|turn|rotates the? crank|crankshaft at|with",
    ),
}
