"""Words for when the trouble began, and after what."""

from __future__ import annotations

#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "changed_after_knock": (
        "since|after|when|ever-since i|we|he|she|it? hit|hitting|clipped|clipping|caught|struck|bottomed|grounded|ran-over|jumped the|a|an|my|some|on|out|off? big|large|tree|speed? rock|kerb|curb|stump|log|stone|pothole|bump|boulder|rut|ledge|ramp",
        "hit|clipped|caught|struck|bottomed|grounded|jumped .. rock|kerb|curb|stump|log|stone|pothole|boulder|ledge|trail|ramp .. since|now|then|after|afterwards",
    ),
    "changed_after_other_work": (
        "first|soon|day|straight|shortly|just|right|hours|minutes|next|trouble|began|started .. after|since|following the? repair|service|overhaul",
        "first|soon|day|straight|shortly|just|right|hours|minutes|next|trouble|began .. after|since|following the? work|service|repair|repairs|job|inspection|maintenance|accessory|installation",
        "work|accessory|pump|instruments|part .. done|changed|installed|replaced|fitted|renewed the? day|hours|morning before",
        "since the? work|repair|job|service|garage|shop|mechanic|other",
    ),
    "changed_with_grade": (
        "started|began|since|after|when|ever-since i|we|they|he went|switched|changed|moved|swapped to a|the|some? thinner|thicker|lighter|heavier|different|synthetic|other oil|grade|weight",
        "only thing i|we|thats|that|he? changed|different|new was|is the? oil? grade|weight|viscosity|brand",
    ),
    "changed_with_oil_change": (
        "since|after|following|ever-since|from a|the|that|its|my|their|his? quick-lube|quick|lube|fast-lube|drive-in|express lube|oil|place|shop|service? place|shop|garage|service|visit|job? had|did|changed|touched|serviced? it?",
    ),
    "low_from_first_start": (
        "never had|made|seen|got|been|showed|given more|over|above|better than? @pressure|@number .. since|from first|new|it-was|i|the|day|rebuild|build",
        "never had|made|seen|got|been|showed|given more|over|above|better than? @pressure|@number since|from the? first|new|rebuild|build|day-one|beginning",
    ),
    "low_first_minutes_then_good": (
        "low|poor|slow|nothing at|for the|a first|start|few|couple minutes|minute|bit|then|but|and fine|good|normal|came|up|ok",
        "came|comes|built|rose|went up after|in|within a|few|couple|some|several|two|three minutes of|after the? first|running|start",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "changed_after_knock": (
        "sump|pan|oil_pan|belly|underside|bottom_of_the_engine + rock|stone|kerb|jack|impact|hit|knock|bump|ledge|stump|speed_bump|ground|log|jacked|clout|curb|rut|clouted|bash|grounded|whack & since|after|began|started|then|ever_since|from|now|following - no|not|never|before|leak|after_the_pump|noise|oil_changed",
        "jacked|grounded|ran_aground|hit_bottom|bottomed_out & sump|pan|ledge|rock|rocks|stone|reef|sandbank|by_the_pan|since|ramp & since|ever_since|after|began|wrong|from|been_low - no|not|never|strap|wire",
        "jacked|jack|grounded|bottomed|ran_aground|run_aground|touched_bottom|beached + since|ever_since|from_that|after_this|straight_after|began|started|been_low|been_wrong|next_day|from_then|hour|right_after|after_that - no|never|wire|strap|earth|sender|jackshaft|shaft|jack_shaft|lead|oil_change",
        "hit|clouted|bumped|struck|clipped|landed|scraped|thumped|dropped|whacked|walloped|knocked|knock|bashed|smacked|caught|banged & sump|pan|belly|underneath|from_under|underside|rock|stone|kerb|curb|stump|ledge|log|boulder|rut|ramp|jack|ground|reef|pothole|speed_bump & since|ever_since|from_that|after_this|after_that|straight_after|problem_begin|began|started|been_low|been_wrong|next_day|from_then|afterwards|right_after - parts|dropped_the|no|never|nothing|oil_change|noise_when|engine_hit|valve|pump_off|clutch|fan|clock_back|piston|rod",
    ),
    "changed_after_other_work": (
        "head_gasket|head_gasket_work|starter|clutch|yard|garage|mechanic|other_work|cambelt|timing_belt|timing_chain|water_pump|cylinder_head|alternator|workshop|valve_job|dealer|shop & onset|since|after|started_right|began|ever_since|came_back|following|next_day & work|new|worked|job|repair|done|back|this|changed|fitted|replaced|service - oil_change|pump_was|oil_pump|sender|fixed|cured|better|before|gauge_was|told|says|said|reckons|no|not|quoted|tested|wants|oil_and_filter|blew|leak",
        "clutch|timing_belt|timing_chain|head_gasket|cylinder_head|other_thing|radiator|water_pump|alternator|gearbox|manifold|exhaust|starter|turbo|injectors|garage|mechanic|workshop|mounts|valve_job|tappets|cam|seals|seal|cambelt|flywheel|thermostat|welding & replaced|renewed|done|repair|changed|had|fitted|job|serviced|they_repair|after_they|repaired|swapped|work|fixed & dates_from|next_day|since|ever_since|straight_after|immediately|started|acting_up|drove_it_out|began|afternoon|right_after|from_that|same_day|very_day|first_drive|day_after - pump|oil_change|sender|gauge|before_it|no_link|fixed_it|cured|no_difference|year_before|leak|leaks|noise|clutch_slips|oil_pump|warped|blew|coolant|still",
    ),
    "changed_with_grade": (
        "thinner_oil|thicker_oil|different_grade|other_grade|oil_weight|grade|viscosity|lighter_oil|heavier_oil|another_grade|multigrade|synthetic|15w-40|10w-30|20w50|different_oil|5w30 & altered|changed|moved|different|began|started|appeared|shifted|gauge_changed|reading_moved & nothing_else|only_thing|same_day|when|only|nothing|else - no_difference|helped|before|pump|filter|cured|better|no_change|improved|started_up|higher_now|fixed",
        "swap|swapped|changed|switched|went_from|went_to|moved|different|other|only|changing|thinner|thicker|lighter|heavier|viscosity_changed|tried|put_in & 15w-40|10w-30|20w50|20w-50|5w30|5w-30|10w40|10w-40|15w40|5w40|0w20|grade|viscosity|thickness|weight|thinner_oil|thicker_oil|multigrade|straight_30|sae|brand|heavier_oil|lighter_oil & only_thing|nothing_else|no_other|only|when_it|thats_when|that's_when|became_different|reading_moved|reading_changed|pressure_became|since_then|from_then|dropped|that_did_it|moved|different|started|ever_since - no_difference|no_link|pump_too|also|filter_and|before|helped|cured|no_change",
    ),
    "changed_with_oil_change": (
        "oil_change|change_of_oil|changed_oil|oil_and_filter|did_the_oil|did_an_oil|serviced|fresh_oil|refilled|oil_service & dates|right_since|since|right_after|onset|straight_after|thereafter|ever_since|immediately|to_hell|soon_as|began|started|since|dates - apart|nothing_was|new|way_home|rain|plug|drain|no|not|before|long|hours|miles|@distance|@hours|cured|fixed|better|grade|thinner|pump|overdue|months|years|started_up|helped|level_check|last_oil_change_was|month|h_since|drained_and|years_since|interval",
        "did_the_oil|drained_and_refilled|drained_the_oil|change_oil|changed_oil|changed_the_oil|changing_the_oil|oil_change|oil_and_filter|filter_change|new_oil|fresh_oil|renewed_the_oil|oil_service|service|refill|oil_swap|put_new_oil|oil_filter_change|filter_swap|new_filter & ever_since|since|soon_as|right_since|straight_after|at_once|right_after|same_day|immediately|started|from_then|began|next_day|directly_after|problem_came|thats_when|day_after|straight_afterwards - started_up|started_at_once|started_and|started_it|h_since|@hours|poured|no_link|long_before|before_the|fixed|cured|better|miles_ago|hours|no_difference|still|level|grade|thinner|thicker|viscosity|weight|light_since|oil_pump|pump|15w40|20w50|quart|nothing_else|didnt|thickness|other_work|months|since_the_last_oil_change_the_level|timing|miles|black|colour",
        "began|started|since|ever_since|right_after|straight_after|immediately_after|only_after|day_after|come_on_since|happened_after|appeared_after|arose + oil_change|oil_was_changed|last_service|a_service|oil_and_filter|changed_the_oil|changing_the_oil|full_service|filter_change|oil_service|"
        "the_service - oil_pump|oil_filter|oil_cooler|oil_pressure|oil_pan|oil_sender|oil_switch|oil_seal|oil_seals|oil_line|oil_lines|oil_pickup|oil_sump|oil_gauge|oil_tank|any_more|no_longer|cured|miles|hours|overdue|quart|fine|black|two_years|@distance|@hours|no_change|tried|usage|uses|1300|months_since|weeks_since",
    ),
    "low_from_first_start": (
        "weak|low|poor|lousy|feeble|rubbish|never_good|bad|down & day_one|from_new|first_start|first_run|the_start|the_off|the_word_go|first_fired|beginning|ever_since & motor|engine|rebuild|overhaul|build|repair|fresh|built|post-overhaul|rebuilt|post-rebuild|recon - good|none|lifters|then_good|then_fine|fine|was_ok|first_minutes|level|noise",
        "low|weak|poor|down|never_right|feeble|below|little|few|bad|never_good|miserable & since|first_start|right_away|from_the_start|from_the_beginning|ever_since|straight_away|from_new|from_day_one|always_been|first_fire|from_the_word_go & rebuild|overhaul|rebuilt|general_repair|repair|build|refit|reconditioned|engine_back|came_back|recon|restoration|putting_it_together|assembling|assembly|reassembled - no_pressure|none|zero|was_good|was_right|was_fine|head|clutch|level|water_pump|nothing|at_first|then_good|first_minutes",
    ),
    "low_first_minutes_then_good": (
        "first_minutes|first_few_minutes|few_minutes|initially|initial|at_first|slow_to_find|five_minutes|@minutes|couple_of_minutes|to_begin|slow|minutes & low|little|poor|slow|weak|feeble|down|nothing_much|hardly & then|but|within|after|becomes|came & good|normal|fine|well|right|up|ok|healthy & new|fresh|build|rebuild|rebuilt|assembling|assembly|overhaul|reassembled|first_fire|first_start - hot|drops|worse|every_time|lifters|lost|always|never",
    ),
    "none_from_first_start": (
        "never|no|zip|zilch|nothing|none|nil|not_a & made|had|shown|registered|built|pressure|got_zip|any|seen & build|rebuild|overhaul|post-overhaul|first_start|assembled|built_it|storage|reassembly|built|rebuilt - until|stopped|then_lost|good|was|light|low|noise|no_difference|sender|@pressure|@number|trouble|changed|leak|drill|priming|knock|smoke|more_than|over",
        "never|no|not_one|hasnt|nothing|none|zero|not_a|without|zilch|nil|havent & since|first_time|ever_since|from_the_first|very_first|from_the_moment|since_we|since_i|first_fired|first_start|from_day_one & together|rebuild|rebuilt|overhaul|barn|storage|built|assembled|stored|got_her_going|putting|laid_up|build|reassembly|years|refit - noise|leak|leaks|low|smoke|trouble|problem|no_difference|no_change|made_no|@pressure|@number|pressure_was|was_fine|worse|less|light|knock|few|weak|poor|oil_change|until",
    ),
    "changed_with_new_pump": (
        "new_oil_pump|new_pump|oil_pump|pumps_the_oil|pump & fitting|fitted|opened|put_in|since_someone|went_in|swapped|renewed|replacement|was_off|disturbed|taken_off|apart & began|started|dates|since|way_since|after|ever_since|from - before|no|not|cured|fixed|better|even|difference|fuel|water|injection|primed|vacuum|washer|lift|still|hours|miles|with_new_pump|bilge|drill|unchanged|morning|@distance|@hours",
        "oil_pump|pump|pumps|other_pump|new_pump & off|swapped|replaced|renewed|replacement|opened|put|changed|fitted|new|out|renewal|rebuilt|apart|changing|fitting|rebuild & dates_from|since|ever_since|from_the_day|problem_appeared|appeared|began|started|off_ever_since|right_after|straight_after|trouble|fault_since|after|from_then|been_low|been_wrong - even|primed|morning|started_up|started_it|before|fuel_pump|water_pump|no_link|cured|fixed|better|no_difference|still_low|made_no|injector|lift_pump|no_change|hours|miles|@distance|@hours|same_as_before",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "changed_after_knock": (
        "never|nothing|no|not|nobody + touched|hit|jacked|grounded|bumped|bottomed|clouted|struck + bottom|sump|pan|underneath|under|belly|engine|rock|oil_pan - inside|fell|parts|each_other|plug",
    ),
    "changed_after_other_work": (
        "nobody|no_one|nothing|never|no_work|no + touched|been_done|worked_on|done|work|disturbed|repaired|changed|apart & year|years|before|months|engine|it|since_new|started - sump|oil_changed|checked|pump|sender|jack|bottom",
    ),
    "changed_with_grade": (
        "grade|viscosity|thickness|weight|brand & no_difference|makes_no|made_no|no_link|same_with|same_on|regardless|nothing_to_do|whichever|any_oil|no_odds|no_change & oil|grade|thick|thin|reading|same|it|pressure|any - new_filter|pump",
    ),
    "changed_with_oil_change": (
        "before|long_before|already & oil_service|oil_change|last_service|oil_and_filter|change_of_oil & doing_this|did_this|was_doing|did_it|happened|like_this|there|doing_it|started - start|after",
        "long_before|well_before|before|months_before|weeks_before|nothing_to_do|not_since|no_link|unconnected|already & oil_change|oil_service|service|oil_and_filter|filter_change|oil_was_changed|last_oil & doing|did|doing_it|started|it_was|happening|problem|there|like_this|was - start|changed_before|check",
    ),
    "low_from_first_start": (
        "after|following|since|from & rebuild|overhaul|rebuilt|refit|build & full_pressure|good_pressure|fine|was_right|held_full|held_good|strong|healthy|was_good|perfect|plenty|normal & first|initially|month|months|weeks|at_first|year|miles|while|beginning - no|not|never|low|weak",
    ),
    "changed_with_new_pump": (
        "pump & never|nobody|@not|no_link|long_before|before|hasnt & touched|opened|off|disturbed|changed|replaced|renewed & pump|started|it_was|already|doing|years - no_pressure|new_pump_made|primed",
    ),
}
