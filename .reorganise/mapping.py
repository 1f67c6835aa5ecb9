from pathlib import Path
m = dict(line.split("\t") for line in (Path(__file__).parent / "mapping.tsv").read_text().splitlines())
