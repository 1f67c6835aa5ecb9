"""Athletes set up from a template or a sheet, foreseen before anything is done.

A `Wanted` is foreseen without changing anything (`foreseeing`), shown, foreseen again when the
coach agrees, and put in force only where its `mark` is still the same. A new column of the sheet is
a key in `roster_sheet.py`, its reader in `sheet_meaning.py` and its value in `many._event`. What
a template holds beside the plan is `bot/plan/templates/` and `bot/food/by_template.py`. A
button of the card stands on one page of `bot/coach/card/pages.py`.
"""
