"""Photos taken at a step: sent from the phone, shown, and handed out."""

from __future__ import annotations

from diagnose.output.documents.photos import photo_entries, step_title
from diagnose.serve.album import keep, photo
from diagnose.serve.exchange import Answer, Asked, address, go
from diagnose.serve.pictures import NoPhotoError
from diagnose.serve.site import Refusal, Site, job_screen, name_of
from knowledge.book import the_book


def show(site: Site, asked: Asked) -> Answer:
    """The photos of the job, and a way to send one more."""
    return _photos(site, asked, asked.query.get("step", "")[:60])


def save(site: Site, asked: Asked) -> Answer:
    """Keep the photo that was sent."""
    path, step = site.folder.path(asked.job), asked.text("step")[:60]
    sent = asked.uploads.get("photo")
    if sent is None or not sent.data:
        return _photos(site, asked, step, Refusal(["No photo was chosen."]))
    try:
        keep(path, sent.data, step)
    except NoPhotoError as fault:
        return _photos(site, asked, step, Refusal([str(fault)]))
    return go("job", asked.job, "photos", step=step)


def show_one(site: Site, asked: Asked) -> Answer:
    """One photo."""
    kind, data = photo(site.folder.path(asked.job), asked.parts["photo"])
    return Answer(data, kind, policy="default-src 'none'")


def _photos(site: Site, asked: Asked, step: str, refused: Refusal | None = None) -> Answer:
    path = site.folder.path(asked.job)
    with site.job(asked) as known:
        check = step in the_book().inspections
        return job_screen(
            "photos.html",
            asked,
            known,
            refused=refused,
            photos=photo_entries(path)[::-1],
            step=step,
            of=step_title(step),
            back=(address("job", asked.job, "check", step), "The check")
            if check
            else (address("job", asked.job), name_of(known)),
        )
