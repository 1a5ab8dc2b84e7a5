"""Each command's options and help; its work is imported when it runs."""
