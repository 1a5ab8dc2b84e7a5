"""Root causes at the pump station."""

from knowledge.sources import (
    CAV,
    EB09,
    EB10,
    GMI,
    HB01,
    HB07,
    HB11,
    HB19,
    HPA,
    ISS,
    MSK,
    NE1,
    PRM,
    THK,
)
from knowledge.vocabulary import Cause, Rate, Station

# tier C, layouts A, source column: EB09, TEB, HB-01 r15, HB-03 r5
PUMP_GEAR_WEAR = Cause(
    "pump_gear_wear",
    Station.PUMP,
    "worn gears/rotors, body bores, shaft bushes (gear-to-body and end clearance)",
    "slip inside the pump: low at hot idle, approaches normal as rpm rises; slow to prime",
    Rate.COMMON,
    "++ - 0 0 0",
    "new pump (clearances in inspections.md)",
    EB09,
    follows="slow bearing wear",
)
# tier C, layouts D S X, source column: GMI (judge end clearance with the depth of the wear in the cover), OLD
PUMP_COVER_SCORED = Cause(
    "pump_cover_scored",
    Station.PUMP,
    "groove worn in the cover or end plate by the gear ends",
    "large end leakage; same picture as wear",
    Rate.COMMON,
    "++ 0 0 0 0",
    "lap/renew cover, new pump",
    GMI,
    follows="as above",
)
# tier X, layouts D S, source column: CP, HB-11 r5 (air leak between cover and body), PE17
PUMP_COVER_LOOSE = Cause(
    "pump_cover_loose",
    Station.PUMP,
    "cover screws slack or cover flexes at pressure",
    "leakage grows with pressure: cannot reach relief setting",
    Rate.RARE,
    "0 + 0 0 +",
    "torque, thread locker, stiffer cover",
    HB11,
    follows="relief or drive damage, total loss",
)
# tier C, layouts D S, source column: THK, AZN, ISS
PUMP_DEBRIS_LOCK = Cause(
    "pump_debris_lock",
    Station.PUMP,
    "hard particle jams the gears",
    "sudden zero (shaft breaks) or tight spots; damage to drive",
    Rate.OCCASIONAL,
    "+ ++ 0 0 +",
    "strip, renew, find the debris source",
    THK,
    follows="pump-drive-broken",
)
# tier C, layouts D S X, source column: HB-01 r16, HB-04 r17, HB-19 r2, EB09, PGN
PUMP_MOUNT_LEAK = Cause(
    "pump_mount_leak",
    Station.PUMP,
    "joint between pump and block/main cap leaks (gasket omitted, warped, burr, bolts loose or bottomed)",
    "pressurised oil escapes inside sump: low at all rpm, worse hot idle",
    Rate.OCCASIONAL,
    "0 ++ 0 0 0",
    "dress faces, correct gasket or none as specified",
    HB01,
    follows="blown gasket, sudden fall",
)
# tier C, layouts D S X, source column: HB-07 r7 (check pad gasket), HB-19 r1, CP
PUMP_GASKET_WRONG = Cause(
    "pump_gasket_wrong",
    Station.PUMP,
    "gasket upside-down or wrong way round masking a port, wrong thickness, extra gasket under a metal-to-metal cover",
    "port partly covered: low or none from first start; or end clearance enlarged",
    Rate.OCCASIONAL,
    "-- ++ 0 0 0",
    "correct gasket, oriented to the ports",
    HB07,
    follows="dry first start",
)
# tier C, layouts D S O, source column: NE1, HB-14 none r2–3, HB-15
PUMP_DRIVE_BROKEN = Cause(
    "pump_drive_broken",
    Station.PUMP,
    "intermediate shaft, tang, coupling, roll pin, chain or sprocket failed",
    "sudden zero while running; engine (or distributor) may also lose ignition if the same shaft",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "replace drive, find the jam",
    NE1,
    follows="immediate bearing failure",
)
# tier C, layouts D S, source column: ISS, V8F, PJM
PUMP_DRIVE_SLIP = Cause(
    "pump_drive_slip",
    Station.PUMP,
    "rounded hex/slot, worn distributor or skew gear, sheared pin not yet parted",
    "intermittent fall or delayed build, timing scatter on distributor drives",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "new shaft with steel collar, gears",
    ISS,
    follows="pump-drive-broken, filings",
)
# tier C, layouts D, source column: MSK, OCM, CTD
PUMP_DRIVE_BIND = Cause(
    "pump_drive_bind",
    Station.PUMP,
    "shaft too long, distributor bottomed after deck/manifold milling, misaligned bore",
    "binding: rapid gear wear; when the pump is pushed down it wears cover; erratic",
    Rate.OCCASIONAL,
    "-- ++ 0 0 0",
    "set end play; see reassembly.md",
    MSK,
    follows="drive-gear failure, pump-cover wear",
)
# tier C, layouts A (esp. pumps above oil level: F, X), source column: PRM, OLD (may lose prime when disturbed), THK
PUMP_NOT_PRIMED = Cause(
    "pump_not_primed",
    Station.PUMP,
    "pump dry after rebuild, storage or filter change",
    "no pressure for many seconds after start; sometimes never",
    Rate.OCCASIONAL,
    "0 ++ + ++ 0",
    "prime (see reassembly.md)",
    PRM,
    follows="dry start wipe",
)
# tier C, layouts A, source column: HB-07 r7
PUMP_WRONG_PART = Cause(
    "pump_wrong_part",
    Station.PUMP,
    "pump of wrong capacity, rotation, height, ratio or for another pan",
    "steady wrong pressure from new",
    Rate.RARE,
    "-- ++ 0 0 0",
    "correct part",
    HB07,
    follows="starvation or drive wear",
)
# tier C, layouts F X, source column: HB-19 r3
PUMP_ROTOR_REVERSED = Cause(
    "pump_rotor_reversed",
    Station.PUMP,
    "rotor fitted with the chamfer on the wrong side, or marks mismatched",
    "delivery down 40-60 %",
    Rate.RARE,
    "-- ++ 0 0 0",
    "reassemble",
    HB19,
    follows="low from first start",
)
# tier C, layouts A, source column: CAV, CP
PUMP_CAVITATION = Cause(
    "pump_cavitation",
    Station.PUMP,
    "inlet cannot feed the pump (small tube, thick oil, oversize pump, high rpm)",
    "pressure climbs then falls as rpm rises; rattle or whine; not cured by more oil",
    Rate.OCCASIONAL,
    "0 + 0 0 ++",
    "larger inlet, standard pump, thinner oil cold",
    CAV,
    follows="eroded gears, debris",
)
# tier X, layouts D, source column: EB10, EB09, V8F, PJM
PUMP_OVERSIZED = Cause(
    "pump_oversized",
    Station.PUMP,
    "high-volume pump on a standard inlet, or stiff spring, on a street engine",
    "pressure fine; drive-gear load, hot oil, more sensitive inlet",
    Rate.OCCASIONAL,
    "0 + 0 0 +",
    "standard pump",
    EB10,
    follows="drive gear wear, bypass churn",
)
# tier X, layouts A, source column: GMI, CP
PUMP_BODY_CRACKED = Cause(
    "pump_body_cracked",
    Station.PUMP,
    "cracked casting, split outlet",
    "as mount leak; sudden after over-torque, frozen or water in pump",
    Rate.RARE,
    "+ + 0 + 0",
    "replace",
    GMI,
    follows="total loss",
)
# tier X, layouts R, source column: HPA
SCAVENGE_FAILURE = Cause(
    "scavenge_failure",
    Station.PUMP,
    "dry-sump scavenge stage air-locked or belt off",
    "tank empties, crankcase fills; flicker then fall",
    Rate.RARE,
    "0 + 0 0 ++",
    "restore scavenge",
    HPA,
    follows="starvation",
)
