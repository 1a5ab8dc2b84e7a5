"""The pump cranked, primed and spun by drill, and the checks that show it."""

from knowledge import sources
from knowledge.model import COMMON, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Access, Caution, Inspection

NO_OIL_WHEN_CRANKED = Finding(
    id="no_oil_when_cranked",
    station=Station.PUMP,
    says="no oil comes from the pump's outlet or the filter's place when cranked",
    asks="Filter or outlet union off, cranking: does no oil come?",
    source=sources.FILTER_MAKER_PRIME,
    denies="oil comes in a strong stream when cranked",
    stage=Stage.OUTSIDE,
    normal="a strong stream within half a minute",
    why="it tells a pump that moves no oil from an engine that does not hold pressure",
    background=VERY_RARE,
    also=(
        "no oil out of the filter housing",
        "filter stays empty",
        "new filter still dry",
        "cranked with filter off and nothing came out",
    ),
)
CRANK_WITH_FILTER_OFF = Inspection(
    id="crank_with_filter_off",
    station=Station.PUMP,
    says="crank with the filter or outlet open and see whether oil comes",
    steps=(
        "ignition or fuel off so that it cannot start",
        "rag and tray under the opening",
        "crank for no longer than 30 seconds and watch for a strong stream",
    ),
    minutes=10,
    access=Access.FILTER_OFF,
    reveals=(NO_OIL_WHEN_CRANKED,),
    source=sources.FILTER_MAKER_PRIME,
    tools=("tray", "rags"),
    cautions=(
        Caution.ROTATING,
        Caution.EYES,
        Caution.USED_OIL,
        Caution.WASTE,
        Caution.FIRE,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    also=("does the pump move oil", "crank with filter removed"),
)

FORCED_OIL_BROUGHT_PRESSURE = Finding(
    id="forced_oil_brought_pressure",
    station=Station.PUMP,
    says="forcing oil into the dry pump brought the pressure",
    asks="Oil filled or forced into the pump: did the pressure come?",
    source=sources.FILTER_MAKER_PRIME,
    denies="forcing oil into the pump made no difference",
    stage=Stage.OUTSIDE,
    normal="not needed",
    why="a pump that works once it is wetted was only dry",
    background=VERY_RARE,
    also=(
        "primed it and pressure came up",
        "squirted oil into the pump and it worked",
        "pumped oil in the gallery then it picked up",
    ),
)
FORCE_OIL_INTO_THE_PUMP = Inspection(
    id="force_oil_into_the_pump",
    station=Station.PUMP,
    says="wet the pump: force clean oil into it, then crank",
    steps=(
        "ignition or fuel off so that it cannot start",
        "push clean oil backwards into the pump through filter stud, gauge port or outlet",
        "pack a cover-mounted gear pump with petroleum jelly only if its maker says so",
        "close up, crank for no longer than 30 seconds, watch the gauge",
    ),
    minutes=30,
    access=Access.FILTER_OFF,
    reveals=(FORCED_OIL_BROUGHT_PRESSURE,),
    source=idea_from(sources.PUMP_INSTALLATION_1983),
    tools=("oil can or syringe", "clean oil", "trusted gauge"),
    cautions=(
        Caution.PRIMING,
        Caution.ROTATING,
        Caution.PRESSURE,
        Caution.WASTE,
        Caution.FIRE,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    destroys="the proof that the pump was dry",
    keep="note first whether any oil came when cranked",
    also=("prime the oil pump", "packing the pump with vaseline"),
)

DRILL_GIVES_NONE = Finding(
    id="drill_gives_none",
    station=Station.PUMP,
    says="turned by a drill, the pump gives no pressure",
    asks="Pump turned by a drill, the right way round: no pressure at all?",
    source=idea_from(sources.PRE_OILING_ARTICLE),
    denies="turned by a drill, some pressure comes",
    stage=Stage.OPENED,
    normal="pressure, and load on the drill, within seconds",
    why="the engine's own drive is ruled out: that leaves the pump, its suction or an open passage",
    background=VERY_RARE,
    also=("primed with drill nothing", "drill spins free no oil", "priming tool no pressure"),
)
DRILL_GIVES_LITTLE = Finding(
    id="drill_gives_little",
    station=Station.PUMP,
    says="turned by a drill, the pump gives only little pressure",
    asks="Pump turned by a drill: only little pressure, well below the usual?",
    source=COMMON_PRACTICE,
    denies="turned by a drill, the pressure is not low",
    stage=Stage.OPENED,
    normal="30 to 60 psi is usual with cold oil and a strong drill",
    background=RARE,
    also=("drill only makes 10 psi", "low pressure when priming", "barely builds with drill"),
)
DRILL_GIVES_GOOD = Finding(
    id="drill_gives_good",
    station=Station.PUMP,
    says="turned by a drill, the pump gives good pressure",
    asks="Pump turned by a drill: good pressure?",
    source=COMMON_PRACTICE,
    denies="turned by a drill, the pressure is not good",
    stage=Stage.OPENED,
    normal="30 to 60 psi is usual with cold oil and a strong drill",
    background=COMMON,
    also=("drill makes 50 psi", "pumps fine with a drill", "good pressure when priming"),
)
SPIN_THE_PUMP_BY_DRILL = Inspection(
    id="spin_the_pump_by_drill",
    station=Station.PUMP,
    says="turn the pump by a drill with the engine still, and watch the gauge",
    steps=(
        "ignition off and key out; engine full of oil",
        (
            "if the distributor body closes a gallery, fit its sleeve or an old body first: without "
            "it the gauge reads falsely low"
        ),
        "turn it the way the distributor turned; the wrong way gives no pressure",
        "feel whether the drill takes load, read the gauge, look where oil comes out",
        "no pressure after two minutes: stop and find the cause",
        "not possible on a pump turned by the crankshaft itself",
    ),
    minutes=25,
    access=Access.DISTRIBUTOR_OUT,
    reveals=(DRILL_GIVES_NONE, DRILL_GIVES_LITTLE, DRILL_GIVES_GOOD),
    source=idea_from(sources.PRE_OILING_ARTICLE),
    tools=("strong drill", "priming shaft", "trusted gauge", "trays"),
    cautions=(Caution.PRIMING, Caution.ROTATING, Caution.EYES),
    destroys="the proof that the pump was dry",
    keep="mark the distributor's position; note whether the pump was wet",
    also=("prime with a drill", "priming tool"),
)
