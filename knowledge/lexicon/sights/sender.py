"""Words for sender and switch."""

from __future__ import annotations

from knowledge.lexicon.words.names import DIALS, SENDERS

_GAUGE = "gauge|gage|guage|needle|pointer"
_SENDER = "sender|sensor|sending-unit|switch|transmitter|transducer|sendor"
_WIRE = "wire|wires|lead|leads|wiring|cable|loom|harness"
_PLUG = "connector|plug|terminal|connection|connections|spade|contacts|push-on"
_WIGGLE = (
    "wiggle|wiggling|wiggled|touch|touched|touching|move|moved|moving|jiggle|jiggled|tug|tugging|tugged|waggle|flex|flexing|fiddle|"
    "disturb|pull|press|pressing|wobble"
)
_MOVES = "frees|freed|unsticks|moves|moved|jumps|jumped|jump|works|worked|comes|came|goes|reads|changes|changed|flickers|springs|swings|drops|move|returns|dies|back"
_BAD = "loose|corroded|dirty|green|bad|poor|broken|crusty|oily|barely-touching|rusty|burnt"
_BROKEN = "broken|chafed|burnt|melted|frayed|cut|snapped|pinched|trapped|severed|corroded-through|bare|rubbed"
_SOUND = "good|fine|ok|okay|sound|tested|perfect|clean|tight|intact|alright|right|checked-out"
_CHECKED = "check|checks|checked|tests|tested|test|proved|proves|proven|look|looks|looked|is|are|was|were|all|out|found|seem|seems|verified|confirmed"
_SENDER_OR_SWITCH = "sender|sensor|switch|sending-unit|sending"
_ANY_SENDER = "sender|sensor|sending-unit|sending_unit|switch|transmitter|transducer|sendor"
_ANY_WIRE = "wire|lead|wiring|cable|loom|harness"
_ANY_PLUG = "connector|plug|terminal|connection|spade|contact|push-on"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "wiggle_moves_needle": (
        f"{_WIGGLE} .. {_WIRE}|{_PLUG}|bundle|sender|sensor .. {_MOVES}",
        f"{_WIGGLE} .. {_WIRE}|{_PLUG}|bundle .. makes|made|causes|brings|brought {_GAUGE}|reading|it|pressure|all|them",
        f"{_WIRE}|wiring|dash|plug was|is|moved|when? {_WIGGLE} about|around? .. {_MOVES}|all",
        f"{_PLUG}|plug unplugged|reseated and reseated|replugged .. needle|{_MOVES}",
        f"{_GAUGE}|reading|light|it .. {_MOVES}|alive|life|dead|cut|cuts out|to|alive|life|in? when|if|as|by .. {_WIGGLE} .. {_WIRE}|{_PLUG}|sender",
    ),
    "sender_leaks_oil": (
        "leak|leaks|leaking|leaked|weeps|weeping|seeps|pushes|pushing|pumps|=pumping oil through|into|out|up|down of|into|the|its|up? plug|connector|wire|wires|"
        "loom|harness|pins|terminal",
        "wires|wire|wiring|plug|connector|loom|harness|pigtail|terminals is|are|was|were|all? soaked|full|wet|swimming|dripping|oily|saturated|covered in|with|"
        "of? oil?",
        "oil in|inside|all-over|on the? plug|connector|wiring|loom|harness|pigtail|pins|terminals",
        f"{_SENDER}|sending unit|is|was? .. leaks|leaking|weeping|oily|wet|seeping|dripping|sprays|pissing",
        "oil in|inside|at|around|from|out|weeping|leaking|sprays|spraying of|from|through? the? oil? pressure? connector|sender|plug|switch|sensor|sending",
        f"leaking|weeping|seeping oil? pressure? {_SENDER}|sending",
        "connector|plug|boot full|soaked|swimming of|with|in oil",
    ),
    "sender_connector_loose": (
        f"{_BAD} {_PLUG}",
        f"{_PLUG} is|was|had|came|found|were|very|a|looked|on|the|sender|come|worked? a|bit|very|come|come|badly|barely|the? {_BAD}|touching",
        f"{_PLUG} .. barely|hardly|not touching|making|seated|connected|tight",
        f"bad|poor|intermittent|dodgy {_PLUG}|contact at|on|to the? oil? pressure? {_SENDER}",
        "wire|terminal|plug|connector|connection|spade|lead on|to|at|of|for the? oil? pressure? sender|sensor|switch|sending-unit was|is|were|had|has|looked|all|badly|a|gone|bit|very? green|corroded|furred|furry|crusty|rusty|loose|dirty|black",
        "sender|sensor|switch wire|terminal|plug|connector|connection|spade|contacts|pins was|is|were|had|all|badly|gone|bit|very|found? green|corroded|furred|furry|crusty|rusty|loose|dirty|black",
    ),
    "sender_wire_off": (
        f"{_WIRE} is|was|been|come|came|had|fully|half|right? =off .. {_SENDER}|unit|off|sending?",
        f"{_WIRE} .. fallen|fell|dropped|come|unplugged|disconnected|hanging|dangling|adrift|detached|unhooked .. {_SENDER}|unit|off|sending?",
        f"{_WIRE} =hanging|=dangling|=unplugged|=disconnected",
        f"{_SENDER} plug|connector|wire|was|is|had|found|left? =unplugged|=disconnected|unconnected",
        f"forgot|forgotten|left to|the? connect|reconnect|plug|off|unplugged|plugged in|the? .. {_SENDER}|wire",
        f"terminal|spade|{_WIRE} broken|broke|snapped|fallen|fell off the? {_SENDER}|it|from",
        "traced .. @not connected",
        "wire|lead|cable was|had|has|is|blue|green|white|red|been|come|just|simply? just|come|right|clean|completely|fallen|fell? right|clean|completely|pulled|come? off",
        "unplugged|disconnected at the sender|sensor|switch",
        f"wire|lead|connector|plug|cable .. not|off|disconnected|unplugged|hanging|fallen|adrift|came|dangling =connected|=off|=disconnected|=unplugged|=hanging|=adrift|=loose|=dangling|=plugged|=attached {_SENDER_OR_SWITCH}?",
        f"{_SENDER_OR_SWITCH} unit? was|is|had|not|been|found|left? unplugged|disconnected|unconnected|not =connected|=plugged",
    ),
    "sender_wire_broken": (
        f"{_WIRE} is|was|had|has|found|been|to|the|sender|gauge? is|was|had|been|the|sender|gauge? {_BROKEN} through|off?",
        f"{_BROKEN} oil? sender|gauge|sensor? {_WIRE}",
        f"broken|open|break in|section the? {_WIRE}",
    ),
    "wire_on_wrong_sender": (
        f"{_WIRE} on|to|at the? wrong|other {_SENDER}|terminal|unit|one",
        f"{_WIRE} were|was|got|had|been|found? swapped|crossed|reversed|mixed|interchanged|transposed",
        f"{_WIRE} .. .. interchanged|transposed|swapped|crossed|mixed over|round|up?",
        f"wrong {_WIRE} on|connected",
        f"gauge|lamp|light|switch wire|lead|wires on|to|connected|plugged|went|into|going the? wrong|lamp|light|switch|other {_SENDER_OR_SWITCH}|terminal|switch|one",
        "wires|leads swapped|crossed|mixed|reversed|muddled up|round|over|at|on?",
    ),
    "sender_damaged": (
        f"{_SENDER}|sending unit|body|terminal|was|is|had|has? .. cracked|snapped|dented|smashed|broken",
        f"cracked|smashed|broken|snapped oil? pressure? {_SENDER}|sending",
        "terminal|spade .. broken|snapped|sheared =off",
    ),
    "tape_on_sender_thread": (
        f"ptfe|sealant|sealer|tape|thread-sealant tape? on|round|around|under the? {_SENDER}|thread|threads|sending",
        f"{_SENDER} .. wrapped|sealed|ptfe|tape",
    ),
    "ground_strap_bad": (
        "ground|earth|earthing|grounding strap|cable|wire|lead|connection|straps|is|was|point .. loose|corroded|missing|bad|poor|broken|dirty|off|rusty|disconnected",
        "bad|poor|missing|corroded|loose|broken|no engine? ground|earth|grounding|earthing strap|cable|lead|connection?",
        "ground|earth|earthing|engine-ground strap|cable|lead|wire .. .. =corroded|=broken|=loose|=missing|=rotted|=off",
        "engine|block|motor not|isnt|badly|poorly|never|no|@not =earthed|=grounded|=earth|=ground properly|well|strap?",
        "no|bad|poor|missing|broken|rusty|corroded|loose engine|block|chassis|body|battery? earth|ground|grounding|earthing strap|lead|cable|connection|wire?",
    ),
    "gauge_port_moved": (
        f"{_SENDER}|gauge|sending|it .. moved|relocated|remote-mounted|remotely|teed|tee'd|extended to|away|off|from|on|at|in|into|mounted? the? head|firewall|bulkhead|block|filter|line|hose",
        f"moved|relocated|remote the? {_SENDER}|gauge|sending",
        f"{_SENDER}|gauge|it is|was|now? taken|mounted|fitted|reading|read|sits at|in|on|off|from .. head|filter|cooler|firewall|remote",
        f"original {_SENDER} position|port|location",
        f"remote|extension|braided hose|line|mount .. {_SENDER}",
    ),
    "sender_not_for_gauge": (
        f"wrong|mismatched|incorrect {_SENDER}|sending for|range|fitted|unit|with|gauge",
        f"{_SENDER}|gauge @not match|matched|matching|compatible|suit",
        f"mismatch|mismatched .. {_SENDER}|gauge",
        f"{_SENDER} .. off|from|for something|another|a|different|other|wrong else|engine|gauge|range|car|ohm",
        f"{_SENDER} .. @range .. gauge .. @range",
        "gauge|sender @range psi|bar? .. in place of|instead|not|where|but",
        f"{_SENDER_OR_SWITCH} unit? @not|doesnt|dont|wrong match|matched|suit|for|compatible|go|range|ohms|ohm|resistance with|the|my|this|for? gauge|dash|instrument?",
        f"wrong|mismatched|incorrect oil? pressure? {_SENDER_OR_SWITCH} unit? for|fitted|range|resistance|to? the|my? gauge?",
        f"two|both|twin|dual gauges|stations on|off|from one|the|a|single same? {_SENDER_OR_SWITCH}",
        "sender|gauge .. 10-180|240-33|0-90|80psi|5|10 ohm|ohms|bar .. gauge|sender .. 10-180|240-33|0-90|5|10 ohm|ohms|bar",
        "on|by|for|of|to the? old scale",
        "sender|sensor|transmitter|sending-unit stamped|marked|labelled|is|for for? single|dual|twin|two|one station|stations",
        "sender|sensor|transmitter .. wrong|different|other range|ohms|curve|resistance|type|scale",
    ),
    "no_sender_fitted": (
        f"no {_SENDER} fitted|installed|at|in|there",
        f"{_SENDER} hole|port is|was|had|just? plugged|blanked|bunged",
        f"no|without a|any|an? oil? pressure? {_SENDER_OR_SWITCH} unit? fitted|installed|in",
        f"{_SENDER_OR_SWITCH} unit? was|is|has|been? never|not|removed|missing|left fitted|installed|there|in|out",
    ),
    "reseating_cured_it": (
        "reseated|refitted|reconnected|cleaned|unplugged|pulled|wiggled|remade|pushed the? connector|connection|connections|plug|spade|terminal|terminals|contacts|wire .. cured|fixed|works|working|fine|normal|right|sorted|ok|good|back|came",
        "=reseated|=remade the? plug|connector|connection|connections|terminal",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "sender_connector_loose": (
        f"connections|connection|connectors|connector|terminals|terminal|wiring {_CHECKED}? {_CHECKED}? {_SOUND}",
        f"sender|sensor|switch|electrical|wiring|gauge|pin plug {_CHECKED}? {_CHECKED}? {_SOUND}",
        "gauge connections checked",
        "cleaned|checked all? the? connections|connectors|terminals",
    ),
    "ground_strap_bad": (
        f"ground|grounds|earth|earths|earthing|grounding|strap and|straps|strap|all? {_CHECKED}? {_SOUND}",
        f"fuses and|& earths|grounds {_CHECKED}? {_SOUND}",
        f"ground|grounds|earth|earths|earthing|grounding at|on|to|from the? engine|block|battery|chassis|body|frame is|was|are|both|all? {_SOUND}",
        "checked|cleaned|tightened|remade|redone|did|refreshed all? the|my|every|both? engine|battery? ground|grounds|earth|earths|earthing|grounding straps|strap|points|connections|connection?",
    ),
    "wiggle_moves_needle": (
        "wiggled|wiggling|moving|moved|tugged .. wire|wires|wiring|plug|connector .. no|nothing|@not|made change|difference|happened|moved",
    ),
    "sender_wire_broken": (
        "wiring|wires|harness|loom|wire looks|look|looked|is|are|seems|seem|appears|checks|checked|all? all|out|to|be|perfectly|still? ok|fine|good|sound|intact|okay|undamaged|perfect",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "sender_not_for_gauge": (
        f"{_ANY_SENDER} + wrong_one|wrong_type|wrong_part|wrong_range|off_another|from_another|for_another|different_range|"
        "mismatched|mismatch|wrong_ohm|@not_match|not_the_right|for_a_different|wrong_resistance",
        f"{_ANY_SENDER} & its_for|for_a_fuel|for_fuel|for_air|for_a_turbo|for_a_single|dual_station|single_station",
        "sender|sensor|sending_unit + wrong|@not_match|@not_matched|@not_for|mismatched|different_range|other_range|=bar|80_psi|100_psi|incorrect + gauge|range|ohm|ohms|car|type|part_number|dash - wire",
        f"{SENDERS} & wrong_range|different_range|wrong_part_number|wrong_type|for_the_light|for_a_light|for_the_lamp|light_model|lamp_model|@not_match|mismatch|another_make|different_brand|wrong_ohms|@not_belong|@not_go_with|@not_suit|wrong_gauge|different_gauge|another_engine|meant_for|wrong_model|wrong_curve - right_one",
    ),
    "wire_on_wrong_sender": (
        f"{_ANY_WIRE} + water_temp|temp|temperature|wrong_sender|wrong_terminal|wrong_switch|other_sender|wrong_unit|fuel + on|to|onto - burnt|melted|fuse",
        "wire|lead|cable|connector|hooked|plugged|pluged & wrong|mixed_up|swapped|crossed|instead|onto_the & temp|temperature|water|coolant|idiot_light|lamp|warning_light & sender|sensor|unit|terminal|one|switch|thing|sending_unit - right|correct|no|@not|changed|new",
    ),
    "no_sender_fitted": (
        "only_a_plug|just_a_plug|just_got_a_plug|plugged|blanked_off|blanked|blanking_plug|bolt_screwed|empty_hole + sender|sensor|switch|sender_should|switch_should|switch_has|where_the_sender|sensor_should|tapping - wire|connector|unplugged|spark|drain|gallery|clogged|lead|loose|corroded|dirty|firm|clicks|cable|harness|terminal|off|pins|green|gauge|oil_in|light|with|tight|full|new|crank_sensor|plugs|lamp",
        "sender|sensor|switch|sending_unit|oil_sensor|oil_switch|transmitter & isnt_there|not_there|removed|missing|nowhere|pulled|gone|taken_out|absent|isn't_there|none_fitted|no_longer_there|not_fitted|left_out + plug|blanked|closing_screw|pipe_plug|bolt|at_all|tapping|hole|blank|port|empty|only|screw|stopper|bung|blanked_off - wire|gauge_reads|clogged|tested|new_sender|wire_off|replaced|refitted|lead|cable|no_difference|missing_wire|gauge_on|mechanical|oil_came|cranked|plug-in|battery",
        "no_oil_sender|no_oil_sensor|no_oil_switch|no_pressure_sender|no_pressure_switch|no_pressure_sensor|no_sending_unit|no_sender|without_a_sender|no_sensor + fitted|at_all|anywhere|port|hole|block|installed|engine - fault|wire|continuity|problem|difference|signal|voltage|from|leak|leaks",
        "no_sender|no_sensor|no_switch|no_sending + port|hole|fitted|in|there|block",
        "port|hole|tapping + blanked|plugged_off|bolt_in|bung + sender|switch|gauge|sending",
        "plug|blank|bung|bolt + where_the_sender|sender_should|where_a_sender|instead_of_the_sender - clogged|unplugged",
    ),
    "sender_leaks_oil": (
        f"oil + all_over|covering|in|inside + plug|connector|spade|terminal & {_ANY_SENDER} - hole|port|crank|screwed|no_oil|drain|sump|gallery|spark",
        f"{_ANY_SENDER} + oil + leak|leaking|weeping|seeping|dripping|through|out_of|from|inside|soaked|wet|pouring - out_and|hole|port|crank|cranked|screwed|no_oil",
        f"{SENDERS} + sweats|oozes|oozing|dribbles|dribbling|weeps|dripping|drips|seeps|sweating - no|not|@not|dry|tape",
    ),
    "wiggle_moves_needle": (
        f"wiggle|wiggled|wiggling|waggled|jiggled|tugged & {_ANY_WIRE}|{_ANY_PLUG} & did_it_again|it_did_it|does_it_again|happened_again|came_back_again|it_came_back|set_it_off|sets_it_off|it_does_it - not|@not|nothing|no",
        "push|press|fiddle|touch|move|moving|nudge|knock + plug|wire|connector|lead|terminal|spade & back_to_life|comes_back|works|goes_off|goes_out|jumps|flickers|moves|light|needle|gauge - pushed_out|drain|spark|no_effect|gallery|tapping|port|moved_the_gauge|moved_the_sender",
        "wiggle|wiggling|wriggle|waggle|jiggle|jiggling|touch|push|press|flex|twist + plug|wire|connector|lead|terminal|sender|switch|loom|harness & light|lamp|needle|gauge|reading|goes|goes_out|moves|jumps|flickers|reads|changes|off - pickup|tube|no_effect|nothing|no_difference|doesnt",
        f"shake|shook|grab|wiggle|jiggle|waggle|tug|flex|twist|bend|knock|tap|wriggle & harness|wire|wires|lead|cable|connector|plug|loom|terminal|{SENDERS} & jumps|leaps|dances|twitches|swings|alive|springs|kicks|blinks|flickers & {DIALS}|light|lamp - no|nothing|stayed|stays|steady|never|no_effect|valve|pump|@not",
    ),
    "sender_wire_off": (
        "wire|lead|cable|connector|plug|sender|sending_unit's|sensor|spade|terminal|push-on|switch_lead + dangling|unplugged|laying|come_away|hanging|isnt_plugged|isn't_plugged|adrift|fallen_off|disconnected|come_off|came_off|loose_end|off_the|swinging|hanging_down|come_adrift|not_connected|@not_connected|connected_to_nothing|pulled_off|dropped_off|not_plugged|popped_off|hanging_free|undone + sensor|sender|sending|switch|oil|block|wire|lead|unit|anything|unplugged|it|off|nothing - i_unplugged|when|with|spark|drain|stays|still|gallery|sump|i_pulled|i_disconnected|earthed|grounded|battery|magnetic|light_goes|lamp_goes|tried|oil_feed|pickup|coil|glow|filter|pump|relief|bearing|if|fuel|unplugged_the|and_the_light|light_went|firmly|tight|goes_out|cup|gallery_plug|to_check",
        "plug|wire|lead|terminal|connector|spade|cable + off|unplugged|hanging|disconnected|@not_connected|adrift|fallen|pulled|loose_end|dangling + switch|sender|gauge|sensor|unit|it|sending|transmitter|back_of_the - drain|unplugged_the|disconnected_the|pulled_the|spark|still|with_the|with_wire|light_went|lamp_went|goes_out|stays|tried|i_pulled|"
        "if_i|when_i|pulled_the|gallery|sump|and_the_light|touched|earthed|grounded|magnetic|oil_came|cranked|engine_off|key_off",
        "connector|plug|lead|wire|spade + @not_plugged|@not_plugged_in|unplugged|@not_connected|@not_pushed|off|hanging|dangling + in|sender|switch|sensor|properly|off|connected|there - dizzy|unplugged_the|disconnected_the|pulled_the|spark|drain|stays|still|with_the|i|pulled|took|coil|glow|light_on|light_off|wiggle",
    ),
    "sender_wire_broken": (
        "wire|lead|cable|sender_lead|switch_lead|loom|insulation|wire's|core + cut_in_two|cut_through|bare_copper|torn|chafed|open_circuit|chewed|melted|burnt|severed|rubbed|frayed|snapped|copper_is_seen|copper_showing|nibbled|gnawed|worn_through|broken|bared|stripped_bare|crushed|fretted|perished|rubbed_through|in_half|parted + switch|sender|sensor|sending|bracket|oil|manifold|copper|through|exhaust|unit|in_two|insulation|gauge|block - not|no|spark|plug_lead|battery|strap|earth|ground|capillary|gauge_line|whole|intact|bearing|shell|overlay|tube|ht|brake|throttle|starter|line",
        "wire|lead|insulation|cable|loom|strand|harness + eaten|chewed|gnawed|burnt|burned|melted|chafed|snapped|frayed|broken|rubbed|cut|severed + sender|sensor|switch|gauge|manifold|exhaust|oil|block|through|lead - plug_wire|spark|starter|battery|strap|earth|ground",
    ),
    "sender_connector_loose": (
        "clip|plug|connector|terminal|spade|contact|push-on|connection + @not_hold|doesnt_hold|falls_off|loose|dirty|furred|green|corroded|rust|crusty|wobbly|eaten|oxidised|bent|slack|slips_off|not_firm|poor|salt|manky & sensor|sender|switch|sending|sending_unit|oil - not_loose|spark|drain|battery|earth|gallery|magnetic|relief|clean|tight|sump|clips_tight|oil_filter|injector|coil|hose|filter|plugs|galley|gallery|weep|flywheel",
        "plug|connector|terminal|spade|pins|contact|plug's|connection|push-on|lucar|tab|blade|connector's + corroded|wobbly|crusty|green|rust|rusty|loose|not_firm|poor_contact|eaten|salt|furred|verdigris|oxidised|oxidized|dirty|bent_pins|full_of_dirt|slack|sloppy|rotten|manky|rotted|grotty|cruddy|flimsy|black|intermittent|rattly|pushed_back|white_powder|tarnished|falls_off|wiggles + sender|sensor|switch|sending|pins|contact|unit|oil - not_loose|no|bright|battery|gallery|spark|drain|filter|earth|strap|fuse|clean|tight|plugs|magnetic|sump|coil|relief|firm_and|bulb|cup|core|injector|distributor",
        "terminal|spade|connector|contacts|connection|pins + furred|furry|corroded|green|dirty|loose|crusty|rusty|bad|oxidised|oxidized|dodgy - battery|good|gallery|galley|earth|ground|spark|drain|filter|rusty_water|good",
        "green|corroded|corrosion|crusty|dirty|verdigris|furry|loose|oily|crud|rusty + plug|connector|terminal|terminals|contacts|pins|connection|spade + sender|sensor|switch|gauge|sending_unit - filter|oil_filter|drain|relief|earth|ground|battery|filler|sludge",
    ),
    "sender_damaged": (
        "crimp|terminal|tab|top|body|nose|plastic + came_apart|broke|snapped|cracked|split|broken|smashed|crushed + sender|sensor|switch|sending_unit - wire|gauge|lead|leak",
        "terminal|body|casing|top|tab|spade + broke|broken|snapped|cracked|smashed + sender|sensor|switch|sending_unit|off - wire_off|gauge|battery",
        f"{SENDERS} & snapped|cracked|dented|dimple|dent|whacked|smashed|bashed|crushed|sheared|squashed|mashed|stoved - wire|wires|no|not|@not|lead|pan|sump",
        f"{SENDERS} & terminal|stud|pin|blade|can|housing|tab|hex|spade|neck & broken|snapped|broke|bent|off|loose|split|cracked|wobbles - no|not|@not|pulled|took|wire|green",
    ),
    "ground_strap_bad": (
        "earth|ground|strap|earth_strap|ground_strap|ground_cable|earth_lead|braid + strand|thread|hanging|corroded|broken|missing|loose|rotten|rotted|bad|dodgy|off|poor|gone - wrench|filter|cleaned|fitted|added|new|fixed|leak|pump|good|belt|sump|ground_up|crank|journals|up",
        "strap|braid|ground_cable|ground_lead|earth_lead|earth_cable|negative_lead|woven_cable|flat_cable|bonding_strap|frame_ground|to-frame_ground|engine-to-frame|engine_ground|engine_earth|block_negative|negative_cable & engine|block|body|frame|chassis|battery|motor|bolts & rotted|rotten|rot|corroded|loose|missing|never_bolted|frayed|broken|hanging|left_off|crusty|eaten|snapped|green|gone|@not_connected - sender|no|filter|helm|panel|dash",
    ),
    "tape_on_sender_thread": (
        "ptfe|teflon|thread_tape|plumbers_tape|=tape|sealant|thread_sealant|sealer + sender|sensor|switch|sending_unit - strainer|seat|screen|sump|relief|pan|no|not",
        f"tape|ptfe|teflon|thread_paste|pipe_dope|dope|plumbing|plumbers|hemp|stretchy_stuff|thread_seal|sealant|sealer|loctite|goop & {SENDERS} & thread|threads|wrapped|put|used|screw|screwed|around|buried|floating|earth|ground|with - no|not_a|without|bare|dry|clean|port|hole",
    ),
    "gauge_port_moved": (
        "sender|gauge|switch|sensor|tapping|takeoff + moved|relocated|different|another|new + port|place|hole|location|spot|tapping - same|no|pump|starboard|stbd|engine|engines|swapped",
        "sender|sensor|gauge|gauge_feed|gauge_line + moved|went|tees|teed|relocated|shifted|resited + head|behind_the_filter|sandwich|plate|adapter|end_of_the_gallery|back_of_the_head|other_end|side_of_the_block - "
        "no|not|test|mechanical|put_back|wire|bearing|unscrewed|to_zero|to_nothing",
        "gauge|dial|sender|sensor|transducer|transmitter|take-off|takeoff|tapping & shifted|relocated|elsewhere|somewhere_else|not_the_stock|not_the_original|other_end_of|new_spot|different_spot|different_place|different_port|different_hole|another_port|another_hole|moved_to|not_where & port|hole|spot|place|gallery|tapping|housing|plate|plug|book|factory|stock|head|filter - wiggle|same|wire|needle|not_moved",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "wiggle_moves_needle": (
        "wiggle|wiggled|wiggling|waggled|jiggled|jiggling|moved_the|moving_the|tugged|tugging|flexed|shook & wire|wires|wiring|plug|connector|harness|loom|lead|leads|terminal & no_change|no_difference|no_effect|nothing|@not_change|@not_make|@not_affect|@not_move|no_reaction",
        f"shake|shook|wiggle|wiggled|jiggle|waggle|tug|tugged|pulled|moved|flexed|twisted & harness|wire|wires|lead|cable|connector|connection|plug|loom|{SENDERS} & stayed_put|stays_put|no_change|@not_change|nothing_happened|rock_steady|stayed_steady|stays_steady|never_moved|never_changed|no_difference|stayed_the_same|@not_flinch|@not_budge - off|unplugged|grounded|earthed",
    ),
    "no_sender_fitted": (
        "sender|sensor|switch|sending_unit + in_its_port|is_there|screwed_in|in_place|is_fitted|in_its_hole|fitted_in_the + port|block|there|hole|fitted|place|fine|in - not|no|never|isnt|missing|wire",
    ),
    "sender_wire_off": (
        "lead|wire|connector|plug|cable|spade|terminal + pushed_on|firmly|connected|on_tight|plugged_in|secure|attached|in_place|clicked|well_on|on_properly|home + switch|sender|sensor|sending_unit|oil|unit - not|loose|off|no|spark|drain|never|dirty|gauge",
    ),
    "sender_wire_broken": (
        "wire|lead|cable|loom|wiring + whole|intact|unbroken|no_breaks|no_chafing|undamaged|sound|not_chafed|perfect + length|end_to_end|sender|switch|sensor|throughout|gauge - but|not_intact|bare",
    ),
    "sender_connector_loose": (
        "plug|connector|terminal|spade|pins|contacts + bright|clean|tight|firm|clicks|snug|good|shiny|secure|sound + switch|sender|sensor|sending|pins|unit|oil - not|loose|corroded|green|but|dirty|drain|spark|no|gallery",
    ),
    "wire_on_wrong_sender": (
        "each|every|both & wire|wires|lead|leads|cable & own|right|correct|proper & sender|sensor|unit|terminal|senders - wrong|not|@not",
    ),
    "sender_damaged": (
        f"{SENDERS} & not_a_mark|@not_a_mark|no_cracks|undamaged|no_damage|looks_whole|no_dents|unmarked|not_cracked|not_dented|unbroken - wire|pan",
    ),
    "sender_leaks_oil": (
        f"{SENDERS} & bone_dry|dry_all_round|perfectly_dry|no_weep|@not_weeping|no_oil_in_the_plug|plug_is_dry|connector_is_dry - cranked|starter|crank|out",
    ),
    "tape_on_sender_thread": (
        f"no_tape|without_tape|no_sealer|no_sealant|bare_thread|bare_threads|screwed_in_dry|bare_metal|no_goop & {SENDERS} - not|hole",
    ),
    "gauge_port_moved": (
        "gauge|dial|sender|sensor & very_hole|same_hole|same_port|makers_port|original_hole|original_port|factory_port|stock_port|stock_location|proper_port|correct_port|correct_hole|where_the_book|where_the_manual|port_the_book|port_the_manual|hole_the_workshop - not|second|both|two|another|than|elsewhere|else|different",
    ),
    "sender_not_for_gauge": (
        f"{SENDERS} & gauge|dial|clock & made_for_each|matched_pair|belong_together|same_maker|go_together|matching_pair|same_range|right_one_for - not|@not|wrong",
    ),
}
