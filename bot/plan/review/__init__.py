"""The review that a plan passes before it goes live: `gate`, and what a coach answers it."""
