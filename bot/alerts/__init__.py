"""What reaches a coach, and what an athlete is told of a finding.

Alerts that need an answer (`alerts`, brought on by `delivery`) go at any hour; all else through
`notes`, silent and gathered, held in quiet hours, told again in the digest. A doubt is told as one
(`doubts`) and never becomes a warning by itself. `bot/decision/to_athlete.py` says what a warning takes
off the targets that are shown. What a flag says is worded in `engine/safety/words.py` and
translated in `words_findings`.
"""
