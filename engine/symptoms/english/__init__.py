"""Complaints as they are said in English."""
