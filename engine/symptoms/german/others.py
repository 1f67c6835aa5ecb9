"""How people say in German everything that is no warning."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.german.warnings import german_table
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase

GERMAN_OTHERS: tuple[Phrase, ...] = (
    *german_table(
        Symptom.SEVERE_GUT,
        "bauch magen darm unterleib blut durchfall krumm stuhl",
        sure=r"""
        <stark><2>(?:<bauch> ?schmerz\w*|<bauch>schmerz\w*|<bauch> ?krämpf\w*|<bauch>krämpf\w*|bauchweh|durchfall)
        (?:<bauch>schmerz\w*|<bauch>krämpf\w*)<3><stark>
        blut<3>(?:stuhl|durchfall|kot|klo)|blutige?[rn]? (?:stuhl|durchfall)
        krümm\w*<4>(?:schmerz\w*|<bauch>)
        """,
        doubtful=r"""
        (?:böse|üble|fiese)<1>(?:<bauch>schmerz\w*|<bauch>krämpf\w*)
        """,
    ),
    *german_table(
        Symptom.HEADACHE,
        "kopf migran schadel",
        sure=r"""
        <kopfweh>
        kopf<3>(?:weh|schmerzt|brummt|dröhnt|hämmert|pocht|platzt|explodiert)|brummschädel|schädel<1>(?:brummt|dröhnt)
        """,
    ),
    *german_table(
        Symptom.NAUSEA,
        "ubel schlecht flau brechreiz wurg kotz brechen ubergeb",
        sure=r"""
        übelkeit\w*|kotzübel|speiübel|brechreiz|würgereiz
        (?:mir|mich)<4>(?:übel|flau)|mir<1>(?:ist|war|wird|wurde)<3>schlecht|(?:ist|war|wird|wurde) mir<3>(?:schlecht|übel|flau)
        (?:bisschen|etwas|leicht|total|so|richtig) übel|seit<4>(?:übel|flau)
        flau<2>magen|(?:muss|müsste|könnte)<3>(?:kotzen|brechen|mich übergeben)
        """,
        doubtful=r"""
        übel|flau
        """,
    ),
    *german_table(
        Symptom.VOMITING,
        "erbr kotz ubergeb ubergab reiher gespien gebrochen brech",
        sure=r"""
        <kotz>
        """,
        doubtful=r"""
        (?:habe|hatte|musste)<3>(?:gebrochen|brechen)(?! (?:rekord|bein|arm|finger))
        """,
    ),
    *german_table(
        Symptom.SWOLLEN_HANDS,
        "hand hande finger ring",
        sure=r"""
        (?:hande?n?|finger|fingern|handgelenke?)<4>(?:geschwollen|angeschwollen|schwellen|schwillt|dick|dicker|aufgequollen|aufgedunsen|würste\w*|wurstfinger)
        (?:geschwollene?[nr]?|dicke?[nr]?|aufgequollene?|aufgedunsene?)<1>(?:hande?n?|finger\w*)|wurstfinger
        (?:ring|ehering|ringe)<5>(?:nicht|eng|zu eng|fest|drückt|spannt|klemmt)
        """,
        doubtful=r"""
        (?:hande?|finger)<2>(?:spannen|steif|prall)
        """,
    ),
    *german_table(
        Symptom.SWELLING,
        "schwoll schwell schwill dick gedunsen gequollen odem einlagerung abgeschwollen",
        sure=r"""
        (?:nicht|kaum|wenig)<2>abgeschwollen
        (?:knöchel\w*|fussgelenke?|füsse?n?|fuss|beine?n?|gesicht|augen|lider|lippen|schienbeine?)<4>(?:geschwollen|angeschwollen|schwellen|schwillt|aufgequollen|aufgedunsen|dick)
        (?:geschwollene?[nrs]?|aufgedunsene?[nrs]?|dicke?)<1>(?:knöchel\w*|füsse?n?|beine?n?|gesicht|augen|lider|lippen)
        ödem\w*
        """,
        doubtful=r"""
        geschwollen\w*|schwellung\w*|aufgedunsen|wassereinlagerung\w*
        """,
    ),
    *german_table(
        Symptom.DIZZY,
        "schwind schwummr schummr taumel dreh stern kreislauf wackelig wacklig schwank ohnmacht gleichg",
        sure=r"""
        schwindel|schwindelgefühl\w*|schwindelanfall\w*|drehschwindel|schwindelattacke\w*|schwindelig\w*|schwindlig\w*|schwummrig\w*|schummrig\w*|taumel\w*
        (?:alles|zimmer|raum|kopf|welt)<2>dreht|dreht<2>(?:alles|kopf|zimmer)|alles gedreht
        (?:sehe|sah|sehen)<2>(?:sterne|sternchen)|sternchen<2>(?:sehe|gesehen|augen)
        kreislauf<3>(?:spinnt|keller|probleme|macht|schlapp|unten|weg|instabil|schwach)|kreislaufprobleme\w*|kreislaufschwäche
        """,
        doubtful=r"""
        (?:wackelig|wacklig)<1>(?:beinen|auf)|schwank\w*<2>(?:beim|gehen|laufen)|gleichgewicht<2>(?:verlor\w*|probleme)
        """,
    ),
    *german_table(
        Symptom.BLURRED_VISION,
        "verschwommen doppel tunnel flimmer sehstor sehen sehe unscharf augen sehprob sah sicht",
        sure=r"""
        (?:sehe|sah|sehen|sicht|augen)<4>(?:verschwommen|doppelt|unscharf|doppelbilder|nichts mehr)|verschwommen<2>(?:sehen|gesehen|sicht)|verschwommene sicht
        doppelbilder|tunnelblick|augenflimmern|flimmer\w*<3>augen|sehstörung\w*|sehprobleme
        <kann><4>nicht<2>(?:richtig|klar|scharf)<1>sehen
        """,
        # By itself it is the trade's word for lines that have softened.
        doubtful=r"""
        (?:alles|mir|kurz|plötzlich|links|rechts|manchmal)<2>verschwommen
        """,
    ),
    *german_table(
        Symptom.SLEEPLESS,
        "schlaf auge wach insomni",
        sure=r"""
        schlaflos\w*|schlaflosigkeit|insomnie
        <kann><4><nicht><2>(?:ein ?|durch ?)?schlafen
        (?:nicht|kaum|gar nicht|null|überhaupt nicht)<1>geschlafen
        (?:kein|keinen|kaum|null|0)<1>schlaf
        kein auge<2>(?:zu|zugetan|zugemacht|zubekommen)
        (?:wach gelegen|wachgelegen|lag<3>wach|wach im bett)|(?:ganze nacht|halbe nacht)<1>wach
        (?:[0-4](?:[.,]\d)?|eine|zwei|drei|vier) ?(?:h|std|stunden?)<1>(?:schlaf|geschlafen)
        """,
        doubtful=r"""
        (?:schlecht|unruhig|wenig|mies|beschissen|nicht gut|nicht viel|nicht so gut)<1>geschlafen
        (?:schlechter|wenig|unruhiger|mieser) schlaf
        """,
    ),
    *german_table(
        Symptom.CRAMPS,
        "krampf",
        sure=r"""
        krampf|krämpfe\w*|wadenkrampf|wadenkrämpf\w*|muskelkrampf|muskelkrämpf\w*|fusskrampf|beinkrämpf\w*|krampft|verkrampft\w*|krämpft
        """,
    ),
    *german_table(
        Symptom.TINGLING,
        "kribbel ameisen taub",
        sure=r"""
        kribbel\w*|ameisenlaufen|ameisen<3>(?:händen|fingern|beinen|füssen)
        """,
        doubtful=r"""
        taub|taubheit\w*
        """,
    ),
    *german_table(
        Symptom.SHAKY,
        "zitter zittr tremor zucker hypo",
        sure=r"""
        zitter\w*|zittrig\w*|gezittert|tremor|unterzucker\w*|unterzuckerung|hypoglyk\w*|blutzucker<3>(?:niedrig|unten|abgestürzt|keller)
        """,
    ),
    *german_table(
        Symptom.STOMACH_PAIN,
        "bauch magen darm unterleib sodbrennen",
        sure=r"""
        sodbrennen
        <bauch> ?schmerz\w*|<bauch>schmerz\w*|<bauch> ?krämpf\w*|bauchweh|magendrücken
        <bauch><3>(?:weh|schmerzt|zwickt|krampft|drückt|sticht|grummelt)
        """,
    ),
    *german_table(
        Symptom.DIARRHOEA,
        "durchfall dunn stuhl flott durchmarsch",
        sure=r"""
        durchfall\w*|dünnpfiff|dünnschiss|dünner stuhl|flüssiger stuhl|flotter otto|flotten otto|durchmarsch
        """,
    ),
    *german_table(
        Symptom.CONSTIPATION,
        "verstopf stuhl klo kacken hartlei gross",
        sure=r"""
        verstopfung\w*|verstopft|hartleibig\w*|kein(?:en)? stuhlgang|keinen stuhl
        <kann><4>nicht<2>(?:gross aufs klo|kacken|gross)
        """,
    ),
    *german_table(
        Symptom.BLOATING,
        "blah geblaht vollegefuhl bauch luft",
        sure=r"""
        bläh\w+|gebläht|aufgebläht\w*|blähbauch|völlegefühl
        bauch<3>(?:bretthart|steinhart|aufgetrieben|ballon|kugel)
        """,
    ),
    *german_table(
        Symptom.URINE_DARK,
        "urin pipi pisse harn pinkel",
        sure=r"""
        (?:dunkle?[rns]?|dunkel|dunkelgelb\w*|braune?[rns]?|rote?[rns]?|rötlich\w*|cola\w*|orange\w*|blutige?[rn]?|tee\w*|schwarze?[rn]?)<3><pipi>
        (?:dunkler|dunkles|brauner|roter|blutiger) <pipi>
        <pipi><4>(?:dunkel|dunkler|dunkelgelb|braun|rot|rötlich|cola\w*|orange|schwarz|wie tee|wie cola|bräunlich|blutig)
        <pipi> (?:dunkel|braun|rot|orange)
        blut<2><pipi>
        """,
    ),
    *german_table(
        Symptom.NO_URINE,
        "pinkel piss urin wasserlassen wasser pipi",
        sure=r"""
        <kann><4><nicht><2>(?:pinkeln|pissen|urinieren|wasser lassen|pipi machen)
        (?:nicht|kaum|gar nicht)<1>(?:gepinkelt|gepisst|uriniert)
        kein(?:en)? (?:urin|pipi)|(?:muss|musste)<3>(?:nicht|kaum)<1>(?:pinkeln|pissen)
        """,
    ),
    *german_table(
        Symptom.FEVER,
        "fieber schuttelfrost temperatur",
        sure=r"""
        fieber\w*|schüttelfrost|erhöhte temperatur|temperatur<2>(?:3[89]|40)
        """,
    ),
    *german_table(
        Symptom.EXHAUSTION,
        "erschopf ausgelaugt fertig energie ausgebrannt schlapp todmude",
        sure=r"""
        erschöpf\w*|ausgelaugt|fix und fertig|(?:völlig|total|komplett|echt) fertig|(?:keine|null|kaum) energie|energielos|ausgebrannt|schlapp|todmüde
        """,
    ),
)
