"""Complaints as they are said in German."""
