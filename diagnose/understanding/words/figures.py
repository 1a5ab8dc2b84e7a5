"""Numbers with their units, as people write them: pressures, temperatures, times, oil grades."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

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
_TIMES = (
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
_PATTERNS: tuple[tuple[str, str], ...] = (
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
        for unit, name, _ in _TIMES
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
_COMPILED = tuple((kind, re.compile(rf"(?<![\w.])(?:{p})", re.I)) for kind, p in _PATTERNS)
_STARTS = re.compile(
    rf"(?<![\w.])(?:(?=[\d.'])|[-−](?=\d)|minus (?=\d)|(?:between|low|lower|mid|middle|high|upper|teens|single|{_WORD}|an?|few|couple|several|half(?:way)?|zero|third|quarter|straight|sae|mono|rpm|revs"
    r"|two[ -]thirds|three[ -]quarters)\b)",
    re.I,
)
_HIGH_MILES, _MANY_HOURS, _THICK, _THIN = 100_000, 2_000, 50, 20
#: miles of an engine that is no longer new, and not yet worn; hours of one that is due for overhaul,
#: and of one that is run in; months of a long rest (all judgement)
_OVERDUE_MILES = 15_000  #: oil in an engine for so long is overdue (judgement)
_ONE_RUN_MILES = 300  #: more are no length of one run (judgement)
_WELL_RUN_IN_MILES = 2_000  #: after these a rebuilt engine is no longer fresh (judgement)
_LEAST_MILES, _LOW_MILES, _OVERHAUL_HOURS, _RUN_IN_HOURS = 1_000, 70_000, 1_000, 25
_HOT_F, _BODY_F, _HOT_C = 88, 125, 30  #: air of a hot day; without a unit it is in °F (judgement)
_HOT_OIL_C, _HOT_OIL_F = 119, 246  #: oil hotter than about 120 °C, 250 °F
_FEW_YEARS, _LONG_MONTHS = 6, 9


@dataclass(frozen=True, slots=True)
class Figure:
    """A number in a text: where it stands, what kinds it is of, its value as a case file writes it."""

    start: int
    end: int
    kinds: frozenset[str]
    value: str  #: "5 psi", "10 min", "700"; the unit as the person meant it


def figures(text: str) -> list[Figure]:
    """Every number of a text, left to right; each character belongs to one at most.

    >>> [(f.value, sorted(f.kinds)) for f in figures("5 psi at 700 rpm, 20w50")]
    [('5 psi', ['pressure']), ('700 rpm', ['rpm']), ('20W-50', ['grade', 'thick'])]
    """
    found: list[Figure] = []
    at = 0
    while start := _STARTS.search(text, at):
        begin = start.start()
        for kind, pattern in _COMPILED:
            match = pattern.match(text, begin)
            if match and match.end() > begin:
                found += _descending(kind, match) or [_figure(kind, match)]
                at = found[-1].end
                break
        else:
            at = begin + 1
    return found


def _descending(kind: str, match: re.Match[str]) -> list[Figure]:
    """The two ends of what is no range: "60 to 15 psi" comes down from one to the other."""
    parts = match.groupdict()
    if kind not in ("pressure", "range") or not parts.get("b"):
        return []
    ends = [_plain(parts["a"]), _plain(parts["b"])]
    if float(ends[0]) <= float(ends[1]):
        return []
    unit = f" {_unit(parts['unit'])}" if parts.get("unit") else ""
    one = "pressure" if unit else "number"
    places = (match.span("a"), (match.start("b"), match.end()))
    return [
        Figure(*place, frozenset({one}), f"{end}{unit}")
        for place, end in zip(places, ends, strict=True)
    ]


def _figure(kind: str, match: re.Match[str]) -> Figure:
    kinds, value = {kind}, " ".join(match[0].lower().split())
    parts = match.groupdict()
    match kind:
        case "pressure":
            kinds, value = _pressure(parts, value)
        case "share":
            kinds, value = {"pressure", "share"}, f"{_share(parts['share'])} of the dial"
        case "part":
            kinds, value = {"share"}, f"{_share(parts['share'])} of the dial"
        case "rpm":
            value = f"{float(_plain(parts['a'])) * (1000 if parts['k'] else 1):g} rpm"
        case "temperature":
            degrees = _plain(parts["a"])
            unit = (parts.get("unit") or ("F" if float(degrees) > 130 else "C")).upper()
            frost = bool(parts.get("minus"))
            value = f"-{degrees} {unit}" if frost else f"{degrees} {unit}"
            kinds = {"frost"} if frost else kinds | _of_weather(float(degrees), parts.get("unit"))
            kinds -= {"hotday"} if "by" in parts and parts["by"] is not None else set()
        case "grade":
            winter = parts.get("low")
            value = f"{winter}W-{parts['high']}" if winter else f"SAE {parts['high']}"
            high, low = int(parts["high"]), int(winter or 99)
            kinds |= (
                {"thick"} if high >= _THICK else {"thin"} if high <= _THIN or low == 0 else set()
            )
        case "distance":
            miles = float(_plain(parts["a"])) * (1000 if parts["k"] else 1)
            kinds |= {"highmiles"} if miles >= _HIGH_MILES else set()
            kinds |= {"toofar"} if miles >= _OVERDUE_MILES else set()
            kinds |= {"farther"} if miles >= _ONE_RUN_MILES else set()
            kinds |= {"thousands"} if miles >= _WELL_RUN_IN_MILES else set()
            kinds |= {"lowmiles"} if _LEAST_MILES <= miles <= _LOW_MILES else set()
        case "number" | "range":
            value = _plain(parts["a"]) + (f" to {_plain(parts['b'])}" if parts.get("b") else "")
        case _:
            unit = next((u for _, name, u in _TIMES if name == kind), "")
            if unit:
                kinds |= {"time"}
                count = _count(parts["count"])
                kinds |= _long_or_short(kind, float(count))
                value = f"{count} {unit}"
    return Figure(match.start(), match.end(), frozenset(kinds), value)


def _pressure(parts: Mapping[str, str | None], text: str) -> tuple[set[str], str]:
    """The kinds and the value of a pressure; without a unit it is a range that may be one."""
    if part := parts.get("part"):
        word = part.split()[0].lower()
        if parts.get("tens") is None:
            low, high = (13, 19) if word == "teens" else (1, 9)
        else:
            tens = int(parts["tens"] or "")
            spread = {"l": (0, 3), "m": (4, 6), "h": (7, 9), "u": (7, 9)}[word[0]]
            low, high = (tens + each for each in spread)
        named = text.endswith("psi")
        return ({"pressure"} if named else {"range"}), f"{low} to {high}" + " psi" * named
    unit = _unit(str(parts["unit"]))
    if parts.get("half"):
        return {"pressure"}, f"0.5 {unit}"
    first = _plain(str(parts["a"]))
    if " and a half" in text or " 1/2" in text:
        first = f"{float(first) + 0.5:g}"
    if second := parts.get("b"):
        return {"pressure"}, f"{first} to {_plain(second)} {unit}"
    return {"pressure"}, f"{first} {unit}"


def _of_weather(degrees: float, unit: str | None) -> set[str]:
    """Whether a temperature is that of a hot day or of frost, if it is the air's, or of hot oil."""
    if unit is None:
        hot = {"hotoil"} if degrees >= _HOT_OIL_F else set()
        return hot | ({"hotday"} if _HOT_F <= degrees < _BODY_F else set())
    celsius = degrees if unit.upper() == "C" else (degrees - 32) / 1.8
    if celsius >= _HOT_OIL_C:
        return {"hotoil"}
    return {"hotday"} if celsius >= _HOT_C else {"frost"} if celsius <= 0 else set()


