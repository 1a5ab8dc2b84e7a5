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
        "dash|panel|dial|cluster|dashboard|factory|helm .. far|way|much? low|lower|less|under|below .. than|the? mechanical|master|manometer|shop|tester|mechanics|workshop|borrowed",
        "master|manometer|mechanical|tester .. way|far|much? more|higher|above .. dash|dashboard|panel|cluster|dial|helm",
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
        "manometer|master|mechanical|tester .. far|way|much? less|lower|under|below .. than? dash|dashboard|panel|cluster|dial|helm",
        "dash|panel|dial|cluster|dashboard|clock|factory .. far|way|very|much? higher|over|above|more|optimistic .. than|the? mechanical|master|manometer|shop|tester|mechanics|workshop|borrowed",
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
        "same|always|everywhere|bottom_to_top|top_to_bottom|throughout|constantly|right_through & mechanical|master|test_gauge|shop_gauge|tester|manometer|trusted & @number|@pressure|eight|ten|five|fifteen|twelve & out|short|under|over|more|less|off|adrift - half|double|twice|agrees|no|not|cured",
    ),
    "panel_half_or_double": (
        f"{_ANY_PANEL}|{_GAUGE} & {_ANY_TEST} & half|twice|double",
        f"{_ANY_PANEL} + {_GAUGE} + exactly_half|half_of|twice_what|double_what|twice_the_real|half_the_real",
        "constant|same|fixed + fraction|share|proportion|ratio & panel|gauge|reads|reading|dash|everywhere - no|not",
        "dash|dashboard|cluster|panel|dial|clock & mechanical|master|manometer|test_gauge|shop_gauge|tester & half|double|twice|0.5 - no|not|@not|halved|agree",
    ),
    "panel_reads_too_high": (
        f"{_ANY_PANEL} & {_ANY_TEST} & optimistic|over_reads|overreads|too_high|flattering|panel_higher|dash_higher|higher_than_the_mechanical|higher_than_the_test|way_higher",
        "optimistic|flattering|generous|over-reads|overreads|reads_high|lies_high + dash|gauge|panel|it - sender|tach|rev|speedo",
        "test_gauge|real|true|actual|mechanical & dash|panel & where|optimistic|only|really & reads|@number|@pressure - says_15|low|lower_than",
        "dash|panel|dial|cluster|dashboard|clock & mechanical|master|workshop_gauge|shop_gauge|tester|borrowed|manometer & optimistic|flattering|flatters|over-reads|overreads - pessimistic|not|same_amount|half",
    ),
    "panel_reads_too_low": (
        f"{_ANY_PANEL} & {_ANY_TEST} & pessimistic|under_reads|underreads|too_low|reads_low|lower_than",
        "real_pressure|actual_pressure|true_pressure|test_gauge|mechanical & dash|panel & says|reads|shows|lower|only|thinks & @pressure|@number - optimistic|high|over|same|too",
        "mechanical|test_gauge|real|direct|known_good|proper_gauge & dash|panel|stock|factory & @pressure|@number & but|while|whereas|yet|only|against - same|agrees|both",
        "dash|panel|stock|factory|original|electric + gauge|reads|shows|needle|still|=reading + next_to_nothing|nothing|zero|low|lower|way_down|under|less|barely & mechanical|test_gauge|direct|known-good|trusted|real|shop_gauge - also|same|agrees|too|high|both|exactly",
        "bad|lying|duff|useless|faulty|chasing + dash_gauge|panel_gauge|stock_gauge|factory_gauge|gauge + all|whole|was|is|a|summer|along - mechanical_gauge_is|new_gauge|bought|no|not|sender",
        "mechanical|master|workshop_gauge|shop_gauge|tester|manometer & plenty_there|plenty|healthy|fine_there|good_there & dash|panel|dial|cluster|helm & lying|low|pessimistic|under - optimistic|high",
    ),
    "test_gauge_doubtful": (
        "test_gauge|test_gauges|mechanical_gauges|direct_gauges|second_test & @not_agree|disagree|"
        "differ|different|contradict|@not_match - ports",
        "tester|test_gauge|kit|manometer|test_set|loaner_kit|second_tester|first_manometer|mechanical_gauge & second|another|mates|other_one|different|two & @not_match|disagree|@not_agree|show_not_same|not_same|differed|15_more|fifteen_more|ten_more|five_more|contradict|far_apart - both_agree|alike|dash|panel|ports",
    ),
    "nothing_warned": (
        "broke|broken|blew|seized|failed|failure|died|ruined|went|let_go|damage|destroyed|wrecked|gone & lamp|light|dashboard|dash|warning|buzzer|gauge|idiot_light|alarm|flicker & never_came|never_warned|never_lit|never_showed|nothing_on|without_so|no_warning|not_once|had_told|no_indication|silent|not_a_flicker|so_much_as|not_a_peep|never_was_on|never_flickered|never_sounded|never_said - key|ignition|bulb|starting|well_before|pressure_gone|wire|fuse|sender|lens|glass",
        "damage|seized|bearings_went|cooked|failure|ruined|blew|destroyed|bearings|let_go|knocked|wrecked|died|failed|fried|rod|broke|smashed|blew_up|knock & never_said|without_so_much|no_warning|buzzer_silent|silent|not_a_flicker|never_lit|never_came_on|never_flickered|@not_come_on|never_moved|never_warned|no_light|no_alarm|without_warning|not_a_peep|never_showed|gave_no|no_indication|nothing_on_the_dash|not_a_word|stayed_dark|never_made_a_sound|without_a_flicker & lamp|light|buzzer|gauge|warning|alarm|idiot_light|needle|dash|flicker|instrument|indicated|word - came_on_well|lit_up|shut|key|fused|suddenly|pressure_dropped|after_the_light|bulb",
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
        "idle|tickover|idles|idling|slow_running|tick-over + lower|less|slower|below|under|down + manual|book|spec|says|should|figure|makers|handbook|gives|factory - pressure|psi|light|lamp|needle|gauge|bar|higher|not|right|at_idle_is|hot|oil|quart|clearance|flow",
        "turns_slower|runs_slower|ticks_over_slower|turning_slower + book|manual|should|spec|says|figure - pump|starter|cranks",
        "tickover|idle|idles|idling|tick_over|ticks_over|turns_slower|slow_running|idle_speed|ticking_over|slower_at_rest + below|under|slower|too_slow|too_low|less_than|short_of|beneath|set_low|slow|spec|down_on + manual|book|spec|specified|tacho|tachometer|rev_counter|maker|supposed|should|@rpm|by_my|figure|plate|rpm|handbook|factory|optical|revs - pressure|psi|light|lamp|needle|gauge|bar|right|correct|not|above|spot|hot|oil|lbs|higher|raise|fast",
        "tickover|idle|idles|idling|tick_over & tacho|tachometer|rev_counter|counter|strobe|photo-tach & spec|book|manual|should|supposed|handbook & @number|slow|slower|below|under|low - pressure|psi|bar|spot_on|correct|high|wrong|gauge_reads|reads_high",
        "idle|idles|tickover|idling + down|dropped|only|slow|low|way_too + @rpm|400|450|500|350|550|=slow + should|spec|supposed|to|at|book|down|set - pressure|psi|gauge|light|bar|at_idle|@pressure|lbs|needle",
        "idle|idling|idles|tickover|ticks_over + too_low|too_slow|very_slow|very_low|way_down|below|low_idle|slow & @rpm|spec|book|should|manual|supposed|rpm|revs|specified|@number - pressure|psi|oil_pressure|gauge|hot_idle|bar|needle|lbs|pounds|@pressure|until|at_idle|reads|going",
        "idle|tickover + too_slow|turned_down|too_low|set_low|very_slow|low_rpm - pressure|hot_idle|no|not",
    ),
    "good_at_pump_low_in_gallery": (
        "pump|pump_outlet|pump_pushes|filter_head|pump_end|pump's & plenty|good|high|fine|@pressure|makes_it|full|strong|lots|putting_out & gallery|galley|further_along|main_oilway|far_end|main_rail|further_on|oilway|mains|other_end & low|@pressure|not_much|loses|little|less|poor|ain't|aint|nothing|never_arrives|not_making|weak - same|idle|new_pump|no_loss|rpm|both|drill|priming|bypass",
        "pump|pump's|filter_head|pump_outlet|filter_housing|makes_it_at_the_pump & plenty|much_pressure|makes_it|good|full|high|strong|healthy|four_bar|@pressure|putting_out|fine|lots & gallery|galley|main_rail|main_oilway|main_channel|rail|far_end|oil_gallery|rear|main_gallery|block|head|mains & few|little|loses|lost|making_it|one_and_a_half|low|@not_make|@not_get|nothing|weak|half|@pressure|poor|disappears|drops|not_arriving|hardly|less - same|no_loss|new_pump|both_low|idle|rpm|equal|no_difference|changed|primed|drill|priming|bypass",
        "pump|pump_outlet|filter_housing|filter_head & good|plenty|high|fine|@pressure|@number & gallery|main_gallery|far_end|rear|head|rockers & low|only|little|@pressure|@number|drops - idle|rpm|new_pump|relief|changed",
        "full|good|fair|fine|plenty|normal|strong & at_the_pump|pump_port|pump_test_port|test_port|port_ahead|pump_outlet|at_pump & gallery|rear_of_the_block|far_end|rear_port & low|poor|weak|nothing|little|@pressure|@number - "
        "new_pump|not_good|before_the_filter",
    ),
    "direct_gauge_low": (
        "known-good|mechanical|test_gauge|master_gauge|test_manometer|trusted_gauge|direct_gauge|proper_gauge|shop_gauge & low|low_there|poor|weak|down|also_low|still_low|same_low & too|also|there|as_well|still|again|same|even|equally|confirmed - not|normal|fine|good_pressure|zero|nothing|high|too_high|dash_only|where|but_dash|while|since|way_low_on_dash|bought|panel",
        "mechanical|known-good|test_gauge|master_gauge|trusted_gauge|direct_gauge|manual_gauge|proper_gauge|good_gauge|borrowed_gauge|shop_gauge|separate_gauge|workshop_gauge|known_good|second_gauge|calibrated|wet_gauge|bourdon + low|lower|poor|below|weak|down|under|little|bad|feeble|same_low|as_low|equally_low|also_low|low_there_too - not_low|no|high|right|normal|not|fine|good_pressure|shows_pressure|zero|higher|than_dash|panel_reads_low|dash_reads_low|dash_is_low|where_dash|while_dash|dash_shows|dash_says|dash_gauge_reads|nothing|oil_level|low_oil|says_fine|pump|filter|port|over|front|back|gallery",
    ),
    "direct_gauge_high": (
        "mechanical|known-good|test_gauge|master_gauge|trusted_gauge|direct_gauge|manual_gauge|proper_gauge|good_gauge|borrowed_gauge|shop_gauge|separate_gauge|separate_good_gauge|workshop_gauge|known_good|calibrated + too_much|too_high|pegged_up|way_over|high|far_too_much|way_up|sky_high|too_many|excessive|above|over_the_top|as_high|also_high|high_too|higher_than_it - not|no|low|normal|isnt|says_normal|dash|panel|never|highway|half|reads_low",
    ),
    "direct_gauge_zero": (
        "mechanical|test_gauge|master_gauge|proper_gauge|gauge_fitted_straight|direct_gauge|trusted_gauge|known-good|gauge_screwed|shop_gauge & zip|zero|nothing|nil|nought|no_pressure|nothing_at_all|zilch|no_reading|naught|@not_move & block|shows|showed|got|reads|read|stays|stayed|straight - air|froth|unscrewed|bench|cranked|dash_gauge_reads|panel|not_zero|low|some|since_then|until|fixed|psi_hot|changed",
        "mechanical|known-good|test_gauge|test_manometer|master_gauge|trusted_gauge|direct_gauge|manual_gauge|proper_gauge|good_gauge|borrowed_gauge|shop_gauge|workshop_gauge|known_good|calibrated_gauge & zero|nought|naught|nothing|nil|@not_move|@not_budge|null|no_pressure|dead|@not_lift|@not_twitch|zilch|not_a_flicker|never_moved|on_the_peg|@not_stir - air|froth|unscrewed|bench|cranked|confirmed|plumbed|dash|panel|low|not_zero|isnt|changed_nothing|nothing_wrong|@pressure|key|stopped|since_it_dropped|shows_pressure|up_to|has_shown|fixed|no_difference|cold",
    ),
    "pressure_shown_since": (
        "proper_gauge|mechanical|mechanical's|test_gauge|master_gauge|trusted_gauge|known-good|borrowed_gauge|shop_gauge & since|afterwards|after_that|later|post & ample|good|plenty|enough|normal|fine|healthy|in_spec|all_right|full & hot|cold|both|shown|has_shown|shown_all - drill|specification|no|not|never|nothing|fixed|low|new_pump|rebuild|changed",
        "mechanical|known-good|test_gauge|test_manometer|master_gauge|trusted_gauge|proper_gauge|yard's_gauge|shop_gauge|workshop_gauge|known_good|post-event|gauge_since|borrowed_gauge|garage's_gauge & since|after_the_fall|in_after|afterwards|post-event|since_then|after_it_dropped|after_that|after_the_loss|later|since_it_went|after & enough|all_it_should|in_spec|so_its_there|its_there|plenty|good|full|normal|fine|cold_and_warm|hot_and_cold|shown_all|healthy|right_figures - no_test|not|no|low|nothing|zero_on_it|never|fixed|cured|changed|new_pump|replaced|rebuild|oil_change|warm_up|minutes|drill|specification|unscrewed",
    ),
    "direct_gauge_unsteady": (
        "mechanical|mechanical's|known-good|test_gauge|master_gauge|trusted_gauge|direct_gauge|proper_gauge|good_gauge|shop_gauge|workshop_gauge|known_good & shakes|shaking|bounces|bouncing|wags|wagging|wobbles|flickers|flickering|unsteady|jumps|swings|trembles|quivers|dances|wavers|fluctuates|all_over|hunts|up_and_down|jittery|pulses|pulsates|jumping - zero|wiggle|confirmed|steady|not|no|@not|dash_only|never|low_too|while_dash",
    ),
    "ports_differ": (
        "two|both|front|rear|ends|each + port|ports|tapping|tappings|ends|gallery_ends|holes|test_points|takeoffs & not_same|apart|between|over_the|different|differ|less|more|unequal|higher|lower|@not_agree|gap & psi|pounds|bar|pressure|@pressure|gauge|gauges|@number|show - same|agree|equal|oil_leak|seal|plug|filter|main_seal|rear_main_seal",
        "each_of_two|two_tappings|two_ports|both_ports|two_holes|two_places|both_tappings|gauges_in_both|head_port|gallery_port|front_port|rear_port|gauge_at_front|gauge_at_back|gauge_at_the_front|gauge_at_the_back|two_points|two_takeoffs|front_tapping|rear_tapping|two_test_points|front_gauge|rear_gauge & different|differ|apart|between|@number|@pressure|disagree|difference|gap|less|lower|higher|pounds & @number|@pressure|numbers|pounds|psi|bar|back|rear|gallery|different|quite|other|gave|apart - same|agree|no_difference|filter|pump|equal|identical|idle|hot|rpm|cold|dash|to_a_pound",
    ),
    "pump_port_low": (
        "oil_leaves_the_pump|leaves_the_pump|pump_outlet|pump's_own_outlet|pump's_outlet|right_off_the_pump|at_the_pump|exit_of_pump|straight_off_the_pump|filter_housing|filter_head|pump_delivery & small|low|poor|weak|little|same|lousy|down|bad|no_better & also|as_well|likewise|too|still|even|there|itself|already - good|plenty|gallery|high|leak|rail|not|normal|fine|new|level",
        "at_the_pump|off_the_pump|exit_of_pump|pump_outlet|pump_exit|filter_housing|filter_head|right_off_the_pump|first_place_the_oil|out_of_the_pump|pump_discharge|pump_delivery|pump_port|pump_test_port|before_the_filter|straight_out_of_the_pump & low|weak|poor|little|feeble|low_there|down|no_better|bad|less|only_@pressure|under & too|also|still|as_well|there|even|gauge|pressure|tapped|already|checked|measured|shows|same|reads|reading - good|plenty|fine|much|high|not|no|gallery|main_channel|leak|leaking|leaks|rail|loses|full|galley|seal|gasket|hose|filter_is_low|level|new_pump|low_oil_level|drip",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "idle_below_spec": (
        "idle_speed|tickover_speed|idle_rpm|idle_revs + =right|correct|spot_on|in_spec|to_spec|as_per|set_right|set_to_spec - low|@not|pressure|psi|light|lamp|needle|gauge|bar|hot|off_idle|lbs",
    ),
    "direct_gauge_low": (
        "mechanical|known-good|test_gauge|master_gauge|trusted_gauge|direct_gauge|manual_gauge|proper_gauge|borrowed_gauge|shop_gauge|separate_gauge|workshop_gauge|known_good|wet_gauge + not_low|fine|normal|good|perfect|healthy|right|plenty|correct|spot_on|in_spec|all_it_should + says|reads|shows|showed|read|gave|has|shown|it's|gives - no|not|low|zero|drop|too_high|high|unsteady|good_gauge|pump|but_the|ports|bought|since|after|until",
    ),
    "direct_gauge_high": (
        "mechanical|known-good|test_gauge|master_gauge|trusted_gauge|direct_gauge|proper_gauge|shop_gauge|known_good + normal|not_high|right|fine|correct|in_spec|not_too_high|isnt_high + high|too_high|not|isnt - low|but|unsteady",
    ),
    "direct_gauge_zero": (
        "mechanical|known-good|test_gauge|master_gauge|trusted_gauge|direct_gauge|proper_gauge|shop_gauge|known_good + shows|moves|reads|registers|lifts|showed + some_pressure|plenty|pressure|good_pressure|moves|all_it_should - no|not|zero|low|nothing|high|half|only|drop|dropping",
    ),
    "pressure_shown_since": (
        "no|not|never|nobody|none & test_gauge|mechanical|master_gauge|trusted_gauge|proper_gauge|known-good|direct_gauge & since & pressure|shown|seen|put|fitted|any",
    ),
    "direct_gauge_unsteady": (
        "mechanical|known-good|test_gauge|master_gauge|trusted_gauge|direct_gauge|proper_gauge|shop_gauge|known_good + rock_steady|steady|@not_flicker|@not_bounce|@not_shake|steady_as|dead_steady|solid|@not_waver - not_steady|isnt|un|low|zero",
    ),
    "ports_differ": (
        "two_tappings|two_ports|both_ports|two_holes|both_tappings|two_places|both_points|front_and_rear|two_points|both_ends & same|agree|equal|identical|no_difference|match|alike|within_a_pound|to_a_pound & gauge|gauges|reading|read|pressure|ports|tappings|psi|pound|same|figure - not|differ|seal|leak",
    ),
    "pump_port_low": (
        "at_the_pump|off_the_pump|pump_outlet|pump_exit|pump_discharge|pump_port|pump_delivery|out_of_the_pump + right|good|fine|normal|full|healthy|plenty|as_it_should|correct|strong - not|low|new|but_low|gear",
    ),
    "good_at_pump_low_in_gallery": (
        "same|equal|no_loss|no_difference|identical|no_drop|agree|nothing_lost & pump|pump_outlet|filter_head & gallery|rail|main_rail|galley|main_gallery|oilway|block - not|new_pump|old_pump|filter_changed",
    ),
    "nothing_warned": (
        "lamp|light|gauge|buzzer|warning|alarm|needle + came_on|came|warned|lit|dropped|flickered|showed|sounded|told + well_before|before_anything|in_time|plenty_of_warning|long_before|before_it_let|before_the_damage|before_it_broke|before_it_seized - never|not|no|@not|didnt",
    ),
    "panel_half_or_double": (
        "dash|dashboard|cluster|panel|dial|clock & mechanical|master|manometer|test_gauge|shop_gauge|tester & not_half|not_halved|not_double|agree_in_scale|scale_agrees|neither_half|scale_is_right",
    ),
    "test_gauge_doubtful": (
        "second|two|another & gauge|mechanical|tester|manometer|gauges|testers & alike|agree|agreed|identical|same|matched & port|tapping|hole|both|fitting - not|@not|panel|dash|low|story|zero|sender|cluster|confirmed",
    ),
}
