"""What can be told and seen of gauge, lamp, sender, wire and gauge line."""

from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import FJE, HB01, HB04, HB18, LAM, NE2, TEL, TWO_CP
from knowledge.vocabulary import COMMON, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station

# -------------------------------------------------------------------- sender and its wire

NO_SENDER_FITTED = Finding(
    "no_sender_fitted",
    Station.INSTRUMENT,
    "there is no sender in the port: it is plugged or empty",
    "Is the sender missing, with the port plugged or empty?",
    CP,
    denies="a sender sits in its port",
    stage=Stage.OUTSIDE,
    normal="a sender in the maker's port",
    why="an instrument that is told nothing shows nothing, whatever the oil does",
    background=VERY_RARE,
    also=("no sender", "port plugged", "sender was never fitted", "no oil pressure sensor"),
)
SENDER_WIRE_OFF = Finding(
    "sender_wire_off",
    Station.INSTRUMENT,
    "the sender's wire hangs loose, connected to nothing",
    "Is the sender's wire off, or connected to nothing?",
    CP,
    denies="the sender's wire is connected",
    stage=Stage.OUTSIDE,
    normal="pushed or screwed home at both ends",
    background=VERY_RARE,
    also=("sender unplugged", "wire not connected", "sensor plug hanging", "alarm unplugged"),
)
SENDER_WIRE_BROKEN = Finding(
    "sender_wire_broken",
    Station.INSTRUMENT,
    "the sender's wire is broken, chafed or burnt",
    "Is the sender's wire broken, chafed through or burnt?",
    FJE,
    denies="the sender's wire is whole along its length",
    stage=Stage.OUTSIDE,
    normal="whole and clipped clear of heat",
    background=VERY_RARE,
    also=("broken wire", "chafed wire", "wire melted on exhaust", "frayed sender lead"),
)
SENDER_CONNECTOR_LOOSE = Finding(
    "sender_connector_loose",
    Station.INSTRUMENT,
    "the connector on the sender is loose or corroded",
    "Is the connector on the sender loose, corroded or full of dirt?",
    FJE,
    denies="the sender's connector is tight and clean",
    stage=Stage.OUTSIDE,
    normal="tight, bright, dry",
    why="a loose contact steps the needle at once, which oil cannot do",
    background=OCCASIONAL,
    also=("loose plug", "corroded terminal", "green connector", "bad connection at sender"),
)
WIRE_ON_WRONG_SENDER = Finding(
    "wire_on_wrong_sender",
    Station.INSTRUMENT,
    "the gauge's wire sits on the wrong sender or switch",
    "Is the gauge's wire on the wrong sender, such as temperature or the lamp switch?",
    CP,
    denies="each wire is on its own sender",
    stage=Stage.OUTSIDE,
    normal="wire colours as the diagram",
    background=VERY_RARE,
    also=("wires swapped", "gauge wire on the light switch", "crossed wires", "wrong terminal"),
)
SENDER_DAMAGED = Finding(
    "sender_damaged",
    Station.INSTRUMENT,
    "the sender is cracked, dented or its terminal broken off",
    "Is the sender cracked, dented, or its terminal broken off or loose?",
    CP,
    denies="the sender looks whole",
    stage=Stage.OUTSIDE,
    normal="whole, terminal firm",
    background=VERY_RARE,
    also=("terminal broken off", "sender snapped", "cracked sensor", "sender hit by spanner"),
)
SENDER_LEAKS_OIL = Finding(
    "sender_leaks_oil",
    Station.INSTRUMENT,
    "the sender weeps oil, or oil sits in its connector",
    "Does the sender weep oil, or is there oil inside its connector?",
    TWO_CP,
    denies="sender and connector are dry",
    stage=Stage.OUTSIDE,
    normal="dry",
    why="oil behind the diaphragm ends a sender, and some leak enough to empty a sump",
    background=OCCASIONAL,
    also=("oil in connector", "leaking oil pressure switch", "sending unit leaking", "wet sender"),
)
TAPE_ON_SENDER_THREAD = Finding(
    "tape_on_sender_thread",
    Station.INSTRUMENT,
    "tape or sealer insulates the sender's thread",
    "Is there tape or sealer on the thread of a sender that grounds through it?",
    TEL,
    denies="the sender's thread is bare metal",
    stage=Stage.OUTSIDE,
    normal="bare taper thread, or sealer on the first turns only",
    background=COMMON,
    also=("white tape on sender", "PTFE tape", "thread sealant on sender", "plumbers tape"),
)
GROUND_STRAP_BAD = Finding(
    "ground_strap_bad",
    Station.INSTRUMENT,
    "the engine's ground strap is loose, corroded or missing",
    "Is the ground strap between engine, body and battery loose, corroded or missing?",
    FJE,
    denies="the ground strap is tight and clean",
    stage=Stage.OUTSIDE,
    normal="tight and bright at both ends",
    background=OCCASIONAL,
    also=("bad earth strap", "ground cable", "engine not grounded", "corroded ground"),
)
NEW_SENDER_NO_DIFFERENCE = Finding(
    "new_sender_no_difference",
    Station.INSTRUMENT,
    "a new sender made no difference",
    "Was a new sender or switch fitted, without making any difference?",
    CP,
    denies="no new sender was tried in vain",
    stage=Stage.TOLD,
    normal="a faulty sender renewed shows at once",
    background=RARE,
    also=(
        "new sending unit same reading",
        "replaced the sensor no change",
        "already changed the oil pressure switch",
    ),
)
NEW_SENDER_CURED_IT = Finding(
    "new_sender_cured_it",
    Station.INSTRUMENT,
    "a new sender put the reading right",
    "Did a new sender or switch put the reading right, and does it stay right?",
    TWO_CP,
    denies="no new sender put it right",
    stage=Stage.TOLD,
    normal="a real fault reads the same on a new sender",
    background=VERY_RARE,
    also=("new sender fixed it", "replaced the sensor and it reads fine", "new switch cured it"),
)

