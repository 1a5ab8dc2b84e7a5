"""One module for each command, named after it: arguments in, printing out."""
