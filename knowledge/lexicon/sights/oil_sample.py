"""Words for what a laboratory found in the oil."""

from __future__ import annotations

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
    ),
    "glycol_found": (
        f"{_SAMPLE} + glycol|sodium|potassium|antifreeze|coolant - no|not|zero|negative|never|without",
        f"{_LAB_SAMPLE} & sodium|potassium|glycol|antifreeze - no|not|nil|normal|without",
    ),
    "iron_high": (
        f"{_SAMPLE}|iron + iron + high|elevated|up|sky|over|double|way - normal|no|not",
        "sample|analysis|lab|report|result|results + iron + high|up|elevated|flagged|@number|critical|over|spiked - low|normal|no|not",
    ),
    "copper_and_lead_high": (
        "copper & lead & high|elevated|up|sky|over|double|way|both|raised - normal|ok_for|fine_for|good_for|ok_on|alone|only|pipe|wire|crimp|washer",
        "copper & lead & sample|analysis|report|lab|roof|@number|high|up|elevated|ppm - low|normal|ok|okay|unchanged|flakes|filter|bearing_metal|iron|=no",
        f"{_LAB_SAMPLE}|sent & bearing_metal|bearing_metals|bearing_material|copper_and_lead|lead_and_copper - no|not|unchanged|normal|low|steady|ok|okay|fine|good",
    ),
    "silicon_high": (
        f"{_SAMPLE}|silicon + silicon + high|elevated|up|sky|over - normal|silicone",
        "sample|analysis|lab|report|result|results + silicon + high|up|elevated|flagged|@number|over|spiked - low|normal|no|not|silicone",
        f"{_LAB_SAMPLE}|sent & silicon + loads|lots|high|full|up|climbing|heaps|much|and|ppm - no|not|normal|low|sealer|gasket",
    ),
    "aluminium_high": (
        f"{_SAMPLE}|aluminium|aluminum + aluminium|aluminum + high|elevated|up|sky|over - normal|no",
    ),
    "metals_normal": (
        f"{_SAMPLE} + metals|wear_metals|wear + normal|fine|ok|low|nothing|clean|within|unremarkable - not|but|high|except|pump|bearing",
        f"{_SAMPLE}|analysis + came_back_clean|clean|nothing_unusual|all_normal|all_clear - filter|not",
        "sample|analysis|lab|report|result|results + metals|wear_metals|everything|all + normal|fine|clean|ok|low|within|unremarkable - not|high|fuel",
        "sample|analysis|lab|report|result|results + no|@not + metal|metals|abnormal|wear",
        f"{_LAB_SAMPLE} & no_metals|no_wear_metals|no_metal|metals_normal|metals_fine|metals_low|metals_ok - filter|pan|sump",
    ),
    "water_in_sample": (
        f"{_SAMPLE} + water + high|present|found|percent|trace|% - no|not|pump|jacket",
        f"{_LAB_SAMPLE} & water - no|not|nil|without|cooled|water_pump|jacket",
    ),
    "chromium_high": (
        "sample|analysis|lab|report|result|results + chromium|chrome + high|up|elevated|flagged|@number|over - low|normal|no|not",
    ),
    "lab_viscosity_low": (
        "sample|analysis|lab|report|result|results + viscosity|visc + thin|low|down|dropped|grade|sheared|below - high|thick|normal|over",
        "viscosity + full_grade_thin|grade_thin|too_thin|grade_low|sheared_down|down_a_grade|way_down|low - no|not|new|lower_viscosity",
        f"{_LAB_SAMPLE} & thinner|sheared|below_grade|under_the_grade|under_grade|out_of_grade|below_its_grade|thinned - thicker|high|no|not|shaft|key",
        "oil + sheared|sheared_down|lost_its_grade|fallen_a_grade - shaft|key|pin|drive|gear|bolt|pump|stud|no|not",
    ),
    "lead_high_alone": (
        f"{_LAB_SAMPLE} & lead + climbing|rising|climbs|rises|up|increasing|doubled|creeping - copper|wire|ignition|cable|plug|test_lead|silicon",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "lab_fuel_high": (f"{_LAB_SAMPLE} & no_fuel|without_fuel|nil_fuel|fuel_nil|no_sign_of_fuel",),
    "water_in_sample": (
        f"{_LAB_SAMPLE} & no_water|no_sign_of_water|nil_water|water_nil|water_free|no_fuel_or_water|no_coolant_or_water - pump|stick|cap",
    ),
    "copper_and_lead_high": (
        "=copper|=lead + unchanged|normal|as_before|steady|flat + and|copper|lead - high|up|climbing|not",
    ),
}
