title = Plan does not meet its expectations
protects = A plan that was right when it was written may no longer be right.

# $text (phrase)
# $why (phrase)
unmet = The plan expects { $text }. Not met: { $why }.

partial = The plan was not read completely, so its expectations were not checked. This check has not passed.
