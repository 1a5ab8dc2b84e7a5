"""What a photo is by its content, and the photo without what it says of place, time and camera.

JPEG and PNG only. Nothing is decoded: parts of the file are kept or left out, whatever follows the
picture is dropped. Of the metadata only the way a JPEG is turned stays.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator

MOST_SIDE, MOST_PIXELS = 20_000, 120_000_000
_PNG = b"\x89PNG\r\n\x1a\n"
#: chunks of a PNG that the picture needs; all others are left out
_PNG_KEPT = (b"IHDR", b"PLTE", b"tRNS", b"gAMA", b"cHRM", b"sRGB", b"sBIT", b"IDAT", b"IEND")
_SIZES = (*range(0xC0, 0xC4), *range(0xC5, 0xC8), *range(0xC9, 0xCC), *range(0xCD, 0xD0))
_ALONE = (0x01, *range(0xD0, 0xD8))  #: markers without a length
_JFIF, _EXIF, _ADOBE = 0xE0, 0xE1, 0xEE
_TURNED = 0x0112


class NoPhotoError(Exception):
    """The bytes are no JPEG or PNG picture; the text says what is wrong."""


def cleaned(data: bytes) -> tuple[str, bytes]:
    """The kind of a photo, "jpg" or "png", and its bytes without metadata.

    Raises NoPhotoError.
    """
    try:
        if data.startswith(_PNG):
            return "png", _png(data)
        if data.startswith(b"\xff\xd8\xff"):
            return "jpg", _jpeg(data)
    except (IndexError, struct.error):
        raise NoPhotoError("The photo is not whole; take or send it again.") from None
    raise NoPhotoError("That is no photo this page can keep: JPEG or PNG, please.")


def _png(data: bytes) -> bytes:
    out, at, pixels = [_PNG], len(_PNG), False
    while True:
        length, name = struct.unpack_from(">I4s", data, at)
        whole = data[at : at + 12 + length]
        if len(whole) != 12 + length:
            raise IndexError
        if at == len(_PNG):
            if name != b"IHDR" or length != 13:
                raise NoPhotoError("The photo is damaged.")
            _check_size(*struct.unpack_from(">II", data, at + 8))
        if name in _PNG_KEPT:
            out.append(whole)
        pixels = pixels or name == b"IDAT"
        at += 12 + length
        if name == b"IEND":
            break
    if not pixels:
        raise NoPhotoError("The photo is damaged.")
    return b"".join(out)


def _jpeg(data: bytes) -> bytes:
    out: list[bytes] = [b"\xff\xd8"]
    turned, sized, scanned = 1, False, False
    for marker, part in segments(data):
        if marker == _EXIF:
            turned = orientation(part) or turned
        elif marker in _SIZES:
            _check_size(*struct.unpack_from(">HH", part, 5))
            sized = True
        if (0xE0 <= marker <= 0xEF and marker not in (_JFIF, _ADOBE)) or marker == 0xFE:
            continue
        if marker == _JFIF:
            part = part[:18]  # the frame alone, without a small picture in it
            if len(part) < 18 or part[4:9] != b"JFIF\0":
                continue
            part = b"\xff\xe0\x00\x10" + part[4:16] + b"\x00\x00"
        if marker == _ADOBE and part[4:9] != b"Adobe":
            continue
        scanned = scanned or marker == 0xDA
        out.append(part)
    if not (sized and scanned):
        raise NoPhotoError("The photo is damaged.")
    if 2 <= turned <= 8:
        out.insert(1, _only_turned(turned))
    return b"".join((*out, b"\xff\xd9"))


def segments(data: bytes) -> Iterator[tuple[int, bytes]]:
    """Every marker with its bytes, scans with their data, up to the end of the picture.

    Raises NoPhotoError for what is no marker; IndexError or struct.error where the data ends early.
    """
    at = 2
    while True:
        if data[at] != 0xFF:
            raise NoPhotoError("The photo is damaged.")
        while data[at + 1] == 0xFF:
            at += 1
        marker = data[at + 1]
        if marker == 0xD9:
            return
        if marker in _ALONE:
            at += 2
            continue
        (length,) = struct.unpack_from(">H", data, at + 2)
        end = at + 2 + length
        if length < 2 or end > len(data):
            raise IndexError
        if marker == 0xDA:
            end = _scan_end(data, end)
        yield marker, data[at:end]
        at = end


def _scan_end(data: bytes, at: int) -> int:
    """Where the data of a scan end: before a marker that is none of restart."""
    while True:
        at = data.find(b"\xff", at)
        if at < 0 or at + 1 >= len(data):
            raise IndexError
        if data[at + 1] != 0 and data[at + 1] not in _ALONE and data[at + 1] != 0xFF:
            return at
        at += 1 if data[at + 1] == 0xFF else 2


def orientation(part: bytes) -> int:
    """How an Exif segment says the picture is turned, 1 to 8; 0 where it does not say."""
    tiff = part[10:]
    if part[4:10] != b"Exif\0\0" or tiff[:2] not in (b"II", b"MM"):
        return 0
    end = "<" if tiff[:2] == b"II" else ">"
    try:
        (first,) = struct.unpack_from(f"{end}I", tiff, 4)
        (count,) = struct.unpack_from(f"{end}H", tiff, first)
        for i in range(min(count, 200)):
            tag, kind, _, value = struct.unpack_from(f"{end}HHIH", tiff, first + 2 + 12 * i)
            if tag == _TURNED and kind == 3 and 1 <= value <= 8:
                return int(value)
    except struct.error:
        return 0
    return 0


def _only_turned(turned: int) -> bytes:
    """An Exif segment that says how the picture is turned and nothing else."""
    tiff = b"MM\0*" + struct.pack(">IHHHIHHI", 8, 1, _TURNED, 3, 1, turned, 0, 0)
    body = b"Exif\0\0" + tiff
    return b"\xff\xe1" + struct.pack(">H", len(body) + 2) + body


def _check_size(first: int, second: int) -> None:
    if not (first and second):
        raise NoPhotoError("The photo is damaged.")
    if max(first, second) > MOST_SIDE or first * second > MOST_PIXELS:
        raise NoPhotoError("The photo has too many pixels; send a smaller one.")
