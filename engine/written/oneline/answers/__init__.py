"""Which figure or word is which answer, and what is doubtful of it."""
