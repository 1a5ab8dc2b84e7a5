"""Words in the sentence of a finding by which it is meant otherwise: an innocent noun, another part."""

from __future__ import annotations

from typing import NamedTuple

from knowledge.lexicon.sights.beside import PRIMING
from knowledge.lexicon.words.word_sets import set_of as _set


class Otherwise(NamedTuple):
    """When a finding is not what its words seem to say; an empty set asks nothing.

    ``said``: one of these is among its own words; ``beside``: one of these stands in its clause;
    ``then``: one of these stands straight behind its words; ``anywhere``, ``also``: one of these
    stands in its sentence; ``unless``: none of these does.
    """

    said: frozenset[str] = frozenset()
    beside: frozenset[str] = frozenset()
    then: frozenset[str] = frozenset()
    anywhere: frozenset[str] = frozenset()
    unless: frozenset[str] = frozenset()
    also: frozenset[str] = frozenset()


#: carry no oil of the engine, or make no part of it
_ACCESSORIES = _set(
    "compressor aircon ac a/c a/con alternator dynamo generator caliper calliper idler pulley clutch "
    "gearbox diff winch waterpump supercharger blower wastegate throttle exhaust wheel brake brakes "
    "fan steering flap vane vanes actuator injector viscous magneto pto hinge lock window door"
)
_LAMPS = _set("light lamp warning buzzer beeping beeper beep alarm horn led siren hooter")
_TURBO = _set("turbo turbos turbo's turbocharger turbochargers turbocharged turbo-charger")
_HOT = _set(
    "wiped blue blued melted burnt burned smeared seized spun torn welded extruded overheated "
    "discoloured discolored picked rod-through"
)
_EVENLY = _set("evenly even uniformly uniform all")
_FLOWS = _set("came come comes flowed flows pours poured runs ran running pumps pumped spurts out")
_LEAKS = _set(
    "leak leaks leaking leaked cracked crack split chafed burst broken broke union weeps weeping "
    "drips dripping holed pinhole olive ferrule fractured let"
)
_ONCE = _set("used was were before last when usual normal new always")
_FUEL_CAP = _set("fuel coolant header radiator")

_JAMS = Otherwise(
    said=_set("freeze freezes freezing froze frozen"),
    beside=_set("pump engine motor valve plunger piston rotor gear lifter bearing crank"),
    unless=_set(
        "winter cold ice icy iced weather night overnight frost morning degrees minus temperature snow water "
        "oil's screen pickup strainer below outside @temperature january february december"
    ),
)

