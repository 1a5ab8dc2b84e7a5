"""Putting it together: what must be checked, first start, and the end of the job."""
