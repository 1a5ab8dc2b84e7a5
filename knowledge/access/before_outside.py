"""What must be seen from outside before the first spanner, the drain, the filter and the caps."""

from knowledge.access.precedence_model import Before, before
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.delivery import findings_filter as delivery_filter
from knowledge.stations.instrument import findings as instrument_findings
from knowledge.stations.instrument import findings_electrical as instrument_electrical
from knowledge.stations.instrument import findings_panel as instrument_panel
from knowledge.stations.instrument import findings_port as instrument_port
from knowledge.stations.instrument import findings_sender as instrument_sender
from knowledge.stations.leaks import findings as leaks_findings
from knowledge.stations.leaks import findings_places as leaks_places
from knowledge.stations.oil import findings as oil_findings
from knowledge.stations.oil import findings_analysis as oil_analysis
from knowledge.stations.oil import findings_contamination as oil_contamination
from knowledge.stations.oil import findings_record as oil_record
from knowledge.stations.pump import findings as pump_findings
from knowledge.stations.pump import findings_priming as pump_priming
from knowledge.stations.relief import findings as relief_findings
from knowledge.stations.suction import findings as suction_findings
from knowledge.stations.topend import findings_feeds as topend_feeds
from knowledge.work import Access

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
        instrument_findings.ASK_ITS_HISTORY,
        "what happened is asked before anything is touched",
        COMMON_PRACTICE,
        *_FIRST_SPANNER,
    ),
    *before(
        oil_record.ASK_FOR_THE_OIL_RECORD,
        "grade and date are asked while they can be held against the oil in it",
        COMMON_PRACTICE,
        Access.OIL_SAMPLE,
        Access.DRAINED,
    ),
    *before(
        leaks_findings.SURVEY_FOR_LEAKS,
        "oil spilt in the work runs over the tracks of the leak",
        COMMON_PRACTICE,
        *_SPILLS,
    ),
    *before(
        instrument_sender.LOOK_AT_SENDER_AND_WIRE,
        "with the sender out nobody can tell how plug and thread sat",
        COMMON_PRACTICE,
        Access.GAUGE_PORT,
    ),
    *before(
        leaks_places.LOOK_AT_THE_SENDER,
        "a sender that leaked is wetted all over when it comes out",
        COMMON_PRACTICE,
        Access.GAUGE_PORT,
    ),
    *before(
        instrument_findings.TURN_THE_KEY_AND_LOOK,
        "lamp and needle are seen as found, sender and battery still connected",
        JUDGEMENT,
        Access.GAUGE_PORT,
    ),
    *before(
        instrument_findings.TURN_THE_KEY_AND_LOOK,
        "wires and battery come off before the engine is eased or taken apart",
        COMMON_PRACTICE,
        *_WIRES_OFF,
    ),
    *before(
        instrument_electrical.SWING_THE_GAUGE_BY_ITS_LEAD,
        "the lead test wants sender and battery connected as found",
        JUDGEMENT,
        Access.GAUGE_PORT,
    ),
    *before(
        instrument_electrical.SWING_THE_GAUGE_BY_ITS_LEAD,
        "wires and battery come off before the engine is eased or taken apart",
        COMMON_PRACTICE,
        *_WIRES_OFF,
    ),
    *before(
        instrument_sender.LOOK_AT_SENDER_AND_WIRE,
        "how the wire ran and where it chafed is seen before it is pulled aside",
        COMMON_PRACTICE,
        *_WIRES_OFF,
    ),
    *before(
        instrument_panel.FOLLOW_THE_GAUGE_LINE,
        "a wet union or a kink is lost once the line is undone",
        COMMON_PRACTICE,
        Access.GAUGE_PORT,
    ),
)
_OIL_STILL_IN = (
    *before(
        oil_findings.READ_THE_STICK,
        "level and look of the oil end with the drain; the stick is photographed first",
        COMMON_PRACTICE,
        Access.OIL_SAMPLE,
        Access.DRAINED,
    ),
    *before(
        oil_analysis.SEND_AN_OIL_SAMPLE,
        "the sample is drawn warm, mid-stream, before any drain",
        COMMON_PRACTICE,
        Access.DRAINED,
        Access.FILTER_OFF,
    ),
    *before(
        oil_record.WATCH_THE_LEVEL_STANDING,
        "a level can only sink while the oil is in",
        COMMON_PRACTICE,
        Access.DRAINED,
    ),
    *before(
        leaks_places.LOOK_AT_THE_DRAIN,
        "whether the plug was slack is lost when it is undone",
        COMMON_PRACTICE,
        Access.DRAINED,
    ),
    *before(
        leaks_places.FOLLOW_THE_OIL_LINES,
        "a line under no oil shows no wet fitting",
        COMMON_PRACTICE,
        Access.DRAINED,
    ),
    *before(
        suction_findings.FEEL_SUCTION_UNIONS,
        "the tank's level and the grip of each union are felt before they are undone",
        COMMON_PRACTICE,
        Access.DRAINED,
    ),
    *before(
        oil_contamination.CROSS_CHECK_COOLANT,
        "the cooling system is tested full, and its last step starts the engine",
        JUDGEMENT,
        Access.DRAINED,
        Access.VALLEY_OPEN,
    ),
    *before(
        instrument_port.CRANK_WITH_THE_PORT_OPEN,
        "cranking needs oil in the sump and the pump's drive in place",
        JUDGEMENT,
        Access.DRAINED,
        Access.DISTRIBUTOR_OUT,
    ),
    *before(
        pump_priming.CRANK_WITH_FILTER_OFF,
        "cranking needs oil in the sump and the pump's drive in place",
        JUDGEMENT,
        Access.DRAINED,
        Access.DISTRIBUTOR_OUT,
    ),
    *before(
        pump_priming.FORCE_OIL_INTO_THE_PUMP,
        "cranking needs oil in the sump and the pump's drive in place",
        JUDGEMENT,
        Access.DRAINED,
        Access.DISTRIBUTOR_OUT,
    ),
    *before(
        instrument_port.BLOW_THROUGH_THE_GAUGE_LINE,
        "the line is cranked full, with oil in the sump",
        JUDGEMENT,
        Access.DRAINED,
    ),
    *before(
        topend_feeds.FLOW_TEST_THE_TURBO_FEED,
        "the feed is cranked into a can, with oil in the sump",
        JUDGEMENT,
        Access.DRAINED,
    ),
    *before(
        pump_priming.SPIN_THE_PUMP_BY_DRILL,
        "the drill test wants oil in the sump and the pump in its place",
        JUDGEMENT,
        Access.SUMP_OFF,
        Access.PUMP_OFF,
        Access.PUMP_COVER_OFF,
    ),
    *before(
        pump_findings.WATCH_THE_ROTOR_CRANKED,
        "cranking needs oil in the sump and the filter on",
        COMMON_PRACTICE,
        Access.DRAINED,
        Access.FILTER_OFF,
    ),
)
_FILTER_AND_CAP = (
    *before(
        delivery_filter.LOOK_AT_THE_FILTER,
        "how the filter sat, its seat and hoses, is seen before it is turned",
        COMMON_PRACTICE,
        Access.FILTER_OFF,
    ),
    *before(
        leaks_places.FEEL_THE_FILTER,
        "whether it was hand-loose is lost when it is unscrewed",
        COMMON_PRACTICE,
        Access.FILTER_OFF,
    ),
    *before(
        delivery_filter.LOOK_WHERE_THE_FILTER_SAT,
        "flap, thread and can are whole only until the cutter goes round",
        COMMON_PRACTICE,
        Access.FILTER_CUT,
    ),
    *before(
        leaks_places.LOOK_UNDER_THE_FILTER,
        "the seals are counted on the filter before it is cut",
        COMMON_PRACTICE,
        Access.FILTER_CUT,
    ),
    *before(
        relief_findings.FEEL_THE_RELIEF_CAP,
        "whether the cap had slackened is lost when it is undone",
        COMMON_PRACTICE,
        Access.RELIEF_CAP_OFF,
    ),
    *before(
        relief_findings.PULL_THE_RELIEF_VALVE,
        "where the valve stood and what lay on its seat is lost at the first removal",
        COMMON_PRACTICE,
        Access.PUMP_RELIEF_OUT,
    ),
    *before(
        pump_findings.SEE_THE_DISTRIBUTOR_SEAT,
        "whether it went home by hand is felt before it is lifted",
        COMMON_PRACTICE,
        Access.DISTRIBUTOR_OUT,
    ),
    *before(
        pump_findings.WATCH_THE_ROTOR_CRANKED,
        "a rotor can be watched only while the distributor is in",
        JUDGEMENT,
        Access.DISTRIBUTOR_OUT,
        Access.FRONT_COVER_OFF,
    ),
)
BEFORE_OUTSIDE: tuple[Before, ...] = (*_AS_FOUND, *_OIL_STILL_IN, *_FILTER_AND_CAP)
