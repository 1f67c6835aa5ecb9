"""What whoever runs the bot does with it: look after it, back it up, move it, watch it."""
