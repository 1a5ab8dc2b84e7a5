"""Whole jobs on the web page as a browser without scripts meets them."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.circuit.forecast import forecast, with_other_changes
from diagnose.diagnosis import Diagnosis
from diagnose.entry.requests import parse_changes
from diagnose.output.as_json import as_json
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.documents.review import review_document
from diagnose.serve.addresses import ADDRESSES
from knowledge.book import the_book
from tests.support.command_line import call
from tests.support.complaints import INVENTED
from tests.support.examples import one_in
from tests.support.web import Browser, Page, browser, jobs_in

ANSWERS = 4  #: of the interview that are compared
ENGINES = 8  #: plausible ones of a forecast, where any will do
STORY = (
    "Harbour launch, petrol V8. Needle wavers at hot idle, 5 psi at hot idle, 45 cold, new sender "
    "no change, no leaks, wibble"
)


def kept(page: Page) -> list[str]:
    """The facts that are ticked."""
    return page.form("new").fields.get("keep", [])


def begun(tab: Browser) -> Page:
    """A new job, its story kept as it was understood."""
    page = tab.send(tab.get("/new"), "new", story=STORY, by="Ann")
    return tab.send(page, "new", agreed="1")


@pytest.fixture
def tab(tmp_path: Path) -> Browser:
    return browser(tmp_path)


def test_a_story_becomes_facts_to_keep_or_strike(tab: Browser, tmp_path: Path) -> None:
    page = tab.send(tab.get("/new"), "new", story=STORY, by="Ann")
    assert "reading: 5 psi at hot idle" in page.words
    assert "wibble" in page.words.partition("Not understood")[2]
    assert list(tmp_path.iterdir()) == [], "nothing is saved yet"
    facts = kept(page)
    page = tab.send(page, "new", keep=facts[1:], more="oil level is fine")
    assert len(kept(page)) == len(facts), "one struck, one added"
    assert facts[0] not in kept(page)
    page = tab.send(page, "new", agreed="1")
    assert page.status == 200
    (path,) = tmp_path.iterdir()
    case = load(path, the_book())
    assert path.name == "harbour-launch.toml"
    assert case.job.by == "Ann"
    assert case.job.complaint.startswith(STORY)
    assert "level_correct" in {r.finding.id for r in case.finding_records}
    assert page.address == "/job/harbour-launch.toml/ask"


def test_a_cause_that_is_found_is_to_be_put_right(tab: Browser, tmp_path: Path) -> None:
    """As the terminal says it, though where its piece came from is open."""
    jobs_in(tmp_path, "petrel")
    page = tab.get("/job/petrel.toml")
    assert "Put it right, and check it as it goes together." in page.words
    assert "No check is left" not in page.words


def test_two_jobs_with_one_story_are_two_files(tab: Browser, tmp_path: Path) -> None:
    begun(tab)
    begun(tab)
    names = sorted(p.name for p in tmp_path.iterdir())
    assert names == ["harbour-launch-2.toml", "harbour-launch.toml"]


@pytest.mark.parametrize("story", ["", "   ", "?!", "x" * 20_000])
def test_a_story_without_words_begins_nothing(tab: Browser, tmp_path: Path, story: str) -> None:
    page = tab.send(tab.get("/new"), "new", story=story)
    assert page.status == 400
    assert page.form("new").fields["story"][0].strip() == story.strip()
    assert list(tmp_path.iterdir()) == []


def test_an_aircraft_is_refused(tab: Browser, tmp_path: Path) -> None:
    page = tab.send(tab.get("/new"), "new", story="Light aircraft, 5 psi at hot idle")
    page = tab.send(page, "new", agreed="1")
    assert page.status == 400
    assert "aircraft" in page.words
    assert list(tmp_path.iterdir()) == []


def test_the_interview_is_that_of_the_command(tab: Browser, tmp_path: Path) -> None:
    """The same questions in the same order, the same entries in the file."""
    page = begun(tab)
    by_page = tmp_path / "harbour-launch.toml"
    by_command = tmp_path / "command.toml"
    by_command.write_bytes(by_page.read_bytes())
    lines: list[str] = []
    for _ in range(ANSWERS):
        answer = "n" if "n" in page.form("ask").answers else "d"
        lines.append(answer)
        page = tab.send(page, "ask", answer=answer)
        assert page.status == 200
    assert call("ask", by_command, answers="\n".join([*lines, "stop"])).code == 0
    assert _entries(by_page) == _entries(by_command)


def _entries(path: Path) -> list[tuple[str, str]]:
    text = path.read_text("utf-8").partition("[[")[2]
    return sorted(
        (key.strip(), value.strip())
        for key, equals, value in (line.partition("=") for line in text.splitlines())
        if equals and key.strip() in ("what", "state", "no")
    )


def test_places_where_no_cause_stands_out(tab: Browser, tmp_path: Path) -> None:
    """The job and its interview say so as the commands do; the oil that was named is kept."""
    story = "petrol V8 launch, running 20w50, 5 psi at hot idle, new sender no change"
    page = tab.send(tab.get("/new"), "new", story=story, by="Ann")
    assert "oil in it: 20W-50" in page.words
    tab.send(page, "new", agreed="1")
    (path,) = tmp_path.iterdir()
    assert load(path, the_book()).engine.oil == "20W-50"
    job = tab.get(f"/job/{path.name}")
    assert "By place: " in job.words
    asked = tab.get(f"/job/{path.name}/ask")
    assert "Best guess so far: nothing stands out yet. First: " in asked.words


def test_back_asks_once_more(tab: Browser) -> None:
    first = begun(tab)
    question = first.form("ask").fields["question"]
    second = tab.send(first, "ask", answer="d")
    assert second.form("ask").fields["question"] != question
    back = tab.send(second, "ask", answer="back")
    assert back.form("ask").fields["question"] == question


def test_a_stop_is_shown_before_anything_is_agreed_to(tab: Browser, tmp_path: Path) -> None:
    page = tab.send(tab.get("/new"), "new", story="petrol V8, oil smells of petrol, level too high")
    assert "no fuel is allowed: do not run or crank" in page.words
    assert not list(tmp_path.iterdir())
    calm = tab.send(tab.get("/new"), "new", story="petrol V8, oil level is fine")
    assert "do not run" not in calm.words


def test_words_at_a_question_are_shown_and_kept(tab: Browser, tmp_path: Path) -> None:
    """The second form of a question with buttons takes a sentence, which answers by what it says."""
    page = tab.send(tab.get("/new"), "new", story="petrol V8, needle low when hot")
    page = tab.send(page, "new", agreed="1")
    fields = page.form("ask").fields
    page = tab.post(page.form("ask").action, {**fields, "words": "it has 5w30 from the dealer"})
    assert "oil in it: 5W-30" in page.words
    tab.send(page, "ask", answer="y")
    (path,) = tmp_path.iterdir()
    assert load(path, the_book()).engine.oil == "5W-30"


def test_figures_and_circumstances_of_the_gauge(tab: Browser, tmp_path: Path) -> None:
    """The number question takes figures with their unit, in any of its fields."""
    page = tab.send(tab.get("/new"), "new", story="petrol V8, needle low when hot, no leaks")
    page = tab.send(page, "new", agreed="1")
    for _ in range(12):
        fields = page.form("ask").fields
        if "at:hot_idle" in fields:
            break
        page = tab.send(page, "ask", answer="d")
    assert "What did the gauge show?" in page.words
    refused = tab.post(page.form("ask").action, {**fields, "at:hot_idle": "a few"})
    assert refused.status == 400
    page = tab.post(
        refused.form("ask").action,
        {**refused.form("ask").fields, "at:hot_idle": "0,4", "unit": "bar"},
    )
    (path,) = tmp_path.iterdir()
    assert [r.entry.pressure for r in load(path, the_book()).readings] == ["0.4 bar"]


@pytest.mark.parametrize("name", one_in(20, sorted({"winch", *INVENTED}, key="winch".__ne__)))
def test_the_job_shows_what_the_review_says(tmp_path: Path, name: str) -> None:
    """May it run, found, where it began, the next check: in the words of the document."""
    tab = browser(jobs_in(tmp_path, name))
    answer = Diagnosis(the_book(), load(tmp_path / f"{name}.toml", the_book()))
    document = review_document(answer, name)
    words = tab.get(f"/job/{name}.toml").words
    assert not document.alarms or document.alarms[0].says in words
    assert document.causes[0].says in words
    assert all(f.title in words for f in document.found[:4])
    if document.next:
        assert f"Next: {document.next[0].says}" in words
    reasons = tab.get(f"/job/{name}.toml/why").words
    assert document.causes[0].pro[0].says in reasons


def test_a_check_with_something_to_record_first(tmp_path: Path) -> None:
    """What was found is saved without the tick too; the tick is kept as a note."""
    tab = browser(jobs_in(tmp_path, "winch"))
    check = next(
        f"/job/winch.toml/check/{i.id}"
        for i in the_book().inspections.values()
        if i.keep and len(i.reveals) > 3
    )
    page = tab.get(check)
    names = [n for n in page.form().fields if n.startswith("f:")]
    fields = {**page.form().fields, names[0]: "no"}
    assert tab.post(check, fields, follow=False).status == 303
    saved = load(tmp_path / "winch.toml", the_book()).finding_records
    one = next(r for r in saved if r.finding.id == names[0][2:])
    assert "recorded first" not in one.entry.note
    given = {**tab.get(check).form().fields, "kept": "1", "none": "1"}
    assert tab.post(check, given, follow=False).status == 303
    case = load(tmp_path / "winch.toml", the_book())
    answered = {r.finding.id for r in case.finding_records}
    assert {n[2:] for n in names} <= answered | {
        f.id for t in case.trials for f in t.trial.findings
    }
    assert any("recorded first" in r.entry.note for r in case.finding_records)


def test_putting_together_is_judged_task_by_task(tmp_path: Path) -> None:
    tab = browser(jobs_in(tmp_path, "dunlin"))
    page = tab.get("/job/dunlin.toml/signoff/2")
    form = page.form("signoff/2")
    values = [n[2:] for n in form.fields if n.startswith("m:")]
    plain = sorted(set(_tasks(page)) - set(values))
    fields = {**form.fields, f"m:{values[0]}": "0.05", f"u:{values[0]}": "mm"}
    fields |= {f"t:{plain[0]}": "done", f"t:{plain[1]}": "skipped"}
    refused = tab.post(form.action, fields)
    assert refused.status == 400
    assert "The rest is saved. Left out: say why in the note" in refused.words
    at_once = load(tmp_path / "dunlin.toml", the_book()).task_records
    assert {w.task.id for w in at_once} >= {values[0], plain[0]}, "the good ones are kept"
    assert plain[1] not in {w.task.id for w in at_once}
    form = refused.form("signoff/2")
    saved = tab.post(form.action, {**form.fields, f"n:{plain[1]}": "seen by the machine shop"})
    assert saved.status == 200
    case = load(tmp_path / "dunlin.toml", the_book())
    done = {w.task.id: w.entry for w in case.task_records}
    assert done[values[0]].value == "0.05 mm"
    assert done[plain[0]].state == "done"
    assert (done[plain[1]].state, done[plain[1]].note) == ("skipped", "seen by the machine shop")


def _tasks(page: Page) -> list[str]:
    from re import findall

    return findall(r'name="t:(\w+)"', page.text)


def test_a_bearing_is_measured_and_judged(tmp_path: Path) -> None:
    tab = browser(jobs_in(tmp_path, "generator"))
    page = tab.get("/job/generator.toml/bearings")
    assert "None is measured yet" in page.words
    refused = tab.send(page, "bearings", number="2", figures="4 apples")
    assert refused.status == 400
    assert refused.form("bearings").fields["figures"] == ["4 apples"]
    page = tab.send(refused, "bearings", figures="4,5", unit="thou")
    assert page.status == 200
    assert "Main 2: " in page.words
    assert "main 2: strip 4.5 thou" in tab.get("/job/generator.toml/note").words


def test_the_first_start_is_compared_with_what_was_predicted(tmp_path: Path) -> None:
    """A reading of the mended engine is kept as such, and one that is too low says stop."""
    tab = browser(jobs_in(tmp_path, "dunlin"))
    page = tab.get("/job/dunlin.toml/start")
    assert "Do not start it yet" in page.words
    assert "The gauge should show with all faults put right, bar" in page.words
    form = page.form("readings")
    page = tab.post(form.action, {**form.fields, "at:hot_idle": "0.1"})
    assert page.address.startswith("/job/dunlin.toml/start")
    assert "Stop the engine" in page.words
    assert "Read so far" in page.words
    case = load(tmp_path / "dunlin.toml", the_book())
    assert [r.entry.pressure for r in case.start_readings] == ["0.1 bar"]


def test_a_slider_moves_the_curve(tmp_path: Path) -> None:
    """Only the answer is sent where a script asks for it; a wrong figure leaves it as it is."""
    tab = browser(jobs_in(tmp_path, "crane_truck"))
    path = "/job/crane_truck.toml/forecast"
    now, after = tab.get(path), tab.get(f"{path}?main_clearance=2&oil=SAE+50")
    assert "hot after" not in now.words
    assert "→ 2 thou" in after.words
    assert "→ SAE 50" in after.words
    assert "hot after" in after.words
    assert tab.get(f"{path}?main_clearance=nan&oil=water&relief_setting=-5").status == 200
    drawn = tab.get(f"{path}.svg?main_clearance=2")
    assert drawn.headers["content-type"] == "image/svg+xml"
    assert "after" in drawn.text


def test_a_slider_shows_what_the_command_computes(tmp_path: Path) -> None:
    """Other changes to an engine that is solved already come to the same document."""
    case = load(jobs_in(tmp_path, "dunlin") / "dunlin.toml", the_book())
    changes = parse_changes(["main_clearance=2.5 thou", "oil=20W-50", "pump_displacement=+10 %"])
    before = forecast(case, [], engines=ENGINES)
    quick = forecast_document(with_other_changes(before, changes), forecast_document(before))
    whole = forecast_document(forecast(case, changes, engines=ENGINES))
    assert as_json(quick) == as_json(whole)
    assert quick.plot == whole.plot


def test_a_job_is_closed_with_its_cause(tmp_path: Path) -> None:
    """What is open needs a reason; the shop's record then has the job."""
    tab = browser(jobs_in(tmp_path, "slip_tractor"))
    page = tab.get("/job/slip_tractor.toml/close")
    assert "Still open" in page.words
    assert tab.send(page, "close", how="").status == 400
    page = tab.send(
        page, "close", how="curl of swarf on the seat", minutes="95", cause=["relief_debris"]
    )
    assert page.status == 400
    assert "still open" in page.words
    page = tab.send(page, "close", reason="the owner does the rest", by="Ann", follow=False)
    assert page.status == 303
    case = load(tmp_path / "slip_tractor.toml", the_book())
    assert case.closed is not None
    assert [c.id for c in case.closed.causes] == ["relief_debris"]
    assert case.closed.minutes == 95
    assert "Closed" in tab.get("/?show=closed").words
    assert "No job fits" in tab.get("/?show=open").words
    assert "slip_tractor.toml" in tab.get("/shop").words


