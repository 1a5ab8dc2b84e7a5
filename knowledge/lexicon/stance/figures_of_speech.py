"""Turns of phrase whose words say nothing of the engine: "once around the block", "gave it a tug"."""

from __future__ import annotations

FIGURES_OF_SPEECH: tuple[str, ...] = (
    "around|round the|our|a? =block|houses|corner|clock|park",
    "up|down the|a blind? =block|alley",
    "gave|give|giving|given|gives|with it|them|her|the-crank|the-shaft|the-belt? a|another good|sharp|gentle|quick|little|light|hard? =tug|yank|shake",
    "rattled|rattling|rattles|rattle|shook|shakes|shaking my|the|your|our teeth|fillings|bones|windows|cage|nerves",
    "drops|dropped|dropping|drop|shuts-off|cuts|cutting|deactivates|deactivated|deactivating|kills half|four|4|some|two? =cylinders for|to|when|at|on|under|in",
    "changed|changes|change|dropped|drop|drops|shifted|shift|went|go|shifting|dropping|changing down|up? from? 1st|2nd|3rd|4th|5th|6th|first|second|third|fourth|fifth|sixth|top|high|low into|in|to 1st|2nd|3rd|4th|5th|6th|first|second|third|fourth|fifth|sixth|top|high|low gear?",
    "out of pocket|time|money|patience|daylight|ideas|curiosity|luck|the-blue",
    "light at the end of the tunnel",
    "knock|knocked|knocking on wood|the-door|his-door|effect",
    "touch wood",
    "full of beans|hope|himself|praise",
    "under pressure to",
    "at low|high ebb|cost|price",
    "low on money|cash|funds|time|patience",
    "blew|blown|blow me away|my-mind|it-off|my-budget",
    "whole|long|short|other|same story|saga",
    "oil goes|runs|drains|drops back down? to|into|in the? tank|sump|pan",
    "a? bit|little of? a? rough|smooth|sticky patch|ride|start|week|day|time",
)
