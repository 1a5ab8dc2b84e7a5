"""When words for a finding mean something else, or are said of something else."""
