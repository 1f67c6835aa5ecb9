"""What is said to "do you mean headache?" and "is something wrong?" where it is more than a yes or no.

Only how it begins and which complaints stand in it is looked at. What leaves it open ("not sure", "not
bad", "not yet") answers nothing. A warning is not denied by "not really", and thoughts of self-harm by a
short no alone.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms import screen
from engine.symptoms.ear.shrugs import calls_themself_well, plainly
from engine.symptoms.names import Symptom
from engine.values.level import Level
from engine.written.late import Late

SHORT = 3  # words
_NO = r"no|nope|nah|naw|none|nothing|never|nein|ne|nee|nix|nichts|kein\w*|quatsch|not|nicht|ned|net"
#: "not sure" is no no, and "not too bad" says that it is there.
_OPEN = (
    r"sure|certain|idea|clue|sicher|ahnung|plan|bad|badly|serious|schlimm\w*|worse|worst|more|much|mehr|viel|"
    r"strong|stark|severe|heftig|wild|big|gross\w*|too|so|very|sehr|arg|only|yet|noch|long|doubt|wonder|joke"
)
_DENIES = Late(rf"(?:well |na |oh |ah )?(?:{_NO})\b(?!,? (?:{_OPEN})\b)")
_JUST_NOT = Late(r"(?:not|nicht|ned|net) (?:just|nur)\b")
_LEANS = Late(
    r"(?:not|nicht|eher nicht|rather not|eigentlich nicht)(?: (?:really|directly|exactly|quite|actually|direkt|"
    r"wirklich|unbedingt|ganz|so))*[.! ]*"
)
_MEANT_ELSE = Late(
    r"(?:(?:it|that|i|das|es|ich)\b[^.!?]{0,12} )?(?:(?:was|is|war|ist|hab|habe) )?"
    r"(?:just |only |nur |bloss |einfach |a |ein )*(?:joke|joking|jk|kidding|typo|autocorrect|tired|hungry|bored|"
    r"stressed|sleepy|scherz|spass|witz|tippfehler|mude|hungrig|gelangweilt|gestresst)\b(?! of\b).*"
    r"|(?:i|ich) (?:mean|meant|meine?|meinte) (?:the|my|her|his|an?|die|der|das|den|meine?n?) .*"
)
_YES = Late(
    r"(?:yes|yeah|yep|yup|ya|aye|ja|jo|jap|jep|leider|sadly|unfortunately)\b(?!.*\b(?:no|not|nicht|kein\w*|joke)\b)"
)
_SOMEWHAT = Late(
    r"(?:(?:just|only|nur|maybe|vielleicht) )*(?:a (?:bit|little)(?: bit)?|slightly|kind of|kinda|sort of|sorta|"
    r"somewhat|ein (?:bisschen|wenig)|etwas|leicht|schon|bisschen)[.! ]*"
)
_OVER = Late(
    r"(?:.{0,30}\b)?(?:gone|passed|better|weg|vorbei|besser)(?: (?:now|again|already|jetzt|wieder|schon))*[.! ]*"
)


def means_it(text: str, symptom: Symptom) -> bool | None:
    """Whether somebody who was asked says that they have this complaint; None where that is open."""
    found = screen(text)
    told = {hit.symptom: hit.sure for hit in found.hits}
    if symptom in told:
        return True if told[symptom] else None
    plain = plainly(text)
    if _YES.match(plain) or _SOMEWHAT.fullmatch(plain):
        return True
    grave = symptom.level is not Level.ADVISORY
    if (grave and found.suspicions) or _JUST_NOT.match(plain):
        return None
    if _LEANS.fullmatch(plain) or _OVER.fullmatch(plain):
        return None if grave else False
    if symptom is Symptom.SELF_HARM and len(plain.split()) > SHORT:
        return None
    if _DENIES.match(plain) or _MEANT_ELSE.fullmatch(plain) or says_all_is_well(text):
        return False
    return None


def says_all_is_well(text: str) -> bool:
    """Whether a text says that its writer is fine, and names nothing that is not."""
    if not calls_themself_well(text):
        return False
    found = screen(text)
    return not (found.hits or found.suspicions)
