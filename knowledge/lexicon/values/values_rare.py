"""What people call quantities that are seldom measured: form of bores, shafts beside the crank."""

from __future__ import annotations

_BRG = "bearing|bearings|bush|bushes|bushing|bushings|journal|journals"
_GAP = "oil? clearance|clearances|gap"
#: by the id of the quantity
VALUES_RARE: dict[str, tuple[str, ...]] = {
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
