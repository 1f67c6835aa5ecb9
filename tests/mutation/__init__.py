"""Small slips in the code that decides, and whether a test notices them."""
