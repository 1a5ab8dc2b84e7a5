"""The suction side from outside, and the checks that show it."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.engines import features, features_build
from knowledge.model import (
    COMMON,
    EXCEPTIONAL,
    HARDLY_EVER,
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Finding,
    Kind,
    Stage,
    Station,
)
from knowledge.pressure import direct_gauge, patterns, patterns_speed
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.pump import findings as pump_findings
from knowledge.stations.suction import findings_sights
from knowledge.work import Access, Caution, Inspection

TRAY_VERY_OLD = Finding(
    id="tray_very_old",
    station=Station.SUCTION,
    says="a windage tray decades old was kept or refitted",
    asks="Windage tray: an old stock one, decades old, reused?",
    source=COMMON_PRACTICE,
    denies="the windage tray is not an old one used again",
    kind=Kind.HISTORY,
    stage=Stage.KNOWN,
    why="thin old sheet metal fatigues: it cracks, works loose and hits the rods",
    also=("50 year old windage tray", "original tray reused", "stock tray from the sixties"),
)
SOMETHING_MISSED_AFTER_WORK = Finding(
    id="something_missed_after_work",
    station=Station.SUCTION,
    says="a rag, cap, plug or small part could not be found after the work",
    asks="After the last work: a rag, cap, plug or small part missing?",
    source=COMMON_PRACTICE,
    denies="every rag, cap and part was accounted for",
    stage=Stage.KNOWN,
    normal="all accounted for",
    background=VERY_RARE,
    also=("lost a rag", "missing shop towel", "dropped a bolt in the engine", "cap never found"),
)
SUMP_DENTED = Finding(
    id="sump_dented",
    station=Station.SUCTION,
    says="the sump is dented or pushed up under the pickup",
    asks="Sump dented or pushed up under the pickup?",
    source=sources.LOWER_ENGINE_NOISE_2006,
    denies="the sump is flat under the pickup",
    stage=Stage.OUTSIDE,
    normal="flat by a straightedge",
    why="a small dent in the wrong place closes the inlet",
    background=OCCASIONAL,
    also=("dented oil pan", "pan caved in", "sump hit a rock", "jack mark on the pan"),
)
SEALER_SQUEEZED_OUT = Finding(
    id="sealer_squeezed_out",
    station=Station.SUCTION,
    says="thick sealer is squeezed out along sump or cover joints",
    asks="Thick sealer squeezed out along the sump or cover joints?",
    source=idea_from(sources.SEALER_TEXT_1992),
    denies="no sealer is squeezed out at the joints",
    stage=Stage.OUTSIDE,
    normal="a thin even line, or a gasket",
    why="as much hangs inside as shows outside",
    background=COMMON,
    also=(
        "too much silicone",
        "rtv squeezed out",
        "gasket maker everywhere",
        "blue sealer at the pan",
    ),
)
LOOK_UNDER_THE_SUMP = Inspection(
    id="look_under_the_sump",
    station=Station.SUCTION,
    says="look at the sump and its joints from below",
    steps=(
        "engine stopped and cool; vehicle on stands, never under a jack alone",
        "straightedge along the floor under the pickup: note any dent, jack mark or scrape",
        "look along sump and cover joints for squeezed-out sealer",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(SUMP_DENTED, SEALER_SQUEEZED_OUT),
    source=COMMON_PRACTICE,
    tools=("lamp", "straightedge", "stands"),
    cautions=(Caution.LIFTING, Caution.HOT),
    also=("check pan for dents", "look under the oil pan"),
)

SUCTION_HOSE_FLATTENS = Finding(
    id="suction_hose_flattens",
    station=Station.SUCTION,
    says="the suction hose is sucked flat, kinked or soft",
    asks="Suction hose soft, kinked, or flattening as the revs rise?",
    source=sources.LOWER_ENGINE_NOISE_2006,
    denies="the suction hose stays round",
    stage=Stage.OUTSIDE,
    normal="round at every speed",
    background=HARDLY_EVER,
    also=("hose collapses", "oil line sucked flat", "kinked feed hose", "hose liner came loose"),
)
SUCTION_UNION_LOOSE = Finding(
    id="suction_union_loose",
    station=Station.SUCTION,
    says="a union, clamp or hose on the suction side is loose or off",
    asks="Union, clamp or hose between tank or strainer and pump: loose or off?",
    source=sources.LOWER_ENGINE_NOISE_2006,
    denies="hoses and unions on the suction side are tight",
    stage=Stage.OUTSIDE,
    normal="tight, no trace of oil or air",
    background=VERY_RARE,
    also=(
        "feed hose came off",
        "loose fitting on oil tank line",
        "hose clamp slack",
        "suction pipe nut loose",
    ),
)
WATCH_TANK_AND_HOSES = Inspection(
    id="watch_tank_and_hoses",
    station=Station.SUCTION,
    says="watch tank level, suction hose and unions",
    steps=(
        "engine stopped: check every clamp and union, feel the hose for soft spots and kinks",
        "compare the bore of hose and fittings with the pump's inlet",
        "check that the tank valve is open and the pump belt is on, with its guard fitted",
        "start, watch tank level and hose from a distance as the revs rise; stop at once if the "
        "pressure is below the limit",
    ),
    minutes=15,
    access=Access.OUTSIDE,
    reveals=(
        SUCTION_HOSE_FLATTENS,
        SUCTION_UNION_LOOSE,
        pump_findings.TANK_EMPTIES_RUNNING,
        findings_sights.OIL_VALVE_FOUND_SHUT,
    ),
    only_with=(features.DRY_SUMP, features.PUMP_OUTSIDE, features_build.TANK_TAP),
    source=COMMON_PRACTICE,
    tools=("lamp", "spanners"),
    cautions=RUNNING,
    needs_running=True,
    also=("dry sump check", "look at oil tank", "check suction hose"),
)

TANK_STILL_FULL = Finding(
    id="tank_still_full",
    station=Station.SUCTION,
    says="the oil tank is still full although the pressure is gone",
    asks="Is the oil tank still full, although the pressure is gone?",
    source=COMMON_PRACTICE,
    denies="the tank was not left full",
    stage=Stage.OUTSIDE,
    why="the oil is there but cannot reach the pump: check the hose, union and valve between",
    background=EXCEPTIONAL,
    also=("tank full but no pressure", "plenty of oil in tank", "oil not leaving the tank"),
)
FEEL_SUCTION_UNIONS = Inspection(
    id="feel_suction_unions",
    station=Station.SUCTION,
    says="suction hose and unions, engine stopped",
    steps=(
        "engine stopped and cool: is the tank still full?",
        "check every clamp and union from tank or strainer to pump by hand, then with a wrench",
        "bend and press the hose: soft, kinked, liner loose?",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(SUCTION_UNION_LOOSE, SUCTION_HOSE_FLATTENS, TANK_STILL_FULL),
    only_with=(features.DRY_SUMP, features.PUMP_OUTSIDE, features_build.TANK_TAP),
    source=COMMON_PRACTICE,
    tools=("lamp", "spanners"),
    cautions=(Caution.HOT,),
    keep="mark how far each union could be turned",
    also=("check tank lines", "feel the oil hoses"),
)

OVERFILL_STEADIES_IT = Finding(
    id="overfill_steadies_it",
    station=Station.SUCTION,
    says="with oil a little over the mark, the pressure comes right",
    asks="About a quart (1 l) over the mark for a trial: does the pressure come right?",
    source=COMMON_PRACTICE,
    denies="filling over the mark changes nothing",
    stage=Stage.OUTSIDE,
    normal="no change with the level within or just over the marks",
    why="oil that covers a leaking joint or a high pickup keeps the air out",
    background=VERY_RARE,
    also=(
        "better with an extra quart",
        "overfilling helps",
        "only steady when overfull",
        "nose down it has pressure",
    ),
)
FILL_OVER_THE_MARK = Inspection(
    id="fill_over_the_mark",
    station=Station.SUCTION,
    says="fill a little over the mark for a short trial",
    steps=(
        "read the level and take the oil sample first",
        "add about a quart (1 l) of the same oil, not enough to reach the crank",
        "run briefly at idle and moderate revs with a trusted gauge: does it come right?",
        "drain back to the mark at once; do not work the engine overfilled",
    ),
    minutes=20,
    access=Access.OIL_SAMPLE,
    reveals=(OVERFILL_STEADIES_IT, direct_gauge.TOP_UP_CURES_FOR_A_WHILE, patterns.NEEDLE_FLICKERS),
    source=COMMON_PRACTICE,
    tools=("oil", "trusted gauge"),
    cautions=RUNNING,
    destroys="the level as found",
    keep="write down the level and sample the oil before adding any",
    needs_running=True,
    also=("overfill test", "add an extra quart"),
)

OIL_SLOW_TO_RETURN = Finding(
    id="oil_slow_to_return",
    station=Station.SUCTION,
    says="right after a fast run the stick reads much lower than later",
    asks="Right after a fast run: stick much lower than ten minutes later?",
    source=idea_from(sources.OIL_STARVATION_ARTICLE),
    denies="the oil is back in the sump soon after stopping",
    stage=Stage.OUTSIDE,
    normal="most of it back within a minute or two when hot",
    background=RARE,
    also=("level drops after revving", "oil stays up top", "takes ages to drain back down"),
)
READ_LEVEL_TWICE = Inspection(
    id="read_level_twice",
    station=Station.SUCTION,
    says="read the oil level right after a fast run and again later",
    steps=(
        "level ground, oil hot; hold fast revs for a minute while the pressure stays within limits",
        "stop, read the stick at once, and again after ten minutes",
        "more than about a quart (1 l) of difference: the oil is held up above",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(OIL_SLOW_TO_RETURN, patterns_speed.FALLS_AS_REVS_RISE),
    source=COMMON_PRACTICE,
    tools=("cloth", "watch"),
    cautions=RUNNING,
    needs_running=True,
    waits_minutes=10,
    also=("check level hot and after", "drain back check"),
)

PRESSURE_BACK_AFTER_THAW = Finding(
    id="pressure_back_after_thaw",
    station=Station.SUCTION,
    says="the pressure came back once the frozen engine had thawed",
    asks="Little or no pressure in frost, and right again once thawed?",
    source=COMMON_PRACTICE,
    denies="warming the engine through made no difference",
    stage=Stage.KNOWN,
    why="stiff oil only builds pressure late; ice lets none through until it melts",
    background=VERY_RARE,
    also=(
        "fine after warming the garage",
        "ok once thawed out",
        "pressure came back when it warmed up outside",
        "frozen in the morning",
    ),
)
THAW_THE_SUMP = Inspection(
    id="thaw_the_sump",
    station=Station.SUCTION,
    says="warm a frozen engine through and try again",
    steps=(
        "do not crank it frozen",
        "bring it into a warm place, or use a sump heater or warm air; never a flame",
        "drain a little first: water or slush comes out before the oil",
        "start and watch the gauge: stop if nothing shows within ten seconds",
    ),
    minutes=20,
    access=Access.OUTSIDE,
    reveals=(PRESSURE_BACK_AFTER_THAW,),
    source=COMMON_PRACTICE,
    tools=("heated room or sump heater", "clean jar"),
    cautions=(*RUNNING, Caution.FIRE, Caution.USED_OIL, Caution.WASTE),
    destroys="the ice itself",
    keep="draw a little from the drain plug into a jar before heating",
    needs_running=True,
    waits_minutes=240,
    also=("let it thaw", "warm it up in the garage"),
)
