"""Words for what gauge, needle and panel do, in themselves or beside each other."""

from __future__ import annotations

from knowledge.lexicon.words.names import CAPILLARY

_GAUGE = "gauge|gage|guage|needle|pointer"
_LAMP = "light|lamp|buzzer|alarm|warning"
_TAP = (
    "tap|tapped|tapping|taps|thump|thumped|thumping|hit|bang|banged|flick|flicked|knock|slap|whack"
)
_MOVES = "frees|freed|unsticks|moves|moved|jumps|jumped|jump|works|worked|comes|came|goes|reads|changes|changed|flickers|springs|swings|drops|move|returns|dies|back"
_SENDER_OR_SWITCH = "sender|sensor|switch|sending-unit|sending"
_GAUGE_OR_PANEL = "gauge|needle|dash|panel"
_P = "pressure|gauge|needle|psi|reading|it"
_GETS = "reads|shows|goes|went|hits|hit|reached|reaches|reading|showing|read|showed"
_BULB = "light|lamp|bulb|warning"
_KEY_OFF = "key|ignition|ign|switch is|was|has? been? turned|switched? =off|out|removed"
_ANY_GAUGE = "gauge|gage|guage|needle|pointer|dial|clock"
_ANY_LAMP = "light|lamp|bulb|buzzer|alarm|warning"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "tap_frees_needle": (
        f"{_GAUGE} .. {_MOVES} .. {_TAP} =it|=the =it|=gauge|=glass|=dash|=panel|=needle|=dashboard|=instrument|=face|=binnacle",
        f"{_GAUGE} .. {_MOVES} .. {_TAP} it|the? =with|=by|=on",
        f"{_TAP} the? {_GAUGE}|dash|glass|panel|dashboard|instrument .. {_MOVES}",
        f"{_TAP} it|with .. finger|and {_GAUGE}|needle|it {_MOVES}",
        f"{_TAP} .. finger .. {_GAUGE}? {_MOVES}|needle",
        "tap|tapping|tapped|hit|hitting|flick|flicking|bang|banging|thump|thumping|knock|knocking|rap on|the|it|my|at? the? gauge|dash|glass|dial|panel|instrument .. moves|move|jumps|jump|frees|comes|changes|rises|drops|works|up|wakes|goes",
        "needle|gauge .. moves|jumps|frees|changes|rises|wakes|works|comes .. tap|tapped|flick|thump|bang|hit|knock|rap",
    ),
    "lamp_dead_with_key_on": (
        f"{_LAMP}|bulb @not|never come|light|work|works|comes|lights|lit|glow on|with|when|up|at? .. key|ignition",
        "bulb|lamp|light is|was|has? blown|dead|=burnt|=burned out?",
        f"{_LAMP} @not|never|fails|failed|doesnt|dont|wont to? come|light|comes|lights on? at|when|with|even|before? all|key|ignition|starting",
        f"{_LAMP} silent|dark|dead and dark|silent|dead",
        f"{_LAMP} never|@not worked|working|works",
        f"no oil? pressure? {_LAMP} with|when|at|on the? key|ignition on?",
        f"{_LAMP} is|stays|stayed|remains|was dark|dead|unlit|off with|when|on|at|even the? key|ignition on?",
        f"key|ignition =on .. {_LAMP} @not come|light|work|works|comes|lights|lit",
        f"{_LAMP} should|ought|supposed to? come|light|glow|sound|work on|up? .. but|and|now|, .. doesnt|didnt|isnt|wont|neither|@not do|does|work|light|come?",
        f"neither {_LAMP} nor the? {_LAMP} works|work|comes|come|lights|sounds .. key|ignition|switch|turn",
        "bulb is|was|has? gone|failed|u/s|duff|dud",
    ),
    "needle_stuck_at_one_value": (
        f"{_GAUGE}|pressure stays|sits|reads|shows|stuck at|on .. no|whatever|regardless|irrespective matter|revs|rpm|of|the|what",
        f"{_GAUGE} never|@not moves|move|changes|change|varies|vary .. whatever|matter|regardless|revs|rpm|hot",
        f"{_GAUGE} never|doesnt|dont|does|wont not? moves|move|changes|budges|budge",
        f"{_GAUGE} is|was|seems|appears|sits? stuck|frozen|jammed at|in|on",
        f"{_GAUGE} is|was? =stuck|=frozen|=jammed",
        f"=stuck|=frozen|=jammed {_GAUGE}",
        "always reads|shows|stays|sits the? same|@pressure",
        "stays|stuck|sits at|on the? same|@pressure|mid|middle .. whatever|matter|regardless|hot|revs",
        "pegged at|on zero|max|full|@pressure|@number",
        "stays|sits|stuck|stayed|glued|sticks|sat|fixed|frozen|jammed|reads|reading dead|just|at|on|to? at|on|to|around|right? @pressure|@number|@range no|whatever|regardless|hot|irrespective|however|all the? matter|i|of|or|time|revs|while|day",
        "glued|stuck|frozen|fixed|jammed|welded at|on|to @pressure|@number|@range",
        "pulled|took|unplugged|disconnected|with the? wire|lead|plug|connector off? the|from|off? sender|switch|sensor|unit? and|, ,? its|it|is|the|still|"
        "gauge|needle|stays? still|stays|remains|is|just? pegged|the-same|there|stuck|at|pinned|maxed|full|unchanged",
        f"{_GAUGE_OR_PANEL} .. always|just|constantly|permanently reads|shows|says|sits|stays|stuck|on|at|same .. same|@pressure|@number .. whatever|regardless|matter|no|always|hot|cold|idle",
        f"{_GAUGE_OR_PANEL}|it reads|shows|says|stays|is|sits|always|never the? same hot|at|all|whatever|no|always|regardless|everywhere",
        f"{_GAUGE_OR_PANEL}|it always reads|shows|says the? same",
    ),
    "needle_off_zero_at_rest": (
        "pegged|reads|shows|sits|at|reading .. with|when the? key|ignition on|off .. engine|motor? off|stopped|running?",
        "pegged|reads|shows|sits|at|stays .. with|when|after the? engine|motor|ignition is|was|has? =off|=stopped",
        f"{_GAUGE}|reads|shows|sits|reading .. engine|key|ignition|motor|its off|stopped",
        f"{_GAUGE} @not|never return|drop|go|back|goes|returns|rest|rests back|on|to? to? zero",
        f"{_GAUGE} .. below zero|the peg",
        f"{_GAUGE} .. maximum|full|max|right|over|pegged .. whenever|when|once|with|as|soon .. ignition|key",
        "stays up? after .. engine .. stopped|off",
        "pegged|pegs|pinned|pins|over|full|max|maximum|up|hard .. before .. start|started|starts|crank|cranked|cranking|fire|fired|turning",
        "before|without starting|cranking|it|the|i|engine|motor|even|is|even? start|started|starting|starts|crank|cranked|its|it|it's|reads|shows|sits .. @pressure|@number|pegged|full|max",
        "=after|=when|=once|=with i|we|you|it|the|a|is|engine|motor|it|has|have? it|the|engine|motor? shutdown|shut-down|stop|stopped|stopping|off|shut|switch|switched|turn|turned off|down|it|her|engine|the|of? off|down|engine|it|the? .. still|stays|stayed|remains|sits .. @pressure|@number|pegged|up|high|reading|reads",
        "key|ignition on|off|out .. hard|pegged|pins|full|maximum|max|over|pinned .. whether|engine|running|not|before|without",
        "pegged|full|hard over|pins|pinned|max|maximum scale|over|on|with|as|when|soon|the|right? .. key|ignition .. whether|before|not|without|off|stopped|turned|on",
        "pins|pegs|pegged|pinned|jumps|goes|shoots|swings right|straight|hard|over|up|to|all|the|way|full|max|as|full? .. soon|when|moment|once .. ignition|key",
        "stays|stuck|still|remains|sits|reads at|on|reading? @pressure|@number even|when|after|with|once|and i|it|the|engine|key? switch|switched|key|engine|off|shut|turn|turned|take",
        "needle|gauge|pegged|stop|max|full .. before .. touch|touched|hit|turned|pressed|crank|cranked|go|went .. starter|over|it|engine",
        "as soon as|when|whenever|once|the-moment i|you|we? turn|switch|put the? key|ignition on? ,? engine|motor? running|on|going or|and not|off|stopped",
        "pegs|pegged|pinned|full|max|scale|high|stuck|@pressure|@number ,? ,? whether|with|if|even? the? engine|motor is? running|on|going|runs or not|off|stopped",
        "pegs|pegged|pinned|full|max|scale|high|stuck|@pressure|@number with|whether? the? key|ignition is? on|off or|and|/ on|off",
        "needle|gauge|it sits|rests|stays|reads|shows|is|hangs|stuck|stops|never below|above|off|at|@pressure|@number|returns|goes|on|psi .. zero|stop|peg|off|engine =off|=stopped|=when|=with|=key|=engine|=ignition|=parked|=standing|=turned",
        "=below =zero =when|=with|=engine|=at|=off",
        "needle|gauge @not return|returns|go|goes|come|comes|drop back|down|to|right zero|rest|stop|off|to",
        "pegs|pegged|pins|swings|jumps|goes|shoots .. @pressure|@number|full|max|top|right .. second|moment|instant|minute|soon|when|with i|you|as|the? i|you|key? turn|switch|turned|on? the? key|ignition? on? ,? before it|the? even|engine? cranks|cranked|starts|started|starter|fires",
        "reads|read|shows|sits|stays|stuck|pegged|pegs|same|at|on|is .. stopped|off or|and running|on",
        "needle|gauge|it reads|same|stays|is|stuck running|on or|and stopped|off|not",
        "engine|motor on or off",
        "key|ignition on even? before|without i|it|starting|cranking|the-engine|running?",
    ),
    "ran_long_without_distress": (
        "ran|run|runs|running|driven|drove|done|did|been|went|ridden|has .. @distance|@hours|hour|miles|years|months|week .. like that|this|it|so|light|no|without|zero|alarm|warning|harm|problem|damage|distress",
        "ran|run|runs|running|drove|driven|been|going|used it? all|the|a whole? season|summer|year|day|winter|week|trip|way|rally .. light|lamp|no|without|zero|alarm|harm",
        "@hours|@distance|hour run|running|driving|on? with|like|of the? alarm|light|lamp|zero|that|this|no",
        "no|without|any|suffered sign|signs|ill|damage|harm|distress|effects of? distress|damage|effects|wear|trouble|after",
        "drove|driven|ridden|ran home|back|miles .. no|without problem|change|noise|harm|damage|distress",
        "drives|runs|ran|been fine with|like that|the for|light|gauge|zero|@distance|@years|years",
        "ran|run|drove|driven|running|been|going for? an|about|over|@distance|@hours|@minutes|hour|hours|miles|weeks|months|years|ages .. light|lamp|warning|like|zero .. no|without|never|fine|happily|harm|damage|noise|problem|trouble|distress|knock",
        "drove|ran|driven|rode home|back|on|it .. fine|happily|sweetly|no|without|quietly|perfectly .. no|damage|harm|noise|pressure|zero|light|knock|trouble",
    ),
    "lamp_slow_to_go_out": (
        "light|lamp .. stays|stayed|takes|took .. used-to|instant|instantly|immediately|straight|before|never|normally",
        "light|lamp|it stays|stayed|is|remains on|lit for? about|around|like|a|good|nearly|maybe|some? @seconds|few-seconds|couple-of-seconds|seconds on|at|"
        "when|after|every|each|from|before start|starting|startup|cold|first|morning|time",
        "used-to|always|normally go|went|goes|be|was|out|off straight|instantly|instant|immediately|right|before",
        f"{_LAMP} .. slow|slower|longer|long to|than|before go|goes|going|out|it",
        f"{_LAMP} takes|took|taking longer|ages|long|@seconds|while to|before",
        "lamp|light =takes|=took|=taking|=stays|=stayed =longer|=slower to|on|each|every|than? go|out|off|every|start|than|before|used",
        "lamp|light slow|slower|late|later|lazy to|going|in|at|going? go|out|off|going|extinguish",
        "slow oil? lamp|light",
    ),
    "unsteadier_with_revs": (
        "worse|wilder|jumps as|with|when the? throttle|revs|rpm is|are|go|rise|rises|raised|up|increases",
        "worse|wilder with|as|the? more? throttle|revs|rpm",
        "worse|wilder|more|faster the|at|with|as higher|more|revs|speed .. revs|rev|rpm|flicker|bounce",
        "flicker|bounce|wavering|swinging|jumping gets|is|becomes|got worse|wilder with|as|at|when the? revs|rpm|speed|higher",
    ),
    "gauge_line_leaking": (
        f"{_GAUGE}|capillary|pressure line|pipe|tube|capillary|hose|union|fitting .. leaking|leaks|leak|burst|cracked|broke|split|weeping|blew",
        f"leaking|leak|burst|cracked|split at|in|from|of .. {_GAUGE}|capillary line|pipe|tube|hose|union",
        f"pipe|line|tube up|leading|going? to|for the|my? oil? pressure? {_GAUGE} .. leaking|leaks|burst|cracked|split|broke|leak|dripping|drips|drip|weeps",
        f"leaking|leak|leaks|oil|drip|drips|dripping|weep|weeps at|from|on .. pipe|line|tube up|leading|going? to|for the|my? oil? pressure? {_GAUGE}",
        "leaks|leaking|weeps|drips where the? =pipe|=line|=tube|=capillary joins|meets|goes|enters|screws",
    ),
    "gauge_line_kinked": (
        f"{_GAUGE} line|pipe|tube|hose .. kinked|pinched|flattened|crushed|trapped",
        f"kinked|pinched|flattened|crushed .. {_GAUGE}|capillary line|pipe|tube",
        "gauge|capillary|copper line|pipe|tube .. pinched|kinked|crushed|squashed|trapped|flattened|bent",
        "pinched|kinked|crushed|squashed|trapped|flattened gauge|capillary|copper line|pipe|tube",
    ),
    "oil_behind_panel": (
        "oil .. behind|under|inside the? dash|panel|dashboard|instrument",
        "oil on|over|all my|the feet|foot|carpet|shoes|boots|footwell",
        "oil in|into the? footwell|cabin|cockpit",
        "oil on|all-over|over|onto|in|into|soaked|down the|my|all? carpet|carpets|footwell|feet|foot|shoe|shoes|trousers|trouser-leg|jeans|leg|dash|dashboard|"
        "floor-mat|kick-panel|passenger|interior|seat",
        "oil dripping|drips|leaking|running|coming|dripped|drip|on on|from|out|behind|under|down|onto the? my|dash|panel|gauge|instrument|feet|foot|carpet|footwell|legs|knees|trousers|shoes",
        "oil behind|under|inside the? gauge|dash|panel|instruments",
    ),
    "gauge_damaged": (
        "gauge|glass is|was|has|face|glass|lens? fogged|cracked|smashed|misted up?",
        "fogged|misted|smashed oil? gauge|glass",
        "cracked|broken gauge glass|face|lens",
        "needle is|was|had|has =bent|=loose|=broken|=off",
        "needle had|has =come|=fallen off",
    ),
    "tachometer_wrong": (
        "tach|tacho|tachometer|rev-counter|counter .. off|wrong|inaccurate|out|reads high|reads",
        "on|by|per|says|reads|shows the? tach|tacho|tachometer|rev-counter but|though|and .. optical|photo|laser|strobe|handheld|hand-held",
        "optical|photo|laser|strobe|handheld|hand-held|another|borrowed one|tach|tacho|counter .. says|reads|shows|showed|read|got|its|it's|on .. @rpm|@number",
    ),
    "instrument_just_changed": (
        "since|after|when|just|newly|freshly i|the|a|we|fitting|installing|it? .. new|replaced|aftermarket|changed|moved|fitted|installed|swapped|different .. gauge|sender|cluster|sensor|dash|gauges",
        "wrong since .. gauge|sender .. replaced|changed|fitted",
        "gauge|sender|sensor|cluster just|recently|newly been? replaced|moved|fitted|renewed|installed|changed",
        "moved|relocated|replaced|fitted the? sender|gauge|sensor .. days|day|week|yesterday",
        "since it was replaced|moved|fitted",
        "since|after|when|from i|we|he|they|putting|fitting|installing|adding|changing|swapping|new|fitted|added|put|changed|an|a aftermarket|new|a|the|different|second|mechanical|electric gauge|sender|cluster|sensor",
    ),
    "new_sender_made_it_worse": (
        f"new {_SENDER_OR_SWITCH} unit? .. worse|nothing|dead|zero|wilder|now|even|wrong =worse|=nothing|=dead|=zero|=even|=low|=lower|=at|=all",
        f"worse|nothing|dead|zero since|with|after|on i|the|fitting|a|my|putting? new {_SENDER_OR_SWITCH}",
    ),
    "right_idle_cured_it": (
        "turned|raised|set|put|brought|upped|increased|adjusted the|up|it|idle|speed|tickover? idle|tickover|up .. light|lamp|fine|out|cured|fixed|stays|gone|good|off",
        "higher|faster idle|tickover .. light|lamp|pressure|fine|cured|fixed|gone|good|off|stays",
        "light|lamp flickers|flickering|on|comes|flashes on? , set|raised|turned|wound it|idle? up? to|at @number|@rpm and|, its|it|lamp|light is|goes|went? out|off|gone|fine",
    ),
    "more_than_it_can_make": (
        f"{_GETS} over|above|past|more 100|110|120|130|140|150|160",
        "impossible|ridiculous|silly|crazy|unbelievable|impossibly|ridiculously high? reading|pressure|readings",
        "needle|gauge|it =hard over|against|round",
        "=pegged =out|=full|=high|=solid|=hard|=to|=at|=past|=off",
        f"{_P} =swung|=swings|=shot|=shoots|=went|=goes|=flew right|straight|way|clean? past|beyond|off the? end|top|edge of? the? scale|dial|gauge",
        "=full =scale deflection?",
    ),
    "lamp_lit_with_key_off": (
        f"{_BULB} is|was|stays|stayed|still|glows|burns|remains|remained on|lit|glowing with|when|even|after|though the? {_KEY_OFF}",
        f"{_KEY_OFF} and|but the? oil? {_BULB} is|was|stays|stayed|still|glows|remains on|lit|glowing",
        f"{_BULB} glows|burns|lit|on with|when|even|after|though the? {_KEY_OFF}",
        f"{_BULB} glows|glowing|lit|on dim|dimly|faintly? all|always? the? time? even? =switched|=ignition off",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "lamp_dead_with_key_on": (
        "lamp|light|alarm|bulb|buzzer works|comes|lights|working|sounds|work|come fully|fine|on|ok|properly|normally? with|at|when .. key|ignition",
        "lamp|light|alarm|bulb .. works|comes|lights .. key|ignition",
        "lamp|light|alarm|bulb is|was? =lit|on|glows with|at|when|before .. key|ignition|starting",
    ),
    "needle_off_zero_at_rest": (
        "needle|gauge|pointer|it returns|return|drops|falls|goes|went|sits|rests|back|reads|read|is|settles back|on|at|to|straight|right|down? to|on|at|back? zero|0|nothing|stop|peg .. stopped|stop|key|ignition",
        "needle|gauge|pointer|it returns|return|drops|falls|goes|went|sits|rests|back|reads|read|is|settles back|on|at|to|straight|right|down? to|on|at|back? zero|0|nothing|stop|peg .. switch|switched|shut|turn|turned it|her|the|everything? engine|motor|key|ignition? off|down|out",
        "needle|gauge|pointer .. zero|0 with|when the? engine|key|motor|ignition is? =off|=stopped",
        "key|ignition on|off .. engine|motor off|stopped|running .. reads|shows|sits|at|on|is|rests at|on|is? zero|0|nothing",
        "switch|switched|turn|turned|shut|stop|stopped .. off|down|it|engine .. needle|gauge|pointer|it drops|returns|falls|goes|went|dropped|fell|sinks|back straight|back|right|down? to|on zero|0|nothing|stop|peg",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "gauge_damaged": (
        "gauge|dial|glass|needle|pointer|instrument|lens|bezel|clock|oil_dial|gauge_face|face_of_the_gauge|hand + fogged|misted|steamed|steamed_up|water_drops|condensation|wet_inside|cracked|bent|tweaked|smashed|broken_glass|water_inside|dented|moisture|rusty_inside|needle_fell_off|needle_has_come_off|droplets|water_behind|drops_behind|cloudy|full_of_water|salt_water|rust_inside|chipped|crushed|broken|cracked_glass - line|pipe|sump|valve|pump|sight|bearing|float|tube|sender|not|no|dry_inside|wire|capillary|hose|sight_glass|fuel|hole|clutch|hourglass|port|switch|connector|line_cracked",
        "behind_the_glass|inside_the_gauge|inside_the_dial|inside_the_glass|within_the_gauge|in_the_gauge + water|drops|moisture|condensation|mist|fog|rust|droplets|damp|steam|wet - sight|no|not|oil_in",
        "gauge|glass|dial|pointer|needle|instrument + misted|fogged|steamed|condensation|cracked_glass|bent|smashed|"
        "full_of_water|dented - sump|pan|valve|line|pipe|float|oil",
        "gauge + =knackered|is_shot|=buggered|=broken|=smashed|toast|kaput - line|pipe|pump|bearing|sender|tube",
        "gauge|needle|glass|bezel + =broken|smashed|bent|fogged|misted|cracked|steamed|full_of_water + gauge|needle|glass|is|all|up|was|been|got - wire|line|sender|pipe|pressure|tube|engine",
    ),
    "tachometer_wrong": (
        "tach|tacho|tachometer|rev_counter|rev-counter + wrong|high|more|fast|inaccurate|optimistic|out|over - ticks_over|ticking_over|ticked_over|according",
        "tach|tacho|tachometer|rev_counter + reads|out|wrong|optimistic|inaccurate|lies|reads_high + revs|rpm|high|fast|too|out|wrong|than|by|optimistic - zero|stopped|died|same_time|quit|no|not",
        "tach|tacho|tachometer|rev_counter|rev-counter|rpm_dial|rpm_gauge|rev_clock|photo_tach & strobe|phototach|photo_tach|only|really|realy|actually|fewer|handheld|counter|timing_light|true & says|reads|shows|dash_says|optimistic|reading|high|over - agrees|agree|right|correct|matches|pressure|same|spot_on|low|psi|drive",
    ),
    "needle_off_zero_at_rest": (
        "needle|gauge|pointer|dial|hand|indication|reading|boat's_dial & engine_dead|shut_off|turn_it_off|engine_off|engine_stopped|stopped|motor_shut|switched_off|at_rest|engine_is_off|motor_off|shut_down & wont_drop|won't_drop|doesnt_go_back|doesn't_go_back|fifteen|ten|@not_return|@not_go_to|@not_drop|still|static|@not_fall|shows_@number|@pressure|@number|stays_up - light|lamp|idle|hot|drops_right|to_zero_at_once|minutes|slow|slowly|hours|cold|flicker|back_to_nought",
        "needle|gauge|hand|pointer|dial|indication|reading|static|it & stands_at|still_says|still_shows|still_reads|@not_go_to_zero|@not_return|static_indication|sits_at|stays_at|rests_at|not_go_to|hangs_at|@not_fall_to|off_zero|above_zero|still_at|stuck_up|points_at|shows & @number|@pressure|zero|pounds|ten|twenty|bar|psi|peg|mark & engine_off|engine_stopped|motor_is_off|everything_silent|stopped|switched_off|shut_down|not_running|at_rest|standing_still|ignition_off|key_off|dead_engine|motor_off|silent|parked|engine_is_off - right_back|back_to|drops_to|light|lamp|idle|hot|cold|minutes|on_zero|at_zero|to_zero_as|before|warm|running_hot|stuck_at_one|normal",
        f"{_ANY_GAUGE} & pegged|maxed|full_scale|off_the_scale|off_scale|hard_over|full & even + ignition_off|key_off|engine_off|ignition_is_off|key_is_off|engine_is_off|engine_stopped - fuel|temp|temperature|tank",
        f"{_ANY_GAUGE} & key_out|key_off|ignition_off|engine_off|engine_stopped|switched_off|not_running|motor_off|shut_off & "
        "still_shows|still_reads|shows_@number|reads_@number|shows_@pressure|reads_@pressure|sits_at|never_drops|stays_at|off_the_stop - sender_out|at_zero|on_zero|to_zero",
        "ignition_off|key_off|engine_off|turn_it_off|turned_off|switch_off|shut_it_off|switched_off|engine_stopped & needle|gauge|points|says|reads|shows|drop|still|it & @number|@pressure|@not_drop|@not_go|@not_return|above|off_zero - at_zero|on_zero|to_zero|light|lamp|flicker|idle|hot|cold|minutes|before|filter",
        "key_off|engine_off|ignition_off|engine_stopped|engine_turned_off|ignition_switched_off + gauge|needle|reads|shows|says|sits|sit|still|even|rests + @pressure|@number|above|off_the_peg|off_zero|halfway|half_way|mid - at_zero|=zero|nothing|light|lamp|minutes|later|suddenly|cold|down|hours|rpm|restart|oil_level|dipstick|before|at_least",
        "needle|gauge & @not_zero|@not_return|@not_go_back|@not_come_back|@not_drop_to_zero|@not_go_to_zero|above_zero|off_the_pin|@not_rest & stopped|off|parked|switched_off|at_rest - idle|hot|speed|running|off_zero|moved_off|move_off|came_off|come_off|left|leave|leaves",
    ),
    "ran_long_without_distress": (
        "months|weeks|season|month|hours|40_h|miles|years|@hours|@months|@weeks|@distance|trip|week & light_on|lamp_on|warning_on|red_light_on|alarm_on|idiot_light|needle_dead|at_nought|at_zero|no_reading|light_lit & no_damage|motor_is_good|happy|unharmed|no_harm|fine|none_the_worse|nothing_happened|no_knock|still_good|runs_fine|no_distress|sweet|no_trouble|no_noise|ok - until|then|seized|park|idle|flickers|before|stopped|ago",
        "month|months|season|weeks|year|years|miles|@distance|@hours|hours|summer|week|winter|@months|@weeks|@years|trip|harvest & light_on|lamp_on|needle_dead|gauge_at_nought|gauge_at_zero|gauge_dead|at_nought|no_pressure|like_that|on_zero|with_the_light|with_the_lamp|showing_nothing|idiot_light_on|reading_zero|at_zero|zero|needle_on_the_peg|with_no_reading|light_lit|lamp_lit & none_the_worse|nothing_happened|no_knock|no_harm|not_hurt|come_to_no_harm|no_damage|no_ill|fine|happy|sweet|perfectly|without_harm|no_noise|nothing_broke|no_worse|no_trouble|still_runs|never_hurt|runs_sweet|no_problem|unharmed - at_idle|in_park|flicker|flickers|cured|seized|until_it|then_it|knocking_started|stood|sat|storage|ago|before|failed|stopped|ruined",
        "ran|run|running|driven|drove|used & month|months|season|weeks|year|years|@distance|@hours & light_on|lamp_on|alarm_on|"
        "like_that|like_this|buzzer_on & no_damage|no_harm|no_problem|no_ill|fine|happy|happily|without - before|until",
        "months|years|thousands|miles|hours|weeks + light|lamp|low|zero + no_noise|no_knock|no_damage|no_harm|without_trouble|without_a_problem|no_ill|fine - since",
    ),
    "tap_frees_needle": (
        "smack|slap|thump|tap|rap|whack|flick|bash|knock|hit & dash|gauge|glass|dial|instrument|panel|clock|binnacle & needle|pointer|hand|reading|it & jumps|moves|shifts|springs|goes|works|frees|wakes|drops|alive - no|not|nothing|sump|engine|bump|road|pothole|clutch|sender|noise|rev|heavy|loud|knocks|load|lights",
        "tap|taps|tapped|tapping|rap|rapped|thump|thumped|flick|flicked|hit|hit_little|knuckle|whack|bang|knock|rapping|slap|bash|drum|poke & glass|dial|gauge|dash|dashboard|instrument|panel|clock|fascia|binnacle|bezel|meter & shifts|shift|moves|move|unstuck|jumps|jump|needle_go|needle_goes|came_unstuck|frees|freed|wakes|springs|drops|comes_up|swings|goes_up|comes_alive|twitches|came_alive - no|not|nothing|never|sump|bump|engine|noise|sender|knocks|rod|big_end|bearing|bottom|filter|stick|over_the_end|past",
        f"{_ANY_GAUGE}|glass|it + tap|tapped|tapping|=flick|flicked|flicking|thump|knock|rap + jump|jumps|moves|springs|comes|comes_up|wakes|drops|frees|works - bottom_end|end_knock|knock_came|knock_comes|came_on|comes_on|bearing|engine",
        "tap|tapped|tapping|=flick|flicked|flicking|thump|thumped|knock|rap|bang + glass|gauge|dash|panel|dashboard|instrument & sprang|springs|jumped|jumps|dropped|drops|came_up|comes_up|came_back|comes_back|wakes|woke|to_life|moves|moved|fell|falls|frees - no|not|nothing|brake|bump|clutch|sender",
        "tap|tapping|thump|bang|hit|flick|whack|knock + dash|gauge|glass|panel + needle|gauge|reading|going|up|jumps|moves|works|free - no_difference|nothing|sump|noise|sender|engine|bottom|end|rod|knocks|knocking|deep|heavy|loud",
    ),
    "gauge_line_leaking": (
        "drip|drips|dripping|leak|leaks|leaking|weeping|weeps & oil_pipe|copper_pipe|pipe|capillary|oil_line & to_the_gauge|to_the_oil_gauge|to_the_oil_pressure_gauge|to_the_pressure_gauge|to_the_dash_gauge - no|not|fuel|water|dry|coolant|sender|turbo",
        "gauge_line|gauge_pipe|gauge_tube|capillary|gauge_hose|gauge_union + leak|leaking|dripping|weeping|split|burst|chafed|cracked|wet|let_go",
        "gauge_line|gauge_pipe|gauge_tube|nylon_gauge_line|capillary|plastic_gauge_tube|gauge_hose + melted|split|fractured|burst|leaking|sprayed|spraying|cracked|leaks|chafed|broke|let_go|popped|blew - kink|blocked|clogged|no_oil",
        f"{CAPILLARY} & rubbed|chafed|burst|split|leaking|weeping|cracked|dripping|spraying|fretted|holed|pinhole|worn_through|spitting|snapped|broke - no|not|@not|kinked|cooler|fuel|turbo|pickup",
        "capillary|copper_tube & oil_clock|oil_gauge|gauge|dial & rubbed_through|through|split|holed|wet - no|not",
    ),
    "oil_behind_panel": (
        "oil|oily + carpet|footwell|trousers|trouser_leg|jeans|my_feet|under_the_dash|behind_the_dash|kick_panel|floor_mat|my_shoe|my_shoes - no|not|smoke|fuel",
        "oil & behind|under|carpet|footwell|inside|feet|cabin|cockpit & dash|panel|dashboard|carpet|footwell|feet|instrument - line_to",
        "dash|dashboard|panel|instrument_board|dials|gauges|wheelhouse|console|binnacle|instrument_panel & oil|oily|greasy|black_wet|wet_stuff|slimy|wet & back_of|behind|back_side|below_the_dials|floor|knees|carpet|boots|footwell|running_down - no|not|dry|clean|@not|compartment|engine_bay|wiring|volts|nine",
    ),
    "lamp_dead_with_key_on": (
        "lamp|light|symbol|bulb|telltale|w/l|warning & key_on|ignition_on|with_key|turn_the_key|before_you_pressed|before_starting|key_one|before_cranking & not_burn|dead|@not_come|@not_light|@not_burn|now_it|doesnt|never|dark|no_glow|nothing|@not_show - still|as_it_should|running|goes_out|gauge|needle|then|stays_on|off",
        "light|lamp|symbol|idiot_light|telltale|picture|bulb|glow|warning_light|red_light & @not_show|no_glow|no_idiot|no_light|no_lamp|doesnt_light|@not_light|now_it_doesn't|now_it_doesnt|dead|dark|nothing|@not_come|never_lights|stays_off|doesnt_come|no_oil_light|stays_dark|unlit|no_red|no_warning_light|blank|out & key_on|ignition_on|turn_the_key|before_starting|before_you_pressed|engine_at_rest|engine_off|key_one_step|before_i_start|before_start|before_cranking|switch_on|first_position|second_click|key_turned|with_the_ignition|engine_stopped|engine_not_running - as_it_should|still|gauge|goes_out_when|running|key_off|needle|ignition_off|wont_go_out|then_goes|shows_as|goes_off",
        f"{_ANY_LAMP} & key|ignition & @not_light|@not_come_on|@not_lit|@not_glow|@not_work|never_lights|never_comes|no_longer_lights|stays_dark|fails_to - still|go_out",
        "oil_light|oil_lamp|warning_light|pressure_light|lamp|light|bulb|telltale & no|@not|never|dead|fails|dark & switch_on|key_on|turn_the_key|ignition_on|key_turned|bulb_check|self_test|its_test|first_turn_the|before_starting|engine_stopped & oil|warning|lamp|light|bulb|pressure|test - engine_off_the_needle|"
        "still_lit|stays_on|gauge|needle",
    ),
    "gauge_line_kinked": (
        "gauge_line|gauge_pipe|gauge_tube|capillary|gauge_hose + flat_spot|squashed|flattened|crushed|kink|pinched|trapped|dent|sits_on|bent_double",
        "line|tube|pipe|capillary|nylon_line + trapped|squashed|kinked|kink|pinched|crushed|nipped + gauge|dash|nylon|copper|panel|capillary|behind - cooler|suction|pickup|fuel|brake|turbo",
        f"{CAPILLARY} & kinked|bend_too|bent|folded|pinched|squashed|flattened|crushed|choked|trapped|nipped|squeezed|zip_tie|creased|doubled_over|like_straw - no|not|sludge|deposits|full|gently",
    ),
    "needle_stuck_at_one_value": (
        "needle|gauge|pointer|indication|hand|dial|reading & fixed|froze|frozen|stuck|glued|stays|constant|same|unmoving|parked|jammed & all_conditions|whatever|doesnt_matter|doesn't_matter|no_matter|regardless|always|hot_or_cold|any_revs|never_changes|everything|at_all_times - zero|nought|peg|tap|sender_stuck|valve|then|low|bottom|end|off_the|drops|rises",
        "needle|hand|pointer|gauge|dial|reading|indication|clock & stands_at|always_on_one|hasnt_shifted|@not_shifted|sits_on|same_mark|one_place|same_place|same_spot|one_mark|stuck_at|frozen_at|glued|never_moves|stays_put|parked_at|@not_budge|welded|never_shifts|hasn't_shifted|same_number|one_figure|fixed_at|nailed|painted_on & whatever|warm_or_cold|fast_or_slow|with_gas|hot_or_cold|throttle|idle_or|revving|all_the_time|always|regardless|no_matter|revs|any_speed|off_or_on|on_or_off|idling_or|cold_or_hot - zero|nought|nothing|new|tap|goes_up|then|goes_down|low|peg|rises|stopped|silent|engine_off|key_off|port|bearing|no_longer|freed",
        "needle|gauge|reads|it|reading|sits|shows|=frozen|stuck + dead_centre|dead_center|in_the_middle|half|halfway|@number|mid|@pressure + whatever|never_moves|all_the_time|engine_on_or_off|on_or_off|since_i_got|since_i_bought|constantly|regardless|=frozen|no_matter - less|port|starboard|since_i_bought_the|idle|hot|drops|cold|above|max|new|then|revs_up|ever_since|low|goes|zero|history",
        "=frozen|=stuck + at|on + @number|@pressure - idle|throttle|minus|thermostat|temp|valve|relief|plunger|below|drops",
        "gauge|needle|reading|it + same + all_the_time|always|whatever|regardless|no_matter|revs|hot_or_cold|constantly|any_speed - new|sender|mechanical|after|before|as|owner|years|filter|other|oil",
        "needle|gauge|reads|sits|it|stays|says + @pressure|@number|halfway|half_way|mid-scale|middle & all_day|all_the_time|whatever|regardless|no_matter|constantly|@not_move|never_moves|never_changes|permanently|doesnt_matter & revs|rpm|hot|cold|idle|speed|throttle|key|temperature - then|drops|falls|drop|low|psi_when|max|over|above|hold",
    ),
    "lamp_slow_to_go_out": (
        "lamp|light|needle|gauge|pointer|pressure + extinguishing|longer|slower|hangs_on|dawdles|later|increasing|lingers|lazier & every|each|used_to|than|increasing|it_did - not|no|standing|night|warm|hot|idle|engine_slower|cranks",
        "light|lamp|needle|gauge|pointer|pressure|red_light|it & longer|slower|dawdles|lingers|takes_longer|used_to_leap|used_to_go|sluggish|lazier|more_slowly|later|longer_and_longer|dragging & start|each_time|every_start|every_time|whenever_i_start|starts|start-up|startup|starting|mornings & than|used_to|did|earlier|last_year|before|now|when_i_bought|year_by_year|these_days|lately|once|formerly - not|no|as_quick|after_standing|warm|idle|same_as|months_ago|warning|hours|shut|running_longer",
        "light|lamp|gauge|needle|pressure + used_to|takes|longer + straight|straight_out|instantly|immediately|couple|longer|few|slower & now|each|every|start|and_longer|these_days - warm|idle|hot",
        "light|lamp|needle|gauge|pressure + longer|slower|ages|forever|lazy|sluggish + every|each|than_it_used|than_before|week|month|these_days|lately|used_to - warm|hot_idle|parking",
    ),
    "unsteadier_with_revs": (
        "unsteady|never_still|wobbles|amplitude|bounces|shakes|flickers|dances|trembles|swings|jitters|quivers|restless & rpm|revs|rev|faster|speed|turns|throttle & increases|wilder|worse|harder|more|grows|bigger|mad|crazier - no_more|not|settles|only_at|low|engine|idle_only|clutch|screen|crank",
        "shakes|shake|trembles|dance|dances|bounces|bouncing|wobbles|flickers|unsteady|wavers|jumps|quivers|jitters|twitches|swings|flutter|flutters & mad|more|wilder|worse|way_more|crazier|violently|wildly|harder|faster|nuts|bigger|frantic|crazy & revs|rev|throttle|turns|faster|wind_it_up|speed|rpm|full_throttle|flat_out|revved|wind_it & always|idle|ticking_over|any_rpm|all_revs|needle|gauge|gets|pointer|tickover|hand|worse|it - no_more|not|no|never|settles|steadies|stops|only_at|lights|bump|road|noise|knock|engine_shakes|low",
        "worse|wilder|more|faster|bigger + revs|rpm|rev|speed|throttle|faster + needle|gauge|bounce|bounces|bouncing|flicker|flickers|shakes|vibrates|wavers|swings|fluctuates - low|drops|pressure_falls|knock|noise",
    ),
    "instrument_just_changed": (
        "sender|sending_unit|oil_sensor|sensor|gauge|pressure_switch|switch|dial|clock|transducer|transmitter|instrument|cluster|sender_unit + put_in|swapped|renewal|renewed|moved|new|replaced|fitted|changed|added|relocated|replacement|installed|swap|rewired & since|started_after|from_then|ever_since|odd_since|began|fault_since|since_then|been_odd|straight_after|after_i|when_i|been_wrong|started|goofy|from_that - filter|pump|rebuild|oil_and|reading_since|fixed|cured|not|no|always|before|no_difference|same|mechanical|test|pump|oil_change|still|stopped|disconnected|tried|unplugged|seized|trying|known-good|borrowed|nothing_changed|didnt",
        "set_of|aftermarket|new_set_of|pod_of + gauges|instruments|clocks & fitted|put_in|new|installed|since|swapped|dash - direct|mechanical|test|feeler|two",
    ),
    "more_than_it_can_make": (
        "pointer|pointer's|needle|gauge|hand|needle's|dial|it + off_the_end|end_of_the_scale|past_the_end|off_the_scale|off_the_clock|beyond_the_scale|over_the_top_of|gone_off_the_end|past_the_stop|double_what|twice_what|over_120|past_the_numbers & scale|end|relief|clock|dial|top|numbers|stop|last|set - engine_off|key|wire|grounded|earthed|unplugged|tach|speedo|temp|not|mechanical",
        "needle|gauge|it|pointer|reading|shows|indication|indicates|says|needle's|dial & past_the_last|end_of_scale|end_of_the_scale|off_the_scale|buried|off_the_clock|2x|twice|double|@number_and_the_relief|hundred_and|off_the_top|past_the_end|beyond_the_scale|hard_against|pegged_out|wrapped_round|over_the_end|maxed_out|two_hundred & relief|setpoint|scale|number|last|clock|relief_blows|setting|end|stop|valve|top|past|blow-off|peg|dial - not|no|never|low|zero|engine_off|key_off|level|under|test_gauge|wire|earth|ground|grounded|unplugged|rev_counter|revs|cold|limiter|dash_reads|half|speedo|temp|tach",
    ),
    "lamp_lit_with_key_off": (
        "light|lamp|symbol|idiot_light|telltale|oil_can|picture|red_light|warning_light|bulb & still_lit|still_glowing|shines|on|glowing|still_on|lit|burning|glows|stays_on|burns|stays_lit & key's_in_my_pocket|key_off|ignition_off|switched_off|turned_off|key_out|key_in_my_pocket|key_removed|without_the_key|no_key|car_is_off|everything_off|engine_and_key_off|off_at_the_key - engine_running|never|not|no|goes_out|went_off|dome|headlight|key_on|wire_off|dead|dark|before|sender_off|wire|unplugged|start",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "tap_frees_needle": (
        "tap|tapped|tapping|flicked|thumped & glass|gauge|dash|panel|needle & no_change|no_difference|no_effect|nothing|@not_change|@not_make|@not_move|no_reaction - heavily|heavy|loudly|badly|engine|knocks",
    ),
    "ran_long_without_distress": (
        "stopped|shut|killed|switched & seconds|at_once|immediately|straight_away|moment|instant & light|lamp|alarm|buzzer|needle|warning - itself|protection|never|noise|light_went|not|pulled_the_wire|leak|leaking",
    ),
    "lamp_slow_to_go_out": (
        "light|lamp|needle|gauge + goes_out|out|rises|up|responds|leaps + as_quick|as_quickly|just_as_fast|as_fast|no_slower|same_as_ever|quick_as_ever|as_promptly - not|used_to",
    ),
    "unsteadier_with_revs": (
        "no_more|no_worse|@not_worse|not_any_worse|same|not_more|@not_get_worse|@not_increase & wobble|wobbles|flicker|flickers|shake|shakes|bounce|bounces|unsteady|trembles|tremble|dances & revs|speed|rpm|throttle|faster|high_revs|rev - lights|noise",
    ),
    "instrument_just_changed": (
        "gauge|sender|instrument|instruments|gauges|sending_unit|sensor + as_they_always|never_been_changed|@not_changed|never_touched|original|untouched|same_ones|never_changed|not_been_touched|as_it_always + always|gauge|never|original|touched|factory|changed|years|sender - new|aftermarket|mechanical|replaced",
    ),
    "needle_stuck_at_one_value": (
        "needle|pointer|gauge|hand & goes_up|rises|moves|follows|climbs & throttle|revs|rev|speed & down|falls|drops|warms|heat|temperature|with|back - not|never|@not|bounces|clutch|until|then_stays|past|odd|slow|relief",
    ),
    "more_than_it_can_make": (
        "needle|gauge|reading|it|reads|shows + no_more_than|no_higher_than|never_above|never_past|@not_exceed|within_what|never_over + relief|setting|it_can_make|relief_setting|engine_can|pump_can - never_reaches|only",
    ),
    "needle_off_zero_at_rest": (
        "shut_it|turn_it|switch_it|shut_down|switched_off|engine_off & needle|gauge|pointer|hand & drops|falls|goes|returns|settles|sinks & zero|nought|peg|naught|stop|bottom & back|right|straight|always - headlights|lights|on|not|never|wont|doesnt|running|driving|suddenly|@not|short",
        "shut_down|switched_off|engine_off|when_stopped|at_rest|ignition_off|key_off|engine_stopped + needle|gauge|pointer|hand + drops_right_back|back_to_zero|back_to_nought|on_zero|at_zero|to_nought|to_zero|on_the_peg|on_its_stop|rests_on|returns_to|falls_to - not|never|@not|short|above|while|lamp|then_suddenly|doesnt|and_engine",
    ),
    "gauge_damaged": (
        "gauge|dial|glass|pointer|instrument + good_as_new|dry_inside|undamaged|sound|looks_fine|looks_good|clear_inside|no_fog|no_mist|intact|like_new|no_condensation|not_cracked|uncracked - not_sound|but|reads|sender|test|bearing",
    ),
    "lamp_dead_with_key_on": (
        "light|lamp|bulb|red_light|warning_light|idiot_light & shows|lights|comes_on|lit|glows|works|lights_up & key_on|ignition_on|before_starting|turn_the_key|key_turned|switch_on|before_i_start|bulb_check & as_it_should|fine|properly|normally|always|then|before|ok|as_normal|as_usual|brightly|correctly - not|never|no|doesnt|used_to|@not|running|stays_on|off_and|still_lit|wont_go",
    ),
    "gauge_line_leaking": (
        f"{CAPILLARY} & no_chafe|no_drip|no_leak|no_leaks|no_cracks|bone_dry|not_leaking|no_rub|dry_all - fuel|cranked|slackened|cracked_the",
    ),
    "oil_behind_panel": (
        "dash|dashboard|panel|instrument_board|dials|console|binnacle|instrument_panel|carpet & dry|no_oil|not_a_drop|no_wet|bone_dry & behind|back|under|inside - not_dry|pump|stick",
    ),
    "gauge_line_kinked": (
        f"{CAPILLARY} & no_kinks|no_sharp|gently|easy_bends|no_kink|not_kinked|not_pinched|no_flat|smooth_bends|gentle_curves - not_gently|but",
    ),
    "tachometer_wrong": (
        "tach|tacho|tachometer|rev_counter|rpm_dial & strobe|counter|photo_tach|handheld|timing_light|optical & agrees|agree|matches|same|spot_on|accurate|within - not|@not|high",
    ),
}
