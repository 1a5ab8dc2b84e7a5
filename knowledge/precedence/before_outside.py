"""What must be seen from outside before the first spanner, the drain, the filter and the caps."""

from knowledge.inspections import (
    delivery,
    instrument,
    instrument_gauge,
    leaks,
    oil,
    pump,
    relief,
    suction,
    topend,
)
from knowledge.precedence.shapes import Before, before
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import JUDGEMENT as J
from knowledge.vocabulary import Access

#: what can be opened first, with nothing but the outside before it
_FIRST_SPANNER = (
    Access.GAUGE_PORT,
    Access.OIL_SAMPLE,
    Access.VALVE_COVER_OFF,
    Access.DISTRIBUTOR_OUT,
    Access.RELIEF_CAP_OFF,
    Access.ENGINE_EASED,
    Access.VALLEY_OPEN,
)
#: these let oil run down the outside of the engine
_SPILLS = (
    Access.GAUGE_PORT,
    Access.DRAINED,
    Access.FILTER_OFF,
    Access.VALVE_COVER_OFF,
    Access.RELIEF_CAP_OFF,
    Access.FLYWHEEL_OFF,
)
#: the wires are pulled aside and the battery is off from here on
_WIRES_OFF = (Access.ENGINE_EASED, Access.FRONT_COVER_OFF, Access.FLYWHEEL_OFF)
_AS_FOUND = (
    *before(
        instrument.ASK_ITS_HISTORY,
        "what happened is asked before anything is touched",
        CP,
        *_FIRST_SPANNER,
    ),
    *before(
        oil.ASK_FOR_THE_OIL_RECORD,
        "grade and date are asked while they can be held against the oil in it",
        CP,
        Access.OIL_SAMPLE,
        Access.DRAINED,
    ),
    *before(
        leaks.SURVEY_FOR_LEAKS,
        "oil spilt in the work runs over the tracks of the leak",
        CP,
        *_SPILLS,
    ),
    *before(
        instrument.LOOK_AT_SENDER_AND_WIRE,
        "with the sender out nobody can tell how plug and thread sat",
        CP,
        Access.GAUGE_PORT,
    ),
    *before(
        leaks.LOOK_AT_THE_SENDER,
        "a sender that leaked is wetted all over when it comes out",
        CP,
        Access.GAUGE_PORT,
    ),
    *before(
        instrument.TURN_THE_KEY_AND_LOOK,
        "lamp and needle are seen as found, sender and battery still connected",
        J,
        Access.GAUGE_PORT,
    ),
    *before(
        instrument.TURN_THE_KEY_AND_LOOK,
        "wires and battery come off before the engine is eased or taken apart",
        CP,
        *_WIRES_OFF,
    ),
    *before(
        instrument.SWING_THE_GAUGE_BY_ITS_LEAD,
        "the lead test wants sender and battery connected as found",
        J,
        Access.GAUGE_PORT,
    ),
    *before(
        instrument.SWING_THE_GAUGE_BY_ITS_LEAD,
        "wires and battery come off before the engine is eased or taken apart",
        CP,
        *_WIRES_OFF,
    ),
    *before(
        instrument.LOOK_AT_SENDER_AND_WIRE,
        "how the wire ran and where it chafed is seen before it is pulled aside",
        CP,
        *_WIRES_OFF,
    ),
    *before(
        instrument.FOLLOW_THE_GAUGE_LINE,
        "a wet union or a kink is lost once the line is undone",
        CP,
        Access.GAUGE_PORT,
    ),
)
_OIL_STILL_IN = (
    *before(
        oil.READ_THE_STICK,
        "level and look of the oil end with the drain; the stick is photographed first",
        CP,
        Access.OIL_SAMPLE,
        Access.DRAINED,
    ),
    *before(
        oil.SEND_AN_OIL_SAMPLE,
        "the sample is drawn warm, mid-stream, before any drain",
        CP,
        Access.DRAINED,
        Access.FILTER_OFF,
    ),
    *before(
        oil.WATCH_THE_LEVEL_STANDING,
        "a level can only sink while the oil is in",
        CP,
        Access.DRAINED,
    ),
    *before(
        leaks.LOOK_AT_THE_DRAIN,
        "whether the plug was slack is lost when it is undone",
        CP,
        Access.DRAINED,
    ),
    *before(
        leaks.FOLLOW_THE_OIL_LINES,
        "a line under no oil shows no wet fitting",
        CP,
        Access.DRAINED,
    ),
    *before(
        suction.FEEL_SUCTION_UNIONS,
        "the tank's level and the grip of each union are felt before they are undone",
        CP,
        Access.DRAINED,
    ),
    *before(
        oil.CROSS_CHECK_COOLANT,
        "the cooling system is tested full, and its last step starts the engine",
        J,
        Access.DRAINED,
        Access.VALLEY_OPEN,
    ),
    *before(
        instrument_gauge.CRANK_WITH_THE_PORT_OPEN,
        "cranking needs oil in the sump and the pump's drive in place",
        J,
        Access.DRAINED,
        Access.DISTRIBUTOR_OUT,
    ),
    *before(
        pump.CRANK_WITH_FILTER_OFF,
        "cranking needs oil in the sump and the pump's drive in place",
        J,
        Access.DRAINED,
        Access.DISTRIBUTOR_OUT,
    ),
    *before(
        pump.FORCE_OIL_INTO_THE_PUMP,
        "cranking needs oil in the sump and the pump's drive in place",
        J,
        Access.DRAINED,
        Access.DISTRIBUTOR_OUT,
    ),
    *before(
        instrument_gauge.BLOW_THROUGH_THE_GAUGE_LINE,
        "the line is cranked full, with oil in the sump",
        J,
        Access.DRAINED,
    ),
    *before(
        topend.FLOW_TEST_THE_TURBO_FEED,
        "the feed is cranked into a can, with oil in the sump",
        J,
        Access.DRAINED,
    ),
    *before(
        pump.SPIN_THE_PUMP_BY_DRILL,
        "the drill test wants oil in the sump and the pump in its place",
        J,
        Access.SUMP_OFF,
        Access.PUMP_OFF,
        Access.PUMP_COVER_OFF,
    ),
    *before(
        pump.WATCH_THE_ROTOR_CRANKED,
        "cranking needs oil in the sump and the filter on",
        CP,
        Access.DRAINED,
        Access.FILTER_OFF,
    ),
)
_FILTER_AND_CAP = (
    *before(
        delivery.LOOK_AT_THE_FILTER,
        "how the filter sat, its seat and hoses, is seen before it is turned",
        CP,
        Access.FILTER_OFF,
    ),
    *before(
        leaks.FEEL_THE_FILTER,
        "whether it was hand-loose is lost when it is unscrewed",
        CP,
        Access.FILTER_OFF,
    ),
    *before(
        delivery.LOOK_WHERE_THE_FILTER_SAT,
        "flap, thread and can are whole only until the cutter goes round",
        CP,
        Access.FILTER_CUT,
    ),
    *before(
        leaks.LOOK_UNDER_THE_FILTER,
        "the seals are counted on the filter before it is cut",
        CP,
        Access.FILTER_CUT,
    ),
    *before(
        relief.FEEL_THE_RELIEF_CAP,
        "whether the cap had slackened is lost when it is undone",
        CP,
        Access.RELIEF_CAP_OFF,
    ),
    *before(
        relief.PULL_THE_RELIEF_VALVE,
        "where the valve stood and what lay on its seat is lost at the first removal",
        CP,
        Access.PUMP_RELIEF_OUT,
    ),
    *before(
        pump.SEE_THE_DISTRIBUTOR_SEAT,
        "whether it went home by hand is felt before it is lifted",
        CP,
        Access.DISTRIBUTOR_OUT,
    ),
    *before(
        pump.WATCH_THE_ROTOR_CRANKED,
        "a rotor can be watched only while the distributor is in",
        J,
        Access.DISTRIBUTOR_OUT,
        Access.FRONT_COVER_OFF,
    ),
)
BEFORE_OUTSIDE: tuple[Before, ...] = (*_AS_FOUND, *_OIL_STILL_IN, *_FILTER_AND_CAP)
