"""A text as the second ear reads it: small plain words, in pieces, and those as numbered features.

Training and listening both go through here, so that they cannot drift apart.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import lru_cache
from itertools import combinations, pairwise
from zlib import crc32

from engine.written.late import Late, word_set

# ruff: noqa: E501 - a kind stays on few lines


KINDS: Mapping[str, str] = {
    "me": "i im i'm ive i've i'd i'll my me myself mine ich mein meine meinen meinem meiner meins mir mich",
    "you": "you your you're yours u ur du dein deine deinen dir dich euch euer ihr",
    "heart": "heart* pulse ticker herz* puls pulsschlag pumpe heartbeat heartrate bpm",
    "chest": "chest* rib ribs ribcage sternum breastbone torso brust* brustkorb brustbein rippe* brustkasten thorax",
    "head": "head* skull temple temples brain* noggin forehead kopf* schadel* schlafe schlafen hirn* gehirn* birne rube stirn nacken*",
    "breath": "breath* air lung lungs wind inhale* exhale* gasp* pant panting wheez* puff* atem* atme* atmet luft lunge* schnauf* keuch* japs* hechel* puste luftnot einatm* ausatm*",
    "limb": "leg legs arm arms hand hands finger fingers foot feet toe toes knee knees ankle ankles calf calves thigh thighs shin shins quad quads hamstring* limb limbs wrist* elbow* bein beine beinen arme armen hande handen fuss fusse fussen zeh* knie* knochel* wade waden schenkel* oberschenkel* glied* handgelenk* ellbogen*",
    "face": "face mouth tongue lip lips eyelid* cheek* jaw smile gesicht* mund mundwinkel zunge* lippe* augenlid* lid wange* backe* kiefer* lacheln",
    "eyes": "eye eyes vision sight see seeing saw sehe sehen seh sieht gesehen auge augen sicht blick blickfeld sehfeld",
    "speech": "word words speech speak* talk* slur* sentence* mumble* gibberish wort worte worter sprech* sprich* rede reden lalle* satze stammel* nuschel* sprache",
    "gut": "stomach* belly tummy gut guts bowel* intestin* abdomen magen* bauch* darm* eingeweide oberbauch unterbauch",
    "throat": "throat gullet neck hals kehle rachen speiserohre",
    "back": "back spine shoulder* rucken* schulter* schulterblatt* wirbel*",
    "skin": "skin rash itch* hives pale sweat* clammy haut ausschlag juck* blass bleich kreidebleich schwitz* schweiss* kaltschweissig",
    "blood": "blood* bleed* bled blut blutet bluten blutig* nasenblut*",
    "urine": "urine urin pee pees peed peeing wee piss* toilet loo pinkel* pipi pisse harn klo toilette stuhl stool poo poop wasserlassen",
    "vomit": "vomit* puke* puking barf* retch* heave heaving chuck* chunder* hurl* spew* erbrech* erbrochen ubergeb* ubergib* kotz* gekotzt wurg* gereiher* reiher* spei*",
    "nausea": "nausea* nauseous queasy sick sickly ubel* ubelkeit flau schlecht mulmig elend",
    "pain": "pain* hurt* ache* aching achy sore stab* sting* burn* throb* pound* split* squeez* crush* tight* pressure pressing vice vise agony stitch jab* drill* schmerz* weh wehtut stech* stich* sticht brenn* bohr* poch* druck* druck drucken druckt presst eng enge engegefuhl zieh* zieht krampf* klemm* quetsch* hammer* hammert",
    "numb": "numb* tingl* dead pins needles prickl* limp droop* sagg* hang hangs hanging lopsid* crooked floppy paraly* taub* kribbel* ameisen eingeschlaf* schlaff hangt hangen herunterhang* schief gelahmt lahm* pelzig*",
    "weak": "weak* feeble jelly wobbl* rubber* buckle* gave collaps* fold* spaghetti noodle* drain* exhaust* wreck* schwach* schwache wackel* wackl* pudding gummi* weich zusammensack* sack* sackt kraftlos schlapp erschopf* ausgelaugt knick* matt",
    "dizzy": "dizz* woozy giddy lighthead* spin spins spinning spun sway* tilt* float* drift* merry carousel whirl* rotat* unsteady stagger* vertigo swim swimming schwind* schwummr* dreh* dreht schwank* karussell taumel* torkel* wanke* schweb* schwebe benommen* duselig* wirr",
    "shake": "shak* trembl* quiver* twitch* jerk* convuls* seiz* spasm* cramp* fit judder* zitter* zuck* zuckt schuttel* beb* verkrampf* krampft",
    "beat": "skip* stumbl* trip* flutter* flop* race races racing raced gallop* thump* thud* hammer* hammering drum* pound* leap* jump* irregular* somersault* misfir* beat beats bounc* stolper* ras* rast hupf* hopps* flatter* galopp* trommel* klopf* schlagt schlag* setzt aussetz* aussetzer holper* poltert polter* spring* sprung*",
    "seen": "black* grey gray dark dim* blur* double tunnel spark* star stars fog* foggy haze hazy spot spots flicker* white fade* schwarz* grau dunkel* verschwomm* verschwimm* doppelt tunnelblick funken sterne sternchen nebel neblig flimmer* schleier punkte punktchen milchig",
    "fall": "fell fall falls fallen falling floor floored ground tiles carpet faint* fainted collapse* keel* slump* drop dropped toppl* tumbl* went down gestolpert umgefallen umfall* fallen gefallen fiel boden fliesen teppich umgekippt umkipp* kipp* kippte zusammengebroch* zusammengeklappt zusammenklapp* ohnmacht* ohnmachtig lag liegend sturz* gesturzt weggesack* weggekippt weggetreten",
    "woke": "woke awake came coming conscious* unconscious blackout aware memory remember* aufgewacht wach zu bewusstsein* bewusstlos* filmriss gedachtnis* erinner* erinnerung",
    "mind": "confus* muddl* disorient* lost forgot* forget* blank strange weird odd where who foggy dazed verwirrt* durcheinander wirr orientier* vergessen vergess* weiss komisch seltsam merkwurdig fremd",
    "swell": "swell* swoll* puff* balloon* sausage* tight ring rings geschwoll* anschwell* schwell* dick wurst* wurste aufgedunsen ballon*",
    "sleep": "sleep* slept insomnia awake bed schlaf* schlief bett eingeschlafen durchgeschlafen",
    "fever": "fever* chill* shiver* temperature hot fieber* schuttelfrost frier* frost*",
    "death": "die dying died dead death kill* suicid* hang noose pills overdose cliff bridge blade cut cutting razor end ending sterb* stirb* tot tod toten umbring* umbringen suizid* selbstmord* brucke klinge ritz* geritzt schneid* aufhangen erhang* uberdosis tabletten",
    "life": "life live living alive exist* existence world point hopeless pointless worth* meaning burden goodbye farewell leben lebe lebt dasein welt sinn sinnlos hoffnungslos wertlos last abschied ausweg",
    "low": "sad* cry* cried tears depress* empty hollow numb alone lonely worthless miserabl* hate* loathe* hopeless despair* flat broken overwhelm* anxious panic* traurig* wein* weine heul* trane* depri* leer einsam wertlos elend* hass* verzweifel* kaputt uberfordert angst panik niedergeschlagen antriebslos freudlos",
    "body_hate": "fat ugly disgust* mirror gross hideous whale pig cow blob revolt* repuls* asham* shame failure fett* hasslich* eklig* ekel* ekle spiegel widerlich* schwabbel* schame* schame scham versager* wal schwein",
    "eat": "eat* ate eating food meal* meals swallow* chew* hungry hunger appetite bite snack* ess* iss esse gegessen isst essen mahlzeit* hunger* appetit kau* schluck* bissen",
    "binge": "binge* binging binged gorge* stuff* devour* demolish* inhal* scoff* overeat* overate fressattack* fressanfall* fress* gefressen reingestopft stopf* vollgestopft verschlung* schling* reinschaufel* geschaufelt geplundert",
    "purge": "purg* fingers toothbrush laxativ* throat toilet bathroom flush* undo rid abfuhr* finger zahnburste wieder losgeworden herausgewurgt erbrochen",
    "starve": "starv* fast fasting skip* nothing zero refuse* restrict* hunger* hungern fast* faste nix nichts verweiger* ausgelassen",
    "water": "water drink* drank thirst* sip sips spit* sauna wasser trink* getrunken durst* schluck* spuck* entwasser*",
    "other": "mum mom mother dad father brother sister friend* wife husband girlfriend boyfriend partner son daughter kid kids child* baby toddler nephew niece uncle aunt grandma grandpa gran nan neighbour* neighbor* colleague* client* he he's she she's his her him they their them someone somebody guy girl bloke lady man woman dude roommate flatmate teammate* judge judges boss teacher mate people mutter mama vater papa bruder schwester freund* freundin* frau mann ehemann sohn tochter kind kinder neffe nichte onkel tante oma opa nachbar* kollege* kollegin* kunde* er sein seine seinen seiner ihm ihn jemand typ leute mitbewohner* chef* lehrer* kumpel trainingspartner* richter* jury",
    "animal": "dog dog's puppy cat kitten horse hamster bird rabbit vet cow goldfish hund* welpe katze* kater pferd* hamster* vogel hase kaninchen tierarzt* goldfisch",
    "fiction": "film* movie* episode* series show netflix book* novel song lyrics game* documentary podcast video meme joke character* actor scene plot ending trailer krimi* serie* folge staffel buch roman lied spiel* hauptfigur* szene video* doku* witz* schauspieler* kino",
    "thing": "phone* laptop car cars engine battery wifi router printer scale scales app apps kettle fridge oven microwave treadmill bike van bus train plane alarm clock lamp lights tv screen server website excel spreadsheet shaker bottle bag suitcase suit trunks bikini costume heels shoe shoes dress tan music speaker* price* wallet bank account rent bill invoice internet handy auto wagen motor akku wlan drucker waage kessel kuhlschrank ofen mikrowelle laufband fahrrad zug bus flieger wecker lampe licht fernseher bildschirm server webseite excel tabelle flasche tasche koffer anzug hose bikini kostum schuhe kleid farbe musik preis* geldbeutel konto miete rechnung app tastatur spulmaschine waschmaschine staubsauger",
    "work": "work job office meeting* deadline* shift project exam* class lecture email* traffic taxes arbeit buro meeting* schicht projekt prufung* klausur* vorlesung mail* stau steuer*",
    "weather": "weather sun sunny rain* storm* wind snow cold outside wetter sonne regen* sturm schnee kalt draussen nebel*",
    "training": "train* workout gym set sets rep reps squat* deadlift* bench press pump session cardio treadmill doms legday pose posing practice walk-on machine hack curl* row rows kniebeuge* kreuzheben satz satze wiederholung* wdh pump studio einheit laufband muskelkater posen posing* ubung* hantel* beintraining beintag rucktraining gewichte",
    "food": "rice chicken oats oat potato* bread egg eggs fish salmon turkey broccoli asparagus jam honey rice-cakes cakes banana* coffee tea salt sauce cheese chocolate cookie* pizza burger sushi steak yoghurt yogurt protein carbs fat macros meal-prep reis huhn hahnchen* hafer* kartoffel* brot ei eier fisch lachs pute brokkoli spargel marmelade honig reiswaffel* banane* kaffee tee salz sosse kase schokolade keks* pizza burger steak joghurt quark kohlenhydrat* makros kuchen nudeln",
    "past": "ago yesteryear years childhood teenager 2019 2020 2021 2022 2023 2024 formerly once decade school back-then offseason off-season fruher damals jahre jahren vorjahr kindheit jugend schulzeit einst letztes letzten",
    "if": "if would could might may case suppose maybe perhaps whether wenn falls konnte wurde vielleicht ob angenommen sollte",
    "ask": "what when where which why how can could should is are does do may was wann wo welche* warum wie kann darf soll ist sind gibt",
    "rule": "rule rules allowed allow federation class category judging permitted legal compulsory quarter regel* erlaubt verboten verband klasse kategorie wertung pflicht kriterien",
    "not": "no not never none nothing without isn't don't didn't doesn't haven't hasn't wasn't zero free nor neither kein keine keinen keinerlei nicht nie ohne nichts weder noch null",
    "cannot": "can't cannot couldn't unable barely hardly won't wouldn't kaum kriege krieg bekomme unmoglich schaffe schaff",
    "good": "good great fine lovely super awesome amazing best better love nice perfect brilliant excited happy proud fun strong solid easy calm gut super toll klasse geil prima bestens besser liebe schon perfekt freu* glucklich stolz spass stark locker ruhig mega hammer top fit entspannt",
    "thanks": "thanks thank cheers ta ok okay yes yep yeah sure morning evening hello hi hey night bye danke dank ok okay ja jo jep klar morgen moin hallo servus hey nacht tschuss bis",
    "keeps": "keep* kept still constantly since always again nonstop every whenever suddenly sudden dauernd standig staendig immer wieder seit nochmal plotzlich jedes andauernd ununterbrochen sobald",
    "now": "now just today tonight minute minutes moment earlier jetzt gerade eben heute vorhin grad minute minuten moment",
    "like": "like as if as-though feels felt feel seems als wie fuhlt fuhle anfuhlt gefuhl kommt vor",
    "rise": "stand standing stood stairs step steps shower bathroom kitchen getting aufsteh* aufgestanden aufstehen treppe* stufe* dusche* bad badezimmer kuche hinstell*",
    "bad": "terrible awful horrible severe worst insane brutal massive unbearable violent extreme furchtbar schrecklich schlimm* heftig* brutal unertraglich* wahnsinnig* extrem* stark* irre ubelst*",
    "wrong": "wrong unwell ill off funny rough crap shit lousy scared frightened worried poorly krank unwohl mies beschissen scheisse dreckig komisch angst sorge* erschrock*",
    "help": "help ambulance hospital doctor emergency 911 999 112 hilfe krankenwagen notarzt krankenhaus arzt notfall notaufnahme rettung",
    "money": "price* cost costs bill fee fees expensive cheap euro euros pound pounds dollar* preis* kostet kosten gebuhr* teuer billig rechnung startgeld",
    "over": "gone vanish* heal* settled sorted clear* passed over stopped went down better since recovered weg vorbei verheilt abgeheilt abgeklungen uberstand* verschwunden raus durch seitdem beruhigt erledigt wieder-gut herum rum abgeschwollen besser gelegt",
    "still": "still again back worse yet noch wieder immer schlimmer zuruck erneut",
    "wear": "tan tanning bronzer glaze glitter crystal* rhinestone* lipstick lash* eyelash* nails heels sandals suit trunks bikini waxed wax earrings hair makeup lotion towel sheets braune farbe schicht lippenstift wimpern steinchen strass heels anzug hose badehose kostum gewachst ohrringe schmuck haare make nagel handtuch laken braunung",
    "pose": "pose poses posing quarter turn turns lat spread vacuum smile photo* picture* pic pics mirror angle flash camera routine stage pose* foto* bild bilder winkel blitz lacheln drehung vierteldrehung kur buhne spiegel kamera haltung",
    "look": "look looks looked looking lines line striat* crisp sharp blurred blurry flat full veins vein separation condition* detail* symmetry aussehe aussehen aussieht aus linien linie streifen scharf platt voll adern definition details wirk* kanten form",
    "meta": "symptom symptoms button list alarm app bot type typed typing tapped tap note notes autocorrect typo chat message messages word words question form report reports reported column term symptome knopf liste tipp* getippt vertippt nachricht* notiz* wort frage formular meld* begriff spalte feld anzeige",
    "fun": "lol haha* lmao rofl joke joking kidding ha hehe scherz* spass witz hihi xd \U0001f602 \U0001f923 \U0001f605 \U0001f61c \U0001f606 literally",
    "travel": "bus train flight plane hotel motorway parking traffic queue taxi station airport road car drive driving bus zug flug hotel autobahn parkplatz parken stau schlange taxi bahnhof flughafen strasse fahrt anreise",
    "worth": "worth loved love proper great class nailed smashed banging pb geil gelohnt lohnt liebs klasse top stark",
    "as_child": "kid child* baby toddler boy girl school uni college army teens twenties sixteen thirteen twelve nineteen kind* schule studium bund jugend* klein kleiner zwanzigern sechzehn dreizehn",
}


#: How many features are told apart; two that fall on one number share its weight.
#: So many that an unknown word seldom falls on a known one's.
BUCKETS = 1 << 20
#: How much each family of features counts: words, their neighbours, letters, kinds of words.
FAMILIES = (1.0, 1.4, 1.0, 1.4)
#: Kinds of what a sentence can be about: the first of them is taken for its subject.
_SUBJECTS = ("me", "other", "animal", "thing", "fiction", "food", "wear", "you", "ask", "meta")

#: Kinds of what a complaint is told with: parts of a body, what they do, sleep, life, the mood.
_TELLING = word_set("""
    heart chest head breath limb face eyes speech gut throat back skin blood urine vomit nausea
    pain numb weak dizzy shake beat seen fall woke mind swell sleep fever death life low body_hate
    binge purge starve
