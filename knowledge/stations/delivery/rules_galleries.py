"""Rules at the galleries, their plugs and seals."""

from knowledge import sources
from knowledge.alarm import Alarm, Contradiction
from knowledge.engines import features
from knowledge.model import Severity, Shift, Station
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    is_absent,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import JUDGEMENT
from knowledge.stations.delivery import (
    causes_crank_feed,
    causes_galleries,
    findings_crank_feed,
    findings_galleries,
)

rule = rules_of(Station.DELIVERY)


@rule(
    source=sources.REAR_GALLERY_PLUG_ARTICLE,
    matches=[example(findings_galleries.ALL_PLUGS_ACCOUNTED_FOR)],
    non_matches=[example(), example(lacks=[findings_galleries.ALL_PLUGS_ACCOUNTED_FOR])],
)
def plugs_counted_and_good(known: Known) -> Conclusions:
    """All plugs counted, sealed and at depth: none is missing, too deep or in a wrong place.

    Misleads when one plug hides behind the distributor or in the valley and was not counted.
    """
    if known.has(findings_galleries.ALL_PLUGS_ACCOUNTED_FOR):
        yield is_absent(findings_galleries.GALLERY_PLUG_FOUND_MISSING, sure=0.95)
        yield is_absent(findings_galleries.GALLERY_PLUG_FOUND_TOO_DEEP, sure=0.9)
        yield is_absent(findings_galleries.GALLERY_PLUG_IN_WRONG_PASSAGE, sure=0.9)


@rule(
    source=JUDGEMENT,
    matches=[
        example(
            lacks=[
                features.PUMP_ON_CRANK_NOSE,
                features.PUMP_ON_CAM_NOSE,
                features.OVERHEAD_CAM,
                features.PUMP_OUTSIDE,
            ]
        )
    ],
    non_matches=[
        example(features.PUMP_ON_CRANK_NOSE, lacks=[features.OVERHEAD_CAM, features.PUMP_OUTSIDE]),
        example(features.PUMP_ON_CAM_NOSE, lacks=[features.OVERHEAD_CAM, features.PUMP_OUTSIDE]),
        example(lacks=[features.OVERHEAD_CAM]),
    ],
)
def few_joints_in_the_pressure_line(known: Known) -> Conclusions:
    """With the pump in the sump and the cam in the block, few sealed joints carry pressure."""
    if (
        known.lacks(features.PUMP_ON_CRANK_NOSE)
        and known.lacks(features.PUMP_ON_CAM_NOSE)
        and known.lacks(features.OVERHEAD_CAM)
        and known.lacks(features.PUMP_OUTSIDE)
    ):
        yield less_common(causes_galleries.GALLERY_SEAL_LEAK, Shift.STRONG_DOWN)


@rule(
    source=sources.GALLERY_PLUG_LEFT_OUT,
    matches=[
        example(findings_galleries.GALLERY_PLUG_FOUND_MISSING),
        example(findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE),
        example(findings_galleries.GALLERY_PLUG_LIES_IN_SUMP),
    ],
    non_matches=[
        example(
            lacks=[
                findings_galleries.GALLERY_PLUG_FOUND_MISSING,
                findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE,
            ]
        )
    ],
)
def open_hole_in_the_pressure_line(known: Known) -> Conclusions:
    """With a gallery open, the bearings get only what is left."""
    if known.has(findings_galleries.GALLERY_PLUG_FOUND_MISSING) or known.has(
        findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE
    ):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "A gallery stands open inside, every plug must be in: do not run until you have fitted "
            "it, primed the circuit and watched it.",
        )
    if known.has(findings_galleries.GALLERY_PLUG_LIES_IN_SUMP):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Loose plug in the engine, none is allowed: do not run until you find where it belongs.",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings_galleries.GALLERY_FOUND_BLOCKED)],
    non_matches=[example(lacks=[findings_galleries.GALLERY_FOUND_BLOCKED])],
)
def gallery_closed(known: Known) -> Conclusions:
    """Behind a blocked gallery or oil hole something runs dry, whatever the gauge reads."""
    if known.has(findings_galleries.GALLERY_FOUND_BLOCKED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "A gallery or oil hole is blocked, every one must be clear: do not run until it is "
            "cleared and you have looked at the bearing behind it.",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings_galleries.ONE_BEARING_GETS_NO_OIL)],
    non_matches=[example(lacks=[findings_galleries.ONE_BEARING_GETS_NO_OIL])],
)
def bearing_without_oil(known: Known) -> Conclusions:
    """A bearing that gets no oil while priming gets none running, whatever the gauge reads."""
    if known.has(findings_galleries.ONE_BEARING_GETS_NO_OIL):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "One bearing gets no oil, each must show some at some crank angle: do not run, clear its "
            "feed.",
        )


@rule(
    source=JUDGEMENT,
    matches=[
        example(
            findings_galleries.ALL_PLUGS_ACCOUNTED_FOR,
            findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE,
        ),
        example(
            findings_galleries.ALL_PLUGS_ACCOUNTED_FOR, findings_galleries.GALLERY_PLUG_LIES_IN_SUMP
        ),
    ],
    non_matches=[
        example(findings_galleries.ALL_PLUGS_ACCOUNTED_FOR),
        example(findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE),
    ],
)
def plug_count_does_not_add_up(known: Known) -> Conclusions:
    """If all plugs are in, no hole can stream oil and no plug can lie in the sump."""
    if known.has(findings_galleries.ALL_PLUGS_ACCOUNTED_FOR):
        for sight in (
            findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE,
            findings_galleries.GALLERY_PLUG_LIES_IN_SUMP,
        ):
            if known.has(sight):
                yield Contradiction(
                    (findings_galleries.ALL_PLUGS_ACCOUNTED_FOR, sight),
                    "All plugs are recorded as in, yet one seems to be out: count again with the drawing, "
                    "hidden ones too.",
                    findings_galleries.ALL_PLUGS_ACCOUNTED_FOR,
                )


@rule(
    source=JUDGEMENT,
    matches=[
        example(lacks=[features.DRY_SUMP]),
        example(features.DRY_SUMP, features.PUSHROD_ENGINE, lacks=[features.WATER_COOLED]),
    ],
    non_matches=[
        example(features.DRY_SUMP),
        example(features.DRY_SUMP, features.PUSHROD_ENGINE),
        example(),
    ],
)
def crank_fed_at_its_end(known: Known) -> Conclusions:
    """Engines with their oil in the sump feed the crank through its mains; many old motorcycles do not."""
    if known.lacks(features.DRY_SUMP):
        yield cannot_be(causes_crank_feed.CRANK_FEED_SEAL_LEAK)
        yield is_absent(findings_crank_feed.CRANK_FEED_SEAL_BAD)
    if (
        known.has(features.DRY_SUMP)
        and known.has(features.PUSHROD_ENGINE)
        and known.lacks(features.WATER_COOLED)
    ):
        yield more_common(causes_crank_feed.CRANK_FEED_SEAL_LEAK, Shift.STRONG_UP)
