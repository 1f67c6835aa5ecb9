"""Plans and limits as sheets: written for a spreadsheet program, and read back with suspicion."""
