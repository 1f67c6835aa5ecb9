"""Why a day's carbs are what they are, in words."""
