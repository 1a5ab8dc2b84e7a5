"""Rules on debris: what it shows and what it does not."""

from knowledge import sources
from knowledge.alarm import Alarm, Contradiction
from knowledge.debris import findings
from knowledge.model import Severity, Station
from knowledge.rule_api import Conclusions, Known, example, is_absent, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.oil import findings as oil_findings

rule = rules_of(Station.BEARINGS)


BEARING_METAL = (findings.COPPER_FLAKES, findings.GREY_SOFT_FLAKES, findings.LINING_STRIP)

#: more than the fine dust of running in, wherever it was found
FLAKES = (
    findings.METAL_IN_FILTER,
    findings.METAL_IN_PAN,
    findings.METAL_THROUGHOUT,
    findings.MAGNETIC_METAL,
    findings.BRIGHT_SOFT_METAL,
)


@rule(
    source=sources.CUT_FILTER_ANALYSIS_2026,
    matches=[example(findings.FINE_DUST_ONLY)],
    non_matches=[example(findings.METAL_IN_FILTER)],
)
def fine_dust_is_no_damage(known: Known) -> Conclusions:
    """Fine dust without flakes is normal run-in wear, not damage."""
    if known.has(findings.FINE_DUST_ONLY):
        yield is_absent(findings.METAL_IN_FILTER, sure=0.9)
        for metal in BEARING_METAL:
            yield is_absent(metal, sure=0.8)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[findings.METAL_IN_FILTER, findings.METAL_IN_PAN])],
    non_matches=[example(lacks=[findings.METAL_IN_FILTER])],
)
def clean_filter_and_clean_sump(known: Known) -> Conclusions:
    """Filter and sump both clean: no bearing is breaking up yet.

    Misleads when both were changed or washed just before.
    """
    if known.lacks(findings.METAL_IN_FILTER) and known.lacks(findings.METAL_IN_PAN):
        yield is_absent(findings.METAL_THROUGHOUT)
        for metal in BEARING_METAL:
            yield is_absent(metal, sure=0.9)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.METAL_THROUGHOUT)],
    non_matches=[example(findings.METAL_IN_FILTER)],
)
def everywhere_includes_filter_and_sump(known: Known) -> Conclusions:
    """Metal all through the engine is in filter and sump too."""
    if known.has(findings.METAL_THROUGHOUT):
        yield is_present(findings.METAL_IN_FILTER, sure=0.9)
        yield is_present(findings.METAL_IN_PAN, sure=0.9)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.PLUG_FUR_ONLY)],
    non_matches=[example(lacks=[findings.PLUG_FUR_ONLY])],
)
def fur_on_the_plug_is_normal(known: Known) -> Conclusions:
    """Only thin fur on the drain plug is normal: no steel slivers, and little metal at all.

    Misleads as to bearing lining, which no magnet holds.
    """
    if known.has(findings.PLUG_FUR_ONLY):
        yield is_absent(findings.MAGNETIC_METAL, sure=0.8)
        yield is_absent(findings.METAL_IN_PAN, sure=0.7)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.FINE_DUST_ONLY, findings.METAL_IN_FILTER)],
    non_matches=[example(findings.FINE_DUST_ONLY, lacks=[findings.METAL_IN_FILTER])],
)
def dust_only_and_metal_do_not_fit(known: Known) -> Conclusions:
    """The filter cannot hold only fine dust and also metal flakes."""
    if known.has(findings.FINE_DUST_ONLY) and known.has(findings.METAL_IN_FILTER):
        yield Contradiction(
            (findings.FINE_DUST_ONLY, findings.METAL_IN_FILTER),
            "the filter holds either only fine dust or metal: spread the pleats and look again",
            findings.METAL_IN_FILTER,
        )


@rule(
    source=sources.INSIDE_YOUR_FILTER,
    matches=[
        example(findings.METAL_IN_FILTER),
        example(findings.COPPER_FLAKES),
        example(findings.BRIGHT_SOFT_METAL),
        example(oil_findings.GLITTER_IN_OIL),
    ],
    non_matches=[example(findings.FINE_DUST_ONLY), example(findings.PLUG_FUR_ONLY)],
)
def flakes_or_copper_found(known: Known) -> Conclusions:
    """Metal flakes, glitter or copper found: do not run until you have inspected the bearings."""
    if any(known.has(metal) for metal in (*FLAKES, *BEARING_METAL, oil_findings.GLITTER_IN_OIL)):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "metal flakes found, fine grey dust is the limit: do not run until you have inspected "
            "the bearings",
        )
