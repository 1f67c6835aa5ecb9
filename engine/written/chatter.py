"""Chatter: "hm", "ok lol", "thanks coach", a thumb. It tells nobody anything that they would want to be
fetched for; a tear or a skull may.

Every word of such a text is of that business; with one word more it is listened to as any other.
"""

from __future__ import annotations

from engine.written.late import Late
from engine.written.word_set import word_set

_IDLE = word_set("""
    hm hmm hmmm mh mhm hmpf pff ah aha oh ooh uh uhm um erm eh meh ugh mkay lol lmao rofl haha hahaha
    hahahaha hehe hihi xd yay woohoo wow nice cool sweet great perfect awesome super
    sorry soz oops whoops jk lolz
    ok okay oki okey okidoki k kk yo yep yup yeah yes ya aye sure fine alright right exactly true
    roger copy noted understood thanks thank thx ty cheers ta whatever same hi hey hello
    morning evening night bye
    naja tja joa jo ja jap jup jepp jawohl genau klar stimmt gut passt prima toll klasse spitze
    perfekt verstanden dank morgen danke dankeschön merci egal hallo servus moin tschüss
    tschau ups sry
""")
_BESIDE = word_set("""
    you u so much very a lot it that's thats that will do got i'll all will good then well
    coach boss man mate dude again too the my me for
    na dir dich sehr viel vielen lieben auch so dann alles mach ich werd wird gemacht doch
    guten abend gute nacht bis später
""")
#: What is said with a face. One that weeps, reels or is sick says something.
_HARMLESS = frozenset(
    "👍👌🙏👏🙌💪🔥✅✨🎉🥳😀😃😄😁😆😅😂🤣🙂🙃😉😊😎🤗🤝💯❤💛💚💙💜🧡🫶🫡😋😜🤪🤔🙄"
)
_JOINERS = "\ufe0f\u200d\U0001f3fb\U0001f3fc\U0001f3fd\U0001f3fe\U0001f3ff"
_TOKEN = Late(r"[^\W\d_]+(?:'[^\W\d_]+)*|[^\s.,!…:;()-]")
MOST_WORDS = 4


def is_chatter(text: str) -> bool:
    """Whether a text is nothing but an "ok", a laugh, a sigh or thanks. A question never is."""
    plain = text.lower().replace("\u2019", "'").translate({ord(one): None for one in _JOINERS})
    if "?" in plain or not plain.strip():
        return False
    found = _TOKEN.compiled.findall(plain)
    words = [one for one in found if one[0].isalpha()]
    if len(words) > MOST_WORDS or any(
        one not in _HARMLESS for one in found if not one[0].isalpha()
    ):
        return False
    return all(word in _IDLE | _BESIDE for word in words) and (
        not words or not _IDLE.isdisjoint(words)
    )