def _long_or_short(kind: str, count: float) -> set[str]:
    """What a time says of an engine's age or rest; kinds of limits of common practice."""
    if kind == "hours":
        found = {"highmiles"} if count >= _MANY_HOURS else set()
        found |= {"manyhours"} if count >= _OVERHAUL_HOURS else {"fewhours"}
        return found | ({"hundreds"} if count >= _RUN_IN_HOURS else {"runin"})
    if kind == "years":
        return {"longtime"} | ({"fewyears"} if count <= _FEW_YEARS else set())
    return {"longtime"} if kind == "months" and count >= _LONG_MONTHS else set()


def _plain(number: str) -> str:
    """The digits of a number."""
    word = number.lower()
    if word == "zero":
        return "0"
    return str(WORDS[word]) if word in WORDS else f"{float(number.replace(',', '')):g}"


def _count(words: str) -> str:
    """The number that a count means: "a few" is three, "a couple of" two."""
    text = " ".join(words.lower().split())
    if text[0].isdigit() or text in WORDS or text[0] == ".":
        return _plain(text)
    if "half" in text:
        return "0.5"
    return "3" if "few" in text or "several" in text else "2" if "couple" in text else "1"


def _unit(name: str) -> str:
    word = name.lower()
    if word.startswith("k") and word != "kpa":
        return "kg/cm2"
    if word in ("kpa", "mpa"):
        return "kPa" if word == "kpa" else "MPa"
    return "bar" if word.startswith("bar") else "psi"


def _share(text: str) -> str:
    word = " ".join(text.lower().replace("-", " ").split())
    return "half" if "way" in word else word
