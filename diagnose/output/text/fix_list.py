"""What ``forecast --fix`` prints: the repairs that can be named, on one screen."""

from __future__ import annotations

from textwrap import wrap

from diagnose.output.documents.fix_list import FixListDocument
from diagnose.output.lines import as_typed, width, wrapped
from diagnose.output.text.screen import command_lines


def fix_list_text(document: FixListDocument) -> str:
    """Return the list as lines for a terminal, the next thing to do last."""
    name = as_typed(document.case or "CASE")
    lines = [
        *wrapped(f"What can be put right on {document.title or 'this engine'}", 0, 2),
        "",
        *_row("--fix", "", "today", "=value", "what is done"),
        *(
            line
            for r in document.can_fix
            for line in _row(r.name, "*" if r.found else "", r.today, r.range, r.says)
        ),
        "",
        *wrapped(
            "* measured or seen. A name alone puts it right; a figure is in the job's units.", 0, 2
        ),
        *command_lines("For instance", f"diagnose forecast {name} --fix relief --fix mains=0.0025"),
    ]
    return "\n".join(lines)


def _row(name: str, mark: str, today: str, may_be: str, says: str) -> list[str]:
    start = f"{name:<7} {mark:<1} {today:<17} {may_be:<18} "
    first, *more = wrap(says, max(width() - len(start), 20))
    return [start + first, *(" " * len(start) + line for line in more)]