#: by finding, "-" before it where it was found not to be so
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    # "primed it with a drill, oil came out at the gauge line" is a good sign
    "gauge_line_leaking": (
        Otherwise(said=_FLOWS, unless=_LEAKS),
        Otherwise(beside=PRIMING | _set("cranked cranking"), unless=_LEAKS),
    ),
    # "after the oil cooler hoses came off and went back on"
    "oil_line_found_broken": (
        Otherwise(said=_set("off"), beside=_set("back refitted reconnected swapped removed")),
    ),
    # "the earth of the instrument panel is loose"
    "ground_strap_bad": (
        Otherwise(
            beside=_set("panel dash dashboard cluster instrument instruments"),
            unless=_set("engine block strap motor"),
        ),
    ),
    # "the bilge smells of petrol"
    "fuel_smell": (
        Otherwise(
            beside=_set("bilge bilges exhaust garage shed cab cabin hands air"),
            unless=_set("oil dipstick stick sump"),
        ),
    ),
    # "blue paper towel in the pump"
    "piece_in_pump": (
        Otherwise(
            anywhere=_set("towel rag rags cloth tissue lint"),
            unless=_set("metal bolt nut chip chips swarf broken hard"),
        ),
    ),
    # "shell is wiped, copper showing, journal blue" has had heat
    "shells_worn_evenly": (
        Otherwise(beside=_HOT, unless=_EVENLY),
        Otherwise(
            said=_set("shell bearing slipper insert"),
            anywhere=_set("blue blued"),
            unless=_EVENLY | _set("mains"),
        ),
    ),
    # "ran out of oil on the motorway, filled it up": it was so once, and is not now
    "dipstick_dry": (
        Otherwise(said=_set("ran run"), anywhere=_set("filled refilled topped")),
        # "the turbo's bearing was starved of oil": it got none, whatever the sump held
        Otherwise(said=_set("starved"), unless=_set("sump pan tank crankcase")),
    ),
    "oil_loss_fast": (
        Otherwise(said=_set("ran run"), anywhere=_set("filled refilled topped")),
        # "a filter and a quart of oil went in"
        Otherwise(said=_set("went"), unless=_set("minute minutes seconds hour miles out")),
        # "new filter on and dumped in seven quarts"
        Otherwise(
            said=_set("dumped"),
            anywhere=_set("fresh new fill filled refilled screwed"),
            unless=_set("lost road floor ground bilge drive minute minutes seconds miles"),
        ),
        Otherwise(
            beside=_set("put poured added chucked tipped"),
            unless=_set("lost loses gone pumped dumped emptied every again"),
        ),
        # "screwed on the new filter and dumped in seven quarts of oil"
        Otherwise(
            said=_set("dumped"),
            then=_set("oil"),
            anywhere=_set("filter fresh refilled"),
            unless=_set("bilge road lost gone everywhere"),
        ),
    ),
    # "blocked off the piston squirters to try"
    "piston_jet_found_broken": (
        Otherwise(
            said=_set("off"), beside=_set("blocked blanked plugged shut capped sealed closed")
        ),
    ),
    # "resealed the pickup joint with sealer"
    "sealer_on_screen": (
        Otherwise(
            beside=_set("resealed sealed reseal seal assembled bedded fitted refitted joint")
        ),
    ),
    # "cleaning the earth on the block cured it"
    "-ground_strap_bad": (Otherwise(said=_set("cleaning cleaned remaking refitting")),),
    # "turned the pump with a drill, 60 psi and oil at every rocker but the last"
    "good_at_pump_low_in_gallery": (Otherwise(said=_set("drill")),),
    # "ran low on oil last year, topped it up": it is not low now
    "dipstick_low": (
        Otherwise(beside=_set("ran"), anywhere=_set("filled refilled topped last ago since")),
    ),
    # "a new o-ring on the pickup fixed the slow build"
    "freshly_rebuilt": (Otherwise(said=_set("slow")),),
    # "gave the piston a polish with 1000 grit"
    "oil_black_and_gritty": (
        Otherwise(anywhere=_set("polish polished polishing paper emery sandpaper lapped lapping")),
    ),
    # "runs at 1500, the alarm stopped it"
    "rises_just_off_idle": (
        Otherwise(said=_set("stopped"), beside=_set("alarm shutdown")),
        Otherwise(said=_set("let back"), unless=_set("touch blip tickle")),  # "when I let off"
    ),
    # "the lifters were pumped up and quiet"
    "clatters_only_at_high_revs": (
        Otherwise(
            said=_set("pump pumped pumping"),
            beside=_set(
                "quiet silent quietened hard solid firm full fine ok good normal nicely well"
            ),
            unless=_set("revs rpm rev high float"),
        ),
    ),
    # "the seal in the timing cover that feeds the crank"
    "gasket_masks_port": (
        Otherwise(
            said=_set("cover"),
            beside=_set("timing front rear side end valve rocker pump chain"),
            unless=_set(
                "hides hid hidden hiding covers covering masks masking blocks blocking blanks half part"
            ),
        ),
    ),
    # "the seal that feeds the crank end was re-used as it looked ok" says nothing of the journals
    "-crank_scored": (
        Otherwise(said=_set("re-used reused refitted"), unless=_set("journal journals crankpins")),
        Otherwise(
            said=_set("seal seals plug gear nose pulley sensor"),
            unless=_set("journal journals crankpins"),
        ),
    ),
    "turbo_line_leaks": (
        Otherwise(
            beside=_set("crank crankshaft cam camshaft head rocker rockers gauge cooler pump"),
            unless=_TURBO,
        ),
    ),
    # "the crank plug came out of the rod journal", "spark plug came out"
    "drain_plug_found_loose": (
        Otherwise(
            beside=_set(
                "crank crankshaft journal crankpin gallery oilway core welsh freeze frost spark glow "
                "lifter cam camshaft block head rocker heater blanking expansion cup"
            ),
            unless=_set("drain sump pan"),
        ),
    ),
    "engine_seized": (
        # "the pump turned a quarter turn and then locked up"
        Otherwise(
            said=_set("locked locks lock froze frozen"),
            anywhere=_set("pump"),
            beside=_set(
                "turn turned turns turning rotate rotated rotates spin spun hand degrees then"
            ),
            unless=_set("engine motor crank crankshaft car drove driving"),
        ),
        Otherwise(beside=_ACCESSORIES, unless=_set("engine motor crank crankshaft")),
        Otherwise(
            beside=_set("starter wiper window blower fan winch trim tilt bilge"),
            unless=_set("engine crank crankshaft"),
        ),
    ),
    "hard_to_turn": (Otherwise(beside=_ACCESSORIES, unless=_set("engine motor crank crankshaft")),),
    # "the turbo drain hose kinked", "blocked off the oil cooler to try"
    "cooler_found_blocked": (
        Otherwise(said=_set("off")),
        Otherwise(
            beside=_set(
                "turbo turbocharger drain breather vacuum heater fuel brake water coolant radiator "
                "washer pcv intercooler boost"
            ),
            unless=_set("cooler coolers"),
        ),
    ),
    # "when i turn the key then falls to 0"
    "drive_coupling_sheared": (
        Otherwise(
            said=_set("key"),
            beside=_set("turn turns turned turning ignition on start started starting cranking"),
            unless=_set(
                "woodruff sheared shears shear snapped broken broke keyway missing gone lost pump"
            ),
        ),
    ),
    # "a mechanical gauge teed off the gallery"
    "test_gauge_doubtful": (
        Otherwise(
            said=_set("off"),
            beside=_set("teed tee'd tapped plumbed branched taken screwed came comes spliced run"),
            unless=_set("wrong doubtful suspect inaccurate rubbish junk differ differs disagree"),
        ),
    ),
    # "reads 20 less than it used to" is a fall, not a gauge that is off
    "panel_off_by_constant": (
        Otherwise(
            said=_set("than"),
            beside=_ONCE,
            unless=_set(
                "mechanical test master trusted direct real true actual everywhere throughout"
            ),
        ),
        Otherwise(
            then=_set("than"),
            beside=_ONCE,
            unless=_set(
                "mechanical test master trusted direct real true actual everywhere throughout"
            ),
        ),
    ),
    # "the light goes off when I rev it": the pressure comes
    # "rev it to 3000 and hold, pressure climbs to 50 then slowly falls": it falls at one speed
    "falls_as_revs_rise": (
        Otherwise(anywhere=_set("hold holding held"), unless=_set("higher more further rising")),
        Otherwise(
            said=_set("off out away stops"),
            anywhere=_LAMPS,
            unless=_set("needle gauge psi bar drops falls sinks dips fades"),
        ),
    ),
    # "covered with soft black flakes" is sludge
    "carbon_flakes": (
        Otherwise(
            beside=_set(
                "soft softer squashy rubbery sludge sludgy smear smears smeared greasy wet paint"
            ),
            unless=_set("hard carbon coke coked gritty crunchy brittle"),
        ),
    ),
    # "used 10w60 racing oil"
    "raced_or_heeled": (
        Otherwise(
            said=_set("racing race"),
            then=_set(
                "oil oils pump pumps cam camshaft filter bearings rods pistons engine spec grade"
            ),
            unless=_set("raced circuit track races lap laps cornering corners heeled"),
        ),
    ),
    "sump_or_pump_swapped": (
        Otherwise(
            said=_set("new"),
            beside=_set("pump"),
            unless=_set(
                "different another wrong aftermarket pickup sump pan deeper shallower bigger swapped used other"
            ),
        ),
    ),
    # "a mechanic says it is fine" is not the maker
    "maker_calls_it_normal": (
        Otherwise(
            beside=_set(
                "mechanic mate friend neighbour neighbor brother dad father uncle buddy bloke"
            ),
            unless=_set(
                "dealer dealership maker manufacturer factory book manual handbook agent dealer's garage "
                "normal usual all main"
            ),
        ),
    ),
    # "the pump keeps freezing up" is a pump that jams
    **dict.fromkeys(("stood_in_frost", "oil_very_cold", "ice_at_screen"), (_JAMS,)),
    # "in june the filter and oil, ok few weeks then"
    "-filter_collapsed": (Otherwise(then=_set("few for till until weeks some")),),
    "-filter_packed": (Otherwise(then=_set("few for till until weeks some")),),
    "bearings_failed_again": (
        Otherwise(
            said=_set("another"),
            then=_set("shop garage place workshop builder mechanic engine car truck boat owner"),
        ),
    ),
    # "the lamp stayed on for 3 miles before she stopped" is no slow lamp at a start
    "lamp_slow_to_go_out": (
        Otherwise(beside=_set("@distance"), unless=_set("every start starts starting startup")),
    ),
    # "burnt oil, never changed"
    "-oil_used_fast": (Otherwise(said=_set("burnt burned"), then=_set("changed")),),
    "filler_cap_found_off": (Otherwise(beside=_FUEL_CAP, unless=_set("oil")),),
}

