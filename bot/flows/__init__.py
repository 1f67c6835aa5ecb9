"""The conversations, each as a flow of steps; words come from bot.messages, parsing from engine.units."""
