"""The shop's closed jobs: what was found how often, and what came back."""

from __future__ import annotations

from diagnose.history.learning import learned_from
from diagnose.history.shop import read_shop
from diagnose.output.documents.history import history_document
from diagnose.serve.exchange import Answer, Asked
from diagnose.serve.site import Site, screen
from knowledge.book import the_book


def show(site: Site, asked: Asked) -> Answer:
    """Everything the closed jobs of the folder teach."""
    book = the_book()
    shop = read_shop(site.folder.root, book)
    document = history_document(shop, learned_from(shop.counted(), book), book)
    titles = {line.file: line.title for line in site.folder.lines()}
    return screen("shop.html", asked, shop=document, titles=titles)
