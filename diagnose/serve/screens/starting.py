"""The first start of the mended engine: what the gauge should show, the limits, what it shows."""

from __future__ import annotations

from diagnose.output.documents.first_start import (
    FirstStartDocument,
    PredictedPressure,
    first_start_document,
)
from diagnose.output.scale import scale_of
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import Answer, Asked, address
from diagnose.serve.screens.fitting import sheet_of
from diagnose.serve.screens.noting import WHEN
from diagnose.serve.screens.shared import PRESSURES, kept
from diagnose.serve.site import Site, job_screen
from diagnose.signoff.start import predicted_start
from knowledge.book import the_book
from knowledge.pressure.quantities import STOP_IDLE_PRESSURE


def show(site: Site, asked: Asked) -> Answer:
    """Predicted pressures in large figures, and a field for each that is read."""
    with site.job(asked) as known:
        document = _document(known)
        return job_screen(
            "start.html",
            asked,
            known,
            start=document,
            rows=_rows(document),
            scale=scale_of(known.case),
            stop=scale_of(known.case).one(known.case.limit(STOP_IDLE_PRESSURE)),
            limits=[i for i in document.watch if i.measured and i.accepted],
            others=[i for i in document.watch if not (i.measured and i.accepted)],
            when=[w for w in WHEN if w.id != "hot_3000"],
            units=PRESSURES,
            back=(address("job", asked.job, "signoff"), "Put together"),
        )


def _rows(document: FirstStartDocument) -> list[tuple[str, list[PredictedPressure]]]:
    """The predictions of each oil temperature, in the order of the speeds."""
    if document.table is None:
        return []
    heats = dict.fromkeys(p.oil_kelvin for p in document.predicted)
    return [
        (row.heat, [p for p in document.predicted if p.oil_kelvin == heat])
        for row, heat in zip(document.table.rows, heats, strict=True)
    ]


def _document(known: Known) -> FirstStartDocument:
    """The first start of a case."""

    def made() -> FirstStartDocument:
        start = predicted_start(known.case, the_book())
        return first_start_document(start, sheet_of(known, whole=False), known.path.name)

    return kept(known, "start", made)
