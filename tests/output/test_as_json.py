"""The serializer of documents: keys, order, metadata, and what it refuses."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, fields, is_dataclass
from enum import Enum
from importlib import import_module
from pathlib import Path
from typing import Any

import pytest

import diagnose.output.documents as documents
from diagnose.output.as_json import IF_GIVEN, NOT_IN_JSON, as_json, key

MODULES = sorted(p.stem for p in Path(documents.__path__[0]).glob("*.py") if p.stem != "__init__")


class Gauge(Enum):
    PANEL = "panel"


@dataclass(frozen=True)
class Inner:
    rpm: float
    words: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True)
class Outer:
    pro: tuple[Inner, ...] = field(metadata=key("for"))
    gauge: Gauge
    by: dict[str, Inner]
    nothing: None
    history: Inner | None = field(default=None, metadata=IF_GIVEN)


def test_fields_become_keys_in_their_order() -> None:
    """Nested dataclasses, tuples, mappings and enums turn into plain JSON values."""
    inner = Inner(700.0, "seven hundred")
    result = as_json(Outer((inner,), Gauge.PANEL, {"a": inner}, None))
    assert result == {
        "for": [{"rpm": 700.0}],
        "gauge": "panel",
        "by": {"a": {"rpm": 700.0}},
        "nothing": None,
    }
    assert list(result) == ["for", "gauge", "by", "nothing"]


def test_a_key_that_is_left_out_where_none() -> None:
    """``IF_GIVEN`` shows a value and hides None."""
    inner = Inner(700.0, "")
    assert as_json(Outer((), Gauge.PANEL, {}, None, inner))["history"] == {"rpm": 700.0}
    assert "history" not in as_json(Outer((), Gauge.PANEL, {}, None))


def test_false_and_zero_are_values() -> None:
    """A bool stays a bool; nothing is dropped for being falsy."""

    @dataclass(frozen=True)
    class Flags:
        closed: bool
        many: int
        text: str

    result = as_json(Flags(closed=False, many=0, text=""))
    assert result["closed"] is False
    assert result == {"closed": False, "many": 0, "text": ""}


@pytest.mark.parametrize("value", [object(), {1, 2}, b"oil", Path("case.toml")])
def test_a_value_without_a_json_form_is_refused(value: object) -> None:
    """An object of the reasoning that strays into a document is an error, not its ``repr``."""

    @dataclass(frozen=True)
    class Stray:
        value: object

    with pytest.raises(TypeError, match=type(value).__name__):
        as_json(Stray(value))


def _classes(module: str) -> Iterator[type[Any]]:
    content = import_module(f"diagnose.output.documents.{module}")
    for each in vars(content).values():
        if isinstance(each, type) and is_dataclass(each) and each.__module__ == content.__name__:
            yield each


@pytest.mark.parametrize("module", MODULES)
def test_documents_are_frozen_and_their_keys_distinct(module: str) -> None:
    """Nobody changes a document, and no two fields share a JSON key."""
    for each in _classes(module):
        assert each.__dataclass_params__.frozen, each
        shown = [f for f in fields(each) if f.metadata.get("in_json", True)]
        keys = [f.metadata.get("key", f.name) for f in shown]
        assert len(keys) == len(set(keys)), each
