"""Words for how oil looks and smells on the dipstick."""

from __future__ import annotations

from knowledge.lexicon.words.names import LAB, OLD_OIL, STICK

_LOOKS = "is|was|are|were|looks|looked|seems|seemed|feels|felt|came|came-out|appears|appeared|smells|all|very|really|"
_OIL = "oil|it|stuff"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "oil_looks_clean": (
        "oil is|looks|was|looked|still|very|nice|and|quite|itself? and|nice|still|very? =clean|fresh|good|golden|honey|amber",
        "nice|nicely? =clean oil",
        "oil|it like new|honey|fresh",
    ),
    "cream_in_filler_only": (
        "mayo|mayonnaise|cream|creamy|emulsion|custard|milky|white|goo|gunk|foam|condensation|water .. under|in|inside|on "
        "the? oil? filler? cap|filler|lid|neck only?",
        "under|underneath|inside|beneath|in|on the|my? oil|filler? filler? cap|lid of? the? oil? is|was|theres|there|a|some|of|bit? a|some? "
        "white|yellow|brown|bit? of? cream|creamy|mayo|mayonnaise|emulsion|custard|milky|white|goo|gunk|foam",
        "filler|oil cap .. mayo|mayonnaise|cream|creamy|emulsion|white|goo|milky",
    ),
    "oil_thin_on_stick": (
        "oil is|was|looks|feels|looked|seems|seemed|felt|s|like .. and|& thin|watery|runny",
        "oil .. thin|watery|runny and black|brown|smelly|smells|dark",
        f"oil {_LOOKS}like|too|bit|a|pretty|quite|almost|so|just? like|a|as|too|bit|very? thin|water|runny|watery",
        "watery|runny|=thinned oil|out",
        "oil|it =thin|=runny|=watery",
        "its|it's|oil|it|stuff|looks|as runny|watery like|as diesel|petrol|paraffin|kerosene|water",
        "oil|it runs|ran|drips|dripped|pours .. off the? stick|dipstick like|straight|as? water?",
        "thin|thinner as|than|like water|should|it|new|normal",
        "oil .. diluted|thinned",
        "oil gone|turned|went|was|is|had|like|as like|to water|paraffin",
        "came|comes|drained|poured out was|is|looked? just? like|as black|dirty|brown? water",
        "oil|it|stuff was|is|looked|came|looks like|as thin? black|dirty|brown? water",
        "oil drips|runs|pours|drops|comes off|from|out|just? the? stick|dipstick? like|as-thin-as water|paraffin|diesel",
    ),
    "oil_thick_on_stick": (
        "oil|it|stuff like|thick treacle|molasses|jelly|grease|syrup|custard|tar",
        "oil|it thick|thickened like|as|up treacle|molasses|jelly|grease|syrup|tar?",
        f"oil {_LOOKS}? very|really|extremely|so|too thick",
        "oil hangs on",
    ),
    "oil_smells_burnt": (
        "oil .. smells|smelt|smelled|smell|stinks|stank|reeks|reeked of|like|burnt|really|of-burning|burned? burnt|burned|burning|cooked|scorched",
        "it|oil smells|smelt|smelled|stinks burnt|burned|cooked on|off the? stick|dipstick",
        "oil smells|smell|smelt|smelled burnt|burned|scorched|cooked",
        "oil .. burnt|scorched smell",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "oil_thin_on_stick": (
        f"{_OIL} + water|thin|runny|watery|paraffin|kerosene + stick|dipstick|like|very|finger|fingers|as|feels - milky|level|grade|in_the|sump|w|mixed|thinner_oil|coolant|pump|cooled|drain|emptied",
        f"{STICK}|old|oil & thinner|ran_away|like_water|watery|like_paraffin|runny|runs_off & new|fresh|beside|side_by_side|paraffin|stick - grade|lab|%|percent|book|manual|no|not|put|@not|report",
    ),
    "oil_thick_on_stick": (
        f"{_OIL} + treacle|tar|molasses|honey|thick|glue|syrup|gloop + stick|dipstick|like|hangs|very|drips|black|as - not|no|pickup|screen|thicker_oil|grade|w|put|sump_bottom|filter|-",
        f"{STICK}|rod|oil & thicker|barely_run|almost_not_drop|stiff|stodgier|very_fat|gluey|like_tar|treacle|like_gear_oil|gloopy|hardly_drips|sluggish & new|fresh|than|runs|drop - grade|{LAB}|%|percent|put|factory|book|use|no|not|hundred_degrees|fitted|manual",
    ),
    "cream_in_filler_only": (
        "cream|mayo|mayonnaise|gunk|emulsion|milky|white_stuff|goo|yellow_goo + cap|filler|oil_cap|under_the_cap|breather & only|none|but|just|clean|clear|stick_is|not - sump|oil_is_milky",
        "mayonnaise|cream|tan_gunk|tan_gunge|milky|white_goo|mayo|custard|emulsion|gunk|goo & lid|cap|fill_neck|filler|filler_neck & stick_reads_clean|oils_fine|oil_fine|stick_is_clean|oil_is_fine|stick_clean|sump_oil_is|clean|clear|fine - no|@not|rocker_box",
        "mayonnaise|cream|mayo|custard|emulsion|milky|gunk & lid|cap|fill_neck|filler|filler_neck & oils_fine|oil_fine|reads_clean|oil_is_fine|oil_clean|stick_clean",
    ),
    "oil_looks_clean": (
        "oil + clean|golden|honey|amber|fresh_looking|new_looking|clear + looks|is|was|still|looked|colour|color|nice|like - not|no|but_metal|filter|cleaned|pump|pan|passages|gallery|line|cooler|change|changed|screen|tank|leak|clean_oil_came|hole|port|stick_clean|cap",
        "oil|stick|it + clean_as_a_whistle|nice_and_clean|clean_as|golden|like_honey|looks_new|like_new_oil|looks_clean|still_clean|honey - not|no|filter|screen|pump|pan|runs",
        "=clean + whistle|honey|new_oil - pump|screen|filter|sump|pan|not",
        "oil|drained & amber|golden|spotless|honey|clear_amber|honey-coloured|see_through|looks_new|like_new_oil|looked_new & oil|drained|looked|stick|clear - no_longer|black|outside|engine_bay|@not|not",
    ),
    "oil_smells_burnt": (
        "smells|smelt|smelled|smell|stinks|stank|reeks + burnt|burned|burning|cooked|scorched & oil|stick|dipstick - exhaust|cabin|smoke|manifold|dripping|thrown|sprayed|everywhere|doors|outside|"
        "leak|drips|cab|bonnet|hood|no|not|fuel|clutch|coolant",
        "burnt|burned|scorched|cooked + smell|smells|smelt|stinks + oil|stick|dipstick - smoke|cabin|clutch|exhaust|bay|petrol",
        f"{OLD_OIL} & smelled|smell|whiff|smelt|smells|stinks|scent|reeks & charred|burnt|scorched|frying_pan|acrid|burned|cooked|singed|toasted|fried - no|not|fuel|exhaust|@not|engine_bay|cabin|around|white|leak",
    ),
}
