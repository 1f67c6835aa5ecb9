"""The conversations, each as a flow of steps; bot.messages has the words."""
