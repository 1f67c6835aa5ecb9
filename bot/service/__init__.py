"""Use cases: one plain function each, inside one transaction that the caller has opened."""
