"""The weeks that are over: what they show, what they teach, what comes of it next time."""
