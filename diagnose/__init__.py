"""Reasoning over the book: from what a person says to ranked root causes."""

__version__ = "0.1.0"
