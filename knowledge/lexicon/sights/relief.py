"""What is seen or known of the relief valve, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_RELIEF: dict[str, tuple[str, ...]] = {
    "debris_on_relief_seat": (
        "dirt|chip|swarf|metal|debris|grit|bit|crud under|in|on|holding .. relief|valve|ball|seat|plunger",
    ),
    "relief_plunger_sticks": (
        "relief|regulator valve? piston|plunger|valve @not come|drop|slide|move|fall|budge out|in|down|by|freely|its|hand|without",
        "relief|regulator|oil? valve? piston|plunger|valve came|come|comes|moved|moves only|out only? by|with|after force|hammer|punch|hammering|pliers|difficulty|effort",
        "relief|regulator valve? piston|plunger|valve had to be =driven|=hammered|=knocked|=pressed|=persuaded|=tapped|=pulled out|from|with?",
        "plunger|piston|relief|valve was|is|were|came|really|very|a-bit|bit|so|quite|had|needed|had-to-be? tight|stiff|sticky|snug|jammed|gummed|tapped|tap|"
        "drift|driven|drive|hammered|persuade|knocked|prised|pried in|out|up|with|persuading|to its|the? bore|hole|with?",
        "relief|regulator|plunger valve|piston|plunger|was|is|found? stuck|sticking|sticks|jammed|seized",
    ),
    "relief_parts_not_standard": (
        "stiff|stiffer|heavy|heavier|strong|stronger|uprated|racing|competition|longer relief|pressure|oil|valve? spring the? builder|shop|he|they|previous|last|someone|somebody|engine",
        "has|with|got|running|run|using|had a|the|an? stiff|stiffer|heavy|heavier|strong|stronger|uprated|racing|competition|longer relief|pressure|oil|valve? spring",
        "ball|bearing|nut|washer|washers|spacer|penny|coin|bolt|slug|shim|shims|tube =behind|=under|on-top-of the? relief|regulator valve? spring",
        "two|2|second|extra|double|three|both springs|spring|shims|washers in|inside|behind|under|on the? relief|regulator|oil-pressure",
        "relief|regulator valve? has|had|with|got two|2|three|double springs|shims|washers",
        "builder|shop|someone|somebody|they|he|owner put|fitted|fits|installed|used a|the|an? stiff|stiffer|heavy|heavier|strong|stronger|uprated|racing|competition|longer relief|pressure|oil|valve? spring",
    ),
}