""")
#: Words of these kinds that are said of anything, or are another word in the other language.
_OF_ANYTHING = word_set("""
    die gut back who where saw see seeing seh sehe sehen sieht gesehen vergessen forgot forget number
    numbers shaker crystals gefallen skipped zero last zehn white wieder
""")

_FOLD = str.maketrans({"ß": "ss", "’": "'", "`": "'", "´": "'", "…": ".", "é": "e", "è": "e"})
_UMLAUT = Late(r"[äa]e|ä|[öo]e|ö|[üu]e|ü")
_PLAIN = {"ä": "a", "a": "a", "ö": "o", "o": "o", "ü": "u", "u": "u"}
_TOKEN = Late(
    r"[a-z]+(?:'[a-z]+)?|\d+(?:[.,]\d+)?|[?!]|[\U0001f300-\U0001f64f\U0001f900-\U0001faff]"
)
_SENTENCE = Late(r"[.!?;:\n]+(?=\s|$)|\n+|(?<=[a-z]{3})[.!?;]+(?=[a-z])| - | – ")
_CLAUSE = Late(
    r",\s*|\s+(?:but|though|although|aber|and then|also|und dann|allerdings|jedoch|except|ausser|"
    r"and|und|weil|because)\s+"
)
#: As they are typed in a hurry; without its apostrophe a denial was a word of its own.
_APOSTROPHES = {
    word.replace("'", ""): word
    for word in word_set("""
        don't didn't dosn't can't couldn't won't wouldn't isn't wasn't aren't weren't haven't hasn't
        hadn't ain't shouldn't
    """)
}
_DIGIT = Late(r"(?<=[\d.,])\d")
_MOST = 1200  # characters of one piece that are looked at


def fold(text: str) -> str:
    """Small letters without dots and accents: "Schwäche", "schwaeche" and "schwache" are one."""
    small = text.lower().translate(_FOLD)
    return _UMLAUT.sub(lambda match: _PLAIN[match[0][0]], small)


def sentences(text: str) -> list[str]:
    """The sentences of a text, as written."""
    return [sentence for part in _SENTENCE.split(text) if (sentence := part.strip())]


def pieces(text: str) -> list[str]:
    """What is listened to one by one, as written: sentences, and where one has several, its clauses."""
    found: list[str] = []
    for whole in sentences(text):
        found.append(whole)
        parts = [part.strip() for part in _CLAUSE.split(whole)]
        if len(parts) > 1:
            found += [part for part in parts if len(part.split()) > 2]
            found += [f"{a}, {b}" for a, b in pairwise(parts) if len(parts) > 2 and a and b]
    return list(dict.fromkeys(found))


def words(piece: str) -> list[str]:
    """The words of a piece, figures by first digit and shape ("61.2" is "60.0")."""
    tokens = _TOKEN.findall(fold(piece[:_MOST]))
    return [_APOSTROPHES.get(token) or _DIGIT.sub("0", token) for token in tokens]


def features(piece: str) -> tuple[list[int], list[int], list[int], list[int]]:
    """The numbers of a piece's features, each once, by family."""
    tokens = words(piece)
    letters: set[int] = set()
    for token in tokens:
        letters.update(_letters(token))
    kinds = [kinds_of(token) for token in tokens]
    alone = {_number("w", token) for token in tokens}
    beside = _neighbours(tokens)
    present = sorted({kind for each in kinds for kind in each})
    about = subject(kinds)
    by_kind = _kinds(tokens, kinds, present)
    by_kind.update(_kind("subject ", about, "&", kind) for kind in present)
    return sorted(alone), sorted(beside), sorted(letters), sorted(by_kind)


