"""What is due when: the agenda, its subjects, clocks, instants, waiting."""
