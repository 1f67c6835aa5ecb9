"""How people say what concerns eating, the body as they see it, and the mood."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

_OWN = r"(?:my (?:whole |own |fat |stupid |ugly )?(?:body|legs|thighs|stomach|belly|tummy|face|arms|arse|ass|bum|hips|reflection|figure|shape|physique)|myself|how i look|what i (?:see|look like|am)|the way i look|looking at (?:myself|me)|being (?:in )?(?:this|my) body|this body|being me|my own skin)"

MOOD_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.PURGING,
        "myself finger purg laxativ toothbrush rid purpose deliberate chew spat spit punish undo burn make up bathroom toilet loo stomach brought bulimi intenti spoon compens pay afterwa sink shower work know",
        sure=r"""
        (?:got|get|getting|bring|brought|bringing|let|fetch\w*|put)<1>(?:it|everything|the food|all|dinner|the meal|that)<1>(?:all )?(?:back )?(?:out|up)(?: again)?<4>(?:bathroom|toilet|loo|sink|shower|purpose|afterwards|you know)
        (?:went|go|going|run|ran|straight)<2>to<1>(?:bathroom|toilet|loo)<3>(?:after|get rid|to (?:empty|bring|throw|puke|vomit))<2>(?:eat\w*|meal|dinner|it|rid|up)?
        (?:emptied|empty|emptying)<2>(?:my )?stomach<3>(?:on purpose|toilet|afterwards|myself)
        (?:made|make|making|forc\w+|let)<1>myself<1>(?:to )?(?:be )?(?:sick|vomit|throw|throw up|puke|gag|barf|hurl|bring)
        (?:fingers?|toothbrush|spoon)<3>(?:down|in|into)<2>throat
        purg(?:ed|ing|e)(?! (?:my|the|old) (?:wardrobe|closet|inbox|files|photos|cupboard))|bulimi\w*
        (?:got|get|getting) rid of<2>(?:food|dinner|lunch|breakfast|meal|binge|everything i ate|what i ate|it all|the cake|the pizza|the ice cream|all of it)
        (?:<vomit>|threw (?:it|everything|dinner|lunch)<1>up|brought (?:it|everything)<1>up|sick|up again)<2>(?:on purpose|deliberately|intentionally)
        (?:on purpose|deliberately|intentionally)<3>(?:<vomit>|threw up|sick)
        (?:took|take|taking|taken|used|using|popped|swallow\w*|drank|had)<4>laxatives?|laxatives?<4>(?:to (?:lose|drop|get|make|flush|empty|feel|look|be)|after|again|last night|every|before|for)
        chew\w*<3>(?:spit|spat|spitting)<1>(?:it |them |everything )?out|chew and spit|chewed and spat
        """,
        doubtful=r"""
        (?:cardio|run|ran|running|steps|treadmill|bike|stairmaster|exercise|workout|trained?)<6>(?:punish\w*|make up for|making up for|work off|burn off|undo|pay for|compensate)<4>(?:binge\w*|ate|eat|eating|food|cake|pizza|cookies?|ice cream|chocolate|meal|cheat\w*|bread|slip)
        (?:punish\w*) myself
        """,
    ),
    *table(
        Symptom.BINGEING,
        "bing stop control whole entire stuff empt raid fridge cupboard everything eat ate inhal demolish calorie trance autopilot robot possess frenzy spree attack diet plan kilo gorged kcal gorg cleared polishe orgy bender scoffed devoure cleaned through finishe shovel cramm",
        sure=r"""
        (?:eating|food|eat|sugar|chocolate) (?:attack|frenzy|orgy|spree|bender)|(?:could|can|couldn't|can't|cannot|did|didn't)<1>not?<1>stop<3>(?:hurt\w*|sick|pain\w*|eat\w*|until|till)|(?:couldn't|can't|cannot) stop(?: eating)?<2>(?:until|till)<3>(?:hurt\w*|sick|pain\w*|burst\w*|full)
        (?:ate|eating|eaten|shovel\w*|stuff\w*|cramm\w*)<5>(?:like (?:a )?(?:robot|machine|zombie|animal|possessed|someone else|on autopilot)|autopilot|trance|remote controlled)|(?:remote ?controlled|in a trance|on autopilot)<5>(?:ate|eat\w*|fridge|kitchen)
        (?:fell off|blew|ruined|broke)<2>(?:diet|plan|everything)<4>(?:ate|eating|whole|kilo|everything)
        bing(?:ed|ing|eing|es|e)(?! ?(?:watch\w*|on (?:netflix|series|youtube|the)|(?:\w+ )?(?:series|episodes?|show|season)))|binge ?eat\w*|binge ?ate|overate(?! by)|overeat\w*
        <can't><1>stop<1>(?:myself )?(?:from )?(?:eating|stuffing|snacking|the eating)(?! (?:these|those|the|rice|grapes|jam))
        (?:ate|eaten|eating|devoured|inhaled|demolished|scoffed|wolfed|polished off)<1>(?:absolutely )?everything<1>(?:in (?:the|my)|i (?:could|had)|that|sight|in sight)
        (?:lost|losing|no|out of|lose)<1>(?:all )?control<4>(?:food|eating|eat|ate|fridge|around|biscuits|chocolate|carbs|snacks|sweets|last night|and ate)|ate<4>(?:out of control|lost control)
        (?:stuffed|stuffing|gorg\w+)<1>(?:myself|my face)|gorged
        (?:emptied|raided|cleaned out|cleared out|ate (?:through|out of)|attacked)<2>(?:fridge|cupboards?|pantry|freezer|kitchen|biscuit tin|larder)
        (?:ate|eaten|eating)<4>(?:until|till)<3>(?:sick|hurt\w*|pain|burst|move|breathe|couldn't|could hardly|felt ill)
        """,
        doubtful=r"""
        (?:ate|eaten|inhaled|demolished|scoffed|devoured|finished|polished off|went through|got through)<2>(?:whole|entire|full|two|three|four|five|all the|all of the|family)<2>(?:jars?|cakes?|pizzas?|box|boxes|packets?|packs?|loaf|loaves|tubs?|bags?|tins?|cheesecake|birthday cake|peanut butter|nutella|ice cream|cookies|biscuits|chocolate|doughnuts?|donuts?|leftovers|cereal|bread)
        \d{4,5}<1>(?:calories|kcal)<2>(?:in one|one sitting|in an hour|last night|at once)
        """,
    ),
    *table(
        Symptom.STARVING,
        "eat ate food starv meal calorie hunger fast deserve bite fed nothing lunch dinner living coffee dog hungry proud empty force swallow refuse less anorexi fewer carbs survive survivi emptine existin secretl reduc bread lighter live hungrie instead kcal deserv rice emptier cals only half cutting untouch cigaret lettuce apple cucumbe portion cubes dropp single properl broth chicken cut gum anythin down never until",
        sure=r"""
        (?:gave|give|giving|fed|feed|feeding|slipped|left)<3>(?:dinner|lunch|breakfast|food|meals?|rice|chicken|carbs|portion)<3>(?:to the (?:dog|cat|bin|neighbou?r|birds)|the dog|my dog|in the bin|untouched|on the plate)
        (?:less|fewer|lighter|emptier|hungrier)<1>(?:is more|the better|i eat the better|is better)<1>(?:right|$)|(?:hunger|empty|emptiness|hungry)<3>(?:feels? good|feels? clean|is power|my friend|makes me (?:proud|strong)|is winning|like winning)|proud<4>(?:not eat\w*|ate nothing|hunger|hungry|without food|skipp\w*)
        (?:just|only|nothing but)<2>(?:black coffee|coffee|water|tea|gum|cucumber|an apple|lettuce|broth|ice cubes|cigarettes)<3>(?:today|all day|since|instead|for (?:two|three|\d) days|and nothing else|yesterday|until)
        (?:swallow|force)<3>(?:a bite|any food|food|anything) down|<can't><1>(?:bring|make|get) myself to eat|(?:couldn't|can't|don't want to|didn't want to|refuse to|not going to|won't)<1>eat(?= (?:today|any ?more|anything|at all|until|till|because|my|what|so)|$)(?! (?:my words|another (?:bite|grain)|all that))
        starv(?:e|ing|ed) (?:myself|until|till|to (?:make|lose|drop|get|look|be)|for the|it off|the rest)
        not eating(?= (?:today|tonight|anything|at all|until|till|tomorrow|this week|any ?more|for (?:a|the|two|three|\d)|properly|now|because|so|a thing|since|before|again)|$)
        (?:stopp?e?d?|stop|quit|quitting|stopping)<1>eating(?= (?:today|tonight|anything|altogether|completely|at all|until|till|tomorrow|this|any ?more|for (?:a|the|two|three|\d)|properly|now|because|so|since|before (?:the )?(?:show|stage)|again|until|and)|$)
        (?:shouldn't|won't|will not|don't|not|mustn't|can't let myself|not allowed to|refus\w*|not going to|not gonna|never)<2>(?:eat|touch food|have food|eating)<1>(?:anything|at all|until|till|today|tomorrow|again|any ?more|a thing|a bite|this week|for (?:a|the|two|three|\d)|food)
        (?:haven't|hasn't|not|didn't|never)<1>(?:eaten|ate|eat|had)<1>(?:anything|a thing|a bite|food|properly|all day|a single|in (?:two|three|\d)|since|for (?:two|three|a|\d)|today|yesterday|any food|any meals?|any of my)(?! (?:out|bad|wrong))
        (?:ate|eaten|eating|eat)<1>(?:absolutely |almost |next to |basically |practically )?nothing(?= (?:today|since|all|yesterday|for|until|till|but|this|at|and|again)|$)|no food<1>(?:today|since|until|till|for (?:two|three|a|\d)|all day|yesterday|tomorrow)
        (?:skipp\w+|skip|miss\w*|avoid\w*)<1>(?:all|every|most)<2>(?:meals?|food|carbs)|skip\w*<1>(?:eating|food|meals)(?= (?:today|until|so|to|because|all|again|tomorrow)|$)
        (?:living|surviving|live|survive|existing)<1>(?:off|on)<2>(?:coffee|water|air|gum|diet coke|coke zero|cigarettes|ice|lettuce|cucumbers?)(?! and (?:rice|chicken))
        (?:don't|not|didn't|doesn't)<1>deserv\w*<2>(?:eat|food|meal|carbs|dinner|breakfast|lunch|feed|calories)|(?:earn|deserve)<2>(?:my|the|to)<1>(?:food|eat|meals?|carbs)
        (?:throw\w*|threw|chuck\w*|scrap\w*|flush\w*|hid|hide|hiding|bin\w*|fed|feeding)<3>(?:food|meals?|lunch|dinner|breakfast|rice)<2>(?:away|bin|binned|toilet|dog|napkin|secretly|so nobody|so no one|instead)
        (?:pretend\w*|lied|lying|lie|said|saying|told)<4>(?:i (?:ate|had eaten|have eaten|eat)|about (?:eating|food|meals|what i ate))<1>(?:but|when|while|$)
        (?:afraid|scared|terrified|frightened|panic\w*|fear)<2>(?:eat|eating|food|carbs|rice|meals|bread|swallow\w*)
        (?:cut|cutting|dropp\w*|reduc\w*|down|eating|ate|only)<4>(?:[1-7]\d\d) ?(?:kcal|cals?|calories)(?! (?:breakfast|meal|snack|burn\w*))
        anorexi\w*
        """,
        doubtful=r"""
        (?:should|going to|gonna|want to|wanna|might|will|i'll|need to)<1>(?:just )?(?:stop|quit) eating(?! (?:at|by|after) \w+ ?(?:pm|am|o'clock)?)
        (?:should|going to|gonna|want to|wanna|might|will|i'll|planning to)<2>(?:fast|starve)(?= (?:until|till|today|tomorrow|for|from|to|now)|$)|water fast
        (?:half|less|fewer)<3>(?:on purpose|secretly|deliberately|than (?:the plan|you|planned|i should|told))
        """,
    ),
    *table(
        Symptom.BODY_HATE,
        "hate hating disgust body mirror fat ugly gross repuls revolt loath asham whale pig skin look hideous reflection everything nothing undress seen every thighs stomach obese monster being myself see vile blob patheti slice carve belly chop scratch face tear horribl peel legs detest rip cut much wrong enough despise physiqu bum",
        sure=rf"""
        (?:everything|all|each part|every part|every inch|nothing)<2>(?:about|on|of)<1>(?:me|my body|myself)<2>(?:is|looks|are|feels)<2>(?:fat|ugly|disgusting|revolting|gross|wrong|hideous|horrible|repulsive|good enough)
        (?:fat|ugly|disgusting|revolting|gross|hideous)<4>(?:when i (?:look|see)|in the mirror|my reflection|see myself|looking at me)|mirror<5>(?:cry\w*|hate|disgust\w*|fat|gross|ugly|pig|whale|sick|cannot look|smash)
        (?:don't|can't|couldn't|nobody should|no one should|ashamed to)<3>(?:be seen|show (?:myself|my body)|undress|see me like this)<2>(?:this|any ?more|because)?
        (?:hate|hating|hated|loathe|loathing|despise|detest|can't stand|couldn't stand|sick of|can't bear|repulsed by|disgusted (?:by|with|at)|ashamed of|embarrassed by)<1>(?:so much )?{_OWN}
        <can't><2>look<1>(?:at myself|in the mirror|at me|at my (?:body|legs|stomach|reflection))|(?:avoid\w*|cover\w*|smash\w*)<2>(?:mirrors?|reflection)
        (?:i'm|i am|i look|i feel|i'm so|i look so|i feel so|feel so|feeling so|just a|i'm just|i'm such a|feel like a|look like a|i'm a)<2>(?:disgusting|repulsive|revolting|hideous|ugly|gross|whale|fat pig|fat cow|pig|fat|huge fat|monster|blob|beached whale|obese|fat failure|fat mess)(?! (?:burn\w*|free|loss|grip|bar|intake|adapted|is|as|in (?:the|a good)|\d))
        (?:my (?:body|stomach|belly|thighs|legs|reflection|face) (?:is|are|looks?|makes? me|disgusts?)<2>(?:disgusting|repulsive|revolting|hideous|ugly|sick|gross|me|vile|wrong|a joke|pathetic|cry|want to))
        (?:cut|slice|rip|tear|carve|chop|peel|scratch)<3>(?:fat|skin|stomach|thighs|it)<1>off
        """,
    ),
    *table(
        Symptom.LOW_MOOD,
        "hopeless worthless depress point cry tear empty numb dark matter meaning sense joy life cope alone lonel fail burden care broken giv dead inside anymore pieces panic anxi down despair disappear low useless nobody happy hate miserable exist mentall emotion underst vanish really bottom doing apart psychol tired spirits anythin headspa hope cloud suicida health carry everyth cried losing hardly barely nothing mood tether none wept trapped hole will bawl sobb unlovab weeping cries unable struggl forever difficu",
        sure=r"""
        (?:nothing|not anything|no longer anything)<2>(?:makes me|is|brings|gives|feels)<2>(?:happy|fun|joy|smile|good|worth it|any more|pleasure|glad)|(?:mentally|emotionally|psychologically)<2>(?:very |really |so |totally )?(?:bad|broken|done|drained|exhausted|not well|down|fragile|finished|a wreck|wrecked|struggling|unwell|awful|terrible)
        (?:don't|do not|can't)<1>(?:enjoy|feel)<1>(?:anything|joy|life)<1>(?:any ?more|at all|$)|everything is<1>(?:black|dark|grey|pointless|meaningless|hopeless)(?! (?:and white|chocolate))|(?:feel|feeling)<1>(?:nothing|numb)(?= (?:anymore|any more|at all|inside|all day|lately)|$)
        hopeless\w*|worthless\w*|depressed|depression|despair\w*|miserable(?! weather)|suicidally
        (?:no|what's the|whats the|what is the|don't see (?:the|a|any)|can't see (?:the|a|any)|see no|where's the|is there (?:a|any))<1>point(?= (?:any ?more|in (?:anything|going on|trying|living|life|getting up|it all|any of|carrying on|continuing|me|this)|of (?:anything|it all|me|living|life|getting up|trying|any of)|to (?:anything|any of|life|it)|really|at all)|$)
        (?:nothing|none of it|none of this)<1>(?:really )?(?:matters|makes sense|means anything|brings|gives me|makes me (?:happy|smile)|feels (?:good|worth)|is worth|helps)(?: any ?more)?
        (?:can't|couldn't|cannot|won't)<1>stop crying|(?:cry|cried|crying|cries|sobb\w*|in tears|tears|bawl\w*|wept|weeping)<3>(?:all (?:day|night|morning|the time|week)|for no reason|again|every (?:day|night|morning)|myself to sleep|shower|for hours|nonstop|non stop|constantly|since|without (?:reason|knowing)|on the (?:floor|bathroom)|in bed|over nothing|most (?:days|nights)|at everything)
        (?:feel|feeling|felt|am|i'm|so|just|completely|totally)<1>(?:so |completely |totally |just )?(?:empty inside|empty|dead inside|numb inside|broken inside|broken|like (?:a )?(?:failure|burden|nothing|nobody|loser|waste|disappointment)|worthless|useless|unlovable|lost inside|trapped|so alone|completely alone|very low|really low|so low|so down|really down|very down)(?! (?:stomach|tank|carb\w*|on (?:carbs|energy)|by|\d))
        (?:in|into|such)<2>dark (?:place|hole|thoughts|cloud|tunnel)|dark thoughts|black hole|black cloud over|rock bottom|at my lowest
        hate (?:my life|life|everything|waking up)|(?:don't|do not) (?:care|give a (?:shit|damn|toss|fuck))<1>(?:about (?:anything|myself|life)|if|what happens|any ?more)|lost (?:all )?(?:hope|interest in everything|the will|my will|joy)|no (?:hope|joy|will to)(?! at)
        <can't><1>(?:cope|go on|carry on|do (?:this|it|life) any ?more|take (?:this|it) any ?more|keep going|see a way out|face (?:people|anyone|the day|another day|going on)|handle (?:this|it|life|anything) any ?more)|(?:falling|fall|fell) apart|breaking down|break down<2>(?:cry|tear)|breakdown|breaking point|going to pieces|end of my (?:rope|tether)|losing my mind
        (?:panic|anxiety) attacks?|(?:just )?want to (?:disappear|vanish|hide forever|give up on everything|be gone)|given up on (?:everything|life|myself)|giving up on (?:everything|life|myself)|wish i (?:could )?(?:disappear|vanish|didn't exist)
        """,
        doubtful=r"""
        (?:mood|spirits|headspace|mental health|mentally)<3>(?:rock bottom|on the floor|very low|really low|so low|terrible|awful|dark|black|bad place|struggling|not ok|not good|in the gutter|wrecked|shot)
        (?:burst into|broke into|in) tears|cried<2>(?:today|yesterday|morning|last night)|everything is (?:too much|pointless|meaningless|shit|falling apart)|so lonely|so alone|nobody (?:cares|understands|would (?:care|notice))|no one (?:cares|understands)
        (?:really|mentally|emotionally)<1>(?:struggling|not (?:ok|okay))|what am i (?:even )?doing (?:this|it) for|sick of (?:it all|everything|life)|tired of (?:it all|everything|fighting)
        """,
    ),
    *table(
        Symptom.SELF_HARM,
        "wake better off without exist disappear here die dead jump drive train bridge letter pills blade razor burn living alive end ending sleep forever miss gone point point world pain ending life hurt punish scratch cut knife goodbye born pills tablets meds cutting counted dead after thought thinking hang shoot drown stab waking slit medicat myself wish around wanted way front earth care planet farewel suicide matter notice once death relieve live being happier easier steer survive lighter want pill fantasi oncomin crash driving dying river deliber carv traffic fine punch hitting",
        sure=r"""
        (?:everyone|everybody|they|family|you all|people|kids|husband|wife|mum|parents)<2>(?:would|will|'d|'ll|is|are)<2>better off(?! (?:with|eating|on))
        (?:been|started|start|keep|back to|stopped|still)<1>cutting(?= (?:again|myself|my|since|at night|nobody|to)|$)(?! (?:carbs|calories|weight|phase|back|out|water|down))|(?:pills?|tablets|meds)<5>(?:lined up|in front of me|counted|counting|ready|saved|hoard\w*|stockpil\w*|desk|staring|look\w*)|(?:lined up|counted|counting|hoard\w*|saved up|collected)<3>(?:pills?|tablets|meds)
        (?:better|rather|prefer|easier|wish|happier)<3>(?:to be |be |being |if i was |if i were |i was |i were )?dead|(?:don't|do not|doesn't)<2>(?:need|have|want) to be<1>(?:on this (?:earth|planet|world)|in this world|here)
        (?:after|once)<3>(?:show|comp|contest|stage|weekend|this)<4>(?:end it|i'm done with (?:life|everything|living)|finish it all|it's over for me|i'll be gone|gone for good|disappear for good)|(?:thinking|think|thoughts|thought|dream\w*|fantasi\w*)<2>(?:about |of )?(?:dying|death|ending it|killing myself|not being here|jumping|hanging myself|disappearing|being dead)
        (?:hang|shoot|drown|stab|poison|strangle)(?:ing)? myself|throw(?:ing)? myself (?:off|under|in front)
        (?:don't|didn't|do not|doesn't|not|rather not|never|hope i don't|hope i never|wish i (?:didn't|wouldn't|don't)|without)<2>(?:want to |wanna |have to |need to )?(?:wake|waking) up(?= (?:any ?more|again|tomorrow|at all|ever|from|one day)|$)
        (?:better off|happier|easier|fine|lighter|relieved)<2>(?:without me|if i (?:was|were|wasn't|weren't|am|disappeared|died|just|didn't)|when i'm gone)
        (?:not|wasn't|weren't|wouldn't|don't want to|didn't want to|no longer)<3>(?:be here|exist|be alive|been born|be around)(?: any ?more| at all| after|$)|wish i (?:wasn't|weren't|had never been|hadn't been|was never|was not|could (?:just )?die|would die|was dead) ?(?:here|alive|born)?
        (?:tired|sick|done|finished|through|fed up)<1>(?:of|with)<1>(?:living|being alive|existing|life itself|my life|life)(?! in| on rice| on chicken)
        (?:end|ending|ended)<1>(?:it all|things|everything|it|my life|my existence)(?= (?:tonight|now|myself|soon|all|today|forever|for good|before)|$)
        (?:jump\w*|step\w*|throw\w* myself|drive|driving|steer\w*|crash\w*|walk\w*)<3>(?:off a (?:bridge|building|roof)|off the (?:bridge|roof|balcony)|in front of<1>(?:train|bus|car|truck|traffic|lorry)|into (?:a |the )?(?:tree|wall|traffic|oncoming|river|sea|barrier|crash barrier|lorry|truck|bridge|pillar|lamp ?post|central reservation))
        sleep(?:ing)? forever|never waking up|go to sleep and (?:not|never)
        (?:don't|wouldn't|doesn't|not) (?:care|mind|matter)<2>(?:if i)<2>(?:die|died|live|wake|survive|lived)|(?:nobody|no one|who)<1>(?:would |will |'d |even )*(?:miss|notice|care)<2>(?:me|if i (?:died|was gone|were gone|disappeared|vanished))
        (?:burn|burning|burned|burnt|scratch\w*|cut|cutting|hit|hitting|punch\w*|carv\w*|harm\w*|injur\w*|hurt\w*)<1>(?:my (?:arms?|wrists?|legs?|thighs?|skin)|myself)<3>(?:again|on purpose|deliberately|to (?:feel|cope|stop|punish)|with a (?:blade|razor|knife|lighter)|until|so i|because)|(?:razor|blade|knife)<3>(?:my (?:arms?|wrists?|skin|thighs?|veins))|slit<1>(?:my )?wrists?
        (?:don't|do not|can't|no reason|no point|why)<2>(?:want to )?(?:live|be alive|go on living|exist|keep living|stay alive|living)<1>(?:like this|any ?more|at all|with (?:myself|this)|$)
        no way out|only way out|world<3>better<1>without me|life<1>(?:isn't|is not|not|no longer) worth
        (?:swallow|take|took|taking|down)<2>all<2>(?:pills|tablets|meds|medication)
        """,
        doubtful=r"""
        (?:won't|will not|not going to|don't plan to|might not)<1>be (?:here|around|alive)<1>(?:much longer|after|for long|any ?more|next (?:week|month|year))|(?:want|wish|wanted)<1>(?:to |it )?(?:all )?(?:be over|just end|all stop|stop existing|stop being)
        (?:harm|hurt|kill|cut)(?:ing)? myself(?! (?:laugh\w*|with (?:cardio|squats|this)|in the gym|training|shaving|cooking|chopping|slicing|on (?:the|a)))
        """,
    ),
)
