"""An athlete is held at one figure for some days."""
