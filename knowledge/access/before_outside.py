"""What must be seen from outside before the first spanner, the drain, the filter and the caps."""

from knowledge.access.precedence_model import Before, before
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.delivery import findings_filter as delivery_filter
from knowledge.stations.delivery import findings_filter_cut as delivery_filter_cut
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
        check=instrument_findings.ASK_ITS_HISTORY,
        why="ask what happened before you touch anything",
        source=COMMON_PRACTICE,
        openings=_FIRST_SPANNER,
    ),
    *before(
        check=oil_record.ASK_FOR_THE_OIL_RECORD,
        why="ask for grade and date while you can compare them with the oil in it",
        source=COMMON_PRACTICE,
        openings=(
            Access.OIL_SAMPLE,
            Access.DRAINED,
        ),
    ),
    *before(
        check=leaks_findings.SURVEY_FOR_LEAKS,
        why="oil spilt during the work runs over the tracks of the leak",
        source=COMMON_PRACTICE,
        openings=_SPILLS,
    ),
    *before(
        check=instrument_sender.LOOK_AT_SENDER_AND_WIRE,
        why="with the sender out nobody can see how plug and thread sat",
        source=COMMON_PRACTICE,
        openings=(Access.GAUGE_PORT,),
    ),
    *before(
        check=leaks_places.LOOK_AT_THE_SENDER,
        why="a sender that leaked gets wet all over when it comes out",
        source=COMMON_PRACTICE,
        openings=(Access.GAUGE_PORT,),
    ),
    *before(
        check=instrument_findings.TURN_THE_KEY_AND_LOOK,
        why="look at lamp and needle as found, with sender and battery still connected",
        source=JUDGEMENT,
        openings=(Access.GAUGE_PORT,),
    ),
    *before(
        check=instrument_findings.TURN_THE_KEY_AND_LOOK,
        why="disconnect wires and battery before you move the engine or take it apart",
        source=COMMON_PRACTICE,
        openings=_WIRES_OFF,
    ),
    *before(
        check=instrument_electrical.SWING_THE_GAUGE_BY_ITS_LEAD,
        why="the lead test needs sender and battery connected as found",
        source=JUDGEMENT,
        openings=(Access.GAUGE_PORT,),
    ),
    *before(
        check=instrument_electrical.SWING_THE_GAUGE_BY_ITS_LEAD,
        why="disconnect wires and battery before you move the engine or take it apart",
        source=COMMON_PRACTICE,
        openings=_WIRES_OFF,
    ),
    *before(
        check=instrument_sender.LOOK_AT_SENDER_AND_WIRE,
        why="see how the wire ran and where it chafed before you pull it aside",
        source=COMMON_PRACTICE,
        openings=_WIRES_OFF,
    ),
    *before(
        check=instrument_panel.FOLLOW_THE_GAUGE_LINE,
        why="a wet union or a kink is lost once you undo the line",
        source=COMMON_PRACTICE,
        openings=(Access.GAUGE_PORT,),
    ),
)
_OIL_STILL_IN = (
    *before(
        check=oil_findings.READ_THE_STICK,
        why="level and look of the oil are lost with the drain; photograph the stick first",
        source=COMMON_PRACTICE,
        openings=(Access.DRAINED,),
    ),
    *before(
        check=oil_findings.READ_THE_STICK,
        why="read the level before any oil comes out",
        source=COMMON_PRACTICE,
        openings=(Access.OIL_SAMPLE,),
        only_for=oil_findings.LEVELS,
    ),
    *before(
        check=oil_analysis.SEND_AN_OIL_SAMPLE,
        why="draw the sample warm, mid-stream, before any drain",
        source=COMMON_PRACTICE,
        openings=(
            Access.DRAINED,
            Access.FILTER_OFF,
        ),
    ),
    *before(
        check=oil_record.WATCH_THE_LEVEL_STANDING,
        why="a level can only fall while the oil is in",
        source=COMMON_PRACTICE,
        openings=(Access.DRAINED,),
    ),
    *before(
        check=leaks_places.LOOK_AT_THE_DRAIN,
        why="whether the plug was loose is lost when you undo it",
        source=COMMON_PRACTICE,
        openings=(Access.DRAINED,),
    ),
    *before(
        check=leaks_places.FOLLOW_THE_OIL_LINES,
        why="a line without oil shows no wet fitting",
        source=COMMON_PRACTICE,
        openings=(Access.DRAINED,),
    ),
    *before(
        check=suction_findings.FEEL_SUCTION_UNIONS,
        why="check the tank level and how tight the unions are before you undo them",
        source=COMMON_PRACTICE,
        openings=(Access.DRAINED,),
    ),
    *before(
        check=oil_contamination.CROSS_CHECK_COOLANT,
        why="test the cooling system full; the last step of the test starts the engine",
        source=JUDGEMENT,
        openings=(
            Access.DRAINED,
            Access.VALLEY_OPEN,
        ),
    ),
    *before(
        check=instrument_port.CRANK_WITH_THE_PORT_OPEN,
        why="cranking needs oil in the sump and the pump drive in place",
        source=JUDGEMENT,
        openings=(
            Access.DRAINED,
            Access.DISTRIBUTOR_OUT,
        ),
    ),
    *before(
        check=pump_priming.CRANK_WITH_FILTER_OFF,
        why="cranking needs oil in the sump and the pump drive in place",
        source=JUDGEMENT,
        openings=(
            Access.DRAINED,
            Access.DISTRIBUTOR_OUT,
        ),
    ),
    *before(
        check=pump_priming.FORCE_OIL_INTO_THE_PUMP,
        why="cranking needs oil in the sump and the pump drive in place",
        source=JUDGEMENT,
        openings=(
            Access.DRAINED,
            Access.DISTRIBUTOR_OUT,
        ),
    ),
    *before(
        check=instrument_port.BLOW_THROUGH_THE_GAUGE_LINE,
        why="crank with the line full and oil in the sump",
        source=JUDGEMENT,
        openings=(Access.DRAINED,),
    ),
    *before(
        check=topend_feeds.FLOW_TEST_THE_TURBO_FEED,
        why="crank the feed into a can, with oil in the sump",
        source=JUDGEMENT,
        openings=(Access.DRAINED,),
    ),
    *before(
        check=pump_priming.SPIN_THE_PUMP_BY_DRILL,
        why="the drill test needs oil in the sump and the pump in its place",
        source=JUDGEMENT,
        openings=(
            Access.SUMP_OFF,
            Access.PUMP_OFF,
            Access.PUMP_COVER_OFF,
        ),
    ),
    *before(
        check=pump_findings.WATCH_THE_ROTOR_CRANKED,
        why="cranking needs oil in the sump and the filter on",
        source=COMMON_PRACTICE,
        openings=(
            Access.DRAINED,
            Access.FILTER_OFF,
        ),
    ),
)
_FILTER_AND_CAP = (
    *before(
        check=delivery_filter.LOOK_AT_THE_FILTER,
        why="look at how the filter sat, its seat and hoses, before you turn it",
        source=COMMON_PRACTICE,
        openings=(Access.FILTER_OFF,),
    ),
    *before(
        check=leaks_places.FEEL_THE_FILTER,
        why="whether it was only hand-tight is lost when you unscrew it",
        source=COMMON_PRACTICE,
        openings=(Access.FILTER_OFF,),
    ),
    *before(
        check=delivery_filter.LOOK_WHERE_THE_FILTER_SAT,
        why="flap, thread and can are whole only until you cut it",
        source=COMMON_PRACTICE,
        openings=(Access.FILTER_CUT,),
    ),
    *before(
        check=leaks_places.LOOK_UNDER_THE_FILTER,
        why="count the seals on the filter before you cut it",
        source=COMMON_PRACTICE,
        openings=(Access.FILTER_CUT,),
    ),
    *before(
        check=delivery_filter_cut.CUT_THE_FILTER_OPEN,
        why="the metal in the filter says whether bearings, pump or nothing sheds",
        source=COMMON_PRACTICE,
        openings=(
            Access.SUMP_OFF,
            Access.FRONT_COVER_OFF,
            Access.PUMP_OFF,
            Access.FLYWHEEL_OFF,
        ),
        spoilt=False,
    ),
    *before(
        check=relief_findings.FEEL_THE_RELIEF_CAP,
        why="whether the cap had slackened is lost when you undo it",
        source=COMMON_PRACTICE,
        openings=(Access.RELIEF_CAP_OFF,),
    ),
    *before(
        check=relief_findings.PULL_THE_RELIEF_VALVE,
        why="where the relief valve stood and what lay on its seat is lost at the first removal",
        source=COMMON_PRACTICE,
        openings=(Access.PUMP_RELIEF_OUT,),
    ),
    *before(
        check=pump_findings.SEE_THE_DISTRIBUTOR_SEAT,
        why="feel whether it seated by hand before you lift it",
        source=COMMON_PRACTICE,
        openings=(Access.DISTRIBUTOR_OUT,),
    ),
    *before(
        check=pump_findings.WATCH_THE_ROTOR_CRANKED,
        why="you can watch a rotor only while the distributor is in",
        source=JUDGEMENT,
        openings=(
            Access.DISTRIBUTOR_OUT,
            Access.FRONT_COVER_OFF,
        ),
    ),
)
BEFORE_OUTSIDE: tuple[Before, ...] = (*_AS_FOUND, *_OIL_STILL_IN, *_FILTER_AND_CAP)
