"""Words for oil that is used up, and for a level that nobody looked at."""

from __future__ import annotations

from knowledge.lexicon.words.names import STICK

_LEVEL = "level|levels|dipstick|=stick"
_PER = "a|an|per|every|each|/"
_SHIFT_OR_TRIP = (
    "day|week|hour|hr|shift|trip|tank|month|fill|voyage|run|outing|@hours|@days|@distance"
)
_SPAN = "day|week|month|trip|tank|fill|run|outing|@hours|@days|@distance|@weeks"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "not_refilled": (
        "forgot|forgotten|forgetting|failed|neglected to put|fill|refill|add|pour any|the|it|with|new|fresh? .. oil",
        "@not put|filled|refilled|poured|added any|the|enough? oil back|in",
        "started|ran|run|driven|drove .. without oil",
        "no oil .. put|poured|filled|added in|back",
        "underfilled|under-filled",
        "short filled",
    ),
    "too_much_poured_in": (
        "put|poured|added|tipped|chucked|threw|dumped|poured-in|filled another|an-extra|extra|a-further|in? @volume|@number|four|five|three|six|two more|extra|"
        "another|too-many? litres|quarts|liters|pints|gallon|oil? more|extra|on-top|too-many in|into|on|of",
        "filled|poured|put|added in|up? .. twice|too much",
        "put|poured|added|adding|filled @volume too|over|extra|above much|many|full?",
        "overfilled at|during|by the? .. change|service|dealer|garage|shop",
        "habit|habitually|always of? adding|topping|overfilling",
    ),
    "oil_used_fast": (
        "@time|week|weeks|month|months|day|days|tank|@distance later|after|on|gone down|low|short a|another|by|about|half? @volume|quart|litre|liter|pint "
        "again?",
        "down|low|short a|another|by|about|half? @volume|quart|litre|liter|pint again|already",
        "a|another|every quart|litre|liter|pint down|low|gone again|already",
        "where|wheres is|s|does|has? it|the-oil|all-the-oil? going|gone|go|disappearing",
        "heavy|high|excessive|massive|terrible|huge|increased oil use|consumption|usage|burning",
        "goes|going|gone|gets|getting through oil|lot|lots|@volume",
        "uses|using|burns|burning|drinks|consumes|needs|goes|drank|used|burned|burnt through|about|around|over|up? "
        "@volume of|oil? of|oil? every|per|a|in|each|for",
        "@volume of? oil? every|per|each @distance|@time|tank|week|hour|trip|fill|month|day",
        "oil consumption has|is|was|gone|went|up|very|quite? high|up|heavy|excessive|bad|increased|rose",
        "topping|topped|top it? up all|constantly|every|weekly|daily|regularly|often|between",
        "half|quart|litre|pint gone? in|within @time|@distance",
        "@volume of? oil? in|within @distance",
        "uses|using|burns|burning|drinks|drinking|consumes|consuming|eats|eating|guzzles|used lots|some|a|plenty|too lot|much|of? of? oil",
        "uses|burns|burning|drinks|consumes|consuming much|far|a|lot|more? more? oil",
        "topping up constantly|all|always|every",
        "always|constantly|forever topping up",
        "uses|using|burns|burning|drinks|used a|about? @volume an|a|every|each|per|in hour|day|week|trip|tank|run|@time|@distance",
        "oil? consumption had|has|was|is? risen|rose|increased|up|excessive|heavy|high|gone",
        "another|further @volume in|since|already|gone|needed|needs|again",
        "needs|takes|drinks|swallows|gets|wants about|around|nearly|over|a|another? @volume every|each|a|per day|week|shift|trip|run|fill|tank|start|weekend|ride|@hours|hour",
        f"uses|using|used|burns|burning|drinks|takes|needs|needing|topped|topping|adding|added|consumes|consuming|losing|loses "
        f"about|up|over|nearly|some|roughly? @volume of? oil? {_PER} {_SHIFT_OR_TRIP}",
        "uses|using|used|burns|burning|drinks|takes|needs|consumes|consuming|losing|loses about|up|over|nearly|some|roughly? @volume of? oil? @days|@hours|@time",
        "topped|topping|adding|added|needs|takes up? @volume daily|weekly|nightly|hourly",
        f"@volume of? oil? added|topped|put|used in|up? {_PER} {_SHIFT_OR_TRIP}",
        f"jug|can|drum|tin|bottle|gallon|litre|liter|quart of oil|@grade|engine oil? {_PER} {_SHIFT_OR_TRIP}",
        f"topped|top|topping up|off .. @volume|litre|liter|quart|pint {_PER} {_SPAN}",
        "topped|top|topping|add|adding|adds|put|needs|takes|drinks|burns|loses|using|uses up|off|in? about|around|nearly|over|a|half|at-least? @volume|litre|liter|quart|pint oil|in? @weeks|@days|@months|@hours",
        "@volume of? oil? @weeks|@days|@months",
        f"add|adding|adds|put|needs|takes|drinks|burns|loses|using|uses about|around|nearly|over|a|half|at-least? @volume|litre|liter|quart|pint oil|in? {_PER} {_SPAN}",
        f"@volume|litre|liter|quart|pint of? oil? {_PER} {_SPAN}",
    ),
    "oil_not_checked_long": (
        "oil|level|dipstick|nobody|never|not|hadnt|havent|didnt had|has|was|were|been|ever? not|never|been? checked|check|"
        "checking|dipped|looked the|its|my? oil|level|dipstick? for|in|since|some @time|ages|while|long|months|weeks|some|"
        "time|a|years",
        "oil @not checked|dipped|topped for|in|since|up|at|before",
        "forgot|forgotten|neglected|failed|never|rarely|seldom to? check|checks|checked|checking the|his|her|their|my? oil "
        "level?",
        "without checking the? oil level?",
        "never|rarely|seldom|not checks|check|checked|checking the|his|her|its? oil level|regularly?",
        "no preflight|check of oil",
    ),
    "level_falls_standing": (
        f"{_LEVEL}|oil drops|falls|drop|dropped|fell|goes|went down? overnight|standing|while stood|parked",
        "loses|lost|losing oil standing|overnight|parked|while",
        "dry|low|empty|down again within|after|in minutes|topping|filling|@minutes|an|no",
    ),
    "dipstick_not_its_own": (
        "dipstick|stick from|off|for a|another|different|wrong other|different|another|car|engine|model?",
        "wrong|aftermarket|different|another|replacement|later|generic dipstick tube?",
        "dipstick|stick|tube looks|is|was|seems|found too? shorter|longer|different than|from|to the? port|starboard|other|original|sister|one",
        "wrong|incorrect|another|different dipstick",
        "wrong|incorrect|another|different stick|tube fitted|in|for|found|from",
        "@length shorter|longer than the? right|proper|correct|original|book dipstick|stick|one?",
        "dipstick|stick is|was @length too? short|long|shorter|longer",
    ),
    "feed_not_seen": (
        "oiler|oilers|lubricator|lubricators|drip|dripper|sight-feed|feed|sight-glass has|have|is|are|just? stopped|quit|ceased|not|isnt|no-longer dripping|feeding|working|flowing|passing|dripping-oil",
        "no drops|drip|drips|flow in|through|from|at the|its? sight|drip|oiler|lubricator glass|feed|cup?",
        "oiler|lubricator|drip|cup is|was|has|ran|run|gone clogged|blocked|empty|dry|stopped|plugged",
        "@not see|seeing|seen the|any? oil|splash|drops arrive|arriving|moving|coming|splashing|at? .. trough|sight|oiler|dipper|splash|glass",
    ),
    "wet_sumps": (
        "tank|it =empty|=emptied|=empties|=drained after|over|during|since standing|winter|storage|months|the-winter|sitting|lay-up|all|a the? winter|month|months?",
        "after|over|during|since standing|winter|storage|months|the-winter|sitting|lay-up .. tank is|was|now|all|nearly|found? =empty|=drained|=low",
        "tank is|was|found|nearly|almost|completely? nearly|almost|completely? empty|drained|low|dry and|with|, all? the? oil|sump|crankcase|crankcases|engine is|was|all|completely? full|flooded|in|brimming",
        "oil|tank|it drains|drained|bleeds|seeps|creeps|leaks|ends|siphons back|down|through|past|up? into|in|to|through the? sump|crankcase|crankcases|cases|pump .. overnight|standing|stood|week|weeks|parked|winter",
        "wet sumps|sumping|sumped|sump when|while|after|overnight|standing|badly|again",
        "wet-sumps|wet-sumping|wet-sumped|wetsumps|wetsumping",
        "tank|oil drains|drained|draining|drain|leaks|seeps|runs|ran|emptied|empties down|itself|back? into the? "
        "crankcase|sump|bottom|engine|cases",
        "=sumping|=sumped",
        "tank is|was|now|found|drains|drained|empties|emptied|goes|went empty|into|down|through|itself .. crankcase|sump|over|winter|stands|standing|stood|parked|night",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_not_checked_long": (
        "oil|level was|is|had|been? checked this|that|every|daily|weekly|regularly|yesterday|before|the morning|day|week|"
        "time|each?",
        "check|checks|checked|checking the|my|its? oil|level|dipstick religiously|regularly|weekly|daily|often|every|"
        "this|yesterday|each",
        "topped up @days|@weeks|yesterday|recently|last before|ago|earlier|week?",
        "check|checks|checked|checking the|my|its? oil|level|dipstick that|this|before|every|each|on morning|day|flight|start|the|week|trip|leaving|setting",
    ),
    "oil_used_fast": (
        "@not use|burn|drink|consume|using|burning|need any|a|drop|much? oil|topping",
        "uses|burns|drinks|needs|consumes no|zero oil",
        "uses|burns|drinks|consumes none|nothing",
        "@not use|burn|drink|consume any",
        "no|zero =oil consumption|use|usage|burning",
        "consumption|usage not|hasnt|has-not|@not|is|same|unchanged|normal changed|gone|risen|same|normal|unchanged|as|up?",
        "uses|used|burns|loses|using|burning|takes nothing|none|no-oil|hardly-any|zero|naff-all|zilch|not-a-drop|little between|from .. changes|services|"
        "change|service",
        "uses|burns|loses|using|consumes no|zero|hardly-any|little|next-to-no oil|drop",
        "no|zero|nil =oil consumption|usage|use between|at|that|to?",
        "level never|hardly|doesnt moves|move|drops|drop|changes|change between|from",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "oil_not_checked_long": (
        "never|@not|hasnt|hadnt|havent|nobody + check|checks|checked|dipped|looked_at + oil|level|dipstick|it + year|years|months|ages|long|weeks|ever|since|one|months_on_end|season - not_yet|havent_yet|yet|pressure|gauge",
        "level|oil|dipstick|stick + never|not|@not|nobody|last + looked|checked|dipped|check|looked_at + months|since|weeks|ever|long|years|months_before|purchase|owner|owned|neglected|never|months_ago|ages - yet|correct|good|fine|before_starting|pressure|gauge|gone_up|went_up|risen|higher|since_the_last|since_i_last|"
        "just|grade|i_have_not|i_havent|have_not|havent|leak|temperature",
        "never|nobody|no_one|seldom|@not + checked_the_oil|checked_the_level|dipped_it|dipped_the_oil|checks_the_oil|checking_the_oil|looked_at_the_dipstick|checks_the_level|checked_the_dipstick|checked_the_oil_level + "
        "never|nobody|one|owner|seldom|he|she|they",
        "oil_never|level_never|oil_seldom|level_seldom|@not + checked|dipped + since|purchase|ever|weeks|months|oil_never|level_never|owner|years - yet|i|we|gauge|pressure",
        "@not|never|unchecked|neglected|forgot|nobody + remember|look|looked|checked|unchecked|check|checking|dipped + oil|dipstick|level|it + last|months|ages|weeks|never|dipstick|since|ever|long|while|@longtime|@months - correct|good|full|fine|yet|pressure|gauge|temperature",
        "never|@not|hadnt|havent|hasnt + thought_to_check|dipped|checked|looked_at|pulled_the_dipstick + oil|it|level|stick|ages|months|since|weeks|spring - gauge|today|yet|pressure|sender|wiring",
        "never|hadnt|havent|@not|cant_remember + check|checked|checking|dipped|looked_at + oil|level|stick|dipstick - gauge|pressure|yet|today|i_have|when_i_checked",
        "never|nobody|no_one|@not & dipped|dipped_the_engine|looked_at_the_stick|look_at_the_stick|checked_the_oil|dipped_it & season|years|months|ages|never_knew|all_year|long|weeks - pressure",
    ),
    "too_much_poured_in": (
        "overfilled|over-filled|over_filled|overfull|poured_in_too|put_in_too|too_much_oil|put_too_much - not|no|rocker|top|heads|intentionally|trial|held|steady|cured|thin|fuel|petrol|gas|diesel|stinks|reeks|reeked|smells",
        "poured|put|tipped|added|filled|overfilled|chucked|dumped + too_much|far_too_much|double|twice|extra_gallon|over_the_mark|over_the_line|over_the_max + oil|it|in|mark - thick|drained_it|pressure",
        "poured|tipped|dumped|chucked|glugged|put_in & entire|all_of_it|double|twice|both|too_much|whole & jug|can|needed|half|holds|bottle|quarts|without_looking|capacity - not|@not|additive|exactly|drain|lost|none|filter|bit_too",
    ),
    "oil_used_fast": (
        "burns|burning|uses|using|drinks|drinking|guzzles|losing|goes_through|consumes|consuming|consumption|eats + quart|litre|liter|pint|oil|quarts|litres + tank|@distance|miles|every|hour|hours|lot|heavily|week|more|fast|now|day|like - no|not|none|doesnt|water|coolant|fuel|hardly|little|smoke|burning_oil|clutch|smell",
        "burning|burns|burned|uses|using|consumption|drinking|drinks|consumed|going_through|getting_through + oil|litre|quart|pint|litres|quarts + lot|heavily|heavy|high|every|day|daily|week|weekly|hour|miles|@distance|up|excessive|"
        "constant|constantly|tankful - smell|no|not|never|smoke|fuel|water|coolant|low|clutch|before|last|regular|normal|little|hardly|ago|once|just|yesterday|when",
        "topping_up|topping_it_up|topping|needs_oil|adding_oil + daily|weekly|every_day|every_week|every_trip|constantly|all_the_time|every_other|each_day|every_hour|between_runs - radiator|rad|coolant|water|header|expansion|antifreeze|washer|battery|tyres|fuel",
        "needs|wants|eats|eating|takes|gets_through|swallows|goes_through|going_through + litre|quart|pint|litres|quarts|oil + week|day|tank|@distance|fortnight|month|every|trip - change|fill|to_fill|seconds|capacity|to_bring|service|filter|sump_takes",
        "consumption|usage + shot|up|terrible|high|doubled|heavy|awful|rising|excessive|alarming - fuel|no|not|normal|low|water",
        "adding|add|put|putting|pour|top|topping|feed + quart|litre|pint|oil + every_week|every_other|every_fill|a_week|every_time|every_tank|every_few|per_tank|a_day|weekly|daily|always|constantly - change|coolant|water|once|radiator|always_put|always_used|always_run|always_had|always_add_a|same_oil",
        "oil_burner|burns_oil|burning_oil|always_topping|forever_topping|constantly_topping + it|up|an|its|oil|engine|out - water|radiator|coolant|no|not|smell|cabin|fuel|never",
        "uses|using|used|eats|burns|drinks|drinking|guzzles + loads|lots|tons|plenty|gallons|like_crazy|heavily|a_fair_bit|too_much + oil - no|not|gauge|new",
        "eats|drinks|guzzles + =oil - no|not",
        "burns|uses|drinks|eats|takes|consumes|using|burning|drinking + litre|litres|quart|quarts|pint|pints|gallon|@volume + a_day|a_week|every_day|every_week|a_tank|per_tank|a_trip|every_trip|an_hour|per_hour|a_month|every_fill - "
        "fuel|diesel|petrol|coolant|water|no|not|@not|never",
    ),
    "wet_sumps": (
        "tank|drysump|oil_tank & drains|empties|siphons|leaks|runs|drained|bleeds|creeps + crankcase|sump|engine|crankcases & stood|standing|sits|sitting|overnight|week|weeks|left|parked|stands|winter - running|at_speed|while_running|under_way",
        "wet_sumps|wet_sumping|wetsumps|wetsumping|wet_sump_after|sumped + tank|overnight|it|bike|engine|standing|after|week|always",
        "tank + filled|fills|emptied|drained|drains|empties + crankcase|sump|engine & parked|standing|overnight|stood|week|sitting - running|fuel|laps",
        "wet_sumps|wet-sumps + over|overnight|week|badly|standing|days|stood|between|parked",
        "oil_tank|tank|reservoir|oil_can|check_ball & standing|sat|sits|leave_it|stood|overnight|stand|leave|after_it_sat & crankcase|bottom_of_the_engine|motor|bottom_end|sump|into_the_engine & full|goes|runs|fills|let|empty|drains|creeps|down - running|holds|no|not|@not|fuel",
    ),
    "not_refilled": (
        "only_put|put + half|some|part|most + oil + back|in - up|quart|thicker",
        "forgot|forgotten|@not|never|without + refill|refilled|put_oil_back|put_the_oil_back|fill_it|filled_it|add_oil|put_any_oil|put_oil + oil|it|drained|after|back - light|topped|check",
        "only|just|barely & put_in|dumped_in|poured_in|refilled|fill|filled|went_in & of_the_five|wanted_four|it_wanted|it_takes|it_holds|it_needed|should_be|of_five|of_the_six|out_of - drained|pressure|more_than|exactly",
        "dispatched_dry|delivered_dry|never_filled|@not_refill|forgot_to_fill|never_refilled|no_fill|@not_allow_for_them|forgot_the_oil|never_put_oil & engine|oil|filter|cooler|change|rebuilt|change_the - pressure|primed",
    ),
    "dipstick_not_its_own": (
        "dipstick|stick|dipstick_tube + wrong|different|another|other|@not_original|@not_right|not_its_own + engine|one|car|model|length|from|for|tube - oil_level|grade",
        "dip_rod|dipstick|stick|dipstick_tube & another_motor|another_engine|different_engine|other_engine|different_pan|wrong_engine|old_stick|from_another|off_another|too_long_for|too_short_for|not_the_original|@not_seat - marks_right|bearing|popped",
    ),
    "feed_not_seen": (
        "sight_glass|sight_feed|drip_feed|oiler|top_end|up_to_the_rockers|cover_with_it_running & dry|nothing_flowing|no_oil|no_drops|no_flow|bone_dry|no_splash|no_drip|@not_drip & flowing|coming|dry|running|nothing|top|glass|oiler|rockers - level|tank",
    ),
    "level_falls_standing": (
        f"sitting_overnight|sat_at_the_dock|stand_her|stood|this_morning|overnight|sat_for|parked|standing & {STICK}|level|oil|full & half_gone|well_down|loses_a_quart|inch_down|gone_down|dropped|lower|quart_down|loses_a_litre|loses_a_pint - pressure|running|tank|fuel|same|battery|no",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_used_fast": (
        "never|@not|hardly + uses|used|burns|burnt|burned|consumes|loses + oil|drop|any - light|gauge|pressure|the_oil|used_to",
    ),
    "feed_not_seen": (
        "see_oil|oil_dribbling|oil_dripping|oil_splashing|oil_arriving|oil_flowing|watch_oil|oil_drips|oil_runs & rocker|rockers|cover_off|sight|glass|top_end|oiler - no|not|@not|bellhousing|outside|leak",
    ),
    "oil_not_checked_long": (
        "dipped|dipped_it|checked_the_oil|checked_it & this_morning|yesterday|every_day|daily|before_every|every_trip|every_morning|regularly - not|@not|never|pressure",
    ),
    "wet_sumps": (
        "oil_tank|tank|reservoir & holds|keeps|stays|same_level|still_full & standing|stood|week|overnight|sat|sitting - not|@not|fuel|running",
    ),
    "level_falls_standing": (
        f"stood|sat|week|overnight|standing & {STICK}|level & just_the_same|unchanged|no_lower|@not_drop|not_dropped|the_very_same|shows_the_same - pressure|tank|but",
    ),
    "not_refilled": (
        "refilled|filled & to_the_mark|full_amount|to_full|right_amount|full_capacity|book_amount - not|@not|never|above|over",
    ),
    "too_much_poured_in": (
        "measured_it_in|exactly_the_capacity|exact_amount|exactly_what_it_takes|exactly_the_amount|measured_out|exactly_what_the_book - not_reach|shows|disagrees|low|stick",
    ),
    "dipstick_not_its_own": (
        "dip_rod|dipstick|stick & its_own|belongs|right_one_for|correct_one|original_one & sump|tube|pan|engine - not|@not|another",
    ),
}
