"""``bearings`` as a Markdown sheet to fill in, and its blanks alone as TOML."""

from __future__ import annotations

from diagnose.output.documents.bearing_sheet import BearingBlanks, BearingSheet
from diagnose.output.lines import as_typed
from diagnose.output.markdown.blanks import BLANK, one_line


def bearings_markdown(sheet: BearingSheet) -> str:
    """Render the sheet: every blank begins with its field and its bearing in backquotes."""
    lines = [f"# Bearings: {one_line(sheet.title)}", ""]
    lines += [
        "Caps at full torque, everything clean and dry, parts and instruments at one temperature. "
        "Several figures in one blank, a space between them. Leave out what you did not measure.",
        "",
        f"Then: `diagnose bearings {as_typed(sheet.path)} --from` and the name of this file.",
        "",
        f"- `unit`: {BLANK} · in, thou or mm: of every figure that has no unit of its own",
        "",
    ]
    for kind in sheet.kinds:
        lines += [f"## {kind.kind.capitalize()}", ""]
        if kind.wanted:
            lines += [f"Clearance wanted: {kind.wanted}.", ""]
        for one in (kind.general, *kind.each):
            lines += [f"### {one.name.capitalize()}", "", *_lines(one), ""]
    return "\n".join(lines)


def _lines(one: BearingBlanks) -> list[str]:
    return [
        f"- `{b.field} @ {one.name}`: {BLANK} · "
        + (f"entered: {one_line(b.entered)}" if b.entered else f"{b.says}: {b.like}")
        for b in one.blanks
    ]


def bearings_blanks(sheet: BearingSheet) -> str:
    """Render every blank as a key of a TOML file, in the order of the engine."""
    lines = [
        "# figures with a space between them; leave empty what you did not measure",
        'unit = ""  # in, thou or mm: of every figure that has no unit of its own',
        "",
    ]
    for kind in sheet.kinds:
        for one in (kind.general, *kind.each):
            lines.append(f"# {one.name}")
            lines += [f'"{b.field} @ {one.name}" = ""  # {b.like}' for b in one.blanks]
    return "\n".join(lines)
