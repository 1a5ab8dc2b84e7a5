"""What is seen or known of bearings, shells and crankshaft, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_BEARINGS: dict[str, tuple[str, ...]] = {
    "engine_seized": (
        "seized|siezed|seised|locked up?",
        "won't|wont turn over?",
        "locked solid|up",
    ),
    "engine_banged_or_shook": (
        "bang|banged|vibration|vibrates|vibrating|shook|shakes|shaking",
        "loud bang",
    ),
    "stopped_with_loss_of_power": (
        "power was lost",
        "seized while|under driving|way|running",
        "died|quit|stalled|conked on|out|under|while|when|at? me|the? road|way|motorway|highway?",
        "engine|it|she stalled|died|quit",
        "engine|it|she stopped|cut by|on|dead|out itself|its|me?",
        "cut out",
    ),
    "rod_through_block": (
        "threw|thrown a? rod",
        "rod through|out .. block|side",
        "hole in the? block",
        "windowed .. block",
    ),
    "shells_found_ruined": (
        "bearings|shells|mains|big-ends were|are|was|all|found|completely|totally? all|found|completely|totally? "
        "ruined|shot|gone|destroyed|toast|trashed|knackered",
    ),
    "shells_look_normal": (
        "bearings|shells|mains were|are|looked|look|all? looked|look|all? good|fine|perfect|normal|ok|okay",
        "bearings|shells|mains looked|look|were like new",
    ),
    "shells_wiped": ("shells|bearings|bearing|mains|big-ends .. wiped|melted|burnt",),
    "shell_spun": ("spun|spun a? bearing|shell|rod|main",),
    "crank_scored": ("crank|journals|crankshaft|journal .. scored|grooved|damaged|blued",),
    "hard_to_turn": ("hard|stiff|tight to turn|crank", "starter drags|struggles|labours|labors"),
}
