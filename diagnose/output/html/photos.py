"""Photos as part of a page that stands alone; the only module that imports Pillow."""

from __future__ import annotations

import base64
import io
import struct
import warnings
from collections.abc import Mapping, Sequence
from pathlib import Path

from diagnose.output.documents.photos import PhotoEntry

LONGEST_SIDE = 1_200  #: pixels; fills a sheet of paper at 150 dots an inch
QUALITY = 80  #: of JPEG, of 100


def embedded(photos: Sequence[PhotoEntry], folder: Path) -> Mapping[str, str]:
    """Each photo, by its file, as an address that holds the picture itself.

    Pictures are made as small as a sheet of paper needs. One that cannot be read is left out: a
    page names its file. ``folder``: that of the case file.
    """
    found = {}
    for photo in photos:
        picture = _small(folder / photo.path)
        if picture:
            found[photo.file] = f"data:image/jpeg;base64,{base64.b64encode(picture).decode()}"
    return found


def _small(path: Path) -> bytes:
    """The picture in few pixels, the right way up and without metadata; empty where it is none."""
    from PIL import Image, ImageOps

    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore", Image.DecompressionBombWarning)
            picture = Image.open(path, formats=("JPEG", "PNG"))
        with picture:
            picture.draft("RGB", (LONGEST_SIDE, LONGEST_SIDE))
            upright = ImageOps.exif_transpose(picture)
            upright.thumbnail((LONGEST_SIDE, LONGEST_SIDE))
            sheet = Image.new("RGB", upright.size, "white")
            clear = upright.convert("RGBA")
            sheet.paste(clear, mask=clear.getchannel("A"))
            out = io.BytesIO()
            sheet.save(out, "JPEG", quality=QUALITY)
    except (OSError, EOFError, ValueError, SyntaxError, struct.error, Image.DecompressionBombError):
        return b""
    return out.getvalue()
