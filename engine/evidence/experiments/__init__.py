"""Published experiments, as protocols beside what was measured."""
