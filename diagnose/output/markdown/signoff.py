"""``signoff`` as a Markdown sheet to fill in, and its blanks alone as TOML."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.output.documents.named import UNTITLED
from diagnose.output.documents.signoff import SignoffDocument
from diagnose.output.documents.signoff_items import SignoffItem
from diagnose.output.lines import as_typed
from diagnose.output.markdown.blanks import BLANK, one_line


def signoff_markdown(document: SignoffDocument) -> str:
    """Render the sheet: every blank is a line that begins with its id in backquotes and a colon."""
    title = one_line(document.title) or UNTITLED
    lines = [f"# Sign-off sheet: {title}", "", f"{document.count}.", ""]
    lines += [document.question, ""] if document.question else []
    lines += [
        "Write done, failed or a measured value with its unit after the colon, n/a where the "
        "engine has no such thing. Anything else that is left out needs its reason: record it by "
        "itself with skipped and a note. "
        f"Then: `diagnose record {as_typed(document.path)} --sheet` and the name of this file.",
        "",
    ]
    if document.parts:
        lines += ["## Parts and consumables", ""]
        for part in document.parts:
            first = f"; before ordering: {part.measure_first}" if part.measure_first else ""
            note = f"; {part.note}" if part.note else ""
            lines.append(f"- [ ] {part.says}, {part.quantity}{first}{note}")
        lines.append("")
    for phase in document.phases():
        lines += [f"## {phase.says}", ""]
        for caution in phase.cautions:
            lines += [f"> caution: {caution}", ">"]
        for item in phase.items:
            lines += ["", *_item(item)]
        lines.append("")
    lines += ["## These come first", "", *(f"- {d}" for d in document.deferrals)]
    return "\n".join(lines)


def _item(item: SignoffItem) -> Iterator[str]:
    yield f"### {item.says}"
    yield ""
    yield from (f"{i}. {step}" for i, step in enumerate(item.how, 1))
    yield ""
    yield from (f"- {limit}" for limit in item.limits)
    if item.open:
        yield f"- `{item.task}`: {BLANK} · {item.blank}"
    else:
        yield f"- [{item.mark}] {item.stands}"


def signoff_blanks(document: SignoffDocument) -> str:
    """Render every open task as a key of a TOML file, in the order of the work."""
    lines = ["# done, failed, or a measured value with its unit; n/a where the engine has none", ""]
    for phase in document.phases():
        lines.append(f"# {phase.says}")
        lines += [f'{i.task} = ""  # {_blank(i)}' for i in phase.items if i.open]
    return "\n".join(lines)


def _blank(item: SignoffItem) -> str:
    """Say what a task is, and how its figure is written where it has one."""
    return f"{item.says}: {item.blank}" if item.measured else item.says
