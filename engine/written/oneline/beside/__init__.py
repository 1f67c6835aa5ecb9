"""What is told beside the answers, or by another figure, written out before they are read."""
