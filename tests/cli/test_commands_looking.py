"""``lookup`` and ``show``: everyday words, whole kinds, every kind of word."""

from __future__ import annotations

import json
from dataclasses import fields

import pytest

from diagnose.lookup.finder import KINDS, words_of
from diagnose.output.documents.lookup import LABELS
from knowledge.book import the_book
from tests.support.command_line import call, in_eighty_columns

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


#: what is shown of a word whose fields are not simply its own
SHOWN = {
    "measure": {
        "id", "station", "says", "asks", "dimension", "plausible", "source", "spread", "also",
    },
    "limit": {"id", "says", "dimension", "side", "typical", "source"},
    "links": {"id", "station", "says", "note", "links", "matches", "non_matches"},
    "inhibitors": {"id", "station", "says", "note", "inhibitors", "matches", "non_matches"},
}  # fmt: skip


@pytest.mark.parametrize("kind", KINDS)
def test_lookup_of_a_whole_kind(kind: str) -> None:
    words = words_of(BOOK, kind)
    answer = json.loads(call("lookup", "--kind", kind, "--json").out)
    assert (answer["schema"], answer["kind"]) == (1, kind)
    assert [w["id"] for w in answer["words"]] == [w.id for w in words]
    names = SHOWN.get(kind) or {f.name for f in fields(words[0])} - {"does"}
    assert all(set(w) == {"kind", *names} for w in answer["words"])
    shown = call("lookup", "--kind", KINDS[kind][1], "--full").out
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
    for word in words_of(BOOK, kind)[:: max(1, len(words_of(BOOK, kind)) // 3)]:
        done = call("show", word.id.upper().replace("_", "-"))
        assert (done.code, done.err) == (0, "")
        assert f"{kind}: " in done.out
        in_eighty_columns(done.out)
        answer = json.loads(call("show", word.id, "--json").out)
        assert answer["schema"] == 1
        assert word.id in {w["id"] for w in answer["words"]}


def test_show_uses_workshop_words() -> None:
    """No mark, no id of a caution, no field's own name where there is a plainer one."""
    shown = call("show", "gallery_plug_missing", "--full").out
    assert "freshly rebuilt: much commoner" in shown
    assert "++" not in shown
    shown = " ".join(call("show", "cut_the_filter_open", "--full").out.split())
    assert "cautions the edges of a cut filter" in shown
    assert "open first filter_cut" in shown
    every = {f.name for kind in KINDS for f in fields(words_of(BOOK, kind)[0])}
    every |= {name for names in SHOWN.values() for name in names}
    assert set(LABELS) <= every


def test_show_of_a_task_gives_what_each_source_accepts() -> None:
    shown = " ".join(call("show", "main_clearance_fitted", "--full").out.split())
    assert "accepted 0.002 in to 0.0025 in (usual aim for a pushrod V8" in shown
    assert "at most 0.0031 in" in shown
    task = BOOK.tasks["main_clearance_fitted"]
    data = json.loads(call("show", task.id, "--json").out)["words"]
    assert [len(w["bands"]) for w in data if w["kind"] == "task"] == [len(task.bands)]
    assert "bands" in data[0]


@pytest.mark.parametrize(
    ("words", "wanted", "kind"),
    [("thread lock", "thread_locker", "part"), ("torque the main caps", "caps_torqued", "task")],
)
def test_lookup_finds_tasks_and_parts(words: str, wanted: str, kind: str) -> None:
    hits = json.loads(call("lookup", words, "--json", "--kind", kind).out)["hits"]
    assert wanted in [h["id"] for h in hits[:3]]
    assert {h["kind"] for h in hits} == {kind}


@pytest.mark.parametrize(
    ("words", "understood", "first"),
    [
        ("no 3 main 4.5 thou", "main bearing clearance, on the diameter, main 3: 4.5 thou", (
            "main_clearance"
        )),
        ("new sender made no difference", "a new oil pressure sender or switch was fitted, and that made no difference", (
            "new_sender"
        )),
        ("oil level ok", "the oil is between the marks", "level_correct"),
        ("relief opens at 45 psi", "pressure at which the relief valve opens: 45 psi", (
            "relief_setting"
        )),
        ("filter bypass opens at 12 psi", "filter bypass opens at: 12 psi", None),
    ],
)  # fmt: skip
def test_lookup_says_what_tell_would_understand(
    words: str, understood: str, first: str | None
) -> None:
    """The reader comes first, then what the finder adds; a kind asks for the finder alone."""
    answer = json.loads(call("lookup", words, "--json").out)
    assert answer["understood"] == [understood]
    assert first is None or answer["hits"][0]["id"] == first
    assert len({(h["kind"], h["id"]) for h in answer["hits"]}) == len(answer["hits"]) <= 8
    shown = " ".join(call("lookup", words).out.split())
    assert shown.startswith(f"understood {understood} ")
    finding = json.loads(call("lookup", words, "--kind", "finding", "--json").out)
    assert "understood" not in finding


def test_lookup_knows_faults_trials_and_areas() -> None:
    """Each is found by its own words, and shown by its id."""
    for kind, words in (
        ("fault", "main bearing clearance is over the limit"),
        ("trial", "a new oil pump was fitted"),
        ("area", "work on the oil pump"),
    ):
        hits = json.loads(call("lookup", words, "--json").out)["hits"]
        assert kind in {h["kind"] for h in hits}
    shown = " ".join(call("show", "main_clearance_over").out.split())
    assert "proved by main_clearance_too_wide" in shown
    assert "costs through main_clearance" in shown
