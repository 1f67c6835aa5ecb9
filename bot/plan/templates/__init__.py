"""A coach's own plan templates."""
