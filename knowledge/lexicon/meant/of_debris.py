"""Words beside a finding of metal and dirt by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "bearing_pieces_in_pump": (
        # "swarf in the pump" is not yet of a bearing
        Otherwise(
            said=_set("swarf filings shavings"),
            unless=_set("bearing bearings shell shells white copper lining bushing"),
        ),
    ),
    "bright_soft_metal": (
        Otherwise(beside=_set("polished polish paint painted interior trim lacquer")),
    ),
    "carbon_flakes": (
        # "covered with soft black flakes" is sludge
        Otherwise(
            beside=_set(
                "soft softer squashy rubbery sludge sludgy smear smears smeared greasy wet paint"
            ),
            unless=_set("hard carbon coke coked gritty crunchy brittle"),
        ),
    ),
    "copper_flakes": (
        Otherwise(beside=_set("polished polish paint painted interior trim lacquer dash")),
    ),
    "magnetic_metal": (
        Otherwise(beside=_set("dropped"), unless=_set("filter oil sump pan")),
        # "a magnet to pull them out"
        Otherwise(
            said=_set("magnet"),
            beside=_set("to will plan tool pick-up fish fished retrieve get"),
            unless=_set(
                "stuck sticks stick clings cling grey gray filings shavings slivers flakes fuzz fuzzy picked metal "
                "swarf debris paste whiskers steel ferrous chips particles"
            ),
        ),
    ),
    "metal_in_pan": (
        # "plastic bits in the pan"
        Otherwise(
            beside=_set("plastic nylon rubber"),
            unless=_set("metal flakes brass bronze silver steel shiny magnet swarf glitter"),
        ),
    ),
    "metal_throughout": (
        # "bits of hedge everywhere"
        Otherwise(
            said=_set("bits pieces chunks fragments"),
            unless=_set(
                "metal metallic steel bearing bearings shell glitter engine motor oil filter sump pan "
                "swarf shavings crank block"
            ),
        ),
    ),
    "-plug_fur_only": (
        # "sump plug clean": less than fur, not more
        Otherwise(said=_set("clean spotless bare")),
    ),
}
