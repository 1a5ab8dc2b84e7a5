"""Rules on what went back in after work, as the person who did it reports it."""

from knowledge.history import areas_inside
from knowledge.history import findings_put_back as findings
from knowledge.model import Shift, Station
from knowledge.rule_api import Conclusions, Known, example, less_common, more_common, rules_of
from knowledge.sources import JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out
from knowledge.stations.delivery import causes_galleries
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump

rule = rules_of(Station.ASSEMBLY)
_DATED = frozenset([areas_inside.SUMP, areas_inside.PICKUP])
_PLUGS = (causes_galleries.GALLERY_PLUG_MISSING, causes_left_out.CRANK_PLUG_MISSING)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.PLUGS_NOT_COUNTED), example(findings.PLUGS_FITTED_BY_OTHERS)],
    non_matches=[
        example(lacks=[findings.PLUGS_NOT_COUNTED, findings.PLUGS_FITTED_BY_OTHERS]),
        example(findings.PLUGS_COUNTED_IN),
    ],
)
def plugs_nobody_counted(known: Known) -> Conclusions:
    """A plug each of two people took for the other's work is the one left out."""
    if known.has(findings.PLUGS_NOT_COUNTED) or known.has(findings.PLUGS_FITTED_BY_OTHERS):
        for cause in _PLUGS:
            yield more_common(cause, Shift.STRONG_UP)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.PLUGS_COUNTED_IN)],
    non_matches=[
        example(lacks=[findings.PLUGS_COUNTED_IN]),
        example(findings.PLUGS_NOT_COUNTED),
    ],
)
def plugs_counted_back_in(known: Known) -> Conclusions:
    """Plugs that were counted back in are seldom missing; one may still be loose or leak."""
    if known.has(findings.PLUGS_COUNTED_IN):
        for cause in _PLUGS:
            yield less_common(cause)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.SUMP_WAS_OFF)],
    non_matches=[example(lacks=[findings.SUMP_WAS_OFF]), example(findings.OLD_SEALS_REUSED)],
)
def sump_off_just_before(known: Known) -> Conclusions:
    """What was open is closed again: its seals, its screws, and what was left lying in it.

    Work on sump or pickup that was entered with its date says so itself, and counts once.
    """
    dated = (w.area for w in known.earlier_work())
    if known.has(findings.SUMP_WAS_OFF) and _DATED.isdisjoint(dated):
        yield more_common(suction_causes.SUCTION_JOINT_AIR_LEAK, Shift.STRONG_UP)
        for cause in (
            suction_causes.PICKUP_TUBE_LOOSE,
            causes_sump.FOREIGN_BODY_IN_SUMP,
            causes_sump.PICKUP_CLEARANCE_TIGHT,
            assembly_causes.SEALANT_DEBRIS,
        ):
            yield more_common(cause)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.OLD_SEALS_REUSED)],
    non_matches=[
        example(lacks=[findings.OLD_SEALS_REUSED]),
        example(findings.PLUGS_COUNTED_IN),
    ],
)
def old_seals_back_on_the_suction_side(known: Known) -> Conclusions:
    """A seal that has taken a set no longer fills its groove: the pump draws air past it."""
    if known.has(findings.OLD_SEALS_REUSED):
        yield more_common(suction_causes.SUCTION_JOINT_AIR_LEAK, Shift.STRONG_UP)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[findings.OLD_SEALS_REUSED])],
    non_matches=[
        example(findings.OLD_SEALS_REUSED),
        example(lacks=[findings.PLUGS_COUNTED_IN]),
    ],
)
def new_seals_on_the_suction_side(known: Known) -> Conclusions:
    """New seals on the suction side seldom leak; one may still be pinched or left out."""
    if known.lacks(findings.OLD_SEALS_REUSED):
        yield less_common(suction_causes.SUCTION_JOINT_AIR_LEAK)
