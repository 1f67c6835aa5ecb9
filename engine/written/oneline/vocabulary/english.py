"""What the English words and phrases of a check-in say."""

from __future__ import annotations

from engine.written.oneline.tokens.pieces import Means, Table

ENGLISH: Table = {
    (Means.LABEL, "weight_kg", None): (
        "weight, wt, w, weigh, weighed, weighed in, weighing, weigh in, weighing in, bodyweight, "
        "body weight, bw, scale, scales, scale says, scales say, on the scale, on the scales, "
        "weights, scale said, scales said, scale read, scale reads, scale showed, scale shows, "
        "scales showed, wgt, wght, kg, kilos, kgs, scales at, scale at"
    ),
    (Means.LABEL, "fullness", None): (
        "fullness, full, ful, fll, look wise, look-wise, lookwise, visually, muscle fullness, "
        "muscle full, looking like, looking like a, looking like an, look like, look like a, look "
        "like an, looking, i look like a, rating the look, fullness feeling, fullness rating, "
        "fullness score, how full, mirror says, "
        "mirror, in the mirror, fulness, fullnes, fullness level, look, f, felt, fulnes"
    ),
    (Means.LABEL, "water_l", None): (
        "water, w, drank, drunk, drink, drinks, drinking, fluid, fluids, liquids, hydration, h2o, "
        "water intake, fluid intake, total drinks, wasser, wtr, h20, intake, l, litres, liters, "
        "liquid, wotter, watter, watr, wat, wtr, agua"
    ),
    (Means.LABEL, "sharpness", None): (
        "sharpness, sharp, sharpnes, definition, crispness, conditioning, s"
    ),
    (Means.LABEL, "carb_eaten_g", None): (
        "carbs, carb, carbohydrate, carbohydrates, cho, carbs eaten, carb intake, ate carbs"
    ),
    (Means.LABEL, "sleep_h", None): ("sleep, slept, asleep, of sleep, hours sleep"),
    (Means.SCORE, "fullness", 1): (
        "completely flat, flat as a pancake, totally flat, pancake flat"
    ),
    (Means.SCORE, "fullness", 2): ("very flat, super flat, really flat, so flat, empty, depleted"),
    (Means.SCORE, "fullness", 3): (
        "flat, pretty flat, quite flat, fairly flat, deflated, rather flat"
    ),
    (Means.SCORE, "fullness", 4): (
        "a bit flat, bit flat, slightly flat, a little flat, little flat, kinda flat, flattish, "
        "not very full, not so full, not full, somewhere between flat and ok, between flat and "
        "ok, between flat and okay, not too flat, bit on the flat side, a bit on the flat side, "
        "on the flat side"
    ),
    (Means.SCORE, "fullness", 5): (
        "half full, medium full, so-so, middling, meh, average, medium, mediocre, in between, "
        "between flat and full"
    ),
    (Means.SCORE, "fullness", 6): (
        "a bit full, fairly full, quite full, ok full, not bad, decent, okay-ish, okayish, "
        "alright, somewhat full, filling out, filling up"
    ),
    (Means.SCORE, "fullness", 7): (
        "pretty full, nicely full, rather full, good and full, great, awesome, really good, very "
        "good, full and tight"
    ),
    (Means.SCORE, "fullness", 8): (
        "very full, really full, super full, so full, round and full, full and round, round, pumped"
    ),
    (Means.SCORE, "fullness", 9): (
        "bursting, popping, extremely full, full as can be, totally full"
    ),
    (Means.SCORE, "sharpness", 1): ("very soft, very blurry, completely blurred, very blurred"),
    (Means.SCORE, "sharpness", 2): (
        "soft, blurry, blurred, soft and blurry, blurry and soft, watery, smooth, hazy, smeared, "
        "not sharp, pretty soft, pretty blurry, quite soft"
    ),
    (Means.SCORE, "sharpness", 3): ("a bit soft, a bit blurry, slightly soft, slightly blurred"),
    (Means.SCORE, "sharpness", 4): ("pretty sharp, quite sharp, tight, fairly sharp"),
    (Means.SCORE, "sharpness", 5): (
        "crisp, razor sharp, very sharp, super sharp, grainy, shredded"
    ),
    (Means.LINK, "", None): (
        "on, overall, all in all, flatter, flatter than yesterday, fuller than yesterday, a lot "
        "fuller, a lot fuller than yesterday, much fuller, much fuller than yesterday, way "
        "fuller, bit fuller than yesterday, a bit fuller than yesterday, a bit flatter, a bit "
        "flatter than yesterday, put, i put it at, i'd put it at, id put it at, i would put at, "
        "i'd put at, id put at, i would put it at, i'd give it, id give it, i'd give it a, id "
        "give it a, i give it a, i give it, give it, that was, was it, it was, it said, and it "
        "said, got on, on set, had a total of, total was, yesterday total was, barely changed, "
        "hardly changed, exactly, of my, up one to, down one to, up a point to, down a point to, "
        "kilo, i make it, no change, no changes, unchanged, nothing changed, same again, dropped "
        "to, fell to, went to, came down to, came up to, rose to, i'd rate, id rate, i rate, i'd "
        "rate it, i'd rate it a, rated, is, was, are, were, at, of, my, the, a, and, i, i'm, im, "
        "i've, ive, me, we, it's, its, it, this morning, am at, in total, total, altogether, day, "
        "all day, with, for, kind, level, reading, came in, had, have, be, being, feel, feeling, "
        "felt, feels, of water, all drinks, so far, up, plus, then, now, eaten, ate, got, "
        "sitting, score, says, showed, shows, say, number, numbers, check in, checkin, check-in, "
        "here, are my, also, as, in, again, all, only, same as yesterday, like yesterday, same as "
        "the day before, fuller, a bit fuller, bit fuller, managed, even, dead on, down to, "
        "still, still a, lvl, lvls, rating, i'd give myself, i'd give myself a, i'd say, i would "
        "say, call it, call it a, id say, i give myself a, id give myself a, give myself a, give "
        "it a, after the toilet, after toilet, after bathroom, after the bathroom, after the loo, "
        "after loo, after peeing, after pee, after a pee, post toilet, post bathroom, post pee, "
        "after a poo, after number two, after using the bathroom, fasted, naked, empty stomach, "
        "on an empty stomach, first thing, before breakfast, before food, before eating, before "
        "coffee, before my coffee, in underwear, in my underwear, no clothes, without clothes, "
        "today's, todays, stats, my stats, here's my, heres my, values, my values, update, daily "
        "update, morning update, morning numbers, on the dot, bang on, spot on, for weight, for "
        "fullness, for water, this am, this a.m., a.m., or so, i reckon, give or take, am weight, "
        "am, litre water, nailed, hit, water hit, hit water, gone, finished, level today, as per "
        "scale, on hotel scale, on the hotel scale, gym scale, hotel scale, uh, uhm, erm, er, "
        "err, hm, hmm, done, drank, got through, got down, put away, downed, on the scale, on the "
        "scales, on scale, in the tank, got in, look, looking, in the books, knocked back, "
        "chugged, consumed, gulped, sank, necked, polished off, yesterday total, in me, on "
        "scales, scale says, weighed in, weighing, weighing in, weighed in at, clocked, clocked "
        "in at, tipped the scale at, tipped the scales at, came in at, for the day, throughout "
        "the day, over the day, by the end of the day, on the full scale, on the fullness scale, "
        "fullness wise, fullness-wise, water wise, water-wise, weight wise, weight-wise, out, "
        "myself, full after that, i am, today at, down the hatch, in tank, by bedtime, by 9pm, "
        "if that helps, if it helps, if that matters, if you care, if you ask me, if you must know, "
        "only as planned, as per plan, rate myself, rate myself a, i rate myself, rating myself"
    ),
    (Means.TODAY, "", None): ("today, tonight, tomorrow, later"),
    (Means.ABOUT, "", None): (
        "about, around, approx, approximately, roughly, ca, circa, maybe, probably, i think, "
        "think, i guess, guess, like, say, almost, nearly, some, something like, give or take, a "
        "good, just about, ish, just, between, somewhere, somewhere between, somewhere around, "
        "anywhere between, in between, somewhere in between, somewhere like, solid, a solid, "
        "easy, an easy, strong, a strong, clean, a clean, clear, a clear, weak, a weak, good "
        "solid, a good solid, perhaps, perhaps a, prob, probs, prolly, closer to, more like, "
        "bout, bout a, about a, around a, like a, like an, feel like a, feels like a, feel like, "
        "maybe a, maybe an, say a, i'd say a, id say a, honest, an honest, proper, a proper, "
        "firm, a firm, legit, a legit, decent, a decent, generous, a generous, conservative, a "
        "conservative, low, a low, high, a high, so say, so maybe, so like, lets say, let's say, "
        "so lets say, so let's say, i'd guess, id guess, i'd guess a, ballpark, in the ballpark "
        "of, more or less, roughly a, prob a, probably a, just shy of, a touch under, just under "
        "a, id call a, i'd call a, i'd call it a, id call it a, call a, would be a, thats a, "
        "that's a, about an, around an, more a, more of a, more of an, just over, just under, "
        "slightly over, slightly under, a bit over, a bit under, a little over, a little under, a "
        "touch over, a shade over, a shade under, a tad over, a tad under, bit over, bit under, "
        "nearer, nearer to"
    ),
    (Means.BOUND, "", None): (
        "over, under, more than, less than, at least, at most, up to, above, below, almost no, "
        " hardly, barely, not even, only half"
    ),
    (Means.RANGE, "", None): ("to, or, till"),
    (Means.NOT, "", None): (
        "no, not, none, nothing, never, don't, dont, didn't, didnt, isn't, isnt, wasn't, wasnt, "
        "without, cannot, can't, cant, haven't, havent, couldn't, hasn't, won't, nor, neither"
    ),
    (Means.OTHERWISE, "", None): (
        "should, would, could, want, wanted, wanna, wish, goal, aim, aiming, supposed, need, "
        "needed, target, plan, planned, limit, if, when, until, may, might, max, minimum, "
        "usually, normally, usual, before, after, than, last week, last year, next, last time, "
        "coach said, told, said, other, sister, friend, mum, mom, dad, husband, wife, son, kid, "
        "dog, cat, lost, gained, down, increase, lower, raise, set, change, another, extra, left, "
        "to go, still to go, remaining, still to drink"
    ),
    (Means.OTHER_DAY, "", None): (
        "yesterday, last night, the day before, day before, on monday, monday, tuesday, wednesday, "
        "thursday, friday, saturday, sunday, last, in the evening, at night, this evening, before "
        "bed, at bedtime"
    ),
    (Means.COUNTS_NOT, "", None): (
        "but, because, though, although, however, very, really, pretty, quite, so, too, bit, a "
        "bit, little, a little, still, since, tired, sore, bloated, dizzy, hungry, thirsty, "
        "exhausted, woke, cold, nauseous, stressed, went, trained, training, no, not, didn't, "
        "couldn't, today, headache, cramps, cramping, moody, starving, knackered, sick, "
        "lightheaded, light-headed, tho, cause, cos, coz, cuz, after, due, thanks, lol, haha, "
        "despite, yet, lmao, thankfully, luckily, unfortunately, somehow, finally, throughout, "
        "spread, across, over the day, and counting, by bedtime, by bed, by the end, while, "
        "during, without, post, pre, again today, instead of, rather than, up from, down from, "
        "legs, arms, back, head, skin, mood, energy, doms, soreness, muscle, nerves, posing, "
        "slept, sleep, feeling, pump, heading, off to, drove, traveled, travelled, excited, "
        "nervous, knees, digestion, bowels, gut, stomach, belly, hunger, motivation, stress, "
        "refeed, training today, rest day"
    ),
    (Means.FINE, "", None): (
        "fine, all fine, all good, all ok, all okay, everything fine, everything good, everything "
        "ok, everything's fine, everything's good, everything is fine, everything is good, good, "
        "ok, okay, feeling fine, feel fine, feeling good, feel good, feeling ok, i'm fine, im "
        "fine, no problems, no complaints, nothing else, all well, no issues"
    ),
    (Means.ON_TARGET, "", None): (
        "ate everything, ate it all, ate all of it, all eaten, everything eaten, on target, carbs "
        "on target, carb on target, hit target, hit my target, hit the target, carbs as planned, "
        "on plan, carbs hit, hit my carbs, hit carbs, carbs on plan, target hit, carbs like "
        "planned, carbs on the dot"
    ),
    (Means.OFF_TARGET, "", None): (
        "off target, off plan, missed target, missed my target, missed the target, target missed, "
        "carbs missed, missed my carbs, over target, under target, didn't eat everything, did not "
        "eat everything, didn't finish my carbs, couldn't finish my carbs, went over my carbs, "
        "over on carbs, under on carbs"
    ),
    (Means.YES, "", None): ("yes, yeah, yep, y, yup, sure"),
    (Means.NO, "", None): ("no, nope, nah, n"),
    (Means.CORRECTS, "", None): (
        "no, nope, sorry, i mean, i meant, correction, make that, scratch that, actually, no "
        "wait, wait no, no sorry, sorry no, wait, oops, or rather, uh, uhm, erm, er, err, hm, "
        "hmm, my bad, edit, meant, misread, i misread, misread that, should be, should say, make "
        "it, it's actually, its actually, fixed, correct is, correct one is, typo, rather, strike "
        "that, ugh no, ah no, oh no, nvm, take, going with, go with, i'll go with, ill go with, "
        "lets go with, let's go with, use, i take, lol no, lol ok, haha no, no actually, actually "
        "no, ok no, wait it's, wait its, i lied, nah, nah more, nah more a, nah it's, i tell a "
        "lie, to be exact, more precisely, or well, well"
    ),
    (Means.VESSEL, "", None): (
        "glass, glasses, glasses of water, cup, cups, bottle, bottles, mugs, shaker, shakers, big "
        "glasses, bottles of water, flasks, jugs"
    ),
    (Means.EATEN, "", None): ("ate, had, eaten, plus, extra, another, snacked"),
    (Means.SKIP, "", None): (
        "skip, skipped, skipping, unknown, na, n/a, pass, no idea, don't know, dont know, not "
        "sure, not measured, didn't measure, missing, dunno, can't say, don't have, dont have, "
        "didn't count, didnt count, not counted, didn't track, didnt track, not tracked, haven't "
        "got, forgot, forgotten"
    ),
    (Means.LATER, "", None): (
        "later, to follow, follows, following, coming, tbd, tba, tbc, pending, in a sec, in a "
        "bit, in a minute, will follow, to come, comes later, not yet"
    ),
    (Means.SKIP, "weight_kg", None): (
        "no scale, no scales, no scale today, no scales today, without scale, without a scale, "
        "without scales, scale broken, scales broken, scale is broken, scale's broken, broken "
        "scale, scale broke, scale died, scale is dead, no weight, no weight today, didn't weigh, "
        "didnt weigh, did not weigh, couldn't weigh, could not weigh, can't weigh, cannot weigh, "
        "not weighed, haven't weighed, havent weighed, forgot to weigh, no weigh in, no weigh-in, "
        "didn't weigh myself, forgot to weigh myself, couldn't weigh myself, don't have a scale, "
        "dont have a scale, no scale here, scale empty, scale not working, scale isn't working, "
        "away from my scale, don't have my scale, no access to a scale, haven't got a scale, "
        "scale at home, left my scale at home, left the scale at home, scale in the suitcase, "
        "forgot the scale, forgot my scale, didn't weigh in, no scale available, scale not here, "
        "no weighing today, weight forgot, weight forgotten, no weighing, not weighing today, "
        "couldn't get to a scale"
    ),
    (Means.SKIP, "water_l", None): (
        "no idea what i drank, no idea how much i drank, don't know what i drank, don't know how "
        "much i drank, didn't measure water, didn't track water, no water figure, not sure what i "
        "drank, not sure how much i drank, didn't count water, no water number, forgot what i "
        "drank, forgot how much i drank, lost track of water, didn't measure my water, forgot to "
        "count water, forgot to count my water, forgot to count the water, no idea about water, "
        "no idea about the water"
    ),
    (Means.SKIP, "fullness", None): (
        "no fullness, don't know fullness, can't judge fullness, no idea about the look, no idea "
        "about fullness"
    ),
    (Means.SKIP, "sharpness", None): ("no sharpness, can't judge sharpness, no mirror"),
    (Means.SKIP, "carb_eaten_g", None): (
        "didn't track, didn't track carbs, didn't count carbs, no idea of carbs, don't know my "
        "carbs, don't know carbs, carbs not counted, didn't count my carbs"
    ),
    (Means.TRAINING, "as-planned", None): (
        "training done, trained, training as planned, trained as planned, session done, workout "
        "done, session as planned, did my session, did the session, gym done, all training done, "
        "training complete, training completed, training ok, did my training, did the training, "
        "training and cardio done, session and cardio done, cardio done, did my cardio, workout "
        "as planned, as planned training, trained as per plan, training was done, did all my "
        "training, training yes, trained fully, did my workout"
    ),
    (Means.TRAINING, "less", None): (
        "less training, trained less, training less, shorter session, short session, cut training "
        "short, cut it short, cut the session short, skipped cardio, no cardio, missed cardio, "
        "cardio skipped, half the session, half session, did half the session, did less, didn't "
        "do cardio, did not do cardio, skipped my cardio, missed my cardio, trained but skipped "
        "cardio, training cut short, session cut short, less cardio"
    ),
    (Means.TRAINING, "more", None): (
        "more training, trained more, extra session, extra cardio, extra training, longer "
        "session, did more, more cardio, training more, trained twice, double session, did extra "
        "cardio, did an extra session, trained longer"
    ),
    (Means.TRAINING, "none", None): (
        "no gym, no training, skipped training, skipped the gym, skipped gym, missed training, "
        "missed the gym, missed gym, missed my session, skipped my session, skipped the session, "
        "didn't train, didnt train, did not train, no session, no workout, training skipped, "
        "training none, training no, missed my workout, skipped my workout, training missed, "
        "session missed, session skipped, couldn't train, didn't go to the gym, didn't make the "
        "gym, skipped training and cardio, missed the session, did nothing, haven't trained, gym "
        "skipped"
    ),
    (Means.SAME, "fullness", None): (
        "same fullness, fullness same, fullness same as yesterday, same fullness as yesterday, "
        "fullness the same, fullness is the same, fullness unchanged, fullness like yesterday, "
        "just as full as yesterday, as full as yesterday"
    ),
    (Means.SAME, "water_before_l", None): (
        "water same, same water, water the same, water same as yesterday, same water as "
        "yesterday, water like yesterday, water unchanged, drank the same, drank the same as "
        "yesterday"
    ),
    (Means.SAME, "water_l", None): (
        "water as planned, water as per plan, water per plan, water on target, water target hit, "
        "water on plan, hit my water, hit the water, hit water target, hit my water target, all "
        "my water, all the water, all water, drank as planned, water target reached, drank all my "
        "water, water goal hit, hit my water goal, hit water goal"
    ),
    (Means.SAME, "weight_kg", None): (
        "same weight, identical to yesterday, identical to yesterday on the scale, identical "
        "weight, same as yesterday on the scale, same on the scale, scale identical, exact same "
        "weight, weight identical, exactly the same weight, the same weight, same weight as "
        "yesterday, weight same as yesterday, weight unchanged, weight same, weight the same, "
        "weight is the same, weight is the same as yesterday, weight the same as yesterday, "
        "weight as yesterday, weight like yesterday, weight hasn't changed, no change in weight, "
        "weight no change, weight is unchanged, same weight as the day before, scale same as "
        "yesterday, scale says the same, scale says the same as yesterday, scale unchanged, "
        "weight is same as yesterday, no change on the scale, no change on the scales, no change "
        "on scale, scale hasn't moved, scale hasnt moved, scales haven't moved, weight hasn't "
        "moved, weight hasnt moved, weight hasn't budged, scale hasn't budged, no change to "
        "weight, no weight change, weight stayed the same, weight's the same, weight steady, "
        "weight is steady"
    ),
    (Means.MANNERS, "", None): (
        "thanks, thank you, cheers, coach, good morning, morning, hi, hello, hey, please, mate, "
        "morning coach, hope you're well, thx, ta, hiya"
    ),
}
