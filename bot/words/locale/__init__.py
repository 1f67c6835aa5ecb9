"""What the bot says in other languages than English, a folder each, and how it is kept up to date."""
