"""Bearings as heard, felt and turned by hand, and the checks that show it."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.model import OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.pressure import patterns
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Access, Caution, Inspection

ROD_THROUGH_BLOCK = Finding(
    id="rod_through_block",
    station=Station.BEARINGS,
    says="a rod has broken out through the block",
    asks="A broken rod, or one through the block?",
    source=idea_from(sources.CARLEY_1997),
    denies="the block is whole",
    stage=Stage.KNOWN,
    normal="no hole",
    background=VERY_RARE,
    also=(
        "threw a rod",
        "rod out the side",
        "hole knocked in the block",
        "windowed block",
    ),
)
STOPPED_WITH_LOSS_OF_POWER = Finding(
    id="stopped_with_loss_of_power",
    station=Station.BEARINGS,
    says="the engine lost power, or stopped, by itself",
    asks="Did the engine lose power or stop by itself?",
    source=COMMON_PRACTICE,
    denies="it kept full power",
    stage=Stage.KNOWN,
    normal="full power",
    background=VERY_RARE,
    also=("engine quit", "lost power", "died on the road", "cut out", "failed under way"),
)
BEARINGS_FAILED_AGAIN = Finding(
    id="bearings_failed_again",
    station=Station.BEARINGS,
    says="bearings were renewed before and failed again",
    asks="Bearings renewed before, and failed again?",
    source=idea_from(sources.BEARING_BROCHURE_PREFACE),
    denies="no bearing failed before",
    stage=Stage.KNOWN,
    normal="new shells last",
    why="a bearing that fails twice was not the first fault",
    background=VERY_RARE,
    also=("same bearing went again", "second set of bearings", "rebuilt and failed again"),
)
ENGINE_BANGED_OR_SHOOK = Finding(
    id="engine_banged_or_shook",
    station=Station.BEARINGS,
    says="the engine banged, hammered or shook",
    asks="Did the engine bang, hammer or shake?",
    source=COMMON_PRACTICE,
    denies="no bang and no shaking",
    stage=Stage.KNOWN,
    normal="smooth",
    background=RARE,
    also=(
        "loud bang",
        "vibration",
        "hammered loudly",
        "rough running",
    ),
)
RATTLE_OF_UNKNOWN_PLACE = Finding(
    id="rattle_of_unknown_place",
    station=Station.BEARINGS,
    says="it rattles, place unknown",
    asks="A rattle that nobody can place?",
    source=COMMON_PRACTICE,
    denies="no strange rattle",
    stage=Stage.KNOWN,
    normal="none",
    background=OCCASIONAL,
    also=(
        "slight rattle",
        "rattling noise",
        "strange noise",
    ),
)
PISTON_OR_PIN_BROKEN = Finding(
    id="piston_or_pin_broken",
    station=Station.BEARINGS,
    says="a piston, ring, piston pin (gudgeon pin) or its plug is broken or worn away",
    asks="Piston, ring, piston pin or its plug found broken or worn away?",
    source=COMMON_PRACTICE,
    denies="pistons, rings and pins are whole",
    stage=Stage.OPENED,
    normal="whole",
    background=VERY_RARE,
    also=(
        "piston pin plug worn",
        "broken wrist pin",
        "broken ring",
    ),
)
LOCKED_THEN_FREED = Finding(
    id="locked_then_freed",
    station=Station.BEARINGS,
    says="it locked and was free again later",
    asks="Did the engine lock and come free again later?",
    source=COMMON_PRACTICE,
    denies="it never locked",
    stage=Stage.KNOWN,
    normal="turns freely",
    background=VERY_RARE,
    also=(
        "seized then restarted",
        "locked when hot free when cold",
    ),
)
RAN_ON_WITHOUT_PRESSURE = Finding(
    id="ran_on_without_pressure",
    station=Station.BEARINGS,
    says="the engine was run on after the pressure was gone or the warning came",
    asks="Engine run on after pressure was lost or the warning came?",
    source=COMMON_PRACTICE,
    denies="it was stopped at once",
    stage=Stage.KNOWN,
    normal="stopped within seconds",
    why="minutes without oil ruin bearings: inspect them before it runs again",
    background=OCCASIONAL,
    also=(
        "drove home with the light on",
        "kept driving",
        "did not notice the gauge",
        "shut it off at once",
    ),
)
CAP_WORK = (Caution.LIFTING, Caution.HAND_TURN, Caution.USED_OIL, Caution.SHARP)
BEARING_KNOCK = Finding(
    id="bearing_knock",
    station=Station.BEARINGS,
    says="the engine knocks at the bottom end",
    asks="Does the engine knock, low down?",
    source=sources.CARLEY_1997,
    denies="no knock from the bottom end",
    stage=Stage.KNOWN,
    normal="no knock at any speed or load",
    why="a knock means that a bearing has too much clearance; it does not show why",
    background=RARE,
    also=(
        "knocking noise",
        "rod knock",
        "lower end noise",
        "engine knocking",
        "bottom end knock",
        "clunking noise",
        "rumbling bottom end",
        "nocking",
    ),
)
DEEP_KNOCK_UNDER_LOAD = Finding(
    id="deep_knock_under_load",
    station=Station.BEARINGS,
    says="a deep knock under load, low on the block",
    asks="Deep, dull knock low on the block when it pulls under load?",
    source=COMMON_PRACTICE,
    denies="no deep knock under load",
    stage=Stage.OUTSIDE,
    normal="none",
    why="mains knock deep and under load; a loose flywheel or damper sounds the same",
    background=VERY_RARE,
    also=("main bearing knock", "deep thud under load", "heavy thump", "low rumble pulling away"),
)
LISTEN_WITH_STETHOSCOPE = Inspection(
    id="listen_with_stethoscope",
    station=Station.BEARINGS,
    says="listen low on the block with a stethoscope",
    steps=(
        "only if the pressure holds its limits: a knock with low pressure means stop, not listen",
        "idle, then slowly to 1500 rpm; probe main by main, keep hands and hose clear",
        "rule out flywheel, damper and pump before you blame a bearing",
    ),
    minutes=15,
    access=Access.OUTSIDE,
    reveals=(BEARING_KNOCK, DEEP_KNOCK_UNDER_LOAD, patterns.ENGINE_RUNS_NORMALLY),
    source=COMMON_PRACTICE,
    tools=("stethoscope",),
    cautions=RUNNING,
    needs_running=True,
    also=("listen for bearing noise", "check for knock", "screwdriver to the ear"),
)

RAP_DULLED_BY_CUT_OUT = Finding(
    id="rap_dulled_by_cut_out",
    station=Station.BEARINGS,
    says="a sharp rap that goes quiet with one cylinder cut out",
    asks="Sharp rap that dulls when one cylinder is cut out?",
    source=COMMON_PRACTICE,
    denies="no rap that dulls with a cylinder cut out",
    stage=Stage.OUTSIDE,
    normal="none",
    why="the rod is on the cylinder that quiets it",
    background=VERY_RARE,
    also=("rod knock", "big end rattle", "rapping at 2500", "knock goes when plug lead pulled"),
)
#: noises of the bottom end
KNOCKS = (BEARING_KNOCK, DEEP_KNOCK_UNDER_LOAD, RAP_DULLED_BY_CUT_OUT)
CUT_OUT_ONE_CYLINDER = Inspection(
    id="cut_out_one_cylinder",
    station=Station.BEARINGS,
    says="cut out one cylinder at a time and listen for the rap",
    steps=(
        "only if the pressure stays within its limits; hold the speed where the rap is clearest",
        (
            "leads and distributor: engine stopped, earth (ground) one lead with insulated pliers, "
            "then run it"
        ),
        "coils on the plugs, or common rail: switch one injector off electrically; loosen nothing",
        "diesel with a mechanical injection pump only: a qualified person loosens one union nut",
        "briefly, one at a time; note which cylinder quiets it",
    ),
    minutes=15,
    access=Access.OUTSIDE,
    reveals=(RAP_DULLED_BY_CUT_OUT,),
    source=COMMON_PRACTICE,
    tools=("insulated pliers", "union spanner", "tester for electric injectors"),
    cautions=(
        *RUNNING,
        Caution.IGNITION,
        Caution.INJECTION,
        Caution.FIRE,
        Caution.EYES,
    ),
    needs_running=True,
    also=("short out a cylinder", "pull a plug lead", "cylinder drop test"),
)

HARD_TO_TURN = Finding(
    id="hard_to_turn",
    station=Station.BEARINGS,
    says="the engine is hard or uneven to turn, the starter labours",
    asks="Hard to turn by hand, or starter labouring?",
    source=COMMON_PRACTICE,
    denies="the engine turns over freely",
    stage=Stage.OUTSIDE,
    normal="turns evenly by hand with the plugs out",
    background=OCCASIONAL,
    also=("hard to crank", "tight engine", "starter drags", "stiff to turn over", "binding"),
)
ENGINE_SEIZED = Finding(
    id="engine_seized",
    station=Station.BEARINGS,
    says="the engine has seized",
    asks="Has the engine seized?",
    source=sources.CARLEY_1997,
    denies="the engine still turns",
    stage=Stage.KNOWN,
    normal="turns by hand",
    background=VERY_RARE,
    also=("locked up", "seized solid", "siezed", "will not turn at all", "engine froze up"),
)
TURN_ENGINE_BY_HAND = Inspection(
    id="turn_engine_by_hand",
    station=Station.BEARINGS,
    says="turn the engine two turns by hand and feel",
    steps=(
        "ignition and fuel off, stop lever pulled, plugs or injectors out or loosened",
        "turn two turns slowly in the running direction; note where it goes tight",
        "stop if it locks; do not force it",
    ),
    minutes=30,
    access=Access.OUTSIDE,
    reveals=(HARD_TO_TURN, ENGINE_SEIZED),
    source=COMMON_PRACTICE,
    tools=("bar and socket",),
    cautions=(
        Caution.HAND_TURN,
        Caution.BATTERY,
        Caution.INJECTION,
    ),
    also=("bar it over", "turn it by hand", "does it turn freely"),
)

CRANK_MOVES_ENDWISE = Finding(
    id="crank_moves_endwise",
    station=Station.BEARINGS,
    says="the crank pulley moves in and out",
    asks="Does the crank pulley move in and out, such as when the clutch is pressed?",
    source=sources.PINPOINT_TEST_2012,
    denies="the crank pulley does not move endways",
    stage=Stage.OUTSIDE,
    normal="hardly visible",
    background=VERY_RARE,
    also=("crank walk", "pulley moves when clutch pressed", "crankshaft end play visible"),
)
WATCH_THE_PULLEY_ENDWAYS = Inspection(
    id="watch_the_pulley_endways",
    station=Station.BEARINGS,
    says="watch the crank pulley for end movement",
    steps=(
        "engine stopped, battery off",
        "a helper presses the clutch, or lever the pulley gently both ways; watch it",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(CRANK_MOVES_ENDWISE,),
    source=COMMON_PRACTICE,
    tools=("lamp", "helper"),
    cautions=(Caution.BATTERY, Caution.ROTATING),
    also=(
        "lever the crank back and forth",
        "crank end play by eye",
    ),
)
