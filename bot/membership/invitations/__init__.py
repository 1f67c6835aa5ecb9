"""One-time keys: made, taken, and what happens then."""
