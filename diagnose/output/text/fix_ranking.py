"""The smallest repairs that meet a pressure wanted, as lines; part of what ``forecast`` prints."""

from __future__ import annotations

from diagnose.output.documents.forecast_targets import ForecastRemedy, ForecastTarget
from diagnose.output.lines import about, percent, wrapped
from diagnose.output.scale import Scale
from knowledge.circuit.fixes import LEAK

OTHER_TARGET = 2.5  #: times the pressure wanted, as an example of another
PARTS = 2  #: parts named


def ranking_lines(target: ForecastTarget, scale: Scale, most: int, *, may_run: bool) -> list[str]:
    """Return the repairs for one target, best first, at most so many.

    ``may_run``: no alarm forbids running the engine.
    """
    wanted = f"{scale.one(target.pressure)} at {target.rpm:.0f} rpm hot"
    source = f"; {target.source}" if target.source else ""
    if target.none_needed and not may_run:
        return wrapped(
            f"Without a repair it shows {wanted}, but STOP applies: do not run it until you have "
            "found the cause.",
            0,
            2,
        )
    if target.none_needed:
        other = scale.one(OTHER_TARGET * target.pressure)
        return wrapped(
            f"No repair is needed for {wanted} ({target.says}{source}). For another pressure: "
            f'--target "{other}".',
            0,
            2,
        )
    if target.read_below is not None and target.by_model is not None:
        room = scale.one(target.pressure + target.by_model.mean - target.read_below)
        return wrapped(
            f"For {wanted} ({target.says}{source}): too near to say. The gauge reads "
            f"{scale.one(target.read_below)} there, the model shows "
            f"{scale.range(target.by_model)}, within the gauge's error. Read it there again, or "
            f'repair it with room to spare: --target "{room}".',
            0,
            2,
        )
    shown = target.enough or target.not_enough
    lost = bool(target.enough) and all(r.fixes == (LEAK.id,) for r in target.enough)
    head = "Smallest repairs for" if target.enough and not lost else "No repair is enough for"
    until = " until the loss is found" if lost else ""
    lines = wrapped(f"{head} {wanted}{until} ({target.says}{source})", 0, 2)
    if not target.enough:
        mended = percent(target.met_mended)
        lines += wrapped(
            f"With everything found put right, {mended} of such engines reach it."
            + (" The biggest gains:" if shown else ""),
            2,
        )
    for remedy in shown[:most]:
        lines += _remedy(remedy, scale)
    if target.enough and target.not_enough:
        lines += wrapped("Found, so put right in any case, but not enough by itself", 0, 2)
        for remedy in target.not_enough:
            lines += _remedy(remedy, scale)
    more = len(shown) - most
    return [*lines, f"  and {more} more: --full"] if more > 0 else lines


def _remedy(remedy: ForecastRemedy, scale: Scale) -> list[str]:
    """Name, pressure then, minutes; under it what is done, with the parts."""
    minutes = "time not known" if remedy.minutes is None else about(remedy.minutes)
    names = " + ".join(remedy.fixes)
    notes = [
        *(["only if the loss not found yet is there"] if remedy.assumed else []),
        *(["treats a symptom"] if remedy.symptom else []),
    ]
    note = f" ({'; '.join(notes)})" if notes else ""
    parts = ", ".join(remedy.parts[:PARTS]) + (" ..." if len(remedy.parts) > PARTS else "")
    parts = f"; parts: {parts}" if parts else ""
    says = f"{names}: {scale.range(remedy.after)}, {minutes}: {remedy.says}{note}{parts}"
    return wrapped(f"- {says}", 2, 4)
