"""Morning pictures: checked, stripped of what the camera added, kept in a folder, put side by side.

Nothing is ever inferred from a picture: nobody's look is measured or judged here.
"""
