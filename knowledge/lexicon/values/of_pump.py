"""What people call the quantities of pump, relief valve and pickup. Common practice."""

from __future__ import annotations

#: by the id of the quantity
VALUES: dict[str, tuple[str, ...]] = {
    "pump_end_clearance": (
        "pump gear|gears|rotor|rotors? end clearance|play|float|gap",
        "pump endplay|endfloat",
        "gear|gears|rotor|rotors is|are|sit|sits? =recessed|=sunk|=deep|=low|=down|=below|=under by?",
        "gear|gears|rotor|rotors end clearance|play|float|gap",
        "gear|gears|rotor|rotors endplay|endfloat",
        "pump gear|gears|rotor|rotors? to? cover|plate clearance|gap",
        "pump cover|plate clearance|gap",
        "gear|gears|rotor|rotors to cover|plate clearance|gap?",
        "cover to gear|gears|rotor|rotors clearance|gap?",
        "between|from the? gear|gears|rotor|rotors and|to the? cover|plate|endplate|end-plate",
        "between|from the? cover|plate|endplate|end-plate and|to the? gear|gears|rotor|rotors",
        "gear|gears|rotor|rotors|pump axial clearance|play|float|gap?",
    ),
    "pump_side_clearance": (
        "pump side|radial clearance|gap",
        "gear|gears|rotor|rotors|pump to? body|housing|case clearance|gap",
        "gear|gears|rotor|rotors|outer to body|housing|case|bore",
        "between|from the? outer? gear|gears|rotor|rotors|outer and|to the? body|housing|case",
        "pump to body|housing|case",
        "outer rotor to? body|housing? clearance|gap",
        "gear|gears|rotor|rotors side clearance|gap",
    ),
    "rotor_tip_clearance": (
        "rotor|rotors|gerotor|lobe|lobes|pump tip|tips clearance|gap?",
        "tip|tips clearance|gap",
        "tip to tip clearance?",
        "inner to outer rotor|rotors clearance|gap?",
    ),
    "pump_cover_hollow": (
        "cover|plate|endplate worn|wear|grooved|groove|hollow|scored|scoring|dished|step",
        "wear|groove|hollow|score|step in|on|of .. cover|plate|endplate",
        "cover|plate|endplate has .. wear|groove|scoring|step",
        "pump cover|plate warped|flatness|warp",
    ),
    "pump_backlash": (
        "pump gear|gears? backlash",
        "gear|gears backlash|lash",
        "backlash of|between|in the? pump|gears gears?",
        "tooth|teeth backlash|play",
    ),
    "pump_bush_clearance": (
        "pump shaft|bush|bushing|spindle .. clearance|play|slop|wear",
        "shaft to? bush|bushing|body|bore clearance|play",
        "play|slop|clearance of|on|in the? pump shaft|bush|bushing|spindle",
    ),
    "pump_cover_torque": (
        "pump cover|plate bolt|bolts|screw|screws torque|torqued?",
        "cover|plate bolt|bolts|screw|screws torque|torqued",
    ),
    "relief_spring_length": (
        "relief|regulator|bypass|pressure valve? spring free? length",
        "relief|regulator|pressure valve? spring",
        "spring free? length",
        "spring stands|stood|is|was|measures|measured",
        "length of the? relief|regulator|pressure? valve? spring",
    ),
    "relief_setting": (
        "relief|regulator|regulating valve? opens|opened|opening|lifts|lifted|cracks|cracked|pops|popped|blows|set|setting|unseats",
    ),
    "relief_shim": (
        "shim|shims|shimmed|washer|washers under|behind|on|in .. relief|regulator? valve? spring",
        "relief|regulator valve? spring? shim|shims|shimmed",
        "spring shim|shims|shimmed",
    ),
    "relief_plunger": (
        "relief|regulator valve? plunger|piston|bore diameter|dia|bore",
        "diameter of the? relief|regulator valve? plunger|piston",
    ),
    "relief_seat_gap": ("relief|regulator valve|ball|plunger held|stands|sits .. off|open|proud",),
    "pickup_gap": (
        "pickup|screen|strainer to? pan|sump|floor|bottom clearance|gap|distance|depth",
        "pickup|screen|strainer to the? pan|sump|floor|bottom",
        "pickup|screen|strainer clearance|gap|depth|height",
        "pickup|screen|strainer is|was|sits|sat|hangs|stood|stands",
        "pickup|screen|strainer off|above|from the? pan|sump|floor|bottom?",
        "clearance|gap|distance from|between|under|below the? pickup|screen|strainer .. pan|sump|floor|bottom?",
        "clearance|gap under|below|at the? pickup|screen|strainer",
        "between|from the? pickup|screen|strainer and|to the? pan|sump|floor|bottom floor?",
    ),
    "pickup_tube": ("pickup|suction tube|pipe bore|diameter|id|inside",),
    "pickup_rim": ("pickup|screen|strainer rim? diameter",),
    "pickup_tube_length": ("pickup|suction tube|pipe length|long",),
    "screen_open_share": ("screen|strainer|pickup .. open|clear",),
}
