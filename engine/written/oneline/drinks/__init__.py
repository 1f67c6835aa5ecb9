"""A day's drinking, told in parts or by what it was drunk from."""