def speaks_of_body_or_mood(piece: str) -> bool:
    """Whether it has a word of the kinds that a complaint is told with."""
    return any(
        not _TELLING.isdisjoint(kinds_of(word)) for word in words(piece) if word not in _OF_ANYTHING
    )


def subject(kinds: Sequence[tuple[str, ...]]) -> str:
    """What the piece begins to speak of: "my sister's heart" is of another, not of me."""
    first = next((at for at, of in enumerate(kinds) if any(k in _SUBJECTS for k in of)), None)
    if first is None:
        return "none"
    near = [kind for of in kinds[first : first + 3] for kind in of if kind in _SUBJECTS]
    return next((kind for kind in near if kind not in {"me", "you", "ask"}), near[0])


def _number(family: str, name: str) -> int:
    return crc32(f"{family}{name}".encode()) % BUCKETS


def _neighbours(tokens: list[str]) -> set[int]:
    """Words side by side or one apart."""
    ended = ["^", *tokens, "$"]
    names = [f"{a} {b}" for a, b in pairwise(ended)]
    names += [f"{a} _ {b}" for a, b in zip(tokens, tokens[2:], strict=False)]
    return {_number("w", name) for name in names}


@lru_cache(maxsize=4096)
def _letters(token: str) -> frozenset[int]:
    """Three to five letters in a row."""
    closed = f"<{token[:40]}>"
    return frozenset(
        _number("c", closed[start : start + size])
        for size in (3, 4, 5)
        for start in range(len(closed) - size + 1)
    )


