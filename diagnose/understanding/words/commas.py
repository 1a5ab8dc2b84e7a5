"""What is written otherwise at equal length: decimal commas as points, "these days" as "now".

A sentence without a subject goes on with the one before: "Gauge flickers at idle. Drops to 5 psi."
"""

from __future__ import annotations

import re

_NO_LIST = r"(?<![\w.,])"  #: "60,40,20" are three figures
_LENGTHS = r"mm|cm|in|inch|inches|thou|microns?"
_UNITS = (
    r"psi|bars?|kpa|mpa|kgf?(?:/cm2)?|litres?|liters?|l|ml|volts?|v|ohms?|deg|°|c|f|%|s|sec|cst|nm"
)
#: figures that can only have a decimal comma: below one, or with a unit behind them
_SURE = re.compile(
    rf"{_NO_LIST}(?:0,\d+(?![\w,])"
    rf"|\d{{1,4}},(?:\d{{1,2}}|\d{{4}})(?=\s?(?:{_UNITS}|{_LENGTHS})(?!\w))"
    rf"|\d{{1,3}},\d{{3}}(?=\s?(?:{_LENGTHS})(?!\w)))",
    re.I,
)
#: all that they say is "now"
_NOW = re.compile(r"\b(?:these days|nowadays|at present|as of now)\b", re.I)
#: before a figure it says "now" as well, behind what was: "had 40 yesterday, today 10"
_TODAY = re.compile(
    r"(?P<was>\b(?:used to|was|were|had|has|held|showed|read|ran|yesterday|last (?:week|night|month|"
    r"season|year|time))\b[^.!?\n]{0,60}?)\b(?P<now>today|this morning|this week|this season|"
    r"this year|tonight)(?=[ ,:]+(?:(?:it|its|it's|is|has|shows|reads|only|just|at|about|around|"
    r"down|to)[ ]+)*(?:\d|zero\b))",
    re.I,
)
#: what the needle does next, without its name
_GOES_ON = re.compile(
    r"(?P<said>\b(?:needle|gauge|pressure)\b(?:[^.!?\n]|\.(?=\d)){0,60}?)\.(?=\s+(?:then |and )?"
    r"(?:drops|falls|sinks|goes (?:down|up)|comes (?:up|back)|climbs|rises)\b)",
    re.I,
)
#: what it was, and behind the full stop what it is now
_NOW_IT_IS = re.compile(
    r"(?P<said>\b(?:was|were|had|ran|showed|read)\b(?:[^.!?\n]|\.(?=\d)){0,20}?\d(?:[^.!?\n]|\.(?=\d)){0,60}?)\."
    r"(?=\s+(?:and )?(?:now|today)[ ,]+(?:(?:it|its|it's|is|reads|shows|at|only|just|about|around|down|to) )*\d)",
    re.I,
)
_PERHAPS = re.compile(rf"{_NO_LIST}\d{{1,3}},\d{{1,2}}(?![\w,])")


def with_points(text: str) -> str:
    """A text with a point for each decimal comma; as long as before.

    A comma between figures without a unit is decimal only in a text that has decimal commas.

    >>> with_points("0,8 bar at idle, 3,5 at 3000"), with_points("60,40,20 psi, rods 2,3")
    ('0.8 bar at idle, 3.5 at 3000', '60,40,20 psi, rods 2,3')
    """
    if not _SURE.search(text):
        return text
    for pattern in (_SURE, _PERHAPS):
        text = pattern.sub(lambda found: found[0].replace(",", "."), text)
    return text


def with_now(text: str) -> str:
    """A text with "now" for what says no more; as long as before.

    >>> with_now("used to be 50, these days 20")
    'used to be 50, now        20'
    >>> with_now("had 40 psi last week, today 10"), with_now("oil changed today, 20 psi")
    ('had 40 psi last week, now   10', 'oil changed today, 20 psi')
    """
    text = _NOW.sub(lambda found: "now".ljust(len(found[0])), text)
    return _TODAY.sub(lambda found: found["was"] + "now".ljust(len(found["now"])), text)


def with_what_follows(text: str) -> str:
    """A text with a comma before a sentence that goes on with the gauge of the one before; as long.

    >>> with_what_follows("Gauge flickers at hot idle. Drops to 5 psi. Oil is new. Drops fall.")
    'Gauge flickers at hot idle, Drops to 5 psi. Oil is new. Drops fall.'
    >>> with_what_follows("Pressure was 50 at speed and 20 at idle. Now it is 30 and 5.")
    'Pressure was 50 at speed and 20 at idle, Now it is 30 and 5.'
    """
    text = _NOW_IT_IS.sub(lambda found: found["said"] + ",", text)
    while (joined := _GOES_ON.sub(lambda found: found["said"] + ",", text)) != text:
        text = joined
    return text