#: parts that other systems have as well: "water pump shaft snapped", "fuel tank strainer blocked"
ALSO_ELSEWHERE = _set(
    "drive_shaft_broken drive_coupling_sheared drive_gear_worn gears_worn_out pump_gear_broken "
    "pump_jammed pump_found_failed pump_casting_cracked pump_shaft_play drive_shaft_rounded "
    "relief_valve_stayed_open relief_found_stuck relief_plunger_sticks gallery_found_blocked "
    "shells_wiped shell_spun bearing_found_seized crank_plug_found_missing suction_hose_flattens "
    "seal_found_pushed_out screen_blocked sender_connector_loose thrust_face_ploughed "
    "gasket_masks_port filter_collapsed filter_packed deep_knock_under_load"
)
#: straight before such a part: whose it is
OTHER_OWNERS = _set(
    "water coolant fuel diesel petrol injection injector vacuum steering washer alternator dynamo "
    "generator compressor exhaust header manifold gearbox transmission diff axle wheel heater "
    "radiator glow brake clutch hub bilge air aircon"
)
#: among the words of such a finding, behind its part
OF_ANOTHER_SYSTEM = _set("gearbox transmission diff axle sensor")
#: and yet it is the engine's own
ITS_OWN = _set("oil engine sump cooler lube pickup")
#: found inside the engine and put right since: "had a spun bearing last year at another shop"
PUT_RIGHT = _set(
    "shell_spun shells_wiped one_bearing_wiped all_bearings_wiped shells_scratched crank_scored "
    "bearing_found_seized metal_in_pan metal_in_filter metal_in_screen copper_flakes "
    "grey_soft_flakes hard_chips screen_blocked sludge_on_screen sludge_seen pump_jammed "
    "gears_worn_out pump_gear_broken drive_shaft_broken drive_coupling_sheared camshaft_broken "
    "rod_through_block relief_found_stuck bearings_failed_again"
)
LAST = _set("last")
PAST_TIMES = _set("year season summer winter spring autumn fall century")
PAST = _set("previously formerly originally")
#: begin a clause that says when a fault was put right; before them, and the time
DONE_THEN = _set("cleaned cleared removed washed flushed replaced renewed changed fixed")
LEADS_ON = _set(", and i we was were all got had it this that which")
MONTHS = _set(
    "january february march april may june july august september october november december "
    "last year summer winter spring autumn"
)
#: and yet it is said of today
STILL = _set("since now today still again just")
