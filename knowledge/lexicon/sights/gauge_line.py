"""Words for the line to the gauge, its port, and the oil that comes out there."""

from __future__ import annotations

from knowledge.lexicon.words.names import CAPILLARY, CRANKED, GUSHED, NO_OIL, SENDERS

_GAUGE = "gauge|gage|guage|needle|pointer"
_SENDER = "sender|sensor|sending-unit|switch|transmitter|transducer|sendor"
_SOUND = "good|fine|ok|okay|sound|tested|perfect|clean|tight|intact|alright|right|checked-out"
_CHECKED = "check|checks|checked|tests|tested|test|proved|proves|proven|look|looks|looked|is|are|was|were|all|out|found|seem|seems|verified|confirmed"
_OUT = "off|out|down"
_TRIED = "slackened|loosened|cracked|opened|undone|out|off|removed"
_DRY = "=nothing|=dry|=air|=foam|=froth"
_ANY_SENDER = "sender|sensor|sending-unit|sending_unit|switch|transmitter|transducer|sendor"
_CRANK = "crank|cranked|cranking|spun|spinning|starter|turned_over|cranks|turned_the_engine|turning_the_engine|turned_it_over"
_NO_OIL = "no_oil|nothing|@not_a_drop|dry|not_a_drop|no_drop|not_a_dribble|not_one_drop|no_flow"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "gauge_line_sludged": (
        f"{_GAUGE} line|pipe|tube|hose|restrictor .. blocked|sludged|clogged|plugged|choked",
        f"blocked|sludged|clogged|plugged .. {_GAUGE} line|pipe|tube",
        "dribble|trickle|nothing|drop|ooze|bead|bubble at|from|out|of|comes|came|through the? gauge end .. block end|squirts|spurts|gushes|plenty|jets",
        "pipe|line|tube|capillary to|from|for|of it|the-gauge|gauge|that|the-clock|clock is|was|completely|nearly|all? blocked|bunged|choked|plugged|clogged|solid|full up|solid|with|of?",
    ),
    "sender_wrong_on_air": (
        f"{_SENDER}|unit|it tested|tests|tested|found|proved|proven|confirmed|diagnosed|was|turned|is out|to|be|at|as? be? bad|faulty|dead|duff|defective|fault|failed|wrong|u/s",
        "faulty|bad|dead|duff|defective|failed|dud|failing oil? pressure? sender|sensor|transducer|transmitter|sending-unit",
        "sending unit was|is|proved|tested? bad|faulty|dead|defective",
        f"{_SENDER} .. air|compressor|bench .. wrong|dead|nothing|fails|failed",
    ),
    "switch_opens_wrong": (
        "oil? pressure? switch tested|tests|tested|found|proved|proven|confirmed|was|is|turned|to|out|at|narrowed|traced? to|be|as|out|at? be? bad|faulty|dead|duff|defective|fault|failed|stuck",
        "faulty|bad|dead|duff|defective|failed|sticking oil? pressure? switch",
        "fault|trouble|problem narrowed|traced|tracked|was|is|down|lay down|in|to? to|with|in? the? oil? pressure? switch",
        "switch opens|closes|switches|trips at @pressure|@number",
        "pressure? switch never|@not|always|opens|closes|stays|changes|stuck|wont open|opens|closed|shut|over|at|until|work|works =open|=opens|=closed|=wrong|=late|=early|=works|=over|=at|=until",
        "switch .. wrong|bad|faulty|dead|stuck on|with|under|against known|test|air|compressed|gauge|pressure",
    ),
    "sender_port_clogged": (
        f"port|hole|restrictor|screen|orifice|drilling|passage under|for|behind|at|of|to|in .. {_SENDER}|gauge|sending .. clogged|blocked|plugged|sludge|full|choked",
        f"clogged|blocked|plugged|choked .. port|hole|restrictor|screen|orifice|passage .. {_SENDER}|gauge|sending",
        f"sludge|dirt|crud|gunk in|blocking the? .. {_SENDER} hole|port|fitting|screen",
        "screen|gauze|filter under|below|beneath|behind|in the? sender|sensor|switch|sending-unit was|is|looked|full|packed|plugged|clogged|blocked|solid like|with|up|solid|felt|of?",
        "little|tiny|small|mesh screen|gauze looked|was|full|is|like packed|plugged|clogged|blocked|felt|solid|of",
    ),
    "no_oil_at_open_port": (
        f"no|zero|without|not|nothing any|a? oil|drop|thing .. {_SENDER}|gauge|union|gallery|port hole|port|fitting|out|connection|union|undone|open",
        f"{_SENDER} out|removed|off .. no oil|nothing|dry",
        f"took|removed|unscrewed|pulled .. {_SENDER} .. no|nothing|dry oil?",
        "union|fitting|port|sender .. undone|open|out|removed .. no oil|pressure|nothing",
        f"no oil out of the? {_SENDER}|sending|port",
        f"{_SENDER}|sending hole|port|unit is|was|bone? bone? dry",
        "gauge|sender|test|oil port|hole|tapping|union is|was|left? open|undone|out , bone? dry",
        "gauge|sender|test|oil port|hole|tapping|union is|was|left? open|undone|out , dry|nothing|not as|a|at? bone|drop|dribble",
        f"gauge|sender|switch|sensor {_OUT} , cranked .. not|nothing|no a|oil? drop|dribble|oil|comes|came",
        "not|nothing even? a? drop|dribble|oil came|comes|come out of the? port|hole|block",
        "no|none|nothing|not|only|just oil|drop|trace|air|foam|froth? at|from|out|comes|came of|from|at? the? main|oil? gallery|galley|sender|switch plug|port|hole|tapping",
        f"gallery|galley|sender|switch|pressure plug|port|union {_TRIED} ,|:|,? on|with|while|when|and|by? the? starter|cranking|cranked|engine|turning? ,|:|and|,? only|just|but? {_DRY}",
        f"plug of|in the? main|oil? gallery|galley {_TRIED} .. {_DRY}",
        "no|not|nothing any|a? oil|drop? coming|comes|came|flowing|flows|getting|gets out? of|from|at the? sender|switch|gauge|gallery|pressure plug? hole|port|tapping|fitting|opening",
    ),
    "no_oil_at_line_end": (
        "no oil at|reaching|reaches|gets|getting|to the? gauge end|line|itself?",
        "gauge line is|was? dry|empty",
        "cracked|undid|loosened|opened|slackened|disconnected|took the? union|line|fitting|pipe|gauge|nut|hose .. nothing|no|dry|not =came|=oil|=comes|=out|=drop|=flow|=a",
        "no oil at|from|out|reaching|to|of the? end? of? the? line|union|gauge|pipe|capillary end?",
        "gauge end .. hardly|barely|scarcely|not|no|only|just|nothing a|even|so? dribble|drop|trickle|much|anything|ooze|bead",
        "hardly|barely|scarcely|only|just a dribble|drop|trickle|ooze|bead at|from|out the? gauge end|line|pipe",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "switch_opens_wrong": (
        f"oil? pressure? switch|pressure-switch {_CHECKED}? {_CHECKED} {_SOUND}",
    ),
    "no_oil_at_open_port": (
        "good|decent|healthy|strong|nice|big|great|plenty|lots squirt|spurt|jet|flow|stream|gush|oil of? oil? from|out|at|of|there|comes|came the|that|of? the? port|hole|sender|union|line|pipe|fitting|it?",
        "oil squirts|squirted|spurts|pours|poured|gushes|shoots|shot|comes|came out|from|of the|its? hole|port|gallery when|with cranked|cranking|i",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "sender_wrong_on_air": (
        f"{_ANY_SENDER} & air|hand_pump|compressor|shop_air|bench & nothing|dead|wrong|no_change|no_response|@not_move|"
        "no_reading|all_over|zero - lamp|opens",
        "sender|transmitter|sensor|transducer|sending_unit + defective|faulty|bad|dud|duff|dead|kaput|failed|at_fault|found_bad|worn_out - not|good|wire|connector|no|crank|temperature|coolant|cam|bad_reading|knock|fuel|known|@not|ground|earth|leaked|put_down_to|blamed",
        f"{SENDERS} & air|pumped|compressor|hand_pump|bench|rigged|known_pressure|foot_pump|bicycle_pump|tyre_pump|dead-weight|pressure_tester & never_altered|not_react|@not_react|@not_change|no_change|nothing_moved|wrong|never_moved|reads_like|@not_move|no_response|stuck|no_reaction - right|correct|light|lamp|switch|alarm|temp|wiggle",
    ),
    "switch_opens_wrong": (
        "switch & should|supposed|spec|meant|instead & open|opens|closes|close|operates|switches|makes|trips & @pressure|@number",
        "switch & air|hand_pump|bench|known_pressure|gauge & @not_open|@not_close|@not_switch|never_opens|never_closes|"
        "opens_at|closes_at|stays_closed|stays_open",
        "pressure_switch|oil_switch|pressure-switch + faulty|dud|duff|defective|at_fault|bad|dead|u/s",
        "pressure_switch|oil_switch|switch + defective|faulty|bad|wrong_pressure|dud|duff|dead|failed|worn_out|at_fault|internally_shorted|stuck|leaky - master|ignition|lights|dash_switch|toggle|starter|battery|fuel|not|good|connector|wire|no",
        "switch|pressure_switch + old_one_bad|was_duff|was_bad|was_the_fault|was_the_culprit|turned_out_bad|turned_out_faulty|proved_faulty|sticking|gone_bad|had_failed - ignition|light_switch|master|dash_switch|starter|battery|think|wiring",
        "switch|alarm_unit|lights_sensor|light_sensor|lights_sender|warning_sensor & pumped|hand_pump|air|bench|foot_pump|regulator & too_late|too_early|never|rather_than|instead_of|wrong|clicked_late|far_too_high|far_too_low - right|correct|valve",
        "alarm_unit|lights_sensor|light_sender|warning_sensor & pumped|hand_pump|air|bench & too_late|too_early|never|rather_than|instead_of|wrong|clicked",
    ),
    "no_oil_at_open_port": (
        f"loosened|cracked|undid|slackened|opened|undone & union|banjo|fitting|plug|pipe & {_CRANK}|spun|turned & not_a_drop|nothing|no_oil|dry|zilch - stick|dipstick|gauge_end|leak|leaks",
        f"{_ANY_SENDER}|port|tapping & out|removed|open|off|unscrewed & {_CRANK} & {_NO_OIL}",
        f"port|sender_hole|switch_hole|tapping & {_CRANK} & {_NO_OIL}",
        f"{SENDERS} & out|removed|took|unscrewed|pulled|take_out|undone & {CRANKED} & {NO_OIL}|stayed_dry - squirted|spurted|good|strong|filter|ohms|gushed|shot",
    ),
    "gauge_line_sludged": (
        "gauge_end|at_the_gauge|gauge_side|end_of_the_line & dribble|dribbles|trickle|trickles|ooze|oozes|hardly|barely & block_end|block|engine_end|other_end & squirts|gushes|spurts|squirt|gush|plenty|jets - union_leaks|leak|leaks",
        f"{CAPILLARY}|pinhole_fitting|feed_tube & jammed|blow_through|black_crap|full_of|bunged|deposits|sludge|gunked|furred|blocked|clogged|carbon|solid - no|not_blocked|clean|clear|kinked|crushed|freely|pickup",
    ),
    "no_oil_at_line_end": (
        "line|pipe|tube|capillary + off|undone|disconnected & gauge_end|at_the_gauge & nothing|=no|=not|=dry|dribble|hardly|barely & cranked|cranking|running|block|comes|spun|starter - filter|sender|cooler",
        f"line|pipe|tube & gauge|dash|capillary & {_CRANK} & {_NO_OIL} - sender|filter",
        "no_oil|nothing|not_a_drop|dry|@not_drip + gauge_line|line|pipe|tube|back_of_the_gauge|gauge_end|at_the_gauge|behind_the_gauge + gauge|back|end|comes|cracked|dry|out|at - kink|sender|filter|crank|block_port|leak|no_leaks|stick|gauge_shows|on_the_gauge|amiss|wrong|untoward",
        f"nut|union|line|tube|fitting|pipe|capillary & dial|clock|gauge|dash & {NO_OIL} & block_end|block|engine_end|squirt|spurted|flows|tapping|slackened|undone|loosened - oil_behind|carpet|leaks",
    ),
    "sender_port_clogged": (
        f"{_ANY_SENDER} + hole|port|orifice|passage|drilling|restrictor|under|behind + sludge|gunk|blocked|plugged|clogged|bunged|choked|carbon",
        "port|hole|tapping|fitting|restrictor|orifice|take-off + sender|switch|sensor|gauge|sending_unit|under_it + blocked|clogged|plugged|gunged|full|choked|bunged - no|not|relief|filter|empty",
        f"{SENDERS} & drilling|hole|port|passage|restrictor|orifice|tapping|gauze & bunged|muck|blocked|clogged|plugged|sludge|choked|gunked|crud|packed|stopped_up|furred|carbon - no|not|clear|clean|relief|tape|sealer",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "no_oil_at_open_port": (
        f"{_ANY_SENDER}|port & out|removed|open|unscrewed & {_CRANK} & squirt|squirted|spurted|gushed|strong|plenty|good_flow|came_out|shot_out|pumped_out",
        f"{SENDERS} & out|removed|took|unscrewed|pulled & {CRANKED} & {GUSHED} - no|nothing|not|@not|never",
    ),
    "sender_wrong_on_air": (
        "sender|sensor|transmitter|sending_unit + tested|checked|tests|checks|bench + ok|good|fine|correct|right|perfect|spec - not|no|but|faulty|bad|wrong|temperature|new_one",
        f"{SENDERS} & air|pumped|compressor|hand_pump|bench|known_pressure|foot_pump|pressure_tester & spot_on|right_on|exactly|true|as_the_book|tracks|follows|bang_on|correct - not|@not|wrong|switch|lamp",
    ),
    "gauge_line_sludged": (
        f"{CAPILLARY} & blows_through|blew_through|air_passes|passes_air|clear_right_through|blows_freely|blew_freely|clear|no_sludge - not_clear|but|@not",
    ),
    "sender_port_clogged": (
        f"{SENDERS} & drilling|hole|port|passage|restrictor|orifice|tapping|gauze & clear|clean|unblocked|wide_open|unobstructed - not|@not|threads|wiring|wire|tape|starter|crank",
    ),
    "no_oil_at_line_end": (
        "slackened|loosened|undid|cracked|undone & dial|clock|gauge|dash|capillary & wept|oil_came|oil_right_away|squirted|spurted|dribbled|oil_arrives|oil_at_once|oil_straight_away|dripped - no_oil|nothing|sump|plug|port|not_a_drop|@not_a_drop|zip|dry",
    ),
    "switch_opens_wrong": (
        "switch|alarm_unit|lights_sensor & air|pump|bench|hand_pump|pumped & right_at|exactly|stamped|as_marked|correctly|spot_on|bang_on & flips|opens|closes|clicks|changes|switches|trips|breaks|operates - not|@not|rather|instead|late|relief",
    ),
}
