"""Every address of the server, and the screen that answers it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from diagnose.serve.exchange import Answer, Asked
from diagnose.serve.screens import (
    asking,
    bearing_sizes,
    bearings,
    card,
    curves,
    dismantling,
    ending,
    engine,
    files,
    fitting,
    job,
    jobs,
    judging,
    noting,
    photos,
    shop,
    starting,
    telling,
    trying,
)
from diagnose.serve.site import Site

Handler = Callable[[Site, Asked], Answer]


def _nothing(site: Site, asked: Asked) -> Answer:
    return Answer(status=405)


@dataclass(frozen=True, slots=True)
class Screen:
    """An address: what shows it, and what takes its form."""

    path: str
    show: Handler = _nothing
    save: Handler = _nothing

    @property
    def methods(self) -> tuple[str, ...]:
        """The methods it answers."""
        shown = ("GET",) if self.show is not _nothing else ()
        return (*shown, "POST") if self.save is not _nothing else shown


ADDRESSES = (
    Screen("/", jobs.show),
    Screen("/code", jobs.show_code, jobs.take_code),
    Screen("/static/{file}", files.show),
    Screen("/favicon.ico", files.show_mark),
    Screen("/new", telling.show, telling.save),
    Screen("/job/{job}", job.show),
    Screen("/job/{job}/why", job.why),
    Screen("/job/{job}/ask", asking.show, asking.save),
    Screen("/job/{job}/check/{check}", job.show_check, job.save_check),
    Screen("/job/{job}/note", noting.show_note, noting.save_note),
    Screen("/job/{job}/engine", engine.show, engine.save),
    Screen("/job/{job}/verdict", judging.show),
    Screen("/job/{job}/readings", noting.show_readings, noting.save_readings),
    Screen("/job/{job}/card", card.show, card.save),
    Screen("/job/{job}/card/{section}", card.show_section, card.save_section),
    Screen("/job/{job}/bearings", bearings.show, bearings.save),
    Screen("/job/{job}/bearings/sizes", bearing_sizes.show, bearing_sizes.save),
    Screen("/job/{job}/teardown", dismantling.show),
    Screen("/job/{job}/teardown/sheet", dismantling.show_sheet),
    Screen("/job/{job}/teardown/{stage}", dismantling.show_stage),
    Screen("/job/{job}/signoff", fitting.show, fitting.save_parts),
    Screen("/job/{job}/signoff/sheet", fitting.show_sheet),
    Screen("/job/{job}/signoff/short", fitting.show_short_sheet),
    Screen("/job/{job}/signoff/{phase}", fitting.show_phase, fitting.save_phase),
    Screen("/job/{job}/start", starting.show),
    Screen("/job/{job}/close", ending.show_close, ending.save_close),
    Screen("/job/{job}/report", ending.show_report),
    Screen("/job/{job}/forecast", trying.show),
    Screen("/job/{job}/forecast.svg", trying.draw),
    Screen("/job/{job}/survey", curves.show_survey),
    Screen("/job/{job}/survey.svg", curves.draw_survey),
    Screen("/job/{job}/budget", curves.show_budget),
    Screen("/job/{job}/budget/{account}", curves.draw_budget),
    Screen("/job/{job}/photos", photos.show, photos.save),
    Screen("/job/{job}/photo/{photo}", photos.show_one),
    Screen("/shop", shop.show),
)
