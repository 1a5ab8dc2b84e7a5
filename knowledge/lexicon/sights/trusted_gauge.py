"""Words for what a test gauge or a second instrument shows."""

from __future__ import annotations

_TEST = "mechanical|test|direct|manual|master|shop|second|proper|trusted|real|capillary|known-good|calibrated|another|borrowed|separate"
_PANEL = "dash|panel|factory|stock|original|cluster|instrument|electric|electrical|indicated"
_GOOD = (
    "ok|fine|good|normal|healthy|correct|right|spec|specification|perfect|proper|plenty|adequate"
)
_GAUGE_OR_PANEL = "gauge|needle|dash|panel"
_SHOP = "test|shop|master|mechanical|borrowed|second|direct|manual|garage|workshop"
_AS = "as|to|per|at|by|on"
_PRESCRIBED = "=specified|=prescribed|=recommended|=required|=book|=spec|=handbook|=manual|=standard|=specification"
_GAUGE = "gauge|gage|guage|needle|pointer|dial|clock"
_ANY_TEST = (
    "mechanical|test|direct|master|manual|calibrated|known-good|trusted|second_gauge|mech|capillary"
)
_ANY_PANEL = "dash|panel|factory|stock|original|cluster|instrument|electric|electrical|mine"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "panel_reads_too_low": (
        f"{_TEST} gauge .. higher|more|{_GOOD} .. than|dash|panel|stock|factory|but|psi?",
        f"{_TEST} gauge .. above .. dash|panel|stock|factory|cluster",
        f"{_PANEL} gauge? .. low|lower|less|below|under .. {_TEST}",
        f"{_TEST} gauge|gauges|oil|it? shows|showed|shows|reads|read|said|gave|confirmed|says {_GOOD} pressure?",
        f"{_TEST} gauge .. cold to hot .. spec|specification|normal",
        f"{_PANEL} reads|shows below|less|lower|under",
        f"{_GAUGE_OR_PANEL} gauge? reads|shows|under|is|consistently|about|always|some @pressure|@number psi|lb|pounds|low|under|less|lower low|under|less|lower|than =low|=under|=less|=lower|=than|=by",
        f"{_GAUGE_OR_PANEL} gauge? under-reads|underreads|under-reading|reads-low|pessimistic",
        "dash|panel|car|factory|old gauge|clock|one? says|reads|shows @pressure|@number .. new|test|mechanical|master|direct|proper|other|second one|gauge|clock .. says|reads|shows @pressure|@number .. so the|dash|panel|it? dash|panel|is? under|pessimistic|low|reading-low",
    ),
    "panel_off_by_constant": (
        f"{_PANEL}|gage|gauge|it reads|is|shows about|around? @pressure|@number low|lower|high|higher|out|less|more|off .. at|every|than|always|everywhere",
        "@pressure|@number low|lower|high|higher|out|off .. every speed|rpm",
        "constant|same offset|error",
        "constant|same difference|amount low|high|out|off|at|everywhere|throughout|across|below|above|under|over",
        "low|high|out|off|reads .. constant|same amount|difference",
        f"{_GAUGE_OR_PANEL}|it gauge? always|constantly|consistently|is|reads|shows @pressure|@number|about psi|lb|low|out|high|off =out|=off|=low|=high|=all|=whole|=everywhere all|the|everywhere|throughout|across?",
        "always|constantly|consistently about? @pressure|@number psi|lb|pounds? out|off|low|high|under|over",
    ),
    "panel_half_or_double": (
        f"{_PANEL}|gauge reads|shows about|exactly|only? half|double|twice of|the|what? the|what|real|actual|true",
        "reads|reading|shows|showing|gauge|exactly exactly|just|about|almost|nearly? half|double|twice of? the|what|that",
    ),
    "panel_reads_too_high": (
        f"{_PANEL} gauge? .. high|higher|more|above|optimistic .. {_TEST}|real|actual|true|than",
        f"{_PANEL} gauge shows|reads|says|showed|said {_GOOD} .. {_TEST} .. low|only|zero|@pressure",
        f"{_PANEL} gauge .. always .. mid|middle|midrange|mid-range|normal|centre|center",
        "gauge acts|works|behaves like a|an? lamp|light|idiot|switch",
    ),
    "test_gauge_doubtful": (
        "test|mechanical|cheap|second gauge .. doubtful|suspect|off|inaccurate|wrong|junk|rubbish",
    ),
    "direct_gauge_zero": (
        f"{_TEST} gauge .. zero|nothing|none|0|nil",
        f"{_TEST} gauge on|in|there it|her? now? and|& it|that? says|reads|shows|showed|read|said =zero|=nothing|=none|=0",
        f"{_TEST} gauge both|all|also|still|too says|say|read|reads|show|shows|showed|at|on zero|nothing|none|0|nil",
        f"{_TEST} gauge .. confirmed|confirms|agrees|agreed|verified|proved zero|it|nothing|none|no|that|too",
        f"zero|nothing|none|0|no|nil oil? pressure|psi|reading? on|by|with|at|to|confirmed|verified|using|from a|the|on|with|by? a|the|my? {_TEST}|old|@range gauge",
        "confirmed|verified|measured|proved as|to|at|be|with|by|actual|it|pressure? =zero|=nothing|=none",
        "union undone|cracked|open|opened .. no oil|pressure",
        f"{_SHOP} gauge reads|shows|says|showed|read|also|at|registered|gave|stayed|too? zero|nothing|none|0|nil",
        f"zero|nothing|no on|oil|pressure with|by|on? a|the|my|another|his? {_SHOP} gauge",
    ),
    "direct_gauge_low": (
        f"{_TEST} gauge on|in|there it|her|engine|block|there? and|& it|its|that|pressure? really|is|was|still|actually|actual|well|way|far? low|lower|below|under|far|bad|poor",
        f"{_TEST} gauge .. the? same as|reading|thing|story|figure|low|again|too",
        f"{_TEST} gauge .. confirms|confirmed|agrees|agreed|low|also|too|verified|lower|matches|matched",
        f"confirmed|verified|measured|proved as|to|at|be|actual|it|pressure|the|reading|really|truly? low|lower|it|that|reading? with|by|on|using|actual? a|the|my|an? {_TEST}|accessory|gauge",
        "actual|true|real oil? pressure measured|was|is|tested|of|about|really|only? low|lower|poor|@pressure",
        "measured|tested|checked|proved actually|really|and|as|to|be|was|found? low",
        f"{_TEST} gauge shows|showed|reads|read|gave|says|said =only|=just|=barely|=mere about|around? @pressure|@number",
        f"{_SHOP} gauge reads|shows|says|showed|read|gave|confirmed|confirms|agrees|agreed|also|too|same|as|the|it|is|was? low|lower|poor|bad|same|it",
        f"low|poor|bad on|with|by a|the|my|another|his? {_SHOP} gauge",
        f"{_SHOP} gauge .. same|low|agrees|confirmed|confirms =low|=it|=same|=story|=thing|=reading|=readings|=panel|=dash",
    ),
    "direct_gauge_high": (
        f"{_TEST} gauge .. high|higher again|also|too|as?",
        f"{_TEST} gauge reads|read|shows|showed|says|said|is|was also|just|still|way|far|much|the|same|too|as? high|higher",
    ),
    "direct_gauge_unsteady": (
        f"{_TEST} gauge .. bounces|wavers|flickers|jumps|unsteady|fluctuates|erratic too|also?",
    ),
    "pressure_shown_since": (f"since then|that .. {_TEST} gauge .. {_GOOD}",),
    "ports_differ": (
        "two|different|both ports|taps|places|points .. differ|different|psi|disagree",
        "@pressure at|from .. @pressure at|from .. port|gallery|head|filter|block",
        "different|differing|other pressure|pressures|reading|readings at|on|from|between two|the|different|each|front|rear places|ports|taps|points|ends|galleries",
        "front|one|rear port|gallery|tapping|end .. rear|other|front .. psi|less|lower|more|higher =than|=less|=lower|=different",
    ),
    "pump_port_low": (
        "low|zero|poor at|from|straight|directly the? from|at|out? the? pump outlet|port|discharge|side?",
    ),
    "good_at_pump_low_in_gallery": (
        "good|full|normal|@pressure at|before the? pump|filter but|and|yet|, .. low|zero|after|gallery|head|@pressure",
        "pressure drop across|over the? filter|cooler",
        "good|fine|normal|high|strong pressure? at|before|by|off|from the? pump|filter|housing .. low|poor|less|nothing|drops|none at|after|in|on|by the? gallery|back|rear|filter|head|end|sender",
        "pressure|drops|loss|lost across|between|through the? pump|filter and? the? gallery|block|sender?",
    ),
    "idle_below_spec": (
        "idle|idling|idles|tickover speed|is|was|set|too|very|rather|only|really|at|bit? too|very|a|bit|rather|down? low|slow|slowly",
        "low|slow idle|tickover speed?",
        "idles|idling|idle at|around|about|down only|about|just|around|to? 400|450|500|350|300",
        "set|turned|screwed|wound|dropped|lowered|backed the|my|its? idle|tickover speed? down|lower|back|right? down?",
        "idle|idles|idling|tickover is|was|set|speed|too|about|at|around? =below|=under|=lower the? maker|book|spec|specification|figure|manual|normal",
    ),
    "nothing_warned": (
        "=no =warning|=warnings of|from|whatsoever|at|before|from",
        "no oil? pressure? lamp|light|warning was|ever|at ever? seen|lit|any",
        "alarm|light|lamp|buzzer|warning never|didnt came|went|come|go|sounded|sound|warned|showed|show on|off|up",
        "gauge|light|lamp|alarm never|didnt gave|give|showed|show any? warning|sign",
        "nothing|nobody|never noticed on|by|at the? factory|stock|dash|panel|original? gauge|lamp",
        "fault|loss|problem|pressure was|went? never|not noticed|spotted on|by|until|at",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "idle_below_spec": (
        f"idle|tickover speed|rpm|revs? is|was|set|adjusted|checked|correct? {_AS} the? {_PRESCRIBED}",
        "idle|tickover speed|rpm|revs correct|ok|normal|right|good|within|in",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "panel_off_by_constant": (
        f"{_ANY_PANEL} & {_ANY_TEST} & all_the_way|throughout|everywhere|constant|consistently|across_the_range|at_every|same_amount|"
        "all_through|right_through|up_the_range|up_the_scale|whatever_the",
    ),
    "panel_half_or_double": (
        f"{_ANY_PANEL}|{_GAUGE} & {_ANY_TEST} & half|twice|double",
        f"{_ANY_PANEL} + {_GAUGE} + exactly_half|half_of|twice_what|double_what|twice_the_real|half_the_real",
        "constant|same|fixed + fraction|share|proportion|ratio & panel|gauge|reads|reading|dash|everywhere - no|not",
    ),
    "panel_reads_too_high": (
        f"{_ANY_PANEL} & {_ANY_TEST} & optimistic|over_reads|overreads|too_high|flattering|panel_higher|dash_higher|higher_than_the_mechanical|higher_than_the_test|way_higher",
        "optimistic|flattering|generous|over-reads|overreads|reads_high|lies_high + dash|gauge|panel|it - sender|tach|rev|speedo",
        "test_gauge|real|true|actual|mechanical & dash|panel & where|optimistic|only|really & reads|@number|@pressure - says_15|low|lower_than",
    ),
    "panel_reads_too_low": (
        f"{_ANY_PANEL} & {_ANY_TEST} & pessimistic|under_reads|underreads|too_low|reads_low|lower_than",
        "real_pressure|actual_pressure|true_pressure|test_gauge|mechanical & dash|panel & says|reads|shows|lower|only|thinks & @pressure|@number - optimistic|high|over|same|too",
        "mechanical|test_gauge|real|direct|known_good|proper_gauge & dash|panel|stock|factory & @pressure|@number & but|while|whereas|yet|only|against - same|agrees|both",
        "dash|panel|stock|factory|original|electric + gauge|reads|shows|needle|still|=reading + next_to_nothing|nothing|zero|low|lower|way_down|under|less|barely & mechanical|test_gauge|direct|known-good|trusted|real|shop_gauge - also|same|agrees|too|high|both|exactly",
        "bad|lying|duff|useless|faulty|chasing + dash_gauge|panel_gauge|stock_gauge|factory_gauge|gauge + all|whole|was|is|a|summer|along - mechanical_gauge_is|new_gauge|bought|no|not|sender",
    ),
    "test_gauge_doubtful": (
        "test_gauge|test_gauges|mechanical_gauges|direct_gauges|second_test & @not_agree|disagree|"
        "differ|different|contradict|@not_match - ports",
    ),
    "nothing_warned": (
        "no|without|never|nobody|@not_any|not_one + warning|alarm|caution + given|sounded|came|whatsoever|saw|before|of_any_kind|at_all|heard|light_before|was|seen|gave|beforehand - no_evidence|no_sign|alarm_on|lights_up|key|ignition|on_the_road|shut|hazard|reads|gauge_zero|works|horn|"
        "label|stopped_immediately",
        "gauge|needle|pressure|light|lamp + normal_to_the_end|fine_to_the_end|right_to_the_end|up_to_the_end|to_the_last - fell|dropped|drop",
        "gauge|needle|pressure|light|lamp + normal_until|fine_until|never_moved|normal_to_the & seized|knocked|knock|knocking|bang|died|blew|locked|failed|let_go|wrecked|ruined|rod",
        "alarm|buzzer|warning + silent|mute|failed|@not_sound|@not_operate|disconnected_earlier - key|ignition|at_all_times",
        "never|no|not_one|without|@not + got_a_warning|get_a_warning|warning_at_all|a_warning|any_warning|warning_whatsoever|prior_warning|warning_of_any|a_flicker_of_warning - going_out|go_out|key|fitted|lit_at|stopped|ignition|bulletin",
        "never|no|@not|without + light|warning|lamp|alarm|gauge + before|when|until + bang|seized|went|blew|let_go|knocked|died|locked|failed|threw",
        "light|lamp|gauge|buzzer|alarm|warning + never|@not|no + warned|came_on|lit|worked|told|flickered|moved & seized|knocked|knock|failed|let_go|died|bang|ruined|damage|wiped|locked",
    ),
    "idle_below_spec": (
        "idle|idles|tickover|idling + down|dropped|only|slow|low|way_too + @rpm|400|450|500|350|550|=slow + should|spec|supposed|to|at|book|down|set - pressure|psi|gauge|light|bar|at_idle|@pressure|lbs|needle",
        "idle|idling|idles|tickover|ticks_over + too_low|too_slow|very_slow|very_low|way_down|below|low_idle|slow & @rpm|spec|book|should|manual|supposed|rpm|revs|specified|@number - pressure|psi|oil_pressure|gauge|hot_idle|bar|needle|lbs|pounds|@pressure|until|at_idle|reads|going",
        "idle|tickover + too_slow|turned_down|too_low|set_low|very_slow|low_rpm - pressure|hot_idle|no|not",
    ),
    "good_at_pump_low_in_gallery": (
        "pump|pump_outlet|filter_housing|filter_head & good|plenty|high|fine|@pressure|@number & gallery|main_gallery|far_end|rear|head|rockers & low|only|little|@pressure|@number|drops - idle|rpm|new_pump|relief|changed",
        "full|good|fair|fine|plenty|normal|strong & at_the_pump|pump_port|pump_test_port|test_port|port_ahead|pump_outlet|at_pump & gallery|rear_of_the_block|far_end|rear_port & low|poor|weak|nothing|little|@pressure|@number - "
        "new_pump|not_good|before_the_filter",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "idle_below_spec": (
        "idle_speed|tickover_speed|idle_rpm|idle_revs + =right|correct|spot_on|in_spec|to_spec|as_per|set_right|set_to_spec - low|@not|pressure|psi|light|lamp|needle|gauge|bar|hot|off_idle|lbs",
    ),
}
