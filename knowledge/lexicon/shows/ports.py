"""Where along the oil's way a pressure was read: before or behind the cooler, filter or pump."""

from __future__ import annotations

_PART = "cooler|filter|exchanger|heat-exchanger|pump|hose|line"
#: nearer to the pump
UPSTREAM = (
    f"before|ahead|upstream|into|entering of|,? the|my|a|oil|remote? oil|remote? {_PART}",
    f"in front of the|my|oil? oil? {_PART}",
    f"{_PART} inlet|in",
    "at|from|on the|my? oil? pump|pump-outlet outlet?",
)
#: farther from it
DOWNSTREAM = (
    f"after|behind|past|downstream|beyond|leaving of|,? the|my|a|oil|remote? oil|remote? {_PART}|it",
    f"out of the|my|oil? oil? {_PART}|it",
    f"{_PART} outlet|out",
    "at|in|on the|my? main? oil? gallery|block|head|rockers",
    "out",
)
#: the filter is at fault where it is named, and no other part
FILTERS = frozenset(["filter"])
OTHER_PARTS = frozenset(["cooler", "exchanger", "heat-exchanger", "hose", "line"])
