"""German words as they are compared: without umlauts and sharp s, misspelt ones put right.

"ü", "ue" and "u" become the same letter, since people write all three on a phone.
"""

from __future__ import annotations

import unicodedata
from functools import partial

from engine.symptoms.english.spelling import Corrector, Habits
from engine.written.late import Late, word_set

_UMLAUT_IN_TWO = Late(r"([aou])e")


def folded(text: str) -> str:
    """ "Übelkeit", "Uebelkeit" and "Ubelkeit" to "ubelkeit"; patterns are folded as words are."""
    plain = unicodedata.normalize("NFKD", text.casefold().replace("ß", "ss"))
    if not plain.isascii():
        plain = "".join(c for c in plain if not unicodedata.combining(c))
    return _UMLAUT_IN_TWO.sub(r"\1", plain)


def _folded_set(words: str) -> frozenset[str]:
    return word_set(folded(words))


# The words that a slip of the finger is put right to.
_VOCABULARY = _folded_set("""
    ohnmacht ohnmächtig umgekippt bewusstlos bewusstsein kollabiert kollaps zusammengebrochen
    zusammengeklappt brustschmerzen brustschmerz brust schmerzen schmerz engegefühl herzschmerzen
    herzinfarkt herzrasen herzstolpern herzklopfen herzflattern herzaussetzer herzschlag puls
    atemnot luftnot atmen atmung kurzatmig atemlos ersticken krampfanfall krampf krämpfe
    epileptischer schwach schwäche gelähmt lähmung lähmungen taubheit kraftlos schlaganfall verwirrt
    verwirrung desorientiert orientierungslos halluziniere halluzinationen gelallt erbrochen
    erbrechen übergeben gekotzt kotzen kopfschmerzen kopfschmerz kopfweh migräne unerträgliche
    heftige übelkeit schwindel schwindelig schwindlig geschwollen geschwollene angeschwollen
    durchfall verstopfung verstopft blähungen aufgebläht bauchschmerzen magenschmerzen bauchkrämpfe
    kribbeln zittern zittrig verschwommen schlaflos fieber schüttelfrost erschöpft erschöpfung
    selbstmord suizid umbringen unterzucker unregelmäßig unregelmäßiger zusammengesackt
    konzentrieren druckgefühl atemprobleme explodiert zerspringt umzubringen umgefallen sticht
    aufstehen weggekippt brustkorb sprechen benommen behalten gespuckt brennt bewegen schwarz
    schlägt versagen weggetreten rhythmusstörungen durchatmen ersticke kribbelt zuckungen gezuckt
    gekrampft gestolpert hämmert flattert entwässerungstabletten wassertabletten abführmittel
    diuretika diuretikum kaliumtabletten furosemid torasemid spironolacton steroide anabolika
""")

# What people write for what they mean, where it is further off than a slip or two.
_VARIANTS = {
    "konnt": "konnte", "nich": "nicht",
    "net": "nicht", "ned": "nicht", "nit": "nicht", "nimmer": "nicht mehr",
    "nix": "nichts", "keien": "keine", "kiene": "keine", "kein's": "keins", "iwie": "irgendwie",
    "is": "ist", "isch": "ist",
    "hab": "habe", "habs": "habe", "hab's": "habe", "hatt": "hatte", "kan": "kann", "kanns": "kann",
    "bauchweh": "bauchschmerzen", "kopfaua": "kopfweh", "schwindl": "schwindel",
    "ohnmachtig": "ohnmachtig", "onmachtig": "ohnmachtig", "ohmachtig": "ohnmachtig",
    "onmacht": "ohnmacht", "ohmacht": "ohnmacht", "umgekipt": "umgekippt", "attemnot": "atemnot",
    "athemnot": "atemnot", "hertzrasen": "herzrasen", "herzrassen": "herzrasen",
    "hertz": "herz", "hez": "herz", "ubll": "ubel", "schwindelich": "schwindelig",
    "schwindlich": "schwindlig", "kopschmerzen": "kopfschmerzen", "dunschiss": "durchfall",
}  # fmt: skip

_BEGINNINGS = {
    "herzrhyt": "herzrhythmus", "herzryth": "herzrhythmus", "herzrytm": "herzrhythmus",
    "epilept": "epileptischer", "halluz": "halluziniere", "desorien": "desorientiert",
    "kollab": "kollabiert", "migran": "migrane", "hydrochlorothi": "hydrochlorothiazid",
}  # fmt: skip

# Sound words a slip or two away from a word of the vocabulary: never "put right".
_LEFT_ALONE = _folded_set("""
    amen athen auferstehen aufgebracht aufgeklart aufsteigen aufstellen aufzustehen ausstehen baust
    behalter beinhalten bewege bewegend bewusstseins brent brush brut burst bust einbrechen
    erbrachten erschaffung erstrecken explodierte fieser flattern gefallt geguckt gekampft geruckt
    geschmolzen gezockt hammern heutige katzen kollidiert konzentriert konzentrierte konzentrierten
    konzentrierter kothen kotze kramp schlaft schlagst schmach schmelz schwachere schwachste
    schwacht schwanz schwarm schwartz schwinden schwindet sprachen sprechende sprecher sprecherin
    spruchen stich ubergehen uberlebten unregelmassige unregelmassigen verlagen versager versauen
    verwahrung verwarnung verwertung verwirkt verwirrend verwirrten verzerrung zittert
    rund runde runder brei breit sauna saune
    arm arme armen armer warmen schmerzt bekommen bekomme bekommt behalte hammer schlag schlage
    schlagen spreche spricht stiche bremst beginnen begonnen genommen gestolpere sicht sichte
    sticken steht bewogen bewegten belegen behauen schwatz schwarze gespickt gestickt aufsehen
    ansprechen versprechen besprechen schach schmatzen schmelzen scherz scherze scherzen schwamm
    schwache schwacher schwachen schwaches schwächer schwächen verirrt verwirrte geschwommen
    geschworen geschwungen gerahmt gezähmt kampf kämpfe kämpfen krampfe krampfen kraft kräfte atme
    atmet atem ader brot frust brüste bruste fiber ferien feier feiern zitrone zitronen zittere
    zitter plus pult pulse impuls umbringe umgekehrt umgeklappt ersetzen ersticke erbreche erbricht
    gebrochen versprochen verbrechen verstopfe verstopfen heftig heftiges heftiger heftigen hefte
    unerträglich schwanger schwankend bewusst bewusster unbewusst kribbelig kribbelt krabbeln
    übergaben übergebe übergibt überleben überheben umgeben geleimt schlappe schmale schmales
    kopfwerk steroid abführen abgeschwollen abgeschwollene abschwellen
""")


#: Puts slips right, and where there is none, folds what the umlauts are written as first.
GERMAN_CORRECTOR = Corrector(
    _VOCABULARY, habits=Habits(_VARIANTS, _BEGINNINGS, _LEFT_ALONE),
    tried_as=partial(_UMLAUT_IN_TWO.sub, r"\1"),
)  # fmt: skip
