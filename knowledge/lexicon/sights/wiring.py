"""Words for the wiring of gauge, sender and lamp."""

from __future__ import annotations

from knowledge.lexicon.words.names import DIALS, SENDERS

_GAUGE = "gauge|gage|guage|needle|pointer"
_LAMP = "light|lamp|buzzer|alarm|warning"
_SENDER = "sender|sensor|sending-unit|switch|transmitter|transducer|sendor"
_WIRE = "wire|wires|lead|leads|wiring|cable|loom|harness"
_SOUND = "good|fine|ok|okay|sound|tested|perfect|clean|tight|intact|alright|right|checked-out"
_CHECKED = "check|checks|checked|tests|tested|test|proved|proves|proven|look|looks|looked|is|are|was|were|all|out|found|seem|seems|verified|confirmed"
_SENDER_OR_SWITCH = "sender|sensor|switch|sending-unit|sending"
_SHOP = "test|shop|master|mechanical|borrowed|second|direct|manual|garage|workshop"
_ANY_GAUGE = "gauge|gage|guage|needle|pointer|dial|clock"
_ANY_LAMP = "light|lamp|bulb|buzzer|alarm|warning"
_ANY_SENDER = "sender|sensor|sending-unit|sending_unit|switch|transmitter|transducer|sendor"
_ANY_WIRE = "wire|lead|wiring|cable|loom|harness"
_PLUG = "connector|plug|terminal|connection|spade|contact|push-on"
_OUT = "off|unplugged|disconnected|pulled|removed|hanging|unhooked|detached"
_GROUNDED = "ground|grounded|grounding|earth|earthed|earthing|shorted_to|body|chassis"
_STILL = (
    "nothing|no_movement|stayed|sat|sits|dead|unmoved|no_change|no_response|no_reaction|@not_move|@not_moving|"
    "@not_budge|@not_swing|@not_react|@not_respond|@not_twitch"
)
_SWINGS = "swing|swings|swung|full|max|maximum|pegged|pegs|over|top|off_the_clock|hard_over|to_h|goes_over|right_over|to_full|to_the_stop"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "wire_open_or_shorted": (
        f"{_WIRE}|circuit is|was|tested|measured|measures|tests? =open|=shorted|open-circuit|=shorting to|circuit?",
        "no continuity",
        "short|shorted|shorting to ground|earth|block|chassis",
        f"open circuit .. {_WIRE}",
        "wiring|wire|loom|harness|cable tested|tests|test|measured|checked|found|is|was? =bad|=faulty|=open|=shorted|=short|=chafed|=rubbed|=melted|=broken circuit|through|to|out?",
        "short|open|break|fault|chafed|bare in|on|to the? wiring|wire|loom|harness|sender|ground|earth|wire",
    ),
    "sender_ground_poor": (
        f"{_SENDER} .. poor|bad|no|not ground|earth|grounded|earthed",
        f"no|bad|poor|dodgy|weak earth|ground|earthing at|on|for|to the? {_SENDER_OR_SWITCH}",
        f"{_SENDER_OR_SWITCH} body|unit|was|is|has|had|not|badly|bad|poor|no|poorly|@not? earthed|grounded|earth|ground properly|well?",
        f"tape|ptfe|sealant|teflon on|round|around|wrapped .. {_SENDER_OR_SWITCH} threads|thread .. earth|ground|insulated|insulating",
    ),
    "needle_ignores_lead_test": (
        f"grounded|grounding|earthed|earthing|shorted|shorting the? {_WIRE}|it|sender .. ,? nothing|no|@not|still .. move|movement|happens|moves|change|swing|happened|response|swings|reaction",
        f"{_GAUGE} @not|no|longer swing|swings|move|respond .. grounded|earthed|shorted|lead|wire",
        f"no longer swings .. {_GAUGE}",
        "grounded|earthed|grounding|earthing .. needle|gauge @not|never|doesnt|didnt move|budge|swing|react|change|flinch",
    ),
    "lamp_on_with_wire_off": (
        f"{_LAMP} stays|stayed|still|remains|is|was on|lit|on with|when|even .. {_WIRE}|{_SENDER}|plug|connector off|unplugged|disconnected|pulled|removed",
        f"unplugged|disconnected|pulled .. {_SENDER}|{_WIRE}|connector .. {_LAMP} stays|stayed|still|remains on|lit|on",
        "pulled|took|unplugged|disconnected|removed|took the? wire|lead|plug|connector off|from|out|at|of? the|its? switch|sender|sensor|it? and|but|, the? light|lamp|alarm|buzzer|it still|stays|stayed|is|was|keeps|carries on|lit|going|sounding|screaming|still|there|goes?",
        "with .. wire|lead|plug|connector off|disconnected|unplugged|pulled .. light|lamp|alarm|buzzer still|stays|stayed on|lit|going|sounding",
        "lamp|light|alarm|buzzer|warning is|was? stays|stayed|still|on|lit|persists|persisted|remains|continues|sounding on|lit|sounding? "
        "with|when|even with? the? oil? pressure? switch|sensor|sender|wire|lead|plug wire|lead|plug? =off|disconnected|unplugged|removed|isolated",
        "switch|sensor|sender|switch-wire wire|lead|plug? unplugged|disconnected|isolated ,|and|but|: the? alarm|lamp|light|buzzer|warning persists|persisted|still|stays|stayed|remains|remained|continues",
    ),
    "gauge_supply_wrong": (
        "voltage stabiliser|stabilizer|regulator|limiter .. faulty|bad|failed|duff|dead|stuck|gone|shot",
        "faulty|bad|failed|dead voltage|instrument stabiliser|stabilizer|regulator|limiter",
        "no|low|wrong voltage|power|feed|supply|current at|to|on the? gauge|gauges|cluster|sensor|sender",
        "sensor|sender|gauge supply .. low|unsteady|missing|wrong",
        "earth|ground|negative|feed|supply wire|lead|connection|terminal? of|on|at|behind|to the|my? instrument|gauge? panel|dash|dashboard|cluster|gauge is|was|has? worked? loose|green|corroded|off|broken|bad|rotten|undone",
        "instrument? panel|dash|dashboard|cluster|gauge earth|ground wire|lead|connection? is|was|has? worked? loose|green|corroded|off|broken|bad|poor|rotten|undone",
    ),
    "fuse_blown": (
        "fuse|fuses is|was|had|has|were|for? .. blown|blew|popped|failed|gone",
        "blown|popped|blew a|the|gauge|instrument? fuse|fuses",
    ),
    "sender_ohms_high": (
        f"{_SENDER} .. open|infinite|high ohms|circuit|resistance",
        "infinite|too-high ohms|resistance",
        f"{_SENDER_OR_SWITCH} .. no|infinite|open|very|too|off-scale|high ohms|resistance|circuit",
        f"no|infinite|open|high ohms|resistance|circuit at|across|on|through|from the? {_SENDER_OR_SWITCH}",
    ),
    "sender_ohms_low": (
        f"{_SENDER} .. zero|no|low ohms|resistance",
        f"{_SENDER} .. shorted internally",
        f"{_SENDER} is|was|measures|measured|found =shorted",
        f"{_SENDER_OR_SWITCH} .. zero|0|nil|very|too|low|dead|short ohms|resistance|short|circuit",
        f"zero|0|low|dead|very ohms|low|resistance|short at|across|on|through|from|resistance the? {_SENDER_OR_SWITCH}",
    ),
    "gauge_dead_on_known_signal": (
        "gauge tested|tests|found|proved|confirmed|itself|was|is|turned|itself|out|to? was|is|to|be|out? be? bad|faulty|dead|duff|defective|kaput",
        "faulty|bad|dead|duff|defective oil? pressure? gauge|instrument-cluster|cluster",
        "gauge|instrument fails|failed|bad|dead|wrong|no|reads|out on|at|with|the|a|its|bench|movement|nothing bench|test|tester|known|substitute|resistor|simulator|signal test|signal|resistor|box?",
    ),
    "jumper_ground_cures": (
        "extra|temporary|separate|jumper|additional|new|bridging earth|ground|wire|lead|cable wire|lead|cable|to|from|strap? .. fixed|cured|right|normal|good|fine|correct|works|worked|came|sorted",
        "with|ran|added|put|clipped a|an? jumper|extra|temporary|earth|ground wire|lead|cable .. normal|right|fine|good|correct|works|came|fixed|cured",
    ),
    "other_gauge_reads_right": (
        f"{_SHOP}|another|different|new|replacement gauge .. shows|reads|says|showed|read|is|was|gave good|fine|normal|right|correct|healthy|plenty|ok|perfect",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "fuse_blown": (
        f"fuse|fuses {_CHECKED}? {_CHECKED}? {_SOUND}",
        "all fuses good|fine|ok|intact",
        "new|another|replaced|fresh|changed the? fuse|relay .. no|same|still|@not change|difference|made",
    ),
    "gauge_dead_on_known_signal": (
        f"gauge|cluster|instrument cluster|itself|panel? {_CHECKED}? {_CHECKED} {_SOUND}",
    ),
    "needle_ignores_lead_test": (
        "grounded|grounding|earthed|earthing|shorted|shorting .. wire|lead|terminal .. needle|gauge .. swings|went|swung|moves|moved|pegs|full|pegged",
        "needle|gauge swings|goes|pegs|went|moves|swung full|over|across|to .. grounded|earthed|shorted|grounding|earthing",
        "needle|gauge|gage|it pegged|pegs|maxed|full|zero|reads|goes|drops|on|at|to? high|full|max|scale|zero|0|over|up? with|when|once the? sender? wire|lead|plug off|grounded|earthed|disconnected|unplugged|pulled",
        "earthed|grounded|shorted|grounding|earthing the? wire|lead|it|sender|terminal at|to|on|the|engine|block|sender|,|and|? .. swings|goes|moves|went|pegs|rises full|right|all|up|across|over|max|scale|past",
        "grounded|earthed it|,|and|lead|wire|the|it|gauge|needle goes|swings|shoots|climbs|pegs up|past|full|right|over|hard|all|max past|over|up|the-way|scale|across?",
        "wire|lead|plug off the|it|sender|,|and|it|gauge|needle|then? goes|drops|went|falls|reads to? =zero|=0|=nothing|=bottom",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "lamp_on_with_wire_off": (
        f"{_ANY_LAMP} & {_ANY_WIRE}|{_ANY_SENDER}|{_PLUG} & {_OUT} & still_lit|still_on|stays_on|stayed_on|still_glows|@not_go_out|"
        "remains_on|remained_on|stays_lit|still_burning|still_comes_on|on_all_the_time|is_still - it_went_off|it_went_out|it_goes_out|it_goes_off|went_out|goes_out",
        f"switch|wire|cable|lead|cap|plug|connector|{SENDERS} & disconnected|pulled|unplugged|unhooked|nothing_is_connected|nothing_connected|removed|take_away|away|hanging|off & light|lamp|symbol|bulb|telltale|idiot_light & still_burn|stays_on|stayed_on|still_on|still_illuminated|illuminated|@not_go_out|on_anyway|still_burning|still_lit|still_glowing|remains_on|still_shining|on_regardless - no_wire|tank|engine_off",
    ),
    "needle_ignores_lead_test": (
        f"{_ANY_WIRE}|{_ANY_SENDER} & {_GROUNDED} & {_ANY_GAUGE} & {_STILL}",
        f"{_ANY_WIRE}|{_ANY_SENDER} + =grounded|=grounding|=earthed|=earthing|touched_to_ground|to_ground|to_earth & {_STILL} - ohms|pressure",
        f"wire|lead|cable|plug|{SENDERS} & grounded|grounding|shorted|earthed|touched_it_to|touched_to|open_or_shorted|to_the_block|to_the_engine|to_earth|to_ground & {DIALS} & never_budged|@not_budge|never_moved|@not_move|@not_react|same_figure|@not_swing|no_movement|stayed_dead|nothing_happened|dead - full|swings|swung|shot|ohms|end_to_end|wiggle",
        f"open_or_shorted|on_or_off|off_or_grounded|off_then_grounded|grounded_or_not|connected_or_not & {DIALS} & stays|same|@not_move|never|nothing|dead|stuck - ohms",
    ),
    "wire_open_or_shorted": (
        f"{_ANY_WIRE} + open_circuit|open-circuit|no_continuity|dead_short|=infinite",
        f"no_continuity|@not_continuity + {_ANY_WIRE}|{_ANY_SENDER}|{_ANY_GAUGE}",
        f"{_ANY_SENDER}|lamp|light|alarm & wire|lead & is_grounded|is_earthed|grounded_somewhere|earthed_somewhere|grounding_out|"
        "earthing_out|grounding_somewhere|shorted_to_ground|shorted_to_earth|shorting_to - jumper|i_grounded|when_i|if_i|no|not",
        f"{_ANY_WIRE} + broken_inside|break_in|internal_break|shorting_out|shorting_on|rubbed_through - bearing",
        "wire|cable|lead|wiring|loom & meter|metered|tester|beeps|continuity|multimeter|ohmmeter|buzzed|measured|tested & grounded|touching_ground|touching_earth|shorted|=open|no_continuity|infinite|to_ground|to_earth|earthed|to_the_bodywork|dead_short|no_connection - good|fine|no_short|not_shorted|sound|case|body_to|strap|@not|switch",
    ),
    "sender_ohms_high": (
        f"{_ANY_SENDER} + open_circuit|infinite|infinity|off_the_scale|over_limit|too_many - {_ANY_WIRE}|engine_off_ok",
        f"{_ANY_SENDER} + ohm|ohms|resistance + high|too|way|more|infinite|sky|open",
        "sender|sensor|sending_unit & open_circuit|=open|infinite|infinity|too_many_ohms|high_ohms|high_resistance|@not_continuity|no_continuity - wire|port|valve",
        f"{SENDERS}|winding & resistance|ohms|ohm|meter|measured|winding|multimeter & gone_open|=open|triple|double|o/c|infinite|far_too_many|too_high|too_many|off_the_scale|three_times|twice|no_continuity|higher_than|above_spec|through_the_roof - wire|ground|earth|negative|minus|@not|not|port",
    ),
    "sender_ohms_low": (
        f"{_ANY_SENDER} & dead_short|short_circuit|shorted_inside|shorted_internally|short_to_case|shorted - {_ANY_WIRE}",
        f"{_ANY_SENDER} + ohm|ohms|resistance + low|zero|nil|no",
        f"{SENDERS} & resistance|ohms|ohm|meter|measured|multimeter & hardly_any|tenth|too_few|too_low|nearly_zero|near_zero|dead_short|shorted|fraction|too_little|almost_none|next_to_no|below_spec|s/c|practically_none|barely_any - ground|earth|battery|negative|wire|@not|not|no|line|port",
    ),
    "gauge_supply_wrong": (
        f"volts|voltage|volt + {_ANY_GAUGE}|dials|feed|dash|supply + only|instead|low|no|@not|unsteady|dropping",
        "stabiliser|stabilizer|regulator|instrument_voltage + packed|dead|failed|faulty|bad|stuck|duff|broken|wrong|gone "
        "- oil_pressure|relief|valve|spring|plunger",
        f"no_feed|no_power|no_supply|no_voltage|no_volts + {_ANY_GAUGE}|dials|dash|instruments",
        "voltage_stabiliser|voltage_stabilizer|stabiliser|stabilizer|regulator|supply|feed|ignition_feed|voltage_limiter + gauge|gauges|dash|cluster|instrument & dead|faulty|bad|wrong|unsteady|@not_10|sticking|over|high|low|missing|pulsing - oil_feed|relief|pump",
        "feed|supply|voltage|volts|power & gauge|instrument|dial|dash|cluster|gauges|instruments|meter & sagging|sags|drops_to|dropping|unsteady|wanders|fluctuates|missing|intermittent|comes_and_goes|nine_volts|eight_volts|seven_volts|six_volts|wobbles|jumps_about|all_over_the_place - oil_pressure|steady|good|sender|@not|flybridge|station",
    ),
    "gauge_dead_on_known_signal": (
        f"{_ANY_GAUGE} & known|resistor|potentiometer|pot|simulator|decade & dead|wrong|nothing|@not_move|no_movement|stuck|"
        "zero|still",
        f"{_ANY_GAUGE} + own_terminals|signal_wire|at_its_terminals & nothing|dead|wrong|@not_move",
        "gauge|dial|clock|instrument|dash_gauge & known|simulator|resistor|resister|test_box|decade_box|known_signal|calibrator|dummy_sender & pegs|wrong|nothing|dead|@not_move|bottom|no_movement|stuck|rubbish|never_moved|still_reads|miles_out - correct|right|agrees|exactly|spot_on|sender_on",
    ),
    "other_gauge_reads_right": (
        f"{_ANY_GAUGE} & another|spare|different|other|swapped & where_mine|where_the_old|reads_right|reads_correctly|"
        "reads_properly|reads_fine|read_fine|read_right|reads_normal|in_its_place|in_place_of - test|mechanical|sender",
    ),
    "fuse_blown": (
        "fuse + blown|gone|popped|blew|burnt_out|dead|=out - no|not|fine|good|ok",
        "fuse|breaker|fuses & gauge|instrument|dial|clock|panel|dash|cluster|instruments|gauges & burn|burnt|tripped|=open|popped|melted|dead|broken|failed|no_contact|corroded|blown|blew - no|fine|good|ok|whole|intact|@not",
    ),
    "sender_ground_poor": (
        f"{SENDERS} & making_ground|make_ground|decent_return|to_minus|battery_negative|negative_bus|earthed|earth|ground|negative & poor|bad|isnt_making|@not_making|no_decent|@not_connect|a_lot_of_ohms|came_right|no_proper|jumper|rusty|weak|high_resistance|floating|not_grounding|15_ohms|20_ohms - tape|sealer|strap|near_zero|wire|lead|shorted|good|fine|ptfe|paste",
    ),
    "one_station_alone_wrong": (
        "flybridge|upper|up_top|upstairs|cockpit|fly_bridge|outside_helm|top_station|lower_helm|one_helm & gauges|dials|instruments|set|oil_temp & wrong|funny|=out|off|rubbish|crazy|nonsense|haywire & fine|right|normal|ok|good|correct|true - both_wrong|both_stations|earth|ground|negative",
    ),
    "station_ground_poor": (
        "flybridge|upper|top_gauges|upper_helm|lower_helm|helm|station|helms & ground|earth|negative|black_wire|power_lead|feed_wire|earth_lead|ground_wire & corroded|coroded|green|loose|broken|hanging_off|loose_crimp|rotten|bad|poor|frayed|burnt|off|drop - no|not|clean|tight|sender|block",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "wire_open_or_shorted": (
        f"continuity & {_ANY_WIRE}|{_ANY_SENDER}|{_ANY_GAUGE} & good|perfect|fine|ok|right_through|all_the_way - no|@not",
        "wire|wiring|lead + tests|tested|checks|checked|meters|metered|rings_out + good|ok|fine|through",
        "wire|wiring|lead|harness|loom + checked|tested|traced|metered + ok|good|fine|sound|perfect|through - not|no|but|broken",
        "wire|cable|lead|wiring|loom & meter|metered|tester|multimeter|ohmmeter|buzzed|measured|rang & end_to_end|no_break|right_through|no_short|near_zero|sound|good - bad|@not|but|to_ground|strap",
    ),
    "needle_ignores_lead_test": (
        f"{_ANY_WIRE} & {_GROUNDED}|block|touched & {_ANY_GAUGE} & {_SWINGS} - sender_in",
        f"unplug|unplugged|unplugging|disconnected|disconnecting & {_ANY_SENDER}|{_ANY_WIRE}|{_PLUG} & {_ANY_GAUGE}|it & to_zero|drops|dropped|falls|fell|goes_to|went_to|to_full|pegs - @not|never|nothing|still|stays",
    ),
    "gauge_dead_on_known_signal": (
        f"{_ANY_WIRE} & {_GROUNDED}|block|touched & gauge|needle & {_SWINGS} - pressure_gauge",
        "gauge|dial|clock|instrument & known|simulator|resistor|test_box|decade_box|known_signal|calibrator|dummy_sender & exactly|spot_on|agrees|true|as_it_should|correctly|tracks|follows|dead_right|right_on - not|@not|wrong|nothing",
    ),
    "lamp_on_with_wire_off": (
        f"{_ANY_WIRE}|{_ANY_SENDER}|{_PLUG} & wire_off|lead_off|plug_off|connector_off|unplug|unplugged|unplugging|disconnect|disconnected|disconnecting|pull_the|pulled|pulling|removed|took_off & light_went_out|light_goes_out|lamp_went_out|lamp_goes_out|light_out|puts_the_light_out|and_it_went_off|and_it_went_out|and_it_goes_out|and_it_goes_off|stops_the_alarm|stopped_the_alarm|silences|silenced|alarm_stops|alarm_stopped|alarm_went_off_and|buzzer_stops|buzzer_stopped|kills_the_alarm|kills_the_light - not|@not|still|sender_in|new_sender|new_switch",
    ),
    "fuse_blown": (
        "fuse|fuses + checked|intact|good|ok|fine|no_fuse_blown|@not_blown|sound|unblown|healthy|all_right - blown_again|new_fuse|replaced|no_good",
    ),
    "gauge_supply_wrong": (
        "feed|supply|voltage|volts|power & gauge|instrument|dial|cluster|gauges|instruments & rock_steady|steady|as_it_should|solid|proper|twelve|correct|healthy - not|@not|low|needle|pressure",
    ),
    "sender_ground_poor": (
        f"{SENDERS}|units_hex|senders_hex & battery_negative|ground|earth|negative|minus & near_zero|zero_ohms|well_grounded|good_earth|good_ground|under_an_ohm|under_one_ohm|no_resistance|solid|half_an_ohm|perfect - not|@not|wire|lead|shorted|tape",
    ),
    "sender_ohms_low": (
        f"{SENDERS}|units & resistance|ohms|ohm & isnt_under|@not_under|not_under|not_too_low|isnt_low|@not_low|not_shorted|@not_below|in_spec|within_spec|as_book|on_spec|right_on_the_book - wire|ground",
    ),
    "sender_ohms_high": (
        f"{SENDERS}|units & resistance|ohms|ohm & isnt_over|@not_over|not_over|not_too_high|isnt_high|@not_high|@not_above|in_spec|within_spec|as_book|on_spec - wire|ground",
    ),
    "one_station_alone_wrong": (
        "both|two|upper_and_lower|each & station|stations|helms|helm & alike|same|agree|match|identical & read|gauges|dials|show|instruments - not|@not|wrong",
    ),
    "station_ground_poor": (
        "both|each & station|stations|dashboards|panels|helms & ground|earth|earths|grounds|feed|feeds|supplies & clean|tight|good|sound|bright - not|@not|but|loose",
    ),
}
