"""Words for what a laboratory found in the oil."""

from __future__ import annotations

from knowledge.lexicon.words.names import FOUND_HIGH, FOUND_LOW, LAB

_HIGH = "high|elevated|raised|up|excessive"
_SAMPLE = "sample|analysis|lab|report|test|oil_analysis|results"
_LAB_SAMPLE = "lab|sample|samples|oil_report|lab_report|analysis|sent_off"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "iron_high": (
        f"iron|fe is|was|very|level|levels? {_HIGH}",
        f"{_HIGH} iron|fe",
    ),
    "copper_and_lead_high": (
        f"{_HIGH} in|levels? of|in? copper|lead and|& lead|copper",
        f"copper|lead and|& lead|copper are|is|were|both? {_HIGH}",
        f"bearing metals {_HIGH}",
    ),
    "copper_high_alone": (
        f"copper|cu only|is|was? {_HIGH}",
        f"{_HIGH} copper|cu only?",
    ),
    "lead_high_alone": (
        f"lead|pb level|levels {_HIGH}",
        f"{_HIGH} lead|pb level|levels|only",
    ),
    "aluminium_high": (
        f"aluminium|aluminum is|was? {_HIGH}",
        f"{_HIGH} aluminium|aluminum",
    ),
    "silicon_high": (
        f"silicon is|was|level|levels? {_HIGH}",
        f"{_HIGH} silicon",
    ),
    "glycol_found": (
        "glycol|sodium|potassium present|positive|found|detected|high|in",
        "high sodium|potassium|glycol",
        "sodium|potassium|boron @number ,? and|&? potassium|sodium|boron|silicon @number",
        "sodium and|&|/ potassium up|high|elevated|raised|present|found",
    ),
    "water_in_sample": (
        "water|moisture in the? oil? sample|report|analysis",
        "sample .. water|moisture",
    ),
    "lab_fuel_high": (
        "fuel dilution|diluted high|over|of|at|@number?",
        "@number percent|pct|% fuel",
        "fuel at|of|is @number percent|%",
        "sample|report|analysis|lab .. fuel",
    ),
    "lab_viscosity_low": (
        "low viscosity",
        "viscosity is|was|had|came|too|back? low|down|dropped|thin",
        "viscosity @number % down|low|under|below|lower|less|off",
        "viscosity down|low|dropped|fallen by? @number %",
        "sheared|thinned down|out of|from grade|@grade",
    ),
    "lab_viscosity_high": (
        "high viscosity",
        "viscosity is|was|had|came|too|back? high|up",
    ),
    "metals_normal": (
        "oil? analysis|report|sample|lab|blackstone came|was|is|back|looks|all|results? back|up|all|was? =clean|normal|"
        "fine|good|ok|unremarkable",
        "wear metals normal|low|fine|ok",
        "=clean|normal|good oil analysis|report|sample",
        "no abnormal|wear|unusual metals in|on the? sample|report|analysis|oil?",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "copper_and_lead_high": (
        "ok|okay|normal|fine|low|good|clear|unchanged for|on|in =lead|=copper and|&|/ =lead|=copper",
        "=lead|=copper and|&|/ =lead|=copper ok|okay|normal|fine|low|good|unchanged|steady",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "lab_fuel_high": (
        f"{_SAMPLE} + fuel|dilution + %|percent|high|excess|dilution|found|showed|says - no|not|low|zero|filter|pump",
        "fuel|fuel_dilution|diesel + sample|analysis|lab|report|result|results|@percent|percent|dilution + high|over|@percent|percent|flagged|critical|@number - less_than|under|below|smell|no|not|level|tank",
        "dilution & %|percent|@percent|high|over|bad|severe|heavy|much - under|=low|less|nil|no|not|half|trace|little|negligible",
        f"fuel|=gas|petrol|diesel|gasoline & {LAB} & lot|too_much|high|percent|%|@percent|mixed|loads|excess|over|plenty|flagged - no|not|@not|under|=low|less|little|trace|filter|pump|tank",
    ),
    "glycol_found": (
        f"{_SAMPLE} + glycol|sodium|potassium|antifreeze|coolant - no|not|zero|negative|never|without",
        f"{_LAB_SAMPLE} & sodium|potassium|glycol|antifreeze - no|not|nil|normal|without",
        f"sodium|potassium|glycol|antifreeze|=na & {LAB}|contamination & {FOUND_HIGH}|found|positive|detected|present|@number - no|not|@not|negative|normal|nil|zero|without|none",
    ),
    "iron_high": (
        f"{_SAMPLE}|iron + iron + high|elevated|up|sky|over|double|way - normal|no|not",
        "sample|analysis|lab|report|result|results + iron + high|up|elevated|flagged|@number|critical|over|spiked - low|normal|no|not",
        f"iron|=fe|ferrous & {LAB}|flagged|limit & {FOUND_HIGH} - {FOUND_LOW}|block|cast|filter|pan",
    ),
    "copper_and_lead_high": (
        "copper & lead & high|elevated|up|sky|over|double|way|both|raised - normal|ok_for|fine_for|good_for|ok_on|alone|only|pipe|wire|crimp|washer",
        "copper & lead & sample|analysis|report|lab|roof|@number|high|up|elevated|ppm - low|normal|ok|okay|unchanged|flakes|filter|bearing_metal|iron|=no",
        f"{_LAB_SAMPLE}|sent & bearing_metal|bearing_metals|bearing_material|copper_and_lead|lead_and_copper - no|not|unchanged|normal|low|steady|ok|okay|fine|good",
        f"copper|=cu & =lead|=pb & both|together|two|abnormal|climbed|each & {LAB}|{FOUND_HIGH} - normal|=low|no|not|fine|ok|neither|nor|alone|only|unchanged|wire|pipe|washer",
    ),
    "silicon_high": (
        f"{_SAMPLE}|silicon + silicon + high|elevated|up|sky|over - normal|silicone",
        "sample|analysis|lab|report|result|results + silicon + high|up|elevated|flagged|@number|over|spiked - low|normal|no|not|silicone",
        f"{_LAB_SAMPLE}|sent & silicon + loads|lots|high|full|up|climbing|heaps|much|and|ppm - no|not|normal|low|sealer|gasket",
        f"silicon|=si & {LAB}|flagged|limit & {FOUND_HIGH} - {FOUND_LOW}|sealer|gasket|rtv",
    ),
    "aluminium_high": (
        f"{_SAMPLE}|aluminium|aluminum + aluminium|aluminum + high|elevated|up|sky|over - normal|no",
        f"aluminium|aluminum|=al|alu & {LAB}|flagged|limit & {FOUND_HIGH} - {FOUND_LOW}|head|block|pan|sump|filter|bearing|piston",
    ),
    "metals_normal": (
        f"{_SAMPLE} + metals|wear_metals|wear + normal|fine|ok|low|nothing|clean|within|unremarkable - not|but|high|except|pump|bearing",
        f"{_SAMPLE}|analysis + came_back_clean|clean|nothing_unusual|all_normal|all_clear - filter|not",
        "sample|analysis|lab|report|result|results + metals|wear_metals|everything|all + normal|fine|clean|ok|low|within|unremarkable - not|high|fuel",
        "sample|analysis|lab|report|result|results + no|@not + metal|metals|abnormal|wear",
        f"{_LAB_SAMPLE} & no_metals|no_wear_metals|no_metal|metals_normal|metals_fine|metals_low|metals_ok - filter|pan|sump",
        f"{LAB} & all_metal|all_metals|every_wear|wear_metals|wear_element|wear_elements|metals|nothing_out_of_the_ordinary|out_of_the_ordinary & normal|clean|fine|ordinary|=low|in_range|unremarkable - not|flagged|abnormal|high|@not|but|except|magnet|filter",
    ),
    "water_in_sample": (
        f"{_SAMPLE} + water + high|present|found|percent|trace|% - no|not|pump|jacket",
        f"{_LAB_SAMPLE} & water - no|not|nil|without|cooled|water_pump|jacket",
        f"water|h2o|moisture & {LAB}|flagged & find|found|flagged|too_much|past_a_trace|percent|%|high|lots|present|plenty|full - no|not|@not|nil|pump|without|stick|jacket|drain|less",
    ),
    "chromium_high": (
        "sample|analysis|lab|report|result|results + chromium|chrome + high|up|elevated|flagged|@number|over - low|normal|no|not",
        f"chromium|chrome|=cr & {LAB}|flagged|limit & {FOUND_HIGH} - {FOUND_LOW}|ring|rings|bumper|cover|pipe",
    ),
    "lab_viscosity_low": (
        "sample|analysis|lab|report|result|results + viscosity|visc + thin|low|down|dropped|grade|sheared|below - high|thick|normal|over",
        "viscosity + full_grade_thin|grade_thin|too_thin|grade_low|sheared_down|down_a_grade|way_down|low - no|not|new|lower_viscosity",
        f"{_LAB_SAMPLE} & thinner|sheared|below_grade|under_the_grade|under_grade|out_of_grade|below_its_grade|thinned - thicker|high|no|not|shaft|key",
        "oil + sheared|sheared_down|lost_its_grade|fallen_a_grade - shaft|key|pin|drive|gear|bolt|pump|stud|no|not",
        "kv100|kv40|viscosity & down|lost|below|fallen|dropped|lower & %|percent|@percent|fifth|quarter|third|hundred_degrees - up|used|spec|pressure|gained|put|in_use",
        f"{LAB}|hundred_degrees & thinner|less_thick|thinned|lost_a_fifth|lost_a_quarter|now_like|like_a_20|sheared|down_a_grade & than|percent|%|fifth|quarter|grade|now|viscosity|new|fresh - no|not|@not|thicker|hasnt|stick",
    ),
    "lead_high_alone": (
        f"{_LAB_SAMPLE} & lead + climbing|rising|climbs|rises|up|increasing|doubled|creeping - copper|wire|ignition|cable|plug|test_lead|silicon",
        f"=lead|=pb & only|alone|just|nothing_else|but_cu_normal|copper_normal|cu_normal|low_cu|low_copper|copper_fine|copper_low|copper_ok|cu_ok|cu_low|normal_copper|cu_where_it & {LAB}|{FOUND_HIGH} - wire|cable|plug|test_lead|unchanged|acid",
    ),
    "tin_high": (
        f"=tin|=sn & {LAB}|flagged|limit & {FOUND_HIGH} - {FOUND_LOW}|can|cover|cowl|lead|cup|foil|copper",
    ),
    "copper_high_alone": (
        f"copper|=cu & only|alone|just|nothing_else|no_other|one_was_off|one_thing & {LAB}|elevated|flagged - lead_too|=pb_too|and_lead|normal_copper|pipe|washer|wire",
        f"copper|=cu & {LAB}|{FOUND_HIGH}|@number & =lead_normal|=lead_low|=lead_fine|=pb_normal|=pb_low|=pb_and_sn_normal|=lead_and_tin_normal|low_lead|normal_lead|=lead_ok|=lead_and_tin_low - copper_low|copper_normal|washer|pipe",
    ),
    "lab_viscosity_high": (
        "kv100|kv40|viscosity & up|gained|above|higher|risen|climbed & %|percent|@percent|fresh|new|third|quarter - down|less|used|spec|low|pressure|iron|put|handbook",
        f"{LAB}|hundred_degrees & thicker|thickened|heavier|more_thick|thickening & than|by|percent|%|fresh|new|third|quarter|poured - no|not|@not|less|thinner|hasnt",
    ),
    "acid_number_high": (
        f"=tan|acid_number|acidity|acids|acid|sour & virgin|fresh|new_oil|{LAB} & {FOUND_HIGH}|far_above|sour|virgin|beyond|+ - normal|=low|no|not|near|battery|gunk|colour|color|smear|close_to",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "lab_fuel_high": (
        f"{_LAB_SAMPLE} & no_fuel|without_fuel|nil_fuel|fuel_nil|no_sign_of_fuel",
        f"dilution|fuel|petrol|diesel & {LAB} & under|=low|less_than|nil|hardly|trace|half_a_percent|negligible|within|no_fuel|little|none|barely - but|high|over|viscosity",
    ),
    "water_in_sample": (
        f"{_LAB_SAMPLE} & no_water|no_sign_of_water|nil_water|water_nil|water_free|no_fuel_or_water|no_coolant_or_water - pump|stick|cap",
        f"water|h2o|moisture & {LAB} & no_water|nil|none|dry|no_moisture|free_of|below_a_trace|zero|not_detected|only_a_trace|no_h2o - but|pump|stick",
    ),
    "copper_and_lead_high": (
        "=copper|=lead + unchanged|normal|as_before|steady|flat + and|copper|lead - high|up|climbing|not",
        f"neither|not|no|@not & copper|=cu & =lead|=pb & {LAB}|up|high|elevated|raised - alone|only",
    ),
    "iron_high": (
        f"iron|=fe|ferrous & {LAB}|came_back & =low|normal|next_to_nothing|fine|within|negligible|@not_high|not_high|@not_elevated|nothing_there|ok|down_at|in_range - flagged|but|high_in|over|roof|block|cast|filter|pan",
    ),
    "aluminium_high": (
        f"aluminium|aluminum|=al|alu & {LAB}|came_back & =low|normal|next_to_nothing|fine|within|negligible|@not_high|not_high|@not_elevated|nothing_there|ok|down_at|in_range - flagged|but|high_in|over|roof|head|block|pan|sump|filter|bearing|piston",
    ),
    "chromium_high": (
        f"chromium|chrome|=cr & {LAB}|came_back & =low|normal|next_to_nothing|fine|within|negligible|@not_high|not_high|@not_elevated|nothing_there|ok|down_at|in_range - flagged|but|high_in|over|roof|ring|rings|bumper|cover|pipe",
    ),
    "silicon_high": (
        f"silicon|=si & {LAB}|came_back & =low|normal|next_to_nothing|fine|within|negligible|@not_high|not_high|@not_elevated|nothing_there|ok|down_at|in_range - flagged|but|high_in|over|roof|sealer|gasket|rtv",
    ),
    "tin_high": (
        f"=tin|=sn & {LAB}|came_back & =low|normal|next_to_nothing|fine|within|negligible|@not_high|not_high|@not_elevated|nothing_there|ok|down_at|in_range - flagged|but|high_in|over|roof|can|cover|cowl|lead|cup|foil|copper",
    ),
    "copper_high_alone": (
        f"copper|=cu & {LAB} & =low|normal|fine|not_high|nothing_to_speak|@not_high|within - =lead|=pb|flagged|but|pipe|washer",
    ),
    "lead_high_alone": (
        f"=lead|=pb & {LAB} & =low|normal|fine|not_high|@not_high|within - copper|=cu|flagged|but|wire|plug|time",
    ),
    "metals_normal": (
        f"wear_metals|wear_elements|metals|elements & flagged|abnormal|out_of_range|raised|elevated|=high|not_normal & {LAB} - no|not|none|nothing|@not_high|neither",
    ),
    "glycol_found": (
        f"antifreeze|glycol|sodium|coolant|potassium & {LAB} & negative|normal|none|nil|no_glycol|no_antifreeze|no_coolant|free_of|not_detected|@not_find|clear_of|zero - positive|but|high",
    ),
    "lab_viscosity_high": (
        f"{LAB} & @not_thicken|not_thicker|no_thicker|hasnt_thickened|@not_thickened|no_heavier|as_thin_as - thinner_than",
    ),
    "lab_viscosity_low": (
        f"{LAB} & no_thinner|@not_thinned|not_thinner|hasnt_thinned|as_thick_as|as_thick_as_new|same_as_new|no_lighter",
    ),
    "acid_number_high": (
        f"=tan|acid_number|acidity|acids & {LAB}|new_oil|fresh|virgin & near|close|same|normal|=low|fine|little_changed|barely_above - gunk|colour|battery|far|way",
    ),
}
