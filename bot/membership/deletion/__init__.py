"""Somebody has everything deleted that is kept about them."""
