"""Changes that wait for the coach's word."""
