"""How a shop writes that a part is as it should be, "in order", "ruled out", or is past use, "u/s"."""

from __future__ import annotations

#: a negation or an "out" in them denies nothing of the part: "gallery plugs: no defects"
NOTHING_WRONG = (
    "ruled|eliminated|excluded|discounted out|as? the|a? cause|culprit|fault|reason?",
    "@not at|in|to fault|blame",
    "@not the|a? cause|culprit|problem|fault|reason|guilty|suspect",
    "no|nil|zero any? visible|apparent|obvious|evident|significant|noticeable|appreciable|excessive|measurable|real|undue? "
    "fault|faults|defect|defects|issue|issues|problem|problems|wear|damage|abnormality|abnormalities|anomaly|anomalies|"
    "irregularity|irregularities|findings|concern|concerns|complaint|complaints|deviation found|noted|seen|visible|"
    "detected|evident|apparent|present|observed|recorded|there?",
    "no cause|reason|grounds for|to concern|alarm|worry|complaint|suspect",
    "without any? visible|apparent|obvious? fault|defect|defects|findings|finding|objection|complaint|wear|damage|problem|problems",
    "nothing amiss|untoward|unusual|abnormal|suspicious|remarkable|wrong|obvious|irregular found|seen|noted|there?",
    "nothing to report|note|see|complain|criticise|fault about|of?",
    "n/f/f|nff|n.f.f",
    "free of|from any? wear|damage|defects|fault|faults",
)
#: said after the name of the part only: "a normal pump" is one of a common kind
BEHIND_ONLY = frozenset(
    ["normal", "normally", "passed", "passes", "order", "expected", "functional", "working", "new"]
)
#: the part is as it should be
WELL = (
    "=normal|=satisfactory|=acceptable|=unremarkable|=inconspicuous|=functional",
    "in perfect|proper|good|full|working? =order",
    "in full|good|proper? working =order",
    "as it|they? should be?",
    "as =expected|=prescribed|=specified",
    "as per|by|to the? spec|specs|specification|book|manual|figures|data",
    "up? to =standard|=snuff|=scratch|=par|=spec",
    "=passed|=passes the|its|all? test|tests|inspection|check|checks|ok|fine?",
    "in excellent|perfect|sound|fair|reasonable|decent|very? good|usable|serviceable condition|shape|nick|fettle|state",
    "=working|=works|=operates|=operating|=functions|=functioning properly|correctly|fine|ok|normally",
    "=not =worn|=damaged|=defective|=faulty|=loose|=cracked",
    "all|perfectly|absolutely =good|=ok|=fine|=correct|=well",
    "=beyond|=above =reproach|=suspicion",
    "top notch",
    "a-ok|a-1",
)
#: the part is where it belongs; how good it is is not said
IN_PLACE = (
    "all|still|both|is|are|was|were|found|and? =in =place|=position|=situ",
    "all|still|both|is|are|was|were|found? =present and|&? =correct|=accounted|=tight? for?",
    "all|still|both =there|=attached|=connected|=engaged",
    "all|both =accounted for",
    "on|around its|the =sprocket|=sprockets",
)
#: the part is past use, and how is not said
PAST_USE = (
    "u/s|n/g|unserviceable|condemned|kaput|duff",
    "found|proved|proven|tested|confirmed|turned|diagnosed|came|was|were out|up? to? be|as? "
    "=faulty|=defective|=bad|=failed|=u/s|=n/g|=shot|=duff|=kaput|=scrap|=unserviceable",
    "=defective|=faulty",
    "past|beyond its|their? best|limits|limit|use|repair|service|saving",
    "past it",
    "has|have|had|got had its|their day|chips",
    "@not =serviceable|=reusable|=usable|=fit|=good",
    "no =good|=longer =serviceable?",
)
#: findings that say all is well: "analysis found no wear metals"
GOOD_NEWS = frozenset(
    ["metals_normal", "pump_found_sound", "all_plugs_accounted_for", "shells_look_normal"]
)
#: words that say a part is as it should be, where no word beside them says what is wrong
PRAISE = frozenset(
    [
        "right",
        "correct",
        "correctly",
        "good",
        "fine",
        "ok",
        "okay",
        "same",
        "freely",
        "properly",
        "tight",
        "true",
        "flat",
        "straight",
        "numbered",
        "perfect",
        "bright",
        "sound",
        "smooth",
        "order",
        "way",
        "round",
        "all",
    ]
)
_FINE = "fine|ok|okay|good|great|perfect|normal|normally|healthy|strong|perfectly|lovely|excellent|beautiful|beautifully"
_TROUBLE = "problem|problems|trouble|issue|issues|complaint|complaints|worries|drama"
_UNTIL = "right|up? to? until|till|before|prior|til"
_SHOWN = "flicker|flickers|light|lamp|warning|dip|blip|rattle|bother|flutter|low|reading|hiccup|leak|murmur"
#: the engine, or its pressure, was well until something was done: "fine until the oil change"
WELL_UNTIL = (
    f"{_FINE} oil? pressure|reading|readings|needle? {_UNTIL} to?",
    f"{_FINE} oil? pressure|reading? right? up to",
    f"{_FINE} in|on|as|with standard|stock|original|the|its trim|form|setup|stand|bench|dyno|engine-stand ,|and|but|then|until? trouble|problem|then|problems? began|started? with?",
    f"no|never|not|any|hardly|rarely had|saw|seen|see|showed|gave? a|an|any|the|one|single|so-much-as? {_SHOWN} {_UNTIL}",
    f"never|didnt|not dropped|drop|dipped|flickered|fell|moved|lost|budged|missed|faltered|wavered pressure|a-beat|below|once|under? {_UNTIL}",
    "always|was steady|solid|rock-steady|healthy|strong until|till|before",
    f"no|never|zero|without|not|any had? a|any|the? oil? pressure? {_TROUBLE} with? it|the|oil? pressure? {_UNTIL} to?",
)
#: it was well before what was just named: "rebuilt last winter, before that it was always good"
WELL_BEFORE_THAT = (
    f"before|prior|until|till to? that|then|this it|she|pressure|everything|all|the|oil? pressure? was|had|ran|read|held|been? always|all|perfectly? {_FINE}",
    f"previously|beforehand it|she|pressure|everything|all|the|oil? pressure? was|had|ran|read|held always|all|perfectly? {_FINE}",
)
#: behind "before the rebuild": "it was fine", "I had no trouble"
WAS_WELL = (
    f"it|she|pressure|everything|all|gauge|engine was|had|ran|read|held|been always|all|perfectly|running? {_FINE}",
    f"had|held|ran always? {_FINE} oil? pressure",
    f"no|never|zero a|any? {_TROUBLE}",
)
#: it was as low before something was done, which so made no difference
AS_LOW_BEFORE = (
    "same|as|equally|already|exactly as? low|bad|poor|same? oil? pressure|reading|readings? before|prior to?",
    "same|identical oil? pressure|reading|readings|problem|trouble|issue|figures|thing before|prior to?",
    "same|identical|unchanged|as|no-different|no-better as|from|to|than|low|bad|poor? as? what|how? it? was|were|had|did|read|been before|prior to?",
    "already low|bad|poor|dropping|flickering before|prior to?",
)
#: it was low before, where "too" or "and still does" follows
LOW_BEFORE = (
    "was|had|low|read|ran low|lower|bad|poor oil? pressure|reading? before|prior to?",
    "low|poor|bad|weak oil? pressure|reading before|prior to?",
)
