"""Pictures: plain values in, PNG out; no database, clock or chat."""
