"""Small photos made byte by byte, with what a telephone writes into them."""

from __future__ import annotations

import struct
import zlib

SECRETS = (b"GPS 57.1N", b"SerialNumber-4711", b"Owner Ann", b"thumbnail-of-it")
_COMPONENTS = b"\x01\x01\x11\x00"


def _segment(marker: int, body: bytes) -> bytes:
    return b"\xff" + bytes([marker]) + struct.pack(">H", len(body) + 2) + body


def exif(turned: int, order: str = ">") -> bytes:
    """Exif with a place, an owner and the way the picture is turned."""
    entries = struct.pack(f"{order}HHIHH", 0x0112, 3, 1, turned, 0)
    entries += struct.pack(f"{order}HHII", 0x010F, 2, 40, 38)
    ifd = struct.pack(f"{order}H", 2) + entries + struct.pack(f"{order}I", 0)
    mark = b"MM\0*" if order == ">" else b"II*\0"
    return b"Exif\0\0" + mark + struct.pack(f"{order}I", 8) + ifd + b" ".join(SECRETS)


def jpeg(turned: int = 1, order: str = ">", *, sides: tuple[int, int] = (4, 6)) -> bytes:
    """A JPEG of a telephone: metadata before, a second picture behind."""
    frame = b"\x08" + struct.pack(">HH", *sides) + b"\x01" + _COMPONENTS[:3]
    return b"".join(
        (
            b"\xff\xd8",
            _segment(0xE0, b"JFIF\0\x01\x01\x00\x00\x01\x00\x01\x00\x00" + SECRETS[3]),
            _segment(0xE1, exif(turned, order)),
            _segment(0xE1, b"http://ns.adobe.com/xap/1.0/\0<x>" + SECRETS[2] + b"</x>"),
            _segment(0xE2, b"MPF\0" + SECRETS[0]),
            _segment(0xED, b"Photoshop 3.0\0" + SECRETS[2]),
            _segment(0xFE, SECRETS[1]),
            _segment(0xDB, b"\x00" + bytes(64)),
            _segment(0xC0, frame),
            _segment(0xC4, b"\x00" + bytes(16)),
            _segment(0xDA, b"\x01\x01\x00\x00\x3f\x00"),
            b"\x12\xff\x00\x34\xff\xd0\x56",
            b"\xff\xd9",
            b"\xff\xd8 second picture " + SECRETS[0],
        )
    )


def _chunk(name: bytes, body: bytes) -> bytes:
    return struct.pack(">I", len(body)) + name + body + struct.pack(">I", zlib.crc32(name + body))


def png(sides: tuple[int, int] = (3, 2)) -> bytes:
    """A PNG with texts, and something behind its end."""
    wide, tall = sides
    rows = zlib.compress(
        b"".join(b"\0" + b"\x80\x20\x10" * min(wide, 9) for _ in range(min(tall, 9)))
    )
    return b"".join(
        (
            b"\x89PNG\r\n\x1a\n",
            _chunk(b"IHDR", struct.pack(">IIBBBBB", wide, tall, 8, 2, 0, 0, 0)),
            _chunk(b"tEXt", b"Author\0" + SECRETS[2]),
            _chunk(b"eXIf", SECRETS[0]),
            _chunk(b"IDAT", rows),
            _chunk(b"tIME", bytes(7)),
            _chunk(b"IEND", b""),
            SECRETS[1],
        )
    )
