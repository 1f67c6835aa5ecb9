"""More mornings as people type them: slips of the thumb, two weighings, places left out, other figures beside.

A row: language, units (kg and litres, or `us`), the weight of the morning before in kg, what was typed,
then weight in kg, fullness and water in L as in `morning_shapes`. 3.5 L were to be drunk.
"""

# ruff: noqa: E501 - a message stays on one line

MORNINGS = r"""
en | kg | 64.2 | up at half six, 63.9 on the scale, full 6, got 4 litres down | 63.9 | 6 | 4
en | kg | 64.2 | 63.9 6 3 and a half | 63.9 | 6 | 3.5
en | kg | 64.2 | scale says sixty three point eight, fullness five, water three point five | 63.8 | 5 | 3.5
en | kg | 58.7 | 58.4\n6\n4 | 58.4 | 6 | 4
en | kg | 58.7 | 58.4 - - | 58.4 | - | -
en | kg | 58.7 | 58,,4 5 3,,5 | 58.4 | 5 | 3.5
en | kg | 71 | 7O.6 / 6 / 4 | 70.6 | 6 | 4
en | kg | 71 | same weight as yesterday, fullness 5, 4L water | 71.0 | 5 | 4
en | kg | 71 | down 400g, fullness 6, water 3.5 | 70.6 | 6 | 3.5
en | kg | 71 | half a kilo up on yesterday, full 7, 4 litres | 71.5 | 7 | 4
en | kg | 66.6 | 66.1 after the loo (66.4 before), 6/10, 3.5l | 66.1 | 6 | 3.5
en | kg | 66.6 | 66.9 with clothes on, 66.3 without. 7. 4 litres | 66.3 | 7 | 4
en | kg | 66.6 | weighed 66.4 then again 66.2, take the 2nd. fullness 5 water 4 | 66.2 | 5 | 4
en | kg | 60.3 | 60.1, no wait 60.7. 6. 4L | 60.7 | 6 | 4
en | kg | 60.3 | 60.1 / full 6, nah more a 7 / 4 | 60.1 | 7 | 4
en | kg | 60.3 | 60.0 5 x | 60.0 | 5 | -
en | kg | 60.3 | 60.0 x 4 | 60.0 | - | 4
en | kg | 60.3 | 60.0, ?, 4 litres | 60.0 | - | 4
en | kg | 60.3 | no scale (hotel). fullness 6. water 3l | - | 6 | 3
en | kg | 60.3 | 59.8kg, didnt count water, 5 | 59.8 | 5 | -
en | kg | 60.3 | 59.8 and 4L, no idea about fullness | 59.8 | - | 4
en | kg | 83.4 | 83.1 fullness six out of ten, drank 5L, slept 7h, 12k steps, 310 carbs | 83.1 | 6 | 5
en | kg | 83.4 | hr 52, bp 118/76, weight 83.0, full 6, water 5 | 83.0 | 6 | 5
en | kg | 83.4 | waist 78.5cm weight 82.9 fullness 7 water 4.5 | 82.9 | 7 | 4.5
en | kg | 83.4 | bed 22:30 up 6:15. 83.2. 6. 5. | 83.2 | 6 | 5
en | kg | 83.4 | 82.8 (was 83.4), fullness 6 (was 5), water 5 (was 4) | 82.8 | 6 | 5
en | kg | 83.4 | 82.8kg F6 W5 | 82.8 | 6 | 5
en | kg | 83.4 | W 82.8 F 6 H2O 5 | 82.8 | 6 | 5
en | kg | 83.4 | 82.8kg🏋️ 6️⃣ 5l💧 | 82.8 | 6 | 5
en | kg | 83.4 | weight=82.8; fullness=6/10; water=5,000ml | 82.8 | 6 | 5
en | kg | 59 | water 2.5l so far yesterday total was 4. weight 58.7. fullness 5 | 58.7 | 5 | 4
en | us | 59 | 130 lbs even, full 6, 120 oz | 58.97 | 6 | 3.55
en | us | 59 | 129.6 6 128oz | 58.79 | 6 | 3.79
en | us | 59 | 129 and a half, about a 6, a gallon of water | 58.74 | 6 | 3.79
en | us | 59 | a pound lighter than yesterday, 7, gallon | 58.55 | 7 | 3.79
en | us | 59 | 129.8lb fullness 5 drank 7 pints | 58.88 | 5 | 3.31
en | kg | 59 | 9 st 4, fullness 6, 6 pints of water | 58.97 | 6 | 3.41
en | kg | 59 | 9st 3.5lb full 5 water 3 litres | 58.74 | 5 | 3
en | kg | 75 | seventy four nine, seven, four and a half litres | 74.9 | 7 | 4.5
en | kg | 75 | 74.9 fullness: 6-7 water: 4 | 74.9 | 6.5 | 4
en | kg | 75 | 74.9 fullness between 5 and 6 water 4ish | 74.9 | 5.5 | 4
en | kg | 75 | pretty flat. 74.5. 4L | 74.5 | ~- | 4
en | kg | 75 | 74.5kg, look great and round today, 4L | 74.5 | ~- | 4
en | kg | 75 | 74.5 5 3 bottles of 1.5l | 74.5 | 5 | 4.5
en | kg | 75 | 74.5, 6, 4 x 1L bottles | 74.5 | 6 | 4
en | kg | 75 | 74.5, 6, about a litre less water than yesterday | 74.5 | 6 | ~2.5
en | kg | 75 | 74.5, fullness same, water same | 74.5 | - | ~3.5
en | kg | 75 | 74.5 6 4 - legs day done, 5 sets of 12 | 74.5 | 6 | 4
en | kg | 75 | its 74.5 today and the fullness i would put at 6, as for water i managed 4 litres | 74.5 | 6 | 4
en | kg | 75 | 6 fullness, 4 water, 74.5 weight | 74.5 | 6 | 4
en | kg | 75 | 4 litres of water and a fullness of 6 at 74.5 | 74.5 | 6 | 4
en | kg | 75 | weight 74 point 5 fullness 6 water 4 litres | 74.5 | 6 | 4
en | kg | 75 | weigt 74.5 fulness 6 watr 4 | 74.5 | 6 | 4
en | kg | 75 | 74.5kgs 6outta10 4ltrs | 74.5 | 6 | 4
en | kg | 75 | Weight\n74.5\nFullness\n6\nWater\n4 | 74.5 | 6 | 4
en | kg | 75 | 1) 74.5\n2) 6\n3) 4 | 74.5 | 6 | 4
en | kg | 75 | day 3 of load: 74.5, 6, 4 | 74.5 | 6 | 4
en | kg | 75 | woke at 5.45am, 74.5, 6, 4L | 74.5 | 6 | 4
en | kg | 75 | morning coach. scales at 74.5, I'm a solid 6. just over 4 litres yesterday | 74.5 | 6 | 4
en | kg | 75 | fullness up one to 6, weight down to 74.5, water still 4 | 74.5 | 6 | 4
de | kg | 62.4 | 62,1 6 4 | 62.1 | 6 | 4
de | kg | 62.4 | 62,1kg, voll 6, wasser 4l, schlaf 7h, puls 51 | 62.1 | 6 | 4
de | kg | 62.4 | halb sieben aufgestanden, 62,1, voll 6, 4 liter | 62.1 | 6 | 4
de | kg | 62.4 | zweiundsechzig komma eins, voll fünf, vier liter | 62.1 | 5 | 4
de | kg | 62.4 | zwoaradsechzg kommt auf 62,2, füühl mi 6, 4 Liter | 62.2 | 6 | 4
de | kg | 62.4 | 62,1 / - / 4 | 62.1 | - | 4
de | kg | 62.4 | 62,1 - voll: k.A. - Wasser: 4 | 62.1 | - | 4
de | kg | 62.4 | keine Waage, voll 5, getrunken 3,5 | - | 5 | 3.5
de | kg | 62.4 | 62,1, sorry 61,2, voll 6, 4l | 61.2 | 6 | 4
de | kg | 62.4 | voll 6 ne 7, 62,1, 4 liter | 62.1 | 7 | 4
de | kg | 62.4 | 62,8 angezogen, 62,1 nackt, voll 6, 4 l | 62.1 | 6 | 4
de | kg | 62.4 | erst 62,6, nach dem klo 62,1. voll 6. wasser 4 | 62.1 | 6 | 4
de | kg | 62.4 | 300g weniger als gestern, voll 6, 4 Liter | 62.1 | 6 | 4
de | kg | 62.4 | gewicht wie gestern, voll 6, wasser 4 | 62.4 | 6 | 4
de | kg | 62.4 | Gewicht gleich, Fülle 5, 3 einhalb Liter | 62.4 | 5 | 3.5
de | kg | 62.4 | n halbes kilo rauf, voll 7, 4 liter | 62.9 | 7 | 4
de | kg | 62.4 | 62,1 voll 6 knapp 4 Liter | 62.1 | 6 | 4
de | kg | 62.4 | 62,1, 6 von 10, gut 3 liter | 62.1 | 6 | 3
de | kg | 62.4 | 62,1, 6, drei Flaschen à 1,5 l | 62.1 | 6 | 4.5
de | kg | 62.4 | 62,1, 6, 3x1,5l | 62.1 | 6 | 4.5
de | kg | 62.4 | 62,1, 6, dreieinhalb Liter | 62.1 | 6 | 3.5
de | kg | 62.4 | 62,1 6 anderthalb Liter | 62.1 | 6 | 1.5
de | kg | 62.4 | 62,1 6 2 Maß wasser und noch 1 Liter | 62.1 | 6 | 3
de | kg | 62.4 | 62,1 voll 6 8 Halbe wasser | 62.1 | 6 | 4
de | kg | 62.4 | 62,1 voll 6, n 5l kanister fast leer gemacht | 62.1 | 6 | ~5
de | kg | 62.4 | 62,1, ziemlich flach, 4 l | 62.1 | ~- | 4
de | kg | 62.4 | 62,1, schön rund, 4 l | 62.1 | ~- | 4
de | kg | 62.4 | 62,1, leer, 4 l | 62.1 | ~- | 4
de | kg | 62.4 | Gewicht 62,1\nVoll 6\nWasser 4 | 62.1 | 6 | 4
de | kg | 62.4 | Gew.: 62,1 kg; Füllegrad: 6; Trinkmenge: 4,0 l | 62.1 | 6 | 4
de | kg | 62.4 | G 62,1 V 6 W 4 | 62.1 | 6 | 4
de | kg | 62.4 | 62.1 6 4 und 280 kh, 9000 schritte | 62.1 | 6 | 4
de | kg | 62.4 | Heute 62,1. Voll würd ich sagen 6. Getrunken hab ich 4 Liter. | 62.1 | 6 | 4
de | kg | 62.4 | 4 liter getrunken, voll bin ich 6, waage sagt 62,1 | 62.1 | 6 | 4
de | kg | 62.4 | 62,l 6 4 | 62.1 | 6 | 4
de | kg | 62.4 | 62,,1 6 4 | 62.1 | 6 | 4
de | kg | 62.4 | 62 Komma 1, 6, 4 Liter | 62.1 | 6 | 4
de | kg | 62.4 | 62.100 g, voll 6, wasser 4 l | 62.1 | 6 | 4
de | kg | 62.4 | 62 kilo 100, voll 6, 4 liter | 62.1 | 6 | 4
de | kg | 62.4 | voll 6/10, 4000ml, 62,1 | 62.1 | 6 | 4
de | kg | 62.4 | 62,1 heut, 6er gefühl, 4 l wasser | 62.1 | 6 | 4
de | kg | 62.4 | um 6 uhr 62,1, voll 7, 4 liter | 62.1 | 7 | 4
de | kg | 62.4 | 62,1 voll 5-6 wasser 3-4 l | 62.1 | 5.5 | 3.5
de | kg | 62.4 | 62,1 voll 6 statt 5 gestern, wasser 4 | 62.1 | 6 | 4
de | kg | 62.4 | gestern 62,4 heute 62,1, voll 6, 4l | 62.1 | 6 | 4
de | kg | 62.4 | 62,1, voll wie gestern, 4 liter | 62.1 | - | 4
de | kg | 62.4 | 62,1, voll 6, ein Liter weniger als gestern | 62.1 | 6 | ~2.5
de | kg | 62.4 | 62,1, voll 6, wasser wie immer | 62.1 | 6 | -
de | kg | 62.4 | 62,1 voll 6 wasser nicht gezählt | 62.1 | 6 | -
de | kg | 62.4 | moin, 62,1, 6, 4, taille 68, bauch flach | 62.1 | 6 | 4
de | kg | 62.4 | 62,1 kg 6️⃣ 💧4 | 62.1 | 6 | 4
de | kg | 62.4 | ✅62,1 ✅6 ✅4l | 62.1 | 6 | 4
de | kg | 62.4 | Gewicht:62,1;Voll:6;Wasser:4 | 62.1 | 6 | 4
de | kg | 62.4 | gewciht 62,1 vol 6 waser 4 | 62.1 | 6 | 4
de | kg | 62.4 | 62,1 ; 6 ; 4 ; 37,1 grad (bin gesund) | 62.1 | 6 | 4
de | kg | 62.4 | guten morgen! zweiundsechzigeinhalb, sechs, vier | 62.5 | 6 | 4
de | kg | 62.4 | 62,1, voll gefühlt zwischen 6 und 7, getrunken so um die 4 | 62.1 | 6.5 | 4
de | kg | 62.4 | sechs, vier liter, zweiundsechzig eins | 62.1 | 6 | 4
de | kg | 62.4 | 62,1kg voll6 wasser4l | 62.1 | 6 | 4
en | kg | 57.6 | 57.3, fullness solid six, 4 and a quarter litres | 57.3 | 6 | 4.25
en | kg | 57.6 | ugh bad night. 57.9. maybe a 4. only 2.5l | 57.9 | 4 | 2.5
en | kg | 57.6 | before coffee 57.4, after coffee 57.8 haha. 5. 4l | 57.4 | 5 | 4
en | kg | 57.6 | 57.4 pre pee 57.1 post pee. full 5 / water 4 | 57.1 | 5 | 4
en | kg | 57.6 | wearing pyjamas 57.8, naked 57.2, so 57.2. 6 and 4l | 57.2 | 6 | 4
en | kg | 57.6 | 57.2kg, fullness: 6. water: 1.5l bottle x 3 | 57.2 | 6 | 4.5
en | kg | 57.6 | weight: 57.2 (-0.4), fullness: 6 (+1), water: 4L (+0.5) | 57.2 | 6 | 4
en | kg | 57.6 | 57.2!! woohoo. 6!! 4l!! | 57.2 | 6 | 4
en | kg | 57.6 | 57.2 // six // 4 ltr | 57.2 | 6 | 4
en | kg | 57.6 | i am 57.2 today. i feel about 6 full. i drank about 4 litres. | 57.2 | 6 | 4
en | kg | 57.6 | fifty seven point two kilos six out of ten four litres | 57.2 | 6 | 4
en | kg | 57.6 | fifty-seven two. six. four. | 57.2 | 6 | 4
en | kg | 57.6 | 57 point 2, 6, 4 | 57.2 | 6 | 4
en | kg | 57.6 | 57.2 . 6 . 4 | 57.2 | 6 | 4
en | kg | 57.6 | 57.2...6...4 | 57.2 | 6 | 4
en | kg | 57.6 | 57.2kg\n6/10 fullness\n4 litres of water\n\nhave a good day | 57.2 | 6 | 4
en | kg | 57.6 | Water - 4, Fullness - 6, Weight - 57.2 | 57.2 | 6 | 4
en | kg | 57.6 | 57,2 6/10 4l | 57.2 | 6 | 4
en | kg | 57.6 | 57.2 ~6 ~4L | 57.2 | 6 | 4
en | kg | 57.6 | 57.2 kgs and a bit, 6, 4l | 57.2 | 6 | 4
en | kg | 57.6 | weighed in at 57.2. looking a 6. 4 down the hatch | 57.2 | 6 | 4
en | kg | 57.6 | weight 57.2 full 6 water nearly 4 | 57.2 | 6 | 4
en | kg | 57.6 | 57.2, 6, almost 4 litres, 3 coffees | 57.2 | 6 | 4
en | kg | 57.6 | 57.2, 6, 4 litres + 2 espressos | 57.2 | 6 | 4
en | kg | 57.6 | 57.2, 6, 4 litres of water and 500ml of squash | 57.2 | 6 | ~4.5
en | kg | 57.6 | 4l water and 1 coffee yesterday, weight's 57.2, I'd call myself a 6 | 57.2 | 6 | 4
en | kg | 57.6 | weight not checked yet, fullness 6, 4l | - | 6 | 4
en | kg | 57.6 | hotel has no scales :( 6 4l | - | 6 | 4
en | kg | 57.6 | scale is at my ex's place lol. 6/10. 4 litres | - | 6 | 4
en | kg | 57.6 | 57.2 / 6 / ? | 57.2 | 6 | -
en | kg | 57.6 | 57.2, skip, 4 | 57.2 | - | 4
en | kg | 57.6 | 57.2 6 dunno | 57.2 | 6 | -
en | kg | 57.6 | 57.2 idk 4l | 57.2 | - | 4
en | kg | 57.6 | na / 6 / 4 | - | 6 | 4
en | kg | 57.6 | - / 6 / 4 | - | 6 | 4
en | kg | 57.6 | 57.2kg. flatter than yesterday, 4. 4 litres | 57.2 | 4 | 4
en | kg | 57.6 | 57.2kg. a lot fuller than yesterday (8!). 4 litres | 57.2 | 8 | 4
en | kg | 57.6 | 57.2kg up 2 points on fullness to 7, 4L | 57.2 | 7 | 4
en | kg | 57.6 | dropped 0.4, so 57.2, fullness 6, 4L | 57.2 | 6 | 4
en | kg | 57.6 | lost 400 grams overnight. fullness 6. 4L | 57.2 | 6 | 4
en | kg | 57.6 | +300g, 6, 4l | 57.9 | 6 | 4
en | kg | 57.6 | -0.3 from yesterday, 6, 4l | 57.3 | 6 | 4
en | kg | 57.6 | no change on the scale. 6. 4 | 57.6 | 6 | 4
en | kg | 57.6 | identical to yesterday on the scale, 6, 4 l | 57.6 | 6 | 4
en | kg | 57.6 | 57.2 at 6:10am, bloated a bit, 6, 4L, bowel movement x1 | 57.2 | 6 | 4
en | kg | 57.6 | 57.2, 6, 4. Carbs 240 P 160 F 40 | 57.2 | 6 | 4
en | kg | 57.6 | 57.2 6 4 280c | 57.2 | 6 | 4
en | kg | 57.6 | 57.2, 6, 4, 7h30 sleep, 48 bpm | 57.2 | 6 | 4
en | kg | 57.6 | period day 2, 57.9, 6, 4 | 57.9 | 6 | 4
en | kg | 57.6 | 57.9 (period), 6, 4 | 57.9 | 6 | 4
en | kg | 57.6 | 3 days out!! 57.2 6 4 | 57.2 | 6 | 4
en | kg | 57.6 | room was 26 degrees, 57.2, 6, 4 | 57.2 | 6 | 4
en | kg | 57.6 | had 2 toilet trips then 57.2, 6, 4l | 57.2 | 6 | 4
en | kg | 57.6 | 57.2, legs 7 upper 5 so overall 6, 4l | 57.2 | 6 | 4
en | kg | 57.6 | arms flat legs full so call it 5. 57.2. 4l | 57.2 | 5 | 4
en | kg | 57.6 | 57.S, 6, 4 | - | ~6 | ~4
en | kg | 57.6 | weoght 57.2 fulness 6 eater 4 | 57.2 | 6 | ~4
en | kg | 57.6 | 572 6 4 | ~- | 6 | 4
en | kg | 57.6 | 57.2 64 | 57.2 | ~- | -
en | us | 66 | 145.2lb f5 w130oz | 65.86 | 5 | 3.84
en | us | 66 | 145 and a half pounds, 5, 128 ounces | 66.0 | 5 | 3.79
en | us | 66 | 145.2 // 5 // one gallon | 65.86 | 5 | 3.79
en | us | 66 | one forty five point two, five, a gallon plus two cups | 65.86 | 5 | 4.26
en | us | 66 | 145.2 5 four 32oz bottles | 65.86 | 5 | 3.79
en | us | 66 | 145.2, 5, 32 oz x 4 | 65.86 | 5 | 3.79
en | us | 66 | 145.2, full 5, half a gallon | 65.86 | 5 | 1.89
en | us | 66 | 145 lbs 3 oz, 5, 1 gal | 65.86 | 5 | 3.79
en | kg | 66 | 10 stone 5, full 5, 7 pints | 65.77 | 5 | 3.98
en | kg | 66 | ten stone five and a half, 5/10, 4 litres | 66.0 | 5 | 4
de | kg | 62.4 | 62,0 voll 6 wasser gut 4 liter | 62.0 | 6 | 4
de | kg | 62.4 | moin moin, 62,0 auf der waage, gefühlt ne 6, 4 liter geschafft | 62.0 | 6 | 4
de | kg | 62.4 | heute früh 62,0 nüchtern nach toilette, 6, 4l | 62.0 | 6 | 4
de | kg | 62.4 | vor dem kaffee 62,0, danach 62,5, voll 6, 4 l | 62.0 | 6 | 4
de | kg | 62.4 | mit schlafanzug 62,4 ohne 62,0. voll 6. 4 l | 62.0 | 6 | 4
de | kg | 62.4 | 62,3 dann nochmal 62,0. das zweite gilt. voll 6, 4 l | 62.0 | 6 | 4
de | kg | 62.4 | 62,0 voll: 6 wasser: 2x2l | 62.0 | 6 | 4
de | kg | 62.4 | 62,0, 6, acht gläser à 0,5 | 62.0 | 6 | 4
de | kg | 62.4 | 62,0, 6, 4 l plus 2 kaffee | 62.0 | 6 | 4
de | kg | 62.4 | 62,0, 6, 3 liter wasser und 1 liter tee | 62.0 | 6 | ~4
de | kg | 62.4 | 62,0kg (-0,4), Fülle 6 (+1), Wasser 4,0 l | 62.0 | 6 | 4
de | kg | 62.4 | zweiundsechzig, sechs, vier | 62.0 | 6 | 4
de | kg | 62.4 | zweiundsechzig null, fülle sechs, vier liter | 62.0 | 6 | 4
de | kg | 62.4 | 62 komma null, sechs von zehn, vier liter | 62.0 | 6 | 4
de | kg | 62.4 | einundsechzig komma fünf, voll sechs, dreieinhalb liter | 61.5 | 6 | 3.5
de | kg | 62.4 | einundsechzigeinhalb, sechs, drei komma fünf | 61.5 | 6 | 3.5
de | kg | 62.4 | 61einhalb, voll 6, 3einhalb liter | 61.5 | 6 | 3.5
de | kg | 62.4 | 62,0; -; 4 | 62.0 | - | 4
de | kg | 62.4 | 62,0; 6; - | 62.0 | 6 | -
de | kg | 62.4 | 62,0, keine ahnung, 4 | 62.0 | - | 4
de | kg | 62.4 | 62,0 6 weiß nicht | 62.0 | 6 | -
de | kg | 62.4 | waage streikt, voll 6, 4 liter | - | 6 | 4
de | kg | 62.4 | hab mich heut nicht gewogen. 6, 4 liter | - | 6 | 4
de | kg | 62.4 | gewicht kommt später, voll 6, 4 liter | - | 6 | 4
de | kg | 62.4 | 62,0 trinken hab ich verpeilt zu zählen, voll 6 | 62.0 | 6 | -
de | kg | 62.4 | 400 g weniger, 6, 4 l | 62.0 | 6 | 4
de | kg | 62.4 | 0,4 runter, voll 6, 4 l | 62.0 | 6 | 4
de | kg | 62.4 | ein halbes kilo leichter als gestern, voll 6, 4 l | 61.9 | 6 | 4
de | kg | 62.4 | +200g, 6, 4l | 62.6 | 6 | 4
de | kg | 62.4 | waage wie gestern, voll 6, 4l | 62.4 | 6 | 4
de | kg | 62.4 | 62,0. Voller als gestern, 7. 4 Liter. | 62.0 | 7 | 4
de | kg | 62.4 | 62,0. von 5 auf 7 bei der Fülle. 4 Liter. | 62.0 | 7 | 4
de | kg | 62.4 | 62,0, platt wie ne flunder, 3, 4 liter | 62.0 | 3 | 4
de | kg | 62.4 | 62,0 6 4 - 8500 schritte - 6,5 h schlaf - ruhepuls 49 | 62.0 | 6 | 4
de | kg | 62.4 | tag 2 vom laden: 62,0 6 4 | 62.0 | 6 | 4
de | kg | 62.4 | noch 3 tage! 62,0 6 4 | 62.0 | 6 | 4
de | kg | 62.4 | um halb sechs raus, 62,0, voll 6, 4 liter bis 20 uhr | 62.0 | 6 | 4
de | kg | 62.4 | viertel nach sechs: 62,0, 6, 4 | 62.0 | 6 | 4
de | kg | 62.4 | gewicht 62,0 / füllgefühl 6 / getrunken 4 / stimmung 8 | 62.0 | 6 | 4
de | kg | 62.4 | 62,0kg voll 6 von 10 hunger 9 von 10 wasser 4 | 62.0 | 6 | 4
de | kg | 62.4 | 62,9 äh 62,0, voll 6, 4 | 62.0 | 6 | 4
de | kg | 62.4 | voll 5, quatsch 6, 62,0, 4 l | 62.0 | 6 | 4
de | kg | 62.4 | wasser 3, nein 4 liter, 62,0, voll 6 | 62.0 | 6 | 4
de | kg | 62.4 | i han 62,0, füll sächs, vier liter | 62.0 | 6 | 4
de | kg | 62.4 | 62,0 sechs vier liter, beine 7 aber gesamt 6 | ~62.0 | 6 | 4
de | kg | 62.4 | gesamt so 6, arme eher 5, 62,0, 4 l | 62.0 | 6 | 4
de | kg | 62.4 | 6 und 4 liter bei 62,0 | 62.0 | 6 | 4
de | kg | 62.4 | Puls 50 Gewicht 62,0 Blutdruck 115/70 voll 6 Wasser 4 | 62.0 | 6 | 4
de | kg | 62.4 | 62,0 kilo. sechs. vier. | 62.0 | 6 | 4
de | kg | 62.4 | gewicht: 62,0 kg; wasser: 4000; fülle: 6 | 62.0 | 6 | 4
de | kg | 62.4 | 62.0 6 4l, zwei kaffee, 1 cola zero | 62.0 | 6 | 4
en | kg | 60.4 | 60.1 full 5 water 3, coach can I have 200g rice at 6? | 60.1 | 5 | 3
en | kg | 60.4 | 60.1, before that 60.5 (wet hair). 5, 3l | 60.1 | 5 | 3
en | kg | 60.4 | what if im 61 tomorrow? anyway 60.1 5 3l | 60.1 | 5 | 3
en | kg | 60.4 | coach said 3l but I drank 4. 60.1. 5 | 60.1 | 5 | 4
en | kg | 60.4 | 60.1 5 3l plus 2 beers lol | 60.1 | 5 | 3
en | kg | 60.4 | my sister weighs 60.9 and im 60.1 haha. 5 and 3l | 60.1 | 5 | 3
en | kg | 60.4 | 60.1 5 3l, photos at 7, posing at 8 | 60.1 | 5 | 3
en | kg | 60.4 | 60.1 5 3l. stage in 4 days. 12 hours of sleep total in 2 nights | 60.1 | 5 | 3
en | kg | 60.4 | i was 60.4 yesterday so 60.1 is good. 5. 3 litres | 60.1 | 5 | 3
en | kg | 60.4 | goal is 59.5, 60.1 now, full 5, 3l | 60.1 | 5 | 3
en | kg | 60.4 | 60.1 and holding. 5/10. 3 litres and counting | 60.1 | 5 | 3
en | kg | 60.4 | up 3 times in the night to pee. 60.1. 5. 3l | 60.1 | 5 | 3
en | kg | 60.4 | 60.1, 5, 3l, shins sore 7/10 | 60.1 | 5 | 3
en | kg | 60.4 | scale 1: 60.1, scale 2: 60.7. full 5. 3l | ~- | 5 | 3
en | kg | 60.4 | 60.1 or 60.3 the thing flickers, 5, 3l | 60.2 | 5 | 3
en | kg | 60.4 | 60.1 five 3l | 60.1 | 5 | 3
en | kg | 60.4 | sixty one, five, three | 61 | 5 | 3
en | kg | 60.4 | sixty, full about five or six, two and a half | 60 | 5.5 | 2.5
en | kg | 60.4 | 6o.1 5 3l | 60.1 | 5 | 3
en | kg | 60.4 | 60,1kg. 5. 3L. | 60.1 | 5 | 3
en | kg | 60.4 | 60.1KG F5 W3 | 60.1 | 5 | 3
en | kg | 60.4 | 60.1 - 5 - 3 | 60.1 | 5 | 3
en | kg | 60.4 | 60.1–5–3 | 60.1 | 5 | 3
en | kg | 60.4 | x, 5, 3l | - | 5 | 3
en | kg | 60.4 | 60.1\n?\n3 | 60.1 | - | 3
en | kg | 60.4 | weight 60.1\nfullness -\nwater 3 | 60.1 | - | 3
en | kg | 60.4 | weight: 60.1, fullness: n/a, water: 3 | 60.1 | - | 3
en | kg | 60.4 | 60.1 5 2 litres of water 1 litre of electrolytes | 60.1 | 5 | ~3
en | kg | 60.4 | 60.1, 5, 3 litres (1 before noon, 2 after) | 60.1 | 5 | 3
en | kg | 60.4 | 60.1 full 5 drank about half a litre less than planned | 60.1 | 5 | 3
en | kg | 60.4 | 60.1 full 5 drank all my water | 60.1 | 5 | 3.5
en | kg | 60.4 | 60.1 full 5 water as planned | 60.1 | 5 | 3.5
en | kg | 60.4 | fuller!! 60.1 and 3l | 60.1 | - | 3
en | kg | 60.4 | flat. tired. 60.1. 3l. | 60.1 | ~- | 3
en | kg | 60.4 | 7 full 60.1 3l (was 5 yesterday) | 60.1 | 7 | 3
en | kg | 60.4 | 5>6 full, 60.1, 3l | 60.1 | 6 | 3
en | kg | 60.4 | 60.4 -> 60.1, 5 -> 6, 3l | 60.1 | 6 | 3
en | kg | 60.4 | 60.1 5 3l 2nd coffee already | 60.1 | 5 | 3
en | kg | 60.4 | 60.1kg@5:45 f5 w3l s4h | 60.1 | 5 | 3
en | kg | 60.4 | 60.1 5 3l rpe 8 yesterday | 60.1 | 5 | 3
en | kg | 60.4 | it's 60.1, I think, the display is dim, might be 60.7. 5. 3l | ~- | 5 | 3
en | kg | 60.4 | 60.1 no 5 sorry, 3l | - | - | 3
en | kg | 60.4 | meant 60.1 not 61.1. 5. 3l | 60.1 | 5 | 3
en | kg | 60.4 | 60.1 5 3l (not 3.5, left half a bottle) | 60.1 | 5 | 3
en | kg | 60.4 | drank 3 of my 3.5 litres. 60.1. 5 | 60.1 | 5 | 3
en | kg | 60.4 | only 3 out of 4 litres done, 60.1, full 5 | 60.1 | 5 | 3
en | kg | 60.4 | 60.1 5 three quarters of my 4 litres | 60.1 | 5 | 3
de | kg | 60.4 | 60,1 voll 5 wasser 3, darf ich um 6 noch 200 g reis? | 60.1 | 5 | 3
de | kg | 60.4 | gestern wars 60,4, heut 60,1. voll 5. 3 l | 60.1 | 5 | 3
de | kg | 60.4 | ziel ist 59,5, bin bei 60,1, voll 5, 3 l | 60.1 | 5 | 3
de | kg | 60.4 | meine schwester wiegt 60,9 und ich 60,1 haha. 5 und 3 l | 60.1 | 5 | 3
de | kg | 60.4 | coach sagte 3 l aber ich hab 4 geschafft. 60,1. 5 | 60.1 | ~5 | ~4
de | kg | 60.4 | 60,1 5 3 l, fotos um 7, posing um 8 | 60.1 | 5 | 3
de | kg | 60.4 | 3 mal raus in der nacht. 60,1. 5. 3 l | 60.1 | 5 | 3
de | kg | 60.4 | 60,1, 5, 3 l, schienbein tut weh 7 von 10 | 60.1 | 5 | 3
de | kg | 60.4 | waage 1: 60,1, waage 2: 60,7. voll 5. 3 l | ~- | 5 | 3
de | kg | 60.4 | 60,1 oder 60,3 die flackert, 5, 3 l | 60.2 | 5 | 3
de | kg | 60.4 | sechzig eins, fünf, drei liter | 60.1 | 5 | 3
de | kg | 60.4 | einundsechzig, fünf, drei | 61 | 5 | 3
de | kg | 60.4 | 60,1 / x / 3 | 60.1 | - | 3
de | kg | 60.4 | gewicht 60,1\nvoll ?\nwasser 3 | 60.1 | - | 3
de | kg | 60.4 | gewicht: 60,1, voll: -, wasser: 3 | 60.1 | - | 3
de | kg | 60.4 | 60,1 5 2 liter wasser 1 liter elektrolyte | 60.1 | 5 | ~3
de | kg | 60.4 | 60,1, voll 5, halber liter weniger als geplant | 60.1 | 5 | 3
de | kg | 60.4 | 60,1 voll 5 wasser wie geplant | 60.1 | 5 | 3.5
de | kg | 60.4 | 60,4 -> 60,1, 5 -> 6, 3 l | 60.1 | 6 | 3
de | kg | 60.4 | meinte 60,1 nicht 61,1. 5. 3 l | 60.1 | 5 | 3
de | kg | 60.4 | 3 von 3,5 litern geschafft, 60,1, voll 5 | 60.1 | 5 | 3
de | kg | 60.4 | nur 3 von 4 litern, 60,1, voll 5 | 60.1 | 5 | 3
de | kg | 60.4 | 60,1 5 3 l, 2 eis gegessen (sorry!!) | 60.1 | 5 | 3
de | kg | 60.4 | noch 4 tage, 60,1 5 3l, schlaf 6 h, 10k schritte | 60.1 | 5 | 3
de | kg | 60.4 | flach. müde. 60,1. 3l. | 60.1 | ~- | 3
de | kg | 60.4 | 60,1 mit socken haha, 5, 3l | 60.1 | 5 | 3
de | kg | 60.4 | 60,1kg um 5:45, voll 5, 3 l | 60.1 | 5 | 3
de | kg | 60.4 | zwischen 60 und 60,2, 5, 3 l | 60.1 | 5 | 3
de | kg | 60.4 | 60.1 – 5 – 3 Liter, Stuhlgang 1x | 60.1 | 5 | 3
de | kg | 60.4 | fünf voll drei liter sechzig komma eins | 60.1 | 5 | 3
"""
