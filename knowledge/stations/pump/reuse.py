"""Whether cover and gears of the pump go back in."""

from knowledge.model import Station
from knowledge.reuse import Fate, FateRule, UsedPart
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.pump import findings_bench, findings_wear

PUMP_COVER = UsedPart(
    id="used_pump_cover",
    station=Station.PUMP,
    says="pump cover",
    rules=(
        FateRule(
            fate=Fate.RENEW,
            when=(findings_wear.PIECE_THROUGH_PUMP_COVER, findings_wear.PUMP_CASTING_CRACKED),
            how="renew the pump: do not repair a broken or cracked casting",
            source=COMMON_PRACTICE,
        ),
        FateRule(
            fate=Fate.REWORK,
            when=(
                findings_bench.COVER_GROOVED,
                findings_bench.COVER_WARPED,
                findings_wear.PUMP_SCORED_SEEN,
            ),
            how=(
                "lap it flat on plate glass; renew it if a fingernail still catches or it gets thin"
            ),
            source=COMMON_PRACTICE,
        ),
    ),
    look="straightedge and feeler across the cover, a fingernail across the gear marks",
    reuse="wash, lock the screws, measure end clearance with it on",
    source=COMMON_PRACTICE,
    sound=(findings_bench.PUMP_FOUND_SOUND,),
)
PUMP_GEARS = UsedPart(
    id="used_pump_gears",
    station=Station.PUMP,
    says="pump gears or rotors",
    rules=(
        FateRule(
            fate=Fate.RENEW,
            when=(
                findings_wear.GEARS_WORN_OUT,
                findings_wear.PUMP_GEAR_BROKEN,
                findings_wear.GEAR_BACKLASH_WIDE,
                findings_wear.CAVITATION_MARKS,
                findings_bench.SIDE_CLEARANCE_WIDE,
                findings_bench.ROTOR_TIP_WIDE,
                findings_bench.PIECE_IN_PUMP,
            ),
            how="renew gears or rotors as a set, or the pump; measure body and bush first",
            source=COMMON_PRACTICE,
        ),
        FateRule(
            fate=Fate.REWORK,
            when=(findings_bench.END_CLEARANCE_WIDE,),
            how="lap cover or body until the end clearance is right",
            source=COMMON_PRACTICE,
        ),
    ),
    look="end, side and tip clearance, backlash; magnifier over teeth and bores",
    reuse="wash, oil, refit the same way round with the same teeth in mesh",
    source=COMMON_PRACTICE,
    sound=(findings_bench.PUMP_FOUND_SOUND,),
)
