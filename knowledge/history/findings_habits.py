"""The habits of a model: several alike, known for it, called normal by its maker."""

from knowledge.model import OCCASIONAL, RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE

SEVERAL_ALIKE = Finding(
    id="several_alike",
    station=Station.ASSEMBLY,
    says="several engines of this kind show the same",
    asks="Do several engines of this kind, in the same service, show the same?",
    source=COMMON_PRACTICE,
    denies="others of its kind do not show it",
    stage=Stage.KNOWN,
    background=RARE,
    also=(
        "all of them do it",
        "others have the same",
        "whole fleet does it",
        "same on both engines",
    ),
)
KNOWN_FOR_MODEL = Finding(
    id="known_for_model",
    station=Station.ASSEMBLY,
    says="the trouble is well known for this model",
    asks="Is the trouble well known for this model?",
    source=COMMON_PRACTICE,
    denies="not known for this model",
    stage=Stage.KNOWN,
    background=OCCASIONAL,
    also=(
        "known problem",
        "common fault on these",
        "known for it",
        "recall",
        "service bulletin",
    ),
)
MAKER_CALLS_IT_NORMAL = Finding(
    id="maker_calls_it_normal",
    station=Station.ASSEMBLY,
    says="the maker or dealer says the reading is normal for it",
    asks="Does the maker or dealer say the reading is normal for it?",
    source=COMMON_PRACTICE,
    denies="the maker does not call it normal",
    stage=Stage.KNOWN,
    background=RARE,
    also=(
        "dealer says normal",
        "within spec",
        "they all do that",
        "maker says it is normal",
    ),
)
