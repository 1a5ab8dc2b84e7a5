"""An answer on a screen or as data; reads the answer, never reasons."""
