"""The shape of a case file, table by table; the one door to pydantic."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from typing import Annotated, Any, Generic, Literal, TypeVar

from pydantic import (
    AfterValidator,
    BaseModel,
    ConfigDict,
    Field,
    StrictFloat,
    StrictInt,
    StringConstraints,
    ValidationError,
)

from diagnose.errors import nearest, nearest_word, plain
from diagnose.ids import normal_id
from knowledge.engines.layouts import UNKNOWN

VERSION = 1
LONGEST = 10_000  #: characters of one free text
MOST_ENTRIES = 1_000  #: of one list or table inside a table
MOST_NUMBERED = 2_000  #: entries of one kind; what readings say together grows squared

Text = Annotated[str, StringConstraints(max_length=LONGEST)]
Word = Annotated[str, StringConstraints(min_length=1, max_length=200, strip_whitespace=True)]
#: of the book, as it writes it; the file may have capitals, hyphens and spaces
Id = Annotated[Word, AfterValidator(normal_id)]
Number = Annotated[int, Field(ge=1, le=1_000_000)]
Learned = Literal["told", "outside", "opened"]
When = datetime | date


class Table(BaseModel):
    """A table whose unknown keys are errors, and whose values are what they should be."""

    model_config = ConfigDict(extra="forbid", frozen=True, strict=True, defer_build=True)


class Job(Table):
    """``[job]``: what it is about."""

    title: Text = ""
    opened: When | None = None
    by: Text = ""
    complaint: Text = ""
    note: Text = ""
    source: Text = ""


class Engine(Table):
    """``[engine]``: a layout by name, and what differs from it."""

    layout: Id = UNKNOWN.id
    profile: Id | None = None
    card: Word | None = None  #: file of the engine's card, beside this one
    name: Text = ""
    aircraft: bool | None = None  #: installed in a certified aircraft: then nothing is advised
    has: list[Id] = []
    lacks: list[Id] = []
    oil: Text = ""
    note: Text = ""
    limits: dict[Id, Text] = {}
    dimensions: dict[Id, Text] = {}


class CardEngine(Table):
    """``[engine]`` of a card: how the engine is built, and the manual its figures are from."""

    name: Text = ""
    manual: Text = ""
    layout: Id = UNKNOWN.id
    profile: Id | None = None
    aircraft: bool | None = None
    has: list[Id] = []
    lacks: list[Id] = []
    note: Text = ""


class OilInIt(Table):
    """``[oil]`` of a case, or of its engine's card: the grade."""

    grade: Text = ""


class Entry(Table):
    """What every numbered entry carries."""

    no: Number
    when: When | None = None
    by: Text = ""
    note: Text = ""
    learned: Learned | None = None
    replaces: Number | None = None


class FindingEntry(Entry):
    """``[[finding]]``: one observation, or one measured value."""

    what: Id
    state: Literal["present", "absent", "unknown", "withdrawn"] | None = None
    value: Text | None = None
    sure: Annotated[StrictFloat | StrictInt, Field(ge=0.5, le=1.0)] | None = None
    where: Text = ""


class ReadingEntry(Entry):
    """``[[reading]]``: one look at a gauge; speed and oil may be words."""

    rpm: Text | None = None
    oil: Text | None = None
    pressure: Text | None = None
    coolant: Text | None = None
    during: list[Word] = []
    usual: Text | None = None
    gauge: Literal["panel", "direct"] = "panel"
    station: Text | None = None  #: where a panel gauge sits, where there are several
    tap: Text = "gallery"
    error: Text | None = None
    at: Literal["start"] | None = None  #: of the repaired engine's first start
    state: Literal["withdrawn"] | None = None


class BaselineEntry(Entry):
    """``[[baseline]]``: a pressure this engine had, or should have, when nothing was wrong."""

    rpm: Text | None = None
    oil: Text | None = None
    pressure: Text | None = None
    coolant: Text | None = None
    during: list[Word] = []
    tap: Text = "gallery"
    error: Text | None = None
    state: Literal["withdrawn"] | None = None


class WorkEntry(Entry):
    """``[[work]]``: a task of putting together done, failed or left out with the reason."""

    what: Id
    state: Literal["done", "failed", "skipped", "withdrawn"] | None = None
    value: Text | None = None
    where: Text = ""


