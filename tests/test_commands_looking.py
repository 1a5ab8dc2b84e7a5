"""``lookup`` and ``show``: everyday words, whole shelves, every kind of word."""

from __future__ import annotations

import json
from dataclasses import fields

import pytest

from diagnose.lookup import KINDS, shelf
from knowledge.book import the_book
from tests.command_line import call, in_eighty_columns

BOOK = the_book()


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        ("needle dances", "needle_flickers"),
        ("bits of metal in filter", "metal_in_filter"),
        ("presure low at idel", "low_hot_idle_good_speed"),
        ("ENGINE NOCKING", "bearing_knock"),
        ("chocolate milk on the dipstick", "oil_milky"),
        ("milky oyl", "oil_milky"),
    ],
)
def test_lookup_of_everyday_and_misspelt_words(words: str, wanted: str) -> None:
    done = call("lookup", *words.split(), "--json")
    assert done.code == 0
    hits = json.loads(done.out)["hits"]
    assert wanted in [h["id"] for h in hits[:3]]
    assert all(set(h) >= {"id", "kind", "says", "score"} for h in hits)
    shown = call("lookup", words).out
    assert f"[{wanted}]" in shown.replace("\n            ", " ")
    in_eighty_columns(shown)


@pytest.mark.parametrize("kind", KINDS)
def test_lookup_of_a_whole_shelf(kind: str) -> None:
    words = shelf(BOOK, kind)
    answer = json.loads(call("lookup", "--kind", kind, "--json").out)
    assert (answer["schema"], answer["kind"]) == (1, kind)
    assert [w["id"] for w in answer["words"]] == [w.id for w in words]
    names = {f.name for f in fields(words[0])} - {"does"}
    assert all(set(w) == {"kind", *names} for w in answer["words"])
    shown = call("lookup", "--kind", f"{kind}s").out
    assert shown.count("]\n") >= len(words)
    in_eighty_columns(shown)
    assert (
        len(json.loads(call("lookup", "--kind", kind, "--json", "--most", "2").out)["words"]) == 2
    )


def test_lookup_within_a_kind() -> None:
    for kind in ("finding", "cause", "inspection", "rule"):
        hits = json.loads(call("lookup", "low pressure", "--kind", kind, "--json").out)["hits"]
        assert {h["kind"] for h in hits} == {kind}
    done = call("lookup", "zzzz", "--kind", "layout", "--json")
    assert (done.code, json.loads(done.out)) == (2, {"schema": 1, "hits": []})


@pytest.mark.parametrize("kind", KINDS)
def test_show_of_each_kind(kind: str) -> None:
    for word in shelf(BOOK, kind)[:: max(1, len(shelf(BOOK, kind)) // 3)]:
        done = call("show", word.id.upper().replace("_", "-"))
        assert (done.code, done.err) == (0, "")
        assert f"{kind}: " in done.out
        in_eighty_columns(done.out)
        answer = json.loads(call("show", word.id, "--json").out)
        assert answer["schema"] == 1
        assert word.id in {w["id"] for w in answer["words"]}
