"""Languages, figures and days as they are written, catalogues, and words that features share.

A sentence stands in its feature's `words*.py`: `saved = Sentence("Saved.")` where nothing is filled
in, `joined = SentenceOn("{name} has joined.")` where one thing is (with `figures.grams` behind it,
where that is shown in a way of its own), `SentenceOnTwo` where two are, `SentenceCounted` where a
number decides, `SentenceBy` where a key does, `SentenceAbout` where somebody may read it of themself;
else `tr("{name} has ...", name=name)`, `trn` and `tr_if(own, ...)`, `mark` in tables;
never an f-string. A table in which some sentences look at what they are about and some do not holds
both as they are, and `worded` says one. What rules, gates and flags say is worded in the engine with
`told.tr`, whose gaps are facts or are given, and translated here (`telling`). What several features
say stands in `common`. What a source says is shown with it and translated too: its citation is marked
there.

`python -m bot.words.locale.update` brings the catalogues up to date; with a code (`fr`) it adds a
language, `--take FILE.po` takes translations over. What people type is a list in the catalogue, or
stands in `engine/written/` and `engine/symptoms/`.
"""
