"""Words beside a finding of gauge, panel and test gauge by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.sights.of_another_part import PRIMING
from knowledge.lexicon.words.word_sets import set_of as _set

_FLOWS = _set("came come comes flowed flows pours poured runs ran running pumps pumped spurts out")
_LEAKS = _set(
    "leak leaks leaking leaked cracked crack split chafed burst broken broke union weeps weeping "
    "drips dripping holed pinhole olive ferrule fractured let"
)
_ONCE = _set("used was were before last when usual normal new always")

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "gauge_line_leaking": (
        # "primed it with a drill, oil came out at the gauge line" is a good sign
        Otherwise(said=_FLOWS, unless=_LEAKS),
        Otherwise(beside=PRIMING | _set("cranked cranking"), unless=_LEAKS),
    ),
    "good_at_pump_low_in_gallery": (
        # "turned the pump with a drill, 60 psi and oil at every rocker but the last"
        Otherwise(said=_set("drill")),
    ),
    "idle_below_spec": (
        # "only 12 at 600 tickover" is a pressure
        Otherwise(said=frozenset(["at"]), unless=_set("idles idling ticks runs set is speed")),
    ),
    "instrument_just_changed": (
        # "after trying another sender" is a search
        Otherwise(beside=_set("trying tried tries try")),
    ),
    "-lamp_dead_with_key_on": (
        # "the lamp is on with the key off"
        Otherwise(said=_set("key ignition"), then=_set("off out removed pulled")),
    ),
    "lamp_slow_to_go_out": (
        # "the lamp stayed on for 3 miles before she stopped" is no slow lamp at a start
        Otherwise(beside=_set("@distance"), unless=_set("every start starts starting startup")),
    ),
    "more_than_it_can_make": (
        # "pegged high with the wire off" is a test of the gauge
        Otherwise(
            anywhere=_set("off disconnected unplugged pulled grounded earthed"),
            also=_set("wire lead plug terminal connector"),
        ),
    ),
    "needle_off_zero_at_rest": (
        # "dropped to 20, then knock knock, switched off": what was done, no gauge at rest
        Otherwise(
            said=_set("off stopped"),
            anywhere=_set("knock knocking knocks bang rattle seized died motorway"),
            unless=_set("still stays sits rests zero key never"),
        ),
    ),
    "other_gauge_reads_right": (
        # a mechanical gauge leaves out sender and wire too, so it does not show which of them is wrong
        Otherwise(said=_set("mechanical mech direct test master bourdon capillary")),
    ),
    "panel_half_or_double": (
        # "changed the oil twice"
        Otherwise(
            said=frozenset(["twice"]),
            beside=_set("changed change oil times filter tried cranked primed"),
        ),
    ),
    "panel_off_by_constant": (
        # "reads 20 less than it used to" is a fall, not a gauge that is off
        Otherwise(
            said=_set("than"),
            beside=_ONCE,
            unless=_set(
                "mechanical test master trusted direct real true actual everywhere throughout"
            ),
        ),
        Otherwise(
            then=_set("than"),
            beside=_ONCE,
            unless=_set(
                "mechanical test master trusted direct real true actual everywhere throughout"
            ),
        ),
    ),
    "panel_reads_too_low": (
        # "it has a mechanical gauge in the dash"
        Otherwise(said=_set("in"), unless=_set("less lower low than but while below under")),
        # "a mechanical gauge under the dash"
        Otherwise(
            said=_set("under"),
            then=frozenset([""]),
            unless=_set("reads shows psi bar less lower low below kpa pounds lb"),
        ),
    ),
    "test_gauge_doubtful": (
        # "a mechanical gauge teed off the gallery"
        Otherwise(
            said=_set("off"),
            beside=_set("teed tee'd tapped plumbed branched taken screwed came comes spliced run"),
            unless=_set("wrong doubtful suspect inaccurate rubbish junk differ differs disagree"),
        ),
    ),
}
