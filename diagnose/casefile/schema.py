"""The shape of a case file, table by table; the one door to pydantic."""

from __future__ import annotations

from datetime import date, datetime
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StrictFloat, StrictInt, StringConstraints

VERSION = 1

Text = Annotated[str, StringConstraints(max_length=10_000)]
Word = Annotated[str, StringConstraints(min_length=1, max_length=200, strip_whitespace=True)]
Number = Annotated[int, Field(ge=1, le=1_000_000)]
Learned = Literal["told", "outside", "opened"]
When = datetime | date


class Table(BaseModel):
    """A table whose unknown keys are errors."""

    model_config = ConfigDict(extra="forbid", frozen=True)


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

    layout: Word = "unknown"
    name: Text = ""
    has: list[Word] = []
    lacks: list[Word] = []
    oil: Text = ""
    note: Text = ""
    limits: dict[Word, Text] = {}


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

    what: Word
    state: Literal["present", "absent", "unknown", "withdrawn"] | None = None
    value: Text | None = None
    sure: Annotated[StrictFloat | StrictInt, Field(ge=0.5, le=1.0)] | None = None
    where: Text = ""


class ReadingEntry(Entry):
    """``[[reading]]``: one look at a gauge."""

    rpm: Text | None = None
    oil: Text | None = None
    pressure: Text | None = None
    gauge: Literal["panel", "direct"] = "panel"
    tap: Text = "gallery"
    error: Text | None = None
    state: Literal["withdrawn"] | None = None


class Expect(Table):
    """``[expect]``: what a worked case must come out as; makes a case a test."""

    first: list[Word] = []
    among_three: list[Word] = []
    among_five: list[Word] = []
    alarm: bool | None = None
    contradiction: bool | None = None


TABLES: dict[str, type[Table]] = {"job": Job, "engine": Engine, "expect": Expect}
ENTRIES: dict[str, type[Entry]] = {"finding": FindingEntry, "reading": ReadingEntry}
