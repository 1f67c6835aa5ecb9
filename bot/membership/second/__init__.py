"""Another coach beside the first one for a while."""
