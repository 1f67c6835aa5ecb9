"""Numbers by which plans are drafted, reviewed, learnt from and carried out."""
