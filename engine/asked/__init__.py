"""What an athlete asks for in words: which view of their own plan answers it."""

from engine.asked.views import View, view_asked_for, views_asked_for

__all__ = ["View", "view_asked_for", "views_asked_for"]
