"""What can be seen at jets, restrictors, the distributor body and the turbo."""

from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB18, MON, TUR
from knowledge.vocabulary import RARE, VERY_RARE, Finding, Stage, Station

# -------------------------------------------------------------- restrictor, jets, distributor

RESTRICTOR_ABSENT = Finding(
    "restrictor_absent",
    Station.TOPEND,
    "a metering restrictor is missing or drilled out",
    "Is a metering restrictor in the feed to head, chain or turbo missing or drilled out?",
    MON,
    denies="the restrictors are there and to size",
    stage=Stage.OPENED,
    normal="there, hole to the maker's size",
    background=VERY_RARE,
    also=("oil restrictor missing", "orifice left out", "wrong head gasket hole"),
)
JETS_RUN_AT_LOW_PRESSURE = Finding(
    "jets_run_at_low_pressure",
    Station.TOPEND,
    "piston jets run at a pressure at which they should be shut",
    "Priming, sump off: do piston jets run below their opening pressure?",
    HB18,
    denies="the piston jets stay shut at low pressure",
    stage=Stage.OPENED,
    normal="shut at idle pressure; some makers fit jets without valves",
    background=VERY_RARE,
    also=("squirters running at idle", "oil jets dribbling", "piston coolers open"),
)
PISTON_JET_FOUND_BROKEN = Finding(
    "piston_jet_found_broken",
    Station.TOPEND,
    "a piston cooling jet is missing, broken or loose",
    "Is a piston cooling jet missing, broken or loose?",
    HB18,
    denies="all piston jets are there and whole",
    stage=Stage.OPENED,
    normal="all there, tight, aimed",
    background=VERY_RARE,
    also=("squirter broken off", "oil squirter missing", "jet fell out"),
)
DISTRIBUTOR_BORE_POURS = Finding(
    "distributor_bore_pours",
    Station.TOPEND,
    "while priming, a sheet of oil comes from the distributor bore or housing",
    "Priming with the body fitted: does a sheet of oil come from the distributor bore?",
    CP,
    denies="the distributor bore only seeps",
    stage=Stage.OPENED,
    normal="a seep, or a drive-gear bleed by design",
    background=VERY_RARE,
    also=(
        "oil pouring down by distributor",
        "distributor housing leaks inside",
        "oil gushing from distributor hole",
    ),
)
DISTRIBUTOR_SEAL_BAD = Finding(
    "distributor_seal_bad",
    Station.TOPEND,
    "the distributor body is the wrong one, worn, or its ring cut or missing",
    "Is the distributor body a wrong or worn one, or its ring cut, hard or missing?",
    CP,
    denies="distributor body and ring are right",
    stage=Stage.OPENED,
    normal="right body, whole ring, snug in the block",
    background=RARE,
    also=("distributor o-ring bad", "no o-ring on distributor", "wrong distributor fitted"),
)

# --------------------------------------------------------------------------------- the turbo

TURBO_SHRIEKS = Finding(
    "turbo_shrieks",
    Station.TOPEND,
    "the turbo shrieks, howls or grinds",
    "Does the turbo shriek, howl or grind?",
    TUR,
    denies="the turbo sounds as always",
    normal="a faint even whistle",
    why="a turbo is the first bearing to die of a starved feed, with the engine's gauge normal",
    background=RARE,
    also=("turbo whine", "turbo screaming", "noisy turbo", "siren noise from turbo"),
)
TURBO_FAILED = Finding(
    "turbo_failed",
    Station.TOPEND,
    "a turbo has failed, now or lately",
    "Has a turbo failed, now or lately?",
    TUR,
    denies="no turbo has failed",
    normal="lasts as long as the engine",
    background=RARE,
    also=("blown turbo", "turbo gone", "second turbo failed", "turbo replaced"),
)
TURBO_SHAFT_STIFF_OR_BLUED = Finding(
    "turbo_shaft_stiff_or_blued",
    Station.TOPEND,
    "the turbo shaft is stiff, scored or blued",
    "Cold, inlet hose off: is the turbo shaft stiff to turn, scored or blued?",
    TUR,
    denies="the turbo shaft turns freely and is bright",
    stage=Stage.OPENED,
    normal="spins freely",
    background=VERY_RARE,
    also=("turbo won't spin", "turbo seized", "blue turbo shaft", "tight turbo"),
)
TURBO_SHAFT_LOOSE = Finding(
    "turbo_shaft_loose",
    Station.TOPEND,
    "the turbo shaft has too much play",
    "Does the turbo shaft rock far, or does a wheel touch its housing?",
    TUR,
    denies="the turbo shaft has no undue play",
    stage=Stage.OPENED,
    normal="slight play sideways, wheels clear",
    background=RARE,
    also=("turbo shaft play", "wheel rubs housing", "worn turbo bearings"),
)
TURBO_FEED_FOUND_BLOCKED = Finding(
    "turbo_feed_found_blocked",
    Station.TOPEND,
    "the turbo feed was found kinked, coked, or masked by gasket or sealer",
    "Was the turbo feed found kinked, coked, or masked by a gasket or sealer?",
    TUR,
    denies="the turbo feed is clear",
    stage=Stage.OPENED,
    normal="a full stream into the can",
    background=VERY_RARE,
    also=("coked oil line", "carbon in turbo feed", "wrong turbo gasket", "banjo screen blocked"),
)
TURBO_LINE_LEAKS = Finding(
    "turbo_line_leaks",
    Station.TOPEND,
    "the turbo oil feed line leaks, is cracked or came off",
    "Does the turbo's oil feed line leak, or is it cracked or off?",
    TUR,
    denies="the turbo lines are dry",
    stage=Stage.OUTSIDE,
    normal="dry and clipped",
    why="oil under pressure beside the hottest part of the engine",
    background=VERY_RARE,
    also=("turbo oil line burst", "oil on the turbo", "turbo feed pipe leaking"),
)