class ClosedEntry(Entry):
    """``[[closed]]``: the job is over: what it was, how that was confirmed, what was done."""

    causes: list[Id] = []
    how: Text = ""  #: how the cause was confirmed
    remedy: Text = ""
    minutes: Text | None = None  #: hands-on, really spent until the cause was confirmed
    planned: Text | None = None  #: what the plan said when only the complaint was known
    reason: Text = ""  #: why it is closed although something stands open
    comeback: Text = ""  #: the file of the earlier job of which this is one
    state: Literal["withdrawn"] | None = None


class BehaviourEntry(Entry):
    """``[[behaviour]]``: how the pressure behaves, or a noise, and when."""

    shows: Word | None = None
    during: list[Word] = []
    never: list[Word] = []
    only: bool | None = None
    onset: Word | None = None
    course: list[Word] = []
    since: Word | None = None
    lasts: Text | None = None
    with_pressure: bool | None = None
    gauge: Literal["panel", "direct", "lamp"] = "panel"
    state: Literal["withdrawn"] | None = None


class TrialEntry(Entry):
    """``[[trial]]``: what was tried, and what it did."""

    what: Id
    result: Word | None = None
    state: Literal["withdrawn"] | None = None


class EarlierEntry(Entry):
    """``[[earlier]]``: what was worked on before the trouble began, or is done in its repair."""

    what: Id
    done: Word | None = None
    before: Text | None = None
    hands: Word | None = None
    at: Literal["repair"] | None = None  #: part of this repair: it began nothing
    state: Literal["withdrawn"] | None = None


class BearingEntry(Entry):
    """``[[bearing]]``: what was measured of one bearing, or what goes for all of a kind.

    Lengths are text with one unit behind all figures: "2.4482 2.4481 in".
    """

    what: Word  #: "main 3", "rod 1", "mains", "rods"
    bore: Text | None = None
    inside: Text | None = None
    journal: Text | None = None
    shell: Text | None = None
    strip: Text | None = None
    crush: Text | None = None
    spread: Text | None = None
    undersize: Text | None = None
    new_journal: Text | None = None
    new_bore: Text | None = None
    new_shell: Text | None = None
    wanted: Text | None = None
    sizes: Text | None = None
    use: Literal["road", "hard"] | None = None
    count: Text | None = None  #: how many the engine has
    at: Literal["build"] | None = None  #: with the new parts fitted
    state: Literal["withdrawn"] | None = None


class Expect(Table):
    """``[expect]``: what a worked case must come out as; makes a case a test."""

    first: list[Id] = []
    among_three: list[Id] = []
    among_five: list[Id] = []
    alarm: bool | None = None
    contradiction: bool | None = None


TABLES: dict[str, type[Table]] = {
    "job": Job,
    "engine": Engine,
    "oil": OilInIt,
    "expect": Expect,
}
ENTRIES: dict[str, type[Entry]] = {
    "finding": FindingEntry,
    "reading": ReadingEntry,
    "baseline": BaselineEntry,
    "work": WorkEntry,
    "closed": ClosedEntry,
    "behaviour": BehaviourEntry,
    "trial": TrialEntry,
    "earlier": EarlierEntry,
    "bearing": BearingEntry,
}
AnyTable = TypeVar("AnyTable", bound=Table)

#: what stands in for a required field that could not be read
_STOPGAP: dict[str, Any] = {"no": 1_000_000, "what": "unread"}
_LISTED = {"has", "lacks", "limits", "dimensions", "first", "among_three", "among_five", "causes"}
_LISTED |= {"during", "never", "course"}
_DATE = "must be a date, written 2026-05-01 without quotes"
_NUMBER = "must be a whole number from 1 to 1,000,000"
_RIGHT = {  # fields with one message, whatever is wrong with them
    "when": _DATE,
    "opened": _DATE,
    "no": _NUMBER,
    "replaces": _NUMBER,
    "sure": "must be a number from 0.5 to 1",
}
_PLAIN = {  # pydantic's name for a fault, and ours
    "string_type": "must be text, in quotes",
    "string_unicode": "is not UTF-8 text",
    "string_too_short": "must not be empty",
    "bool_type": "must be true or false",
    "list_type": "must be a list in square brackets",
    "dict_type": "must be a table of its own",
}


