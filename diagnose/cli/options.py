"""Options and arguments that several commands share."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

CaseFile = Annotated[
    Path,
    typer.Argument(readable=False, metavar="CASE", help="The case file, for instance petrel.toml."),
]
AsJson = Annotated[bool, typer.Option("--json", help="Print data instead of text.")]
Whole = Annotated[bool, typer.Option("--all", "--full", help="Everything, not one screen.")]
AsMarkdown = Annotated[bool, typer.Option("--markdown", help="A sheet to fill in, as Markdown.")]
AsBlanks = Annotated[bool, typer.Option("--blanks", help="Only the blanks, as TOML to fill in.")]
Changes = Annotated[
    list[str] | None,
    typer.Option(
        "--set",
        metavar="NAME=VALUE",
        help='What the repair changes: main_clearance="0.0025 in", oil=15W-40, '
        'relief_shim="1 mm", pump_displacement="+25 %"; again for each.',
    ),
]
ByName = Annotated[
    list[str] | None,
    typer.Option("--set", metavar="NAME=VALUE", hidden=True),  #: the older way to say ``--fix``
]
Fixes = Annotated[
    list[str] | None,
    typer.Option(
        "--fix",
        metavar="NAME[=VALUE]",
        help="What is put right: relief, pump, pickup, mains=0.002, rods=0.0018, oil=20W-50; "
        "again for each. Alone: lists what can be, with today's values.",
    ),
]
AsPage = Annotated[
    Path | None,
    typer.Option(
        "--html", readable=False, metavar="FILE", help="Write a page to print into this .html file."
    ),
]
WithHistory = Annotated[
    Path | None,
    typer.Option(
        "--with-history",
        readable=False,
        metavar="DIR",
        help="Also use what a folder's closed jobs teach.",
    ),
]
Until = Annotated[
    str,
    typer.Option(metavar="HOW-SURE", help="Stop once a cause is this likely: confident=0.9."),
]
OnlyMinutes = Annotated[
    float | None,
    typer.Option(
        min=1, max=100_000, metavar="MINUTES", help="Only what fits into so many minutes."
    ),
]
OnStand = Annotated[bool, typer.Option("--on-stand", help="The engine is out, on a stand.")]
ClosedUpToTest = Annotated[
    bool,
    typer.Option("--closed-up-to-test", help="Count closing up and a test run after each repair."),
]
FirstTime = Annotated[
    bool, typer.Option("--first-time", help="Minutes for somebody who has not done it before.")
]
LittleRoom = Annotated[bool, typer.Option("--little-room", help="A crowded engine bay or bilge.")]


class Form(StrEnum):
    """The form in which an answer is printed."""

    TEXT = "text"
    JSON = "json"
    MARKDOWN = "markdown"
    BLANKS = "blanks"


def form_of(*, json: bool, markdown: bool, blanks: bool) -> Form:
    """The form that the options ask for; text if none does."""
    asked = ((json, Form.JSON), (markdown, Form.MARKDOWN), (blanks, Form.BLANKS))
    return next((form for wanted, form in asked if wanted), Form.TEXT)
