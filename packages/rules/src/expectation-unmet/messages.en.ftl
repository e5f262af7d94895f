title = Plan does not meet its expectations
protects = A plan that was right when it was written can be wrong after a change.

# $text (phrase)
# $why (phrase)
unmet = The plan expects { $text }. Not met: { $why }.

partial = The plan was not read completely. Its expectations were not checked. This check has not passed.
