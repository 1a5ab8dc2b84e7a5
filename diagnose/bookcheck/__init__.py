"""Check the knowledge as a whole: names, sources, strengths, access, examples."""
