"""Where what people type lands."""
