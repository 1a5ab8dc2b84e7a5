"""How numbers with their units are written: one pattern for each way, tried in this order."""

from __future__ import annotations

import re

_NUM = r"(?:\d{1,3}(?:,\d{3})+|\d+(?:\.\d+)?|\.\d+)"
_SMALL = [
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "fifteen",
    "twenty",
    "thirty",
    "forty",
    "fifty",
    "sixty",
]
_VALUES = (*range(1, 13), 15, 20, 30, 40, 50, 60)
WORDS = dict(zip(_SMALL, _VALUES, strict=True))
_WORD = "|".join(sorted(_SMALL, key=len, reverse=True))
_NUMBERED = rf"(?:{_NUM}|{_WORD}|(?:a )?few|(?:a )?couple(?: of)?|several)"
_COUNT = rf"(?:{_NUM}|{_WORD}|an?|(?:a )?few|(?:a )?couple(?: of)?|several|half an?)"
TIMES = (
    (r"seconds?|secs?|s", "seconds", "s"),
    (r"minutes?|mins?", "minutes", "min"),
    (r"hours?|hrs?|h", "hours", "h"),
    (r"days?", "days", "days"),
    (r"weeks?|wks?", "weeks", "weeks"),
    (r"months?", "months", "months"),
    (r"years?|yrs?", "years", "years"),
)
_TO = r"\s*(?:-|–|to|or)\s*"
_OR_TWO = r"\s+or\s+(?:two|three|2|3)(?!\s*(?:psi|bar|lbs?|pounds|later))\b"  #: "an hour or 2"
_UPTO = r"\s*(?:-|–|/|\.\.+|to|or|maybe)\s*"  #: between the two ends of a range with a unit
_UNIT = (
    r"(?P<unit>(?:psi|p\.s\.i\.?|psig|lbs?\.?(?:\s?/\s?|\sper\s)sq(?:uare|\.)?\s?in(?:ch)?|lbs?|pounds?|bars?|[km]pa"
    r"|kgf?\s?/\s?cm(?:2|²)|kgf?\s?/\s?sq\.?\s?cm|kilos?|kgs?)(?![a-z0-9²])(?:(?:(?<=lb)|(?<=lbs)|(?<=kg)|(?<=kgs)|(?<=in))\.(?=\s*(?-i:[a-z,;:)])))?|#)"
    r"(?!\s*(?:ft|feet|of torque|foot|/\s*ft|in weight))"
)
_ISH = r"(?:\s?-?ish|\s?or so|\+|\s?\+/-)?(?:\s*|-(?=psi|bar|kpa|lb|pound))"
_IDLES = [
    f"{idle}{says}"
    for idle in ("idle", "idles", "idling", "tickover", "idle speed", "tickover speed")
    for says in (
        " ",
        " is ",
        " was ",
        " at ",
        ": ",
        " about ",
        " at about ",
        " around ",
        " set to ",
    )
]
_AT_IDLE = "(?:" + "|".join(rf"(?<=\b{lead})" for lead in _IDLES) + ")"
_THERMOMETERS = (
    "temp",
    "temps",
    "temperature",
    "thermometer",
    "temp gauge",
    "heat gauge",
    "ir gun",
)
_SAYS = (
    *(" ", " is ", " was ", " says ", " said ", " at ", " of ", " reads ", " shows ", " showed "),
    *(" is at ", " was at ", " sits at ", " stays at "),
)
_BY_THERMOMETER = (
    "(?:" + "|".join(rf"(?<=\b{what}{says})" for what in _THERMOMETERS for says in _SAYS) + ")"
)
_WRITTEN: tuple[tuple[str, str], ...] = (
    ("grade", r"(?:sae\s*)?(?P<low>\d{1,2})\s?w[\s/-]?(?P<high>\d{2})\b"),
    ("grade", r"(?:straight|sae|mono)\s*(?P<high>[1-6]\d)\s?(?:w(?!\s?[/-]?\d))?\b"),
    ("grade", r"(?P<high>[2-6]0)[\s-]?(?:weight|wt)\b"),
    ("pressure", rf"between (?P<a>{_NUM}) and (?P<b>{_NUM})\s*{_UNIT}"),
    ("pressure", rf"(?P<a>{_NUM}){_UPTO}(?P<b>{_NUM}){_ISH}{_UNIT}"),
    ("pressure", rf"(?P<half>(?:a )?half(?: a)?|1/2)\s*(?:a )?{_UNIT}"),
    ("pressure", rf"(?P<a>{_NUM}|{_WORD}) (?:and a half|1/2)\s*{_UNIT}"),
    ("pressure", rf"(?P<a>{_NUM}|zero|{_WORD}){_ISH}{_UNIT}"),
    (
        "pressure",
        r"(?P<part>low|lower|mid|middle|high|upper)[\s-]+(?P<tens>[1-9]0)'?s\s*(?:psi)?\b",
    ),
    ("pressure", r"(?P<part>teens|single (?:digits?|figures?))(?: psi)?\b"),
    (
        "share",
        r"(?P<share>(?:a |one )?(?:third|quarter|half)|two[ -]thirds|three[ -]quarters|1/2|1/4|1/3|2/3|3/4"
        r"|half ?way)(?: of)?(?: the way)?(?: up)?(?: on)?(?: the| a)? (?:dial|gauge|scale)\b",
    ),
    (
        "part",
        r"(?P<share>(?:a |one )(?:third|quarter)|half ?way|(?<=\bat )half|(?<=\bto )half|(?<=\breads )half|(?<=\bread )half|(?<=\bshows )half|two[ -]thirds|three[ -]quarters|1/2|1/4|1/3|2/3|3/4)"
        r"(?: way)?(?: up)?(?: mark)?(?! on the)(?=\s*(?:$|[,.;)]|when|at|on|once|with|if|and|but|idling|hot|cold))",
    ),
    (
        "rpm",
        rf"(?P<a>{_NUM})(?P<k>k?)\s*(?:r/min|rev/min|revs/min|u/min|t/min|tr/min|1/min|/min\b|min-1|min⁻¹|ot/min|giri(?:/min)?\b|tours(?:/min)?\b|vueltas\b)",
    ),
    ("rpm", r"(?:rpm|revs)\s*[:=@]?\s*(?P<a>[5-9]\d{2}|[1-7]\d{3})(?P<k>)\b"),
    (
        "rpm",
        rf"(?P<a>{_NUM})(?:\s?(?:-|–|to)\s?{_NUM})?(?P<k>k?)(?:\s*|-)(?:rpms?|r\.p\.m\.?|revs)\b",
    ),
    ("rpm", r"(?<=\bidle )(?P<a>[4-9]\d0|1[01]\d0)(?P<k>)\b(?!\s*(?:psi|kpa|bar|miles|h|rpm))"),
    (  # "idle is 950", "it idles at about 900"
        "rpm",
        _AT_IDLE
        + r"(?P<a>[4-9]\d[05]|1[01]\d[05])(?P<k>)\b(?!\s*(?:psi|kpa|bar|miles|h|hours|hrs|rpm))",
    ),
    (
        "rpm",
        r"(?:(?<=\bat )|(?<=@)|(?<=@ )|(?<=above )|(?<=over )|(?<=past ))(?P<a>[1-6](?:\.\d)?)(?P<k>k|\sgrand)\b",
    ),
    (
        "rpm",
        r"(?:(?<=\bat )|(?<=@)|(?<=@ )|(?<=above )|(?<=over )|(?<=turned up to )|(?<=raised to )|(?<=idle set to )"
        r"|(?<=\brev it to )|(?<=\brev it up to )|(?<=\brevved to )|(?<=\brevved up to )|(?<=\brev to )|(?<=\brevs to )|(?<=\bhold it at )|(?<=\bheld at ))"
        r"(?P<a>[5-9][05]0|[1-7],?\d[05]0)(?P<k>)\b(?!\s*(?:psi|kpa|miles|km|hours|hrs|mi|rpm))",
    ),
    (  # "15 psi idle 40 psi 3000", "40 hot 3000"
        "rpm",
        r"(?:(?<=\dpsi )|(?<=\d psi )|(?<=\dlbs )|(?<=\d lbs )|(?<=\dbar )|(?<=\d bar )|(?<=\d hot )|(?<=\d cold )|(?<=\d warm ))"
        r"(?P<a>[5-9][05]0|[1-7],?\d[05]0)(?P<k>)(?=\s*(?:$|[,.;)]|(?:and|then|hot|cold|warm|but)\b))",
    ),
    (  # "2000 rpm 40 psi, 3000 55 psi"
        "rpm",
        r"(?P<a>[5-9][05]0|[1-7],?\d[05]0)(?P<k>)(?=\s+\d{1,3}(?:\.\d+)?\s*(?:psi|lbs?|bar)\b)",
    ),
    (
        "mph",
        rf"(?:{_NUM}|{_WORD})\s*(?:mph|m\.p\.h\.?|miles (?:an|per) hour|kph|km/h|kmh|knots?|kts?)\b",
    ),
    (
        "temperature",
        rf"(?P<minus>[-−]|minus )(?P<a>{_NUM})\s*(?:°|º|deg(?:rees|s)?\.?)?\s?(?P<unit>[cf])\b",
    ),
    (
        "temperature",
        r"(?P<minus>[-−])(?P<a>\d{1,2})(?=\s+(?:here|out|outside|overnight|this morning|last night|today|degrees|celsius)\b)",
    ),
    ("temperature", rf"(?P<a>{_NUM})\s*(?:°|º|deg(?:rees|s)?\.?)?\s?(?P<unit>[cf])\b"),
    ("temperature", rf"(?P<a>{_NUM})\s*(?:°|º|deg(?:rees?|s)?\b\.?)"),
    (  # "thermometer says 95", "oil temp is 210"
        "temperature",
        rf"(?P<by>{_BY_THERMOMETER})(?P<a>[4-9]\d|[12]\d\d)\b(?!\s*(?:psi|lbs?|bar|kpa|rpm|mph|[-–.,:/]?\d|%))",
    ),
    *(
        (
            name,
            rf"(?P<count>{_NUMBERED if name == 'seconds' else _COUNT})(?:{_TO}{_COUNT})?[\s-]*(?:{unit})\b(?:{_OR_TWO})?",
        )
        for unit, name, _ in TIMES
    ),
    (
        "distance",
        r"(?P<a>\d{1,3},\d{3}|\d{4,6})(?P<k>)(?=\s+on (?:the|its|her|his|my) (?:clock|odo|speedo|milometer))",
    ),
    ("distance", r"(?P<a>\d{2,3},\d{3}|\d{5,6})(?P<k>)(?=\s+on (?:it|her|him)\b)"),
    (
        "distance",
        r"(?:(?<=done )|(?<=covered )|(?<=clocked ))(?P<a>\d{2,3},\d{3}|\d{5,6})(?P<k>)\b",
    ),
    (
        "grade",
        r"(?P<low>5|10|15|20)/(?P<high>30|40|50|60)\b(?!\s*(?:psi|thou|under|over))",
    ),
    (
        "distance",
        rf"(?P<a>{_NUM})\s*(?P<k>thousand)\s*(?:miles?|kms?|kilomet(?:er|re)s|(?=on (?:it|the clock|her|him)\b))",
    ),
    (
        "volume",
        rf"(?:half an?|{_COUNT}(?: ?/ ?\d)?(?: and an? (?:half|quarter))?)\s*(?:quarts?|qts?|litres?|liters?|ltrs?|pints?|gallons?|gals?|ml|dl)"
        r"(?: and an? (?:half|quarter|bit))?\b",
    ),
    (
        "volume",
        rf"{_NUM}\s?(?:l|lts?|pts?)\b(?=\s*(?:/|per\b|an?\b|every\b|each\b|daily\b|of oil|of engine oil|in\b|drained|came))",
    ),
    ("distance", rf"(?P<a>{_NUM})(?P<k>k?)\s*(?:miles?|mi|kms?|kilometers|kilometres)\b"),
    ("distance", rf"(?P<a>{_NUM})\s*(?P<k>t)km\b"),
    ("distance", rf"(?P<a>{_NUM})(?P<k>k)\b"),
    (
        "length",
        rf"{_NUM}\s*(?:thou|mm|inch(?:es)?|\"|microns?|in\b(?!\s+(?:the|a|an|my|it|its|park|drive|neutral|gear|about|long|right|left|hard|fast|slow|tight|sharp|corners|bends"
        r"|under|each|every|first|second|third|top|traffic|town|cruise|seconds|minutes|less)\b))",
    ),
    ("year", r"(?:19|20)\d\d\b"),
    ("year", r"'\d\d\b"),
    (
        "fraction",
        r"(?:1/2|1/4|1/3|2/3|3/4)(?=\s+(?:mark|throttle|up|full|tank|turn|turns|way|of)\b)",
    ),
    ("range", rf"between (?P<a>{_NUM}) and (?P<b>{_NUM})\b"),
    ("range", rf"(?P<a>{_NUM})(?:\s*(?:-|–)\s*|\s+(?:to|or)\s+)(?P<b>{_NUM})\b(?!\s*[a-z]?\d)"),
    ("number", rf"(?P<a>{_NUM})(?:-?ish|\+)(?![a-z0-9])"),
    ("number", rf"(?P<a>{_NUM})\b(?!th|st|nd|rd)"),
    ("number", rf"(?P<a>{_NUM})(?=\s|$|[,.;:!?)])"),
    ("number", rf"(?P<a>{_WORD}|zero)\b"),
)
PATTERNS = tuple((kind, re.compile(rf"(?<![\w.])(?:{p})", re.I)) for kind, p in _WRITTEN)
STARTS = re.compile(
    rf"(?<![\w.])(?:(?=[\d.'])|[-−](?=\d)|minus (?=\d)|(?:between|low|lower|mid|middle|high|upper|teens|single|{_WORD}|an?|few|couple|several|half(?:way)?|zero|third|quarter|straight|sae|mono|rpm|revs"
    r"|two[ -]thirds|three[ -]quarters)\b)",
    re.I,
)
