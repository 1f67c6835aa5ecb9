"""Whose the words of an English complaint are, and words that name a drug.

Drugs are looked for only to notice that one was named: nothing here is advice on any.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from engine.symptoms.english.negation import Polarity, Span
from engine.symptoms.patterns import Cued
from engine.written.late import Late, word_set

# ruff: noqa: E501 - a pattern stays on one line

# What a watch showed and a better look put right; both languages know the English of it.
MISREADING = Late(
    r"\b(?:(?:watch|wrist sensor|tracker|ring)(?: [\w']+){0,2} \d{3}(?: bpm)?(?: [\w']+| ,){0,10} (?:chest belt|chest strap|by hand|counted)(?: [\w']+){0,3} [4-8]\d(?!\d)|(?:watch|wrist sensor|tracker|ring)(?: [\w']+){0,2} \d{3}(?: bpm)? (?:on|during) (?:the |my )?(?:bike|treadmill|stepper|rower|run|cardio|walk)(?: [\w']+| ,){0,8} (?:chest belt|chest strap)(?: [\w']+){0,3} 1[0-5]\d(?!\d))\b"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """The words of one language that set a complaint elsewhere.

    `others` are people, animals and things as the subject of what follows, `things` which of them
    have no body, `acting` what stands before a thing that the writer does something to, `oneself` the writer as
    such or a part of the writer's body, `to_oneself` the writer as whom something is done to,
    `gone_by` what right behind a complaint says that it is gone by now, `back` that it came again,
    `reports` the words by which others tell of the writer, `enquiries` how somebody asks what a word
    means or why it is asked about.
    """

    others: Late
    things: Late
    acting: Late
    oneself: Late
    to_oneself: Late
    reports: Late
    stories: Late
    long_ago: Late
    of_now: Late
    of_late: Late
    gone: Late
    gone_by: Late
    back: Late
    rules: Late
    enquiries: Late
    supposed: Late
    by_another: bool = False
    """Whether somebody else writes for the athlete: "she" is then who is meant."""

    def judge(self, clause: str, span: Span, *, before: str = "", after: str = "") -> Polarity:
        """YES where the words are the writer's own and of now, ELSEWHERE where they are not, else DOUBT.

        `before` is what the clause goes on from, whose subject may be its own; `after` is the
        clause that follows.
        """
        clause, span = _near(clause, span)
        if before:
            before = before[-_REACH:]
            clause, span = (
                f"{before} {clause}",
                (span[0] + len(before) + 1, span[1] + len(before) + 1),
            )
        if (
            not self.by_another
            and (somebody := self._somebody_else(clause, span)) is not Polarity.YES
        ):
            return somebody
        if self._in_a_story(clause, span):
            return Polarity.ELSEWHERE
        if self.long_ago.search(clause) and not self.of_now.search(clause):
            return Polarity.ELSEWHERE
        if self.rules.search(clause):
            return Polarity.ELSEWHERE
        asked = self.enquiries.search(clause)
        if asked is not None and not self.oneself.search(clause, asked.end(), span[0]):
            return Polarity.ELSEWHERE
        if self.of_late.search(clause) and self.gone.search(f"{clause[span[1] :]} {after}"):
            return Polarity.OVER
        if self.supposed.search(_breath(clause, span)):
            return Polarity.SUPPOSED
        return Polarity.YES

    def is_gone(self, clause: str, span: Span, after: str) -> bool:
        """Whether the clause says of what stands at the span that it is over by now, and stays so."""
        over = self.gone_by.match(clause, span[1])
        return over is not None and not self.back.search(f"{clause[over.end() :]} {after}")

    def _somebody_else(self, clause: str, span: Span) -> Polarity:
        subjects = [
            match.end()
            for match in self.others.finditer(clause, 0, span[0])
            if not (
                self.things.search(match[0])
                and self.acting.search(
                    clause[clause.rfind(" , ", 0, match.start()) + 1 : match.start()]
                )
            )
        ]
        if not subjects:
            return Polarity.YES
        writer = self.oneself.search(clause, subjects[-1], span[1])
        if writer is not None and writer.start() <= span[0]:
            return Polarity.YES
        if self.to_oneself.search(clause, *span):
            return Polarity.YES
        return (
            Polarity.DOUBT
            if self.reports.search(clause, subjects[-1], span[1])
            else Polarity.ELSEWHERE
        )

    def _in_a_story(self, clause: str, span: Span) -> bool:
        story = self.stories.search(clause)
        if story is None:
            return False
        start = story.end() if story.end() <= span[0] else 0
        return self.oneself.search(clause, start, span[0]) is None


_REACH = 200  # characters looked at on either side


def _near(clause: str, span: Span) -> tuple[str, Span]:
    """What stands around the span, cut between words."""
    start = clause.rfind(" ", 0, max(0, span[0] - _REACH)) + 1
    end = clause.find(" ", span[1] + _REACH)
    near = clause[start : end if end >= 0 else len(clause)]
    return near, (span[0] - start, span[1] - start)


def _breath(clause: str, span: Span) -> str:
    """The part of the clause between commas that the span stands in."""
    start = clause.rfind(" , ", 0, span[0])
    end = clause.find(" , ", span[1])
    return clause[max(start, 0) : end if end >= 0 else len(clause)]


_PERSON = r"(?:little one|youngest|eldest|oldest|teenager|clients?|apprentice|intern|trainee|landlord|landlady|bulldog|labrador|lab|spaniel|poodle|mum|mom|mother|dad|father|parents|brothers?|sister|sis|friends?|bestie|wife|husband|hubby|girlfriend|boyfriend|gf|bf|partner|fiancee?|ex|son|daughter|kids?|child|children|baby|toddler|niece|nephew|cousin|aunt|auntie|uncle|grandma|grandpa|granny|grandad|granddad|nan|nana|gran|grandmother|grandfather|roommate|housemate|flatmate|neighbou?rs?|colleagues?|cowork\w+|boss|team ?mate|mates?|buddy|pal|trainer|training partner|teacher|judges?|promoter|competitors?|athletes?|lifters?|bodybuilders?|guys?|girls?|lads?|lady|ladies|woman|women|man|men|bloke|dude|chap|boys?|patients?|customers?|passenger|runner|players?|actor|actress|singer|hero|heroine|character|villain|detective|inspector|cop|zombies?|vampires?|victim|murderer|killer|somebody|someone|person|student|bride|groom|barista|waiter|waitress|postman|nurse|driver|tan lady|old one|other one|striker|keeper|referee|ref|footballer|boxer|cyclist|marathoner|swimmer|jockey|gymnast|ballerina|dancer|presenter|host|mc|speaker|politician|king|queen|prince|princess|soldier|plumber|electrician|builder|roofer|painter|gardener|farmer|butcher|baker|chef|cook|pensioner|tenant|lodger|guest|twin|twins|stepdad|stepmum|stepson|godson|goddaughter|grandson|granddaughter|pupil|classmate|groomsman|bridesmaid|influencer|youtuber|streamer|rookie|veteran|champion|winner|novice)"
# Who is spoken of without an article at the head of a sentence; nobody is called by these.
_KIN = r"(?:clients?|wife|husband|hubby|girlfriend|boyfriend|gf|bf|fiancee?|sister|brother|niece|nephew|cousin|colleagues?|cowork\w+|neighbou?rs?|flatmate|roommate|housemate|training partner|team ?mate|daughter|son|toddler|kids?)"
_ANIMAL = r"(?:dogs?|cats?|puppy|pup|kitten|horse|pony|hamster|rabbit|bunny|birds?|parrot|budgie|goldfish|fish|cow|pig|hens?|goat|sheep|tortoise|guinea pig|pet|ferret|lizard)"
_THING = r"(?:\w*machine|egg whites?|eggs?|whites|dough|batter|coffee maker|heating|boiler|radiator|scales?|phone|app|laptop|computer|pc|server|wifi|wi fi|internet|printer|blender|oven|freezer|fridge|dishwasher|washing machine|plants?|flowers?|tent|chair|shelf|table|market|economy|company|bridge|building|roof|ceiling|souffle|cake|bread|dough|tyre|tire|engine|car|van|bus|train|bike|battery|suit|heels?|shoes?|bikini|prices?|costs?|bill|rent|barbell|bar|rack|machine|cable|tv|telly|screen|camera|lights?|power|microwave|kettle|alarm|stereo|speaker|stock|bitcoin|show|crowd|audience|playlist|song|music|team|plan|schedule|zip|zipper|straps?|clasp|tan|bottle|shaker|sink|pipe|boiler|heating|tree|fence|ladder|deal|website|stream|connection|file|spreadsheet|keyboard|drone|sofa|treadmill|toaster|coffee machine|air ?con|steak|meat|burger|jelly|pudding|lines?|striations|taxes|traffic|lighting|picture|photo|video|series|ending|episode|final|finale|page|account|wallet|purse|crypto|watch strap|wallpaper|motorbike|scooter|tripod|mixer|gutter|grid|generator|router|modem|tablet|ipad|headset|earbuds?|headphones?|sock|earrings?|rice cooker|air fryer|thermos|cooler|tupperware|marquee|banner|trophy|medal|striker|goalie|squad)"
_NOT_AFTER = r"(?<!\btill )(?<!\buntil )(?<!\bagainst )(?<!\binto )(?<!\bonto )(?<!\bthrough )(?<!\bwithout )(?<!\bin )(?<!\bat )(?<!\bon )(?<!\bfrom )(?<!\bwith )(?<!\bto )(?<!\bby )(?<!\bafter )(?<!\bduring )(?<!\bfor )(?<!\bnear )(?<!\boff )(?<!\bof )(?<!\blike )(?<!\bunder )(?<!\bover )(?<!\bbefore )"
_BODY = r"(?:own|body|chest|heart|hearts|head|legs?|arms?|hands?|feet|foot|knees?|face|eyes?|vision|sight|ears?|mouth|lips?|tongue|throat|neck|back|stomach|tummy|belly|gut|guts|ribs?|lungs?|breath|breathing|pulse|muscles?|fingers?|toes?|calf|calves|quads?|hamstrings?|thighs?|ankles?|skin|blood|pee|urine|wee|poo|stool|mind|brain|speech|words?|temples?|skull|left|right|side|whole|entire|watch|hr|resting|period|nose|gums?)"

ENGLISH_SETTINGS = Settings(
    others=Late(
        rf"{_NOT_AFTER}\b(?:(?!my {_BODY} )(?:my|the|a|an|his|her|our|your|their|another|some|that|this|one of \w+|two|three|every|these|those) (?:\w+ ){{0,2}}?(?:{_PERSON}|{_ANIMAL}|{_THING})(?:'s)?(?= )(?! (?:at|to|in) (?:my {_BODY}|me)\b)"
        rf"|(?:{_PERSON}) of (?:mine|ours|hers|his)|(?<![a-z] )(?:{_KIN})(?:'s)?(?= (?!(?:i|my|me|i'm|i've|here|of)\b))"
        r"|(?<!hi )(?<!hey )(?<!hello )(?<!coach )\b(?:dave|mike|jake|tom|ben|sam|dan|josh|luke|ryan|kyle|chad|sarah|emma|kate|katie|jess|chloe|lucy|beth|amy|megan|holly|steve|gary|kev|phil|greg|carl|tyler|brad|connor)(?:'s)?(?= )"
        r"|(?<![a-z] )(?:steak|meat|phone|laptop|computer|printer|scale|app|car|wifi|cat|dog|screen|tv|battery|server|puppy|horse|suit|heater|fridge|oven)(?:'s)?|(?:mum|mom|dad|nan|grandma|grandpa|he|he's|she|she's|they|they're|someone|somebody|everybody|everyone|people|your (?:\w+ )?(?:face|voice|head|eyes|mouth|hands?|arms?|legs?|video|picture|camera)(?= )|half the \w+|(?:whole|entire) (?:building|house|street|village|town|hotel)|anyone who|everyone who))\b"
    ),
    things=Late(rf"\b{_THING}$"),
    acting=Late(
        r"(?:\b(?:i|i've|i'd|we) (?:just |then |also |had |have |only |was |tried to |went to )*(?!think|thought|saw|see|seen|heard|hear|watch|know|knew|guess|believe|hope|said|say|read|found|reckon|noticed|feel|felt)|^(?:, )?(?:just |then |and )*(?!watched|noticed|helped|shared|dropped by)(?:(?=\w+(?:ed|ing) )|(?=(?:put|left|took|got|made|ate|held|let|hit|set|shut|drove|stood|sat|went) )))\w+ (?:\w+ ){0,2}$"
    ),
    oneself=Late(
        rf"\b(?:i|i'm|im|i've|ive|i'd|i'll|(?<!next to )(?<!beside )(?<!behind )(?<!with )(?<!near )(?<!front of )(?<!opposite )(?<!made )(?<!make )(?<!makes )(?<!gave )(?<!give )(?<!gives )me|myself|(?<!of )mine|my {_BODY})\b"
    ),
    to_oneself=Late(rf"\b(?:me|myself|my {_BODY})\b"),
    of_late=Late(
        r"\b(?:last week|last month|(?:from|of) (?:last \w+|yesterday|the weekend|monday|tuesday|wednesday|thursday|friday|saturday|sunday)|(?:yesterday|sunday|saturday|friday|thursday|wednesday|tuesday|monday|last night|last week)'s|(?:days|weeks|months) ago|the other day|on (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)|earlier this week|(?:was|were|had|felt|got)(?: [\w']+){1,5} (?:mon|tues|wednes|thurs|fri|satur|sun)day)\b"
    ),
    gone=Late(
        r"\b(?:(?:long )?gone(?: now| since| again| away)?|(?:never|didn't|hasn't|not) (?:came?|come) back|went away|over now|has passed|passed (?:now|since)|(?:all |much )?(?:fine|better|good|ok|okay|sorted) (?:now|again|since)|all sorted|back to normal|nothing since|not since)\b"
    ),
    gone_by=Late(
        r"(?: (?:in|of) (?:the|my) \w+| from (?:yesterday|last night|\w+day))?(?: (?:is|are|has|have|is now|are now|is finally|are finally|has finally|'s))?(?: (?:completely|all|totally|fully|finally|now|been|pretty much))*"
        r" (?:gone|vanished|disappeared|cleared up|over|passed|went away|gone away|gone down|went down|healed(?: up)?|sorted|settled|subsided|stopped|died down|eased off)(?: (?:as soon as|once|since|when|after|with|thanks to) (?:[\w']+ ?){1,5}$)?(?: (?:today|now|completely|again|totally|fully|this morning|since|away|by now|for good|altogether|thankfully|luckily|since \w+|thanks?|too|already))*(?= ?,| ?$)"
    ),
    back=Late(r"\b(?:back|return\w*|again|worse|came|comes|until|still|then)\b"),
    reports=Late(
        r"\b(?:say|says|said|saying|think|thinks|thought|told|tells|reckons?|noticed|notices|found|caught|saw|sees|watched|called|asked|asks|worried|claims?|insists?|texted|swears?|shows?|reads?|showing|alarm|measured)\b"
    ),
    stories=Late(
        r"\b(?:(?:in|from|watching|watched|rewatching|rewatched|read|reading|saw|seen) (?:the |a |an |that |this |my |last night's |some )?(?:\w+ ){0,2}(?:film|movie|show(?= about| where| with)|series|sitcom|book|novel|episode|documentary|anime|thriller|horror|story|video game|cartoon|podcast|article|soap|drama)(?: where| about| in which| when| with| and|(?= ,)| who| from| is| was| had|$)"
        r"|(?:film|movie|series|book|novel|episode|documentary|thriller|story|podcast|article|song) (?:\w+ ){0,2}(?:about|where|in which|called|titled)"
        r"|(?:dreamt|dreamed|dreaming|dream)(?: that)?(?: i)?|nightmares?(?: where| about| that)?(?: i)?|in (?:a|my) dream i?|character(?:s)? in|netflix|video game|playing (?:fifa|chess|gta)|(?:song|track|playlist|album|lyrics|walk ?out (?:music|song|track)|posing (?:music|song|track)|listening to|listen to|by the \w+$|karaoke))\b"
    ),
    long_ago=Late(
        r"\b(?:at (?:twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)(?= (?:i|when|during|in|from|on)\b|$| ,)|in my (?:army|school|student|college|uni|boxing|football|playing|younger|wild) (?:days|years)|(?:in|during) my (?:early |late |mid )?(?:twenties|thirties|forties|teens|20s|30s|40s)|(?:two|three|four|five|a few|some|several) (?:seasons|preps) ago|as a (?:toddler|teen\w*|pupil|junior|youth)|in the (?:first |second )?lockdown|my (?:last|old|former|previous|ex) (?:coach|trainer|team) (?:let|made|had|put)|aged (?:[5-9]|1\d) i|(?:at|from) (?:the )?age (?:of )?(?:[5-9]|1\d|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen)|years? ago|decades? ago|as a (?:kid|child|teen|teenager|teenage \w+|young \w+|boy|girl|student|baby)|when i was (?:a|an|\d+|little|young|younger|small|at|in|still|eight|nine|ten|twelve|sixteen|pregnant)|back in (?:january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|winter|the|my|20|19|school|college|high|uni|\d+)|in (?:19|20)\d\d|last (?:year|prep|season)|in (?:school|college|uni|high school|primary school|my (?:teens|twenties|childhood|20s|early \w+))|at (?:school|uni)|(?:in|from|on|during|at) my (?:last|first|previous|old|very first) (?:\w+ )?(?:prep|show|contest|diet|season|comp|competition|marathon|pregnancy)|used to (?:get|have|suffer|faint|be|pass|throw|binge|purge|starve|hate|cut|feel)|in my past|a long time ago|ages ago|back then|in a past life)\b"
    ),
    of_now=Late(
        r"\b(?:(?<!never )(?<!none )(?<!nothing )(?<!not )(?<!not once )since|still|(?<!never )again|today|now|this morning|this week|last night|yesterday|tonight|lately|keeps?|same as|just like|like last|back again|right now|currently|(?:is|are|coming|came) back)\b"
    ),
    rules=Late(
        r"\b(?:(?:do|does|will) (?!i\b|my\b|not\b|\w+ not\b)(?:\w+ ){1,3}?(?:help|work|prevent|stop|cure|cause|make (?:you|people|one)) |(?:can|could|does|do|will|would|may|might) (?:you|one|we|people|athletes|anyone|caffeine|coffee|carbs|carb|sugar|salt|sodium|water|the (?:load|tan|carbs|sauna|pump|diet)|too (?:much|many|little)|low \w+|a lot of|lack of|keto|fasting|creatine|potatoes|rice|stress|heat|dieting|it|that) (?:\w+ ){0,3}(?:cause|give|make|get|faint|lead|trigger|mean|happen|pass|throw|feel|help)"
        r"|(?:bloat|bloats|cramp|cramps|constipate|constipates|dehydrate|dehydrates) (?:people|you|everyone|everybody|athletes|most)|(?:make|makes|give|gives) (?:people|everyone|everybody|athletes|most people)|how (?:common|likely|often do (?:people|athletes)|many (?:people|athletes|competitors))|why do (?:people|athletes|bodybuilders|some|so many|competitors)|(?:some|many|most|lots of|other) (?:people|athletes|competitors|bodybuilders|girls|guys)|is it true that (?:people|many|most|some|others|you)|(?:rules?|rulebook|handbook) (?:says?|said|states?)|if (?:someone|somebody|anyone|anybody|an athlete|one) (?:gets?|has|had|feels?|faints?|reports?|says?|passes|collapses)|(?:which|what) (?:warning )?(?:signs|symptoms) (?:do|should|would|are)|the (?:article|book|leaflet|rules|rulebook|guide|warning signs|symptoms of|signs of)|what are the (?:signs|symptoms)|first aid course|signs of a)\b"
    ),
    enquiries=Late(
        r"\b(?:(?:is|are|was) there (?:a |any |some |an )?(?:rules?|penalty|policy|word|term|button|field|box|option|setting|category|emoji|fine) (?:\w+ ){0,3}?(?:against|for|about|on|called|where|when)"
        r"|what (?:would |does |do |will |exactly |do you )*(?:counts?|qualif\w+|mean by|class\w*)(?: as)?|(?:counts?|counted|qualif\w+|classed|pass(?:es)?) as|where does \w+ start|from what (?:number|point|temperature) is"
        r"|why (?:do|does|did|are|is|would|must) (?:you|the (?:bot|app|form|check ?in|question\w*)|this (?:bot|app|thing)|it|we|i get) (?:\w+ ){0,3}?(?:(?:ask|asks|asking|asked)(?: me| us)?|want|wants|need|needs|care|warn|warns|mention|mentions|list|lists|check|checks)"
        r"|what(?:'s| is| are)(?: the)? (?:difference|meaning|definition|word|term|translation)|what does (?:the )?(?:word )?\w+ mean|how do you (?:spell|define|say|translate)|(?:meaning|definition) of"
        r"|(?:do|should|must) (?:i|we|you) (?:have to |need to |really )*(?:report|tell|mention|log|write|type|enter|flag)(?: (?!(?:have|had|i've|having|today|now|since)\b)[\w']+){1,9} or (?:only|just) (?:the |for )?(?:\w+ )?(?:bad|serious|big|severe|worse|important|emergenc\w+)"
        r"|(?:does|do|will|would|can) (?:you|she|he|it|(?:(?:the|my) )?(?:bot|app|coach|trainer)) (?:\w+ ){0,2}?(?:tell|see|know|notice|alert|get|read|warn|react)(?: \w+){0,3} (?:when|if|whenever) (?:i|we|someone) (?:type|write|say|mention|enter|put|send|report)(?: something like| things like| stuff like| the words?)"
        r"|(?:is|does|will|do|are) (?:the |our |my |we )?water (?:\w+ ){0,2}(?:cut|reduced|dropped|lowered|stopped)(?: \w+){0,3} or (?:does|do|is|will|stays?|kept)"
        r"|what if i(?= (?:get|faint|pass|cramp|throw|puke|vomit|black|feel|have|collapse|fall))"
        r"|what happens (?:to|with) (?:someone|somebody|people|athletes|a competitor))\b"
    ),
    supposed=Late(
        r"\b(?:if|could|might|would|maybe|perhaps|worried|worry|worrying|afraid|scared|fear|anxious "
        r"about|hope|hoping|should|risk|risks|avoid|avoiding|prevent|in case|nearly|almost|about to|"
        r"close to|months ago|weeks ago|last week|last month|history of|ever|normal|"
        # of what is felt in degrees they say how much, and not whether
        r"(?:sort of|kind of|kinda)(?! (?:dizzy|sick|nauseous|queasy|shaky|crampy|bloated|puffy|"
        r"swollen|woozy|tingly|achy|constipated|wobbly|headachy)\b)|"
        r"think|thought|guess|seems?|felt like|feels like|feel like|like i|"
        r"will i (?:get|have|feel|be)|want|wanna|going to|gonna|usually|why do|another|(?:not|half|pretty|fairly) sure)\b"
    ),
)


# ruff: noqa: E501 - a pattern stays on one line


DRUG_WORDS = word_set(
    """
    diuretic diuretics furosemide spironolactone hydrochlorothiazide hctz bumetanide torasemide
    torsemide chlortalidone chlorthalidone indapamide triamterene amiloride acetazolamide
    eplerenone mannitol dandelion thiazide metolazone tolvaptan desmopressin
    laxative laxatives senna bisacodyl lactulose macrogol picosulfate enema enemas
    clenbuterol clen ephedrine ephedra amphetamine amphetamines yohimbine sibutramine dnp
    dinitrophenol modafinil methylphenidate dexamphetamine synephrine salbutamol albuterol
    cocaine phentermine liothyronine levothyroxine thyroxine cytomel
    steroid steroids anabolics testosterone trenbolone tren stanozolol oxandrolone oxymetholone
    drostanolone nandrolone boldenone methenolone somatropin hgh halotestin fluoxymesterone
    letrozole anastrozole tamoxifen metformin semaglutide tirzepatide prednisolone prednisone
    cortisone
    lasix aldactone dyazide bumex edecrin dulcolax senokot ozempic wegovy mounjaro
    """
)
# Long enough to be put right when misspelt.
DRUG_VOCABULARY = frozenset(word for word in DRUG_WORDS if len(word) >= 7) | {
    "insulin",
    "potassium",
}

_PILL = r"(?:tablets?|tabs?|pills?|capsules?|caps|supplements?|supps?|powder|chloride|citrate|gluconate|drip|injections?|shots?|infusion)"
DRUG_PHRASES = Cued(
    Late(rf"\b(?:{pattern})\b")
    for pattern in (
        rf"potassium (?:\w+ )?{_PILL}",
        rf"{_PILL} (?:of|with) potassium",
        r"(?:\d+ ?(?:mg|g|meq|mmol)|dose|doses|dosing|load|loading|extra dose)(?: of)? potassium",
        r"slow k|k tabs?|potassium dos\w+",
        r"(?:how much|how many|when to|should i|shall i|can i|do i) (?:\w+ ){0,2}potassium",
        r"water (?:pills?|tablets?|tabs?|capsules?)",
        r"overdos\w*|(?:too many|handful of) (?:pills|tablets|capsules)|fat burners?|caffeine (?:pills?|tablets?|tabs?|capsules?)|eca stack|growth hormone",
        r"(?:iv|saline|drip) (?:fluids?|drip|bag)|colon cleanse\w*|stool softeners?",
        r"magnesium citrate|epsom salts? (?:drink|water|to flush)|milk of magnesia",
        r"insulin(?! (?:sensitiv\w+|resist\w+|response|spikes?|levels?|index|release|secretion))",
        r"t3 (?:tabs?|tablets?|dose|mcg)|\d+ ?mcg",
        r"blood pressure (?:pills?|tablets?|meds|medication)|beta blockers?",
    )
)
_FIGURES = Cued(
    Late(rf"\b(?:{pattern})\b")
    for pattern in (
        r"(?:spik\w+|raise[sd]?|blunts?|low|high|improves?|my|the|no|an?) insulin (?:spikes?|response|sensitiv\w+)",
        r"(?:spik\w+|release[sd]?|raise[sd]?|blunts?)(?: \w+)? insulin",
        r"testosterone (?:levels?|test|results?|is|was)|natural testosterone|low testosterone",
        r"(?:anti|non) steroid\w*|steroid free|drug free|no steroids",
        r"laxative effect|diuretic effect|natural laxative",
        r"dandelion (?:salad|leaves|greens)",
    )
)


def drug_spans(clause: str) -> list[tuple[int, int]]:
    """Where in one clause of plain words a drug is named, as (start, end)."""
    spared = clause
    for figure in _FIGURES.worth_trying(clause):
        spared = figure.sub(lambda match: "_" * len(match[0]), spared)
    spans = [m.span() for m in re.finditer(r"[\w']+", spared) if m[0] in DRUG_WORDS]
    for phrase in DRUG_PHRASES.worth_trying(clause):
        spans += [m.span() for m in phrase.finditer(spared)]
    return sorted(spans)
