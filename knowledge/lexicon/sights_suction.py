"""What is seen or known of the sump, pickup and screen, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_SUCTION: dict[str, tuple[str, ...]] = {
    "screen_blocked": (
        "pickup|screen|strainer|pick-up|gauze screen|was|is|tube|half|completely|totally|partly|partially|found|all|up|nearly? "
        "blocked|clogged|plugged|full|choked|blocked-up|restricted|clogging",
        "half|partly|partially|completely|totally blocked|clogged|plugged|choked with? sludge|gasket|rtv|silicone|debris|crud?",
        "clogged|blocked|plugged pickup|screen|strainer|oil",
    ),
    "sump_dented": ("dent|dented|bashed in|the|a? .. sump|pan|oil-pan", "sump|pan .. dented|dent"),
}
