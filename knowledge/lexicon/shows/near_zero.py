"""Words for a pressure that is hardly any."""

_END = "nothing|zero|peg|pin|stop"

#: a gauge is said to show some pressure, but next to none
NEAR_ZERO = (
    "almost|practically|virtually|nearly nothing",
    "next to nothing|zero|=none",
    "close|=near to? the? zero|bottom|peg|pin",
    f"just|barely|hardly|scarcely|only =above|=over|=off the? bottom? {_END}|bottom",
    f"just|barely|hardly|scarcely moves|moved|lifts|lifted|comes|came|rises|gets =off|=above the? bottom? {_END}|bottom",
    "barely|hardly|scarcely registers|registered|registering",
    "barely|hardly|scarcely any oil? pressure",
    "next to no oil? pressure",
    "almost no oil? pressure",
)
