"""Documents as HTML pages and SVG pictures."""
