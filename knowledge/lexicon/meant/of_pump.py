"""Words beside a finding of pump, drive, relief valve and pickup by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_JAMS = Otherwise(
    said=_set("freeze freezes freezing froze frozen"),
    beside=_set("pump engine motor valve plunger piston rotor gear lifter bearing crank"),
    unless=_set(
        "winter cold ice icy iced weather night overnight frost morning degrees minus temperature snow water "
        "oil's screen pickup strainer below outside @temperature january february december"
    ),
)
_FUEL_TANK = Otherwise(
    anywhere=_set("fuel petrol gas gasoline diesel water miles range filling refuel refuelled"),
    unless=_set("oil sump crankcase dry-sump"),
)
_OTHER_SCREEN = Otherwise(
    beside=_set(
        "vvt solenoid solenoids ocv phaser phasers vanos vtec turbo turbos turbo's turbocharger banjo "
        "injector carb tank lift sender switch actuator"
    ),
    unless=_set("pickup pick-up strainer sump suction pan"),
)
_TENSIONER = _set("tensioner tensioners")
_ROCKERS = _set("rocker rockers")
_OF_THE_TURBO = Otherwise(
    anywhere=frozenset(["electric"]), also=_set("turbo turbos afterrun after-run")
)

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "debris_on_relief_seat": (
        # "the relief spring was in two bits"
        Otherwise(
            said=_set("bits pieces halves"),
            beside=_set("two three several half in"),
            unless=_set("seat under dirt swarf metal debris of"),
        ),
    ),
    "drive_coupling_sheared": (
        # "when i turn the key then falls to 0"
        Otherwise(
            said=_set("key"),
            beside=_set("turn turns turned turning ignition on start started starting cranking"),
            unless=_set(
                "woodruff sheared shears shear snapped broken broke keyway missing gone lost pump"
            ),
        ),
        Otherwise(
            said=_set("key"),
            beside=_set("lock door car house ignition spare filler boot"),
            unless=_set("woodruff sheared keyway pump drive"),
        ),
        # "the sleeve on the balance shaft has gone round"
        Otherwise(beside=_set("balance balancer balancers"), unless=_set("pump")),
        # "rod shell turned in the rod, tang gone"
        Otherwise(
            said=_set("tang tab tangs"),
            anywhere=_set("shell shells bearing bearings insert inserts"),
            unless=_set("pump distributor drive dizzy"),
        ),
    ),
    "drive_not_engaged": (Otherwise(anywhere=_ROCKERS, unless=_set("pump distributor dizzy")),),
    "foreign_material_on_screen": (_OTHER_SCREEN,),
    "gasket_masks_port": (
        # "the seal in the timing cover that feeds the crank"
        Otherwise(
            said=_set("cover"),
            beside=_set("timing front rear side end valve rocker pump chain"),
            unless=_set(
                "hides hid hidden hiding covers covering masks masking blocks blocking blanks half part"
            ),
        ),
    ),
    "gasket_on_screen": (_OTHER_SCREEN,),
    "ice_at_screen": (
        # "the pump keeps freezing up" is a pump that jams
        _JAMS,
    ),
    "mount_gasket_blown": (
        Otherwise(beside=_set("good sound fine ok perfect intact whole"), unless=_set("not no")),
        # "the gasket under the pump's cover"
        Otherwise(said=_set("cover lid"), unless=_set("block mount mounting")),
    ),
    "pickup_bent": (
        # "no oil at the rockers, the pipe bent flat"
        Otherwise(
            anywhere=_set("rocker rockers valve gauge turbo"),
            unless=_set("pickup pick-up strainer suction"),
        ),
    ),
    "pickup_fell_off": (
        # "the gases come out of the dipstick tube"
        Otherwise(
            said=_set("tube pipe"),
            anywhere=_set("dipstick breather filler"),
            unless=_set("pickup pick-up strainer suction"),
        ),
    ),
    "pickup_tube_crack_seen": (
        # "scavenge suction pipe cracked at the flange"
        Otherwise(beside=_set("scavenge scavenger"), unless=_set("pickup")),
    ),
    "piece_in_pump": (
        # "blue paper towel in the pump"
        Otherwise(
            anywhere=_set("towel rag rags cloth tissue lint"),
            unless=_set("metal bolt nut chip chips swarf broken hard"),
        ),
    ),
    "plastic_on_screen": (_OTHER_SCREEN,),
    "pump_bolts_loose": (
        # "idler gear of the pump loose on its pin"
        Otherwise(beside=_set("idler gear pin"), unless=_set("bolt bolts screw screws")),
    ),
    "pump_bush_clearance": (
        # "the balance shaft's bush turned, 0.3 mm play" is no bush of the pump
        Otherwise(anywhere=_set("balance balancer balancers cam"), unless=frozenset(["pump"])),
    ),
    "pump_found_failed": (
        # "coupling between distributor and pump sheared"
        Otherwise(said=_set("sheared"), beside=_set("coupling shaft drive tang key pin")),
        _OF_THE_TURBO,
    ),
    "pump_gear_broken": (Otherwise(said=_set("sprocket")),),
    "pump_housing_burst": (
        # "pump cover gasket blown"
        Otherwise(said=frozenset(["gasket"])),
    ),
    "-pump_jammed": (
        # "pickup tube loose in the pump, moves by hand"
        Otherwise(said=_set("moves moved"), beside=_set("pickup tube"), unless=_set("turns")),
    ),
    "relief_seat_scored": (
        # "chain tensioner's plunger bore is worn", "the rocker shaft's plug fell out"
        Otherwise(anywhere=_TENSIONER, unless=_set("relief")),
    ),
    "relief_spring_short_or_broken": (
        # "wear in rear springs", "a throttle spring snapped"
        Otherwise(
            beside=_set("rear front leaf road return throttle suspension seat clutch valve-spring"),
            unless=_set("relief pressure regulator plunger oil"),
        ),
    ),
    "screen_blocked": (
        # "the little screen in the VVT solenoid was full of black bits"
        _OTHER_SCREEN,
    ),
    "-screen_blocked": (
        # "the sender sits on the clean side of the screen"
        Otherwise(said=_set("side")),
    ),
    "sealer_on_screen": (
        # "resealed the pickup joint with sealer"
        Otherwise(
            beside=_set("resealed sealed reseal seal assembled bedded fitted refitted joint")
        ),
        _OTHER_SCREEN,
    ),
    "sludge_on_screen": (_OTHER_SCREEN,),
    "tank_empties_running": (_FUEL_TANK,),
    "wrong_pump_fitted": (
        # "the pump's seal ring is the wrong way round"
        Otherwise(said=_set("ring seal o-ring gasket")),
    ),
}