def _kinds(tokens: list[str], kinds: list[tuple[str, ...]], present: list[str]) -> set[int]:
    """Kinds that occur together, and side by side with a word or a kind."""
    found = {_kind(kind) for kind in present}
    found.update(_kind(a, "&", b) for a, b in combinations(present, 2))
    if "me" in present:
        found.update(
            _kind("me&", a, "&", b)
            for a, b in combinations([kind for kind in present if kind != "me"], 2)
        )
    # Neighbours with one of them, or both, by kind alone: "my <heart>", "<heart> <beat>".
    for (token, of_token), (other, of_other) in pairwise(zip(tokens, kinds, strict=True)):
        for kind in of_token:
            found.add(_number("k", f"{kind} {other}"))
            found.update(_kind(kind, ">", after) for after in of_other)
        found.update(_number("k", f"{token} {kind}") for kind in of_other)
    return found


@lru_cache(maxsize=16384)
def _kind(*parts: str) -> int:
    return _number("k", "".join(parts))


def _table() -> tuple[dict[str, list[str]], dict[str, list[str]]]:
    whole: dict[str, list[str]] = {}
    stems: dict[str, list[str]] = {}
    for kind, listed in KINDS.items():
        for entry in listed.split():
            at = stems if entry.endswith("*") else whole
            at.setdefault(fold(entry.rstrip("*")), []).append(kind)
    return whole, stems


_WHOLE, _STEMS = _table()
_LONGEST = max(map(len, _STEMS))


@lru_cache(maxsize=4096)
def kinds_of(word: str) -> tuple[str, ...]:
    """The kinds that a folded word belongs to, in the order of their names."""
    word = word.removesuffix("'s") if word not in _WHOLE else word
    found = set(_WHOLE.get(word, ()))
    for size in range(2, min(len(word), _LONGEST) + 1):
        found.update(_STEMS.get(word[:size], ()))
    return tuple(sorted(found))
