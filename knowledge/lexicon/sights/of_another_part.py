"""Words beside the words for a sight that make them another thing; ids of the book's findings."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: words straight after a phrase that make it another thing: "needle slowly sinks" is the pressure
MADE_ANOTHER: dict[str, frozenset[str]] = {
    "level_risen": _set("after to at the topping filling"),
    "oil_seen_outside": _set("like then"),
    "engine_ran_hot": _set("out laps"),
    "hard_to_turn": _set("left right into round around across onto over"),
    "sludge_seen": frozenset(["trap", "traps"]),
    "history_unknown": _set("new another oil some replacement"),
    "filter_found_loose": _set(
        "its over through the a any from hard easy easily easier ok fine alright without cleanly after"
    ),
    "dipstick_low": _set(
        "press alarm warning light shutdown switch the to into onto over my a pipe "
        "pressure oil reading through past from"
    ),
    "dipstick_dry": _set(
        "the on of fuel light dark brown black grey gray milky creamy cloudy thin thick bad off rancid past through "
        "a like from to very rather quite straight up down"
    ),
    "freshly_rebuilt": _set("oil"),
    "engine_runs_normally": _set("wire wires wiring cable lead leads line hose pipe"),
    "tank_empties_running": _set("on of fuel"),
    "stood_in_frost": _set("rods mains shells bearings crank thou but"),
    "oil_very_cold": _set("rods mains shells bearings crank thou but"),
    "several_alike": _set("engine motor block model unit make"),
    "lamp_dead_with_key_on": _set("off"),
    "clatters_only_at_high_revs": _set("in within after quickly fast slowly straight fine ok"),
    "camshaft_broken": _set("in"),
    "panel_reads_too_low": _set("place spot position quality one brand make fit seal thread"),
    "level_correct": _set("at of to up coming over around through down up"),
    "raced_or_heeled": _set("to"),
    "white_plume": _set("wrap tape paint pipe system tip tips manifold manifolds coating"),
    "oil_caught_fire": _set(
        "extinguisher extinguishers extinguish blanket brigade station engine hazard alarm place fired"
    ),
    "slow_needle": _set(
        "sinks sinking sank falls falling fell drops dropping dropped dips sags declines "
        "goes went creeps crept drifts getting been lower coming"
    ),
}
OF_NEAR = 4  #: words before a phrase in which the part stands that it is said of
#: words so near before a phrase that make it another thing: "the pump seized" is no seized engine
#: beside them the oil runs where it was pumped by hand or by a drill, with the engine open
PRIMING = _set(
    "pressurised pressurized pressurising pot motored drill priming primed prime spin spun spinning preoiling pre-oiling"
)
OF_ANOTHER: dict[str, frozenset[str]] = {
    "idle_below_spec": _set("level pressure reading readings psi gauge needle light lamp"),
    "back_when_slowed": _set("alarm buzzer siren horn beeper bleeper klaxon"),
    "panel_reads_too_low": _set("against compared"),
    "idles_long": _set("cooler"),
    "engine_runs_normally": _set("under during"),
    "all_plugs_accounted_for": _set("front rear outer visible outside spark glow"),
    "oil_used_fast": _set(
        "header tank coolant water fuel diesel petrol radiator expansion surge def adblue"
    ),
    "hard_to_turn": _set("filter off plug bolt nut cap hose belt chain bore gasket cover so"),
    "engine_ran_hot": _set("smoked smokes smoking oil pressure when whenever once until if"),
    "dipstick_dry": _set(
        "like if though spins spun turns tensioner filter line cooler turbo pipe gearbox box lifter lifters "
        "rocker rockers axle diff steering"
    ),
    "filter_found_loose": _set("cracked crack broke break got get spun knocked undid twisted"),
    "earlier_breakage": _set(
        "sender senders sensor sensors gauge gauges switch filter battery alternator"
    ),
    "sender_not_for_gauge": frozenset(["put", "tried", "swapped", "hooked", "connected"]),
    "relief_plunger_sticks": _set(
        "cylinder ring rings bypass clutch brake master tensioner lifter injection filter"
    ),
    "pushrod_off_or_bent": _set("cover gasket box seal oil"),
    "oil_black_and_gritty": _set("smoke smoking exhaust soot plug plugs belt hose"),
    "needle_off_zero_at_rest": _set(
        "lamp light buzzer zero nothing drill primed priming prime preoiled"
    ),
    "pickup_tube_crack_seen": _set("centre center filter element core gauge turbo dipstick plug"),
    "bores_or_pistons_scored": _set("housing pump relief rotor gear valve"),
    "pump_found_sound": _set("rest remainder new fitted replacement another"),
    "shell_spun": _set("pump drive distributor shaft dizzy"),
    "level_falls_standing": _set("coolant antifreeze water radiator header"),
    "maker_calls_it_normal": _set(
        "pump gears rotor rotors clearance clearances mains rods scratches everything plastigauge plastigage all "
        "bearings journals crank spring measured main rod shells thou"
    ),
    "locked_then_freed": _set(
        "valve plunger relief pump turbo lifter tensioner thermostat starter caliper clutch brake"
    ),
    "screen_torn": _set("filter plug drain"),
    "screen_blocked": _set(
        "pipe line feed turbo banjo hose gauge gallery galleries oilway breather drilling"
    ),
    "shells_worn_evenly": _set("cam camshaft rotor gear gears pump"),
    "shells_wiped": _set("cam camshaft"),
    "shells_scratched": _set("cam camshaft"),
    "ran_on_without_pressure": _set("into in mode limp-mode"),
    "sender_wrong_on_air": _set("tyre tire fuel temp temperature coolant water crank cam speed"),
    "filler_cap_found_off": _set("take took taking pull pulled pulling"),
    "sender_wire_off": _set("with pulled pull pulling took take taking slid plug spark ht coil"),
    "level_high": _set("pressure gauge needle psi pointer reading if when unless"),
    "too_much_poured_in": _set("if when unless"),
    "oil_on_bodywork": _set("hose line tube pipe"),
    "oil_seen_outside": _set(
        "fuel petrol gasoline gas coolant water antifreeze air brake hydraulic exhaust vacuum steering"
    ),
    "rod_through_block": _set("oil dowel bolt drain feed plug stud"),
    "stood_in_frost": _set(
        "needle gauge sits reads rests pointer goes ground put crank shells filter canister cooler pipe line hose"
    ),
    "oil_very_cold": _set("needle gauge sits reads rests pointer goes ground put crank shells"),
    "dipstick_low": _set(
        "reads reading shows swings pressure gauge needle pointer idle idles tickover antifreeze coolant water "
        "radiator fuel header switch shutdown says uses using week daily weekly filter canister"
    ),
    "oil_line_found_broken": _set(
        "rad radiator coolant water heater fuel brake boost intercooler air"
    ),
    "level_correct": _set(
        "topped filled connector plug bilge bay boot footwell tray sender switch head "
        "heads filter box bellhousing cover screen strainer gauze pickup"
    ),
    "high_mileage": _set("gauge gauges sender sensor hose hoses switch pump oil filter battery"),
    "engine_banged_or_shook": _set("turbo turbocharger level oils dipstick stick reads"),
    "sender_connector_loose": _set("sump drain pan gallery core dents"),
    "engine_seized": _set(
        "pump valve plunger piston bearing bearings turbo shaft bolt lifter ring rings "
        "screw cap spring relief ball rotor thermostat tensioner needle gauge pointer pressure"
    ),
    "raced_or_heeled": _set("outer inner bearing ball roller pedal"),
    "cover_grooved": _set("belt clutch pressure number name kick seat"),
    "tensioner_slack": _set("drive final bike anchor winch roller"),
    "slow_needle": _set(
        "counter tacho tach tachometer rev-counter speedo temp temperature fuel water"
    ),
    "sender_damaged": _set("rocker toggle ignition indicator window wiper brake fan light"),
    "stopped_with_loss_of_power": _set(
        "rain squeak phone music shore mains steering brakes light lamp gauge needle tach tachometer noise knock leak"
    ),
}
