"""Changes that wait for the coach's approval."""
