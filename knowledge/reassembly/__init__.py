"""Work on the whole engine: cleaning, priming, first start, run-in, consumables."""
