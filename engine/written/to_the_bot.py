"""What people write to the bot itself: whether it is a person, and that it should tell nobody."""

from __future__ import annotations

from engine.written.late import Late

_HUMAN = Late(
    r"(?:.*[,.!?] )?(?:(?:wait|sorry|hey|hi|und|and|sag mal|eigentlich)[,:]? )*"
    r"(?:(?:are|r) (?:you|u) (?:actually |even |really )?(?:a |an )?"
    r"(?:real(?: person| human)?|human(?: being)?|person|bot|robot|machine|computer|ai|program)"
    r"(?: or (?:a |an )?(?:bot|human|person|machine|real person))?"
    r"|(?:am i|is this|do i) (?:talking|writing|speaking|texting|talk|write)?(?: to)? ?"
    r"(?:a |an )?(?:bot|robot|machine|human|person|real person|ai)"
    r"|bist du (?:eigentlich |überhaupt |echt |wirklich )*(?:eine? |ne? )?"
    r"(?:echter |echte )?(?:mensch|bot|roboter|maschine|computer|ki|programm|person|echt)"
    r"(?: oder (?:ein |eine )?(?:bot|mensch|maschine|roboter|computer|ki))?"
    r"|(?:schreib|schreibe|rede|spreche) ich (?:hier |gerade |grad )*mit (?:einem|einer|nem|ner) "
    r"(?:echten |richtigen )?(?:mensch\w*|bot|roboter|maschine|ki))"
    r"[\s?!.]*"
)
_TELL_NOBODY = Late(
    r"\b(?:(?:do not|don't|dont|pls don't|not to|never|without) (?:you )?"
    r"(?:tell|telling|inform|say (?:this|that|it|anything) to|let) (?!me\b|you\b|us\b|lies\b)\w+"
    r"(?! me\b)"
    r"|(?:keep (?:this|that|it) (?:between us|a secret|secret|to yourself|quiet|private)"
    r"|between you and me|between us please)"
    r"|(?:must not|mustn't|can't|cannot|shouldn't) (?:know|find out|see) (?:this|that|it|about)"
    r"|(?:sag|sags|sag's|sagt|erzähl|erzähle|erzähls|verrat|verrate)"
    r"(?: (?!mir\b|uns\b|dir\b)\w+){0,3}? (?:nicht|nichts|niemandem|keinem)\b(?! (?:mir|uns)\b)"
    r"|bitte (?:nicht|nichts) (?:an )?\w+ (?:sagen|weitersagen|weitergeben|weiterleiten|erzählen)"
    r"|(?:nicht|nichts) (?:weitersagen|weitergeben|weiterleiten|weitererzählen)"
    r"|(?:bleibt|bleib) (?:das )?(?:bitte )?(?:unter uns|zwischen uns)"
    r"|(?:soll|darf|muss) (?:das |es |davon )?(?:nicht|nichts) (?:wissen|erfahren|mitkriegen))"
)


def asks_whether_human(text: str) -> bool:
    """Whether it asks if a person or a machine answers, and nothing else."""
    plain = _plain(text)
    return len(plain.split()) <= 14 and _HUMAN.fullmatch(plain) is not None


def asks_to_tell_nobody(text: str) -> bool:
    """Whether it asks that somebody is not told of what was written."""
    return _TELL_NOBODY.search(_plain(text)) is not None


def _plain(text: str) -> str:
    return " ".join(text.lower().replace("’", "'").split())
