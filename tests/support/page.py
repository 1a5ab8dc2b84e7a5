"""A page as its reader meets it."""

from __future__ import annotations

import re
from html.parser import HTMLParser
from typing import ClassVar

NO_END = {"meta", "br", "link", "img", "input", "hr"}


class Page(HTMLParser):
    """What a reader of the page meets, and whether every element is closed."""

    drawn: ClassVar[set[str]] = {"path", "rect", "circle"}

    def __init__(self, text: str) -> None:
        super().__init__(convert_charrefs=True)
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str, str]] = []
        self.headings: list[int] = []
        self.words = ""
        self.title = ""
        self._open: list[str] = []
        self.feed(text)
        self.close()
        assert self._open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += [(tag, name, value or "") for name, value in attrs]
        if tag not in NO_END:
            self._open.append(tag)
        if re.fullmatch("h[1-6]", tag):
            self.headings.append(int(tag[1]))

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(tag, attrs)
        self._open.pop()

    def handle_endtag(self, tag: str) -> None:
        assert self._open.pop() == tag

    def handle_data(self, data: str) -> None:
        if self._open and self._open[-1] == "title" and "svg" not in self._open:
            self.title += data
        elif "style" not in self._open:
            self.words += data