def test_jobs_are_found_by_their_words(tmp_path: Path) -> None:
    tab = browser(jobs_in(tmp_path, "petrel", "gannet", "winch"))
    assert [n for n in ("Petrel", "Gannet", "winch") if n in tab.get("/?q=pickup+loose").words] == [
        "Gannet"
    ]
    assert "Slipway winch" in tab.get("/?q=WINCH&show=open").words
    assert "No job fits" in tab.get("/?q=%3Cscript%3E").words


@pytest.mark.long
def test_every_screen_of_every_kind_of_job(tmp_path: Path) -> None:
    """An empty case, one nobody can compute, one that is closed: each screen answers."""
    jobs_in(tmp_path, "gannet")
    (tmp_path / "empty.toml").write_text("schema = 1\n", "utf-8")
    tab = browser(tmp_path)
    for job in ("gannet", "empty"):
        for each in ADDRESSES:
            if "GET" not in each.methods or "{job}" not in each.path:
                continue
            path = each.path.replace("{job}", f"{job}.toml").replace("{stage}", "1")
            path = (
                path.replace("{phase}", "2").replace("{account}", "0").replace("{photo}", "1.jpg")
            )
            page = tab.get(path.replace("{check}", "read_dipstick"))
            assert page.status in (200, 400, 404), path
            assert "Traceback" not in page.text


def test_a_changed_card_changes_the_answer(tmp_path: Path) -> None:
    """The engine's card is a file of its own; a job that names it is read anew with it."""
    tab = browser(jobs_in(tmp_path, "tern"))
    card = tmp_path / "cards" / "workboat_v8.toml"
    before = tab.get("/job/tern.toml/note").text
    assert "cards" not in tab.get("/").words
    text = card.read_text("utf-8")
    card.write_text(text + "\n[nonsense]\nx = 1\n", "utf-8")
    page = tab.get("/job/tern.toml/note")
    assert page.status == 400
    assert "workboat_v8" in page.words
    card.write_text(text, "utf-8")
    after = tab.get("/job/tern.toml/note")
    assert after.status == 200
    assert len(after.text) == len(before)
