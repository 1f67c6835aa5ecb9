"""Drawing pictures for a phone: pixels, colours and type; no database, clock or chat."""
