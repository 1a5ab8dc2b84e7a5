"""The picture of the page in the README: which screens it shows, and how it is put together."""

from __future__ import annotations

import io
import re
from collections.abc import Sequence
from pathlib import Path

from PIL import Image, ImageOps
from PIL.PngImagePlugin import PngInfo

from tests.support.browser import in_a_browser
from tests.support.serving import serving
from tests.support.web import browser, jobs_in

PICTURE = Path(__file__).parents[1] / "pictures" / "page.png"
JOBS = ("slip_tractor", "crane_truck")
#: name, address, and the heading at the top of what is shown
SCREENS = (
    ("job", "/job/slip_tractor.toml", ""),
    ("check", "/job/crane_truck.toml/check/pull_the_relief_valve", "What did it show?"),
    ("forecast", "/job/crane_truck.toml/forecast?main_clearance=2&relief_setting=60", ""),
)
SHOWS = "shows"  #: the text in the picture's file
GAP, FRAME, GREY, COLOURS = 24, 2, "#6d7378", 96
_PARTS = re.compile(r"<(h1|h2|button|summary)\b[^>]*>(.*?)</\1>", re.S)


def make(path: Path, folder: Path) -> None:
    """Make the picture; ``folder``: an empty one to work in. Needs a browser."""
    jobs = jobs_in(folder, *JOBS)
    screens = [{"name": n, "path": p, "to": to} for n, p, to in SCREENS]
    with serving(folder=jobs) as base:
        in_a_browser("picture.mjs", folder, base=base, screens=screens)
    words = shown(jobs)
    path.parent.mkdir(exist_ok=True)
    path.write_bytes(side_by_side([folder / f"{name}.png" for name, _, _ in SCREENS], words))


def side_by_side(pictures: Sequence[Path], words: str) -> bytes:
    """One PNG of several beside each other; ``words`` go into its text."""
    framed = [ImageOps.expand(Image.open(p).convert("RGB"), FRAME, GREY) for p in pictures]
    wide = sum(p.width for p in framed) + GAP * (len(framed) - 1)
    sheet = Image.new("RGB", (wide, max(p.height for p in framed)), "white")
    left = 0
    for each in framed:
        sheet.paste(each, (left, 0))
        left += each.width + GAP
    text = PngInfo()
    text.add_text(SHOWS, words)
    out = io.BytesIO()
    sheet.quantize(COLOURS).save(out, "PNG", optimize=True, pnginfo=text)
    return out.getvalue()


def shown(jobs: Path) -> str:
    """Headings and buttons of the screens as they are now, without figures and names of finds."""
    tab = browser(jobs)
    lines = []
    for name, path, _ in SCREENS:
        found = [re.sub(r"<[^>]+>|\d+", "", text) for _, text in _PARTS.findall(tab.get(path).text)]
        words = [" ".join(text.partition(":")[0].split()) for text in found]
        lines.append(f"{name}: {'; '.join(dict.fromkeys(filter(None, words)))}")
    return "\n".join(lines)
