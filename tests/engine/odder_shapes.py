"""More mornings told oddly: bottles counted, numbers as they are dictated, figures of something else beside.

A row as in `told_shapes`: language, units, the weight of the morning before in kg, what was typed, then
weight in kg, fullness and water in L. 3.5 L were to be drunk; `~` where it may be asked about first.
"""

# ruff: noqa: E501 - a message stays on one line

MORNINGS = r"""
en | kg | 63.4 | 63.1 and a 6, got 2 in before lunch, 1.5 more by bed | 63.1 | 6 | 3.5
en | kg | 63.4 | 63.1 / 6 / 1.5 in the morning 2 at work and 2.5 in the evening | 63.1 | 6 | 6
en | kg | 63.4 | F 6 W 63.1 H2O 2+1.5 | 63.1 | 6 | 3.5
en | kg | 63.4 | six for fullness, sixty three point one, drank four lots of 750 | 63.1 | 6 | 3
en | kg | 63.4 | 63.1kg; 6; 4 x 500ml + 1 x 750ml | 63.1 | 6 | 2.75
en | kg | 63.4 | water: 3 litres and a bit, weight 63.1, full 6 | 63.1 | 6 | 3
en | kg | 63.4 | water: a 2 litre bottle and half of another one, weight 63.1, full 6 | 63.1 | 6 | 3
en | kg | 63.4 | 63.1, f=6, w=3.25 | 63.1 | 6 | 3.25
en | kg | 63.4 | f=6 | - | 6 | -
en | kg | 63.4 | 63.1 f6.5 3L | 63.1 | 6.5 | 3
en | kg | 63.4 | 63.1.6.3 | ~63.1 | ~6 | ~3
en | kg | 63.4 | 63.1-6-3.5 | 63.1 | 6 | 3.5
en | kg | 63.4 | 63.163.5 | ~63.1 | ~6 | ~3.5
en | kg | 63.4 | 63.1 6  3..5 | 63.1 | 6 | 3.5
en | kg | 63.4 | 6 3.1 6 3.5 | ~63.1 | ~6 | ~3.5
en | kg | 63.4 | 63,1kg/6/3,5l | 63.1 | 6 | 3.5
en | kg | 63.4 | 63.I 6 3.5 | 63.1 | 6 | 3.5
en | kg | 63.4 | sixty-three one, six, three five | ~63.1 | ~6 | ~3.5
en | kg | 63.4 | weight sixty three point one fullness six point five water three point seven five | 63.1 | 6.5 | 3.75
en | kg | 63.4 | 63 dot 1, six, 3 dot 5 | 63.1 | 6 | 3.5
en | kg | 63.4 | 63.1 fullness six-ish and a half | 63.1 | ~6.5 | -
en | kg | 63.4 | weighed 63.4 pre poo 63.1 post, six, 3.5 | 63.1 | 6 | 3.5
en | kg | 63.4 | 63.6 w/ hoodie. 63.1 w/o. 6. 3.5L | 63.1 | 6 | 3.5
en | kg | 63.4 | 5:50am weigh in 63.1 / HR 47 / full 6 / 3.5L / slept 7:15 | 63.1 | 6 | 3.5
en | kg | 63.4 | 63.1, rhr 49bpm, hrv 58ms, 6, 3.5 | 63.1 | 6 | 3.5
en | kg | 63.4 | two tenths up on yesterday, full 6, water 3 | 63.6 | 6 | 3
en | kg | 63.4 | half a kilo up, 7, 3 litres | 63.9 | 7 | 3
en | kg | 63.4 | scale half a kilo down since yesterday. 5. 3 litres | 62.9 | 5 | 3
en | kg | 63.4 | weight: -0.3, fullness: 6, water: 3.5 | 63.1 | 6 | 3.5
en | kg | 63.4 | 300g lighter / 6 / 3.5 | 63.1 | 6 | 3.5
en | kg | 63.4 | fullness 6, 3.5 l, weight down 300 grams | 63.1 | 6 | 3.5
en | kg | 63.4 | like yesterday but 300 g less, 6, 3.5 l | 63.1 | 6 | 3.5
en | kg | 63.4 | 3.5L 63.1kg 6/10 | 63.1 | 6 | 3.5
en | kg | 63.4 | 6/10 3.5L 63.1kg | 63.1 | 6 | 3.5
en | kg | 63.4 | 6 out of 10, weight of 63.1 and 3500 mls | 63.1 | 6 | 3.5
en | kg | 63.4 | 63.1 six 3.5 liters two black coffees and a diet coke | 63.1 | 6 | 3.5
en | kg | 63.4 | 63.1 6 3 litres of water, 2 cups of tea | 63.1 | 6 | ~3
en | kg | 63.4 | 63.1 6 about 12 glasses | 63.1 | 6 | ~-
en | kg | 63.4 | 63.1 6 litre at breakfast, litre at work, litre in the evening | 63.1 | 6 | 3
en | kg | 63.4 | 63.1 6 litre bottle times three | 63.1 | 6 | 3
en | kg | 63.4 | 63.1 6 3 refills of a 1.2L flask | 63.1 | 6 | ~3.6
en | kg | 63.4 | 63.1 6 one point five plus one point five | 63.1 | 6 | 3
en | kg | 63.4 | 63.1 6 1500 + 1500 ml | 63.1 | 6 | 3
en | kg | 63.4 | 63.1 6 500+500+750+1000 | 63.1 | 6 | 2.75
en | kg | 63.4 | 63.1 6 3 litres, plus 500ml with my workout | 63.1 | 6 | 3.5
en | kg | 63.4 | 63.1 6 3 litres incl 500ml with my workout | 63.1 | 6 | 3
en | kg | 63.4 | had a litre, then another, then half. 63.1. full 6 | 63.1 | 6 | ~2.5
en | kg | 63.4 | 63.1 full 6, drank 1l x3 and .5l x1 | 63.1 | 6 | 3.5
en | kg | 63.4 | 6️⃣3️⃣.1️⃣ kg, 6️⃣, 3️⃣.5️⃣ L | 63.1 | 6 | 3.5
en | kg | 63.4 | ⚖️: 63.1 / 💪: 6 / 💧: 3.5 | 63.1 | 6 | 3.5
en | us | 75 | 165.4 full 7 a gallon and a quarter | 75.02 | 7 | 4.73
en | us | 75 | 165.4 / 7 / 1 gal + 1 qt | 75.02 | 7 | 4.73
en | us | 75 | 165.4, 7, 16 oz x 8 | 75.02 | 7 | 3.79
en | us | 75 | 165.4, 7, eight 16oz bottles | 75.02 | 7 | 3.79
en | us | 75 | 165.4, 7, 8 cups plus 40 oz | 75.02 | 7 | 3.08
en | us | 75 | 165.4, 7, gallon jug and then a 20oz bottle | 75.02 | 7 | 4.38
en | us | 75 | 165.4, 7, almost a full gallon jug | 75.02 | 7 | ~3.79
en | us | 75 | 165.4, 7, two 64 oz jugs | 75.02 | 7 | 3.79
en | us | 75 | 165.4, 7, h1.5gal | 75.02 | 7 | 5.68
en | us | 75 | F7 W165.4 H130 | 75.02 | 7 | 3.84
en | us | 75 | 165 and a half lbs, 7, one and a quarter gallons | 75.07 | 7 | 4.73
en | us | 75 | 165lb 6oz, 7, 60oz am 64oz pm | 75.01 | 7 | 3.67
en | us | 75 | half a pound up, full 7, 120 | 75.23 | 7 | 3.55
en | us | 75 | a pound and a half down, full 7, 120oz | 74.32 | 7 | 3.55
en | us | 75 | one sixty five point four, seven, one twenty ounces | 75.02 | 7 | 3.55
en | us | 75 | 7 full / 120 oz / 165.4 | 75.02 | 7 | 3.55
en | st | 68 | 10 st 10, 7, 4 pints and 2 glasses | 68.04 | 7 | ~-
en | st | 68 | 10 stone 10.5, full 7, 6 pints | 68.27 | 7 | 3.41
en | st | 68 | ten stone ten and a half, seven, three litres | 68.27 | 7 | 3
en | st | 68 | 10st 10lb F7 3L | 68.04 | 7 | 3
en | st | 68 | 10.10, 7, 3L | ~68.04 | 7 | 3
en | st | 68 | pound off, 7, 3 litres | 67.55 | 7 | 3
en | st | 68 | 3 pints before work, 3 after, 10st10, full 7 | 68.04 | 7 | 3.41
de | kg | 58.9 | 58,6 voll 5 drei mal zwei liter | 58.6 | 5 | 6
de | kg | 58.9 | 58,6 voll 5 sieben halbe und zwei ganze | 58.6 | 5 | ~5.5
de | kg | 58.9 | 58,6, 5, 1,5 in der früh, 1 mittags, 1 auf d'nacht | 58.6 | 5 | 3.5
de | kg | 58.9 | 58,6, 5, in der arbeit 2 liter, daheim nochmal einen | 58.6 | 5 | 3
de | kg | 58.9 | 58,6, 5, 2 liter in der arbeit und daheim nochmal 1 | 58.6 | 5 | 3
de | kg | 58.9 | 58,6 5 vier flaschen zu 0,75 und ein glas | 58.6 | 5 | ~-
de | kg | 58.9 | 58,6 5 vier 0,75er | 58.6 | 5 | 3
de | kg | 58.9 | 58,6 5 vier große gläser à 400ml und 1 liter | 58.6 | 5 | 2.6
de | kg | 58.9 | 58,6 5 eine 1,5er und zwei 0,5er | 58.6 | 5 | 2.5
de | kg | 58.9 | 58,6 5 wasser: 6x 0,5 | 58.6 | 5 | 3
de | kg | 58.9 | 58,6 5 eineinhalb liter plus eineinhalb liter | 58.6 | 5 | 3
de | kg | 58.9 | 58,6 5 2l + 1/2l + 1l | 58.6 | 5 | 3.5
de | kg | 58.9 | 58,6 5 literflasche dreimal aufgefüllt | 58.6 | 5 | 3
de | kg | 58.9 | 58,6 5 3 l wasser + 1 l davon im training | 58.6 | 5 | ~3
de | kg | 58.9 | 58,6 5 wasser 3l (davon 1l beim sport) | 58.6 | 5 | 3
de | kg | 58.9 | 58,6 5 früh nen liter mittags nen liter abends nen liter | 58.6 | 5 | 3
de | kg | 58.9 | zwei liter bis mittag und dann noch eineinhalb, fülle 5, 58,6 | 58.6 | 5 | 3.5
de | kg | 58.9 | getrunken hab ich 1,5 plus 2, fülle 5, gewicht 58,6 | 58.6 | 5 | 3.5
de | kg | 58.9 | 58,6 fülle 5 trinken vormittag 1,5l nachmittag 1l abend 0,5l | 58.6 | 5 | 3
de | kg | 58.9 | zwei zehntel runter, fülle 5, 3 liter | 58.7 | 5 | 3
de | kg | 58.9 | drei zehntel weniger als gestern, voll 5, 3 liter | 58.6 | 5 | 3
de | kg | 58.9 | halbes kilo weniger, voll 5, 3 liter | 58.4 | 5 | 3
de | kg | 58.9 | voll 5, wasser 3 l, gewicht 300 gramm runter | 58.6 | 5 | 3
de | kg | 58.9 | voll 5, wasser 3 l, gewicht plus 200 gramm | 59.1 | 5 | 3
de | kg | 58.9 | gewicht minus dreihundert gramm, voll 5, wasser 3 l | 58.6 | 5 | 3
de | kg | 58.9 | 58 Komma 6 Fülle 5 Wasser 3 Komma 5 | 58.6 | 5 | 3.5
de | kg | 58.9 | achtundfünfzig Punkt sechs Fülle fünf Wasser drei Punkt fünf | 58.6 | 5 | 3.5
de | kg | 58.9 | Gewicht achtundfünfzig sechs Fülle fünf Wasser dreieinhalb | ~58.6 | 5 | 3.5
de | kg | 58.9 | 58,6 fünfeinhalb dreieinhalb | 58.6 | 5.5 | 3.5
de | kg | 58.9 | 58,6 fülle fünfeinhalb wasser drei | 58.6 | 5.5 | 3
de | kg | 58.9 | 58,6 / 5,5 / 3 | 58.6 | 5.5 | 3
de | kg | 58.9 | 58.6 F5 W3 | 58.6 | 5 | 3
de | kg | 58.9 | F5 W3 G58,6 | 58.6 | 5 | 3
de | kg | 58.9 | F5G58,6W3 | 58.6 | 5 | 3
de | kg | 58.9 | Fü 5, Gew 58,6, Wa 3 | 58.6 | 5 | 3
de | kg | 58.9 | voll5 gewicht58,6 wasser3 | 58.6 | 5 | 3
de | kg | 58.9 | 5er fülle, 3er wasser, 58,6 | 58.6 | 5 | ~3
de | kg | 58.9 | Fülle bei 5, Waage bei 58,6, Wasser bei 3 | 58.6 | 5 | 3
de | kg | 58.9 | 58,6 vorm klo, hinterher 58,3, fülle 5, 3l | 58.3 | 5 | 3
de | kg | 58.9 | 58,9 beim ersten mal, 58,6 beim zweiten, zweites zählt, 5, 3 l | 58.6 | 5 | 3
de | kg | 58.9 | 59,4 mit jogginghose und pulli, ohne alles 58,6, fülle 5, 3 l | 58.6 | 5 | 3
de | kg | 58.9 | um 6.10 58,6, ruhepuls 47, fülle 5, 3 l bis 21 uhr | 58.6 | 5 | 3
de | kg | 58.9 | 6 uhr, 58,6, 5, 3 | 58.6 | 5 | 3
de | kg | 58.9 | puls 51 / 58,6 / 5 / 3,0 / bett 23 uhr | 58.6 | 5 | 3
de | kg | 58.9 | 3 l getrunken, 5 bei der fülle, 58,6 auf der waage | 58.6 | 5 | 3
de | kg | 58.9 | Trinken 3,0 - Fülle 5 - Gewicht 58,6 | 58.6 | 5 | 3
de | kg | 58.9 | 58.6kg,5,3l | 58.6 | 5 | 3
de | kg | 58.9 | 58,6,5,3 | 58.6 | 5 | 3
de | kg | 58.9 | 58,6;5;3 | 58.6 | 5 | 3
de | kg | 58.9 | 58,653 | ~58.6 | ~5 | ~3
de | kg | 58.9 | 586 5 3 | ~58.6 | 5 | 3
de | kg | 58.9 | 58,6 5 3O00 ml | 58.6 | 5 | 3
de | kg | 58.9 | 5B,6 5 3 | - | ~5 | ~3
de | kg | 58.9 | leer, 58,6, 3 l | 58.6 | ~- | 3
de | kg | 58.9 | so mittel bei der fülle, 58,6, 3 l | 58.6 | ~- | 3
de | kg | 58.9 | 58,6 3l und bin wieder richtig rund | 58.6 | ~- | 3
de | kg | 58.9 | 58,6 5 ein liter weniger als sonst | 58.6 | 5 | ~-
de | kg | 58.9 | 58,6 5 gleich viel wasser wie gestern plus 0,5 | 58.6 | 5 | ~-
de | kg | 58.9 | 58,6 5 3,5 minus ein glas | 58.6 | 5 | ~-
de | us | 64 | 141 lb 4 oz, voll 6, 1 gallone plus 16 unzen | 64.07 | 6 | 4.26
de | kg | 58.9 | 58,6 voll 5 3 liter, 4 wenn man den tee mitzählt | 58.6 | 5 | ~3
de | kg | 58.9 | 58,6 voll 5 3 liter oder 4 | 58.6 | 5 | ~3.5
en | kg | 66.8 | morning! scale did 66.5, feeling about a 6, water 2 big 1.5s and a half litre | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5 six and a half 3.5 | 66.5 | 6.5 | 3.5
en | kg | 66.8 | 66.5, fullness: five and a half, water: two and three quarters | 66.5 | 5.5 | 2.75
en | kg | 66.8 | 66.5, somewhere around six and a half, 3 and a bit litres | 66.5 | 6.5 | 3
en | kg | 66.8 | w 66.5 f 6 d 3.5 | 66.5 | 6 | ~3.5
en | kg | 66.8 | 66.5 f6w3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5f6w3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | kg66.5 f6 l3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | wt66.5full6h2o3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | weight66.5fullness6water3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5kg6full3.5l | 66.5 | 6 | 3.5
en | kg | 66.8 | F=6 W=66.5 H=3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | full:6/10;wt:66.5kg;h2o:3500ml | 66.5 | 6 | 3.5
en | kg | 66.8 | fullness - six. weight - sixty six and a half. water - three and a half. | 66.5 | 6 | 3.5
en | kg | 66.8 | fullness today is a 6 I'd say, weight came out at 66.5 and I got through 3.5 litres | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5 this morning down from 66.8, fullness up from 5 to 6, water 3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | a little lighter at 66.5, a little fuller at 6, 3.5 l | 66.5 | 6 | 3.5
en | kg | 66.8 | 0.3 lighter than yesterday, a 6, 3.5 l | 66.5 | 6 | 3.5
en | kg | 66.8 | up 0.2, full 6, 3.5 l | 67.0 | 6 | 3.5
en | kg | 66.8 | quarter of a kilo down, full 6, 3.5 l | 66.55 | 6 | 3.5
en | kg | 66.8 | down 3, full 6, 3.5 l | ~- | 6 | 3.5
en | kg | 66.8 | gained half a kilo, full 7, 3.5 l | 67.3 | 7 | 3.5
en | kg | 66.8 | 66.9 in shorts, 66.5 out of them, 6, 3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | 67.0 wearing a towel lol, fullness 6, 3.5 l | ~67.0 | 6 | 3.5
en | kg | 66.8 | weighed three times: 66.5, 66.6, 66.5. fullness 6. 3.5 l | ~66.5 | 6 | 3.5
en | kg | 66.8 | 66.5 at home, 66.9 at the gym. full 6. 3.5 l | ~- | 6 | 3.5
en | kg | 66.8 | 6:20am. 66.5. 6. 3.5. HR 52. | 66.5 | 6 | 3.5
en | kg | 66.8 | heart rate was 48, weight 66.5, and fullness 6; water 3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | garmin says rhr 46, sleep 7h42, 66.5, full 6, 3.5 l | 66.5 | 6 | 3.5
en | kg | 66.8 | slept 6.5, 66.5, full 6, 3.5 l | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5, 6, 3.5, temp 36.4, bp 118/72, steps 11,400 | 66.5 | 6 | 3.5
en | kg | 66.8 | 3.5 l then 66.5 kg then 6 | 66.5 | 6 | 3.5
en | kg | 66.8 | litres: 3.5 score: 6 kilos: 66.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | 3500ml, 6/10, 66500g | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5, a bit flat still, 3.5l | 66.5 | ~- | 3.5
en | kg | 66.8 | 66.5, full as a tick, 3.5l | 66.5 | ~- | 3.5
en | kg | 66.8 | 66.5 flat-ish 3.5l | 66.5 | ~- | 3.5
en | kg | 66.8 | 66.5, looking tight and full (8), 3.5l | 66.5 | 8 | 3.5
en | kg | 66.8 | 66.5, flat like 3, 3.5l | 66.5 | 3 | 3.5
en | kg | 66.8 | 66.5,6,3,5 | ~66.5 | ~6 | ~3.5
en | kg | 66.8 | 66..5 6 3.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5.6.3.5 | ~66.5 | ~6 | ~3.5
en | kg | 66.8 | 66.563.5 | ~66.5 | ~6 | ~3.5
en | kg | 66.8 | 66.5 6 3,.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | 66. 5, 6, 3.5 | ~66.5 | ~6 | ~3.5
en | kg | 66.8 | 665 / 6 / 35 | ~66.5 | ~6 | ~3.5
en | kg | 66.8 | b6.5 6 3.5 | ~- | ~6 | ~3.5
en | kg | 66.8 | 66.5 6 3.S | 66.5 | 6 | ~-
en | kg | 66.8 | 66.5 6 3.5O | 66.5 | 6 | 3.5
en | kg | 66.8 | got 750 down at breakfast, 750 at lunch, 750 mid afternoon and 750 with dinner. 66.5, 6 | 66.5 | 6 | 3
en | kg | 66.8 | 66.5 6 750ml breakfast 750ml lunch 1l gym 500ml dinner | 66.5 | 6 | 3
en | kg | 66.8 | water = 1.25 + 1.25 + 0.5, weight = 66.5, fullness = 6 | 66.5 | 6 | 3
en | kg | 66.8 | 66.5 / 6 / 2 x 1.5L + 0.5L | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5 / 6 / 2x1.5+0.5 | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5, 6, 3 of my 1 litre bottles | 66.5 | 6 | 3
en | kg | 66.8 | 66.5, 6, three and a half 1 litre bottles | 66.5 | 6 | 3.5
en | kg | 66.8 | 66.5, 6, bottle (1l) x 3 | 66.5 | 6 | 3
en | kg | 66.8 | 66.5, 6, filled my 1.2 l bottle 3 times | 66.5 | 6 | 3.6
en | kg | 66.8 | 66.5, 6, 3 litres in total: 1 morning 2 afternoon | 66.5 | 6 | 3
en | kg | 66.8 | 66.5, 6, 1 litre water 2 litres squash | 66.5 | 6 | ~3
en | kg | 66.8 | 66.5, 6, 3 litres, didn't finish the last half | 66.5 | 6 | ~3
en | kg | 66.8 | 66.5, 6, 4 litres minus half a litre I spilled | 66.5 | 6 | ~3.5
en | kg | 66.8 | 66.5, 6, 2 pints and 2 litres | 66.5 | 6 | ~3.14
en | kg | 66.8 | 66.5, 6, six pints | 66.5 | 6 | ~3.41
en | kg | 66.8 | 66.5, 6, a couple of litres | 66.5 | 6 | ~2
en | kg | 66.8 | 66.5, 6, loads of water | 66.5 | 6 | -
en | kg | 66.8 | 66.5, 6, a sip, maybe 200ml | 66.5 | 6 | ~0.2
en | kg | 66.8 | 66.5, 6, 3.5 litres and 3 coffees (about 200ml each) | 66.5 | 6 | ~3.5
en | kg | 66.8 | 66.5, 6, 2 litres at home plus whatever at work | 66.5 | 6 | ~-
en | kg | 66.8 | 66.5, 6, 1 litre by 10am, 2 by 2pm, 3.5 by bed | 66.5 | 6 | ~3.5
en | us | 59 | 129.4 // 7 // 2 half gallon jugs | 58.69 | 7 | 3.79
en | us | 59 | 129.4, 7, drank half my gallon jug | 58.69 | 7 | ~1.89
en | us | 59 | 129.4, 7, gallon + half gallon | 58.69 | 7 | 5.68
en | us | 59 | 129.4, 7, 20oz x 5 and a 12oz | 58.69 | 7 | 3.31
en | us | 59 | 129.4 7 32+32+32+16 | 58.69 | 7 | 3.31
en | us | 59 | 129.4 f7 w110 | 58.69 | 7 | 3.25
en | us | 59 | F7W110 129.4 | 58.69 | 7 | 3.25
en | us | 59 | weight 129.4 lbs. 7/10. hit 110 ounces. | 58.69 | 7 | 3.25
en | us | 59 | 129.4lb/7/110oz | 58.69 | 7 | 3.25
en | us | 59 | half lb lighter, 7, 110 | 58.77 | 7 | 3.25
en | us | 59 | down 1.2 lbs, 7, 110 oz | 58.46 | 7 | 3.25
en | us | 59 | 129 point 4, seven, one hundred ten | 58.69 | 7 | 3.25
en | us | 59 | a gallon, a seven, one twenty nine point four | 58.69 | 7 | 3.79
en | us | 59 | 58.7kg 7 3.3L | 58.7 | 7 | 3.3
en | st | 59 | 9st 3.6 / 7 / 3 | 58.79 | 7 | 3
en | st | 59 | nine three and a half, full 7, 3 litres | ~58.74 | 7 | 3
en | st | 59 | 9st3, 7, two and a half pints morning, three evening | 58.51 | 7 | 3.13
de | kg | 74.1 | moin, waage 73,8, fülle ne 7, wasser: 2 große 1,5er und ein halber liter | 73.8 | 7 | 3.5
de | kg | 74.1 | 73,8 siebeneinhalb 3,5 | 73.8 | 7.5 | 3.5
de | kg | 74.1 | 73,8 fülle sechseinhalb trinken zweidreiviertel | 73.8 | 6.5 | 2.75
de | kg | 74.1 | g73,8 f7 w3,5 | 73.8 | 7 | 3.5
de | kg | 74.1 | g73,8f7w3,5 | 73.8 | 7 | 3.5
de | kg | 74.1 | gewicht73,8fülle7wasser3,5 | 73.8 | 7 | 3.5
de | kg | 74.1 | F: 7 / G: 73,8 / T: 3,5 | 73.8 | 7 | ~3.5
de | kg | 74.1 | Fülle so bei 7 würd ich sagen, auf der Waage 73,8 und 3,5 Liter sind's geworden | 73.8 | 7 | 3.5
de | kg | 74.1 | heute 73,8 statt 74,1, fülle von 6 auf 7, 3,5 l | 73.8 | 7 | 3.5
de | kg | 74.1 | bissl leichter mit 73,8, bissl voller mit 7, 3,5 l | 73.8 | 7 | 3.5
de | kg | 74.1 | 0,3 leichter als gestern, ne 7, 3,5 l | 73.8 | 7 | 3.5
de | kg | 74.1 | 0,2 rauf, fülle 7, 3,5 l | 74.3 | 7 | 3.5
de | kg | 74.1 | viertel kilo runter, fülle 7, 3,5 l | 73.85 | 7 | 3.5
de | kg | 74.1 | halbes kilo zugenommen, fülle 7, 3,5 l | 74.6 | 7 | 3.5
de | kg | 74.1 | zwei zehntel mehr, fülle 7, 3,5 l | 74.3 | 7 | 3.5
de | kg | 74.1 | fünf zehntel leichter, fülle 7, 3,5 l | 73.6 | 7 | 3.5
de | kg | 74.1 | 74,3 in shorts, 73,8 ohne, 7, 3,5 | 73.8 | 7 | 3.5
de | kg | 74.1 | 74,5 im bademantel, fülle 7, 3,5 l | ~74.5 | 7 | 3.5
de | kg | 74.1 | dreimal gewogen: 73,8 / 73,9 / 73,8. fülle 7. 3,5 l | ~73.8 | 7 | 3.5
de | kg | 74.1 | 6:20 uhr. 73,8. 7. 3,5. puls 52. | 73.8 | 7 | 3.5
de | kg | 74.1 | ruhepuls war 48, gewicht 73,8, und fülle 7; wasser 3,5 | 73.8 | 7 | 3.5
de | kg | 74.1 | schlaf 6,5, 73,8, fülle 7, 3,5 l | 73.8 | 7 | 3.5
de | kg | 74.1 | 73,8, 7, 3,5, temp 36,4, rr 118/72, schritte 11.400 | 73.8 | 7 | 3.5
de | kg | 74.1 | 3500ml, 7/10, 73800g | 73.8 | 7 | 3.5
de | kg | 74.1 | liter: 3,5 fülle: 7 kilo: 73,8 | 73.8 | 7 | 3.5
de | kg | 74.1 | 73,8, noch etwas flach, 3,5l | 73.8 | ~- | 3.5
de | kg | 74.1 | 73,8, flach so 3, 3,5l | 73.8 | 3 | 3.5
de | kg | 74.1 | 73,8, platt wie ne 2, 3,5 l | 73.8 | 2 | 3.5
de | kg | 74.1 | 73.8,7,3.5 | 73.8 | 7 | 3.5
de | kg | 74.1 | 73,8.7.3,5 | 73.8 | 7 | 3.5
de | kg | 74.1 | 73,,8 7 3,,5 | 73.8 | 7 | 3.5
de | kg | 74.1 | 738 7 35 | ~73.8 | ~7 | ~3.5
de | kg | 74.1 | früh 750 ml, mittags 750, nachmittags 750 und abends 750, 73,8, 7 | 73.8 | 7 | 3
de | kg | 74.1 | 73,8 7 750ml frühstück 750ml mittag 1l gym 500ml abend | 73.8 | 7 | 3
de | kg | 74.1 | wasser = 1,25 + 1,25 + 0,5, gewicht = 73,8, fülle = 7 | 73.8 | 7 | 3
de | kg | 74.1 | 73,8 / 7 / 2 x 1,5L + 0,5L | 73.8 | 7 | 3.5
de | kg | 74.1 | 73,8 / 7 / 2x1,5+0,5 | 73.8 | 7 | 3.5
de | kg | 74.1 | 73,8, 7, drei meiner 1-liter-flaschen | 73.8 | 7 | 3
de | kg | 74.1 | 73,8, 7, dreieinhalb literflaschen | 73.8 | 7 | 3.5
de | kg | 74.1 | 73,8, 7, flasche (1l) x 3 | 73.8 | 7 | 3
de | kg | 74.1 | 73,8, 7, meine 1,2er flasche 3x voll gemacht | 73.8 | 7 | 3.6
de | kg | 74.1 | 73,8, 7, insgesamt 3 liter: 1 früh 2 nachmittags | 73.8 | 7 | 3
de | kg | 74.1 | 73,8, 7, 1 liter wasser 2 liter saftschorle | 73.8 | 7 | ~3
de | kg | 74.1 | 73,8, 7, 4 liter minus halber liter verschüttet | 73.8 | 7 | ~3.5
de | kg | 74.1 | 73,8, 7, n paar liter | 73.8 | 7 | -
de | kg | 74.1 | 73,8, 7, zwei liter daheim plus was im büro | 73.8 | 7 | ~-
de | kg | 74.1 | 73,8, 7, bis 10 uhr 1 liter, bis 14 uhr 2, bis abends 3,5 | 73.8 | 7 | ~3.5
de | kg | 74.1 | 73,8 7 zwei halbe und ein ganzer liter | 73.8 | 7 | 2
de | kg | 74.1 | 73,8 7 vier viertel und zwei liter | 73.8 | 7 | ~3
de | kg | 74.1 | 73,8 7 eine kanne tee und zwei liter wasser | 73.8 | 7 | ~-
de | kg | 74.1 | 73,8 7 2 liter plus 3 gläser | 73.8 | 7 | ~-
de | kg | 74.1 | dreiundsiebzig acht fülle sieben wasser dreieinhalb | ~73.8 | 7 | 3.5
de | kg | 74.1 | 7️⃣3️⃣,8️⃣ / 7️⃣ / 3️⃣,5️⃣ | 73.8 | 7 | 3.5
en | kg | 72 | hey coach 71.6 today, bit fuller call it a 7, water was 1 before cardio then 2 through the day and half a litre late on | 71.6 | 7 | 3.5
en | kg | 72 | 71.6, 7, water 2 then 1.5 | 71.6 | 7 | 3.5
en | kg | 72 | 71.6 7 w: 2 + 2 | 71.6 | 7 | 4
en | kg | 72 | 71.6 7 2l&1.5l | 71.6 | 7 | 3.5
en | kg | 72 | 71.6 7 2l/1.5l | 71.6 | 7 | ~3.5
en | kg | 72 | 71.6 7 1l 1l 1.5l | 71.6 | 7 | ~3.5
en | kg | 72 | 71.6, 7, one litre in the a.m. and two and a half in the p.m. | 71.6 | 7 | 3.5
en | kg | 72 | 71.6, 7, six glasses at half a litre each | 71.6 | 7 | 3
en | kg | 72 | 71.6, 7, 6 half litre glasses | 71.6 | 7 | 3
en | kg | 72 | 71.6, 7, 6 x half litre | 71.6 | 7 | 3
en | kg | 72 | 71.6, 7, 6 halves | 71.6 | 7 | ~3
en | kg | 72 | 71.6, 7, seven 500s | 71.6 | 7 | 3.5
en | kg | 72 | 71.6, 7, 4 x 0.75 + 0.5 | 71.6 | 7 | 3.5
en | kg | 72 | 71.6, 7, 0.75 x 4 | 71.6 | 7 | 3
en | kg | 72 | 71.6, 7, 750 x 4 | 71.6 | 7 | 3
en | kg | 72 | 71.6, 7, 750ml times 4 | 71.6 | 7 | 3
en | kg | 72 | 71.6, 7, 4 times 750 ml bottle | 71.6 | 7 | 3
en | kg | 72 | 71.6, 7, two and a half bottles of 1.5 litres | 71.6 | 7 | 3.75
en | kg | 72 | 71.6, 7, 2.5 bottles (1.5l) | 71.6 | 7 | 3.75
en | kg | 72 | 71.6, 7, about three and a half bottles | 71.6 | 7 | ~-
en | kg | 72 | 71.6, 7, one bottle and two glasses | 71.6 | 7 | ~-
en | kg | 72 | 71.6, 7, 3 bottles | 71.6 | 7 | ~-
en | kg | 72 | 71.6, 7, 3 litres and one glass | 71.6 | 7 | ~-
en | kg | 72 | 71.6, 7, 2 litres water, a litre of tea, 2 coffees | 71.6 | 7 | ~3
en | kg | 72 | 71.6, 7, 3 litres of water but also a 330ml coke zero | 71.6 | 7 | ~3
en | kg | 72 | 71.6, 7, 3 litres, same as the day before | 71.6 | 7 | 3
en | kg | 72 | 71.6, 7, 3 of 3.5 litres, rest at midnight | 71.6 | 7 | ~3
en | kg | 72 | 71.6, 7, two thirds of a 3 litre jug | 71.6 | 7 | ~2
en | kg | 72 | 71.6, 7, 3 l today so far, 4 l yesterday | 71.6 | 7 | 4
en | kg | 72 | yesterday 4 litres, today already 1 litre, 71.6, 7 | 71.6 | 7 | 4
en | kg | 72 | f 7, 71.6, 4l | 71.6 | 7 | 4
en | kg | 72 | f.7 w.71.6 h.4 | ~71.6 | ~7 | ~4
en | kg | 72 | f-7 w-71.6 h2o-4 | 71.6 | 7 | 4
en | kg | 72 | full 7 71.6 4 | 71.6 | 7 | 4
en | kg | 72 | 71.6 full 7 4 | 71.6 | 7 | 4
en | kg | 72 | 71.6 7 full 4 | 71.6 | ~7 | ~4
en | kg | 72 | 7/10 71.6 4 | 71.6 | 7 | 4
en | kg | 72 | fullness 7/10, 4/4 litres, 71.6 | 71.6 | 7 | 4
en | kg | 72 | 71.6 kilograms; seven of ten; four litres | 71.6 | 7 | 4
en | kg | 72 | seventy one point six kilos, seven, four point two litres | 71.6 | 7 | 4.2
en | kg | 72 | seventy one and a half, seven and a half, four | 71.5 | 7.5 | 4
en | kg | 72 | seventy one six, seven, four | 71.6 | 7 | 4
en | kg | 72 | 71 6, 7, 4 | ~71.6 | ~7 | ~4
en | kg | 72 | 71:6, 7, 4 | ~71.6 | ~7 | ~4
en | kg | 72 | 71_6 7 4 | ~71.6 | ~7 | ~4
en | kg | 72 | 71.6kg 7 4L. HR 55 | 71.6 | 7 | 4
en | kg | 72 | hr55 71.6 7 4 | 71.6 | 7 | 4
en | kg | 72 | 55bpm 71.6kg 7/10 4l 8h | 71.6 | 7 | 4
en | kg | 72 | 71.6@06:15, 7, 4l@bed | 71.6 | 7 | 4
en | kg | 72 | woke 5, weighed 6, 71.6, fullness 7, 4 l | 71.6 | 7 | 4
en | kg | 72 | 6.15am 71.6 7 4 | 71.6 | 7 | 4
en | kg | 72 | 0.4 less, 7, 4l | 71.6 | 7 | 4
en | kg | 72 | four tenths less than yesterday, 7, 4l | 71.6 | 7 | 4
en | kg | 72 | lost point four, full 7, 4l | 71.6 | 7 | 4
en | kg | 72 | half a kilo off, full 7, 4l | 71.5 | 7 | 4
en | kg | 72 | a kilo up, full 8, 4l | 73 | 8 | 4
en | kg | 72 | 7 / four litres / weight down 400 grams | 71.6 | 7 | 4
en | kg | 72 | 71.6, fullness one up from yesterday, 4l | 71.6 | ~- | 4
en | kg | 72 | 71.6, fullness +1, 4l | 71.6 | ~- | 4
en | kg | 72 | 71.6, 7, water +0.5 on target | 71.6 | 7 | ~4
en | kg | 72 | 71.6, pumped to the max, 4l | 71.6 | ~- | 4
en | kg | 72 | 71.6, flat, more like a 3 than a 4, 4l | 71.6 | ~3 | 4
en | kg | 72 | 71.6, still full, 7ish, 4l | 71.6 | 7 | 4
en | us | 82 | 180.2, 7, 1.5 gal | 81.74 | 7 | 5.68
en | us | 82 | 180.2 7 40+40+50oz | 81.74 | 7 | 3.84
en | us | 82 | 180.2 7 3 40 oz bottles and a 12 oz can | 81.74 | 7 | 3.90
en | us | 82 | 180.2, 7, 5 liters | 81.74 | 7 | 5
en | us | 82 | 180.2, 7, two 2-liter bottles | 81.74 | 7 | 4
en | us | 82 | 180 lbs 4 ozs / 7 / 140 oz | 81.76 | 7 | 4.14
en | us | 82 | f7 w180.2 h140 | 81.74 | 7 | 4.14
en | us | 82 | three quarter gallon, 180.2, full 7 | 81.74 | 7 | 2.84
en | st | 82 | 12 12 / 7 / 4 | ~81.65 | ~7 | ~4
en | st | 82 | 12st12 7 4 | 81.65 | 7 | 4
en | st | 82 | twelve stone twelve, seven, four litres | 81.65 | 7 | 4
en | st | 82 | 12st 12 f7, 7 pints | 81.65 | 7 | 3.98
de | kg | 66.2 | servus, 65,9 heut, fülle a 6, trunken hab i 1 liter in da früh und zwoa am nachmittag | 65.9 | 6 | 3
de | kg | 66.2 | 65,9, 6, wasser 2 dann 1,5 | 65.9 | 6 | 3.5
de | kg | 66.2 | 65,9 6 2l&1,5l | 65.9 | 6 | 3.5
de | kg | 66.2 | 65,9, 6, sechs gläser zu je einem halben liter | 65.9 | 6 | 3
de | kg | 66.2 | 65,9, 6, 6 halbliter gläser | 65.9 | 6 | 3
de | kg | 66.2 | 65,9, 6, 6 mal halber liter | 65.9 | 6 | 3
de | kg | 66.2 | 65,9, 6, sieben 0,5er | 65.9 | 6 | 3.5
de | kg | 66.2 | 65,9, 6, 4 x 0,75 + 0,5 | 65.9 | 6 | 3.5
de | kg | 66.2 | 65,9, 6, 0,75 x 4 | 65.9 | 6 | 3
de | kg | 66.2 | 65,9, 6, 750 mal 4 | 65.9 | 6 | 3
de | kg | 66.2 | 65,9, 6, zweieinhalb flaschen à 1,5 liter | 65.9 | 6 | 3.75
de | kg | 66.2 | 65,9, 6, dreieinhalb flaschen | 65.9 | 6 | ~-
de | kg | 66.2 | 65,9, 6, eine flasche und zwei gläser | 65.9 | 6 | ~-
de | kg | 66.2 | 65,9, 6, 3 liter und ein glas | 65.9 | 6 | ~-
de | kg | 66.2 | 65,9, 6, 2 liter wasser, ein liter tee, 2 kaffee | 65.9 | 6 | ~3
de | kg | 66.2 | 65,9, 6, 3 liter wie gestern auch | 65.9 | 6 | 3
de | kg | 66.2 | 65,9, 6, zwei drittel von der 3-liter-kanne | 65.9 | 6 | ~2
de | kg | 66.2 | F6 65,9 3L | 65.9 | 6 | 3
de | kg | 66.2 | f-6 g-65,9 w-3 | 65.9 | 6 | 3
de | kg | 66.2 | Fülle6,Gewicht65,9,Wasser3 | 65.9 | 6 | 3
de | kg | 66.2 | Fülle 6 Gew. 65,9 Wa. 3 | 65.9 | 6 | 3
de | kg | 66.2 | fülle 6/10 wasser 3/3,5 gewicht 65,9 | 65.9 | 6 | 3
de | kg | 66.2 | die 6 bei fülle, 65,9 kilo, 3 liter | 65.9 | 6 | 3
de | kg | 66.2 | fünfundsechzig neun, sechs, drei | 65.9 | 6 | 3
de | kg | 66.2 | fünfundsechzig Komma neun Kilo, sechs, drei Komma fünf Liter | 65.9 | 6 | 3.5
de | kg | 66.2 | 65:9, 6, 3 | ~65.9 | ~6 | ~3
de | kg | 66.2 | hf55 65,9 6 3 | 65.9 | 6 | 3
de | kg | 66.2 | 6.15 uhr 65,9 6 3 | 65.9 | 6 | 3
de | kg | 66.2 | wach um 5, gewogen um 6: 65,9, fülle 6, 3 l | 65.9 | 6 | 3
de | kg | 66.2 | drei zehntel weniger, 6, 3 l | 65.9 | 6 | 3
de | kg | 66.2 | null komma drei runter, fülle 6, 3 l | 65.9 | 6 | 3
de | kg | 66.2 | ein kilo rauf, fülle 8, 3 l | 67.2 | 8 | 3
de | kg | 66.2 | 6 / drei liter / gewicht minus 300 gramm | 65.9 | 6 | 3
de | kg | 66.2 | 65,9, fülle eins mehr als gestern, 3l | 65.9 | ~- | 3
de | kg | 66.2 | 65,9, wasser 0,5 über ziel, fülle 6 | 65.9 | 6 | ~4
de | kg | 66.2 | 65,9, bisschen platt, eher 4, 3l | 65.9 | 4 | 3
de | kg | 66.2 | 65,9 voll bis oben hin, 3l | 65.9 | ~- | 3
de | kg | 66.2 | 66,8 in klamotten minus 0,9 macht 65,9, fülle 6, 3 l | 65.9 | 6 | 3
de | kg | 66.2 | 65,9 ohne, mit schlafzeug 66,3, fülle 6, 3l | 65.9 | 6 | 3
de | kg | 66.2 | zweite messung 65,9, erste war 66,4, fülle 6, 3l | 65.9 | 6 | 3
de | kg | 66.2 | 65,9 und nach dem klo 65,6. fülle 6. 3l | 65.6 | 6 | 3
en | kg | 79.4 | ok so: 79.1. id call it six. water... two litres at the office, then one more in the gym, half at night | 79.1 | 6 | 3.5
en | kg | 79.4 | W79.1/F6/D3.5 | 79.1 | 6 | ~3.5
en | kg | 79.4 | 79.1 f=6.5 w=3 | 79.1 | 6.5 | 3
en | kg | 79.4 | one and a half litres twice, 79.1, six | 79.1 | 6 | 3
en | kg | 79.4 | a litre and a quarter, then another litre. 79.1 6 | 79.1 | 6 | 2.25
en | kg | 79.4 | 79.1 6 1.5 and 1.5 | 79.1 | 6 | ~3
en | kg | 79.4 | 79.1 6 2l & a 500ml bottle | 79.1 | 6 | 2.5
en | kg | 79.4 | 79.1 6 3x 1l bottles, 1x 500ml | 79.1 | 6 | 3.5
en | kg | 79.4 | 79.1 6 3l-ish | 79.1 | 6 | 3
en | kg | 79.4 | 79.1 6 just over three and a half litres | 79.1 | 6 | 3.5
en | kg | 79.4 | 79.1 6 4 cans of sparkling water 330ml each and 2 litres still | 79.1 | 6 | ~3.32
en | kg | 79.4 | 79.1, six, 500 x 7 | 79.1 | 6 | 3.5
en | kg | 79.4 | 79.1, six, water 3, coffee 2, tea 1 | 79.1 | 6 | 3
en | kg | 79.4 | weight 79.1, carbs 220, fullness 6, water 3.5, cardio 30 | 79.1 | 6 | 3.5
en | kg | 79.4 | 79.1 7h sleep 6 fullness 3.5 water 51 hr | 79.1 | 6 | 3.5
en | kg | 79.4 | sleep 6/10 fullness 6/10 79.1 3.5l | 79.1 | 6 | 3.5
en | kg | 79.4 | bw 79.1kg, f 6, h2o 3.5l, bp 120/78, bpm 50 | 79.1 | 6 | 3.5
en | kg | 79.4 | 6am weigh 79.1. 6/10 on the fullness. 3.5. | 79.1 | 6 | 3.5
en | kg | 79.4 | at 6 I was 79.1, fullness 6, 3.5 l | 79.1 | 6 | 3.5
en | kg | 79.4 | 79.4 again, 6, 3.5 | 79.4 | 6 | 3.5
en | kg | 79.4 | no change, 6, 3.5 | ~79.4 | 6 | 3.5
en | kg | 79.4 | 79.1 in pants, 79.0 without, 6, 3.5 | 79.0 | 6 | 3.5
en | kg | 79.4 | 79.7 - that was with my phone in my pocket. 79.4 without. 6. 3.5 | 79.4 | 6 | 3.5
en | kg | 79.4 | 79.I 6 3.S | 79.1 | 6 | ~-
en | kg | 79.4 | 79.1 6 3.5l. knees 3/10 pain | 79.1 | 6 | 3.5
en | kg | 79.4 | 79 point one. six point five. three point five. | 79.1 | 6.5 | 3.5
en | kg | 79.4 | minus point three, 6, 3.5 litres | 79.1 | 6 | 3.5
en | kg | 79.4 | up by a pound, 6, 3.5 litres | 79.85 | 6 | 3.5
en | us | 70 | 154.2. seven. A gallon and two 16oz bottles. | 69.94 | 7 | 4.73
en | us | 70 | 154.2, 7, 3/4 gal + 32oz | 69.94 | 7 | 3.79
en | us | 70 | 154.2 7 24oz shaker x 5 | 69.94 | 7 | 3.55
en | us | 70 | f7 154.2 1gal | 69.94 | 7 | 3.79
en | us | 70 | two pounds down, fullness 6, 120 oz | 69.09 | 6 | 3.55
en | us | 70 | 154 lb 3 oz, 7, 64oz before noon, 60oz after | 69.94 | 7 | 3.67
en | st | 76 | eleven thirteen, seven, 3 litres | ~75.75 | 7 | 3
en | st | 76 | 11st 13.5lb, 7, a pint x 6 | 75.98 | 7 | 3.41
en | st | 76 | 11 st 13 lbs w/ clothes, 11 st 12 without, 7, 3l | 75.30 | 7 | 3
de | kg | 55.3 | so: 55,0. würd sagen 6. wasser: zwei liter im büro, dann noch einer im gym, abends ein halber | 55.0 | 6 | 3.5
de | kg | 55.3 | 55,0 f=6,5 w=3 | 55.0 | 6.5 | 3
de | kg | 55.3 | fülle von 5 auf 6, gewicht von 55,3 auf 55,0, 3,5 l | 55.0 | 6 | 3.5
de | kg | 55.3 | zweimal eineinhalb liter, 55,0, sechs | 55.0 | 6 | 3
de | kg | 55.3 | eineinviertel liter und dann noch einen liter. 55,0 6 | 55.0 | 6 | ~2.25
de | kg | 55.3 | 55,0 6 1,5 und 1,5 | 55.0 | 6 | ~3
de | kg | 55.3 | 55,0 6 2l und ne 0,5er | 55.0 | 6 | 2.5
de | kg | 55.3 | 55,0 6 3x 1l flaschen, 1x 500ml | 55.0 | 6 | 3.5
de | kg | 55.3 | 55,0 6 die üblichen 3l plus 500 ml extra | 55.0 | 6 | 3.5
de | kg | 55.3 | 55,0 6 gut dreieinhalb liter | 55.0 | 6 | 3.5
de | kg | 55.3 | 55,0, 6, 7x500 | 55.0 | 6 | 3.5
de | kg | 55.3 | 55,0, 6, wasser 3, kaffee 2, tee 1 | 55.0 | 6 | 3
de | kg | 55.3 | gewicht 55,0, kh 220, fülle 6, wasser 3,5, cardio 30 | 55.0 | 6 | 3.5
de | kg | 55.3 | schlaf 6/10 fülle 6/10 55,0 3,5l | 55.0 | 6 | 3.5
de | kg | 55.3 | um 6 hatte ich 55,0, fülle 6, 3,5 l | 55.0 | 6 | 3.5
de | kg | 55.3 | wieder 55,3, 6, 3,5 | 55.3 | 6 | 3.5
de | kg | 55.3 | 55,6 mit handy in der tasche, 55,3 ohne, 6, 3,5 | 55.3 | 6 | 3.5
de | kg | 55.3 | 55 Punkt null. sechs Punkt fünf. drei Punkt fünf. | 55.0 | 6.5 | 3.5
de | kg | 55.3 | minus null komma drei, fülle 6, 3,5 liter | 55.0 | 6 | 3.5
de | kg | 55.3 | hab 300 gramm verloren, fülle 6, 3,5 liter | 55.0 | 6 | 3.5
de | kg | 55.3 | 55,0kg;6/10;3,5L | 55.0 | 6 | 3.5
en | kg | 93.9 | 93.6kg;8/10;7L | 93.6 | 8 | 7
de | kg | 55.3 | 300g hoch, fülle 7, 3,5 liter | 55.6 | 7 | 3.5
de | kg | 55.3 | Fülle: sechs bis sieben, Gewicht 55,0, Wasser dreieinhalb | 55.0 | 6.5 | 3.5
de | kg | 55.3 | 55,0 6 halber liter vor dem sport liter dabei und 2 übern tag | 55.0 | 6 | 3.5
de | kg | 55.3 | 55,0 6 liter früh liter mittag eineinhalb abends | 55.0 | 6 | 3.5
de | kg | 55.3 | 55,0 6 wasser waren drei große flaschen und zwei kleine | 55.0 | 6 | ~-
de | kg | 55.3 | 55,0 6 vier gläser früh, vier mittags, vier abends | 55.0 | 6 | ~-
de | kg | 55.3 | 55,0 6 4x glas 0,4 und 1l | 55.0 | 6 | 2.6
de | kg | 55.3 | 55,0 6 3l davon halber liter tee | 55.0 | 6 | ~3
de | kg | 55.3 | Wasser 3 L, F6, 55,0 kg, Puls 50, RR 110/70 | 55.0 | 6 | 3
"""
