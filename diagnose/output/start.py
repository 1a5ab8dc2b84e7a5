"""What ``signoff --start`` prints: predicted pressures, stop limits, what was read, what it means."""

from __future__ import annotations

from typing import Any

from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.cautions import cautions
from diagnose.output.documents.limits import source_title
from diagnose.output.lines import as_typed, labelled, percent, together, wrapped
from diagnose.output.scale import Scale, scale_of
from diagnose.output.signoff_words import limits
from diagnose.signoff.sheet import Item, Signoff
from diagnose.signoff.start import Compared, FirstStart
from knowledge.units import PSI, TEMPERATURE, show
from knowledge.work import Caution, Phase


def first_start(start: FirstStart, sheet: Signoff, path: str) -> str:
    """The whole watch as text."""
    return together(
        [
            wrapped(f"First start: {start.case.job.title or 'case without a title'}"),
            _held_up(sheet),
            _predicted(start),
            *_watch(sheet, as_typed(path)),
            _read(start, path),
            _reopened(start.reopened, path) if start.reopened else _above(start),
        ]
    )


def _held_up(sheet: Signoff) -> list[str]:
    before = [i for i in sheet.blocking if i.task.phase not in (Phase.FIRST_START, Phase.RUN_IN)]
    if not before:
        return []
    lines = wrapped(
        f"DO NOT START YET: {len(before)} checks of the sign-off stand in the way, the first of them:"
    )
    for item in before[:4]:
        lines += wrapped(f"- {item.task.says} [{item.task.id}]", 2, 4)
    return lines


def _predicted(start: FirstStart) -> list[str]:
    scale = scale_of(start.case)
    lines = [f"Predicted at the gallery, {scale.unit}: mean (nine engines in ten)"]
    speeds = list(dict.fromkeys(e.rpm for e in start.expected))
    lines.append("  oil        " + "".join(f"{f'{rpm:.0f} rpm':>16}" for rpm in speeds))
    for heat in dict.fromkeys(e.temperature for e in start.expected):
        row = [e for e in start.expected if e.temperature == heat]
        cells = "".join(f"{scale.ends(e.pressure):>16}" for e in row)
        lines.append(f"  {show(heat, TEMPERATURE, 'C', 3):10} {cells}")
    if start.fitted:
        lines += wrapped(f"with the values fitted: {', '.join(start.fitted)}", 2, 4)
    if start.left:
        lines += wrapped(f"with what was left as found: {', '.join(start.left)}", 2, 4)
    if cold_told(start):
        lines += wrapped(cold_told(start), 2, 4)
    if not start.case.baseline:
        lines += wrapped(
            "The case has no pressure from when the engine was sound; the bands are wide.", 2, 4
        )
    return lines


def cold_told(start: FirstStart) -> str:
    """Why the gauge may show less cold than warm, where it is predicted to; else empty."""
    mean = {(e.rpm, e.temperature): e.pressure.mean for e in start.expected}
    heats = sorted({heat for _, heat in mean})
    if not any(mean[rpm, heats[0]] < mean[rpm, heats[1]] for rpm, _ in mean):
        return ""
    return (
        "Cold, the gallery may show less than warm: thick oil loses more on its way through "
        "filter and oilways; the pump itself is not short of pressure then."
    )


def _watch(sheet: Signoff, path: str) -> list[list[str]]:
    """The first start's limits, each with its source."""
    items = sheet.of([Phase.FIRST_START])
    blocks = [["Watch, and shut down at the limit" if items else "Take care"]]
    kinds = [Caution.EXHAUST, Caution.ROTATING, Caution.HOT, Caution.FIRE, Caution.BOAT]
    kinds += [c for i in items for c in i.task.cautions]
    for caution in cautions(kinds, sheet.answer):
        blocks[0] += wrapped(f"caution: {caution}", 2, 4)
    for item in items:
        blocks[0] += _limit(item, sheet)
    if not items:
        none = "Nothing that was opened calls for a watch over the start; for every limit of one:"
        blocks.append([*wrapped(none), f"  diagnose signoff {path} --start --whole-engine"])
    return blocks


def _limit(item: Item, sheet: Signoff) -> list[str]:
    lines = wrapped(f"- {item.task.says} [{item.task.id}]", 2, 4)
    for text in limits(item, sheet):
        lines += wrapped(text, 4, 6)
    if not item.task.dimension:
        lines += wrapped(f"{item.task.how[0]}; {source_title(item.task.source)}", 4, 6)
    return lines


def _read(start: FirstStart, path: str) -> list[str]:
    name = as_typed(path)
    lines = []
    if start.compared:
        lines.append("Read so far")
        scale = scale_of(start.case)
        for one in start.compared:
            lines += wrapped(beside(one, scale), 2, 4)
    lines += wrapped(
        "Write down cold idle, then every few minutes to hot, with speed and oil temperature:"
    )
    example = scale_of(start.case).one(55 * PSI)
    lines.append(f'  diagnose record {name} --reading "800 rpm 20 C {example} direct start"')
    return lines


def beside(one: Compared, scale: Scale) -> str:
    """A reading of the first start beside what was predicted, in a sentence."""
    reading = one.read.reading
    heat = (
        show(reading.oil_temperature, TEMPERATURE, "C")
        if reading.oil_temperature
        else "taken as hot"
    )
    head = f"{reading.rpm:.0f} rpm, {heat}: {scale.one(reading.pressure)}; predicted "
    text = head + scale.range(one.predicted)
    if one.stop:
        return f"{text}: STOP THE ENGINE ({one.stop})"
    if one.below:
        return f"{text}: BELOW what was predicted; stop and look"
    return f"{text}: above what was predicted" if one.above else f"{text}: as predicted"


def _above(start: FirstStart) -> list[str]:
    """What to do where readings lie above what was predicted and none below it."""
    if not any(c.above for c in start.compared):
        return []
    return wrapped(
        "More than was predicted, and nowhere less: no sign that pressure is lost. Before it is "
        "let be, look at the relief valve and its spring, the grade of the oil and the gauge; "
        "what the model says of cold oil is its least certain figure."
    )


def _reopened(answer: Diagnosis, path: str) -> list[str]:
    lines = wrapped(
        "The engine does not do what was predicted: the diagnosis is open again. From these "
        "readings alone, on a freshly built engine, likeliest first:"
    )
    for ranked in answer.ranking[:4]:
        lines += wrapped(f"{percent(ranked.probability):>6}  {ranked.cause.says}", 2, 10)
    choice = answer.next_check
    if choice is not None:
        lines += labelled("look at", choice.option.inspection.says, 2, 12)
    lines.append(f"  diagnose review {as_typed(path)}")
    return lines


def data(start: FirstStart) -> dict[str, Any]:
    """The prediction and what was read; keys are only ever added."""
    reopened = start.reopened
    return {
        "predicted": [
            {
                "rpm": e.rpm,
                "oil_kelvin": e.temperature,
                "low": e.pressure.low,
                "middle": e.pressure.mean,
                "high": e.pressure.high,
            }
            for e in start.expected
        ],
        "fitted": list(start.fitted),
        "left": list(start.left),
        "read": [
            {
                "no": c.read.entry.no,
                "rpm": c.read.reading.rpm,
                "pressure": c.read.reading.pressure,
                "low": c.predicted.low,
                "high": c.predicted.high,
                "below": c.below,
                "above": c.above,
                "stop": c.stop,
            }
            for c in start.compared
        ],
        "reopened": [
            {"cause": r.cause.id, "probability": r.probability} for r in reopened.ranking[:10]
        ]
        if reopened
        else [],
    }
