"""Strainer, suction pipe, sump and oil tank, put by people who describe the parts."""

from __future__ import annotations

from knowledge.lexicon.described.words import BLOCKED, LOOSE, SCORED

#: "sieve" is spelled "strainer"
_NET = "strainer|screen|gauze|mesh|net|pickup|pick-up|wire_net|wire_basket|sucking_mouth"
_PIPE = "suction_pipe|suction_tube|sucking_pipe|pickup_pipe|pickup_tube|pipe_with_the_net|strainer_pipe|pipe_the_pump_sucks|goes_to_the_pickup|sucking_tube|intake_pipe|inlet_pipe|oil_suction"
_FLOOR = "bottom|floor|sump|pan|bowl|base"
_SHIELD = "windage_tray|tin_shield|tin_sheet|thin_sheet|plate_under|sheet_under|tray_under|shield_below|sheet_below|sheet_hanging|plate_below|baffle_plate_under|shield_under|steel_tray"
_CRANK = "crank|crankshaft|rods|rod|big_ends|counterweights|counterweight|webs|connecting_rods|con_rods|throws|moving_parts|something_swung|moving"
_ELSE = "fuel|air_filter|turbo|banjo|windscreen|radiator|vvt|solenoid|carb|petrol|diesel|filler|breather"
_TANK = "oil_tank|reservoir|oil_reservoir|tank"
#: the finding, by words that stand together when it is there
THERE: dict[str, tuple[str, ...]] = {
    "cloth_on_screen": (
        f"{_NET}|inlet + textile|kitchen_roll|rag|rags|cloth|towel|paper_towel|fabric|tissue|wiper|blue_roll|handkerchief|sponge|glove|sock|cotton|lint|toilet_paper|duster - {_ELSE}|gasket|cleaned|wiped",
    ),
    "ice_at_screen": (
        f"{_NET} + iced|ice|frozen|froze|icy|slush|frost + up|over|solid|shut|in|on|round|at|of|to - {_ELSE}|morning|thaw",
        f"water & {_NET}|sump|pan & turned_solid|frozen|froze|ice|solid_lump_of_ice - {_ELSE}|morning",
    ),
    "foreign_material_on_screen": (
        f"{_NET} + straw|grass|seed|seeds|fod|never_belonged|not_belong|@not_belong|foreign|leaves|insects|feathers|wood|sawdust|hair|fluff|acorn|shells|twigs|weed|husks|bristles|wool|nest - {_ELSE}|no|nothing",
    ),
    "plastic_on_screen": (
        f"fibre|fiber|fibrous|phenolic|nylon|plastic + timing_gear|timing_gears|cam_gear|chain_guide|teeth|tensioner_shoe|guide|guides + {_NET}|sump|pan|bottom - {_ELSE}|no|not|still_fitted|engine_has",
        f"plastic|nylon|bakelite|fibre_teeth|broken_buttons|phenolic|celeron|tufnol & {_NET}|sump|pan|bowl|bottom_bowl & bits|chips|pieces|teeth|crumbs|fragments|lumps|slivers|shards - {_ELSE}|no|not|oil_line|bag",
        "broken_buttons|brown_chips|black_chips|hard_brown_bits & bowl|bottom|sump|pan|strainer & toothed_wheel|gear|chain_guide|wheel - no|not",
    ),
    "sealer_in_sump": (
        "goo|silicone|rtv|sealant|sealer|jointing|rubbery|rubber + hung|hangs|hanging|dangling|squeezed_inward|inside|loose|crumbs|beads|strings|worms|blobs|ribbons + sump|pan|oil_tray|inside|rail|oilpan - strainer|screen|pickup|gauze|no|not|outside|mesh|filter|black_goo",
    ),
    "sealer_on_screen": (
        f"{_NET} + silicone|silicon|rtv|sealant|sealer|goo|goop|rubbery|rubber|instant_gasket|jointing_compound|blue_stuff|orange_stuff|gasket_goo + block|blocked|blocks|pieces|strings|crumbs|bits|worms|stuck|caught|on|in|over|covered - {_ELSE}|black_goo|cut|seal|pipe|ring|oring|tube|hanging",
    ),
    "gasket_on_screen": (
        "cork|fibre|fiber|paper|old_gasket|bits_of_gasket|gasket_material|gasket_paper + gasket|joint|screen|strainer + strainer|screen|gauze|pickup|mesh|net - no|not|towel|kitchen|seal|missing|between|coating|clean",
        f"{_NET} + cork|gasket|paper|papery|fibre|fibres|fiber|joint + crumbs|slivers|shreds|bits|scraps|pieces|flakes|strips|chunks|all_over|torn - {_ELSE}|no|not|towel|kitchen|coating|rubber_ring|clean_towel",
        "papery|cork|fibrous|gasket + slivers|crumbs|flakes|shreds|scraps|strips + net|strainer|screen|gauze|pickup|mesh - no|not|fuel",
    ),
    "paste_on_screen": (
        f"{_NET} + paste|jelly|grease|vaseline|assembly_lube|assembly|gel|build_lube|petroleum_jelly|lard|red_grease|packing_grease + blocked|coated|plugged|stuffed|clogged|covered|choked|in|on|with|over|full|build|like - {_ELSE}|no|not|black|tar|brown",
    ),
    "sludge_on_screen": (
        f"{_NET} + muck|sludge|black_mayonnaise|tar|treacle|gunk|gunge|black_stuff|coke|carbon|black_jelly|cake|crud|mud|black_slime|goo|black_grease|molasses + all_over|plastered|covered|on|in|over|with|of|full|thick|caked|black|coated - {_ELSE}|silicone|sealer|orange|blue|red",
    ),
    "varnish_on_screen": (
        f"{_NET} + lacquer|varnish|varnished|tea_coloured|brown_skin|brown_film|shellac|amber|brown_coating|toffee|skin|glaze|gum|brown_coat - {_ELSE}|no|not|black",
    ),
    "screen_torn": (
        f"{_NET} + hole|holes|tear|rip|slit|gash + thumb|finger|pencil|size|big|large|pea|coin|through - {_ELSE}|no|not|bolt|pipe|tube|holes_blocked|pattern|every|blocked|clogged|film|closed|over_the_holes|mesh_holes|meshes",
        f"{_NET} + big_hole|hole_in|torn|split|ripped|came_off_its|off_its_ring|off_its_frame|burst|slit|tear|holes_in|broken|broke|rip|come_away|parted_from|frayed + {_NET}|strainer|side|ring|frame|off|wire|down|middle|open|is|has|was - {_ELSE}|no|not|bolt|bracket|pipe|tube|to_pan|braze|bolts|fell|seal",
    ),
    "screen_bypass_open": (
        f"flap|disc|bypass|by-pass|relief_flap|spring_plate|trap|valve + {_NET} + open|off_its_seat|standing|stuck|jammed|not_closing|wont_close|lifted|sprung|propped - {_ELSE}|baffle|pan_door|not|filter_head|shut|closed",
    ),
    "screen_crushed": (
        f"{_NET} + pressed|pressed_in|flattened|squashed|crushed|stepped|stood_on|sucked_in|caved|collapsed|dented|trodden|@not_round|no_more_round|imploded|concave|mashed|folded + {_NET}|in|together|flat|round|was|is|like|sump|at - {_ELSE}|no|not|kept|floor|pan_was|seal|ring",
    ),
    "metal_past_the_screen": (
        f"metal|chips|filings|shavings|pieces|swarf|bits|slivers + behind|past|got_by|beyond|above|pump_side|downstream|upstream|wrong_side + {_NET}|pump_side|mesh - {_ELSE}|no|not|nothing|none",
        f"{_PIPE}|pipe_to_pump|pickup_tube|the_pipe & metal|filings|chips|shavings|swarf & past|behind|got_by|fell_out|should_have_stopped|inside_the_tube|up_in - {_ELSE}|no|not|nothing|none",
    ),
    "pickup_tube_rocks": (
        f"pickup|pick-up|{_PIPE} + wiggle|wiggles|wobble|rock|swivel|twist|move|turn|spin|waggle|shake|jiggle + by_hand|my_hand|hand|fingers|easily|side_to_side|about|freely - {_ELSE}|no|not|bolt|bolts|bracket|screw|tight|tank|nut|union|hose|spindle|shaft|gap|distributor|coil|sensor",
        f"pickup|pick-up|{_PIPE}|pipe_with + pump|pump_end|socket|joint + {LOOSE}|twist|twists|swivels|turns - {_ELSE}|no|not|bolt|bolts|bracket|screw|tight|wont|tank|nut|union|hose|spindle|shaft|gap",
    ),
    "pickup_fixing_loose": (
        f"screw|bolt|bolts|screws|nut|nuts|bracket|strap|stay|clip|brace + {_NET}|{_PIPE} + {LOOSE}|hanging|by_a_thread|missing|gone|broken|cracked|snapped|fell|stripped|lost|backed - {_ELSE}|no|not|tight|removed|took|undid|torqued|union|flare|flare_nut",
    ),
    "pickup_gap_too_small": (
        f"{_NET}|suction_mouth|sucking_mouth|it + {_FLOOR} + hardly_room|barely|so_near|too_near|sheet_of_card|no_room|touching|hardly_any_room|paper_thin|credit_card|sitting_on|hard_on|hard_against|jammed_against|a_hair|resting_on|no_gap|cant_get_under|sixteenth|starved_of_room - {_ELSE}|not|correct|barely_covers|oil_barely|debris|level|mark|lying|fell|covers|blocked|stick|metal",
        f"{_NET}|sucking_mouth & hardly_room|no_room|so_near|too_near|too_close|cant_get_under|sixteenth_off & {_FLOOR} - {_ELSE}|not|correct|level",
    ),
    "pickup_gap_too_large": (
        f"{_NET} + inch_and|two_inches|inches|an_inch|good_inch|full_inch|over_an_inch|3_inches|2_inches + off|above|from|clear|short_of + {_FLOOR} - {_ELSE}|half_an_inch|quarter|three_eighths|correct|right_height|half_inch|not|level|oil_level|wide|across|long|hole|lying|dent",
        f"{_NET} + {_FLOOR} + inch|inches|over_an_inch|finger_widths|two_fingers|hand_width|big_gap|huge_gap|gap + between|too|over|above|off|clear|from - not|correct|spec|quarter|half_an|3/8|three_eighths|right|no|small|tiny|little|touching|fell|mark|blocked|dent|dented|thou|mm|hardly|barely|no_gap|debris|oil_level|stick|level|pieces|bits|torn|hole",
        f"{_NET} + {_FLOOR} + too_high|way_too_high|well_short|stops_short|far_above|too_far|miles_off|high_up|short_of|hangs_high|inches_above|way_up|sucks_before|three_quarters|too_short - {_ELSE}|not|correct|level|short_of_oil|oil_too",
        f"pickup|pick-up|strainer & clay|plasticine|putty|feeler & too_high|too_far|way_too|high_in|inch|three_quarters & {_FLOOR} - not|correct|spot|right|perfect|3/8|quarter_inch",
    ),
    "baffle_missing_or_loose": (
        "surge_plate|dividing_sheet|plate_against|baffle|baffles|gates|trap_door|trap_doors|flaps|anti_surge|gate|slosh_plate|dividing_plate|bulkhead + sump|pan|bowl|oil|gates|hinge + loose|bent|broken|missing|not_there|gone|adrift|spot_welds|welds|wasnt_there|cut_out|stuck|came_off|rattling|cracked|absent|hanging|removed|torn - exhaust|heat|stays_behind|trapped|air|silencer|muffler|under_the_crank|under_crank|bypass|cooler|duct|air",
        "should_be|meant_to_be|supposed_to_be & dividing_sheet|baffle|gates|surge_plate|trap_doors & not_there|none|missing|wasnt_there|gone|nothing|isnt - exhaust|tray",
    ),
    "oil_trapped_in_sump": (
        f"oil + @not_get_past|@not_reach|@not_get_to|@not_flow|@not_run_to|@not_come_to + {_NET} - {_ELSE}|pump_gear|cold|thick|blocked|head|rockers|sludge|screen_was|level_low|gelled|low",
        f"oil|quart|litre|pint + stays|stay|lying|trapped|left|held|sits|remains|caught|stuck + one_side|one_half|one_end|behind|far_end|wrong_end|other_end|corner|front|rear|away & {_NET}|sump|pan|bulkhead - head|rocker|valley|cooler|filter|leak|sender|gasket|stick",
    ),
    "tray_rubbed": (
        f"{_CRANK}|connecting_rods|conrods|rod_bolts + scrape|scraping|scraped|touch|touching|hit|hitting|rub|rubbing|clip|clipping|kissed|kissing|strike|striking|struck + tray|tin_tray|windage|scraper|shield - no|not|never|clear|missing|oil_level",
        f"{_SHIELD} & {SCORED}|scrapes|scraped|contact_marks|polished|rub|rubbed|rubbing|bright_marks|shiny|touch|touches|touched|witness_marks|cut|hit|clipped|nicked & {_CRANK} - no|not|nothing|clear|missing|none|loose",
        f"{_CRANK} + hit|hits|hitting|clipped|clipping|scraped|touching|touched|catching|caught|rubbing + {_SHIELD} - no|not|nothing|clear|never",
    ),
    "tray_broken_or_missing": (
        f"{_SHIELD} + cracked|loose|missing|none|not_there|gone|adrift|come_adrift|broken|off_its_bolts|split|absent|hanging_off|fallen|torn|unbolted|left_out|rattles|theres_none - not_cracked|scratched|polished|scored|old|new|grooves|original",
        f"{_SHIELD} & none_on_mine|theres_none|not_there|none|missing|must_be_one|should_be|belongs|come_adrift - scratched|polished|scored|grooves|bright|original",
    ),
    "tray_very_old": (
        f"{_SHIELD} + original|old|year-old|since_the_engine|years_old|decades|sixties|seventies|fifties|fifty-year-old|from_new|same_old|reused|re-used|60s|70s|50s|ancient|vintage|as_old_as + back|reused|refitted|put|used|again|been_there|original|old|kept|sixties|60s|made|came - new_tray|brand_new|replaced|not",
        f"{_SHIELD} & fifty-year-old|since_the_engine_was_made|in_the_sixties|original_60s|decades_old|from_the_60s|as_old_as_the_engine|original_to_the_engine|forty_years|fifty_years|sixty_years - new_tray|brand_new|replaced|not",
    ),
    "oil_line_at_crank": (
        f"stain|tide|tide_mark|tidemark|high-water|high_water|ring|rim|witness_mark|level_mark|line|brown_rim|mark + oil|brown|level|pan|sump + {_CRANK}|swing|spin|path + up|higher|within|reaches|above|right|in|where|into|touches|lowest|over - below|no|not|clear|under_the|bore|piston|seal|bearing|dipstick|stick|gasket|scored|line_to|feed",
        f"stain|tide|tidemark|high-water|high_water|brown_rim|witness_mark|oil_mark|oil_ring & {_CRANK} & up|higher|within|reaches|above|into|swing|spin - below|no|not|clear|piston|seal|bearing|dipstick|stick|gasket|scored",
    ),
    "returns_blocked": (
        f"return|returns|drain_passages|drainback|drain_back|drain_holes|go_back|runs_back|goes_back|drains_back|come_down|drain_hole|drain_passage + head|heads|valley|rocker|cover|cylinder|top|upstairs|valve_gallery + {BLOCKED}|dirt|sludge|gummed|packed|silted|full - no|not|clear|turbo|relief|tank|scavenge|fuel|sump_plug",
    ),
    "pickup_tube_crack_seen": (
        f"{_PIPE}|pipe_that_goes|pump_sucks_through|sucks_through|pickup + split|crack|hairline|cracked|pinhole|hole|fracture|braze_gap|braze|weld|rust_hole|chafed_through|perforated - {_ELSE}|no|not|bracket|ring|seal|oring|gasket|mesh|net|bubbles|beads|bolt|stay|air_tested|test|crankcase",
    ),
    "suction_seal_cut_or_missing": (
        f"gasket|rubber_ring|ring|seal|oring|o-ring|o_ring|rubber|joint|packing + pickup|strainer|{_PIPE}|suction|pickup_flange|pick-up + cut|hard|square|missing|no|nobody|flat|pinched|torn|wrong|nicked|perished|forgot|forgotten|left_out|shrunk|brittle|without|twisted|split|rolled|crushed|never|old|damaged|rotten|chewed|deformed|set - {_ELSE}|new|fresh|crumbs|bits|shreds|pieces|piston|slivers|pump_cover|bubbles",
    ),
    "bubbles_in_joint_test": (
        f"{_PIPE}|pickup|suction|pick-up|tube & solvent|paraffin|bucket|under_fluid|immersion|submerged|dunked|kerosene|water_bath|air_test|air_behind|tub_of|petrol|thinners & bubbles|bubbled|beads|fizzes|pearls|leak_at|air_pearls|streams_of_air|bubble - no_bubbles|not_a|without|none|fuel_tank|not_a_single|no_bubble",
        "immersion_test|bubble_test|air_test|dunk_test & leak|leaks|bubbles|failed|fizzes & suction|pickup|tube|pipe|flange - no|not|head|block|cooler|radiator",
    ),
    "pickup_bent": (
        f"{_PIPE}|pipe_with_the_net|pickup|pick-up + crooked|bent|@not_straight|not_straight|no_longer_in_line|out_of_line|skewed|twisted|pushed_over|knocked_over|askew|skew|kinked|lopsided|knocked_sideways|pushed_sideways|sideways|wonky|cockeyed|leaning|deformed|tilted|buckled|cocked - {_ELSE}|no|@not_bent|bolt|hose",
    ),
    "gasket_coating_shed": (
        "gasket|joint|mls + coating|facing|skin|paint|surface|rubber_facing|viton + peeling|flakes|shedding|sheds|come_away|came_away|shed|flaking|scales|peeled|coming_off|came_off|delaminated|delaminating|lifting|blistered - no|not|crank|tappet|sump_paint|kept|bearing",
        "flakes|peeled_paint|scales|bits_like_paint|black_skin & gasket|joint|head_gasket & sump|pan|pickup|screen|oil - no|not|bearing|shell|metal|silver|copper|cork|paper",
    ),
    "water_in_sump": (
        "water|coolant|antifreeze + sump|pan|drain_bung|drain_plug|bung|plug + in|present|before_oil|first|came|lying|lay|poured|bottom|ran|under|pint|litre - no|not|pump|radiator|block_drain|outside|on_the_floor|hose|jacket|drained_the_coolant|head_gasket|turned_solid|none|frozen|ice",
    ),
    "sump_dented": (
        "sump|pan|oil_tray|oil_pan|bottom + knocked|caved|pushed|stoved|bashed|dinged|squashed|kicked|shoved|punched|hit + in|inwards|inward|up|upwards|upward + stone|rock|jack|floor_jack|kerb|bottom|ramp|by|something|somebody|log|stump|trailer - no|not|nothing|flat|screen|strainer|gasket|piston",
    ),
    "sealer_squeezed_out": (
        "goo|silicone|rtv|sealant|sealer|rubber_stuff|rubbery|gasket_maker|goop|bead|half_a_tube|whole_tube|instant_gasket|jointing + bulging|pushed_out|toothpaste|stood_proud|proud|squeezed|squeezed_out|squished|squashed_out|oozing|oozed|sticking_out|hanging_out|bulges|blobs|fat_bead|gobs|too_much|gobbed|slathered|everywhere|all_along + joint|joints|flange|cover|sump|castings|round|along|out|bottom|pan|rail|edge|seam|two - no|not|strainer|screen|pickup|windscreen|inside|neat|thin|inward|filter",
    ),
    "suction_hose_flattens": (
        "hose|pipe|line + intake_side|suction|feed|tank|inlet|pump|sucking|supply + pinch|pinches|collapse|collapses|flat|flattens|closed|sucked_in|soft|kinked|squashes|squeezes|folds|caves|shrinks|goes_flat|sucks_flat|necks - gauge|turbo|fuel|radiator|brake|no|not|stays|round|new|cooler|air_intake|heater|chafed|split|scavenge",
    ),
    "suction_union_loose": (
        "pipe|hose|nut|union|clamp|clip|line|connection|fitting + tank|before_pump|to_the_pump|joins_the_pump|suction|pump_inlet|bringing_oil|feeding_the_pump|feed_side|inlet|oil_to_the_pump + slipped|loose|off|not_tight|turn|undone|slack|open|came|fell|popped|finger|adrift|unscrewed|wiggle|detached|backed|backed_off|slackened|worked_loose - fuel|gauge|turbo|no|@not_loose|tight_and|sound|cooler|scavenge|return|shut|tap|valve|oil_came|water",
    ),
    "tank_still_full": (
        f"{_TANK} & pressure|gauge|clock & full|@not_dropped|hasnt_dropped|not_gone_down|up_to_the_neck|same_as_ever|brimming|to_the_brim|still_up|topped|untouched|hasnt_gone_down|@not_gone_down|no_lower|same_level|hasnt_moved|full_as_ever|up_to_the_mark|at_the_mark|full_mark|right_up|plenty_in|still_holds|chock_full & gone|zero|none|no|nought|lost|nothing|dropped|lamp - fuel|petrol|header|radiator|empty|nearly_empty|water|filled|went_down",
    ),
    "oil_slow_to_return": (
        "shut_down_after|just_stopped|when_i_stop|pull_over|pulled_over|after_a_long|after_a_hard|straight_off|straight_after|right_after|immediately|just_after|after_running|off_the_motorway|after_a_fast|after_hard|as_soon_as & stick|dipstick|level|dip|check|checked|checking|reads|shows & low|lower|barely_wet|little|empty|hardly|down|short|below|below_min|under_min|minimum|nothing_on|dry & later|cup_of_tea|half_an_hour|minutes|standing|hour_on|hour_later|recovers|wait|after_it_sits|sits|sat|settled|settles|rested|drained_back|drains_back|sitting|next_morning|coffee|overnight|lunch & full|climbed|max|at_full|recovers|normal|up|reads_full|right|rises|back|fine - burning|leak|topped|added|fuel|never_recovers",
    ),
    "pressure_back_after_thaw": (
        "frozen|icy|frost|sub-zero|thawed|thaw|freezing|below_zero|minus|ice & warmed|heater|fan_heater|sun|thawed|thaw|warm_shed|blanket|hot_water|heat|indoors|warmed_through|melted|warmed_up & restored|normal|rose|back|returned|came_up|fine|right|good|pressure_again - not|still_gone|no|never|still|made_no|coolant|without",
    ),
    "debris_seen_before": (
        "last_service|previous_service|earlier|already|a_while_back|last_year|before_this|at_a_service|last_oil_change|prior_service|months_ago|some_time_ago|previous_oil_change|back_in_the_spring|service_before & glitter|metal|sparkle|sparkles|slivers|plastic|swarf|fluff|junk|pieces|bits|scraps|fibres|strange|debris|rubbish|crumbs|foreign|shreds|lumps|stuff_in & strainer|filter|screen|gauze|mesh|sump_screen - no|not|clean|never|nothing|fuel|replaced|air",
    ),
    "something_missed_after_work": (
        "plug|rag|cap|washer|cover|nut|bolt|circlip|towel|cloth|bung|blanking_plug|small_cover|clip|screw + not_accounted|short|fewer|lost|@not_find|nobody_find|missing|one_short|cant_account|never_turned_up|couldnt_find|never_found|unaccounted|gone_astray|vanished|disappeared + job|tidying|assembly|repair|after|tray|work|finished|done|afterwards|rebuild|started|dropped|closed_up|buttoned|reassembly|putting|building|assembling|put_together - spark|drain_plug|filler|gallery|welsh|bearing|rocker|fell_off|oil_cap|pressure|relief|screws_loose|oil|sump_plug|drain_plug|dropped_out|road",
        "one|a|plug|washer|rag|nut|bolt|circlip + fewer|short|missing|lost & tidying_up|job_was_done|after_repair|after_assembly|counted|packing_up|putting_the_tools|cleaning_up|when_i_finished - pressure|spark|oil_short|level",
    ),
    "oil_valve_found_shut": (
        "tap|cock|valve|shutoff|shut-off|ball_valve|gate_valve|stopcock|petcock + oil_pipe|oil_line|oil_tank|oil_feed|oil_supply|suction_line|tank_outlet|oil_hose + closed|shut|turned_off|left_off - fuel|relief|bypass|check|not|half|after|drain|i_closed|i_shut|we_closed|leak|water|gauge_cock|solenoid|opened_it_again|before|pulling|to_stop|so_that|to_change",
    ),
    "pickup_witness_mark": (
        f"{_FLOOR} + spot|print|imprint|mark|dent|ring|circle|scuff|shiny_patch|bright_patch|rub_mark + {_NET} + touched|touching|touches|hit|rubbed|rubbing|sat|bearing|bottomed|struck|resting - {_ELSE}|no|not|oil_mark|level",
    ),
}
#: the finding, by words that stand together when it is not there
ABSENT: dict[str, tuple[str, ...]] = {
    "screen_bypass_open": (
        "flap|bypass|disc + strainer|screen|pickup + shut|closed|seated|on_its_seat - not|@not_shut|open|filter",
    ),
    "varnish_on_screen": (
        "no_varnish|no_lacquer|no_brown|wire_bright|mesh_bright|bright_wire & mesh|wire|screen|strainer|gauze - but|fuel",
    ),
    "metal_past_the_screen": (
        "nothing|no_metal|no_bits|no_pieces + behind|past|pump_side + mesh|screen|strainer|gauze - but|fuel",
    ),
    "tray_rubbed": (
        f"no_rub|no_marks|no_contact|nothing_touched|no_scrapes|unmarked + {_SHIELD} - but",
    ),
    "tray_broken_or_missing": (
        "windage_tray|tray_under_the_crank + ok|sound|in_place|intact|uncracked|whole|fine|all_there|bolted_up - not|but|cracked|missing|rubbed|polished",
        f"{_SHIELD} + in_place|whole|not_cracked|tight|sound|intact - not_tight|not_in_place|but|loose",
    ),
    "pickup_bent": (
        f"pickup|pick-up|{_PIPE} + straight|not_bent|in_line - not_straight|@not_straight|but|no_longer|never|straight_to|straight_after|fell",
    ),
    "gasket_coating_shed": (
        "gasket|gaskets + coating + kept|intact|all_there|still_on|sound|no_flakes - not|but",
    ),
    "something_missed_after_work": (
        "every|all|everything + rag|rags|cap|plug|part|parts + accounted|counted|found_again|back_in_the_box - not|but|except|gallery|plugs_accounted",
    ),
    "cloth_on_screen": (
        f"no_rag|no_rags|no_cloth|no_paper|no_towel|no_lint|@not_rag|@not_cloth + {_NET} - {_ELSE}",
    ),
    "sludge_on_screen": (
        f"no_sludge|no_muck|no_black_muck|no_tar|no_gunk|no_carbon|@not_sludge + {_NET} - {_ELSE}",
    ),
    "sealer_on_screen": (
        f"no_silicone|no_sealer|no_sealant|no_rtv|no_rubber|no_goo + {_NET} - {_ELSE}",
    ),
    "foreign_material_on_screen": (
        f"nothing|nothing_foreign + {_NET} + belong|foreign|should_not|shouldnt|belongs - {_ELSE}",
    ),
    "screen_torn": (
        f"{_NET} + intact|whole|no_tears|no_holes|untorn|unbroken|no_rips|no_tear|sound - {_ELSE}|not|but|isnt|gap",
    ),
    "screen_crushed": (
        f"{_NET} + kept_its_shape|its_shape|nothing_squashed|not_squashed|not_crushed|still_round|in_shape - {_ELSE}|but|lost_its|out_of",
    ),
    "pickup_tube_rocks": (
        f"pickup|pick-up|{_PIPE} + tight_as|wont_budge|solid_in|firm|rock_solid|@not_move|@not_budge|tight_in|dead_tight - loose|but|bolts_not",
    ),
    "pickup_fell_off": (
        "pickup|pick-up|strainer + still_firmly|where_it_belongs|still_attached|still_on|firmly|in_its_place|still_in_place|still_bolted - not_where|loose|but|mark|plastic",
    ),
    "baffle_missing_or_loose": (
        "baffles|baffle|trap_doors|doors|surge_plate + sump|pan|all + there_and_working|where_they_should|where_it_should|where_they_belong|still_welded|solid|secure|firmly_fixed|all_there|in_place|all_in_place|sound|swing|intact - not|but|missing|loose|exhaust",
    ),
    "oil_line_at_crank": (
        f"tide|tide_mark|stain|ring|oil_mark|witness_mark|line & below|under|clear & {_CRANK}|swing & sump|pan|oil|block - not_below|above|scored|piston",
    ),
    "bubbles_in_joint_test": (
        "no_bubbles|no_bubble|not_a_bubble|not_a_single_bubble|not_one_bubble|without_bubbles|no_air & pickup|tube|pipe|suction & solvent|test|tested|paraffin|bucket - cooler|head|block",
    ),
    "water_in_sump": (
        "no_water|no_coolant|@not_water|@not_coolant + sump|pan|drain - pump|system|radiator|lost|left",
    ),
    "sump_dented": (
        "sump|pan|oil_pan|bottom + flat|nothing_has_hit|never_been_hit|undented|nothing_hit|straight - not|but|battery|tyre|dented|pickup|out",
    ),
    "suction_hose_flattens": (
        "hose|pipe|line + suction|feed|pump|tank|inlet + stays_round|stay_round|keeps_its_shape|holds_its_shape|stays_open|stays_firm - not|but|fuel|brake",
    ),
    "tank_still_full": (
        f"{_TANK} + nearly_empty|almost_empty|empty|run_dry|dry|bone_dry|well_down + pressure|when|gauge - fuel|petrol|not|running|header|scavenge|runs|crankcase",
    ),
    "tray_very_old": (
        f"{_SHIELD} + brand_new|new_one|replaced_with_new|new_tray - not_new|not_replaced|old_one_again",
    ),
    "pressure_back_after_thaw": (
        "thawed|thaw|warmed_through|defrosted & still_gone|still_no|still_nothing|still_zero|no_difference|made_no|no_better|pressure_was_still & pressure|gauge|needle|difference|it - radiator|coolant",
    ),
    "pickup_tube_crack_seen": (
        f"no_crack|no_cracks|uncracked|no_pinholes|no_pinhole|no_splits|no_split|@not_cracked|@not_split + {_PIPE}|pickup|suction_tube|tube - but|head|block|filter",
    ),
    "returns_blocked": (
        "drain_holes|return_holes|drainbacks|drainback_holes|drain_back_holes|drainback_passages|drain_passages|oil_returns|returns + open|clear|clean|unblocked|free|wide_open|unobstructed - not|but|turbo|relief|tank|half|partly|sump|plug|until|scavenge",
    ),
    "oil_valve_found_shut": (
        "oil_tap|oil_cock|oil_valve|tap|shutoff|stopcock|ball_valve + oil|tank|oil_tank|oil_line + open|wide_open|fully_open|turned_on|opened - fuel|not|half|never|until|was_closed|relief|shut|drain|gauge",
    ),
}
