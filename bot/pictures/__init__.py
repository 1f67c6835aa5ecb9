"""What is seen of an athlete: the week drawn, seasons, weeks side by side, photos."""
