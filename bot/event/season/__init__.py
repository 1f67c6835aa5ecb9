"""Several events ahead of one athlete."""
