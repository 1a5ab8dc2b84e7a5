"""States of the oil circuit between causes and findings, and the links between them."""
