"""``sizing``: choose pump, relief setting and oil with figures."""

from __future__ import annotations

from typing import Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson, CaseFile, Changes


def sizing(
    case: CaseFile,
    target: Annotated[
        str,
        typer.Option(
            metavar="PRESSURE", help='Pressure wanted hot: "15 psi" at idle, or "800 rpm 1 bar".'
        ),
    ] = "",
    changes: Changes = None,
    relief: Annotated[
        str, typer.Option(metavar="PRESSURE", help='Another relief setting to compare: "70 psi".')
    ] = "",
    pump: Annotated[
        str,
        typer.Option(metavar="SIZE", help='Another pump to compare: "+25 %", or "26 cm3" a turn.'),
    ] = "",
    oil: Annotated[
        list[str] | None,
        typer.Option(metavar="GRADE", help="A grade to compare, 15W-40; again for each."),
    ] = None,
    hot: Annotated[
        str, typer.Option(metavar="TEMPERATURE", help='Hot oil, "110 C"; as last read if left out.')
    ] = "",
    cold: Annotated[
        str, typer.Option(metavar="TEMPERATURE", help='Cold oil, "-5 C"; 20 C if left out.')
    ] = "",
    spring: Annotated[
        list[str] | None,
        typer.Option(
            metavar="LOAD",
            help='The relief spring as measured, "12 lbf at 1.75 in"; again for its rate.',
        ),
    ] = None,
    plunger: Annotated[
        str, typer.Option(metavar="SIZE", help='The relief plunger as measured: "12.7 mm".')
    ] = "",
    full: Annotated[
        bool,
        typer.Option("--full", "--all", help="Also the bench sheet, all oils, where the oil goes."),
    ] = False,
    json: AsJson = False,
) -> None:
    """Is the pump enough at hot idle; what pump, relief setting and oil buy and cost.

    From displacement, drive ratio and clearances of the case and its engine's card.
    """
    from diagnose.case.loading import load
    from diagnose.circuit.sizing import sizing as sizing_of
    from diagnose.entry.requests import parse_changes, parse_target, parse_wanted
    from diagnose.output.documents.sizing import sizing_document
    from diagnose.output.text.sizing import sizing_text
    from knowledge.book import the_book

    settings = parse_changes(changes or ())
    wanted = parse_wanted(
        relief=relief,
        pump=pump,
        oils=oil or (),
        hot=hot,
        cold=cold,
        plunger=plunger,
        springs=spring or (),
    )
    book = the_book()
    loaded = load(case, book)
    aim = parse_target(target, loaded) if target else None
    document = sizing_document(sizing_of(loaded, settings, aim, wanted))
    printing.document(document, lambda d: sizing_text(d, full=full), json=json)
