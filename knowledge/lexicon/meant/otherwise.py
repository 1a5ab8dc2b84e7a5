"""The shape of a case in which a finding is not meant; words that say so of many findings."""

from __future__ import annotations

from typing import NamedTuple

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
