"""The book checked as a whole: names, sources, papers, strengths, access, and who can be told apart."""
