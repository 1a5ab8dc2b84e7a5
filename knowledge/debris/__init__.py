"""Metal and dirt, wherever it is found."""
