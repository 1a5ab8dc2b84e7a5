"""What a person enters: ask, tell, record, sheets, readings in words."""
