"""``signoff --start`` on a terminal: predicted pressures, stop limits, what was read."""

from __future__ import annotations

from diagnose.output.documents.first_start import FirstStartDocument
from diagnose.output.documents.named import UNTITLED
from diagnose.output.documents.signoff_items import SignoffItem
from diagnose.output.lines import as_typed, labelled, percent, together, wrapped
from diagnose.ways import Way, to

BLOCKING, CAUSES = 4, 4  #: shown


def first_start_text(document: FirstStartDocument) -> str:
    """Render the whole watch as text."""
    return together(
        [
            wrapped(f"First start: {document.title or UNTITLED}"),
            _held_up(document),
            _predicted(document),
            *_watch(document),
            _read(document),
            _reopened(document) if document.reopened else _above(document),
        ]
    )


def _held_up(document: FirstStartDocument) -> list[str]:
    if not document.blocking:
        return []
    lines = wrapped(
        f"DO NOT START YET: {len(document.blocking)} checks of the sign-off are open or "
        "failed, the first of them:"
    )
    for task in document.blocking[:BLOCKING]:
        lines += wrapped(f"- {task}", 2, 4)
    return lines


def _predicted(document: FirstStartDocument) -> list[str]:
    table = document.table
    if table is None:
        return unpredicted(document)
    lines = [f"Predicted at the gallery, {table.unit}: mean (nine engines in ten)"]
    lines.append("  oil        " + "".join(f"{f'{rpm} rpm':>16}" for rpm in table.speeds))
    for row in table.rows:
        lines.append(f"  {row.heat:10} " + "".join(f"{cell:>16}" for cell in row.cells))
    if document.fitted:
        lines += wrapped(f"with the values fitted: {', '.join(document.fitted)}", 2, 4)
    if document.left:
        lines += wrapped(f"with what was left as found: {', '.join(document.left)}", 2, 4)
    if table.cold:
        lines += wrapped(table.cold, 2, 4)
    if table.wide:
        lines += wrapped(
            "The case has no pressure from when the engine was sound; the bands are wide.", 2, 4
        )
    return lines


def unpredicted(document: FirstStartDocument) -> list[str]:
    """What holds where no pressure is predicted."""
    says = document.unpredicted
    lines = wrapped(f"{says[:1].upper()}{says[1:]}.", 0, 2)
    lines.append("Shut down at once")
    for stop in document.stops:
        lines += wrapped(f"- {stop}", 2, 4)
    return lines + wrapped(f"Enter its own figures: {to(Way.FIGURES)}", 0, 2)


def _watch(document: FirstStartDocument) -> list[list[str]]:
    """The first start's limits, each with its source."""
    items = document.watch
    lines = ["Watch, and shut down at the limit" if items else "Take care"]
    for caution in document.cautions:
        lines += wrapped(f"caution: {caution}", 2, 4)
    for item in items:
        lines += _limit(item)
    if items:
        return [lines]
    none = "Nothing you opened needs watching at the start; every limit of a first start:"
    command = f"  diagnose signoff {as_typed(document.path)} --start --whole-engine"
    return [lines, [*wrapped(none), command]]


def _limit(item: SignoffItem) -> list[str]:
    lines = wrapped(f"- {item.says} [{item.task}]", 2, 4)
    for text in item.limits:
        lines += wrapped(text, 4, 6)
    if not item.measured:
        lines += wrapped(f"{item.how[0]}; {item.source}", 4, 6)
    return lines


def _read(document: FirstStartDocument) -> list[str]:
    lines = ["Read so far"] if document.read else []
    for text in document.read_says:
        lines += wrapped(text, 2, 4)
    if document.by_lamp:
        lines += wrapped("Write down what the lamp does, or read a test gauge:")
        says = '--after-repair "light out at once, stays out hot"'
        return [*lines, f"  diagnose record {as_typed(document.path)} {says}"]
    lines += wrapped(
        "Write down cold idle, then every few minutes to hot, with speed and oil temperature:"
    )
    reading = f"800 rpm {document.example} direct start"
    lines.append(f'  diagnose record {as_typed(document.path)} --reading "{reading}"')
    return lines


def _above(document: FirstStartDocument) -> list[str]:
    """What to do where readings lie above what was predicted and none below it."""
    if not any(r.above for r in document.read):
        return []
    return wrapped(
        "More than predicted, and nowhere less: no sign that pressure is lost. Before you leave "
        "it, check the relief valve and its spring, the grade of the oil and the gauge; "
        "the model is least certain with cold oil."
    )


def _reopened(document: FirstStartDocument) -> list[str]:
    lines = wrapped(
        "The engine reads less than predicted: the diagnosis is open again. From these "
        "readings alone, on a freshly built engine, likeliest first:"
    )
    for cause in document.reopened[:CAUSES]:
        lines += wrapped(f"{percent(cause.probability):>6}  {cause.says}", 2, 10)
    if document.look_at:
        lines += labelled("look at", document.look_at, 2, 12)
    lines.append(f"  diagnose review {as_typed(document.path)}")
    return lines
