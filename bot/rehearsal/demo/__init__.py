"""The invented scenario that rehearsals play: who is in it, and what happens in their week."""
