"""A plan to begin from: drafted, explained, named day by day, taken over and scaled."""
