"""How the running bot is doing: what is behind, for machines that ask and for whoever is to be told."""
