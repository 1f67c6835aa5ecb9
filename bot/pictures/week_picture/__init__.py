"""The picture of a week: plain values in, a picture out; all but `picture` know no database or chat."""
