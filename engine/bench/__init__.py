"""Virtual athletes on whom policies are compared; their physiology is not the tracker's own.

`worlds/` has its own equations, sources and answers for each world, none of them the tracker's;
every morning goes through `decide`, beside the all-knowing choice; published loads are followed
too. On the command line: `python -m engine simulate`, `validate`, `cohort`.
"""
