"""What an event asks for: its look, its weigh-in."""
