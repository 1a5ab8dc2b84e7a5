"""Rules at restrictors, jets, distributor body and turbo."""

from knowledge import sources
from knowledge.alarm import Alarm, Contradiction
from knowledge.circuit import conditions
from knowledge.engines import features
from knowledge.model import SELDOM, SOMETIMES, Severity, Station
from knowledge.rule_api import Conclusions, Known, cannot_be, example, is_absent, leads_to, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.stations.topend import causes_feeds, findings, findings_feeds

rule = rules_of(Station.TOPEND)


@rule(
    source=idea_from(sources.TURBO_MAKER_STARVATION),
    matches=[
        example(
            features.TURBOCHARGED,
            findings_feeds.TURBO_FAILED,
            findings_feeds.TURBO_SHAFT_STIFF_OR_BLUED,
        )
    ],
    non_matches=[
        example(
            features.TURBOCHARGED,
            lacks=[findings_feeds.TURBO_FAILED, findings_feeds.TURBO_SHAFT_STIFF_OR_BLUED],
        )
    ],
)
def turbo_dies_with_the_bearings(known: Known) -> Conclusions:
    """When the whole engine runs short of oil, its turbo is among the first parts to fail."""
    if known.has(features.TURBOCHARGED):
        yield leads_to(
            conditions.BEARINGS_STARVED,
            findings_feeds.TURBO_FAILED,
            SOMETIMES,
            sources.TURBO_MAKER_STARVATION,
        )
        yield leads_to(
            conditions.BEARINGS_STARVED,
            findings_feeds.TURBO_SHAFT_STIFF_OR_BLUED,
            SOMETIMES,
            COMMON_PRACTICE,
        )
        yield leads_to(conditions.BEARINGS_STARVED, findings.TURBO_SHRIEKS, SELDOM, JUDGEMENT)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[features.TURBOCHARGED])],
    non_matches=[example(features.TURBOCHARGED), example()],
)
def no_turbo_no_turbo_feed(known: Known) -> Conclusions:
    """Without a turbocharger there is no turbo feed."""
    if known.lacks(features.TURBOCHARGED):
        yield cannot_be(causes_feeds.TURBO_FEED_LEAK)
        yield cannot_be(causes_feeds.TURBO_FEED_RESTRICTED)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_feeds.PISTON_JET_FOUND_BROKEN)],
    non_matches=[
        example(lacks=[findings_feeds.PISTON_JET_FOUND_BROKEN]),
        example(findings_feeds.JETS_RUN_AT_LOW_PRESSURE),
    ],
)
def piston_without_its_jet(known: Known) -> Conclusions:
    """A piston without its jet overheats, and what came off lies loose under the crank."""
    if known.has(findings_feeds.PISTON_JET_FOUND_BROKEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Piston cooling jet missing, broken or loose, every piston needs its own: do not run until "
            "all are fitted and aimed and every loose piece is found.",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[features.PISTON_JETS])],
    non_matches=[example(features.PISTON_JETS), example()],
)
def no_jets_under_the_pistons(known: Known) -> Conclusions:
    """Without piston jets, none can be stuck open."""
    if known.lacks(features.PISTON_JETS):
        yield cannot_be(causes_feeds.PISTON_JET_OPEN)
        yield is_absent(findings_feeds.JETS_RUN_AT_LOW_PRESSURE)
        yield is_absent(findings_feeds.PISTON_JET_FOUND_BROKEN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[features.PUMP_ON_DISTRIBUTOR_SHAFT, features.PUMP_ON_SKEW_GEAR])],
    non_matches=[
        example(features.PUMP_ON_DISTRIBUTOR_SHAFT, lacks=[features.PUMP_ON_SKEW_GEAR]),
        example(lacks=[features.PUMP_ON_DISTRIBUTOR_SHAFT]),
    ],
)
def distributor_clear_of_the_galleries(known: Known) -> Conclusions:
    """A distributor that is not on the pump drive crosses no pressure gallery."""
    if known.lacks(features.PUMP_ON_DISTRIBUTOR_SHAFT) and known.lacks(features.PUMP_ON_SKEW_GEAR):
        yield cannot_be(causes_feeds.DIST_HOUSING_LEAK)


@rule(
    source=idea_from(sources.TURBO_MAKER_STARVATION),
    matches=[
        example(findings_feeds.TURBO_LINE_LEAKS),
        example(findings.TURBO_SHRIEKS),
        example(findings_feeds.TURBO_SHAFT_STIFF_OR_BLUED),
        example(findings_feeds.TURBO_FEED_FOUND_BLOCKED),
    ],
    non_matches=[
        example(
            lacks=[
                findings_feeds.TURBO_LINE_LEAKS,
                findings_feeds.TURBO_FEED_FOUND_BLOCKED,
                findings.TURBO_SHRIEKS,
                findings_feeds.TURBO_SHAFT_STIFF_OR_BLUED,
            ]
        )
    ],
)
def turbo_in_danger(known: Known) -> Conclusions:
    """A leaking turbo line can start a fire; a starved turbo fails within minutes."""
    if known.has(findings_feeds.TURBO_LINE_LEAKS):
        yield Alarm(
            Severity.STOP,
            "Turbo oil line leaks, no leak allowed beside the hot housing: shut down, watch for fire.",
        )
    if known.has(findings.TURBO_SHRIEKS):
        yield Alarm(
            Severity.STOP,
            "Turbo shrieks, an even whistle is the limit: shut down, check its oil feed first.",
        )
    if known.has(findings_feeds.TURBO_SHAFT_STIFF_OR_BLUED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Turbo shaft stiff or blued, it must spin freely: do not run until feed and turbo are "
            "put right.",
        )
    if known.has(findings_feeds.TURBO_FEED_FOUND_BLOCKED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Turbo feed blocked, a full stream must come out of it: do not run, the turbo lasts "
            "seconds without oil; clear or renew the pipe, find the cause, prime the turbo (then "
            "record: turbo feed clear).",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings.TURBO_SHRIEKS, lacks=[features.TURBOCHARGED])],
    non_matches=[
        example(findings.TURBO_SHRIEKS, features.TURBOCHARGED),
        example(findings.TURBO_SHRIEKS),
    ],
)
def turbo_heard_where_there_is_none(known: Known) -> Conclusions:
    """A turbo cannot shriek, fail or leak on an engine that has none."""
    if known.lacks(features.TURBOCHARGED):
        for sight in (
            findings.TURBO_SHRIEKS,
            findings_feeds.TURBO_FAILED,
            findings_feeds.TURBO_LINE_LEAKS,
            oil_heat.OIL_IN_TURBO_OUTLETS,
        ):
            if known.has(sight):
                yield Contradiction(
                    (sight, features.TURBOCHARGED),
                    "A turbo fault is recorded on an engine without a turbocharger: correct the layout.",
                    features.TURBOCHARGED,
                )
