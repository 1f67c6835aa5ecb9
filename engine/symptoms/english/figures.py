"""Where the words of a complaint are said of other things, or have an everyday cause."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.written.late import Late

# What a watch showed and a better look put right; both languages know the English of it.
MISREADING = Late(
    r"\b(?:(?:watch|wrist sensor|tracker|ring)(?: [\w']+){0,2} \d{3}(?: bpm)?(?: [\w']+| ,){0,10} (?:chest belt|chest strap|by hand|counted)(?: [\w']+){0,3} [4-8]\d(?!\d)|(?:watch|wrist sensor|tracker|ring)(?: [\w']+){0,2} \d{3}(?: bpm)? (?:on|during) (?:the |my )?(?:bike|treadmill|stepper|rower|run|cardio|walk)(?: [\w']+| ,){0,8} (?:chest belt|chest strap)(?: [\w']+){0,3} 1[0-5]\d(?!\d))\b"
)

# Said of other things: taken out of the text before anything is looked for.
FIGURES = (
    MISREADING,
    *(
        Late(rf"\b(?:{pattern})\b")
        for pattern in (
            r"(?:heart|hearts) (?:is |was |isn't |wasn't |just )?(?:in|into|set on) (?:it|this|that|the|getting|winning)",
            r"heart's (?:not |still )?(?:in|into|set on) (?:it|this|that|the|getting|winning)",
            r"(?:my )?heart(?:'s)? (?:is |was |feels |so |just )*(?:full|happy|broken|breaks|melted|melts|melting|content|warm|good|fine|normal|ok|okay|steady|calm|strong|set|sank|sings?)(?! (?:and|then|or|one|now)\b)",
            r"heart ?rate (?:is |was |at |of |resting |avg |around |about )*[3-8]\d(?!\d)(?! ?(?:and|then|now|to|up)\b)|my heart ?rate(?= (?:is|was) (?:good|fine|normal|low|lower|down))",
            r"(?:follow\w*|break|breaks|broke|with all|bottom of) my heart|my heart(?:\'s)? desires?",
            r"(?:heart rate|hr|bpm|pulse)(?: (?:is|was|at|got|gets|hit|to|up|around|about|avg|average|max|of|went|reached|stayed|stays|kept|sat|held|steady|averaged|stuck|the|only|just|\d+|bpm)){0,6} (?:on|during|in|doing|after|for) (?:the |my )?(?:cardio|stairmaster|treadmill|bike|walk|run|hiit|session|training|workout|incline|intervals?|sprints?|posing\w*|stepper|rower|elliptical|sled|finisher)",
            r"(?:hit|hits|hitting) the (?:floor|ground) running|heaving (?:bag|crowd)|lights out at",
            r"(?:knees?|legs?)(?: \w+)? (?:go|goes|went|going|get|gets|got) (?:all )?weak (?:when|whenever|at|for|just) (?:i |the |my )?(?:smell\w*|see|saw|sight|thought|think|hear|walk past|pass|bake\w*|bread|chocolate|pizza)|weak (?:at|in) the knees (?:because|when|cos|cause|for|over) (?:he|she|they|of|i saw|i smell\w*)",
            r"(?:throw|threw|throwing|thrown|chuck\w*) up (?:the |some |those |a |my )?(?:heavy |big |old |new )?(?:weights?|plates?|dumbbells?|\d+s|numbers|pics?|photos?|pictures?|post|story|stories|peace sign|gang signs|poster\w*|shelf|shelves|tent|decorations?|bars?)",
            r"(?:horror|zombie|slasher|vampire|splatter) (?:film|movie|flick|series|show|night)s?(?: [\w']+| ,){0,5} (?:blood|gore) (?:everywhere|all over|and guts)",
            r"headache of an? [\w']+|constipated (?:writing|prose|look|face|pose|posing|traffic|essay)|double vision board\w*",
            r"seeing double (?:boulders|cannonballs|biceps|delts|abs|the abs|macros|rows|entries|bookings)|(?:out cold|dead to the world|out like a light) (?:for )?(?:\d+|eight|nine|ten|seven) ?(?:hrs?|hours)",
            r"pretend\w*(?: to be|ing)?(?: i'?m)? (?:[\w']+ )?(?:unconscious|dead|drunk|fainted|choking)|(?:casualty|victim|dummy) for (?:the )?first aid",
            r"numb to (?:the |that |this )?(?:smell|taste|noise|sight|idea|flavou?r|hunger)",
            r"(?:losing|lost|lose) my mind (?:about|over) (?:the |my |this |these |those )?(?:\w+ )?(?:crystals?|suit|bikini|tan|colou?r|music|outfit|heels|nails|cake|puppy)",
            r"(?:tan|tan's|colou?r|dye|ink|jeans|sauce|marker|lipstick)(?: (?:is|has|'s|just))? (?:bleed\w*|bled)(?: [\w']+){0,5}|breathless (?:video|commentary|review|fans?|crowd)",
            r"no sleep for (?:my|the|our) [\w']+|stroke (?:free|of luck|of genius)|seizure free|headache free",
            r"heart and soul|heart to heart|by heart|heart of gold|whole heart|my heart goes out|all my heart",
            r"faint of heart|faint hearted|fainthearted",
            r"faint (?:lines?|striations?|abs?|veins?|outlines?|smell|glow|separation|hope|chance|idea|line)",
            r"faintest",
            r"pass(?:ed|ing)? out (?:the |my |some |our |free )?(?:flyers|samples|tickets|leaflets|cards|medals|programmes|programs|numbers)|pass(?:ed|ing)? out (?:the |my |some |our |free )(?:meals|food|water|snacks)",
            r"blackout (?:curtains?|blinds?)|black ?out the|blacked out (?:the )?(?:windows?|curtains?|room)",
            r"(?:took|takes|take|taking) (?:my|your|our|their) breath away|breathtaking",
            r"(?:hold|holding|held|save|waste|wasting|under) (?:my|your|our) breath|breathing (?:exercises?|drills?|room|practice|work)",
            r"chest (?:is (?:looking|popping|coming|full|flat|big|crisp|sharp|growing)|looks?|looking|feels? (?:full|flat|pumped|big|great|good|fine|strong|ok)|striations?|line|lines|delts|hair|strap|day|session|workout|exercises?|press|pump|fly|flys|flyes|flies|pose)",
            r"weak (?:points?|spots?|links?|body ?parts?|areas?|pump|coffee|tea|excuses?|willpower|signal|wifi|field|lineup|judging)",
            r"weakness(?:es)? (?:on stage|of mine)|my (?:only |one |big )?weakness(?:es)? (?:is|are) (?!in|all|worse|getting|back|spreading|bad|still|there|so)",
            r"paralysis by analysis|analysis paralysis",
            r"dead ?lifts?|dead ?lift(?:ed|ing)|dead on|dead ?line|dead tired",
            r"stroke of|breast stroke|breaststroke|rowing stroke",
            r"sick (?:and tired|of|physique|pump|shape|conditioning|look|abs|delts|back|lifts?|leave|day|days|pose|posing|routine|workout|session|bro|gains|condition|detail|glutes|quads|arms|legs|veins)",
            r"(?:looks?|looking|looked) (?:so |absolutely |really |pretty |fucking |proper )?sick",
            r"off sick|called in sick|home sick|homesick|sickening\w*",
            r"(?:throw|threw|throwing) up (?:a |an |some |the |my |another |these |those |that )?(?:few |quick |new |more )?(?:photos?|pics?|pictures?|posts?|pose|poses|videos?|story|stories|link|numbers?|weights?|progress)",
            r"confus(?:ed|ion) (?:about|by|with|over|on|as to|regarding|around)(?: [\w']+){0,4} (?:plan|plans|carbs?|macros?|targets?|app|bot|buttons?|numbers?|messages?|schedule|sodium|instructions?|units?|grams?|meals?|food|menu|label|labels|fibre|fiber|rules?|categor\w+|posing|tan|check ?in|water target)",
            r"confused (?:which|whether|what to|how (?:much|many))",
            r"(?:going|gone|went) (?:black|dark) (?:on|for) (?:stage|the tan)|black (?:coffee|tea|tan)",
            r"seized (?:the|this|my) (?:day|chance|opportunity|moment)|(?:back|hip|neck|shoulder|engine) seized(?: up)?",
            r"(?:suit|bikini|dress|trunks|costume|clothes|jeans|shorts)(?: [\w']+){0,2} fitting|fitting (?:of|for) (?:the |my )?(?:suit|bikini|dress|trunks)",
            r"(?:dress|suit|bikini|costume) fittings?",
            r"(?<!a )(?:fit|fits) (?:in|into|my|the|me|well|great|perfectly|nicely|like)",
            r"heart rate (?:zone|monitor|strap|watch)",
            r"(?:boxing|wedding|engagement|gymnastics?) rings?(?! (?:\w+ )*(?:tight|stuck|won't|doesn't|too small))",
            r"shak(?:es|ing) (?:my|your|his|her) head|protein shak(?:e|es|ing)",
            r"period cramps|menstrual cramps|period pains?",
            r"numb(?:ing)? cream",
            r"swollen (?:delts|arms|pecs|quads|pump|muscles|guns|biceps)",
            r"(?:exhausted|drained) (?:all|the|my|every) (?:options?|list|possibilities|tuna|pasta|rice|can)",
            r"(?:in|full of) (?:the )?(?:hot|fresh) air|air (?:fryer|fried|con|conditioning|port|bnb|max)",
            r"dying to|dead set|to die for|die ?hard",
            r"(?:gave|give|giving|gives) (?:me|us|him|her|you) (?:a |an |the |such a )?(?:\w+ )?(?:heart attack|headache|migraine|stroke|fit|seizure|panic attack|chills|shivers)|(?:nearly|almost|about) (?:had|have|got|gave me|died|having) (?:a |an )?(?:heart attack|stroke|fit|seizure|panic attack)(?= (?:when|laughing|at|over|watching|seeing|because)|$)|(?:will|would|gonna|going to|might|have) (?:have )?a (?:heart attack|stroke|fit|seizure) when",
            r"made me (?:have )?a? ?(?:fit|seizure)|make (?:me|him|her) have a fit|suicide (?:grips?|squad|drills?|sprints?|runs?)|do(?:ing)? suicides",
            r"swollen (?:prices?|costs?|ego|budget|traffic|river)|(?:floored|killed|slayed|slaughtered|murdered) (?:me|it|them|that)|killing it|(?:price|news|result|look|bill|quote|cost) floored me|to die for|(?:i'd|i would|could|would) (?:die|kill) for|(?:drop|drops|dropped|jaw) dead gorgeous|kill(?:ed|ing)? (?:my|the|that|this) (?:workout|session|legs|quads|back|vibe|time|set|routine)|(?:cardio|legs|squats|session|workout|coach|hunger|wait|suspense|boredom|heels|shoes|tan|stairs) (?:is |are |was |nearly |will |almost )?(?:killing|killed|kills|kill) me",
            r"binge (?:watch\w*|on (?:netflix|series|shows)|listen\w*)|bing(?:ed|ing) (?:\w+ ){0,3}(?:series|seasons?|episodes?|shows?|netflix)|starving(?= (?:lol|haha|already|again|after|now|for))|(?:i'm|im|i am) (?:so |always |absolutely |bloody )?starving$|purge (?:my|the) (?:wardrobe|closet|inbox)",
            r"hate (?:how i look )?(?:in|with) (?:this|the|that|my) (?:bikini|suit|tan|colour|dress|photo|heels)|hate my (?:posing|tan|suit|heels|shoes|job|alarm|commute|phone|bikini|hair|music|neighbours?)",
            r"pumped up|blood pressure|blood (?:tests?|work|results?|orange|sugar(?! (?:[\w']+ ){0,3}(?:[12][.,]\d|[234]\d|says lo|lo|low|crash\w*|dropp\w*)\b)|drawn|sample|donation|flow|type|sausage|moon|red)|(?:donated|took|take|taking|gave|give|drew|draw) (?:my |some )?blood|in my blood|bloody (?:hell|good|brilliant|love|hungry|cold|freezing|heels|zip|app|scale|alarm|neighbours|tan|great|amazing|marvellous)|nose ?bleed seats?|bleeding (?:edge|heart|obvious)|bleed(?:ing|s)? (?:onto|on to|into|through) (?:the )?(?:sheets|suit|towel|dress|bed|pillow|clothes)(?= with tan)|tan (?:bled|bleeds|is bleeding|bleeding)",
            r"double (?:biceps?|bi|check\w*|chin|time|digits?|booked|the|protein|portion|session|espresso|dose|shot|tap)|double (?:rep|set|drop)s?|front double|back double|seeing double (?:lats|abs)",
            r"(?:rusty|dirty|brown|black|dark) (?:nails?|bronzer|tan|rice|chocolate|bread|coffee|tea|bikini|suit)|tea with",
            r"fall (?:asleep|in love|season|colou?rs|semester|leaves|back|behind|for)|fell (?:asleep|in love|for|behind|apart laughing|off (?:the|my) (?:wagon|plan|diet|hanger))|stage ?fright|shaking (?:my|his|her|the) (?:head|shake|shaker|bottle|hand|hands|things up)|shake(?:s)? (?:up|down)|shaken not|shaking hands|shiver(?:s|ing) (?:with|of) (?:excitement|joy|delight)",
            r"(?:heart|hearts?) (?:set on|belongs to|hangs on|beats for|on fire for|emoji|shaped|stopping|warming|throb|felt|melts?|to heart|breaker|breaking)|heart rate (?:strap|belt)",
            r"sauna (?:towel|voucher|in the hotel|is (?:broken|closed|out))|no sauna|never sauna|(?:hotel|gym|spa) (?:has|with|got) (?:a |an )?(?:\w+ )?sauna",
            r"out of breath(?: but| though)? (?:happy|good|as it should)|breathless (?:by|from the)|lost for words|speechless",
            r"cross (?:my|your) hearts?(?: and hope to die)?|(?:faint\w*|fainted|died|dying|collaps\w*|passed out|cry\w*|cried|shak\w*|trembl\w*|burst\w*|scream\w*|giddy|dizzy|jitter\w*) (?:with|for|from|of) (?:sheer |pure |so much |the |all the )?(?:joy|happiness|excitement|delight|pride|laughter|laughing|anticipation|relief|cuteness|gratitude|envy)|tears of (?:joy|laughter|happiness)",
            r"bing(?:e|ing|ed) ?(?:watch\w*|listen\w*|read\w*|play\w*)(?: (?:the|a|whole|entire|season|series|shows?|on|couch|sofa|of|my|all|new|episodes?|again|old))*",
            r"bleeding (?:colou?rs?|dye|ink|bronzer|edges?)|(?:colou?rs?|dye|ink|bronzer|lipstick|paint|stain|mascara|eyeliner|marker|print)(?: [\w']+){0,2} bleed(?:s|ing)?|(?:the )?radiators? (?:\w+ )?bleed\w*|bleed\w* (?:the )?(?:radiators?|brakes?)",
            r"(?:squeez\w*|flex\w*|crunch\w*|tens\w*|press\w*|clench\w*|hit|hitting|hold\w*|lift\w*|push\w*|stick\w*|puff\w*) (?:(?:the|my|your|out) )*(?:chest|abs|glutes|lats|quads|stomach|back|pecs)(?: out)?(?: [\w']+){0,2} (?:side chest|side tri\w*|front double|back double|most muscular|lat spread|front pose|back pose|quarter turns?|posing|every pose|the pose)|side chest",
            r"(?:puk\w*|vomit\w*|sick|faint\w*|crying|heart|dizzy|skull|barf\w*|fever\w*) (?:face )?(?:emojis?|smileys?|gifs?|stickers?|memes?)(?: [\w',]+){0,8}? (?:vomiting|nausea|dizzy|headache)|(?:puk\w*|vomit\w*|sick|faint\w*|crying|heart|dizzy|skull|barf\w*|fever\w*) (?:face )?(?:emojis?|smileys?|gifs?|stickers?|memes?)|(?:lol|haha\w*|yuck|ew+|ugh|bleh|igitt|bah) (?:vomiting|nausea)",
            r"double vision (?:goggles|glasses|game|effect|filter|lenses)|(?:drunk|beer) goggles|(?:migraine|nausea|headache|dizzy|seizure|fever) (?:stick|tattoo|hat|goats?|playlist|pitch|tree)",
            r"(?:glutes?|abs|quads?|hams\w*|lines?|striations?|lats|delts|waist|conditioning|look|detail\w*|midsection)(?: [\w']+){0,2} (?:blurr\w*|hazy|fuzzy|smudg\w*|washed out|watery|weak|swollen|numb looking)",
            r"(?:head|brain|mind) (?:exploded|explodes|exploding|blew up|melted) (?:when|reading|as) (?:i )?(?:saw|read|opened|heard|found|the|your)",
            r"dizzying",
            r"(?:sauce|ketchup|beetroots?|beets?|gravy|dressing|curry|jam|berries|soup)(?: [\w']+){0,2} (?:bleed\w*|bled)",
            r"(?:pancakes?|omelettes?|crepes?|muffins?|waffles?|cheesecake|jelly|souffle|cake|wrap)(?: [\w']+){0,3} (?:collapsed|keeled over|passed out|fainted)|(?:looks?|looked|looking|smells?|smelled|smelt|tastes?|tasted) (?:\w+ )?like (?:cold |cat |dog |baby )?(?:vomit|puke|barf)",
            r"(?:zombie|horror|slasher|vampire|splatter|crime|murder) (?:movie|film|flick|series|thriller|show)s?(?: night)?(?: ,)?(?: (?!(?:my|i|i'm|me|in|from|coughing|vomiting|puking)\b)[\w']+){0,4} (?:blood|gore|bleeding)(?! (?:in|from|when|on|out|coming|down)\b)",
            r"(?:song|lyrics?|chorus|refrain) (?:says?|goes?|sings|has the line|is about)(?: how| that)?(?: [\w']+){0,6}",
            r"heart (?:skipped|skips|missed|misses|stopped|stops)(?: a beat)? (?:when|as|because) i (?:saw|see|read|opened|heard) (?:[\w']+ ){0,3}(?:photos?|pictures?|pics|lists?|messages?|mail|e?mails?|name|names|news|prices?|results?|trailer|lineup|line up|bill|trophy|schedule|puppy|stage|hall|venue|bikini|suit)",
            r"head(?:'s| is| was)? (?:spinning|swimming|exploding) (?:with|from|over|at) (?:all |so many )?(?:the |these |those |your |my )*(?:numbers|macros|figures|grams|rules|instructions|options|info\w*|details|ideas|messages|categories|lists?)",
            r"(?:fees?|prices?|bill|costs?|rent|invoice|quote)(?: [\w']+){0,3} (?:made|makes|make) me (?:feel )?(?:sick|dizzy|ill|nauseous|faint)|(?:felt|feel|got|went) (?:sick|dizzy|faint) (?:at|when i saw) the (?:\w+ )?(?:fee|price|bill|cost|rent|invoice|quote)",
            r"(?:arms?|legs?|hands?|quads?|hams\w*|glutes?|shoulders?|core|abs)(?: [\w']+){0,2} (?:shak\w*|shook|trembl\w*|quiver\w*|wobbl\w*) (?:on|in|during|by|at) (?:the |my )?(?:last|final|heavy|top|tenth|twelfth) (?:\w+ )?(?:reps?|sets?)",
            r"max (?:hr|heart rate|pulse|bpm)(?: (?:was|of|hit|about|around)){0,2} \d{3}(?: bpm)? (?:in|on|during) (?:the |my |one |last )?(?:\w+ )?(?:intervals?|sprints?|circuit|spin class|hiit)(?: ,)?(?: and)?(?: (?:avg|average|mean)(?: (?:was|of|hr))? \d+)?",
            r"heart (?:skipped|skips|missed|misses|stopped|stops)(?: a beat)? when (?:they|she|he|(?:the|my|our) (?:\w+ ){0,1}\w+)(?: got| was| were)? (?:called|read|said|announced|shouted)(?: [\w']+){0,5}",
            r"(?:u|you|ya|you guys) never sleep(?: do (?:u|you|ya))?",
            r"(?:i |i've |i have |i'd |just )*(?:lost|lose) count(?! of)",
            r"confused(?: ,)?(?: so)? (?:is|are|do|does|did|which|when|where|how|should|shall|was) (?:it|the|that|we|this|these|those|check ?in|meals?)(?: [\w']+){1,8}",
            r"seeing (?:double|two of|twice)(?: the)? (?:portions?|meals?|servings?|snacks?|weigh ins?|dates?|lines|messages?|prints?|numbers on)",
            r"numb (?:\w+ )?(?:from|after) (?:holding|carrying|sitting|kneeling|standing|queu\w*|waiting|the (?:cold|frost|ice|freezer|frozen|queue|bench|saddle)|frozen|cold|ice)(?: [\w']+){0,5}|numb (?:bum|backside|butt|arse|ass)(?: [\w']+){0,3}",
            r"(?:threw|throw|throwing|thrown) (?:up )?(?:my|our|both) (?:hands|arms)(?: up)?(?: in (?:the air|despair|joy))?",
            r"chest (?:is |looks? |feels? )?tight and (?:full|dry|hard|grainy|crisp|round|dense|striated)",
            r"heart(?:'s| is| was)? in my (?:mouth|throat) (?:thinking|about|at|when|because|cos|for|before|waiting|imagining)(?: [\w']+){0,4}",
            r"(?:seizure|fainting|stroke|heart attack|death|drowning|overdose|suicide) (?:scene|storyline|plot|subplot)s?",
            r"cut myself (?:a bit )?(?:while |when )?(?:shaving|chopping|peeling|slicing|cooking|on (?:a|the|my) (?:razor|knife|tin|can|paper|packet|lid|grater))(?: [\w']+){0,4}|cut my (?:finger|thumb|hand|knuckle) (?:on|with|while|chopping|slicing|opening)(?: [\w']+){0,4}",
            r"(?:drain|sink|toilet|loo|pipe|gutter|shower|basin)(?:'s| is| are| was)? (?:blocked|clogged|bunged up|overflow\w*|flooded)(?: [\w']+){0,3}",
            r"(?:can't|cannot|couldn't|can not) (?:move|get up|stand up|feel my legs)(?: [\w']+){0,3} (?:because|cos|cause|coz|since) (?:the |my |our )?(?:cat|dog|puppy|kids?|baby|toddler|kitten)(?: [\w']+){0,6}",
            r"(?:quads?|muscles?|arms?|legs?|shoulders?|glutes?|chest|back|biceps|calves|pecs|delts) (?:are |is |was |were )?(?:so |all |proper |really )?full of blood",
            r"seeing two of (?:my|our|his|her) (?:old |best |former |own )?(?:clients?|friends?|mates?|girls|guys|athletes?|cousins?|team ?mates?|colleagues|students|heroes|idols)",
            r"(?:do|does|will|would) (?:it|that|this|sparkling \w+|gum|milk|tea|fizz|beans|\w+ water) (?:really )?(?:bloat|dehydrate|constipate) (?:me|you|us)",
            # of what has legs, arms, a head or a mouth and no body
            r"(?:table|chair|tripod|stool|bench|bed|sofa|couch|desk|tent|rack|lamp|easel|ironing board|shower|mop|printer|golf|screw|nail)(?:'s)? (?:leg|legs|arm|arms|foot|feet|back|head|heads|mouth|neck)",
            r"(?:my |the |our |that |this )?(?:pen|pens|biro|lid|letterbox|gazebo|trolley|moped|banner|hose|tap|zip|tyre|tube|bottle|bag|pipe|stopwatch) (?:just |completely |totally |has |have |had |is |was )*(?:haemorrhag\w*|hemorrhag\w*|bleed\w*|bled|faint\w*|collaps\w*|chok\w*|convuls\w*|died|dies|dying|gave up the ghost|had a (?:fit|seizure|stroke|heart attack))",
            r"(?:likes?|improv\w*|fix\w*|film\w*|work\w* on|drill\w*|practis\w*)(?: \w+)? (?:my |his |her |the )stroke",
            # what somebody's nerves or patience pay for
            r"(?:headache|migraine)s?(?: of (?:my|his|her) (?:\w+ )?life)? (?:is|are|was|were) (?:this|that|these|those|the|my|our|booking|finding|getting(?! (?:worse|unbearable|stronger|bad|badly|so|more|much|too|really|harder|intense|severe|out|bigger|me|beyond|crazy|insane|ridiculous))|filling|doing|sorting|planning|packing|choosing)(?: \w+)? (?!side|back|front|left|right|top|base|worst)\w{4,}",
            r"\w{3,}ing (?:the |a |my |our |all )?(?:\w+ )?(?:is|was) (?:one|a|such a|a real|always a|one big|a bit of a) (?:\w+ )?(?:headache|migraine|nightmare)",
            r"pass(?:ed|es|ing)? out (?:the |some |these |those |all )?(?:rice cakes?|cakes?|flyers?|leaflets?|numbers|programmes?|sheets?|snacks?|sweets|cards?|towels?|medals?|water bottles?|samples?|forms?|tickets?|goodie bags|sandwiches|drinks)",
            r"(?:hurl(?:ed|ing|s)?|chuck(?:ed|ing|s)?|lob(?:bed|bing)?) (?:the|a|an|my|that|those|this|some|two|three) (?:\w+ )?(?:\w*bag|\w*ball|bell|kettlebell|weights?|plates?|shoes?|trainers|tyre|hammer|stone|keg|phone|remote|javelin|bottle|shaker|sledge\w*)",
            r"(?:binge|binged|bingeing|binging|binge watch\w*) (?:\w+ ){0,5}?(?:show|shows|series|seasons?|episodes?|podcasts?|box ?sets?|sitcom|documentary|audiobooks?|netflix|youtube|reruns|trilogy)",
            r"can't breathe in (?:it|this|these|them|that thing|the (?:\w+ )?(?:suit|dress|corset|bra|belt|bikini|jeans|blazer|gown|costume|polo neck|jumper|collar|vest|wrap))",
            r"(?:it |that |which )?confuses (?:everyone|everybody|people|all of us)",
            r"(?:(?:i|just|so|sorry|coach|morning)(?: ,)? )*slept in(?= (?:again|today|this morning|sorry|coach)\b| ?,|$)(?: (?:again|today|this morning|sorry|coach))*",
        )
    ),
)

# Where the same words have an everyday cause, they are doubtful, not sure.
EVERYDAY = {
    symptom: Late(rf"\b(?:{words})\b")
    for symptom, words in {
        Symptom.CHEST_PAIN: r"bra|corset|vest a size|bench\w*|press\w*|fl[iy]e?s|dips|push ?ups|doms|workout|training|trained|session|gym|pump|day|machine",
        Symptom.BREATHLESSNESS: r"cardio|stairs?|hiit|sprint\w*|run|running(?! out)|treadmill|stairmaster|bike|posing|suit|dress|corset|belt|bra|polo neck|collar|blazer|paddle board|snorkel|mask|session|training|hill",
        Symptom.PALPITATIONS: r"cardio|hiit|sprint\w*|excite\w*|excitement|nervous|nerves|love|stage|when i saw|treadmill|running|coffee|caffeine|bike|session|training",
        Symptom.FAINTING: r"asleep|sleep|sofa|couch|bed|early|nap|tired|pillow|movie|film|tv|exhausted|o'clock|at \d+|pm|hours|fuse|power cut|candles?|sicherung|stromausfall|kerze\w*|laughing|straight away|like a baby|instantly",
        Symptom.LIMB_WEAKNESS: r"leg day|squat\w*|blazer|seams?|training|trained|session|workout|gym|lunges|cardio|doms|sore|looks?|looking|deadlift\w*|after legs|compared|lagging|stage|heavy weights?|much weight",
        Symptom.SEIZURE: r"laugh\w*|calf|calves|back|hip|knee|when he|when she|coach|cry\w*",
        Symptom.SELF_HARM: r"bungee|with a rope on|harness|parachute|zip ?line|laughing",
        Symptom.SEVERE_HEADACHE: r"trap\w*|posing music",
        Symptom.SLEEPLESS: r"excited|late|tomorrow",
    }.items()
}
