"""How a person is asked by telephone: short questions, what each presumes, what to do first."""