# ------------------------------------------------------------------ gauge, needle and lamp

INSTRUMENT_JUST_CHANGED = Finding(
    "instrument_just_changed",
    Station.INSTRUMENT,
    "it began when a gauge or sender was renewed, added or moved",
    "Did it begin when a gauge or sender was renewed, added or moved?",
    TEL,
    denies="gauge and sender are as they always were",
    stage=Stage.TOLD,
    normal="the same reading as before",
    background=RARE,
    also=("since fitting a new gauge", "aftermarket gauge", "added a second gauge", "new cluster"),
)
GAUGE_PORT_MOVED = Finding(
    "gauge_port_moved",
    Station.INSTRUMENT,
    "gauge or sender sits at another port than the maker's",
    "Is the pressure read at another port than the maker gives, or than before?",
    HB18,
    denies="it is read at the maker's port",
    stage=Stage.OUTSIDE,
    normal="the maker's port",
    background=RARE,
    also=("relocated sender", "remote sender hose", "read at the filter head", "different port"),
)
NEEDLE_OFF_ZERO_AT_REST = Finding(
    "needle_off_zero_at_rest",
    Station.INSTRUMENT,
    "the needle does not rest on zero with the engine stopped",
    "With the engine stopped, does the needle stand off zero?",
    HB01,
    denies="the needle rests on zero",
    stage=Stage.TOLD,
    normal="on zero, key on and key off",
    why="an error at zero is there at every reading",
    background=VERY_RARE,
    also=("shows pressure with engine off", "needle below zero", "reads 20 with key on", "pegged"),
)
NEEDLE_STUCK_AT_ONE_VALUE = Finding(
    "needle_stuck_at_one_value",
    Station.INSTRUMENT,
    "the needle stands at one value whatever the revs and heat",
    "Does the needle stand at one value, whatever the revs and the heat?",
    CP,
    denies="the needle moves with revs and heat",
    stage=Stage.TOLD,
    normal="it moves with revs and heat",
    background=RARE,
    also=("gauge never moves", "needle frozen", "always reads the same", "stuck in the middle"),
)
TAP_FREES_NEEDLE = Finding(
    "tap_frees_needle",
    Station.INSTRUMENT,
    "a tap on the gauge makes its needle move",
    "Does the needle move when the gauge is tapped with a finger?",
    NE2,
    denies="tapping the gauge changes nothing",
    stage=Stage.OUTSIDE,
    normal="no change",
    background=VERY_RARE,
    also=("tapping the dash", "needle jumps when tapped", "hit the gauge and it works"),
)
GAUGE_DAMAGED = Finding(
    "gauge_damaged",
    Station.INSTRUMENT,
    "the gauge is fogged, its needle bent or its case damaged",
    "Is the gauge fogged or wet inside, its needle bent, or its case damaged?",
    CP,
    denies="the gauge looks sound",
    stage=Stage.OUTSIDE,
    normal="dry and clear, needle straight",
    background=RARE,
    also=("water in gauge", "bent needle", "fogged up gauge", "cracked gauge"),
)
LAMP_DEAD_WITH_KEY_ON = Finding(
    "lamp_dead_with_key_on",
    Station.INSTRUMENT,
    "the oil lamp does not light with the key on and the engine stopped",
    "Key on, engine stopped: does the oil lamp stay dark?",
    CP,
    denies="the oil lamp lights with the key on",
    stage=Stage.OUTSIDE,
    normal="it lights with the key on",
    why="a dead lamp cannot warn, and its darkness proves nothing",
    background=RARE,
    also=(
        "oil light does not work",
        "bulb blown",
        "no light with ignition on",
        "dead warning lamp",
    ),
)

# -------------------------------------------------------------------------- the oil line

