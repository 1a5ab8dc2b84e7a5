"""Findings on what went back in after work, as the person who did it reports it."""

from knowledge.history.findings import history
from knowledge.sources import COMMON_PRACTICE

PLUGS_COUNTED_IN = history(
    id="plugs_counted_in",
    says="every gallery and crank plug was counted back in at the rebuild",
    asks="Was every gallery and crank plug counted back in at the rebuild?",
    source=COMMON_PRACTICE,
    also=("all gallery plugs back in", "counted the plugs", "all plugs refitted"),
)
PLUGS_NOT_COUNTED = history(
    id="plugs_not_counted",
    says="nobody counted the gallery and crank plugs back in at the rebuild",
    asks="Did nobody count the gallery and crank plugs back in at the rebuild?",
    source=COMMON_PRACTICE,
    also=("did not check the gallery plugs", "never looked at the plugs"),
)
PLUGS_FITTED_BY_OTHERS = history(
    id="plugs_fitted_by_others",
    says="somebody else was to fit the gallery and crank plugs, and nobody checked",
    asks="Was somebody else to fit the gallery and crank plugs, and did nobody check?",
    source=COMMON_PRACTICE,
    also=("machine shop fitted the plugs", "assumed the shop put the plugs in"),
)
SUMP_WAS_OFF = history(
    id="sump_was_off",
    says="the sump, strainer or pickup was off just before",
    asks="Was the sump, strainer or pickup off just before it began?",
    source=COMMON_PRACTICE,
    also=("sump plate off", "strainer cleaned just before", "oil pan off just before"),
)
OLD_SEALS_REUSED = history(
    id="old_seals_reused",
    says="an old seal or gasket went back in with the sump, strainer or pickup",
    asks="Did an old seal or gasket go back in with the sump, strainer or pickup?",
    source=COMMON_PRACTICE,
    also=("reused the o ring", "old gasket refitted", "same o-ring put back"),
)
