"""Words beside a finding of camshaft, valve gear, pistons and turbo by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_TURBO = _set("turbo turbos turbo's turbocharger turbochargers turbocharged turbo-charger")
_OF_THE_TURBO = Otherwise(
    anywhere=frozenset(["electric"]), also=_set("turbo turbos afterrun after-run")
)

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    # "a piston cooling jet was missing" is no restrictor
    "restrictor_absent": (
        Otherwise(
            said=_set("jet jets"),
            anywhere=_set("piston pistons squirter squirters cooling"),
            unless=_set("restrictor restrictors chain tensioner rocker rockers"),
        ),
    ),
    "distributor_bore_pours": (
        # "oil poured down the distributor hole before it was turned"
        Otherwise(said=_set("down into"), unless=_set("out from")),
    ),
    "no_oil_at_rockers": (
        Otherwise(
            said=_set("head heads top"),
            beside=_set("clean cleaned wiped assembled stripped stored"),
            unless=_set("oil rocker rockers cam camshaft valvegear running no"),
        ),
    ),
    "piston_jet_found_broken": (
        # "blocked off the piston squirters to try"
        Otherwise(
            said=_set("off"), beside=_set("blocked blanked plugged shut capped sealed closed")
        ),
    ),
    "tensioner_slack": (
        # "the slack chain of the oil pump" is no timing chain
        Otherwise(said=_set("chain"), beside=_set("pump"), unless=_set("timing cam tensioner")),
    ),
    "turbo_failed": (
        # "the turbo's electric oil pump died"
        _OF_THE_TURBO,
    ),
    "turbo_feed_found_blocked": (
        # "the turbo return pipe is coked"
        Otherwise(said=_set("return drain")),
    ),
    "turbo_line_leaks": (
        Otherwise(
            beside=_set("crank crankshaft cam camshaft head rocker rockers gauge cooler pump"),
            unless=_TURBO,
        ),
    ),
    "turbo_shrieks": (
        # "the turbo whistles" as every turbo does
        Otherwise(
            said=_set("whistle whistles whistling whistled"),
            unless=_set("loud louder new howl howls screams shrieks grinding suddenly siren"),
        ),
    ),
}
