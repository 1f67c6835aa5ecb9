"""From what was typed to figures, words and marks."""
