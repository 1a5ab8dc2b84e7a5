"""A local web page over a folder of case files; only ``cli`` may import it."""
