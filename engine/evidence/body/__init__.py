"""What the model of the body rests on, and the tracker that follows an athlete."""
