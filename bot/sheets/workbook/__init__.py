"""Everything of a coach's athletes as one workbook.

To add a column: one `Column` in `tables`, its value in `records`; a test names the column that
nothing fills. Text from people goes through `bot/sheets/format/cells.py`, so that it never
computes. With LibreOffice (`libreoffice-calc-nogui`), `pytest -m soak
tests/bot/test_workbook_in_an_office.py` opens and prints every sheet.
"""
