"""What is seen or known of the pump and its drive, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_PUMP: dict[str, tuple[str, ...]] = {
    "gears_worn_out": (
        "pump is|was|found|badly|all|totally? badly|all|totally? worn|knackered|shot",
        "worn out? pump",
    ),
    "rotor_still_when_cranked": ("rotor|distributor @not turn|turns|turning|spin|spinning",),
    "no_oil_when_cranked": (
        "no oil from|at|out|comes|coming .. filter|port|sender|hole|pump|housing",
    ),
}
