"""What the words of a check-in say, by language."""
