"""What ``history`` prints: closed jobs, what was found beside the book, what learning would do."""

from __future__ import annotations

from typing import Any

from diagnose.errors import plain
from diagnose.history.learning import PLAN_COUNTS, Learned, Moved, ShopPace, moved, pace
from diagnose.history.shop import ClosedJob, LeftOut, Shop
from diagnose.output.lines import as_typed, columns, headed, percent, together, wrapped
from knowledge.book import Book
from knowledge.model import Cause

MOVES_SHOWN = 8
WORTH_SHOWING = 0.15  #: of the greatest move
FILE, LAYOUT = 34, 20  #: columns of the table


def history(shop: Shop, learned: Learned, book: Book) -> str:
    """The whole as text; one line where there is no closed job."""
    left_out = [*shop.left_out, *shop.remarks]
    if not shop.jobs:
        line = f"no closed job in {plain(shop.folder, 4096)}{_besides(shop)}"
        return together([wrapped(line), _left_out(left_out)])
    return together(
        [
            _head(shop, learned),
            _jobs(shop),
            _found(learned, book),
            _moves(moved(learned, book), book),
            _pace(pace(shop.jobs), shop),
            _left_out(left_out),
            _to_use(shop),
        ]
    )


def _head(shop: Shop, learned: Learned) -> list[str]:
    closed = _number(len(shop.jobs), "closed job")
    lines = wrapped(f"Jobs in {plain(shop.folder, 4096)}: {closed}{_besides(shop)}", 0, 2)
    if learned.jobs < len(shop.jobs):
        away = len(shop.jobs) - learned.jobs
        lines += wrapped(
            f"{_number(learned.jobs, 'job')} counted; {away} not, because the engine came back "
            "and the later job counts",
            2,
        )
    return lines


def _besides(shop: Shop) -> str:
    away = f", {_number(len(shop.left_out), 'file')} left out" if shop.left_out else ""
    return f"; {shop.open} open{away}"


def _number(n: int, what: str) -> str:
    return f"{n} {what}{'' if n == 1 else 's'}"


def _jobs(shop: Shop) -> list[str]:
    lines = [f"{'closed':<12}{'file':<{FILE}}{'layout':<{LAYOUT}}{'planned':>7}{'spent':>7}"]
    for job in shop.jobs:
        day = job.closed_on.isoformat() if job.closed_on else "no day"
        figures = f"{_minutes(job.minutes_planned):>7}{_minutes(job.minutes_spent):>7}"
        name, layout = _fitted(job.path.name, FILE), _fitted(job.layout.id, LAYOUT)
        lines.append(f"{day:<12}{name}{layout}{figures}")
        lines += wrapped("; ".join(_named(c) for c in job.causes), 12, 14)
        if job.path.name in shop.came_back:
            lines += wrapped("came back; not counted", 12, 14)
        if job.comeback:
            lines += wrapped(f"comeback of {plain(job.comeback)}", 12, 14)
    lines += wrapped(
        "Minutes hands-on: planned, up to finding the cause; spent, as written down at closing; "
        "- is not known.",
        0,
        2,
    )
    return lines


def _fitted(text: str, room: int) -> str:
    """The text with blanks behind it, or cut, to take just so many columns.

    >>> _fitted("oil", 5), _fitted("油圧油圧", 6)
    ('oil  ', '油圧… ')
    """
    shown = plain(text, 4096)
    if columns(shown) >= room:
        while columns(shown) > room - 2:
            shown = shown[:-1]
        shown += "…"
    return shown + " " * (room - columns(shown))


def _minutes(minutes: float | None) -> str:
    return "-" if minutes is None else f"{minutes:.0f}"


def _named(cause: Cause) -> str:
    return f"{cause.says} [{cause.id}]"


def _found(learned: Learned, book: Book) -> list[str]:
    """How often each cause was found, and how often the book expects it in such jobs."""
    lines = ["What was found", "  jobs  by the book"]
    for cause in _by_count(learned):
        head = f"{learned.found[cause]:6.3g}{learned.expected[cause]:13.2f}   "
        lines += headed(head, _named(book.causes[cause]))
    lines += wrapped(
        "By the book: how many of these jobs, with their layouts and what had happened to the "
        "engines before, it would give that cause. A job with two causes counts half for each.",
        0,
        2,
    )
    return lines


