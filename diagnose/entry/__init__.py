"""Read what a person typed: answers, values, readings, sheets, an interview; prints nothing."""
