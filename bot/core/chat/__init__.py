"""What comes in from a chat and what goes out to it: the outbox, buttons, routes, topics."""
