"""The way to and from Telegram."""