def _by_count(learned: Learned) -> list[str]:
    found = [c for c, n in learned.found.items() if n > 0]
    return sorted(found, key=lambda c: (-learned.found[c], c))


def _moves(moves: tuple[Moved, ...], book: Book) -> list[str]:
    if not moves:
        return []
    lines = ["What learning would change most, on an engine of which nothing is known yet"]
    most = abs(moves[0].after - moves[0].before)
    shown = [m for m in moves if abs(m.after - m.before) >= WORTH_SHOWING * most][:MOVES_SHOWN]
    for move in shown:
        head = f"  {_fine(move.before):>6} -> {_fine(move.after):>6}  "
        lines += headed(head, _named(book.causes[move.cause]))
    if len(shown) < len(moves):
        lines += wrapped(f"{len(moves) - len(shown)} more move less.", 2)
    return lines


def _fine(p: float) -> str:
    """A prior in percent, with a decimal: most are small."""
    return f"{100 * p:.1f} %" if p < 0.0995 else percent(p)


def _pace(found: ShopPace, shop: Shop) -> list[str]:
    if not any(j.minutes_planned is not None for j in shop.jobs):
        return []
    if not found.jobs:
        return wrapped("Pace: no job has both minutes planned and minutes spent.", 0, 2)
    spent, planned = sum(found.spent), sum(found.planned)
    lines = wrapped(
        f"Pace: this shop takes {found.factor:.2f} times the minutes planned "
        f"({_number(found.jobs, 'job')}: {spent:.0f} min spent, {planned:.0f} planned; "
        f"{PLAN_COUNTS:.0f} jobs that go to plan are counted in).",
        0,
        2,
    )
    lines += wrapped(
        "What one inspection takes cannot be learnt from what whole jobs took. A plan made with "
        "teardown --with-history is multiplied by the factor, and says so.",
        2,
    )
    return lines


def _left_out(left_out: list[LeftOut]) -> list[str]:
    if not left_out:
        return []
    lines = ["Left out, or not as written"]
    for each in left_out:
        lines += wrapped(f"- {plain(each.name)}: {plain(each.why, 300)}", 2, 4)
    return lines


def _to_use(shop: Shop) -> list[str]:
    folder = as_typed(str(shop.folder))
    lines = wrapped("The book itself stays as it is. To let these jobs speak in a review:")
    return [*lines, f"  diagnose review CASE --with-history {folder}"]


def data(shop: Shop, learned: Learned, book: Book) -> dict[str, Any]:
    """The same for ``--json``; keys are only ever added."""
    tempo = pace(shop.jobs)
    return {
        "folder": str(shop.folder),
        "jobs": [_job_data(j, shop) for j in shop.jobs],
        "counted": learned.jobs,
        "open": shop.open,
        "left_out": [{"file": e.name, "why": e.why} for e in shop.left_out],
        "remarks": [{"file": e.name, "why": e.why} for e in shop.remarks],
        "found": [
            {
                "cause": c,
                "jobs": learned.found[c],
                "expected": learned.expected[c],
                "book_share": learned.book_share[c],
                "share": learned.share[c],
                "factor": learned.factor[c],
            }
            for c in _by_count(learned)
        ],
        "moved": [
            {"cause": m.cause, "before": m.before, "after": m.after} for m in moved(learned, book)
        ],
        "pace": {"factor": tempo.factor, "jobs": tempo.jobs} if tempo.jobs else None,
    }


def _job_data(job: ClosedJob, shop: Shop) -> dict[str, Any]:
    return {
        "file": job.path.name,
        "layout": job.layout.id,
        "causes": [c.id for c in job.causes],
        "minutes_spent": job.minutes_spent,
        "minutes_planned": job.minutes_planned,
        "closed_on": job.closed_on.isoformat() if job.closed_on else None,
        "comeback": job.comeback or None,
        "counted": job.path.name not in shop.came_back,
    }


def told(shop: Shop, learned: Learned, own: bool, command: str) -> str:
    """The line by which a review or a plan says that a shop's jobs speak in it."""
    besides = " (this one apart)" if own else ""
    away = f"; {_number(len(shop.left_out), 'file')} there left out" if shop.left_out else ""
    return (
        f"with the shop's {_number(learned.jobs, 'closed job')}{besides} in "
        f"{plain(shop.folder, 4096)}{away}; without it: {command}"
    )
