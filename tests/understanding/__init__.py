"""What is read in sentences, stories and short reports."""
