"""Commands that compute the oil circuit of a case."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli.options import AsJson, CaseFile, Changes
from diagnose.cli.root import app


@app.command(short_help="What gauge readings say of the oil circuit.")
def survey(
    case: CaseFile,
    reading: Annotated[
        list[str] | None,
        typer.Option(
            metavar="READING",
            help='A reading to try, not kept: "700 rpm 95 C 8 psi", add "direct" for a test '
            'gauge, "pump" where it is tapped there, "+-1 psi" for its error; again for each.',
        ),
    ] = None,
    svg: Annotated[
        Path | None, typer.Option(metavar="FILE", help="Draw the curves into this .svg file.")
    ] = None,
    json: AsJson = False,
) -> None:
    """What the gauge readings say is wrong with the oil circuit, and how bad it is.

    Readings cold and hot at a few speeds say most; says which further reading is worth taking.
    """
    from diagnose.cli.surveying import show_survey

    show_survey(case, reading or [], svg, json)


@app.command(short_help="How many psi each measured finding explains.")
def budget(case: CaseFile, json: AsJson = False) -> None:
    """How much of the pressure missing at hot idle and at cruise each measured finding explains.

    The shares do not depend on the order of the findings; what nothing explains is shown too.
    """
    from diagnose.cli.budgeting import show_budget

    show_budget(case, json)


@app.command(short_help="The pressure after a planned repair.")
def forecast(
    case: CaseFile,
    changes: Changes = None,
    target: Annotated[
        str,
        typer.Option(
            metavar="PRESSURE", help='Pressure wanted hot: "25 psi" at idle, or "2500 rpm 40 psi".'
        ),
    ] = "",
    json: AsJson = False,
) -> None:
    """Pressure over speed, cold and hot, before and after a planned repair; what it costs.

    Warns where the repair treats a symptom, and says what single change would be enough.
    """
    from diagnose.cli.forecasting import show_forecast

    show_forecast(case, changes or [], target, json)
