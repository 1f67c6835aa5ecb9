"""Whether a text asks something, with or without its question mark, as people type."""

from __future__ import annotations

from engine.written.late import Late

_HEY = (
    r"(?:(?:hey|hi|hello|hallo|und|and|but|aber|ok|okay|so|also|sag mal|quick question|kurze frage)"
    r"[,:]? )*"
)
_ASKS = Late(
    rf"{_HEY}(?:"
    # English: an auxiliary before its subject, or a question word
    r"(?:can|could|may|shall|should|do|does|did|is|are|am|was|were|will|would|must|have|has) "
    r"(?:i|you|we|it|this|that|there|they|he|she|my|the|your)\b"
    r"|(?:what|when|where|which|who|how|why|what's|how's)\b"
    # German: a verb before its subject, or a question word
    r"|(?:kann|könnte|darf|soll|sollte|muss|bin|ist|sind|hab|habe|hast|bist|kannst|gilt|geht|geht's|"
    r"gehts|wird|werde|war|gibt) "
    r"(?:ich|du|man|es|das|der|die|wir|er|sie|mein\w*|dein\w*|was|auch|normal)\b"
    r"|(?:was|wann|wo|wie|wieso|warum|welche\w*|wer|wieviel|wie viel)\b"
    r")"
)


def asks_something(text: str) -> bool:
    """Whether it is put as a question: with its mark, or begun as one."""
    plain = " ".join(text.lower().replace("’", "'").split())
    return plain.rstrip(" !.").endswith("?") or _ASKS.match(plain) is not None
