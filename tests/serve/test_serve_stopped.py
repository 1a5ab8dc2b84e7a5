"""The server killed while it saves: everything that it said is saved stands in the file (long)."""

from __future__ import annotations

import os
import random
import signal
import threading
import time
from collections.abc import Iterator
from dataclasses import dataclass, field
from http.client import HTTPException
from itertools import count
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.case.photos import photos_of
from diagnose.serve.pictures import cleaned
from knowledge.book import the_book
from tests.support.examples import examples
from tests.support.pictures import jpeg
from tests.support.serving import killed_at_last, wire
from tests.support.web import HOST, Browser

WRITERS = 4
NOTE, PHOTOS = "/job/petrel.toml/note", "/job/petrel.toml/photos"


@dataclass
class Saved:
    """What the server said is saved."""

    places: list[str] = field(default_factory=list)
    photos: list[int] = field(default_factory=list)  #: how many there were after each
    numbers: Iterator[int] = field(default_factory=count)

    def write(self, port: int, stop: threading.Event) -> None:
        """Enter one value after the other, now and then a photo, until the server is gone."""
        tab = Browser(wire(port), host=HOST)
        try:
            form = tab.get(NOTE).form("note")
            while not stop.is_set():
                place = f"place {next(self.numbers)}"
                words = {"words": "main bearing clearance 3 thou", "where": place, "once": place}
                if tab.post(form.action, {**form.fields, **words}, follow=False).status == 303:
                    self.places.append(place)
                if len(self.places) % 9 == 0:
                    page = tab.get(PHOTOS)
                    answer = tab.upload(page, PHOTOS, "photo", jpeg(6), follow=False)
                    self.photos.extend([1] if answer.status == 303 else [])
        except (OSError, HTTPException):
            return  # the server was killed


@pytest.mark.long
def test_killed_at_any_moment_nothing_acknowledged_is_lost(tmp_path: Path) -> None:
    """Four writers send all the time; the kill comes in the middle of what they do."""
    path = tmp_path / "petrel.toml"
    path.write_text("schema = 1\n", "utf-8")
    saved, dice, counts = Saved(), random.Random(5), []
    for _ in range(examples(20)):
        before, stop = len(saved.places), threading.Event()
        with killed_at_last(tmp_path) as (server, port):
            writers = [
                threading.Thread(target=saved.write, args=(port, stop)) for _ in range(WRITERS)
            ]
            for writer in writers:
                writer.start()
            until = time.monotonic() + 30
            while len(saved.places) < before + 3 and time.monotonic() < until:
                time.sleep(0.01)
            time.sleep(dice.uniform(0.0, 0.5))
            os.kill(server.pid, signal.SIGKILL)
            stop.set()
            for writer in writers:
                writer.join()
        counts.append(len(saved.places) - before)
        places = [m.entry.where for m in load(path, the_book()).measurements]
        assert set(saved.places) <= set(places)
        assert len(places) == len(set(places)), "nothing is written twice"
        photos = photos_of(path)
        assert len(photos) >= len(saved.photos)
        for photo in photos:
            data = (tmp_path / "petrel.photos" / photo.file).read_bytes()
            assert cleaned(data) == ("jpg", data)
    assert min(counts) >= 3
    print(f"{len(counts)} kills, {len(saved.places)} values and {len(saved.photos)} photos kept")