@dataclass(frozen=True, slots=True)
class Checked(Generic[AnyTable]):
    """A table as far as it could be read, and the fields that could not, or are misspelt."""

    table: AnyTable
    where: str
    broken: frozenset[str] = frozenset()
    faults: tuple[str, ...] = ()


def checked(raw: Mapping[str, Any], where: str, model: type[AnyTable]) -> Checked[AnyTable]:
    """The table without what is wrong in it, and everything that is."""
    stopgap = {k: v for k, v in _STOPGAP.items() if k in model.model_fields}
    if crowd := _crowded(raw, where):
        return Checked(model.model_validate(stopgap), where, frozenset(model.model_fields), crowd)
    try:
        return Checked(model.model_validate(raw), where)
    except ValidationError as error:
        found = error.errors(include_url=False)
    broken = frozenset(str(f["loc"][0]) for f in found)
    partly = broken & _LISTED & model.model_fields.keys()
    sound = {k: _sound(v) if k in partly else v for k, v in raw.items() if k not in broken - partly}
    sound = {k: v for k, v in sound.items() if v is not None}
    faults = tuple(dict.fromkeys(_fault_text(f, where, model) for f in found))
    try:
        table = model.model_validate({**stopgap, **sound})
    except ValidationError:
        table = model.model_validate(stopgap)
    meant = {nearest_word(k, model.model_fields) or k for k in broken - model.model_fields.keys()}
    return Checked(table, where, broken | meant - raw.keys(), faults)


def _sound(value: Any) -> Any:
    """The valid words of a list or table with faults; None of any other value."""
    match value:
        case list():
            return [v for v in value if _is_word(v)]
        case dict():
            return {k: v for k, v in value.items() if _is_word(k) and _is_word(v)}
    return None


def _is_word(value: Any) -> bool:
    return isinstance(value, str) and value.strip() != "" and len(value) <= 200


def _crowded(raw: Mapping[str, Any], where: str) -> tuple[str, ...]:
    """Faults of tables and lists that are too long."""
    parts = {where: raw, **{f"{where}.{plain(k)}": v for k, v in raw.items()}}
    return tuple(
        f"{name}: {len(part):,} entries; at most {MOST_ENTRIES:,}"
        for name, part in parts.items()
        if isinstance(part, dict | list) and len(part) > MOST_ENTRIES
    )


def _fault_text(fault: Any, where: str, model: type[Table]) -> str:
    """A pydantic fault in plain words."""
    key = str(fault["loc"][0])
    place, got = f"{where}.{plain(key)}", seen(fault["input"])
    if fault["type"] == "missing":
        return f"{place}: missing"
    if key in _RIGHT and key in model.model_fields:
        return f"{place}: {got} {_RIGHT[key]}"
    for part in fault["loc"][1:]:
        place += f"[{part + 1}]" if isinstance(part, int) else f".{plain(part)}"
    match fault["type"]:
        case "extra_forbidden":
            return f"{place}: no such field.{nearest(key, model.model_fields)}"
        case "literal_error":
            expected = fault["ctx"]["expected"]
            near = nearest(str(fault["input"]), quoted(expected))
            return f"{place}: {got} is not {expected}.{near}"
        case "string_too_long":
            size, most = len(fault["input"]), fault["ctx"]["max_length"]
            return f"{place}: {size:,} characters; at most {most:,}"
        case kind:
            return f"{place}: {got} {_PLAIN.get(kind, str(fault['msg']))}"


def quoted(expected: str) -> list[str]:
    """The words between quotes.

    >>> quoted("'panel' or 'direct'")
    ['panel', 'direct']
    """
    return expected.split("'")[1::2]


def seen(value: object) -> str:
    """Describe a value of the file in few words, whatever its size."""
    match value:
        case dict():
            return "a table"
        case list():
            return "a list"
        case bool():
            return str(value).lower()
        case int() if abs(value) >= 10**18:
            return "a number of many digits"
        case _:
            return f"'{plain(value, 40)}'"
