"""Virtual athletes on whom policies are compared; their physiology is not the tracker's own."""
