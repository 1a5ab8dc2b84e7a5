"""Invented closed jobs, written into a test's own folder."""

from __future__ import annotations

from pathlib import Path

KNOWN = '[[finding]]\nno = 1\nwhat = "needle_flickers"\nstate = "present"\n'
SEEN = '[[finding]]\nno = 2\nwhat = "debris_on_relief_seat"\nstate = "present"\n'


def job_text(
    *causes: str,
    layout: str = "skew_gear_four",
    findings: str = KNOWN + SEEN,
    minutes: str = "40 min",
    when: str = "2026-05-01",
    comeback: str = "",
) -> str:
    """A job; without causes it is open."""
    text = f'schema = 1\n[job]\ntitle = "Plover"\n[engine]\nlayout = "{layout}"\n{findings}'
    if not causes:
        return text
    names = ", ".join(f'"{c}"' for c in causes)
    text += f"[[closed]]\nno = 9\ncauses = [{names}]\n"
    text += f"when = {when}\n" if when else ""
    text += f'minutes = "{minutes}"\n' if minutes else ""
    return text + (f'comeback = "{comeback}"\n' if comeback else "")


def a_folder(folder: Path, **jobs: str) -> Path:
    """The folder with these jobs, by name without its ending."""
    folder.mkdir(exist_ok=True)
    for name, text in jobs.items():
        (folder / f"{name}.toml").write_text(text, "utf-8")
    return folder


def three_jobs(folder: Path) -> Path:
    """Two closed jobs and an open one."""
    return a_folder(
        folder,
        dunlin=job_text("relief_debris"),
        eider=job_text("relief_debris", "oil_level_low", minutes="", when=""),
        tern=job_text(),
    )
