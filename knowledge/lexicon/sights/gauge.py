"""Words for what gauge, needle and panel do, in themselves or beside each other."""

from __future__ import annotations

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
        "gauge|glass|dial|pointer|needle|instrument + misted|fogged|steamed|condensation|cracked_glass|bent|smashed|"
        "full_of_water|dented - sump|pan|valve|line|pipe|float|oil",
        "gauge + =knackered|is_shot|=buggered|=broken|=smashed|toast|kaput - line|pipe|pump|bearing|sender|tube",
        "gauge|needle|glass|bezel + =broken|smashed|bent|fogged|misted|cracked|steamed|full_of_water + gauge|needle|glass|is|all|up|was|been|got - wire|line|sender|pipe|pressure|tube|engine",
    ),
    "tachometer_wrong": (
        "tach|tacho|tachometer|rev_counter|rev-counter + wrong|high|more|fast|inaccurate|optimistic|out|over - ticks_over|ticking_over|ticked_over|according",
        "tach|tacho|tachometer|rev_counter + reads|out|wrong|optimistic|inaccurate|lies|reads_high + revs|rpm|high|fast|too|out|wrong|than|by|optimistic - zero|stopped|died|same_time|quit|no|not",
    ),
    "needle_off_zero_at_rest": (
        f"{_ANY_GAUGE} & pegged|maxed|full_scale|off_the_scale|off_scale|hard_over|full & even + ignition_off|key_off|engine_off|ignition_is_off|key_is_off|engine_is_off|engine_stopped - fuel|temp|temperature|tank",
        f"{_ANY_GAUGE} & key_out|key_off|ignition_off|engine_off|engine_stopped|switched_off|not_running|motor_off|shut_off & "
        "still_shows|still_reads|shows_@number|reads_@number|shows_@pressure|reads_@pressure|sits_at|never_drops|stays_at|off_the_stop - sender_out|at_zero|on_zero|to_zero",
        "ignition_off|key_off|engine_off|turn_it_off|turned_off|switch_off|shut_it_off|switched_off|engine_stopped & needle|gauge|points|says|reads|shows|drop|still|it & @number|@pressure|@not_drop|@not_go|@not_return|above|off_zero - at_zero|on_zero|to_zero|light|lamp|flicker|idle|hot|cold|minutes|before|filter",
        "key_off|engine_off|ignition_off|engine_stopped|engine_turned_off|ignition_switched_off + gauge|needle|reads|shows|says|sits|sit|still|even|rests + @pressure|@number|above|off_the_peg|off_zero|halfway|half_way|mid - at_zero|=zero|nothing|light|lamp|minutes|later|suddenly|cold|down|hours|rpm|restart|oil_level|dipstick|before|at_least",
        "needle|gauge & @not_zero|@not_return|@not_go_back|@not_come_back|@not_drop_to_zero|@not_go_to_zero|above_zero|off_the_pin|@not_rest & stopped|off|parked|switched_off|at_rest - idle|hot|speed|running|off_zero|moved_off|move_off|came_off|come_off|left|leave|leaves",
    ),
    "ran_long_without_distress": (
        "ran|run|running|driven|drove|used & month|months|season|weeks|year|years|@distance|@hours & light_on|lamp_on|alarm_on|"
        "like_that|like_this|buzzer_on & no_damage|no_harm|no_problem|no_ill|fine|happy|happily|without - before|until",
        "months|years|thousands|miles|hours|weeks + light|lamp|low|zero + no_noise|no_knock|no_damage|no_harm|without_trouble|without_a_problem|no_ill|fine - since",
    ),
    "tap_frees_needle": (
        f"{_ANY_GAUGE}|glass|it + tap|tapped|tapping|=flick|flicked|flicking|thump|knock|rap + jump|jumps|moves|springs|comes|comes_up|wakes|drops|frees|works - bottom_end|end_knock|knock_came|knock_comes|came_on|comes_on|bearing|engine",
        "tap|tapped|tapping|=flick|flicked|flicking|thump|thumped|knock|rap|bang + glass|gauge|dash|panel|dashboard|instrument & sprang|springs|jumped|jumps|dropped|drops|came_up|comes_up|came_back|comes_back|wakes|woke|to_life|moves|moved|fell|falls|frees - no|not|nothing|brake|bump|clutch|sender",
        "tap|tapping|thump|bang|hit|flick|whack|knock + dash|gauge|glass|panel + needle|gauge|reading|going|up|jumps|moves|works|free - no_difference|nothing|sump|noise|sender|engine|bottom|end|rod|knocks|knocking|deep|heavy|loud",
    ),
    "gauge_line_leaking": (
        "drip|drips|dripping|leak|leaks|leaking|weeping|weeps & oil_pipe|copper_pipe|pipe|capillary|oil_line & to_the_gauge|to_the_oil_gauge|to_the_oil_pressure_gauge|to_the_pressure_gauge|to_the_dash_gauge - no|not|fuel|water|dry|coolant|sender|turbo",
        "gauge_line|gauge_pipe|gauge_tube|capillary|gauge_hose|gauge_union + leak|leaking|dripping|weeping|split|burst|chafed|cracked|wet|let_go",
        "gauge_line|gauge_pipe|gauge_tube|nylon_gauge_line|capillary|plastic_gauge_tube|gauge_hose + melted|split|fractured|burst|leaking|sprayed|spraying|cracked|leaks|chafed|broke|let_go|popped|blew - kink|blocked|clogged|no_oil",
    ),
    "oil_behind_panel": (
        "oil|oily + carpet|footwell|trousers|trouser_leg|jeans|my_feet|under_the_dash|behind_the_dash|kick_panel|floor_mat|my_shoe|my_shoes - no|not|smoke|fuel",
        "oil & behind|under|carpet|footwell|inside|feet|cabin|cockpit & dash|panel|dashboard|carpet|footwell|feet|instrument - line_to",
    ),
    "lamp_dead_with_key_on": (
        f"{_ANY_LAMP} & key|ignition & @not_light|@not_come_on|@not_lit|@not_glow|@not_work|never_lights|never_comes|no_longer_lights|stays_dark|fails_to - still|go_out",
        "oil_light|oil_lamp|warning_light|pressure_light|lamp|light|bulb|telltale & no|@not|never|dead|fails|dark & switch_on|key_on|turn_the_key|ignition_on|key_turned|bulb_check|self_test|its_test|first_turn_the|before_starting|engine_stopped & oil|warning|lamp|light|bulb|pressure|test - engine_off_the_needle|"
        "still_lit|stays_on|gauge|needle",
    ),
    "gauge_line_kinked": (
        "gauge_line|gauge_pipe|gauge_tube|capillary|gauge_hose + flat_spot|squashed|flattened|crushed|kink|pinched|trapped|dent|sits_on|bent_double",
        "line|tube|pipe|capillary|nylon_line + trapped|squashed|kinked|kink|pinched|crushed|nipped + gauge|dash|nylon|copper|panel|capillary|behind - cooler|suction|pickup|fuel|brake|turbo",
    ),
    "needle_stuck_at_one_value": (
        "needle|gauge|reads|it|reading|sits|shows|=frozen|stuck + dead_centre|dead_center|in_the_middle|half|halfway|@number|mid|@pressure + whatever|never_moves|all_the_time|engine_on_or_off|on_or_off|since_i_got|since_i_bought|constantly|regardless|=frozen|no_matter - less|port|starboard|since_i_bought_the|idle|hot|drops|cold|above|max|new|then|revs_up|ever_since|low|goes|zero|history",
        "=frozen|=stuck + at|on + @number|@pressure - idle|throttle|minus|thermostat|temp|valve|relief|plunger|below|drops",
        "gauge|needle|reading|it + same + all_the_time|always|whatever|regardless|no_matter|revs|hot_or_cold|constantly|any_speed - new|sender|mechanical|after|before|as|owner|years|filter|other|oil",
        "needle|gauge|reads|sits|it|stays|says + @pressure|@number|halfway|half_way|mid-scale|middle & all_day|all_the_time|whatever|regardless|no_matter|constantly|@not_move|never_moves|never_changes|permanently|doesnt_matter & revs|rpm|hot|cold|idle|speed|throttle|key|temperature - then|drops|falls|drop|low|psi_when|max|over|above|hold",
    ),
    "lamp_slow_to_go_out": (
        "light|lamp|gauge|needle|pressure + used_to|takes|longer + straight|straight_out|instantly|immediately|couple|longer|few|slower & now|each|every|start|and_longer|these_days - warm|idle|hot",
        "light|lamp|needle|gauge|pressure + longer|slower|ages|forever|lazy|sluggish + every|each|than_it_used|than_before|week|month|these_days|lately|used_to - warm|hot_idle|parking",
    ),
    "unsteadier_with_revs": (
        "worse|wilder|more|faster|bigger + revs|rpm|rev|speed|throttle|faster + needle|gauge|bounce|bounces|bouncing|flicker|flickers|shakes|vibrates|wavers|swings|fluctuates - low|drops|pressure_falls|knock|noise",
    ),
    "instrument_just_changed": (
        "set_of|aftermarket|new_set_of|pod_of + gauges|instruments|clocks & fitted|put_in|new|installed|since|swapped|dash - direct|mechanical|test|feeler|two",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "tap_frees_needle": (
        "tap|tapped|tapping|flicked|thumped & glass|gauge|dash|panel|needle & no_change|no_difference|no_effect|nothing|@not_change|@not_make|@not_move|no_reaction - heavily|heavy|loudly|badly|engine|knocks",
    ),
}
