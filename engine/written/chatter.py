"""What tells nothing yet: chatter ("hm", "ok lol", a thumb), and word that the answers come later."""

from __future__ import annotations

from engine.written.late import Late, word_set

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


#: One of these puts it off.
_LATER = word_set("""
    later laters soon coming after once till until yet hang wait gimme overslept forgotten
    driving min mins minute minutes hour hours sec moment only später spaeter gleich nachher
    dann danach erst nach sobald warte moment kurz sekunde minuten minute stunde stunden
    verschlafen unterwegs stau noch
""")
#: And one of these says what, or by what one is kept.
_WHAT = word_set("""
    weight weigh weighing weighin scale scales check checkin numbers number shower dentist bed
    work train bus car driving nightshift shift gym cardio dog kids toilet loo hairdresser home
    way traffic it overslept gewicht wiege wieg wiegen waage check-in einchecken werte zahlen
    dusche zahnarzt bett arbeit zug bahn auto nachtschicht schicht studio hund kinder klo
    friseur heim zuhause unterwegs stau alles verschlafen das
""")
_BESIDE_LATER = word_set("""
    i i'll ill im i'm am is are i've ive in the a an at on my not just still will send do be
    it's its then to from this morning today ok okay sorry soz lol haha hey hi coach for half an
    by back and with asleep bathroom side boot forgot haven't havent can't cant cannot get there
    ich bin hab habe muss meld melde mich mir schick schicke send sende mach mache komm komme
    kommt kommen um auf aufs im in die der das den dem mit zur zum beim bei vom von etwas
    bisschen heut heute sorry haha hallo hey moin und mein meine meinen geht steh stehe sitz
    sitze gehabt raus rein dran batterie paar halbe halben schlafen dem es wird kann nicht
    vergessen uhr
""")
_KNOWN = _LATER | _WHAT | _BESIDE_LATER
#: "I can't get there yet" is no check-in.
_CANNOT = word_set("can't cant cannot kann nicht")
_WORD = Late(r"\d+(?::\d+)?|[^\W\d_]+(?:['’-][^\W\d_]+)*|[^\s\w.,!?;:()'’-]")
_MOST_WORDS, _LONGEST = 14, 120  # words, characters


def puts_off(text: str) -> bool:
    """Whether the whole text says that the morning's answers come later, and no more."""
    if len(text) > _LONGEST or "?" in text:
        return False
    words = [word.replace("’", "'").lower() for word in _WORD.compiled.findall(text)]
    said = {word for word in words if not word[0].isdigit()}
    if not 1 <= len(words) <= _MOST_WORDS or not said <= _KNOWN:
        return False
    named = said & _WHAT - {"it", "das", "alles"}
    sent = said & {"it", "das", "alles"} and said & word_set(
        "do send coming schick schicke mach mache kommt"
    )
    if said & _CANNOT and not said & word_set(
        "weigh wiegen weight scale scales waage check checkin"
    ):
        return False
    return bool(said & _LATER and (named or sent))
