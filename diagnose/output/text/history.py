"""``history`` on a terminal."""

from __future__ import annotations

from diagnose.errors import plain
from diagnose.output.documents.history import HistoryDocument, counted
from diagnose.output.lines import as_typed, columns, headed, percent, together, width, wrapped
from diagnose.output.text.screen import Block, command_lines, cut, on_screen

MOVES_SHOWN = 8
WORTH_SHOWING = 0.15  #: of the greatest move
LAST, MOST_FOUND = 8, 5  #: jobs and causes on one screen
FILE, LAYOUT = 34, 20  #: columns of the table


def history_text(document: HistoryDocument) -> str:
    """Render the history as text; one line where there is no closed job."""
    if not document.jobs:
        line = f"no closed job in {plain(document.folder, 4096)}{_besides(document)}"
        return together([wrapped(line), _left_out(document)])
    return together(
        [
            _head(document),
            _jobs(document),
            _found_lines(document),
            _moves(document),
            _pace(document),
            _left_out(document),
            _to_use(document),
        ]
    )


def history_brief(document: HistoryDocument) -> str:
    """Return the history in about thirty lines: the last jobs, what was found most, what to type."""
    if not document.jobs:
        return history_text(document)
    left_out = len(document.left_out)
    folder = as_typed(document.folder)
    blocks = [
        Block(_head(document)),
        Block(_last_jobs(document)),
        Block(_most_found(document)),
        Block(_pace(document)[:2], spare=2),
        Block([f"{counted(left_out, 'file')} left out: --full"] if left_out else [], spare=1),
        Block(
            [
                "Minutes, the book's own rates, what learning would change: --full",
                *command_lines("Use it", f"diagnose review CASE --with-history {folder}"),
            ]
        ),
    ]
    return on_screen(blocks)


def _last_jobs(document: HistoryDocument) -> list[str]:
    """The last few jobs, a line each."""
    lines = []
    last = document.jobs[-LAST:]
    wide = min(FILE, max(columns(plain(job.file, 4096)) for job in last) + 2)
    for job in last:
        name = _fitted(job.file, wide)
        note = "" if job.counted else " (came back)"
        causes = "; ".join(c.says for c in job.causes)
        lines.append(cut(f"{job.closed_on or 'no day':<12}{name}{causes}{note}", width()))
    more = len(document.jobs) - LAST
    return [*lines, f"and {more} earlier: --full"] if more > 0 else lines


def _most_found(document: HistoryDocument) -> list[str]:
    lines = ["Found most often: jobs (one with two causes counts half for each)"]
    for each in sorted(document.found, key=lambda f: -f.jobs)[:MOST_FOUND]:
        lines += headed(f"  {each.jobs:4.3g}  ", f"{each.says} [{each.cause}]")
    return lines


def _head(document: HistoryDocument) -> list[str]:
    closed = counted(len(document.jobs), "closed job")
    head = f"Jobs in {plain(document.folder, 4096)}: {closed}{_besides(document)}"
    lines = wrapped(head, 0, 2)
    if document.counted < len(document.jobs):
        away = len(document.jobs) - document.counted
        lines += wrapped(
            f"{counted(document.counted, 'job')} counted; {away} not, because the engine came "
            "back and the later job counts",
            2,
        )
    return lines


def _besides(document: HistoryDocument) -> str:
    left_out = document.left_out
    away = f", {counted(len(left_out), 'file')} left out" if left_out else ""
    return f"; {document.open} open{away}"


def _jobs(document: HistoryDocument) -> list[str]:
    lines = [f"{'closed':<12}{'file':<{FILE}}{'layout':<{LAYOUT}}{'planned':>7}{'spent':>7}"]
    for job in document.jobs:
        figures = f"{_minutes(job.minutes_planned):>7}{_minutes(job.minutes_spent):>7}"
        name, layout = _fitted(job.file, FILE), _fitted(job.layout, LAYOUT)
        lines.append(f"{job.closed_on or 'no day':<12}{name}{layout}{figures}")
        lines += wrapped("; ".join(map(str, job.causes)), 12, 14)
        if not job.counted:
            lines += wrapped("came back; not counted", 12, 14)
        if job.comeback:
            lines += wrapped(f"comeback of {plain(job.comeback)}", 12, 14)
    lines += wrapped(
        "Minutes hands-on: planned, the book's for the checks that were made; spent, as written "
        "down at closing; "
        "- is not known.",
        0,
        2,
    )
    return lines


def _fitted(text: str, room: int) -> str:
    """Pad or cut the text to that many columns.

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


def _found_lines(document: HistoryDocument) -> list[str]:
    lines = ["What was found", "  jobs  by the book"]
    for each in document.found:
        head = f"{each.jobs:6.3g}{each.expected:13.2f}   "
        lines += headed(head, f"{each.says} [{each.cause}]")
    lines += wrapped(
        "By the book: in how many of these jobs it would expect that cause, given layout and "
        "history. A job with two causes counts half for each.",
        0,
        2,
    )
    return lines


def _moves(document: HistoryDocument) -> list[str]:
    moves = document.moved
    if not moves:
        return []
    lines = ["What learning would change most, on an engine of which nothing is known yet"]
    most = abs(moves[0].after - moves[0].before)
    shown = [m for m in moves if abs(m.after - m.before) >= WORTH_SHOWING * most][:MOVES_SHOWN]
    for move in shown:
        head = f"  {_fine(move.before):>6} -> {_fine(move.after):>6}  "
        lines += headed(head, f"{move.says} [{move.cause}]")
    if len(shown) < len(moves):
        lines += wrapped(f"{len(moves) - len(shown)} more change less.", 2)
    return lines


def _fine(p: float) -> str:
    """Write a prior in percent, with a decimal: most are small."""
    return f"{100 * p:.1f} %" if p < 0.0995 else percent(p)


def _pace(document: HistoryDocument) -> list[str]:
    if all(j.minutes_planned is None for j in document.jobs):
        return []
    pace = document.pace
    if pace is None:
        return wrapped("Pace: no job has both minutes planned and minutes spent.", 0, 2)
    lines = wrapped(
        f"Pace: this shop takes {pace.factor:.2f} times the minutes planned "
        f"({counted(pace.jobs, 'job')}: {pace.spent:.0f} min spent, {pace.planned:.0f} planned; "
        f"{pace.prior_jobs:.0f} jobs that go to plan are counted in).",
        0,
        2,
    )
    lines += wrapped(
        "Whole jobs do not show what one inspection takes. teardown --with-history multiplies "
        "its minutes by this factor and says so.",
        2,
    )
    return lines


def _left_out(document: HistoryDocument) -> list[str]:
    left_out = (*document.left_out, *document.remarks)
    if not left_out:
        return []
    lines = ["Left out, or not as written"]
    for each in left_out:
        lines += wrapped(f"- {plain(each.file)}: {plain(each.why, 300)}", 2, 4)
    return lines


def _to_use(document: HistoryDocument) -> list[str]:
    folder = as_typed(document.folder)
    lines = wrapped("The book itself stays unchanged. To use these jobs in a review:")
    return [*lines, f"  diagnose review CASE --with-history {folder}"]