GAUGE_LINE_LEAKING = Finding(
    "gauge_line_leaking",
    Station.INSTRUMENT,
    "the gauge line or its union is chafed, cracked, burst or leaks",
    "Is the thin oil line to the gauge chafed, cracked, burst or leaking at a union?",
    CP,
    denies="the gauge line is whole and dry",
    stage=Stage.OUTSIDE,
    normal="whole, dry, clipped",
    why="it carries full oil pressure past hot parts",
    background=VERY_RARE,
    also=(
        "burst capillary",
        "oil pipe to gauge broke",
        "copper line cracked",
        "plastic tube split",
    ),
)
OIL_BEHIND_PANEL = Finding(
    "oil_behind_panel",
    Station.INSTRUMENT,
    "oil shows behind the panel, in the cabin or under the gauge line",
    "Is there oil behind the panel, in the cabin, or on parts under the gauge line?",
    CP,
    denies="dry behind the panel and along the line",
    stage=Stage.OUTSIDE,
    normal="dry",
    background=VERY_RARE,
    also=("oil dripping on my feet", "oil behind the dash", "oil on the carpet", "oil under dash"),
)
GAUGE_LINE_KINKED = Finding(
    "gauge_line_kinked",
    Station.INSTRUMENT,
    "the gauge line is kinked, pinched or flattened",
    "Is the gauge line kinked, pinched or flattened anywhere?",
    CP,
    denies="the gauge line runs in easy bends",
    stage=Stage.OUTSIDE,
    normal="easy bends, round bore",
    background=VERY_RARE,
    also=("kinked capillary", "pinched oil line", "crushed gauge pipe"),
)

# -------------------------------------------------------------------------------- the idle

RIGHT_IDLE_CURED_IT = Finding(
    "right_idle_cured_it",
    Station.INSTRUMENT,
    "with the idle set to the maker's speed the pressure was right",
    "Was the pressure right once the idle was set to the maker's speed, hot?",
    HB04,
    denies="setting the idle right did not cure it",
    stage=Stage.OUTSIDE,
    normal="within limits at the maker's idle speed, hot",
    background=VERY_RARE,
    also=("raised the idle and it was fine", "set idle, pressure ok", "turned up the idle"),
)
PANEL_READS_TOO_LOW = Finding(
    "panel_reads_too_low",
    Station.INSTRUMENT,
    "the panel reads well below a trusted gauge",
    "Does the panel gauge read well below a trusted gauge?",
    TEL,
    denies="the panel does not read below a trusted gauge",
    stage=Stage.OUTSIDE,
    normal="within about 5 psi at mid-scale",
    background=VERY_RARE,
    also=(
        "dash gauge reads 20 psi low",
        "mechanical gauge reads higher",
        "panel under-reads",
    ),
)
RESEATING_CURED_IT = Finding(
    "reseating_cured_it",
    Station.INSTRUMENT,
    "unplugging and refitting the sender's connector brought the reading back",
    "Did unplugging and refitting the sender's connector bring the reading back?",
    CP,
    denies="refitting the connector changed nothing",
    stage=Stage.OUTSIDE,
    normal="no change",
    background=VERY_RARE,
    also=(
        "wiggled the plug and it works",
        "cleaned the connector",
        "reseated the plug",
    ),
)
RAN_LONG_WITHOUT_DISTRESS = Finding(
    "ran_long_without_distress",
    Station.INSTRUMENT,
    "the engine ran long with the warning on and showed no distress",
    "Did it run for long with the warning on (or the gauge at zero) and take no harm?",
    NE2,
    denies="it did not run long with the warning on",
    stage=Stage.TOLD,
    normal="an engine truly without oil pressure is harmed within minutes",
    background=RARE,
    also=(
        "ran an hour with the light on",
        "drove home fine with no pressure",
    ),
)
LAMP_SLOW_TO_GO_OUT = Finding(
    "lamp_slow_to_go_out",
    Station.INSTRUMENT,
    "lamp or gauge is slower at every start than it used to be",
    "Is the lamp slower to go out, or the gauge to rise, at every start than it used to be?",
    LAM,
    denies="lamp and gauge come as quickly as ever",
    stage=Stage.TOLD,
    normal="out within a few seconds",
    background=RARE,
    also=(
        "oil light takes longer to go out",
        "slow lamp",
    ),
)
WIRE_REPAIR_NO_DIFFERENCE = Finding(
    "wire_repair_no_difference",
    Station.INSTRUMENT,
    "the wire or terminal was mended and the reading stayed wrong",
    "Was the wire or terminal mended, without any difference?",
    CP,
    denies="mending the wire put it right",
    stage=Stage.OUTSIDE,
    normal="the reading comes back",
    background=RARE,
    also=(
        "new terminal no change",
        "soldered wire still dead",
    ),
)
NEW_SENDER_MADE_IT_WORSE = Finding(
    "new_sender_made_it_worse",
    Station.INSTRUMENT,
    "with a new sender the reading was wrong in another way, or gone",
    "Did a new sender give another wrong reading, or none?",
    TEL,
    denies="a new sender read right",
    stage=Stage.OUTSIDE,
    normal="reads right",
    background=VERY_RARE,
    also=(
        "new sender reads nothing",
        "new sensor even worse",
    ),
)
UNSTEADIER_WITH_REVS = Finding(
    "unsteadier_with_revs",
    Station.INSTRUMENT,
    "unsteady at all revs and worse as they rise",
    "Is it unsteady at all revs, and worse as they rise?",
    CP,
    denies="not worse with revs",
    stage=Stage.TOLD,
    normal="steady",
    background=RARE,
    also=(
        "gets worse with throttle",
        "jumps more when revved",
    ),
)
