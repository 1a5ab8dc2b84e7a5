"""What is seen or known of oil outside the engine, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_LEAKS: dict[str, tuple[str, ...]] = {
    "cup_plug_found_out": (
        "core|cup|freeze|welch|frost|expansion plug .. out|missing|gone|blew|popped",
        "blew|popped|lost|spat .. core|cup|freeze|welch|frost plug",
    ),
    "oil_seen_outside": (
        "leaks|leaking|leak|leaked some|bit|of|a? oil?",
        "oil leak|leaks|leaking|everywhere",
        "oil all over|down",
        "covered|wet in|with oil",
        "external leak|leaks",
        "oil weeping|weeps|seeping",
        "weeping|seeping|dripping oil",
        "drips",
    ),
    "oil_on_the_ground": (
        "puddle|puddles|spots|drips|pool|oil of? oil? on|under|the? ground|floor|driveway|car|drive|engine|it",
    ),
    "oil_in_the_bilge": ("oil in|the? bilge", "bilge .. oil"),
    "oil_sprayed": (
        "oil sprays|spraying|sprayed|squirting|squirts|gushing|shooting",
        "spraying|squirting|gushing|sprayed oil",
        "spray of oil",
    ),
    "dipstick_pushed_out": ("dipstick .. blown|popped|pushed|out|up|pops",),
    "oil_on_bodywork": (
        "oil on|over|all .. windshield|windscreen|tyre|tire|transom|bonnet|hood|boots",
    ),
    "oil_trail_behind": ("trail|streak|slick of oil", "oil trail|slick"),
    "oil_loss_fast": ("dumped|lost|pumped all of? its|the|my oil",),
    "drain_plug_found_loose": (
        "drain|sump plug .. loose|gone|missing|out|off",
        "loose drain|sump plug",
    ),
    "filter_found_loose": ("filter is|was|found|came|had? loose", "loose oil? filter"),
    "filler_cap_found_off": ("filler|oil cap .. off|missing|left|gone",),
}
