"""Entries of what people report, drawn at random: right ones, nearly right ones and hostile ones."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from hypothesis import strategies as st

from diagnose.case.gauge_looks import HEATS, SPEEDS
from knowledge.book import the_book
from knowledge.reports.words import (
    Circumstance,
    Course,
    Done,
    Hands,
    Heat,
    Onset,
    Result,
    Shows,
    Since,
    Speed,
)

BOOK = the_book()
Entry = tuple[str, dict[str, Any]]


def _one(words: Iterable[str]) -> st.SearchStrategy[str]:
    return st.sampled_from([str(w) for w in words])


def _some(words: Iterable[str], most: int = 3) -> st.SearchStrategy[list[str]]:
    return st.lists(_one(words), max_size=most, unique=True)


TIME = st.builds(
    "{} {}".format, st.integers(0, 999), _one(("s", "min", "h", "days", "weeks", "years"))
)
#: pressures as people write them
PRESSURES = (
    *("5 psi", "40 to 50 psi", "under 25 psi", "over 80 psi", "about 2 bar", "~30 psi", "0"),
    *("a third of the dial", "1/4 of the dial", "60% of a 100 psi dial", "half the scale"),
    *("nothing", "off the top", "pegged", "never above 4 bar", "3 - 4 bar"),
)
VAGUE = st.fixed_dictionaries(
    {"pressure": _one(PRESSURES)},
    optional={
        "rpm": _one((*Speed, *SPEEDS, "700 rpm")),
        "oil": _one((*Heat, *HEATS, "95 C")),
        "coolant": _one(("165 F", "90 C", "20 C")),
        "during": _some(Circumstance),
        "usual": _one(PRESSURES),
        "gauge": _one(("panel", "direct")),
    },
)
BEHAVIOUR = st.fixed_dictionaries(
    {"shows": _one(Shows)},
    optional={
        "during": _some([*Circumstance][::2]),
        "never": _some([*Circumstance][1::2]),
        "only": st.booleans(),
        "onset": _one(Onset),
        "course": _some(Course),
        "since": _one(Since),
        "lasts": TIME,
        "with_pressure": st.booleans(),
        "gauge": _one(("panel", "direct", "lamp")),
    },
)
TRIAL = st.fixed_dictionaries(
    {"what": _one(BOOK.trials), "result": _one((*Result, "not tried"))},
)
EARLIER = st.fixed_dictionaries(
    {"what": _one(BOOK.areas)},
    optional={
        "done": _one(Done),
        "before": TIME | st.just("straight before"),
        "hands": _one(Hands),
    },
)
REPORTED: st.SearchStrategy[Entry] = st.one_of(
    st.tuples(st.just("reading"), VAGUE),
    st.tuples(st.just("behaviour"), BEHAVIOUR),
    st.tuples(st.just("trial"), TRIAL),
    st.tuples(st.just("earlier"), EARLIER),
)

#: values that no field of these may fail on
HOSTILE: tuple[Any, ...] = (
    *("0/0 of the dial", "1/0 of the dial", "99/1 of the dial", "101% of the dial"),
    *(
        "half of the 0 psi dial",
        "off the top of the 1e9 psi dial",
        "9 to 1 psi",
        "under ",
        "over 0",
    ),
    *("-1 day", "1e400 years", "nan s", "inf psi", "10", "٣ s", "٣ psi", "½ of the dial"),
    *("under " * 1_600 + "5 psi", "about " * 1_600 + "5 psi", "~" * 9_000 + "5 psi"),
    *("9" * 9_000 + " psi", "1 to " * 2_000 + "psi", "x" * 10_001),
    *("5\x1cpsi", "hot\x1didle", "2\x0bweeks", "\x1b[31mlow", "\u202eidle", "low\n", "\x00"),
    *("idl", "Idle ", "AT_START", "low-oil-level", "nothing", "none", "<script>alert(1)</script>"),
    *(["idle"] * 1_001, ["idle", "idle"], ["idle", 3], [["idle"]], [{}], [""], {"idle": {"a": []}}),
    *(float("nan"), float("inf"), 2**70, -1, True, ["x" * 201], {}),
)
_FIELDS = """shows during never only onset course since lasts with_pressure gauge what result
done before hands rpm oil coolant pressure usual error tap state sure"""


@st.composite
def spoilt(draw: st.DrawFn) -> Entry:
    """An entry with one to three of its fields hostile, or of another kind."""
    kind, fields = draw(REPORTED)
    for _ in range(draw(st.integers(1, 3))):
        name = draw(st.sampled_from(sorted({*fields, *_FIELDS.split()})))
        fields = {**fields, name: draw(st.sampled_from(HOSTILE))}
    if draw(st.integers(0, 4)) == 0:
        fields["never"] = fields.get("during", ["idle"])  # both during and never
    return kind, fields
