"""Words for how pump and engine were primed, and what came of it."""

from __future__ import annotations

from knowledge.lexicon.words.names import CRANKED, DRILL, NO_OIL, SENDERS

_DRILL = "=drill|=drilled|drill-primed|electric_drill|pre-oiler|pre-oiling|pre-oiled|priming_tool"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "no_oil_when_cranked": (
        "pump|it wont|cant|cannot|doesnt|didnt|wouldnt|refuses get|to? to|it? prime|self-prime",
        "no oil from|at|out|comes|coming|came|flow|flowing .. filter|pump|housing|outlet|adapter|block",
        "cranked|cranking|spun .. filter off|out .. nothing|no|dry",
        "filter stays|stayed|still|came|remained empty|dry|bone-dry",
        "@not a? .. oil .. out|from of? the? pump|filter",
        "gallery|banjo|union|feed bolt|union|pipe? .. crank|cranked|cranking|spun|starter .. nothing|dry|not|zilch",
        "loosened|undid|cracked|slackened|opened the? .. banjo|gallery|union|feed .. nothing|not|dry",
        "oil? filter|inside|housing|outlet|it|still? was|is|still|stayed|bone? dry after .. cranking|cranked|starter",
        "dry after about? @minutes|@seconds|ages|plenty|lots of|on? the|of? cranking|starter",
        "cranked .. not|no a? drop|spot|drip|oil|sign of? oil? out|at|came|in",
    ),
    "drill_gives_none": (
        "drove|spun|turned|ran pump|it|shaft with|by a|the|my? drill ,? still|and? nothing|none|nil|no",
        "drill ,? still|and? nothing|none|nil",
        "drill .. no|zero|nothing|@not .. pressure|psi|oil|gauge|build",
        "primed|priming|spun .. drill .. nothing|zero|none",
        "drill @not .. pressure|build|prime|anything",
        "no|zero pressure with|using|by a|the? drill",
    ),
    "drill_gives_little": (
        "drill .. only|just|barely about? @pressure|@number",
        "only|just about? @pressure with|by|using a|the|hand? hand? drill",
        "drill .. low|little|weak|poor pressure",
        "drill =spins|=spun|=turns|=turned|=turning =free|=freely|=easy|=easily|=light",
        "drill never|@not really|even? =load|=loads|=loaded|=bog|=bogged|=bogs|=labour|=labor|=slow|=slowed|=strain up|down?",
        "no|without any|real|much? resistance|load|drag on|to|at|from the? drill|priming",
        "drill .. without|no any|much? load|resistance|drag|effort",
    ),
    "drill_gives_good": (
        "got|get|gives|gave|made|makes|had|shows? @pressure|@number on|with|from|off the|a? =drill",
        "drill =primer|=primes|=priming|=tool .. gives|gave|makes|made|shows|showed|got|gets @pressure|@number",
        "primed|priming|spun|spinning|spin|turned|drove with|by|using|on a|the|my? electric|cordless|big? drill ,|and|& the|my? gauge|pressure|needle =is|=was|=goes|=went|=comes|=came|=reads|=read|=shows|=showed|=got =to|=up|=at|=about? =about|=to? @pressure|@number",
        "=drill got|gives|gave|made|makes|had @pressure|@number",
        "@pressure|@number on|with|off the|a? =drill",
        "drill .. gives|gave|got|get|makes|made|shows|reads|good|plenty|builds|built good|plenty|full|of? pressure",
        "drill .. pressure came up|right",
        "drill .. oil|pressure .. rockers|everywhere|good|no problem",
        "good|plenty|full|great|strong pressure with|on|using|from the|a drill",
        "drill .. gauge rose",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "no_oil_when_cranked": (
        "oil comes|comes|came|coming|flows|flowing|pours|pouring|gushes|gushing|squirts|squirting|pumps|pumping|runs out? of|from|at? the? filter mount|mounting|boss|head|adapter|adaptor|housing|port|pad|place .. cranking|cranked|cranks|crank|spinning|spun|priming|prime|primed|drilling|drill|starter",
    ),
}
GROUPS: dict[str, tuple[str, ...]] = {
    "drill_gives_none": (
        f"{_DRILL} & no_pressure|nothing|zero|@not_build|not_a_flicker|no_reading|none - still|hole|bit|out_of|no_problem",
        f"{DRILL} & nothing|no_pressure|@not_move|never_came_off|no_reading|=zero|never_moved|no_pressure_whatever|stayed_on_the_peg|not_a_flicker - barely|little|some|good|hole|bit_of",
    ),
    "drill_gives_little": (
        f"{_DRILL} & only_@pressure|only_@number|only_make|only_makes|only_gets|barely|little|low|@not_much|struggles|only_5 - hole|hardly_any|engine_running|when_running|running_it|started|fired|starts",
        "drill & only|is_all|barely|all_i|just|hardly|low|poor|weak|no_more_than & @pressure|pressure|psi|get|gets|makes - hole|drilled|plenty|good|engine_running|when_running|running_it|started|fired|starts",
        f"{DRILL} & hardly_rose|barely|just_a_little|weak|feeble|only_a_few|hardly_moved|way_down|poor|only_little|hardly_any & pressure|needle|gauge|psi|built|pounds - isnt|@not|good|strong|nothing|hole|bit_of",
    ),
    "drill_gives_good": (
        f"{_DRILL} & pressure_came_up|pressure_rose|pressure_went_up|gauge_came_up|came_straight_up|plenty|good|fine|every|all_the|full|@pressure|solid|instantly|healthy|loaded|bogged|strong - no_oil|no_pressure|not|nothing|only|except|bit|hole|but_number|dry|low|barely|pouring|streaming|zero|new|rented|bought",
        "drill|electric_drill & great|plenty|good|strong|@pressure|lots|healthy|loads & pressure|straight|oil|made|gave|psi|it - no|not|nothing|only|all_i|barely|but|hole|zero|little|low|is_all|lifter|main|streaming|pouring|except",
        f"{DRILL} & strong_pressure|right_up|went_high|good_pressure|plenty_of_pressure|healthy|great_pressure|proper_pressure|full_pressure|strong - no|not|@not|weak|little|hole|nothing",
    ),
    "no_oil_when_cranked": (
        "gallery_bolt|gallery_plug|gallery_union|banjo|feed_pipe|feed_union|filter_union|outlet_union & cranked|cranking|spun|starter|turned_over & =nothing|not_a_drop|=dry|no_oil|nowt - gauge|squirt|squirts|came_out|comes_out_fine|good|rockers|seal|washer",
        "cranked|crank|cranking|starter|=spun_it|spun_her|turned_it_over & no_oil|no_sign_of_oil|not_a_drop|not_a_drip - pressure|gauge|needle|leak|leaks|stick|dipstick|drill|sender|port|union|gallery|line|rockers|level|light",
        "crank|cranked|cranking|spun|starter|turned & filter_off|filter_out|pump_outlet|outlet|filter_boss|filter_head|filter_mount|filter_housing & no_oil|nothing|not_a_drop|dry|@not_a_drop|no_flow",
        f"filter_off|filter_of|no_filter|without_the_filter|filter_housing|delivery_pipe|outlet_pipe|filter_head|outlet|filter_mount & {CRANKED} & {NO_OIL}|stays_dry|got_nothing - pickup|{SENDERS}|strong|gushed|rockers",
    ),
    "forced_oil_brought_pressure": (
        "forced|forcing|pumped|pressure_oiler|grease_gun|garden_sprayer|pressure_pot + oil + pump|gallery|port & came_up|pressure|caught|primed|built - no|not",
    ),
}
